import { afterAll, describe, expect, it, vi } from 'vitest';
import { createDrafts } from '../../../server/plan-desk/index.ts';
import { instant } from '../../../shared/kernel/index.ts';
import { askingFor } from '../../../shared/plan/index.ts';
import { filesWith, kitchenEveryDay, onePlan } from '../../shared/plan/three-elms.ts';

const threads = vi.hoisted(() => ({ begun: 0 }));
vi.mock('node:worker_threads', async (original) => {
  const real = await original<typeof import('node:worker_threads')>();
  class Worker extends real.Worker {
    constructor(...args: ConstructorParameters<typeof real.Worker>) {
      super(...args);
      threads.begun += 1;
    }
  }
  return { ...real, Worker };
});

const drafts = createDrafts();
afterAll(() => drafts.close());

const files = filesWith({ kitchen: kitchenEveryDay, cookPlan: onePlan({}) });
const before = files.cookPlan;
const asking = (portions: number) => ({
  files: { ...files, cookPlan: askingFor(before, { service: 'noon', dish: 'ribs' }, portions) },
  before,
  state: null,
  now: instant(0),
  language: 'en' as const,
});
const draftOf = (portions: number) => {
  const { before: _before, ...ask } = asking(portions);
  return ask;
};

/** How many portions of ribs a plan that was tried has. */
const ribsIn = (drafted: Awaited<ReturnType<typeof drafts.try>>) =>
  drafted?.fits &&
  drafted.plan.cookPlan.services[0]?.dishes.find(({ dish }) => dish === 'ribs')?.sales.portions;

describe('what is tried beside the hub', () => {
  it('lets go of looking for what fits when the same screen types on', async () => {
    const looking = drafts.nearest('office', () => asking(2000));
    const typed = drafts.try('office', () => draftOf(24));
    expect(await looking).toBeNull();
    expect(await typed).toMatchObject({ fits: true });
  });

  it('stops looking for what is better, or conflicts, when the same screen types on', async () => {
    const looking = drafts.conflict('office', () => draftOf(2000));
    const bettering = drafts.better('office', () => ({ ...draftOf(20), steps: 20_000 }));
    const typed = drafts.try('office', () => draftOf(24));
    expect([await looking, await bettering]).toEqual([null, null]);
    expect(await typed).toMatchObject({ fits: true });
  });

  it('does so in the thread that it has: to begin another takes longer than a plan', async () => {
    await drafts.try('office', () => draftOf(24));
    const { begun } = threads;
    for (const look of [
      () => drafts.nearest('office', () => asking(2000)),
      () => drafts.conflict('office', () => draftOf(2000)),
    ]) {
      const looking = look();
      const typed = drafts.try('office', () => draftOf(24));
      expect([await looking, await typed]).toEqual([null, expect.objectContaining({ fits: true })]);
    }
    expect(threads.begun).toBe(begun);
  });

  it('keeps the turn of what is taken, whatever the same screen asks for meanwhile', async () => {
    const before = drafts.try('other', () => draftOf(20));
    const taken = drafts.take('office', () => draftOf(24));
    const again = drafts.take('office', () => draftOf(21));
    const typed = drafts.try('office', () => draftOf(22));
    const asked = drafts.better('office', () => ({ ...draftOf(23), steps: 1 }));
    expect(await before).toMatchObject({ fits: true });
    expect([ribsIn(await taken), ribsIn(await again)]).toEqual([24, 21]);
    expect(await typed).toBeNull();
    expect(ribsIn(await asked)).toBe(23);
  });

  it('goes on with it while another screen types', async () => {
    const looking = drafts.nearest('office', () => asking(22));
    const typed = drafts.try('other', () => draftOf(24));
    expect(await typed).toMatchObject({ fits: true });
    expect(await looking).toMatchObject({ line: expect.stringContaining('21 portions') });
  });
});
