import type { FileFault } from '../kernel/index.ts';
import { filePath } from '../kernel/index.ts';
import {
  allChosen,
  type Chosen,
  type ChosenStep,
  chosenSteps,
  isSpanning,
  spansOf,
} from './route.ts';
import type { Moment, Route } from './route-schema.ts';

/**
 * What is wrong with a route that only shows when its steps are read together. Every way the
 * choices can fall must leave a whole route: it ends in one step of serving, which all others lead
 * to, and what spans others finds its ends.
 */
export function routeFaults(route: Route, index: number): FileFault[] {
  const at = (...keys: readonly PropertyKey[]) => ['routes', index, ...keys];
  const order = orderFaults(route, at);
  if (order.length > 0) return order;
  const faults = allChosen(route).flatMap((chosen) => faultsOfChosen(route, chosen, at));
  return [...new Map(faults.map((fault) => [`${fault.path} ${fault.allowed}`, fault])).values()];
}

type At = (...keys: readonly PropertyKey[]) => PropertyKey[];

/** Steps must be listed in an order they can be done in, or a chain could bite its own tail. */
function orderFaults(route: Route, at: At): FileFault[] {
  const place = new Map(route.steps.map(({ id }, index) => [id, index]));
  return route.steps.flatMap((step, index) =>
    (step.after ?? []).flatMap((id, n) =>
      (place.get(id) ?? -1) < index
        ? []
        : [fault(at('steps', index, 'after', n), id, 'a step that is listed before this one')],
    ),
  );
}

function faultsOfChosen(route: Route, chosen: Chosen, at: At): FileFault[] {
  const steps = chosenSteps(route, chosen);
  const way = Object.entries(chosen).map(([choice, option]) => `${choice}: ${option}`);
  const when = way.length > 0 ? ` (with ${way.join(', ')})` : '';
  return [
    ...endFaults(steps, at, when),
    ...steps.flatMap(({ step, after }) => {
      const path = at('steps', route.steps.indexOf(step));
      return [
        ...spanFaults(step, steps, path, when),
        ...waitFaults(step, after, steps, path, when),
      ];
    }),
  ];
}

function endFaults(steps: readonly ChosenStep[], at: At, when: string): FileFault[] {
  const ledTo = new Set(steps.flatMap(({ after }) => after));
  const ends = steps.filter(({ step }) => !isSpanning(step) && !ledTo.has(step.id));
  const [last] = ends;
  if (ends.length === 1 && last?.step.work === 'serve') return [];
  const found = ends.map(({ step }) => `"${step.id}"`).join(', ') || 'nothing';
  return [fault(at('steps'), found, `one end, a step with work "serve"${when}`)];
}

function spanFaults(
  step: ChosenStep['step'],
  steps: readonly ChosenStep[],
  path: readonly PropertyKey[],
  when: string,
): FileFault[] {
  const spans = spansOf(step);
  if (spans === undefined) return [];
  const isLost = (moment: Moment) => !steps.some((other) => other.step.id === moment.step);
  return (['from', 'to'] as const)
    .filter((end) => isLost(spans[end]))
    .map((end) =>
      fault([...path, 'spans', end, 'step'], spans[end].step, `a step that is in${when}`),
    );
}

/** A wait fills the time between two steps; with more of them it could not meet both ends. */
function waitFaults(
  { id, work, ...step }: ChosenStep['step'],
  after: readonly string[],
  steps: readonly ChosenStep[],
  path: readonly PropertyKey[],
  when: string,
): FileFault[] {
  if (work !== 'wait' || ('spans' in step && step.spans)) return [];
  const followers = steps.filter((other) => other.after.includes(id)).length;
  if (after.length === 1 && followers === 1) return [];
  const found = `${after.length} before and ${followers} after it`;
  return [fault(path, found, `a wait between one step and one other${when}`)];
}

const fault = (path: readonly PropertyKey[], found: string, allowed: string): FileFault => ({
  path: filePath(path),
  found,
  allowed,
});
