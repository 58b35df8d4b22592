import type { Instant } from '../kernel/index.ts';
import type { ChartBar, DayChart } from '../view/index.ts';
import { clockTime, countPieces } from './amounts.ts';
import { clockRange } from './clock-range.ts';
import { deskWords } from './desk-words.ts';
import { sayBecause } from './reasons.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { clockAhead } from './say-when.ts';

/** A bar of the chart in a line: what, how many, for which batch, from when to when. */
export function sayBar(
  bar: ChartBar,
  { batches, pieces }: Pick<DayChart, 'batches' | 'pieces'>,
  say: Say,
  now: Instant,
): string {
  const words = deskWords[say.language];
  const [batch, piece] = [batches[bar.batch], pieces[bar.piece]];
  const last = bar.ranges.at(-1);
  const range = last ? clockRange(last.lowAt, last.highAt, say) : null;
  return [
    textIn(bar.title, say),
    piece && bar.pieces > 0 ? countPieces(bar.pieces, piece, say) : null,
    batch ? textIn(batch, say) : null,
    stateOf(bar, say) ?? clockAhead(bar.startAt, now, say),
    bar.state === 'done' ? null : words.ends(clockAhead(bar.endAt, now, say), range),
    bar.plannedStartAt ? words.plannedWas(clockAhead(bar.plannedStartAt, now, say)) : null,
  ]
    .filter(Boolean)
    .join(' · ');
}

/** Why the first of these is when it is: a sentence for each thing that it hangs on, in turn. */
export function sayWhy(bars: readonly ChartBar[], say: Say, now: Instant): string[] {
  const words = deskWords[say.language];
  return bars.map((bar) => {
    const why = bar.because ? sayBecause(bar.because, say) : (stateOf(bar, say) ?? '');
    return words.because(clockAhead(bar.startAt, now, say), textIn(bar.title, say), why);
  });
}

function stateOf({ state, startAt, endAt }: ChartBar, say: Say): string | null {
  const words = deskWords[say.language];
  if (state === 'done') return words.doneAt(clockTime(endAt, say));
  return state === 'running' ? words.startedAt(clockTime(startAt, say)) : null;
}
