import type { Outcome, WrapName } from '../cook/index.ts';
import type { Celsius, Instant, TaskId } from '../kernel/index.ts';

/**
 * What is foreseen of a load in a smoker, as the day keeps it: so much that nothing has to be
 * computed anew to tell the day again.
 */
export type AdoptedForecast = {
  readonly stay: TaskId;
  readonly modelVersion: number;
  readonly seed: number;
  readonly madeAt: Instant;
  /** When the piece went in. */
  readonly startedAt: Instant;
  readonly lastReadingAt: Instant | null;
  /** As it is, or is meant to be, wrapped. */
  readonly wrap: WrapName;
  /** False: "not yet calibrated here". */
  readonly isCalibrated: boolean;
  /** In their order; none where nothing can be said, as with a target above the fire. */
  readonly stages: readonly ForeseenStage[];
  /** What the thermometer may show from then on. */
  readonly fan: readonly ForeseenCore[];
};

/** When a stage of the cook comes to its end; null where so many never get there. */
export type ForeseenStage = {
  readonly stage: TaskId;
  readonly tempC: Celsius;
  readonly p10At: Instant | null;
  readonly p50At: Instant | null;
  readonly p90At: Instant | null;
  /** The chance that it never does at this fire. */
  readonly never: number;
  /**
   * How much of the doubt its smoker's other loads share, 0–1; absent from what was kept before it
   * was told.
   */
  readonly ofSmoker?: number;
  /** Before any calibration, for the kitchen's record. */
  readonly raw: Outcome['raw'] | null;
};

export type ForeseenCore = {
  readonly at: Instant;
  readonly p10C: Celsius;
  readonly p50C: Celsius;
  readonly p90C: Celsius;
};
