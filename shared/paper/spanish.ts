import { las } from '../words/index.ts';
import type { PaperWords } from './phrases.ts';

export const spanish: PaperWords = {
  plan: (version) => `plan ${version}`,
  asOf: (time) => `como estaba a ${las(time)}`,
  span: (from, to) => `de ${from} a ${to}`,
  to: (time) => `a ${time}`,
  by: (time) => `para ${las(time)}`,
  ready: (low, high) => `entre ${low} y ${high}`,
  portions: (count) => (count === 1 ? '1 porción' : `${count} porciones`),
  doneWhen: (feel, core) => `Listo cuando: ${feel}${core ? `, ${core} o más` : ''}`,
  leftOut: (count) => `${count} ya hechas, no se imprimen`,
  howTo:
    'Repase el trazo al empezar, crúcelo al acabar; una raya de cuenta por pieza. Escriba la ' +
    'hora, y la temperatura donde se pide.',
  overruled: 'Los reglamentos locales y la autoridad competente mandan sobre lo impreso aquí.',
  nothing: 'Aquí no hay nada previsto hoy.',

  columns: { time: 'cuándo', what: 'qué, cuánto, en qué fijarse', write: 'quién, y lo escrito' },
  blanks: {
    began: 'empezó',
    done: 'acabó',
    core: 'centro',
    air: 'aire',
    temperature: 'temp.',
    time: 'a las',
    pieces: 'piezas',
    weighed: 'pesó',
    lot: 'lote',
    by: 'por',
  },

  dayList: 'Por sacar y mezclas',
  services: 'Servicios',
  pull: 'Sacar de la cámara',
  mixes: 'Mezclas',
  tubs: 'Recortes, pesados una vez por lote',
  goes: {
    cooked: 'se cocina',
    sausage: 'a salchicha',
    rendered: 'a manteca',
    stock: 'a caldo',
    waste: 'a desecho',
  },
  contains: (names) => `Contiene ${names}: etiquétela.`,
  page: 'página',
};
