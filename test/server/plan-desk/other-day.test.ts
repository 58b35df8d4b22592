import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { planOn } from '../../../client/desk/new-in-plan.ts';
import { makePlan } from '../../../server/adopt.ts';
import { systemClock } from '../../../server/clock.ts';
import { dayRules } from '../../../server/day-rules.ts';
import { furnish } from '../../../server/folder/furnish.ts';
import { readFolder } from '../../../server/folder/index.ts';
import { type Hub, openHub } from '../../../server/hub/index.ts';
import { createDrafts, createPlanDesk, type PlanDesk } from '../../../server/plan-desk/index.ts';
import { createPlanning } from '../../../server/planning.ts';
import { memoryDisk, openMemoryLog } from '../../../server/store/index.ts';
import type { Entitled } from '../../../server/who/index.ts';
import type { DayState } from '../../../shared/day/index.ts';
import {
  type CommandId,
  must,
  type PersonId,
  resolveLocal,
  type ScreenId,
} from '../../../shared/kernel/index.ts';
import type { CookPlan } from '../../../shared/plan/index.ts';
import { filesWith, kitchenEveryDay, plain } from '../../shared/plan/three-elms.ts';

const TODAY = plain.cookPlan.day;
const TOMORROW = '2026-11-26';
const STEPS = 120;
const files = filesWith({ kitchen: kitchenEveryDay });
const at = (day: string, time: string) =>
  resolveLocal(day as CookPlan['day'], time, files.kitchen.zone).at;
const noon = at(TODAY, '12:00');

let folder: string;
let now = noon;
let hub: Hub<DayState>;
let desk: PlanDesk;
const drafts = createDrafts();
const office: Entitled = {
  personId: 'ines' as PersonId,
  screenId: 'office' as ScreenId,
  caller: 'office',
  whyNot: () => null,
};

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-other-day-'));
  furnish(folder, () => ({ ...plain, kitchen: kitchenEveryDay, cookPlan: files.cookPlan }));
  hub = await openHub({
    log: openMemoryLog(memoryDisk()),
    rules: dayRules,
    clock: { ...systemClock(), now: () => now },
    epoch: 'e1',
    report: (line) => {
      throw new Error(line.what);
    },
  });
  desk = createPlanDesk({ hub, folder, drafts, now: () => now });
  await planning().look(noon);
  await startFirst();
});
afterAll(async () => {
  await drafts.close();
  await hub.close();
  rmSync(folder, { recursive: true });
});

const planning = () => createPlanning(hub, folder, drafts.make);
const running = () => must(hub.state.plan, 'a plan');
const tomorrow = planOn(files.cookPlan, TOMORROW);

async function startFirst() {
  const first = must(
    running().built.tasks.find(({ work }) => work === 'hands'),
    'a first task',
  );
  const head = { personId: null, screenId: null, tappedAt: now, id: 'start-1' as CommandId };
  expect(await hub.command({ ...head, kind: 'start', task: first.id })).toMatchObject({ ok: true });
}

const betteringOf = (plan: CookPlan) => {
  const made = makePlan({ ...files, cookPlan: plan }, 1);
  return must(made.ok ? made.bettering : null, 'how far it was bettered');
};

