// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { StationWall } from '../../../client/station/station-wall.ts';
import type { StationId } from '../../../shared/kernel/index.ts';
import { stationsIn } from '../../../shared/view/index.ts';

import { drawn, saidOn, tapsWrittenDown } from '../fingers.ts';
import { stationView } from '../fixtures.ts';

afterEach(() => document.body.replaceChildren());

describe('the stations of a wall', () => {
  it.each([
    ['trim', ['trim']],
    ['trim,mix', ['trim', 'mix']],
    ['mix,trim,mix,', ['mix', 'trim']],
    ['', []],
    [null, []],
  ])('are named in its address: %s', (word, stations) => {
    expect(stationsIn(word)).toEqual(stations);
  });

  it('stand all in its head', async () => {
    const mix = { id: 'mix' as StationId, name: { en: 'Mix bench' } };
    const view = { ...stationView, stations: [...stationView.stations, mix] };
    const { sync } = tapsWrittenDown({ view });
    const element = Object.assign(new StationWall(), { sync });
    document.body.append(element);
    await drawn();
    expect(saidOn(element)).toContain('Trim table · Mix bench');
  });
});
