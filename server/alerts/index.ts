export { AlertDesk } from './alert-desk.ts';
