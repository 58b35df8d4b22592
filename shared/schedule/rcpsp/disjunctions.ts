import { cell } from './cell.ts';
import { addLag, type LongestLags } from './longest-lags.ts';
import type { Project, ProjectLag } from './project.ts';

/** Two activities that no resource carries at once, in an order that is still open. */
export type Disjunction = readonly [one: number, other: number];

/** What follows from the lags for such pairs. */
export type Selection = {
  /** Orders that alone are possible, as lags. */
  readonly decided: readonly ProjectLag[];
  readonly open: readonly Disjunction[];
};

/**
 * Immediate selection (J. Carlier and E. Pinson 1989): where one order of a pair would close a
 * circle of lags, the other is taken, until nothing more follows. Undefined where neither can be.
 */
export function selected(project: Project, longest: LongestLags): Selection | undefined {
  const { durations } = project;
  const decided: ProjectLag[] = [];
  let open = disjunctions(project);
  for (let before = -1; before !== open.length; ) {
    before = open.length;
    const left: Disjunction[] = [];
    for (const pair of open) {
      const [one, other] = pair;
      const canBe = { forth: canPrecede(one, other), back: canPrecede(other, one) };
      if (!canBe.forth && !canBe.back) return undefined;
      if (canBe.forth && canBe.back) {
        if (!isOrdered(one, other) && !isOrdered(other, one)) left.push(pair);
      } else if (canBe.forth) decide(one, other);
      else decide(other, one);
    }
    open = left;
  }
  return { decided, open };

  function lag(from: number, to: number): number {
    return cell(longest.least, from * longest.size + to);
  }
  function canPrecede(first: number, second: number): boolean {
    return lag(second, first) + cell(durations, first) <= 0;
  }
  function isOrdered(first: number, second: number): boolean {
    return lag(first, second) >= cell(durations, first);
  }
  function decide(first: number, second: number): void {
    if (isOrdered(first, second)) return;
    decided.push([first, second, cell(durations, first)]);
    addLag(longest, first, second, cell(durations, first));
  }
}

function disjunctions({ durations, demands, capacities }: Project): Disjunction[] {
  const kinds = capacities.length;
  const clash = (one: number, other: number) =>
    capacities.some(
      (capacity, kind) =>
        cell(demands, one * kinds + kind) + cell(demands, other * kinds + kind) > capacity,
    );
  const pairs: Disjunction[] = [];
  for (let one = 0; one < durations.length; one++) {
    for (let other = one + 1; other < durations.length; other++) {
      const last = cell(durations, one) > 0 && cell(durations, other) > 0;
      if (last && clash(one, other)) pairs.push([one, other]);
    }
  }
  return pairs;
}
