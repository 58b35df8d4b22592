import type { TempUnit } from './printed.ts';

/** How the lines of a log are to be read. */
export type LogColumns = {
  readonly separator: ',' | ';' | '\t';
  readonly time: number;
  /** Seconds in one of its unit, where times are bare numbers. */
  readonly secondsPerUnit: number;
  readonly temps: readonly TempColumn[];
};

export type TempColumn = {
  readonly column: number;
  readonly name: string;
  readonly unit: TempUnit;
};

export type ColumnsRead =
  | { readonly ok: true; readonly columns: LogColumns }
  | { readonly ok: false; readonly sentence: string };

const TIME = /time|date|elapsed|\b(minutes?|min|hours?|seconds?)\b/;
const TEMP = /temp|core|probe|cent(re|er)|meat|internal|[°º]|fahrenheit|celsius|\b[cf]$/;
/** Whatever is measured beside the piece itself. */
const BESIDE = /\b(air|pit|smoker|oven|ambient|cabinet|grate|set)\b/;

/**
 * Finds time and temperatures in the first line of a log. The unit is said there, or by `unitSaid`;
 * it is never guessed.
 * @example columnsOf('time,temperature_F').ok //=> true
 */
export function columnsOf(header: string, unitSaid?: TempUnit): ColumnsRead {
  const separator = separatorOf(header);
  const names = cellsOf(header, separator);
  const words = names.map((name) => name.toLowerCase().replaceAll('_', ' '));
  const time = words.findIndex((name) => TIME.test(name));
  const found = words.flatMap((name, column) =>
    column !== time && TEMP.test(name) && !BESIDE.test(name) ? [column] : [],
  );
  if (time === -1 || found.length === 0) return { ok: false, sentence: noColumns(names) };
  const temps = found.map((column) => {
    const name = names[column] ?? '';
    return { column, name, unit: unitOf(name) ?? unitSaid };
  });
  const unsaid = temps.find(({ unit }) => unit === undefined);
  if (unsaid !== undefined) return { ok: false, sentence: noUnit(unsaid.name) };
  const said = temps.flatMap(({ unit, ...rest }) =>
    unit === undefined ? [] : [{ ...rest, unit }],
  );
  const secondsPerUnit = timeUnitOf(words[time] ?? '');
  return { ok: true, columns: { separator, time, secondsPerUnit, temps: said } };
}

/** The cells of a line; quotes around a cell fall away. */
export function cellsOf(line: string, separator: string): string[] {
  return line.split(separator).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, '$1')
      .trim(),
  );
}

function separatorOf(header: string): LogColumns['separator'] {
  if (header.includes('\t')) return '\t';
  return header.includes(';') ? ';' : ',';
}

/**
 * The unit that a column's name ends in: `temperature_F`, `core (°C)`, `tempF`, `degrees Celsius`.
 */
function unitOf(name: string): TempUnit | undefined {
  if (/fahrenheit/i.test(name)) return '°F';
  if (/celsius|centigrade/i.test(name)) return '°C';
  const bare = name.replace(/[)\]\s.]+$/, '');
  const letter = /(?:^|[°º\s_([,-]|deg|temp|temperature|core|probe\d*)([CF])$/i.exec(bare)?.[1];
  if (letter === undefined) return undefined;
  return letter.toUpperCase() === 'F' ? '°F' : '°C';
}

function timeUnitOf(name: string): number {
  if (/\b(hours?|hrs?|h)\b/.test(name)) return 3600;
  return /\b(seconds?|secs?|s)\b/.test(name) ? 1 : 60;
}

const noColumns = (names: readonly string[]) =>
  `The first line says "${names.join(', ')}"; it must name a time and a temperature, ` +
  'as in "time,temperature_F".';

const noUnit = (name: string) =>
  `The column "${name}" does not say whether it is in °C or °F; ` +
  `name it "${name}_F" or "${name}_C".`;
