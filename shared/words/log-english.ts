import type { LogPhrases } from './log-phrases.ts';

export const logEnglish: LogPhrases = {
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
  load: (batch, place) => `${batch}, load ${place}`,
  read: (where, slot, temp) => `${where}${slot ? ` (${slot})` : ''} read ${temp}`,
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
    languageSet: (person, language) =>
      language === null
        ? `${person} reads what the screen speaks`
        : `${person} reads ${{ en: 'English', es: 'Spanish' }[language]}`,
  },
  happening: {
    down: (smoker, temp, back) => `${smoker} is down at ${temp}${back ? `, back ${back}` : ''}`,
    cold: (smoker, temp) => `${smoker} runs cold: ${temp}`,
    up: (smoker, temp) => `${smoker} is up again: ${temp}`,
    door: (smoker, lasted) =>
      lasted ? `door of ${smoker} open for ${lasted}` : `door of ${smoker} was not open`,
    out: (hand, back) => `${hand} is out${back ? `, back ${back}` : ''}`,
    in: (hand) => `${hand} is in again`,
    delivery: (cut, pieces, weight) =>
      `delivered: ${cut}, ${pieces} ${pieces === 1 ? 'piece' : 'pieces'}, ${weight}`,
    lot: (lot, cut, amount, supplier, temp) =>
      `lot ${lot} came: ${cut}, ${amount}, from ${supplier}${temp ? `, at ${temp}` : ''}`,
    cutFrom: (batch, lots) => `${batch} cut from lot ${lots}`,
    cure: (mix, weight, batch, [first, second]) =>
      `${weight} of ${mix} for ${batch}: weighed by ${first}, and again by ${second}`,
    tub: (tub, batch, weight) => `weighed: ${tub} of ${batch}, ${weight}`,
    sold: (dish, sold) => `${sold} sold: ${dish}`,
    soldOut: (dish) => `sold out: ${dish}`,
    emptied: (batch) => `empty: ${batch}`,
    carried: (batch, weight) =>
      weight ? `${weight} kept for another day: ${batch}` : `thrown out: ${batch}`,
    closed: (goesOn) => `day closed${goesOn ? `; goes on: ${goesOn}` : ''}`,
    undone: (what) => (what ? `undone: ${what}` : 'undone'),
  },
  sentAt: (time) => `offline, sent ${time}`,
  nothing: 'Nothing has happened yet.',
  news: {
    later: (task, by) => `${task} ${by} later`,
    earlier: (task, by) => `${task} ${by} earlier`,
    more: (count) => `${count} more ${count === 1 ? 'task' : 'tasks'}`,
    andMore: (count) => `${count} more ${count === 1 ? 'change' : 'changes'}`,
    gains: (service, by) => `${service} gains ${by}`,
    loses: (service, by) => `${service} loses ${by}`,
    lost: (batch, portions) =>
      `${portions} ${portions === 1 ? 'portion' : 'portions'} fewer of ${batch}`,
    longer: (by) => `trimming takes ${by} longer`,
    nothing: 'no time moves',
  },
};
