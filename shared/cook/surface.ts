import type { Juice } from './juice.ts';
import { latentHeatJPerKg } from './moist-air.ts';
import { steamPa, steamPaPerK } from './steam-table.ts';

/** What the surface of a piece meets, for as long as nothing is changed about it. */
export type Surroundings = {
  /** Convection, W/m²K. */
  readonly filmWPerM2K: number;
  /** Of the outermost surface, meat or wrap, towards grey walls all round. */
  readonly emissivity: number;
  /** By how much the walls are colder than the air, K. */
  readonly wallsBelowAirK: number;
  readonly vapourPa: number;
  readonly pressurePa: number;
  /** What a wrap and the air under it put between meat and air, m²K/W; 0 for bare meat. */
  readonly wrapM2KPerW: number;
  /** The share of the vapour that a wrap lets through; 1 for bare meat. */
  readonly wrapPasses: number;
};

/**
 * The water that a surface has to give. It begins with all that it can hold, gets what the heat
 * presses out of the meat, and passes vapour like a film of water times u/(u + h): freely while
 * it holds much, and no faster than it is fed once it has dried. More than it can hold drips off.
 */
export type Drying = {
  /** The share of a whole film of water that a surface without end would count for. */
  readonly wetness: number;
  /** What the surface holds at first and at most. */
  readonly stockKgPerM2: number;
  /** h: what it holds when half as wet as it could be. */
  readonly halfKgPerM2: number;
  /** What would come to the surface if the meat let go of all its water. */
  readonly juiceKgPerM2: number;
  /** What diffuses to it from below, kg/m² to the root of the seconds since the beginning. */
  readonly seepKgPerM2RootS: number;
};

const STEFAN_BOLTZMANN = 5.670374419e-8;
const KELVIN = 273.15;

/**
 * What a film passes in kg/s of vapour, per Pa of difference and W/K of heat, times the air's
 * pressure: Lewis's relation, 0.622/(cp·Le^(2/3)), with air's cp of 1005 J/kgK and Le^(2/3) of
 * 0.90.
 */
const LEWIS_KG_PER_J = 0.622 / (1005 * 0.9);

/** Meat's salts bind its water a little: a_w of fresh meat (common textbook value). */
const WATER_ACTIVITY = 0.99;

const LATENT_J_PER_KG_K = latentHeatJPerKg(1) - latentHeatJPerKg(0);

/** What is left after the last step of Newton is of the order of its square. */
const TOLERANCE_K = 1e-4;
const MOST_ITERATIONS = 30;

/**
 * The balance at the surface: what arrives by convection and radiation goes into the meat or into
 * vapour. Solved for the outermost surface, with what evaporates and what is pressed out
 * meanwhile. One instance serves any number of cooks, one after the other, and makes nothing
 * while it runs.
 */
export class Surface {
  /** As the last stage left them. */
  meatC = 0;
  arrivingWPerM2 = 0;
  /** Into the meat. */
  fluxWPerM2 = 0;
  vapourKgPerM2S = 0;
  /**
   * For the stage to be solved: the air at its end, what the surface would come to if no heat
   * passed it, and what would be on it if nothing evaporated meanwhile and nothing had been
   * pressed out.
   */
  airC = 0;
  restC = 0;
  leftKgPerM2 = 0;
  private outerC = 0;
  private film = 0;
  private emission = 0;
  private wallsBelowAirK = 0;
  private wrap = 0;
  private wetPassage = 0;
  private passage = 0;
  private vapourPa = 0;
  private half = 1;
  private juiceKgPerM2 = 0;
  private stageS = 0;
  private riseM2KPerW = 1;
  private perFlux = 1;

  constructor(private readonly juice: Juice) {}

  begin(startC: number): void {
    this.meatC = startC;
    this.outerC = startC;
    this.vapourKgPerM2S = 0;
    this.fluxWPerM2 = 0;
  }

