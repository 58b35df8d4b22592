import type { CookingStage, DayState } from '../../shared/day/index.ts';
import {
  cookStagesOf,
  heatNeededC,
  indexOf,
  isDown,
  loadsOf,
  type PlanIndex,
  passagesOf,
} from '../../shared/day/index.ts';
import {
  after,
  type Celsius,
  celsius,
  hours,
  type Instant,
  minutes,
  must,
  type SmokerId,
  seconds,
  seeded,
  since,
  type TaskId,
} from '../../shared/kernel/index.ts';
import { findSlot } from '../../shared/kitchen/index.ts';
import type { SentReading } from '../../shared/protocol/index.ts';

/** Where the first stage of a cook has come to, by its share: fast, then a stall, then on. */
const FIRST = [0, 0.07, 0.29, 0.52, 0.7, 0.8, 0.87, 0.91, 0.935, 0.96, 1] as const;
/** And a later one, from the target before to its own. */
const LATER = [0, 0.11, 0.28, 0.46, 0.6, 0.71, 0.8, 0.87, 0.92, 0.96, 1] as const;

const COOLER_C = celsius(4);

/** The invented day's bad luck: from there on this load stands still for longer than planned. */
const STALLS = { batch: 'dinner-pulled-shoulder-2', fromShare: 0.87, forS: hours(1.5) };

/** And this smoker runs cold for so long before dinner opens, so that its cooks slow down. */
const COLD = {
  smoker: 'c' as SmokerId,
  service: 'dinner',
  fromS: hours(4.25),
  toS: hours(3),
  byK: 30,
  pace: 0.5,
};

/** Nobody came for it: then it creeps on. */
const CREEPS_K_PER_H = 1.5;
const CREEPS_AT_MOST_K = 6;

/** Probes sit in these; ribs and birds are too thin to leave one in. */
const PROBED = ['shoulder', 'brisket', 'brisket-parted', 'brisket-point'];

/** What the thermometers of the invented kitchen show at a moment, of what is in its smokers. */
export function demoReadings(state: DayState, at: Instant): SentReading[] {
  if (!state.plan || state.happened.closed) return [];
  const index = indexOf(state.plan);
  const stays = [...index.tasks.values()].flatMap(({ id, work }) => {
    const passage = work === 'place' ? passagesOf(state).get(id) : undefined;
    const began = passage?.startedAt ?? null;
    const ended = passage?.finishedAt ?? null;
    return began !== null && began < at && (ended === null || ended > at) ? [id] : [];
  });
  const when = new Date(at).toISOString();
  const cores = stays.flatMap((stay): SentReading[] => {
    const tempC = coreAt(state, index, stay, at);
    return tempC === null ? [] : [{ where: { kind: 'core', stay }, tempC, at: when }];
  });
  const airs = new Map<SmokerId, Celsius>();
  for (const stay of stays) {
    const smoker = smokerOf(state, index, stay);
    const setC = heatNeededC(state, index, stay);
    if (smoker === null || setC === null || isDown(state, smoker)) continue;
    const cold = isCold(index, smoker, at) ? COLD.byK : 0;
    airs.set(smoker, tenth(setC - cold + swing(smoker, at, 4)));
  }
  const air = [...airs].map(
    ([smoker, tempC]): SentReading => ({
      ...{ where: { kind: 'air', smoker }, tempC, at: when },
    }),
  );
  return [...cores, ...air];
}

