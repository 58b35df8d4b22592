import { openWall } from '../shell/open-wall.ts';
import './screen-list.ts';
import { ScreenSettings } from './screen-settings.ts';

const { settings } = openWall();
const own = new ScreenSettings();
own.settings = settings;
document.body.append(document.createElement('screen-list'), own);
