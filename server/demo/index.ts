export { demoDay } from './demo-day.ts';
export { type DemoTap, demoLog } from './demo-log.ts';
