import { openWall } from '../shell/open-wall.ts';
import { rememberToken } from '../shell/settings.ts';
import { whoDoors } from '../shell/who-doors.ts';
import { PairPage } from './pair-page.ts';

const { settings, learnt } = openWall();
await learnt;
const page = new PairPage();
page.language = settings.language;
page.doors = whoDoors(settings.token);
page.keep = rememberToken;
page.go = (path) => location.replace(path);
document.body.append(page);
