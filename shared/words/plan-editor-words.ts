import type { Text } from '../view/index.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';

/** The fixed words of the plan editor. */
export type PlanEditorWords = {
  readonly day: string;
  readonly service: string;
  readonly opens: string;
  readonly closes: string;
  readonly sells: string;
  readonly shapes: Readonly<Record<'even' | 'early' | 'middle' | 'late', string>>;
  readonly byQuarter: string;
  readonly portions: string;
  usual(way: string): string;
  readonly details: string;
  batch(number: number): string;
  readonly ready: string;
  readonly addBatch: string;
  readonly split: string;
  readonly mergeNext: string;
  readonly drop: string;
  dropNamed(name: string): string;
  readonly bySales: string;
  readonly slots: string;
  readonly anywhere: string;
  readonly whoever: string;
  readonly wishes: string;
  readonly addDish: string;
  readonly addService: string;
  readonly take: string;
  readonly undo: string;
  readonly forget: string;
  readonly useNearest: string;
  readonly copyTo: string;
  readonly copyFrom: string;
  readonly anotherDay: string;
  readonly trying: string;
  readonly bettering: string;
  readonly unchanged: string;
  readonly taken: string;
  readonly notFit: string;
  readonly wouldFit: string;
  moreLines(lines: number): string;
  readonly away: string;
  readonly noPlan: string;
};

const english: PlanEditorWords = {
  day: 'Day',
  service: 'Service',
  opens: 'opens',
  closes: 'closes',
  sells: 'when it sells',
  shapes: {
    even: 'evenly',
    early: 'most early',
    middle: 'most in the middle',
    late: 'most late',
  },
  byQuarter: 'portions, by the quarter of an hour',
  portions: 'portions',
  usual: (way) => `usual (${way})`,
  details: 'Details',
  batch: (number) => `Batch ${number}`,
  ready: 'ready at',
  addBatch: 'Add a batch',
  split: 'Split',
  mergeNext: 'Join with next',
  drop: 'Drop',
  dropNamed: (name) => `Drop ${name}`,
  bySales: 'By the sales again',
  slots: 'only in',
  anywhere: 'wherever there is room',
  whoever: 'whoever can',
  wishes: 'Which racks, whose hands',
  addDish: 'Add a dish',
  addService: 'Add a service',
  take: 'Take this plan',
  undo: 'Undo the last change',
  forget: 'Leave it as it was',
  useNearest: 'Write that instead',
  copyTo: 'Copy to',
  copyFrom: 'Copy from',
  anotherDay: 'another day',
  trying: 'Trying it …',
  bettering: 'Looking for a better plan; this one can be taken meanwhile.',
  unchanged: 'As it runs. What you change is tried at once.',
  taken: 'Taken.',
  notFit: 'It does not fit:',
  wouldFit: 'What would:',
  moreLines: (lines) => `${lines} more that ${lines === 1 ? 'is' : 'are'} in the way`,
  away: 'The hub does not answer. What is typed here stays.',
  noPlan: 'There is no plan for that day.',
};

const spanish: PlanEditorWords = {
  day: 'Día',
  service: 'Servicio',
  opens: 'abre',
  closes: 'cierra',
  sells: 'cuándo se vende',
  shapes: {
    even: 'parejo',
    early: 'más al principio',
    middle: 'más a la mitad',
    late: 'más al final',
  },
  byQuarter: 'porciones, por cuartos de hora',
  portions: 'porciones',
  usual: (way) => `lo usual (${way})`,
  details: 'Detalles',
  batch: (number) => `Tanda ${number}`,
  ready: 'lista a las',
  addBatch: 'Agregar tanda',
  split: 'Dividir',
  mergeNext: 'Juntar con la siguiente',
  drop: 'Quitar',
  dropNamed: (name) => `Quitar ${name}`,
  bySales: 'Otra vez según las ventas',
  slots: 'solo en',
  anywhere: 'donde haya lugar',
  whoever: 'quien pueda',
  wishes: 'Qué parrillas, qué manos',
  addDish: 'Agregar platillo',
  addService: 'Agregar servicio',
  take: 'Usar este plan',
  undo: 'Deshacer el último cambio',
  forget: 'Dejarlo como estaba',
  useNearest: 'Escribir eso',
  copyTo: 'Copiar a',
  copyFrom: 'Copiar de',
  anotherDay: 'otro día',
  trying: 'Probando …',
  bettering: 'Buscando un plan mejor; este ya se puede usar.',
  unchanged: 'Como va ahora. Lo que cambie se prueba enseguida.',
  taken: 'En uso.',
  notFit: 'No cabe:',
  wouldFit: 'Lo que sí:',
  moreLines: (lines) => `${lines} más que lo ${lines === 1 ? 'impide' : 'impiden'}`,
  away: 'La central no responde. Lo escrito aquí se queda.',
  noPlan: 'No hay plan para ese día.',
};

export const planEditorWords: Readonly<Record<Language, PlanEditorWords>> = {
  en: english,
  es: spanish,
};

type Choice = {
  readonly id: string;
  readonly name: Text;
  readonly usual: string;
  readonly options: readonly { readonly id: string; readonly name: Text }[];
};

/** In which ways a dish is made: those that are not usual, and what usual is of the others. */
export function sayWays(
  choices: readonly Choice[],
  chosen: Readonly<Record<string, string>>,
  say: Say,
) {
  const ways = choices.map(({ id, name, usual, options }) => {
    const is = chosen[id] ?? usual;
    const option = options.find((each) => each.id === is);
    const words = `${textIn(name, say)}: ${option ? textIn(option.name, say) : is}`;
    return { words, isUsual: is === usual };
  });
  const named = (isUsual: boolean) =>
    ways.flatMap((way) => (way.isUsual === isUsual ? [way.words] : [])).join(' · ');
  const usual = named(true);
  return {
    otherwise: named(false),
    usual: usual && planEditorWords[say.language].usual(usual),
  };
}
