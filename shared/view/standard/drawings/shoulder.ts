import type { drawnParts } from '../../../catalogue/index.ts';
import type { Drawing } from '../drawing.ts';

/** A boneless shoulder, laid open a little along the seam that the blade left. */
export const shoulder: Drawing<(typeof drawnParts)['shoulder'][number]> = {
  outline:
    'M54 96C70 58 140 40 214 42C294 44 352 66 366 110C378 150 352 192 296 206' +
    'C226 222 128 218 76 194C40 176 40 132 54 96Z',
  lines: [
    'M70 116C130 98 250 92 354 112',
    'M96 186C140 168 180 160 226 160C276 160 318 168 340 180',
    'M150 138C170 150 178 170 176 200',
    'M262 140C256 160 258 182 266 206',
  ],
  parts: {
    fat: {
      path: 'M54 96C70 58 140 40 214 42C294 44 346 64 362 98C300 70 120 66 54 96Z',
      cut: 'M56 94C116 64 300 66 360 98',
      at: { x: 120, y: 66 },
      figureAt: { x: 92, y: 22 },
    },
    cap: {
      path:
        'M60 96C120 70 296 74 360 102C356 114 352 114 346 114' +
        'C256 94 132 100 70 118C60 114 58 104 60 96Z',
      at: { x: 270, y: 88 },
      figureAt: { x: 308, y: 24 },
    },
    vein: {
      path: 'M196 150C214 142 236 146 250 156C232 164 210 162 196 150Z',
      at: { x: 224, y: 153 },
      figureAt: { x: 230, y: 240 },
    },
    gland: {
      path: 'M128 150C136 138 156 138 162 150C160 164 136 166 128 150Z',
      at: { x: 145, y: 152 },
      figureAt: { x: 130, y: 240 },
    },
    bone: {
      path: 'M176 120C192 112 226 110 246 116C232 124 196 126 176 120Z',
      at: { x: 210, y: 118 },
      figureAt: { x: 204, y: 20 },
    },
    muscle: {
      path:
        'M70 120C140 100 260 96 356 116C372 152 346 188 292 202C226 216 132 212 82 190' +
        'C54 176 54 146 70 120Z',
      at: { x: 316, y: 158 },
      figureAt: { x: 378, y: 220 },
    },
  },
};
