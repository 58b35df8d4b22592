import { FAULT_LETTERS, type ScreenFault } from '../../shared/protocol/index.ts';

/** A part that fails is drawn again every second: each fault is told once, and not without end. */
const MOST_TOLD = 20;

/** Tells the hub of a fault; whether it was heard is nobody's business here. */
export type TellFault = (fault: ScreenFault) => void;

/** The hub's door for them. A screen that is alone has nobody to tell. */
export function faultsDoor(
  token: string | null,
  ask: typeof fetch = fetch.bind(window),
): TellFault {
  return (fault) => {
    const headers = {
      'Content-Type': 'application/json',
      ...(token && { Authorization: `Bearer ${token}` }),
    };
    const body = JSON.stringify(fault);
    ask('/api/faults', { method: 'POST', headers, body, keepalive: true }).catch(() => {});
  };
}

/**
 * Tells of whatever fails on a page and nobody caught, in its parts or elsewhere. Somebody stands
 * before a wall, and nobody sees its console.
 */
export function tellFaults(tell: TellFault, on: EventTarget = window): void {
  const told = new Set<string>();
  const fail = (fault: unknown) => {
    const said = spelled(fault).slice(0, FAULT_LETTERS.said);
    if (told.has(said) || told.size >= MOST_TOLD) return;
    told.add(said);
    tell({ page: (location.pathname + location.search).slice(0, FAULT_LETTERS.page), said });
  };
  on.addEventListener('error', (event) => {
    const { error } = event as ErrorEvent;
    // Without one the browser only notes something, as that a size is measured again.
    if (error) fail(error);
  });
  on.addEventListener('unhandledrejection', (event) =>
    fail((event as PromiseRejectionEvent).reason),
  );
}

/** With what it came of, and where. */
function spelled(fault: unknown): string {
  if (!(fault instanceof Error)) return String(fault) || 'nothing is known of it';
  const { name, message, stack = '', cause } = fault;
  const where = stack.includes(message) ? stack : `${name}: ${message}\n${stack}`;
  return cause === undefined ? where : `${where}\nbecause of ${spelled(cause)}`;
}
