import type { Instant } from '../../shared/kernel/index.ts';

/** One word of `npm run -s coalface -- WORD …`: a file of its own, and a line in `commands.ts`. */
export type Command = {
  readonly name: string;
  /** What it wants after its name, as help shows it: `FILE|DIR`, `LOT DIR`. Null: nothing. */
  readonly takes: string | null;
  /** One line for the list of commands. */
  readonly about: string;
  /** What one should know before using it, in lines of at most a terminal's width. */
  readonly more: readonly string[];
  readonly options: readonly Option[];
  run(asked: Asked, shell: Shell): Promise<Ended>;
};

export type Option = {
  readonly name: string;
  /** What follows it, `DIR`; null for one that stands alone. */
  readonly value: string | null;
  readonly about: string;
  /** The only values that it takes, where there are few. */
  readonly oneOf?: readonly string[];
};

/** A command line that made sense: `path` is what it is about, and '' where nothing was wanted. */
export type Asked = {
  readonly path: string;
  /** What else was wanted, in its order. */
  readonly also: readonly string[];
  readonly options: ReadonlyMap<string, string>;
};

/** What a command may touch of the world, so that a test can stand in for it. */
export type Shell = {
  say(text: string): void;
  now(): Instant;
  /** Where relative paths start. */
  readonly folder: string;
};

/** 0: all well. 1: what was read cannot be, or is damaged. 2: the command line makes no sense. */
export type Ended = { readonly exit: 0 | 1 | 2; readonly complaints: readonly string[] };

export const allWell: Ended = { exit: 0, complaints: [] };
export const refused = (complaints: readonly string[]): Ended => ({ exit: 1, complaints });
export const misused = (complaints: readonly string[]): Ended => ({ exit: 2, complaints });
