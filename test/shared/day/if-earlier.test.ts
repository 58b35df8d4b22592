import { describe, expect, it } from 'vitest';
import { nearestThatCan } from '../../../shared/day/if-earlier.ts';
import { earlierOffer, openLive } from '../../../shared/day/index.ts';
import type { Instant } from '../../../shared/kernel/index.ts';
import { after, hours, minutes, must } from '../../../shared/kernel/index.ts';
import { plan, Telling, task } from './demo.ts';

const telling = new Telling();
const evening = after(plan.built.origin, hours(4));
const live = openLive(telling.state, evening);
const stay = task('lunch-sliced-brisket-1', 'stay');
const load = task('lunch-sliced-brisket-1', 'load');

const offered = (byMin: number) => earlierOffer(live, stay, minutes(byMin));

describe('a load that waits, if it went in sooner', () => {
  it('has both ranges of its cook so much earlier, and its loading too', () => {
    const asked = offered(15);
    if (!asked.ok) throw new Error(JSON.stringify(asked.refusal));
    const { goesIn, stages } = asked.offer;
    const planned = live.instantOf(live.timesOf(load).startS);
    expect(goesIn?.at).toBe(after(planned, minutes(-15)));
    expect(stages).toHaveLength(2);
    for (const { before, after: then } of stages) {
      for (const end of ['p10At', 'p50At', 'p90At'] as const) {
        const byS = (must(before?.[end], end) - must(then[end], end)) / 1000;
        // Rounds of the fire may keep the hand that wraps for a minute.
        expect(Math.abs(byS - minutes(15))).toBeLessThan(minutes(2));
      }
    }
  });

  it('says what hands must begin first for that, and what each service gains', () => {
    const asked = offered(15);
    if (!asked.ok) throw new Error(JSON.stringify(asked.refusal));
    const { goesIn, services } = asked.offer;
    const pull = task('lunch-sliced-brisket-1', 'pull');
    expect(goesIn?.first?.task.id).toBe(pull);
    const planned: Instant = live.instantOf(live.timesOf(pull).startS);
    expect(goesIn?.first?.at).toBe(after(planned, minutes(-15)));
    for (const { beforeS, afterS } of services) expect(afterS).toBeGreaterThanOrEqual(beforeS);
  });

  it('leaves the day as it is', () => {
    const before = plan.built.tasks.map(({ id }) => live.timesOf(id));
    offered(15);
    expect(plan.built.tasks.map(({ id }) => live.timesOf(id))).toEqual(before);
  });

  it('is refused where hands are at something else, with how much sooner it could be', () => {
    const asked = offered(45);
    if (asked.ok || asked.refusal.rule !== 'not-so-early') throw new Error(JSON.stringify(asked));
    const { mostS, before } = asked.refusal;
    expect(mostS).toBeGreaterThanOrEqual(minutes(15));
    expect(mostS).toBeLessThan(minutes(45));
    expect(before).not.toBeNull();
    expect(earlierOffer(live, stay, mostS).ok).toBe(true);
  });

  it('is refused once it is in, and for what is no load', () => {
    const loaded = new Telling();
    loaded.keep({ kind: 'taskStarted', task: load, hand: null }, evening, null);
    loaded.keep({ kind: 'taskFinished', task: load }, evening, null);
    const asked = earlierOffer(openLive(loaded.state, evening), stay, minutes(15));
    expect(asked).toMatchObject({ ok: false, refusal: { rule: 'in-already', at: evening } });
    expect(earlierOffer(live, load, minutes(15))).toMatchObject({
      ok: false,
      refusal: { rule: 'unknown-place' },
    });
  });
});

describe('the most that can be of what was asked', () => {
  it('is that itself, or nothing where nothing can', () => {
    expect(nearestThatCan(minutes(15), () => true)).toBe(minutes(15));
    expect(nearestThatCan(minutes(15), () => false)).toBe(0);
  });

  it('is what lies before a break, where what falls into it cannot', () => {
    const afterBreak = (s: number) => s <= minutes(7) || (s >= minutes(20) && s <= minutes(31));
    expect(nearestThatCan(minutes(45), afterBreak)).toBe(minutes(31));
    expect(nearestThatCan(minutes(19), afterBreak)).toBe(minutes(7));
    expect(nearestThatCan(minutes(25), afterBreak)).toBe(minutes(25));
  });

  it('is found by whole minutes also where much was asked', () => {
    expect(nearestThatCan(minutes(400), (s) => s <= minutes(213))).toBe(minutes(213));
  });

  it('has been tried as it would be done: nobody is offered what is then refused', () => {
    const loads = plan.built.tasks.filter(({ work }) => work === 'place').map(({ id }) => id);
    const refused = loads.flatMap((id) => {
      const asked = earlierOffer(live, id, minutes(45));
      return asked.ok || asked.refusal.rule !== 'not-so-early' ? [] : [{ id, ...asked.refusal }];
    });
    expect(refused.length).toBeGreaterThan(3);
    for (const { id, mostS } of refused) {
      expect(mostS).toBeLessThan(minutes(45));
      if (mostS > 0) expect(earlierOffer(live, id, mostS).ok).toBe(true);
    }
    // Some can by minutes, though nothing but hours and longest waits stands in the way.
    expect(refused.some(({ mostS, before }) => mostS > 0 && before === null)).toBe(true);
  });
});
