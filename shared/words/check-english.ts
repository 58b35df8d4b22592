import type { CheckPhrases } from './check-phrases.ts';

export const checkEnglish: CheckPhrases = {
  kind: {
    receiving: 'cold as it came',
    'end-temperature': 'end of the cook',
    'hot-hold': 'held hot',
    'cold-hold': 'held cold',
    cooling: 'cooling',
    reheat: 'reheating',
    'discard-time': 'how long it is held',
    'out-of-temperature': 'time out of the cooler',
    thermometer: 'ice water',
    clean: 'washed and sanitised',
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
    'wash-and-sanitise': 'wash and sanitise',
    'adjust-thermometer': 'set it right',
    'replace-thermometer': 'take another',
    'probe-the-centre': 'probe the centre',
    'weigh-anew': 'weigh anew',
    'ask-the-authority': 'ask the authority',
  },
  checked: (what, on, temp, felt) =>
    `${what}: ${on}${temp ? `, ${temp}` : ''}${felt ? `, “${felt}”` : ''}`,
  notYet: 'not yet so',
  corrected: (what, on, action) => `${what}, ${on}: ${action}`,
};
