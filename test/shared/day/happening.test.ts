import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DayState, Event, Intent } from '../../../shared/day/index.ts';
import {
  because,
  currentHand,
  emptyDay,
  fold,
  holdsOf,
  openLive,
  spellOf,
} from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import type { CommandId, CutId, Instant, ServiceId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, minutes, must, seconds } from '../../../shared/kernel/index.ts';
import { handsInOrder, plan, Telling } from './demo.ts';

const { origin } = plan.built;
const later = (atS: number): Instant => after(origin, seconds(atS));
const smokers = plan.kitchen.smokers.map(({ id }) => id);
const crew = plan.kitchen.crew.map(({ id }) => id);
const service = must(plan.built.services[0], 'a service');
const dish = must(service.demand[0], 'a dish').dish;
const line = must(plan.built.pull[0], 'a line');
const batch = must(plan.built.batches[0], 'a batch').id;
const firstS = must(plan.schedule.placements[0], 'a task').startS;

/** The facts of a day, without the record of what it took to come to them. */
function factsIn(state: DayState) {
  const { seq: _, keptAt: __, arrangedSeq: ___, sincePlan: ____, story: _____, ...facts } = state;
  return { ...facts, atPlan: null };
}

const someIntent: fc.Arbitrary<Intent> = fc.oneof(
  fc.record({
    kind: fc.constant('smokerDown' as const),
    smoker: fc.constantFrom(...smokers),
    tempC: fc.constant(celsius(60)),
    backAt: fc.constantFrom(null, later(40_000)),
  }),
  fc.record({
    kind: fc.constantFrom('smokerCold' as const, 'smokerUp' as const),
    smoker: fc.constantFrom(...smokers),
    tempC: fc.constantFrom(celsius(90), celsius(120)),
  }),
  fc.record({
    kind: fc.constant('handOut' as const),
    hand: fc.constantFrom(...crew),
    backAt: fc.constant(null),
  }),
  fc.record({ kind: fc.constant('handIn' as const), hand: fc.constantFrom(...crew) }),
  fc.record({
    kind: fc.constant('sold' as const),
    service: fc.constant(service.id),
    dish: fc.constant(dish),
    sold: fc.nat(80),
  }),
  fc.constant<Intent>({ kind: 'soldOut', service: service.id, dish }),
  fc.constant<Intent>({ kind: 'panEmpty', batch }),
  fc.constant<Intent>({ kind: 'carryOver', batch, weightKg: kilograms(1.5) }),
  fc.constant<Intent>({
    kind: 'delivery',
    cut: line.cut,
    pieces: line.pieces,
    weightKg: kilograms(line.weightKg),
  }),
);

/** A telling to which these were said, a minute apart, from when the first task is due. */
function told(intents: readonly Intent[]): Telling {
  const telling = new Telling();
  intents.forEach((intent, i) => {
    telling.ask(intent, later(firstS + i * 60));
  });
  return telling;
}

describe('what happens to a day', () => {
  it('makes the same day of the same events, however often it is told', () => {
    fc.assert(
      fc.property(fc.array(someIntent, { maxLength: 12 }), (intents) => {
        const { events, state } = told(intents);
        expect(events.reduce<DayState>(fold, emptyDay())).toEqual(state);
      }),
      { numRuns: 30 },
    );
  });

  it('is as it was before once the last of it is undone', () => {
    fc.assert(
      fc.property(fc.array(someIntent, { maxLength: 8 }), someIntent, (intents, last) => {
        const telling = told(intents);
        const before = telling.state;
        const at = later(firstS + 3600);
        if (!telling.ask(last, at).ok) return;
        const { commandId } = must<Event>(telling.events.at(-1), 'an event');
        expect(telling.ask({ kind: 'undo', command: commandId }, at).ok).toBe(true);
        expect(factsIn(telling.state)).toEqual(factsIn(before));
      }),
      { numRuns: 40 },
    );
  });

  it('cannot be undone twice, nor what never was', () => {
    const telling = told([{ kind: 'panEmpty', batch }]);
    const { commandId } = must<Event>(telling.events.at(-1), 'an event');
    const undo: Intent = { kind: 'undo', command: commandId };
    expect(telling.ask(undo, later(firstS + 60)).ok).toBe(true);
    expect(telling.ask(undo, later(firstS + 120))).toMatchObject({
      refusal: { rule: 'nothing-to-undo' },
    });
    const unknown: Intent = { kind: 'undo', command: 'nobody' as CommandId };
    expect(telling.ask(unknown, later(firstS + 120)).ok).toBe(false);
  });

  it('cannot be undone while what was said since about the same stands on it', () => {
    const [smoker] = smokers;
    const id = must(smoker, 'a smoker');
    const telling = told([
      { kind: 'smokerDown', smoker: id, tempC: celsius(70), backAt: null },
      { kind: 'smokerUp', smoker: id, tempC: celsius(121) },
    ]);
    const { commandId } = must<Event>(telling.events[1], 'the first of them');
    const undo: Intent = { kind: 'undo', command: commandId };
    expect(telling.ask(undo, later(firstS + 180))).toMatchObject({
      refusal: { rule: 'stood-on', at: later(firstS + 60) },
    });
  });

  it('is refused where it names what this day does not have, or more than can be', () => {
    const telling = new Telling();
    const at = later(firstS);
    const amounts: Intent[] = [
      { kind: 'delivery', cut: 'whale' as CutId, pieces: 2, weightKg: kilograms(2) },
      { kind: 'sold', service: 'brunch' as ServiceId, dish, sold: 3 },
      { kind: 'sold', service: service.id, dish, sold: -1 },
      { kind: 'delivery', cut: line.cut, pieces: 0, weightKg: kilograms(4) },
      { kind: 'handIn', hand: must(crew[0], 'a hand') },
      { kind: 'smokerUp', smoker: must(smokers[0], 'a smoker'), tempC: celsius(120) },
    ];
    for (const intent of amounts) expect(telling.ask(intent, at).ok).toBe(false);
  });
});

