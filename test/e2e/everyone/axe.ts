import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';

const from = createRequire(import.meta.url);
/** The checker as a script of the page's own: a frame for it would cost more than its rules. */
export const AXE = createRequire(from.resolve('@axe-core/playwright')).resolve(
  'axe-core/axe.min.js',
);

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

declare const axe: {
  run(on: Element | Document, options: object): Promise<{ violations: readonly Violation[] }>;
};
type Violation = { readonly id: string; readonly nodes: readonly { readonly html: string }[] };

/**
 * What breaks a rule of WCAG 2.2 A or AA, with 7 to 1 for words (1.4.6, AAA) in the place of the
 * 4.5 to 1 that AA asks for; of the part `on`, else of the whole page. `inks`: whether they are
 * looked at, which takes as long as all the rest.
 */
export function broken(
  page: Page,
  { on = null, inks = true }: { readonly on?: string | null; readonly inks?: boolean } = {},
): Promise<string[]> {
  return page.evaluate(
    async ({ rules, on, inks }) => {
      const deep = (root: Document | ShadowRoot): Element | null =>
        root.querySelector(on ?? '') ??
        [...root.querySelectorAll('*')]
          .map(({ shadowRoot }) => shadowRoot && deep(shadowRoot))
          .find((found) => found) ??
        null;
      const { violations } = await axe.run((on && deep(document)) || document, {
        runOnly: { type: 'tag', values: rules },
        rules: {
          'color-contrast-enhanced': { enabled: inks },
          'color-contrast': { enabled: false },
        },
        resultTypes: ['violations'],
        // Only a rule that is not asked for reads the files of styles.
        preload: false,
      });
      return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
    },
    { rules: RULES, on, inks },
  );
}
