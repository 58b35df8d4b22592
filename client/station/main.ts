import type { Face } from '../../shared/view/index.ts';
import { openSync } from '../shell/open-sync.ts';
import { openWall } from '../shell/open-wall.ts';
import { reloadWhenDue } from '../shell/stand-soon.ts';
import { StationWall } from './station-wall.ts';
import { stationsIn } from './stations-in.ts';

const { settings, address, learnt } = openWall();
const [station, ...beside] = stationsIn(address.get('station'));

if (station === undefined) {
  location.replace('/');
} else {
  const { personId } = settings;
  const also = { ...(beside.length > 0 && { beside }), ...(personId && { hand: personId }) };
  const face: Face = { kind: 'station', station, ...also };
  const sync = openSync(face, settings);
  reloadWhenDue(sync);
  await learnt;
  const wall = new StationWall();
  wall.sync = sync;
  wall.language = settings.language;
  wall.side = settings.side;
  wall.own = personId;
  document.body.append(wall);
}
