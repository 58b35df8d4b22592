import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type Plugin } from 'vite';
import { root } from '../../../server/fingerprint.mjs';

type Property = { readonly key?: { readonly name?: string }; readonly kind?: string };
type Node = {
  readonly type?: string;
  readonly start?: number;
  readonly end?: number;
  readonly properties?: readonly Property[];
  readonly id?: { readonly name?: string };
  readonly init?: Node;
};

/** Every node of a syntax tree. */
function nodesIn(node: unknown): Node[] {
  if (typeof node !== 'object' || node === null) return [];
  const below = Object.values(node).flatMap(nodesIn);
  return 'type' in node ? [node as Node, ...below] : below;
}

/** A table with a column for each language. */
const isTable = ({ type, properties = [] }: Node) =>
  type === 'ObjectExpression' &&
  ['en', 'es'].every((language) =>
    properties.some(({ key, kind }) => key?.name === language && kind === 'init'),
  );

/** What the screens are built with only here: their English becomes two fifths longer. */
const longerEnglish: Plugin = {
  name: 'longer-english',
  enforce: 'post',
  transform(code, id) {
    if (!id.startsWith(join(root, 'shared')) && !id.startsWith(join(root, 'client'))) return null;
    const nodes = nodesIn(this.parse(code));
    const tables = nodes.filter(isTable).map((node) => ({ node, by: 'longerTable' }));
    const tongues = nodes
      .filter(({ type, id: named }) => type === 'VariableDeclarator' && named?.name === TONGUE)
      .flatMap(({ init }) => (init ? [{ node: init, by: 'stretchedWords' }] : []));
    const marks = [...tables, ...tongues].flatMap(({ node: { start = 0, end = 0 }, by }) => [
      { at: start, text: `/* @__PURE__ */ ${by}(` },
      { at: end, text: ')' },
    ]);
    if (marks.length === 0) return null;
    const longer = marks
      .toSorted((a, b) => b.at - a.at)
      .reduce((text, { at, text: mark }) => text.slice(0, at) + mark + text.slice(at), code);
    const from = JSON.stringify(join(root, 'test/gallery/stretch.ts'));
    return `import { longerTable, stretchedWords } from ${from};\n${longer}`;
  },
};
const TONGUE = 'englishTongue';

/** Builds the screens into a folder in a language two fifths longer, and reads what is built. */
export async function longerScreens(folder: string): Promise<(name: string) => Buffer> {
  await build({
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'error',
    plugins: [longerEnglish],
    build: { outDir: folder },
  });
  return (name) => readFileSync(join(folder, name));
}
