import type { PaperWords } from './phrases.ts';

export const english: PaperWords = {
  plan: (version) => `plan ${version}`,
  asOf: (time) => `as it stood at ${time}`,
  span: (from, to) => `${from} to ${to}`,
  to: (time) => `to ${time}`,
  by: (time) => `by ${time}`,
  ready: (low, high) => `between ${low} and ${high}`,
  portions: (count) => (count === 1 ? '1 portion' : `${count} portions`),
  doneWhen: (feel, core) => `Done when: ${feel}${core ? `, ${core} or above` : ''}`,
  leftOut: (count) => `${count} done before and left out`,
  howTo:
    'Draw over the stroke when you begin, cross it when it is done; one tally stroke for each ' +
    'piece. Write the time, and the temperature where it is asked for.',
  overruled: 'The local food code and the licensed authority overrule what is printed here.',
  nothing: 'Nothing is planned here today.',

  columns: {
    time: 'when',
    what: 'what, how many, the one thing to mind',
    write: 'who, and written',
  },
  blanks: {
    began: 'began',
    done: 'done',
    core: 'core',
    air: 'air',
    temperature: 'temp',
    time: 'at',
    pieces: 'pieces',
    weighed: 'weighed',
    lot: 'lot',
    by: 'by',
  },

  dayList: 'Pull list and mixes',
  services: 'Services',
  pull: 'Pull from the cooler',
  mixes: 'Mixes',
  tubs: 'Trim, weighed once a batch',
  goes: {
    cooked: 'is cooked',
    sausage: 'to sausage',
    rendered: 'to be rendered',
    stock: 'to stock',
    waste: 'to waste',
  },
  contains: (allergens) => `Contains ${allergens}: label it.`,
  page: 'page',
};
