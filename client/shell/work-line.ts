import { html } from 'lit';
import type { CommandId } from '../../shared/kernel/index.ts';
import type { Drawn, Intent, NowTask, StationPage, WorkView } from '../../shared/view/index.ts';
import { isWork } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import '../parts/now-line.ts';
import '../parts/news-line.ts';
import '../parts/wall-notice.ts';
import type { Sync } from '../sync/index.ts';
import { markOf } from './day-controller.ts';
import { refusalOf, saidOf, strayRefusal } from './refusals.ts';
import type { Touched } from './touched.ts';

/** So long news stand on a wall that hears no hub; the hub takes them off by itself. */
const NEWS_MS = 600_000;

/** What a wall hands to its lines. */
export type Work = {
  readonly sync: Sync;
  readonly drawn: Drawn<WorkView>;
  readonly touched: Touched;
  readonly say: Say;
  readonly narrow: boolean;
  readonly brief?: boolean;
};

/** A line under *Now*, with all that its taps do. */
export function workLine(
  { task, isDue }: NowTask,
  { sync, drawn, touched, say, narrow, brief = false }: Work,
) {
  const refused = refusalOf(sync.state, task.id);
  const { view } = sync.state;
  const hub = view && isWork(view) ? view.tasks.find(({ id }) => id === task.id) : undefined;
  const act = ({ detail }: CustomEvent<Intent>) => {
    touched.did(detail);
    sync.tap(detail);
  };
  return html`<now-line
    .say=${say}
    .task=${task}
    ?due=${isDue}
    .now=${sync.hubNow()}
    .people=${drawn.view.people}
    .mark=${markOf(drawn, task.id)}
    .kept=${hub?.counted ?? 0}
    .undo=${refused ? null : touched.undoOf(task.id)}
    .refused=${refused}
    ?narrow=${narrow}
    ?brief=${brief}
    @ask=${act}
    @seen=${({ detail }: CustomEvent<CommandId>) => sync.seen(detail)}
  ></now-line>`;
}

/** What the wall has to say of itself, over its lines. */
export function notice(page: Pick<StationPage, 'now'>, { sync, say }: Pick<Work, 'sync' | 'say'>) {
  const { aloneSince, pending, isOutboxFailing, readOnly, view } = sync.state;
  const shown = page.now.map(({ task }) => task.id);
  const news = view?.news ?? null;
  const isNew = news !== null && sync.hubNow() < news.at + NEWS_MS;
  return html`<div><wall-notice
    .say=${say}
    .aloneSince=${aloneSince}
    .kept=${pending.length}
    ?failing=${isOutboxFailing}
    .readOnly=${readOnly}
    .stray=${strayRefusal(sync.state, shown, say)}
    .said=${saidOf(sync.state, say)}
    @seen=${({ detail }: CustomEvent<CommandId>) => sync.seen(detail)}
  ></wall-notice>
    <news-line
      .say=${say}
      .news=${isNew ? news : null}
      @back=${({ detail }: CustomEvent<CommandId>) => sync.tap({ kind: 'undo', command: detail })}
    ></news-line></div>`;
}
