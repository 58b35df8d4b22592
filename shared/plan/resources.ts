import type {
  CabinetId,
  Celsius,
  CoolerId,
  PersonId,
  SlotId,
  SmokerId,
  StationId,
} from '../kernel/index.ts';
import { celsius, unreachable } from '../kernel/index.ts';
import type { ResourceId } from '../schedule/index.ts';

/**
 * The kitchen's things as the schedule knows them. A slot is one rack: its capacity is its usable
 * area in square centimetres, so that two batches may share a rack that holds both; its load is the
 * weight that it may carry, in grams. A fire is the state a smoker can hold: one set temperature at
 * a time. A board is what a raw table has on it: one kind of meat at a time. Clean tables are alike
 * and have no number.
 */
export type KitchenResource =
  | { readonly kind: 'hand'; readonly person: PersonId }
  | { readonly kind: 'table'; readonly station: StationId; readonly number?: number }
  | { readonly kind: 'board'; readonly station: StationId; readonly number: number }
  | { readonly kind: 'slot'; readonly slot: SlotId }
  | { readonly kind: 'load'; readonly slot: SlotId }
  | { readonly kind: 'fire'; readonly smoker: SmokerId }
  | { readonly kind: 'cabinet'; readonly cabinet: CabinetId; readonly holds: CabinetPlace }
  | { readonly kind: 'cooler'; readonly cooler: CoolerId };

/**
 * A cabinet has places for pans and places for wrapped whole pieces; each is a resource of its own.
 */
export type CabinetPlace = 'pans' | 'whole';

/**
 * The schedule's name for a thing of the kitchen.
 * @example resourceId({ kind: 'slot', slot }) //=> 'slot:a/2'
 */
export function resourceId(thing: KitchenResource): ResourceId {
  return `${thing.kind}:${nameOf(thing)}` as ResourceId;
}

/** The thing of the kitchen behind a schedule's name; the reverse of `resourceId`. */
export function kitchenResource(id: ResourceId): KitchenResource {
  const colon = id.indexOf(':');
  const kind = id.slice(0, colon) as KitchenResource['kind'];
  const name = id.slice(colon + 1);
  switch (kind) {
    case 'hand':
      return { kind, person: name as PersonId };
    case 'table':
    case 'board':
      return tableResource(kind, name);
    case 'slot':
    case 'load':
      return { kind, slot: name as SlotId };
    case 'fire':
      return { kind, smoker: name as SmokerId };
    case 'cabinet':
      return cabinetResource(name);
    case 'cooler':
      return { kind, cooler: name as CoolerId };
    default:
      return unreachable(kind);
  }
}

function nameOf(thing: KitchenResource): string {
  switch (thing.kind) {
    case 'hand':
      return thing.person;
    case 'table':
    case 'board':
      return thing.number === undefined ? thing.station : `${thing.station}/${thing.number}`;
    case 'slot':
    case 'load':
      return thing.slot;
    case 'fire':
      return thing.smoker;
    case 'cabinet':
      return `${thing.cabinet}/${thing.holds}`;
    case 'cooler':
      return thing.cooler;
    default:
      return unreachable(thing);
  }
}

function tableResource(kind: 'table' | 'board', name: string): KitchenResource {
  const [station, number] = name.split('/');
  const place = { station: station as StationId };
  if (kind === 'board') return { kind, ...place, number: Number(number) };
  return number === undefined ? { kind, ...place } : { kind, ...place, number: Number(number) };
}

function cabinetResource(name: string): KitchenResource {
  const [cabinet, holds] = name.split('/');
  return { kind: 'cabinet', cabinet: cabinet as CabinetId, holds: holds as CabinetPlace };
}

/**
 * A smoker's set temperature as the schedule's name of a state, to a tenth of a degree.
 * @example fireState(celsius(121.111)) //=> '121.1 °C'
 */
export function fireState(setC: Celsius): string {
  return `${setC.toFixed(1)} °C`;
}

/**
 * The set temperature behind a state's name; the reverse of `fireState`.
 * @example fireOf('121.1 °C') //=> 121.1
 */
export function fireOf(state: string): Celsius {
  return celsius(Number(state.replace(' °C', '')));
}

/**
 * What lies on a raw table, as the schedule's name of a state: by the core it must be cooked to.
 * @example boardState(celsius(62.78)) //=> '62.8 °C'
 */
export const boardState = fireState;
