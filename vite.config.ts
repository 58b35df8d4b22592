import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { minify } from 'terser';
import { defineConfig, type Plugin } from 'vite';
import { BUILT_SCREENS } from './server/built.mjs';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const root = at('client');

/** Every `client/*.html` is a page of its own, so a new screen needs no word here. */
const pages = existsSync(root)
  ? readdirSync(root)
      .filter((name) => name.endsWith('.html'))
      .map((name) => at(`client/${name}`))
  : [];

type Quasi = { readonly start: number; readonly end: number };
type Node = { readonly type: string; readonly tag?: Node; readonly name?: string } & {
  readonly quasi?: { readonly quasis: readonly Quasi[] };
};

/** Every tagged template below a node of a syntax tree. */
function tagged(node: unknown): Required<Pick<Node, 'tag' | 'quasi'>>[] {
  if (typeof node !== 'object' || node === null) return [];
  const { type, tag, quasi } = node as Node;
  const below = Object.values(node).flatMap(tagged);
  return type === 'TaggedTemplateExpression' && tag && quasi ? [{ tag, quasi }, ...below] : below;
}

const lean: Readonly<Record<string, (text: string) => string>> = {
  css: (text) =>
    text
      .replace(/\/\*[\s\S]*?\*\//g, '')
      .replace(/\s+/g, ' ')
      .replace(/ ?([{};]) ?/g, '$1')
      .replace(/([:,]) /g, '$1')
      .replace(/ ([>~]) /g, '$1')
      .replace(/([^\w.])0\./g, '$1.')
      .replace(/;}/g, '}'),
  html: (text) => text.replace(/\s*\n\s*/g, ' '),
  svg: (text) => text.replace(/\s*\n\s*/g, ' '),
};

/**
 * Styles and markup are written for their readers; what stands between their words and their
 * comments would be a thirtieth of what a wall loads, and no minifier looks into a template.
 */
