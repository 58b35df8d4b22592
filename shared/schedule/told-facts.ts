import type { ActivityId, Seconds } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Facts } from './facts.ts';
import { liveFrom } from './live.ts';
import { at, startOf } from './network.ts';
import type { Published } from './published.ts';
import type { Told, Update } from './timeline-types.ts';

/** Nobody asks for times meanwhile. */
const NOTHING: Update = { changed: [], touched: 0, moved: 0 };

type Untold = { readonly published: Published; readonly facts: Facts };

/** Keeps what it is told, and works no time out. */
export class ToldFacts implements Told {
  readonly #published: Published;
  readonly #facts: Facts;

  constructor({ published, facts }: Untold) {
    this.#published = published;
    this.#facts = facts;
  }

  started(id: ActivityId, atS: Seconds): Update {
    this.#facts.started(this.#number(id), atS);
    return NOTHING;
  }

  finished(id: ActivityId, atS: Seconds): Update {
    const activity = this.#number(id);
    this.#facts.finished(activity, atS, () => this.#expectedS(activity));
    return NOTHING;
  }

  takenBack(id: ActivityId): Update {
    this.#facts.takenBack(this.#number(id));
    return NOTHING;
  }

  lengthIs(id: ActivityId, totalS: Seconds): Update {
    const activity = this.#number(id);
    this.#facts.lengthIs(activity, totalS, this.#isWork(activity));
    return NOTHING;
  }

  held(until: ReadonlyMap<ActivityId, Seconds>): Update {
    this.#facts.hold(new Map([...until].map(([id, atS]) => [this.#number(id), atS])));
    return NOTHING;
  }

  notBefore(nowS: Seconds): Update {
    this.#facts.passedTo(nowS);
    return NOTHING;
  }

  /** By all that was told before; few finish what they never started, so it is worked out anew. */
  #expectedS(activity: number): number {
    const { earliest } = liveFrom(this.#published, this.#facts.copy());
    return at(earliest.rule.timeS, startOf(activity));
  }

  #isWork(activity: number): boolean {
    const { problem, placements } = this.#published;
    const mode = must(placements[activity], 'a placed activity').mode;
    const its = problem.activities[activity]?.modes.find(({ id }) => id === mode);
    return must(its, mode).length.kind === 'work';
  }

  #number(id: ActivityId): number {
    return this.#published.index.activity(id);
  }
}
