import type { TubIntent } from '../day/index.ts';
import type { Kilograms } from '../kernel/index.ts';
import { kilograms } from '../kernel/index.ts';
import type { TaskView } from './view.ts';

/** A tub as the scale showed it here; what it holds more than was thought, the others cannot. */
export function layTub(
  tasks: readonly TaskView[],
  { batch, tub, weightKg }: Omit<TubIntent, 'kind'>,
): readonly TaskView[] {
  return tasks.map((task) => {
    const before = task.tubs?.find((each) => each.tub === tub);
    if (task.batch !== batch || !task.tubs || !before) return task;
    const moreKg = weightKg - (before.isWeighed ? before.weightKg : 0);
    const tubs = task.tubs.map((each) =>
      each === before
        ? { ...each, weightKg, isWeighed: true }
        : { ...each, mostKg: lessKg(each.mostKg, moreKg) },
    );
    return { ...task, tubs };
  });
}

const lessKg = (mostKg: Kilograms, byKg: number) => kilograms(Math.max(0, mostKg - byKg));
