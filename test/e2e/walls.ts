import type { Locator, Page } from '@playwright/test';
import { expect } from '@playwright/test';

/** What a person did at a wall, as the log must have it. */
export type Deed = { readonly kind: string; readonly title: string };

/** A wall in a browser, worked as a finger works it; it remembers what was tapped. */
export class Wall {
  readonly page: Page;
  readonly deeds: Deed[] = [];

  constructor(page: Page) {
    this.page = page;
  }

  async open(address: string): Promise<void> {
    await this.page.goto(address);
    await expect(this.page.locator('wall-head')).toBeVisible();
  }

  /** The ring of the first line under *Now* that can be started, or that runs. */
  ring(word: 'start' | 'finish' | 'undo'): Locator {
    return this.page.getByRole('button', { name: new RegExp(`^${word}: `) }).first();
  }

  async tap(word: 'start' | 'finish'): Promise<string> {
    const ring = this.ring(word);
    const name = (await ring.getAttribute('aria-label')) ?? '';
    const title = titleIn(name);
    await ring.click();
    this.deeds.push({ kind: word === 'start' ? 'taskStarted' : 'taskFinished', title });
    return title;
  }

  /** Says that the first line runs late by the first amount that is offered. */
  async late(): Promise<void> {
    const line = this.page
      .locator('now-line')
      .filter({ has: this.page.locator('.acts') })
      .first();
    const title = (await line.locator('h2').textContent()) ?? '';
    await line.getByRole('button', { name: 'late', exact: true }).click();
    // Nothing that comes down elsewhere sooner is meant.
    await this.page.waitForTimeout(400);
    await line
      .getByRole('button', { name: /^\+\d+ min$/ })
      .first()
      .click();
    // Until that is drawn two walls are alike that are not.
    await this.page.waitForTimeout(1_000);
    this.deeds.push({ kind: 'taskRunsLate', title: title.trim() });
  }

  /** Resolves once the hub has everything that was tapped here. */
  async settled(): Promise<void> {
    await expect(this.page.getByText(/kept here for it/)).toHaveCount(0, { timeout: 30_000 });
  }
}

/** `start: Square spare ribs, Rosa` names the task before the hand. */
const titleIn = (name: string) => name.replace(/^\w+: /, '').replace(/, [^,]*$/, '');
