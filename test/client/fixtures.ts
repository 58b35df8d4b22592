import type {
  BatchId,
  CutId,
  Instant,
  PersonId,
  ServiceId,
  SlotId,
  SmokerId,
  StationId,
  TaskId,
} from '../../shared/kernel/index.ts';
import { after, celsius, instant, kilograms, minutes, seconds } from '../../shared/kernel/index.ts';
import type { SmokerView, StationView, TaskView } from '../../shared/view/index.ts';

/** 25 November 2026, 10:42 in a kitchen of our own in Denver. */
export const NOW: Instant = instant(Date.UTC(2026, 10, 25, 17, 42));
/** @example at(-22) //=> 10:20 */
export const at = (minutesFromNow: number) => after(NOW, minutes(minutesFromNow));

export const ines = 'ines' as PersonId;
export const theo = 'theo' as PersonId;
const mara = 'mara' as PersonId;

const head = {
  seq: 40,
  arrangedSeq: 12,
  at: NOW,
  zone: 'America/Denver',
  clock: '24 h',
  temperature: '°F',
  weight: 'lb',
  news: null,
  checks: [],
  endsAt: at(600),
  closed: null,
  services: [
    {
      id: 'dinner' as ServiceId,
      name: { en: 'dinner', es: 'cena' },
      opensAt: at(378),
      inHandS: minutes(35),
      hangsOn: 'ribs-1/square' as TaskId,
    },
  ],
  people: [
    { id: ines, name: 'Ines', onShift: true, isOut: false, backAt: null },
    { id: theo, name: 'Theo', onShift: true, isOut: false, backAt: null },
    { id: mara, name: 'Mara', onShift: false, isOut: false, backAt: null },
  ],
} as const;

const slab = { one: { en: 'slab', es: 'costillar' }, many: { en: 'slabs', es: 'costillares' } };
const shoulder = {
  one: { en: 'shoulder', es: 'paleta' },
  many: { en: 'shoulders', es: 'paletas' },
};

/** A task of hands, ready at `startMin` for `lastMin` minutes, unless said otherwise. */
export function task(
  id: string,
  title: string,
  [startMin, lastMin]: readonly [number, number],
  more: Partial<TaskView> = {},
): TaskView {
  return {
    id: id as TaskId,
    batch: (id.split('/')[0] ?? id) as BatchId,
    batchName: { en: 'Ribs 1' },
    service: 'dinner' as ServiceId,
    work: 'hands',
    title: { en: title },
    cut: 'spare-ribs' as CutId,
    pieces: 20,
    piece: slab,
    weightKg: kilograms(27),
    hand: ines,
    shownTo: [ines, theo, mara],
    side: 'clean',
    offRaw: false,
    state: 'waiting',
    plannedStartAt: at(startMin),
    startAt: at(startMin),
    endAt: at(startMin + lastMin),
    endLowAt: at(startMin + lastMin),
    endHighAt: at(startMin + lastMin),
    counted: 0,
    helpAskedAt: null,
    because: null,
    after: [],
    ...more,
  };
}

const named = (id: string, title: string) => ({ id: id as TaskId, title: { en: title } });

export const squareRibs = task('ribs-1/square', 'Square spare ribs', [-22, 37], {
  state: 'running',
  counted: 12,
  mind: { en: 'Lean strip to the tips tub' },
});
export const injectShoulders = task('shoulder-1/inject', 'Inject six shoulders', [3, 25], {
  state: 'ready',
  hand: theo,
  pieces: 6,
  piece: shoulder,
  weightKg: kilograms(22),
  mind: { en: 'Note the time: chilled till the smoker' },
  mix: { name: { en: 'mix 4' }, weightKg: kilograms(1.4) },
  because: { kind: 'now' },
});
export const rubRibs = task('ribs-1/rub', 'Rub ribs, mix 2', [15, 26], {
  because: { kind: 'after', task: named('ribs-1/square', 'Square spare ribs'), waitS: seconds(0) },
  after: [{ task: squareRibs.id, end: 'end', lagS: seconds(0) }],
});
export const loadRibs = task('ribs-1/load', 'Load ribs, smoker B', [53, 6], {
  because: { kind: 'after', task: named('ribs-1/rub', 'Rub ribs, mix 2'), waitS: minutes(12) },
  after: [{ task: rubRibs.id, end: 'end', lagS: minutes(12) }],
});
export const silverskin = task('short-1/skin', 'Silverskin, short ribs', [59, 20], {
  pieces: 4,
  because: {
    kind: 'hand',
    person: { id: ines, name: 'Ines' },
    busyWith: named('ribs-1/load', 'Load ribs, smoker B'),
  },
});

