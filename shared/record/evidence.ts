import {
  batchNamed,
  type CheckKind,
  type CorrectiveAction,
  cureOf,
  type DayState,
  everIn,
  type Feel,
  factsOf,
  indexOf,
  type LimitsFact,
  type PlanIndex,
  passagesOf,
  type Told,
} from '../day/index.ts';
import type { Celsius, Instant, Kilograms, PersonId, Text } from '../kernel/index.ts';
import { personIn } from './person-in.ts';
import type { Signed } from './record.ts';

/** What was done and found on a day, by name, to be shown to somebody who was not there. */
export type DayEvidence = {
  readonly work: readonly WorkRow[];
  readonly readings: readonly ReadingRow[];
  readonly checks: readonly CheckRow[];
  readonly amended: readonly AmendedRow[];
  /** Left out of the days that the first versions of this program sealed. */
  readonly limits?: readonly LimitsRow[];
  readonly cures?: readonly CureRow[];
  readonly spells: readonly SpellRow[];
  readonly notes: readonly (Signed & { readonly text: string })[];
};

export type WorkRow = {
  readonly title: Text;
  readonly batch: Text;
  readonly pieces: number;
  readonly startedAt: Instant;
  readonly finishedAt: Instant | null;
  readonly by: string | null;
};

export type ReadingRow = Signed & {
  readonly of: 'air' | 'core';
  readonly what: Text;
  readonly tempC: Celsius;
};

/** A check, or what was done about one that was not kept. */
export type CheckRow = Signed & {
  readonly check: CheckKind;
  /** What it was about, by its name where it has one. */
  readonly what: Text;
  readonly tempC: Celsius | null;
  readonly thermometer: string | null;
  /** What hand or eye found; left out where nobody was asked, and of days from before it was. */
  readonly feel?: Feel;
  /** Null where it is the check itself. */
  readonly action: CorrectiveAction | null;
};

/** What was taken back, beside the event that takes it back. */
export type AmendedRow = Signed & {
  readonly what: Told['kind'];
  readonly was: Signed & { readonly what: Told['kind'] };
};

/** Curing salt as two people weighed it, with what it comes to in the meat. */
export type CureRow = Signed & {
  readonly mix: Text;
  readonly batch: Text;
  readonly weightKg: Kilograms;
  readonly ingoingPpm: number;
  readonly second: string | null;
};

/** The limits changed, with what was said of why. */
export type LimitsRow = Pick<LimitsFact, 'from' | 'to' | 'changes'> & { readonly at: Instant };

export type SpellRow = {
  readonly smoker: Text;
  readonly kind: 'down' | 'cold';
  readonly from: Instant;
  readonly until: Instant | null;
  readonly tempC: Celsius;
};

/** What was done and found on a day, as its events up to now tell it; null before it has a plan. */
export function evidenceOf(state: DayState): DayEvidence | null {
  if (!state.plan) return null;
  const index = indexOf(state.plan);
  const known = { state, index };
  const by = (deed: { readonly at: Instant; readonly by: PersonId | null }) => ({
    ...{ at: deed.at, by: personIn(state, deed.by) },
  });
  return {
    work: workRows(state, index),
    readings: state.readings.map(({ where, tempC, ...deed }) => ({
      ...by(deed),
      of: where.kind,
      what: where.kind === 'air' ? smokerIn(known, where.smoker) : batchOf(index, where.stay),
      tempC,
    })),
    checks: checkRows(state, index),
    amended: amendedRows(state),
    limits: state.story.flatMap((told): LimitsRow[] => {
      if (told.kind !== 'limitsChanged') return [];
      const { at, from, to, changes } = told;
      return [{ at, from, to, changes }];
    }),
    cures: cureRows(state, index),
    spells: state.happened.spells.map(({ smoker, kind, from, until, tempC }) => ({
      ...{ smoker: smokerIn(known, smoker), kind, from, until, tempC },
    })),
    notes: state.notes.map(({ text, ...deed }) => ({ ...by(deed), text })),
  };
}

