import type { Instant } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { CheckEntry, CheckOn } from './check-event.ts';
import { brokenBy, reheatWithinS } from './check-limits.ts';
import { type Standing, standingOfCheck } from './check-story.ts';
import { again, type Looking, type OpenCheck, opened, sinceFailed, span } from './open-check.ts';
import type { Watched } from './watched.ts';

/** Food that is looked at, and what it is to the limits. */
export type Cooked = Pick<Watched, 'food'> & { readonly batch: Pick<Watched['batch'], 'id'> };

/**
 * How a check of a batch stands. Where it is to be reheated, what the reheating showed speaks for
 * it, and from then on it is looked at anew.
 */
export function standingAs(
  look: Looking,
  watched: Cooked,
  on: CheckOn,
  { since, from }: { readonly since: Instant; readonly from: Instant },
): Standing {
  const broken = (entry: CheckEntry) =>
    entry.kind === 'checkRecorded'
      ? brokenBy(look.profile, {
          on,
          food: watched.food,
          tempC: entry.tempC,
          tookS: seconds((entry.at - from) / 1000),
        })
      : null;
  const standing = standingOfCheck(look.said, on, { since, broken });
  if (standing.kind !== 'mending' || standing.action !== 'reheat-at-once') return standing;
  if (on.kind === 'reheat') return standing;
  const reheat = reheatSince(look, watched, standing.since);
  if (reheat.kind !== 'open' || reheat.okAt === null) return standing;
  const later = standingAs(look, watched, on, { since: reheat.okAt, from: reheat.okAt });
  return later.kind === 'open' ? { kind: 'open', okAt: later.okAt ?? reheat.okAt } : later;
}

const reheatSince = (look: Looking, watched: Cooked, since: Instant): Standing =>
  standingAs(look, watched, { kind: 'reheat', batch: watched.batch.id }, { since, from: since });

type Open = {
  readonly on: CheckOn;
  readonly station: OpenCheck['station'];
  readonly standing: Standing;
  readonly times: Pick<OpenCheck, 'fromAt' | 'dueAt' | 'lateAt'>;
};

/** A check as it stands: due by its times, failed, or to be read again. */
export function openAs(
  look: Looking,
  watched: Cooked,
  { on, station, standing, times }: Open,
): OpenCheck[] {
  switch (standing.kind) {
    case 'ended':
      return [];
    case 'failed': {
      const { failure } = standing;
      return opened(look, { on, station, ...sinceFailed(failure), failed: failure }, watched);
    }
    case 'mending':
      if (standing.action === 'reheat-at-once') return reheating(look, watched, standing, station);
      return opened(look, { on, station, ...again(standing.since), isMending: true }, watched);
    default:
      // The end of a cook is read once; what is held is read again and again.
      if (standing.okAt !== null && on.kind !== 'hot-hold') return [];
      return opened(look, { on, station, ...times }, watched);
  }
}

/** Till it is hot again, which its row gives so long. */
function reheating(
  look: Looking,
  watched: Cooked,
  { since }: Extract<Standing, { kind: 'mending' }>,
  station: OpenCheck['station'],
): OpenCheck[] {
  const on: CheckOn = { kind: 'reheat', batch: watched.batch.id };
  const standing = reheatSince(look, watched, since);
  const withinS = reheatWithinS(look.profile);
  if (standing.kind === 'failed') {
    const { failure } = standing;
    return opened(look, { on, station, ...sinceFailed(failure), failed: failure }, watched);
  }
  if (standing.kind === 'ended') return [];
  const from = standing.kind === 'mending' ? standing.since : since;
  return opened(
    look,
    { on, station, ...span(from, withinS * 0.75, withinS), isMending: true },
    watched,
  );
}