describe('a plan of another day', () => {
  it('is shown at once, and then better, with how far it may be from the best', async () => {
    const tried = await desk.try(office, tomorrow, 'en');
    expect(tried).toMatchObject({ fits: true });
    expect(tried.better).toBeUndefined();
    const better = await desk.better(office, tomorrow, 'en', STEPS);
    expect(better).toMatchObject({ fits: true, better: { steps: STEPS } });
    expect(better.better?.line).toMatch(/At most .* better is possible\.|Proven best/);
    const spanish = await desk.better(office, tomorrow, 'es', STEPS);
    expect(spanish.better?.line).toMatch(/Como mucho se puede mejorar|Es lo mejor/);
  });

  it('says of a time that comes twice that night which one is taken', async () => {
    // Clocks go back at 2:00 on 7 November 2027 in Chicago (IANA tzdata).
    const plan = planOn(files.cookPlan, '2027-11-06');
    const services = plan.services.map((each) =>
      each.id === 'dinner' ? { ...each, closes: '25:30' } : each,
    );
    const tried = await desk.try(office, { ...plan, services }, 'en');
    expect(tried.fits).toBe(true);
    expect(tried.lines).toContain(
      'Dinner, closes: the clock goes back that night and shows 1:30 am +1 twice; ' +
        'the first is taken.',
    );
    const spanish = await desk.try(office, { ...plan, services }, 'es');
    expect(spanish.lines.join(' ')).toMatch(/marca dos veces 1:30 am \+1; se toma la primera/);
  });

  it('says which time the clock skips, by its field, and takes nothing', async () => {
    const plan = planOn(files.cookPlan, '2027-03-13');
    const services = plan.services.map((each) =>
      each.id === 'dinner' ? { ...each, closes: '26:30' } : each,
    );
    const taken = await desk.take(office, { ...plan, services }, 'en');
    expect(taken).toEqual({
      fits: false,
      lines: [
        'Dinner, closes: found 2:30 am +1; allowed: a time that the clock does not skip ' +
          'that night, such as 1:30 am +1 or 3:00 am +1.',
      ],
    });
    expect(await desk.take(office, { ...plan, services }, 'es')).toMatchObject({
      lines: [expect.stringMatching(/una hora que el reloj no se salte esa noche, como 1:30/)],
    });
  });

  it('says what does not fit, and keeps nothing of it', async () => {
    const edit = { kind: 'portions', service: 'lunch', dish: 'ribs', portions: 4_000 } as const;
    const ribs = must(desk.edit(tomorrow, edit, 'en'), 'the edited plan').plan;
    const tried = await desk.better(office, ribs, 'en', STEPS);
    expect(tried.fits).toBe(false);
    expect(tried.lines.length).toBeGreaterThan(0);
    expect(readFolder(folder).plans).toHaveLength(1);
  });

  it('is the one that was taken when its day opens, whoever works it out', async () => {
    const shown = await drafts.better('elsewhere', () => ({
      ...{ files: { ...files, cookPlan: tomorrow }, state: null, now: noon, language: 'en' },
      steps: STEPS,
    }));
    const taken = await desk.take(office, tomorrow, 'en', STEPS);
    expect(taken).toMatchObject({ fits: true, taken: true, better: { steps: STEPS } });
    expect(running().built.day).toBe(TODAY);
    const file = JSON.parse(readFileSync(join(folder, `plans/${TOMORROW}.json`), 'utf8'));
    expect(file).toMatchObject({ day: TOMORROW, betterSteps: STEPS });
    const { before, after, aheadLeastS } = betteringOf({ ...tomorrow, betterSteps: STEPS });
    expect(after.aheadS).toBeLessThan(before.aheadS);
    expect(after.aheadS).toBeGreaterThanOrEqual(aheadLeastS);

    now = at(TOMORROW, '02:00');
    expect((await planning().look(now)).what).toBe('adopted');
    expect(running()).toMatchObject({ engine: 'improving 1', built: { day: TOMORROW } });
    if (!shown?.fits) throw new Error('it was shown');
    expect(running().schedule).toEqual(shown.plan.schedule);
    expect((await planning().look(now)).what).toBe('as-before');
  });

  it('is planned as first found again where nobody waited for a better one', async () => {
    const taken = await desk.take(office, { ...tomorrow, betterSteps: STEPS }, 'en', 0);
    expect(taken).toMatchObject({ fits: true, taken: true });
    const file = JSON.parse(readFileSync(join(folder, `plans/${TOMORROW}.json`), 'utf8'));
    expect(file.betterSteps).toBeUndefined();
    expect(running()).toMatchObject({ version: 2, engine: 'constructive 1' });
    expect(await desk.undo(office, 'en')).toMatchObject({ taken: true });
    expect(running()).toMatchObject({ version: 3, engine: 'improving 1' });
  });
});
