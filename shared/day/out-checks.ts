import type { Instant } from '../kernel/index.ts';
import { after, minutes, must, seconds } from '../kernel/index.ts';
import { asksOf, withinS } from './check-limits.ts';
import { standingOfCheck } from './check-story.ts';
import { type Looking, type OpenCheck, opened, sinceFailed } from './open-check.ts';
import { passagesOf } from './passage.ts';
import type { Moments, Watched } from './watched.ts';

/** So long before its time is over it is said (judged). */
const SAID_S = minutes(45);

/** Raw food that is out of the cooler: all its stretches count together. */
export function outChecks(look: Looking, watched: Watched): OpenCheck[] {
  const { batch, outs } = watched;
  const mostS = withinS(look.profile, 'out-of-temperature');
  if (mostS === null) return [];
  const on = { kind: 'out-of-temperature', batch: batch.id } as const;
  let outS = 0;
  for (const { from, to } of outs) {
    const began = when(look, from);
    if (began === null) continue;
    const ended = when(look, to);
    const lateAt = after(began, seconds(Math.max(0, mostS - outS)));
    const station = must(look.index.tasks.get(from.task), from.task).station;
    if (ended !== null && ended <= lateAt) {
      outS += (ended - began) / 1000;
      continue;
    }
    const standing = standingOfCheck(look.said, on, { since: lateAt, broken: () => null });
    if (standing.kind === 'ended') return [];
    if (ended === null) {
      const fromAt = after(lateAt, seconds(-SAID_S));
      return opened(look, { on, station, fromAt, dueAt: fromAt, lateAt }, watched);
    }
    const { row, asked } = must(asksOf(look.profile, on, watched.food), on.kind);
    const found = `${Math.round((outS + (ended - began) / 1000) / 360) / 10} h`;
    const breach = { row: must(row, on.kind), asked, found };
    const failed = { at: ended, by: null, tempC: null, breach };
    return opened(look, { on, station, ...sinceFailed(failed), failed }, watched);
  }
  return [];
}

function when({ state }: Looking, { task, end }: Moments): Instant | null {
  const { startedAt, finishedAt } = must(passagesOf(state).get(task), task);
  return end === 'start' ? startedAt : finishedAt;
}
