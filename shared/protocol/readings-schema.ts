import { z } from 'zod';
import type { ReadingPlace } from '../day/index.ts';
import type { Celsius, SmokerId, TaskId } from '../kernel/index.ts';
import { celsius, fahrenheit, toCelsius } from '../kernel/index.ts';
import { name } from './fields.ts';

/** A reading as a thermometer sends it; no time: now. */
export type SentReading = {
  readonly where: ReadingPlace;
  readonly tempC: Celsius;
  /** ISO 8601, with its offset. */
  readonly at: string | null;
};

/** A day of a probe in every slot, each minute. */
const MOST = 5_000;

/**
 * Readings from elsewhere: one, some, or some under `readings`. Each names a `smoker` for its air
 * or a `stay` for a core, and a temperature as `tempC` or `tempF`.
 */
export function readingsSchema(): z.ZodType<readonly SentReading[]> {
  const one = z
    .strictObject({
      smoker: name<SmokerId>().optional(),
      stay: name<TaskId>().optional(),
      tempC: z.number().optional(),
      tempF: z.number().optional(),
      at: z.iso
        .datetime({ offset: true, error: 'an instant such as 2026-11-25T14:05:00Z' })
        .optional(),
    })
    .refine(({ smoker, stay }) => (smoker === undefined) !== (stay === undefined), {
      error: 'either "smoker" or "stay"',
    })
    .refine(({ tempC, tempF }) => (tempC === undefined) !== (tempF === undefined), {
      error: 'either "tempC" or "tempF"',
    })
    .transform(({ smoker, stay, tempC, tempF, at }): SentReading => {
      const core = { kind: 'core', stay: stay as TaskId } as const;
      return {
        where: smoker === undefined ? core : { kind: 'air', smoker },
        tempC: tempC === undefined ? toCelsius(fahrenheit(tempF ?? Number.NaN)) : celsius(tempC),
        at: at ?? null,
      };
    });
  const several = z.array(one).min(1).max(MOST);
  return z.preprocess(listed, several);
}

/** One is a list of one. */
function listed(body: unknown): unknown {
  if (typeof body !== 'object' || body === null || Array.isArray(body)) return body;
  return 'readings' in body ? body.readings : [body];
}

const COLUMNS = ['at', 'smoker', 'stay', 'tempC', 'tempF'];

export type CsvRead =
  | { readonly ok: true; readonly rows: readonly Record<string, unknown>[] }
  | { readonly ok: false; readonly what: string };

/** The same as a table: a line of names, then a line a reading; an empty cell says nothing. */
export function readingsOfCsv(text: string): CsvRead {
  const [head, ...lines] = text
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .filter((line) => line.trim() !== '')
    .map((line) => line.split(',').map((cell) => cell.trim().replace(/^"(.*)"$/, '$1')));
  const names = head ?? [];
  const unknown = names.find((column) => !COLUMNS.includes(column));
  if (names.length === 0 || unknown !== undefined) {
    const found = unknown === undefined ? 'nothing' : `"${unknown}"`;
    return { ok: false, what: `its first line has ${found}; allowed: ${COLUMNS.join(', ')}` };
  }
  const long = lines.findIndex((cells) => cells.length > names.length);
  if (long >= 0) return { ok: false, what: `line ${long + 2} has more cells than the first` };
  return { ok: true, rows: lines.map((cells) => rowOf(names, cells)) };
}

function rowOf(names: readonly string[], cells: readonly string[]): Record<string, unknown> {
  const said = names.flatMap((column, i) => {
    const cell = cells[i] ?? '';
    if (cell === '') return [];
    return [[column, column.startsWith('temp') ? Number(cell) : cell] as const];
  });
  return Object.fromEntries(said);
}
