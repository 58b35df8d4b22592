import type { Watch } from './cook-run.ts';
import type { Reading, Target } from './piece.ts';
import { type ErrorNow, MODEL_ERROR_K, MODEL_ERROR_LASTS_S } from './readings.ts';

/**
 * Looks on at a member's cook as the kitchen's thermometer would: notes what the model has at
 * each reading; at the last one takes over the error that it has there, which then fades into
 * another; and notes when what is shown passes each target. One instance serves any number of
 * members, one after the other.
 */
export class Thermometer implements Watch {
  readonly markS: number;
  /** What the model had at each reading. */
  readonly foreseenC: Float64Array;
  /** When each target was passed; infinity for not yet. */
  readonly passagesS: Float64Array;
  private reading = 0;
  private missing = 0;
  private readonly wasAbove: boolean[];
  private beforeS = 0;
  private beforeModelC = 0;
  private beforeC = 0;
  private nowZ = 0;
  private laterK = 0;
  private nowK = 0;

  /** `knownS` has when readings have shown a target already. */
  constructor(
    private readonly readings: readonly Reading[],
    private readonly targets: readonly Target[],
    private readonly knownS: readonly (number | undefined)[],
    private readonly errorNow: ErrorNow,
  ) {
    this.markS = readings.at(-1)?.atS ?? 0;
    this.foreseenC = new Float64Array(readings.length);
    this.passagesS = new Float64Array(targets.length);
    this.wasAbove = targets.map(() => false);
  }

  /** Begins a member whose errors, now and later, are so many of their standard deviations. */
  begin(nowZ: number, laterZ: number): void {
    this.reading = 0;
    this.missing = this.targets.length;
    this.nowZ = nowZ;
    this.nowK = 0;
    this.laterK = laterZ * MODEL_ERROR_K;
    for (const [index, known] of this.knownS.entries()) {
      this.passagesS[index] = known ?? Number.POSITIVE_INFINITY;
      if (known !== undefined) this.missing--;
      this.wasAbove[index] = false;
    }
  }

  isOver(): boolean {
    return this.missing === 0 && this.beforeS >= this.markS;
  }

  shownC(timeS: number, modelC: number): number {
    this.foresee(timeS, modelC);
    const coreC = modelC + this.errorK(timeS);
    for (const [index, target] of this.targets.entries()) this.look(index, target, timeS, coreC);
    this.beforeS = timeS;
    this.beforeModelC = modelC;
    this.beforeC = coreC;
    return coreC;
  }

  /** Notes the readings that lie in the step to this time, straight between its ends. */
  private foresee(timeS: number, modelC: number): void {
    let reading = this.readings[this.reading];
    while (reading !== undefined && reading.atS <= timeS) {
      const lengthS = timeS - this.beforeS;
      const share = lengthS > 0 ? (reading.atS - this.beforeS) / lengthS : 1;
      this.foreseenC[this.reading] = this.beforeModelC + share * (modelC - this.beforeModelC);
      this.reading++;
      reading = this.readings[this.reading];
      if (reading === undefined) this.settle();
    }
  }

  private settle(): void {
    const missedK = this.readings.map(({ tempC }, k) => tempC - (this.foreseenC[k] ?? 0));
    const { meanK, sdK } = this.errorNow(missedK);
    this.nowK = meanK + sdK * this.nowZ;
  }

  private errorK(timeS: number): number {
    if (timeS < this.markS) return 0;
    const kept = Math.exp((this.markS - timeS) / MODEL_ERROR_LASTS_S);
    return this.nowK * kept + this.laterK * Math.sqrt(1 - kept * kept);
  }

  /** A thermometer that has only just missed a target at the last reading passes it at once. */
  private look(index: number, { way, tempC }: Target, timeS: number, coreC: number): void {
    if (this.passagesS[index] !== Number.POSITIVE_INFINITY || timeS < this.markS) return;
    const isPast = way === 'rising' ? coreC >= tempC : this.wasAbove[index] && coreC <= tempC;
    if (coreC > tempC) this.wasAbove[index] = true;
    if (!isPast) return;
    const share = (tempC - this.beforeC) / (coreC - this.beforeC);
    const isWithin = share > 0 && share <= 1 && this.beforeS >= this.markS;
    this.passagesS[index] = isWithin ? this.beforeS + share * (timeS - this.beforeS) : timeS;
    this.missing--;
  }
}
