import { stationAt } from '../../shared/view/index.ts';
import { openSync } from '../shell/open-sync.ts';
import { openWall } from '../shell/open-wall.ts';
import { reloadWhenDue } from '../shell/stand-soon.ts';
import { StationWall } from './station-wall.ts';

const { settings, address, learnt } = openWall();
const face = stationAt(address);

if (!face) {
  location.replace('/');
} else {
  const sync = openSync(face, settings);
  reloadWhenDue(sync);
  await learnt;
  const wall = new StationWall();
  wall.sync = sync;
  wall.language = settings.language;
  wall.side = settings.side;
  wall.own = settings.personId;
  document.body.append(wall);
}
