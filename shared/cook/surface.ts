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

/** How the surface of a piece dries: to 1/(1 + (E/Ec)^n) of its first wetness once E kg/m² are gone. */
export type Drying = {
  /** The share of a whole film of water that the surface counts for at first. */
  readonly wetness: number;
  /** Ec: what is gone when half of the first wetness is left. */
  readonly halfDryKgPerM2: number;
  /** n: how sharply the surface goes from wet to dry. */
  readonly sharpness: number;
};

const STEFAN_BOLTZMANN = 5.670374419e-8;
const KELVIN = 273.15;

/**
 * What a film passes in kg/s of vapour, per Pa of difference and W/K of heat, times the air's pressure:
 * Lewis's relation, 0.622/(cp·Le^(2/3)), with air's cp of 1005 J/kgK and Le^(2/3) of 0.90.
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
 * vapour. Solved for the outermost surface, what evaporates meanwhile included. One instance serves any
 * number of cooks, one after the other, and makes nothing while it runs.
 */
export class Surface {
  /** As the last stage left them. */
  meatC = 0;
  arrivingWPerM2 = 0;
  vapourKgPerM2S = 0;
  private outerC = 0;
  private film = 0;
  private emission = 0;
  private wallsBelowAirK = 0;
  private wrap = 0;
  private wetPassage = 0;
  private passage = 0;
  private vapourPa = 0;
  private halfDry = 1;
  private sharpness = 1;
  private stageS = 0;
  private riseM2KPerW = 1;

  begin(startC: number): void {
    this.meatC = startC;
    this.outerC = startC;
    this.vapourKgPerM2S = 0;
  }

  meet(around: Surroundings, drying: Drying): void {
    this.film = around.filmWPerM2K;
    this.emission = around.emissivity * STEFAN_BOLTZMANN;
    this.wallsBelowAirK = around.wallsBelowAirK;
    this.wrap = around.wrapM2KPerW;
    this.vapourPa = around.vapourPa;
    this.passage = (LEWIS_KG_PER_J * this.film * around.wrapPasses) / around.pressurePa;
    this.wetPassage = this.passage * drying.wetness;
    this.halfDry = drying.halfDryKgPerM2;
    this.sharpness = drying.sharpness;
  }

  /** The stages to come last so long, and each W/m² into the meat warms its surface by so much. */
  openStages(stageS: number, riseM2KPerW: number): void {
    this.stageS = stageS;
    this.riseM2KPerW = riseM2KPerW;
  }

  /**
   * Finds the balance at the end of a stage that began with `goneKgPerM2` evaporated, in air of `airC`, on
   * meat whose surface would come to `restC` if no heat passed it. Answers with the flux into the meat in
   * W/m², not a number where there is no balance.
   *
   * Newton's method in two unknowns, the outer temperature and the vapour; the second is eliminated.
   */
  solve(airC: number, restC: number, goneKgPerM2: number): number {
    const { film, emission, wrap, stageS, sharpness } = this;
    const wallsK = airC - this.wallsBelowAirK + KELVIN;
    const fromAfar = film * airC + emission * wallsK * wallsK * wallsK * wallsK;
    const fluxPerK = 1 / this.riseM2KPerW;
    let outerC = this.outerC;
    let vapour = this.vapourKgPerM2S;
    for (let iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
      const outerK = outerC + KELVIN;
      const glow = emission * outerK * outerK * outerK;
      const arriving = fromAfar - film * outerC - glow * outerK;
      const arrivingPerK = -film - 4 * glow;
      const meatC = outerC - wrap * arriving;
      const meatPerOuter = 1 - wrap * arrivingPerK;
      const flux = (meatC - restC) * fluxPerK;

      const lack = WATER_ACTIVITY * steamPa(meatC) - this.vapourPa;
      let passage = this.passage;
      let passagePerGone = 0;
      // Dew settles on all of the surface; only what has dried, and the fat, gives nothing off.
      if (lack > 0) {
        const gone = goneKgPerM2 + stageS * vapour;
        const dried = gone > 0 ? Math.exp(sharpness * Math.log(gone / this.halfDry)) : 0;
        passage = this.wetPassage / (1 + dried);
        if (dried > 0) passagePerGone = (-sharpness * dried * passage) / ((1 + dried) * gone);
      }

      const latent = latentHeatJPerKg(meatC);
      const ownDrying = 1 / (1 - stageS * passagePerGone * lack);
      const vapourGap = (vapour - passage * lack) * ownDrying;
      const vapourPerOuter =
        passage * WATER_ACTIVITY * steamPaPerK(meatC) * meatPerOuter * ownDrying;
      const heatGap = flux - arriving + latent * vapour;
      const heatGapPerOuter =
        meatPerOuter * fluxPerK -
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
        return flux + meatPerOuter * fluxPerK * change;
      }
    }
    return Number.NaN;
  }
}
