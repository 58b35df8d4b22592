import { bothOpen, type Hours } from '../hours.ts';
import type { Net } from '../net.ts';
import { type Arc, at, endOf, startOf } from '../network.ts';
import type { Way } from './ways.ts';

/**
 * The latest times that keep lags, lengths, hours and the orders decided so far, for all at once:
 * of two schedules that keep these the later of each time does, too, as long as an activity's start
 * and end stay in one open span. `undefined`: no times keep them.
 */
export function latestTimes(
  net: Net,
  ways: readonly (Way | undefined)[],
  orders: readonly Arc[],
): Int32Array | undefined {
  const [loS, hiS] = [net.loS.slice(), net.hiS.slice()];
  const hours = ways.map((way) => way && hoursOf(net, way));
  ways.forEach((way, activity) => {
    const start = startOf(activity);
    if (way) loS[start] = Math.max(at(loS, start), way.mode.startLoS);
  });
  const { from, to, weightS, count } = net.arcs;
  const keep = (tail: number, head: number, leastS: number): boolean => {
    const isHiMoved = at(hiS, head) - leastS < at(hiS, tail);
    if (isHiMoved) hiS[tail] = at(hiS, head) - leastS;
    const isLoMoved = at(loS, tail) + leastS > at(loS, head);
    if (isLoMoved) loS[head] = at(loS, tail) + leastS;
    return isHiMoved || isLoMoved;
  };
  for (let moved = true; moved; ) {
    moved = false;
    for (let i = 0; i < count; i++) moved = keep(at(from, i), at(to, i), at(weightS, i)) || moved;
    for (const arc of orders) moved = keep(arc.from, arc.to, arc.weightS) || moved;
    ways.forEach((way, activity) => {
      if (!way) return;
      const [start, end] = [startOf(activity), endOf(activity)];
      moved = keep(start, end, way.mode.minS) || moved;
      moved = keep(end, start, -way.mode.maxS) || moved;
      const open = hours[activity];
      if (open) moved = openAt(open, way.mode.minS, hiS, activity) || moved;
    });
    for (let node = 0; node < hiS.length; node++) {
      if (at(loS, node) > at(hiS, node)) return undefined;
    }
  }
  return hiS;
}

function hoursOf(net: Net, { mode, uses }: Way): Hours | undefined {
  if (mode.anyHour) return undefined;
  let open: Hours | undefined;
  for (const resource of uses) {
    const spans = net.resources[resource]?.spans;
    if (spans) open = open ? bothOpen(open, spans) : spans;
  }
  return open;
}

/** Brings an activity forward to the last span that can hold it; whether that moved it. */
function openAt(open: Hours, leastS: number, hiS: Int32Array, activity: number): boolean {
  const [start, end] = [startOf(activity), endOf(activity)];
  for (let span = open.length - 2; span >= 0; span -= 2) {
    const endS = Math.min(at(hiS, end), at(open, span + 1));
    const startS = Math.min(at(hiS, start), endS - leastS);
    if (startS < at(open, span)) continue;
    const moved = endS < at(hiS, end) || startS < at(hiS, start);
    [hiS[start], hiS[end]] = [startS, endS];
    return moved;
  }
  hiS[start] = -(1 << 30);
  return true;
}
