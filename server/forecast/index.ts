export { createCookThread } from './cook-thread.ts';
export { Forecasts } from './forecasts.ts';
export { type AskWhatIf, askWhatIf } from './what-if.ts';
