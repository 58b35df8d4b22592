import { after, must, seconds, type Text } from '../shared/kernel/index.ts';
import type { Kitchen } from '../shared/kitchen/index.ts';
import { type BuiltDay, type KitchenResource, kitchenResource } from '../shared/plan/index.ts';
import { type Activity, type Conflicting, whatConflicts } from '../shared/schedule/index.ts';
import {
  type ConflictNames,
  type Language,
  type Say,
  sayConflict,
  sayConflicting,
  sayConflictList,
  sayPlanRefusal,
} from '../shared/words/index.ts';
import type { PlanMade } from './adopt.ts';

/**
 * Why a plan cannot be, one sentence for each reason; left out, in the first language of its
 * kitchen.
 */
export function whyNotPlanned(
  made: Extract<PlanMade, { ok: false }>,
  kitchen: Kitchen,
  language: Language = kitchen.languages[0] ?? 'en',
): string[] {
  const say = sayIn(language, kitchen);
  if (made.why === 'refused') return made.refusals.map((refusal) => sayPlanRefusal(refusal, say));
  const names = namesIn(made.built, kitchen);
  return made.conflicts.map((conflict) => sayConflict(conflict, names, say));
}

type NoSchedule = Extract<PlanMade, { why: 'no-schedule' }>;

/** What found no room, and what was in its way. */
const namedIn = (conflicts: NoSchedule['conflicts']) =>
  conflicts.flatMap((each) => {
    if (each.kind === 'no-room') return [each.activity, ...each.blockedBy];
    return each.kind === 'goal-too-early' ? each.chain : [];
  });

export type ConflictSaid = ReturnType<typeof sayConflictList>;

/** So often a planner is asked to find out which few things cannot all be. */
const CHECKS_MOST = 240;

/** Which few things a day asks for cannot all be; null where that is not found out in time. */
export function whatCannotBe(
  { built, conflicts }: Pick<NoSchedule, 'built' | 'conflicts'>,
  kitchen: Kitchen,
  language: Language,
  shouldStop: () => boolean,
): {
  readonly conflicting: Conflicting;
  readonly sentence: string;
  readonly said: (isByChains: boolean) => ConflictSaid;
} | null {
  const found = whatConflicts(built.problem, {
    checksMost: CHECKS_MOST,
    shouldStop,
    near: namedIn(conflicts),
  });
  if (!found) return null;
  const names = namesIn(built, kitchen);
  const say = sayIn(language, kitchen);
  return {
    conflicting: found,
    sentence: sayConflicting(found, names, say),
    said: (isByChains) =>
      sayConflictList(
        isByChains ? { ...found, demands: found.chains, isProven: false, isSmallest: true } : found,
        names,
        say,
      ),
  };
}

/** How a kitchen has things said, in this language. */
export const sayIn = (language: Language, { zone, units }: Kitchen): Say => ({
  language,
  zone,
  ...units,
});

function namesIn(built: BuiltDay, kitchen: Kitchen): ConflictNames {
  const tasks = new Map(built.tasks.map((task) => [task.id, task]));
  const groups = [...built.batches, ...built.upkeep];
  const batches = new Map(groups.map((group) => [group.id, group]));
  const activities = new Map(built.problem.activities.map((each) => [each.id, each]));
  return {
    task: (id) => {
      const task = must(tasks.get(id), id);
      const batch = must(batches.get(task.batch), task.batch);
      return joined(batch.name, task.title);
    },
    resource: (id) => nameOf(kitchenResource(id), kitchen),
    at: (fromOriginS) => after(built.origin, seconds(fromOriginS)),
    takesS: (id) => leastS(must(activities.get(id), id)),
  };
}

const leastS = ({ modes }: Activity) =>
  seconds(
    Math.min(
      ...modes.map(({ length }) => (length.kind === 'work' ? length.typicalS : length.minS)),
    ),
  );

function joined(a: Text, b: Text): Text {
  const en = `${a.en}: ${b.en}`;
  return a.es && b.es ? { en, es: `${a.es}: ${b.es}` } : { en };
}

function nameOf(thing: KitchenResource, kitchen: Kitchen): Text {
  const named: readonly { readonly id: string; readonly name: Text }[] = [
    ...kitchen.stations,
    ...kitchen.smokers,
    ...kitchen.cabinets,
    ...kitchen.coolers,
    ...kitchen.crew.map(({ id, name }) => ({ id, name: { en: name } })),
  ];
  const id = Object.values(thing)[1] ?? '';
  // A slot is named after its smoker: `a/2` is rack 2 of smoker `a`.
  const [owner = '', rack] = id.split('/');
  const name: Text = named.find((candidate) => candidate.id === owner)?.name ?? { en: id };
  return rack === undefined
    ? name
    : { en: `${name.en} ${rack}`, es: `${name.es ?? name.en} ${rack}` };
}
