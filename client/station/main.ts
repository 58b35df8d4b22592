import type { StationId } from '../../shared/kernel/index.ts';
import { reloadWhenDue } from '../shell/day-controller.ts';
import { openSync } from '../shell/open-sync.ts';
import { openWall } from '../shell/open-wall.ts';
import { StationWall } from './station-wall.ts';
import '../start/screen-list.ts';

const { settings, address } = openWall();
const station = address.get('station') as StationId | null;

if (station === null) {
  const list = document.createElement('screen-list');
  list.setAttribute('only', 'stations');
  document.body.append(list);
} else {
  const sync = openSync({ kind: 'station', station }, settings);
  reloadWhenDue(sync);
  const wall = new StationWall();
  wall.sync = sync;
  wall.language = settings.language;
  document.body.append(wall);
}
