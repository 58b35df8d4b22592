import type { Instant, LocalDay } from '../kernel/index.ts';
import { wallTime } from '../kernel/index.ts';
import type { BatchFlow, DayEvidence, DayRecord, DayTold } from '../record/index.ts';
import {
  clockTime,
  type Say,
  sayAction,
  sayCheckKind,
  sayDay,
  sayFelt,
  temperature,
  textIn,
  weight,
} from '../words/index.ts';
import { curesPart, limitsPart } from './decided-parts.ts';
import { element, escaped } from './markup.ts';
import { part, recordPage, ruledTable } from './record-page.ts';
import type { RecordWords } from './record-phrases.ts';
import { recordWords } from './record-words.ts';

/** How a day is signed, as it is printed. */
export type PrintedSeal = {
  readonly hash: string;
  readonly signature: string;
  readonly sealedAt: string;
  /** The fingerprint of the key. */
  readonly key: string;
};

export type PrintedDay = DayTold & { readonly seal: PrintedSeal | null };

/** What a sheet is written with: the reader's habits, and its words. */
type Pen = { readonly say: Say; readonly words: RecordWords };

/**
 * The record of a day, or of several, as sheets to print. Of several days the temperatures are
 * summed up, and the work is left out: the sheet of a day has them.
 */
export function dayRecordPage(
  days: readonly PrintedDay[],
  say: Say,
  font: string | null = null,
): string {
  const words = recordWords[say.language];
  const [first, last] = [days[0]?.record, days.at(-1)?.record];
  const span = [first?.day, last === first ? null : last?.day].filter(Boolean).join(' – ');
  const title = `${words.record}: ${first?.kitchen ?? ''}, ${span}`;
  const pen = { say, words };
  const sheets = days.map((day) => sheetOf(day, pen, days.length === 1));
  return recordPage({
    ...{ language: say.language, title, page: words.page, sheets, font },
    foot: [first?.kitchen, span, days.at(-1)?.seal?.hash.slice(0, 16)].filter(Boolean).join(' · '),
  });
}

function sheetOf({ record, evidence, seal }: PrintedDay, pen: Pen, isAlone: boolean): string {
  const { words } = pen;
  const { closed, limits, planVersion, kitchen } = record;
  const signed = closed
    ? words.closedBy(closed.by ?? '–', clock(closed.at, record, pen))
    : words.notClosed;
  return [
    element(
      'header',
      'head',
      `<h1>${escaped(`${words.record} · ${kitchen}`)}</h1>` +
        element('p', 'day', escaped(sayDay(record.day, pen.say))),
    ),
    element(
      'p',
      'lead',
      escaped(
        `${signed} · ${words.limits}: ${limits.id} ${limits.version || ''} · plan ${planVersion}`,
      ),
    ),
    ...limitsPart(evidence, penOf(record, pen)),
    lotsPart(record, pen),
    batchesPart(record, pen),
    checksPart(record, evidence, pen),
    ...curesPart(evidence, penOf(record, pen)),
    amendedPart(record, evidence, pen),
    readingsPart(record, evidence, pen, isAlone),
    spellsPart(record, evidence, pen),
    ...(isAlone ? [workPart(record, evidence, pen)] : []),
    chainOf(seal, words),
  ].join('\n');
}

/** A pen that writes instants as that day has them. */
const penOf = (record: DayRecord, pen: Pen) => ({
  say: pen.say,
  words: pen.words,
  clock: (at: Instant) => clock(at, record, pen),
});

function lotsPart(record: DayRecord, pen: Pen): string {
  const { say, words } = pen;
  const { lot, cut, pieces, supplier, code, useBy, came, temp, by } = words;
  const rows = record.lots.map((each) => [
    ...[each.id, textIn(each.name, say), each.pieces, weight(each.weightKg, say), each.supplier],
    ...[each.code, each.useBy && sayDay(each.useBy as LocalDay, say)],
    ...[each.tempC === null ? null : temperature(each.tempC, say)],
    ...[clock(each.at, record, pen), each.by],
  ]);
  const header = [lot, cut, pieces, words.weight, supplier, code, useBy, temp, came, by];
  return part(words.lots, rows.length === 0, words.none, ruledTable(header, rows, [2, 3, 7]));
}

function batchesPart(record: DayRecord, pen: Pen): string {
  const { say, words } = pen;
  const nameOf = (id: string) => {
    const found = record.flows.find(({ batch }) => batch === id);
    return found ? textIn(found.name, say) : id;
  };
  const source = ({ lot, of }: BatchFlow['from'][number]) =>
    lot ?? (of ? words.trimOf(nameOf(of)) : words.nobodyKnows);
  const rows = record.flows.flatMap((flow) =>
    flow.from.map((from, i) => [
      ...[i === 0 ? textIn(flow.name, say) : '', i === 0 ? clock(flow.begunAt, record, pen) : ''],
      ...[source(from), weight(from.weightKg, say)],
      ...[i === 0 ? weight(flow.servedKg, say) : '', i === 0 ? weight(flow.keptKg, say) : ''],
    ]),
  );
  const header = [words.batch, words.begun, words.of, words.weight, words.forService];
  const table = ruledTable([...header, words.forAnother], rows, [3, 4, 5]);
  return part(words.batches, rows.length === 0, words.none, table);
}

