export { type TakeReadings, takeReadings } from './take-readings.ts';
