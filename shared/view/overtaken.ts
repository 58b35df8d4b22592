import type { Command, CommandHead, CureIntent, Refusal, TaskIntent } from '../day/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { SmokerDrawing, TaskView } from './view.ts';
import { isWork, type View } from './views.ts';

/** A tap that the hub did not take, and why. */
type Refused = { readonly command: Command; readonly refusal: Refusal };

/**
 * Whether a refused tap says nothing any more: what it asked for has happened since, what stood
 * against it has gone, or what it was about is not there any longer. What this face cannot tell
 * stands till somebody has read it.
 */
export function isOvertaken({ command, refusal }: Refused, view: View): boolean {
  switch (command.kind) {
    case 'reading':
    case 'moveSlots':
    case 'smokerDown':
    case 'smokerCold':
    case 'smokerUp':
      return 'smokers' in view && isFireOvertaken(command, view.smokers);
    case 'handOut':
    case 'handIn': {
      const person = view.people.find(({ id }) => id === command.hand);
      return !person || person.isOut === (command.kind === 'handOut');
    }
    case 'sold':
    case 'soldOut':
    case 'panEmpty':
      return view.face === 'pass' && isSaleOvertaken(command, view);
    case 'delivery':
    case 'carryOver':
      return view.face === 'desk' && isStockOvertaken(command, view);
    case 'check':
    case 'correct':
      return false;
    case 'closeDay':
      return view.closed !== null;
    case 'weighTub': {
      if (!isWork(view)) return false;
      const tubs = view.tasks.flatMap((task) =>
        task.batch === command.batch ? (task.tubs ?? []) : [],
      );
      const tub = tubs.find((each) => each.tub === command.tub);
      return !tub || (tub.isWeighed && tub.weightKg === command.weightKg);
    }
    case 'undo':
      return view.news?.command !== command.command;
    case 'start':
    case 'finish':
    case 'takeBack':
    case 'count':
    case 'late':
    case 'needHelp':
    case 'helpCame':
    case 'giveTo':
    case 'weighCure': {
      if (!isWork(view)) return false;
      const task = view.tasks.find(({ id }) => id === command.task);
      return !task || isTaskOvertaken({ command, refusal }, task);
    }
    default:
      return false;
  }
}

type OfTask = CommandHead &
  (Exclude<TaskIntent, { kind: 'reading' | 'moveSlots' | 'note' }> | CureIntent);

function isTaskOvertaken(
  { command, refusal }: { readonly command: OfTask; readonly refusal: Refusal },
  task: TaskView,
): boolean {
  const isOpen = task.state === 'waiting' || task.state === 'ready';
  const isDone = task.state === 'done';
  switch (command.kind) {
    case 'start':
      return !isOpen || (refusal.rule === 'waits-for' && task.state === 'ready');
    case 'finish':
      return isDone || (refusal.rule === 'not-started' && task.state === 'running');
    case 'takeBack':
      return isOpen;
    case 'count':
      return isDone || task.counted >= command.done;
    case 'needHelp':
      return isDone || task.helpAskedAt !== null;
    case 'helpCame':
      return task.helpAskedAt === null;
    case 'giveTo':
      return isDone || task.hand === command.hand;
    case 'late':
      return isDone;
    case 'weighCure':
      return !isOpen || (task.cure?.weighed ?? null) !== null;
    default:
      return unreachable(command);
  }
}

type OfFire = Extract<
  Command,
  { readonly kind: 'reading' | 'moveSlots' | 'smokerDown' | 'smokerCold' | 'smokerUp' }
>;

function isFireOvertaken(command: OfFire, smokers: readonly SmokerDrawing[]): boolean {
  const racks = smokers.flatMap((smoker) => smoker.racks);
  if (command.kind === 'moveSlots') {
    return command.moves.every(({ stay, need, to }) => {
      const rack = racks.find(({ loads }) =>
        loads.some((load) => load.stay === stay && load.need === need),
      );
      return !rack || rack.slot.id === to;
    });
  }
  if (command.kind !== 'reading') {
    const smoker = smokers.find(({ id }) => id === command.smoker);
    const asked = { smokerDown: 'down', smokerCold: 'cold', smokerUp: null }[command.kind];
    return !smoker || (smoker.spell?.kind ?? null) === asked;
  }
  const { where, tappedAt } = command;
  const read =
    where.kind === 'air'
      ? smokers.find(({ id }) => id === where.smoker)?.lastAir
      : racks.flatMap(({ loads }) => loads).find(({ stay }) => stay === where.stay)?.lastCore;
  // Of what is not there any longer nothing is read.
  return read === undefined || (read !== null && read.at >= tappedAt);
}

type OfSale = Extract<Command, { readonly kind: 'sold' | 'soldOut' | 'panEmpty' }>;

function isSaleOvertaken(
  command: OfSale,
  { service, dishes }: Extract<View, { readonly face: 'pass' }>,
): boolean {
  if (command.kind === 'panEmpty') {
    const pan = dishes.flatMap(({ pans }) => pans).find(({ batch }) => batch === command.batch);
    return !pan || pan.isEmptied;
  }
  const dish = dishes.find((each) => each.dish === command.dish);
  if (!dish || service?.id !== command.service) return true;
  return command.kind === 'sold' ? dish.sold === command.sold : dish.soldOutAt !== null;
}

type OfStock = Extract<Command, { readonly kind: 'delivery' | 'carryOver' }>;

function isStockOvertaken(
  command: OfStock,
  { pull, end }: Extract<View, { readonly face: 'desk' }>,
): boolean {
  if (command.kind === 'delivery') {
    const row = pull.find(({ cut }) => cut === command.cut);
    return !row || row.came?.pieces === command.pieces;
  }
  const pan = end.dishes.flatMap(({ pans }) => pans).find(({ batch }) => batch === command.batch);
  return !pan || pan.keptKg === command.weightKg;
}
