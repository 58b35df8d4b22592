import type { Language } from './say.ts';

/** The sentences of the day's log; who and which screen stand beside them. */
export type LogWords = {
  plan(version: number): string;
  planBack(version: number, takenBack: number): string;
  limits(from: string, to: string, why: string): string;
  readonly task: Record<
    | 'taskStarted'
    | 'taskFinished'
    | 'startTakenBack'
    | 'finishTakenBack'
    | 'helpAsked'
    | 'helpCame',
    (task: string) => string
  >;
  counted(task: string, done: number, pieces: number): string;
  late(task: string, by: string): string;
  given(task: string, to: string): string;
  read(where: string, temp: string): string;
  moved(batch: string, to: string): string;
  mended(tasks: number): string;
  note(text: string, about: string | null): string;
  readonly who: {
    paired(name: string, place: string): string;
    moved(name: string, place: string): string;
    renamed(name: string): string;
    revoked(name: string): string;
    pinSet(person: string, isOwner: boolean): string;
    pinCleared(person: string): string;
  };
  readonly happening: {
    down(smoker: string, temp: string, back: string | null): string;
    cold(smoker: string, temp: string): string;
    up(smoker: string, temp: string): string;
    /** Nothing where it was not open after all. */
    door(smoker: string, lasted: string | null): string;
    out(hand: string, back: string | null): string;
    in(hand: string): string;
    delivery(cut: string, pieces: number, weight: string): string;
    lot(lot: string, cut: string, weight: string, supplier: string, temp: string | null): string;
    cutFrom(batch: string, lots: string): string;
    sold(dish: string, sold: number): string;
    soldOut(dish: string): string;
    emptied(batch: string): string;
    /** Nothing of it is kept where there is no weight. */
    carried(batch: string, weight: string | null): string;
    closed(goesOn: string | null): string;
    undone(what: string | null): string;
  };
  /** Where a screen was alone: it was kept later than it happened. */
  keptAt(time: string): string;
  readonly nothing: string;
};

const english: LogWords = {
  plan: (version) => `plan ${version} taken up`,
  planBack: (version, takenBack) => `plan ${takenBack} taken back: plan ${version} taken up`,
  limits: (from, to, why) => `limits changed, ${from} to ${to}: ${why}`,
  task: {
    taskStarted: (task) => `started: ${task}`,
    taskFinished: (task) => `finished: ${task}`,
    startTakenBack: (task) => `start taken back: ${task}`,
    finishTakenBack: (task) => `finish taken back: ${task}`,
    helpAsked: (task) => `asked for help: ${task}`,
    helpCame: (task) => `help came: ${task}`,
  },
  counted: (task, done, pieces) => `${done} of ${pieces} done: ${task}`,
  late: (task, by) => `${by} later: ${task}`,
  given: (task, to) => `given to ${to}: ${task}`,
  read: (where, temp) => `${where} read ${temp}`,
  moved: (batch, to) => `${batch} moved to ${to}`,
  mended: (tasks) => `the day mended: ${tasks} ${tasks === 1 ? 'task' : 'tasks'} otherwise`,
  note: (text, about) => (about ? `note on “${about}”: ${text}` : `note: ${text}`),
  who: {
    paired: (name, place) => `screen “${name}” let in as ${place}`,
    moved: (name, place) => `screen “${name}” is now ${place}`,
    renamed: (name) => `screen now called “${name}”`,
    revoked: (name) => `screen “${name}” taken off`,
    pinSet: (person, isOwner) =>
      `PIN set for ${person}${isOwner ? ', who answers for screens and PINs' : ''}`,
    pinCleared: (person) => `PIN taken from ${person}`,
  },
  happening: {
    down: (smoker, temp, back) => `${smoker} is down at ${temp}${back ? `, back ${back}` : ''}`,
    cold: (smoker, temp) => `${smoker} runs cold: ${temp}`,
    up: (smoker, temp) => `${smoker} is up again: ${temp}`,
    door: (smoker, lasted) =>
      lasted ? `door of ${smoker} open for ${lasted}` : `door of ${smoker} was not open`,
    out: (hand, back) => `${hand} is out${back ? `, back ${back}` : ''}`,
    in: (hand) => `${hand} is in again`,
    delivery: (cut, pieces, weight) => `delivered: ${cut}, ${pieces} pieces, ${weight}`,
    lot: (lot, cut, amount, supplier, temp) =>
      `lot ${lot} came: ${cut}, ${amount}, from ${supplier}${temp ? `, at ${temp}` : ''}`,
    cutFrom: (batch, lots) => `${batch} cut from lot ${lots}`,
    sold: (dish, sold) => `${sold} sold: ${dish}`,
    soldOut: (dish) => `sold out: ${dish}`,
    emptied: (batch) => `empty: ${batch}`,
    carried: (batch, weight) =>
      weight ? `${weight} kept for another day: ${batch}` : `thrown out: ${batch}`,
    closed: (goesOn) => `day closed${goesOn ? `; goes on: ${goesOn}` : ''}`,
    undone: (what) => (what ? `undone: ${what}` : 'undone'),
  },
  keptAt: (time) => `kept ${time}`,
  nothing: 'Nothing has happened yet.',
};

