import type { Celsius, Seconds } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import { A_READING_S, type Breach, type FoodKind, type LimitRow } from '../plan/index.ts';
import type { Judgement, Profile, Row, RowOf, Rule } from '../safety/index.ts';
import {
  breachOf,
  celsiusOf,
  judgeColdHold,
  judgeEndTemperature,
  judgeHotHold,
  judgeReceiving,
  judgeReheat,
  judgeThermometer,
  rowsOf,
  secondsOf,
  tempIn,
} from '../safety/index.ts';
import type { CheckKind, CheckOn, CorrectiveAction } from './check-event.ts';

/** Which row of the limits asks for a check, and what it asks. */
export type Asks = {
  /** Null where the route alone sets the limit. */
  readonly row: LimitRow | null;
  /** In the digits of the row, or nothing where it asks for no number. */
  readonly asked: string | null;
  readonly atLeastC: Celsius | null;
  readonly atMostC: Celsius | null;
  /** What may be done about it once it is broken. */
  readonly allowed: readonly CorrectiveAction[];
};

/** Whether a thermometer has to be read for it. */
export const hasReading = (kind: CheckKind): boolean =>
  kind !== 'discard-time' && kind !== 'out-of-temperature' && kind !== 'clean';

/** What the limits ask of a check; null where they have no row for it. */
export function asksOf(profile: Profile, on: CheckOn, food: FoodKind | null): Asks | null {
  switch (on.kind) {
    case 'receiving':
      return asked(rowFor(profile, on.kind), ({ atMost }) => ({ asked: atMost, atMost }));
    case 'cold-hold':
    case 'hot-hold':
      return keepingAsks(profile, on.kind);
    case 'end-temperature': {
      const row = rowFor(profile, on.kind, ({ appliesTo }) => concerns(appliesTo, food));
      return asked(row, ({ anyOf }) => least(anyOf));
    }
    case 'reheat':
      return asked(reheatRow(profile), ({ anyOf }) => least(anyOf));
    case 'cooling':
      return asked(rowFor(profile, on.kind), ({ stages }) => {
        const stage = stages[on.stage - 1] ?? must(stages.at(-1), 'a stage');
        return { asked: `${stage.to}, ${stage.within}`, atMost: stage.to };
      });
    case 'out-of-temperature':
      return asked(rowFor(profile, on.kind), ({ within }) => ({ asked: within }));
    case 'clean':
      return asked(rowFor(profile, 'clean-interval'), ({ within }) => ({ asked: within }));
    case 'thermometer':
      return asked(foodThermometer(profile), ({ within }) => ({ asked: within }));
    default:
      return { row: null, asked: null, atLeastC: null, atMostC: null, allowed: ['discard'] };
  }
}

/** What the limits ask of food that is kept, wherever that is. */
export function keepingAsks(profile: Profile, kind: 'cold-hold' | 'hot-hold'): Asks | null {
  if (kind === 'cold-hold') {
    return asked(rowFor(profile, kind), ({ atMost }) => ({ asked: atMost, atMost }));
  }
  return asked(rowFor(profile, kind), ({ atLeast }) => ({ asked: atLeast, atLeast }));
}

/** What is wrong with what was read: the row with both amounts, or null. */
export function brokenBy(
  profile: Profile,
  {
    on,
    food,
    tempC,
    tookS,
  }: {
    on: CheckOn;
    food: FoodKind | null;
    tempC: Celsius | null;
    /** Since the heating or the cooling began. */
    tookS: Seconds;
  },
): Breach | null {
  if (tempC === null) return null;
  const heat = { coreC: tempC, heldS: A_READING_S };
  const judged = (): Judgement | null => {
    switch (on.kind) {
      case 'receiving':
        return judgeReceiving(profile, heat);
      case 'cold-hold':
        return judgeColdHold(profile, heat);
      case 'hot-hold':
        return judgeHotHold(profile, heat);
      case 'end-temperature':
        return judgeEndTemperature(profile, { ...heat, kind: food ?? 'stuffed' });
      case 'reheat':
        return judgeReheat(profile, { ...heat, way: 'oven', tookS });
      case 'thermometer':
        return judgeThermometer(profile, { measures: 'food', shownC: tempC });
      default:
        return null;
    }
  };
  if (on.kind === 'cooling') return coolingBroken(profile, on.stage, tempC, tookS);
  const judgement = judged();
  return judgement && breachOf(judgement);
}

