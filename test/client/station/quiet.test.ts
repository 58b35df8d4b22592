// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { SmokerWall } from '../../../client/smoker/smoker-wall.ts';
import { StationWall } from '../../../client/station/station-wall.ts';
import type { CheckView } from '../../../shared/view/index.ts';
import type { Language } from '../../../shared/words/index.ts';
import { drawn, saidOn, tapsWrittenDown } from '../fingers.ts';
import { at, smokerView, stationView } from '../fixtures.ts';
import { ribs } from '../open-check.ts';

async function saidAt(
  wall: StationWall | SmokerWall,
  checks: readonly CheckView[],
  language: Language = 'en',
) {
  const shown = wall instanceof SmokerWall ? smokerView : stationView;
  const view = { ...shown, tasks: [], later: 0, checks };
  document.body.append(Object.assign(wall, { sync: tapsWrittenDown({ view }).sync, language }));
  await drawn();
  return saidOn(wall);
}

const ALL_DONE = /Nothing more to do here today|no queda nada por hacer/;

afterEach(() => document.body.replaceChildren());

describe('a wall without work', () => {
  it.each([
    ['of a station', () => new StationWall()],
    ['of the pit', () => new SmokerWall()],
  ])('%s says that all is done only where nothing is left to be looked at', async (_, wall) => {
    expect(await saidAt(wall(), [])).toMatch(ALL_DONE);
    const due = await saidAt(wall(), [ribs]);
    expect(due).toContain('No other work here today.');
    expect(due).not.toMatch(ALL_DONE);
    const later = await saidAt(wall(), [{ ...ribs, dueAt: at(50), lateAt: at(80) }]);
    expect(later).toContain('Next thing to look at: 11:32.');
    expect(later).not.toMatch(ALL_DONE);
  });

  it('says so in Spanish, too', async () => {
    const due = await saidAt(new StationWall(), [ribs], 'es');
    expect(due).toContain('Aquí no queda otro trabajo hoy.');
    expect(due).not.toMatch(ALL_DONE);
  });
});
