import { describe, expect, it } from 'vitest';
import { openLive } from '../../../shared/day/index.ts';
import type { Instant, TaskId } from '../../../shared/kernel/index.ts';
import { after, hours, minutes, must } from '../../../shared/kernel/index.ts';
import type { PassView } from '../../../shared/view/index.ts';
import { viewOf } from '../../../shared/view/index.ts';
import { plan, Telling } from '../day/demo.ts';

const { built } = plan;
const [lunch, dinner] = built.services;
const opens = must(lunch, 'lunch').opensAt;
const at = (timeS: number) => after(built.origin, timeS as Parameters<typeof after>[1]);
const placed = new Map(plan.schedule.placements.map((each) => [each.activity, each]));

/** The day as the plan has it: every hand starts and ends to the minute, until then. */
function dayUntil(now: Instant): Telling {
  const telling = new Telling();
  const taps = built.tasks
    .filter(({ work }) => work === 'hands')
    .flatMap(({ id: task }) => {
      const { startS, endS } = must(placed.get(task), task);
      return [
        { at: at(startS), fact: { kind: 'taskStarted', task, hand: null } as const },
        { at: at(endS), fact: { kind: 'taskFinished', task } as const },
      ];
    })
    .filter((tap) => tap.at <= now)
    .sort((a, b) => a.at - b.at || (a.fact.kind === 'taskFinished' ? -1 : 1));
  for (const tap of taps) telling.keep(tap.fact, tap.at, null);
  return telling;
}

const passOf = (telling: Telling, now: Instant): PassView => {
  const view = viewOf(openLive(telling.state, now), { kind: 'pass' });
  if (view.face !== 'pass') throw new Error('a pass was asked for');
  return view;
};
const passAt = (now: Instant) => passOf(dayUntil(now), now);
const dishOf = ({ dishes }: PassView, dish: string) =>
  must(
    dishes.find((each) => each.dish === dish),
    dish,
  );
const startOf = (task: string) => at(must(placed.get(task as TaskId), task).startS);
const atOpening = passAt(opens);

describe('the pass', () => {
  it('shows the service that is on, and the next one when that is over', () => {
    expect(atOpening.service?.id).toBe(lunch?.id);
    const closed = must(lunch, 'lunch').closesAt;
    expect(passAt(closed).service?.id).toBe(dinner?.id);
    expect(passAt(must(dinner, 'dinner').closesAt).service).toBeNull();
  });

  it('has a line for each dish of it, with what the curve asks', () => {
    const asked = must(lunch, 'lunch').demand;
    expect(atOpening.dishes.map(({ dish }) => dish)).toEqual(asked.map(({ dish }) => dish));
    expect(dishOf(atOpening, 'ribs').perQuarter).toEqual(
      asked.find(({ dish }) => dish === 'ribs')?.portionsPerQuarter,
    );
  });

  it('has something ready of every dish when the service opens', () => {
    for (const { dish, pans } of atOpening.dishes) {
      expect(pans.filter(({ stage }) => stage === 'ready').length, dish).toBeGreaterThan(0);
    }
  });

  it('has nothing ready before the first work of the day', () => {
    const { dishes } = passAt(built.origin);
    const stages = dishes.flatMap(({ pans }) => pans.map(({ stage }) => stage));
    expect(new Set(stages)).toEqual(new Set(['coming']));
  });

  // Common practice, no source: whole briskets are held 8 to 12 h, pulled pork in pans 4 h.
  it('lets a brisket be held 12 h from the cabinet on, pulled shoulder 4 h from pulling', () => {
    const brisket = must(
      dishOf(atOpening, 'sliced-brisket').pans.find(({ stage }) => stage === 'ready'),
      'a brisket',
    );
    expect(brisket.heldUntil).toBe(after(startOf(`${brisket.batch}/rest`), hours(12)));
    const pulled = must(
      dishOf(atOpening, 'pulled-shoulder').pans.find(({ stage }) => stage === 'ready'),
      'a shoulder',
    );
    expect(pulled.heldUntil).toBe(after(startOf(`${pulled.batch}/shred`), hours(4)));
  });

  it('counts what is in the cabinet and not cut as held, till its route’s limit', () => {
    const batch = must(
      built.batches.find(({ dish }) => dish === 'sliced-brisket'),
      'a brisket',
    ).id;
    const whole = after(startOf(`${batch}/rest`), minutes(1));
    const pan = dishOf(passAt(whole), 'sliced-brisket').pans.find((each) => each.batch === batch);
    expect(pan?.stage).toBe('held');
    expect(pan?.heldUntil).toBe(after(startOf(`${batch}/rest`), hours(12)));
  });

  it('has what was sold at this service and before it, and knows a pan that is empty', () => {
    const now = after(must(dinner, 'dinner').opensAt, minutes(5));
    const telling = dayUntil(now);
    const [noonId, id] = [must(lunch, 'lunch').id, must(dinner, 'dinner').id];
    const { dish, batch } = {
      dish: must(
        plan.catalogue.dishes.find(({ id: each }) => each === 'ribs'),
        'ribs',
      ).id,
      batch: must(
        built.batches.find((each) => each.dish === 'ribs'),
        'a batch',
      ).id,
    };
    telling.keep({ kind: 'portionsSold', service: noonId, dish, sold: 31 }, opens, null);
    telling.keep({ kind: 'portionsSold', service: id, dish, sold: 4 }, now, null);
    telling.keep({ kind: 'panEmptied', batch }, now, null);
    telling.keep({ kind: 'dishSoldOut', service: id, dish }, now, null);
    const ribs = dishOf(passOf(telling, now), 'ribs');
    expect([ribs.soldBefore, ribs.sold, ribs.soldOutAt]).toEqual([31, 4, now]);
    expect(ribs.pans.filter(({ isEmptied }) => isEmptied).map((each) => each.batch)).toEqual([
      batch,
    ]);
  });

  it('says when the next will be ready as a range, widest while it cooks', () => {
    const cooking = passAt(after(opens, minutes(-180)));
    const coming = cooking.dishes
      .flatMap(({ pans }) => pans)
      .filter(({ stage }) => stage === 'coming');
    expect(coming.length).toBeGreaterThan(0);
    for (const { readyAt, readyLowAt, readyHighAt } of coming) {
      expect(readyLowAt).toBeLessThanOrEqual(readyAt);
      expect(readyHighAt).toBeGreaterThanOrEqual(readyAt);
    }
    expect(coming.some(({ readyLowAt, readyHighAt }) => readyLowAt < readyHighAt)).toBe(true);
  });
});
