/** What a person does at the screen, and what they read there. */
import type { Download, Locator, Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { expect } from './support/test';

/** Screen pixels from the middle of the plan, y down. */
export type Place = readonly [x: number, y: number];

export interface OpenOptions {
  readonly address?: string;
  /** Whether the browser has pickers that open and save files in place; most browsers have none. */
  readonly hasPickers?: boolean;
}

export class Desk {
  readonly plan: Locator;
  readonly details: Locator;
  readonly strip: Locator;
  readonly tables: Locator;

  constructor(readonly page: Page) {
    this.plan = page.getByRole('application', { name: /^Plan of/ });
    this.details = page.getByRole('complementary', { name: 'Details' });
    this.strip = page.getByRole('region', { name: 'Response to the vehicle on the plan' });
    this.tables = page.getByRole('region', { name: 'Tables' });
  }

  async open({ address = './', hasPickers = false }: OpenOptions = {}): Promise<void> {
    if (!hasPickers) {
      await this.page.addInitScript(() => {
        for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) Reflect.deleteProperty(window, name);
      });
    }
    await this.page.goto(address);
    await this.settled();
  }

  /** A view of the tables; on a narrow page they lie in a sheet under the plan that is opened first. */
  async lookAt(view: string): Promise<void> {
    const sheet = this.page
      .getByRole('navigation', { name: 'Under the plan' })
      .getByRole('button', { name: 'Tables' });
    if ((await sheet.isVisible()) && (await sheet.getAttribute('aria-expanded')) !== 'true')
      await sheet.click();
    await this.tables.getByRole('tab', { name: view }).click();
  }

  /** Waits until every figure on the screen belongs to the drawing. */
  async settled(): Promise<void> {
    await expect(this.plan).toBeVisible();
    await expect(this.page.locator('[aria-busy]')).not.toHaveCount(0);
    await expect(this.page.locator('[aria-busy="true"]')).toHaveCount(0, { timeout: 20_000 });
  }

  async startFrom(situation: string): Promise<void> {
    await this.page.getByRole('button', { name: 'New', exact: true }).click();
    await this.page.getByRole('dialog').getByRole('button', { name: situation }).click();
    await this.settled();
  }

  async takeTool(name: string): Promise<void> {
    await this.page
      .getByRole('toolbar', { name: 'Tools' })
      .getByRole('button', { name, exact: true })
      .click();
  }

  async click(place: Place): Promise<void> {
    const [x, y] = await this.#onScreen(place);
    await this.page.mouse.click(x, y);
  }

  /** Alt keeps what is drawn exactly where the pointer goes, off the grid and the lanes. */
  async drag(from: Place, to: Place): Promise<void> {
    await this.grab(from);
    await this.carry(to);
    await this.page.mouse.up();
    await this.settled();
  }

  async grab(place: Place): Promise<void> {
    const [x, y] = await this.#onScreen(place);
    await this.page.mouse.move(x, y);
    await this.page.mouse.down();
  }

  async carry(place: Place): Promise<void> {
    const [x, y] = await this.#onScreen(place);
    await this.page.mouse.move(x, y, { steps: 8 });
  }

  field(label: string): Locator {
    return this.details.getByLabel(label, { exact: true });
  }

  async type(label: string, text: string): Promise<void> {
    await this.field(label).fill(text);
    await this.field(label).press('Enter');
  }

  /** Opens a part of the details that is folded away; leaves one that is open. */
  async unfold(title: string): Promise<void> {
    const part = this.details.locator('details').filter({ has: this.page.getByText(title, { exact: true }) });
    if (!(await part.first().evaluate((element) => element.hasAttribute('open'))))
      await part.first().locator('summary').click();
  }

  /** A figure of the readout by its whole name; of a loop's and its circuit's, the loop's comes first. */
  figure(name: string): Locator {
    return this.details
      .getByRole('definition')
      .and(this.page.locator(`dt:has-text("${name}") + dd`))
      .first();
  }

  async inductance(): Promise<number> {
    await this.settled();
    return Number.parseFloat(await this.figure('Inductance').innerText());
  }

  /** Of each circuit in the strip, in percent. */
  async responses(): Promise<number[]> {
    await this.settled();
    // Vehicles are made ready after the first figures.
    await expect(this.strip.getByText('Calculating …')).toHaveCount(0, { timeout: 20_000 });
    const texts = await this.strip.locator('.number').allInnerTexts();
    return texts.map((text) => Number.parseFloat(text));
  }

  loopCount(): Promise<number> {
    return this.page.locator('.outline li').filter({ hasText: / loop/ }).count();
  }

  /** The first thing of its kind in the outline: "lane", "loop", "vehicle". */
  outlineItem(kind: string): Locator {
    return this.page
      .locator('.outline')
      .getByRole('button')
      .filter({ hasText: ` ${kind}` })
      .first();
  }

  async undo(): Promise<void> {
    await this.page.getByRole('button', { name: /^Undo/ }).click();
    await this.settled();
  }

  async redo(): Promise<void> {
    await this.page.getByRole('button', { name: /^Redo/ }).click();
    await this.settled();
  }

  /** The site as its file would hold it. */
  async savedText(): Promise<string> {
    return readFileSync(await (await this.save()).path(), 'utf8');
  }

  async save(): Promise<Download> {
    const waiting = this.page.waitForEvent('download');
    await this.page.getByRole('button', { name: 'Save', exact: true }).click();
    return waiting;
  }

  async openText(text: string, name = 'site.kerfline.json'): Promise<void> {
    await this.page.getByRole('button', { name: 'Open', exact: true }).click();
    const choosing = this.page.waitForEvent('filechooser');
    await this.page.getByRole('button', { name: 'Open a file' }).click();
    await (await choosing).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  }

  /** Waits until the browser has kept the last change. */
  async kept(): Promise<void> {
    await expect(this.page.locator('[data-state="saved"]')).toBeVisible();
  }

  async #onScreen([x, y]: Place): Promise<[number, number]> {
    const box = await this.plan.boundingBox();
    if (!box) throw new Error('the plan is not on the screen');
    return [box.x + box.width / 2 + x, box.y + box.height / 2 + y];
  }
}
