import type { Instant } from '../kernel/index.ts';
import type { DayEvidence } from '../record/index.ts';
import { type Language, type Say, sayLimits, scaleWeight, textIn } from '../words/index.ts';
import { part, ruledTable } from './record-page.ts';
import type { RecordWords } from './record-phrases.ts';

type Pen = {
  readonly say: Say;
  readonly words: RecordWords;
  readonly clock: (at: Instant) => string;
};

type Decided = {
  readonly limits: string;
  readonly why: string;
  readonly cures: string;
  readonly nitrite: string;
  readonly second: string;
};

const decided: Readonly<Record<Language, Decided>> = {
  en: {
    limits: 'Limits that were changed',
    why: 'why',
    cures: 'Curing salt, weighed by two',
    nitrite: 'nitrite',
    second: 'and again by',
  },
  es: {
    limits: 'Límites que se cambiaron',
    why: 'por qué',
    cures: 'Sal de cura, pesada por dos',
    nitrite: 'nitrito',
    second: 'y otra vez por',
  },
};

/** Why the limits are others from that day on; nothing on most days. */
export function limitsPart({ limits = [] }: DayEvidence, { say, words, clock }: Pen): string[] {
  if (limits.length === 0) return [];
  const own = decided[say.language];
  const rows = limits.flatMap(({ at, from, to, changes }) =>
    changes.map(({ why, by }) => [clock(at), sayLimits(from), sayLimits(to), why, by]),
  );
  const header = [words.at, words.from, words.to, own.why, words.by];
  return [part(own.limits, false, words.none, ruledTable(header, rows))];
}

/** Curing salt that two people weighed; nothing where none was. */
export function curesPart({ cures = [] }: DayEvidence, { say, words, clock }: Pen): string[] {
  if (cures.length === 0) return [];
  const own = decided[say.language];
  const rows = cures.map(({ at, mix, batch, weightKg, ingoingPpm, by, second }) => [
    ...[clock(at), textIn(mix, say), textIn(batch, say), scaleWeight(weightKg, say)],
    ...[`${ingoingPpm} ppm`, by, second],
  ]);
  const header = [words.at, words.what, words.batch, words.weight, own.nitrite, words.by];
  const table = ruledTable([...header, own.second], rows, [3, 4]);
  return [part(own.cures, false, words.none, table)];
}
