import type { Event, Live } from '../../shared/day/index.ts';
import type { TaskId } from '../../shared/kernel/index.ts';
import { kitchenResource, resourceId } from '../../shared/plan/index.ts';
import { type Broken, check, type Lag, type Violation } from '../../shared/schedule/index.ts';
import type { Verdict } from './verdict.ts';

type Overfilled = Extract<Violation, { readonly kind: 'capacity' }>;

/**
 * Holds the projected day to the independent checker. What happens in a kitchen may break a lag or
 * fill a rack twice, but then it is said; what is only expected may not, and no decision may bring
 * it about.
 */
export class DayWitness {
  readonly #verdict: Verdict;
  #lagsBroken: ReadonlySet<Lag> = new Set();

  constructor(verdict: Verdict) {
    this.#verdict = verdict;
  }

  /** Looks at the day just after `event`. */
  look({ timeline, index, state }: Live, event: Event): void {
    const violations = check(index.plan.built.problem, timeline.schedule);
    const broken = timeline.broken();
    const overfilled = violations.filter(isOverfilled);
    const isBegun = (id: TaskId) => timeline.times(id).stage !== 'waiting';
    // Where more have begun than there is room for, nobody can say who makes room first.
    const byFacts = new Set(
      overfilled.filter((each) => each.activities.every(isBegun)).map(({ resource }) => resource),
    );
    for (const violation of violations) {
      const isExcused = isOverfilled(violation)
        ? byFacts.has(violation.resource) && !isBroughtAbout(violation, event)
        : isExcusedByFacts(violation, broken) && !this.#isTornByMove(violation, event);
      this.#verdict.holds('day', isExcused, () => {
        return `after entry ${state.seq}: ${JSON.stringify(violation)}`;
      });
    }
    this.#lagsBroken = new Set(violations.flatMap((each) => (each.kind === 'lag' ? each.lag : [])));
  }

  /**
   * Racks that a person gave to two loads at once, so that one cannot go in with its batch; or what
   * a mend that was taken moved, so that something breaks that was whole.
   */
  #isTornByMove(violation: Violation, event: Event): boolean {
    if (violation.kind !== 'lag' || this.#lagsBroken.has(violation.lag)) return false;
    const { from, to } = violation.lag;
    return movedBy(event).some((moved) => moved === from.activity || moved === to.activity);
  }
}

function movedBy(event: Event): readonly TaskId[] {
  if (event.kind === 'slotsMoved') return event.moves.map(({ stay }) => stay);
  return event.kind === 'dayMended' ? event.changes.map(({ activity }) => activity) : [];
}

/**
 * A rack that holds more than it can. That a hand does two things at once, or a table is shared, is
 * for people to say.
 */
const isOverfilled = (violation: Violation): violation is Overfilled =>
  violation.kind === 'capacity' && kitchenResource(violation.resource).kind === 'slot';

function isExcusedByFacts(violation: Violation, broken: readonly Broken[]): boolean {
  switch (violation.kind) {
    case 'lag':
      return broken.some(
        (said) => said.kind === 'lag' && said.lag === violation.lag && said.byS === violation.byS,
      );
    // How long work takes is a forecast, a hand may stay on, a service may be late, and each wall
    // shows it.
    case 'capacity':
    case 'length':
    case 'closed':
    case 'out-of-time':
    case 'goal':
    case 'link':
    case 'state':
    case 'clash':
      return true;
    default:
      return false;
  }
}

/** A person moved a load to where there is no room for it. */
function isBroughtAbout({ resource, activities }: Overfilled, event: Event): boolean {
  if (event.kind !== 'slotsMoved') return false;
  return event.moves.some(
    ({ stay, to }) =>
      resource === resourceId({ kind: 'slot', slot: to }) && activities.includes(stay),
  );
}
