import type { Language } from './say.ts';

/** The words of the desk's section on lots and the record. */
export type RecordDeskWords = {
  readonly lots: string;
  readonly noLots: string;
  /** So many of so many pieces are left. */
  left(left: number, of: number): string;
  readonly receive: string;
  readonly cut: string;
  readonly pulledToday: string;
  readonly otherCuts: string;
  readonly pieces: string;
  readonly weight: string;
  readonly supplier: string;
  readonly temp: string;
  readonly useBy: string;
  readonly code: string;
  /** Of a lot that names none. */
  readonly noDay: string;
  cameIn(weight: string): string;
  readonly itCame: string;
  /** What a field that cannot be so has to say instead. */
  readonly wrong: {
    pieces(most: string): string;
    weight(most: string): string;
    readonly supplier: string;
    temp(low: string, high: string): string;
    useBy(today: string): string;
  };
  readonly pulls: string;
  readonly noPulls: string;
  readonly nobodyKnows: string;
  /** Of a batch that is still to be begun. */
  readonly toBe: string;
  readonly other: string;
  readonly trace: string;
  readonly whichLot: string;
  /** Over what was made of it, and over where that was served. */
  readonly forward: string;
  readonly served: string;
  readonly trim: string;
  /** Before all that is in it. */
  readonly madeOf: string;
  /** Before all that was on the plates of a service. */
  readonly allFrom: string;
  readonly kept: string;
  readonly thrown: string;
  readonly tubs: string;
  /** To put on the scale, and whether it was. */
  readonly weigh: string;
  readonly weighed: string;
  readonly reckoned: string;
  readonly mayHaveFed: string;
  readonly lost: string;
  readonly inCooler: string;
  readonly sentBack: string;
  readonly whole: string;
  readonly drill: string;
  readonly drillGoes: (time: string) => string;
  readonly drillEnds: string;
  drillNote(lot: string, time: string): string;
  readonly drillTold: string;
  readonly days: string;
  readonly runs: string;
  closedBy(who: string, time: string): string;
  readonly notClosed: string;
  readonly from: string;
  readonly to: string;
  readonly sheet: string;
  readonly table: string;
  readonly file: string;
  readonly fileIs: string;
  readonly labels: string;
  /** Of one lot or batch. */
  readonly label: string;
  readonly key: string;
  readonly chain: Readonly<Record<'whole' | 'under way' | 'broken', string>>;
  readonly checks: string;
  readonly noChecks: string;
  readonly hubAway: string;
};

const english: RecordDeskWords = {
  lots: 'Lots in the cooler',
  noLots: 'No lot has been written down.',
  left: (left, of) => `${left} of ${of} left`,
  receive: 'Write down a delivery',
  cut: 'cut',
  pulledToday: 'on the pull list',
  otherCuts: 'not for today',
  pieces: 'pieces',
  weight: 'weight',
  supplier: 'supplier',
  temp: 'warmest piece',
  useBy: 'use by',
  code: 'their code',
  noDay: 'no date',
  cameIn: (amount) => `${amount} came`,
  itCame: 'write it down',
  wrong: {
    pieces: (most) => `Pieces: count them; a whole number from 1 to ${most}.`,
    weight: (most) => `Weight: weigh it; more than 0, and at most ${most}.`,
    supplier: 'Supplier: write whose it is.',
    temp: (low, high) => `Warmest piece: read it again; a probe in food shows ${low} to ${high}.`,
    useBy: (today) => `Use by: read the label again; ${today}, which is today, or later.`,
  },
  pulls: 'Cut from',
  noPulls: 'Nothing is cut from the cooler today.',
  nobodyKnows: 'nobody knows',
  toBe: 'to be pulled',
  other: 'another lot',
  trace: 'Where a lot went',
  whichLot: 'lot',
  forward: 'Went into, as it was weighed raw',
  served: 'Served or to be served, as weighed then',
  trim: 'Trim that is not used up',
  madeOf: 'made of',
  allFrom: 'the whole service:',
  kept: 'kept for another day',
  thrown: 'thrown out',
  tubs: 'Trim, by the tub',
  weigh: 'the scale shows this',
  weighed: 'weighed',
  reckoned: 'reckoned',
  mayHaveFed: 'may have been served at',
  lost: 'lost in trimming, cooking and carving',
  inCooler: 'left in the cooler',
  sentBack: 'sent back',
  whole: 'all that came',
  drill: 'start a recall drill',
  drillGoes: (time) => `Drill: ${time}. Trace the lot, print its sheet, then say it is found.`,
  drillEnds: 'all of it is found',
  drillNote: (lot, time) => `Recall drill: lot ${lot} found in ${time}`,
  drillTold: 'It stands in the log.',
  days: 'Days on record',
  runs: 'not closed yet',
  closedBy: (who, time) => `closed by ${who}, ${time}`,
  notClosed: 'nobody closed it',
  from: 'from',
  to: 'to',
  sheet: 'sheets to print',
  table: 'spreadsheet (CSV)',
  file: 'signed file',
  fileIs: 'A signed file shows whether anything in it was changed afterwards.',
  labels: 'box labels',
  label: 'label',
  key: 'key',
  chain: {
    whole: 'The whole log is as it was written.',
    'under way': 'The log of earlier days is still being looked through.',
    broken: 'The log is not what was written: verify says where.',
  },
  checks: 'Checks, and what was done',
  noChecks: 'Nothing was checked on that day.',
  hubAway: 'The hub cannot be asked now.',
};

