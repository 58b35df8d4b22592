import type { WorkerScope } from './scope.ts';
import { serveShell } from './shell-worker.ts';

serveShell(globalThis as unknown as WorkerScope);
