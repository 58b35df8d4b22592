import type { Seconds } from '../kernel/index.ts';
import type { MendChange, MendOffer } from '../view/index.ts';
import { clockTime, durationWords } from './amounts.ts';
import { saySlot } from './reasons.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';

/** The words of the desk about what would mend a day. */
export type MendWords = {
  readonly ask: string;
  readonly looking: string;
  readonly take: string;
  readonly leave: string;
  readonly taken: string;
  readonly away: string;
  readonly goneOn: string;
  readonly people: string;
  times(tasks: number): string;
  overlong(waits: number): string;
  /** What to do with it, before anybody has asked. */
  readonly about: string;
  readonly rungs: Readonly<Record<MendOffer['rung'], string>>;
  serviceSame(name: string, margin: string): string;
  inHand(duration: string): string;
  short(duration: string): string;
  readonly nothingLeft: string;
  others(tasks: number): string;
  willBeLate(service: string, by: string): string;
};

const english: MendWords = {
  ask: 'What would mend it?',
  looking: 'Looking for what would mend it …',
  take: 'Do it so',
  leave: 'Leave it',
  taken: 'The day goes on like this. It can be undone in the line above.',
  away: 'The hub does not answer.',
  goneOn: 'The day has gone on since. Ask again.',
  people: 'Other hands and places',
  times: (tasks) => `Other times: ${tasks}`,
  overlong: (waits) =>
    waits === 1
      ? 'A rest or a hold will last longer than it may.'
      : `${waits} rests and holds will last longer than they may.`,
  about: 'Times move by themselves. Who does what, and where, changes here when you say so.',
  rungs: {
    times: 'The day holds as it is. Nothing needs to be mended.',
    margin: 'The day holds: the time to spare of rests and holds has taken it up.',
    order: 'It is enough that one thing is done before another.',
    elsewhere: 'It is enough that these are done by another hand or in another place.',
    'later-anew': 'All that is not near would be planned anew. What begins soon stays.',
    'all-anew': 'All that has not begun would be planned anew, the next tasks too.',
    'as-it-is': 'Nothing that was tried helps by two minutes or more.',
  },
  serviceSame: (name, margin) => `${name} stays at ${margin}`,
  inHand: (duration) => `${duration} to spare`,
  short: (duration) => `${duration} late`,
  nothingLeft: 'nothing to do',
  others: (tasks) => `Smoke, rests and holds that move with it: ${tasks}.`,
  willBeLate: (service, by) => `${service} will be ${by} late.`,
};

const spanish: MendWords = {
  ask: '¿Qué lo arreglaría?',
  looking: 'Buscando qué lo arreglaría …',
  take: 'Hacerlo así',
  leave: 'Dejarlo',
  taken: 'El día sigue así. Se puede deshacer en la línea de arriba.',
  away: 'El centro no responde.',
  goneOn: 'El día ha seguido desde entonces. Pregunte otra vez.',
  people: 'Otras personas y lugares',
  times: (tasks) => `Otras horas: ${tasks}`,
  overlong: (waits) =>
    waits === 1
      ? 'Un reposo o una espera durará más de lo que puede.'
      : `${waits} reposos y esperas durarán más de lo que pueden.`,
  about: 'Las horas se mueven solas. Quién hace qué, y dónde, cambia aquí cuando usted lo dice.',
  rungs: {
    times: 'El día se cumple como está. No hay nada que arreglar.',
    margin: 'El día se cumple: el margen de los reposos y las esperas lo ha absorbido.',
    order: 'Basta con hacer una cosa antes que otra.',
    elsewhere: 'Basta con que esto lo haga otra persona o se haga en otro lugar.',
    'later-anew':
      'Se planearía de nuevo todo lo que no está cerca. Lo que empieza pronto se queda.',
    'all-anew': 'Se planearía de nuevo todo lo que no ha empezado, también lo que sigue ahora.',
    'as-it-is': 'Nada de lo probado ayuda en dos minutos o más.',
  },
  serviceSame: (name, margin) => `${name} sigue con ${margin}`,
  inHand: (duration) => `${duration} de margen`,
  short: (duration) => `${duration} de retraso`,
  nothingLeft: 'nada que hacer',
  others: (tasks) => `Humo, reposos y esperas que se mueven con ello: ${tasks}.`,
  willBeLate: (service, by) => `${service} irá ${by} tarde.`,
};

/** @example mendWords.en.take //=> 'Do it so' */
export const mendWords: Readonly<Record<Language, MendWords>> = { en: english, es: spanish };

/** What would become of the services, a sentence each; no more of those that stay as they are. */
export function sayMendServices({ services }: MendOffer, say: Say): string[] {
  const words = mendWords[say.language];
  const margin = (inHandS: Seconds | null) => {
    if (inHandS === null) return words.nothingLeft;
    return inHandS < 0 ? words.short(durationWords(inHandS)) : words.inHand(durationWords(inHandS));
  };
  return services.map(({ name, beforeS, afterS }) => {
    const isSame = beforeS !== null && afterS !== null && Math.abs(afterS - beforeS) < 60;
    if (isSame) return words.serviceSame(textIn(name, say), margin(afterS));
    return `${textIn(name, say)}: ${margin(beforeS)} → ${margin(afterS)}`;
  });
}

/** What is otherwise about one task: who, where and when, from and to. */
export function sayMendChange({ hands, slot, place, start }: MendChange, say: Say): string[] {
  const named = (people: readonly string[]) => people.join(', ') || '–';
  return [
    ...(hands ? [`${named(hands.from)} → ${named(hands.to)}`] : []),
    ...(slot ? [`${saySlot(slot.from, say)} → ${saySlot(slot.to, say)}`] : []),
    ...(place
      ? [[place.from, place.to].map((at) => named(at.map((it) => textIn(it, say)))).join(' → ')]
      : []),
    ...(start ? [`${clockTime(start.from, say)} → ${clockTime(start.to, say)}`] : []),
  ];
}
