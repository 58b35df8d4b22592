import { type FileFault, type FileRead, filePath } from './fault.ts';
import { type Misplaced, scanJson } from './scan-json.ts';

/**
 * The value of a JSON file (RFC 8259) as an editor saved it, or what is wrong with its text. Two
 * things are asked beyond the grammar: a name stands only once in an object, since of two one would
 * be lost without a word, and the bytes were UTF-8. A byte order mark is passed over.
 */
export function readJsonText(text: string): FileRead<unknown> {
  const body = text.replace(/^\uFEFF/, '');
  const strange = /[\uFFFD\0]/.exec(body);
  if (strange) return broken(body, { at: strange.index, found: 'a byte that is no text', allowed });
  const { misplaced, twice } = scanJson(body);
  if (misplaced) return broken(body, misplaced);
  if (twice.length === 0) return { ok: true, value: JSON.parse(body) };
  const problems = twice.map(({ path, at }) => ({
    path: filePath(path),
    found: `a second one in ${placeIn(body, at)}`,
    allowed: 'each name once',
  }));
  return { ok: false, problems };
}

const allowed = 'text that is saved as UTF-8';

function broken(text: string, { at, found, allowed }: Misplaced): FileRead<never> {
  const problem: FileFault = { path: placeIn(text, at), found, allowed };
  return { ok: false, problems: [problem] };
}

/** Counted from one, as editors count. */
function placeIn(text: string, at: number): string {
  const lines = text.slice(0, at).split('\n');
  return `line ${lines.length}, column ${[...(lines.at(-1) ?? '')].length + 1}`;
}
