import type { drawnParts } from '../../../catalogue/index.ts';
import type { Drawing } from '../drawing.ts';

/** A whole brisket from its lean side: the flat to the left, the point over it to the right. */
export const brisket: Drawing<(typeof drawnParts)['brisket'][number]> = {
  outline:
    'M22 138C40 96 120 72 202 56C290 38 366 66 380 116C390 158 344 196 276 206' +
    'C198 216 84 204 42 176C26 166 18 152 22 138Z',
  lines: [
    'M70 108C92 134 104 158 104 186',
    'M108 96C132 124 146 154 146 192',
    'M148 86C172 116 186 150 186 196',
    'M246 78C272 92 300 96 340 92',
    'M258 104C286 118 320 122 360 116',
    'M274 132C300 144 328 148 356 142',
  ],
  parts: {
    'hard fat': {
      path: 'M240 142C262 130 288 152 300 182C286 196 268 186 256 170C250 160 244 152 240 142Z',
      at: { x: 272, y: 166 },
      figureAt: { x: 292, y: 238 },
    },
    silverskin: {
      path: 'M106 112C132 98 162 96 182 106C176 124 130 134 106 112Z',
      at: { x: 144, y: 112 },
      figureAt: { x: 130, y: 32 },
    },
    'thin end': {
      path: 'M22 138C28 118 38 106 52 98L52 181C28 172 18 156 22 138Z',
      cut: 'M52 90L52 190',
      at: { x: 38, y: 142 },
      figureAt: { x: 20, y: 62 },
    },
    vein: {
      path: 'M202 66C222 82 240 112 252 140C240 134 222 108 202 66Z',
      at: { x: 226, y: 98 },
      figureAt: { x: 222, y: 24 },
    },
    cap: {
      path: 'M52 181C100 204 200 212 276 203L276 209C198 219 84 208 46 180Z',
      at: { x: 180, y: 206 },
      figureAt: { x: 176, y: 242 },
    },
    flat: {
      path: 'M52 98C90 80 140 68 196 57C214 98 240 150 290 203C210 214 96 204 52 181Z',
      at: { x: 84, y: 150 },
      figureAt: { x: 76, y: 240 },
    },
    point: {
      path: 'M198 57C290 38 366 66 380 116C388 152 350 192 292 203C242 150 214 100 198 57Z',
      cut: 'M196 60C216 98 240 148 292 206',
      at: { x: 332, y: 104 },
      figureAt: { x: 360, y: 36 },
    },
  },
};
