import { describe, expect, it } from 'vitest';
import { demoLog, demoReadings, SENDS_EVERY_S, sentUntil } from '../../../server/demo/index.ts';
import { lookAtReading } from '../../../shared/day/index.ts';
import {
  after,
  hours,
  type Instant,
  instant,
  minutes,
  must,
} from '../../../shared/kernel/index.ts';
import { noon, plan, Telling, task } from '../../shared/day/demo.ts';

const telling = new Telling();
for (const { at, intent, personId } of demoLog(plan, { now: noon, seed: 1 })) {
  telling.ask(intent, at, personId);
}
const { state } = telling;
const later = Array.from({ length: 18 }, (_, n) => after(noon, minutes(10 * (n + 1))));
const moments = [...sentUntil(state, noon), ...later];

const coresOf = (batch: string, at: readonly Instant[]) => {
  const stay = task(batch, 'stay');
  return at.flatMap((each) =>
    demoReadings(state, each).flatMap(({ where, tempC }) =>
      where.kind === 'core' && where.stay === stay ? [{ at: each, tempC }] : [],
    ),
  );
};

describe('the thermometers of the demo', () => {
  it('send nothing that the day would not believe', () => {
    const told = new Telling();
    for (const { at, intent, personId } of demoLog(plan, { now: noon, seed: 1 })) {
      told.ask(intent, at, personId);
    }
    for (const at of moments.filter((_, i) => i % 4 === 0)) {
      for (const { where, tempC, at: said } of demoReadings(state, at)) {
        expect(instant(Date.parse(must(said, 'a time')))).toBe(at);
        if (where.kind === 'core') {
          expect(lookAtReading(told.state, { where, tempC, at }, at)).toBe('sound');
        }
        told.keep({ kind: 'temperatureRead', where, tempC }, at, null);
      }
    }
    expect(told.state.readings.length).toBeGreaterThan(40);
  });

  it('show the same whenever they are asked, and nothing of what is off', () => {
    expect(demoReadings(state, noon)).toEqual(demoReadings(state, noon));
    expect(coresOf('lunch-pulled-shoulder-1', [noon])).toEqual([]);
  });

  it('show a shoulder that stands still for an hour when it should come to its wrap', () => {
    const soon = later.filter((at) => at <= after(noon, hours(1)));
    const temps = coresOf('dinner-pulled-shoulder-2', soon).map(({ tempC }) => tempC);
    expect(temps.length).toBe(hours(1) / SENDS_EVERY_S);
    expect(Math.max(...temps) - Math.min(...temps)).toBeLessThan(2.5);
    expect(Math.max(...temps)).toBeLessThan(71);
  });

  it('show a smoker that runs cold before dinner, and comes up again', () => {
    const airC = (at: Instant) =>
      demoReadings(state, at).find(({ where }) => where.kind === 'air' && where.smoker === 'c')
        ?.tempC;
    const dinner = must(
      plan.built.services.find(({ id }) => id === 'dinner'),
      'dinner',
    ).opensAt;
    const [before, cold, again] = [-5, -3.5, -2.5].map((h) => airC(after(dinner, hours(h))));
    expect(must(before, 'air') - must(cold, 'air')).toBeGreaterThan(20);
    expect(must(again, 'air') - must(cold, 'air')).toBeGreaterThan(20);
  });
});
