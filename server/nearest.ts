import { type DayState, openLive } from '../shared/day/index.ts';
import {
  type Instant,
  minutes,
  resolveLocal,
  type Seconds,
  seconds,
  type Text,
  type WallTime,
} from '../shared/kernel/index.ts';
import {
  askingFor,
  type CookPlan,
  clockBetween,
  openingLater,
  type PlanFiles,
  portionsIn,
  skippedTimes,
} from '../shared/plan/index.ts';
import { type Language, sayNearestPlan, sayNearestTimes } from '../shared/words/index.ts';
import { type Effort, makePlan, revisePlan } from './adopt.ts';
import { sayIn } from './why-not-planned.ts';

/** A plan that does not fit, and the one before it. */
export type NearestAsk = {
  readonly files: PlanFiles;
  /** As it runs, or as it was; null: there was none. */
  readonly before: CookPlan | null;
  /** Null where the plan is not for the day that runs. */
  readonly state: DayState | null;
  readonly now: Instant;
  readonly language: Language;
};

/** The plan that was found to fit and comes nearest, and the sentence that says so. */
export type Nearest = { readonly line: string; readonly plan: CookPlan };

/** Nobody waits longer to be told what would fit; what was found by then is told. */
const MOST_MS = 10_000;
/** The first step up is such a part of what was asked for before. */
const STRIDES = 4;
/** A service opens on a quarter of an hour. */
const QUARTER_S = minutes(15);
/** A service that was not there before is tried so much later at most. */
const LATER_MOST_S = minutes(8 * 60);

type Fits = (plan: CookPlan, effort: Effort) => boolean;

/** Between what fits and what does not: the plan at a step, of so many, the last as was asked. */
type Steps = {
  readonly steps: number;
  readonly firstStride: number;
  readonly at: (step: number) => CookPlan;
  readonly say: (plan: CookPlan) => string;
};

/**
 * The most portions that fit of all dishes that are asked for more of; where it is not that which
 * does not fit, the earliest that the services can open which are asked for sooner. Null where
 * neither was found, or nobody waits for it any more: that is looked up after each plan.
 */
export function nearestOf(
  ask: NearestAsk,
  nowMs = () => performance.now(),
  shouldStop = () => false,
): Nearest | null {
  const endMs = nowMs() + MOST_MS;
  const live = ask.state?.plan ? openLive(ask.state, ask.now) : null;
  const fits: Fits = (cookPlan, effort) => {
    if (shouldStop()) return false;
    // What would be refused where it is typed is not offered.
    if (skippedTimes(cookPlan, ask.files.kitchen.zone).length > 0) return false;
    const asked = { ...ask.files, cookPlan };
    return (live ? revisePlan(asked, live, effort) : makePlan(asked, 1, effort)).ok;
  };
  const isTimeLeft = () => nowMs() < endMs && !shouldStop();
  return (
    lastThatFits(inPortions(ask), fits, isTimeLeft) ?? lastThatFits(inTime(ask), fits, isTimeLeft)
  );
}

/** What fits is mostly near what fitted before, and found sooner than what does not is refused. */
function lastThatFits(of: Steps | null, fits: Fits, isTimeLeft: () => boolean): Nearest | null {
  if (!of) return null;
  const { steps, firstStride, at, say } = of;
  let enough = 0;
  let tooMany = steps;
  let stride = firstStride;
  while (tooMany - enough > 1 && isTimeLeft()) {
    const isClosing = enough + stride >= tooMany;
    const next = isClosing ? Math.floor((enough + tooMany) / 2) : enough + stride;
    if (fits(at(next), { isTrial: true })) [enough, stride] = [next, 2 * stride];
    else tooMany = next;
  }
  const plan = at(enough);
  // What is offered is worked out as it would be taken.
  if (enough === 0 || !fits(plan, {})) return null;
  return { plan, line: say(plan) };
}

function inPortions({ files, before, language }: NearestAsk): Steps | null {
  const more = askedMore(files, before);
  const most = Math.max(0, ...more.map(({ is, was }) => is - was));
  if (most === 0) return null;
  return {
    steps: most,
    firstStride: Math.max(1, Math.floor(Math.min(...more.map(({ was }) => was)) / STRIDES)),
    at: (step) =>
      more.reduce((plan, each) => {
        const { is, was } = each;
        return askingFor(plan, each, was + Math.floor(((is - was) * step) / most));
      }, files.cookPlan),
    say: (plan) => {
      const named = more.map((each) => ({ ...each, portions: portionsIn(plan, each) }));
      return sayNearestPlan(named, sayIn(language, files.kitchen));
    },
  };
}

function inTime({ files, before, language }: NearestAsk): Steps | null {
  const sooner = askedSooner(files, before);
  const mostS = Math.max(0, ...sooner.map(({ soonerS }) => soonerS));
  const steps = Math.ceil(mostS / QUARTER_S);
  if (steps === 0) return null;
  return {
    steps,
    firstStride: Math.max(1, Math.floor(steps / STRIDES)),
    at: (step) =>
      sooner.reduce((plan, { service, soonerS }) => {
        const laterS = Math.min(soonerS, (steps - step) * QUARTER_S);
        return openingLater(plan, service, seconds(laterS));
      }, files.cookPlan),
    say: ({ services, day }) => {
      const { kitchen } = files;
      const moved = services.filter(({ id }) => sooner.some(({ service }) => service === id));
      const named = moved.map(({ name, opens }) => {
        return { name, opensAt: resolveLocal(day, opens, kitchen.zone).at };
      });
      return sayNearestTimes(named, sayIn(language, kitchen));
    },
  };
}

type Asked = {
  readonly service: string;
  readonly dish: string;
  readonly serviceName: Text;
  readonly dishName: Text;
  readonly is: number;
  readonly was: number;
};

function askedMore({ cookPlan, catalogue }: PlanFiles, before: CookPlan | null): Asked[] {
  return cookPlan.services.flatMap(({ id: service, name: serviceName, dishes }) =>
    dishes.flatMap(({ dish }): Asked[] => {
      const is = portionsIn(cookPlan, { service, dish });
      const was = before ? portionsIn(before, { service, dish }) : 0;
      const dishName = catalogue.dishes.find(({ id }) => id === dish)?.name ?? { en: dish };
      return is <= was ? [] : [{ service, dish, serviceName, dishName, is, was }];
    }),
  );
}

/** Which services are to open sooner than before, by how much; of new ones any time is. */
function askedSooner(
  { cookPlan }: PlanFiles,
  before: CookPlan | null,
): { readonly service: string; readonly soonerS: Seconds }[] {
  const openedAt = new Map(
    before?.services.map(({ id, opens }): [string, WallTime] => [id, opens]),
  );
  return cookPlan.services.flatMap(({ id: service, opens }) => {
    const was = openedAt.get(service);
    const soonerS = was === undefined ? LATER_MOST_S : clockBetween(opens, was);
    return soonerS > 0 ? [{ service, soonerS }] : [];
  });
}
