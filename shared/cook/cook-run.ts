import { assert, unreachable } from '../kernel/index.ts';
import type { AirCurve } from './air-curve.ts';
import { type Body, HeatModel, stageEndS } from './heat-model.ts';
import type { Drying, Surroundings } from './surface.ts';

/**
 * When something begins: by the clock, or once the thermometer shows so much, which has not
 * happened up to some time or it would be known by the clock.
 */
export type Moment =
  | { readonly by: 'time'; readonly atS: number }
  | { readonly by: 'core'; readonly tempC: number; readonly notBeforeS: number };

/** A part of a cook in which nothing is changed about the surface. */
export type RunStage = {
  readonly from: Moment;
  readonly around: Surroundings;
  readonly air: AirCurve;
  /** By how much the air is warmer than its curve, K: always, and from `drift.fromS` on. */
  readonly warmerK: number;
  readonly drift: { readonly fromS: number; readonly k: number };
};

export type Cook = {
  readonly body: Body;
  readonly drying: Drying;
  /** Of the whole piece, to a square metre of its surface. */
  readonly weightKgPerM2: number;
  /** Where the thermometer sits: 0 at the core, as a share of the half thickness. */
  readonly probeDepth: number;
  /** In order; the first begins at once. */
  readonly stages: readonly RunStage[];
};

/** One who looks on at the end of every step. */
export type Watch = {
  /** A time that a step has to end at. */
  readonly markS: number;
  /** What the thermometer shows when the model has so much there. */
  readonly shownC: (timeS: number, modelC: number) => number;
  /** Whether there is anything left to see. */
  readonly isOver: () => boolean;
};

/** Sees what the model has, to the end. */
const onlooker: Watch = {
  markS: Number.POSITIVE_INFINITY,
  shownC: (_, modelC) => modelC,
  isOver: () => false,
};

/**
 * The first step after a change at the surface is a share of L²/α, and later ones a share of the
 * time since the change: fine while it is young, coarse when it has spread. None sleeps through a
 * turn of the fire.
 */
const STEP_OF_AGE = 0.25;
const SHORTEST_OF_UNIT = 0.002;
const LONGEST_S = 900;

/** A drift of the fire is not there at once. */
const DRIFT_S = 1800;

/** A stage that begins by the core begins within so many seconds of it. */
const CORE_WITHIN_S = 60;

/** What is hotter or colder than this is no solution, even if it balances. */
const SANE_C = 500;

const MOST_STEPS = 4096;
const MOST_STAGES = 16;

/**
 * Runs cooks, one after the other, and keeps of each what was at the end of every step. It makes
 * nothing while it runs.
 */
export class CookRun {
  readonly timesS = new Float64Array(MOST_STEPS);
  /** What the thermometer shows. */
  readonly coresC = new Float64Array(MOST_STEPS);
  readonly surfacesC = new Float64Array(MOST_STEPS);
  readonly vapouredKgPerM2 = new Float64Array(MOST_STEPS);
  /** How many steps' ends are kept, the beginning among them. */
  length = 0;
  readonly model = new HeatModel();

  /**
   * Runs a cook to a time or until the watch is over. False where the model found no balance on
   * the way, or came to no end: then nothing of it counts.
   */
  run(cook: Cook, endS: number, watch: Watch = onlooker): boolean {
    const { model } = this;
    const { stages, probeDepth } = cook;
    assert(stages.length > 0 && stages.length <= MOST_STAGES, `${stages.length} stages`);
    model.begin(cook.body, cook.drying);
    this.length = 0;
    let timeS = 0;
    let changedS = 0;
    let coreC = watch.shownC(0, model.depthC(probeDepth));
    let risingKPerS = 0;
    let next = 0;
    let stage = stageAt(stages, 0);
    this.keep(timeS, coreC);

    while (this.length < MOST_STEPS) {
      while (next < stages.length && isDue(stageAt(stages, next).from, timeS, coreC)) {
        stage = stageAt(stages, next);
        model.meet(stage.around);
        changedS = timeS;
        next++;
      }
      if (timeS >= endS || watch.isOver()) return true;

      const waiting = stages[next];
      const stepEndS = Math.min(
        timeS + this.stepS(timeS - changedS),
        endS,
        watch.markS > timeS ? watch.markS : endS,
        waiting === undefined ? endS : dueS(waiting.from, timeS, coreC, risingKPerS),
      );
      const stepS = stepEndS - timeS;
      const stageC = airOf(stage, timeS + stageEndS(stepS));
      if (!model.step(stepS, stageC, airOf(stage, stepEndS))) return false;
      const before = coreC;
      timeS = stepEndS;
      coreC = watch.shownC(timeS, model.depthC(probeDepth));
      if (!(Math.abs(coreC) < SANE_C)) return false;
      risingKPerS = (coreC - before) / stepS;
      this.keep(timeS, coreC);
    }
    return false;
  }

  private stepS(ageS: number): number {
    const ofAge = Math.max(SHORTEST_OF_UNIT * this.model.unitS, STEP_OF_AGE * ageS);
    return Math.min(ofAge, LONGEST_S);
  }

  private keep(timeS: number, coreC: number): void {
    const { model, length } = this;
    this.timesS[length] = timeS;
    this.coresC[length] = coreC;
    this.surfacesC[length] = model.surfaceC;
    this.vapouredKgPerM2[length] = model.vapouredKgPerM2;
    this.length = length + 1;
  }
}

function stageAt(stages: readonly RunStage[], index: number): RunStage {
  const stage = stages[index];
  assert(stage !== undefined, `stage ${index} of ${stages.length}`);
  return stage;
}

function isDue(from: Moment, timeS: number, coreC: number): boolean {
  switch (from.by) {
    case 'time':
      return timeS >= from.atS;
    case 'core':
      return timeS >= from.notBeforeS && coreC >= from.tempC;
    default:
      return unreachable(from);
  }
}

/** When it is due, or would be if the core went on rising as it does; never at once. */
function dueS(from: Moment, timeS: number, coreC: number, risingKPerS: number): number {
  if (from.by === 'time') return from.atS;
  if (timeS < from.notBeforeS) return from.notBeforeS;
  if (risingKPerS <= 0) return Number.POSITIVE_INFINITY;
  return timeS + Math.max((from.tempC - coreC) / risingKPerS, CORE_WITHIN_S);
}

function airOf({ air, warmerK, drift }: RunStage, timeS: number): number {
  const drifted = Math.max(0, Math.min((timeS - drift.fromS) / DRIFT_S, 1));
  return air.at(timeS) + warmerK + drift.k * drifted;
}
