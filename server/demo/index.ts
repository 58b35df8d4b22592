export { catalogue } from './catalogue.ts';
export { demoDay, demoFiles } from './demo-day.ts';
export { demoLog } from './demo-log.ts';
export { demoLots } from './demo-lots.ts';
export { demoReadings, SENDS_EVERY_S, sentUntil } from './demo-thermometers.ts';
