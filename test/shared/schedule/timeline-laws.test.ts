import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ActivityId, seconds } from '../../../shared/kernel/index.ts';
import type { Lag, Problem, Schedule, Timeline, Told } from '../../../shared/schedule/index.ts';
import { check, construct, createTimeline, timelineAfter } from '../../../shared/schedule/index.ts';
import { type News, someNews, tell } from './news.ts';
import { randomProblem } from './random-problem.ts';

type Day = {
  readonly problem: Problem;
  readonly plan: Schedule;
  readonly timeline: Timeline;
  readonly news: readonly News[];
};

/** Checks a law on random days to which random things are about to happen. */
function law(holds: (day: Day) => void, numRuns = 150, seed?: number) {
  fc.assert(
    fc.property(randomProblem({ dueS: 400 }), someNews, (problem, news) => {
      const planned = construct(problem, { seed: 1 });
      if (!planned.ok) return;
      const plan = planned.schedule;
      holds({ problem, plan, news, timeline: createTimeline(problem, plan) });
    }),
    { numRuns, ...(seed !== undefined && { seed }) },
  );
}

/** A timeline, and all that it is told written down. */
function heardBy(timeline: Timeline, told: ((to: Told) => void)[]): Timeline {
  const hear = <Said>(say: (to: Told) => Said): Said => {
    told.push(say);
    return say(timeline);
  };
  const telling: Partial<Timeline> = {
    times: (id) => timeline.times(id),
    started: (id, atS) => hear((to) => to.started(id, atS)),
    finished: (id, atS) => hear((to) => to.finished(id, atS)),
    takenBack: (id) => hear((to) => to.takenBack(id)),
    lengthIs: (id, totalS) => hear((to) => to.lengthIs(id, totalS)),
    notBefore: (nowS) => hear((to) => to.notBefore(nowS)),
  };
  return telling as Timeline;
}

const isWaiting = (timeline: Timeline) => (id: ActivityId) =>
  timeline.times(id).stage === 'waiting';

