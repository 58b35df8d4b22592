import { describe, expect, it } from 'vitest';
import { demoLog } from '../../../server/demo/index.ts';
import { openLive, overlongIn } from '../../../shared/day/index.ts';
import { after, celsius, hours, type SmokerId } from '../../../shared/kernel/index.ts';
import { noon, plan, Telling } from './demo.ts';

/** The demo's day at noon; then one of its smokers is out, for so long. */
function outFor(hoursOut: number | null) {
  const telling = new Telling();
  const taps = demoLog(plan, { now: noon, seed: 7 });
  for (const { intent, at, personId } of taps) telling.ask(intent, at, personId);
  if (hoursOut !== null) {
    const smoker = 'b' as SmokerId;
    const backAt = after(noon, hours(hoursOut));
    const down = { kind: 'smokerDown', smoker, tempC: celsius(60), backAt } as const;
    expect(telling.ask(down, noon).ok).toBe(true);
  }
  return openLive(telling.state, noon);
}

describe('rests and holds that will last too long', () => {
  it('are none on a day that goes as it was planned', () => {
    expect(overlongIn(outFor(null))).toEqual([]);
  });

  it('are not counted of what is served: that lasts as long as there are guests', () => {
    const { state } = outFor(null);
    const later = after(noon, hours(6));
    const serving = overlongIn(openLive(state, later)).filter(({ task }) => /serve$/.test(task));
    expect(serving).toEqual([]);
  });

  it('are named with what is held, from when, until when, and by how much', () => {
    const late = overlongIn(outFor(4));
    expect(late.map(({ title, batch }) => [title.en, batch.en])).toEqual([
      ['Rest spare ribs', 'Spare ribs · Lunch 2'],
      ['Hold spare ribs', 'Spare ribs · Lunch 2'],
    ]);
    for (const { from, until, overAt, mostS, byS } of late) {
      expect(overAt).toBe(after(from, mostS));
      expect(until).toBe(after(overAt, byS));
    }
  });

  it('say what ends a rest, and of what is held to be sold that it is thrown out', () => {
    const [rest, hold] = overlongIn(outFor(4));
    expect(rest).toMatchObject({
      isSold: false,
      next: { title: { en: 'Cut the first spare ribs' } },
    });
    expect(rest?.next?.at).toBe(rest?.until);
    expect(hold).toMatchObject({ isSold: true, next: null });
  });
});