describe('a hand that is out', () => {
  it('has its waiting tasks wait, and they can be given to another', () => {
    const telling = new Telling();
    const first = must(handsInOrder[0], 'a task');
    const at = later(firstS);
    const hand = must(currentHand(telling.state, indexOf(plan), first), 'a hand');
    telling.ask({ kind: 'handOut', hand, backAt: null }, at);
    expect(holdsOf(telling.state).get(first)).toMatchObject({ kind: 'hand', hand });
    expect(telling.ask({ kind: 'start', task: first }, at)).toMatchObject({
      refusal: { rule: 'hand-is-out' },
    });
    const live = openLive(telling.state, after(at, minutes(40)));
    expect(because(live, first)).toMatchObject({ kind: 'out', person: { id: hand } });
    expect(live.timesOf(first).startS).toBeGreaterThanOrEqual(live.nowS);
    telling.ask({ kind: 'handIn', hand }, after(at, minutes(41)));
    expect(telling.ask({ kind: 'start', task: first }, after(at, minutes(42))).ok).toBe(true);
  });
});

describe('a smoker that is down', () => {
  const stays = plan.built.tasks.filter(({ work }) => work === 'place');

  it('takes nothing in, and holds what is to come into it, till it is up again', () => {
    for (const smoker of smokers) {
      const telling = told([{ kind: 'smokerDown', smoker, tempC: celsius(60), backAt: null }]);
      const held = [...holdsOf(telling.state)].filter(([, { kind }]) => kind === 'smoker');
      const live = openLive(telling.state, later(firstS + 4 * 3600));
      for (const [task] of held) {
        expect(live.timesOf(task).startS).toBeGreaterThanOrEqual(live.nowS);
        expect(because(live, task)).toMatchObject({ kind: 'down', smoker: { id: smoker } });
      }
      telling.ask({ kind: 'smokerUp', smoker, tempC: celsius(121) }, later(firstS + 5 * 3600));
      expect(spellOf(telling.state, smoker)).toBeNull();
      expect(holdsOf(telling.state).size).toBe(0);
    }
  });

  it('never has two loads lie in more room than a rack has', () => {
    const index = indexOf(plan);
    const capacityOf = new Map(
      plan.built.problem.resources.flatMap((each) =>
        each.kind === 'capacity' ? [[each.id, each.capacity] as const] : [],
      ),
    );
    fc.assert(
      fc.property(fc.constantFrom(...smokers), fc.nat(20), (smoker, hour) => {
        const at = later(firstS + hour * 3600);
        const telling = new Telling();
        telling.ask({ kind: 'smokerDown', smoker, tempC: celsius(60), backAt: null }, at);
        const live = openLive(telling.state, after(at, minutes(90)));
        for (const { id } of stays) {
          const start = live.timesOf(id).startS;
          for (const { need, resource } of must(index.placements.get(id), id).uses) {
            const taken = stays
              .filter((other) => {
                const { startS, endS } = live.timesOf(other.id);
                return startS <= start && start < endS;
              })
              .flatMap((other) => {
                const placed = must(index.placements.get(other.id), other.id);
                const { modes } = must(index.activities.get(other.id), other.id);
                const mode = modes.find((each) => each.id === placed.mode);
                return placed.uses
                  .filter((use) => use.resource === resource)
                  .map((use) => mode?.needs[use.need]?.amount ?? 0);
              })
              .reduce((sum, amount) => sum + amount, 0);
            expect(taken, `${id} ${need}`).toBeLessThanOrEqual(capacityOf.get(resource) ?? 0);
          }
        }
      }),
      { numRuns: 6 },
    );
  });

  it('leaves a running day with the times of one that is opened anew', () => {
    const telling = new Telling();
    const live = openLive(telling.state, later(firstS));
    const smoker = must(smokers[0], 'a smoker');
    const intents: Intent[] = [
      { kind: 'smokerDown', smoker, tempC: celsius(60), backAt: null },
      { kind: 'handOut', hand: must(crew[1], 'a hand'), backAt: later(firstS + 9000) },
    ];
    intents.forEach((intent, i) => {
      const known = telling.events.length;
      telling.ask(intent, later(firstS + i * 600));
      for (const event of telling.events.slice(known)) live.apply(event);
    });
    const down = must<Event>(telling.events[1], 'the smoker').commandId;
    telling.ask({ kind: 'undo', command: down }, later(firstS + 1300));
    live.apply(must<Event>(telling.events.at(-1), 'the undoing'));
    const anew = openLive(telling.state, live.now);
    for (const { id } of plan.built.tasks) expect(live.timesOf(id)).toEqual(anew.timesOf(id));
  });
});
