import type { WhoRefusal } from '../day/index.ts';

type Rule = WhoRefusal['rule'];
type Said<Key extends Rule> = (refusal: Extract<WhoRefusal, { rule: Key }>) => string;

/** Why somebody was not let in or may not do this, in one language. */
export type WhoPhrases = { readonly [Key in Rule]: Said<Key> };

const tries = (waitS: number, one: string, many: string) =>
  waitS <= 1 ? `1 ${one}` : `${Math.ceil(waitS)} ${many}`;

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
  'too-many-tries': ({ waitS }) =>
    `Too many tries: wait ${tries(waitS, 'second', 'seconds')} and try again.`,
  'unknown-screen': () => 'There is no such screen any more: look at the list again.',
  'name-taken': ({ name }) => `Another screen is called “${name}”: give this one another name.`,
  'needs-station': () => 'A wall belongs to a station: pick at least one.',
  'last-desk': () => 'This is the only desk: let another one in first.',
};

export const whoSpanish: WhoPhrases = {
  'screen-unknown': () => 'Esta pantalla aún no tiene permiso: pídalo en el escritorio.',
  'screen-revoked': () =>
    'Esta pantalla se dio de baja en el escritorio: pida allí que la admitan de nuevo.',
  'screen-elsewhere': () =>
    'Esta pantalla es de otro lugar: ábrala allí o pida en el escritorio que la cambien.',
  'not-the-desk': () => 'Eso se hace en el escritorio: vaya allí.',
  'needs-owner': () =>
    'Solo quien tiene un PIN de responsable puede hacerlo: elija su nombre y escriba el PIN.',
  'needs-pin': () => 'Eso pide un PIN: elija su nombre, escriba el PIN y hágalo de nuevo.',
  'wrong-pin': () => 'Ese no es el PIN de esta persona: escríbalo otra vez.',
  'poor-pin': ({ least, most }) =>
    `Un PIN tiene de ${least} a ${most} cifras, no todas iguales ni seguidas: escriba otro.`,
  'wrong-code': () => 'Ese no es el código: compárelo y escríbalo otra vez.',
  'code-over': () => 'Este código ya no vale: use el nuevo.',
  'too-many-tries': ({ waitS }) =>
    `Demasiados intentos: espere ${tries(waitS, 'segundo', 'segundos')} y pruebe otra vez.`,
  'unknown-screen': () => 'Esa pantalla ya no está: mire la lista otra vez.',
  'name-taken': ({ name }) => `Otra pantalla se llama «${name}»: ponga otro nombre.`,
  'needs-station': () => 'Un tablero es de una estación: elija al menos una.',
  'last-desk': () => 'Este es el único escritorio: admita otro primero.',
};
