import type { Catalogue } from '../../shared/catalogue/index.ts';
import type { FileFault } from '../../shared/kernel/index.ts';
import { NOT_SKIPPED } from '../../shared/plan/index.ts';
import { type Say, shownClock, type TypedFault, type Wanted } from '../../shared/words/index.ts';
import { typedField } from './typed-field.ts';

type Typed = { readonly plan: unknown; readonly catalogue: Catalogue; readonly say: Say };

/** A fault of a plan's file as one of the page's field that it was typed into. */
export function typedFault({ path, found, allowed }: FileFault, typed: Typed): TypedFault {
  const wanted = wantedAt(path, allowed);
  const where = typedField(path, typed);
  // What is a time is said as the kitchen's clock has it.
  if (wanted.kind === 'not-skipped') {
    return { where, found: shownClock(found.replaceAll('"', ''), typed.say), wanted };
  }
  return {
    where,
    // A number field that is empty is sent as no number at all.
    found: found === 'nothing' || found === 'null' || found === '""' ? '' : found,
    wanted,
  };
}

const ONE_OF = 'one of: ';

function wantedAt(path: string, allowed: string): Wanted {
  if (allowed === 'each dish once in a service') return { kind: 'once' };
  if (allowed.startsWith(ONE_OF)) return { kind: 'one-of', words: allowed.slice(ONE_OF.length) };
  if (allowed.startsWith(NOT_SKIPPED)) {
    return { kind: 'not-skipped', such: allowed.match(/\d\d:\d\d/g) ?? [] };
  }
  if (/\.(opens|closes|ready)$/.test(path)) return { kind: 'clock' };
  if (path === 'day') return { kind: 'day' };
  // How many of each quarter may be none; of a dish or a batch none is no dish.
  if (/\.portions\[\d+\]$/.test(path)) return { kind: 'count', least: 0 };
  if (/\.(dishes|batches|slots|portions|services)$/.test(path) && allowed.startsWith('at least')) {
    return { kind: 'some' };
  }
  if (/\.(portions|number)$/.test(path)) return { kind: 'count', least: 1 };
  if (/\.name\.(en|es)$/.test(path)) return { kind: 'some' };
  return { kind: 'as-read', words: allowed };
}
