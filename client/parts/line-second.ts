import { html, nothing } from 'lit';
import type { Side, TaskView } from '../../shared/view/index.ts';
import { mindedOf, pressingOf, type Say } from '../../shared/words/index.ts';

type Seen = {
  readonly say: Say;
  /** For whose hands the panel is set up. */
  readonly side: Side | null;
  /** A finger has started it just now. */
  readonly isNew: boolean;
  /** Minutes of arc that a line has for its words. */
  readonly wide: number;
  /** It has no second row for them. */
  readonly isFlat: boolean;
};

/** A letter of a small row, in minutes of arc. */
export const ROW_LETTER = 12.3;

/**
 * Under how many and how heavy: what is to be minded; while something is looked at, what is to be
 * found. A call for help, that hands or gloves are to be changed where raw and clean would meet, or
 * why it waits stands before that: the standard stays whatever else is said.
 */
export function secondRow(task: TaskView, seen: Seen) {
  const { say, isFlat } = seen;
  const pressing = pressingOf(task, seen);
  const minded = mindedOf(task, say);
  if (!pressing) {
    return minded ? html`<p class="row"><span class="mind">${minded}</span></p>` : nothing;
  }
  const { said, how } = pressing;
  // Hands are changed before all that they do: of rows that have no room it leaves last.
  if (how === 'mind' && !isFlat) {
    return html`<p class="row hands"><span class="mind">${said}</span></p>
      ${minded ? html`<p class="row">${minded}</p>` : nothing}`;
  }
  const end = minded && how === 'plain' ? '.' : '';
  return html`<p class="row both ${isFlat ? 'one' : ''}"><span class=${how}>${said}${end}</span>
    ${minded ? html`<span>${minded}</span>` : nothing}</p>`;
}

/** Whether what presses and the standard take two small rows of it. */
export function takesTwoRows(task: TaskView, seen: Seen): boolean {
  const { said = '', how } = pressingOf(task, seen) ?? {};
  const minded = mindedOf(task, seen.say);
  if (!said || !minded || seen.isFlat) return false;
  return how === 'mind' || (said.length + GAP + minded.length) * ROW_LETTER > seen.wide;
}

/**
 * Letters of all that it may say before the work is begun, and while that runs: a line does not
 * grow under the finger that starts it.
 */
export function secondLetters(task: TaskView, say: Say, side: Side | null): number {
  const states = [task.state, 'running'] as const;
  return Math.max(
    ...states.map((state) => {
      const seen = { ...task, state };
      const pressing = pressingOf(seen, { say, side, isNew: true })?.said ?? '';
      return pressing.length + (pressing ? GAP : 0) + mindedOf(seen, say).length;
    }),
  );
}

/** Between the two, in letters. */
const GAP = 1;
