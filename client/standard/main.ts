import { openWall } from '../shell/open-wall.ts';
import { StandardsPage } from './standards-page.ts';

const { settings, address, learnt } = openWall('sitting');
await learnt;
const page = new StandardsPage();
page.language = settings.language;
page.only = address.get('cut');
document.body.append(page);
