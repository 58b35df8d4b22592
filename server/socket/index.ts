export { type Edge, type EdgeParts, openEdge } from './edge.ts';
export { isOurPage, knockOf } from './origin.ts';
export { createPace, type Pace } from './pace.ts';
