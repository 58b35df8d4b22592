/**
 * A kitchen small enough to live through a whole day of trouble in a few milliseconds: two smokers
 * of three racks, four hands, two dishes, two services. What each number is like is common
 * practice, no source.
 */
const named = (en: string) => ({ en });
const takes = (typical: number) => ({
  low: `${typical / 2} min`,
  typical: `${typical} min`,
  high: `${typical * 2} min`,
});
const certain = { low: '100 %', typical: '100 %', high: '100 %', source: 'made up' };

type HandsStep = {
  readonly id: string;
  readonly bench: string;
  readonly minutes: number;
  readonly skill?: string;
  readonly per?: 'piece' | 'batch';
};

const hands = (dish: string, { id, bench, minutes, skill, per = 'batch' }: HandsStep) => ({
  work: 'hands',
  id,
  title: named(`${id} ${dish}`),
  bench,
  time: { per, takes: takes(minutes) },
  ...(skill !== undefined && { skill }),
  table: bench !== 'pit',
});

function route(dish: string, cut: string, set: string, smokeMin: number) {
  const titled = (id: string, bench: string) => ({ id, title: named(`${id} ${dish}`), bench });
  return {
    id: `${dish}-route`,
    name: named(dish),
    cut,
    choices: [],
    steps: [
      hands(dish, { id: 'trim', bench: 'board', minutes: 2, skill: 'knife', per: 'piece' }),
      hands(dish, { id: 'rub', bench: 'board', minutes: 1, per: 'piece' }),
      { work: 'wait', ...titled('set', 'board'), atLeast: '10 min', atMost: '3 h' },
      hands(dish, { id: 'load', bench: 'pit', minutes: 4, skill: 'pit' }),
      { work: 'fire', ...titled('smoke', 'pit'), time: { per: 'batch', takes: takes(smokeMin) } },
      {
        ...hands(dish, { id: 'check', bench: 'pit', minutes: 4, skill: 'pit' }),
        check: { feel: named('folds'), core: '85 °C' },
      },
      hands(dish, { id: 'off', bench: 'pit', minutes: 4, skill: 'pit' }),
      {
        work: 'place',
        ...titled('stay', 'pit'),
        set,
        spans: { from: { step: 'load', end: 'start' }, to: { step: 'off', end: 'end' } },
      },
      { work: 'wait', ...titled('rest', 'pass'), atLeast: '10 min', atMost: '2 h' },
      hands(dish, { id: 'carve', bench: 'pass', minutes: 6, skill: 'knife' }),
      { work: 'serve', ...titled('serve', 'pass') },
    ],
    limits: [
      {
        from: { step: 'smoke', end: 'end' },
        to: { step: 'check', end: 'start' },
        atMost: '1 h',
        reason: 'quality',
      },
    ],
  };
}

const cut = (id: string, length: string, width: string) => ({
  id,
  name: named(id),
  species: 'pork',
  fatCap: false,
  piece: { one: named('piece'), many: named('pieces') },
  weight: { low: '2 kg', typical: '2 kg', high: '2 kg', source: 'made up' },
  footprint: { length, width },
  yields: { trim: certain, cook: certain, carve: certain },
  tubs: [],
});

export const catalogue = {
  skills: ['knife', 'pit'].map((id) => ({ id, name: named(id) })),
  benches: ['board', 'pit', 'pass'].map((id) => ({ id, name: named(id) })),
  cuts: [cut('slab', '40 cm', '20 cm'), cut('loin', '30 cm', '15 cm')],
  mixes: [],
  routes: [route('slab', 'slab', '125 °C', 120), route('loin', 'loin', '110 °C', 60)],
  dishes: ['slab', 'loin'].map((id) => ({
    id,
    name: named(id),
    cut: id,
    route: `${id}-route`,
    portion: '400 g',
  })),
};

const smoker = (id: string, heat: string) => ({
  id,
  name: named(`Smoker ${id}`),
  heat,
  racks: [1, 2, 3].map(() => ({ length: '62 cm', depth: '42 cm', holds: '40 kg' })),
  coolest: '90 °C',
  hottest: '150 °C',
  preheat: '30 min',
  change: '2 °C/min',
});

const station = (id: string, side: string, tables: number) => ({
  id,
  name: named(id),
  benches: [id],
  side,
  ...(id === 'pit' && { pit: true }),
  tables,
});

const hand = (id: string, trained: readonly string[]) => ({
  id,
  name: id,
  trained,
  shifts: [{ on: ['2026-11-25'], from: '04:00', to: '23:00' }],
});

export const kitchen = {
  name: 'Six Racks',
  zone: 'America/Chicago',
  units: { temperature: '°C', weight: 'kg', clock: '24 h' },
  languages: ['en'],
  stations: [station('board', 'raw', 2), station('pit', 'clean', 0), station('pass', 'clean', 1)],
  smokers: [smoker('a', 'below'), smoker('b', 'above')],
  cabinets: [],
  coolers: [],
  crew: [
    hand('ada', ['knife']),
    hand('ben', ['pit']),
    hand('cy', ['knife', 'pit']),
    hand('dot', []),
  ],
};

const service = (id: string, opens: string, closes: string) => ({
  id,
  name: named(id),
  opens,
  closes,
  dishes: [
    { dish: 'slab', sales: { by: 'shape', portions: 30, shape: 'even' } },
    { dish: 'loin', sales: { by: 'shape', portions: 20, shape: 'even' } },
  ],
});

export const cookPlan = {
  day: '2026-11-25',
  services: [service('lunch', '12:30', '14:00'), service('dinner', '17:30', '19:00')],
};
