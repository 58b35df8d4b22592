import type { LoadDrawing, RackDrawing } from './view.ts';

/**
 * A load as it lies on its rack, in metres from the left end; what does not fit beside lies in rows
 * behind.
 */
export type LaidOut = {
  readonly load: LoadDrawing;
  readonly fromM: number;
  readonly pieceLengthM: number;
  readonly perRow: number;
  readonly rows: number;
};

/**
 * Lays the loads of a rack that are there at the same time side by side, at true scale; pieces lie
 * along the rack unless more of them fit the other way. A load that comes when others have gone
 * starts at the left again; one that has the rack to itself takes its whole length.
 */
export function layOut(rack: Pick<RackDrawing, 'lengthM' | 'depthM' | 'loads'>): LaidOut[] {
  const laid: LaidOut[] = [];
  for (const load of rack.loads) {
    const beside = laid.filter(({ load: other }) => meet(other, load));
    const fromM = Math.max(0, ...beside.map(endOf));
    const isAlone = !rack.loads.some((other) => other !== load && meet(other, load));
    const free = { lengthM: rack.lengthM - fromM, depthM: rack.depthM, isAlone };
    laid.push({ load, fromM, ...rowsOf(load, free) });
  }
  return laid;
}

const meet = (a: LoadDrawing, b: LoadDrawing) => a.inAt < b.outAt && b.inAt < a.outAt;
const endOf = ({ fromM, perRow, pieceLengthM }: LaidOut) => fromM + perRow * pieceLengthM;

type Free = { readonly lengthM: number; readonly depthM: number; readonly isAlone: boolean };

function rowsOf(load: LoadDrawing, free: Free) {
  const along = arrange(load, free, [load.pieceLengthM, load.pieceWidthM]);
  if (along.holds >= load.pieces) return along;
  const across = arrange(load, free, [load.pieceWidthM, load.pieceLengthM]);
  return across.holds > along.holds ? across : along;
}

/** Beside others as few in a row as the depth allows; alone as many as the length allows. */
function arrange(
  { pieces }: LoadDrawing,
  free: Free,
  [lengthM, widthM]: readonly [number, number],
) {
  const beside = Math.floor(free.lengthM / lengthM + 1e-6);
  const deep = Math.floor(free.depthM / widthM + 1e-6);
  const wanted = free.isAlone ? pieces : Math.ceil(pieces / Math.max(1, deep));
  const rows = Math.ceil(pieces / Math.max(1, Math.min(beside, wanted)));
  return {
    pieceLengthM: lengthM,
    perRow: Math.ceil(pieces / rows),
    rows,
    holds: beside * deep,
  };
}
