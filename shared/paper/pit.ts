import { heatNeededC } from '../day/index.ts';
import type { LoadDrawing, SmokerDrawing } from '../view/index.ts';
import { viewOf } from '../view/index.ts';
import { clockTime, countPieces, pitWords, saySlot, temperature, textIn } from '../words/index.ts';
import type { SmokerBlock } from './paper.ts';
import type { Press } from './press.ts';

/** How often the air of a smoker is asked for. */
const READINGS = 8;

/** Every smoker with what lies, or will lie, on each of its racks. */
export function smokerBlocks(press: Press): SmokerBlock[] {
  const view = viewOf(press.live, { kind: 'smoker' });
  return view.face === 'smoker' ? view.smokers.map((smoker) => smokerBlock(press, smoker)) : [];
}

function smokerBlock(press: Press, { name, heat, racks }: SmokerDrawing): SmokerBlock {
  const { say, words } = press;
  const fixed = pitWords[say.language];
  const heats = { below: fixed.heatBelow, above: fixed.heatAbove, side: fixed.heatSide };
  return {
    name: textIn(name, say),
    fire: heats[heat],
    racks: racks.map(({ slot, loads }) => ({
      name: saySlot(slot, say),
      loads: loads.length > 0 ? inOne(loads).map((load) => sayLoad(press, load)) : [fixed.free],
    })),
    air: { of: words.blanks.air, times: READINGS, unit: say.temperature },
  };
}

/** What goes in and comes off together is one load to whoever carries it. */
function inOne(loads: readonly LoadDrawing[]): LoadDrawing[] {
  const key = ({ batchName, inAt, outAt }: LoadDrawing) => `${batchName.en} ${inAt} ${outAt}`;
  const together = new Map<string, LoadDrawing>();
  for (const load of loads) {
    const same = together.get(key(load));
    together.set(key(load), same ? { ...same, pieces: same.pieces + load.pieces } : load);
  }
  return [...together.values()];
}

/** With its own heat: a smoker may be set anew between one load and the next. */
function sayLoad({ live, say, words }: Press, load: LoadDrawing): string {
  const pieces = countPieces(load.pieces, load.piece, say);
  const hours = words.span(clockTime(load.inAt, say), clockTime(load.outAt, say));
  const setC = heatNeededC(live.state, live.index, load.stay);
  const set = setC === null ? [] : [pitWords[say.language].setTo(temperature(setC, say))];
  return [pieces, textIn(load.batchName, say), hours, ...set].join(', ');
}
