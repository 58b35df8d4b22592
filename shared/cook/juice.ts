import { CELLS, type Conduction } from './conduction.ts';

/**
 * The share of its water that meat has let go of once it was so hot: its proteins draw together
 * and press it out, most of it between 55 and 75 °C. After van der Sman 2007, "Moisture transport
 * during cooking of meat", whose equilibrium of 0.745 - 0.345/(1 + 30·exp(-0.25(T - 52))) kg/kg
 * is here counted from its beginning (from memory; also used by Feyissa and Goñi).
 * @example pressedShare(65.6) //=> 0.232
 */
export function pressedShare(tempC: number): number {
  return 0.345 / 0.745 / (1 + 30 * Math.exp(-0.25 * (tempC - 52)));
}

const HIGHEST_C = 160;
const PER_KELVIN = 4;

const table = Float64Array.from({ length: HIGHEST_C * PER_KELVIN + 2 }, (_, i) =>
  pressedShare(i / PER_KELVIN),
);

/**
 * The water that heat has pressed out of a piece, as a share of what it had. It does not go back:
 * each cell counts by the hottest it has been. Bound to the conduction whose stages it looks
 * into.
 */
export class Juice {
  /** At the flux last asked for, and how it changes with the flux. */
  share = 0;
  sharePerFlux = 0;
  private readonly kept = new Float64Array(CELLS);

  constructor(private readonly conduction: Conduction) {}

  begin(): void {
    this.kept.fill(0);
    this.settle();
  }

  /** What will be out at the end of the open stage if it is closed with `flux`. */
  ask(flux: number): void {
    const { restsC, responses, shares } = this.conduction;
    let share = 0;
    let perFlux = 0;
    for (let i = 0; i < CELLS; i++) {
      const response = responses[i] as number;
      const place = placeOf((restsC[i] as number) + response * flux);
      const index = place | 0;
      const below = table[index] as number;
      const slope = (table[index + 1] as number) - below;
      const out = below + (place - index) * slope;
      const before = this.kept[i] as number;
      if (out > before) {
        share += (shares[i] as number) * out;
        perFlux += (shares[i] as number) * slope * PER_KELVIN * response;
      } else share += (shares[i] as number) * before;
    }
    this.share = share;
    this.sharePerFlux = perFlux;
  }

  /** Takes the temperatures as they are now as having been. */
  settle(): void {
    const { tempsC, shares } = this.conduction;
    let share = 0;
    for (let i = 0; i < CELLS; i++) {
      const place = placeOf(tempsC[i] as number);
      const index = place | 0;
      const below = table[index] as number;
      const out = below + (place - index) * ((table[index + 1] as number) - below);
      if (out > (this.kept[i] as number)) this.kept[i] = out;
      share += (shares[i] as number) * (this.kept[i] as number);
    }
    this.share = share;
  }
}

const placeOf = (tempC: number) => Math.max(0, Math.min(tempC, HIGHEST_C)) * PER_KELVIN;
