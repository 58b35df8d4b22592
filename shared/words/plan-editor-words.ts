import type { Language } from './say.ts';

/** The fixed words of the plan editor. */
export type PlanEditorWords = {
  readonly day: string;
  readonly service: string;
  readonly opens: string;
  readonly closes: string;
  readonly sells: string;
  readonly shapes: Readonly<Record<'even' | 'early' | 'middle' | 'late', string>>;
  readonly byQuarter: string;
  readonly dish: string;
  readonly portions: string;
  readonly usual: string;
  readonly batches: string;
  batch(number: number): string;
  readonly ready: string;
  readonly addBatch: string;
  readonly split: string;
  readonly mergeNext: string;
  readonly drop: string;
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
  readonly copy: string;
  readonly trying: string;
  readonly bettering: string;
  readonly unchanged: string;
  readonly taken: string;
  readonly notFit: string;
  readonly away: string;
  readonly noPlan: string;
};

const english: PlanEditorWords = {
  day: 'Day',
  service: 'Service',
  opens: 'opens',
  closes: 'closes',
  sells: 'sells most',
  shapes: { even: 'evenly', early: 'early', middle: 'in the middle', late: 'late' },
  byQuarter: 'counted by the quarter of an hour',
  dish: 'Dish',
  portions: 'portions',
  usual: 'usual',
  batches: 'Batches',
  batch: (number) => `Batch ${number}`,
  ready: 'ready at',
  addBatch: 'Add a batch',
  split: 'Split',
  mergeNext: 'Join with next',
  drop: 'Drop',
  bySales: 'By the sales again',
  slots: 'only in',
  anywhere: 'wherever there is room',
  whoever: 'whoever can',
  wishes: 'Wishes',
  addDish: 'Add a dish',
  addService: 'Add a service',
  take: 'Take this plan',
  undo: 'Undo the last change',
  forget: 'Leave it as it was',
  useNearest: 'Write that instead',
  copyTo: 'Copy to',
  copyFrom: 'as on',
  copy: 'Copy',
  trying: 'Trying it …',
  bettering: 'Looking for a better plan; this one can be taken meanwhile.',
  unchanged: 'As it runs.',
  taken: 'Taken.',
  notFit: 'It does not fit:',
  away: 'The hub does not answer. What is typed here stays.',
  noPlan: 'There is no plan for that day.',
};

const spanish: PlanEditorWords = {
  day: 'Día',
  service: 'Servicio',
  opens: 'abre',
  closes: 'cierra',
  sells: 'vende más',
  shapes: { even: 'parejo', early: 'al principio', middle: 'a la mitad', late: 'al final' },
  byQuarter: 'contado por cuartos de hora',
  dish: 'Plato',
  portions: 'porciones',
  usual: 'lo usual',
  batches: 'Tandas',
  batch: (number) => `Tanda ${number}`,
  ready: 'lista a las',
  addBatch: 'Añadir tanda',
  split: 'Dividir',
  mergeNext: 'Juntar con la siguiente',
  drop: 'Quitar',
  bySales: 'Otra vez según las ventas',
  slots: 'solo en',
  anywhere: 'donde haya lugar',
  whoever: 'quien pueda',
  wishes: 'Deseos',
  addDish: 'Añadir plato',
  addService: 'Añadir servicio',
  take: 'Tomar este plan',
  undo: 'Deshacer el último cambio',
  forget: 'Dejarlo como estaba',
  useNearest: 'Escribir eso',
  copyTo: 'Copiar a',
  copyFrom: 'como el',
  copy: 'Copiar',
  trying: 'Probando …',
  bettering: 'Buscando un plan mejor; este ya se puede tomar.',
  unchanged: 'Tal como corre.',
  taken: 'Tomado.',
  notFit: 'No cabe:',
  away: 'El centro no responde. Lo escrito aquí se queda.',
  noPlan: 'No hay plan para ese día.',
};

export const planEditorWords: Readonly<Record<Language, PlanEditorWords>> = {
  en: english,
  es: spanish,
};
