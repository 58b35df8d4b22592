import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { makePlan } from '../../../server/adopt.ts';
import { demoDay } from '../../../server/demo/index.ts';
import { type EventLog, openSqliteLog, toBytes } from '../../../server/store/index.ts';
import {
  type AdoptedPlan,
  EVENT_VERSION,
  type Event,
  type Fact,
} from '../../../shared/day/index.ts';
import {
  addDays,
  after,
  type CommandId,
  celsius,
  type DayId,
  type LotId,
  must,
  resolveLocal,
  seconds,
} from '../../../shared/kernel/index.ts';

export type FilledLog = {
  readonly path: string;
  readonly entries: number;
  readonly lots: readonly LotId[];
  openLog(): EventLog;
};

/** A log of so many days with so many events each, all closed but the last. */
export async function fillLog(path: string, days: number, events: number): Promise<FilledLog> {
  mkdirSync(path);
  const file = join(path, 'log.sqlite');
  const noon = resolveLocal('2026-01-02', '12:00', 'America/Chicago').at;
  const made = makePlan(demoDay(noon, 'America/Chicago'), 1);
  if (!made.ok) throw new Error('the demo has no plan');
  const log = openSqliteLog(file);
  const { epoch } = await log.claim('a-hub');
  const lots: LotId[] = [];
  let seq = 0;
  for (let n = 0; n < days; n++) {
    const day = addDays(made.plan.built.day, n) as DayId;
    const facts = factsOf(made.plan, { day, events, closes: n < days - 1 });
    const { origin } = made.plan.built;
    const expectedSeq = seq;
    const entries = facts.map((fact, i) => {
      seq += 1;
      const at = after(origin, seconds(n * 86_400 + 30 * i));
      const commandId = `command-${seq}` as CommandId;
      const head = { seq, version: EVENT_VERSION, day, at, keptAt: at, commandId } as const;
      const event: Event = { ...fact, ...head, personId: null, screenId: null };
      if (event.kind === 'lotCame') lots.push(event.lot);
      return { commandId, bytes: toBytes(event) };
    });
    await log.append({ expectedSeq, epoch, entries, answers: [] });
  }
  await log.close();
  return { path, entries: seq, lots, openLog: () => openSqliteLog(file) };
}

type Asked = { readonly day: DayId; readonly events: number; readonly closes: boolean };

/** The plan, a lot of each cut, all its work, and what thermometers send for the rest. */
function factsOf(plan: AdoptedPlan, { day, events, closes }: Asked): Fact[] {
  const { pull, tasks } = plan.built;
  const byHand = [...plan.schedule.placements]
    .sort((a, b) => a.startS - b.startS || a.endS - b.endS)
    .map(({ activity }) => activity)
    .filter((id) => tasks.find((each) => each.id === id)?.work === 'hands');
  const came = pull.map(
    ({ cut, pieces, weightKg }, n): Fact => ({
      ...{ kind: 'lotCame', lot: `${day}-${n + 1}` as LotId, cut, pieces, weightKg },
      ...{ supplier: 'Elm Meats', tempC: celsius(3), useBy: addDays(day, 6), code: null },
    }),
  );
  const work = byHand.flatMap((task): Fact[] => [
    { kind: 'taskStarted', task, hand: null },
    { kind: 'taskFinished', task },
  ]);
  const own: Fact[] = [
    { kind: 'planAdopted', plan: { ...plan, built: { ...plan.built, day } } },
    ...came,
    ...work,
  ];
  const smoker = must(plan.kitchen.smokers[0], 'a smoker').id;
  const end: Fact[] = closes ? [{ kind: 'dayClosed', goesOn: [], left: [] }] : [];
  const rest = Math.max(0, events - own.length - end.length);
  const readings = Array.from(
    { length: rest },
    (_, n): Fact => ({
      kind: 'temperatureRead',
      where: { kind: 'air', smoker },
      tempC: celsius(115 + (n % 7)),
    }),
  );
  return [...own, ...readings, ...end];
}
