import {
  type Celsius,
  celsius,
  type Metres,
  metres,
  type Seconds,
  seconds,
} from '../kernel/index.ts';
import { COMPOSITION_SLACK, type Composition, wholeOf } from './meat.ts';
import type { Piece, Place, Reading, Smoker } from './piece.ts';
import { shownS } from './readings.ts';

type Side = 'thickness' | 'width' | 'length';
type Part = keyof Composition;

/** Why nothing is computed: what was given cannot be. */
export type Fault =
  | { readonly rule: 'impossible-size'; readonly side: Side; readonly sizeM: Metres }
  | { readonly rule: 'impossible-share'; readonly part: Part; readonly share: number }
  | { readonly rule: 'composition-does-not-sum'; readonly sum: number }
  | { readonly rule: 'impossible-start'; readonly tempC: Celsius }
  | { readonly rule: 'no-first-stay' }
  | { readonly rule: 'stays-out-of-order'; readonly index: number }
  | { readonly rule: 'impossible-air'; readonly tempC: Celsius }
  | { readonly rule: 'log-out-of-order'; readonly atS: Seconds }
  | {
      readonly rule: 'target-above-fire';
      readonly target: string;
      readonly tempC: Celsius;
      readonly hottestC: Celsius;
    }
  | { readonly rule: 'reading-before-start'; readonly atS: Seconds }
  | { readonly rule: 'reading-after-now'; readonly atS: Seconds }
  | { readonly rule: 'impossible-reading'; readonly atS: Seconds; readonly tempC: Celsius }
  | { readonly rule: 'no-balance'; readonly members: number };

/** A flake of bark is thinner, a whole animal longer: neither is a piece. */
const SIZES_M = { low: 0.005, high: 2 };

/**
 * Ice would have to melt first, of which the model knows nothing; hotter than this it is cooked.
 */
const STARTS_C = { low: -1, high: 100 };

/** From a freezer's air to the hottest that the steam table knows. */
const AIRS_C = { low: -40, high: 200 };

/** Meat full of water does not get hotter than that boils, and no core is deep-frozen. */
const READINGS_C = { low: -5, high: 105 };

type Bounds = { readonly low: number; readonly high: number };

/** Also false for what is not a number. */
const within = ({ low, high }: Bounds, value: number) => low <= value && value <= high;

/**
 * All that cannot be about a piece, its smokers and its readings; nothing where a forecast can be
 * made.
 */
export function faultsOf(
  piece: Piece,
  smoker: Smoker,
  readings: readonly Reading[],
  nowS: number,
): Fault[] {
  return [
    ...pieceFaults(piece),
    ...stayFaults(piece),
    ...smokersOf(piece, smoker).flatMap(smokerFaults),
    ...targetFaults(piece, smoker, readings),
    ...readings.flatMap((reading) => readingFaults(reading, nowS)),
  ];
}

function pieceFaults({ sides, cut, startC }: Piece): Fault[] {
  const faults: Fault[] = [];
  for (const side of ['thickness', 'width', 'length'] as const) {
    const sizeM = metres(sides[`${side}M`]);
    if (!within(SIZES_M, sizeM)) faults.push({ rule: 'impossible-size', side, sizeM });
  }
  for (const [part, share] of Object.entries(cut.composition)) {
    if (within({ low: 0, high: 1 }, share)) continue;
    faults.push({ rule: 'impossible-share', part: part as Part, share });
  }
  const sum = wholeOf(cut.composition);
  if (!within({ low: 1 - COMPOSITION_SLACK, high: 1 + COMPOSITION_SLACK }, sum)) {
    faults.push({ rule: 'composition-does-not-sum', sum });
  }
  if (!within(STARTS_C, startC)) faults.push({ rule: 'impossible-start', tempC: startC });
  return faults;
}

function stayFaults({ stays }: Piece): Fault[] {
  const first = stays[0];
  if (first === undefined || first.from.by !== 'time' || first.from.atS !== 0) {
    return [{ rule: 'no-first-stay' }];
  }
  let timeS = 0;
  return stays.flatMap(({ from }, index): Fault[] => {
    if (from.by !== 'time') return [];
    if (from.atS < timeS) return [{ rule: 'stays-out-of-order', index }];
    timeS = from.atS;
    return [];
  });
}

function smokerFaults({ setC, log }: Smoker): Fault[] {
  const temps = [setC, ...log.map(({ tempC }) => celsius(tempC))];
  const impossible = temps.filter((tempC) => !within(AIRS_C, tempC));
  const early = log.filter(({ atS }, index) => atS < (log[index - 1]?.atS ?? atS));
  return [
    ...impossible.map((tempC): Fault => ({ rule: 'impossible-air', tempC })),
    ...early.map(({ atS }): Fault => ({ rule: 'log-out-of-order', atS: seconds(atS) })),
  ];
}

/** What was not shown yet and lies above the hottest air that is meant for it is out of reach. */
function targetFaults(piece: Piece, smoker: Smoker, readings: readonly Reading[]): Fault[] {
  if (piece.stays.length === 0) return [];
  const airs = piece.stays.map(({ place }) => hottestOf(place, smoker));
  const hottestC = celsius(Math.max(piece.startC, ...airs));
  return piece.targets
    .filter(({ tempC, way }) => way === 'rising' && !(tempC < hottestC))
    .filter((target) => shownS(target, readings) === undefined)
    .map(({ id, tempC }) => ({ rule: 'target-above-fire', target: id, tempC, hottestC }));
}

function hottestOf(place: Place, home: Smoker): Celsius {
  if (place.kind === 'room') return place.room.airC;
  return place.kind === 'home' ? home.setC : place.smoker.setC;
}

function readingFaults({ atS, tempC }: Reading, nowS: number): Fault[] {
  if (!(atS >= 0)) return [{ rule: 'reading-before-start', atS }];
  if (atS > nowS) return [{ rule: 'reading-after-now', atS }];
  return within(READINGS_C, tempC) ? [] : [{ rule: 'impossible-reading', atS, tempC }];
}

function smokersOf({ stays }: Piece, smoker: Smoker): Smoker[] {
  const others = stays.flatMap(({ place }) => (place.kind === 'smoker' ? [place.smoker] : []));
  return [smoker, ...others];
}
