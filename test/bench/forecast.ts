import { randomInt } from 'node:crypto';
import { parseArgs } from 'node:util';
import {
  type ForecastAsk,
  foreseeing,
  type Kept,
  type Message,
  type Smoker,
} from '../../shared/cook/index.ts';
import { celsius, hours, metres } from '../../shared/kernel/index.ts';
import { baselineNames } from '../shared/cook/baselines.ts';
import { kitchenLife, type Scored } from '../shared/cook/kitchen-life.ts';
import { hourly, shoulder, smoker } from '../shared/cook/shoulder.ts';
import { wrapNames } from '../shared/cook/synthetic-kitchen.ts';
import { tapsBeside } from './forecast-taps.ts';

const SHARES = [0, 0.2, 0.4, 0.6, 0.8];
const PIECES = 24;

/**
 * Forecasts beside what a kitchen could do without a model, in kitchens made up at random that
 * cook by another law than the product's, over fires that swing and doors that nobody writes
 * down. A kitchen lives from its first day; a cell counts its cooks once it has finished thirty,
 * by how they were to be wrapped and by the share of the usual hours that had gone by. `--seed N`
 * repeats a run. Then what one reading in a full smoker costs, and what a tap does while a whole
 * smoker is foreseen beside it; with `--only taps` nothing but that.
 */
export async function bench(args: string[]): Promise<Record<string, unknown>> {
  const { values } = parseArgs({
    args,
    options: {
      seed: { type: 'string', default: String(randomInt(1e9)) },
      kitchens: { type: 'string', default: '26' },
      cooks: { type: 'string', default: '100' },
      only: { type: 'string' },
    },
  });
  if (values.only === 'taps') return tapsBeside(smokerful());
  const [seed, kitchens, cooks] = [values.seed, values.kitchens, values.cooks].map(Number);
  if (!seed || !kitchens || !cooks)
    throw new Error('Say --seed, --kitchens and --cooks as numbers.');
  console.log(JSON.stringify({ seed, kitchens, cooks }));
  const scored: Scored[] = [];
  for (let kitchen = 0; kitchen < kitchens; kitchen++) {
    scored.push(...kitchenLife(seed + 7919 * kitchen, cooks, SHARES));
    console.log(JSON.stringify({ kitchen, forecasts: scored.length }));
  }
  const young = cellsOf(scored.filter(({ isCalibrated }) => !isCalibrated));
  for (const cell of young) console.log(JSON.stringify({ uncalibrated: true, ...cell }));
  return {
    seed,
    cells: cellsOf(scored.filter(({ isCalibrated }) => isCalibrated)),
    ...update(),
    ...(await tapsBeside(smokerful())),
  };
}

function cellsOf(scored: readonly Scored[]): Record<string, unknown>[] {
  return wrapNames.flatMap((wrap) =>
    SHARES.flatMap((elapsed) => {
      const cell = scored.filter((one) => one.wrap === wrap && one.share === elapsed);
      if (cell.length === 0) return [];
      const mean = (of: (one: Scored) => number) => round(meanOf(cell.map(of)));
      const baselines = baselineNames.flatMap((name) => {
        const scores = cell.flatMap(({ baselinesH }) => baselinesH[name] ?? []);
        // One that has mostly nothing to say cannot be compared.
        return scores.length > cell.length / 2 ? [{ name, crpsH: round(meanOf(scores)) }] : [];
      });
      const best = baselines.sort((a, b) => a.crpsH - b.crpsH)[0];
      return [
        {
          ...{ wrap, elapsed, cooks: cell.length },
          coverage: mean(({ isCovered }) => (isCovered ? 1 : 0)),
          crps_h: mean(({ crpsH }) => crpsH),
          best_baseline: best?.name,
          best_baseline_crps_h: best?.crpsH,
          p50_mae_h: mean(({ missedH }) => missedH),
          left_h: mean(({ leftH }) => leftH),
        },
      ];
    }),
  );
}

const meanOf = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const round = (value: number) => Math.round(value * 1000) / 1000;

/** All the loads of a full smoker, each with its readings, of other thicknesses. */
const smokerful = (): ForecastAsk[] =>
  Array.from({ length: PIECES }, (_, piece) => ({
    piece: { ...shoulder, sides: { ...shoulder.sides, thicknessM: thicknessOf(piece) } },
    smoker: logged,
    readings,
    options: { nowS: hours(7), seed: piece },
  }));

const readings = hourly(27, 50, 60, 64, 66, 68);
const log = Array.from({ length: 24 }, (_, i) => ({ atS: 900 * (i + 1), tempC: celsius(115) }));
const logged: Smoker = { ...smoker, log };
const thicknessOf = (piece: number) => metres(0.085 + 0.001 * piece);

/**
 * One reading comes in for one piece of a full smoker: its own forecast, and those of all the
 * others with what it now says of the smoker.
 */
function update(): { update_s: number; pieces_cooked_anew: number } {
  const last = { atS: hours(7), tempC: celsius(71), by: 'probe' } as const;
  const cook = (piece: number, of: Smoker, before?: Kept) => {
    const sides = { ...shoulder.sides, thicknessM: thicknessOf(piece) };
    const taken = before === undefined && of.heard ? [...readings, last] : readings;
    const options = { nowS: hours(7), seed: piece, before };
    const found = foreseeing({ ...shoulder, sides }, of, taken, options);
    if (!found.ok) throw new Error(JSON.stringify(found.faults));
    return found.kept;
  };
  const says = ({ forecast }: Kept): Message[] =>
    forecast.saysOfSmokers.map(({ message }) => message);
  const alone = Array.from({ length: PIECES }, (_, piece) => cook(piece, logged));
  const said = alone.map(says);
  // Each has heard the others before the reading comes.
  const kept = alone.map((each, piece) =>
    cook(piece, { ...logged, heard: said.filter((_, other) => other !== piece).flat() }, each),
  );
  const startMs = performance.now();
  const news = says(cook(0, { ...logged, heard: said.slice(1).flat() }));
  let anew = 1;
  for (let piece = 1; piece < PIECES; piece++) {
    const others = said.filter((_, other) => other !== piece && other !== 0);
    const heard = [...news, ...others.flat()];
    const found = cook(piece, { ...logged, heard }, kept[piece]);
    if (found.weighed !== kept[piece]?.weighed) anew++;
  }
  return { update_s: round((performance.now() - startMs) / 1000), pieces_cooked_anew: anew };
}
