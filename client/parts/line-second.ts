import { html, nothing } from 'lit';
import type { Side, TaskView } from '../../shared/view/index.ts';
import { handChange } from '../../shared/view/index.ts';
import { type Say, sayBecause, textIn, ui } from '../../shared/words/index.ts';

type Seen = {
  readonly say: Say;
  /** For whose hands the panel is set up. */
  readonly side: Side | null;
  /** A finger has started it just now. */
  readonly isNew: boolean;
};

/**
 * Under how many and how heavy: a call for help, that hands or gloves are to be changed where raw
 * and clean would meet, why it waits, or the one thing to mind; while something is looked at, what
 * is to be found.
 */
export function secondRow(task: TaskView, { say, side, isNew }: Seen) {
  const words = ui[say.language];
  const mind = (said: string) => html`<p class="row"><span class="mind">${said}</span></p>`;
  if (task.helpAskedAt !== null) {
    // Whoever comes to help does it to the same standard.
    return html`<p class="row"><span class="asked">${words.helpAsked}</span></p>
      ${task.mind ? html`<p class="row">${textIn(task.mind, say)}</p>` : nothing}`;
  }
  const change = task.state === 'ready' || isNew ? handChange(task, side) : null;
  if (change) return mind(words.handChange[change]);
  if (task.state === 'waiting' && task.because && task.because.kind !== 'plan') {
    return html`<p class="row">${sayBecause(task.because, say)}</p>`;
  }
  // Where the probe goes is minded before; once it is in, what hand and eye are to find.
  const feel = task.check?.feel;
  const toMind = task.state === 'running' ? (feel ?? task.mind) : (task.mind ?? feel);
  return toMind ? mind(textIn(toMind, say)) : nothing;
}
