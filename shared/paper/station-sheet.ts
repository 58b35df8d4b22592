import { passagesOf } from '../day/index.ts';
import type { Instant } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Station } from '../kitchen/index.ts';
import type { Task } from '../plan/index.ts';
import { textIn } from '../words/index.ts';
import { shortDay } from './day-words.ts';
import { paperLine } from './line.ts';
import type { DayStretch, PaperLine, StationSheet } from './paper.ts';
import { smokerBlocks } from './pit.ts';
import type { Press } from './press.ts';

/** What a station has still to do, by local day and start; what lies in a smoker the pit has. */
export function stationSheet(press: Press, station: Station): StationSheet {
  const { live, say } = press;
  const passages = passagesOf(live.state);
  const here = live.index.plan.built.tasks.filter(
    (task) => task.station === station.id && task.work !== 'place',
  );
  const isDone = ({ id }: Task) => passages.get(id)?.finishedAt != null;
  const lines = here
    .filter((task) => !isDone(task))
    .map((task) => paperLine(press, task))
    .sort(inOrder);
  return {
    id: station.id,
    name: textIn(station.name, say),
    smokers: station.pit ? smokerBlocks(press) : [],
    days: byDay(press, toldOnce(press, lines).map(withoutEcho)),
    doneCount: here.filter((task) => task.work === 'hands' && isDone(task)).length,
  };
}

function byDay({ say }: Press, lines: readonly PaperLine[]): DayStretch[] {
  const days = new Map<string, PaperLine[]>();
  for (const line of lines) {
    const day = shortDay(line.startAt, say);
    days.set(day, [...(days.get(day) ?? []), line]);
  }
  return [...days].map(([day, listed]) => ({ day, lines: listed }));
}

/** Rounds come back all day: only the first of its name says what to mind. */
function toldOnce({ live }: Press, lines: readonly PaperLine[]): PaperLine[] {
  const told = new Set<string>();
  return lines.map((line) => {
    const isRound = !live.index.batches.has(must(live.index.tasks.get(line.task), line.task).batch);
    const again = isRound && line.doneWhen === null && told.has(line.title);
    if (isRound) told.add(line.title);
    return again ? { ...line, again, mind: null, caution: null } : line;
  });
}

/** A caution that the same hand was just given for the same batch is not printed again. */
function withoutEcho(line: PaperLine, at: number, lines: readonly PaperLine[]): PaperLine {
  const last = lines.slice(0, at).findLast(({ byHand }) => byHand);
  const isEcho = (['batch', 'who', 'caution'] as const).every((key) => last?.[key] === line[key]);
  return line.byHand && isEcho ? { ...line, caution: null } : line;
}

const inOrder = (a: Ordered, b: Ordered) => a.startAt - b.startAt || (a.task < b.task ? -1 : 1);
type Ordered = { readonly startAt: Instant; readonly task: string };
