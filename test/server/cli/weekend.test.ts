import { afterAll, beforeAll, expect, it } from 'vitest';
import { addDays, type LocalDay } from '../../../shared/kernel/index.ts';
import { kitchenFolder, today, typed } from './kitchen-at-work.ts';

/**
 * The invented kitchen with everybody in on Friday, Saturday and Sunday and the nights before, each
 * day with the same to serve; in the last of these nights the clocks of its zone go forward.
 */
const LATER = [2, 3, 4];
const days = LATER.map((later) => addDays(today as LocalDay, later));
let folder: ReturnType<typeof kitchenFolder>;
beforeAll(() => {
  folder = kitchenFolder();
  const { kitchen, cookPlan } = folder.files;
  const crew = kitchen.crew.map((person) => ({
    ...person,
    shifts: person.shifts.map((shift) => ({
      ...shift,
      on: shift.on.flatMap((day) => LATER.map((later) => addDays(day, later))),
    })),
  }));
  folder.write('kitchen.json', { ...kitchen, crew });
  for (const day of days) folder.write(`plans/${day}.json`, { ...cookPlan, day });
});
afterAll(() => folder.remove());

it.each(days)(
  'the plan of %s, of a weekend, says how far from the best it may be at the most',
  async (day) => {
    const { exit, said } = await typed(folder.path, 'plan', '.', '--day', day, '--json');
    const { quality, bettering, day: planned } = JSON.parse(said);
    expect({ exit, planned, bettering }).toEqual({ exit: 0, planned: day, bettering: null });
    const { aheadS, aheadLeastS, atMostBetterMin } = quality;
    expect(aheadLeastS).toBeGreaterThan(0);
    expect(aheadLeastS).toBeLessThanOrEqual(aheadS);
    // A day as busy as this is planned within a few parts in a hundred of what none can beat.
    expect(aheadS / aheadLeastS).toBeLessThan(1.05);
    expect(atMostBetterMin).toBeLessThanOrEqual(10);
  },
);

it('and says so in the language of the reader', async () => {
  const { said } = await typed(folder.path, 'plan', '.', '--day', `${days[0]}`, '--language', 'es');
  expect(said).toMatch(/deja la comida en espera más de \d+ min menos\.|probado al minuto/);
});
