import fc from 'fast-check';
import { seconds } from '../../../shared/kernel/index.ts';
import type { Problem, Timeline, Update } from '../../../shared/schedule/index.ts';

/** One thing that is told: of which activity (by number), what, and an amount. */
export type News = {
  readonly of: number;
  readonly what: 'started' | 'finished' | 'takenBack' | 'lengthIs' | 'notBefore';
  readonly amount: number;
};

export const someNews: fc.Arbitrary<News[]> = fc.array(
  fc.record({
    of: fc.nat(15),
    what: fc.constantFrom('started', 'finished', 'takenBack', 'lengthIs', 'notBefore'),
    amount: fc.integer({ min: -30, max: 60 }),
  }),
  { maxLength: 12 },
);

/** Tells a timeline one thing, with times near those it expects. */
export function tell(timeline: Timeline, { activities }: Problem, news: News): Update | undefined {
  const activity = activities[news.of % activities.length];
  if (!activity) return undefined;
  const { startS, endS, stage } = timeline.times(activity.id);
  const about = (s: number) => seconds(Math.max(0, s + news.amount));
  switch (news.what) {
    case 'started':
      return stage === 'waiting' ? timeline.started(activity.id, about(startS)) : undefined;
    case 'finished':
      return stage === 'done' ? undefined : timeline.finished(activity.id, about(endS));
    case 'takenBack':
      return timeline.takenBack(activity.id);
    case 'lengthIs':
      return timeline.lengthIs(activity.id, about(endS - startS));
    case 'notBefore':
      return timeline.notBefore(about(startS));
  }
}
