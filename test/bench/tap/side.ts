/** One of the two that are measured beside each other. */
export type Side = {
  /** One tap; resolves when it is durable and the last screen has what follows from it. */
  tap(): Promise<void>;
  close(): Promise<void>;
};

/** The first view of each face, and which face each screen shows. */
export type Shown = { readonly views: readonly unknown[]; readonly faceOf: readonly number[] };