const leanTemplates: Plugin = {
  name: 'lean-templates',
  apply: 'build',
  transform(code, id) {
    const isOurs = id.startsWith(root) && id.endsWith('.ts');
    if (!isOurs || !/\b(?:css|html|svg)`/.test(code)) return null;
    const quasis = tagged(this.parse(code)).flatMap(({ tag, quasi }) => {
      const thin = lean[tag.name ?? ''];
      return thin ? quasi.quasis.map(({ start, end }) => ({ start, end, thin })) : [];
    });
    return quasis
      .sort((a, b) => b.start - a.start)
      .reduce(
        (text, { start, end, thin }) =>
          text.slice(0, start) + thin(text.slice(start, end)) + text.slice(end),
        code,
      );
  },
};

/**
 * What a page fetches later stands on files that it has: nothing is to be fetched ahead of it, by a
 * helper that weighs a hundredth of the wall.
 */
const plainImports: Plugin = {
  name: 'plain-imports',
  apply: 'build',
  enforce: 'pre',
  load: (id) =>
    id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load();' : null,
};

/** By how often: what one round leaves, the next still folds. */
const ROUNDS = 3;

/** Minified once more by another hand, a wall has a fiftieth less to load. */
const minifiedTwice: Plugin = {
  name: 'minified-twice',
  apply: 'build',
  async generateBundle(_options, bundle) {
    for (const chunk of Object.values(bundle)) {
      if (chunk.type !== 'chunk') continue;
      const options = { module: true, ecma: 2020 } as const;
      for (let round = 1; round <= ROUNDS; round++) {
        const { code } = await minify(chunk.code, options);
        if (code) chunk.code = code;
      }
    }
  },
};

/**
 * Nothing of a page is painted without its styles: they are asked for before its scripts. What asks
 * for its words is run as soon as it is there, and not only when all the rest is.
 */
const firstThingsFirst: Plugin = {
  name: 'first-things-first',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler(page) {
      const [styles = ''] = page.match(/ *<link rel="stylesheet"[^>]*>\n/) ?? [];
      const [asked = '', words = ''] =
        page.match(/ *<link rel="modulepreload" crossorigin href="(\S*\/words-wanted-[^"]*)">\n/) ??
        [];
      const first = asked && `    <script type="module" crossorigin src="${words}"></script>\n`;
      return page
        .replace(styles, '')
        .replace(asked, '')
        .replace(/ *<script /, (script) => styles + first + script);
    },
  },
};

/** The service worker has this name for ever: a device that has it looks for it there. */
const WORKER = 'sw.js';
/** Shown before anything is kept, and only then. */
const NOT_KEPT = ['install.html'];

/**
 * Tells the service worker which files the screens are made of, and gives that state a name: when
 * any of them is another, the worker is another one, and a device fetches what is new.
 */
const shellList: Plugin = {
  name: 'shell-list',
  apply: 'build',
  enforce: 'post',
  generateBundle: {
    order: 'post',
    handler(_options, bundle) {
      const worker = bundle[WORKER];
      // A part that a test builds by itself has no worker; all of them together must.
      if (worker?.type !== 'chunk') {
        if ('index.html' in bundle) this.error(`${WORKER} was not built`);
        return;
      }
      const isKept = (name: string) =>
        name !== WORKER && !name.startsWith('.vite/') && !NOT_KEPT.includes(name);
      const built = Object.keys(bundle).filter(isKept).sort();
      const asTheyAre = readdirSync(at('client/public'));
      const files = [...built, ...asTheyAre].map((name) => `/${name}`);
      const hash = createHash('sha256').update(worker.code);
      for (const name of built) {
        const file = bundle[name];
        hash.update(`\0${name}\0`).update(file?.type === 'asset' ? file.source : '');
      }
      for (const name of asTheyAre) hash.update(readFileSync(at(`client/public/${name}`)));
      const version = hash.digest('hex').slice(0, 16);
      worker.code = `self.shell=${JSON.stringify({ version, files })};\n${worker.code}`;
    },
  },
};

/** On these hangs all that the wall of a station is made of. */
const WALL = [
  ...['station/station-wall', 'standard/standards'],
  ...['shell/open-sync', 'shell/open-wall', 'shell/stand-soon'],
].map((name) => at(`client/${name}.ts`));
/** What the words of a language stand on, which would be a file of its own. */
const TONGUES = at('shared/words/at-clock.ts');
/** Lies behind the same doors, and only other screens use it. */
const OTHERS = new RegExp(
  `/(?:${[
    ...['pass-page', 'runs-out', 'allergens', 'who-doors', 'just-done'],
    ...['resolve-local', 'limits-held', 'clock-range', 'clock-of-day', 'left-by-service'],
  ].join('|')})\\.ts$`,
);
/** Before all else, so that the words are fetched while the rest is evaluated. */
const WORDS_WANTED = /\/client\/shell\/words-wanted\.ts$/;
/** What a cut's sheet is made of, drawing and words: one file, fetched when a wall has its ink. */
const STANDARD =
  /\/(?:standard-(?:sheet|words)|cut-(?:drawing|standard|training)|standard\/drawing)\.ts$/;

export default defineConfig({
  root,
  plugins: [leanTemplates, plainImports, minifiedTwice, firstThingsFirst, shellList],
  base: '/',
  publicDir: at('client/public'),
  build: {
    outDir: BUILT_SCREENS,
    emptyOutDir: true,
    target: 'es2022',
    // The manifest is how the bundle bench knows what one page loads.
    manifest: true,
    // Whatever runs our walls knows `modulepreload` by itself.
    modulePreload: {
      polyfill: false,
      // A page has named what it begins with; of what it fetches later it need not know a list.
      resolveDependencies: (_file, files, { hostType }) => (hostType === 'js' ? [] : files),
    },
    rolldownOptions: {
      // Whoever starts a kitchen is not to read which plugin took how long.
      checks: { pluginTimings: false },
      input: [...pages, at('client/worker/main.ts')],
      output: {
        entryFileNames: ({ facadeModuleId }) =>
          facadeModuleId?.endsWith('/worker/main.ts') ? WORKER : 'assets/[name]-[hash].js',
        codeSplitting: {
          // A wall is to have its first ink soon: all of it is one file, which packs better than
          // five, and no other screen makes it heavier. The others begin with that file, which the
          // device keeps. A language stays by itself: a wall loads the one it shows.
          groups: [
            { name: 'words-wanted', test: WORDS_WANTED, priority: 3 },
            { name: 'others', test: OTHERS, priority: 2, includeDependenciesRecursively: false },
            {
              name: 'standard',
              test: STANDARD,
              priority: 2,
              includeDependenciesRecursively: false,
            },
            { name: 'walls', test: (id) => [...WALL, TONGUES].includes(id), priority: 1 },
          ],
        },
      },
      // What lies in these only defines: a screen takes what it uses, and the schemas and the
      // dates with a zone of their own stay behind.
      treeshake: {
        moduleSideEffects: [{ test: /\/shared\/|\/@date-fns\/tz\//, sideEffects: false }],
      },
    },
  },
});