const spanish: LogWords = {
  plan: (version) => `plan ${version} en marcha`,
  planBack: (version, takenBack) => `plan ${takenBack} deshecho: plan ${version} en marcha`,
  limits: (from, to, why) => `límites cambiados, de ${from} a ${to}: ${why}`,
  task: {
    taskStarted: (task) => `empezada: ${task}`,
    taskFinished: (task) => `acabada: ${task}`,
    startTakenBack: (task) => `inicio deshecho: ${task}`,
    finishTakenBack: (task) => `final deshecho: ${task}`,
    helpAsked: (task) => `pidió ayuda: ${task}`,
    helpCame: (task) => `llegó la ayuda: ${task}`,
  },
  counted: (task, done, pieces) => `${done} de ${pieces} hechas: ${task}`,
  late: (task, by) => `${by} más tarde: ${task}`,
  given: (task, to) => `dada a ${to}: ${task}`,
  read: (where, temp) => `${where}: se leyó ${temp}`,
  moved: (batch, to) => `${batch} pasa a ${to}`,
  mended: (tasks) => `el día arreglado: ${tasks} ${tasks === 1 ? 'tarea' : 'tareas'} de otro modo`,
  note: (text, about) => (about ? `nota sobre «${about}»: ${text}` : `nota: ${text}`),
  who: {
    paired: (name, place) => `pantalla «${name}» admitida como ${place}`,
    moved: (name, place) => `la pantalla «${name}» es ahora ${place}`,
    renamed: (name) => `la pantalla se llama ahora «${name}»`,
    revoked: (name) => `pantalla «${name}» dada de baja`,
    pinSet: (person, isOwner) =>
      `PIN puesto a ${person}${isOwner ? ', que responde de pantallas y PIN' : ''}`,
    pinCleared: (person) => `PIN quitado a ${person}`,
  },
  happening: {
    down: (smoker, temp, back) => `${smoker} apagado a ${temp}${back ? `, vuelve ${back}` : ''}`,
    cold: (smoker, temp) => `${smoker} va frío: ${temp}`,
    up: (smoker, temp) => `${smoker} otra vez en marcha: ${temp}`,
    door: (smoker, lasted) =>
      lasted ? `puerta de ${smoker} abierta ${lasted}` : `la puerta de ${smoker} no se abrió`,
    out: (hand, back) => `${hand} no está${back ? `, vuelve ${back}` : ''}`,
    in: (hand) => `${hand} ha vuelto`,
    delivery: (cut, pieces, weight) => `llegó: ${cut}, ${pieces} piezas, ${weight}`,
    lot: (lot, cut, amount, supplier, temp) =>
      `llegó el lote ${lot}: ${cut}, ${amount}, de ${supplier}${temp ? `, a ${temp}` : ''}`,
    cutFrom: (batch, lots) => `${batch} se cortó del lote ${lots}`,
    sold: (dish, sold) => `${sold} vendidas: ${dish}`,
    soldOut: (dish) => `agotado: ${dish}`,
    emptied: (batch) => `vacía: ${batch}`,
    carried: (batch, weight) =>
      weight ? `${weight} para otro día: ${batch}` : `a la basura: ${batch}`,
    closed: (goesOn) => `día cerrado${goesOn ? `; sigue: ${goesOn}` : ''}`,
    undone: (what) => (what ? `deshecho: ${what}` : 'deshecho'),
  },
  keptAt: (time) => `guardado ${time}`,
  nothing: 'Todavía no ha pasado nada.',
};

/** @example logWords.en.nothing //=> 'Nothing has happened yet.' */
export const logWords: Readonly<Record<Language, LogWords>> = { en: english, es: spanish };
