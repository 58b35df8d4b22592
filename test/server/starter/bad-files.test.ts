import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makePlan } from '../../../server/adopt.ts';
import { faultLine } from '../../../server/folder/index.ts';
import { starterFiles } from '../../../server/starter/index.ts';
import { whyNotPlanned } from '../../../server/why-not-planned.ts';
import { instant, parseQuantity, quantityPattern } from '../../../shared/kernel/index.ts';
import { respelt } from '../../../shared/kernel/respelt.ts';
import { readPlanFiles } from '../../../shared/plan/index.ts';
import type { Language } from '../../../shared/words/index.ts';

const EVE = instant(Date.parse('2026-11-25T21:00:00Z'));
const plain = () => structuredClone(starterFiles(EVE, 'America/Chicago', 'three dishes'));

/** Puts a value at a place of the three files, such as `kitchen.crew.0.id`. */
function put(files: object, place: string, value: unknown) {
  const keys = place.split('.');
  const last = keys.pop() ?? '';
  const holder = keys.reduce<Record<string, unknown>>(
    (at, key) => at[key] as Record<string, unknown>,
    files as Record<string, unknown>,
  );
  if (value === undefined) delete holder[last];
  else holder[last] = value;
}

/** What a person is told of the small kitchen with these places changed. */
function told(changes: Readonly<Record<string, unknown>>, language: Language = 'en'): string[] {
  const files = plain();
  for (const [place, value] of Object.entries(changes)) put(files, place, value);
  const read = readPlanFiles(files);
  if (!read.ok) return read.problems.map(faultLine);
  const made = makePlan(read.value, 1);
  return made.ok ? [] : whyNotPlanned(made, read.value.kitchen, language);
}

const RIBS = 'cookPlan.services.0.dishes.0';
const RACK = 'kitchen.smokers.0.racks.0';
const ODD_SHIFT = [{ on: ['thu'], from: '22:00', to: '06:00' }];

describe('what a tired person types', () => {
  it.each([
    ['kitchen.zone', 'Chicago', 'zone: found "Chicago"; allowed: a time zone', 'America/Chicago'],
    ['kitchen.zone', 'EST', 'zone: found "EST"; allowed: a time zone', null],
    ['cookPlan.services.0.opens', '5 pm', 'opens: found "5 pm"; allowed: a wall-clock', '17:00'],
    ['cookPlan.services.0.closes', '8:30pm', 'closes: found "8:30pm"', '20:30'],
    ['cookPlan.services.0.opens', '9:00', 'opens: found "9:00"', '09:00'],
    ['catalogue.dishes.0.portion', '12 lbs', 'portion: found "12 lbs"; allowed: a w', '12 lb'],
    ['catalogue.dishes.0.portion', '0,5 kg', 'portion: found "0,5 kg"', '0.5 kg'],
    ['catalogue.dishes.0.portion', '12 Ounces', 'portion: found "12 Ounces"', '12 oz'],
    [
      'catalogue.dishes.0.portion',
      12,
      'portion: found 12; allowed: a weight such as "12 lb"',
      null,
    ],
    ['catalogue.dishes.0.portion', '0 oz', 'portion: found nought; allowed: more than', null],
    ['catalogue.dishes.0.route', undefined, 'route: found nothing; allowed: one of: ribs-s', null],
    ['catalogue.dishes.0.route', 'slaww', 'route: found "slaww"; allowed: one of: ribs', 'slaw'],
    ['catalogue.cuts.0.yields.trim.high', '680 %', 'found "680 %"; allowed: "100 %" or less', null],
    ['catalogue.cuts.0.yields.carve.low', '0 %', 'found nought; allowed: more than nought', null],
    ['kitchen.smokers.0.hottest', '325F', 'hottest: found "325F"; allowed: a temp', '325 °F'],
    ['kitchen.smokers.0.change', '3 F/min', 'change: found "3 F/min"', '3 °F/min'],
    ['kitchen.smokers.0.preheat', '1 hr 15 mins', 'preheat: found "1 hr 15 mins"', '1 h 15 min'],
    [`${RACK}.length`, '42"', 'racks[0].length: found "42\\""', '42 in'],
    [`${RACK}.depth`, '0 in', 'racks[0].depth: found nought; allowed: more than', null],
    ['kitchen.smokers.0.name', 'Big one', 'name: found "Big one"; allowed: { "en": "…" }', null],
    ['kitchen.crew.0.id', 'José', 'crew[0].id: found "José"', 'jose'],
    ['kitchen.crew.1.id', 'ada', 'crew[1].id: found "ada"; allowed: a name that is given', null],
    ['kitchen.crew.0.trained.0', 'kinfe', 'found "kinfe"; allowed: one of: knife', 'knife'],
    ['kitchen.crew.0.shifts.0.on', ['Sunday'], 'found "Sunday"; allowed: a day such as', null],
    ['kitchen.crew.0.shifts', ODD_SHIFT, 'to: found "06:00"; allowed: a time after 22:00', null],
    [`${RIBS}.dish`, 'rib', 'dish: found "rib"; allowed: one of: ribs, chicken, slaw', 'ribs'],
    [`${RIBS}.sales.portions`, 2.5, 'portions: found 2.5; allowed: a whole number', null],
    [`${RIBS}.sales.shape`, 'midle', 'shape: found "midle"; allowed: one of', 'middle'],
    [`${RIBS}.slots`, ['c/1'], 'slots[0]: found "c/1"; allowed: one of: a/1, a/2', 'a/1'],
    ['cookPlan.services.0.dishes.1.dish', 'ribs', 'allowed: each dish once in a service', null],
    ['cookPlan.day', '29.11.2026', 'day: found "29.11.2026"; allowed: a day such as', null],
  ])('%s: %j is one sentence, with its place and the nearest that can', (...row) => {
    const [place, value, sentence, nearest] = row;
    const lines = told({ [place]: value });
    expect(lines).toEqual([expect.stringContaining(sentence)]);
    if (nearest !== null) expect(lines[0]).toContain(` Maybe "${nearest}".`);
    else expect(lines[0]).not.toContain('Maybe');
  });

  it('is said all at once, whichever files it stands in', () => {
    const lines = told({
      'kitchen.zone': 'Chicago',
      'catalogue.dishes.0.portion': '12 lbs',
      [`${RIBS}.sales.portions`]: 0,
    });
    expect(lines.map((line) => line.split(':')[0])).toEqual(['catalogue', 'kitchen', 'cookPlan']);
  });
});

