import { describe, expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import { forecast } from '../../../shared/cook/index.ts';
import { cookAskOf, doorsOf, openedOn, passagesOf } from '../../../shared/day/index.ts';
import { indexOf } from '../../../shared/day/plan-index.ts';
import type { SmokerId } from '../../../shared/kernel/index.ts';
import { after, celsius, hours, minutes, must, seconds } from '../../../shared/kernel/index.ts';
import { noon, plan, Telling, task } from './demo.ts';

const stay = task('lunch-pulled-shoulder-1', 'stay');
const smoke = task('lunch-pulled-shoulder-1', 'smoke');
const index = indexOf(plan);

/** Four hours after the shoulders went in, their core read once. */
function smoking() {
  const telling = new Telling();
  const { startS } = must(index.placements.get(smoke), smoke);
  const now = after(plan.built.origin, seconds(startS + hours(4)));
  for (const { at, intent, personId } of demoLog(plan, { now, seed: 1 })) {
    telling.ask(intent, at, personId);
  }
  const core = { kind: 'core', stay } as const;
  telling.ask({ kind: 'reading', where: core, tempC: celsius(58) }, now);
  const startedAt = must(passagesOf(telling.state).get(smoke)?.startedAt, 'a beginning');
  const ask = () => must(cookAskOf(telling.state, index, stay, now), 'something to ask');
  return { telling, now, startedAt, ask, smoker: ask().smoker.id as SmokerId };
}

const open = (smoker: SmokerId, min: number) =>
  ({ kind: 'doorOpen', smoker, openS: minutes(min) }) as const;

describe('a door that was open', () => {
  it('was so until it was told, and is in the air that the forecast is made from', () => {
    const { telling, now, startedAt, ask, smoker } = smoking();
    expect(ask().smoker.doors).toEqual([]);
    telling.ask(open(smoker, 5), now);
    const began = after(now, minutes(-5));
    expect(ask().smoker.doors).toEqual([{ atS: (began - startedAt) / 1000, openS: minutes(5) }]);
    expect(doorsOf(telling.state, smoker, after(now, hours(-1)))).toEqual([began]);
    expect(openedOn(telling.state, index, stay, startedAt)).toEqual([began]);
  });

  it('makes the cook longer, by minutes and not by hours', () => {
    const { telling, now, smoker } = smoking();
    const later = after(now, hours(1));
    const p50S = () => {
      const asked = must(cookAskOf(telling.state, index, stay, later), 'something to ask');
      const { piece, smoker: of, readings, options } = asked;
      const found = forecast(piece, of, readings, { ...options, members: 40 });
      return must(found.ok ? found.forecast.targets[1]?.p50S : null, 'a middle');
    };
    const shutS = p50S();
    // Since the core was read: what was before shows in the reading.
    for (const min of [10, 25, 40, 55]) telling.ask(open(smoker, 5), after(now, minutes(min)));
    expect(p50S() - shutS).toBeGreaterThan(minutes(2));
    expect(p50S() - shutS).toBeLessThan(hours(2));
  });

  it('is told anew, or taken back, within ten minutes', () => {
    const { telling, now, ask, smoker } = smoking();
    telling.ask(open(smoker, 1), now);
    telling.ask(open(smoker, 5), after(now, minutes(1)));
    expect(ask().smoker.doors.map(({ openS }) => openS)).toEqual([minutes(5)]);
    telling.ask(open(smoker, 0), after(now, minutes(2)));
    expect(ask().smoker.doors).toEqual([]);
    telling.ask(open(smoker, 1), after(now, minutes(3)));
    telling.ask(open(smoker, 1), after(now, minutes(40)));
    expect(ask().smoker.doors).toHaveLength(2);
  });

  it('of no smoker, or for hours, is refused', () => {
    const { telling, now, smoker } = smoking();
    const refused = (rule: string) => ({ ok: false, refusal: { rule } });
    expect(telling.ask(open('nowhere' as SmokerId, 1), now)).toMatchObject(
      refused('unknown-place'),
    );
    expect(telling.ask(open(smoker, 120), now)).toMatchObject(refused('impossible-amount'));
  });

  it('is read off the air where nobody told it', () => {
    const { telling, now, startedAt, smoker } = smoking();
    const where = { kind: 'air', smoker } as const;
    for (const [min, tempC] of [
      [1, 120],
      [2, 82],
      [3, 80],
      [9, 116],
    ] as const) {
      const at = after(now, minutes(min));
      telling.ask({ kind: 'reading', where, tempC: celsius(tempC) }, at);
    }
    const opened = openedOn(telling.state, index, stay, startedAt);
    expect(opened).toEqual([after(now, minutes(1))]);
  });

  it('moves no time by itself, and is no news', () => {
    const telling = new Telling();
    const smoker = must(plan.kitchen.smokers[0], 'a smoker').id;
    const before = telling.state.arrangedSeq;
    telling.ask(open(smoker, 2), noon);
    expect(telling.state.arrangedSeq).toBe(before);
  });
});
