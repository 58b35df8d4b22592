/** Cells from core to surface: the error of the finite volumes, not of the step, is the larger there. */
export const CELLS = 16;

/**
 * Conduction in a body of which only the depth matters, in its own measures: depth 0 (core) to 1
 * (surface) of the half thickness L, time in L²/α, flux in k/L. One instance serves any number of cooks,
 * one after the other, and makes nothing while it runs.
 *
 * The temperature is an even function of the depth x and so smooth in s = x². Cells of equal depth carry
 * their mean, which sits at the mean of s; a flux through a face is 2·x^(m+1)·dT/ds. That is exact for a
 * parabola in every shape m, and has half the error of nodes in mid-cell at the core of a ball.
 */
export class Conduction {
  /** Cell means in °C, from the core out. */
  readonly tempsC = new Float64Array(CELLS);
  private readonly volumes = new Float64Array(CELLS);
  /** Where the mean of a cell sits, in s = x². */
  private readonly places = new Float64Array(CELLS);
  /** From cell i to i + 1; the last to the surface. */
  private readonly conductances = new Float64Array(CELLS);
  /** Of the factored stage: what a cell takes from inside, from outside, and from its right side. */
  private readonly fromInside = new Float64Array(CELLS);
  private readonly fromOutside = new Float64Array(CELLS);
  private readonly fromRight = new Float64Array(CELLS);
  private readonly rights = new Float64Array(CELLS);
  private shape = Number.NaN;
  private stage = Number.NaN;

  /** Begins anew with a body of one temperature. */
  begin(shape: number, startC: number): void {
    this.tempsC.fill(startC);
    if (shape === this.shape) return;
    this.shape = shape;
    this.stage = Number.NaN;
    const p = shape + 1;
    for (let i = 0; i < CELLS; i++) {
      const inner = i / CELLS;
      const outer = (i + 1) / CELLS;
      const volume = (outer ** p - inner ** p) / p;
      this.volumes[i] = volume;
      this.places[i] = (outer ** (p + 2) - inner ** (p + 2)) / ((p + 2) * volume);
    }
    for (let i = 0; i < CELLS; i++) {
      const next = i + 1 < CELLS ? at(this.places, i + 1) : 1;
      this.conductances[i] = (2 * ((i + 1) / CELLS) ** p) / (next - at(this.places, i));
    }
  }

  /** The volume of the whole in its own measures: 1/(m + 1) for a surface of 1. */
  get volume(): number {
    return 1 / (this.shape + 1);
  }

  /** The mean temperature of the whole, in °C. */
  meanC(): number {
    let sum = 0;
    for (let i = 0; i < CELLS; i++) sum += at(this.volumes, i) * at(this.tempsC, i);
    return sum / this.volume;
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

  /** How much warmer than `surfaceAtRestC()` the surface gets for a flux of 1 over a stage. */
  get surfaceRise(): number {
    return this.stage * at(this.fromRight, CELLS - 1) + 1 / at(this.conductances, CELLS - 1);
  }

  /**
   * Opens an implicit stage of so many L²/α from the temperatures in `from`; what the surface would have
   * if no heat passed it is the answer. `closeStage` ends it once the flux is known.
   */
  openStage(stage: number, from: Float64Array): number {
    if (stage !== this.stage) this.factor(stage);
    let right = at(this.volumes, 0) * at(from, 0);
    this.rights[0] = right;
    for (let i = 1; i < CELLS; i++) {
      right = at(this.volumes, i) * at(from, i) + at(this.fromInside, i) * right;
      this.rights[i] = right;
    }
    return right * at(this.fromRight, CELLS - 1);
  }

  /** Ends the stage that is open with `flux` into the surface, and writes its temperatures to `into`. */
  closeStage(flux: number, into: Float64Array): void {
    const last = CELLS - 1;
    let temp = (at(this.rights, last) + this.stage * flux) * at(this.fromRight, last);
    into[last] = temp;
    for (let i = last - 1; i >= 0; i--) {
      temp = at(this.rights, i) * at(this.fromRight, i) + at(this.fromOutside, i) * temp;
      into[i] = temp;
    }
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
  }
}

/** An entry that is there: indices here run over cells alone. */
const at = (values: Float64Array, index: number) => values[index] as number;
