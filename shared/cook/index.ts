export type { AirPoint } from './air-curve.ts';
export type { Message } from './belief.ts';
export { COOKS_TO_BE_KNOWN, cooksIn, isKnown, type Outcome } from './calibration.ts';
export { type CutPrior, cutPriors } from './cut-priors.ts';
export type { Fault } from './faults.ts';
export { beginForecast, type Forecasting, forecast } from './forecast.ts';
export { askIn, type ForecastAsk } from './forecast-file.ts';
export { forecastFileSchema, readForecastFile } from './forecast-file-schema.ts';
export type { Job } from './job.ts';
export { type Composition, meatProperties } from './meat.ts';
export {
  humidityFromWetBulb,
  humidityRatio,
  pressureAtPa,
  saturationPressurePa,
  vapourPressurePa,
  wetBulbC,
} from './moist-air.ts';
export { scoreOf } from './normal.ts';
export { type Opening, openingsOf, seenIn, unseenFalls } from './openings.ts';
export type { Piece, Place, Reading, Smoker, Stay, Target } from './piece.ts';
export { quantiles } from './quantiles.ts';
export { type Foreseeing, foreseeing, type Kept } from './reheard.ts';
export { type Room, rooms, type Wrap, type WrapName, wraps } from './rooms.ts';
export { type SmokerPrior, smokerPriors, withWetBulb } from './smoker-priors.ts';
export { type Forecast, type ForecastOptions, MODEL_VERSION, type TargetForecast } from './tell.ts';
