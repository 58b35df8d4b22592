import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { parseSync } from 'vite';
import { root } from '../../server/fingerprint.mjs';

/** A file of the project, its path from the project's folder with forward slashes. */
export type Source = { readonly path: string; readonly text: string };

export type Import = {
  /** A path of the project, or the name of a package. */
  readonly target: string;
  /** True when nothing of it is left at run time. */
  readonly typeOnly: boolean;
  readonly line: number;
};

export type Export = {
  readonly name: string;
  readonly kind: 'function' | 'type' | 'value';
  readonly line: number;
  readonly hasDoc: boolean;
};

export type Module = Source & {
  readonly imports: readonly Import[];
  /** What is declared here; what is merely passed on is not listed. */
  readonly exports: readonly Export[];
  /** How often each name is said here, not counting those merely passed on. */
  readonly names: ReadonlyMap<string, number>;
};

/** Every tracked file, and every new one that is not ignored. */
export function projectFiles(): Source[] {
  const listed = execFileSync('git', ['ls-files', '-co', '--exclude-standard', '-z'], {
    cwd: root,
    encoding: 'utf8',
  });
  return [...new Set(listed.split('\0'))]
    .filter((path) => path !== '' && existsSync(join(root, path)))
    .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));
}

export const isCode = (path: string) => /\.(ts|mjs)$/.test(path);

export const lineAt = (text: string, offset: number) => text.slice(0, offset).split('\n').length;

const resolve = (from: string, specifier: string) =>
  specifier.startsWith('.') ? posix.join(posix.dirname(from), specifier) : specifier;

type Node = { readonly type: string; readonly start: number; readonly [key: string]: unknown };

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && 'start' in value;

const passesOn = (node: Node) =>
  node.type === 'ExportAllDeclaration' ||
  (node.type === 'ExportNamedDeclaration' && isNode(node['source']));

function countNames(value: unknown, into: Map<string, number>): void {
  if (Array.isArray(value)) {
    for (const item of value) countNames(item, into);
  } else if (isNode(value) && !passesOn(value)) {
    const name = String(value['name']);
    if (value.type === 'Identifier') into.set(name, (into.get(name) ?? 0) + 1);
    for (const part of Object.values(value)) countNames(part, into);
  }
}

function kindOf(value: unknown): Export['kind'] {
  if (!isNode(value)) return 'value';
  if (/^TS(TypeAlias|Interface)/.test(value.type)) return 'type';
  return /Function/.test(value.type) ? 'function' : 'value';
}

/** What `export const a = …`, `export function b …` or `export type C = …` declares. */
function declaredBy(declaration: Node): Pick<Export, 'name' | 'kind'>[] {
  const named = ({ id }: Node) => (isNode(id) ? String(id['name']) : '');
  const parts = declaration['declarations'];
  return Array.isArray(parts)
    ? parts.filter(isNode).map((part) => ({ name: named(part), kind: kindOf(part['init']) }))
    : [{ name: named(declaration), kind: kindOf(declaration) }];
}

type Parsed = ReturnType<typeof parseSync>;

function exportsOf(text: string, { program, comments }: Parsed): Export[] {
  const docEnds = comments
    .filter(({ type, value }) => type === 'Block' && value.startsWith('*'))
    .map(({ end }) => end);
  return program.body.flatMap((statement) => {
    const node: Node = { ...statement };
    const declaration = node['declaration'];
    if (node.type !== 'ExportNamedDeclaration' || !isNode(declaration)) return [];
    const hasDoc = docEnds.some((end) => end <= node.start && !text.slice(end, node.start).trim());
    const line = lineAt(text, node.start);
    return declaredBy(declaration).map((declared) => ({ ...declared, line, hasDoc }));
  });
}

function importsOf(path: string, text: string, { module }: Parsed): Import[] {
  const statics = module.staticImports.map(({ moduleRequest, entries, start }) => ({
    target: resolve(path, moduleRequest.value),
    typeOnly: entries.length > 0 && entries.every(({ isType }) => isType),
    line: lineAt(text, start),
  }));
  const passedOn = module.staticExports.flatMap(({ entries, start }) =>
    entries.flatMap(({ moduleRequest, isType }) =>
      moduleRequest === null
        ? []
        : [
            {
              target: resolve(path, moduleRequest.value),
              typeOnly: isType,
              line: lineAt(text, start),
            },
          ],
    ),
  );
  const dynamic = module.dynamicImports.map(({ moduleRequest, start }) => ({
    target: resolve(path, text.slice(moduleRequest.start + 1, moduleRequest.end - 1)),
    typeOnly: false,
    line: lineAt(text, start),
  }));
  return [...statics, ...passedOn, ...dynamic];
}

/** Reads a file of code as far as the house rules need it. Throws where it is not TypeScript. */
export function parseModule({ path, text }: Source): Module {
  const parsed = parseSync(path, text);
  const [error] = parsed.errors;
  if (error !== undefined) throw new Error(`${path}: ${error.message}`);
  const names = new Map<string, number>();
  countNames(parsed.program.body, names);
  const imports = importsOf(path, text, parsed);
  return { path, text, imports, exports: exportsOf(text, parsed), names };
}
