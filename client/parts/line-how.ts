import { html, nothing } from 'lit';
import type { TaskView } from '../../shared/view/index.ts';
import { type Say, ui } from '../../shared/words/index.ts';
import { amountsOf } from './line-amounts.ts';
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

/** How many and how heavy; beside it the tally of what runs, and the scale for its trim. */
export function howRow(task: TaskView, seen: Seen) {
  const { pieces, state } = task;
  const { say, kept, isBrief, count } = seen;
  const counts = pieces > 1 && state === 'running';
  return html`<p class="row">
    <span>${amountsOf(task, say, isBrief)}</span>
    ${
      counts
        ? html`<tally-strokes
            .say=${say}
            .task=${task}
            .kept=${kept}
            @count=${({ detail }: CustomEvent<number>) => count(detail)}
          ></tally-strokes>`
        : nothing
    }
    ${weighPlace(task, seen)}
  </p>`;
}

/** Trim goes over the scale once it is all off: while that work runs, and just after. */
function weighPlace({ tubs, state }: TaskView, { say, isWeighing, weigh }: Seen) {
  if (!tubs || (state !== 'running' && state !== 'done')) return nothing;
  return html`<button class="weigh" aria-expanded=${isWeighing} @click=${weigh}>
    ${ui[say.language].weigh}
  </button>`;
}
