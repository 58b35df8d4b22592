import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const root = at('client');

/** Every `client/*.html` is a page of its own, so a new screen needs no word here. */
const pages = existsSync(root)
  ? readdirSync(root)
      .filter((name) => name.endsWith('.html'))
      .map((name) => at(`client/${name}`))
  : [];

/**
 * Screens speak by web socket alone (see client/sync/socket-link.ts): the other transports of the
 * client library would be a tenth of what a wall loads.
 */
const webSocketAlone: Plugin = {
  name: 'web-socket-alone',
  enforce: 'pre',
  resolveId(source, importer = '') {
    const isTheirs = importer.includes('/engine.io-client/') && importer.endsWith('/socket.js');
    return isTheirs && source === './transports/index.js' ? `\0transports:${importer}` : null;
  },
  load(id) {
    if (!id.startsWith('\0transports:')) return null;
    const socket = JSON.stringify(
      id.replace('\0transports:', '').replace(/socket\.js$/, 'transports/websocket.js'),
    );
    return `import { WS } from ${socket}; export const transports = { websocket: WS };`;
  },
};

export default defineConfig({
  root,
  plugins: [webSocketAlone],
  base: '/',
  publicDir: at('client/public'),
  build: {
    outDir: at('dist'),
    emptyOutDir: true,
    target: 'es2022',
    // The manifest is how the bundle bench knows what one page loads.
    manifest: true,
    rolldownOptions: {
      input: pages,
      // What lies in these only defines: a screen takes what it uses, and the schemas, the other
      // transports and the dates with a zone of their own stay behind.
      treeshake: {
        moduleSideEffects: [
          { test: /\/shared\/|\/engine\.io-client\/|\/@date-fns\/tz\//, sideEffects: false },
        ],
      },
    },
  },
});
