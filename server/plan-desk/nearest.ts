import { openLive } from '../../shared/day/index.ts';
import type { Text } from '../../shared/kernel/index.ts';
import { askingFor, type CookPlan, type PlanFiles, portionsIn } from '../../shared/plan/index.ts';
import { sayNearestPlan } from '../../shared/words/index.ts';
import { type Effort, makePlan, revisePlan } from '../adopt.ts';
import { sayIn } from '../why-not-planned.ts';
import type { DraftAsk } from './draft.ts';

/** A plan that does not fit, and one that does: as it runs, or as it was. */
export type NearestAsk = DraftAsk & { readonly before: CookPlan };

/** The plan with as many portions as were found to fit, and the sentence that says so. */
export type Nearest = { readonly line: string; readonly plan: CookPlan };

/** Nobody waits longer to be told what would fit; what was found by then is told. */
const MOST_MS = 10_000;
/** The first step up is such a part of what was asked for before. */
const STRIDES = 4;

/**
 * Between what fits and what does not, the most portions that fit, of all dishes that are asked
 * for more of. Null where nothing is asked for more of, where it is not that which does not fit,
 * and where no more was found to fit than before.
 */
export function nearestOf(ask: NearestAsk, nowMs = () => performance.now()): Nearest | null {
  const { files, before, language } = ask;
  const more = askedMore(files, before);
  const most = Math.max(0, ...more.map(({ is, was }) => is - was));
  const endMs = nowMs() + MOST_MS;
  const live = ask.state?.plan ? openLive(ask.state, ask.now) : null;
  const at = (step: number): CookPlan =>
    more.reduce((plan, each) => {
      const { is, was } = each;
      return askingFor(plan, each, was + Math.floor(((is - was) * step) / most));
    }, files.cookPlan);
  const fits = (step: number, effort: Effort) => {
    const asked = { ...files, cookPlan: at(step) };
    return (live ? revisePlan(asked, live, effort) : makePlan(asked, 1, effort)).ok;
  };
  if (most === 0) return null;
  // What fits is mostly near what fitted before, and found sooner than what does not is refused.
  let enough = 0;
  let tooMany = most;
  let stride = Math.max(1, Math.floor(Math.min(...more.map(({ was }) => was)) / STRIDES));
  while (tooMany - enough > 1 && nowMs() < endMs) {
    const isClosing = enough + stride >= tooMany;
    const next = isClosing ? Math.floor((enough + tooMany) / 2) : enough + stride;
    if (fits(next, { isTrial: true })) [enough, stride] = [next, 2 * stride];
    else tooMany = next;
  }
  const plan = at(enough);
  // What is offered is worked out as it would be taken.
  if (enough === 0 || !fits(enough, {})) return null;
  const named = more.map((each) => ({ ...each, portions: portionsIn(plan, each) }));
  return { plan, line: sayNearestPlan(named, sayIn(language, files.kitchen)) };
}

type Asked = {
  readonly service: string;
  readonly dish: string;
  readonly serviceName: Text;
  readonly dishName: Text;
  readonly is: number;
  readonly was: number;
};

function askedMore({ cookPlan, catalogue }: PlanFiles, before: CookPlan): Asked[] {
  return cookPlan.services.flatMap(({ id: service, name: serviceName, dishes }) =>
    dishes.flatMap(({ dish }): Asked[] => {
      const is = portionsIn(cookPlan, { service, dish });
      const was = portionsIn(before, { service, dish });
      const dishName = catalogue.dishes.find(({ id }) => id === dish)?.name ?? { en: dish };
      return is <= was ? [] : [{ service, dish, serviceName, dishName, is, was }];
    }),
  );
}
