import type { Moment, StepOf } from '../catalogue/index.ts';
import { chosenLimits, spansOf } from '../catalogue/index.ts';
import type { Seconds } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import { QUARTER_S } from './demand.ts';
import { teamsFor, workLength } from './hands.ts';
import { amountToKeep, placesToKeep } from './keeping.ts';
import { type Frame, type Order, ofDish, ofStep } from './order.ts';
import { pathLength } from './path.ts';
import type { PlanRefusal } from './refusal.ts';
import { weightsOf } from './weights.ts';

/**
 * A limit filled to the brim leaves no time to wait for a hand: a batch is only made so large that
 * its work fills this share of what the route allows (our choice).
 */
const FILLED = 0.8;

/** What keeps a batch of so many pieces from being worked at all, however empty the day. */
export function obstacles(order: Order, frame: Frame, pieces: number): PlanRefusal[] {
  const steps = order.steps.map(({ step }) => step);
  return [
    ...steps.flatMap((step) =>
      step.work === 'hands' ? handObstacles(order, frame, step, pieces) : [],
    ),
    ...steps.flatMap((step) =>
      step.work === 'wait' ? keepObstacles(order, frame, step, pieces) : [],
    ),
    ...boundsOf(order).flatMap((bound) => boundObstacles(order, bound, pieces)),
  ];
}

function handObstacles(
  order: Order,
  { kitchen, hours }: Frame,
  step: StepOf<'hands'>,
  pieces: number,
): PlanRefusal[] {
  const teams = teamsFor(kitchen, step, order.planned.hands[step.id]);
  const here = ofStep(order, step.title);
  const [team] = teams;
  if (team === undefined) return [];
  const needS = workLength(step, pieces, team.factor).typicalS;
  const spans = team.people.flatMap(({ id }) => hours.get(id) ?? []);
  const longestS = seconds(Math.max(0, ...spans.map(({ start, end }) => end - start)));
  return needS <= longestS ? [] : [{ rule: 'no-shift', ...here, needS, longestS }];
}

function keepObstacles(
  order: Order,
  { kitchen }: Frame,
  step: StepOf<'wait'>,
  pieces: number,
): PlanRefusal[] {
  if (step.keep === undefined) return [];
  const { role, places } = placesToKeep(kitchen, step.keep.in);
  const has = places.reduce((sum, { capacity }) => sum + capacity, 0);
  const needs = amountToKeep(step.keep, order.cut, { pieces, ...weightsOf(order.cut, pieces) });
  if (needs <= has) return [];
  return [{ rule: 'no-room-to-keep', ...ofStep(order, step.title), where: role, needs, has }];
}

/** A longest time between two moments of a route: a limit, or the most that a wait spans. */
type Bound = { readonly from: Moment; readonly to: Moment; readonly atMostS: Seconds };

function boundsOf({ route, chosen, steps }: Order): Bound[] {
  const spanning = steps.flatMap(({ step }): Bound[] => {
    const spans = spansOf(step);
    return spans && step.work === 'wait' ? [{ ...spans, atMostS: step.atMostS }] : [];
  });
  return [...chosenLimits(route, chosen), ...spanning];
}

function boundObstacles(order: Order, bound: Bound, pieces: number): PlanRefusal[] {
  const needS = pathLength(order.steps, bound, pieces);
  const allowedS = seconds(bound.atMostS * (pieces > 1 ? FILLED : 1));
  if (needS === undefined || needS <= allowedS) return [];
  const title = ({ step: id }: Moment) =>
    must(
      order.steps.find(({ step }) => step.id === id),
      id,
    ).step.title;
  const between = { from: title(bound.from), to: title(bound.to) };
  return [
    { rule: 'limit-too-short', ...ofDish(order), ...between, needS, allowedS: bound.atMostS },
  ];
}

/**
 * How long the pieces of a batch may stand for sale: what the bounds that run on till the last is
 * sold leave, less some room to be ready early.
 */
export function longestSale(order: Order, serve: Moment['step'], pieces: number): Seconds {
  const rooms = boundsOf(order)
    .filter(({ to }) => to.step === serve && to.end === 'end')
    .map((bound) => (bound.atMostS - (pathLength(order.steps, bound, pieces) ?? 0)) * FILLED);
  return seconds(Math.min(...rooms, order.demand.length * QUARTER_S));
}
