import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const root = at('client');

/** Every `client/*.html` is a page of its own, so a new screen needs no word here. */
const pages = existsSync(root)
  ? readdirSync(root)
      .filter((name) => name.endsWith('.html'))
      .map((name) => at(`client/${name}`))
  : [];

export default defineConfig({
  root,
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
      // What lies in shared/ only defines: a screen takes what it uses, the schemas stay behind.
      treeshake: { moduleSideEffects: [{ test: /\/shared\//, sideEffects: false }] },
    },
  },
});
