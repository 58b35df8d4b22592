import { fahrenheit, toCelsius } from '../kernel/index.ts';
import type { Findings } from './findings.ts';
import { judgeComeUp } from './judge-cook.ts';
import { creditsRoastTable } from './oven.ts';
import type { Series } from './readings.ts';
import { highestC } from './readings.ts';
import type { SafetyWarning } from './safety-report.ts';
import type { Circumstances, Watch } from './watch.ts';

/**
 * So few say little of a cook: FSIS asks for at least 20 where kill is summed (Appendix A, p. 68).
 */
const FEW_READINGS = 20;

/**
 * Appendix A's time at 130 °F was not confirmed for every germ, that at 140 °F was (McMinn and
 * others, Meat and Muscle Biology 2018, abstract read). The line between is ours.
 */
const LOW_SCHEDULE_C = toCelsius(fahrenheit(135));

/** What a person should know beside the figures. */
export function warningsOf(watch: Watch, findings: Findings, said: Circumstances): SafetyWarning[] {
  const { readings, profile, kind, oven } = watch;
  const { kill, comeUp, cooling, interruptions } = findings;
  const isLow = kill?.met === true && highestC(readings) < LOW_SCHEDULE_C;
  const needsOven =
    creditsRoastTable(profile, kind, oven) === null && kill?.lethality.wasInstant !== true;
  return [
    ...when(said.errorK === undefined, { warning: 'error-unsaid' }),
    ...when(needsOven, { warning: 'oven-unsaid' }),
    ...when(readings.length < FEW_READINGS, { warning: 'few-readings', readings: readings.length }),
    ...silences(readings, watch.apartAtMostS),
    ...comeUpWarnings(watch, findings),
    ...when(comeUp?.begunBefore === true, { warning: 'come-up-began-before' }),
    ...when(isLow, { warning: 'low-schedule' }),
    ...when(interruptions.length > 0, { warning: 'interrupted', interruptions }),
    ...when(cooling?.begunBefore === true, { warning: 'cooling-began-before' }),
  ];
}

const when = (holds: boolean, warning: SafetyWarning) => (holds ? [warning] : []);

function comeUpWarnings({ profile }: Watch, { comeUp }: Findings): SafetyWarning[] {
  if (comeUp === null) return [];
  const judgement = judgeComeUp(profile, comeUp.tookS);
  const broken = judgement.ok ? judgement.warnings : [];
  return broken.map((one) => ({ warning: 'come-up-long', broken: one }));
}

function silences(readings: Series, apartAtMostS: number): SafetyWarning[] {
  const apart = readings.slice(1).map(({ atS }, index) => atS - (readings[index]?.atS ?? atS));
  const long = apart.filter((interval) => interval > apartAtMostS);
  if (long.length === 0) return [];
  const longest = long.reduce((most, interval) => Math.max(most, interval), 0);
  return [{ warning: 'silences', silences: long.length, longest_s: longest }];
}
