import type { CheckKind, CorrectiveAction } from '../view/index.ts';

/** What is looked at and what is done about it, in one language. */
export type CheckPhrases = {
  /** As a noun. */
  readonly kind: Readonly<Record<CheckKind, string>>;
  /** What somebody did, or is to do. */
  readonly action: Readonly<Record<CorrectiveAction, string>>;
  checked(what: string, on: string, temp: string | null): string;
  corrected(what: string, on: string, action: string): string;
};

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
  checked: (what, on, temp) => `${what}: ${on}${temp ? `, ${temp}` : ''}`,
  corrected: (what, on, action) => `${what}, ${on}: ${action}`,
};

export const checkSpanish: CheckPhrases = {
  kind: {
    receiving: 'fría al llegar',
    'end-temperature': 'fin de la cocción',
    'hot-hold': 'guardada caliente',
    'cold-hold': 'guardada fría',
    cooling: 'enfriado',
    reheat: 'recalentado',
    'discard-time': 'tiempo guardada',
    'out-of-temperature': 'tiempo fuera del frío',
    thermometer: 'agua con hielo',
    clean: 'lavada y desinfectada',
  },
  action: {
    'keep-cooking': 'seguir cociendo',
    'finish-at-full-temperature': 'terminar a temperatura plena',
    'reheat-at-once': 'recalentar ya',
    'chill-at-once': 'enfriar ya',
    'pan-shallower': 'en charolas menos hondas',
    'ice-bath': 'en baño de hielo',
    'serve-now': 'servir ya',
    discard: 'tirar',
    'reject-delivery': 'devolver',
    'move-below': 'poner debajo',
    'load-apart': 'cargar aparte',
    'wash-and-sanitise': 'lavar y desinfectar',
    'adjust-thermometer': 'ajustarlo',
    'replace-thermometer': 'usar otro',
    'probe-the-centre': 'sondear el centro',
    'weigh-anew': 'pesar de nuevo',
    'ask-the-authority': 'preguntar a la autoridad',
  },
  checked: (what, on, temp) => `${what}: ${on}${temp ? `, ${temp}` : ''}`,
  corrected: (what, on, action) => `${what}, ${on}: ${action}`,
};
