/**
 * A time with its article as Spanish has it: one o'clock alone is singular.
 * @example las('1:05 pm') //=> 'la 1:05 pm'
 */
export const las = (time: string): string => `${/^0?1:/.test(time) ? 'la' : 'las'} ${time}`;
