import { openSync } from '../shell/open-sync.ts';
import { openWall } from '../shell/open-wall.ts';
import { reloadWhenDue } from '../shell/stand-soon.ts';
import { watchAlerts } from '../shell/watch-alerts.ts';
import { SmokerWall } from './smoker-wall.ts';

const { settings, learnt } = openWall();
const wall = new SmokerWall();
const { over } = watchAlerts(settings, { now: () => sync.hubNow(), saysOver: () => wall.say });
const sync = openSync({ kind: 'smoker' }, settings, over);
reloadWhenDue(sync);
await learnt;
wall.sync = sync;
wall.language = settings.language;
wall.side = settings.side;
document.body.append(wall);
