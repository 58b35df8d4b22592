import type { ChosenStep, Moment, Step } from '../catalogue/index.ts';
import { spansOf } from '../catalogue/index.ts';
import type { Seconds, StepId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';

/** How long a step is taken to last; what spans others takes the time that they take. */
export type Measure = (step: Step) => Seconds;

const measure =
  (pieces: number, time: 'low' | 'typical' | 'high', wait: 'atLeastS' | 'atMostS'): Measure =>
  (step) => {
    switch (step.work) {
      case 'hands':
      case 'fire':
        return seconds(step.time.takesS[time] * (step.time.per === 'piece' ? pieces : 1));
      case 'wait':
        return step.spans ? seconds(0) : step[wait];
      default:
        return seconds(0);
    }
  };

/** Every step as it typically is for so many pieces, and a wait as short as may be. */
const typicalPath = (pieces: number) => measure(pieces, 'typical', 'atLeastS');
/** Every step as quick as may be. */
export const shortestPath = (pieces: number) => measure(pieces, 'low', 'atLeastS');
/** Every step as long as may be. */
export const longestPath = (pieces: number) => measure(pieces, 'high', 'atMostS');

type Between = { readonly from: Moment; readonly to: Moment };

/**
 * The time from one moment of a route to another when no hand is waited for: the longest chain
 * between them. Undefined where no chain leads there.
 */
export function pathBetween(
  steps: readonly ChosenStep[],
  between: Between,
  lasts: Measure,
): Seconds | undefined {
  const from = outermost(steps, between.from);
  const to = outermost(steps, between.to);
  const source = stepOf(steps, from.step);
  const head = from.end === 'start' ? lasts(source) : 0;
  const ends = new Map<StepId, number>([[source.id, head]]);
  const starts = new Map<StepId, number>([[source.id, head - lasts(source)]]);
  for (const { step, after } of steps) {
    const before = after.flatMap((id) => ends.get(id) ?? []);
    if (step.id === source.id || before.length === 0 || spansOf(step)) continue;
    const start = Math.max(...before);
    starts.set(step.id, start);
    ends.set(step.id, start + lasts(step));
  }
  const length = (to.end === 'start' ? starts : ends).get(to.step);
  return length === undefined ? undefined : seconds(length);
}

/** The shortest time between two moments when every step takes what it typically takes. */
export function pathLength(
  steps: readonly ChosenStep[],
  between: Between,
  pieces: number,
): Seconds | undefined {
  return pathBetween(steps, between, typicalPath(pieces));
}

/** The longest chain of a route before the first portion is served. */
export function chainLength(steps: readonly ChosenStep[], pieces: number): Seconds {
  const serve = serveStep(steps);
  const chains = steps.flatMap(({ step, after }) => {
    if (after.length > 0 || spansOf(step)) return [];
    const from: Moment = { step: step.id, end: 'start' };
    return pathLength(steps, { from, to: { step: serve.id, end: 'start' } }, pieces) ?? [];
  });
  return seconds(Math.max(0, ...chains));
}

/** A step that spans others begins and ends with them. */
function outermost(steps: readonly ChosenStep[], moment: Moment): Moment {
  const spans = spansOf(stepOf(steps, moment.step));
  if (spans === undefined) return moment;
  return moment.end === 'start' ? spans.from : spans.to;
}

function stepOf(steps: readonly ChosenStep[], id: StepId): Step {
  return must(
    steps.find(({ step }) => step.id === id),
    id,
  ).step;
}

/** The step that every route ends in. */
export function serveStep(steps: readonly ChosenStep[]): Step {
  return must(
    steps.find(({ step }) => step.work === 'serve'),
    'a step of serving',
  ).step;
}
