import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { systemClock } from '../../server/clock.ts';
import { createClosing } from '../../server/closing.ts';
import { dayRules } from '../../server/day-rules.ts';
import { openHub } from '../../server/hub/index.ts';
import { openRecord, printedDay, readArchive } from '../../server/record/index.ts';
import { must } from '../../shared/kernel/index.ts';
import { dayRecordPage } from '../../shared/paper/index.ts';
import { type FilledLog, fillLog } from './record/fill-log.ts';
import { quantile, rounded } from './taps.ts';

const WEEK = 7;
/** A month of a kitchen that is shut one day a week. */
const MONTH = 26;
const OPENINGS = 5;
const TRACES = 200;

/**
 * A log of a year: how long a hub takes to open it beside one of a week, a month's report on paper,
 * and the trace of a lot. Both logs end in a day that runs, with as much in it.
 * @param args how many days a year has, and how many events a day.
 */
export async function bench(args: string[]) {
  const [days, events] = [Number(args[0] ?? 300), Number(args[1] ?? 2_000)];
  const folder = mkdtempSync(join(tmpdir(), 'coalface-bench-'));
  try {
    const week = await fillLog(join(folder, 'week'), Math.min(WEEK, days), events);
    const year = await fillLog(join(folder, 'year'), days, events);
    // Opened once, so that the days that are over are sealed, as a hub does when each is.
    const whole = [await opening(week), await opening(year)];
    const times = { week: [] as number[], year: [] as number[] };
    for (let n = 0; n < OPENINGS; n++) {
      times.week.push(await opening(week));
      times.year.push(await opening(year));
    }
    const open = { week_ms: quantile(times.week, 0.5), year_ms: quantile(times.year, 0.5) };
    const [week_whole_ms = 0, year_whole_ms = 0] = whole;
    console.log(
      JSON.stringify({
        days,
        events,
        entries: year.entries,
        ...open,
        week_whole_ms,
        year_whole_ms,
      }),
    );
    return {
      open_ratio: rounded(open.year_ms / open.week_ms),
      ...(await ofArchive(year)),
      peak_mb: Math.round(process.resourceUsage().maxRSS / 1024),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Milliseconds until a hub has opened the log and could answer; it is closed again. */
async function opening({ path, openLog }: FilledLog): Promise<number> {
  const closing = createClosing();
  const report = () => {};
  const before = performance.now();
  const log = openLog();
  const record = openRecord({ folder: path, log, report, closing });
  const { start, witness } = record;
  const parts = { log, rules: dayRules, clock: systemClock(), epoch: randomUUID(), report };
  const hub = await openHub({ ...parts, start, witness });
  const ms = performance.now() - before;
  await record.rest();
  closing.add(hub.close);
  await closing.run();
  return ms;
}

async function ofArchive({ path, lots }: FilledLog) {
  const begin = performance.now();
  const { archive, close } = await readArchive(path);
  const month = archive.days().slice(-MONTH);
  const told = archive.between(must(month[0], 'a day'), must(month.at(-1), 'a day'));
  const say = {
    language: 'en',
    zone: 'UTC',
    clock: '24 h',
    temperature: '°C',
    weight: 'kg',
  } as const;
  const page = dayRecordPage(told.map(printedDay), say);
  const report_s = (performance.now() - begin) / 1000;
  const traces = Array.from({ length: TRACES }, (_, n) => {
    const lot = must(lots[Math.floor((n * lots.length) / TRACES)], 'a lot');
    const from = performance.now();
    must(archive.trace(lot), lot);
    return performance.now() - from;
  });
  await close();
  console.log(JSON.stringify({ report_days: told.length, report_bytes: page.length }));
  return { report_s: rounded(report_s), trace_ms: rounded(quantile(traces, 0.99)) };
}
