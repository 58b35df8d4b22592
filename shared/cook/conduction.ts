/**
 * Cells from core to surface. Of the two errors that of the cells is the larger, not that of the
 * steps.
 */
export const CELLS = 16;

/**
 * Conduction in a body of which only the depth matters, in its own measures: depth 0 (core) to 1
 * (surface) of the half thickness L, time in L²/α, flux in k/L. One instance serves any number of
 * cooks, one after the other, and makes nothing while it runs.
 *
 * The temperature is an even function of the depth x and so smooth in s = x². Cells of equal
 * depth carry their mean, which sits at the mean of s; a flux through a face is 2·x^(m+1)·dT/ds.
 * That is exact for a parabola in every shape m, and has half the error of nodes in mid-cell at
 * the core of a ball.
 *
 * An implicit stage is opened with the temperatures it comes from. It then knows its end as a
 * straight line in the one number that is still open, the flux at the surface, and is closed with
 * that.
 */
export class Conduction {
  /** Cell means in °C, from the core out. */
  readonly tempsC = new Float64Array(CELLS);
  /** The share of the whole that each cell is. */
  readonly shares = new Float64Array(CELLS);
  /** At the end of the open stage: with no flux, and by how much a flux of 1 changes it. */
  readonly restsC = new Float64Array(CELLS);
  readonly responses = new Float64Array(CELLS);
  /** By how much a flux of 1 makes the surface warmer than the outermost cell's rest. */
  surfaceResponse = 0;
  private readonly volumes = new Float64Array(CELLS);
  /** Where the mean of a cell sits, in s = x². */
  private readonly places = new Float64Array(CELLS);
  /** From cell i to i + 1; the last to the surface. */
  private readonly conductances = new Float64Array(CELLS);
  /**
   * Of the factored stage: what a cell takes from inside, from outside, and from its right side.
   */
  private readonly fromInside = new Float64Array(CELLS);
  private readonly fromOutside = new Float64Array(CELLS);
  private readonly fromRight = new Float64Array(CELLS);
  private shape = Number.NaN;
  private stage = Number.NaN;

  /** Begins anew with a body of one temperature. */
  begin(shape: number, startC: number): void {
    this.tempsC.fill(startC);
    if (shape === this.shape) return;
    this.shape = shape;
    this.stage = Number.NaN;
    const p = shape + 1;
    let within = 0;
    let momentWithin = 0;
    for (let i = 0; i < CELLS; i++) {
      const outer = (i + 1) / CELLS;
      const whole = outer ** p;
      const moment = whole * outer * outer;
      const share = whole - within;
      this.shares[i] = share;
      this.volumes[i] = share / p;
      this.places[i] = ((moment - momentWithin) * p) / ((p + 2) * share);
      this.conductances[i] = 2 * whole;
      within = whole;
      momentWithin = moment;
    }
    for (let i = 0; i < CELLS; i++) {
      const next = i + 1 < CELLS ? at(this.places, i + 1) : 1;
      this.conductances[i] = at(this.conductances, i) / (next - at(this.places, i));
    }
  }

  /** The temperature at a depth near the core, in °C: straight in s through the cells about it. */
  depthC(depth: number): number {
    const s = depth * depth;
    let i = 0;
    while (i < CELLS - 2 && at(this.places, i + 1) < s) i++;
    const from = at(this.places, i);
    const share = (s - from) / (at(this.places, i + 1) - from);
    return at(this.tempsC, i) + share * (at(this.tempsC, i + 1) - at(this.tempsC, i));
  }

  /** Opens a stage of so many L²/α from the temperatures in `from`. */
  openStage(stage: number, from: Float64Array): void {
    if (stage !== this.stage) this.factor(stage);
    const { restsC } = this;
    let right = 0;
    for (let i = 0; i < CELLS; i++) {
      right = at(this.volumes, i) * at(from, i) + at(this.fromInside, i) * right;
      restsC[i] = right;
    }
    let temp = 0;
    for (let i = CELLS - 1; i >= 0; i--) {
      temp = at(restsC, i) * at(this.fromRight, i) + at(this.fromOutside, i) * temp;
      restsC[i] = temp;
    }
  }

  /**
   * Ends the stage that is open with `flux` into the surface, and writes its temperatures to
   * `into`.
   */
  closeStage(flux: number, into: Float64Array): void {
    for (let i = 0; i < CELLS; i++) into[i] = at(this.restsC, i) + at(this.responses, i) * flux;
  }

  /** Gauss's elimination of the cells inward of each, which stays the same while the stage does. */
  private factor(stage: number): void {
    this.stage = stage;
    let pivot = Number.POSITIVE_INFINITY;
    for (let i = 0; i < CELLS; i++) {
      const inward = i > 0 ? stage * at(this.conductances, i - 1) : 0;
      const outward = i < CELLS - 1 ? stage * at(this.conductances, i) : 0;
      this.fromInside[i] = inward / pivot;
      pivot = at(this.volumes, i) + inward * (1 - inward / pivot) + outward;
      this.fromOutside[i] = outward / pivot;
      this.fromRight[i] = 1 / pivot;
    }
    let response = stage * at(this.fromRight, CELLS - 1);
    this.surfaceResponse = response + 1 / at(this.conductances, CELLS - 1);
    for (let i = CELLS - 1; i >= 0; i--) {
      if (i < CELLS - 1) response *= at(this.fromOutside, i);
      this.responses[i] = response;
    }
  }
}

/** An entry that is there: indices here run over cells alone. */
const at = (values: Float64Array, index: number) => values[index] as number;
