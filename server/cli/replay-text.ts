import { because, currentHands, factsOf, type Live } from '../../shared/day/index.ts';
import { must, type PersonId } from '../../shared/kernel/index.ts';
import type { Task } from '../../shared/plan/index.ts';
import { viewOf } from '../../shared/view/index.ts';
import {
  clockTime,
  countPieces,
  type Say,
  sayBecause,
  sayInHand,
  temperature,
  textIn,
} from '../../shared/words/index.ts';
import { columns } from './columns.ts';
import { doneBy, toldBy } from './told.ts';

/** What is next is a glance ahead; the whole of it is in the plan. */
const NEXT_SHOWN = 12;

/** The day as its log tells it, for a terminal. */
export function replayText(live: Live, say: Say, head: readonly string[]): string {
  const { kitchen, built, version } = live.index.plan;
  const { done, running, next } = toldBy(live);
  const more = next.length - NEXT_SHOWN;
  return [
    ...head,
    `${kitchen.name} · ${built.day} · plan ${version} · as of ${clockTime(live.now, say)}`,
    ...viewOf(live, { kind: 'smoker' }).services.map((outlook) => sayInHand(outlook, say)),
    ...section(
      'Done',
      done.map((task) => doneRow(live, task, say)),
    ),
    ...section(
      'Running',
      running.map((task) => runningRow(live, task, say)),
    ),
    ...section(
      'Next',
      next.slice(0, NEXT_SHOWN).map((task) => nextRow(live, task, say)),
    ),
    ...(more > 0 ? [`  and ${more} more`] : []),
    ...section('Temperatures', readingRows(live, say)),
    ...section('Notes', noteRows(live, say)),
    ...section('Screens', screenRows(live, say)),
    '',
  ].join('\n');
}

const section = (heading: string, rows: readonly (readonly string[])[]) =>
  rows.length > 0 ? ['', heading, ...columns(rows)] : [];

function timesIn(live: Live, task: Task, say: Say): { from: string; to: string } {
  const { startS, endS } = live.timesOf(task.id);
  const [from, to] = [startS, endS].map((timeS) => clockTime(live.instantOf(timeS), say));
  return { from: must(from, task.id), to: must(to, task.id) };
}

function nameOf(live: Live, person: PersonId | null): string {
  return live.index.plan.kitchen.crew.find(({ id }) => id === person)?.name ?? '–';
}

function whatOf(live: Live, task: Task, say: Say): string[] {
  const batch = live.index.batches.get(task.batch);
  const pieces = countPieces(task.pieces, task.piece, say);
  return [textIn(task.title, say), pieces, batch ? textIn(batch.name, say) : ''];
}

function doneRow(live: Live, task: Task, say: Say): string[] {
  const { from, to } = timesIn(live, task, say);
  return [from, to, nameOf(live, doneBy(live, task)), ...whatOf(live, task, say)];
}

function runningRow(live: Live, task: Task, say: Say): string[] {
  const { from, to } = timesIn(live, task, say);
  const { counted } = factsOf(live.state, task.id);
  const sofar = counted ? `${counted.done} of ${task.pieces} done` : '';
  const who = nameOf(live, doneBy(live, task));
  return [from, `≈ ${to}`, who, ...whatOf(live, task, say), sofar];
}

function nextRow(live: Live, task: Task, say: Say): string[] {
  const { from, to } = timesIn(live, task, say);
  const why = because(live, task.id);
  const hands = currentHands(live.state, live.index, task.id);
  return [
    from,
    to,
    hands.map((hand) => nameOf(live, hand)).join(', ') || '–',
    ...whatOf(live, task, say),
    why ? sayBecause(why, say) : '',
  ];
}

function readingRows(live: Live, say: Say): string[][] {
  const { kitchen } = live.index.plan;
  return live.state.readings.map(({ at, by, where, tempC }) => {
    const task = where.kind === 'core' ? live.index.tasks.get(where.stay) : undefined;
    const smoker = where.kind === 'air' && kitchen.smokers.find(({ id }) => id === where.smoker);
    const place = task ? whatOf(live, task, say).join(', ') : smoker && textIn(smoker.name, say);
    return [clockTime(at, say), temperature(tempC, say), place || where.kind, nameOf(live, by)];
  });
}

function noteRows(live: Live, say: Say): string[][] {
  return live.state.notes.map(({ at, by, text, task }) => {
    const about = task === null ? undefined : live.index.tasks.get(task);
    const what = about ? whatOf(live, about, say).join(', ') : '';
    return [clockTime(at, say), nameOf(live, by), text, what];
  });
}

function screenRows(live: Live, say: Say): string[][] {
  return [...live.state.who.screens.values()].map(({ name, place, revokedAt }) => {
    const where = [place.role, ...place.stations].join(', ');
    return [name, where, revokedAt === null ? '' : `taken off ${clockTime(revokedAt, say)}`];
  });
}
