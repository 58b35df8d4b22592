import type {
  CabinetId,
  CoolerId,
  PersonId,
  SlotId,
  SmokerId,
  StationId,
} from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { ResourceId } from '../schedule/index.ts';

/**
 * The kitchen's things as the schedule knows them. A slot is one rack: its capacity is its usable area in square
 * centimetres, so that two batches may share a rack that holds both. A fire is the state a smoker can hold: one set
 * temperature at a time.
 */
export type KitchenResource =
  | { readonly kind: 'hand'; readonly person: PersonId }
  | { readonly kind: 'table'; readonly station: StationId }
  | { readonly kind: 'slot'; readonly slot: SlotId }
  | { readonly kind: 'fire'; readonly smoker: SmokerId }
  | { readonly kind: 'cabinet'; readonly cabinet: CabinetId }
  | { readonly kind: 'cooler'; readonly cooler: CoolerId };

/** The schedule's name for a thing of the kitchen. @example resourceId({ kind: 'slot', slot }) //=> 'slot:a/2' */
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
      return { kind, station: name as StationId };
    case 'slot':
      return { kind, slot: name as SlotId };
    case 'fire':
      return { kind, smoker: name as SmokerId };
    case 'cabinet':
      return { kind, cabinet: name as CabinetId };
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
      return thing.station;
    case 'slot':
      return thing.slot;
    case 'fire':
      return thing.smoker;
    case 'cabinet':
      return thing.cabinet;
    case 'cooler':
      return thing.cooler;
    default:
      return unreachable(thing);
  }
}
