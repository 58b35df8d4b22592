export { catalogue } from './catalogue.ts';
export { demoDay, demoFiles } from './demo-day.ts';
export { type DemoTap, demoLog } from './demo-log.ts';
