import type { Moment, Net, NetClash, NetMode, NetPart, NetResource } from './net.ts';
import type { Arcs } from './network.ts';
import { at, grouped, otherEnd } from './network.ts';

/**
 * The same net with the clock turned round: every time changes its sign, a start is an end, what
 * came before comes after. Scheduling it forward from its earliest times schedules the net backward
 * from its goals. Mirrored twice it is what it was.
 */
export function mirrored(net: Net): Net {
  return {
    ...net,
    arcs: mirroredArcs(net.arcs, net.size * 2),
    loS: negatedByNode(net.hiS),
    hiS: negatedByNode(net.loS),
    dated: net.dated.map((_, node) => at(net.dated, otherEnd(node))),
    modes: net.modes.map((modes) => modes.map(mirroredMode)),
    resources: net.resources.map(mirroredResource),
    clashes: net.clashes.map(mirroredClash),
  };
}

function mirroredArcs(arcs: Arcs, nodes: number): Arcs {
  const from = arcs.to.map(otherEnd);
  const to = arcs.from.map(otherEnd);
  return { ...arcs, from, to, out: grouped(from, nodes), into: grouped(to, nodes) };
}

const negatedByNode = (timesS: Int32Array) => timesS.map((_, node) => -at(timesS, otherEnd(node)));

const mirroredMode = (mode: NetMode): NetMode => ({
  ...mode,
  startLoS: -mode.endHiS,
  endHiS: -mode.startLoS,
});

function mirroredResource(resource: NetResource): NetResource {
  const { spans, changeS, states } = resource;
  const transposed = changeS.map((_, i) =>
    at(changeS, (i % states) * states + Math.floor(i / states)),
  );
  return {
    ...resource,
    spans: spans?.map((_, i) => -at(spans, spans.length - 1 - i)),
    changeS: transposed,
  };
}

const mirroredClash = (clash: NetClash): NetClash => ({
  ...clash,
  upper: mirroredPart(clash.upper),
  lower: mirroredPart(clash.lower),
});

const mirroredPart = (part: NetPart): NetPart => ({
  activity: part.activity,
  begin: mirroredMoment(part.finish),
  finish: mirroredMoment(part.begin),
});

const mirroredMoment = ({ end, offsetS }: Moment): Moment => ({
  end: end === 0 ? 1 : 0,
  offsetS: -offsetS,
});
