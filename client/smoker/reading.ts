import { html } from 'lit';
import type { Celsius, SmokerId } from '../../shared/kernel/index.ts';
import { celsius } from '../../shared/kernel/index.ts';
import type { Intent, LoadDrawing, SmokerDrawing } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { countPieces, textIn, ui } from '../../shared/words/index.ts';
import '../parts/key-pad.ts';

/** What a thermometer is held to, and how it is called beside the keys. */
export type Reading =
  | { readonly kind: 'air'; readonly smoker: SmokerId; readonly name: string }
  | { readonly kind: 'core'; readonly load: LoadDrawing; readonly name: string };

/** What a working thermometer can show; the hub keeps to the same. */
const PLAUSIBLE_C = {
  air: { low: celsius(-40), high: celsius(450) },
  core: { low: celsius(-30), high: celsius(105) },
} as const;

export function airOf({ id, name }: SmokerDrawing, say: Say): Reading {
  const said = `${textIn(name, say)}: ${ui[say.language].airReading}`;
  return { kind: 'air', smoker: id, name: said };
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
  return html`<key-pad
    .say=${say}
    .name=${reading.name}
    .lowC=${low}
    .highC=${high}
    @read=${read}
    @close=${close}
  ></key-pad>`;
}

function placeOf(reading: Reading): Extract<Intent, { kind: 'reading' }>['where'] {
  return reading.kind === 'air'
    ? { kind: 'air', smoker: reading.smoker }
    : { kind: 'core', stay: reading.load.stay };
}
