import type { CheckPhrases } from './check-phrases.ts';

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
  checked: (what, on, temp, felt) =>
    `${what}: ${on}${temp ? `, ${temp}` : ''}${felt ? `, «${felt}»` : ''}`,
  notYet: 'todavía no',
  corrected: (what, on, action) => `${what}, ${on}: ${action}`,
};
