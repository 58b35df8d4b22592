import { demoLog } from '../../../server/demo/index.ts';
import { noon, plan, Telling } from './demo.ts';

const told = new Telling();
for (const { at, intent, personId } of demoLog(plan, { now: noon, seed: 1 })) {
  told.ask(intent, at, personId);
}

/** The invented kitchen's day as it stands at noon, to be told more. */
export const atNoon = (): Telling => Object.assign(new Telling(), { state: told.state });
