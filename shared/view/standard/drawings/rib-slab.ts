import type { drawnParts } from '../../../catalogue/index.ts';
import type { Drawing } from '../drawing.ts';

/** A slab of spare ribs from the bone side; the knife follows the cartilage line. */
export const ribSlab: Drawing<(typeof drawnParts)['rib slab'][number]> = {
  outline:
    'M34 66C90 46 210 42 344 64C364 70 378 84 380 100C380 116 368 128 350 138' +
    'C318 158 280 172 236 184C180 198 118 208 68 202C42 198 28 184 26 160C22 122 24 88 34 66Z',
  lines: [
    'M60 58C52 88 50 122 56 158',
    'M88 53C82 84 80 118 86 155',
    'M116 50C112 80 110 114 116 151',
    'M144 48C142 78 140 110 146 148',
    'M172 47C171 76 170 107 175 144',
    'M200 48C200 75 200 104 204 140',
    'M228 49C229 75 230 102 233 137',
    'M256 51C258 75 259 100 261 133',
    'M284 54C286 76 288 98 289 129',
    'M310 58C312 78 314 96 315 125',
  ],
  parts: {
    breastbone: {
      path: 'M26 163L97 154L103 206C90 206 78 205 68 202C42 198 28 186 26 163Z',
      cut: 'M96 153L104 212',
      at: { x: 62, y: 182 },
      figureAt: { x: 40, y: 238 },
    },
    strip: {
      path: 'M97 154L340 122L340 143C310 161 276 173 236 184C190 196 146 204 103 206Z',
      cut: 'M20 163L346 121',
      at: { x: 214, y: 168 },
      figureAt: { x: 226, y: 226 },
    },
    tail: {
      path: 'M340 63C362 68 378 82 380 100C380 116 370 126 350 138L340 143Z',
      cut: 'M340 54L340 148',
      at: { x: 360, y: 100 },
      figureAt: { x: 384, y: 46 },
    },
    flap: {
      path: 'M122 112C150 96 206 92 248 106C236 122 160 132 122 112Z',
      at: { x: 178, y: 110 },
      figureAt: { x: 168, y: 22 },
    },
    membrane: {
      path: 'M288 64C306 70 320 84 326 104C312 96 298 82 288 64Z',
      at: { x: 306, y: 80 },
      figureAt: { x: 300, y: 22 },
    },
    slab: {
      path: 'M34 66C90 46 210 42 340 63L340 121L26 163C23 128 24 92 34 66Z',
      at: { x: 72, y: 96 },
      figureAt: { x: 60, y: 26 },
    },
  },
};
