import { heatNeededC, loadsOf, slotName } from '../day/index.ts';
import { must, type SlotId } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import { countPieces, pitWords, saySlot, temperature } from '../words/index.ts';
import { batchOf, type Press } from './press.ts';

/**
 * Where the meat lies while hands are at it in the smoker; for a load also how hot, and which side
 * goes to the heat.
 */
export function placesOf(press: Press, task: Task): string[] {
  const stays = staysAround(press, task);
  const [first] = stays;
  if (!first) return [];
  const isLoad = press.live.timesOf(task.id).startS === press.live.timesOf(first.id).startS;
  return [...rackLines(press, stays), ...(isLoad ? loadingLines(press, stays) : [])];
}

/** One stay for each rack load. */
function staysAround({ live }: Press, task: Task): Task[] {
  const { startS } = live.timesOf(task.id);
  return live.index.plan.built.tasks.filter(({ id, batch, work }) => {
    if (batch !== task.batch || work !== 'place') return false;
    const stay = live.timesOf(id);
    return stay.startS <= startS && startS < stay.endS;
  });
}

function rackLines({ live, say }: Press, stays: readonly Task[]): string[] {
  const { state, index } = live;
  const onRacks = new Map<SlotId, { pieces: number; readonly piece: Task['piece'] }>();
  for (const stay of stays) {
    for (const { slot, need } of loadsOf(state, index, stay.id)) {
      const pieces = (onRacks.get(slot)?.pieces ?? 0) + must(stay.loads?.[need], stay.id);
      onRacks.set(slot, { pieces, piece: stay.piece });
    }
  }
  const loads = [...onRacks].map(([slot, { pieces, piece }]) => {
    const rack = saySlot(must(slotName(index.plan.kitchen, slot), slot), say);
    return `${rack}: ${countPieces(pieces, piece, say)}`;
  });
  return loads.length > 0 ? [loads.join(' · ')] : [];
}

function loadingLines(press: Press, stays: readonly Task[]): string[] {
  const { live, say } = press;
  const words = pitWords[say.language];
  const fires = stays.map(({ id }) => heatNeededC(live.state, live.index, id));
  const sets = [...new Set(fires)].filter((setC) => setC !== null);
  const side = stays.some((stay) => hasFatCap(press, stay)) ? heatsOf(press, stays) : [];
  const sides = side.map((heat) => (heat === 'below' ? words.heatBelow : words.heatAbove));
  return [...sets.map((setC) => words.setTo(temperature(setC, say))), ...sides];
}

function hasFatCap(press: Press, task: Task): boolean {
  const { cut } = batchOf(press, task);
  return press.live.index.plan.catalogue.cuts.find(({ id }) => id === cut)?.fatCap ?? false;
}

/** Where the heat comes from, in the smokers that it lies in. */
function heatsOf({ live }: Press, stays: readonly Task[]): ('below' | 'above')[] {
  const { smokers } = live.index.plan.kitchen;
  const loads = stays.flatMap(({ id }) => loadsOf(live.state, live.index, id));
  const slots = loads.map(({ slot }) => slot);
  const heats = smokers
    .filter(({ racks }) => racks.some(({ slot }) => slots.includes(slot)))
    .map(({ heat }) => heat);
  return [...new Set(heats)].filter((heat) => heat !== 'side');
}
