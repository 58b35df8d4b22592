import type { Live, Spell } from '../day/index.ts';
import {
  coresOf,
  doorsOf,
  heatNeededC,
  lastUnseen,
  loadsOf,
  passagesOf,
  slotName,
  spellOf,
} from '../day/index.ts';
import type { Instant, SlotId, SmokerId, TaskId } from '../kernel/index.ts';
import { after, hours, instant, minutes, must } from '../kernel/index.ts';
import type { Smoker } from '../kitchen/index.ts';
import { fireCall, pitHand } from './alerts.ts';
import { cookDrawing } from './cook-drawing.ts';
import type { LoadDrawing, SmokerDrawing } from './view.ts';

/** One smoker as its cutaway: what is in each rack, what comes after, and how its fire stands. */
export function smokerDrawing(live: Live, smoker: Smoker): SmokerDrawing {
  const { kitchen } = live.index.plan;
  return {
    id: smoker.id,
    name: smoker.name,
    heat: smoker.heat,
    setC: fireNow(live, smoker),
    lastAir: lastAir(live, smoker.id),
    openedAt: lastOpened(live, smoker.id),
    ...unseenLately(live, smoker.id),
    ...unreadLong(live, smoker),
    spell: spellDrawn(live, smoker.id),
    racks: smoker.racks.map((rack) => ({
      slot: must(slotName(kitchen, rack.slot), rack.slot),
      lengthM: rack.lengthM,
      depthM: rack.depthM,
      loads: loadsIn(live, rack.slot),
    })),
  };
}

/** Air tells of an opening for so long; then it is as it was. */
const LATELY_MS = minutes(30) * 1000;

function lastOpened({ state, now }: Live, smoker: SmokerId): Instant | null {
  const last = doorsOf(state, smoker, instant(minuteOf(now) - LATELY_MS)).at(-1);
  return last ?? null;
}

/** Walls are drawn anew by the minute: what is forgotten with time goes with one. */
const minuteOf = (now: Instant) => now - (now % 60_000);

/** What nobody read is said for so long: it widens what is foreseen (judged). */
const UNSEEN_SAID_MS = hours(3) * 1000;

function unseenLately({ state, now }: Live, smoker: SmokerId): Pick<SmokerDrawing, 'unseen'> {
  const since = instant(minuteOf(now) - UNSEEN_SAID_MS);
  const unseen = lastUnseen(state, smoker, since);
  return unseen && unseen.to > since ? { unseen } : {};
}

/** Air is read so often while meat lies in it, and then within so long (judged; no source). */
const READ_EVERY_S = hours(1);
const READ_WITHIN_S = minutes(15);

/** What was read before the meat went in says nothing of it. */
function unreadLong(live: Live, smoker: Smoker): Pick<SmokerDrawing, 'unread'> {
  const loads = smoker.racks.flatMap(({ slot }) => loadsIn(live, slot)).filter(({ here }) => here);
  if (loads.length === 0 || spellOf(live.state, smoker.id)) return {};
  const last = lastAir(live, smoker.id);
  const inAt = Math.min(...loads.map((load) => load.inAt));
  const dueAt = instant(Math.max(inAt, last ? after(last.at, READ_EVERY_S) : inAt));
  if (minuteOf(live.now) < dueAt) return {};
  const name = pitHand(live);
  return { unread: { byAt: after(dueAt, READ_WITHIN_S), ...(name !== null && { name }) } };
}

function spellDrawn(live: Live, smoker: SmokerId): SmokerDrawing['spell'] {
  const spell = spellOf(live.state, smoker);
  if (!spell) return null;
  const { kind, backAt } = spell;
  const call = fireCall(live, smoker);
  const since = beganAt(live.state, spell);
  if (!call) return { kind, since, backAt };
  const { who, name, byAt } = call;
  return { kind, since, backAt, call: { who, name, byAt } };
}

/** A time that is thought anew begins another spell; what lies in it has stood still before. */
function beganAt(state: Live['state'], { smoker, kind, from }: Spell): Instant {
  const before = state.happened.spells.find(
    (each) => each.smoker === smoker && each.kind === kind && each.until === from,
  );
  return before && before.from < from ? beganAt(state, before) : from;
}

