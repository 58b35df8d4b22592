import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { adoption, makePlan } from '../../../server/adopt.ts';
import { systemClock } from '../../../server/clock.ts';
import { dayRules } from '../../../server/day-rules.ts';
import { type Hub, openHub } from '../../../server/hub/index.ts';
import { createDrafts } from '../../../server/plan-desk/index.ts';
import { createMendDesk, type MendDesk } from '../../../server/plan-desk/mend-desk.ts';
import { starterFiles } from '../../../server/starter/starter-files.ts';
import { memoryDisk, openMemoryLog } from '../../../server/store/index.ts';
import type { Entitled } from '../../../server/who/index.ts';
import { type DayState, type Intent, openLive } from '../../../shared/day/index.ts';
import {
  after,
  type CommandId,
  hours,
  instant,
  must,
  type PersonId,
  type ScreenId,
} from '../../../shared/kernel/index.ts';
import { readPlanFiles } from '../../../shared/plan/index.ts';

const read = readPlanFiles(starterFiles(instant(Date.UTC(2026, 2, 3)), 'UTC', 'three dishes'));
const made = makePlan(must(read.ok ? read.value : null, 'sound files'), 1);
const plan = must(made.ok ? made.plan : null, JSON.stringify(made));

/** Everybody's first task is about to begin. */
const first = must(
  plan.schedule.placements.toSorted((a, b) => a.startS - b.startS)[0],
  'a first task',
);
const now = () => after(plan.built.origin, first.startS);

const drafts = createDrafts();
let hub: Hub<DayState>;
let desk: MendDesk;

beforeAll(async () => {
  hub = await openHub({
    log: openMemoryLog(memoryDisk()),
    rules: dayRules,
    clock: { ...systemClock(), now },
    epoch: 'e1',
    report: (line) => {
      throw new Error(line.what);
    },
  });
  await hub.bring(adoption(plan, plan.built.origin));
  desk = createMendDesk({ hub, drafts, now });
});
afterAll(async () => {
  await drafts.close();
  await hub.close();
});

let commands = 0;
async function say(intent: Intent) {
  const id = `command-${++commands}` as CommandId;
  const head = { id, personId: null, screenId: null, tappedAt: now() };
  expect(await hub.command({ ...head, ...intent })).toMatchObject({ ok: true });
  return id;
}

const office: Entitled = {
  personId: 'ines' as PersonId,
  screenId: 'office' as ScreenId,
  caller: 'office',
  whyNot: () => null,
};

const timesNow = () => {
  const live = openLive(hub.state, now());
  return plan.built.tasks.map(({ id }) => ({ id, ...live.timesOf(id) }));
};

/** Who has most to do goes home for the day. */
async function someoneGoesHome() {
  const of = new Map<string, number>();
  for (const { uses, startS, endS } of plan.schedule.placements) {
    for (const { resource } of uses.filter((use) => use.resource.startsWith('hand:'))) {
      of.set(resource, (of.get(resource) ?? 0) + endS - startS);
    }
  }
  const [busiest] = must([...of].sort((a, b) => b[1] - a[1])[0], 'somebody');
  const hand = busiest.slice('hand:'.length) as PersonId;
  return say({ kind: 'handOut', hand, backAt: after(now(), hours(20)) });
}

describe('mending at the desk', () => {
  it('has nothing to take while the day holds', async () => {
    expect(await desk.mend(office)).toMatchObject({ mend: { id: null, offer: { changes: [] } } });
  });

  it('gives the work of who went home to others, in one step that can be undone', async () => {
    await someoneGoesHome();
    const before = timesNow();
    const { mend } = (await desk.mend(office)) as Extract<
      Awaited<ReturnType<MendDesk['mend']>>,
      { mend: unknown }
    >;
    const { id, offer } = must(mend, 'a proposal');
    const late = offer.services.filter(({ beforeS }) => (beforeS ?? 0) < 0);
    expect(late.length).toBeGreaterThan(0);
    for (const { beforeS, afterS } of late) expect(afterS ?? 0).toBeGreaterThan(beforeS ?? 0);
    expect(offer.changes.some(({ hands }) => hands !== null)).toBe(true);
    const taken = await desk.takeMend(office, must(id, 'something to take'));
    const { command } = must('command' in taken ? taken : null, JSON.stringify(taken));
    expect(hub.state.story.at(-1)).toMatchObject({
      kind: 'dayMended',
      personId: 'ines',
      screenId: 'office',
    });
    const live = openLive(hub.state, now());
    expect(offer.services.map(({ afterS }) => afterS)).toEqual(
      plan.built.services.map(({ id: service }) => live.outlookOf(service)?.inHandS ?? null),
    );
    await say({ kind: 'undo', command });
    expect(timesNow()).toEqual(before);
  });

  it('is not done where the day went on, where another was asked for, or nobody may', async () => {
    const offered = async () => {
      const answer = await desk.mend(office);
      return must('mend' in answer ? answer.mend?.id : null, JSON.stringify(answer));
    };
    const old = await offered();
    const revoked: Entitled = { ...office, whyNot: () => ({ rule: 'screen-revoked' }) };
    expect(await desk.takeMend(revoked, old)).toEqual({ refusal: { rule: 'screen-revoked' } });
    const id = await offered();
    expect(await desk.takeMend(office, old)).toEqual({ refusal: { rule: 'out-of-date' } });
    const hand = must(
      plan.kitchen.crew.find((person) => !hub.state.happened.out.has(person.id)),
      'somebody',
    ).id;
    await say({ kind: 'handOut', hand, backAt: after(now(), hours(1)) });
    expect(await desk.takeMend(office, id)).toEqual({ refusal: { rule: 'out-of-date' } });
  });
});
