import type { Catalogue, Step, StepOf } from '../catalogue/index.ts';
import { must } from '../kernel/index.ts';
import { teamsFor } from './hands.ts';
import { laidOf } from './laid.ts';
import { type Frame, type Order, ofDish, ofStep } from './order.ts';
import { type Fit, smokersFor } from './rack-fit.ts';
import type { PlanRefusal } from './refusal.ts';
import { weightsOf } from './weights.ts';

/** What the kitchen lacks for an order, whatever the size of its batches. */
export function lacks(order: Order, frame: Frame, catalogue: Catalogue): PlanRefusal[] {
  const steps = order.steps.map(({ step }) => step);
  return [
    ...portionLack(order),
    ...steps.flatMap((step) => stationLack(order, frame, catalogue, step)),
    ...steps.flatMap((step) =>
      step.work === 'hands' ? skillLack(order, frame, catalogue, step) : [],
    ),
    ...steps.flatMap((step) => (step.work === 'place' ? smokerLack(order, frame, step) : [])),
  ];
}

/** The smokers that can take a stay of an order, those first that keep such a fire anyway. */
export function fitsOf(
  order: Order,
  { kitchen, homes }: Frame,
  stay: StepOf<'place'>,
): readonly Fit[] {
  const { fits } = smokersFor(kitchen, laidOf(order.cut, stay), stay, order.planned.slots);
  const changes = ({ smoker, fireC }: Fit) => (homes.get(smoker.id) === fireC ? 0 : 1);
  return fits.toSorted((a, b) => changes(a) - changes(b));
}

/** A portion is cut from one piece. */
function portionLack(order: Order): PlanRefusal[] {
  const { portionKg } = order.dish;
  const pieceGivesKg = weightsOf(order.cut, 1).servedKg;
  if (portionKg <= pieceGivesKg) return [];
  return [{ rule: 'portion-over-piece', ...ofDish(order), portionKg, pieceGivesKg }];
}

function stationLack(
  order: Order,
  { kitchen }: Frame,
  catalogue: Catalogue,
  step: Step,
): PlanRefusal[] {
  if (kitchen.stations.some(({ benches }) => benches.includes(step.bench))) return [];
  const bench = must(
    catalogue.benches.find(({ id }) => id === step.bench),
    step.bench,
  );
  return [{ rule: 'no-station', ...ofStep(order, step.title), bench: bench.name }];
}

function skillLack(
  order: Order,
  { kitchen }: Frame,
  catalogue: Catalogue,
  step: StepOf<'hands'>,
): PlanRefusal[] {
  const here = ofStep(order, step.title);
  const skill = catalogue.skills.find(({ id }) => id === step.skill)?.name ?? { en: 'any' };
  const teams = teamsFor(kitchen, step);
  if (teams.length === 0) {
    const has = teamsFor(kitchen, { ...step, hands: 1 }).at(-1)?.people.length ?? 0;
    return [{ rule: 'no-skill', ...here, skill, needs: step.hands, has }];
  }
  const wished = kitchen.crew.find(({ id }) => id === order.planned.hands[step.id]);
  if (wished === undefined || teamsFor(kitchen, step, wished.id).length > 0) return [];
  return [{ rule: 'hand-lacks-skill', ...here, hand: wished.name, skill }];
}

function smokerLack(order: Order, { kitchen }: Frame, step: StepOf<'place'>): PlanRefusal[] {
  const laid = laidOf(order.cut, step);
  const { fits, unfit } = smokersFor(kitchen, laid, step, order.planned.slots);
  if (fits.length > 0) return [];
  return [{ rule: 'no-smoker', ...ofDish(order), setC: step.setC, smokers: unfit }];
}
