declare const brand: unique symbol;

/** A value that carries its meaning in its type, so that a slot never goes where a task belongs. */
export type Brand<Base, Name extends string> = Base & { readonly [brand]: Name };
