import { describe, expect, it } from 'vitest';
import { keptFor } from '../../../server/plan-desk/kept-for.ts';
import {
  type CheckOn,
  carryOf,
  dayFrom,
  fold,
  type Intent,
  isStillCooling,
  keptBy,
  openChecks,
} from '../../../shared/day/index.ts';
import type { BatchId, DayId, Instant, PersonId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, minutes, must } from '../../../shared/kernel/index.ts';
import { evidenceOf } from '../../../shared/record/index.ts';
import { type Say, sayKept } from '../../../shared/words/index.ts';
import { noon, plan, type Telling } from './demo.ts';
import { atNoon } from './demo-noon.ts';

const ribs = 'lunch-ribs-1' as BatchId;
const by = must(plan.kitchen.crew[0], 'somebody').id as PersonId;
const at = (minutesOn: number): Instant => after(noon, minutes(minutesOn));
const days = ['2026-03-05', '2026-03-06'];
const next = (n: number) => ({ ...plan, built: { ...plan.built, day: must(days[n], 'a day') } });
/** As the next day calls it. */
const left = `${plan.built.day}/${ribs}` as BatchId;
const cooling = (batch: BatchId, stage: number): CheckOn => ({ kind: 'cooling', batch, stage });
const read = (batch: BatchId, stage: number, tempC: number): Intent => ({
  ...{ kind: 'check', on: cooling(batch, stage), tempC: celsius(tempC), thermometer: null },
});

const coolingOpen = ({ state }: Telling) =>
  openChecks(state).filter(({ on }) => on.kind === 'cooling' || on.kind === 'reheat');

/** Two kilograms of ribs are kept at noon, and the next day begins an hour later. */
function overNight(before: (day: Telling) => void = () => {}): Telling {
  const day = atNoon();
  expect(day.ask({ kind: 'carryOver', batch: ribs, weightKg: kilograms(2) }, at(0), by).ok).toBe(
    true,
  );
  before(day);
  day.nextDay(next(0), at(60));
  return day;
}
const say: Say = {
  ...{ language: 'en', zone: 'UTC', clock: '24 h', temperature: '°C', weight: 'kg' },
};
const keptFood = (day: Telling) => must(keptBy(day.state)[0], 'what was kept');

describe('what was still cooling when its day ended', () => {
  it('is looked at on the next day, in the same time and by its name and day', () => {
    const day = overNight();
    // 135 to 70 °F within 2 h, to 41 °F within 6 h in all: 3-501.14(A), read in Wisconsin's rules.
    expect(coolingOpen(day)).toMatchObject([{ on: cooling(left, 1), lateAt: at(120) }]);
    day.ask(read(left, 1, 20), at(110), by);
    expect(coolingOpen(day)).toMatchObject([{ on: cooling(left, 2), lateAt: at(360) }]);
    const [row] = evidenceOf(day.state)?.checks ?? [];
    expect(row).toMatchObject({
      check: 'cooling',
      what: { en: expect.stringMatching(/2026-03-04$/) },
    });
  });

  it('may not be used before its last stage was kept', () => {
    const day = overNight();
    expect(isStillCooling(day.state, keptFood(day))).toBe(true);
    day.ask(read(left, 1, 20), at(110), by);
    expect(isStillCooling(day.state, keptFood(day))).toBe(true);
    day.ask(read(left, 2, 4), at(300), by);
    expect(coolingOpen(day)).toEqual([]);
    expect(isStillCooling(day.state, keptFood(day))).toBe(false);
  });

  it('is said so to whoever plans with it', () => {
    const day = overNight();
    const said = () => sayKept(keptFor(must(days[0], 'a day'), day.state, plan), say)[0];
    expect(said()).toContain('It still cools: not before its check is kept.');
    day.ask(read(left, 1, 20), at(110), by);
    day.ask(read(left, 2, 4), at(300), by);
    expect(said()).not.toContain('It still cools');
  });

  it('has what was read of it before the day changed', () => {
    const day = overNight((before) => before.ask(read(ribs, 1, 20), at(50), by));
    expect(coolingOpen(day)).toMatchObject([{ on: cooling(left, 2), lateAt: at(360) }]);
  });

  it('stays barred where it was too slow, till it is thrown out, and then is kept no more', () => {
    const day = overNight();
    day.ask(read(left, 1, 20), at(110), by);
    // 45 °F after six hours and ten minutes.
    day.ask(read(left, 2, 7.2), at(370), by);
    expect(coolingOpen(day)).toMatchObject([{ failed: { tempC: 7.2 }, allowed: ['discard'] }]);
    expect(isStillCooling(day.state, keptFood(day))).toBe(true);
    day.ask({ kind: 'correct', on: cooling(left, 2), action: 'discard' }, at(380), by);
    expect(coolingOpen(day)).toEqual([]);
    expect(keptBy(day.state)).toEqual([]);
  });

  it('goes on into the day after, and ends with it once it is cold', () => {
    const day = overNight();
    day.nextDay(next(1), at(90));
    expect(coolingOpen(day)).toMatchObject([{ on: cooling(left, 1), lateAt: at(120) }]);
    day.ask(read(left, 1, 20), at(110), by);
    day.ask(read(left, 2, 4), at(300), by);
    day.nextDay({ ...plan, built: { ...plan.built, day: '2026-03-07' } }, at(400));
    expect(day.state.leftovers).toEqual([]);
  });

  it('is the same where the hub is opened from what the day left', () => {
    const day = atNoon();
    day.ask({ kind: 'carryOver', batch: ribs, weightKg: kilograms(2) }, at(0), by);
    day.ask(read(ribs, 1, 40), at(30), by);
    const carry = JSON.parse(JSON.stringify(carryOf(day.state)));
    const event = day.nextDay(next(0), at(60));
    expect(fold(dayFrom(carry), event).leftovers).toEqual(day.state.leftovers);
    expect(day.state.leftovers).toMatchObject([{ batch: left, day: plan.built.day as DayId }]);
  });

  it('is nothing where it was cold already, or thrown out', () => {
    const cold = overNight((day) => {
      day.ask(read(ribs, 1, 20), at(30), by);
      day.ask(read(ribs, 2, 4), at(50), by);
    });
    expect(cold.state.leftovers).toEqual([]);
    const gone = overNight((day) => {
      day.ask(read(ribs, 1, 40), at(130), by);
      day.ask({ kind: 'correct', on: cooling(ribs, 1), action: 'discard' }, at(131), by);
    });
    expect(gone.state.leftovers).toEqual([]);
    expect(keptBy(gone.state)).toEqual([]);
  });
});
