import { after, celsius, hours } from '../../../shared/kernel/index.ts';
import { type CookDrawing, pitRule, type TaskView } from '../../../shared/view/index.ts';
import { at, NOW, smokerView, squareRibs } from '../../client/fixtures.ts';
import type { Shown, State } from '../state.ts';

const hour = (count: number) => after(NOW, hours(count));
const rule = pitRule(smokerView.smokers, NOW);

export const cook: CookDrawing = {
  startedAt: hour(-4),
  cores: [-3, -2, -1, 0].map((count) => ({ at: hour(count), tempC: celsius(62 + 9 * count) })),
  fan: [0, 1, 2, 3, 4].map((count) => ({
    at: hour(count),
    p10C: celsius(62 + 6 * count),
    p50C: celsius(62 + 8 * count),
    p90C: celsius(62 + 9.5 * count),
  })),
  stages: [{ tempC: celsius(93), p10At: hour(3), p50At: hour(4), p90At: hour(5.5), never: 0 }],
  wrappedAt: hour(-1),
  openedAt: [hour(-2)],
  isCalibrated: false,
};

const ring = (name: string, given: object) => ({ name, wide: 172, high: 120, given: { ...given } });

const tally = (name: string, counted: Partial<TaskView>, kept = counted.counted): State => ({
  name,
  given: { task: { ...squareRibs, ...counted }, kept },
});

export const marks: readonly Shown[] = [
  {
    part: 'tap-ring',
    states: [
      ring('may start', { ring: 'thin', word: 'start', name: 'start' }),
      ring('runs', { ring: 'heavy', word: 'finish', name: 'finish' }),
      ring('tapped', { ring: 'tapped', word: 'finish', name: 'finish' }),
      ring('kept here', { ring: 'hollow', word: 'finish', name: 'finish' }),
      ring('kept', { ring: 'filled', word: 'undo', name: 'undo' }),
    ],
  },
  {
    part: 'tally-strokes',
    states: [
      tally('none yet', { counted: 0, pieces: 6 }),
      tally('some', { counted: 12, pieces: 20 }),
      tally('the last not kept', { counted: 13, pieces: 20 }, 12),
      tally('all', { counted: 6, pieces: 6 }),
      tally('more than strokes', { counted: 71, pieces: 120 }),
      tally('by the tray', { counted: 10, pieces: 10, trayHolds: 4 }),
      tally('by the tray, the last not kept', { counted: 16, pieces: 30, trayHolds: 8 }, 8),
    ],
  },
  {
    part: 'ruled-line',
    states: [
      ['begins', 0, 37],
      ['half gone', -22, 15],
      ['past its end', -40, -5],
    ].map(([name, from, to]) => ({
      name: String(name),
      high: 18,
      given: { startAt: at(Number(from)), endAt: at(Number(to)), now: NOW },
    })),
  },
  {
    part: 'range-rule',
    states: [
      { name: 'one range', given: { rule, now: NOW, ranges: [rangeAt(95)] } },
      { name: 'two', given: { rule, now: NOW, ranges: [rangeAt(60), rangeAt(240)] } },
    ],
  },
  { part: 'rule-hours', states: [{ name: 'all', given: { rule } }] },
  { part: 'clock-time', states: [{ name: 'a time', given: { at: NOW } }] },
  {
    part: 'cook-fan',
    states: [
      { name: 'large', wide: 420, high: 190, given: { cook, now: NOW } },
      { name: 'calibrated', wide: 420, high: 190, given: { cook: calibrated(), now: NOW } },
      {
        name: 'over the hours of a rack',
        ...{ wide: 420, high: 90 },
        given: { cook, now: NOW, small: true, rule },
      },
    ],
  },
  {
    part: 'qr-code',
    states: [{ name: 'an address', wide: 120, given: { text: 'https://a.b/c', name: 'address' } }],
  },
];

function rangeAt(minute: number) {
  return { lowAt: at(minute - 30), at: at(minute), highAt: at(minute + 45) };
}

function calibrated(): CookDrawing {
  return { ...cook, isCalibrated: true };
}
