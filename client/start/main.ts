import { openWall } from '../shell/open-wall.ts';
import { whoDoors } from '../shell/who-doors.ts';
import { cameFrom } from './came-from.ts';
import { StartPage } from './start-page.ts';
import { toPairIfStranger } from './stranger.ts';

const { settings, learnt } = openWall('near');
await learnt;
const doors = whoDoors(settings.token);
const page = new StartPage();
page.settings = settings;
page.doors = doors;
page.from = cameFrom(location);
document.body.append(page);
void toPairIfStranger(doors, (path) => location.replace(path));