function checksPart(record: DayRecord, { checks }: DayEvidence, pen: Pen): string {
  const { say, words } = pen;
  const rows = checks.map((each) => [
    ...[clock(each.at, record, pen), sayCheckKind(each.check, say), textIn(each.what, say)],
    ...[each.tempC === null ? null : temperature(each.tempC, say), each.thermometer],
    each.feel ? sayFelt(each.feel, say) : null,
    ...[each.action && sayAction(each.action, say), each.by],
  ]);
  const header = [words.at, words.check, words.what, words.found, words.probe];
  header.push(words.felt, words.correction, words.by);
  return part(words.checks, rows.length === 0, words.none, ruledTable(header, rows, [3]));
}

function amendedPart(record: DayRecord, { amended }: DayEvidence, pen: Pen): string {
  const { words } = pen;
  const named = (what: keyof RecordWords['told']) => words.told[what] ?? words.decision;
  const rows = amended.map(({ at, by, what, was }) => [
    ...[clock(at, record, pen), named(what), by],
    ...[named(was.what), clock(was.at, record, pen), was.by],
  ]);
  const header = [words.at, words.amended, words.by, words.was, words.at, words.by];
  return part(words.amended, rows.length === 0, words.none, ruledTable(header, rows));
}

function readingsPart(
  record: DayRecord,
  { readings }: DayEvidence,
  pen: Pen,
  isAlone: boolean,
): string {
  const { say, words } = pen;
  if (isAlone) {
    const rows = readings.map(({ at, what, tempC, by }) => [
      ...[clock(at, record, pen), textIn(what, say), temperature(tempC, say), by],
    ]);
    const table = ruledTable([words.at, words.place, words.temp, words.by], rows, [2]);
    return part(words.readings, rows.length === 0, words.none, table);
  }
  const places = [...new Set(readings.map(({ what }) => textIn(what, say)))];
  const rows = places.map((place) => {
    const own = readings.filter(({ what }) => textIn(what, say) === place);
    const [low, high] = [
      own.reduce((least, each) => (each.tempC < least.tempC ? each : least)),
      own.reduce((most, each) => (each.tempC > most.tempC ? each : most)),
    ];
    return [place, own.length, temperature(low.tempC, say), temperature(high.tempC, say)];
  });
  const header = [words.place, words.count, words.lowest, words.highest];
  return part(words.readings, rows.length === 0, words.none, ruledTable(header, rows, [1, 2, 3]));
}

function spellsPart(record: DayRecord, { spells }: DayEvidence, pen: Pen): string {
  const { say, words } = pen;
  const rows = spells.map(({ smoker, from, until, tempC }) => [
    ...[textIn(smoker, say), temperature(tempC, say), clock(from, record, pen)],
    ...[until === null ? null : clock(until, record, pen)],
  ]);
  const header = [words.place, words.temp, words.from, words.to];
  return part(words.down, rows.length === 0, words.none, ruledTable(header, rows, [1]));
}

function workPart(record: DayRecord, { work }: DayEvidence, pen: Pen): string {
  const { say, words } = pen;
  const rows = work.map((each) => [
    ...[textIn(each.batch, say), textIn(each.title, say), each.pieces],
    ...[clock(each.startedAt, record, pen)],
    ...[each.finishedAt === null ? null : clock(each.finishedAt, record, pen), each.by],
  ]);
  const header = [words.batch, words.task, words.pieces, words.from, words.to, words.by];
  return part(words.work, rows.length === 0, words.none, ruledTable(header, rows, [2]));
}

/** The head of the chain with its signature, to be held against the log one day. */
function chainOf(seal: PrintedSeal | null, words: RecordWords): string {
  if (!seal) return element('footer', 'chain', escaped(words.notSigned));
  const line = (name: string, value: string) =>
    `<p>${escaped(name)}: <code>${escaped(value)}</code></p>`;
  return element(
    'footer',
    'chain',
    [
      line(words.head, seal.hash),
      line(words.signature, `${seal.sealedAt} ${seal.signature}`),
      line(words.key, seal.key),
      element('p', 'lead', escaped(words.howToCheck)),
    ].join('\n'),
  );
}

/** A night's work begins on the day before, and is told with it. */
function clock(at: Instant, { zone, day }: Pick<DayRecord, 'zone' | 'day'>, { say }: Pen): string {
  const { day: localDay } = wallTime(at, zone);
  const time = clockTime(at, { ...say, zone });
  return localDay === day ? time : `${sayDay(localDay, say)} ${time}`;
}
