import {
  type DayState,
  heldTo,
  isUnsettled,
  openLive,
  type Refusal,
} from '../../shared/day/index.ts';
import type { Instant } from '../../shared/kernel/index.ts';
import { paperOf, paperPage } from '../../shared/paper/index.ts';
import { type CookPlan, edited, type PlanEdit, writtenOut } from '../../shared/plan/index.ts';
import type {
  PlanConflict,
  PlanNearest,
  PlanShown,
  PlanTried,
  SheetMade,
} from '../../shared/protocol/index.ts';
import {
  type Language,
  sayGap,
  sayPaces,
  sayPlanFits,
  sayPlanOffer,
} from '../../shared/words/index.ts';
import { adoption } from '../adopt.ts';
import type { DayFiles } from '../day-files.ts';
import { writePlan } from '../folder/index.ts';
import type { Hub } from '../hub/index.ts';
import { lettersAddress } from '../letters.ts';
import { saidTwice } from '../said-twice.ts';
import type { Entitled } from '../who/index.ts';
import { sayIn } from '../why-not-planned.ts';
import type { Drafted } from './draft.ts';
import type { Drafts } from './drafts.ts';
import { keptFor } from './kept-for.ts';
import { createMendDesk, type MendDesk } from './mend-desk.ts';
import { menuOf } from './menu.ts';
import { planSources } from './plan-files.ts';

type PlanEdited = { readonly plan: CookPlan };

/** The plan as the desk edits it. */
export type PlanDesk = {
  /** Of that day, or of the one that runs; null while the kitchen's files are broken. */
  show(day: string | null): PlanShown | null;
  /** A plan with one change; null where it speaks of what is not there. Nothing is kept. */
  edit(plan: unknown, edit: PlanEdit, language: Language): PlanEdited | null;
  /** What a plan would do. Nothing is kept. */
  try(by: Entitled, plan: unknown, language: Language): Promise<PlanTried>;
  /** The same, with a better plan looked for in so many steps. */
  better(by: Entitled, plan: unknown, language: Language, steps: number): Promise<PlanTried>;
  /** Which few things of a plan that does not fit cannot all be; null where that is not found. */
  whatConflicts(by: Entitled, plan: unknown, language: Language): Promise<PlanConflict>;
  /** What would fit of a plan that does not; null where more portions are not what is wrong. */
  nearest(by: Entitled, plan: unknown, language: Language): Promise<PlanNearest>;
  /**
   * Takes it if it fits, bettered by so many steps as it was shown: into the folder, and on the day
   * that runs as its next version.
   */
  take(by: Entitled, plan: unknown, language: Language, steps?: number): Promise<Taken>;
  /** Takes back what was taken last on the day that runs: the plan before is the next version. */
  undo(by: Entitled, language: Language): Promise<Taken>;
  /** The day that runs, as it stands, on sheets of paper. */
  paper(language: Language): SheetMade | { readonly refusal: Refusal };
} & MendDesk;

type Taken = PlanTried | { readonly refusal: Refusal };

type Parts = {
  readonly hub: Hub<DayState>;
  readonly folder: string;
  readonly drafts: Drafts;
  readonly now: () => Instant;
};

type Fits = Extract<Drafted, { fits: true }>;

/** Somebody may begin a batch while its plan is worked out; then it is worked out again. */
const MOST_TRIES = 3;
const STALE: PlanTried = { fits: false, stale: true, lines: [] };

