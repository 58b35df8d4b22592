import { currentHands, type Live, modeOf, placementOf } from '../../shared/day/index.ts';
import { type Instant, type Kilograms, must, wallTime } from '../../shared/kernel/index.ts';
import type { Task } from '../../shared/plan/index.ts';

/** A document with an end to its last line, easy on the eyes. */
export const asJson = (value: unknown) => `${JSON.stringify(value, null, 2)}\n`;

/** An instant under its name in UTC, and beside it what the kitchen's wall clock shows. */
export function moment<Name extends string>(name: Name, at: Instant, zone: string) {
  const { day, time } = wallTime(at, zone);
  return {
    [name]: new Date(at).toISOString(),
    [`${name}Local`]: `${day}T${time}`,
  } as Record<Name | `${Name}Local`, string>;
}

/** Kilograms, rounded to the gram; `weightKg` says the same with its unit in its name. */
export function weightOf(kg: Kilograms) {
  const weightKg = Math.round(kg * 1000) / 1000;
  return { weight: weightKg, weightKg };
}

/** A task with its times, hands and places, as the day now has it. */
export function activityJson(live: Live, task: Task) {
  const { state, index } = live;
  const { zone } = index.plan.built;
  const { startS, endS } = live.timesOf(task.id);
  const placement = placementOf(state, index, task.id);
  const { needs, states } = modeOf(index, placement);
  return {
    id: task.id,
    kind: kindOf(live, task),
    batch: task.batch,
    step: task.step,
    title: task.title.en,
    station: task.station,
    ...moment('start', live.instantOf(startS), zone),
    ...moment('end', live.instantOf(endS), zone),
    pieces: task.pieces,
    ...weightOf(task.weightKg),
    hands: currentHands(state, index, task.id),
    resources: placement.uses.map(({ resource }) => resource),
    uses: placement.uses.map(({ need, resource }) => {
      const { role, amount } = must(needs[need], `${task.id}#${need}`);
      return { role, resource, amount };
    }),
    states,
  };
}

/** What the catalogue calls the work: selling is a kind of its own there. */
function kindOf({ index }: Live, task: Task): string {
  const { routes } = index.plan.catalogue;
  const route = routes.find(({ id }) => id === index.batches.get(task.batch)?.route);
  return route?.steps.find(({ id }) => id === task.step)?.work ?? task.work;
}

/** How each service's promise stands; null once all of it is on the plate. */
export function servicesJson(live: Live) {
  const { services, zone } = live.index.plan.built;
  return services.map(({ id, name, opensAt, closesAt }) => {
    const outlook = live.outlookOf(id);
    return {
      id,
      name: name.en,
      ...moment('opens', opensAt, zone),
      ...moment('closes', closesAt, zone),
      inHandMin: outlook && Math.floor(outlook.inHandS / 60),
      hangsOn: outlook?.hangsOn ?? null,
    };
  });
}
