import { laneM } from '../../../client/parts/rack-lane.ts';
import type { CutId, PersonId, SlotId } from '../../../shared/kernel/index.ts';
import { celsius, minutes, must } from '../../../shared/kernel/index.ts';
import type { SmokerDrawing } from '../../../shared/view/index.ts';
import { pitRule } from '../../../shared/view/index.ts';
import { at, NOW, smokerView } from '../../client/fixtures.ts';
import type { Shown } from '../state.ts';
import { cook } from './marks.ts';

const { smokers, services } = smokerView;
const rule = pitRule(smokers, NOW);
const [a, b] = [must(smokers[0], 'smoker a'), must(smokers[1], 'smoker b')];
const rackOf = (smoker: SmokerDrawing, place: number) => must(smoker.racks[place], 'a rack');
const load = must(rackOf(a, 0).loads[0], 'a load');
const cooked = { ...rackOf(a, 0), loads: [{ ...load, cook }] };
const pointsOf = { one: { en: 'point', es: 'punta' }, many: { en: 'points', es: 'puntas' } };
const points = { ...load, need: 1, piece: pointsOf, cut: 'brisket-point' as CutId };
const two = { ...rackOf(a, 0), loads: [{ ...load, cook }, points] };
const drawn = (smoker: SmokerDrawing) => ({ smoker, laneM: laneM([smoker]), rule, now: NOW });
const lane = (rack: SmokerDrawing['racks'][number]) => ({
  rack,
  laneM: laneM([{ racks: [rack] }]),
  rule,
  now: NOW,
});
const to = 'b/1' as SlotId;
const spell = (kind: 'down' | 'cold') => ({
  ...{ kind, since: at(-12), backAt: at(50) },
  call: { who: 'theo' as PersonId, name: 'Theo', byAt: at(50) },
});

const offer = {
  basedOnSeq: 12,
  moves: [
    {
      ...{ stay: load.stay, need: 0, batchName: load.batchName, pieces: 3, piece: load.piece },
      ...{ from: rackOf(a, 0).slot, to: rackOf(b, 0).slot },
    },
  ],
  services: services.map(({ id, name, opensAt, inHandS }) => ({
    ...{ id, name, opensAt, beforeS: inHandS, afterS: minutes(22) },
  })),
  tasksChanged: 3,
  fatSide: 'up',
  unlit: null,
};

export const pit: readonly Shown[] = [
  {
    part: 'smoker-cutaway',
    states: [
      { name: 'heat from below', wide: 460, high: 330, given: drawn(a) },
      { name: 'heat from above', wide: 460, high: 330, given: drawn(b) },
      { name: 'down', wide: 460, high: 330, given: drawn({ ...a, spell: spell('down') }) },
      { name: 'runs cold', wide: 460, high: 330, given: drawn({ ...a, spell: spell('cold') }) },
      {
        name: 'no reading yet, heat from the side',
        ...{ wide: 460, high: 330 },
        given: drawn({ ...b, heat: 'side', lastAir: null }),
      },
      {
        name: 'meat in it, and no reading yet',
        ...{ wide: 460, high: 330 },
        given: drawn({ ...a, lastAir: null, unread: { name: 'Theo', byAt: at(15) } }),
      },
      {
        name: 'read long ago',
        ...{ wide: 460, high: 330 },
        given: drawn({ ...b, lastAir: { tempC: celsius(131), at: at(-75), trendCPerHour: 0 } }),
      },
      {
        name: 'a load is picked, a rack is asked about',
        ...{ wide: 460, high: 330 },
        given: { ...drawn(a), picked: load, askedSlot: rackOf(a, 3).slot.id },
      },
    ],
  },
  {
    part: 'rack-lane',
    states: [
      { name: 'pieces lie', wide: 460, high: 90, given: lane(rackOf(a, 0)) },
      { name: 'with its cook', wide: 460, high: 190, given: lane(cooked) },
      { name: 'two kinds', wide: 460, high: 180, given: lane(two) },
      { name: 'two kinds, low and narrow', wide: 300, high: 130, given: lane(two) },
      { name: 'planned for here', wide: 460, high: 90, given: lane(rackOf(b, 1)) },
      { name: 'free', wide: 460, high: 90, given: lane(rackOf(a, 3)) },
      { name: 'picked', wide: 460, high: 90, given: { ...lane(rackOf(a, 0)), picked: load } },
    ],
  },
  {
    part: 'move-foot',
    states: [
      { name: 'picked', given: { now: NOW, move: { kind: 'picked', load } } },
      {
        name: 'picked, with its cook',
        given: { now: NOW, move: { kind: 'picked', load: { ...load, cook } } },
      },
      { name: 'asking', given: { now: NOW, move: { kind: 'asking', load, to } } },
      { name: 'offered', given: { now: NOW, move: { kind: 'offered', load, to, offer } } },
      {
        name: 'refused',
        given: {
          now: NOW,
          move: { kind: 'refused', load, to, refusal: { rule: 'rack-unfit', slot: slotOf() } },
        },
      },
      { name: 'unheard', given: { now: NOW, move: { kind: 'unheard', load, to } } },
    ],
  },
];

function slotOf() {
  return { ...rackOf(b, 0).slot, tempC: celsius(120) };
}
