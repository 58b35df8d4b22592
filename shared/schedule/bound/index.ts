export { boundOf } from './bound.ts';
