import { assert } from '../kernel/index.ts';

/** A point of the air's temperature over time. */
export type AirPoint = { readonly atS: number; readonly tempC: number };

/**
 * The air's temperature over time: straight from point to point, and as at its ends beyond them.
 * It is read forward in time, so it remembers its place.
 */
export class AirCurve {
  private readonly timesS: Float64Array;
  private readonly temps: Float64Array;
  private place = 0;

  constructor(points: readonly AirPoint[]) {
    assert(points.length > 0, 'a curve has a point');
    this.timesS = Float64Array.from(points, ({ atS }) => atS);
    this.temps = Float64Array.from(points, ({ tempC }) => tempC);
  }

  at(timeS: number): number {
    const { timesS, temps } = this;
    const last = timesS.length - 1;
    if (timeS < (timesS[this.place] as number)) this.place = 0;
    while (this.place < last && (timesS[this.place + 1] as number) <= timeS) this.place++;
    const from = timesS[this.place] as number;
    const fromC = temps[this.place] as number;
    if (this.place === last || timeS <= from) return fromC;
    const share = (timeS - from) / ((timesS[this.place + 1] as number) - from);
    return fromC + share * ((temps[this.place + 1] as number) - fromC);
  }
}
