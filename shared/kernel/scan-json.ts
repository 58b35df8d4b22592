/** What stands where it may not, counted in characters from the start of the text. */
export type Misplaced = {
  readonly at: number;
  readonly found: string;
  readonly allowed: string;
};

/** A name that its object has already, where it stands for the second time. */
type Twice = { readonly path: readonly PropertyKey[]; readonly at: number };

type Scanned = { readonly misplaced: Misplaced | null; readonly twice: readonly Twice[] };

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;
const TEXT = /"(?:[^"\\\p{Cc}]|[\x7F-\x9F]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*"/uy;
const SPACE = /[ \t\r\n]*/y;

const A_VALUE = 'a text in quotes, a number, true, false, null, { or [';
const A_TEXT = 'a text in quotes, closed on its own line; a backslash is written twice';

/**
 * Goes over JSON (RFC 8259) up to the first thing that is out of place, and says it in words that
 * help to mend it.
 */
export function scanJson(text: string): Scanned {
  const scan = new Scan(text);
  try {
    scan.whole();
    return { misplaced: null, twice: scan.twice };
  } catch (fault) {
    if (fault instanceof Stop) return { misplaced: fault.misplaced, twice: scan.twice };
    throw fault;
  }
}

class Stop extends Error {
  readonly misplaced: Misplaced;
  constructor(misplaced: Misplaced) {
    super(misplaced.found);
    this.misplaced = misplaced;
  }
}

type Path = readonly PropertyKey[];

class Scan {
  readonly twice: Twice[] = [];
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  whole(): void {
    this.#value([]);
    this.#take(SPACE);
    if (this.#at < this.#text.length) this.#stop('nothing after the end');
  }

  #value(path: Path): void {
    this.#take(SPACE);
    const names = new Set<string>();
    const sign = this.#text[this.#at];
    if (sign === '{') this.#list('}', () => this.#member(names, path));
    else if (sign === '[') this.#list(']', (n) => this.#value([...path, n]));
    else if (sign === '"') this.#name();
    else if (this.#take(WORD) === null && this.#take(NUMBER) === null) this.#stop(A_VALUE);
  }

  #list(end: string, item: (n: number) => void): void {
    const openedAt = this.#at;
    this.#at += 1;
    if (this.#takeSign(end)) return;
    for (let n = 0; ; n++) {
      item(n);
      if (this.#takeSign(end)) return;
      if (!this.#takeSign(',')) {
        this.#stop(`a comma, or the ${end} that closes line ${this.#lineOf(openedAt)}`);
      }
      this.#take(SPACE);
      if (this.#text[this.#at] === end) this.#stop('another entry, or no comma before this');
    }
  }

  /** Counted only where it is said: a long file has thousands of lists. */
  #lineOf(at: number): number {
    return this.#text.slice(0, at).split('\n').length;
  }

  #member(names: Set<string>, path: Path): void {
    this.#take(SPACE);
    const from = this.#at;
    if (this.#text[from] !== '"') this.#stop(`a name in quotes${this.#decimal()}`);
    const key = this.#name();
    if (names.has(key)) this.twice.push({ path: [...path, key], at: from });
    names.add(key);
    if (!this.#takeSign(':')) this.#stop('a colon after the name');
    this.#value([...path, key]);
  }

  /** `1,5` reads as a number and then an entry without a name. */
  #decimal(): string {
    const around = this.#text.slice(Math.max(0, this.#at - 2), this.#at + 1);
    return /^\d,\d$/.test(around) ? '; a decimal takes a point, as in 1.5' : '';
  }

  #name(): string {
    const taken = this.#take(TEXT);
    if (taken === null) return this.#stop(A_TEXT);
    return JSON.parse(taken);
  }

  #take(pattern: RegExp): string | null {
    pattern.lastIndex = this.#at;
    const taken = pattern.exec(this.#text)?.[0] ?? null;
    this.#at += taken?.length ?? 0;
    return taken;
  }

  #takeSign(sign: string): boolean {
    this.#take(SPACE);
    if (this.#text[this.#at] !== sign) return false;
    this.#at += 1;
    return true;
  }

  #stop(allowed: string): never {
    const rest = this.#text.slice(this.#at);
    throw new Stop({ at: this.#at, found: firstOf(rest), allowed: slipOf(rest) ?? allowed });
  }
}

function firstOf(rest: string): string {
  if (rest === '') return 'the end of the file';
  const line = /^[^\r\n]{1,20}/u.exec(rest)?.[0].trimEnd();
  if (line === undefined) return 'a line break';
  return line.startsWith('"') ? line : (/^(?:[\w.]+|.)/u.exec(line)?.[0] ?? line);
}

/** Slips that have a remedy of their own. */
function slipOf(rest: string): string | null {
  if (/^\/[/*]/.test(rest)) return 'no remarks: JSON has none';
  if (/^[“”„«»‘’']/.test(rest)) return 'straight double quotes, "like these"';
  return null;
}