function workRows(state: DayState, index: PlanIndex): WorkRow[] {
  const passages = passagesOf(state);
  return index.plan.built.tasks
    .flatMap(({ id, work, title, pieces, batch }): WorkRow[] => {
      const { startedAt = null, finishedAt = null } = passages.get(id) ?? {};
      if (work !== 'hands' || startedAt === null) return [];
      const { hand, started } = factsOf(state, id);
      const by = personIn(state, hand ?? started?.by ?? null);
      const name = index.groups.get(batch)?.name ?? { en: batch };
      return [{ title, batch: name, pieces, startedAt, finishedAt, by }];
    })
    .sort((a, b) => a.startedAt - b.startedAt);
}

function checkRows(state: DayState, index: PlanIndex): CheckRow[] {
  return state.checks.map((entry) => ({
    at: entry.at,
    by: personIn(state, entry.by),
    check: entry.on.kind,
    what: checkedThing(entry.on, state, index),
    tempC: entry.kind === 'checkRecorded' ? entry.tempC : null,
    thermometer: entry.kind === 'checkRecorded' ? entry.thermometer : null,
    ...(entry.kind === 'checkRecorded' && entry.feel ? { feel: entry.feel } : {}),
    action: entry.kind === 'correctionRecorded' ? entry.action : null,
  }));
}

function checkedThing(
  on: DayState['checks'][number]['on'],
  state: DayState,
  index: PlanIndex,
): Text {
  const { catalogue } = index.plan;
  const known = { state, index };
  const named = (found: { readonly name: Text } | undefined, id: string): Text =>
    found?.name ?? { en: id };
  if ('batch' in on) return batchNamed(state, index, on.batch);
  if ('cut' in on) {
    return named(
      catalogue.cuts.find(({ id }) => id === on.cut),
      on.cut,
    );
  }
  if ('station' in on) {
    const station = everIn(known, ({ stations }) => stations.find(({ id }) => id === on.station));
    return station?.name ?? { en: on.station };
  }
  return { en: 'cooler' in on ? on.cooler : on.thermometer };
}

function cureRows(state: DayState, index: PlanIndex): CureRow[] {
  return [...state.happened.cures].flatMap(([task, { at, weightKg, first, second }]): CureRow[] => {
    const cure = cureOf(index, task);
    if (!cure) return [];
    const { nitriteKg, greenKg } = cure.into(weightKg);
    return [
      {
        ...{ at, by: personIn(state, first), second: personIn(state, second) },
        ...{ mix: cure.mix, batch: batchOf(index, task), weightKg },
        ingoingPpm: Math.round((nitriteKg / greenKg) * 1e6),
      },
    ];
  });
}

/** What was undone, and starts and ends that were taken back on their line. */
function amendedRows(state: DayState): AmendedRow[] {
  const { story } = state;
  const signed = (told: Told) => ({
    ...{ at: told.at, by: personIn(state, told.personId), what: told.kind },
  });
  return story.flatMap((told, i) => {
    const was = amendedBy(told, story.slice(0, i));
    return was ? [{ ...signed(told), was: signed(was) }] : [];
  });
}

function amendedBy(told: Told, before: readonly Told[]): Told | undefined {
  const lastOf = (kind: Told['kind']) =>
    'task' in told
      ? before.findLast((each) => each.kind === kind && 'task' in each && each.task === told.task)
      : undefined;
  if (told.kind === 'undone') {
    return before.find(({ commandId, kind }) => commandId === told.command && kind !== 'undone');
  }
  if (told.kind === 'startTakenBack') return lastOf('taskStarted');
  return told.kind === 'finishTakenBack' ? lastOf('taskFinished') : undefined;
}

const smokerIn = (known: Parameters<typeof everIn>[0], id: string): Text =>
  everIn(known, ({ smokers }) => smokers.find((smoker) => smoker.id === id))?.name ?? { en: id };

const batchOf = (index: PlanIndex, stay: Parameters<PlanIndex['tasks']['get']>[0]): Text => {
  const batch = index.tasks.get(stay)?.batch;
  return (batch && index.groups.get(batch)?.name) ?? { en: stay };
};