  meet(around: Surroundings, drying: Drying): void {
    this.film = around.filmWPerM2K;
    this.emission = around.emissivity * STEFAN_BOLTZMANN;
    this.wallsBelowAirK = around.wallsBelowAirK;
    this.wrap = around.wrapM2KPerW;
    this.vapourPa = around.vapourPa;
    this.passage = (LEWIS_KG_PER_J * this.film * around.wrapPasses) / around.pressurePa;
    this.wetPassage = this.passage * drying.wetness;
    this.half = drying.halfKgPerM2;
    this.juiceKgPerM2 = drying.juiceKgPerM2;
  }

  /**
   * The stages to come last so long; a W/m² into the meat is `perFlux` in its own measures, and
   * warms its surface by `riseM2KPerW`.
   */
  openStages(stageS: number, perFlux: number, riseM2KPerW: number): void {
    this.stageS = stageS;
    this.perFlux = perFlux;
    this.riseM2KPerW = riseM2KPerW;
  }

  /**
   * Finds the balance at the end of a stage. False where there is none.
   *
   * Newton's method in two unknowns, the outer temperature and the vapour; the second is
   * eliminated.
   */
  solve(): boolean {
    const { airC, restC, leftKgPerM2, film, emission, wrap, stageS, half, juice, juiceKgPerM2 } =
      this;
    const wallsK = airC - this.wallsBelowAirK + KELVIN;
    const fromAfar = film * airC + emission * wallsK * wallsK * wallsK * wallsK;
    const fluxPerK = 1 / this.riseM2KPerW;
    let outerC = this.outerC;
    let vapour = this.vapourKgPerM2S;
    // Straight in the flux about that of the stage before: what it bends in one stage is nothing.
    juice.ask(this.fluxWPerM2 * this.perFlux);
    const fedPerFlux = juiceKgPerM2 * juice.sharePerFlux * this.perFlux;
    const fed = leftKgPerM2 + juiceKgPerM2 * juice.share - fedPerFlux * this.fluxWPerM2;
    for (let iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
      const outerK = outerC + KELVIN;
      const glow = emission * outerK * outerK * outerK;
      const arriving = fromAfar - film * outerC - glow * outerK;
      const arrivingPerK = -film - 4 * glow;
      const meatC = outerC - wrap * arriving;
      const meatPerOuter = 1 - wrap * arrivingPerK;
      const flux = (meatC - restC) * fluxPerK;
      const fluxPerOuter = meatPerOuter * fluxPerK;

      const lack = WATER_ACTIVITY * steamPa(meatC) - this.vapourPa;
      let passage = this.passage;
      let passagePerHeld = 0;
      let heldPerOuter = 0;
      // Dew settles on all of the surface; only what is wet gives anything off.
      if (lack > 0) {
        const held = fed + fedPerFlux * flux - stageS * vapour;
        heldPerOuter = fedPerFlux * fluxPerOuter;
        // Straight on below nothing, so that the search finds its way back from there.
        const reach = half + Math.max(0, held);
        passage = (this.wetPassage * held) / reach;
        passagePerHeld = (this.wetPassage * (held > 0 ? half / reach : 1)) / reach;
      }

      const latent = latentHeatJPerKg(meatC);
      const ownDrying = 1 / (1 + stageS * passagePerHeld * lack);
      const vapourGap = (vapour - passage * lack) * ownDrying;
      const lackPerOuter = WATER_ACTIVITY * steamPaPerK(meatC) * meatPerOuter;
      const vapourPerOuter =
        (passage * lackPerOuter + passagePerHeld * heldPerOuter * lack) * ownDrying;
      const heatGap = flux - arriving + latent * vapour;
      const heatGapPerOuter =
        fluxPerOuter -
        arrivingPerK +
        latent * vapourPerOuter +
        LATENT_J_PER_KG_K * meatPerOuter * vapour;
      const change = (latent * vapourGap - heatGap) / heatGapPerOuter;
      outerC += change;
      vapour += vapourPerOuter * change - vapourGap;
      if (Math.abs(change) < TOLERANCE_K) {
        this.outerC = outerC;
        this.vapourKgPerM2S = vapour;
        this.meatC = meatC + meatPerOuter * change;
        this.arrivingWPerM2 = arriving + arrivingPerK * change;
        this.fluxWPerM2 = flux + fluxPerOuter * change;
        return true;
      }
    }
    return false;
  }
}
