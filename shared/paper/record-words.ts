import type { AmendedRow } from '../record/index.ts';
import type { Language } from '../words/index.ts';

/** The words of the sheets of a record. */
export type RecordWords = {
  readonly record: string;
  readonly lotRecord: string;
  readonly limits: string;
  readonly closedBy: (who: string, at: string) => string;
  readonly notClosed: string;
  readonly lots: string;
  readonly lot: string;
  readonly cut: string;
  readonly pieces: string;
  readonly weight: string;
  readonly supplier: string;
  readonly code: string;
  readonly useBy: string;
  readonly came: string;
  readonly temp: string;
  readonly batches: string;
  readonly batch: string;
  readonly begun: string;
  readonly of: string;
  readonly trimOf: (batch: string) => string;
  readonly nobodyKnows: string;
  readonly forService: string;
  readonly forAnother: string;
  readonly checks: string;
  readonly check: string;
  readonly found: string;
  readonly probe: string;
  readonly felt: string;
  readonly correction: string;
  readonly amended: string;
  readonly was: string;
  /** What was taken back, and how; a decision where it has no word of its own. */
  readonly told: Partial<Readonly<Record<AmendedRow['what'], string>>>;
  readonly decision: string;
  readonly readings: string;
  readonly place: string;
  readonly count: string;
  readonly lowest: string;
  readonly highest: string;
  readonly work: string;
  readonly task: string;
  readonly from: string;
  readonly to: string;
  readonly by: string;
  readonly at: string;
  readonly down: string;
  readonly none: string;
  readonly head: string;
  readonly signature: string;
  readonly key: string;
  readonly notSigned: string;
  readonly howToCheck: string;
  readonly page: string;
  readonly where: string;
  readonly what: string;
  readonly day: string;
  readonly kept: string;
  readonly thrown: string;
  /** Whether a scale showed it, or it is reckoned. */
  readonly how: string;
  readonly weighed: string;
  readonly reckoned: string;
  readonly mayHaveFed: string;
  readonly lost: string;
  readonly left: string;
  readonly whole: string;
};

const english: RecordWords = {
  record: 'Record of the kitchen',
  lotRecord: 'Where a lot went',
  limits: 'Limits',
  closedBy: (who, at) => `Closed by ${who}, ${at}`,
  notClosed: 'Nobody has closed this day.',
  lots: 'Lots received',
  lot: 'lot',
  cut: 'cut',
  pieces: 'pieces',
  weight: 'weight',
  supplier: 'supplier',
  code: 'their code',
  useBy: 'use by',
  came: 'came',
  temp: 'temperature',
  batches: 'Batches and what they were made of',
  batch: 'batch',
  begun: 'begun',
  of: 'of',
  trimOf: (batch) => `trim of ${batch}`,
  nobodyKnows: 'nobody knows which lot',
  forService: 'for its service',
  forAnother: 'for another day',
  checks: 'Checks and corrections',
  check: 'check',
  found: 'found',
  probe: 'with',
  felt: 'by hand and eye',
  correction: 'what was done',
  amended: 'Taken back',
  was: 'what it was',
  told: {
    undone: 'undone',
    startTakenBack: 'start taken back',
    finishTakenBack: 'finish taken back',
    taskStarted: 'a start',
    taskFinished: 'a finish',
    taskGiven: 'work given to another',
    taskRunsLate: 'a delay',
    slotsMoved: 'a move',
    smokerWentDown: 'a smoker down',
    smokerRunsCold: 'a smoker cold',
    smokerCameUp: 'a smoker up again',
    handWentOut: 'somebody out',
    handCameIn: 'somebody in again',
    deliveryCame: 'a delivery',
    lotCame: 'a lot',
    batchCutFrom: 'the lot of a batch',
    dishSoldOut: 'a dish sold out',
    portionsSold: 'a count of sales',
    panEmptied: 'a pan empty',
    leftCarriedOver: 'food kept or thrown out',
    dayClosed: 'the closing',
    checkRecorded: 'a check',
    correctionRecorded: 'a correction',
    cureWeighed: 'a weighing of curing salt',
    tubWeighed: 'a weighing of trim',
  },
  decision: 'a decision',
  readings: 'Temperatures',
  place: 'place',
  count: 'readings',
  lowest: 'lowest',
  highest: 'highest',
  work: 'Work',
  task: 'task',
  from: 'from',
  to: 'to',
  by: 'by',
  at: 'at',
  down: 'Smokers that were down or cold',
  none: 'None.',
  head: 'Head of the chain',
  signature: 'Signed',
  key: 'Key',
  notSigned: 'Not signed yet: the day is not over.',
  howToCheck: 'npm run -s coalface -- verify tells whether a record with this head is as it was.',
  page: 'page',
  where: 'where',
  what: 'what',
  day: 'day',
  kept: 'kept for another day',
  thrown: 'thrown out',
  how: 'how',
  weighed: 'weighed',
  reckoned: 'reckoned',
  mayHaveFed: 'may have been served at',
  lost: 'lost in trimming, cooking and carving',
  left: 'left in the cooler',
  whole: 'all of it',
};

