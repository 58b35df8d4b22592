import { describe, expect, it } from 'vitest';
import { smallDay } from './adopted.ts';
import type { Death } from './hub-machine.ts';
import { reportOf } from './report.ts';
import { run } from './run.ts';

const day = smallDay();
const SEED = 1;
/** Long enough for a dozen taps, and so for some forty steps. */
const TROUBLE_MS = 40_000;
const STEPS_LEAST = 40;

/** One short day on which the hub dies at its `step`-th step of using the log, and never again. */
function dayOfOneDeath(step: number, death: Death) {
  return run({
    seed: SEED,
    day,
    troubleMs: TROUBLE_MS,
    trouble: ({ hub }) => {
      hub.killAtStep(step, death);
      return { stop: () => hub.spare() };
    },
  });
}

describe('a hub that dies once', () => {
  it.each<Death>(['killed', 'power cut'])(
    'loses and doubles nothing, at whichever step of opening, writing and answering it is %s',
    async (death) => {
      for (let step = 1; ; step++) {
        const result = await dayOfOneDeath(step, death);
        expect(result.broken, reportOf(SEED, result)).toBeNull();
        const deaths =
          result.journal.countOf('hub killed in a write') +
          result.journal.countOf('hub killed while opening');
        if (deaths === 0) {
          // Beyond its last step nothing was left to die in: all of them were tried.
          expect(step).toBeGreaterThan(STEPS_LEAST);
          return;
        }
      }
    },
    120_000,
  );
});
