import type { BatchId, Instant, Seconds, ServiceId, TaskId, Text } from '../kernel/index.ts';
import { minutes, must, seconds } from '../kernel/index.ts';
import { kitchenResource, type SlotName } from '../plan/index.ts';
import type { Goal, Placement, ResourceId, Rung } from '../schedule/index.ts';
import { placementOf } from './arrangement.ts';
import { isLate } from './later.ts';
import type { Live } from './live.ts';
import { overlongIn } from './overlong.ts';
import { personName, slotName } from './plan-index.ts';
import { servicesIn } from './plan-offer.ts';
import { type WouldBe, wouldBeIn } from './would-be.ts';

/** What would mend the day, before a person takes it: who does what instead, where and when. */
export type MendOffer = {
  /** The last event that changed who does what, or what sits where, when it was worked out. */
  readonly basedOnSeq: number;
  readonly at: Instant;
  readonly rung: Rung;
  readonly services: readonly {
    readonly id: ServiceId;
    readonly name: Text;
    /** Null where nothing of it is left to be done. */
    readonly beforeS: Seconds | null;
    readonly afterS: Seconds | null;
  }[];
  /** Batches that are late before or after and by otherwise; below nought is late. */
  readonly batches: readonly {
    readonly name: Text;
    readonly beforeS: Seconds;
    readonly afterS: Seconds;
  }[];
  /** How many rests and holds last longer than they may. */
  readonly overlong: { readonly before: number; readonly after: number };
  /** The first to begin comes first. */
  readonly changes: readonly MendChange[];
  /** What goes on without hands, or is moved by less than a minute, is only counted. */
  readonly others: number;
  /** All that would have another place on the chart. */
  readonly wouldBe: readonly WouldBe[];
};

export type MendChange = {
  readonly task: TaskId;
  readonly title: Text;
  readonly batch: Text;
  readonly hands: FromTo<readonly string[]> | null;
  readonly slot: FromTo<SlotName> | null;
  /** The table or the cabinet. */
  readonly place: FromTo<readonly Text[]> | null;
  /** When it begins; null where that is moved by less than a minute. */
  readonly start: FromTo<Instant> | null;
};

type FromTo<Value> = { readonly from: Value; readonly to: Value };

const SHOWN_S = minutes(1);

/** What is otherwise on the day as it would be. */
export function mendOffer(live: Live, next: Live, rung: Rung): MendOffer {
  const { state, index, now } = live;
  const all = index.plan.built.tasks
    .filter(({ id }) => live.timeline.times(id).stage === 'waiting')
    .map(({ id }) => changeOf(live, next, id));
  const shown = all.filter(({ task, hands, slot, place, start }) => {
    const isByHand = must(index.tasks.get(task), task).work === 'hands';
    return hands || slot || place || (start && isByHand);
  });
  const moved = all.filter(({ start }) => start !== null).length;
  const isMoved = shown.filter(({ start }) => start !== null).length;
  return {
    basedOnSeq: state.arrangedSeq,
    at: now,
    rung,
    services: servicesIn(live, next),
    batches: batchesIn(live, next),
    overlong: { before: overlongIn(live).length, after: overlongIn(next).length },
    changes: shown.sort((a, b) => startOf(next, a) - startOf(next, b)),
    others: moved - isMoved,
    wouldBe: wouldBeIn(live, next),
  };
}

/** What is gained most comes first. */
function batchesIn(live: Live, next: Live): MendOffer['batches'] {
  const { groups, plan } = live.index;
  const batches = plan.built.problem.goals.flatMap((goal) => {
    const [beforeS, afterS] = [live, next].map(({ timeline }) => aheadS(timeline, goal));
    const name = groups.get(`${goal.id}` as BatchId)?.name;
    if (beforeS === undefined || afterS === undefined || !name) return [];
    const isEitherLate = isLate(Math.min(beforeS, afterS));
    return isEitherLate && Math.abs(afterS - beforeS) >= SHOWN_S ? [{ name, beforeS, afterS }] : [];
  });
  return batches.sort((a, b) => b.afterS - b.beforeS - (a.afterS - a.beforeS));
}

const aheadS = (timeline: Live['timeline'], { activity, end, dueS }: Goal) =>
  seconds(dueS - timeline.times(activity)[`${end}S`]);

const startOf = (live: Live, { task }: MendChange) => live.timesOf(task).startS;

function changeOf(live: Live, next: Live, task: TaskId): MendChange {
  const { index } = live;
  const { title, batch } = must(index.tasks.get(task), task);
  const [was, is] = [live, next].map(({ state }) => placementOf(state, index, task));
  const between = <Value>(of: (placement: Placement) => Value): FromTo<Value> | null => {
    const [from, to] = [of(must(was, task)), of(must(is, task))];
    return JSON.stringify(from) === JSON.stringify(to) ? null : { from, to };
  };
  const slot = between((placement) => slotOf(live, placement));
  const [startS, nextS] = [live.timesOf(task).startS, next.timesOf(task).startS];
  return {
    task,
    title,
    batch: must(index.groups.get(batch), batch).name,
    hands: between((placement) => handsOf(live, placement)),
    slot: slot?.from && slot.to ? { from: slot.from, to: slot.to } : null,
    place: between((placement) => placesOf(live, placement)),
    start:
      Math.abs(nextS - startS) < SHOWN_S
        ? null
        : { from: live.instantOf(startS), to: live.instantOf(nextS) },
  };
}

const resourcesOf = ({ uses }: Placement): ResourceId[] =>
  uses.toSorted((a, b) => a.need - b.need).map(({ resource }) => resource);

function handsOf({ index }: Live, placement: Placement): string[] {
  return resourcesOf(placement).flatMap((id) => {
    const thing = kitchenResource(id);
    if (thing.kind !== 'hand') return [];
    return [personName(index.plan.kitchen, thing.person)?.name ?? thing.person];
  });
}

function slotOf({ index }: Live, placement: Placement): SlotName | null {
  const slots = resourcesOf(placement).flatMap((id) => {
    const thing = kitchenResource(id);
    return thing.kind === 'slot' ? [thing.slot] : [];
  });
  return slots[0] === undefined ? null : slotName(index.plan.kitchen, slots[0]);
}

function placesOf({ index }: Live, placement: Placement): Text[] {
  const { stations, cabinets, coolers } = index.plan.kitchen;
  return resourcesOf(placement).flatMap((id): Text[] => {
    const thing = kitchenResource(id);
    switch (thing.kind) {
      case 'table':
      case 'board': {
        const name = stations.find((each) => each.id === thing.station)?.name ?? { en: id };
        return [thing.number === undefined ? name : numbered(name, thing.number)];
      }
      case 'cabinet':
        return [cabinets.find((each) => each.id === thing.cabinet)?.name ?? { en: id }];
      case 'cooler':
        return [coolers.find((each) => each.id === thing.cooler)?.name ?? { en: id }];
      default:
        return [];
    }
  });
}

const numbered = ({ en, es }: Text, number: number): Text =>
  es === undefined ? { en: `${en} ${number}` } : { en: `${en} ${number}`, es: `${es} ${number}` };
