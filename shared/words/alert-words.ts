import type { Alert, AlertNotice, AlertRate } from '../view/index.ts';
import { clockTime } from './amounts.ts';
import { las } from './at-clock.ts';
import { sayCheckKind } from './check-band-words.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';

type AlertWords = {
  check(what: string): string;
  throwOut(what: string): string;
  correct(what: string): string;
  help(whom: string | null, task: string): string;
  down(smoker: string): string;
  cold(smoker: string): string;
  late(service: string, task: string): string;
  notice(who: string, what: string, time: string): string;
  more(count: number): string;
  rate(name: string, lastHour: number, mostInTenMin: number): string;
  readonly rates: string;
};

const english: AlertWords = {
  check: (what) => `look at ${what}`,
  throwOut: (what) => `throw out ${what}: it is too old`,
  correct: (what) => `put right and say what was done: ${what}`,
  help: (whom, task) => `help ${whom ?? 'out'} with: ${task}`,
  down: (smoker) => `${smoker} is out: light it, or move what lies in it`,
  cold: (smoker) => `${smoker} runs cold: see to its fire`,
  late: (service, task) => `${service} will be late: it hangs on ${task}`,
  notice: (who, what, time) => `${who}: ${what}, by ${time}.`,
  more: (count) => `${count} more after that.`,
  rate: (name, lastHour, most) => `${name} ${lastHour} (${most} in ten minutes at most)`,
  rates: 'Calls in the last hour:',
};

const spanish: AlertWords = {
  check: (what) => `revisar ${what}`,
  throwOut: (what) => `tirar ${what}: ya se pasó de tiempo`,
  correct: (what) => `corregir y decir qué se hizo: ${what}`,
  help: (whom, task) => (whom ? `ayudar a ${whom} con: ${task}` : `ayudar con: ${task}`),
  down: (smoker) => `${smoker} está apagado: encenderlo o mover lo que tiene`,
  cold: (smoker) => `${smoker} está frío: atender su fuego`,
  late: (service, task) => `${service} saldrá tarde: depende de ${task}`,
  notice: (who, what, time) => `${who}: ${what}, antes de ${las(time)}.`,
  more: (count) => `${count} más después.`,
  rate: (name, lastHour, most) => `${name} ${lastHour} (máximo ${most} en diez minutos)`,
  rates: 'Llamadas en la última hora:',
};

const alertWords: Readonly<Record<Language, AlertWords>> = { en: english, es: spanish };

/** Who is to do what, by when, and how much else waits for them. */
export function sayAlert({ first, more }: AlertNotice, say: Say): string {
  const words = alertWords[say.language];
  const said = words.notice(first.name, sayAsked(first.asks, say), clockTime(first.byAt, say));
  return more > 0 ? `${said} ${words.more(more)}` : said;
}

function sayAsked(asks: Alert['asks'], say: Say): string {
  const words = alertWords[say.language];
  switch (asks.kind) {
    case 'check':
    case 'correct':
      // Nobody is called to it before its time is over.
      if (asks.check === 'discard-time') return words.throwOut(textIn(asks.thing, say));
      return words[asks.kind](`${textIn(asks.thing, say)}, ${sayCheckKind(asks.check, say)}`);
    case 'help':
      return words.help(asks.whom, textIn(asks.task, say));
    case 'late':
      return words.late(textIn(asks.service, say), textIn(asks.task, say));
    default:
      return words[asks.kind](textIn(asks.smoker, say));
  }
}

/** How often whom was called; there is at least one. */
export function sayRates(rates: readonly AlertRate[], { language }: Pick<Say, 'language'>): string {
  const words = alertWords[language];
  const each = rates.map((rate) => words.rate(rate.name, rate.lastHour, rate.mostInTenMin));
  return `${words.rates} ${each.join(', ')}`;
}
