import type { Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { StateResource } from './model.ts';

/** How long a state resource takes from one state to another; nothing if it is in it already. */
export function changeTimeS(resource: StateResource, from: string, to: string): Seconds {
  if (from === to) return seconds(0);
  const listed = resource.changes.find((change) => change.from === from && change.to === to);
  return listed?.takesS ?? resource.defaultChangeS;
}
