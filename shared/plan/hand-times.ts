import type { Catalogue, Step } from '../catalogue/index.ts';
import type { RouteId, StepId } from '../kernel/index.ts';
import { type Seconds, seconds } from '../kernel/index.ts';

/**
 * How long hands took for a step, each time as a share of what the catalogue has for so many pieces
 * and such a hand; the latest last.
 */
export type HandTimes = {
  readonly route: RouteId;
  readonly step: StepId;
  readonly ratios: readonly number[];
};

/** A step as this kitchen's hands do it: so many times what the catalogue has. */
export type Pace = {
  readonly route: RouteId;
  readonly step: StepId;
  /** Of how many times that it was done. */
  readonly times: number;
  /** One in ten is quicker, half are, one in ten is slower. */
  readonly low: number;
  readonly typical: number;
  readonly high: number;
};

/** Crews change: what is longer ago than so many times is of other hands (judged). */
const KEPT = 20;

/** Beyond this, up or down, somebody forgot to tap (judged). */
const FORGOTTEN = 4;

/** The same with what was found since, in its order; what cannot be meant is left out. */
export function withTimes(
  before: readonly HandTimes[],
  found: readonly { readonly route: RouteId; readonly step: StepId; readonly ratio: number }[],
): readonly HandTimes[] {
  const all = new Map(before.map((each) => [paceKey(each), each]));
  for (const { route, step, ratio } of found) {
    if (!(ratio >= 1 / FORGOTTEN && ratio <= FORGOTTEN)) continue;
    const key = paceKey({ route, step });
    const ratios = [...(all.get(key)?.ratios ?? []), Math.round(ratio * 1000) / 1000];
    all.set(key, { route, step, ratios: ratios.slice(-KEPT) });
  }
  return [...all.values()];
}

/** The catalogue as this kitchen's hands work: every length of a step whose pace is known. */
export function atPaces(catalogue: Catalogue, paces: readonly Pace[]): Catalogue {
  if (paces.length === 0) return catalogue;
  const known = new Map(paces.map((pace) => [paceKey(pace), pace]));
  return {
    ...catalogue,
    routes: catalogue.routes.map((route) => ({
      ...route,
      steps: route.steps.map((step) =>
        atPace(step, known.get(paceKey({ route: route.id, step: step.id }))),
      ),
    })),
  };
}

function atPace(step: Step, pace: Pace | undefined): Step {
  if (step.work !== 'hands' || !pace) return step;
  const { typical } = step.time.takesS;
  const scaled = (ratio: number): Seconds => seconds(Math.max(1, Math.round(typical * ratio)));
  const takesS = { low: scaled(pace.low), typical: scaled(pace.typical), high: scaled(pace.high) };
  return { ...step, time: { ...step.time, takesS } };
}

/** One name for a step of a route. */
export const paceKey = ({ route, step }: Pick<Pace, 'route' | 'step'>) => `${route} ${step}`;
