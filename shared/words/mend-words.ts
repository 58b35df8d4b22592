import type { Seconds } from '../kernel/index.ts';
import type { MendChange, MendOffer, Overlong, Text } from '../view/index.ts';
import { isLate, laterS } from '../view/index.ts';
import { clockTime, durationWords } from './amounts.ts';
import { las } from './at-clock.ts';
import { clockRange } from './clock-range.ts';
import { sayMargin } from './offers.ts';
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
  /** Rests, sets and holds that will last longer than they may. */
  readonly tooLong: string;
  overlong(waits: number): string;
  longer(by: string): string;
  most(longest: string): string;
  thrownOut(at: string): string;
  next(task: string, at: string): string;
  readonly holds: string;
  /** The same of a day whose cooks will likely make it late. */
  readonly holdsByPlan: string;
  likelyLate(service: string, stands: string): string;
  tightest(service: string, margin: string): string;
  hangsOn(task: string): string;
  readonly asItIs: string;
  readonly doneSo: string;
  /** Over the chart of both. */
  readonly onChart: string;
  /** What to do with it, before anybody has asked. */
  readonly about: string;
  readonly rungs: Readonly<Record<MendOffer['rung'], string>>;
  /** Of what leaves a service late. */
  readonly helps: string;
  /** Of what is the price of it. */
  later(service: string, by: string, stands: string): string;
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
  tooLong: 'Rests and holds too long',
  overlong: (waits) =>
    waits === 1
      ? 'One rest or hold will last longer than it may.'
      : `${waits} rests and holds will last longer than they may.`,
  longer: (by) => `${by} too long`,
  most: (longest) => `${longest} at the most`,
  thrownOut: (at) => `What is left at ${at} is thrown out.`,
  next: (task, at) => `Then ${task}, ${at}`,
  holds: 'The day holds: every service on time, no rest or hold too long.',
  holdsByPlan: 'By the plan the day holds: every service on time, no rest or hold too long.',
  likelyLate: (service, stands) => `${service}, ${stands}, for its cooks may run long.`,
  tightest: (service, margin) => `Tightest: ${service}, ${margin}`,
  hangsOn: (task) => `It hangs on: ${task}.`,
  asItIs: 'as it is',
  doneSo: 'done so',
  onChart: 'The day as it is; hatched under it, done so',
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
  helps: 'Not all of it can be mended. Done so, less is late, or by less.',
  later: (service, by, stands) => `But it makes ${service} ${by} later: ${stands}.`,
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
  away: 'La central no responde.',
  goneOn: 'El día ha seguido desde entonces. Pregunte otra vez.',
  people: 'Otras personas y lugares',
  times: (tasks) => `Otras horas: ${tasks}`,
  tooLong: 'Reposos y esperas de más',
  overlong: (waits) =>
    waits === 1
      ? 'Un reposo o espera durará más de lo que puede.'
      : `${waits} reposos y esperas durarán más de lo que pueden.`,
  longer: (by) => `${by} de más`,
  most: (longest) => `máximo ${longest}`,
  thrownOut: (at) => `Lo que quede a ${las(at)} se tira.`,
  next: (task, at) => `Después ${task}, ${at}`,
  holds: 'El día se cumple: cada servicio a tiempo, ningún reposo ni espera de más.',
  holdsByPlan: 'Según el plan el día se cumple: todo a tiempo, ningún reposo ni espera de más.',
  likelyLate: (service, stands) => `${service}, ${stands}, pues la carne puede tardar más.`,
  tightest: (service, margin) => `Lo más justo: ${service}, ${margin}`,
  hangsOn: (task) => `Depende de: ${task}.`,
  asItIs: 'como está',
  doneSo: 'hecho así',
  onChart: 'El día como está; rayado, abajo, hecho así',
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
  helps: 'No todo se puede arreglar. Hecho así, menos se retrasa, o menos tiempo.',
  later: (service, by, stands) => `Pero ${service} saldría ${by} más tarde: ${stands}.`,
  nothingLeft: 'nada que hacer',
  others: (tasks) => `Humo, reposos y esperas que se mueven con ello: ${tasks}.`,
  willBeLate: (service, by) => `${service} saldrá ${by} tarde.`,
};

/** @example mendWords.en.take //=> 'Do it so' */
export const mendWords: Readonly<Record<Language, MendWords>> = { en: english, es: spanish };

/** As it stands and done so: each service, the batches that are late, what is held too long. */
export function sayMendServices({ services, batches, overlong }: MendOffer, say: Say): MendRow[] {
  const words = mendWords[say.language];
  const margin = (inHandS: Seconds | null) =>
    inHandS === null ? words.nothingLeft : sayMargin(inHandS, say);
  const rows = [...services, ...batches].map(({ name, beforeS, afterS }) => {
    const [before, after] = [margin(beforeS), margin(afterS)];
    return { name: textIn(name, say), before, after };
  });
  const { before, after } = overlong;
  if (before + after === 0) return rows;
  return [...rows, { name: words.tooLong, before: `${before}`, after: `${after}` }];
}

type MendRow = { readonly name: string; readonly before: string; readonly after: string };

/** What an offer is, in a sentence or two; where it leaves a service late, that. */
export function sayMendRung({ rung, services }: MendOffer, say: Say): string {
  const { rungs, helps } = mendWords[say.language];
  const staysLate = services.some(({ afterS }) => isLate(afterS ?? 0));
  if (!staysLate || rung === 'as-it-is') return rungs[rung];
  return rung === 'order' || rung === 'elsewhere' ? helps : `${helps} ${rungs[rung]}`;
}

/** What an offer makes later than leaving the day be, and by how much: a sentence each. */
export function sayMendLater({ services }: Pick<MendOffer, 'services'>, say: Say): string[] {
  return services.flatMap((each) => {
    const byS = laterS(each);
    if (byS === 0 || each.afterS === null) return [];
    const { later } = mendWords[say.language];
    return [later(textIn(each.name, say), durationWords(byS), sayMargin(each.afterS, say))];
  });
}

/** Of one task, what is otherwise, from and to: who, where and when; empty where that stays. */
export function sayMendChange({ hands, slot, place, start }: MendChange, say: Say) {
  const named = (things: readonly string[]) => things.join(', ') || '–';
  const at = (places: readonly Text[]) => named(places.map((each) => textIn(each, say)));
  return {
    who: hands ? `${named(hands.from)} → ${named(hands.to)}` : '',
    where: [
      ...(slot ? [`${saySlot(slot.from, say)} → ${saySlot(slot.to, say)}`] : []),
      ...(place ? [`${at(place.from)} → ${at(place.to)}`] : []),
    ].join('; '),
    when: start ? `${clockTime(start.from, say)} → ${clockTime(start.to, say)}` : '',
  };
}

/** Which rest or hold will last too long and by how much, from when to when, and what then. */
export function sayOverlong(overlong: Overlong, say: Say) {
  const words = mendWords[say.language];
  const { title, batch, from, until, overAt, mostS, byS, next, isSold } = overlong;
  const then = next && words.next(textIn(next.title, say), clockTime(next.at, say));
  return {
    what: textIn(title, say),
    batch: textIn(batch, say),
    by: words.longer(durationWords(byS)),
    when: `${clockRange(from, until, say)}, ${words.most(durationWords(mostS))}`,
    after: isSold ? words.thrownOut(clockTime(overAt, say)) : (then ?? ''),
  };
}
