import type { SlotId, TaskId } from '../kernel/index.ts';
import { hours, minutes, must } from '../kernel/index.ts';
import { findSlot, type Kitchen, type Smoker } from '../kitchen/index.ts';
import { loadsOf, movesTo } from './arrangement.ts';
import type { SlotMove } from './event.ts';
import type { Live } from './live.ts';
import { impossible, inTheWay, whyNot } from './moves.ts';
import type { MovedLoad, MoveOffer } from './offer.ts';
import type { Outlook } from './outlook.ts';
import { outlooksOn } from './outlook.ts';
import { slotName } from './plan-index.ts';
import type { Refusal } from './refusal.ts';
import { loadKey } from './state.ts';

export type IfMoved =
  | { readonly ok: true; readonly offer: MoveOffer }
  | { readonly ok: false; readonly refusal: Refusal };

/**
 * What would happen if a load went to another slot. Where that slot is taken by what has not come
 * yet, that makes room: it goes to the slot left behind, or to another of the same smoker. What is
 * in a smoker already never moves for another.
 */
export function ifMoved(live: Live, move: SlotMove): IfMoved {
  const { state, index } = live;
  const refusal = impossible(state, index, move);
  if (refusal) return { ok: false, refusal };
  const moves = withRoomMade(live, move);
  const against = whyNot(live, moves);
  if (against) return { ok: false, refusal: against };
  return { ok: true, offer: offerOf(live, moves) };
}

function withRoomMade(live: Live, move: SlotMove): SlotMove[] {
  const left = slotOf(live, move.stay, move.need);
  let moves = [move];
  if (!whyNot(live, moves)) return moves;
  for (const { stay, need, slot } of inTheWay(live, move)) {
    const smoker = findSlot(live.index.plan.kitchen, slot)?.smoker;
    const places = [left, ...slotsBeside(smoker, slot)];
    for (const to of places) {
      const tried = [...moves, { stay, need, to }];
      if (fitsElsewhere(live, tried, to)) {
        moves = tried;
        break;
      }
    }
    if (!whyNot(live, moves)) return moves;
  }
  return moves;
}

/**
 * Whether the last of these moves fits where it goes, whatever may still be wrong with the first.
 */
function fitsElsewhere(live: Live, moves: readonly SlotMove[], to: SlotId): boolean {
  const against = whyNot(live, moves);
  return against === null || ('slot' in against && against.slot.id !== to);
}

const slotsBeside = (smoker: Smoker | undefined, slot: SlotId): SlotId[] =>
  (smoker?.racks ?? []).map((rack) => rack.slot).filter((other) => other !== slot);

function slotOf(live: Live, stay: TaskId, need: number): SlotId {
  const load = loadsOf(live.state, live.index, stay).find((each) => each.need === need);
  return must(load, stay).slot;
}

function offerOf(live: Live, moves: readonly SlotMove[]): MoveOffer {
  const { state, index } = live;
  const slots = new Map(state.slots);
  for (const { stay, need, to } of moves) slots.set(loadKey(stay, need), to);
  const stays = [...new Set(moves.map(({ stay }) => stay))];
  const tried = live.timeline.fork();
  tried.moved(movesTo({ ...state, slots }, index, stays));
  const before = outlooksOn(live.timeline, index);
  const after = outlooksOn(tried, index);
  const inHand = (outlooks: typeof before, id: Parameters<typeof before.get>[0]) =>
    must<Outlook>(outlooks.get(id), id).inHandS;
  return {
    basedOnSeq: state.seq,
    moves: moves.map((move) => movedLoad(live, move)),
    services: index.plan.built.services
      .filter(({ id, closesAt }) => before.has(id) && live.now < closesAt)
      .map(({ id, name, opensAt }) => ({
        id,
        name,
        opensAt,
        beforeS: inHand(before, id),
        afterS: inHand(after, id),
      })),
    tasksChanged: index.plan.built.tasks.filter(({ id, work }) => {
      const shiftS = tried.times(id).startS - live.timesOf(id).startS;
      return work === 'hands' && Math.abs(shiftS) >= minutes(1);
    }).length,
    fatSide: fatSideAfter(live, moves),
    unlit: unlitAt(live, must(moves[0], 'a move')),
  };
}

function movedLoad(live: Live, { stay, need, to }: SlotMove): MovedLoad {
  const { index } = live;
  const { kitchen } = index.plan;
  const task = must(index.tasks.get(stay), stay);
  const from = slotOf(live, stay, need);
  return {
    stay,
    need,
    batchName: must(index.batches.get(task.batch), task.batch).name,
    pieces: must(task.loads?.[need], stay),
    piece: task.piece,
    from: must(slotName(kitchen, from), from),
    to: must(slotName(kitchen, to), to),
  };
}

/**
 * Fat lies toward the heat (common practice, no source): a smoker that heats from the other side
 * turns it.
 */
function fatSideAfter(live: Live, [first]: readonly SlotMove[]): MoveOffer['fatSide'] {
  if (!first) return null;
  const { index } = live;
  const task = must(index.tasks.get(first.stay), first.stay);
  const cutId = index.batches.get(task.batch)?.cut;
  const { kitchen, catalogue } = index.plan;
  if (!catalogue.cuts.find(({ id }) => id === cutId)?.fatCap) return null;
  const was = findSlot(kitchen, slotOf(live, first.stay, first.need))?.smoker.heat;
  const is = findSlot(kitchen, first.to)?.smoker.heat;
  if (is === was || is === undefined || is === 'side') return null;
  return is === 'below' ? 'down' : 'up';
}

/** A smoker burns while something lies in it, and is kept so for this long between two loads. */
const KEPT_BURNING_S = hours(2);

function unlitAt(live: Live, { stay, to }: SlotMove): MoveOffer['unlit'] {
  const { state, index } = live;
  const { kitchen, built } = index.plan;
  const smoker = must(findSlot(kitchen, to), to).smoker;
  const atS = Math.max(live.nowS, live.timesOf(stay).startS);
  const isLit = built.tasks.some(({ id, work }) => {
    if (work !== 'place') return false;
    const { startS, endS } = live.timesOf(id);
    const burns = startS <= atS && atS < endS + KEPT_BURNING_S;
    return (
      burns && loadsOf(state, index, id).some(({ slot }) => smokerOf(slot, kitchen) === smoker)
    );
  });
  return isLit ? null : { name: smoker.name, preheatS: smoker.preheatS };
}

const smokerOf = (slot: SlotId, kitchen: Kitchen) => findSlot(kitchen, slot)?.smoker;
