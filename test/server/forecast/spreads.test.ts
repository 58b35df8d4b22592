import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { manualClock } from '../../../server/clock.ts';
import { dayRules, liveOf } from '../../../server/day-rules.ts';
import { Spreads } from '../../../server/forecast/index.ts';
import type { DayState } from '../../../shared/day/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { noon } from '../../shared/day/demo.ts';
import { atNoon } from '../../shared/day/demo-noon.ts';

const { state } = atNoon();
const clock = manualClock(noon);
const running = dayRules.run(state, noon);
const hub = { state: state as DayState, running };
let spreads: Spreads;
beforeEach(() => {
  const report = ({ what }: { what: string }) => {
    throw new Error(what);
  };
  spreads = new Spreads({ hub, clock, report });
});
afterEach(() => spreads.close());

const shown = () => {
  const found = running.show({ kind: 'desk' }, noon);
  if (!found.ok || found.view.face !== 'desk') throw new Error('a desk');
  return found.view.standings.flatMap(({ id, spread }) => (spread ? [{ id, ...spread }] : []));
};

/** Lets the debounce pass, and each of its turns come. */
async function settled(of = spreads, on = clock) {
  on.advance(2_500);
  let isIdle = false;
  void of.idle().then(() => {
    isIdle = true;
  });
  for (let turn = 0; turn < 200 && !isIdle; turn++) {
    on.advance(0);
    await new Promise((resolve) => setImmediate(resolve));
  }
  expect(isIdle).toBe(true);
}

describe('the spread of the services', () => {
  it('is worked out beside the day, and the desk shows it once it is there', async () => {
    expect(shown()).toEqual([]);
    spreads.heed();
    await settled();
    const [dinner] = shown();
    expect(dinner?.id).toBe('dinner');
    // The tick after it says that a face reads otherwise, once.
    expect(running.tick(noon)).toBe(true);
    expect(running.tick(noon)).toBe(false);
  });

  it('lies in order on a rule with the due time, and is none where no cook is in doubt', () => {
    const [dinner, ...others] = shown();
    expect(others).toEqual([]);
    const { low, likely, high, due } = must(dinner, 'a spread').mark;
    for (const share of [low, likely, high, due]) {
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
    }
    expect(low).toBeLessThanOrEqual(likely);
    expect(likely).toBeLessThanOrEqual(high);
    expect(must(liveOf(running), 'a day').outlookOf('lunch' as never)).not.toBeNull();
  });

  it('is shown to nobody else: a wall has its minutes in hand', () => {
    const wall = running.show({ kind: 'smoker' }, noon);
    expect(wall.ok && 'standings' in wall.view).toBe(false);
  });

  it('is there for the first desk, and then worked out for nobody while none looks', async () => {
    const unseen = dayRules.run(state, noon);
    const own = manualClock(noon);
    const alone = new Spreads({ hub: { state, running: unseen }, clock: own, report: () => {} });
    await settled(alone, own);
    expect(unseen.tick(noon)).toBe(true);
    unseen.show({ kind: 'smoker' }, noon);
    alone.heed();
    await settled(alone, own);
    expect(unseen.tick(noon)).toBe(false);
    unseen.show({ kind: 'desk' }, noon);
    await settled(alone, own);
    expect(unseen.tick(noon)).toBe(true);
    await alone.close();
  });

  it('stops in the middle when the hub is closed', async () => {
    spreads.heed();
    clock.advance(2_500);
    const closed = spreads.close();
    clock.advance(0);
    await closed;
  });
});
