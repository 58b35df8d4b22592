/** Ends a start with what a person has to know; no fault of ours. */
export class CannotStart extends Error {
  override readonly name = 'CannotStart';
  readonly lines: readonly string[];

  constructor(...lines: readonly string[]) {
    super(lines.join('\n'));
    this.lines = lines;
  }
}
