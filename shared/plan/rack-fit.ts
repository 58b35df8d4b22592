import type { StepOf } from '../catalogue/index.ts';
import type { Celsius, SlotId } from '../kernel/index.ts';
import { celsius, kilograms, metres } from '../kernel/index.ts';
import type { Kitchen, Rack, Smoker } from '../kitchen/index.ts';
import { rackAreaCm2, rackLoadG } from '../kitchen/index.ts';
import type { Laid } from './laid.ts';
import type { Unfit } from './refusal.ts';
import { evenly } from './split.ts';

/** A smoker that can take a cut while set so, with the racks that are then as hot as asked. */
export type Fit = {
  readonly smoker: Smoker;
  readonly fireC: Celsius;
  readonly racks: readonly RackFit[];
};
export type RackFit = {
  readonly slot: SlotId;
  readonly areaCm2: number;
  readonly holdsG: number;
  /** Pieces that lie on it in rows. */
  readonly inRows: number;
  readonly pieceG: number;
};

/** What a load takes of a rack, what it makes unusable of its area included. */
export type Share = { readonly areaCm2: number; readonly weightG: number };

/**
 * How many pieces lie on a rack in rows, all turned the same way.
 * @example piecesInRows({ lengthM: 1, depthM: 0.6 }, ribs) // slabs of 50 cm × 20 cm //=> 6
 */
export function piecesInRows(
  { lengthM, depthM }: Pick<Rack, 'lengthM' | 'depthM'>,
  { lengthM: along, widthM: across }: Pick<Laid, 'lengthM' | 'widthM'>,
): number {
  return Math.max(
    times(lengthM, along) * times(depthM, across),
    times(lengthM, across) * times(depthM, along),
  );
}

/** How often a measure goes into another; exact multiples stay whole in binary fractions. */
const times = (whole: number, part: number) => Math.floor(whole / part + 1e-9);

/** Pieces that a rack takes when nothing else is on it: by its room, and by what it may carry. */
export function mostOn({ inRows, holdsG, pieceG }: RackFit): number {
  return Math.min(inRows, Math.floor(holdsG / pieceG));
}

/** The smokers that can take the stay, and why the others cannot. */
export function smokersFor(
  kitchen: Kitchen,
  laid: Laid,
  stay: StepOf<'place'>,
  wished: readonly SlotId[] | undefined,
): { readonly fits: readonly Fit[]; readonly unfit: readonly Unfit[] } {
  const fits: Fit[] = [];
  const unfit: Unfit[] = [];
  for (const smoker of kitchen.smokers) {
    const found = fitsIn(smoker, laid, stay, wished);
    if ('why' in found) unfit.push(found);
    else fits.push(...found);
  }
  return { fits, unfit };
}

function fitsIn(
  smoker: Smoker,
  laid: Laid,
  { setC }: StepOf<'place'>,
  wished: readonly SlotId[] | undefined,
): Fit[] | Unfit {
  const { name, coolestC, hottestC } = smoker;
  const racks = smoker.racks.filter(({ slot }) => wished?.includes(slot) ?? true);
  if (racks.length === 0) return { smoker: name, why: 'not-wished' };
  const heated = racks.filter(({ warmerK }) => isBetween(setC - warmerK, coolestC, hottestC));
  if (heated.length === 0) return { smoker: name, why: 'heat', coolestC, hottestC };
  const usable = heated.filter((rack) => mostOn(rackFit(rack, laid)) > 0);
  if (usable.length === 0) return tooSmall(smoker, heated, laid);
  const fires = [...new Set(usable.map(({ warmerK }) => setC - warmerK))];
  return fires.map((fireC) => ({
    smoker,
    fireC: celsius(fireC),
    racks: usable
      .filter(({ warmerK }) => setC - warmerK === fireC)
      .map((rack) => rackFit(rack, laid)),
  }));
}

const isBetween = (value: number, least: number, most: number) => least <= value && value <= most;

function rackFit(rack: Rack, laid: Laid): RackFit {
  return {
    slot: rack.slot,
    areaCm2: rackAreaCm2(rack),
    holdsG: rackLoadG(rack),
    inRows: piecesInRows(rack, laid),
    pieceG: laid.pieceKg * 1000,
  };
}

function tooSmall(
  { name }: Smoker,
  racks: readonly Rack[],
  { lengthM, widthM, pieceKg }: Laid,
): Unfit {
  const strongest = kilograms(Math.max(...racks.map(({ holdsKg }) => holdsKg)));
  if (strongest < pieceKg) return { smoker: name, why: 'weight', needs: pieceKg, most: strongest };
  const longest = metres(Math.max(...racks.map((rack) => Math.max(rack.lengthM, rack.depthM))));
  return { smoker: name, why: 'size', needs: metres(Math.max(lengthM, widthM)), most: longest };
}

/**
 * A batch shared out over racks: every load fits one rack of every smoker it could go to, so that a
 * move to another smoker moves loads and does not make new ones.
 */
export function rackLoads(fits: readonly Fit[], pieces: number): number[] {
  return evenly(pieces, Math.ceil(pieces / loadSize(fits)));
}

/** Pieces of a load that lies on the best rack of any of the smokers. */
const loadSize = (fits: readonly Fit[]) =>
  Math.min(...fits.map(({ racks }) => Math.max(...racks.map(mostOn))));

/** What so many pieces take of a rack; null where they do not go on it. */
export function shareOf(rack: RackFit, pieces: number): Share | null {
  if (mostOn(rack) < pieces) return null;
  return {
    areaCm2: Math.floor((pieces * rack.areaCm2) / rack.inRows),
    weightG: Math.min(rack.holdsG, Math.ceil(pieces * rack.pieceG)),
  };
}

/** Whether a smoker can take all loads of a batch at once. */
export function holdsLoads({ racks }: Fit, loads: readonly number[]): boolean {
  const free = new Map<RackFit, Share>(
    racks.map((rack) => [rack, { areaCm2: rack.areaCm2, weightG: rack.holdsG }]),
  );
  return loads.every((pieces) => {
    for (const [rack, left] of free) {
      const share = shareOf(rack, pieces);
      if (!share || share.areaCm2 > left.areaCm2 || share.weightG > left.weightG) continue;
      const areaCm2 = left.areaCm2 - share.areaCm2;
      free.set(rack, { areaCm2, weightG: left.weightG - share.weightG });
      return true;
    }
    return false;
  });
}
