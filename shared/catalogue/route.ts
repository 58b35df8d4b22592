import type { CutId, StepId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Route, RouteLimit, Step } from './route-schema.ts';

/** Which option each choice of a route falls on. */
export type Chosen = Readonly<Record<string, string>>;

/** A step that is in, with the steps that must have ended before it. */
export type ChosenStep = { readonly step: Step; readonly after: readonly StepId[] };

/** The usual option of every choice, save those that are said otherwise. */
export function chosenOptions({ choices }: Pick<Route, 'choices'>, said: Chosen): Chosen {
  const chosen: Record<string, string> = {};
  for (const { id, usual, usualWhen = [] } of choices) {
    const other = usualWhen.find((one) => isIn(one, chosen));
    chosen[id] = said[id] ?? other?.usual ?? usual;
  }
  return chosen;
}

/** The cut that is worked on with these options. */
export function chosenCut({ cut, choices }: Pick<Route, 'cut' | 'choices'>, chosen: Chosen): CutId {
  const taken = choices.map(({ id, options }) => options.find((one) => one.id === chosen[id]));
  return taken.findLast((option) => option?.as)?.as ?? cut;
}

/** Every way the choices of a route can fall, as far as any step or limit hangs on them. */
export function allChosen(route: Route): Chosen[] {
  const asked = new Set(
    [...route.steps, ...route.limits].flatMap(({ when = {} }) => Object.keys(when)),
  );
  return route.choices
    .filter(({ id }) => asked.has(id))
    .reduce<Chosen[]>(
      (ways, { id, options }) =>
        ways.flatMap((way) => options.map((option) => ({ ...way, [id]: option.id }))),
      [{}],
    );
}

/**
 * The steps that the chosen options leave in, in the order of the route. A step that is out hands
 * what it waited for on to those that waited for it. A step that spans others is in no chain:
 * nothing waits for it unless it says so.
 */
export function chosenSteps(route: Route, chosen: Chosen): ChosenStep[] {
  const left = new Map(route.steps.map((step) => [step.id, isIn(step, chosen)]));
  const afterOf = listedAfter(route.steps);
  const ended = (id: StepId): StepId[] =>
    must(left.get(id), id) ? [id] : (afterOf.get(id) ?? []).flatMap(ended);
  const steps = route.steps
    .filter(({ id }) => left.get(id))
    .map((step) => ({ step, after: [...new Set((afterOf.get(step.id) ?? []).flatMap(ended))] }));
  return withoutDetours(steps);
}

/** Leaves out of each step's list what one of the others there waited for already. */
function withoutDetours(steps: readonly ChosenStep[]): ChosenStep[] {
  const afterOf = new Map(steps.map(({ step, after }) => [step.id, after]));
  const goBack = (id: StepId, passed: Set<StepId>): void => {
    for (const before of afterOf.get(id) ?? []) {
      if (!passed.has(before)) goBack(before, passed.add(before));
    }
  };
  return steps.map(({ step, after }) => {
    // Most wait for one alone. A route is read in hundreds of ways, so this is not looked into.
    if (after.length < 2) return { step, after };
    const implied = new Set<StepId>();
    for (const id of after) goBack(id, implied);
    return { step, after: after.filter((id) => !implied.has(id)) };
  });
}

/** Whether a step takes its time from others, which happen inside of it. */
export function isSpanning(step: Step): boolean {
  return spansOf(step) !== undefined;
}

/** The moments that a spanning step lasts from and to. */
export function spansOf(step: Step) {
  return step.work === 'place' || step.work === 'wait' ? step.spans : undefined;
}

/** The limits that bind with these options: those whose moments both come about. */
export function chosenLimits(route: Route, chosen: Chosen): RouteLimit[] {
  const steps = route.steps.filter((step) => isIn(step, chosen)).map(({ id }) => id);
  return route.limits.filter(
    (limit) =>
      isIn(limit, chosen) && steps.includes(limit.from.step) && steps.includes(limit.to.step),
  );
}

function isIn({ when }: Pick<Step, 'when'>, chosen: Chosen): boolean {
  if (when === undefined) return true;
  const conditions = Object.entries(when);
  return conditions.every(([choice, options]) => options.includes(chosen[choice] ?? ''));
}

function listedAfter(steps: readonly Step[]): Map<StepId, readonly StepId[]> {
  const after = new Map<StepId, readonly StepId[]>();
  let previous: StepId[] = [];
  for (const step of steps) {
    if (isSpanning(step)) {
      after.set(step.id, step.after ?? []);
    } else {
      after.set(step.id, step.after ?? previous);
      previous = [step.id];
    }
  }
  return after;
}
