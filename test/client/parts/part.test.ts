// @vitest-environment happy-dom
import { html } from 'lit';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { Part } from '../../../client/parts/part.ts';

const reported: unknown[] = [];
beforeEach(() => {
  globalThis.reportError = (fault) => reported.push(fault);
});
afterEach(() => {
  reported.length = 0;
  document.body.replaceChildren();
});

class Failing extends Part {
  /** When it fails: while it gets ready, while it is drawn, or while that is laid out. */
  fails: 'before' | 'in' | 'under' | '' = '';

  protected override willUpdate(): void {
    if (this.fails === 'before') throw new Error('before');
  }

  protected override draw() {
    if (this.fails === 'in') throw new Error('in');
    const under = {
      *[Symbol.iterator]() {
        if (this.fails === 'under') throw new Error('under');
        yield 'all is well';
      },
      fails: this.fails,
    };
    return html`<p>${under}</p>`;
  }
}
customElements.define('failing-part', Failing);

it.each(['before', 'in', 'under'] as const)(
  'a part that fails %s its drawing says so in its place, and is there again afterwards',
  async (fails) => {
    const part: Failing = Object.assign(new Failing(), { fails });
    const beside = new Failing();
    document.body.append(part, beside);
    await Promise.all([part.updateComplete, beside.updateComplete]);
    expect(part.shadowRoot?.textContent).toContain('could not be drawn');
    expect(beside.shadowRoot?.textContent).toContain('all is well');
    expect(String(reported[0])).toContain('failing-part');
    expect((reported[0] as Error).cause).toMatchObject({ message: fails });
    part.fails = '';
    part.requestUpdate();
    await part.updateComplete;
    expect(part.shadowRoot?.textContent).toContain('all is well');
    expect(part.shadowRoot?.textContent).not.toContain('could not be drawn');
  },
);
