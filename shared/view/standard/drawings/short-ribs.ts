import type { drawnParts } from '../../../catalogue/index.ts';
import type { Drawing } from '../drawing.ts';

/** A plate of three short ribs: the meat above, the bones' ends out of its side. */
export const shortRibs: Drawing<(typeof drawnParts)['short ribs'][number]> = {
  outline:
    'M40 78C110 58 260 56 336 74L340 170C250 192 110 194 38 174C32 140 32 108 40 78Z' +
    'M338 88L366 86C374 90 374 104 366 108L339 110M339 118L368 117C376 121 376 135 368 139' +
    'L340 140M340 148L364 148C372 152 372 164 364 168L340 169',
  lines: [
    'M52 100C140 86 250 84 334 98',
    'M50 132C140 120 250 118 336 130',
    'M50 160C140 150 250 150 336 158',
  ],
  parts: {
    silverskin: {
      path: 'M42 78C110 58 262 56 336 74L336 86C250 70 120 72 42 92Z',
      cut: 'M36 92C120 70 250 68 342 86',
      at: { x: 150, y: 72 },
      figureAt: { x: 120, y: 26 },
    },
    'hard fat': {
      path: 'M232 66C262 64 300 68 330 76C312 90 258 90 232 66Z',
      at: { x: 286, y: 76 },
      figureAt: { x: 300, y: 28 },
    },
    'ragged lean': {
      path: 'M38 92C52 106 56 138 44 168C30 150 32 112 38 92Z',
      at: { x: 42, y: 132 },
      figureAt: { x: 18, y: 214 },
    },
    'bone side': {
      path: 'M40 166C120 186 262 184 340 162L340 172C252 194 112 196 38 176Z',
      at: { x: 190, y: 184 },
      figureAt: { x: 190, y: 236 },
    },
    meat: {
      path: 'M50 94C130 76 250 74 334 88L336 162C252 182 120 184 48 164Z',
      at: { x: 232, y: 140 },
      figureAt: { x: 300, y: 234 },
    },
  },
};
