import { html, nothing } from 'lit';
import type { TaskView } from '../../shared/view/index.ts';
import { type Say, ui } from '../../shared/words/index.ts';
import { amountsOf, besideAmount } from './line-amounts.ts';
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
 * How many and how heavy, which a brief line has behind its title; beside it the tally of what runs, and the scale for
 * its trim.
 */
export function howRow(task: TaskView, seen: Seen) {
  const { pieces, state } = task;
  const { say, kept, isBrief, count } = seen;
  const counts = pieces > 1 && state === 'running';
  const said = isBrief ? besideAmount(task, say) : amountsOf(task, say);
  const place = weighPlace(task, seen);
  if (said === '' && !counts && place === nothing) return nothing;
  return html`<p class="row">
    ${said ? html`<span>${said}</span>` : nothing}
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
    ${place}
  </p>`;
}

/** Trim goes over the scale once it is all off: while that work runs, and just after. */
function weighPlace({ tubs, state }: TaskView, { say, isWeighing, weigh }: Seen) {
  if (!tubs || (state !== 'running' && state !== 'done')) return nothing;
  return html`<button class="weigh" aria-expanded=${isWeighing} @click=${weigh}>
    ${ui[say.language].weigh}
  </button>`;
}
