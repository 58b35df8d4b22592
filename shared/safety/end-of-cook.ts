import { judgeEndTemperature } from './judge-cook.ts';
import type { Judgement } from './judgement.ts';
import type { PrintedTemp } from './printed.ts';
import { amountOf, celsiusOf, degrees, degreesIn } from './printed.ts';
import { rowsOf } from './profile.ts';
import { highestC, longestStayS } from './readings.ts';
import type { Watch } from './watch.ts';

/**
 * Whether the readings keep the row for the end of a cook: one of its points must have been reached
 * at the coldest spot and held as long as it asks for. If none was, the hottest one reached speaks.
 */
export function judgeEndOfCook({
  readings,
  profile,
  kind,
  oven,
  errorK,
  apartAtMostS,
}: Watch): Judgement {
  const reached = pointsOf({ profile, kind }).flatMap((temp) => {
    const { value, unit } = amountOf(temp);
    const shift = -degreesIn(unit, errorK);
    if (!(degrees(unit, highestC(readings)) + shift >= value)) return [];
    const heldS = longestStayS(readings, value, { unit, shift, apartAtMostS });
    return [judgeEndTemperature(profile, { kind, oven, coreC: celsiusOf(temp), heldS })];
  });
  const missed = () =>
    judgeEndTemperature(profile, { kind, oven, coreC: highestC(readings), errorK });
  return reached.find(({ ok }) => ok) ?? reached.at(-1) ?? missed();
}

/** The temperatures of the rows for a kind, the lowest first. */
function pointsOf({ profile, kind }: Pick<Watch, 'profile' | 'kind'>): PrintedTemp[] {
  const rows = rowsOf(profile, 'end-temperature', { kind });
  const temps = rows.flatMap(({ limit }) => limit?.anyOf.map(({ temp }) => temp) ?? []);
  return [...new Set(temps)].sort((a, b) => celsiusOf(a) - celsiusOf(b));
}
