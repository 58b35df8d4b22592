/** How units are written by hand, and how the files write them. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/°?\s*(?:degrees|deg|º|˚)?\s*(f|c)(?:ahrenheit|elsius)?(?=\/|$)/, '°$1'],
  [/(?:pounds?|lbs?\.?|#)$/, 'lb'],
  [/(?:ounces?|oz\.?)$/, 'oz'],
  [/(?:kilograms?|kilos?|kgs?\.?)$/, 'kg'],
  [/(?:grams?|gr)$/, 'g'],
  [/(?:inch(?:es)?|in\.|"|”|″)$/, 'in'],
  [/(?:feet|foot|'|’|′)$/, 'ft'],
  [/(?:centimet(?:er|re)s?)$/, 'cm'],
  [/(?:minutes?|mins?\.?)$/, 'min'],
  [/(?:hours?|hrs?\.?)$/, 'h'],
  [/(?:seconds?|secs?\.?)$/, 's'],
  [/(?:percent|per cent|pct)$/, '%'],
];

/**
 * How a word would be spelt if it is meant as an amount with its unit, as a time on a clock of 24
 * hours, or as a short name: what a person in a hurry writes, as the files have it.
 * @example respelt('12 lbs') //=> ['12 lb', …]
 * @example respelt('5 pm') //=> [… '17:00', …]
 */
export function respelt(word: string): string[] {
  return [amount(word), clock(word), name(word)].filter((each) => each !== word);
}

function amount(word: string): string {
  const parts = word.toLowerCase().matchAll(/(-?\d+(?:[.,]\d+)?)\s*([^\d-]*)/g);
  return [...parts].map(([, value = '', unit = '']) => part(value, unit.trim())).join(' ');
}

function part(value: string, unit: string): string {
  const [written, known] = UNITS.find(([pattern]) => pattern.test(unit)) ?? [];
  const spelt = written && known ? unit.replace(written, known) : unit;
  const degrees = spelt.replace(/°([fc])/, (_all, scale: string) => `°${scale.toUpperCase()}`);
  return `${value.replace(',', '.')} ${degrees}`;
}

function clock(word: string): string {
  const written = /^(\d{1,2})(?:[:.h](\d{2}))?\s*([ap])?\.?m?\.?$/i.exec(word.trim());
  if (!written) return word;
  const [, hour = '', minute = '00', half] = written;
  const isAfternoon = half?.toLowerCase() === 'p';
  const hours = half === undefined ? Number(hour) : (Number(hour) % 12) + (isAfternoon ? 12 : 0);
  return `${String(hours).padStart(2, '0')}:${minute}`;
}

function name(word: string): string {
  const plain = word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
}
