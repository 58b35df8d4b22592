import { cell } from './cell.ts';
import { heads, mirrored, type Precedence } from './precedence.ts';
import type { Project } from './project.ts';

/** What no schedule can be shorter than, and what of it the lags alone ask. */
export type LowerBound = { readonly bound: number; readonly criticalPath: number };

/**
 * The longest of the critical path and, for each resource, what its users need of it, before which
 * none of them can start and after which some must still follow (after P. Baptiste, C. Le Pape and
 * W. Nuijten, Annals of Operations Research 92, 1999): all subsets by earliest start and by what
 * follows are tried.
 */
export function lowerBound(project: Project, precedence: Precedence): LowerBound {
  const { durations, capacities, demands } = project;
  const kinds = capacities.length;
  const head = heads(precedence);
  const tail = heads(mirrored(precedence));
  const criticalPath = head.reduce((max, start, i) => Math.max(max, start + cell(durations, i)), 0);
  let bound = criticalPath;
  for (let kind = 0; kind < kinds; kind++) {
    const users = Array.from(durations.keys()).filter((i) => cell(demands, i * kinds + kind) > 0);
    const byHead = users.toSorted((a, b) => cell(head, b) - cell(head, a));
    for (const least of new Set(users.map((user) => cell(tail, user)))) {
      let energy = 0;
      for (const user of byHead) {
        if (cell(tail, user) < least) continue;
        energy += cell(durations, user) * cell(demands, user * kinds + kind);
        const needed = cell(head, user) + Math.ceil(energy / cell(capacities, kind)) + least;
        bound = Math.max(bound, needed);
      }
    }
  }
  return { bound, criticalPath };
}
