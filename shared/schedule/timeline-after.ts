import { initialFacts } from './initial-facts.ts';
import { liveFrom } from './live.ts';
import type { Problem, Schedule } from './model.ts';
import { publishedOf } from './published.ts';
import { relinked } from './relink.ts';
import { LiveTimeline } from './timeline.ts';
import type { Move, Timeline, Told } from './timeline-types.ts';
import { ToldFacts } from './told-facts.ts';

/**
 * A published schedule brought to life after work was moved and much was told. All of it is seen at
 * once: that is far less work than fact by fact, and times that rise with one fact do not hold each
 * other up when the next lets them fall. They are the least there are.
 */
export function timelineAfter(
  problem: Problem,
  { placements, links }: Schedule,
  { moves, tell }: { readonly moves: readonly Move[]; readonly tell: (told: Told) => void },
): Timeline {
  const published = publishedOf(problem, placements, links);
  const untold = { published, facts: initialFacts(problem, published.placements) };
  const begun = moves.length > 0 ? relinked(liveFrom(published, untold.facts), moves) : untold;
  tell(new ToldFacts(begun));
  return new LiveTimeline(liveFrom(begun.published, begun.facts));
}
