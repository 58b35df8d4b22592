import { expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import { decide, openLive } from '../../../shared/day/index.ts';
import { commandOf, noon, plan, Telling } from './demo.ts';

it('puts nothing off for good, when it hears at noon of all that happened since last night', () => {
  const telling = new Telling();
  const live = openLive(telling.state, noon);
  const taps = demoLog(plan, { now: noon, seed: 1 });
  for (const { at, intent, personId } of taps) {
    const decision = decide(telling.state, commandOf(intent, at, personId), noon);
    if (!decision.ok) throw new Error(JSON.stringify(decision.refusal));
    for (const fact of decision.facts) {
      // It is kept when the hub hears of it.
      live.apply({ ...telling.keep(fact, at, personId), keptAt: noon });
    }
  }
  const { changed } = live.timeline.fork().moved([]);
  expect(changed).toEqual([]);
});
