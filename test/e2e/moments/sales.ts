import type { demoLog } from '../../../server/demo/index.ts';
import { openChecks } from '../../../shared/day/index.ts';
import type { Instant, PersonId } from '../../../shared/kernel/index.ts';
import { after, instant, minutes, seconds, seeded } from '../../../shared/kernel/index.ts';
import type { plan, Telling } from '../../shared/day/demo.ts';

type DemoTap = ReturnType<typeof demoLog>[number];

const QUARTER_S = minutes(15);
/** What is too old has gone out so long after its time. */
const CLEARED_S = minutes(20);

/**
 * What the pass of the invented kitchen would have counted: each quarter of an hour what the plan
 * expects, of each dish a fifth more or less of it all day.
 */
export function salesOf({ built }: typeof plan, seed: number): DemoTap[] {
  const random = seeded(seed);
  return built.services.flatMap(({ id, opensAt, demand }) =>
    demand.flatMap(({ dish, portionsPerQuarter }): DemoTap[] => {
      const pace = 0.8 + 0.4 * random();
      let expected = 0;
      return portionsPerQuarter.map((portions, quarter) => {
        expected += portions;
        const sold = Math.round(pace * expected);
        const at = after(opensAt, seconds((quarter + 0.2 + 0.7 * random()) * QUARTER_S));
        return {
          at: instant(at),
          intent: { kind: 'sold', service: id, dish, sold },
          personId: null,
        };
      });
    }),
  );
}

/** Throws out what may be held no longer, some minutes after its time, as one of a crew does. */
export function clearWhatIsOld(told: Telling, at: Instant, by: PersonId): void {
  for (const { on, lateAt } of openChecks(told.state)) {
    if (on.kind !== 'discard-time' || at < after(lateAt, CLEARED_S)) continue;
    told.ask({ kind: 'correct', on, action: 'discard' }, at, by);
  }
}
