import { las } from './at-clock.ts';
import type { HappeningPhrases } from './happening-phrases.ts';

export const happeningSpanish: HappeningPhrases = {
  'smoker-is-down': ({ smoker, time }) =>
    `${smoker} está apagado desde ${las(time)}: espere a que vuelva o elija otro ahumador.`,
  'smoker-is-up': ({ smoker }) => `${smoker} no está apagado: dé la lectura del aire.`,
  'hand-is-out': ({ person }) => `${person} no está: désela a alguien que esté aquí.`,
  'hand-is-here': ({ person }) => `${person} ya está aquí.`,
  'back-too-soon': () => 'Esa hora ya pasó: diga una que esté por venir.',
  'not-of-this-day': () => 'Eso no está en el plan de hoy: mire la lista otra vez.',
  'impossible-amount': ({ amount, weight }) =>
    `${weight || amount} no puede ser: cuente o pese de nuevo.`,
  'day-is-closed': ({ time, person }) =>
    `El día se cerró a ${las(time)}${person && ` (${person})`}: deshaga antes el cierre.`,
  'past-use-by': ({ day }) => `Caducó el ${day}: no se puede usar.`,
  'odd-delivery': ({ odd }) => odd,
  'unknown-lot': ({ lot }) => `No hay ningún lote ${lot} en la cámara: lea otra vez la etiqueta.`,
  'lot-not-here-yet': ({ lot, time }) =>
    `El lote ${lot} llegó a ${las(time)}, después de empezar eso: diga el lote que había.`,
  'lot-of-another-cut': ({ lot, cut }) => `El lote ${lot} es ${cut}: de ahí no sale eso.`,
  'lot-used-up': ({ lot }) => `Del lote ${lot} no queda nada: diga otro.`,
  'lot-sent-back': ({ lot }) => `El lote ${lot} se devolvió: diga otro.`,
  'not-a-cure': () => 'Eso no lleva sal de cura: no se pesa dos veces.',
  'cure-wants-two': () => 'La sal de cura la pesan dos: diga quién pesó y quién lo leyó otra vez.',
  'cure-not-weighed': ({ mix, weight }) =>
    `${mix} cura: antes la pesan dos, ${weight}, y lo dicen en esta línea.`,
  'cure-off': ({ mix, row }) => `No puede ir tanto ${mix}: ${row}. Pese de nuevo.`,
  'not-on-record': () => 'Eso no está en ningún día: lea otra vez la etiqueta o la fecha.',
  'nothing-to-undo': () => 'Eso ya está deshecho, o es de un plan anterior.',
  'undone-on-its-line': () => 'Eso se deshace en su propia línea: use la casilla de allí.',
  'stood-on': ({ time, person }) =>
    `Algo hecho a ${las(time)}${person && ` (${person})`} depende de eso: deshágalo antes.`,
};
