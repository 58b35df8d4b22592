import { describe, expect, it } from 'vitest';
import { type Forecast, forecast, type Message, type Piece } from '../../../shared/cook/index.ts';
import { metres } from '../../../shared/kernel/index.ts';
import { at, hourly, shoulder, smoker } from './shoulder.ts';

function made(piece: Piece, readings: readonly number[], heard: readonly Message[] = []): Forecast {
  const found = forecast(piece, { ...smoker, heard }, hourly(...readings), at(5));
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.forecast;
}

const says = (found: Forecast) => found.saysOfSmokers.map(({ message }) => message);
const done = ({ targets }: Forecast) => targets[1];
const p50H = (found: Forecast) => (done(found)?.p50S ?? Number.NaN) / 3600;
const widthH = (found: Forecast) =>
  ((done(found)?.p90S ?? Number.NaN) - (done(found)?.p10S ?? Number.NaN)) / 3600;

const thin: Piece = { ...shoulder, sides: { ...shoulder.sides, thicknessM: metres(0.07) } };

/** What a thin piece shows in a smoker that heats well, and in one that heats badly. */
const fast = [42, 66, 74, 86, 94];
const slow = [24, 45, 55, 60, 63];

describe('pieces in one smoker', () => {
  it('hear nothing of it before anything was read', () => {
    const [message] = says(made(thin, []));
    for (const value of message?.precision.flat() ?? [Number.NaN]) {
      expect(Math.abs(value)).toBeLessThan(0.1);
    }
  });

  it('learn from each other how it heats', () => {
    const alone = p50H(made(shoulder, []));
    const besideFast = p50H(made(shoulder, [], says(made(thin, fast))));
    const besideSlow = p50H(made(shoulder, [], says(made(thin, slow))));
    expect(besideFast).toBeLessThan(alone);
    expect(besideSlow).toBeGreaterThan(alone);
  });

  it('are surer for what several others say', () => {
    const one = says(made(thin, [33, 58, 66, 72, 79]));
    const several = [1, 2, 3, 4].flatMap(() => one);
    expect(widthH(made(shoulder, [], several))).toBeLessThan(widthH(made(shoulder, [])));
  });
});
