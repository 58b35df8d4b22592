import { openSync } from '../shell/open-sync.ts';
import { openWall } from '../shell/open-wall.ts';
import { reloadWhenDue } from '../shell/stand-soon.ts';
import { watchAlerts } from '../shell/watch-alerts.ts';
import { DeskPage } from './desk-page.ts';

const { settings, learnt } = openWall('sitting');
const page = new DeskPage();
const { alerts, over } = watchAlerts(settings, {
  now: () => sync.hubNow(),
  changed: () => page.requestUpdate(),
});
const sync = openSync({ kind: 'desk' }, settings, over);
reloadWhenDue(sync);
await learnt;
page.sync = sync;
page.language = settings.language;
page.alerts = alerts;
document.body.append(page);
