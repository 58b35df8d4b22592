// @vitest-environment happy-dom
import { join } from 'node:path';
import { build } from 'vite';
import { describe, expect, it, vi } from 'vitest';
import { root } from '../../server/fingerprint.mjs';

// A class field that is left in the output shadows Lit's accessor of the same name: the screen
// draws once and never again, and Lit's production build says nothing. So a small part is built
// just as the screens are, as if it lay among them, and asked to draw twice.

const DECORATED = `
  import { html, LitElement } from 'lit';
  import { customElement, property } from 'lit/decorators.js';
  @customElement('probe-decorated')
  class Probe extends LitElement {
    @property() said = 'first';
    override render() { return html\`\${this.said}\`; }
  }`;

/** What a wrong compiler setting would make of the part above; plain JavaScript is left alone. */
const SHADOWED = `
  import { html, LitElement } from 'lit';
  class Probe extends LitElement {
    static properties = { said: {} };
    said = 'first';
    render() { return html\`\${this.said}\`; }
  }
  customElements.define('probe-shadowed', Probe);`;

async function builtLikeAScreen(file: string, source: string): Promise<string> {
  const path = join(root, 'client', file);
  vi.stubEnv('NODE_ENV', 'production');
  const outcome = await build({
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'error',
    build: { write: false, manifest: false },
    plugins: [
      {
        name: 'probe',
        enforce: 'pre',
        // In place of the pages: what is given beside a configuration is only added to it.
        config: (settings) => {
          settings.build = { ...settings.build, rolldownOptions: { input: path } };
        },
        resolveId: (id) => (id === path ? path : null),
        load: (id) => (id === path ? source : null),
      },
    ],
  }).finally(() => vi.unstubAllEnvs());
  if (!('output' in outcome)) throw new Error('Expected the outcome of one build.');
  return outcome.output[0].code;
}

/** What the part shows at first, and after its property was changed. */
async function shownBy(tag: string, code: string): Promise<string[]> {
  await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(code)}`);
  const part: Element & { updateComplete?: Promise<boolean>; said?: string } =
    document.createElement(tag);
  document.body.append(part);
  await part.updateComplete;
  const first = part.shadowRoot?.textContent;
  part.said = 'second';
  await part.updateComplete;
  return [first ?? '', part.shadowRoot?.textContent ?? ''];
}

describe('a part of a built screen', () => {
  it('draws again when its property changes', async () => {
    const code = await builtLikeAScreen('probe.ts', DECORATED);
    expect(await shownBy('probe-decorated', code)).toEqual(['first', 'second']);
  });

  it('would be caught shadowing its property', async () => {
    const code = await builtLikeAScreen('probe.js', SHADOWED);
    expect(await shownBy('probe-shadowed', code)).toEqual(['first', 'first']);
  });
});
