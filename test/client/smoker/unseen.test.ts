// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { SmokerCutaway } from '../../../client/parts/smoker-cutaway.ts';
import { type DayState, openLive } from '../../../shared/day/index.ts';
import {
  after,
  celsius,
  type Instant,
  instant,
  minutes,
  must,
} from '../../../shared/kernel/index.ts';
import {
  pitRule,
  type SmokerDrawing,
  type SmokerView,
  viewOf,
} from '../../../shared/view/index.ts';
import { noon, plan, Telling } from '../../shared/day/demo.ts';
import { atNoon } from '../../shared/day/demo-noon.ts';
import { drawn, saidOn } from '../fingers.ts';

afterEach(() => document.body.replaceChildren());

/** The wall's first smoker, its air read at those minutes after noon, at the last of them. */
function smokerRead(...read: readonly (readonly [min: number, tempC: number])[]) {
  const day = atNoon();
  const smoker = must(day.state.plan?.kitchen.smokers[0], 'a smoker').id;
  let now = noon;
  for (const [min, tempC] of read) {
    now = after(noon, minutes(min));
    const where = { kind: 'air', smoker } as const;
    day.ask({ kind: 'reading', where, tempC: celsius(tempC) }, now);
  }
  const view = viewOf(openLive(day.state, now), { kind: 'smoker' });
  if (view.face !== 'smoker') throw new Error(view.face);
  const at = (later: Instant) => firstAt(day.state, later);
  return { smoker: must(view.smokers[0], 'a smoker'), view, now, at };
}

function firstAt(state: DayState, now: Instant): SmokerDrawing {
  const view = viewOf(openLive(state, now), { kind: 'smoker' }) as SmokerView;
  return must(view.smokers[0], 'a smoker');
}

it('says from when to when nobody knows what the air did', async () => {
  const { smoker, view, now } = smokerRead([1, 121], [51, 98]);
  const part = new SmokerCutaway();
  Object.assign(part, { smoker, now, rule: pitRule(view.smokers, now), laneM: 1 });
  part.say = { ...part.say, zone: view.zone, clock: view.clock };
  document.body.append(part);
  await drawn();
  expect(saidOn(part)).toContain('it fell, nobody knows when, 12:01–12:51 pm');
  part.say = { ...part.say, language: 'es' };
  await drawn();
  expect(saidOn(part)).toContain('bajó, no se sabe cuándo, 12:01–12:51 pm');
});

it('says nothing of that where the fall was read, or the air came up at once', () => {
  expect(smokerRead([1, 121], [16, 119], [31, 108], [46, 98]).smoker.unseen).toBeUndefined();
  expect(smokerRead([1, 121], [51, 98], [56, 119]).smoker.unseen).toBeUndefined();
});

it('says it no longer once it is hours ago', () => {
  const read = [1, 51, 71, 91, 120, 150, 180, 210, 225].map(
    (min, i) => [min, i ? 98 : 121] as const,
  );
  expect(smokerRead(...read).smoker.unseen).toBeDefined();
  expect(smokerRead(...read, [255, 98] as const).smoker.unseen).toBeUndefined();
});

describe('air that nobody has read for long', () => {
  it('is to be read by a hand at the pit, a quarter of an hour after an hour', () => {
    const read = [[1, 121]] as const;
    const later = (min: number) => smokerRead(...read).at(after(noon, minutes(min)));
    expect(later(59).unread).toBeUndefined();
    expect(later(62).unread?.byAt).toBe(after(noon, minutes(76)));
    expect(later(62).unread?.name).toMatch(/^\p{Lu}\p{L}+$/u);
  });

  it('is asked for of no smoker in which nothing lies', () => {
    const day = new Telling();
    const { id: smoker } = must(plan.kitchen.smokers[0], 'a smoker');
    const where = { kind: 'air', smoker } as const;
    day.ask({ kind: 'reading', where, tempC: celsius(121) }, noon);
    expect(firstAt(day.state, after(noon, minutes(180))).unread).toBeUndefined();
  });

  it.each([
    ['was never read', []],
    ['was last read while nothing lay in it', [after(noon, minutes(-600))]],
  ])('is to be read from when meat went in, where it %s', (_how, times) => {
    const { state } = atNoon();
    const { id: smoker } = must(plan.kitchen.smokers[0], 'a smoker');
    const where = { kind: 'air', smoker } as const;
    const readings = times.map((at) => ({ where, at, by: null, tempC: celsius(121) }));
    const { racks, unread } = firstAt({ ...state, readings }, noon);
    const wentIn = racks.flatMap(({ loads }) => loads.flatMap((l) => (l.here ? l.inAt : [])));
    expect(unread?.byAt).toBe(after(instant(Math.min(...wentIn)), minutes(15)));
  });
});