function coreAt(state: DayState, index: PlanIndex, stay: TaskId, at: Instant): Celsius | null {
  const { batch } = must(index.tasks.get(stay), stay);
  if (!PROBED.includes(index.batches.get(batch)?.cut ?? '')) return null;
  const smoker = smokerOf(state, index, stay);
  let fromC: number = COOLER_C;
  let shownC: number | null = null;
  for (const [place, stage] of cookStagesOf(state, index, stay).entries()) {
    const began = passagesOf(state).get(stage.stage)?.startedAt ?? null;
    if (began === null || began > at) break;
    const lostS = smoker === COLD.smoker ? (1 - COLD.pace) * coldS(index, began, at) : 0;
    const lengthS = lengthOf(index, stage, began);
    const passedS = stalled(batch, place === 0 ? lengthS : 0, since(began, at) - lostS);
    const share = passedS / lengthS;
    const shape = place === 0 ? FIRST : LATER;
    shownC = fromC + (stage.tempC - fromC) * along(shape, share) + creeping(share, passedS);
    fromC = stage.tempC;
  }
  return shownC === null ? null : tenth(shownC + swing(stay, at, 0.4));
}

/** What is over took as long as it did. */
function lengthOf(index: PlanIndex, { stage, finishedAt }: CookingStage, began: Instant): number {
  if (finishedAt !== null) return Math.max(60, since(began, finishedAt));
  const { startS, endS } = must(index.placements.get(stage), stage);
  return endS - startS;
}

/** So much of the first stage has done its work, where the load stood still for a while. */
function stalled(batch: string, firstStageS: number, passedS: number): number {
  const fromS = STALLS.fromShare * firstStageS;
  if (batch !== STALLS.batch || passedS <= fromS) return passedS;
  return Math.max(fromS, passedS - STALLS.forS);
}

function along(shape: readonly number[], share: number): number {
  const place = Math.min(Math.max(share, 0), 1) * (shape.length - 1);
  const below = Math.min(Math.floor(place), shape.length - 2);
  const [from, to] = [must(shape[below], 'a point'), must(shape[below + 1], 'a point')];
  return from + (place - below) * (to - from);
}

function creeping(share: number, passedS: number): number {
  const overS = share > 1 ? passedS - passedS / share : 0;
  return Math.min(CREEPS_AT_MOST_K, (overS / hours(1)) * CREEPS_K_PER_H);
}

function coldSpan({ plan }: PlanIndex): { readonly from: Instant; readonly to: Instant } | null {
  const service = plan.built.services.find(({ id }) => id === COLD.service);
  if (!service) return null;
  const before = (s: number) => after(service.opensAt, seconds(-s));
  return { from: before(COLD.fromS), to: before(COLD.toS) };
}

function isCold(index: PlanIndex, smoker: SmokerId, at: Instant): boolean {
  const span = coldSpan(index);
  return smoker === COLD.smoker && span !== null && span.from <= at && at < span.to;
}

/** How long it was cold between two moments. */
function coldS(index: PlanIndex, from: Instant, to: Instant): number {
  const span = coldSpan(index);
  if (!span) return 0;
  return Math.max(0, (Math.min(to, span.to) - Math.max(from, span.from)) / 1000);
}

function smokerOf(state: DayState, index: PlanIndex, stay: TaskId): SmokerId | null {
  const [load] = loadsOf(state, index, stay);
  return load ? (findSlot(index.plan.kitchen, load.slot)?.smoker.id ?? null) : null;
}

/** Up or down by so much at most, the same whenever it is asked. */
function swing(name: string, at: Instant, mostK: number): number {
  const seed = [...name].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 1e6, 1);
  return mostK * (2 * seeded(seed + Math.round(at / 60_000))() - 1);
}

const tenth = (tempC: number) => celsius(Math.round(tempC * 10) / 10);

/** How often they send, and how far apart what they sent before lies. */
export const SENDS_EVERY_S = minutes(10);
const SENT_BEFORE_S = minutes(30);

/** The moments of the day until now at which they have sent. */
export function sentUntil(state: DayState, now: Instant): Instant[] {
  const began = [...passagesOf(state).values()].flatMap(({ startedAt }) => startedAt ?? []);
  const first = Math.min(now, ...began);
  const stepMs = SENT_BEFORE_S * 1000;
  const start = Math.ceil(first / stepMs) * stepMs;
  const count = Math.max(0, Math.floor((now - start) / stepMs) + 1);
  return Array.from({ length: count }, (_, n) => (start + n * stepMs) as Instant);
}
