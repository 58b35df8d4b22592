import type { CheckPhrases } from './check-phrases.ts';

export const checkSpanish: CheckPhrases = {
  kind: {
    receiving: 'temperatura al llegar',
    'end-temperature': 'fin de la cocción',
    'hot-hold': 'mantener caliente',
    'cold-hold': 'mantener en frío',
    cooling: 'enfriado',
    reheat: 'recalentado',
    'discard-time': 'tiempo en espera',
    'out-of-temperature': 'tiempo fuera del frío',
    thermometer: 'agua con hielo',
    clean: 'lavar y desinfectar',
  },
  action: {
    'keep-cooking': 'seguir cociendo',
    'finish-at-full-temperature': 'terminar a temperatura completa',
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
  refused: {
    whoChecked: 'Una revisión lleva nombre: diga quién revisó.',
    nothingToCheck: 'Hoy no hay nada así que revisar: mire la lista otra vez.',
    readingMissing: '¿Qué marcó el termómetro? Dé el número.',
    nothingToCorrect: 'Ahí ya no hay nada mal: mire la lista otra vez.',
    notAllowed: (allowed) => `Su límite solo permite: ${allowed}.`,
    barred: {
      failed: (batch, what, why) =>
        `${batch} no puede salir: ${what}${why && `. ${why}`}. Diga antes qué se hizo.`,
      missed: (batch, what, why) =>
        `${batch} no puede salir: ${what}, sin revisar a tiempo${why && `. ${why}`}. Revise ya.`,
      discarded: (batch) => `${batch} se tiró: nada de ello va al pase.`,
    },
    row: (what, found, asked, source) =>
      `${what}${found ? `: hubo ${found}` : ''}${asked ? `, se pide ${asked}` : ''} (${source})`,
  },
};
