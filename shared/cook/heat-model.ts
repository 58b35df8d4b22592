import { CELLS, Conduction } from './conduction.ts';
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
 * The two stages of Alexander's second-order, L-stable scheme (SDIRK2, 1977), each as long as GAMMA of the
 * step: what is fast at the surface is damped, not rung like a bell.
 */
const GAMMA = 1 - Math.SQRT1_2;
const CARRIED = (1 - GAMMA) / GAMMA;

/**
 * A piece in its surroundings, step by step: conduction within, a balance of heat and vapour at the
 * surface. Smoking, wrapped or not, resting, holding and cooling differ in the surroundings alone. One
 * instance serves any number of cooks, one after the other, and makes nothing while it runs.
 */
export class HeatModel {
  /** Evaporated so far; below zero while the dew of the beginning is still on it. */
  goneKgPerM2 = 0;
  /** Heat that has arrived at the surface, and that of it which went on into the meat. */
  arrivedJPerM2 = 0;
  intoMeatJPerM2 = 0;
  /** L²/α, the time in which a change at the surface is felt throughout. */
  unitS = 1;
  private readonly conduction = new Conduction();
  private readonly surface = new Surface();
  private readonly middle = new Float64Array(CELLS);
  private readonly carried = new Float64Array(CELLS);
  private perFlux = 1;
  private drying: Drying = { wetness: 0, halfDryKgPerM2: 1, sharpness: 1 };

  begin(body: Body, drying: Drying): void {
    const { halfThicknessM, conductivityWPerMK, heatCapacityJPerM3K } = body;
    this.unitS = (halfThicknessM * halfThicknessM * heatCapacityJPerM3K) / conductivityWPerMK;
    this.perFlux = halfThicknessM / conductivityWPerMK;
    this.drying = drying;
    this.goneKgPerM2 = 0;
    this.arrivedJPerM2 = 0;
    this.intoMeatJPerM2 = 0;
    this.conduction.begin(body.shape, body.startC);
    this.surface.begin(body.startC);
  }

  meet(around: Surroundings): void {
    this.surface.meet(around, this.drying);
  }

  get surfaceC(): number {
    return this.surface.meatC;
  }

  /** At a depth near the core, 0 to 1 of the half thickness. */
  depthC(depth: number): number {
    return this.conduction.depthC(depth);
  }

  meanC(): number {
    return this.conduction.meanC();
  }

  /**
   * One step of `durationS`, with the air's temperature at GAMMA of it and at its end. False where the
   * surface found no balance: the piece is then of no further use.
   */
  step(durationS: number, airAtStageC: number, airAtEndC: number): boolean {
    const { conduction, surface, middle, carried } = this;
    const temps = conduction.tempsC;
    const stageS = GAMMA * durationS;
    const stage = stageS / this.unitS;

    const restC = conduction.openStage(stage, temps);
    surface.openStages(stageS, conduction.surfaceRise * this.perFlux);
    const flux = surface.solve(airAtStageC, restC, this.goneKgPerM2);
    conduction.closeStage(flux * this.perFlux, middle);
    const goneAtStage = this.goneKgPerM2 + stageS * surface.vapourKgPerM2S;
    this.account(durationS * (1 - GAMMA), flux);

    for (let i = 0; i < CELLS; i++) {
      const before = temps[i] as number;
      carried[i] = before + CARRIED * ((middle[i] as number) - before);
    }
    const goneCarried = this.goneKgPerM2 + CARRIED * (goneAtStage - this.goneKgPerM2);
    const endRestC = conduction.openStage(stage, carried);
    const endFlux = surface.solve(airAtEndC, endRestC, goneCarried);
    conduction.closeStage(endFlux * this.perFlux, temps);
    this.goneKgPerM2 = goneCarried + stageS * surface.vapourKgPerM2S;
    this.account(stageS, endFlux);
    return Number.isFinite(endFlux);
  }

  private account(weightS: number, fluxWPerM2: number): void {
    this.arrivedJPerM2 += weightS * this.surface.arrivingWPerM2;
    this.intoMeatJPerM2 += weightS * fluxWPerM2;
  }
}

/** Where in a step of `durationS` its first stage ends. @example stageEndS(100) //=> 29.3 s */
export const stageEndS = (durationS: number) => GAMMA * durationS;
