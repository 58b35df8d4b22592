import { performance } from 'node:perf_hooks';
import type { Seconds } from '../../shared/kernel/index.ts';
import { fahrenheit, minutes, must, seconds, toCelsius } from '../../shared/kernel/index.ts';
import type { Series } from '../../shared/safety/index.ts';
import { coolingsOf, foodCode, lethalityOf, limitOf, tables } from '../../shared/safety/index.ts';

const READINGS = 1_000_000;
const apartAtMostS = minutes(10);
const [D150_MIN, Z_F] = [0.1715, 10];
const cooling = must(limitOf(foodCode, 'cooling'), 'the cooling row');

/** Straight lines in °F, with the readings they are cut into; kill is counted from 130 °F. */
const ramps = [
  { fromF: 130, toF: 145, hours: 1, readings: 61 },
  { fromF: 40, toF: 203, hours: 12, readings: 721 },
  { fromF: 38, toF: 160, hours: 9, readings: 109 },
  { fromF: 130, toF: 158, hours: 16, readings: READINGS / 2 },
  { fromF: 203, toF: 33, hours: 6, readings: 361 },
  { fromF: 140, toF: 38, hours: 5, readings: READINGS / 2 },
];
type Ramp = (typeof ramps)[number];

function readingsOf({ fromF, toF, hours, readings }: Ramp): Series {
  return Array.from({ length: readings }, (_, index) => {
    const share = index / (readings - 1);
    const tempC = toCelsius(fahrenheit(fromF + (toF - fromF) * share));
    return { atS: seconds(share * hours * 3600), tempC };
  });
}

/** F = z/(r ln 10) · [10^((T2−150)/z) − 10^((T1−150)/z)], and kill is F/D. */
function killInClosedForm({ fromF, toF, hours }: Ramp): number {
  const [low, high] = [Math.max(Math.min(fromF, toF), 130), Math.max(fromF, toF)];
  const perMin = Math.abs(toF - fromF) / (hours * 60);
  const rise = 10 ** ((high - 150) / Z_F) - 10 ** ((low - 150) / Z_F);
  return ((Z_F / (perMin * Math.LN10)) * rise) / D150_MIN;
}

/** Hours from 135 °F to each stage, on a straight line. */
function coolingInClosedForm({ fromF, toF, hours }: Ramp): number[] {
  const perH = (fromF - toF) / hours;
  return [(135 - 70) / perH, (135 - 41) / perH];
}

const relative = (found: number, exact: number) => Math.abs(found - exact) / exact;

function errorsOf(ramp: Ramp, readings: Series): number[] {
  const { logs } = lethalityOf(readings, [tables['fsis-6.5-log']], { apartAtMostS });
  const kill = relative(logs, killInClosedForm(ramp));
  if (ramp.toF > ramp.fromF) return [kill];
  const [found] = coolingsOf(readings, cooling, { apartAtMostS });
  const took = found?.stages.map(({ tookS }) => tookS ?? (Number.NaN as Seconds)) ?? [];
  const exact = coolingInClosedForm(ramp);
  return [kill, ...exact.map((h, index) => relative((took[index] ?? Number.NaN) / 3600, h))];
}

/**
 * A million readings, through kill and through cooling; and over straight lines the worst relative
 * difference from the closed forms.
 */
export async function bench(): Promise<Record<string, unknown>> {
  const series = ramps.map((ramp) => ({ ramp, readings: readingsOf(ramp) }));
  const errors = series.map(({ ramp, readings }) => {
    const error = Math.max(...errorsOf(ramp, readings));
    console.log(
      `${ramp.fromF} to ${ramp.toF} °F, ${ramp.readings} readings: ${error.toExponential(1)}`,
    );
    return error;
  });
  const million = series.filter(({ ramp }) => ramp.readings === READINGS / 2);
  const began = performance.now();
  for (const { readings } of million) {
    lethalityOf(readings, [tables['fsis-6.5-log']], { apartAtMostS });
    coolingsOf(readings, cooling, { apartAtMostS });
  }
  const tookS = (performance.now() - began) / 1000;
  return {
    readings_per_s: Math.round(READINGS / tookS),
    max_rel_error: Math.max(...errors),
  };
}
