export { alertsDoor } from './alerts-door.ts';
export { type AppParts, createApp } from './app.ts';
export { installDoors } from './install-doors.ts';
export { planDoors } from './plan-doors.ts';
export { readingsDoor } from './readings-door.ts';
export { recordDoors } from './record-doors.ts';
export { whatIfDoor } from './what-if-door.ts';
export { type WhoDoorParts, whoDoors } from './who-doors.ts';