export const stationView: StationView = {
  ...head,
  face: 'station',
  stations: [{ id: 'trim' as StationId, name: { en: 'Trim table' } }],
  tasks: [
    squareRibs,
    injectShoulders,
    rubRibs,
    loadRibs,
    silverskin,
    task('trim-1/grind', 'Grind trim, cold', [108, 15], { hand: theo }),
    task('trim-1/wash', 'Wash down', [148, 20], { pieces: 1 }),
  ],
  later: 7,
};

type Loads = SmokerView['smokers'][number]['racks'][number]['loads'];

const rack = (smoker: string, number: number, loads: Loads) => ({
  slot: {
    id: `${smoker}/${number}` as SlotId,
    smoker: { en: `Smoker ${smoker.toUpperCase()}` },
    rack: String(number),
  },
  lengthM: smoker === 'a' ? 1.22 : 1.07,
  depthM: 0.66,
  loads,
});

const shoulders = (stay: string, need: number, nextMin: readonly [number, number, number]) => ({
  stay: stay as TaskId,
  need,
  batchName: { en: 'Shoulders 1' },
  cut: 'pork-shoulder-boneless' as CutId,
  pieces: 3,
  pieceLengthM: 0.3,
  pieceWidthM: 0.22,
  piece: shoulder,
  fatCap: true,
  here: true,
  inAt: at(-200),
  next: {
    title: { en: 'wrap' },
    lowAt: at(nextMin[0]),
    at: at(nextMin[1]),
    highAt: at(nextMin[2]),
  },
  outAt: at(340),
  lastCore: { tempC: celsius(62), at: at(-30) },
  cook: null,
});

const slabs = (stay: string, need: number, here: boolean) => ({
  stay: stay as TaskId,
  need,
  batchName: { en: 'Ribs 1' },
  cut: 'pork-spare-ribs' as CutId,
  pieces: here ? 4 : 6,
  pieceLengthM: 0.45,
  pieceWidthM: 0.18,
  piece: slab,
  fatCap: false,
  here,
  inAt: at(here ? -30 : 53),
  next: here ? { title: { en: 'off' }, lowAt: at(308), at: at(330), highAt: at(353) } : null,
  outAt: at(here ? 330 : 353),
  lastCore: null,
  cook: null,
});

export const smokerView: SmokerView = {
  ...head,
  face: 'smoker',
  smokers: [
    {
      id: 'a' as SmokerId,
      name: { en: 'Smoker A' },
      heat: 'below',
      setC: celsius(107.2),
      lastAir: { tempC: celsius(95), at: at(-4), trendCPerHour: -14 },
      openedAt: null,
      spell: null,
      racks: [
        rack('a', 1, [shoulders('shoulder-1/stay', 0, [68, 95, 128])]),
        rack('a', 2, [shoulders('shoulder-1/stay', 1, [83, 110, 148])]),
        rack('a', 3, [slabs('ribs-0/stay', 0, true)]),
        rack('a', 4, []),
      ],
    },
    {
      id: 'b' as SmokerId,
      name: { en: 'Smoker B' },
      heat: 'above',
      setC: celsius(135),
      lastAir: { tempC: celsius(135.5), at: at(-6), trendCPerHour: 0 },
      openedAt: null,
      spell: null,
      racks: [
        rack('b', 1, []),
        rack('b', 2, [slabs('ribs-1/stay', 0, false)]),
        rack('b', 3, [slabs('ribs-1/stay', 1, false)]),
        rack('b', 4, []),
      ],
    },
  ],
  tasks: [
    task('shoulder-1/wrap', 'Wrap six shoulders', [68, 18], {
      hand: theo,
      pieces: 6,
      piece: shoulder,
      racks: [1, 2].map((rack) => ({
        id: `a/${rack}` as SlotId,
        smoker: { en: 'Smoker A' },
        rack: `${rack}`,
      })),
      state: 'ready',
    }),
    loadRibs,
  ],
  later: 3,
};
