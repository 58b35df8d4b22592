import { html, nothing } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { SmokerDrawing, SmokerView, StationPage } from '../../shared/view/index.ts';
import { textIn } from '../../shared/words/index.ts';
import { fireOrder } from '../parts/fire-order.ts';
import { nothingToDo } from '../shell/notice.ts';
import type { SeenWall } from '../shell/seen-size.ts';
import { type Work, workLine } from '../shell/work-line.ts';
import { hasHighLetters } from './pit-room.ts';

type Shown = Omit<Work, 'drawn'> & {
  readonly view: SmokerView;
  readonly drawn: Work['drawn'];
  readonly seen: SeenWall;
  /** A box for what is to be looked at stands under the line. */
  readonly mustLook: boolean;
};

/** The smoker whose fire is out or cold: no work of its hand comes before that. */
export const failing = ({ smokers }: SmokerView): SmokerDrawing | undefined =>
  smokers.find(({ spell }) => spell);

/**
 * What stands at the foot of the pit: its lines of work, or that there are none; over them, in
 * higher letters than theirs, what a fire that fails is called for.
 */
export function footWork(page: StationPage, { view, seen, mustLook, ...work }: Shown) {
  const { sync, say, narrow } = work;
  const fire = failing(view);
  const order = fire ? `${textIn(fire.name, say)} · ${fireOrder(fire, sync.hubNow(), say)}` : '';
  if (page.now.length === 0) {
    const quiet = nothingToDo(page, work);
    return html`<p class="quiet">${order ? `${order}. ${quiet}` : quiet}</p>`;
  }
  const isAlone = page.now.length === 1 && !mustLook && !fire;
  const isHigh = isAlone && page.now.every(({ task }) => hasHighLetters(task, seen, work));
  const called = fire?.spell?.call?.who;
  return html`<div class="work">
    ${order ? html`<p class="quiet call">${order}</p>` : nothing}
    ${repeat(
      page.now,
      ({ task }) => task.id,
      // A hand is called to one thing at a time.
      ({ task, isDue }) =>
        workLine(
          { task, isDue: isDue && (called === undefined || task.hand !== called) },
          { ...work, brief: !narrow && !isHigh },
        ),
    )}
  </div>`;
}
