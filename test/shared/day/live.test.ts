import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DayState, Intent } from '../../../shared/day/index.ts';
import { emptyDay, fold, ifMoved, openLive } from '../../../shared/day/index.ts';
import type { Instant, TaskId } from '../../../shared/kernel/index.ts';
import { after, instant, minutes, must, seconds } from '../../../shared/kernel/index.ts';
import { handsInOrder, plan, Telling, task } from './demo.ts';

/** What the crew might do to a task, sensible or not, and how long after what it did before. */
const deed = fc.record({
  about: fc.nat({ max: handsInOrder.length - 1 }),
  kind: fc.constantFrom('start', 'finish', 'takeBack', 'count', 'late', 'needHelp', 'giveTo'),
  amount: fc.nat({ max: 12 }),
  pauseS: fc.integer({ min: 0, max: 900 }),
});
type Deed = typeof deed extends fc.Arbitrary<infer Value> ? Value : never;

function intentOf({ about, kind, amount }: Deed): Intent {
  const id = must(handsInOrder[about], 'a task');
  const crew = plan.kitchen.crew;
  switch (kind) {
    case 'count':
      return { kind, task: id, done: amount };
    case 'late':
      return { kind, task: id, byS: minutes(1 + amount) };
    case 'giveTo':
      return { kind, task: id, hand: must(crew[amount % crew.length], 'a hand').id };
    default:
      return { kind: kind as 'start' | 'finish' | 'takeBack' | 'needHelp', task: id };
  }
}

/** The day in order up to a point, so that there is something to disturb. */
function usualDay(tasks: number): { telling: Telling; at: Instant } {
  const telling = new Telling();
  let at = after(plan.built.origin, minutes(540));
  for (const id of handsInOrder.slice(0, tasks)) {
    telling.ask({ kind: 'start', task: id }, at);
    at = after(at, minutes(4));
    telling.ask({ kind: 'finish', task: id }, at);
  }
  return { telling, at };
}

const timesOn = (state: DayState, now: Instant) => {
  const live = openLive(state, now);
  return plan.built.tasks.map(({ id }) => live.timesOf(id));
};

describe('the live day', () => {
  it('has the same times whether it followed every event or was opened from the state', () => {
    fc.assert(
      fc.property(fc.nat({ max: 40 }), fc.array(deed, { maxLength: 25 }), (done, deeds) => {
        const { telling, at } = usualDay(done);
        const live = openLive(telling.state, at);
        let now = at;
        for (const each of deeds) {
          now = after(now, seconds(each.pauseS));
          live.tick(now);
          const before = telling.events.length;
          telling.ask(intentOf(each), now);
          for (const event of telling.events.slice(before)) live.apply(event);
        }
        const followed = plan.built.tasks.map(({ id }) => live.timesOf(id));
        expect(followed).toEqual(timesOn(telling.state, now));
      }),
      { numRuns: 25 },
    );
  }, 60_000);

  it('is the same day for the same events, folded in one go or in two', () => {
    const { telling } = usualDay(30);
    const whole = telling.events.reduce(fold, emptyDay());
    const half = telling.events.slice(0, 20).reduce(fold, emptyDay());
    expect(telling.events.slice(20).reduce(fold, half)).toEqual(whole);
    expect(whole).toEqual(telling.state);
  });

  it('moves what follows when a hand says it is late, and back when that is undone', () => {
    const { telling, at } = usualDay(10);
    const running = must(handsInOrder[10], 'a task');
    telling.ask({ kind: 'start', task: running }, at);
    const before = timesOn(telling.state, at);
    telling.ask({ kind: 'late', task: running, byS: minutes(45) }, at);
    const late = timesOn(telling.state, at);
    const index = plan.built.tasks.findIndex(({ id }) => id === running);
    expect(must(late[index], 'times').endS - must(before[index], 'times').endS).toBe(minutes(45));
    expect(late.every(({ startS }, i) => startS >= must(before[i], 'times').startS)).toBe(true);
    telling.ask({ kind: 'takeBack', task: running }, at);
    telling.ask({ kind: 'start', task: running }, at);
    expect(timesOn(telling.state, at)).toEqual(before);
  });

  it('believes the count more, the more is counted', () => {
    const { telling, at } = usualDay(0);
    const counted = must(
      plan.built.tasks.find(({ work, pieces }) => work === 'hands' && pieces >= 8),
      'a long task',
    );
    const first = handsInOrder.filter((id) => id.startsWith(`${counted.batch}/`))[0] as TaskId;
    telling.ask({ kind: 'start', task: first }, at);
    const endAfter = (done: number, minutesIn: number) => {
      const when = after(at, minutes(minutesIn));
      telling.ask({ kind: 'count', task: first, done }, when);
      return openLive(telling.state, when).timesOf(first).endS;
    };
    const slowAtFirst = endAfter(1, 30);
    const slowStill = endAfter(4, 120);
    expect(slowStill).toBeGreaterThan(slowAtFirst);
  });
});

