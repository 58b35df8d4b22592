import { html, nothing } from 'lit';
import type { TaskView } from '../../shared/view/index.ts';
import { amountsOf, isOfMix, type Say, ui } from '../../shared/words/index.ts';
import './tally-strokes.ts';

type Seen = {
  readonly say: Say;
  /** Pieces that the hub knows of. */
  readonly kept: number;
  readonly isBrief: boolean;
  /** Whether the scale's pad is open. */
  readonly isWeighing: boolean;
  readonly count: (done: number) => void;
  readonly weigh: () => void;
};

/**
 * How many and how heavy; beside it the tally of what runs, and the scale for its trim. A brief
 * line has how many behind its title, and the tally beside its ring.
 */
export function howRow(task: TaskView, seen: Seen) {
  const { say, isBrief } = seen;
  const said = isBrief ? '' : amountsOf(task, say);
  const tally = isBrief ? nothing : tallyPlace(task, seen);
  const place = weighPlace(task, seen);
  if (said === '' && tally === nothing && place === nothing) return nothing;
  return html`<p class="row">${said ? html`<span>${said}</span>` : nothing} ${tally} ${place}</p>`;
}

/** What runs is counted, where there is more than one of it. */
export function tallyPlace(
  task: TaskView,
  { say, kept, isBrief, count }: Pick<Seen, 'say' | 'kept' | 'isBrief' | 'count'>,
) {
  if (task.pieces === 1 || task.byWeight || isOfMix(task)) return nothing;
  if (task.state !== 'running') return nothing;
  return html`<tally-strokes
    .say=${say}
    .task=${task}
    .kept=${kept}
    ?brief=${isBrief}
    @count=${({ detail }: CustomEvent<number>) => count(detail)}
  ></tally-strokes>`;
}

/** Letters of the longest word that stands under its ring. */
export function ringLetters({ language }: Say): number {
  const { start, finish, undo } = ui[language];
  return Math.max(start.length, finish.length, undo.length);
}

/** Trim goes over the scale once it is all off: while that work runs, and just after. */
function weighPlace({ tubs, state }: TaskView, { say, isWeighing, weigh }: Seen) {
  if (!tubs || (state !== 'running' && state !== 'done')) return nothing;
  return html`<button class="weigh" aria-expanded=${isWeighing} @click=${weigh}>
    ${ui[say.language].weigh}
  </button>`;
}
