import { html } from 'lit';
import type { Celsius, SmokerId } from '../../shared/kernel/index.ts';
import { celsius } from '../../shared/kernel/index.ts';
import type { Intent, LoadDrawing, SmokerDrawing } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { countPieces, textIn, ui } from '../../shared/words/index.ts';
import '../parts/key-pad.ts';

/** What a thermometer is held to, and how it is called beside the keys. */
export type Reading =
  | {
      readonly kind: 'air';
      readonly smoker: SmokerId;
      readonly name: string;
      readonly spell: SmokerDrawing['spell'];
    }
  | { readonly kind: 'core'; readonly load: LoadDrawing; readonly name: string };

/** What a working thermometer can show; the hub keeps to the same. */
const PLAUSIBLE_C = {
  air: { low: celsius(-40), high: celsius(450) },
  core: { low: celsius(-30), high: celsius(105) },
} as const;

export function airOf({ id, name, spell }: SmokerDrawing, say: Say): Reading {
  const said = `${textIn(name, say)}: ${ui[say.language].airReading}`;
  return { kind: 'air', smoker: id, name: said, spell };
}

export function coreOf(load: LoadDrawing, say: Say): Reading {
  const pieces = countPieces(load.pieces, load.piece, say);
  return { kind: 'core', load, name: `${pieces}: ${ui[say.language].coreReading}` };
}

/** The keys for a reading. */
export function readingPad(
  reading: Reading,
  { say, keep, close }: { say: Say; keep: (intent: Intent) => void; close: () => void },
) {
  const { low, high } = PLAUSIBLE_C[reading.kind];
  const read = ({ detail }: CustomEvent<Celsius>) => {
    keep({ kind: 'reading', where: placeOf(reading), tempC: detail });
    close();
  };
  const readAs = ({ detail }: CustomEvent<ReadAs>) => {
    if (reading.kind === 'air') keep(asSaid(reading.smoker, detail));
    close();
  };
  return html`<key-pad
    .say=${say}
    .name=${reading.name}
    .lowC=${low}
    .highC=${high}
    .ways=${waysOf(reading, say)}
    @read=${read}
    @read-as=${readAs}
    @close=${close}
  ></key-pad>`;
}

type ReadAs = { readonly tempC: Celsius; readonly way: 'smokerDown' | 'smokerCold' | 'smokerUp' };

/** A smoker that burns may go down or run cold; one that does not may come up. */
function waysOf(reading: Reading, say: Say): (Pick<ReadAs, 'way'> & { label: string })[] {
  if (reading.kind === 'core') return [];
  const { smokerDown, smokerCold, smokerUp } = ui[say.language];
  const down = { label: smokerDown, way: 'smokerDown' } as const;
  const cold = { label: smokerCold, way: 'smokerCold' } as const;
  const up = { label: smokerUp, way: 'smokerUp' } as const;
  if (!reading.spell) return [cold, down];
  return reading.spell.kind === 'down' ? [up, cold] : [up, down];
}

function asSaid(smoker: SmokerId, { tempC, way }: ReadAs): Intent {
  return way === 'smokerDown'
    ? { kind: way, smoker, tempC, backAt: null }
    : { kind: way, smoker, tempC };
}

function placeOf(reading: Reading): Extract<Intent, { kind: 'reading' }>['where'] {
  return reading.kind === 'air'
    ? { kind: 'air', smoker: reading.smoker }
    : { kind: 'core', stay: reading.load.stay };
}
