const WIDTH = 100;

/**
 * JSON as a person would write it: what fits on a line stands on one. An editor that formats files
 * leaves most of it as it is.
 */
export function pageOf(value: unknown): string {
  return `${written(value, 0, 0)}\n`;
}

function written(value: unknown, indent: number, before: number): string {
  const line = lineOf(value);
  const fits = indent > 0 && indent + before + line.length < WIDTH;
  if (fits || !isNested(value)) return line;
  const pad = ' '.repeat(indent + 2);
  const isList = Array.isArray(value);
  const items = isList
    ? value.map((item: unknown) => `${pad}${written(item, indent + 2, 0)}`)
    : entriesOf(value).map(([key, item]) => {
        const name = `${JSON.stringify(key)}: `;
        return `${pad}${name}${written(item, indent + 2, name.length)}`;
      });
  const [open, close] = isList ? '[]' : '{}';
  return `${open}\n${items.join(',\n')}\n${' '.repeat(indent)}${close}`;
}

function lineOf(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(lineOf).join(', ')}]`;
  if (!isNested(value)) return JSON.stringify(value);
  const entries = entriesOf(value).map(([key, item]) => `${JSON.stringify(key)}: ${lineOf(item)}`);
  return entries.length === 0 ? '{}' : `{ ${entries.join(', ')} }`;
}

const isNested = (value: unknown): value is object => typeof value === 'object' && value !== null;

const entriesOf = (value: object): [string, unknown][] =>
  Object.entries(value).filter(([, item]) => item !== undefined);
