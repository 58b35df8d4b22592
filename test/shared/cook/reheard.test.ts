import { describe, expect, it } from 'vitest';
import {
  type Forecast,
  type Foreseeing,
  forecast,
  foreseeing,
  type Kept,
  type Message,
  type Smoker,
} from '../../../shared/cook/index.ts';
import { hours, must } from '../../../shared/kernel/index.ts';
import { at, hourly, shoulder, smoker } from './shoulder.ts';

const readings = hourly(20, 45, 57, 63);
const hearing = (...heard: Message[]): Smoker => ({ ...smoker, heard });

/** That the film of air is so many of its standard deviations off, as surely as so many priors. */
const film = (z: number, sureness: number): Message => ({
  precision: [0, 1, 2, 3].map((i) => [0, 1, 2, 3].map((j) => (i + j === 0 ? sureness : 0))),
  pull: [z * sureness, 0, 0, 0],
});

function kept(found: Foreseeing): Kept {
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.kept;
}

const options = at(4);
const first = kept(foreseeing(shoulder, smoker, readings, options));
const again = (of: Smoker, change: object = {}) =>
  kept(foreseeing(shoulder, of, readings, { ...options, ...change, before: first }));
const p50 = ({ targets }: Forecast) => must(targets.at(-1)?.p50S, 'a middle');
const wide = ({ targets }: Forecast) => {
  const last = must(targets.at(-1), 'a target');
  return must(last.p90S, 'p90') - must(last.p10S, 'p10');
};

describe('a forecast that hears more of its smoker', () => {
  it('is at first the same as any other', () => {
    const plain = forecast(shoulder, smoker, readings, options);
    expect({ ok: true, forecast: first.forecast }).toEqual(plain);
  });

  it('stays as it is where nothing more was heard', () => {
    expect(again(smoker).forecast).toEqual(first.forecast);
  });

  it('comes sooner in air that takes heat to it better, and later in air that does not', () => {
    const brisk = again(hearing(film(0.7, 1))).forecast;
    const still = again(hearing(film(-0.7, 1))).forecast;
    expect(p50(brisk)).toBeLessThan(p50(first.forecast));
    expect(p50(still)).toBeGreaterThan(p50(first.forecast));
  });

  it('runs no cook anew for it: its members and what it says itself are those from before', () => {
    const found = again(hearing(film(0.7, 1)));
    expect(found.weighed).toBe(first.weighed);
    expect(found.forecast.saysOfSmokers).toEqual(first.forecast.saysOfSmokers);
  });

  it('comes near what the members would say had they been made anew', () => {
    const heard = hearing(film(0.5, 1));
    const made = forecast(shoulder, heard, readings, options);
    if (!made.ok) throw new Error('a forecast');
    const left = p50(made.forecast) - hours(4);
    expect(Math.abs(p50(again(heard).forecast) - p50(made.forecast))).toBeLessThan(0.12 * left);
    expect(wide(again(heard).forecast) / wide(made.forecast)).toBeGreaterThan(0.7);
    expect(wide(again(heard).forecast) / wide(made.forecast)).toBeLessThan(1.4);
  });

  it('is made anew where too few of its members still fit, or it is an hour old', () => {
    expect(again(hearing(film(3, 20))).weighed).not.toBe(first.weighed);
    expect(again(smoker, { nowS: hours(5.5) }).weighed).not.toBe(first.weighed);
  });
});