/** How long a stage may take from the beginning of the cooling; null where there is no such one. */
export function stageWithinS(profile: Profile, stage: number): Seconds | null {
  const within = rowFor(profile, 'cooling').limit?.stages[stage - 1]?.within;
  return within === undefined ? null : secondsOf(within);
}

/** How long a rule lets something last; null where the limits have no figure. */
export function withinS(
  profile: Profile,
  rule: 'out-of-temperature' | 'clean-interval',
): Seconds | null {
  const { limit } = rule === 'clean-interval' ? rowFor(profile, rule) : rowFor(profile, rule);
  return limit && secondsOf(limit.within);
}

/** How long reheating may take; two hours where the row has no figure (common practice). */
export function reheatWithinS(profile: Profile): Seconds {
  const within = reheatRow(profile).limit?.within;
  return within === undefined ? seconds(7200) : secondsOf(within);
}

/** A stage is not reached, or was seen too late to tell. */
function coolingBroken(
  profile: Profile,
  stage: number,
  tempC: Celsius,
  tookS: Seconds,
): Breach | null {
  const row = rowFor(profile, 'cooling');
  const limit = row.limit?.stages[stage - 1];
  if (!limit) return null;
  const isLate = tookS > secondsOf(limit.within) + A_MINUTE_S;
  if (tempC <= celsiusOf(limit.to) + NOTHING_K && !isLate) return null;
  const unit = limit.to.endsWith('°F') ? '°F' : '°C';
  const shown = Math.round(tempIn(unit, tempC).value * 10) / 10;
  const tookH = Math.round(tookS / 360) / 10;
  return {
    row: named(row),
    asked: `${limit.to}, ${limit.within}`,
    found: `${shown} ${unit}, ${tookH} h`,
  };
}

/** A limit in hours is held by the minute, and arithmetic breaks none. */
const A_MINUTE_S = 60;
const NOTHING_K = 1e-9;

type Printed = {
  readonly asked: string;
  readonly atLeast?: Parameters<typeof celsiusOf>[0];
  readonly atMost?: Parameters<typeof celsiusOf>[0];
};

function asked<R extends Row>(
  row: R,
  print: (limit: NonNullable<R['limit']>) => Printed,
): Asks | null {
  if (row.limit === null) return null;
  const { asked: words, atLeast, atMost } = print(row.limit as NonNullable<R['limit']>);
  return {
    row: named(row),
    asked: words,
    atLeastC: atLeast === undefined ? null : celsiusOf(atLeast),
    atMostC: atMost === undefined ? null : celsiusOf(atMost),
    allowed: row.corrective,
  };
}

/** The lowest of several points that one reading can show. */
function least(points: NonNullable<RowOf<'end-temperature'>['limit']>['anyOf']): Printed {
  const shown = points.filter(({ time }) => secondsOf(time) <= A_READING_S);
  const [first] = (shown.length > 0 ? shown : points).toSorted(
    (a, b) => celsiusOf(a.temp) - celsiusOf(b.temp),
  );
  const { temp } = must(first, 'a point');
  return { asked: temp, atLeast: temp };
}

/** The first row of a rule that refuses; one without a figure where there is none. */
function rowFor<R extends Rule>(
  profile: Profile,
  rule: R,
  only: (row: RowOf<R>) => boolean = () => true,
): RowOf<R> {
  const rows = rowsOf(profile, rule, { only });
  return rows.find(({ severity }) => severity === 'refuse') ?? must(rows[0], rule);
}

const reheatRow = (profile: Profile) => rowFor(profile, 'reheat', ({ way }) => way === 'oven');

const foodThermometer = (profile: Profile) =>
  rowFor(profile, 'thermometer', ({ measures }) => measures === 'food');

const concerns = (appliesTo: Row['appliesTo'], food: FoodKind | null): boolean =>
  appliesTo === 'any' || (food !== null && appliesTo.includes(food));

const named = ({ id, what, section, source, edition }: Row): LimitRow => ({
  id,
  what,
  section,
  source,
  edition,
});
