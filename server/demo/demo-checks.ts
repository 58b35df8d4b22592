import {
  type AdoptedPlan,
  type DayState,
  decide,
  EVENT_VERSION,
  emptyDay,
  type Fact,
  fold,
  type Intent,
  type OpenCheck,
  openChecks,
} from '../../shared/day/index.ts';
import {
  after,
  type Celsius,
  type CommandId,
  celsius,
  type DayId,
  type Instant,
  instant,
  type PersonId,
  type Random,
  seconds,
  seeded,
} from '../../shared/kernel/index.ts';

/** What somebody of the invented crew tapped. */
export type DemoTap = {
  readonly at: Instant;
  readonly intent: Intent;
  /** Null for what a thermometer sent by itself. */
  readonly personId: PersonId | null;
};

/** A plan with all that it was made from. */
export type DemoPlan = Pick<
  AdoptedPlan,
  'cookPlan' | 'kitchen' | 'catalogue' | 'built' | 'schedule'
>;

/** A probe stands this long before it is read. */
const PROBE_S = seconds(90);

/**
 * The same taps with the checks that fell due between them, each looked at in time by whoever
 * tapped last, and each kept.
 */
export function withChecks(
  plan: DemoPlan,
  taps: readonly DemoTap[],
  { now, seed }: { now: Instant; seed: number },
): DemoTap[] {
  const day = new ToldDay(plan);
  const random = seeded(seed);
  const all: DemoTap[] = [];
  let person: PersonId | null = null;
  const lookUntil = (until: Instant) => {
    for (let due = day.dueBy(until); due.length > 0 && person; due = day.dueBy(until)) {
      for (const check of due) {
        const at = instant(Math.max(wantedAt(check), day.at));
        const tap = { at, intent: looked(check, plan, random), personId: person };
        day.take(tap);
        all.push(tap);
      }
    }
  };
  for (const tap of taps) {
    lookUntil(tap.at);
    day.take(tap);
    all.push(tap);
    person = tap.personId ?? person;
  }
  lookUntil(now);
  return all;
}

/** A day that is told what the crew taps, to see what falls due on it. */
class ToldDay {
  #state: DayState = emptyDay();
  readonly #day: DayId;
  at: Instant;

  constructor(plan: DemoPlan) {
    this.#day = plan.built.day as DayId;
    this.at = plan.built.origin;
    const hashes = { cookPlan: '', kitchen: '', catalogue: '' };
    const adopted = { ...plan, version: 1, engine: 'demo', seed: 1, hashes };
    this.#keep({ kind: 'planAdopted', plan: adopted }, null);
  }

  /** What is to be looked at by then, and still can be. */
  dueBy(until: Instant): OpenCheck[] {
    return openChecks(this.#state).filter(({ on, dueAt }) => {
      const isTimed = on.kind === 'discard-time' || on.kind === 'out-of-temperature';
      return !isTimed && wantedAt({ on, dueAt }) <= until;
    });
  }

  take({ at, intent, personId }: DemoTap): void {
    this.at = at;
    const head = { id: 'told' as CommandId, personId, screenId: null, tappedAt: at };
    const decision = decide(this.#state, { ...head, ...intent }, at);
    if (decision.ok) for (const fact of decision.facts) this.#keep(fact, personId);
  }

  #keep(fact: Fact, personId: PersonId | null): void {
    const seq = this.#state.seq + 1;
    this.#state = fold(this.#state, {
      ...fact,
      ...{ seq, version: EVENT_VERSION, day: this.#day, at: this.at, keptAt: this.at },
      ...{ commandId: `told-${seq}` as CommandId, personId, screenId: null },
    });
  }
}

const wantedAt = ({ on, dueAt }: Pick<OpenCheck, 'on' | 'dueAt'>): Instant =>
  on.kind === 'end-temperature' ? after(dueAt, PROBE_S) : dueAt;

function looked(check: OpenCheck, plan: DemoPlan, random: Random): Intent {
  const thermometer = check.on.kind === 'clean' ? null : thermometerAt(check, plan);
  // Of the invented crew whoever tapped next had felt that it was done.
  const felt = check.on.kind === 'end-temperature' ? ({ feel: 'there' } as const) : {};
  return { kind: 'check', on: check.on, tempC: shown(check, plan, random), thermometer, ...felt };
}

const thermometerAt = ({ on, station }: OpenCheck, { kitchen }: DemoPlan) => {
  if (on.kind === 'thermometer') return on.thermometer;
  const all = kitchen.thermometers ?? [];
  return (all.find((each) => each.station === station) ?? all[0])?.id ?? null;
};

/** As it usually is: the end of a cook where its step has it, the rest well inside its limit. */
function shown({ on, atLeastC, atMostC }: OpenCheck, plan: DemoPlan, random: Random) {
  const about = (tempC: number): Celsius => celsius(Math.round(tempC * 10) / 10);
  if (on.kind === 'clean') return null;
  if (on.kind === 'thermometer') return about(0.2);
  if (on.kind === 'end-temperature') {
    const cores = plan.built.tasks.flatMap(({ batch, check }) =>
      batch === on.batch ? (check?.coreAtLeastC ?? []) : [],
    );
    return about(Math.min(99, Math.max(...cores, atLeastC ?? 0) + 0.4 + random()));
  }
  if (atLeastC !== null) return about(atLeastC + 6 + 4 * random());
  return about((atMostC ?? 5) - 1 - random());
}
