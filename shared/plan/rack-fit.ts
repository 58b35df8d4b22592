import type { Cut, StepOf } from '../catalogue/index.ts';
import type { Kilograms, SlotId, Text } from '../kernel/index.ts';
import type { Kitchen, Rack, Smoker } from '../kitchen/index.ts';
import { rackAreaCm2 } from '../kitchen/index.ts';
import type { Unfit } from './refusal.ts';
import { evenly } from './split.ts';

/** A smoker that can take a cut, with the racks that can. */
export type Fit = { readonly smoker: Smoker; readonly racks: readonly RackFit[] };
export type RackFit = {
  readonly slot: SlotId;
  readonly areaCm2: number;
  /** Pieces that lie on it. */
  readonly most: number;
};

/**
 * How many pieces lie on a rack in rows, all turned the same way, and no heavier together than it
 * may carry.
 * @example piecesOnRack({ lengthM: 1, depthM: 0.6, holdsKg: 30 }, ribs, kilograms(1.2)) //=> 6
 */
export function piecesOnRack(
  rack: Pick<Rack, 'lengthM' | 'depthM' | 'holdsKg'>,
  { footprint }: Pick<Cut, 'footprint'>,
  pieceKg: Kilograms,
): number {
  const inRows = (along: number, across: number) =>
    times(rack.lengthM, along) * times(rack.depthM, across);
  const { lengthM, widthM } = footprint;
  const byRoom = Math.max(inRows(lengthM, widthM), inRows(widthM, lengthM));
  return Math.min(byRoom, times(rack.holdsKg, pieceKg));
}

/** How often a measure goes into another; exact multiples stay whole in binary fractions. */
const times = (whole: number, part: number) => Math.floor(whole / part + 1e-9);

/** The smokers that can take the stay, and why the others cannot. */
export function smokersFor(
  kitchen: Kitchen,
  cut: Cut,
  stay: StepOf<'place'>,
  wished: readonly SlotId[] | undefined,
): { readonly fits: readonly Fit[]; readonly unfit: readonly Unfit[] } {
  const fits: Fit[] = [];
  const unfit: Unfit[] = [];
  for (const smoker of kitchen.smokers) {
    const fit = fitOf(smoker, cut, stay, wished);
    if ('why' in fit) unfit.push(fit);
    else fits.push(fit);
  }
  return { fits, unfit };
}

function fitOf(
  smoker: Smoker,
  cut: Cut,
  stay: StepOf<'place'>,
  wished: readonly SlotId[] | undefined,
): Fit | Unfit {
  const { name, coolestC, hottestC } = smoker;
  const racks = smoker.racks.filter(({ slot }) => wished?.includes(slot) ?? true);
  if (racks.length === 0) return { smoker: name, why: 'not-wished' };
  if (stay.setC < coolestC || stay.setC > hottestC) {
    return { smoker: name, why: 'heat', coolestC, hottestC };
  }
  const pieceKg = trimmedPieceKg(cut);
  const usable = racks
    .map((rack) => ({
      slot: rack.slot,
      areaCm2: rackAreaCm2(rack),
      most: piecesOnRack(rack, cut, pieceKg),
    }))
    .filter(({ most }) => most > 0);
  return usable.length > 0 ? { smoker, racks: usable } : tooSmall(name, racks, cut, pieceKg);
}

function tooSmall(smoker: Text, racks: readonly Rack[], cut: Cut, pieceKg: Kilograms): Unfit {
  const strongest = Math.max(...racks.map(({ holdsKg }) => holdsKg));
  if (strongest < pieceKg) return { smoker, why: 'weight', needs: pieceKg, most: strongest };
  const longest = Math.max(...racks.map(({ lengthM, depthM }) => Math.max(lengthM, depthM)));
  const { lengthM, widthM } = cut.footprint;
  return { smoker, why: 'size', needs: Math.max(lengthM, widthM), most: longest };
}

const trimmedPieceKg = (cut: Cut) => (cut.weightKg.typical * cut.yields.trim.typical) as Kilograms;

/**
 * A batch shared out over racks: every load fits one rack of every smoker it could go to, so that a
 * move to another smoker moves loads and does not make new ones.
 */
export function rackLoads(fits: readonly Fit[], pieces: number): number[] {
  return evenly(pieces, Math.ceil(pieces / loadSize(fits)));
}

/** Pieces of a load that lies on the best rack of any of the smokers. */
const loadSize = (fits: readonly Fit[]) =>
  Math.min(...fits.map(({ racks }) => Math.max(...racks.map(({ most }) => most))));

/**
 * The area that a load takes up on a smoker's racks in whole square centimetres, what it makes
 * unusable included, and the racks that have it. Racks that hold fewer pieces for their area
 * decide.
 */
export function loadOn({ racks }: Fit, pieces: number): { areaCm2: number; slots: SlotId[] } {
  const wide = racks.filter(({ most }) => most >= pieces);
  const areaCm2 = Math.max(...wide.map((rack) => Math.floor((pieces * rack.areaCm2) / rack.most)));
  return { areaCm2, slots: wide.filter((rack) => rack.areaCm2 >= areaCm2).map(({ slot }) => slot) };
}

/** Whether a smoker can take all loads of a batch at once. */
export function holdsLoads(fit: Fit, loads: readonly number[]): boolean {
  const free = new Map(fit.racks.map(({ slot, areaCm2 }) => [slot, areaCm2]));
  return loads.every((pieces) => {
    const { areaCm2, slots } = loadOn(fit, pieces);
    const slot = slots.find((candidate) => (free.get(candidate) ?? 0) >= areaCm2);
    if (slot === undefined) return false;
    free.set(slot, (free.get(slot) ?? 0) - areaCm2);
    return true;
  });
}
