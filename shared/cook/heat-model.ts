import { CELLS, Conduction } from './conduction.ts';
import { Juice } from './juice.ts';
import { type Drying, Surface, type Surroundings } from './surface.ts';

/** A piece as the heat model sees it. */
export type Body = {
  readonly halfThicknessM: number;
  /** m: 0 slab, 1 cylinder, 2 sphere. */
  readonly shape: number;
  readonly conductivityWPerMK: number;
  /** Of a cubic metre: density times heat capacity. */
  readonly heatCapacityJPerM3K: number;
  readonly startC: number;
};

/**
 * The two stages of Alexander's second-order, L-stable scheme (SDIRK2, 1977), each as long as
 * GAMMA of the step: what is fast at the surface is damped, not rung like a bell.
 */
const GAMMA = 1 - Math.SQRT1_2;
const CARRIED = (1 - GAMMA) / GAMMA;

/**
 * A piece in its surroundings, step by step: conduction within, a balance of heat and water at
 * the surface. Smoking, wrapped or not, resting, holding and cooling differ in the surroundings
 * alone. One instance serves any number of cooks, one after the other, and makes nothing while it
 * runs.
 */
export class HeatModel {
  /** Gone off as vapour; below zero while there is more dew than that. */
  vapouredKgPerM2 = 0;
  /** Run off a surface that could hold no more. */
  drippedKgPerM2 = 0;
  /** Heat that has arrived at the surface, and that of it which went on into the meat. */
  arrivedJPerM2 = 0;
  intoMeatJPerM2 = 0;
  /** L²/α, the time in which a change at the surface is felt throughout. */
  unitS = 1;
  private timeS = 0;
  private readonly conduction = new Conduction();
  private readonly juice = new Juice(this.conduction);
  private readonly surface = new Surface(this.juice);
  private readonly middle = new Float64Array(CELLS);
  private readonly carried = new Float64Array(CELLS);
  private perFlux = 1;
  private drying: Drying = {
    wetness: 0,
    stockKgPerM2: 0,
    halfKgPerM2: 1,
    juiceKgPerM2: 0,
    seepKgPerM2RootS: 0,
  };

  begin(body: Body, drying: Drying): void {
    const { halfThicknessM, conductivityWPerMK, heatCapacityJPerM3K } = body;
    this.unitS = (halfThicknessM * halfThicknessM * heatCapacityJPerM3K) / conductivityWPerMK;
    this.perFlux = halfThicknessM / conductivityWPerMK;
    this.drying = drying;
    this.timeS = 0;
    this.vapouredKgPerM2 = 0;
    this.drippedKgPerM2 = 0;
    this.arrivedJPerM2 = 0;
    this.intoMeatJPerM2 = 0;
    this.conduction.begin(body.shape, body.startC);
    this.juice.begin();
    this.surface.begin(body.startC);
  }

  meet(around: Surroundings): void {
    this.surface.meet(around, this.drying);
  }

  get surfaceC(): number {
    return this.surface.meatC;
  }

  /** The share of its water that the meat has let go of. */
  get pressedShare(): number {
    return this.juice.share;
  }

  /** At a depth near the core, 0 to 1 of the half thickness. */
  depthC(depth: number): number {
    return this.conduction.depthC(depth);
  }

  meanC(): number {
    const { tempsC, shares } = this.conduction;
    return tempsC.reduce((sum, tempC, i) => sum + tempC * (shares[i] ?? 0), 0);
  }

  /**
   * One step of `durationS`, with the air's temperature where `stageEndS` says and at its end.
   * False where the surface found no balance: the piece is then of no further use.
   */
  step(durationS: number, airAtStageC: number, airAtEndC: number): boolean {
    const { conduction, surface, middle, carried } = this;
    const temps = conduction.tempsC;
    const stageS = GAMMA * durationS;
    const stage = stageS / this.unitS;
    // What the surface would hold if nothing had ever gone off or been pressed out.
    const { seepKgPerM2RootS } = this.drying;
    const holdable = this.drying.stockKgPerM2 - this.drippedKgPerM2;

    conduction.openStage(stage, temps);
    surface.openStages(stageS, this.perFlux, conduction.surfaceResponse * this.perFlux);
    surface.airC = airAtStageC;
    surface.restC = conduction.restsC[CELLS - 1] as number;
    surface.leftKgPerM2 =
      holdable + seepKgPerM2RootS * Math.sqrt(this.timeS + stageS) - this.vapouredKgPerM2;
    const found = surface.solve();
    conduction.closeStage(surface.fluxWPerM2 * this.perFlux, middle);
    this.vapouredKgPerM2 += CARRIED * stageS * surface.vapourKgPerM2S;
    this.account(durationS - stageS);
    this.timeS += durationS;

    for (let i = 0; i < CELLS; i++) {
      const before = temps[i] as number;
      carried[i] = before + CARRIED * ((middle[i] as number) - before);
    }
    conduction.openStage(stage, carried);
    surface.airC = airAtEndC;
    surface.restC = conduction.restsC[CELLS - 1] as number;
    surface.leftKgPerM2 =
      holdable + seepKgPerM2RootS * Math.sqrt(this.timeS) - this.vapouredKgPerM2;
    const foundAtEnd = surface.solve();
    conduction.closeStage(surface.fluxWPerM2 * this.perFlux, temps);
    this.vapouredKgPerM2 += stageS * surface.vapourKgPerM2S;
    this.account(stageS);
    this.drip();
    return found && foundAtEnd;
  }

  /** What the surface holds beyond what it can runs off. */
  private drip(): void {
    this.juice.settle();
    const { juiceKgPerM2, seepKgPerM2RootS } = this.drying;
    const fed = juiceKgPerM2 * this.juice.share + seepKgPerM2RootS * Math.sqrt(this.timeS);
    this.drippedKgPerM2 = Math.max(this.drippedKgPerM2, fed - this.vapouredKgPerM2);
  }

  private account(weightS: number): void {
    this.arrivedJPerM2 += weightS * this.surface.arrivingWPerM2;
    this.intoMeatJPerM2 += weightS * this.surface.fluxWPerM2;
  }
}

/** Where in a step of `durationS` its first stage ends. @example stageEndS(100) //=> 29.3 s */
export const stageEndS = (durationS: number) => GAMMA * durationS;
