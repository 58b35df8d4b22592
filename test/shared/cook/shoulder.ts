import type { ForecastOptions, Piece, Reading, Smoker } from '../../../shared/cook/index.ts';
import { cutPriors, smokerPriors } from '../../../shared/cook/index.ts';
import { celsius, hours, metres, seconds } from '../../../shared/kernel/index.ts';

/** A shoulder of ten centimetres as many a test wants it, to be done at 96 °C. */
export const shoulder: Piece = {
  cut: cutPriors.shoulder,
  sides: { thicknessM: metres(0.1), widthM: metres(0.18), lengthM: metres(0.22) },
  startC: celsius(5),
  stays: [{ from: { by: 'time', atS: seconds(0) }, place: { kind: 'home' }, wrap: 'none' }],
  targets: [
    { id: 'wrap', tempC: celsius(72), way: 'rising' },
    { id: 'done', tempC: celsius(96), way: 'rising' },
  ],
};

export const smoker: Smoker = {
  id: 'pit',
  prior: smokerPriors.draught,
  setC: celsius(115),
  log: [],
  doors: [],
};

/** A probe that shows so much after 1, 2, 3 ... hours. */
export const hourly = (...temps: readonly number[]): Reading[] =>
  temps.map((tempC, index) => ({
    atS: hours(index + 1),
    tempC: celsius(tempC),
    by: 'probe',
  }));

export const at = (hour: number, seed = 1): ForecastOptions => ({ nowS: hours(hour), seed });
