import { ensureBuilt } from './ensure-built.mjs';

// `npm run build`.

ensureBuilt();
