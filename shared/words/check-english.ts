import type { CheckPhrases } from './check-phrases.ts';

export const checkEnglish: CheckPhrases = {
  kind: {
    receiving: 'temperature as it came',
    'end-temperature': 'end of the cook',
    'hot-hold': 'held hot',
    'cold-hold': 'held cold',
    cooling: 'cooling',
    reheat: 'reheating',
    'discard-time': 'how long it is held',
    'out-of-temperature': 'time out of the cooler',
    thermometer: 'ice water',
    clean: 'washed and sanitized',
  },
  action: {
    'keep-cooking': 'keep cooking',
    'finish-at-full-temperature': 'finish at full temperature',
    'reheat-at-once': 'reheat at once',
    'chill-at-once': 'chill at once',
    'pan-shallower': 'pan it shallower',
    'ice-bath': 'into an ice bath',
    'serve-now': 'serve it now',
    discard: 'throw it out',
    'reject-delivery': 'send it back',
    'move-below': 'move it below',
    'load-apart': 'load it apart',
    'wash-and-sanitise': 'wash and sanitize',
    'adjust-thermometer': 'set it right',
    'replace-thermometer': 'take another',
    'probe-the-centre': 'probe the center',
    'weigh-anew': 'weigh anew',
    'ask-the-authority': 'ask the authority',
  },
  checked: (what, on, temp, felt) =>
    `${what}: ${on}${temp ? `, ${temp}` : ''}${felt ? `, “${felt}”` : ''}`,
  notYet: 'not yet so',
  corrected: (what, on, action) => `${what}, ${on}: ${action}`,
  refused: {
    whoChecked: 'A check stands in somebody’s name: say who looked.',
    nothingToCheck: 'There is no such thing to check today: look at the list again.',
    readingMissing: 'What did the thermometer show? Give the number.',
    nothingToCorrect: 'Nothing is wrong there any more: look at the list again.',
    notAllowed: (allowed) => `Its limit allows only: ${allowed}.`,
    barred: {
      failed: (batch, what, why) =>
        `${batch} is barred: ${what}${why && `. ${why}`}. Say what was done about it first.`,
      missed: (batch, what, why) =>
        `${batch} is barred: ${what}, not looked at in time${why && `. ${why}`}. Look now.`,
      discarded: (batch) => `${batch} was thrown out: nothing of it goes to the pass.`,
    },
    row: (what, found, asked, source) =>
      `${what}${found ? `: found ${found}` : ''}${asked ? `, asked ${asked}` : ''} (${source})`,
  },
};