describe('what cannot be done', () => {
  it.each([
    [
      { 'cookPlan.services.0.opens': '25:00' },
      'Supper opens at 1:00 am +1 and closes at 8:00 pm, which is before it: a time after midnight',
    ],
    [
      { 'catalogue.dishes.0.portion': '50 lb' },
      /^Supper, Spare ribs: a portion is 50 lb, and one piece gives .*: make the portion that/,
    ],
    [
      { 'kitchen.crew.2.trained': ['mix'], 'cookPlan.services.0.dishes': slawAlone() },
      'needs 1 with the skill “Carving”; the crew has 0: 1 more must be on it.',
    ],
    [
      { 'kitchen.stations.1.benches': ['mix'] },
      'Supper, Slaw, “Shred the cabbage” needs a bench for “Stove and cold bench”; no station has',
    ],
    [
      { 'kitchen.crew.2.shifts.0.on': ['sat'], 'cookPlan.services.0.dishes': slawAlone() },
      'Supper, Slaw, “Set out slaw”: nobody who can do it works on that day or the day before.',
    ],
  ])('is said with what would do: %#', (changes, sentence) => {
    expect(told(changes)).toEqual([
      typeof sentence === 'string'
        ? expect.stringContaining(sentence)
        : expect.stringMatching(sentence),
    ]);
  });

  it('is one sentence where nobody works at all, in each language', () => {
    const shifts = [0, 1, 2].map((n) => [`kitchen.crew.${n}.shifts.0.on`, ['mon']]);
    expect(told(Object.fromEntries(shifts))).toEqual([
      expect.stringContaining('Nobody of the crew works on Wed, Nov 25 or Thu, Nov 26'),
    ]);
    expect(told(Object.fromEntries(shifts), 'es')).toEqual([
      expect.stringContaining('Nadie del personal trabaja el mié, 25 nov ni el jue, 26 nov'),
    ]);
  });

  it('names every smoker that a cut does not fit, and the nearest', () => {
    const racks = [{ length: '8 in', depth: '8 in', holds: '40 lb' }];
    const lines = told({
      'kitchen.smokers.0.racks': racks,
      'kitchen.smokers.1.racks': racks,
      'cookPlan.services.0.dishes': [sold('ribs')],
    });
    expect(lines).toEqual([
      expect.stringMatching(
        /no smoker can take it at 275 °F: Smoker A has 8 in .*; Smoker B has 8 in .*; nearest: pie/,
      ),
    ]);
  });
});

describe('a likely spelling', () => {
  it('keeps the amount, whatever way a unit is written by hand', () => {
    const ways = [
      ['weight in kilograms', ['lb', 'lbs', 'LB', 'pounds', 'pound', ' lbs.'], 'lb'],
      ['duration in seconds', ['min', 'mins', 'minutes', ' Minutes'], 'min'],
      ['temperature in degrees Celsius', ['F', '°f', ' deg F', 'º F', ' degrees F'], '°F'],
      ['length in metres', ['"', 'inches', ' inch', '”', ' in.'], 'in'],
      ['share of one', ['%', ' percent', ' per cent'], '%'],
    ] as const;
    const written = fc
      .constantFrom(...ways)
      .chain(([kind, spellings, unit]) =>
        fc.tuple(
          fc.constant(kind),
          fc.constant(unit),
          fc.constantFrom<string>(...spellings),
          fc.integer({ min: 1, max: 900 }),
          fc.constantFrom('', '.5', ',5'),
        ),
      );
    fc.assert(
      fc.property(written, ([kind, unit, spelling, whole, part]) => {
        const word = `${whole}${part}${spelling}`;
        const right = `${whole}${part.replace(',', '.')} ${unit}`;
        const offered = [word, ...respelt(word)].find((each) => quantityPattern(kind).test(each));
        expect(parseQuantity(kind, offered ?? '')).toBe(parseQuantity(kind, right));
      }),
    );
  });
});

function sold(dish: string) {
  return { dish, sales: { by: 'shape', portions: 10, shape: 'even' } };
}

function slawAlone() {
  return [sold('slaw')];
}
