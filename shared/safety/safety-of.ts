import type { Celsius, Seconds } from '../kernel/index.ts';
import { hours, seconds } from '../kernel/index.ts';
import type { Cooling } from './cooling.ts';
import type { Findings } from './findings.ts';
import { findIn } from './findings.ts';
import { judgeComeUp, judgeFirstHeat, judgeProbePlace } from './judge-cook.ts';
import type { Broken, Miss } from './judgement.ts';
import { breaking, notAllowed, tooLong, tooWarm } from './judgement.ts';
import type { Profile } from './profile.ts';
import { limitOf, rowsOf } from './profile.ts';
import type { Series } from './readings.ts';
import { highestC } from './readings.ts';
import type { Kind, LimitOf } from './row-schema.ts';
import type { CoolingReport, SafetyReport } from './safety-report.ts';
import { warningsOf } from './safety-warnings.ts';
import { variancesOf } from './variance.ts';
import type { Circumstances, Watch } from './watch.ts';
import { watchOf } from './watch.ts';

/**
 * Everything the rules say to the readings of one piece: kill, time at temperature, come-up, end of
 * the cook, cooling.
 */
export function safetyOf(
  readings: Series,
  kind: Kind,
  profile: Profile,
  said: Circumstances = {},
): SafetyReport {
  return safetyOfProbes([readings], kind, profile, said);
}

/**
 * The same of several probes in one piece: the coldest counts on the way up, the warmest on the way
 * down.
 */
export function safetyOfProbes(
  probes: readonly Series[],
  kind: Kind,
  profile: Profile,
  said: Circumstances = {},
): SafetyReport {
  const watch = watchOf(probes, kind, profile, said);
  const findings = findIn(watch, said.fatPercent);
  const { kill, end, comeUp, cooling } = findings;
  return {
    profile: profile.id,
    profile_version: profile.version,
    kind,
    lethality_log: kill?.lethality.logs ?? null,
    lethality_needed_log: kill?.lethality.neededLogs ?? null,
    dwell_share: kill?.lethality.dwell ?? null,
    dwell_met: kill?.met ?? end.ok,
    dwell_credited: kill === null ? null : kill.credited,
    end_met: end.ok,
    highest_c: highestC(watch.readings),
    come_up_h: comeUp === null ? null : inHours(comeUp.tookS),
    cooling: coolingReport(cooling),
    broken: brokenBy(watch, findings, said),
    warnings: warningsOf(watch, findings, said),
    variances: variancesOf(profile, said.done ?? []).map(({ id }) => id),
  };
}

const inHours = (duration: Seconds) => duration / hours(1);

function coolingReport(cooling: Cooling | null): CoolingReport {
  if (cooling === null || cooling.state === 'reheated') {
    return { stage1_h: null, total_h: null, met: null, state: 'none' };
  }
  const tookH = cooling.stages.map(({ tookS }) => (tookS === null ? null : inHours(tookS)));
  return {
    stage1_h: tookH[0] ?? null,
    total_h: tookH.at(-1) ?? null,
    met: cooling.state === 'met',
    state: cooling.state,
  };
}

function brokenBy(watch: Watch, findings: Findings, { place = 'centre' }: Circumstances): Broken[] {
  const { profile, kind } = watch;
  const { kill, end, comeUp, interruptions, coolingAlone } = findings;
  const judgements = [
    ...(coolingAlone ? [] : [end]),
    judgeProbePlace(profile, { kind, place }),
    ...(comeUp === null ? [] : [judgeComeUp(profile, comeUp.tookS)]),
    ...interruptions
      .filter(({ lowestC }) => wentCold(profile, lowestC))
      .map(({ heatedS }) => judgeFirstHeat(profile, heatedS)),
  ];
  return [
    ...(coolingAlone ? [] : (kill?.broken ?? [])),
    ...judgements.flatMap((one) => (one.ok ? [] : [one])),
    ...brokenByCooling(watch, findings.cooling),
  ];
}

/** Cold again before the cook was full: it is a cook in two goes. */
function wentCold(profile: Profile, lowestC: Celsius): boolean {
  const band = limitOf(profile, 'come-up');
  return band === null || tooWarm(band.from, lowestC) === null;
}

function brokenByCooling({ profile, warmest }: Watch, cooling: Cooling | null): Broken[] {
  const [row] = rowsOf(profile, 'cooling');
  if (row === undefined || cooling?.state !== 'missed') return [];
  const lastS = warmest.at(-1)?.atS ?? cooling.startS;
  const miss = row.limit === null ? notAllowed : missedStage(row.limit, cooling, lastS);
  return [breaking(row, miss ?? notAllowed)];
}

function missedStage(limit: LimitOf<'cooling'>, cooling: Cooling, lastS: number): Miss | null {
  const misses = limit.stages.map(({ within }, index) =>
    tooLong(within, cooling.stages[index]?.tookS ?? seconds(lastS - cooling.startS)),
  );
  return misses.find((miss) => miss !== null) ?? null;
}
