import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { systemClock } from '../../server/clock.ts';
import { dayRules } from '../../server/day-rules.ts';
import { demoFiles } from '../../server/demo/index.ts';
import { furnish } from '../../server/folder/furnish.ts';
import { readFolder } from '../../server/folder/index.ts';
import { type Hub, openHub } from '../../server/hub/index.ts';
import { createPlanning, type Planning } from '../../server/planning.ts';
import { memoryDisk, openMemoryLog } from '../../server/store/index.ts';
import { carryOf, type DayState, dayFrom, heldTo, openLive } from '../../shared/day/index.ts';
import {
  addDays,
  type CommandId,
  hours,
  type Instant,
  instant,
  must,
  type TaskId,
  weekdays,
} from '../../shared/kernel/index.ts';
import { evidenceOf } from '../../shared/record/index.ts';
import { foodCode, rowsOf } from '../../shared/safety/index.ts';
import { viewOf } from '../../shared/view/index.ts';
import { sayLogged } from '../../shared/words/index.ts';

let folder: string;
let hub: Hub<DayState>;
let planning: Planning;
let planFile: string;
const now = () => instant(Date.now());
const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
const daysOn = (days: number): Instant => instant(now() + days * hours(24) * 1000);

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-planning-'));
  furnish(folder, () => demoFiles(now(), zone));
  planFile = join(folder, `plans/${readFolder(folder).plans[0]?.day}.json`);
  hub = await openHub({
    log: openMemoryLog(memoryDisk()),
    rules: dayRules,
    clock: systemClock(),
    epoch: 'e1',
    report: (line) => {
      throw new Error(line.what);
    },
  });
  planning = createPlanning(hub, folder);
});
afterEach(async () => {
  await hub.close();
  rmSync(folder, { recursive: true });
});

type DishJson = { dish: string; sales: { portions: number } };
type PlanJson = { day: string; services: { id: string; dishes: DishJson[] }[] };
const dishOf = (plan: PlanJson, dish: string) =>
  must(
    plan.services[1]?.dishes.find((each) => each.dish === dish),
    dish,
  );
const portionsOf = (plan: PlanJson) => must(plan.services[1]?.dishes[0], 'a dish').sales;

function edit(change: (plan: PlanJson) => void, file = planFile) {
  const plan = JSON.parse(readFileSync(planFile, 'utf8'));
  change(plan);
  writeFileSync(file, JSON.stringify(plan));
}

async function start() {
  const plan = must(hub.state.plan, 'a plan');
  const first = [...plan.schedule.placements]
    .sort((a, b) => a.startS - b.startS)
    .find(({ activity }) =>
      plan.built.tasks.some(({ id, work }) => id === activity && work === 'hands'),
    );
  const head = { personId: null, screenId: null, tappedAt: now() };
  const task = must(first, 'a first task').activity;
  const answer = await hub.command({ ...head, id: 'start-1' as CommandId, kind: 'start', task });
  expect(answer).toMatchObject({ ok: true });
  return task;
}

function placed(task: TaskId) {
  const { placements } = must(hub.state.plan, 'a plan').schedule;
  return must(
    placements.find(({ activity }) => activity === task),
    task,
  );
}

