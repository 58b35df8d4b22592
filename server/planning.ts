import type { AdoptedPlan, DayState } from '../shared/day/index.ts';
import { canonical, type Instant } from '../shared/kernel/index.ts';
import { adoption, hashesOf, makePlan } from './adopt.ts';
import { dueAt } from './due.ts';
import { faultLine, readFolder } from './folder/index.ts';
import type { Hub } from './hub/index.ts';
import { whyNotPlanned } from './why-not-planned.ts';

/** What came of looking into a kitchen's folder. */
export type Looked = {
  readonly what: 'adopted' | 'as-before' | 'nothing-due' | 'broken' | 'impossible';
  /** What is wrong, for whoever runs the hub; nothing that was said the last time. */
  readonly lines: readonly string[];
};

/** Keeps the plan of the day as a kitchen's files have it. */
export type Planning = {
  /** Takes up the plan that is due, if it is sound and new. Whatever is wrong with a file, the running day stays. */
  look(now: Instant, adoptedAt?: (plan: AdoptedPlan) => Instant): Promise<Looked>;
};

export function createPlanning(hub: Hub<DayState>, folder: string): Planning {
  let saidBefore: readonly string[] = [];
  /** What came of trying these very files: working a plan out takes its time. */
  let tried: { readonly files: string; readonly lines: readonly string[] } | null = null;

  async function find(now: Instant, adoptedAt: (plan: AdoptedPlan) => Instant): Promise<Looked> {
    const { kitchen, catalogue, plans, faults } = readFolder(folder);
    const lines = faults.map(faultLine);
    if (kitchen === null || catalogue === null) return { what: 'broken', lines };
    const due = dueAt(plans, now, kitchen.zone);
    if (due === null) return { what: 'nothing-due', lines };
    if (due.plan === null) return { what: 'broken', lines };
    const files = { kitchen, catalogue, cookPlan: due.plan };
    const hashes = canonical(hashesOf(files));
    const running = hub.state.plan;
    if (running && canonical(running.hashes) === hashes) return { what: 'as-before', lines };
    if (tried?.files === hashes) return { what: 'impossible', lines: [...lines, ...tried.lines] };
    const version = running?.built.day === due.day ? running.version + 1 : 1;
    const made = makePlan(files, version);
    if (!made.ok) {
      tried = { files: hashes, lines: whyNotPlanned(made, kitchen) };
      return { what: 'impossible', lines: [...lines, ...tried.lines] };
    }
    await hub.bring(adoption(made.plan, adoptedAt(made.plan)));
    return { what: 'adopted', lines };
  }

  return {
    async look(now, adoptedAt = () => now) {
      const looked = await find(now, adoptedAt);
      const news = looked.lines.filter((line) => !saidBefore.includes(line));
      saidBefore = looked.lines;
      return { ...looked, lines: news };
    },
  };
}
