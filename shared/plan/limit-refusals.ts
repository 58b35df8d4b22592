import type { Catalogue, Step } from '../catalogue/index.ts';
import { chosenLimits } from '../catalogue/index.ts';
import type { Celsius, Seconds, Text } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { A_READING_S, isCooked } from './lethality.ts';
import type { Breach, Limits } from './limits.ts';
import { type Frame, type Order, ofDish } from './order.ts';
import type { PlanRefusal } from './refusal.ts';

/** Where an order's route lies outside the profile of limits, a refusal for each row. */
export function orderBreaches(order: Order, frame: Frame): PlanRefusal[] {
  return [
    ...cookBreach(order, frame),
    ...order.steps.flatMap(({ step }) => checkBreach(step, order, frame.limits)),
    ...timeBreaches(order, frame.limits),
    ...coolingBreach(order, frame.limits),
  ];
}

/** Where the kitchen itself does: what it keeps things at, and how often it washes a table. */
export function kitchenBreaches(
  kitchen: Kitchen,
  { rounds }: Catalogue,
  limits: Limits,
): PlanRefusal[] {
  const { cabinets, coolers, stations } = kitchen;
  const set = (
    { name, setC }: { name: Text; setC: Celsius | null },
    judged: (tempC: Celsius) => Breach | null,
  ) => (setC === null ? [] : broken({ thing: name }, judged(setC)));
  const beats = stations.flatMap((station) =>
    rounds
      .filter(({ id, everyS }) => everyS !== undefined && station.rounds.includes(id))
      .flatMap(({ everyS = seconds(0), lateS }) =>
        broken({ thing: station.name }, limits.cleanInterval(seconds(everyS + lateS))),
      ),
  );
  return [
    ...cabinets.flatMap((cabinet) => set(cabinet, limits.hotHold)),
    ...coolers.flatMap((cooler) => set(cooler, limits.coldHold)),
    ...beats,
  ];
}

function broken(about: Subject, breach: Breach | null): PlanRefusal[] {
  return breach === null ? [] : [{ rule: 'limit-broken', ...about, ...breach }];
}

type Subject = Pick<
  Extract<PlanRefusal, { rule: 'limit-broken' }>,
  'service' | 'dish' | 'step' | 'thing'
>;

/** What is heated must end as hot as its kind asks; the last check of the cook speaks for it. */
function cookBreach(order: Order, frame: Frame): PlanRefusal[] {
  const { steps, kinds } = order;
  const heated = steps.findLast(({ step }) => step.work === 'fire' || step.work === 'place');
  if (heated === undefined || steps.some(({ step }) => isCooked(step, order, frame))) return [];
  const last = steps.findLast(({ step }) => coreOf(step) !== undefined)?.step ?? heated.step;
  const kind = must(kinds.get(last.id), last.id);
  const core = coreOf(last) ?? { coreC: COLD_C, heldS: seconds(0) };
  const breach = frame.limits.endTemperature({ kind, ...core });
  const found = coreOf(last) === undefined ? null : (breach?.found ?? null);
  const about = { ...ofDish(order), step: last.title };
  return broken(about, breach && { ...breach, found });
}

/** A route without a check promises nothing. */
const COLD_C = 0 as Celsius;

function coreOf(step: Step): { coreC: Celsius; heldS: Seconds } | undefined {
  if (step.work !== 'hands' || step.check?.coreAtLeastC === undefined) return undefined;
  return { coreC: step.check.coreAtLeastC, heldS: step.check.heldS ?? A_READING_S };
}

function checkBreach(step: Step, order: Order, limits: Limits): PlanRefusal[] {
  const core = coreOf(step);
  if (core === undefined || step.work !== 'hands') return [];
  const about = { ...ofDish(order), step: step.title };
  if (step.check?.of === 'reheating') return broken(about, limits.reheat(core));
  if (step.check?.of === 'holding') return broken(about, limits.hotHold(core.coreC));
  return [];
}

function timeBreaches(order: Order, limits: Limits): PlanRefusal[] {
  return chosenLimits(order.route, order.chosen).flatMap(({ rule, from, atMostS }) => {
    const about = { ...ofDish(order), step: titleOf(order, from.step) };
    if (rule === 'out-of-temperature') return broken(about, limits.outOfTemperature(atMostS));
    if (rule === 'reheat') return broken(about, limits.reheatWithin(atMostS));
    return [];
  });
}

/** Every stage of cooling needs its check, as cold as the row says and as soon. */
function coolingBreach(order: Order, limits: Limits): PlanRefusal[] {
  const within = chosenLimits(order.route, order.chosen).filter(({ rule }) => rule === 'cooling');
  const [first] = within;
  if (first === undefined) return [];
  const stages = within.flatMap(({ to, atMostS }) => {
    const step = order.steps.find((one) => one.step.id === to.step)?.step;
    const toC = step?.work === 'hands' ? step.check?.coreAtMostC : undefined;
    return toC === undefined ? [] : [{ toC, withinS: atMostS }];
  });
  const about = { ...ofDish(order), step: titleOf(order, first.from.step) };
  return broken(about, limits.cooling(stages));
}

const titleOf = ({ steps }: Order, id: string) =>
  must(
    steps.find(({ step }) => step.id === id),
    id,
  ).step.title;
