// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { StandardsPage } from '../../../client/standard/standards-page.ts';
import { must } from '../../../shared/kernel/index.ts';
import { standardsOf } from '../../../shared/view/index.ts';
import { filesWith } from '../../shared/plan/three-elms.ts';
import { drawn, saidOn } from '../fingers.ts';

const { catalogue, kitchen } = filesWith();
const shown = standardsOf(catalogue, kitchen);

/** What has the keyboard, through every shadow root. */
function keyboardOn(): string {
  let on = document.activeElement;
  while (on?.shadowRoot?.activeElement) on = on.shadowRoot.activeElement;
  return (on?.textContent ?? '').replace(/\s+/g, ' ').trim();
}

afterEach(() => {
  document.body.replaceChildren();
  vi.unstubAllGlobals();
});

describe('the page of all standards', () => {
  it('takes the keyboard to where its links lead, and back to its head', async () => {
    vi.stubGlobal('fetch', async () => ({ ok: true, json: async () => shown }));
    const page = new StandardsPage();
    document.body.append(page);
    await vi.waitFor(() => expect(saidOn(page)).toContain('Membrane'));
    await drawn();
    const links = [...(page.shadowRoot?.querySelectorAll<HTMLElement>('nav a') ?? [])];
    const link = must(links.at(-1), 'a second cut');
    const name = (link.textContent ?? '').trim();
    link.focus();
    link.click();
    expect(keyboardOn()).toContain(name);
    expect(keyboardOn()).not.toBe(name);
    page.shadowRoot?.querySelector<HTMLElement>('.up a')?.click();
    expect(keyboardOn()).toBe(page.shadowRoot?.querySelector('h1')?.textContent);
  });
});
