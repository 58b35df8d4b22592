import type { TaskId } from '../kernel/index.ts';
import type { Standing } from '../plan/index.ts';
import { placementOf } from './arrangement.ts';
import type { Live } from './live.ts';
import { passagesOf } from './passage.ts';

/** Every task of the running day as it now stands: who, where and when. */
export function standingOf(live: Live): Map<TaskId, Standing> {
  const { state, index } = live;
  return new Map(
    [...index.tasks.keys()].map((id) => {
      const { startS, endS } = live.timesOf(id);
      const { mode, uses } = placementOf(state, index, id);
      return [id, { activity: id, mode, uses, startS, endS, stage: stageOf(live, id) }];
    }),
  );
}

/** By what was tapped, also where the clock alone would have it further. */
function stageOf({ state }: Live, id: TaskId): Standing['stage'] {
  const passage = passagesOf(state).get(id);
  if (passage?.finishedAt != null) return 'done';
  return passage?.startedAt != null ? 'running' : 'waiting';
}

/** The tasks that anything has begun of. */
export function startedIn(live: Live): Set<TaskId> {
  const passages = [...passagesOf(live.state)];
  return new Set(passages.flatMap(([id, { startedAt }]) => (startedAt === null ? [] : [id])));
}
