import type { Catalogue } from '../catalogue/index.ts';
import type { Celsius, SmokerId } from '../kernel/index.ts';
import { activitiesOf, aimsOf, goalOf } from './activities.ts';
import type { Aim, BuiltDay } from './built.ts';
import { clashesOf } from './clashes.ts';
import { resourcesOf } from './kitchen-resources.ts';
import { fitsOf } from './lacks.ts';
import { lagsOf } from './lags.ts';
import { mixList, pullList, tubList } from './lists.ts';
import type { Frame, Order } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import { fireState, resourceId } from './resources.ts';
import type { CookPlan } from './schema.ts';
import { plannedServices } from './services.ts';
import { tasksOf } from './tasks.ts';
import { upkeepOf } from './upkeep.ts';

type Parts = {
  readonly frame: Frame;
  readonly catalogue: Catalogue;
  readonly orders: readonly Order[];
  readonly batches: readonly OrderedBatch[];
};

/** The batches of a day as a person has them and as the schedule does. */
export function dayOf(cookPlan: CookPlan, { frame, catalogue, orders, batches }: Parts): BuiltDay {
  const { kitchen, origin, horizonS } = frame;
  const { clashes, rows } = clashesOf(batches, frame);
  return {
    day: cookPlan.day,
    zone: kitchen.zone,
    origin,
    services: plannedServices(cookPlan, kitchen.zone, orders),
    batches: batches.map(({ batch }) => batch),
    tasks: batches.flatMap((ordered) => tasksOf(ordered, frame, catalogue)),
    pull: pullList(batches, catalogue),
    mixes: mixList(batches, catalogue),
    tubs: tubList(batches),
    problem: {
      horizonS,
      activities: batches.flatMap((ordered) => activitiesOf(ordered, frame)),
      lags: batches.flatMap((ordered) => lagsOf(ordered, frame)),
      resources: resourcesOf(frame, asked(orders, frame)),
      clashes,
      goals: batches.map(goalOf),
    },
    aims: [...batches.flatMap(aimsOf), ...firesToKeep(frame)],
    upkeep: upkeepOf(cookPlan, frame, catalogue),
    unattended: [],
    rows,
  };
}

const firesToKeep = ({ homes }: Frame): Aim[] =>
  [...homes].map(([smoker, setC]) => ({
    kind: 'keeps-fire',
    fire: resourceId({ kind: 'fire', smoker }),
    state: fireState(setC),
  }));

/** The set temperatures and the cores that the orders ask for. */
function asked(orders: readonly Order[], frame: Frame) {
  const firesC = new Map<SmokerId, Celsius[]>();
  const coresC = new Set<Celsius>();
  for (const order of orders) {
    for (const { step } of order.steps) {
      if (step.work !== 'place') continue;
      for (const { smoker, fireC } of fitsOf(order, frame, step)) {
        firesC.set(smoker.id, [...(firesC.get(smoker.id) ?? []), fireC]);
      }
    }
    for (const kind of order.kinds.values()) {
      const coreC = frame.limits.coreNeededC(kind);
      if (coreC !== null) coresC.add(coreC);
    }
  }
  return { firesC, coresC: [...coresC] };
}
