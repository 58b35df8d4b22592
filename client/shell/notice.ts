import { html } from 'lit';
import type { CommandId, PersonId } from '../../shared/kernel/index.ts';
import type { CheckView, Intent, PendingTap, StationPage, View } from '../../shared/view/index.ts';
import { layChecked } from '../../shared/view/index.ts';
import { type Say, sayNothingToDo } from '../../shared/words/index.ts';
import '../parts/check-band.ts';
import '../parts/news-line.ts';
import '../parts/wall-notice.ts';
import type { Sync } from '../sync/index.ts';
import { readAll, saidOf, strayRefusal } from './refusals.ts';

/** So long news stand on a screen that hears no hub; the hub takes them off by itself. */
const NEWS_MS = 600_000;
/** What is to be looked at beyond these is behind one more box. */
const MOST_BOXES = 3;

/** What this screen has looked at stands no longer, though the hub has not said so yet. */
const openOf = ({ checks }: View, pending: readonly PendingTap[]): readonly CheckView[] =>
  pending.reduce(
    (open, { command }) =>
      command.kind === 'check' || command.kind === 'correct' ? layChecked(open, command) : open,
    checks,
  );

type Shown = { readonly sync: Sync; readonly say: Say };

/** What a screen has to say of itself, and what is to be looked at there, over what it shows. */
export function notice(page: Pick<StationPage, 'now'>, shown: Shown) {
  return html`<div class="over">${told(page, shown)} ${checkBand(shown)}</div>`;
}

/** The same of itself alone: what is to be looked at stands elsewhere on it. */
export function bareNotice(page: Pick<StationPage, 'now'>, shown: Shown) {
  return html`<div class="over">${told(page, shown)}</div>`;
}

function told(page: Pick<StationPage, 'now'>, { sync, say }: Shown) {
  const { aloneSince, pending, isOutboxFailing, readOnly, view } = sync.state;
  const shown = page.now.map(({ task }) => task.id);
  const news = view?.news ?? null;
  const isNew = news !== null && sync.hubNow() < news.at + NEWS_MS;
  return html`<wall-notice
    .say=${say}
    .aloneSince=${aloneSince}
    .now=${aloneSince === null ? null : sync.hubNow()}
    .kept=${pending.length}
    ?failing=${isOutboxFailing}
    .readOnly=${readOnly}
    .closed=${view?.closed ?? null}
    .stray=${strayRefusal(sync.state, shown, say)}
    .said=${saidOf(sync.state, say)}
    @seen=${({ detail }: CustomEvent<CommandId>) => sync.seen(detail)}
    @all-seen=${() => readAll(sync)}
  ></wall-notice>
    <news-line
      .say=${say}
      .news=${isNew ? news : null}
      @back=${({ detail }: CustomEvent<CommandId>) => sync.tap({ kind: 'undo', command: detail })}
    ></news-line>`;
}

/** What is to be looked at at a screen; in a foot of two boxes' height one is shown, not three. */
export function checkBand({ sync, say }: Shown, inFoot = false) {
  const { view } = sync.state;
  return html`<check-band
    ?foot=${inFoot}
    .say=${say}
    .checks=${toLookAt(sync)}
    .people=${view?.people ?? []}
    .now=${sync.hubNow()}
    .most=${inFoot ? 1 : MOST_BOXES}
    .tap=${(intent: Intent, person: PersonId | null) => sync.tap(intent, person)}
  ></check-band>`;
}

/** What is open at a screen, without what was looked at here and the hub has not heard of yet. */
export function toLookAt({ state: { view, pending } }: Sync): readonly CheckView[] {
  return view && view.face !== 'desk' ? openOf(view, pending) : [];
}

/** A fire is to be seen to, or its air to be read: its smoker says by whom. */
const isFireCalled = ({ state: { view } }: Sync): boolean =>
  view?.face === 'smoker' && view.smokers.some(({ spell, unread }) => spell || unread);

/** Said in the place of lines where there are none. */
export const nothingToDo = ({ nextAt }: Pick<StationPage, 'nextAt'>, { sync, say }: Shown) =>
  sayNothingToDo(
    { nextAt, checks: toLookAt(sync), isFireCalled: isFireCalled(sync) },
    sync.hubNow(),
    say,
  );
