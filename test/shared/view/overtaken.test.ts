import { describe, expect, it } from 'vitest';
import type {
  BatchId,
  CommandId,
  DishId,
  ScreenId,
  ServiceId,
  SlotId,
} from '../../../shared/kernel/index.ts';
import { celsius, seconds } from '../../../shared/kernel/index.ts';
import type { Command, Intent, PassView, Refusal, View } from '../../../shared/view/index.ts';
import { isOvertaken } from '../../../shared/view/index.ts';
import {
  at,
  ines,
  injectShoulders,
  NOW,
  rubRibs,
  smokerView,
  squareRibs,
  stationView,
  theo,
} from '../../client/fixtures.ts';

const tapped = (intent: Intent): Command => ({
  ...intent,
  id: 'tap' as CommandId,
  personId: null,
  screenId: 'a-screen' as ScreenId,
  tappedAt: NOW,
});

const isPast = (intent: Intent, view: View, rule: Refusal['rule'] = 'not-this-screens') =>
  isOvertaken({ command: tapped(intent), refusal: { rule } as Refusal }, view);

const with_ = (...tasks: typeof stationView.tasks) => ({ ...stationView, tasks });

describe('a refused tap on a task says nothing more', () => {
  it.each([
    ['a start', { kind: 'start', task: squareRibs.id }, { state: 'running' }, { state: 'ready' }],
    ['a finish', { kind: 'finish', task: squareRibs.id }, { state: 'done' }, { state: 'running' }],
    ['a taking back', { kind: 'takeBack', task: squareRibs.id }, { state: 'ready' }, {}],
    ['a count', { kind: 'count', task: squareRibs.id, done: 13 }, { counted: 13 }, {}],
    [
      'a word of delay',
      { kind: 'late', task: squareRibs.id, byS: seconds(300) },
      { state: 'done' },
      {},
    ],
    ['a call for help', { kind: 'needHelp', task: squareRibs.id }, { helpAskedAt: at(-1) }, {}],
    ['the end of help', { kind: 'helpCame', task: squareRibs.id }, {}, { helpAskedAt: at(-1) }],
    ['a giving', { kind: 'giveTo', task: squareRibs.id, hand: theo }, { hand: theo }, {}],
  ] as const)('once %s has happened, and not before', (_what, intent, after, before) => {
    expect(isPast(intent as Intent, with_({ ...squareRibs, ...after }))).toBe(true);
    expect(isPast(intent as Intent, with_({ ...squareRibs, ...before }))).toBe(false);
  });

  it('once the task is no longer on the wall', () => {
    const intent = { kind: 'start', task: rubRibs.id } as const;
    expect(isPast(intent, with_(squareRibs))).toBe(true);
    expect(isPast(intent, with_(squareRibs, rubRibs))).toBe(false);
  });

  it('once what stood against it has gone: then it can be tapped again', () => {
    const start = { kind: 'start', task: injectShoulders.id } as const;
    expect(isPast(start, stationView, 'waits-for')).toBe(true);
    expect(isPast(start, with_({ ...injectShoulders, state: 'waiting' }), 'waits-for')).toBe(false);
    const finish = { kind: 'finish', task: squareRibs.id } as const;
    expect(isPast(finish, stationView, 'not-started')).toBe(true);
  });
});

describe('a refused tap at the pit says nothing more', () => {
  const [a, b] = smokerView.smokers;
  if (!a || !b) throw new Error('the fixture has too few smokers');

  it('once another has read the same', () => {
    const air = {
      kind: 'reading',
      where: { kind: 'air', smoker: a.id },
      tempC: celsius(900),
    } as const;
    expect(isPast(air, smokerView)).toBe(false);
    const read = { ...a, lastAir: { tempC: celsius(100), at: at(1), trendCPerHour: 0 } };
    expect(isPast(air, { ...smokerView, smokers: [read, b] })).toBe(true);
  });

  it('once the smoker is as it was said to be', () => {
    const down = { kind: 'smokerDown', smoker: a.id, tempC: celsius(60), backAt: null } as const;
    expect(isPast(down, smokerView)).toBe(false);
    const spell = { kind: 'down', since: at(-2), backAt: null } as const;
    expect(isPast(down, { ...smokerView, smokers: [{ ...a, spell }, b] })).toBe(true);
  });

  it('once the load lies there, or is off', () => {
    const [load] = a.racks.flatMap(({ loads }) => loads);
    if (!load) throw new Error('the fixture has no load');
    const move = (to: string): Intent => ({
      kind: 'moveSlots',
      moves: [{ stay: load.stay, need: load.need, to: to as SlotId }],
      basedOnSeq: 1,
    });
    expect(isPast(move('b/1'), smokerView)).toBe(false);
    expect(isPast(move('a/1'), smokerView)).toBe(true);
    expect(isPast(move('b/1'), { ...smokerView, smokers: [b] })).toBe(true);
  });
});

describe('a refused tap of any wall says nothing more', () => {
  it('once the hand is out, or in again', () => {
    const out = { kind: 'handOut', hand: ines, backAt: null } as const;
    expect(isPast(out, stationView)).toBe(false);
    const people = stationView.people.map((each) => ({ ...each, isOut: each.id === ines }));
    expect(isPast(out, { ...stationView, people })).toBe(true);
    expect(isPast({ kind: 'handIn', hand: ines }, { ...stationView, people })).toBe(false);
  });

  it('of a sale once its service is over, or so many are counted', () => {
    const { face: _face, stations: _stations, tasks: _tasks, later: _later, ...head } = stationView;
    const lunch = 'lunch' as ServiceId;
    const ribs = {
      dish: 'ribs' as DishId,
      name: { en: 'Ribs' },
      allergens: [],
      perQuarter: [],
      soldBefore: 0,
    };
    const pass = (sold: number, service = lunch): PassView => ({
      ...head,
      face: 'pass',
      service: { id: service, name: { en: 'Lunch' }, opensAt: at(-60), closesAt: at(60) },
      dishes: [{ ...ribs, sold, soldOutAt: null, pans: [] }],
    });
    const sold = { kind: 'sold', service: lunch, dish: ribs.dish, sold: 4 } as const;
    expect(isPast(sold, pass(3))).toBe(false);
    expect(isPast(sold, pass(4))).toBe(true);
    expect(isPast(sold, pass(0, 'dinner' as ServiceId))).toBe(true);
    expect(isPast({ kind: 'panEmpty', batch: 'ribs-1' as BatchId }, pass(0))).toBe(true);
  });

  it('but stands where this face cannot tell', () => {
    expect(isPast({ kind: 'note', task: squareRibs.id, text: 'thin' }, stationView)).toBe(false);
    const { face: _face, tasks: _tasks, later: _later, ...rest } = smokerView;
    const desk = { ...rest, face: 'desk' } as unknown as View;
    expect(isPast({ kind: 'start', task: squareRibs.id }, desk)).toBe(false);
  });
});
