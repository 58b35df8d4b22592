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

/**
 * The stations that an address names, each once.
 * @example stationsIn('trim,mix') //=> ['trim', 'mix']
 */
export function stationsIn(word: string | null): StationId[] {
  const named = (word ?? '').split(',').filter((each) => each !== '');
  return [...new Set(named)] as StationId[];
}

/** What the address of a station's page is to show; null where it names no station. */
export function stationAt(address: URLSearchParams): Extract<Face, { kind: 'station' }> | null {
  const [station, ...beside] = stationsIn(address.get('station'));
  if (station === undefined) return null;
  const hand = address.get('person') as PersonId | null;
  return {
    kind: 'station',
    station,
    ...(beside.length > 0 && { beside }),
    ...(hand && { hand }),
  };
}
