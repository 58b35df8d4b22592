import type { Fault } from './faults.ts';
import { known, ordered, twice, whole } from './faults.ts';
import { malformedActivities } from './malformed-activities.ts';
import type { Clash, Part, Problem, Resource } from './model.ts';

/**
 * Every id that is not known or given twice, every number out of its range, every span turned
 * round.
 */
export function malformed(problem: Problem): Fault[] {
  const activities = new Set<string>(problem.activities.map(({ id }) => id));
  const resources = new Set<string>(problem.resources.map(({ id }) => id));
  return [
    ...whole('horizonS', problem.horizonS, 0),
    ...twice('activities', problem.activities),
    ...twice('resources', problem.resources),
    ...twice('goals', problem.goals),
    ...problem.resources.flatMap(malformedResource),
    ...malformedActivities(problem),
    ...problem.lags.flatMap(({ from, to, minS, maxS }, i) => {
      const where = `lags[${i}]`;
      return [
        ...known(`${where}.from`, from.activity, activities),
        ...known(`${where}.to`, to.activity, activities),
        ...(minS === undefined ? [] : whole(`${where}.minS`, minS)),
        ...(maxS === undefined ? [] : whole(`${where}.maxS`, maxS)),
        ...ordered(where, minS, maxS),
      ];
    }),
    ...problem.goals.flatMap(({ id, activity, dueS }) => [
      ...known(`goals.${id}`, activity, activities),
      ...whole(`goals.${id}.dueS`, dueS),
    ]),
    ...problem.clashes.flatMap((clash, i) =>
      malformedClash(`clashes[${i}]`, clash, activities, resources),
    ),
  ];
}

function malformedResource(resource: Resource): Fault[] {
  const where = `resources.${resource.id}`;
  if (resource.kind === 'state') {
    return [
      ...whole(`${where}.defaultChangeS`, resource.defaultChangeS, 0),
      ...resource.changes.flatMap(({ from, to, takesS }) =>
        whole(`${where}.changes.${from}-${to}`, takesS, 0),
      ),
    ];
  }
  const open = resource.open ?? [];
  return [
    ...whole(`${where}.capacity`, resource.capacity, 0),
    ...open.flatMap(({ start, end }, i) => [
      ...whole(`${where}.open[${i}].start`, start),
      ...whole(`${where}.open[${i}].end`, end),
      ...ordered(`${where}.open[${i}]`, start, end),
      ...ordered(`${where}.open[${i}]`, open[i - 1]?.end, start),
    ]),
  ];
}

function malformedClash(
  where: string,
  { upper, lower, places }: Clash,
  activities: ReadonlySet<string>,
  resources: ReadonlySet<string>,
): Fault[] {
  const part = (side: string, { fromS, toS }: Part) => [
    ...whole(`${where}.${side}.fromS`, fromS, 0),
    ...ordered(`${where}.${side}`, fromS, toS),
  ];
  return [
    ...known(`${where}.upper`, upper.activity, activities),
    ...known(`${where}.lower`, lower.activity, activities),
    ...part('upper', upper.part),
    ...part('lower', lower.part),
    ...places.flat().flatMap((place) => known(`${where}.places`, place, resources)),
  ];
}
