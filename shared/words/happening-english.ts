import type { HappeningPhrases } from './happening-phrases.ts';

export const happeningEnglish: HappeningPhrases = {
  'smoker-is-down': ({ smoker, time }) =>
    `${smoker} is down since ${time}: wait till it is up, or pick another smoker.`,
  'smoker-is-up': ({ smoker }) => `${smoker} is not down: give its air reading instead.`,
  'hand-is-out': ({ person }) => `${person} is out: give it to someone who is here.`,
  'hand-is-here': ({ person }) => `${person} is here already.`,
  'back-too-soon': () => 'That time is past: say when in the time to come.',
  'not-of-this-day': () => 'That is not in today’s plan: look at the list again.',
  'impossible-amount': ({ amount, weight }) =>
    `${weight || amount} cannot be: count or weigh again.`,
  'day-is-closed': ({ time, person }) =>
    `The day was closed at ${time}${person && ` by ${person}`}: take the closing back first.`,
  'past-use-by': ({ day }) => `Its use-by, ${day}, is past: it may not be used.`,
  'odd-delivery': ({ odd }) => odd,
  'unknown-lot': ({ lot }) => `There is no lot ${lot} in the cooler: read the label again.`,
  'lot-not-here-yet': ({ lot, time }) =>
    `Lot ${lot} came at ${time}, after that was begun: name the lot that was there.`,
  'lot-of-another-cut': ({ lot, cut }) => `Lot ${lot} is ${cut}: it cannot be cut into that.`,
  'lot-used-up': ({ lot }) => `Nothing is left of lot ${lot}: name another.`,
  'lot-sent-back': ({ lot }) => `Lot ${lot} was sent back: name another.`,
  'not-a-cure': () => 'There is no curing salt in that: nothing is weighed twice for it.',
  'cure-wants-two': () => 'Two people weigh curing salt: say who weighed, and who read it again.',
  'cure-not-weighed': ({ mix, weight }) =>
    `${mix} cures: two people weigh it first, ${weight}, and say so on this line.`,
  'cure-off': ({ mix, row }) => `That much ${mix} may not go in: ${row}. Weigh anew.`,
  'not-on-record': () => 'No day knows that: read the label, or the date, again.',
  'nothing-to-undo': () => 'That is undone already, or from an earlier plan.',
  'undone-on-its-line': () => 'That is undone on its own line: use the box there.',
  'stood-on': ({ time, person }) =>
    `Something done at ${time}${person && ` by ${person}`} stands on it: undo that first.`,
};
