import type { Instant } from '../kernel/index.ts';
import { after, hours, instant, minutes, must, seconds } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import { type CheckOn, checkKey } from './check-event.ts';
import { openAs, standingAs } from './check-standing.ts';
import { coolingChecks } from './cooling-checks.ts';
import { keptIn } from './holds.ts';
import { again, type Looking, type OpenCheck, opened } from './open-check.ts';
import { outChecks } from './out-checks.ts';
import { passagesOf } from './passage.ts';
import { type Beat, beatOf, type Watched } from './watched.ts';

/** Common practice, no source: a kitchen's own round says otherwise. */
const USUAL_BEAT: Beat = {
  everyS: hours(2),
  earlyS: minutes(30),
  lateS: minutes(30),
  station: null,
};
/** A probe is read while it is in, and written down so soon after (both judged). */
const READ_IN_S = minutes(30);
const WRITTEN_IN_S = minutes(10);
/** So long before its time is over it is said (judged). */
const DISCARD_SAID_S = minutes(30);
const EVER = instant(0);

/** All that is open of one batch. */
export function batchChecks(look: Looking, watched: Watched): OpenCheck[] {
  return [
    ...outChecks(look, watched),
    ...probeChecks(look, watched),
    ...holdChecks(look, watched),
    ...coolingChecks(look, watched),
  ];
}

/** The end of a cook, and each reheating that the plan has: read while the probe is in. */
function probeChecks(look: Looking, watched: Watched): OpenCheck[] {
  const { probe, reheats, batch } = watched;
  const asked: [Task, CheckOn][] = [
    ...(probe ? [[probe, { kind: 'end-temperature', batch: batch.id }] as [Task, CheckOn]] : []),
    ...reheats.map((task): [Task, CheckOn] => [task, { kind: 'reheat', batch: batch.id }]),
  ];
  return asked.flatMap(([{ id, station }, on]): OpenCheck[] => {
    const { startedAt, finishedAt } = must(passagesOf(look.state).get(id), id);
    if (startedAt === null) return [];
    const standing = standingAs(look, watched, on, { since: EVER, from: startedAt });
    const late =
      finishedAt === null ? after(startedAt, READ_IN_S) : after(finishedAt, WRITTEN_IN_S);
    // It cooks on, and somebody has said so: it is felt again, and no limit hangs on it.
    if (finishedAt === null && standing.kind === 'open' && standing.okAt && isNotYet(look, on)) {
      return opened(look, { on, station, ...again(standing.okAt) }, watched);
    }
    const times = { fromAt: startedAt, dueAt: startedAt, lateAt: late };
    return openAs(look, watched, { on, station, standing, times });
  });
}

function isNotYet({ said }: Looking, on: CheckOn): boolean {
  const last = said.get(checkKey(on))?.at(-1);
  return last?.kind === 'checkRecorded' && last.feel?.is === 'not-yet';
}

/** What stands in a cabinet is read on a beat, and has its time. */
function holdChecks(look: Looking, watched: Watched): OpenCheck[] {
  const { state, index } = look;
  const { batch, places } = watched;
  const kept = keptIn(state, index, places).sort((a, b) => a.since - b.since);
  const last = kept.at(-1);
  if (!last) return [];
  const { station } = must(index.tasks.get(last.task), last.task);
  const endsAt = after(last.since, last.mostS);
  const discard = opened(look, {
    on: { kind: 'discard-time', batch: batch.id },
    station,
    asked: `${Math.round(last.mostS / 360) / 10} h`,
    fromAt: after(endsAt, seconds(-DISCARD_SAID_S)),
    dueAt: endsAt,
    lateAt: endsAt,
  });
  const first = kept.find((each) => each.in === 'cabinet');
  if (!first) return discard;
  const uses = must(index.placements.get(first.task), first.task).uses;
  const beat = beatOf(
    index,
    uses.map(({ resource }) => resource),
    USUAL_BEAT,
  );
  const on = { kind: 'hot-hold', batch: batch.id } as const;
  const standing = standingAs(look, watched, on, { since: first.since, from: first.since });
  const okAt = standing.kind === 'open' ? (standing.okAt ?? first.since) : first.since;
  const times = {
    fromAt: after(okAt, seconds(beat.everyS - beat.earlyS)),
    dueAt: after(okAt, beat.everyS),
    lateAt: after(okAt, seconds(beat.everyS + beat.lateS)),
  };
  const wall = beat.station ?? station;
  const isServed =
    (standing.kind === 'open' || standing.kind === 'ended') && isOver(look, watched, times.dueAt);
  return [
    ...(isServed ? [] : openAs(look, watched, { on, station: wall, standing, times })),
    ...discard,
  ];
}

/** What is left when the last service that sells it closes is said then, and read no more. */
function isOver({ index }: Looking, { batch }: Watched, dueAt: Instant): boolean {
  const selling = index.plan.built.services.filter(
    ({ id, demand }) => id === batch.service || demand.some(({ dish }) => dish === batch.dish),
  );
  return dueAt >= Math.max(...selling.map(({ closesAt }) => closesAt));
}
