import { daysBetween, isLocalDay } from '../kernel/index.ts';

const ISO = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}):(\d{2})(?::(\d{2}(?:\.\d+)?))?(Z|[+-]\d{2}:?\d{2})?$/i;

/** A time as it was written. `zoned` says that it names its offset, so that it is an instant. */
export type LogTime = { readonly atS: number; readonly zoned: boolean | null };

/**
 * Reads an ISO 8601 date and time, or a bare number of `secondsPerUnit`. Null where it is neither.
 * @example readTime('1970-01-01T00:01Z', 60)?.atS //=> 60
 */
export function readTime(text: string, secondsPerUnit: number): LogTime | null {
  if (/^-?\d+(\.\d+)?$/.test(text)) return { atS: Number(text) * secondsPerUnit, zoned: null };
  const [, day = '', hour, minute, second = '0', offset] = ISO.exec(text) ?? [];
  if (!isLocalDay(day) || Number(hour) > 24 || Number(minute) > 59 || Number(second) >= 61) {
    return null;
  }
  const ofDayS = Number(hour) * 3600 + Number(minute) * 60 + Number(second);
  const atS = daysBetween('1970-01-01', day) * 86_400 + ofDayS;
  return { atS: atS - offsetS(offset), zoned: offset !== undefined };
}

function offsetS(offset = 'Z'): number {
  if (offset.toUpperCase() === 'Z') return 0;
  const [sign, hours, minutes] = [offset.slice(0, 1), offset.slice(1, 3), offset.slice(-2)];
  const size = Number(hours) * 3600 + Number(minutes) * 60;
  return sign === '-' ? -size : size;
}
