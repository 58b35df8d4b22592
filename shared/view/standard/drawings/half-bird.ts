import type { drawnParts } from '../../../catalogue/index.ts';
import type { Drawing } from '../drawing.ts';

/** Half a chicken, skin up: breast and wing to the left, the leg to the right. */
export const halfBird: Drawing<(typeof drawnParts)['half bird'][number]> = {
  outline:
    'M66 118C74 74 132 50 196 58C232 62 252 76 268 96C296 92 336 70 356 82C372 94 356 112 330 122' +
    'C306 132 292 150 268 170C226 202 128 206 88 172C72 158 62 140 66 118Z' +
    'M104 148C90 160 84 182 98 198C112 206 128 196 132 178C140 166 134 152 122 146',
  lines: [
    'M190 66C204 96 202 132 182 168',
    'M214 176C210 150 224 122 262 104',
    'M330 84C338 92 340 104 336 114',
  ],
  parts: {
    'neck skin': {
      path: 'M66 118C68 102 76 90 88 80C94 94 94 110 88 124C80 128 70 126 66 118Z',
      cut: 'M90 76C96 94 96 112 88 128',
      at: { x: 78, y: 104 },
      figureAt: { x: 40, y: 44 },
    },
    'vent fat': {
      path: 'M216 178C232 168 254 164 268 168C250 186 230 194 210 198Z',
      cut: 'M208 184C228 168 254 162 274 167',
      at: { x: 240, y: 180 },
      figureAt: { x: 262, y: 236 },
    },
    'wing tip': {
      path: 'M90 186C104 178 118 182 126 190C120 200 108 204 98 198Z',
      cut: 'M86 188C102 176 120 180 130 192',
      at: { x: 108, y: 192 },
      figureAt: { x: 92, y: 238 },
    },
    breast: {
      path:
        'M92 84C120 58 160 54 192 60C206 96 204 134 182 172' +
        'C150 180 112 172 94 152C88 126 96 104 92 84Z',
      at: { x: 148, y: 106 },
      figureAt: { x: 150, y: 26 },
    },
    leg: {
      path:
        'M266 98C296 92 336 72 354 84C368 94 354 110 330 120C304 132 290 150 266 168' +
        'C246 164 228 168 214 176C212 148 230 116 266 98Z',
      at: { x: 282, y: 122 },
      figureAt: { x: 320, y: 172 },
    },
  },
};
