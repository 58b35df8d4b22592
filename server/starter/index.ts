export { type StartFrom, starterFiles } from './starter-files.ts';
