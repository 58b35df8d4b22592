import { currentHands } from '../day/index.ts';
import { must } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import type { TaskView } from '../view/index.ts';
import { LagsAmong, taskView } from '../view/index.ts';
import {
  clockTime,
  countPieces,
  pitWords,
  sayBecause,
  scaleWeight,
  temperature,
  textIn,
  ui,
  weight,
} from '../words/index.ts';
import { comesAfter } from './before.ts';
import type { Blank, PaperLine } from './paper.ts';
import { placesOf } from './places.ts';
import { batchOf, type Press, stepOf } from './press.ts';

/** More strokes than these are a field, not a tally: such a count is written as a number. */
const MOST_STROKES = 60;
/** How often a reading is asked for on the line of a set or a hold. */
const READINGS = 3;

/** One task as its line on a sheet. */
export function paperLine(press: Press, task: Task): PaperLine {
  const { live, say, words } = press;
  const view = taskView(live, task.id, new LagsAmong(live, new Set()));
  const byHand = task.work === 'hands';
  const time = (at: TaskView['startAt']) => clockTime(at, say);
  const isDoubtful = task.work === 'fire' && view.endLowAt < view.endHighAt;
  return {
    task: task.id,
    byHand,
    again: false,
    running: view.state === 'running',
    startAt: view.startAt,
    from: time(view.startAt),
    to: time(view.endAt),
    between: isDoubtful ? words.ready(time(view.endLowAt), time(view.endHighAt)) : null,
    who: byHand ? whoDoes(press, task) : '',
    title: textIn(task.title, say),
    amount: amountOf(press, task),
    batch: textIn(view.batchName, say),
    mind: task.mind ? textIn(task.mind, say) : null,
    caution: task.caution ? textIn(task.caution, say) : null,
    details: detailsOf(press, task),
    doneWhen: doneWhen(press, task),
    tally: tallyOf(press, task, view),
    readings: readingsOf(press, task),
  };
}

function whoDoes({ live, say }: Press, task: Task): string {
  const { crew } = live.index.plan.kitchen;
  const names = currentHands(live.state, live.index, task.id).map(
    (hand) =>
      must(
        crew.find(({ id }) => id === hand),
        hand,
      ).name,
  );
  return names.join(', ') || ui[say.language].anyone;
}

function amountOf(press: Press, task: Task): string {
  const { say, words } = press;
  if (stepOf(press, task)?.work === 'serve') return words.portions(batchOf(press, task).portions);
  if (task.byWeight) return weight(task.weightKg, say);
  const pieces = countPieces(task.pieces, task.piece, say);
  const isWeighed = task.work === 'hands' && task.weightKg > 0;
  return isWeighed ? `${pieces}, ${weight(task.weightKg, say)}` : pieces;
}

function detailsOf(press: Press, task: Task): string[] {
  if (task.work !== 'hands') return [];
  const { say } = press;
  const { mix } = task;
  const taken = mix ? [`${textIn(mix.name, say)}: ${scaleWeight(mix.weightKg, say)}`] : [];
  return [...waitsFor(press, task), ...placesOf(press, task), ...taken];
}

function doneWhen({ say, words }: Press, { check }: Task): string | null {
  if (!check) return null;
  const { feel, coreAtLeastC } = check;
  const core =
    coreAtLeastC === undefined ? null : pitWords[say.language].core(temperature(coreAtLeastC, say));
  return words.doneWhen(textIn(feel, say), core);
}

/** What comes before it elsewhere, or with a wait between; the line above needs no words. */
function waitsFor({ live, say }: Press, task: Task): string[] {
  return comesAfter(live, task.id).flatMap((before) => {
    const earlier = must(live.index.tasks.get(before.task), before.task);
    const isHere = earlier.station === task.station;
    if (isHere && before.waitS === 0) return [];
    const { id, title, short } = earlier;
    // Work at another table is named as that table has it.
    const name = { id, title, ...(isHere && short && { short }) };
    return [sayBecause({ kind: 'after', task: name, waitS: before.waitS }, say)];
  });
}

function tallyOf(press: Press, task: Task, { counted }: TaskView): PaperLine['tally'] {
  const step = stepOf(press, task);
  const isByPiece = step?.work === 'hands' && step.time.per === 'piece';
  if (!isByPiece || task.pieces < 2 || task.pieces > MOST_STROKES) return null;
  return { done: counted, pieces: task.pieces };
}

function readingsOf(press: Press, task: Task): Blank[] {
  const { say, words } = press;
  const unit = say.temperature;
  if (task.check?.coreAtLeastC !== undefined) {
    return [{ of: words.blanks.core, times: 1, unit }];
  }
  const step = stepOf(press, task);
  const isKept = step?.work === 'wait' && step.keep !== undefined;
  return isKept ? [{ of: words.blanks.temperature, times: READINGS, unit }] : [];
}
