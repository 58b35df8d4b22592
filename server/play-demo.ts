import type { AdoptedPlan, DayState } from '../shared/day/index.ts';
import { type CommandId, type Instant, must } from '../shared/kernel/index.ts';
import type { Clock } from './clock.ts';
import type { Closing } from './closing.ts';
import { demoLog, demoLots, demoReadings, SENDS_EVERY_S, sentUntil } from './demo/index.ts';
import type { Hub } from './hub/index.ts';
import type { TakeReadings } from './readings/index.ts';

/** Other seeds give other demos; this one is as good as any. */
const SEED = 1;

/**
 * Has the invented crew tap what it would have tapped since last night, through the same door as
 * everybody.
 */
export async function playDemo(hub: Hub<DayState>, plan: AdoptedPlan, now: Instant): Promise<void> {
  const id = 'demo-lots' as CommandId;
  await hub.bring({ id, at: plan.built.origin, facts: demoLots(plan, SEED) });
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

type Thermometers = {
  readonly hub: Hub<DayState>;
  readonly take: TakeReadings;
  readonly clock: Clock;
  readonly closing: Closing;
};

/**
 * The thermometers of the invented kitchen: what they have sent since last night, and what they go
 * on to send, through the door that real ones use.
 */
export async function readThermometers({ hub, take, clock, closing }: Thermometers): Promise<void> {
  if (hub.health.readOnly) return;
  const isNew = hub.state.readings.every(({ where }) => where.kind === 'air');
  const now = clock.now();
  const sent = isNew ? sentUntil(hub.state, now).flatMap((at) => demoReadings(hub.state, at)) : [];
  await take(
    sent.filter(({ where }) => where.kind === 'core'),
    null,
  );
  const send = () => void take(demoReadings(hub.state, clock.now()), null);
  closing.add(clock.every(SENDS_EVERY_S * 1000, send));
}
