import type { PersonId, StationId } from '../kernel/index.ts';

/** What a screen shows. */
export type Face =
  | {
      readonly kind: 'station';
      readonly station: StationId;
      /** Others on the same wall. */
      readonly beside?: readonly StationId[] | undefined;
      /** Whose work alone is shown: a phone of their own. */
      readonly hand?: PersonId | undefined;
    }
  | { readonly kind: 'smoker' }
  | { readonly kind: 'pass' }
  | { readonly kind: 'desk' };

/** The stations of a wall, one or several. */
export const stationsOf = ({ station, beside = [] }: Extract<Face, { kind: 'station' }>) => [
  station,
  ...beside,
];