const spanish: RecordWords = {
  record: 'Registro de la cocina',
  lotRecord: 'Adónde fue un lote',
  limits: 'Límites',
  closedBy: (who, at) => `Cerró ${who}, ${at}`,
  notClosed: 'Nadie ha cerrado este día.',
  lots: 'Lotes recibidos',
  lot: 'lote',
  cut: 'corte',
  pieces: 'piezas',
  weight: 'peso',
  supplier: 'proveedor',
  code: 'su código',
  useBy: 'caduca',
  came: 'llegó',
  temp: 'temperatura',
  batches: 'Tandas y de qué se hicieron',
  batch: 'tanda',
  begun: 'empezada',
  of: 'de',
  trimOf: (batch) => `recortes de ${batch}`,
  nobodyKnows: 'nadie sabe de qué lote',
  forService: 'para su servicio',
  forAnother: 'para otro día',
  checks: 'Controles y correcciones',
  check: 'control',
  found: 'hallado',
  probe: 'con',
  felt: 'a mano y a ojo',
  correction: 'qué se hizo',
  amended: 'Deshecho',
  was: 'lo que era',
  told: {
    undone: 'deshecho',
    startTakenBack: 'inicio deshecho',
    finishTakenBack: 'final deshecho',
    taskStarted: 'un inicio',
    taskFinished: 'un final',
    taskGiven: 'trabajo dado a otro',
    taskRunsLate: 'un retraso',
    slotsMoved: 'un cambio de sitio',
    smokerWentDown: 'un ahumador apagado',
    smokerRunsCold: 'un ahumador frío',
    smokerCameUp: 'un ahumador en marcha',
    handWentOut: 'alguien fuera',
    handCameIn: 'alguien de vuelta',
    deliveryCame: 'una entrega',
    lotCame: 'un lote',
    batchCutFrom: 'el lote de una tanda',
    dishSoldOut: 'un plato agotado',
    portionsSold: 'una cuenta de ventas',
    panEmptied: 'una bandeja vacía',
    leftCarriedOver: 'comida guardada o tirada',
    dayClosed: 'el cierre',
    checkRecorded: 'un control',
    correctionRecorded: 'una corrección',
    cureWeighed: 'un pesado de sal de cura',
    tubWeighed: 'un pesado de recortes',
  },
  decision: 'una decisión',
  readings: 'Temperaturas',
  place: 'lugar',
  count: 'lecturas',
  lowest: 'la más baja',
  highest: 'la más alta',
  work: 'Trabajo',
  task: 'tarea',
  from: 'desde',
  to: 'hasta',
  by: 'quién',
  at: 'cuándo',
  down: 'Ahumadores apagados o fríos',
  none: 'Nada.',
  head: 'Cabeza de la cadena',
  signature: 'Firmado',
  key: 'Clave',
  notSigned: 'Aún sin firmar: el día no ha acabado.',
  howToCheck: 'npm run -s coalface -- verify dice si un registro con esta cabeza está como estaba.',
  page: 'página',
  where: 'adónde',
  what: 'qué',
  day: 'día',
  kept: 'guardado para otro día',
  thrown: 'a la basura',
  how: 'cómo',
  weighed: 'pesado',
  reckoned: 'calculado',
  mayHaveFed: 'pudo servirse en',
  lost: 'perdido al limpiar, asar y trinchar',
  left: 'queda en la cámara',
  whole: 'todo',
};

export const recordWords: Readonly<Record<Language, RecordWords>> = { en: english, es: spanish };
