import type { ActivityId, Seconds } from '../../kernel/index.ts';
import { must, seconds } from '../../kernel/index.ts';
import type { Placement, Schedule } from '../model.ts';

/** What would be otherwise for one activity. */
export type Difference = {
  readonly activity: ActivityId;
  /** How much later it starts; below nought: earlier. */
  readonly byS: Seconds;
  readonly before: Placement;
  readonly after: Placement;
  /** Whether it is done in another way, by others or elsewhere, and not just at another time. */
  readonly isElsewhere: boolean;
};

/** Everything that is otherwise in the second of two schedules, in the order of its starts. */
export function differencesBetween(first: Schedule, second: Schedule): Difference[] {
  const was = new Map(first.placements.map((placement) => [placement.activity, placement]));
  return second.placements
    .flatMap((after): Difference[] => {
      const before = must(was.get(after.activity), after.activity);
      const isElsewhere = before.mode !== after.mode || usesOf(before) !== usesOf(after);
      const byS = seconds(after.startS - before.startS);
      const isSame = !isElsewhere && byS === 0 && before.endS === after.endS;
      return isSame ? [] : [{ activity: after.activity, byS, before, after, isElsewhere }];
    })
    .sort((a, b) => a.after.startS - b.after.startS);
}

const usesOf = ({ uses }: Placement) =>
  uses
    .map(({ need, resource }) => `${need} ${resource}`)
    .sort()
    .join();

/** What another hand or place costs, and a near start that is moved at all; our choice. */
const ELSEWHERE_S = 1_800;
const NEAR_S = 600;

/**
 * What differences cost those who must follow them, as seconds: each near start by how much it is
 * moved and something for being moved, each change of hand or place, and nothing for what is far
 * and merely later.
 */
export function taxS(differences: readonly Difference[], nearUntilS: number): number {
  return differences.reduce((sum, { byS, before, after, isElsewhere }) => {
    const isNear = Math.min(before.startS, after.startS) < nearUntilS;
    const moved = isNear && byS !== 0 ? NEAR_S + Math.abs(byS) : 0;
    return sum + moved + (isElsewhere ? ELSEWHERE_S : 0);
  }, 0);
}
