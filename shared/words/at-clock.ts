/**
 * A time with its article as Spanish has it: one o'clock alone is singular.
 * One with its day has that of the day: "el lun 11:05".
 * @example las('1:05 pm') //=> 'la 1:05 pm'
 */
export function las(time: string): string {
  if (/^\D/.test(time)) return `el ${time}`;
  return `${/^0?1:/.test(time) ? 'la' : 'las'} ${time}`;
}
