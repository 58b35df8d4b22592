import type { ActivityId } from '../../../shared/kernel/index.ts';
import type {
  Activity,
  Lag,
  Problem,
  Resource,
  ResourceId,
} from '../../../shared/schedule/index.ts';
import type { Measure } from '../../../shared/schedule/worth.ts';

/** One way to do an activity at one time: a variable of the program, one or nought. */
type Choice = {
  readonly name: string;
  readonly activity: number;
  readonly startS: number;
  readonly endS: number;
  readonly uses: readonly { readonly resource: ResourceId; readonly amount: number }[];
  readonly states: ReadonlyMap<ResourceId, string>;
};

/**
 * A day as a linear program in whole numbers, a variable for each mode, use, length and start
 * (after A. A. B. Pritsker, L. J. Watters and P. M. Wolfe, Management Science 16, 1969), in the LP
 * format of CPLEX: the least `aheadS` with every goal on time. It knows nothing of clashes, nor of
 * changes of state that take different times; lengths are above nought.
 */
export function programOf(problem: Problem, { weights, dueS }: Measure): string {
  const isDue = ({ activity, startS, endS }: Choice) =>
    problem.goals.every(({ activity: id, end, dueS: due }) => {
      return problem.activities[activity]?.id !== id || (end === 'end' ? endS : startS) <= due;
    });
  const choices = problem.activities
    .flatMap((activity, i) => choicesOf(problem, activity, i))
    .filter(isDue);
  const of = (i: number) => choices.filter(({ activity }) => activity === i);
  const numbers = new Map(problem.activities.map(({ id }, i) => [id, i]));
  const sum = (terms: readonly string[]) => (terms.length > 0 ? terms.join(' + ') : '0 none');
  const rows = problem.activities.map((_, i) => `${sum(of(i).map(({ name }) => name))} = 1`);
  for (const lag of problem.lags) rows.push(...lagged(lag, (id) => of(numbers.get(id) ?? -1)));
  for (const resource of problem.resources) rows.push(...shared(resource, choices, problem));
  const ahead = choices.map(({ name, activity, endS }) => {
    return `${(weights[activity] ?? 0) * ((dueS[activity] ?? 0) - endS)} ${name}`;
  });
  return [
    'Minimize',
    ` ahead: ${plus(ahead)}`,
    'Subject To',
    ...rows.map((row, i) => ` r${i}: ${row}`),
    'Bounds',
    ' none = 0',
    'Binary',
    ` ${choices.map(({ name }) => name).join(' ')}`,
    'End',
  ].join('\n');
}

/** Terms with their own signs, in a row. */
const plus = (terms: readonly string[]) =>
  terms.length > 0 ? terms.map((term) => `+ ${term}`.replace('+ -', '- ')).join(' ') : '0 none';

/** No choice of one end with any of the other that is too near to it or too far (disaggregated). */
function lagged({ from, to, minS, maxS }: Lag, of: (id: ActivityId) => readonly Choice[]) {
  const names = (end: Lag['from'], holds: (timeS: number) => boolean) =>
    of(end.activity)
      .filter((each) => holds(each[`${end.end}S`]))
      .map(({ name }) => name);
  const times = [...new Set(of(from.activity).map((each) => each[`${from.end}S`]))];
  return times.flatMap((timeS) => {
    const tooSoon =
      minS === undefined
        ? []
        : [[...names(from, (at) => at >= timeS), ...names(to, (at) => at < timeS + minS)]];
    const tooLate =
      maxS === undefined
        ? []
        : [[...names(from, (at) => at <= timeS), ...names(to, (at) => at > timeS + maxS)]];
    return [...tooSoon, ...tooLate].map((terms) => `${plus(terms)} <= 1`);
  });
}

function choicesOf({ horizonS, resources }: Problem, activity: Activity, i: number): Choice[] {
  const found: Choice[] = [];
  activity.modes.forEach(({ length, needs, states }, m) => {
    const [least, most] =
      length.kind === 'work' ? [length.typicalS, length.typicalS] : [length.minS, length.maxS];
    const fills = needs.reduce<Choice['uses'][]>(
      (all, { oneOf, amount }) =>
        all.flatMap((uses) => oneOf.map((resource) => [...uses, { resource, amount }])),
      [[]],
    );
    fills.forEach((uses, f) => {
      for (let lengthS: number = least; lengthS <= most; lengthS++) {
        for (let startS: number = activity.releaseS ?? 0; startS + lengthS <= horizonS; startS++) {
          const endS = startS + lengthS;
          const isOpen = uses.every(({ resource: id }) => {
            const its = resources.find((each) => each.id === id);
            if (its?.kind !== 'capacity' || !its.open) return true;
            return its.open.some(({ start, end }) => start <= startS && endS <= end);
          });
          if (!isOpen) continue;
          const name = `x${i}m${m}f${f}l${lengthS}s${startS}`;
          const its = new Map(states.map(({ resource, state }) => [resource, state]));
          found.push({ name, activity: i, startS, endS, uses, states: its });
        }
      }
    });
  });
  return found;
}

/** At no time more of it than there is; of a state, never two at once, nor too soon after. */
function shared(resource: Resource, choices: readonly Choice[], { horizonS }: Problem): string[] {
  const times = Array.from({ length: horizonS }, (_, timeS) => timeS);
  if (resource.kind === 'capacity') {
    return times.flatMap((timeS) => {
      const terms = choices
        .filter(({ startS, endS }) => startS <= timeS && timeS < endS)
        .flatMap(({ name, uses }) =>
          uses
            .filter(({ resource: id }) => id === resource.id)
            .map((use) => `${use.amount} ${name}`),
        );
      return terms.length > 0 ? [`${plus(terms)} <= ${resource.capacity}`] : [];
    });
  }
  const changeS = resource.defaultChangeS;
  const activities = [...new Set(choices.map(({ activity }) => activity))];
  return activities.flatMap((a) =>
    activities.flatMap((b) => {
      if (a === b) return [];
      return times.flatMap((timeS) => {
        const at = (activity: number, state: string, afterS: number) =>
          choices
            .filter((each) => each.activity === activity && each.states.get(resource.id) === state)
            .filter(({ startS, endS }) => startS <= timeS && timeS < endS + afterS)
            .map(({ name }) => name);
        return [
          [at(a, 'hot', changeS), at(b, 'low', 0)],
          [at(a, 'low', changeS), at(b, 'hot', 0)],
        ].flatMap(([first = [], second = []]) =>
          first.length > 0 && second.length > 0 ? [`${plus([...first, ...second])} <= 1`] : [],
        );
      });
    }),
  );
}
