import { openWall } from '../shell/open-wall.ts';
import { InstallPage } from './install-page.ts';
import { trustOf } from './trust.ts';

const { settings, address, learnt } = openWall('near');
await learnt;
const page = new InstallPage();
page.language = settings.language;
// A browser carries what stands behind the # over to where it was led: a label names its lot there.
page.to = (address.get('to') ?? '/') + location.hash;
page.trust = trustOf(location);
document.body.append(page);
