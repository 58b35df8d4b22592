import { describe, expect, it } from 'vitest';
import { openLive } from '../../../shared/day/index.ts';
import { after, celsius, hours, instant, minutes, must } from '../../../shared/kernel/index.ts';
import {
  type CookDrawing,
  cookLines,
  type SmokerView,
  viewOf,
} from '../../../shared/view/index.ts';
import { plan, Telling, task } from '../day/demo.ts';

const start = instant(0);
const at = (hour: number) => after(start, hours(hour));
const cook: CookDrawing = {
  startedAt: start,
  cores: [
    { at: at(1), tempC: celsius(20) },
    { at: at(4), tempC: celsius(62) },
  ],
  fan: [4, 6, 8, 10].map((hour) => ({
    at: at(hour),
    p10C: celsius(60 + hour),
    p50C: celsius(64 + 2 * hour),
    p90C: celsius(68 + 3 * hour),
  })),
  stages: [
    { tempC: celsius(71), p10At: at(5), p50At: at(6), p90At: at(7), never: 0 },
    { tempC: celsius(96), p10At: at(8), p50At: at(9), p90At: null, never: 0.2 },
  ],
  wrappedAt: null,
  openedAt: [at(2)],
  isCalibrated: false,
};

describe('the picture of a cook', () => {
  const lines = cookLines(cook, at(4));

  it('runs from when it went in until it is likely done, with now where readings end', () => {
    expect(lines.now).toBeCloseTo(4 / 9, 9);
    expect(lines.cores.at(-1)?.[0]).toBeCloseTo(4 / 9, 9);
    expect(lines.targets.map(({ mid }) => mid)).toEqual([6 / 9, 1]);
    expect(lines.targets[1]?.high).toBeNull();
    expect(lines.opened).toEqual([2 / 9]);
  });

  it('has what is hotter further up, and everything within its frame', () => {
    const [wrap, done] = lines.targets;
    expect(must(done, 'done').y).toBeLessThan(must(wrap, 'wrap').y);
    for (const [x, y] of [...lines.cores, ...lines.fan, ...lines.middle]) {
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
      expect(Math.max(x, y)).toBeLessThanOrEqual(1);
    }
  });

  it('runs over the hours of a rack where it stands over them, and says what is passed', () => {
    const over = cookLines({ ...cook, wrappedAt: at(1) }, at(4), { from: at(3), to: at(13) });
    expect(over.cores).toEqual([[0.1, must(over.cores[0], 'a core')[1]]]);
    expect(over.targets.map(({ mid }) => mid)).toEqual([0.3, 0.6]);
    expect([over.wrapped, over.opened]).toEqual([null, []]);
    expect(over.targets.map(({ isPassed }) => isPassed)).toEqual([false, false]);
    const hot = { ...cook, cores: [{ at: at(4), tempC: celsius(72) }] };
    expect(cookLines(hot, at(4)).targets.map(({ isPassed }) => isPassed)).toEqual([true, false]);
    for (const [, y] of [...over.cores, ...over.fan]) {
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(1);
    }
  });

  it('goes round the fan over its hot side and back under its cold one', () => {
    const half = lines.fan.length / 2;
    for (const [i, [x, y]] of lines.fan.slice(0, half).entries()) {
      const [backX, backY] = must(lines.fan.at(-1 - i), 'a point');
      expect(backX).toBe(x);
      expect(y).toBeLessThan(backY);
    }
  });
});

describe('a load on the smokers’ wall', () => {
  it('has its picture once something is foreseen of it, with the readings in their order', () => {
    const telling = new Telling();
    const stay = task('lunch-pulled-shoulder-1', 'stay');
    const begun = after(plan.built.origin, hours(24));
    const core = { kind: 'core', stay } as const;
    for (const [minute, tempC] of [
      [60, 40],
      [30, 25],
    ] as const) {
      telling.keep(
        { kind: 'temperatureRead', where: core, tempC: celsius(tempC) },
        after(begun, minutes(minute)),
        null,
      );
    }
    const now = after(begun, hours(1));
    const loadOf = () => {
      const view = viewOf(openLive(telling.state, now), { kind: 'smoker' }) as SmokerView;
      const racks = view.smokers.flatMap((smoker) => smoker.racks);
      return must(
        racks.flatMap(({ loads }) => loads).find((load) => load.stay === stay),
        'a load',
      );
    };
    expect(loadOf().cook).toBeNull();
    expect(loadOf().lastCore?.tempC).toBe(40);
    const stage = task('lunch-pulled-shoulder-1', 'smoke');
    const [low, mid, high] = [3, 4, 5].map((hour) => after(begun, hours(hour)));
    telling.keep(
      {
        kind: 'forecastAdopted',
        forecast: {
          ...{ stay, modelVersion: 1, seed: 1, madeAt: now, startedAt: begun, lastReadingAt: now },
          ...{ wrap: 'paper', isCalibrated: false, fan: [] },
          stages: [
            {
              ...{ stage, tempC: celsius(71), never: 0, raw: null },
              ...{ p10At: low ?? null, p50At: mid ?? null, p90At: high ?? null },
            },
          ],
        },
      },
      now,
      null,
    );
    const { cook: drawn } = loadOf();
    expect(drawn?.cores.map(({ tempC }) => tempC)).toEqual([25, 40]);
    expect(drawn?.stages).toMatchObject([{ p50At: mid }]);
    expect(drawn?.isCalibrated).toBe(false);
  });
});
