/** A broken promise of our own code. It is never shown to a person as an answer. */
export class Bug extends Error {
  override readonly name = 'Bug';
}

/** Throws a Bug unless `condition` holds; for what cannot be false if the code is right. */
export function assert(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Bug(message);
}

/** The value itself, or a Bug that says what was missing. */
export function must<T>(value: T | null | undefined, what: string): T {
  if (value === null || value === undefined) throw new Bug(`missing: ${what}`);
  return value;
}

/** Marks the end of a closed union: a new member breaks the build here. */
export function unreachable(value: never): never {
  throw new Bug(`not handled: ${JSON.stringify(value)}`);
}
