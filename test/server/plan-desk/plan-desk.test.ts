import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { systemClock } from '../../../server/clock.ts';
import { dayRules } from '../../../server/day-rules.ts';
import { demoFiles } from '../../../server/demo/index.ts';
import { furnish } from '../../../server/folder/furnish.ts';
import { type Hub, openHub } from '../../../server/hub/index.ts';
import { createDrafts, createPlanDesk, type PlanDesk } from '../../../server/plan-desk/index.ts';
import { createPlanning } from '../../../server/planning.ts';
import { memoryDisk, openMemoryLog } from '../../../server/store/index.ts';
import type { DayState } from '../../../shared/day/index.ts';
import { type CommandId, instant, must } from '../../../shared/kernel/index.ts';
import { type CookPlan, edited } from '../../../shared/plan/index.ts';

let folder: string;
let hub: Hub<DayState>;
let desk: PlanDesk;
const drafts = createDrafts();
const now = () => instant(Date.now());
const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-plan-desk-'));
  furnish(folder, () => demoFiles(now(), zone));
  hub = await openHub({
    log: openMemoryLog(memoryDisk()),
    rules: dayRules,
    clock: systemClock(),
    epoch: 'e1',
    report: (line) => {
      throw new Error(line.what);
    },
  });
  await createPlanning(hub, folder).look(now());
  desk = createPlanDesk({ hub, folder, drafts, now });
  await startLunch();
});
afterAll(async () => {
  await drafts.close();
  await hub.close();
  rmSync(folder, { recursive: true });
});

async function startLunch() {
  const head = { personId: null, screenId: null, tappedAt: now() };
  const { tasks } = must(hub.state.plan, 'a plan').built;
  const first = must(
    tasks.find(({ batch, work }) => batch.startsWith('lunch-ribs') && work === 'hands'),
    'a first task',
  );
  const id = 'start-1' as CommandId;
  expect(await hub.command({ ...head, id, kind: 'start', task: first.id })).toMatchObject({
    ok: true,
  });
}

const running = () => must(hub.state.plan, 'a plan');
function slawBy(portions: number): CookPlan {
  const { cookPlan, built } = running();
  const edit = { kind: 'portions', service: 'dinner', dish: 'slaw', portions } as const;
  return must(edited(cookPlan, edit, built), 'the edited plan');
}
const onDisk = (): CookPlan =>
  JSON.parse(readFileSync(join(folder, `plans/${running().built.day}.json`), 'utf8'));

describe('the plan at the desk', () => {
  it('is shown with all that it can be made of, and the reason beside each choice', () => {
    const { plan, menu, runs } = must(desk.show(null), 'a plan');
    expect(plan?.day).toBe(runs);
    const options = menu.dishes.flatMap(({ choices }) => choices.flatMap((each) => each.options));
    expect(options.length).toBeGreaterThan(3);
    for (const { reason } of options) expect(reason.en).not.toBe('');
  });

  it('says what a change would do, and keeps nothing of it', async () => {
    const before = onDisk();
    const tried = await desk.try('desk', slawBy(80), 'en');
    expect(tried).toMatchObject({ fits: true });
    expect(tried.lines.join(' ')).toMatch(/Planned anew: .*61 → 85 portions/);
    expect(running().version).toBe(1);
    expect(onDisk()).toEqual(before);
  });

  it('says what does not fit, in sentences, and keeps nothing of it', async () => {
    const { cookPlan } = running();
    const without = {
      ...cookPlan,
      services: cookPlan.services.map((service) => ({
        ...service,
        dishes: service.dishes.filter(({ dish }) => service.id !== 'lunch' || dish !== 'ribs'),
      })),
    };
    const taken = await desk.take('desk', without, 'es');
    expect(taken).toMatchObject({ fits: false, lines: [expect.stringContaining('ya empezó')] });
    expect(await desk.take('desk', { day: 'soon' }, 'en')).toMatchObject({ fits: false });
    expect(running().version).toBe(1);
  });

  it('is taken as the next version, written whole, and can be taken back', async () => {
    const before = running().cookPlan;
    const plan = slawBy(80);
    expect(await desk.take('desk', plan, 'en')).toMatchObject({ fits: true, taken: true });
    expect(running()).toMatchObject({ version: 2, cookPlan: plan });
    expect(onDisk()).toEqual(plan);
    expect(await desk.undo('desk', 'en')).toMatchObject({ fits: true, taken: true });
    expect(running()).toMatchObject({ version: 3, cookPlan: before });
    expect(readdirSync(join(folder, 'plans'))).toHaveLength(1);
    expect([...hub.state.tasks.values()].filter(({ started }) => started)).toHaveLength(1);
  });

  it('answers only the latest of what is typed', async () => {
    const portions = [70, 75, 80];
    const tried = await Promise.all(portions.map((each) => desk.try('desk', slawBy(each), 'en')));
    expect(tried.map(({ stale }) => stale ?? false)).toEqual([false, true, false]);
    expect(tried[2]?.lines.join(' ')).toMatch(/61 → 85 portions/);
  });

  it('can be copied to another day without touching the one that runs', async () => {
    const copy = { ...must(running().cookPlan, 'a plan'), day: '2020-01-04' as CookPlan['day'] };
    const taken = await desk.take('desk', copy, 'en');
    // Nobody of the demo's crew is in on that day: whichever it is, the running day stays.
    expect(taken.fits).toBe(taken.taken ?? false);
    expect(running().built.day).not.toBe('2020-01-04');
  });
});