describe('a slot move', () => {
  const now = instant(after(plan.built.origin, minutes(1000)));
  const stays = plan.built.tasks.filter(({ work }) => work === 'place');
  const slots = plan.kitchen.smokers.flatMap(({ racks }) => racks.map(({ slot }) => slot));

  it('that is offered can be taken, and then stands where the offer said', () => {
    const { telling } = usualDay(20);
    let taken = 0;
    for (const { id: stay } of stays) {
      const live = openLive(telling.state, now);
      for (const to of slots) {
        const asked = ifMoved(live, { stay, need: 0, to });
        if (!asked.ok) continue;
        const { offer } = asked;
        const moves = offer.moves.map((move) => ({
          stay: move.stay,
          need: move.need,
          to: move.to.id,
        }));
        const intent: Intent = { kind: 'moveSlots', moves, basedOnSeq: offer.basedOnSeq };
        expect(telling.ask(intent, now)).toMatchObject({ ok: true });
        const after = openLive(telling.state, now);
        expect(
          offer.services.map(({ id }) => after.outlookOf(id)?.inHandS),
          'what it did to the services',
        ).toEqual(offer.services.map(({ afterS }) => afterS));
        taken++;
        break;
      }
    }
    expect(taken).toBeGreaterThan(0);
  });

  it('is out of date once somebody else has moved something', () => {
    const { telling } = usualDay(20);
    const live = openLive(telling.state, now);
    const offers = stays.flatMap(({ id: stay }) =>
      slots.flatMap((to) => {
        const asked = ifMoved(live, { stay, need: 0, to });
        return asked.ok && asked.offer.moves.length === 1
          ? [{ stay, to, seq: asked.offer.basedOnSeq }]
          : [];
      }),
    );
    const [one, other] = [must(offers[0], 'an offer'), must(offers.at(-1), 'an offer')];
    const intent = ({ stay, to, seq }: typeof one): Intent => ({
      kind: 'moveSlots',
      moves: [{ stay, need: 0, to }],
      basedOnSeq: seq,
    });
    expect(telling.ask(intent(one), now)).toMatchObject({ ok: true });
    expect(telling.ask(intent(other), now)).toMatchObject({
      ok: false,
      refusal: { rule: 'out-of-date' },
    });
  });

  it('never puts a load where no rack, no heat or no load is', () => {
    const { telling } = usualDay(20);
    const live = openLive(telling.state, now);
    const [stay] = stays;
    const nowhere = { stay: must(stay, 'a stay').id, need: 0, to: 'z/9' as (typeof slots)[0] };
    expect(ifMoved(live, nowhere)).toMatchObject({ refusal: { rule: 'unknown-place' } });
    const noLoad = { stay: task(must(stay, 'a stay').batch, 'load'), need: 0, to: slots[0] };
    expect(ifMoved(live, noLoad as typeof nowhere)).toMatchObject({
      refusal: { rule: 'unknown-place' },
    });
  });
});
