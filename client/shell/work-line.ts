import { html } from 'lit';
import type { CommandId } from '../../shared/kernel/index.ts';
import type { Drawn, Intent, NowTask, Side, WorkView } from '../../shared/view/index.ts';
import { isWork } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import type { Strip } from '../parts/line-strip.ts';
import '../parts/now-line.ts';
import type { Sync } from '../sync/index.ts';
import { markOf } from './day-controller.ts';
import { readAll, refusalOf } from './refusals.ts';
import type { Touched } from './touched.ts';

/** What a wall hands to its lines. */
export type Work = {
  readonly sync: Sync;
  readonly drawn: Drawn<WorkView>;
  readonly touched: Touched;
  readonly say: Say;
  readonly narrow: boolean;
  readonly brief?: boolean;
  /** Letters of the longest title beside it. */
  readonly longest?: number;
  /** For whose hands the panel is set up; null for anybody's. */
  readonly side: Side | null;
};

/** A line under *Now*, with all that its taps do. */
export function workLine(
  { task, isDue }: NowTask,
  { sync, drawn, touched, say, narrow, brief = false, longest = 0, side }: Work,
) {
  const refused = refusalOf(sync.state, task.id);
  const { view } = sync.state;
  const hub = view && isWork(view) ? view.tasks.find(({ id }) => id === task.id) : undefined;
  const act = ({ detail }: CustomEvent<Intent>) => {
    touched.did(detail);
    sync.tap(detail);
  };
  // A line stays while a weight is typed on it.
  const stay = () => touched.picked(task.id);
  return html`<now-line
    .say=${say}
    .task=${task}
    ?due=${isDue}
    .now=${sync.hubNow()}
    .people=${drawn.view.people}
    .mark=${markOf(drawn, task.id) ?? (task.tubs ? markOf(drawn, task.batch) : null)}
    .kept=${hub?.counted ?? 0}
    .undo=${refused ? null : touched.undoOf(task.id)}
    .refused=${refused}
    .side=${side}
    ?narrow=${narrow}
    ?brief=${brief}
    .longest=${longest}
    @ask=${act}
    @opened=${({ detail }: CustomEvent<Strip | null>) => detail === 'tubs' && stay()}
    @typed=${stay}
    @seen=${({ detail }: CustomEvent<CommandId>) => sync.seen(detail)}
    @all-seen=${() => readAll(sync)}
  ></now-line>`;
}
