export { boundOf } from './bound.ts';
export { type Improved, type ImproveOptions, improve } from './improve.ts';
