import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { build } from 'vite';
import { root } from '../../server/fingerprint.mjs';

const MEDIA: Readonly<Record<string, string>> = {
  html: 'text/html',
  js: 'text/javascript',
  css: 'text/css',
  woff2: 'font/woff2',
};

const ORIGIN = 'http://parts.test';

/** Builds the gallery into a folder, and has a page find it there under an address of its own. */
export async function galleryIn(folder: string): Promise<(page: Page) => Promise<void>> {
  await build({
    configFile: false,
    root: join(root, 'test/gallery'),
    logLevel: 'error',
    build: { outDir: folder, target: 'es2022', modulePreload: { polyfill: false } },
  });
  return async (page) => {
    await page.route(`${ORIGIN}/**`, (route) => {
      const { pathname } = new URL(route.request().url());
      const file = pathname === '/' ? '/index.html' : pathname;
      return route.fulfill({
        body: readFileSync(join(folder, file)),
        contentType: MEDIA[file.split('.').at(-1) ?? ''] ?? 'application/octet-stream',
      });
    });
  };
}

/** The gallery as somebody asks for it. @example galleryAt('?long') */
export const galleryAt = (query: string): string => `${ORIGIN}/${query}`;
