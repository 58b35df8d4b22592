import { type CommandId, kilograms } from '../../../shared/kernel/index.ts';
import type { TaskView } from '../../../shared/view/index.ts';
import {
  at,
  injectShoulders,
  loadRibs,
  NOW,
  rubRibs,
  silverskin,
  squareRibs,
  stationView,
} from '../../client/fixtures.ts';
import type { Shown, State } from '../state.ts';

const { people } = stationView;

const square: TaskView = {
  ...squareRibs,
  title: { en: 'Square spare ribs', es: 'Cuadrar costillas' },
  mind: { en: 'Lean strip to the tips tub', es: 'La tira magra, al cubo de puntas' },
};
const caution = { en: 'Needle: cap it when you put it down', es: 'Aguja: tápela al dejarla' };
const inject: TaskView = {
  ...injectShoulders,
  title: { en: 'Inject six shoulders', es: 'Inyectar seis paletas' },
  mind: {
    en: 'Note the time: chilled till the smoker',
    es: 'Anote la hora: en frío hasta el ahumador',
  },
  caution,
};
const cure = {
  mix: { en: 'cure 1', es: 'sal de cura 1' },
  weightKg: kilograms(0.105),
  weighed: null,
};
const cured: TaskView = { ...inject, cure };
const weighed = { weightKg: kilograms(0.104), first: 'Ines', second: 'Theo' };
const mostKg = kilograms(27);
const tubs = [
  ['tips', { en: 'rib tips', es: 'puntas' }, kilograms(3.9), true],
  ['lean', { en: 'lean trim', es: 'recorte magro' }, kilograms(1.6), false],
  ['bone', { en: 'bone and cartilage', es: 'hueso y cartílago' }, kilograms(1.3), false],
  ['waste', { en: 'waste', es: 'desecho' }, kilograms(0.9), false],
].map(([tub, name, weightKg, isWeighed]) => ({
  tub,
  name,
  weightKg,
  isWeighed,
  mostKg,
})) as NonNullable<TaskView['tubs']>;
const sort: TaskView = {
  ...square,
  title: { en: 'Sort the trim', es: 'Separar los recortes' },
  tubs,
};
const keeps = tubs.map(({ tub, name }) => ({ label: name.en, of: tub, mostKg }));
const rub: TaskView = { ...rubRibs, title: { en: 'Rub ribs, mix 2', es: 'Sazonar costillas' } };
const load: TaskView = {
  ...loadRibs,
  title: { en: 'Load ribs, smoker B', es: 'Cargar costillas, ahumador B' },
};
const skin: TaskView = {
  ...silverskin,
  title: { en: 'Silverskin, short ribs', es: 'Quitar telilla, costilla corta' },
};

const refused = {
  id: 'c' as CommandId,
  refusal: { rule: 'already-started', at: at(-3), by: people[1] },
  unread: 2,
};

const line = (name: string, task: TaskView, more: State['given'] = {}): State => ({
  name,
  high: 170,
  given: { task, people, now: NOW, kept: task.counted, ...more },
});
const phone = (name: string, task: TaskView): State => {
  const { high: _, ...long } = line(name, task, { narrow: true });
  return { ...long, wide: 460 };
};

export const lines: readonly Shown[] = [
  {
    part: 'now-line',
    states: [
      line('waits', rub),
      line('ready', inject),
      line('ready and due', inject, { due: true }),
      line('runs', square),
      line('runs past its end', { ...square, endAt: at(-6) }, { due: true }),
      line('tapped', { ...square, state: 'running' }, { mark: 'tapped' }),
      line('kept here', square, { mark: 'here' }),
      line('counted here, not kept', { ...square, counted: 14 }, { mark: 'here', kept: 12 }),
      line('done, may be taken back', { ...square, state: 'done' }, { undo: 'finish' }),
      line('help is asked for', { ...square, helpAskedAt: at(-2) }),
      line('names are open', inject, { open: 'who' }),
      line('minutes are open', inject, { open: 'late' }),
      line('a note is written', inject, { open: 'note' }),
      line('cure is to be weighed', cured),
      line('trim is to be weighed', sort),
      line('done, trim is to be weighed', { ...sort, state: 'done' }, { undo: 'finish' }),
      { ...line('tubs are open', sort, { open: 'tubs' }), high: 420 },
      line('refused', inject, { refused }),
      { ...line('low', square), high: 118 },
      { ...line('high', inject), high: 250 },
      { ...line('brief', load, { brief: true }), wide: 1090, high: 66 },
      { ...line('brief, runs', square, { brief: true }), wide: 1090, high: 66 },
      phone('on a phone', square),
      phone('on a phone, ready', inject),
      phone('on a phone, trim is to be weighed', sort),
      { ...line('low, trim is to be weighed', sort), high: 118 },
      { ...line('low, its caution has room', { ...load, because: null, caution }), high: 118 },
      { ...line('low, its caution is open', inject, { open: 'caution' }), high: 118 },
    ],
  },
  {
    part: 'next-row',
    states: [
      { name: 'after a task', given: { task: rub, people } },
      { name: 'after a task and a wait', given: { task: load, people } },
      { name: 'waits for a hand', given: { task: skin, people } },
      { name: 'on a phone', wide: 460, given: { task: load, people, narrow: true } },
    ],
  },
  {
    part: 'then-foot',
    states: [
      { name: 'some', given: { tasks: [load, skin], later: 7 } },
      { name: 'nothing further', given: { tasks: [], later: 0 } },
    ],
  },
  { part: 'people-row', states: [{ name: 'all', given: { people, among: rub.shownTo } }] },
  {
    part: 'cure-line',
    states: [
      { name: 'to be weighed', given: { cure } },
      { name: 'weighed', given: { cure: { ...cure, weighed } } },
    ],
  },
  {
    part: 'cure-pad',
    states: [
      { name: 'who weighs', given: { task: cured, people } },
      {
        name: 'how much',
        given: { task: cured, people, first: people[0]?.id, second: people[1]?.id },
      },
    ],
  },
  {
    part: 'scale-pad',
    states: [
      {
        name: 'typed',
        given: { asks: 'Cure 1:', keeps: keeps.slice(0, 1), fine: true, typed: '104' },
      },
      { name: 'cannot be', given: { asks: 'Tubs:', keeps, typed: '41', wrong: keeps[1] } },
    ],
  },
  {
    part: 'note-pad',
    states: [
      { name: 'empty', given: {} },
      { name: 'cannot be kept', given: { wrong: 'long', over: 35 } },
    ],
  },
  {
    part: 'line-strip',
    states: [
      { name: 'late', given: { task: square, people, open: 'late' } },
      { name: 'who', given: { task: square, people, open: 'who' } },
      { name: 'refused', given: { task: square, people, refused } },
    ],
  },
];
