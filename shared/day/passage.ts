import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { after, instant, must, seconds } from '../kernel/index.ts';
import type { Lag } from '../schedule/index.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';
import { factsOf } from './state.ts';

/** When a task began and ended, so far. */
export type Passage = { readonly startedAt: Instant | null; readonly finishedAt: Instant | null };

/**
 * Nobody taps the smoke, the set or the rest: they begin when the hands before them are done and
 * end when the hands after them begin. This reads their passage off the taps, and gives the taps
 * themselves for the work of hands.
 */
export function passagesOf(state: DayState): ReadonlyMap<TaskId, Passage> {
  const known = read.get(state);
  if (known) return known;
  const passages = new Map<TaskId, Passage>();
  read.set(state, passages);
  if (!state.plan) return passages;
  const reader = new PassageReader(state, indexOf(state.plan), passages);
  for (const task of state.plan.built.tasks) reader.read(task.id);
  return passages;
}

const read = new WeakMap<DayState, ReadonlyMap<TaskId, Passage>>();

class PassageReader {
  readonly #state: DayState;
  readonly #index: PlanIndex;
  readonly #known: Map<TaskId, Passage>;
  readonly #ends = new Map<TaskId, Instant | null>();

  constructor(state: DayState, index: PlanIndex, known: Map<TaskId, Passage>) {
    this.#state = state;
    this.#index = index;
    this.#known = known;
  }

  read(id: TaskId): Passage {
    const known = this.#known.get(id);
    if (known) return known;
    const passage = this.#isByHand(id) ? this.#tapped(id) : this.#followed(id);
    this.#known.set(id, passage);
    return passage;
  }

  #isByHand(id: TaskId): boolean {
    return must(this.#index.tasks.get(id), id).work === 'hands';
  }

  #tapped(id: TaskId): Passage {
    const { started, finished } = factsOf(this.#state, id);
    return { startedAt: started?.at ?? null, finishedAt: finished?.at ?? null };
  }

  #followed(id: TaskId): Passage {
    const startedAt = this.#startFrom(id);
    const latest = this.#endFrom(id);
    if (latest === null) return { startedAt, finishedAt: null };
    if (startedAt === null) return { startedAt: latest, finishedAt: latest };
    // Where only another waiting follows, as a hold follows a rest, no hand marks the change: its
    // planned length does.
    const planned = this.#nextHands(id) ? latest : after(startedAt, this.#plannedLength(id));
    return { startedAt, finishedAt: instant(Math.max(startedAt, Math.min(latest, planned))) };
  }

  #nextHands(id: TaskId): boolean {
    const followers = (this.#index.lagsOutOf.get(id) ?? []).filter(isSequence);
    return followers.length === 0 || followers.some((lag) => this.#isByHand(lag.to.activity));
  }

  #plannedLength(id: TaskId): Seconds {
    const { startS, endS } = must(this.#index.placements.get(id), id);
    return seconds(endS - startS);
  }

  /** It has begun once all that it waits for has happened. */
  #startFrom(id: TaskId): Instant | null {
    let latest: Instant | null = null;
    for (const lag of this.#index.lagsInto.get(id) ?? []) {
      if (lag.to.end !== 'start' || !isPrecedence(lag)) continue;
      const from = this.#when(lag.from);
      if (from === null) return null;
      const at = after(from, lag.minS ?? seconds(0));
      if (latest === null || at > latest) latest = at;
    }
    return latest;
  }

  /** It has ended once anything that waits for its end has begun. */
  #endFrom(id: TaskId): Instant | null {
    const known = this.#ends.get(id);
    if (known !== undefined) return known;
    this.#ends.set(id, null);
    const ends = [...this.#tiesAt(id), ...this.#followersOf(id)];
    const end = ends.length > 0 ? instant(Math.min(...ends)) : null;
    this.#ends.set(id, end);
    return end;
  }

  /** Ends that this one is tied to, as a stay is to the taking off. */
  #tiesAt(id: TaskId): Instant[] {
    return (this.#index.lagsInto.get(id) ?? [])
      .filter((lag) => lag.to.end === 'end' && isPrecedence(lag))
      .flatMap((lag) => {
        const from = this.#isByHand(lag.from.activity) ? this.#when(lag.from) : null;
        return from === null ? [] : [after(from, lag.minS ?? seconds(0))];
      });
  }

  #followersOf(id: TaskId): Instant[] {
    return (this.#index.lagsOutOf.get(id) ?? []).filter(isSequence).flatMap((lag) => {
      const next = lag.to.activity;
      const begun = this.#isByHand(next)
        ? (factsOf(this.#state, next).started?.at ?? null)
        : this.#endFrom(next);
      return begun === null ? [] : [instant(begun - (lag.minS ?? 0) * 1000)];
    });
  }

  #when({ activity, end }: Lag['from']): Instant | null {
    const { startedAt, finishedAt } = this.read(activity);
    return end === 'start' ? startedAt : finishedAt;
  }
}

const isPrecedence = (lag: Lag) => lag.minS !== undefined && lag.minS >= 0;
const isSequence = (lag: Lag) =>
  lag.from.end === 'end' && lag.to.end === 'start' && isPrecedence(lag);
