import { openWall } from '../shell/open-wall.ts';
import { whoDoors } from '../shell/who-doors.ts';
import { toPairIfStranger } from './stranger.ts';
import './screen-list.ts';
import { ScreenSettings } from './screen-settings.ts';

const { settings } = await openWall();
const own = new ScreenSettings();
own.settings = settings;
document.body.append(document.createElement('screen-list'), own);
void toPairIfStranger(whoDoors(settings.token), (path) => location.replace(path));