describe('a timeline', () => {
  it('begins as it was published, and stays so while there is no news', () => {
    law(({ timeline, plan }) => {
      expect(timeline.schedule).toEqual(plan);
      expect(timeline.broken()).toEqual([]);
      expect(timeline.notBefore(seconds(0)).changed).toEqual([]);
      expect(timeline.schedule).toEqual(plan);
    });
  });

  it('stays as published when everything happens as it was published', () => {
    law(({ timeline, plan, problem }) => {
      // What ends goes before what begins in the same second, but for what does both.
      const turn = (startS: number, endS: number, atS: number) =>
        startS === endS ? 1 : atS === endS ? 0 : 2;
      const taps = plan.placements.flatMap(({ activity, startS, endS }) => [
        { activity, atS: startS, isEnd: false, turn: turn(startS, endS, startS) },
        { activity, atS: endS, isEnd: true, turn: turn(startS, endS, endS) },
      ]);
      for (const { activity, atS, isEnd } of taps.sort(
        (a, b) => a.atS - b.atS || a.turn - b.turn,
      )) {
        timeline.notBefore(atS);
        if (isEnd) timeline.finished(activity, atS);
        else timeline.started(activity, atS);
        expect(timeline.schedule.placements).toEqual(plan.placements);
      }
      expect(timeline.schedule).toEqual(plan);
      expect(timeline.broken()).toEqual([]);
      for (const { id } of problem.goals)
        expect(timeline.goal(id).inHandS).toBeGreaterThanOrEqual(0);
    });
  });

  it('mended from change to change is what it would be worked out from scratch', () => {
    law(({ timeline, problem, news }) => {
      for (const each of news) {
        tell(timeline, problem, each);
        expect(timeline.fork().moved([]).changed, JSON.stringify(each)).toEqual([]);
      }
    }, 400);
  });

  it('told all at once is what it would be told one by one, and then worked out anew', () => {
    law(({ timeline, problem, plan, news }) => {
      const told: ((to: Told) => void)[] = [];
      for (const each of news) {
        // What it is told hangs on what it expects, so both are told the same.
        tell(heardBy(timeline, told), problem, each);
      }
      const after = timelineAfter(problem, plan, {
        moves: [],
        tell: (to) => {
          for (const again of told) again(to);
        },
      });
      timeline.moved([]);
      expect(after.schedule).toEqual(timeline.schedule);
      expect(after.broken()).toEqual(timeline.broken());
      for (const { id } of problem.activities) expect(after.times(id)).toEqual(timeline.times(id));
    }, 400);
  });

  it('has for goals together what it has for the one of them that has least', () => {
    law(({ timeline, problem, news }) => {
      for (const each of news) {
        tell(timeline, problem, each);
        const ahead = problem.goals.filter(({ activity }) => isWaiting(timeline)(activity));
        if (ahead.length === 0) return;
        const goals = ahead.map(({ id }) => id);
        const least = Math.min(...goals.map((id) => timeline.goal(id).inHandS));
        expect(timeline.inHand(goals).inHandS, JSON.stringify(each)).toBe(least);
      }
    }, 400);
  });

  it('changes nothing when it is told the same again', () => {
    law(({ timeline, problem, news }) => {
      for (const each of news) tell(timeline, problem, each);
      for (const { id } of problem.activities) {
        const { stage, startS, endS } = timeline.times(id);
        if (stage !== 'waiting') expect(timeline.started(id, startS).changed).toEqual([]);
        if (stage === 'done') expect(timeline.finished(id, endS).changed).toEqual([]);
      }
      if (timeline.nowS !== null) expect(timeline.notBefore(timeline.nowS).changed).toEqual([]);
    });
  });

  it('forgets a tap that is taken back', () => {
    law(({ timeline, problem, news }) => {
      for (const each of news) tell(timeline, problem, each);
      const before = timeline.schedule;
      for (const { id } of problem.activities.filter((each) => isWaiting(timeline)(each.id))) {
        timeline.started(id, seconds(timeline.times(id).startS + 7));
        timeline.takenBack(id);
        timeline.finished(id, seconds(timeline.times(id).endS + 7));
        timeline.takenBack(id);
      }
      expect(timeline.schedule).toEqual(before);
    });
  });

  it('comes to an end where taps leave an order that goes round through what runs', () => {
    // Among these days is one whose only circle passes the end of a wait that has begun.
    law(
      ({ timeline, problem, news }) => {
        for (const each of news) tell(timeline, problem, each);
        for (const { id } of problem.activities.filter((each) => isWaiting(timeline)(each.id))) {
          timeline.started(id, seconds(timeline.times(id).startS + 7));
          timeline.takenBack(id);
        }
        expect(timeline.fork().moved([]).changed).toEqual([]);
      },
      150,
      2,
    );
  });

  it('never changes who does what where, nor in what order unless taps come out of turn', () => {
    law(({ timeline, problem, news, plan }) => {
      for (const each of news) tell(timeline, problem, each);
      const { placements, links } = timeline.schedule;
      const stage = (id: ActivityId) => timeline.times(id).stage;
      const isInTurn = plan.links.every(
        ({ from, to }) => stage(to) === 'waiting' || stage(from) === 'done',
      );
      expect(placements.map(({ activity, mode, uses }) => ({ activity, mode, uses }))).toEqual(
        plan.placements.map(({ activity, mode, uses }) => ({ activity, mode, uses })),
      );
      if (isInTurn) expect(links).toEqual(plan.links);
    });
  });

  it('keeps what has happened where it is', () => {
    law(({ timeline, problem, news }) => {
      const facts = new Map<ActivityId, number>();
      for (const each of news) {
        tell(timeline, problem, each);
        for (const { id } of problem.activities) {
          const { stage, startS } = timeline.times(id);
          if (stage === 'waiting') facts.delete(id);
          else expect(facts.get(id) ?? startS).toBe(startS);
          if (stage !== 'waiting') facts.set(id, startS);
        }
      }
    });
  });

  it('breaks a lag only where facts force it to, and says so', () => {
    law(({ timeline, problem, news }) => {
      for (const each of news) if (each.what !== 'lengthIs') tell(timeline, problem, each);
      const broken = timeline.broken();
      // Out of turn, things can be begun that leave no order at all; that is said, link by link.
      const hasNoOrder = broken.some(({ kind }) => kind === 'link');
      for (const lag of problem.lags.filter((each) => byS(each, timeline) > 0)) {
        expect(broken).toContainEqual(expect.objectContaining({ kind: 'lag', lag }));
        const isForced =
          !isWaiting(timeline)(lag.from.activity) || !isWaiting(timeline)(lag.to.activity);
        expect(isForced || hasNoOrder, JSON.stringify(lag)).toBe(true);
      }
    }, 400);
  });

  it('puts nothing that has not begun where there is no room for it, or says so', () => {
    law(({ timeline, problem, news }) => {
      for (const each of news) tell(timeline, problem, each);
      const waits = isWaiting(timeline);
      // Nothing is told before it has happened.
      const told = problem.activities.flatMap(({ id }) => {
        const { stage, startS, endS } = timeline.times(id);
        return stage === 'waiting' ? [] : [stage === 'done' ? endS : startS];
      });
      timeline.notBefore(seconds(Math.max(0, ...told)));
      // Out of turn, things can be begun that leave no order at all; that is said, link by link.
      const said = new Set(
        timeline.broken().flatMap((each) => (each.kind === 'link' ? [each.link.resource] : [])),
      );
      for (const found of check(problem, timeline.schedule)) {
        if (found.kind === 'capacity' && !said.has(found.resource)) {
          expect(found.activities.filter(waits)).toEqual([]);
        }
        if (found.kind === 'state' && !said.has(found.resource)) {
          expect(waits(found.second)).toBe(false);
        }
        if (found.kind === 'clash' && said.size === 0) {
          const { upper, lower } = found.clash;
          expect([upper.activity, lower.activity].some(waits)).toBe(false);
        }
      }
    }, 400);
  });
});

function byS({ from, to, minS, maxS }: Lag, timeline: Timeline): number {
  const time = ({ activity, end }: Lag['from']) => {
    const { startS, endS } = timeline.times(activity);
    return end === 'start' ? startS : endS;
  };
  const betweenS = time(to) - time(from);
  return Math.max((minS ?? betweenS) - betweenS, betweenS - (maxS ?? betweenS));
}
