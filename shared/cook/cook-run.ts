import { assert, unreachable } from '../kernel/index.ts';
import type { AirCurve } from './air-curve.ts';
import { type Body, HeatModel, stageEndS } from './heat-model.ts';
import type { Drying, Surroundings } from './surface.ts';

/** When something begins: by the clock from the start, or once the thermometer shows so much. */
export type Moment =
  | { readonly by: 'time'; readonly atS: number }
  | { readonly by: 'core'; readonly tempC: number };

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
  /** Where the thermometer sits: 0 at the core, as a share of the half thickness. */
  readonly probeDepth: number;
  /** In order; the first begins at once. */
  readonly stages: readonly RunStage[];
};

/** How far to go: to a time, or until the thermometer shows so much with every stage begun. */
export type Until = { readonly timeS: number; readonly coreC: number };

/**
 * The first step after a change at the surface is a share of L²/α, and later ones a share of the time since
 * the change: fine while it is young, coarse when it has spread. None sleeps through a turn of the fire.
 */
const STEP_OF_AGE = 0.2;
const SHORTEST_OF_UNIT = 0.002;
const LONGEST_S = 900;

/** A drift of the fire is not there at once. */
const DRIFT_S = 1800;

/** A stage that begins by the core begins within so many seconds of it. */
const CORE_WITHIN_S = 60;

const MOST_STEPS = 8192;

/** Runs cooks, one after the other, and keeps of each what was at the end of every step. */
export class CookRun {
  readonly timesS = new Float64Array(MOST_STEPS);
  /** What the thermometer shows. */
  readonly coresC = new Float64Array(MOST_STEPS);
  readonly surfacesC = new Float64Array(MOST_STEPS);
  readonly goneKgPerM2 = new Float64Array(MOST_STEPS);
  /** When each stage began; not a number for one that never did. */
  readonly stagesS = new Float64Array(16);
  length = 0;
  readonly model = new HeatModel();

  /** Runs a cook. False where the model found no balance on the way: then nothing of it counts. */
  run(cook: Cook, until: Until): boolean {
    const { model } = this;
    const { stages, probeDepth } = cook;
    model.begin(cook.body, cook.drying);
    this.stagesS.fill(Number.NaN);
    this.length = 0;
    let timeS = 0;
    let changedS = 0;
    let coreC = model.depthC(probeDepth);
    let risingKPerS = 0;
    let next = 0;
    let stage = begun(stages, 0);
    this.keep(timeS, coreC);

    while (this.length < MOST_STEPS) {
      while (next < stages.length && isDue(begun(stages, next).from, timeS, coreC)) {
        stage = begun(stages, next);
        model.meet(stage.around);
        this.stagesS[next] = timeS;
        changedS = timeS;
        next++;
      }
      const waiting = stages[next];
      if (timeS >= until.timeS || (waiting === undefined && coreC >= until.coreC)) return true;

      const breakS = stage.air.breakAfterS(timeS);
      const endS = Math.min(
        timeS + this.stepS(timeS - changedS),
        until.timeS,
        breakS,
        waiting === undefined ? breakS : dueS(waiting.from, timeS, coreC, risingKPerS),
      );
      const stepS = endS - timeS;
      if (!model.step(stepS, airOf(stage, timeS + stageEndS(stepS)), airOf(stage, endS))) {
        return false;
      }
      if (endS === breakS) changedS = endS;
      const before = coreC;
      coreC = model.depthC(probeDepth);
      risingKPerS = (coreC - before) / stepS;
      timeS = endS;
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
    this.goneKgPerM2[length] = model.goneKgPerM2;
    this.length = length + 1;
  }
}

function begun(stages: readonly RunStage[], index: number): RunStage {
  const stage = stages[index];
  assert(stage !== undefined, `stage ${index} of ${stages.length}`);
  return stage;
}

function isDue(from: Moment, timeS: number, coreC: number): boolean {
  switch (from.by) {
    case 'time':
      return timeS >= from.atS;
    case 'core':
      return coreC >= from.tempC;
    default:
      return unreachable(from);
  }
}

/** When it is due, or would be if the core went on rising as it does; never at once. */
function dueS(from: Moment, timeS: number, coreC: number, risingKPerS: number): number {
  if (from.by === 'time') return from.atS;
  if (risingKPerS <= 0) return Number.POSITIVE_INFINITY;
  return timeS + Math.max((from.tempC - coreC) / risingKPerS, CORE_WITHIN_S);
}

function airOf({ air, warmerK, drift }: RunStage, timeS: number): number {
  const drifted = Math.max(0, Math.min((timeS - drift.fromS) / DRIFT_S, 1));
  return air.at(timeS) + warmerK + drift.k * drifted;
}
