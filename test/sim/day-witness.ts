import type { Event, Live } from '../../shared/day/index.ts';
import { type Broken, check, type Violation } from '../../shared/schedule/index.ts';
import type { Verdict } from './verdict.ts';

type Overfilled = Extract<Violation, { readonly kind: 'capacity' }>;

/**
 * Holds the projected day to the independent checker. What happens in a kitchen may break a lag or fill a rack twice,
 * but then it is said; what is only expected may not, and no decision may bring it about.
 */
export class DayWitness {
  readonly #verdict: Verdict;

  constructor(verdict: Verdict) {
    this.#verdict = verdict;
  }

  /** Looks at the day just after `event`. */
  look({ timeline, index, state }: Live, event: Event): void {
    const broken = timeline.broken();
    const isBegun = (id: Overfilled['activities'][number]) =>
      timeline.times(id).stage !== 'waiting';
    for (const violation of check(index.plan.built.problem, timeline.schedule)) {
      const isExcused =
        violation.kind === 'capacity'
          ? !isBroughtAbout(violation, event) && violation.activities.every(isBegun)
          : isExcusedByFacts(violation, broken);
      this.#verdict.holds('day', isExcused, () => {
        return `after entry ${state.seq}: ${JSON.stringify(violation)}`;
      });
    }
  }
}

function isExcusedByFacts(violation: Violation, broken: readonly Broken[]): boolean {
  switch (violation.kind) {
    case 'lag':
      return broken.some(
        (said) => said.kind === 'lag' && said.lag === violation.lag && said.byS === violation.byS,
      );
    // How long work takes is a forecast, a hand may stay on, a service may be late, and each wall shows it.
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
  return event.moves.some(({ stay, to }) => resource === `slot:${to}` && activities.includes(stay));
}