/** The plan of a hub's kitchen, to be edited. */
export function createPlanDesk(parts: Parts): PlanDesk {
  const { hub, folder } = parts;
  const sources = planSources(folder, () => hub.state);

  return {
    ...createMendDesk(parts),
    show(day) {
      const of = sources.kitchen();
      const { days } = sources;
      const runs = hub.state.plan?.built.day ?? null;
      const canUndo = hub.state.replaced.length > 0;
      const batches = batchesIn(hub.state);
      if (!of) return null;
      const plan = sources.planOf(day);
      const which = day ?? plan?.day;
      const kept = which ? keptFor(which, hub.state, of) : [];
      return { plan, menu: menuOf(of), days, runs, canUndo, batches, kept };
    },
    edit(plan, edit, language) {
      const read = sources.read(plan, language);
      const built = hub.state.plan?.built;
      const made = read.ok && built ? edited(read.files.cookPlan, edit, built) : null;
      return made && { plan: made };
    },
    async try(by, plan, language) {
      const read = sources.read(plan, language);
      if (!read.ok) return { fits: false, lines: read.lines };
      const asked = () => ({ ...askOf(parts, read.files, language), steps: 0 });
      const drafted = await parts.drafts.try(by.caller, asked);
      return drafted ? said(drafted, read.files, language) : STALE;
    },
    async better(by, plan, language, steps) {
      const read = sources.read(plan, language);
      if (!read.ok) return { fits: false, lines: read.lines };
      const asked = () => ({ ...askOf(parts, read.files, language), steps });
      const drafted = await parts.drafts.better(by.caller, asked);
      return drafted ? said(drafted, read.files, language, steps) : STALE;
    },
    async whatConflicts(by, plan, language) {
      const read = sources.read(plan, language);
      if (!read.ok) return { conflict: null };
      const asked = () => askOf(parts, read.files, language);
      return { conflict: await parts.drafts.conflict(by.caller, asked) };
    },
    async nearest(by, plan, language) {
      const read = sources.read(plan, language);
      if (!read.ok) return { nearest: null };
      const before = sources.planOf(read.files.cookPlan.day);
      const asked = () => ({ ...askOf(parts, read.files, language), before });
      return { nearest: await parts.drafts.nearest(by.caller, asked) };
    },
    async take(by, plan, language, steps = 0) {
      const read = sources.read(plan, language);
      if (!read.ok) return { fits: false, lines: read.lines };
      return takeUp(parts, { by, files: read.files, language, steps, isUndoing: false });
    },
    async undo(by, language) {
      const before = hub.state.replaced.at(-1);
      if (!before) return { refusal: { rule: 'nothing-to-undo' } };
      const read = sources.read(before, language);
      if (!read.ok) return { fits: false, lines: read.lines };
      return takeUp(parts, { by, files: read.files, language, isUndoing: true });
    },
    paper(language) {
      const { plan } = hub.state;
      if (!plan) return { refusal: { rule: 'no-plan' } };
      const paper = paperOf(openLive(hub.state, parts.now()), language);
      const text = paperPage(paper, lettersAddress());
      return { name: `coalface-${plan.built.day}.html`, type: 'text/html', text };
    },
  };
}

function batchesIn({ plan }: DayState): PlanShown['batches'] {
  if (!plan) return [];
  return plan.built.batches.map((batch) => {
    const { service, dish } = batch;
    return { service, dish, ...writtenOut(batch, plan.built) };
  });
}

function askOf({ hub, now }: Parts, files: DayFiles, language: Language) {
  const { state } = hub;
  const runs = state.plan?.built.day === files.cookPlan.day && isUnsettled(state);
  return { files, state: runs ? state : null, now: now(), language };
}

function said(drafted: Drafted, files: DayFiles, language: Language, steps = 0): PlanTried {
  const { kitchen, paces = [] } = files;
  if (!drafted.fits) return { fits: false, lines: drafted.lines };
  const say = sayIn(language, kitchen);
  const { offer, bettering } = drafted;
  const fits = offer ? sayPlanOffer(offer, say) : [sayPlanFits(say)];
  const atPaces = paces.length > 0 ? [sayPaces(paces.length, language)] : [];
  const lines = [...fits, ...saidTwice(files, language), ...atPaces];
  if (!bettering) return { fits: true, lines };
  return { fits: true, lines, better: { ...sayGap(bettering, language), steps } };
}

type Taking = {
  readonly by: Entitled;
  readonly files: DayFiles;
  readonly language: Language;
  /** A better plan is looked for in so many; left out: as the plan itself says. */
  readonly steps?: number;
  readonly isUndoing: boolean;
};

async function takeUp(parts: Parts, taking: Taking): Promise<Taken> {
  const { by, files, language, steps } = taking;
  for (let tries = 1; ; tries++) {
    const asked = () => ({
      ...askOf(parts, files, language),
      ...(steps !== undefined && { steps }),
    });
    const drafted = await parts.drafts.take(by.caller, asked);
    if (!drafted) return STALE;
    if (!drafted.fits) return said(drafted, files, language);
    if (tries < MOST_TRIES && !holds(drafted, parts.hub.state)) continue;
    const refusal = by.whyNot() ?? (await keep(parts, drafted, taking));
    return refusal ? { refusal } : { ...said(drafted, files, language, steps), taken: true };
  }
}

/** Into the folder first: what is written there is taken up also if the hub ends in between. */
async function keep(
  { hub, folder, now }: Parts,
  { plan }: Fits,
  { by, isUndoing }: Taking,
): Promise<Refusal | null> {
  const { cookPlan } = plan;
  writePlan(folder, cookPlan);
  const running = hub.state.plan;
  if (running?.built.day !== cookPlan.day) return null;
  const next = { ...plan, version: running.version + 1 };
  const before = heldTo(hub.state);
  const of = isUndoing ? { before, takesBack: running.version } : { before };
  const { id, at, facts } = adoption(next, now(), of);
  const answer = await hub.put({
    id,
    personId: by.personId,
    screenId: by.screenId,
    claimedAt: at,
    earliestAt: () => at,
    decide: () => ({ ok: true, facts }),
  });
  return answer.ok ? null : answer.refusal;
}

/** Whether nothing has begun since that the plan does not have. */
function holds({ plan }: Fits, { tasks }: DayState): boolean {
  const known = new Set(plan.built.tasks.map(({ id }) => id));
  return [...tasks].every(([id, { started }]) => started === null || known.has(id));
}
