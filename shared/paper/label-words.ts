import type { Label } from '../record/index.ts';
import type { Language } from '../words/index.ts';

/** The words of a label. */
export type LabelWords = {
  readonly labels: string;
  readonly since: Readonly<Record<Label['on'], string>>;
  readonly allergens: string;
  /** Nothing is named: that is no promise. */
  readonly noAllergens: string;
  readonly lots: string;
  readonly nobodyKnows: string;
  readonly useBy: string;
  readonly heldUntil: string;
  readonly forService: string;
  readonly code: string;
  pieces(count: number): string;
};

export const labelWords: Readonly<Record<Language, LabelWords>> = {
  en: {
    labels: 'Labels',
    since: { case: 'Came', tray: 'Begun', pan: 'In the pan since', kept: 'Cooling since' },
    allergens: 'Allergens',
    noAllergens: 'none named: read the package',
    lots: 'Lot',
    nobodyKnows: 'nobody knows',
    useBy: 'Use by',
    heldUntil: 'Hold until',
    forService: 'For',
    code: 'their code',
    pieces: (count) => (count === 1 ? '1 piece' : `${count} pieces`),
  },
  es: {
    labels: 'Etiquetas',
    since: { case: 'Llegó', tray: 'Empezada', pan: 'En la charola desde', kept: 'Enfría desde' },
    allergens: 'Alérgenos',
    noAllergens: 'ninguno nombrado: lea el envase',
    lots: 'Lote',
    nobodyKnows: 'nadie lo sabe',
    useBy: 'Usar hasta',
    heldUntil: 'Mantener hasta',
    forService: 'Para',
    code: 'código del proveedor',
    pieces: (count) => (count === 1 ? '1 pieza' : `${count} piezas`),
  },
};
