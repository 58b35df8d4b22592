export { catalogue } from './catalogue.ts';
export { demoDay, demoFiles } from './demo-day.ts';
export { demoLog } from './demo-log.ts';
