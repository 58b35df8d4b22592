import { Bug } from './assert.ts';

/**
 * The one way to write a value as JSON: keys in code-unit order, no white space, absent fields left
 * out. What is hashed or compared is written so.
 * @example canonical({ b: 1, a: [true, undefined] }) //=> '{"a":[true,null],"b":1}'
 */
export function canonical(value: unknown): string {
  if (value === undefined) return 'null';
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Bug(`not JSON: ${value}`);
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  const fields = Object.entries(value)
    .filter(([, field]) => field !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, field]) => `${JSON.stringify(key)}:${canonical(field)}`);
  return `{${fields.join(',')}}`;
}
