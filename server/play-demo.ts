import type { AdoptedPlan, DayState } from '../shared/day/index.ts';
import { type CommandId, type Instant, must } from '../shared/kernel/index.ts';
import { demoLog } from './demo/index.ts';
import type { Hub } from './hub/index.ts';

/** Other seeds give other demos; this one is as good as any. */
const SEED = 1;

/**
 * Has the invented crew tap what it would have tapped since last night, through the same door as
 * everybody.
 */
export async function playDemo(hub: Hub<DayState>, plan: AdoptedPlan, now: Instant): Promise<void> {
  const taps = demoLog(plan, { now, seed: SEED });
  const answers = await Promise.all(
    taps.map(({ at, intent, personId }, n) => {
      const head = { id: `demo-${n + 1}` as CommandId, personId, screenId: null };
      return hub.command({ ...head, ...intent, tappedAt: at });
    }),
  );
  const refused = answers.findIndex(({ ok }) => !ok);
  must(
    refused < 0 ? 'none' : null,
    `a demo without refusals: ${JSON.stringify(taps[refused])} ${JSON.stringify(answers[refused])}`,
  );
}
