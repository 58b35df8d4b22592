import { meant } from '../../shared/kernel/index.ts';
import type { Asked, Command, Option } from './command.ts';

export type ArgumentsRead =
  | { readonly ok: true; readonly asked: Asked }
  /** Help was asked for, whatever else was said. */
  | { readonly ok: false; readonly help: true }
  | { readonly ok: false; readonly help: false; readonly wrong: readonly string[] };

type Words = Pick<Command, 'name' | 'takes' | 'options'>;

/** Reads what follows a command's name, or says all that is wrong with it, a sentence each. */
export function readArguments(command: Words, words: readonly string[]): ArgumentsRead {
  const places: string[] = [];
  const options = new Map<string, string>();
  const wrong: string[] = [];
  const rest = [...words];
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    if (word === '--help' || word === '-h') return { ok: false, help: true };
    if (!word.startsWith('-')) {
      places.push(word);
      continue;
    }
    const [name = '', ...given] = word.replace(/^--?/, '').split('=');
    const option = command.options.find((each) => each.name === name);
    const fault = option
      ? takeValue(option, given.length > 0 ? given.join('=') : undefined, rest, options)
      : unknownWord(word, optionWords(command));
    if (fault !== null) wrong.push(fault);
  }
  wrong.push(...placeFaults(command, places));
  if (wrong.length > 0) return { ok: false, help: false, wrong };
  const [path = '', ...also] = places;
  return { ok: true, asked: { path, also, options } };
}

/** The sentence for a word that is not known, with those that are and the one likely meant. */
export function unknownWord(word: string, allowed: readonly string[]): string {
  const likely = meant(word, allowed);
  const hint = likely === undefined ? '' : ` Did you mean ${likely}?`;
  return `“${word}” is not known here; allowed: ${allowed.join(', ')}.${hint}`;
}

const optionWords = ({ options }: Words) => [...options.map(({ name }) => `--${name}`), '--help'];

function takeValue(
  { name, value, oneOf }: Option,
  given: string | undefined,
  rest: string[],
  into: Map<string, string>,
): string | null {
  if (value === null) {
    into.set(name, '');
    return given === undefined ? null : `--${name} stands alone; it takes no value.`;
  }
  const isNext = given === undefined && rest[0] !== undefined && !rest[0].startsWith('--');
  const taken = given ?? (isNext ? rest.shift() : undefined);
  if (taken === undefined || taken === '') return `--${name} wants a value: --${name} ${value}.`;
  into.set(name, taken);
  return oneOf && !oneOf.includes(taken) ? `--${name}: ${unknownWord(taken, oneOf)}` : null;
}

function placeFaults({ name, takes }: Words, places: readonly string[]): string[] {
  const [first] = places;
  if (takes === null) return first === undefined ? [] : [`“${first}”: ${name} takes nothing more.`];
  const wanted = takes.split(' ').length;
  if (places.length < wanted) return [`${name} wants to know what about: ${name} ${takes}.`];
  const more = places[wanted];
  return more === undefined ? [] : [`“${more}” is one too many: ${name} takes one ${takes}.`];
}
