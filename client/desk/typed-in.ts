/** What a field has in it after an event of its own. */
export const valueIn = (event: Event): string => (event.target as HTMLInputElement).value;

/** The same as a whole number. */
export const numberIn = (event: Event): number => Math.round(Number(valueIn(event)));
