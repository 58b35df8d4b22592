import { openSync } from '../shell/open-sync.ts';
import { openWall } from '../shell/open-wall.ts';
import { reloadWhenDue } from '../shell/stand-soon.ts';
import { watchAlerts } from '../shell/watch-alerts.ts';
import { DeskPage } from './desk-page.ts';

const { settings } = await openWall('sitting');
const sync = openSync({ kind: 'desk' }, settings);
reloadWhenDue(sync);
const page = new DeskPage();
page.sync = sync;
page.language = settings.language;
page.alerts = watchAlerts({ sync, settings }, () => page.requestUpdate(), null);
document.body.append(page);
