import type { Net, NetMode, NetResource } from '../net.ts';
import { at, endOf, startOf } from '../network.ts';
import { Windows } from '../windows.ts';

/**
 * The windows that lags, lengths and hours leave: no activity ends later than some way to do it has
 * its resources open, each need by itself. The latest times that keep all this together are well
 * defined, since of two that do the later of each time does, too.
 */
export function latestWithHours(net: Net): Windows {
  const windows = Windows.of(net.arcs, net.loS, net.hiS);
  const asks = (mode: NetMode) =>
    mode.needs.map(({ resources }) => resources.map((i) => net.resources[i]));
  const asksHours = (mode: NetMode) =>
    !mode.anyHour && asks(mode).some((oneOf) => oneOf.every((resource) => resource?.spans));
  const held = net.modes.flatMap((modes, activity) => (modes.every(asksHours) ? [activity] : []));
  for (let moved = true; moved && !windows.isBroken; ) {
    moved = false;
    for (const activity of held) {
      const hiS = at(windows.hiS, endOf(activity));
      const ends = (net.modes[activity] ?? []).map((mode) =>
        Math.min(...asks(mode).map((oneOf) => latestOpen(oneOf, mode.minS, hiS))),
      );
      const latestS = Math.max(...ends);
      if (latestS >= hiS) continue;
      moved = true;
      // Never open at all: any time before all others says so.
      windows.notAfter(endOf(activity), Math.max(latestS, at(windows.loS, startOf(activity)) - 1));
    }
  }
  return windows;
}

type OneOf = readonly (NetResource | undefined)[];

/** The latest end up to `hiS` at which one of these has been open for so long. */
function latestOpen(oneOf: OneOf, lengthS: number, hiS: number): number {
  let latestS = Number.NEGATIVE_INFINITY;
  for (const resource of oneOf) {
    if (!resource?.spans) return hiS;
    const { spans } = resource;
    for (let i = 0; i < spans.length; i += 2) {
      const endS = Math.min(hiS, at(spans, i + 1));
      if (endS - lengthS >= at(spans, i)) latestS = Math.max(latestS, endS);
    }
  }
  return latestS;
}
