export { type AppParts, createApp } from './app.ts';
export { type WhoDoorParts, whoDoors } from './who-doors.ts';
