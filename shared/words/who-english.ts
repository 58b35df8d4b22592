import type { WhoPhrases } from './who-phrases.ts';

const tries = (waitS: number) => (waitS <= 1 ? '1 second' : `${Math.ceil(waitS)} seconds`);

export const whoEnglish: WhoPhrases = {
  'screen-unknown': () => 'This screen has not been let in yet: have the desk do it.',
  'screen-revoked': () => 'This screen was taken off at the desk: have it let in again there.',
  'screen-elsewhere': () =>
    'This screen belongs somewhere else: open that, or have it moved at the desk.',
  'not-the-desk': () => 'That is done at the desk: go there.',
  'needs-owner': () =>
    'Only someone with an owner’s PIN may do that: pick your name and type the PIN first.',
  'needs-pin': () => 'That takes a PIN: pick your name, type the PIN, and do it again.',
  'wrong-pin': () => 'That is not the PIN of this person: type it again.',
  'poor-pin': ({ least, most }) =>
    `A PIN has ${least} to ${most} digits that are not all the same or in a row: type another.`,
  'wrong-code': () => 'That is not the code: compare it and type it again.',
  'code-over': () => 'This code has run out: take the new one.',
  'too-many-tries': ({ waitS }) => `Too many tries: wait ${tries(waitS)} and try again.`,
  'unknown-screen': () => 'There is no such screen any more: look at the list again.',
  'name-taken': ({ name }) => `Another screen is called “${name}”: give this one another name.`,
  'needs-station': () => 'A wall belongs to a station: pick at least one.',
  'last-desk': () => 'This is the only desk: let another one in first.',
};
