import { svg } from 'lit';

/**
 * A piece of meat from the side, as a pitmaster would chalk it. Drawn in millimetres with its foot
 * at y = 0 and its left end at x = 0, so that it can stand on a shelf at true scale.
 */
export function pieceOutline(cut: string, lengthMm: number) {
  const { thickMm, draw } = shapeOf(cut);
  return draw(lengthMm, thickMm);
}

type Shape = {
  /** Common practice, no source: as they come out of the case. */
  readonly thickMm: number;
  readonly draw: (w: number, h: number) => unknown;
};

/** The first word that the name of a cut holds says how it is drawn. */
const SHAPES: readonly (readonly [string, Shape])[] = [
  ['short-rib', { thickMm: 75, draw: plate }],
  ['rib', { thickMm: 42, draw: slab }],
  ['flat', { thickMm: 60, draw: flat }],
  ['brisket', { thickMm: 105, draw: brisket }],
  ['chicken', { thickMm: 85, draw: chicken }],
  ['shoulder', { thickMm: 120, draw: shoulder }],
];
const ANY: Shape = { thickMm: 90, draw: flat };

const shapeOf = (cut: string) => SHAPES.find(([word]) => cut.includes(word))?.[1] ?? ANY;

const outline = (d: string) => svg`<path class="outline" d=${d} />`;
const detail = (d: string) => svg`<path class="detail" d=${d} />`;

/** Bones as short strokes along a low, even back. */
function slab(w: number, h: number) {
  const bones = Math.max(4, Math.round(w / 34));
  const gap = (w * 0.8) / (bones - 1);
  const strokes = Array.from({ length: bones }, (_, i) => {
    const x = w * 0.1 + i * gap;
    return `M${x} ${-h * 0.78}q${gap * 0.22} ${h * 0.34} 0 ${h * 0.66}`;
  });
  return svg`${outline(
    `M0 0C${w * 0.02} ${-h * 1.05} ${w * 0.1} ${-h} ${w * 0.18} ${-h * 0.97}` +
      `L${w * 0.84} ${-h * 0.9}C${w * 0.96} ${-h * 0.9} ${w} ${-h * 0.6} ${w} 0Z`,
  )}${detail(strokes.join(''))}`;
}

/** Three broad bones under a thick cap. */
function plate(w: number, h: number) {
  const bones = [0.2, 0.5, 0.8].map(
    (at) => `M${w * (at - 0.09)} ${-h * 0.05}a${w * 0.09} ${h * 0.24} 0 0 1 ${w * 0.18} 0`,
  );
  return svg`${outline(
    `M0 0C0 ${-h * 0.9} ${w * 0.06} ${-h} ${w * 0.2} ${-h}` +
      `L${w * 0.82} ${-h * 0.94}C${w * 0.97} ${-h * 0.92} ${w} ${-h * 0.7} ${w} 0Z`,
  )}${detail(bones.join(''))}`;
}

/** A hump over the blade end, with the line of the seam. */
function shoulder(w: number, h: number) {
  return svg`${outline(
    `M0 0C${-w * 0.03} ${-h * 0.9} ${w * 0.14} ${-h * 1.06} ${w * 0.42} ${-h}` +
      `S${w * 1.05} ${-h * 0.86} ${w} 0Z`,
  )}${detail(`M${w * 0.18} ${-h * 0.3}q${w * 0.3} ${-h * 0.34} ${w * 0.62} ${h * 0.02}`)}`;
}

/** Thick at the point, thin at the flat, with the fat between them. */
function brisket(w: number, h: number) {
  return svg`${outline(
    `M0 0C0 ${-h * 0.5} ${w * 0.05} ${-h * 0.55} ${w * 0.3} ${-h * 0.62}` +
      `C${w * 0.55} ${-h * 0.7} ${w * 0.62} ${-h} ${w * 0.8} ${-h}` +
      `S${w} ${-h * 0.6} ${w} 0Z`,
  )}${detail(
    `M${w * 0.42} ${-h * 0.3}` +
      `C${w * 0.6} ${-h * 0.34} ${w * 0.7} ${-h * 0.56} ${w * 0.86} ${-h * 0.56}`,
  )}`;
}

function flat(w: number, h: number) {
  return svg`${outline(
    `M0 0C0 ${-h * 0.86} ${w * 0.06} ${-h} ${w * 0.24} ${-h}` +
      `L${w * 0.7} ${-h * 0.86}C${w * 0.94} ${-h * 0.8} ${w} ${-h * 0.5} ${w} 0Z`,
  )}${detail(`M${w * 0.2} ${-h * 0.42}q${w * 0.3} ${-h * 0.2} ${w * 0.58} 0`)}`;
}

/** A half bird: breast, the fold of the leg, the drumstick's end. */
function chicken(w: number, h: number) {
  return svg`${outline(
    `M0 0C${-w * 0.02} ${-h * 0.7} ${w * 0.14} ${-h} ${w * 0.4} ${-h}` +
      `C${w * 0.62} ${-h} ${w * 0.7} ${-h * 0.72} ${w * 0.8} ${-h * 0.46}` +
      `L${w * 0.97} ${-h * 0.34}Q${w * 1.03} ${-h * 0.16} ${w * 0.94} 0Z`,
  )}${detail(`M${w * 0.5} ${-h * 0.1}Q${w * 0.46} ${-h * 0.62} ${w * 0.72} ${-h * 0.6}`)}`;
}
