import { las } from './at-clock.ts';
import type { Language } from './say.ts';

/** How the fire of a smoker stands, and what is told of it, which no other screen carries. */
type FireWords = {
  readonly smokerDown: string;
  readonly smokerStillDown: string;
  readonly smokerCold: string;
  readonly smokerUp: string;
  readonly doorOpen: string;
  readonly doorShut: string;
  doorFor(smoker: string): string;
  readonly rising: string;
  readonly falling: string;
  readonly noReading: string;
  doorAt(time: string): string;
  /** Of air that fell between two readings far apart. */
  unseenFall(between: string): string;
  downSince(time: string, back: string | null): string;
  /** Once the time at which somebody expected it back has passed. */
  downBeyond(time: string, back: string): string;
  coldSince(time: string): string;
  /** What is to be done about its fire, and where nobody knows how hot it is. */
  readonly tendFire: string;
  readonly lightAgain: string;
  readonly readAir: string;
  called(who: string, what: string, time: string): string;
  /** Of a reading that is old: how old. */
  ago(time: string): string;
};

const english: FireWords = {
  smokerDown: 'it is down',
  smokerStillDown: 'it is still down',
  smokerCold: 'it runs cold',
  smokerUp: 'it is up again',
  doorOpen: 'door was open',
  doorShut: 'it was not open',
  doorFor: (smoker) => `${smoker}: door open for how long?`,
  rising: 'rising',
  falling: 'falling',
  noReading: 'no reading yet',
  doorAt: (time) => `door ${time}`,
  unseenFall: (between) => `it fell, nobody knows when, ${between}`,
  downSince: (time, back) => `out since ${time}${back ? `, back about ${back}` : ''}`,
  downBeyond: (time, back) => `out since ${time}, was to be back ${back}`,
  coldSince: (time) => `cold since ${time}`,
  tendFire: 'tend the fire',
  lightAgain: 'light it again or move the meat',
  readAir: 'read the air',
  called: (who, what, time) => `${who}: ${what} by ${time}`,
  ago: (time) => `${time} ago`,
};

const spanish: FireWords = {
  smokerDown: 'está apagado',
  smokerStillDown: 'sigue apagado',
  smokerCold: 'va frío',
  smokerUp: 'vuelve a estar en marcha',
  doorOpen: 'se abrió la puerta',
  doorShut: 'no se abrió',
  doorFor: (smoker) => `${smoker}: ¿cuánto estuvo abierta la puerta?`,
  rising: 'sube',
  falling: 'baja',
  noReading: 'aún sin lectura',
  doorAt: (time) => `puerta ${time}`,
  unseenFall: (between) => `bajó, no se sabe cuándo, ${between}`,
  downSince: (time, back) => `apagado desde ${time}${back ? `, vuelve hacia ${back}` : ''}`,
  downBeyond: (time, back) => `apagado desde ${time}, debía volver ${back}`,
  coldSince: (time) => `frío desde ${time}`,
  tendFire: 'ver el fuego',
  lightAgain: 'encenderlo de nuevo o mover la carne',
  readAir: 'medir el aire',
  called: (who, what, time) => `${who}: ${what} para ${las(time)}`,
  ago: (time) => `hace ${time}`,
};

export const fireWords: Readonly<Record<Language, FireWords>> = { en: english, es: spanish };