describe('a plan that is due', () => {
  it('is taken up once, with all that it was made from', async () => {
    expect(await planning.look(now())).toEqual({ what: 'adopted', lines: [] });
    expect(hub.state.plan).toMatchObject({ version: 1, cookPlan: { services: [{}, {}] } });
    expect(hub.state.plan?.hashes.kitchen).toMatch(/^[0-9a-f]{64}$/);
    expect(await planning.look(now())).toEqual({ what: 'as-before', lines: [] });
    expect(hub.health.seq).toBe(1);
  });

  it('gives way to its edit while nothing was begun', async () => {
    await planning.look(now());
    edit((plan) => {
      portionsOf(plan).portions += 4;
    });
    expect((await planning.look(now())).what).toBe('adopted');
    expect(hub.state.plan?.version).toBe(2);
  });

  it('gives way to its edit while it runs, and what was begun stands', async () => {
    await planning.look(now());
    const task = await start();
    const was = placed(task);
    edit((plan) => {
      dishOf(plan, 'slaw').sales.portions += 20;
    });
    expect(await planning.look(now())).toEqual({ what: 'adopted', lines: [] });
    expect(hub.state.plan?.version).toBe(2);
    expect(hub.state.tasks.get(task)?.started).not.toBeNull();
    expect(placed(task)).toMatchObject({ mode: was.mode, uses: was.uses });
  });

  it('keeps a dish that has begun, and says why its edit cannot be', async () => {
    await planning.look(now());
    const task = await start();
    const batch = must(hub.state.plan, 'a plan').built.tasks.find(({ id }) => id === task)?.batch;
    edit((plan) => {
      for (const service of plan.services) {
        service.dishes = service.dishes.filter(({ dish }) => batch !== `${service.id}-${dish}-1`);
      }
    });
    const { what, lines } = await planning.look(now());
    expect(what).toBe('impossible');
    expect(lines).toMatchObject([expect.stringContaining('has begun')]);
    expect((await planning.look(now())).lines).toEqual([]);
    expect(hub.state.plan?.version).toBe(1);
  });

  it('is not dropped when its file goes, once its work has begun', async () => {
    await planning.look(now());
    await start();
    const next = addDays(must(hub.state.plan, 'a plan').built.day, 1);
    edit(
      (plan) => {
        plan.day = next;
      },
      join(folder, `plans/${next}.json`),
    );
    rmSync(planFile);
    expect((await planning.look(now())).what).toBe('as-before');
  });

  it('gives way to the next day’s when its own is over, begun with nothing done', async () => {
    haveEverybodyInDaily();
    await planning.look(now());
    await start();
    const { day } = must(hub.state.plan, 'a plan').built;
    const next = addDays(day, 1);
    edit(
      (plan) => {
        plan.day = next;
      },
      join(folder, `plans/${next}.json`),
    );
    expect((await planning.look(now())).what).toBe('as-before');
    expect((await planning.look(daysOn(0.75))).what).toBe('adopted');
    expect(hub.state).toMatchObject({ day: next, plan: { version: 1 } });
    expect(hub.state.tasks.size).toBe(0);
  });
});

/** The demo's crew is on its own day alone. */
function haveEverybodyInDaily() {
  const file = join(folder, 'kitchen.json');
  const kitchen = JSON.parse(readFileSync(file, 'utf8'));
  for (const { shifts } of kitchen.crew) for (const shift of shifts) shift.on = weekdays;
  writeFileSync(file, JSON.stringify(kitchen));
}

describe('a broken file', () => {
  it('leaves the running day untouched, and all that is wrong is said once', async () => {
    await planning.look(now());
    edit((plan) => {
      portionsOf(plan).portions = -1;
      plan.day = 'soon';
    });
    const { what, lines } = await planning.look(now());
    expect(what).toBe('broken');
    expect(lines).toHaveLength(2);
    expect((await planning.look(now())).lines).toEqual([]);
    expect(hub.health.seq).toBe(1);
  });

  it('is forgotten when it is mended', async () => {
    edit((plan) => {
      plan.day = 'soon';
    });
    expect((await planning.look(now())).what).toBe('broken');
    const day = must(/([^/]+)\.json$/.exec(planFile)?.[1], 'a day');
    edit((plan) => {
      plan.day = day;
    });
    expect((await planning.look(now())).what).toBe('adopted');
  });

  it('is said to be mended where it is again what it was before', async () => {
    const before = readFileSync(planFile, 'utf8');
    await planning.look(now());
    writeFileSync(planFile, before.replace(/}\s*$/, ',}'));
    expect((await planning.look(now())).what).toBe('broken');
    writeFileSync(planFile, before);
    const mended = { what: 'as-before', lines: ['What was wrong is mended.'] };
    expect(await planning.look(now())).toEqual(mended);
    expect((await planning.look(now())).lines).toEqual([]);
  });
});

describe('a plan that cannot be', () => {
  it('is refused in sentences with amounts, and the running day stays', async () => {
    await planning.look(now());
    edit((plan) => {
      portionsOf(plan).portions = 2_000;
    });
    const { what, lines } = await planning.look(now());
    expect(what).toBe('impossible');
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) expect(line).toMatch(/\d/);
    expect(hub.state.plan?.version).toBe(1);
  });
});

