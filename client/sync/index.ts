export { indexedOutbox } from './indexed-outbox.ts';
export { indexedView } from './indexed-view.ts';
export type { LastDay, LastView } from './last-view.ts';
export { memoryOutbox } from './memory-outbox.ts';
export type { KeptTap, Outbox } from './outbox.ts';
export {
  type Drainer,
  type DrainerListener,
  type LocalClock,
  type OutboxNews,
  type SyncPorts,
  soleDrainer,
  type Timers,
} from './ports.ts';
export { BEAT_EVERY_MS, SILENCE_MS } from './pulse.ts';
export { socketLink } from './socket-link.ts';
export { createSync } from './sync.ts';
export type { Sync, SyncState } from './sync-state.ts';
export { tabDrainer } from './tab-drainer.ts';
export type { RefusedTap } from './taps.ts';
