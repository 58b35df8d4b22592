import { factsOf, type Live, passagesOf } from '../../shared/day/index.ts';
import type { PersonId } from '../../shared/kernel/index.ts';
import type { Task } from '../../shared/plan/index.ts';

/** A day as its log tells it: work that is done, work that runs, and work that is still to come. */
export type Told = {
  readonly done: readonly Task[];
  readonly running: readonly Task[];
  readonly next: readonly Task[];
};

/** What nobody taps is told while it runs; a stay in a smoker is told by the smoke in it. */
export function toldBy(live: Live): Told {
  const passages = passagesOf(live.state);
  const stageOf = ({ id }: Task) => {
    const passage = passages.get(id);
    if (passage?.finishedAt != null) return 'done';
    return passage?.startedAt != null ? 'running' : 'next';
  };
  const tasks = [...live.index.plan.built.tasks]
    .filter(({ work }) => work !== 'place')
    .sort((a, b) => live.timesOf(a.id).startS - live.timesOf(b.id).startS);
  const at = (stage: ReturnType<typeof stageOf>) => tasks.filter((task) => stageOf(task) === stage);
  const byHand = (task: Task) => task.work === 'hands';
  return {
    done: at('done').filter(byHand),
    running: at('running'),
    next: at('next').filter(byHand),
  };
}

/** Who did it, or is at it: the hand that it was given to, else whoever tapped. */
export function doneBy(live: Live, task: Task): PersonId | null {
  const { hand, started } = factsOf(live.state, task.id);
  return hand ?? started?.by ?? null;
}
