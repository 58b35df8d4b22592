/** One part as it stands at one moment: what it is called here, and what it is given. */
export type State = {
  readonly name: string;
  /** Everything the part is given besides how its reader wants things said. */
  readonly given: Readonly<Record<string, unknown>>;
  /** In minutes of arc; the whole width, and as high as it is, where nothing is said. */
  readonly wide?: number;
  readonly high?: number;
};

/** A part by the name of its element, in all its states. */
export type Shown = { readonly part: string; readonly states: readonly State[] };
