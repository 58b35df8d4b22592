import type { WhoPhrases } from './who-phrases.ts';

const tries = (waitS: number) => (waitS <= 1 ? '1 segundo' : `${Math.ceil(waitS)} segundos`);

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
  'too-many-tries': ({ waitS }) => `Demasiados intentos: espere ${tries(waitS)} y pruebe otra vez.`,
  'unknown-screen': () => 'Esa pantalla ya no está: mire la lista otra vez.',
  'name-taken': ({ name }) => `Otra pantalla se llama «${name}»: ponga otro nombre.`,
  'needs-station': () => 'Un tablero es de una estación: elija al menos una.',
  'last-desk': () => 'Este es el único escritorio: admita otro primero.',
};
