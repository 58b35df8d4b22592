import type { HappeningRefusal } from '../day/index.ts';

/** What a refusal names, already in the reader's language and clock. */
export type Named = {
  readonly smoker: string;
  readonly person: string;
  readonly time: string;
  readonly amount: string;
  readonly lot: string;
  readonly cut: string;
  readonly day: string;
};

/** Why what happened could not be kept or undone, in one language. */
export type HappeningPhrases = {
  readonly [Key in HappeningRefusal['rule']]: (named: Named) => string;
};

export const happeningEnglish: HappeningPhrases = {
  'smoker-is-down': ({ smoker, time }) =>
    `${smoker} is down since ${time}: wait till it is up, or pick another smoker.`,
  'smoker-is-up': ({ smoker }) => `${smoker} is not down: give its air reading instead.`,
  'hand-is-out': ({ person }) => `${person} is out: give it to someone who is here.`,
  'hand-is-here': ({ person }) => `${person} is here already.`,
  'back-too-soon': () => 'That time is past: say when in the time to come.',
  'not-of-this-day': () => 'That is not in today’s plan: look at the list again.',
  'impossible-amount': ({ amount }) => `${amount} cannot be: count or weigh again.`,
  'day-is-closed': ({ time, person }) =>
    `The day was closed at ${time}${person && ` by ${person}`}: take the closing back first.`,
  'past-use-by': ({ day }) => `Its use-by, ${day}, is past: it may not be used.`,
  'unknown-lot': ({ lot }) => `There is no lot ${lot} in the cooler: read the label again.`,
  'lot-not-here-yet': ({ lot, time }) =>
    `Lot ${lot} came at ${time}, after that was begun: name the lot that was there.`,
  'lot-of-another-cut': ({ lot, cut }) => `Lot ${lot} is ${cut}: it cannot be cut into that.`,
  'lot-used-up': ({ lot }) => `Nothing is left of lot ${lot}: name another.`,
  'not-on-record': () => 'No day knows that: read the label, or the date, again.',
  'nothing-to-undo': () => 'That is undone already, or from an earlier plan.',
  'undone-on-its-line': () => 'That is taken back on its own line: use the box there.',
  'stood-on': ({ time, person }) =>
    `Something done at ${time}${person && ` by ${person}`} stands on it: take that back first.`,
};

export const happeningSpanish: HappeningPhrases = {
  'smoker-is-down': ({ smoker, time }) =>
    `${smoker} está apagado desde las ${time}: espere a que vuelva o elija otro ahumador.`,
  'smoker-is-up': ({ smoker }) => `${smoker} no está apagado: dé la lectura del aire.`,
  'hand-is-out': ({ person }) => `${person} no está: désela a alguien que esté aquí.`,
  'hand-is-here': ({ person }) => `${person} ya está aquí.`,
  'back-too-soon': () => 'Esa hora ya pasó: diga una que esté por venir.',
  'not-of-this-day': () => 'Eso no está en el plan de hoy: mire la lista otra vez.',
  'impossible-amount': ({ amount }) => `${amount} no puede ser: cuente o pese de nuevo.`,
  'day-is-closed': ({ time, person }) =>
    `El día se cerró a las ${time}${person && ` (${person})`}: deshaga antes el cierre.`,
  'past-use-by': ({ day }) => `Caducó el ${day}: no se puede usar.`,
  'unknown-lot': ({ lot }) => `No hay ningún lote ${lot} en la cámara: lea otra vez la etiqueta.`,
  'lot-not-here-yet': ({ lot, time }) =>
    `El lote ${lot} llegó a las ${time}, después de empezar eso: diga el lote que había.`,
  'lot-of-another-cut': ({ lot, cut }) => `El lote ${lot} es ${cut}: de ahí no sale eso.`,
  'lot-used-up': ({ lot }) => `Del lote ${lot} no queda nada: diga otro.`,
  'not-on-record': () => 'Ningún día conoce eso: lea otra vez la etiqueta o la fecha.',
  'nothing-to-undo': () => 'Eso ya está deshecho, o es de un plan anterior.',
  'undone-on-its-line': () => 'Eso se deshace en su propia línea: use la casilla de allí.',
  'stood-on': ({ time, person }) =>
    `Algo hecho a las ${time}${person && ` (${person})`} se apoya en ello: deshágalo antes.`,
};
