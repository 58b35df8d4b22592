export { type Edge, type EdgeParts, openEdge } from './edge.ts';
