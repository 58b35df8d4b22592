import { describe, expect, it } from 'vitest';
import { openLive } from '../../../shared/day/index.ts';
import type { CommandId, ScreenId } from '../../../shared/kernel/index.ts';
import { after, celsius, kilograms, minutes, must } from '../../../shared/kernel/index.ts';
import type { DeskView } from '../../../shared/view/index.ts';
import { leftByService, overlay, viewOf } from '../../../shared/view/index.ts';
import { noon, plan, Telling } from '../day/demo.ts';

const { built, kitchen, schedule } = plan;
const person = must(kitchen.crew[0], 'a person');
const lunch = must(built.services[0], 'lunch');
/** A batch of lunch that the pass sells from once its serving has begun. */
const batch = must(
  built.batches.find(({ service, portions }) => service === lunch.id && portions > 10),
  'a batch',
);
const serve = must(
  built.problem.goals.find(({ id }) => id === (batch.id as string)),
  batch.id,
).activity;

/** All that leads to that batch is done to the minute and looked at; it stands at the pass. */
function served(): Telling {
  const telling = new Telling();
  const placed = new Map(schedule.placements.map((each) => [each.activity, each]));
  const taps = built.tasks
    .filter(({ work, batch: of }) => work === 'hands' && of === batch.id)
    .flatMap(({ id: task }) => {
      const { startS, endS } = must(placed.get(task), task);
      const started = { kind: 'taskStarted', task, hand: null } as const;
      const finished = { kind: 'taskFinished', task } as const;
      return [
        { atS: startS, fact: started },
        ...(task === serve ? [] : [{ atS: endS, fact: finished }]),
      ];
    })
    .sort((a, b) => a.atS - b.atS);
  for (const { atS, fact } of taps) telling.keep(fact, after(built.origin, atS), null);
  const on = { kind: 'end-temperature', batch: batch.id } as const;
  const looked = { kind: 'check', on, tempC: celsius(96), thermometer: null } as const;
  telling.ask(looked, noon, person.id);
  return telling;
}

const late = must(built.services.at(-1), 'a service').closesAt;
function deskOf(telling: Telling, now = late): DeskView {
  const view = viewOf(openLive(telling.state, now), { kind: 'desk' });
  if (view.face !== 'desk') throw new Error('a desk was asked for');
  return view;
}
const panOf = ({ end }: DeskView) =>
  end.dishes.flatMap(({ pans }) => pans).find((pan) => pan.batch === batch.id);

describe('the end of a day', () => {
  it('does not say of what somebody has to settle that it goes on by itself', () => {
    const { end } = deskOf(served(), noon);
    expect(panOf(deskOf(served(), noon))).toBeDefined();
    const ownName = built.batches.find(({ id }) => id === batch.id)?.name;
    expect(end.goesOn).not.toContainEqual(ownName);
  });

  it('has of each batch the portions that the pass has not sold, and their weight', () => {
    const telling = served();
    const all = must(panOf(deskOf(telling)), batch.id);
    expect(all.left).toBe(batch.portions);
    expect(all.weightKg).toBeCloseTo(batch.servedKg, 9);
    const { service, dish } = batch;
    telling.ask({ kind: 'sold', service, dish, sold: batch.portions - 4 }, noon);
    const some = must(panOf(deskOf(telling)), batch.id);
    expect(some.left).toBe(4);
    expect(some.weightKg).toBeCloseTo((batch.servedKg * 4) / batch.portions, 9);
  });

  it('keeps what a service that is still on may yet sell apart from what is left over', () => {
    const telling = served();
    const { end } = deskOf(telling);
    const groups = (now: typeof late) =>
      leftByService(end, now).map(({ service, dishes }) => [service?.id ?? null, dishes.length]);
    expect(groups(after(lunch.closesAt, minutes(-1)))).toEqual([[lunch.id, 1]]);
    expect(groups(lunch.closesAt)).toEqual([[null, 1]]);
    const nothing = leftByService({ ...end, dishes: [] }, lunch.closesAt);
    expect(nothing).toEqual([{ service: null, dishes: [] }]);
  });

  it('knows where it goes once somebody has said so, a tap before the hub too', () => {
    const telling = served();
    const weightKg = kilograms(1.5);
    const intent = { kind: 'carryOver', batch: batch.id, weightKg } as const;
    const head = { personId: null, screenId: 'desk' as ScreenId, tappedAt: late };
    const command = { ...intent, id: 'tap-1' as CommandId, ...head };
    const laid = overlay(deskOf(telling), [{ command, mark: 'tapped' }]);
    expect(panOf(laid.view)).toMatchObject({ left: 0, keptKg: 1.5 });
    expect(laid.marks.get(batch.id)).toBe('tapped');
    telling.ask(intent, late);
    expect(panOf(deskOf(telling))).toMatchObject({ left: 0, keptKg: 1.5 });
  });

  it('says what is under way, what goes on, what never began, and which smoker is down', () => {
    const telling = served();
    const smoker = must(kitchen.smokers[0], 'a smoker');
    const other = must(
      built.batches.find(({ id }) => id !== batch.id),
      'another batch',
    );
    const first = must(
      built.tasks.find(({ work, batch: of }) => work === 'hands' && of === other.id),
      other.id,
    );
    telling.keep({ kind: 'taskStarted', task: first.id, hand: null }, noon, null);
    telling.ask({ kind: 'smokerDown', smoker: smoker.id, tempC: celsius(60), backAt: null }, late);
    const { end } = deskOf(telling);
    expect(end.running).toEqual([{ title: first.title, batch: other.name }]);
    // What stands at the pass does not go on: somebody has to say where it goes.
    expect(end.goesOn).toEqual([other.name]);
    expect(end.neverBegan).toHaveLength(built.batches.length - 2);
    expect(end.smokersDown).toEqual([smoker.name]);
  });

  it('is told to every face once the day is closed, and no more when that is taken back', () => {
    const telling = served();
    telling.ask({ kind: 'closeDay' }, late, person.id);
    const closing = must(telling.events.at(-1), 'the closing');
    const faces = [{ kind: 'desk' }, { kind: 'pass' }, { kind: 'smoker' }] as const;
    const live = openLive(telling.state, late);
    for (const face of faces) {
      const { closed } = viewOf(live, face);
      expect(closed).toEqual({ at: late, by: person.name, command: closing.commandId });
    }
    telling.ask({ kind: 'undo', command: closing.commandId }, after(late, minutes(1)));
    expect(deskOf(telling, after(late, minutes(1))).closed).toBeNull();
  });
});