/** Loads not yet off, in the order they come. */
function loadsIn(live: Live, slot: SlotId): LoadDrawing[] {
  return stays(live)
    .flatMap((stay) => loadsOf(live.state, live.index, stay))
    .filter((load) => load.slot === slot)
    .map(({ stay, need }) => loadDrawing(live, stay, need))
    .sort((a, b) => a.inAt - b.inAt);
}

function stays(live: Live): TaskId[] {
  const passages = passagesOf(live.state);
  return live.index.plan.built.tasks
    .filter(({ id, work }) => work === 'place' && !passages.get(id)?.finishedAt)
    .map(({ id }) => id);
}

function loadDrawing(live: Live, stay: TaskId, need: number): LoadDrawing {
  const { index, state } = live;
  const task = must(index.tasks.get(stay), stay);
  const batch = must(index.batches.get(task.batch), task.batch);
  const cut = must(
    index.plan.catalogue.cuts.find(({ id }) => id === batch.cut),
    batch.cut,
  );
  const lies = must(task.lies, stay);
  const { startS, endS } = live.timesOf(stay);
  const core = coresOf(state, stay).at(-1);
  return {
    stay,
    need,
    batchName: batch.name,
    cut: cut.id,
    pieces: must(task.loads?.[need], `${stay}#${need}`),
    pieceLengthM: lies.lengthM,
    pieceWidthM: lies.widthM,
    piece: task.piece,
    fatCap: cut.fatCap,
    here: passagesOf(state).get(stay)?.startedAt != null,
    inAt: live.instantOf(startS),
    next: nextFor(live, stay),
    outAt: live.instantOf(endS),
    cook: cookDrawing(live, stay),
    lastCore: core ? { tempC: core.tempC, at: core.at } : null,
  };
}

/** The stage of the fire that the load is in, or comes to, and the hands' task that ends it. */
function nextFor(live: Live, stay: TaskId): LoadDrawing['next'] {
  const { index, state } = live;
  const passages = passagesOf(state);
  const batch = index.tasks.get(stay)?.batch;
  const stage = index.plan.built.tasks.find(
    ({ id, work, batch: of }) => work === 'fire' && of === batch && !passages.get(id)?.finishedAt,
  );
  if (!stage) return null;
  const ends = (index.lagsOutOf.get(stage.id) ?? []).find(
    ({ from, to }) => from.end === 'end' && index.tasks.get(to.activity)?.work === 'hands',
  );
  const { lowS, highS } = live.endRangeOf(stage.id);
  const { title, short } = must(index.tasks.get(ends?.to.activity ?? stage.id), stage.id);
  return {
    title: short ?? title,
    lowAt: live.instantOf(lowS),
    at: live.instantOf(live.timesOf(stage.id).endS),
    highAt: live.instantOf(highS),
  };
}

/** The set temperature asked for by what is in now, or by what comes next. */
function fireNow(live: Live, smoker: Smoker): SmokerDrawing['setC'] {
  const slots = new Set(smoker.racks.map(({ slot }) => slot));
  const here = stays(live)
    .filter((stay) => loadsOf(live.state, live.index, stay).some(({ slot }) => slots.has(slot)))
    .sort((a, b) => live.timesOf(a).startS - live.timesOf(b).startS)[0];
  if (!here) return null;
  return heatNeededC(live.state, live.index, here);
}

function lastAir(live: Live, smoker: SmokerId): SmokerDrawing['lastAir'] {
  const { readings, happened } = live.state;
  const air = [
    ...readings.filter(({ where }) => where.kind === 'air' && where.smoker === smoker),
    // Who says that it is down or cold has read it too.
    ...happened.spells
      .filter((spell) => spell.smoker === smoker)
      .map(({ from: at, tempC }) => ({ at, tempC })),
  ].sort((a, b) => a.at - b.at);
  const last = air.at(-1);
  if (!last) return null;
  const before = air.at(-2);
  const hours = before ? (last.at - before.at) / 3_600_000 : 0;
  const trendCPerHour = before && hours > 0 ? (last.tempC - before.tempC) / hours : 0;
  return { tempC: last.tempC, at: last.at, trendCPerHour };
}
