import { unreachable } from '../kernel/index.ts';
import { AirCurve } from './air-curve.ts';
import type { Moment, RunStage } from './cook-run.ts';
import { airOfSmoker } from './fire.ts';
import { SEA_LEVEL_PA, vapourPressurePa } from './moist-air.ts';
import { unseenFalls } from './openings.ts';
import type { Smoker, Stay } from './piece.ts';
import { meaningOf, placesOf, type Unknown } from './prior.ts';
import type { Room, Wrap, WrapName } from './rooms.ts';
import { smokerUnknowns } from './smoker-priors.ts';

/** What is a member's own about a stay: how its wrap sits, its smoker's z, how the fire strays. */
export type Own = {
  readonly wrapPassage: number;
  readonly wrapContact: number;
  /** All unknowns; those of the stay's smoker begin at a place that the stay knows. */
  readonly z: readonly number[];
  readonly driftZ: number;
  /** When in a stretch that nobody read the air fell. */
  readonly fellZ: number;
};

/** What is common to all stays of a cook. */
export type Setting = {
  readonly home: Smoker;
  readonly wraps: Readonly<Record<WrapName, Wrap>>;
  readonly nowS: number;
  /** Where in a row of z the unknowns of a smoker begin. */
  readonly placeInZ: (smoker: string) => number;
};

/** One time in a stretch is as likely as another where nothing is known. */
const ANY_SHARE: Unknown = {
  ...{ scale: 'between', low: 0, high: 1 },
  ...{ sureness: 'judged', source: 'nobody read the air then' },
};

const placesInBlock = placesOf(smokerUnknowns);

/** A stay made ready: what is common to all members is worked out once. */
export type StageOf = (own: Own) => RunStage;

/**
 * Makes a stay ready. What waits for the core has not begun by now; how the fire will stray is not
 * known from now on.
 */
export function stageOf({ from, place, wrap }: Stay, setting: Setting): StageOf {
  const { home, wraps, nowS } = setting;
  const moment: Moment = from.by === 'time' ? from : { ...from, notBeforeS: nowS };
  switch (place.kind) {
    case 'home':
      return inSmoker(moment, home, wraps[wrap], setting);
    case 'smoker':
      return inSmoker(moment, place.smoker, wraps[wrap], setting);
    case 'room':
      return inRoom(moment, place.room, wraps[wrap], pressureOf(home));
    default:
      return unreachable(place);
  }
}

const pressureOf = ({ pressurePa }: Smoker) => pressurePa ?? SEA_LEVEL_PA;

function inSmoker(from: Moment, smoker: Smoker, wrap: Wrap, setting: Setting): StageOf {
  const { unknowns, wallsBelowAirK, swingK } = smoker.prior;
  const pressurePa = pressureOf(smoker);
  const usual = airOfSmoker(smoker);
  const hasFallen = unseenFalls(smoker.log).length > 0;
  const airOf = ({ fellZ }: Own) =>
    hasFallen ? airOfSmoker(smoker, meaningOf(ANY_SHARE, fellZ)) : usual;
  const block = setting.placeInZ(smoker.id);
  return (own) => {
    const of = (name: keyof typeof unknowns) =>
      meaningOf(unknowns[name], own.z[block + placesInBlock[name]] ?? 0);
    return {
      from,
      air: airOf(own),
      around: {
        wrapM2KPerW: resistance(wrap, own),
        wrapPasses: passing(wrap, own),
        filmWPerM2K: of('film'),
        emissivity: wrap.emissivity ?? of('emissivity'),
        wallsBelowAirK,
        vapourPa: vapourPressurePa(of('humidity'), pressurePa),
        pressurePa,
      },
      warmerK: of('airShift'),
      drift: { fromS: setting.nowS, k: swingK * own.driftZ },
    };
  };
}

function inRoom(from: Moment, room: Room, wrap: Wrap, pressurePa: number): StageOf {
  const air = new AirCurve([{ atS: 0, tempC: room.airC }]);
  return (own) => ({
    from,
    air,
    around: {
      wrapM2KPerW: resistance(wrap, own),
      wrapPasses: passing(wrap, own),
      filmWPerM2K: room.filmWPerM2K,
      emissivity: wrap.emissivity ?? room.emissivity,
      wallsBelowAirK: 0,
      vapourPa: vapourPressurePa(room.humidityRatio, pressurePa),
      pressurePa,
    },
    warmerK: 0,
    drift: { fromS: 0, k: 0 },
  });
}

/** Bare meat has no wrap that could sit well or badly. */
const isBare = (wrap: Wrap) => wrap.contactWPerM2K === Number.POSITIVE_INFINITY;

const resistance = (wrap: Wrap, { wrapContact }: Own) =>
  isBare(wrap) ? 0 : 1 / (wrap.contactWPerM2K * wrapContact);

const passing = (wrap: Wrap, { wrapPassage }: Own) =>
  isBare(wrap) ? 1 : Math.min(1, wrap.passes * wrapPassage);
