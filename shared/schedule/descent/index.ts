export { Descent } from './descent.ts';
