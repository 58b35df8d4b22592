import type { WorkerScope } from './scope.ts';

const LIKENESS = 'coalface likeness';

/** A page that the device keeps; one that it had to ask for has the hub's own words already. */
const UNSAID = /<body>(?!<div class="likeness")/;

/** What stood longer ago than this is nobody's next thing any more. */
const OLDEST_MS = 60 * 60_000;

/** A page says what stands on it now. */
export type Stood = { readonly at: string; readonly stood: string };

const isStood = (told: unknown): told is Stood =>
  typeof told === 'object' && told !== null && 'at' in told && 'stood' in told;

/** What last stood on this device's walls: for the address of each, a fragment of a page. */
export class Likenesses {
  readonly #scope: Pick<WorkerScope, 'caches' | 'Date'>;

  constructor(scope: Pick<WorkerScope, 'caches' | 'Date'>) {
    this.#scope = scope;
  }

  /** What a page tells its worker; `forget`: nothing that stood here may be shown any longer. */
  async hear(told: unknown): Promise<void> {
    if (told === 'forget') await this.#scope.caches.delete(LIKENESS);
    else if (isStood(told)) await this.#keep(told);
  }

  async #keep({ at, stood }: Stood): Promise<void> {
    const headers = { date: new Date(this.#scope.Date.now()).toUTCString() };
    await (await this.#kept()).put(at, new Response(stood, { headers }));
  }

  /**
   * The page of this address with its likeness in it, drawn before its first script has run. A
   * store that fails costs that, and not the page.
   */
  async into(page: Promise<Response>, at: string): Promise<Response> {
    const stood = await this.#stoodAt(at).catch(() => null);
    if (stood === null) return page;
    const whole = await page;
    // By a function: a "$&" in somebody's name means nothing.
    const body = (await whole.text()).replace(UNSAID, (tag) => tag + stood);
    return new Response(body, { headers: whole.headers, status: whole.status });
  }

  async #stoodAt(at: string): Promise<string | null> {
    const likeness = await (await this.#kept()).match(at);
    return likeness && this.#isRecent(likeness) ? likeness.text() : null;
  }

  #isRecent({ headers }: Response): boolean {
    const ageMs = this.#scope.Date.now() - Date.parse(headers.get('date') ?? '');
    // The date is without its milliseconds; a clock that was set back says nothing.
    return ageMs >= 0 && ageMs < OLDEST_MS;
  }

  #kept = () => this.#scope.caches.open(LIKENESS);
}