const spanish: RecordDeskWords = {
  lots: 'Lotes en la cámara',
  noLots: 'No se ha anotado ningún lote.',
  left: (left, of) => `quedan ${left} de ${of}`,
  receive: 'Anotar una entrega',
  cut: 'corte',
  pulledToday: 'en la lista de hoy',
  otherCuts: 'no para hoy',
  pieces: 'piezas',
  weight: 'peso',
  supplier: 'proveedor',
  temp: 'pieza más caliente',
  useBy: 'caduca',
  code: 'código del proveedor',
  noDay: 'sin fecha',
  cameIn: (amount) => `llegaron ${amount}`,
  itCame: 'anotarla',
  wrong: {
    pieces: (most) => `Piezas: cuéntelas; un número entero de 1 a ${most}.`,
    weight: (most) => `Peso: péselo; más de 0 y no más de ${most}.`,
    supplier: 'Proveedor: escriba de quién es.',
    temp: (low, high) =>
      `Pieza más caliente: léala otra vez; una sonda en comida marca de ${low} a ${high}.`,
    useBy: (today) => `Caduca: lea otra vez la etiqueta; ${today}, que es hoy, o después.`,
  },
  pulls: 'De qué se corta',
  noPulls: 'Hoy no se corta nada de la cámara.',
  nobodyKnows: 'nadie lo sabe',
  toBe: 'por sacar',
  other: 'otro lote',
  trace: 'Adónde fue un lote',
  whichLot: 'lote',
  forward: 'Fue a, según se pesó en crudo',
  served: 'Servido o por servir, según se pesa entonces',
  trim: 'Recortes sin gastar',
  madeOf: 'hecho de',
  allFrom: 'el servicio entero:',
  kept: 'se apartó para otro día',
  thrown: 'a la basura',
  tubs: 'Recortes, por tina',
  weigh: 'la báscula marca esto',
  weighed: 'pesado',
  reckoned: 'calculado',
  mayHaveFed: 'pudo servirse en',
  lost: 'perdido al limpiar, ahumar y rebanar',
  inCooler: 'queda en la cámara',
  sentBack: 'devuelto',
  whole: 'todo lo que llegó',
  drill: 'hacer simulacro de retiro',
  drillGoes: (time) => `Simulacro: ${time}. Siga el lote, imprima su hoja y diga que está todo.`,
  drillEnds: 'está todo encontrado',
  drillNote: (lot, time) => `Simulacro de retiro: lote ${lot} encontrado en ${time}`,
  drillTold: 'Queda en la bitácora.',
  days: 'Días registrados',
  runs: 'aún sin cerrar',
  closedBy: (who, time) => `cerró ${who}, ${time}`,
  notClosed: 'nadie lo cerró',
  from: 'desde',
  to: 'hasta',
  sheet: 'hojas para imprimir',
  table: 'hoja de cálculo (CSV)',
  file: 'archivo firmado',
  fileIs: 'Un archivo firmado deja ver si algo se cambió después.',
  labels: 'etiquetas para cajas',
  label: 'etiqueta',
  key: 'clave',
  chain: {
    whole: 'Toda la bitácora está como se escribió.',
    'under way': 'Aún se repasa la bitácora de los días anteriores.',
    broken: 'La bitácora no es lo que se escribió: verify dice dónde.',
  },
  checks: 'Revisiones, y qué se hizo',
  noChecks: 'Ese día no se revisó nada.',
  hubAway: 'Ahora no se puede preguntar a la central.',
};

/** @example recordDeskWords.en.lots //=> 'Lots in the cooler' */
export const recordDeskWords: Readonly<Record<Language, RecordDeskWords>> = {
  en: english,
  es: spanish,
};
