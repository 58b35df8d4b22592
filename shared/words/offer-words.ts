import { las } from './at-clock.ts';
import type { Language } from './say.ts';

/** What a change that somebody asks for would do, in one language. */
type OfferWords = {
  moves(pieces: string, from: string, to: string): string;
  serviceChange(service: string, before: string, after: string): string;
  serviceSame(service: string, time: string): string;
  tasksChange(count: number): string;
  insteadOf(then: string, now: string): string;
  goesIn(at: string): string;
  begins(task: string, at: string): string;
  readonly nothingElse: string;
  readonly fatDown: string;
  readonly fatUp: string;
  unlit(smoker: string, time: string): string;
  inHand(time: string): string;
  short(time: string): string;
};

const english: OfferWords = {
  moves: (pieces, from, to) => `${pieces} from ${from} to ${to}`,
  serviceChange: (service, before, after) => `${service}: ${before} → ${after}`,
  serviceSame: (service, time) => `${service}: still ${time}`,
  tasksChange: (count) =>
    count === 1 ? '1 task changes its time' : `${count} tasks change their time`,
  insteadOf: (then, now) => `${then}, now ${now}`,
  goesIn: (at) => `Loaded from ${at}`,
  begins: (task, at) => `“${task}” from ${at} for that`,
  nothingElse: 'nothing else moves',
  fatDown: 'fat side down there',
  fatUp: 'fat side up there',
  unlit: (smoker, time) => `${smoker} is not lit by the plan: light it first, ${time} to heat`,
  inHand: (time) => `${time} to spare`,
  short: (time) => `${time} late`,
};

const spanish: OfferWords = {
  moves: (pieces, from, to) => `${pieces} de ${from} a ${to}`,
  serviceChange: (service, before, after) => `${service}: ${before} → ${after}`,
  serviceSame: (service, time) => `${service}: sigue ${time}`,
  tasksChange: (count) =>
    count === 1 ? '1 tarea cambia de hora' : `${count} tareas cambian de hora`,
  insteadOf: (then, now) => `${then}, ahora ${now}`,
  goesIn: (at) => `Se carga desde ${las(at)}`,
  begins: (task, at) => `para eso, «${task}» desde ${las(at)}`,
  nothingElse: 'nada más se mueve',
  fatDown: 'allí con la grasa abajo',
  fatUp: 'allí con la grasa arriba',
  unlit: (smoker, time) =>
    `${smoker} no está encendido según el plan: encender antes, ${time} en calentar`,
  inHand: (time) => `${time} de margen`,
  short: (time) => `${time} de retraso`,
};

/** @example offerWords.es.nothingElse //=> 'nada más se mueve' */
export const offerWords: Readonly<Record<Language, OfferWords>> = { en: english, es: spanish };
