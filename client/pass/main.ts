import { openSync } from '../shell/open-sync.ts';
import { openWall } from '../shell/open-wall.ts';
import { reloadWhenDue } from '../shell/stand-soon.ts';
import { PassWall } from './pass-wall.ts';

const { settings, learnt } = openWall();
const sync = openSync({ kind: 'pass' }, settings);
reloadWhenDue(sync);
await learnt;
const wall = new PassWall();
wall.sync = sync;
wall.language = settings.language;
document.body.append(wall);
