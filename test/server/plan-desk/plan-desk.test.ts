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
import type { Entitled } from '../../../server/who/index.ts';
import type { DayState } from '../../../shared/day/index.ts';
import {
  type CommandId,
  instant,
  must,
  type PersonId,
  type ScreenId,
} from '../../../shared/kernel/index.ts';
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
  await open('e1');
  await createPlanning(hub, folder).look(now());
  await startFirst('lunch-ribs');
});
afterAll(async () => {
  await drafts.close();
  await hub.close();
  rmSync(folder, { recursive: true });
});

const disk = memoryDisk();

/** Starts the hub on what its log has. */
async function open(epoch: string) {
  hub = await openHub({
    log: openMemoryLog(disk),
    rules: dayRules,
    clock: systemClock(),
    epoch,
    report: (line) => {
      throw new Error(line.what);
    },
  });
  desk = createPlanDesk({ hub, folder, drafts, now });
}

describe('the day on paper', () => {
  it('has a sheet for each station of the day that runs, in the language that is asked for', () => {
    const plan = must(hub.state.plan, 'a plan');
    for (const [language, of] of [
      ['en', (station: { en: string }) => station.en],
      ['es', (station: { en: string; es?: string }) => station.es ?? station.en],
    ] as const) {
      const sheets = desk.paper(language);
      if ('refusal' in sheets) throw new Error(sheets.refusal.rule);
      expect(sheets.name).toBe(`coalface-${plan.built.day}.html`);
      for (const { name } of plan.kitchen.stations) expect(sheets.text).toContain(of(name));
    }
  });
});

const nobody = { personId: null, screenId: null } as const;
const office: Entitled = {
  personId: 'ines' as PersonId,
  screenId: 'office' as ScreenId,
  caller: 'office',
  whyNot: () => null,
};

/** Somebody begins the first thing that hands do to such a batch. */
async function startFirst(batchIs: string) {
  const { tasks } = running().built;
  const first = must(
    tasks.find(({ batch, work }) => batch.startsWith(batchIs) && work === 'hands'),
    'a first task',
  );
  const id = `start ${batchIs}` as CommandId;
  const head = { ...nobody, id, tappedAt: now() };
  expect(await hub.command({ ...head, kind: 'start', task: first.id })).toMatchObject({
    ok: true,
  });
}

/** The plan without a dish of a service. */
const without = (service: string, dish: string): CookPlan => ({
  ...running().cookPlan,
  services: running().cookPlan.services.map((each) => ({
    ...each,
    dishes: each.dishes.filter((its) => each.id !== service || its.dish !== dish),
  })),
});

