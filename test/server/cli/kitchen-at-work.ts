import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makePlan } from '../../../server/adopt.ts';
import type { Shell } from '../../../server/cli/command.ts';
import { runCommandLine } from '../../../server/cli/run.ts';
import { demoDay, demoFiles, demoLog } from '../../../server/demo/index.ts';
import { openSqliteLog, toBytes } from '../../../server/store/index.ts';
import {
  decide,
  EVENT_VERSION,
  type Event,
  emptyDay,
  type Fact,
  fold,
} from '../../../shared/day/index.ts';
import type { CommandId, DayId, Instant, PersonId } from '../../../shared/kernel/index.ts';
import { resolveLocal } from '../../../shared/kernel/index.ts';

/** Noon of an ordinary day: lunch is on, and the shoulders went in at night. */
export const noon = resolveLocal('2026-03-04', '12:00', 'America/Chicago').at;
export const today = '2026-03-04';

/** A folder with the invented kitchen's files, as a person keeps them. */
export function kitchenFolder() {
  const path = mkdtempSync(join(tmpdir(), 'coalface-cli-'));
  const { kitchen, catalogue, cookPlan } = demoFiles(noon, 'America/Chicago');
  mkdirSync(join(path, 'plans'));
  const write = (file: string, value: unknown) =>
    writeFileSync(join(path, file), typeof value === 'string' ? value : JSON.stringify(value));
  write('kitchen.json', kitchen);
  write('catalogue.json', catalogue);
  write(`plans/${today}.json`, cookPlan);
  const files = { kitchen, catalogue, cookPlan };
  return { path, files, write, remove: () => rmSync(path, { recursive: true }) };
}

/** Runs a command line as if typed in a folder at noon. */
export async function typed(folder: string, ...words: readonly string[]) {
  const said: string[] = [];
  const shell: Shell = { folder, now: () => noon, say: (text) => void said.push(text) };
  const { exit, complaints } = await runCommandLine(words, shell);
  return { exit, complaints, said: said.join('') };
}

/** The log of the invented crew's day up to noon, with the events that are in it. */
export async function logOfTheMorning(folder: string): Promise<Event[]> {
  const made = makePlan(demoDay(noon, 'America/Chicago'), 1);
  if (!made.ok) throw new Error('the demo has no plan');
  const { plan } = made;
  const day = plan.built.day as DayId;
  const events: Event[] = [];
  let state = emptyDay();
  function keep(fact: Fact, at: Instant, personId: PersonId | null) {
    const seq = events.length + 1;
    const commandId = `command-${seq}` as CommandId;
    const event: Event = {
      ...fact,
      ...{ seq, version: EVENT_VERSION, day, at, keptAt: at, commandId, personId, screenId: null },
    };
    events.push(event);
    state = fold(state, event);
  }
  keep({ kind: 'planAdopted', plan }, plan.built.origin, null);
  for (const { at, intent, personId } of demoLog(plan, { now: noon, seed: 1 })) {
    const id = 'a-tap' as CommandId;
    const decision = decide(state, { id, personId, screenId: null, tappedAt: at, ...intent }, at);
    if (decision.ok) for (const fact of decision.facts) keep(fact, at, personId);
  }
  const log = openSqliteLog(join(folder, 'log.sqlite'));
  await log.claim('a-hub');
  const entries = events.map((event) => ({ commandId: event.commandId, bytes: toBytes(event) }));
  await log.append({ expectedSeq: 0, epoch: 'a-hub', entries, answers: [] });
  await log.close();
  return events;
}
