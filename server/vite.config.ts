import { dirname, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { BUILT_HUB } from './built.mjs';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** What runs before anything is built is not built: it stays where it is. */
const launcherStays: Plugin = {
  name: 'launcher-stays',
  enforce: 'pre',
  resolveId(source, importer) {
    if (!importer || !source.startsWith('.') || !source.endsWith('.mjs')) return null;
    const id = relative(BUILT_HUB, resolve(dirname(importer), source)).replaceAll(sep, '/');
    return { id, external: true };
  },
};

/**
 * The hub as Node runs it. It could run from its sources as well, but reading five hundred of them
 * through a compiler, once for its process and once for each thread, keeps the walls alone for
 * twice as long after each start.
 */
export default defineConfig({
  root: at('.'),
  publicDir: false,
  plugins: [launcherStays],
  build: {
    ssr: true,
    outDir: BUILT_HUB,
    emptyOutDir: true,
    target: 'node20',
    // A fault names the line of the source.
    sourcemap: true,
    rolldownOptions: {
      checks: { pluginTimings: false, ineffectiveDynamicImport: false },
      input: ['main.ts', 'cli.ts', 'plan-desk/draft-work.ts', 'forecast/forecast-work.ts'].map(at),
      output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
});
