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
 * starts at the left again.
 */
export function layOut(rack: Pick<RackDrawing, 'lengthM' | 'depthM' | 'loads'>): LaidOut[] {
  const laid: LaidOut[] = [];
  for (const load of rack.loads) {
    const beside = laid.filter(({ load: other }) => other.outAt > load.inAt);
    const fromM = Math.max(0, ...beside.map(endOf));
    laid.push({ load, fromM, ...rowsOf(load, rack.lengthM - fromM, rack.depthM) });
  }
  return laid;
}

const endOf = ({ fromM, perRow, pieceLengthM }: LaidOut) => fromM + perRow * pieceLengthM;

function rowsOf(load: LoadDrawing, lengthM: number, depthM: number) {
  const along = arrange(load, { lengthM, depthM }, [load.pieceLengthM, load.pieceWidthM]);
  if (along.holds >= load.pieces) return along;
  const across = arrange(load, { lengthM, depthM }, [load.pieceWidthM, load.pieceLengthM]);
  return across.holds > along.holds ? across : along;
}

type Free = { readonly lengthM: number; readonly depthM: number };

/**
 * As few beside one another as the depth allows, so that neighbours on the rack keep their room.
 */
function arrange(
  { pieces }: LoadDrawing,
  free: Free,
  [lengthM, widthM]: readonly [number, number],
) {
  const beside = Math.floor(free.lengthM / lengthM + 1e-6);
  const deep = Math.floor(free.depthM / widthM + 1e-6);
  const perRow = Math.max(1, Math.min(beside, Math.ceil(pieces / Math.max(1, deep))));
  return {
    pieceLengthM: lengthM,
    perRow,
    rows: Math.ceil(pieces / perRow),
    holds: beside * deep,
  };
}
