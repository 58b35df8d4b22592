import { celsius, fahrenheit, minutes, seconds, toCelsius } from '../kernel/index.ts';
import type { LogColumns } from './log-columns.ts';
import { cellsOf, columnsOf } from './log-columns.ts';
import type { LogFault, Written } from './log-doubts.ts';
import { doubtsOf } from './log-doubts.ts';
import type { LogTime } from './log-time.ts';
import { readTime } from './log-time.ts';
import type { TempUnit } from './printed.ts';
import type { Series } from './readings.ts';

export type LogRead =
  | {
      readonly ok: true;
      /** One series for each column of temperatures. */
      readonly probes: readonly Series[];
      /** What does not forbid to read on, but is to be known: silences. */
      readonly remarks: readonly LogFault[];
    }
  | { readonly ok: false; readonly faults: readonly LogFault[] };

export type LogOptions = {
  /** The unit, where a person has said it: for a header without one, and against a doubt. */
  readonly unit?: TempUnit;
  /** A longer silence is remarked upon. */
  readonly apartAtMostS?: number;
};

/**
 * Reads a `time,temperature` file: times as ISO 8601 or as minutes, temperatures in the unit that
 * the header names, one column for each probe. Whatever cannot be right is said, each in one
 * sentence with its line, and nothing is guessed: a file with a fault gives no readings.
 * @example readLog('minutes,temp_F\n0,130\n1,131').ok //=> true
 */
export function readLog(text: string, options: LogOptions = {}): LogRead {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const header = columnsOf(lines[0] ?? '', options.unit);
  if (!header.ok) {
    return { ok: false, faults: [{ line: 1, kind: 'columns', sentence: header.sentence }] };
  }
  const { columns } = header;
  const rows = lines.map((line, index) => ({ line: index + 1, text: line })).slice(1);
  const { moments, faults } = readMoments(rows, columns);
  const cells = columns.temps.map((temp) => readColumn(moments, temp.column, columns));
  const doubts = columns.temps.flatMap(({ unit }, index) =>
    doubtsOf(cells[index]?.written ?? [], unit, { unitIsSure: unit === options.unit }),
  );
  const all = [...faults, ...cells.flatMap((cell) => cell.faults), ...doubts];
  const fewest = Math.min(...cells.map(({ written }) => written.length));
  if (all.length === 0 && fewest < 2) all.push(tooFew(fewest));
  if (all.length > 0) return { ok: false, faults: all.toSorted((a, b) => a.line - b.line) };
  const probes = columns.temps.map(({ unit }, index) =>
    seriesOf(cells[index]?.written ?? [], unit),
  );
  const remarks = silencesOf(moments, options.apartAtMostS ?? minutes(10));
  return { ok: true, probes, remarks };
}

type Line = { readonly line: number; readonly text: string };
type Moment = { readonly line: number; readonly cells: readonly string[]; readonly atS: number };

/** The lines whose time can be read and is later than the one before. */
function readMoments(rows: readonly Line[], { separator, time, secondsPerUnit }: LogColumns) {
  const moments: Moment[] = [];
  const faults: LogFault[] = [];
  let first: LogTime | null = null;
  for (const { line, text } of rows.filter((row) => row.text.trim() !== '')) {
    const cells = cellsOf(text, separator);
    const written = decimal(cells[time] ?? '', separator);
    const read = readTime(written, secondsPerUnit);
    const before = moments.at(-1);
    if (read === null) {
      const sentence =
        `Line ${line} says "${written}" for a time; ` +
        'a number of minutes or 2026-11-25T14:30 can be read.';
      faults.push({ line, kind: 'time', sentence });
    } else if (first !== null && first.zoned !== read.zoned) {
      const sentence = `Line ${line} writes its time in another way than the lines before.`;
      faults.push({ line, kind: 'time', sentence });
    } else if (before !== undefined && read.atS <= before.atS) {
      const how = read.atS < before.atS ? 'earlier than' : 'at the same time as';
      faults.push({ line, kind: 'order', sentence: `Line ${line} is ${how} line ${before.line}.` });
    } else {
      first ??= read;
      moments.push({ line, cells, atS: read.atS });
    }
  }
  return { moments, faults };
}

/** The numbers of one column. A probe that did not read may leave its cell empty beside others. */
function readColumn(moments: readonly Moment[], column: number, { temps, separator }: LogColumns) {
  const written: Written[] = [];
  const faults: LogFault[] = [];
  for (const { line, cells, atS } of moments) {
    const text = decimal(cells[column] ?? '', separator);
    if (text === '' && temps.length > 1) continue;
    if (/^-?\d+(\.\d+)?$/.test(text)) written.push({ line, atS, value: Number(text) });
    else {
      const sentence = `Line ${line} says "${text}" where a temperature should stand.`;
      faults.push({ line, kind: 'number', sentence });
    }
  }
  return { written, faults };
}

/** Where cells are not parted by commas, a comma in a number is its decimal point. */
const decimal = (text: string, separator: string) =>
  separator === ',' ? text : text.replace(',', '.');

function seriesOf(written: readonly Written[], unit: TempUnit): Series {
  return written.map(({ atS, value }) => ({
    atS: seconds(atS),
    tempC: unit === '°F' ? toCelsius(fahrenheit(value)) : celsius(value),
  }));
}

function silencesOf(moments: readonly Moment[], apartAtMostS: number): LogFault[] {
  return moments.flatMap(({ line, atS }, index) => {
    const before = moments[index - 1];
    if (before === undefined || atS - before.atS <= apartAtMostS) return [];
    const [silent, counted] = [atS - before.atS, apartAtMostS].map(
      (s) => `${Math.round(s / 60)} min`,
    );
    const sentence =
      `Between line ${before.line} and line ${line} nothing was read for ${silent}; ` +
      `${counted} of it count, at the lower reading.`;
    return [{ line, kind: 'silence' as const, sentence }];
  });
}

const tooFew = (count: number): LogFault => ({
  line: 0,
  kind: 'too-few',
  sentence: `A probe has ${count === 1 ? 'one reading' : 'no readings'}; at least two are needed.`,
});
