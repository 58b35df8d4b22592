import { type Download, type Page, expect as soon } from '@playwright/test';

const expect = soon.configure({ timeout: 60_000 });

/** What is written down of a case as it comes, as the desk asks for it. */
export type Case = {
  readonly cut: string;
  readonly pieces: number;
  readonly weightLb: number;
  readonly tempF: number;
  readonly supplier: string;
  readonly useBy: string;
  readonly code: string;
};

/** The desk's section on the record, worked as a person works it. */
export class RecordDesk {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async open(address: string): Promise<void> {
    await this.page.goto(`${address}/desk.html#record`);
    await expect(this.#lots.first()).toBeVisible();
  }

  get #lots() {
    return this.page.locator('record-lots li .name').filter({ hasText: /^20\d\d-/ });
  }

  /** Writes a case down, and gives the number that it is given for its label. */
  async receive(came: Case): Promise<string> {
    const before = await this.#names();
    const form = this.page.locator('record-receive');
    await form.getByLabel('cut').selectOption({ label: came.cut });
    await form.getByLabel('pieces').fill(`${came.pieces}`);
    await form.getByLabel('weight').fill(`${came.weightLb}`);
    await form.getByLabel('supplier').fill(came.supplier);
    await form.getByLabel('warmest piece').fill(`${came.tempF}`);
    await form.getByLabel('use by').fill(came.useBy);
    await form.getByLabel('their code').fill(came.code);
    await form.getByRole('button', { name: 'write it down' }).click();
    await expect(this.#lots).toHaveCount(before.length + 1);
    return (await this.#names()).find((name) => !before.includes(name)) ?? '';
  }

  async #names(): Promise<string[]> {
    const said = await this.#lots.allTextContents();
    return said.map((words) => /^\S+/.exec(words.trim())?.[0] ?? '');
  }

  /** The line of a lot among those in the cooler. */
  lot(id: string) {
    return this.page.locator('record-lots li').filter({ hasText: `${id} ·` });
  }

  /** Says that a batch is cut from a lot. */
  async cutFrom(batch: string, lot: string): Promise<void> {
    const line = this.page.locator('record-lots li').filter({ hasText: batch });
    await line.getByRole('button', { name: 'another lot' }).click();
    await this.page.getByRole('button', { name: new RegExp(`^${lot} · `) }).click();
    await expect(line).toContainText(lot);
  }

  /** Where a lot went: a line each, with its amount. */
  async trace(lot: string) {
    const part = this.page.locator('record-trace');
    await part.getByRole('combobox').fill(lot);
    await part.getByRole('button', { name: 'Where a lot went' }).click();
    const table = part.getByRole('table', { name: new RegExp(`${lot}$`) });
    await expect(table).toBeVisible();
    return table;
  }

  /** What is handed out of the days on record, as a file. */
  async take(name: string): Promise<Download> {
    const handed = this.page.waitForEvent('download');
    await this.page.locator('record-days').getByRole('button', { name }).click();
    return handed;
  }
}
