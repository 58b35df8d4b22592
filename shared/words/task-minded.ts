import { handChange, type Side, type TaskView } from '../view/index.ts';
import { sayBecause } from './reasons.ts';
import { type Say, textIn } from './say.ts';
import { ui } from './ui.ts';

type Seen = {
  readonly say: Say;
  /** For whose hands the panel is set up. */
  readonly side: Side | null;
  /** A finger has started it just now. */
  readonly isNew: boolean;
};

type Pressing = { readonly said: string; readonly how: 'asked' | 'mind' | 'plain' };

/**
 * What stands before all that is to be minded: a call for help, that hands or gloves are to be
 * changed where raw and clean would meet, or why it waits.
 */
export function pressingOf(task: TaskView, { say, side, isNew }: Seen): Pressing | null {
  const words = ui[say.language];
  if (task.helpAskedAt !== null) return { said: words.helpAsked, how: 'asked' };
  const change = task.state === 'ready' || isNew ? handChange(task, side) : null;
  if (change) return { said: words.handChange[change], how: 'mind' };
  if (task.state !== 'waiting' || !task.because || task.because.kind === 'plan') return null;
  return { said: sayBecause(task.because, say), how: 'plain' };
}

/** Where the probe goes is minded before; once it is in, what hand and eye are to find. */
export function mindedOf({ state, check, mind }: TaskView, say: Say): string {
  const toMind = state === 'running' ? (check?.feel ?? mind) : (mind ?? check?.feel);
  return toMind ? textIn(toMind, say) : '';
}