describe('other limits than before', () => {
  const kitchenFile = () => join(folder, 'kitchen.json');
  const [row] = rowsOf(foodCode, 'hot-hold');
  const change = {
    limits: 'food-code',
    why: 'the county asks for 140 °F, letter of 3 March',
    by: 'Marta Ruiz',
    rows: [{ ...row, limit: { atLeast: '140 °F' }, source: 'our county' }],
  };
  const sayWhy = (...changes: object[]) =>
    writeFileSync(join(folder, 'limits.json'), JSON.stringify({ changes }));
  const nameProfile = (limits: string) => {
    const kitchen = JSON.parse(readFileSync(kitchenFile(), 'utf8'));
    writeFileSync(kitchenFile(), JSON.stringify({ ...kitchen, limits }));
  };

  it('are refused where nothing says why, with what was and where to say it', async () => {
    await planning.look(now());
    nameProfile('celsius');
    const { what, lines } = await planning.look(now());
    expect(what).toBe('impossible');
    expect(lines).toEqual([
      'kitchen.json: the limits were food-code 1 on the last day and would be celsius 1: say why ' +
        'and who decided it in a new entry of limits.json, as docs/safety.md shows.',
    ]);
    expect(hub.state.plan).toMatchObject({ version: 1, limits: { id: 'food-code' } });
  });

  it('are refused on the next day too, also by a hub opened from what was left', async () => {
    haveEverybodyInDaily();
    await planning.look(now());
    const { day } = must(hub.state.plan, 'a plan').built;
    const next = addDays(day, 1);
    edit(
      (plan) => {
        plan.day = next;
      },
      join(folder, `plans/${next}.json`),
    );
    nameProfile('celsius');
    const { what, lines } = await planning.look(daysOn(0.75));
    expect([what, lines[0]]).toEqual(['impossible', expect.stringContaining('limits.json')]);
    expect(heldTo(dayFrom(JSON.parse(JSON.stringify(carryOf(hub.state)))))).toEqual(
      heldTo(hub.state),
    );
  });

  it('are taken up with their reason, which is an event with both versions', async () => {
    await planning.look(now());
    sayWhy(change);
    const { what, lines } = await planning.look(now());
    expect([what, lines]).toEqual(['adopted', []]);
    expect(hub.state.plan?.limits).toMatchObject({ id: 'food-code', version: 2 });
    const told = must(hub.state.story.at(-1), 'an event');
    expect(told).toMatchObject({
      kind: 'limitsChanged',
      from: { id: 'food-code', version: 1 },
      to: { id: 'food-code', version: 2 },
      changes: [{ why: change.why, by: change.by }],
    });
    const log = viewOf(openLive(hub.state, now()), { kind: 'desk' });
    const [line] = 'log' in log ? log.log : [];
    const say = { language: 'en', zone, clock: '24 h', temperature: '°F', weight: 'lb' } as const;
    expect(line && sayLogged(line.said, say)).toBe(
      `limits changed, food-code 1 to food-code 2: ${change.why} (Marta Ruiz)`,
    );
    const record = must(evidenceOf(hub.state), 'a record');
    expect(record.limits).toMatchObject([{ to: { version: 2 }, changes: [{ by: change.by }] }]);
  });

  it('are told to the first day as well, where they are not as delivered', async () => {
    sayWhy(change);
    await planning.look(now());
    expect(hub.state.story.map(({ kind }) => kind)).toEqual(['planAdopted', 'limitsChanged']);
  });

  it('are refused where an entry is gone that was kept, or leads elsewhere', async () => {
    sayWhy(change);
    await planning.look(now());
    rmSync(join(folder, 'limits.json'));
    expect((await planning.look(now())).lines).toEqual([
      expect.stringMatching(/^limits\.json: an entry that led/),
    ]);
    sayWhy(change, { ...change, limits: 'celsius', rows: [] });
    expect((await planning.look(now())).lines).toEqual([
      expect.stringMatching(/^limits\.json: its last entry/),
    ]);
    expect(hub.state.plan).toMatchObject({ version: 1, limits: { version: 2 } });
  });

  it('leave a broken file of reasons to be mended, and the day as it is', async () => {
    await planning.look(now());
    sayWhy({ ...change, why: '' });
    const { what, lines } = await planning.look(now());
    expect([what, lines]).toEqual([
      'broken',
      [expect.stringMatching(/^limits\.json: changes\[0\]\.why: /)],
    ]);
  });
});

it('says of a plan whose day has gone by that it is over', async () => {
  const later = await planning.look(daysOn(30));
  expect(later.what).toBe('nothing-due');
  expect(later.lines).toEqual([
    expect.stringMatching(/^The last plan, of \d{4}-\d\d-\d\d, is over/),
  ]);
  expect(hub.state.plan).toBeNull();
});

it('finds nothing due in a folder without plans', async () => {
  rmSync(planFile);
  expect(await planning.look(now())).toEqual({ what: 'nothing-due', lines: [] });
});
