/** The event by which a page hears that its glass is about to be wiped. */
export const WIPE = 'coalface-wipe';

/** Lets somebody wipe the glass: no tap is heard for a while, and the wall says so. */
export function wipeGlass(): void {
  dispatchEvent(new Event(WIPE));
}
