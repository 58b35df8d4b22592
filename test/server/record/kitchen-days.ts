import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { systemClock } from '../../../server/clock.ts';
import { createClosing } from '../../../server/closing.ts';
import { dayRules } from '../../../server/day-rules.ts';
import { openHub, type RunningDay } from '../../../server/hub/index.ts';
import { type ChainCheck, openRecord } from '../../../server/record/index.ts';
import type { ReportLine } from '../../../server/report.ts';
import { openSqliteLog, toBytes } from '../../../server/store/index.ts';
import type { DayState, Event, Fact, Intent } from '../../../shared/day/index.ts';
import { decide, EVENT_VERSION, emptyDay, fold } from '../../../shared/day/index.ts';
import type { CommandId, DayId, Instant, PersonId } from '../../../shared/kernel/index.ts';
import { addDays, after, celsius, kilograms, must, seconds } from '../../../shared/kernel/index.ts';
import { handsInOrder, plan } from '../../shared/day/demo.ts';

const { origin, pull } = plan.built;
export const firstDay = plan.built.day;
export const dayAfter = (n: number) => addDays(firstDay, n);
export const rosa = must(plan.kitchen.crew[0], 'somebody').id;

export function kitchenFolder() {
  const path = mkdtempSync(join(tmpdir(), 'coalface-record-'));
  return { path, remove: () => rmSync(path, { recursive: true }) };
}

/** A hub over a folder, with its record, to which facts can be told as they come. */
export async function openKitchen(path: string) {
  const closing = createClosing();
  const reports: ReportLine[] = [];
  const report = (line: ReportLine) => void reports.push(line);
  const log = openSqliteLog(join(path, 'log.sqlite'));
  const record = openRecord({ folder: path, log, report, closing });
  // In the days of the log, so that no time has to be caught up with.
  const clock = { ...systemClock(), now: () => origin };
  // Nobody looks at a wall here: no expected times are worked out.
  const refusal = { rule: 'no-plan' } as const;
  const still: RunningDay<DayState> = {
    apply: () => {},
    tick: () => false,
    show: () => ({ ok: false, refusal }),
    ifMoved: () => ({ ok: false, refusal }),
  };
  const rules = { ...dayRules, run: () => still };
  const parts = { log, rules, clock, epoch: randomUUID(), report };
  const hub = await openHub({ ...parts, start: record.start, witness: record.witness });
  closing.add(hub.close);
  const chain: ChainCheck = record.check(hub);
  closing.add(record.rest);
  let commands = hub.state.seq;
  /** Asks for something, as a person at the desk would. */
  const put = (intent: Intent) => {
    commands += 1;
    const id = `${hub.health.epoch}-${commands}` as CommandId;
    const at = hub.state.keptAt;
    return hub.put({
      ...{ id, personId: rosa, screenId: null, claimedAt: at, earliestAt: () => at },
      decide: (state) =>
        decide(state, { id, personId: rosa, screenId: null, tappedAt: at, ...intent }, at),
    });
  };
  return { hub, record, chain, reports, put, close: closing.run };
}

export type Kitchen = Awaited<ReturnType<typeof openKitchen>>;

type Days = { readonly closes?: boolean; readonly works?: number };

/**
 * Writes a log of so many days, each as a kitchen has it: its plan, a lot of each cut, its work,
 * and who closes it; the last is still open.
 */
export async function writeDays(
  path: string,
  count: number,
  { closes = true, works = 5 }: Days = {},
) {
  const log = openSqliteLog(join(path, 'log.sqlite'));
  const { epoch } = await log.claim('a-hub');
  let state = emptyDay();
  const entries: { commandId: CommandId; bytes: Uint8Array }[] = [];
  function keep(day: string, at: Instant, personId: PersonId | null, facts: readonly Fact[]) {
    for (const fact of facts) {
      const seq = state.seq + 1;
      const commandId = `command-${seq}` as CommandId;
      const head = { seq, version: EVENT_VERSION, day: day as DayId, at, keptAt: at } as const;
      const event: Event = { ...fact, ...head, commandId, personId, screenId: null };
      state = fold(state, event);
      entries.push({ commandId, bytes: toBytes(event) });
    }
  }
  for (let n = 0; n < count; n++) {
    const day = dayAfter(n);
    const at = (timeS: number) => after(origin, seconds(n * 86_400 + timeS));
    const ask = (timeS: number, intent: Intent) => {
      const head = { id: 'a-tap' as CommandId, personId: rosa, screenId: null };
      const decision = decide(state, { ...head, tappedAt: at(timeS), ...intent }, at(timeS));
      if (!decision.ok) throw new Error(JSON.stringify(decision));
      keep(day, at(timeS), rosa, decision.facts);
    };
    const ofDay = { ...plan, built: { ...plan.built, day } };
    keep(day, at(0), null, [{ kind: 'planAdopted', plan: ofDay }]);
    for (const { cut, pieces, weightKg } of pull) {
      const lot = {
        cut,
        pieces,
        weightKg: kilograms(weightKg),
        supplier: 'Elm "Best" Meats, Inc.',
      };
      const useBy = dayAfter(n + 5);
      ask(60, { kind: 'receive', ...lot, tempC: celsius(3), useBy, code: `E-${n}` });
    }
    const begun = handsInOrder.slice(0, works);
    keep(
      day,
      at(120),
      rosa,
      begun.map((task): Fact => ({ kind: 'taskStarted', task, hand: rosa })),
    );
    if (closes && n < count - 1) ask(60_000, { kind: 'closeDay' });
  }
  await log.append({ expectedSeq: 0, epoch, entries, answers: [] });
  await log.close();
}

/** The log with something done to it that no hub would do. */
export function behindItsBack(path: string, change: (db: Database.Database) => void) {
  const db = new Database(join(path, 'log.sqlite'));
  db.exec('drop trigger if exists entry_stays; drop trigger if exists entry_remains;');
  change(db);
  db.close();
}
