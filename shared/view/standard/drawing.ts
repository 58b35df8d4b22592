/** Where something is on the sheet of a drawing: to the right and down, from its upper left. */
export type Point = { readonly x: number; readonly y: number };

/** One part of a cut: its outline as SVG path data, and where its figure is written. */
export type PartDrawn = {
  readonly path: string;
  /** Where the knife goes if it comes off; left out: it is pulled, scraped or lifted. */
  readonly cut?: string;
  /** On the part itself; a leader runs from here to the figure. */
  readonly at: Point;
  readonly figureAt: Point;
};

/** A cut in line art of our own, on a sheet of 400 by 260. */
export type Drawing<Part extends string = string> = {
  readonly outline: string;
  /** Bones, grain, folds: lines that help to find one's way, and are not cut. */
  readonly lines: readonly string[];
  readonly parts: Readonly<Record<Part, PartDrawn>>;
};

export const SHEET = { width: 400, height: 260 } as const;
