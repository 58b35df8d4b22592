import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TaskId } from '../../../shared/kernel/index.ts';
import { kilograms } from '../../../shared/kernel/index.ts';
import type { TaskState, TaskView } from '../../../shared/view/index.ts';
import { pressesNow, stationPage } from '../../../shared/view/index.ts';
import {
  at,
  injectShoulders,
  loadRibs,
  NOW,
  rubRibs,
  silverskin,
  squareRibs,
  stationView,
  task,
} from '../../client/fixtures.ts';

const room = { now: 3, next: 3, further: 2 };
const nothing = new Set<TaskId>();
const page = (tasks: readonly TaskView[], more: Partial<Parameters<typeof stationPage>[2]> = {}) =>
  stationPage({ tasks, later: 0 }, NOW, { room, held: nothing, ...more });
const ids = (tasks: readonly TaskView[]) => tasks.map(({ id }) => id);
const nowIds = (...asked: Parameters<typeof page>) =>
  ids(page(...asked).now.map((line) => line.task));

describe('the page of a station wall', () => {
  it('has under Now what runs and what may start within minutes, the rest by time', () => {
    const shown = stationPage(stationView, NOW, { room, held: nothing });
    expect(ids(shown.now.map((line) => line.task))).toEqual([squareRibs.id, injectShoulders.id]);
    expect(ids(shown.next)).toEqual([rubRibs.id, loadRibs.id, silverskin.id]);
    expect(ids(shown.further)).toEqual(['trim-1/grind', 'trim-1/wash']);
    expect(shown.laterCount).toBe(7);
  });

  it('leaves what may start, but only in a while, among what is next', () => {
    const later = task('a/rub', 'Rub', [40, 10], { state: 'ready' });
    expect(nowIds([squareRibs, later])).toEqual([squareRibs.id]);
  });

  it('shows what comes first where nothing needs a hand, and does not call it due', () => {
    const [first, ...others] = page([loadRibs, rubRibs]).now;
    expect(others).toEqual([]);
    expect(first).toEqual({ task: rubRibs, isDue: false });
  });

  it('has nothing under Now while the next is a good while off, and knows when that is', () => {
    const soon = task('a/rub', 'Rub', [30, 10], { state: 'ready' });
    expect(nowIds([soon])).toEqual([soon.id]);
    const later = { ...soon, startAt: at(31) };
    const shown = page([later]);
    expect(shown.now).toEqual([]);
    expect(ids(shown.next)).toEqual([later.id]);
    expect(shown.nextAt).toEqual(later.startAt);
    expect(page([]).nextAt).toBeNull();
    expect(nowIds([later], { held: new Set([later.id]) })).toEqual([later.id]);
  });

  it('says of one thing for each hand that it needs it now: what it does, or else is to do', () => {
    const due = (...tasks: TaskView[]) =>
      page(tasks)
        .now.filter(({ isDue }) => isDue)
        .map((line) => line.task.id);
    const [does, then] = [squareRibs, task('a/wash', 'Wash', [1, 5], { state: 'ready' })];
    const same = { ...then, hand: does.hand };
    expect(nowIds([does, same])).toEqual([does.id, same.id]);
    expect(due(does, same)).toEqual([does.id]);
    expect(due({ ...does, state: 'ready' }, same)).toEqual([does.id]);
    expect(due({ ...does, hand: null }, { ...then, hand: null })).toHaveLength(2);
  });

  it('shows nothing at all when nothing is left', () => {
    expect(page([]).now).toEqual([]);
  });

  it('puts what asks for help before what only runs', () => {
    const running = [1, 2, 3].map((n) => task(`a/${n}`, 'Trim', [-n, 30], { state: 'running' }));
    const asking = task('b/1', 'Trim', [0, 30], { state: 'running', helpAskedAt: at(-1) });
    expect(nowIds([...running, asking])).toContain(asking.id);
  });

  it('keeps a finished line while the finger may take it back, and lets it go then', () => {
    const done = { ...squareRibs, state: 'done' as const };
    const held = new Set([done.id]);
    expect(page([done, injectShoulders], { held }).now[0]).toEqual({ task: done, isDue: false });
    expect(nowIds([done, injectShoulders])).toEqual([injectShoulders.id]);
  });

  it('keeps what was just done and has trim to weigh, where there is room for it', () => {
    const tub = { tub: 'tips', name: { en: 'tips' }, weightKg: kilograms(4), mostKg: kilograms(9) };
    const done = { ...squareRibs, state: 'done' as const, tubs: [{ ...tub, isWeighed: false }] };
    const shown = page([done, injectShoulders]).now;
    expect(shown).toEqual([
      { task: done, isDue: false },
      { task: injectShoulders, isDue: true },
    ]);
    const one = { room: { ...room, now: 1 } };
    expect(nowIds([done, injectShoulders], one)).toEqual([injectShoulders.id]);
    expect(nowIds([done, { ...loadRibs, startAt: at(20) }], one)).toEqual([loadRibs.id]);
    expect(nowIds([done, loadRibs], one)).toEqual([done.id]);
    const weighed = { ...done, tubs: [{ ...tub, isWeighed: true }] };
    expect(nowIds([weighed, injectShoulders])).toEqual([injectShoulders.id]);
  });

  it('brings up what a finger picked, even if it must wait, but does not call it due', () => {
    const [, picked] = page([squareRibs, loadRibs], { held: new Set([loadRibs.id]) }).now;
    expect(picked).toEqual({ task: loadRibs, isDue: false });
    expect(nowIds([squareRibs, loadRibs], { held: new Set([loadRibs.id]) })).toEqual([
      squareRibs.id,
      loadRibs.id,
    ]);
  });

  it('does not move a line when the one beside it is started', () => {
    const ready = [1, 2, 3].map((n) => task(`a/${n}`, 'Trim', [-n, 30], { state: 'ready' }));
    const before = nowIds(ready);
    for (const started of ready) {
      const changed = { ...started, state: 'running' as const, startAt: NOW };
      expect(nowIds(ready.map((each) => (each === started ? changed : each)))).toEqual(before);
    }
  });

  it('has what waits for a moment before what is due after it, and does not call it due', () => {
    const load = task('a/load', 'Load', [1, 5], { state: 'waiting' });
    const wood = task('b/wood', 'Feed wood', [3, 3], { state: 'ready' });
    const one = { room: { ...room, now: 1 } };
    expect(nowIds([wood, load], one)).toEqual([load.id]);
    expect(page([wood, load]).now).toEqual([
      { task: load, isDue: false },
      { task: wood, isDue: true },
    ]);
    expect(nowIds([{ ...wood, startAt: NOW }, load])).toEqual([wood.id]);
    // What was to begin long ago and cannot does not stand before what may.
    const stuck = task('c/load', 'Load', [-40, 5], { state: 'waiting' });
    const due = task('d/wood', 'Feed wood', [-2, 3], { state: 'ready' });
    expect(nowIds([stuck, due], one)).toEqual([due.id]);
    expect(nowIds([stuck, { ...due, startAt: NOW }], one)).toEqual([due.id]);
  });

  it('has what runs or is past due and found no line first of the rest', () => {
    const runs = [1, 2].map((n) => task(`a/${n}`, 'Check', [-n, 9], { state: 'running' }));
    const wood = task('b/wood', 'Feed wood', [-1, 3], { state: 'ready' });
    const wrap = task('c/wrap', 'Wrap', [-3, 3], { state: 'waiting' });
    const { now, next } = page([...runs, wrap, wood], { room: { ...room, now: 1 } });
    expect(ids(now.map((line) => line.task))).toEqual([runs[1]?.id]);
    expect(ids(next)).toEqual([runs[0]?.id, wood.id, wrap.id]);
  });

  it('has no line under Now that comes later than another task which may be begun', () => {
    const state = fc.constantFrom<TaskState>('waiting', 'ready', 'running', 'done');
    const lines = fc.array(fc.tuple(state, fc.integer({ min: -20, max: 20 })), { maxLength: 24 });
    const rooms = fc.record({ now: fc.nat(3), next: fc.nat(6), further: fc.nat(4) });
    fc.assert(
      fc.property(lines, rooms, (drawn, anyRoom) => {
        const tasks = drawn.map(([each, start], n) =>
          task(`a/${n}`, 'T', [start, 9], { state: each }),
        );
        const shown = stationPage({ tasks, later: 0 }, NOW, { room: anyRoom, held: nothing });
        const rest = [...shown.next, ...shown.further];
        const mayBegin = rest.filter((each) => each.state === 'ready');
        for (const { task: line } of shown.now) {
          if (line.state !== 'waiting' && line.state !== 'ready') continue;
          expect(mayBegin.every(({ startAt }) => startAt >= line.startAt)).toBe(true);
        }
        const presses = rest.map((each) => pressesNow(each, NOW));
        expect(presses.lastIndexOf(true)).toBe(presses.filter(Boolean).length - 1);
      }),
    );
  });

  it('loses no task and shows none twice, in whatever room', () => {
    const state = fc.constantFrom<TaskState>('waiting', 'ready', 'running', 'done');
    const lines = fc.array(fc.tuple(state, fc.integer({ min: -60, max: 300 })), { maxLength: 24 });
    const rooms = fc.record({ now: fc.nat(3), next: fc.nat(6), further: fc.nat(4) });
    fc.assert(
      fc.property(lines, rooms, fc.nat(9), (drawn, anyRoom, later) => {
        const tasks = drawn.map(([each, start], n) =>
          task(`a/${n}`, 'T', [start, 9], { state: each }),
        );
        const shown = stationPage({ tasks, later }, NOW, { room: anyRoom, held: nothing });
        const all = [...shown.now.map((line) => line.task), ...shown.next, ...shown.further];
        const open = tasks.filter((each) => each.state !== 'done').length;
        expect(new Set(ids(all)).size).toBe(all.length);
        expect(all.length + shown.laterCount).toBe(open + later);
        expect(shown.now.length).toBeLessThanOrEqual(Math.max(1, anyRoom.now));
      }),
    );
  });
});
