export { listenToProbes, type Probes } from './listen-to-probes.ts';
