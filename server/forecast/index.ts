export { createCookThread } from './cook-thread.ts';
export { Forecasts } from './forecasts.ts';
export { Spreads } from './spreads.ts';
export { type AskWhatIf, askWhatIf } from './what-if.ts';
