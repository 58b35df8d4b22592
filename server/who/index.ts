export type { Caller } from './front.ts';
export { type Guard, mayAsk, mayShow, OPEN } from './guard.ts';
export { type OpenWho, openWho } from './open-who.ts';
export { createTries } from './tries.ts';
export type { Entitled, Who } from './who.ts';
