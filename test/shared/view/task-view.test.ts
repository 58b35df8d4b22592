import { describe, expect, it } from 'vitest';
import { currentHand, openLive } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import { after, type Instant, minutes, must } from '../../../shared/kernel/index.ts';
import { LagsAmong, taskView } from '../../../shared/view/index.ts';
import { handsInOrder, plan, Telling } from '../day/demo.ts';

const first = must(handsInOrder[0], 'a task');
const { startS } = must(
  plan.schedule.placements.find(({ activity }) => activity === first),
  first,
);
const at = after(plan.built.origin, startS);
const hour = after(at, minutes(60));

function line(telling: Telling, now: Instant) {
  const live = openLive(telling.state, now);
  return taskView(live, first, new LagsAmong(live, new Set()));
}

describe('the line of a task whose hand is out', () => {
  it('offers no start that would be refused, also once the hand is overdue', () => {
    const telling = new Telling();
    const lineAt = (now: typeof at) => line(telling, now);
    expect(lineAt(at).state).toBe('ready');
    const hand = must(currentHand(telling.state, indexOf(plan), first), 'a hand');
    telling.ask({ kind: 'handOut', hand, backAt: after(at, minutes(30)) }, at);
    expect(telling.ask({ kind: 'start', task: first }, hour).ok).toBe(false);
    expect(lineAt(hour)).toMatchObject({ state: 'waiting', because: { kind: 'out' } });
    telling.ask({ kind: 'handIn', hand }, hour);
    expect(lineAt(hour).state).toBe('ready');
  });
});

describe('a line after the day was closed', () => {
  it('offers no start until the closing is taken back', () => {
    const telling = new Telling();
    const state = () => line(telling, at).state;
    expect(state()).toBe('ready');
    expect(telling.ask({ kind: 'closeDay' }, at, must(plan.kitchen.crew[0], 'a hand').id).ok).toBe(
      true,
    );
    expect(state()).toBe('waiting');
    expect(telling.ask({ kind: 'start', task: first }, at).ok).toBe(false);
  });
});
