import type { LogPhrases } from './log-phrases.ts';

export const logSpanish: LogPhrases = {
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
  counted: (task, done, pieces) =>
    `${done} de ${pieces} ${pieces === 1 ? 'hecha' : 'hechas'}: ${task}`,
  late: (task, by) => `${by} más tarde: ${task}`,
  given: (task, to) => `dada a ${to}: ${task}`,
  load: (batch, place) => `${batch}, carga ${place}`,
  read: (where, slot, temp) => `${where}${slot ? ` (${slot})` : ''}: se leyó ${temp}`,
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
    languageSet: (person, language) =>
      language === null
        ? `${person} lee el idioma de la pantalla`
        : `${person} lee ${{ en: 'inglés', es: 'español' }[language]}`,
  },
  happening: {
    down: (smoker, temp, back) => `${smoker} apagado a ${temp}${back ? `, vuelve ${back}` : ''}`,
    cold: (smoker, temp) => `${smoker} va frío: ${temp}`,
    up: (smoker, temp) => `${smoker} otra vez en marcha: ${temp}`,
    door: (smoker, lasted) =>
      lasted ? `puerta de ${smoker} abierta ${lasted}` : `la puerta de ${smoker} no se abrió`,
    out: (hand, back) => `${hand} no está${back ? `, vuelve ${back}` : ''}`,
    in: (hand) => `${hand} ha vuelto`,
    delivery: (cut, pieces, weight) =>
      `llegó: ${cut}, ${pieces} ${pieces === 1 ? 'pieza' : 'piezas'}, ${weight}`,
    lot: (lot, cut, amount, supplier, temp) =>
      `llegó el lote ${lot}: ${cut}, ${amount}, de ${supplier}${temp ? `, a ${temp}` : ''}`,
    cutFrom: (batch, lots) => `${batch} se cortó del lote ${lots}`,
    cure: (mix, weight, batch, [first, second]) =>
      `${weight} de ${mix} para ${batch}: pesados por ${first}, y otra vez por ${second}`,
    tub: (tub, batch, weight) => `pesado: ${tub} de ${batch}, ${weight}`,
    sold: (dish, sold) => `${sold} ${sold === 1 ? 'vendida' : 'vendidas'}: ${dish}`,
    soldOut: (dish) => `agotado: ${dish}`,
    emptied: (batch) => `vacía: ${batch}`,
    carried: (batch, weight) =>
      weight ? `${weight} para otro día: ${batch}` : `a la basura: ${batch}`,
    closed: (goesOn) => `día cerrado${goesOn ? `; sigue: ${goesOn}` : ''}`,
    undone: (what) => (what ? `deshecho: ${what}` : 'deshecho'),
  },
  sentAt: (time) => `sin conexión, enviado ${time}`,
  nothing: 'Todavía no ha pasado nada.',
  news: {
    later: (task, by) => `${task}: ${by} más tarde`,
    earlier: (task, by) => `${task}: ${by} antes`,
    more: (count) => `${count} ${count === 1 ? 'tarea' : 'tareas'} más`,
    andMore: (count) => `${count} ${count === 1 ? 'cambio' : 'cambios'} más`,
    gains: (service, by) => `${service} gana ${by}`,
    loses: (service, by) => `${service} pierde ${by}`,
    lost: (batch, portions) =>
      `${portions} ${portions === 1 ? 'porción' : 'porciones'} menos de ${batch}`,
    longer: (by) => `limpiar lleva ${by} más`,
    nothing: 'ningún horario cambia',
  },
};
