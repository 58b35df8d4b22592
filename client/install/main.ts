import { openWall } from '../shell/open-wall.ts';
import { InstallPage } from './install-page.ts';
import { trustOf } from './trust.ts';

const { settings, address } = await openWall();
const page = new InstallPage();
page.language = settings.language;
page.to = address.get('to') ?? '/';
page.trust = trustOf(location);
document.body.append(page);
