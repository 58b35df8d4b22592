import type { Seconds, Span } from '../kernel/index.ts';
import { overlaps } from '../kernel/index.ts';
import type { Problem, Resource, ResourceId } from '../schedule/index.ts';

/** Hands that are out and places where nothing new may be put, by when they are so. */
export type Shut = ReadonlyMap<ResourceId, Span<Seconds>>;

/** The same problem, in which nothing is to be had of what is shut while it is. */
export function withShut(problem: Problem, shut: Shut): Problem {
  const resources = problem.resources.map((each): Resource => {
    const away = shut.get(each.id);
    if (!away || each.kind === 'state') return each;
    const whole = { start: 0 as Seconds, end: problem.horizonS };
    return { ...each, open: (each.open ?? [whole]).flatMap((span) => besides(span, away)) };
  });
  return { ...problem, resources };
}

function besides(span: Span<Seconds>, away: Span<Seconds>): Span<Seconds>[] {
  if (!overlaps(span, away)) return [span];
  const before = { start: span.start, end: away.start };
  const after = { start: away.end, end: span.end };
  return [before, after].filter(({ start, end }) => start < end);
}
