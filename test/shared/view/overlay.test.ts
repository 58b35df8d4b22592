import { describe, expect, it } from 'vitest';
import type { CommandId, Instant, SlotId } from '../../../shared/kernel/index.ts';
import { celsius, minutes } from '../../../shared/kernel/index.ts';
import type { Intent, Mark, PendingTap, StationView } from '../../../shared/view/index.ts';
import { loadMark, overlay } from '../../../shared/view/index.ts';
import {
  at,
  injectShoulders,
  NOW,
  rubRibs,
  smokerView,
  squareRibs,
  stationView,
  theo,
} from '../../client/fixtures.ts';

let ids = 0;
const tap = (intent: Intent, tappedAt: Instant = NOW, mark: Mark = 'here'): PendingTap => ({
  command: { ...intent, id: `c${ids++}` as CommandId, personId: null, screenId: null, tappedAt },
  mark,
});

function lineOf(view: StationView, id: string) {
  const found = view.tasks.find((task) => task.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
}
const draw = (...taps: PendingTap[]) => overlay(stationView, taps);

describe('a tap laid over the view', () => {
  it('that starts a task makes it run from the finger on, as long as it was to last', () => {
    const { view, marks } = draw(tap({ kind: 'start', task: injectShoulders.id }));
    expect(lineOf(view, injectShoulders.id)).toMatchObject({
      state: 'running',
      startAt: NOW,
      endAt: at(25),
    });
    expect(marks.get(injectShoulders.id)).toBe('here');
  });

  it('that finishes a task lets what waited for it begin', () => {
    const { view } = draw(tap({ kind: 'finish', task: squareRibs.id }));
    expect(lineOf(view, squareRibs.id)).toMatchObject({ state: 'done', endAt: NOW });
    expect(lineOf(view, rubRibs.id).state).toBe('ready');
  });

  it('lets what waits for a hand that is out begin by giving it away, and no other way', () => {
    const out = { kind: 'out', person: { id: theo, name: 'Theo' }, backAt: null } as const;
    const held = stationView.tasks.map((task) =>
      task.id === rubRibs.id ? { ...task, because: out } : task,
    );
    const over = (...taps: PendingTap[]) =>
      lineOf(overlay({ ...stationView, tasks: held }, taps).view, rubRibs.id).state;
    const finished = tap({ kind: 'finish', task: squareRibs.id });
    const given = tap({ kind: 'giveTo', task: rubRibs.id, hand: theo });
    expect(over(finished)).toBe('waiting');
    expect(over(given)).toBe('waiting');
    expect(over(finished, given)).toBe('ready');
  });

  it('is undone by taking it back, also for what waited', () => {
    const { view } = draw(
      tap({ kind: 'finish', task: squareRibs.id }),
      tap({ kind: 'takeBack', task: squareRibs.id }),
    );
    expect(lineOf(view, squareRibs.id).state).toBe('running');
    expect(lineOf(view, rubRibs.id).state).toBe('waiting');
  });

  it('that takes back an unanswered start leaves the line as the hub has it', () => {
    const { view } = draw(
      tap({ kind: 'start', task: injectShoulders.id }),
      tap({ kind: 'takeBack', task: injectShoulders.id }),
    );
    expect(lineOf(view, injectShoulders.id)).toEqual(injectShoulders);
  });

  it('that counts shows the pieces and trusts the pace as far as it was seen', () => {
    const counted = (done: number) =>
      lineOf(draw(tap({ kind: 'count', task: squareRibs.id, done })).view, squareRibs.id);
    expect(counted(13).counted).toBe(13);
    // 13 of 20 in 22 min: 33.8 min by pace against 37 planned.
    expect(counted(13).endAt).toBeLessThan(squareRibs.endAt);
    expect(counted(13).endAt).toBeGreaterThan(at(11));
    expect(counted(20).endAt).toBe(NOW);
  });

  it('that counts the first tray also starts the work that nobody tapped', () => {
    const { view } = draw(tap({ kind: 'count', task: injectShoulders.id, done: 1 }));
    expect(lineOf(view, injectShoulders.id)).toMatchObject({ state: 'running', counted: 1 });
  });

  it('that says late moves the whole end, each time it is said', () => {
    const late = () => tap({ kind: 'late', task: squareRibs.id, byS: minutes(10) });
    const { view } = draw(late(), late());
    expect(lineOf(view, squareRibs.id)).toMatchObject({ endAt: at(35), endHighAt: at(35) });
  });

  it('that asks for help shows it until help came', () => {
    const asked = tap({ kind: 'needHelp', task: squareRibs.id });
    expect(lineOf(draw(asked).view, squareRibs.id).helpAskedAt).toBe(NOW);
    const came = tap({ kind: 'helpCame', task: squareRibs.id });
    expect(lineOf(draw(asked, came).view, squareRibs.id).helpAskedAt).toBeNull();
  });

  it('that gives a task to a hand shows the other name', () => {
    const { view } = draw(tap({ kind: 'giveTo', task: squareRibs.id, hand: theo }));
    expect(lineOf(view, squareRibs.id).hand).toBe(theo);
  });

  it('that the hub has overtaken changes nothing and marks nothing', () => {
    const { view, marks } = draw(
      tap({ kind: 'start', task: squareRibs.id }),
      tap({ kind: 'finish', task: injectShoulders.id }),
      tap({ kind: 'finish', task: 'gone/task' as typeof squareRibs.id }),
    );
    expect(view).toBe(stationView);
    expect(marks.size).toBe(0);
  });

  it('shows for a task the mark of its last tap', () => {
    const { marks } = draw(
      tap({ kind: 'start', task: injectShoulders.id }, NOW, 'here'),
      tap({ kind: 'count', task: injectShoulders.id, done: 2 }, NOW, 'tapped'),
    );
    expect(marks.get(injectShoulders.id)).toBe('tapped');
  });
});

describe('a tap laid over the smokers', () => {
  const stay = smokerView.smokers[0]?.racks[0]?.loads[0]?.stay ?? squareRibs.id;

  it('draws a moved load in its new slot, and only there', () => {
    const to = 'b/1' as SlotId;
    const move = tap({ kind: 'moveSlots', moves: [{ stay, need: 0, to }], basedOnSeq: 40 });
    const { view, marks } = overlay(smokerView, [move]);
    const places = view.smokers
      .flatMap((smoker) => smoker.racks)
      .filter(({ loads }) => loads.some((load) => load.stay === stay && load.need === 0));
    expect(places.map(({ slot }) => slot.id)).toEqual([to]);
    expect(marks.get(loadMark(stay, 0))).toBe('here');
  });

  it('shows a reading where it was taken', () => {
    const smoker = smokerView.smokers[1]?.id ?? ('b' as never);
    const air = tap({ kind: 'reading', where: { kind: 'air', smoker }, tempC: celsius(130) });
    const core = tap({ kind: 'reading', where: { kind: 'core', stay }, tempC: celsius(70) });
    // Who has read it is not asked to any more.
    const asked = smokerView.smokers.map((each) => ({ ...each, unread: { byAt: NOW } }));
    const { view } = overlay({ ...smokerView, smokers: asked }, [air, core]);
    expect(view.smokers[1]?.lastAir).toMatchObject({ tempC: 130, at: NOW });
    expect(view.smokers.map(({ unread }) => unread)).toEqual([{ byAt: NOW }, undefined]);
    expect(view.smokers[0]?.racks[0]?.loads[0]?.lastCore).toEqual({ tempC: 70, at: NOW });
  });
});