const running = () => must(hub.state.plan, 'a plan');
function slawBy(portions: number): CookPlan {
  const { cookPlan, built } = running();
  const edit = { kind: 'portions', service: 'dinner', dish: 'slaw', portions } as const;
  return must(edited(cookPlan, edit, built), 'the edited plan');
}
const onDisk = (): CookPlan => {
  const file = join(folder, `plans/${running().built.day}.json`);
  const { $schema: _link, ...plan } = JSON.parse(readFileSync(file, 'utf8'));
  return plan;
};

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
    const tried = await desk.try(office, slawBy(80), 'en');
    expect(tried).toMatchObject({ fits: true });
    expect(tried.lines.join(' ')).toMatch(/Planned anew: .*61 → 85 portions/);
    expect(running().version).toBe(1);
    expect(onDisk()).toEqual(before);
  });

  it('says what does not fit, in sentences, and keeps nothing of it', async () => {
    const taken = await desk.take(office, without('lunch', 'ribs'), 'es');
    expect(taken).toMatchObject({ fits: false, lines: [expect.stringContaining('ya empezó')] });
    expect(await desk.take(office, { day: 'soon' }, 'en')).toMatchObject({ fits: false });
    expect(running().version).toBe(1);
  });

  it('is taken as the next version, written whole, and can be taken back', async () => {
    const before = running().cookPlan;
    const plan = slawBy(80);
    expect(await desk.take(office, plan, 'en')).toMatchObject({ fits: true, taken: true });
    expect(running()).toMatchObject({ version: 2, cookPlan: plan });
    expect(onDisk()).toEqual(plan);
    expect(await desk.undo(office, 'en')).toMatchObject({ fits: true, taken: true });
    expect(running()).toMatchObject({ version: 3, cookPlan: before });
    expect(readdirSync(join(folder, 'plans'))).toHaveLength(1);
    expect([...hub.state.tasks.values()].filter(({ started }) => started)).toHaveLength(1);
    const by = { personId: 'ines', screenId: 'office' };
    expect(hub.state.story.slice(-2)).toMatchObject([
      { kind: 'planAdopted', planVersion: 2, ...by },
      { kind: 'planAdopted', planVersion: 3, takesBack: 2, ...by },
    ]);
    expect(desk.show(null)).toMatchObject({ canUndo: false });
    expect(await desk.undo(office, 'en')).toEqual({ refusal: { rule: 'nothing-to-undo' } });
  });

  it('is not taken from who may no longer change it by the time it is worked out', async () => {
    const before = onDisk();
    const revoked: Entitled = { ...office, whyNot: () => ({ rule: 'screen-revoked' }) };
    const taken = await desk.take(revoked, slawBy(80), 'en');
    expect(taken).toEqual({ refusal: { rule: 'screen-revoked' } });
    expect(running().version).toBe(3);
    expect(onDisk()).toEqual(before);
  });

  it('can be taken back after the hub was started again', async () => {
    const before = running().cookPlan;
    await desk.take(office, slawBy(80), 'en');
    await hub.close();
    await open('e2');
    expect(running().version).toBe(4);
    expect(desk.show(null)).toMatchObject({ canUndo: true });
    expect(await desk.undo(office, 'en')).toMatchObject({ taken: true });
    expect(running()).toMatchObject({ version: 5, cookPlan: before });
    expect(onDisk()).toEqual(before);
  });

  it('answers only the latest of what is typed', async () => {
    const portions = [70, 75, 80];
    const tried = await Promise.all(portions.map((each) => desk.try(office, slawBy(each), 'en')));
    expect(tried.map(({ stale }) => stale ?? false)).toEqual([false, true, false]);
    expect(tried[2]?.lines.join(' ')).toMatch(/61 → 85 portions/);
  });

  it('can be copied to another day without touching the one that runs', async () => {
    const copy = { ...must(running().cookPlan, 'a plan'), day: '2020-01-04' as CookPlan['day'] };
    // Nobody of the demo's crew is in on that day.
    expect(await desk.take(office, copy, 'en')).toMatchObject({ fits: false });
    expect(running().built.day).not.toBe('2020-01-04');
  });

  it('betters what is planned anew, and is taken as it was shown', async () => {
    const plan = slawBy(80);
    const first = await desk.better(office, plan, 'en', 60);
    expect(first).toMatchObject({ fits: true, better: { steps: 60 } });
    expect(first.better?.line).toMatch(/At most .* better is possible\.|Proven best/);
    expect(await desk.better(office, plan, 'en', 60)).toEqual(first);
    expect(await desk.take(office, plan, 'en', 60)).toMatchObject({ ...first, taken: true });
    expect(running()).toMatchObject({ engine: 'improving 1', cookPlan: plan });
    expect(await desk.undo(office, 'en')).toMatchObject({ taken: true });
    expect(running().engine).toBe('constructive 1');
  });

  it('says which few things cannot all be of what does not fit', async () => {
    const { cookPlan, built } = running();
    const edit = { kind: 'portions', service: 'dinner', dish: 'ribs', portions: 200 } as const;
    const ribs = must(edited(cookPlan, edit, built), 'the edited plan');
    expect(await desk.try(office, ribs, 'en')).toMatchObject({ fits: false });
    const { conflict } = await desk.whatConflicts(office, ribs, 'en');
    const { demands, cannot } = must(conflict, 'what conflicts');
    expect(cannot).toMatch(/cannot all be kept|No plan was found that keeps/);
    expect(demands.length).toBeLessThanOrEqual(12);
    expect(demands.join()).toContain('Spare ribs · Dinner');
    expect(await desk.whatConflicts(office, cookPlan, 'en')).toEqual({ conflict: null });
  });

  it('is not taken back under what has begun since, and says so', async () => {
    const { cookPlan } = running();
    expect(await desk.take(office, without('dinner', 'slaw'), 'en')).toMatchObject({ taken: true });
    expect(await desk.take(office, cookPlan, 'en')).toMatchObject({ taken: true });
    const { version } = running();
    await startFirst('dinner-slaw');
    const undone = await desk.undo(office, 'en');
    expect(undone).toMatchObject({
      fits: false,
      lines: [expect.stringMatching(/^Slaw · Dinner.* has begun, .*: leave it in the plan/)],
    });
    expect(running()).toMatchObject({ version, cookPlan });
    expect(desk.show(null)).toMatchObject({ canUndo: true });
  });
});
