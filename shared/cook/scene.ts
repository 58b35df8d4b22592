import { celsius } from '../kernel/index.ts';
import { type Belief, heeding, placed, unlearned } from './belief.ts';
import type { Cook } from './cook-run.ts';
import { type PieceUnknowns, pieceUnknowns } from './cut-priors.ts';
import { type MeatProperties, meatProperties } from './meat.ts';
import type { Piece, Smoker } from './piece.ts';
import { meaningOf, placesOf } from './prior.ts';
import { type Wrap, type WrapName, wraps } from './rooms.ts';
import { shapeExponent } from './shape.ts';
import { smokerUnknowns } from './smoker-priors.ts';
import { type StageOf, stageOf } from './stages.ts';

/**
 * Meat changes by 7 % from cold to done; its properties are taken once, in the middle of a long
 * cook.
 */
const PROPERTIES_AT = celsius(55);

/** A body cannot be flatter than a slab; one much rounder than a ball would be a star. */
const ROUNDEST = 2.5;

/** A surface is half as wet as it can be with a quarter of what it can hold (judged). */
const HALF_OF_STOCK = 0.25;

const placesInZ = placesOf(pieceUnknowns);

type Given = {
  readonly nowS: number;
  /** The kitchen's own, in place of the usual. */
  readonly wraps?: Partial<Readonly<Record<WrapName, Wrap>>>;
};

/**
 * A piece with its smokers as the ensemble works with them. A member is one row of z: first the
 * piece's unknowns, then those of the smoker the cook is about, then of any other it is moved to.
 */
export class Scene {
  readonly smokers: readonly Smoker[];
  private readonly meat: MeatProperties;
  private readonly exponent: number;
  private readonly halfM: number;
  private readonly stages: readonly StageOf[];

  constructor(
    readonly piece: Piece,
    home: Smoker,
    { nowS, wraps: own = {} }: Given,
  ) {
    const visited = piece.stays.flatMap(({ place }) =>
      place.kind === 'smoker' ? [place.smoker] : [],
    );
    this.smokers = [...new Map([home, ...visited].map((one) => [one.id, one])).values()];
    this.meat = meatProperties(piece.cut.composition, PROPERTIES_AT);
    this.exponent = shapeExponent(piece.sides);
    const { thicknessM, widthM, lengthM } = piece.sides;
    this.halfM = Math.min(thicknessM, widthM, lengthM) / 2;
    const placeInZ = (id: string) => this.placeOf(this.smokers.findIndex((one) => one.id === id));
    const setting = { home, wraps: { ...wraps, ...own }, nowS, placeInZ };
    this.stages = piece.stays.map((stay) => stageOf(stay, setting));
  }

  /** Where in a row of z the unknowns of a smoker begin. */
  placeOf(smoker: number): number {
    return pieceUnknowns.length + smoker * smokerUnknowns.length;
  }

  /**
   * What is believed of all unknowns before the piece's own readings: the priors, and what others
   * say.
   */
  belief(): Belief {
    const size = this.placeOf(this.smokers.length);
    const heard = this.smokers.flatMap(({ heard = [] }, index) =>
      heard.map((message) => placed(message, this.placeOf(index), size)),
    );
    return heeding(unlearned(size), heard);
  }

  /**
   * The cook that a member stands for; `driftZ` is how the fire strays from where it is last
   * known, `fellZ` when the air fell that nobody saw fall.
   */
  cook(z: readonly number[], driftZ: number, fellZ = 0): Cook {
    const { unknowns, composition } = this.piece.cut;
    const of = (name: keyof PieceUnknowns) => meaningOf(unknowns[name], z[placesInZ[name]] ?? 0);
    const { densityKgPerM3, heatCapacityJPerKgK, conductivityWPerMK } = this.meat;
    const halfThicknessM = this.halfM * of('thickness');
    const shape = Math.max(0, Math.min(this.exponent + of('shape'), ROUNDEST));
    const weightKgPerM2 = (densityKgPerM3 * halfThicknessM) / (shape + 1);
    const stockKgPerM2 = of('stock') * weightKgPerM2;
    const [wrapPassage, wrapContact] = [of('wrapPassage'), of('wrapContact')];
    const own = { wrapPassage, wrapContact, z, driftZ, fellZ };
    return {
      body: {
        halfThicknessM,
        shape,
        startC: this.piece.startC,
        conductivityWPerMK: conductivityWPerMK * of('conductivity'),
        heatCapacityJPerM3K: densityKgPerM3 * heatCapacityJPerKgK,
      },
      drying: {
        wetness: Math.min(of('wetness'), 1),
        stockKgPerM2,
        halfKgPerM2: HALF_OF_STOCK * stockKgPerM2,
        juiceKgPerM2: of('juice') * composition.water * weightKgPerM2,
        seepKgPerM2RootS: of('seep'),
      },
      weightKgPerM2,
      probeDepth: of('probeDepth'),
      stages: this.stages.map((stage) => stage(own)),
    };
  }
}
