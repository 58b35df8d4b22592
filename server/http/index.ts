export { type AppParts, createApp } from './app.ts';
export { planDoors } from './plan-doors.ts';
export { type WhoDoorParts, whoDoors } from './who-doors.ts';
