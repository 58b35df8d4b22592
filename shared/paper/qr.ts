import { encode } from 'uqr';

/** Modules of white that a reader needs on each side (ISO/IEC 18004, from memory: four). */
const QUIET = 4;

/**
 * A text as a QR code of level M, which stands about 15 % of damage: an SVG of nothing but squares,
 * so that a printer keeps every edge.
 */
export function qrMarkup(text: string): string {
  const { data, size } = encode(text, { ecc: 'M', border: QUIET, boostEcc: false });
  const squares = data.flatMap((row, y) => rowPath(row, y)).join('');
  return (
    `<svg class="qr" viewBox="0 0 ${size} ${size}" ` +
    `shape-rendering="crispEdges" aria-hidden="true"><path d="${squares}"/></svg>`
  );
}

/** Each run of black of a row as one rectangle. */
function rowPath(row: readonly boolean[], y: number): string[] {
  const starts = row.flatMap((isBlack, x) => (isBlack && !row[x - 1] ? [x] : []));
  return starts.map((x) => {
    const end = row.indexOf(false, x);
    return `M${x} ${y}h${(end < 0 ? row.length : end) - x}v1H${x}z`;
  });
}
