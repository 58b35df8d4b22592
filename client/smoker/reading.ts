import { html } from 'lit';
import type { Celsius, Instant, Seconds, SmokerId } from '../../shared/kernel/index.ts';
import { celsius, minutes, seconds } from '../../shared/kernel/index.ts';
import type { Intent, LoadDrawing, SmokerDrawing } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import {
  countPieces,
  durationWords,
  fireWords,
  pitWords,
  textIn,
  ui,
} from '../../shared/words/index.ts';
import type { Choice } from '../parts/choice-strip.ts';
import '../parts/choice-strip.ts';
import '../parts/key-pad.ts';
import { backChoices } from '../shell/back-choices.ts';

/** What a thermometer is held to, and how it is called beside the keys. */
export type Reading =
  | {
      readonly kind: 'air';
      readonly smoker: SmokerId;
      readonly name: string;
      readonly smokerName: string;
      readonly spell: SmokerDrawing['spell'];
      readonly openedAt: Instant | null;
    }
  /** Its door was open: for how long? */
  | {
      readonly kind: 'door';
      readonly smoker: SmokerId;
      readonly name: string;
      /** When it was last, lately. */
      readonly openedAt: Instant | null;
    }
  | { readonly kind: 'core'; readonly load: LoadDrawing; readonly name: string }
  /** It was read and is down: when is it thought to be back? */
  | {
      readonly kind: 'back';
      readonly smoker: SmokerId;
      readonly name: string;
      readonly tempC: Celsius;
    };

type Asking = {
  readonly say: Say;
  readonly now: Instant;
  /** When the day is over. */
  readonly endsAt: Instant;
  readonly keep: (intent: Intent) => void;
  /** What is asked next; null where that was all. */
  readonly next: (reading: Reading | null) => void;
};

/** What a working thermometer can show; the hub keeps to the same. */
const PLAUSIBLE_C = {
  air: { low: celsius(-40), high: celsius(450) },
  core: { low: celsius(-30), high: celsius(105) },
} as const;

export function airOf({ id, name, spell, openedAt }: SmokerDrawing, say: Say): Reading {
  const smokerName = textIn(name, say);
  const said = `${smokerName}: ${pitWords[say.language].airReading}`;
  return { kind: 'air', smoker: id, name: said, smokerName, spell, openedAt };
}

export function coreOf(load: LoadDrawing, say: Say): Reading {
  const pieces = countPieces(load.pieces, load.piece, say);
  return { kind: 'core', load, name: `${pieces}: ${pitWords[say.language].coreReading}` };
}

/** The keys for a reading, or the boxes for when a smoker is back. */
export function readingPad(reading: Reading, asking: Asking) {
  if (reading.kind === 'back') return backStrip(reading, asking);
  if (reading.kind === 'door') return doorStrip(reading, asking);
  const { say, keep, next } = asking;
  const { low, high } = PLAUSIBLE_C[reading.kind];
  const read = ({ detail }: CustomEvent<Celsius>) => {
    keep({ kind: 'reading', where: placeOf(reading), tempC: detail });
    next(null);
  };
  const readAs = ({ detail: { tempC, way } }: CustomEvent<ReadAs>) => {
    if (reading.kind !== 'air') return;
    const { smoker, smokerName } = reading;
    if (way === 'smokerDown') {
      next({ kind: 'back', smoker, name: ui[say.language].whenBack(smokerName), tempC });
      return;
    }
    keep({ kind: way, smoker, tempC });
    next(null);
  };
  return html`<key-pad
    .say=${say}
    .name=${reading.name}
    .lowC=${low}
    .highC=${high}
    .ways=${waysOf(reading, say)}
    .besides=${besidesOf(reading, asking)}
    @read=${read}
    @read-as=${readAs}
    @close=${() => next(null)}
  ></key-pad>`;
}

function backStrip(
  { smoker, tempC, name }: Extract<Reading, { kind: 'back' }>,
  { say, now, endsAt, keep, next }: Asking,
) {
  const choices = backChoices({
    now,
    endsAt,
    say,
    choose: (backAt) => {
      keep({ kind: 'smokerDown', smoker, tempC, backAt });
      next(null);
    },
  });
  const leave = { label: ui[say.language].leaveIt, choose: () => next(null), leaves: true };
  return html`<div class="back">
    <p>${name}</p>
    <choice-strip .say=${say} .name=${name} .choices=${[...choices, leave]}></choice-strip>
  </div>`;
}

/** How long a door was open; few are for longer. */
const OPEN_FOR = [minutes(1), minutes(2), minutes(5)] as const;

/** What was said so lately may still be taken back; the hub keeps to less. */
const LATELY_MS = minutes(9) * 1000;

function doorStrip(
  { smoker, name, openedAt }: Extract<Reading, { kind: 'door' }>,
  { say, now, keep, next }: Asking,
) {
  const words = ui[say.language];
  const box = (label: string, openS: Seconds) => ({
    label,
    choose: () => {
      keep({ kind: 'doorOpen', smoker, openS });
      next(null);
    },
  });
  const isLate = openedAt !== null && now - openedAt < LATELY_MS;
  const choices = [
    ...OPEN_FOR.map((openS) => box(durationWords(openS), openS)),
    ...(isLate ? [box(fireWords[say.language].doorShut, seconds(0))] : []),
    { label: words.leaveIt, choose: () => next(null), leaves: true },
  ];
  return html`<div class="back">
    <p>${name}</p>
    <choice-strip .say=${say} .name=${name} .choices=${choices}></choice-strip>
  </div>`;
}

/** Of the air's smoker the door may have been open, too, without a reading. */
function besidesOf(reading: Thermometer, { say, next }: Asking): Choice[] {
  if (reading.kind !== 'air' || reading.spell?.kind === 'down') return [];
  const fire = fireWords[say.language];
  const { smoker, smokerName, openedAt } = reading;
  const name = fire.doorFor(smokerName);
  return [{ label: fire.doorOpen, choose: () => next({ kind: 'door', smoker, name, openedAt }) }];
}

type ReadAs = { readonly tempC: Celsius; readonly way: 'smokerDown' | 'smokerCold' | 'smokerUp' };
type Thermometer = Exclude<Reading, { kind: 'back' | 'door' }>;

/**
 * A smoker that burns may go down or run cold; one that is down may come up, or be thought to be
 * back at another time.
 */
function waysOf(reading: Thermometer, say: Say): (Pick<ReadAs, 'way'> & { label: string })[] {
  if (reading.kind === 'core') return [];
  const { smokerDown, smokerStillDown, smokerCold, smokerUp } = fireWords[say.language];
  const down = { label: smokerDown, way: 'smokerDown' } as const;
  const cold = { label: smokerCold, way: 'smokerCold' } as const;
  const still = { label: smokerStillDown, way: 'smokerDown' } as const;
  const up = { label: smokerUp, way: 'smokerUp' } as const;
  if (!reading.spell) return [cold, down];
  return reading.spell.kind === 'down' ? [up, still, cold] : [up, down];
}

function placeOf(reading: Thermometer): Extract<Intent, { kind: 'reading' }>['where'] {
  return reading.kind === 'air'
    ? { kind: 'air', smoker: reading.smoker }
    : { kind: 'core', stay: reading.load.stay };
}
