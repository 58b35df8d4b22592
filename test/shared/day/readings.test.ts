import { describe, expect, it } from 'vitest';
import { lookAtReading } from '../../../shared/day/index.ts';
import { after, celsius, hours, minutes } from '../../../shared/kernel/index.ts';
import { plan, Telling, task } from './demo.ts';

const core = { kind: 'core', stay: task('lunch-pulled-shoulder-1', 'stay') } as const;
const begun = after(plan.built.origin, hours(24));

function told(...readings: readonly (readonly [minute: number, tempC: number])[]) {
  const telling = new Telling();
  for (const [minute, tempC] of readings) {
    const at = after(begun, minutes(minute));
    telling.ask({ kind: 'reading', where: core, tempC: celsius(tempC) }, at);
  }
  return (minute: number, tempC: number) => {
    const at = after(begun, minutes(minute));
    return lookAtReading(telling.state, { where: core, tempC: celsius(tempC), at }, at);
  };
}

describe('a core that is read', () => {
  it('is sound while it comes up as meat does, or a hand pricks another place', () => {
    const look = told([0, 60]);
    expect([look(10, 61), look(10, 52), look(60, 95)]).toEqual(['sound', 'sound', 'sound']);
  });

  it('is that of a probe that fell out where it leaps to the air or to the room', () => {
    const look = told([0, 60]);
    expect([look(10, 101), look(5, 24), look(90, 30)]).toEqual([
      'fell-out',
      'fell-out',
      'fell-out',
    ]);
  });

  it('is known by its place and time, and put in its order', () => {
    const look = told([0, 60], [30, 63]);
    expect([look(30, 63), look(15, 61), look(45, 64)]).toEqual([
      'duplicate',
      'out-of-order',
      'sound',
    ]);
  });

  it('is none that no core can show', () => {
    const look = told();
    expect([look(0, 180), look(-30 * 60, 20)]).toEqual(['impossible', 'before-the-day']);
  });
});
