import { describe, expect, it } from 'vitest';
import { hours, minutes, must, seconds } from '../../../shared/kernel/index.ts';
import type { Series } from '../../../shared/safety/index.ts';
import {
  coolingsOf,
  decidingCooling,
  foodCode,
  limitOf,
  projectCooling,
} from '../../../shared/safety/index.ts';
import { degF, throughF } from './series.ts';

const limit = must(limitOf(foodCode, 'cooling'), 'cooling row');
const apartAtMostS = minutes(10);
const found = (readings: Series, more: { errorK?: number; notBeforeS?: number } = {}) =>
  coolingsOf(readings, limit, { apartAtMostS, reheatTo: '165 °F', ...more });
const took = (readings: Series, more = {}) =>
  found(readings, more).map(({ state, stages }) => ({
    state,
    minutes: stages.map(({ tookS }) => (tookS === null ? null : tookS / 60)),
  }));

const good = [
  [0, 203],
  [60, 135],
  [120, 70],
  [360, 41],
  [400, 38],
] as const;

describe('a cooling', () => {
  it('begins where the food falls through 135 °F, however hot it was before', () => {
    expect(took(throughF(good))).toEqual([{ state: 'met', minutes: [60, 300] }]);
  });

  it('is open while it may still be in time', () => {
    const readings = throughF([
      [0, 140],
      [10, 135],
      [120, 75],
    ]);
    expect(took(readings)).toEqual([{ state: 'open', minutes: [null, null] }]);
  });

  it('is missed as soon as a stage is late, reached or not', () => {
    const readings = throughF([
      [0, 140],
      [10, 135],
      [140, 75],
    ]);
    expect(took(readings)).toEqual([{ state: 'missed', minutes: [null, null] }]);
  });

  it('that is missed is mended by full heat while the time for all of it is not over', () => {
    const readings = throughF([
      [0, 140],
      [10, 135],
      [140, 80],
      [200, 170],
      [260, 135],
      [320, 69],
      [500, 40],
    ]);
    expect(found(readings).map(({ state }) => state)).toEqual(['reheated', 'met']);
    expect(decidingCooling(found(readings))?.state).toBe('met');
  });

  it('is not mended by full heat after that', () => {
    const readings = throughF([
      [0, 140],
      [10, 135],
      [400, 80],
      [450, 170],
    ]);
    expect(found(readings).map(({ state }) => state)).toEqual(['missed']);
  });

  it('is not begun anew by warmth that is not full heat', () => {
    const readings = throughF([
      [0, 140],
      [10, 135],
      [100, 75],
      [130, 150],
      [160, 130],
      [200, 70],
      [300, 40],
    ]);
    expect(took(readings)).toMatchObject([{ state: 'missed', minutes: [190, expect.any(Number)] }]);
  });

  it('is not seen in a cook that dips on its way up', () => {
    const readings = throughF([
      [0, 40],
      [200, 137],
      [210, 133],
      [300, 203],
    ]);
    expect(decidingCooling(found(readings, { notBeforeS: hours(4.5) }))).toBeNull();
    expect(
      found(
        throughF([
          [0, 40],
          [200, 120],
          [230, 100],
        ]),
      ),
    ).toEqual([]);
  });

  it('is not seen in food that was never warm', () => {
    expect(
      found(
        throughF([
          [0, 40],
          [60, 38],
        ]),
      ),
    ).toEqual([]);
  });

  it('of a roast that was held below 135 °F counts from the end of its cook', () => {
    const readings = throughF([
      [0, 131],
      [100, 131],
      [160, 70],
      [300, 41],
    ]);
    const [cooling] = found(readings, { notBeforeS: minutes(89) });
    expect(cooling).toMatchObject({ startS: minutes(100), state: 'met' });
  });

  it('that the readings join on the way says that it began before', () => {
    expect(
      found(
        throughF([
          [0, 120],
          [60, 70],
          [200, 41],
        ]),
      ),
    ).toMatchObject([{ begunBefore: true, startS: 0 }]);
    expect(found(throughF(good))[0]?.begunBefore).toBe(false);
  });
});

describe('what is not known', () => {
  it('counts against the food: a silence across a limit belongs to the cooling', () => {
    const at = (minute: number, tempF: number) => ({ atS: minutes(minute), tempC: degF(tempF) });
    const readings = [at(0, 140), at(60, 120), at(65, 75), at(120, 60), at(125, 45), at(180, 40)];
    expect(took(readings)).toEqual([{ state: 'met', minutes: [120, 180] }]);
  });

  it('counts against the food: an error starts the clock early and stops it late', () => {
    const [plain] = took(throughF(good));
    const [careful] = took(throughF(good), { errorK: 1 });
    expect(must(careful?.minutes[0], 'stage')).toBeGreaterThan(must(plain?.minutes[0], 'stage'));
    expect(must(careful?.minutes[1], 'stage')).toBeGreaterThan(must(plain?.minutes[1], 'stage'));
  });
});

describe('the projection', () => {
  const cooling = (readings: Series) => must(decidingCooling(found(readings)), 'cooling');
  const project = (readings: Series, airF: number) =>
    projectCooling(readings, cooling(readings), { limit, airC: degF(airF) });

  it('warns of the first stage while there is time to pan shallower', () => {
    const readings = throughF(
      [
        [0, 135],
        [30, 128],
      ],
      5,
    );
    expect(project(readings, 38)?.[0]).toMatchObject({
      to: '70 °F',
      inTime: false,
      dueS: hours(2),
    });
  });

  it('says never where the air is no colder than the limit', () => {
    const readings = throughF(
      [
        [0, 135],
        [30, 100],
      ],
      5,
    );
    const [, second] = project(readings, 41) ?? [];
    expect(second).toMatchObject({ to: '41 °F', expectedS: null, inTime: false });
  });

  it('says never where the food does not cool', () => {
    const readings = [
      ...throughF([
        [0, 135],
        [2, 134.9],
      ]),
      ...throughF(
        [
          [0, 134.8],
          [60, 134.8],
        ],
        5,
      )
        .slice(1)
        .map((one) => ({ ...one, atS: seconds(one.atS + 7200) })),
    ];
    expect(project(readings, 38)?.map(({ expectedS }) => expectedS)).toEqual([null, null]);
  });

  it('leaves out a stage that is reached, and says nothing of one reading', () => {
    const readings = throughF(
      [
        [0, 135],
        [60, 65],
      ],
      5,
    );
    expect(project(readings, 34)?.map(({ to }) => to)).toEqual(['41 °F']);
    expect(
      projectCooling(readings.slice(0, 1), cooling(readings), { limit, airC: degF(34) }),
    ).toBeNull();
  });
});
