export { createCookThread } from './cook-thread.ts';
export { Forecasts } from './forecasts.ts';
