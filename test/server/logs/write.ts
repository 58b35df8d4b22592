import { adoption, makePlan } from '../../../server/adopt.ts';
import { manualClock, systemClock } from '../../../server/clock.ts';
import { dayRules } from '../../../server/day-rules.ts';
import { demoFiles } from '../../../server/demo/index.ts';
import { openHub } from '../../../server/hub/index.ts';
import { playDemo } from '../../../server/play-demo.ts';
import { memoryDisk, openMemoryLog } from '../../../server/store/index.ts';
import type { Intent } from '../../../shared/day/index.ts';
import { openLive } from '../../../shared/day/index.ts';
import {
  type CommandId,
  celsius,
  instant,
  must,
  type PersonId,
  type ScreenId,
  type SlotId,
  seconds,
} from '../../../shared/kernel/index.ts';
import { readPlanFiles } from '../../../shared/plan/index.ts';
import { isWork, viewOf } from '../../../shared/view/index.ts';
import { writeSampleLog } from './sample-log.ts';

// Run once for a version that is released: `npx tsx test/server/logs/write.ts 1`. It keeps a small
// day with every kind of event in it.

const NOON = instant(Date.UTC(2026, 10, 25, 18));
const clock = manualClock(NOON);
const disk = memoryDisk();
const hub = await openHub({
  log: openMemoryLog(disk),
  rules: dayRules,
  clock: { ...clock, after: systemClock().after },
  epoch: 'then',
  report: (line) => {
    throw new Error(JSON.stringify(line));
  },
});

const { cookPlan, ...files } = demoFiles(NOON, 'America/Chicago');
const services = cookPlan.services.slice(1).map((service) => ({
  ...service,
  dishes: service.dishes.slice(0, 1).map((dish) => ({
    ...dish,
    sales: { by: 'shape', portions: 24, shape: 'early' },
  })),
}));
const read = readPlanFiles({ ...files, cookPlan: { ...cookPlan, services } });
const made = makePlan(must(read.ok ? read.value : null, 'sound files'), 1);
const plan = must(made.ok ? made.plan : null, 'a plan');
await hub.bring(adoption(plan, plan.built.origin));
await playDemo(hub, plan, NOON);

let commands = 0;
async function tap(intent: Intent) {
  clock.advance(60_000);
  commands += 1;
  const head = {
    id: `sample-${commands}` as CommandId,
    personId: null,
    screenId: 'wall-1' as ScreenId,
  };
  const answer = await hub.command({ ...head, ...intent, tappedAt: clock.now() });
  if (!answer.ok) throw new Error(`${intent.kind}: ${JSON.stringify(answer.refusal)}`);
}

const station = must(plan.kitchen.stations[0], 'a station').id;
const view = viewOf(openLive(hub.state, clock.now()), { kind: 'station', station });
const ready = must(
  isWork(view) ? view.tasks.find(({ state }) => state === 'ready') : undefined,
  'a task that may start',
);
const task = ready.id;
const stay = must(
  plan.built.tasks.find(({ work }) => work === 'place'),
  'a load',
).id;
const smoker = must(plan.kitchen.smokers[0], 'a smoker').id;
const hand = must(
  plan.kitchen.crew.find(({ trained }) => trained.length > 0),
  'a hand',
).id as PersonId;

await tap({ kind: 'giveTo', task, hand });
await tap({ kind: 'start', task });
await tap({ kind: 'takeBack', task });
await tap({ kind: 'start', task });
await tap({ kind: 'count', task, done: 1 });
await tap({ kind: 'late', task, byS: seconds(300) });
await tap({ kind: 'needHelp', task });
await tap({ kind: 'helpCame', task });
await tap({ kind: 'finish', task });
await tap({ kind: 'takeBack', task });
await tap({ kind: 'reading', where: { kind: 'air', smoker }, tempC: celsius(107) });
await tap({ kind: 'note', text: 'oak is short', task: null });
const free = must(
  plan.kitchen.smokers.flatMap(({ racks }) => racks).find(({ slot }) => canMove(slot)),
  'a free rack',
);
const moves = [{ stay, need: 0, to: free.slot }];
await tap({ kind: 'moveSlots', moves, basedOnSeq: hub.state.seq });
await hub.close();
writeSampleLog(Number(process.argv[2]), disk.entries());

function canMove(to: SlotId): boolean {
  const question = { kind: 'ifMoved', stay, need: 0, to } as const;
  return dayRules.run(hub.state, clock.now()).ifMoved(question, clock.now()).ok;
}
