import { AirCurve, type AirPoint } from './air-curve.ts';
import { type Opening, openingsOf, seenIn, type UnseenFall, unseenFalls } from './openings.ts';
import type { Smoker } from './piece.ts';

/** From the last entry of the log the air goes to where it is set within half an hour (judged). */
const SETTLING_S = 1800;

/**
 * An open door lets three fifths of the air's warmth out with a time constant of a minute, and
 * the fire makes up for it with one of five (judged). A core learns of that only as much as it
 * adds up to, so the dip is drawn as wide as the steps of the model are long, and as shallow.
 */
const LOST_AT_MOST = 0.6;
const LOSING_S = 60;
const REGAINING_S = 300;
const OUTSIDE_C = 25;
const DIP_S = 900;

/** A fall that nobody saw is drawn as wide as the steps of the model are long. */
const FALL_S = 900;

/**
 * The air of a smoker over the whole cook: as logged, with its doors, and from then on as set. A
 * fall between readings far apart lies after such a share of the time between: nobody knows where,
 * so each member of an ensemble has its own.
 */
export function airOfSmoker({ log, setC, doors }: Smoker, fallsAfterShare = 0.5): AirCurve {
  const { steady: seen, openings } = seenIn(log);
  const falls = unseenFalls(log);
  const steady = seen.flatMap((point) => {
    const fall = falls.find(({ after }) => after === point);
    return fall ? [...fallen(fall, fallsAfterShare), point] : [point];
  });
  const last = steady.at(-1);
  const shut: AirPoint[] =
    last === undefined
      ? [{ atS: 0, tempC: setC }]
      : [...steady, { atS: last.atS + SETTLING_S, tempC: setC }];
  return withDoors(shut, openingsOf(doors, openings));
}

/** As it was till then, and as it is from then on. */
function fallen({ before, after }: UnseenFall, share: number): AirPoint[] {
  const middleS = before.atS + share * (after.atS - before.atS);
  return [
    { atS: Math.max(before.atS, middleS - FALL_S / 2), tempC: before.tempC },
    { atS: Math.min(after.atS, middleS + FALL_S / 2), tempC: after.tempC },
  ];
}

function withDoors(shut: readonly AirPoint[], doors: readonly Opening[]): AirCurve {
  const curve = new AirCurve(shut);
  if (doors.length === 0) return curve;
  const knots = doors.flatMap(({ atS }) => [atS - DIP_S, atS, atS + DIP_S]);
  const timesS = [...new Set([...shut.map(({ atS }) => atS), ...knots])].sort((a, b) => a - b);
  const points = timesS.map((atS) => {
    const airC = curve.at(atS);
    const share = doors.reduce((sum, door) => sum + lostShare(door, atS), 0);
    return { atS, tempC: airC - Math.min(share, LOST_AT_MOST) * (airC - OUTSIDE_C) };
  });
  return new AirCurve(points);
}

/** Of the air's warmth, at a time about the door's opening. */
function lostShare({ atS, openS }: Opening, timeS: number): number {
  const lost = LOST_AT_MOST * (1 - Math.exp(-openS / LOSING_S));
  const lastingS = openS + REGAINING_S;
  return Math.max(0, 1 - Math.abs(timeS - atS) / DIP_S) * lost * Math.min(1, lastingS / DIP_S);
}
