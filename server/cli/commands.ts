import type { Command } from './command.ts';
import { forecast } from './forecast.ts';
import { plan } from './plan.ts';
import { print } from './print.ts';
import { record } from './record.ts';
import { replay } from './replay.ts';
import { safety } from './safety.ts';
import { trace } from './trace.ts';
import { verify } from './verify.ts';

/** Every command there is, in the order that help lists them: one file each, and one line here. */
export const commands: readonly Command[] = [
  ...[plan, replay, print, forecast, safety],
  ...[record, trace, verify],
];
