import { openSync } from '../shell/open-sync.ts';
import { openWall } from '../shell/open-wall.ts';
import { reloadWhenDue } from '../shell/stand-soon.ts';
import { watchAlerts } from '../shell/watch-alerts.ts';
import { SmokerWall } from './smoker-wall.ts';

const { settings } = await openWall();
const sync = openSync({ kind: 'smoker' }, settings);
reloadWhenDue(sync);
const wall = new SmokerWall();
wall.sync = sync;
wall.language = settings.language;
wall.side = settings.side;
document.body.append(wall);
if (settings.sounds)
  watchAlerts(
    { sync, settings },
    () => {},
    () => wall.say,
  );
