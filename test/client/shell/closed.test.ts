// @vitest-environment happy-dom
import { afterEach, expect, it } from 'vitest';
import { PassWall } from '../../../client/pass/pass-wall.ts';
import { SmokerWall } from '../../../client/smoker/smoker-wall.ts';
import { StationWall } from '../../../client/station/station-wall.ts';
import type { CommandId } from '../../../shared/kernel/index.ts';
import { drawn, saidOn, tapsWrittenDown } from '../fingers.ts';
import { at, smokerView, stationView } from '../fixtures.ts';

const closed = { at: at(-5), by: 'Ines', command: 'the-close' as CommandId };
const { face: _face, stations: _stations, tasks: _tasks, later: _later, ...head } = stationView;

afterEach(() => document.body.replaceChildren());

it.each([
  ['a station', StationWall, stationView],
  ['the pit', SmokerWall, smokerView],
  ['the pass', PassWall, { ...head, face: 'pass', service: null, dishes: [] }],
] as const)(
  'the wall of %s says that the day is closed, and by whom',
  async (_wall, Wall, view) => {
    const { sync } = tapsWrittenDown({ view: { ...view, closed } });
    for (const [language, said] of [
      ['en', 'The day was closed at 10:37 by Ines: nothing more is taken.'],
      ['es', 'El día se cerró a las 10:37 (Ines): ya no se anota nada.'],
    ] as const) {
      const element = Object.assign(new Wall(), { sync, language });
      document.body.append(element);
      await drawn();
      expect(saidOn(element)).toContain(said);
    }
  },
);
