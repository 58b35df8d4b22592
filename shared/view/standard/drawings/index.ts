import type { DrawingName } from '../../../catalogue/index.ts';
import type { Drawing } from '../drawing.ts';
import { brisket } from './brisket.ts';
import { halfBird } from './half-bird.ts';
import { ribSlab } from './rib-slab.ts';
import { shortRibs } from './short-ribs.ts';
import { shoulder } from './shoulder.ts';

export const drawings: Readonly<Record<DrawingName, Drawing>> = {
  'rib slab': ribSlab,
  shoulder,
  brisket,
  'short ribs': shortRibs,
  'half bird': halfBird,
};
