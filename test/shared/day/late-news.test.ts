import { expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import { decide, emptyDay, fold, openLive } from '../../../shared/day/index.ts';
import { after, celsius, minutes, must } from '../../../shared/kernel/index.ts';
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

it('opens a day whose clock was set back, as of the latest moment that it knows', () => {
  const telling = new Telling();
  const smoker = must(plan.kitchen.smokers[0], 'a smoker').id;
  const [first, second] = plan.kitchen.crew.map(({ id }) => id);
  const out = { kind: 'handOut', hand: must(first, 'a hand'), backAt: null } as const;
  telling.ask(out, noon);
  // Each is kept earlier than the one before.
  const setBack = after(noon, minutes(-30));
  const longBefore = after(noon, minutes(-60));
  telling.ask({ kind: 'smokerDown', smoker, tempC: celsius(60), backAt: null }, setBack);
  telling.ask({ ...out, hand: must(second, 'another hand') }, longBefore);
  const opened = openLive(telling.state, longBefore);
  expect(opened.now).toBe(noon);
  expect(opened.news).toMatchObject({ told: { kind: 'handWentOut' }, at: longBefore });
  // As if the clock had stood still till it was noon again.
  const ordered = telling.events.map((event, i) => (i > 1 ? { ...event, keptAt: noon } : event));
  const usual = openLive(ordered.reduce(fold, emptyDay()), noon);
  expect(plan.built.tasks.map(({ id }) => opened.timesOf(id))).toEqual(
    plan.built.tasks.map(({ id }) => usual.timesOf(id)),
  );
});
