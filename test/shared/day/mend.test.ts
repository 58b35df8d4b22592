import { describe, expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import {
  fold,
  type Live,
  type MendFact,
  mendOf,
  openLive,
  ownersOf,
  stillMends,
  whyNotMended,
} from '../../../shared/day/index.ts';
import { mayBeOffered } from '../../../shared/day/later.ts';
import { after, celsius, hours, must, type SmokerId } from '../../../shared/kernel/index.ts';
import { check, type Violation } from '../../../shared/schedule/index.ts';
import { noon, plan, Telling } from './demo.ts';

/** The demo's day at noon, with all that was tapped since last night. */
function atNoon(): Telling {
  const telling = new Telling();
  const taps = demoLog(plan, { now: noon, seed: 7 });
  for (const { intent, at, personId } of taps) telling.ask(intent, at, personId);
  return telling;
}

const smoker = 'a' as SmokerId;

/** One smoker is out for an hour, with what lies in it. */
function anHourOut(): Telling {
  const telling = atNoon();
  const backAt = after(noon, hours(1));
  const down = { kind: 'smokerDown', smoker, tempC: celsius(60), backAt } as const;
  expect(telling.ask(down, noon).ok).toBe(true);
  return telling;
}

const timesOf = (live: Live) =>
  live.index.plan.built.tasks.map(({ id }) => ({ id, ...live.timesOf(id) }));

/** What the checker, which is written apart from the planner, has against a day as it stands. */
function against(live: Live): string[] {
  const { problem } = live.index.plan.built;
  const nameOf = (each: Violation) => JSON.stringify({ ...each, byS: 0, excess: 0, usedS: 0 });
  return check(problem, live.timeline.schedule)
    .filter(({ kind }) => kind === 'capacity' || kind === 'state' || kind === 'clash')
    .map(nameOf);
}

const inHand = (live: Live) =>
  live.index.plan.built.services.map(({ id }) => live.outlookOf(id)?.inHandS ?? null);

const telling = anHourOut();
const before = openLive(telling.state, noon);
const { offer, fact } = mendOf(before);
const taken: MendFact = must(fact, 'a proposal');

describe('a smoker that is out for an hour', () => {
  const event = telling.keep(taken, noon, null);
  const next = openLive(telling.state, noon);

  it('leaves a service late, and there is something that mends it', () => {
    expect(Math.min(...inHand(before).map((each) => each ?? 0))).toBeLessThan(-hours(1));
    const late = must(
      offer.services.find(({ beforeS }) => beforeS !== null && beforeS < 0),
      'a late service',
    );
    expect(must(late.afterS, 'what is in hand')).toBeGreaterThan(must(late.beforeS, 'x') + 3_000);
    expect(offer.changes.length).toBeGreaterThan(0);
    expect(stillMends(before, taken)).toBe(true);
  });

  it('makes no service later than leaving it be, but for what lets a late one hold', () => {
    expect(mayBeOffered(offer.services)).toBe(true);
  });

  it('goes on as it was offered, to the second', () => {
    expect(offer.services.map(({ afterS }) => afterS)).toEqual(inHand(next));
    for (const { task, start } of offer.changes) {
      if (start) expect(next.instantOf(next.timesOf(task).startS)).toBe(start.to);
    }
  });

  it('is drawn where it would stand: all that gets another hand, rack or time, and no more', () => {
    const drawn = new Map(offer.wouldBe.map((each) => [each.task, each]));
    const start = must(offer.changes.find((each) => each.start)?.task, 'a task that moves');
    expect(drawn.has(start)).toBe(true);
    const [was, is] = [before, next].map((live) => new Map(timesOf(live).map((t) => [t.id, t])));
    for (const { id } of plan.built.tasks) {
      const [old, anew] = [must(was?.get(id), id), must(is?.get(id), id)];
      const seen = drawn.get(id);
      if (seen) {
        expect(seen.startAt).toBe(next.instantOf(anew.startS));
        expect(seen.endAt).toBe(next.instantOf(anew.endS));
        expect(seen.owners).toEqual(ownersOf(next, id));
      } else if (ownersOf(next, id).length > 0) {
        expect(Math.abs(anew.startS - old.startS)).toBeLessThan(60);
        expect(ownersOf(next, id)).toEqual(ownersOf(before, id));
      }
    }
  });

  it('puts nothing into one place that was not there together before', () => {
    const known = new Set(against(before));
    expect(against(next).filter((each) => !known.has(each))).toEqual([]);
  });

  it('moves nothing that has begun, and puts nothing into what is out before it is back', () => {
    const passed = new Map(timesOf(before).map((each) => [each.id, each]));
    const backS = hours(1) + before.nowS;
    for (const { id, work } of plan.built.tasks) {
      const { stage, startS } = next.timeline.times(id);
      if (stage !== 'waiting') expect(startS).toBe(passed.get(id)?.startS);
      const slot =
        work !== 'place' ? null : next.timeline.schedule.placements.find((p) => p.activity === id);
      if (slot?.mode.startsWith('a/') && stage === 'waiting') {
        expect(startS).toBeGreaterThanOrEqual(backS);
      }
    }
  });

  it('is brought back whole when it is undone', () => {
    const undone = telling.ask({ kind: 'undo', command: event.commandId }, noon);
    expect(undone.ok).toBe(true);
    const back = openLive(telling.state, noon);
    expect(timesOf(back)).toEqual(timesOf(before));
    expect(inHand(back)).toEqual(inHand(before));
  });
});

describe('a proposal', () => {
  it('is none on a day that holds', () => {
    const none = mendOf(openLive(atNoon().state, noon));
    expect(none.fact).toBeNull();
    expect(['times', 'margin']).toContain(none.offer.rung);
  });

  it('is out of date once something that it moves has begun, or hands were changed', () => {
    const again = anHourOut();
    const { state } = again;
    expect(whyNotMended(state, taken, offer.basedOnSeq)).toBeNull();
    const isByHand = ({ activity }: { readonly activity: string }) =>
      plan.built.tasks.find(({ id }) => id === activity)?.work === 'hands';
    const first = must(taken.changes.find(isByHand), 'a change');
    const begun = { kind: 'taskStarted', task: first.activity, hand: null } as const;
    const seq = state.seq + 1;
    const head = { ...must(again.events.at(-1), 'an event'), seq };
    const started = fold(state, { ...head, ...begun });
    expect(whyNotMended(started, taken, offer.basedOnSeq)).toEqual({ rule: 'out-of-date' });
    again.ask({ kind: 'handOut', hand: 'odile' as never, backAt: null }, noon);
    expect(whyNotMended(again.state, taken, offer.basedOnSeq)).toEqual({ rule: 'out-of-date' });
  });
});
