import {
  barsOf,
  type DayState,
  type Event,
  indexOf,
  openChecks,
  passagesOf,
  whyBarred,
} from '../../shared/day/index.ts';
import { celsius, must } from '../../shared/kernel/index.ts';
import type { Verdict } from './verdict.ts';

/** Corrections that end what they are about: nothing more is to be said of it. */
const ENDS: ReadonlySet<string> = new Set(['serve-now', 'discard', 'reject-delivery']);
/** A reading that is nearer to its limit than this proves nothing here. */
const CLEARLY_K = celsius(1);

/** Holds the log to what is looked at: what is barred goes nowhere, no answer is given twice. */
export class CheckWitness {
  readonly #verdict: Verdict;

  constructor(verdict: Verdict) {
    this.#verdict = verdict;
  }

  /** Looks at the day just before and just after `event`. */
  look(before: DayState, event: Event, after: DayState): void {
    if (!before.plan || before.day !== after.day) return;
    switch (event.kind) {
      case 'taskStarted': {
        const why = whyBarred(before, indexOf(before.plan), { task: event.task, at: event.at });
        this.#holds('barred', why === null, event, `${event.task} begun: ${JSON.stringify(why)}`);
        return;
      }
      case 'portionsSold':
        this.#holds('barred', !isSoldBarred(before, event), event, `${event.dish} was sold`);
        return;
      case 'checkRecorded':
        this.#answeredOnce(before, event);
        this.#asked(before, event, after);
        return;
      case 'correctionRecorded':
        this.#putRightOnce(before, event);
        return;
      default:
    }
  }

  #answeredOnce({ checks }: DayState, event: Extract<Event, { kind: 'checkRecorded' }>) {
    const isTwice = checks.some(({ command }) => command === event.commandId);
    this.#holds('asked', !isTwice, event, `${JSON.stringify(event.on)} was answered twice`);
  }

  #asked(before: DayState, event: Extract<Event, { kind: 'checkRecorded' }>, after: DayState) {
    const key = JSON.stringify(event.on);
    const isIt = (each: { readonly on: unknown }) => JSON.stringify(each.on) === key;
    const was = openChecks(before).find(isIt);
    if (!was || was.failed || event.tempC === null) return;
    const { atLeastC, atMostC } = was;
    if (atLeastC === null && atMostC === null) return;
    if (atLeastC !== null && event.tempC < atLeastC + CLEARLY_K) return;
    if (atMostC !== null && event.tempC > atMostC - CLEARLY_K) return;
    // What was looked at too late has failed by that alone.
    if (event.at < was.fromAt || event.at > was.lateAt) return;
    const again = openChecks(after).find(isIt);
    const isAnew = again?.dueAt !== was.dueAt;
    this.#holds('asked', isAnew, event, `${key} was kept and is asked for again`);
  }

  #putRightOnce({ checks }: DayState, event: Extract<Event, { kind: 'correctionRecorded' }>) {
    const key = JSON.stringify(event.on);
    const last = checks.findLast((each) => JSON.stringify(each.on) === key);
    const isDone = last?.kind === 'correctionRecorded' && ENDS.has(last.action);
    this.#holds(
      'asked',
      !isDone,
      event,
      `${key} was put right already, by ${JSON.stringify(last)}`,
    );
  }

  #holds(promise: 'barred' | 'asked', isKept: boolean, { seq, commandId }: Event, found: string) {
    this.#verdict.holds(promise, isKept, () => `entry ${seq}: ${found}`, commandId);
  }
}

/** More of a dish was sold while all that stood there of it was barred. */
function isSoldBarred(before: DayState, event: Extract<Event, { kind: 'portionsSold' }>): boolean {
  const { plan, happened } = before;
  const { batches, problem } = must(plan, 'a plan').built;
  if (event.sold <= (happened.sold.get(`${event.service}#${event.dish}`) ?? 0)) return false;
  const bars = barsOf(before, event.at);
  const standing = batches.filter(({ id, dish }) => {
    const goal = problem.goals.find((each) => each.id === (id as string));
    const isThere = goal && passagesOf(before).get(goal.activity)?.startedAt != null;
    return dish === event.dish && isThere && !happened.emptied.has(id) && !happened.carried.has(id);
  });
  return standing.length > 0 && standing.every(({ id }) => bars.has(id));
}
