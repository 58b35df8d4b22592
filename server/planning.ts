import {
  type AdoptedPlan,
  type DayState,
  heldTo,
  isUnsettled,
  openLive,
} from '../shared/day/index.ts';
import { canonical, type Instant } from '../shared/kernel/index.ts';
import { adoption, hashesOf, makePlan, type PlanMade, revisePlan } from './adopt.ts';
import type { DayFiles } from './day-files.ts';
import { dueAt, isOver } from './due.ts';
import { faultLine, type PlanOfDay, readFolder } from './folder/index.ts';
import type { Hub } from './hub/index.ts';
import { pacesFor } from './paces-for.ts';
import type { MakeAsk } from './plan-desk/index.ts';
import { whyNotPlanned } from './why-not-planned.ts';

/** What came of looking into a kitchen's folder. */
export type Looked = {
  readonly what: 'adopted' | 'as-before' | 'nothing-due' | 'broken' | 'impossible';
  /** What is wrong, for whoever runs the hub; nothing that was said the last time. */
  readonly lines: readonly string[];
};

/** Keeps the plan of the day as a kitchen's files have it. */
export type Planning = {
  /**
   * Takes up the plan that is due, if it is sound and new. Whatever is wrong with a file, the
   * running day stays.
   */
  look(now: Instant, adoptedAt?: (plan: AdoptedPlan) => Instant): Promise<Looked>;
};

/** Works a plan out beside the hub's own thread; null where there is no time left for it. */
export type Beside = (asked: MakeAsk) => Promise<PlanMade | null>;

export function createPlanning(hub: Hub<DayState>, folder: string, beside?: Beside): Planning {
  let saidBefore: readonly string[] = [];
  /** What came of trying these very files on this day: working a plan out takes its time. */
  let tried: { readonly what: string; readonly lines: readonly string[] } | null = null;

  /** Before a first day there is nobody whose taps would wait. */
  async function madeAnew(asked: MakeAsk): Promise<PlanMade | null> {
    if (hub.state.plan && beside) return beside(asked);
    return makePlan(asked.files, asked.version, asked);
  }

  /** Null where the day has gone on while the plan was worked out. */
  async function takeUp(
    files: DayFiles,
    now: Instant,
    adoptedAt: (plan: AdoptedPlan) => Instant,
  ): Promise<Looked | null> {
    const { day } = files.cookPlan;
    const hashes = canonical(hashesOf(files));
    const running = hub.state.plan;
    if (running && canonical(running.hashes) === hashes) return looked('as-before');
    if (tried?.what === hashes) return looked('impossible', tried.lines);
    const isSameDay = running?.built.day === day;
    const before = heldTo(hub.state);
    const wasUnsettled = isUnsettled(hub.state);
    const made =
      isSameDay && wasUnsettled
        ? revisePlan(files, openLive(hub.state, now))
        : await madeAnew({ files, version: isSameDay ? running.version + 1 : 1, before });
    if (!made) return looked('as-before');
    // Something was begun meanwhile, or another plan taken.
    if (hub.state.plan !== running || isUnsettled(hub.state) !== wasUnsettled) return null;
    if (!made.ok) {
      tried = { what: hashes, lines: whyNotPlanned(made, files.kitchen) };
      return looked('impossible', tried.lines);
    }
    await hub.bring(adoption(made.plan, adoptedAt(made.plan), { before }));
    return looked('adopted');
  }

  async function find(now: Instant, adoptedAt: (plan: AdoptedPlan) => Instant): Promise<Looked> {
    const { kitchen, catalogue, limitChanges, plans, faults } = readFolder(folder);
    const faultLines = faults.map(faultLine);
    if (!kitchen || !catalogue || !limitChanges) return looked('broken', faultLines);
    const due = dueAt(plans, now, kitchen.zone);
    // A day that people are in the middle of is not left for another, whatever files come and go.
    if (due?.day !== hub.state.plan?.built.day && isUnderWay(hub.state, now)) {
      return looked('as-before', faultLines);
    }
    if (due === null) return looked('nothing-due', [...faultLines, ...whatIsOver(plans)]);
    if (due.plan === null) return looked('broken', faultLines);
    const paces = pacesFor(due.day, hub.state);
    const files = { kitchen, catalogue, cookPlan: due.plan, limitChanges, ...paces };
    const taken = await takeUp(files, now, adoptedAt);
    return taken ? looked(taken.what, [...faultLines, ...taken.lines]) : find(now, adoptedAt);
  }

  return {
    async look(now, adoptedAt = () => now) {
      const { what, lines } = await find(now, adoptedAt);
      const news = lines.filter((line) => !saidBefore.includes(line));
      const isMended = saidBefore.length > 0 && lines.length === 0 && what !== 'adopted';
      saidBefore = lines;
      return looked(what, isMended ? [MENDED] : news);
    },
  };
}

function whatIsOver(plans: readonly PlanOfDay[]): string[] {
  const last = plans.at(-1)?.day;
  if (last === undefined) return [];
  return [`The last plan, of ${last}, is over: one of today or of a later day is waited for.`];
}

/** Else whoever mends a file as it was before would wait for an answer. */
const MENDED = 'What was wrong is mended.';

const looked = (what: Looked['what'], lines: readonly string[] = []): Looked => ({ what, lines });

const hasBegun = ({ tasks }: DayState) => tasks.size > 0;

function isUnderWay(state: DayState, now: Instant): boolean {
  const { plan } = state;
  return plan !== null && hasBegun(state) && !isOver(plan.cookPlan, now, plan.kitchen.zone);
}
