/** The commissioning record and the empty form as PDF, read back by another library. */
import { describe, expect, test } from 'vitest';
import { typeface } from '#cli/typeface';
import { composeForm, composeRecord } from '#exchange/sheet/record/compose';
import { formPdf, recordPdf } from '#exchange/files/record-pdf';
import type { Surroundings } from '#exchange/files/exported';
import { unwatched } from '#exchange/job';
import { paperSize } from '#plan/catalogue/sheet';
import type { Site } from '#plan/schema';
import type { Drawing } from '#scenes/drawing';
import { checkedAsIf, checkedSite } from '../../support/field-check';
import { HOSTILE, siteNamed } from '../../support/hostile-names';
import { readPdf } from '../../support/pdf';
import { PAPERS } from '../sheet/papers';
import { sourceOf } from '../sheet/sites';

const POINTS = 72 / 25.4;
const PAPER_FILES = [
  ['record', recordPdf, composeRecord],
  ['form', formPdf, composeForm]
] as const;

const surroundingsOf = (site: Site): Surroundings => ({
  typeface,
  reckon: () => Promise.resolve(checkedAsIf(site) as never)
});

const textsIn = (drawings: readonly Drawing[]): string[] =>
  drawings.flatMap((drawing) => (drawing.kind === 'text' ? [drawing.text] : []));
const plain = (texts: readonly string[]) => texts.map((text) => text.replace(/\s/g, '')).filter(Boolean);

describe.each(PAPER_FILES)('the %s', (_, exporter, compose) => {
  test.each(PAPERS)('has the size of %s and every text of its pages', async (paper) => {
    const base = checkedSite();
    const site = {
      ...base,
      fieldCheck: { ...base.fieldCheck, record: { ...base.fieldCheck!.record, paper } }
    };
    const source = sourceOf(site);
    const { content } = await exporter(source, surroundingsOf(site), unwatched());
    const { pages, title } = await readPdf(content as Uint8Array<ArrayBuffer>);
    const sheet = compose(source, checkedAsIf(site));
    if (sheet.kind !== 'pages') throw new Error(sheet.message);
    expect(title).toContain(site.name);
    expect(pages).toHaveLength(sheet.pages.length);
    const size = paperSize({ paper, orientation: 'portrait' });
    sheet.pages.forEach((page, index) => {
      const read = pages[index]!;
      expect(Math.abs(read.box[2] - size.width * POINTS)).toBeLessThan(0.01);
      expect(Math.abs(read.box[3] - size.height * POINTS)).toBeLessThan(0.01);
      const found = plain(read.texts.map(({ text }) => text)).join('');
      for (const text of plain(textsIn(page.drawings))) expect(found).toContain(text);
    });
  });

  test('is the same byte for byte when it is made again', async () => {
    const site = checkedSite();
    const make = async () => (await exporter(sourceOf(site), surroundingsOf(site), unwatched())).content;
    expect(Buffer.from((await make()) as Uint8Array)).toEqual(Buffer.from((await make()) as Uint8Array));
  });

  test('keeps harmful names texts', async () => {
    for (const name of HOSTILE) {
      const site = checkedSite(siteNamed(name));
      const { content, name: file } = await exporter(sourceOf(site), surroundingsOf(site), unwatched());
      expect(file).toMatch(/^[\p{L}\p{N}-]{1,60}\.pdf$/u);
      const raw = Buffer.from(content as Uint8Array).toString('latin1');
      for (const active of ['/JavaScript', '/JS', '/Launch', '/URI', '/SubmitForm', '/EmbeddedFile', '/AA'])
        expect(raw).not.toContain(active);
      const { pages } = await readPdf(content as Uint8Array<ArrayBuffer>);
      for (const page of pages)
        for (const { at, width } of page.texts)
          expect(at[0] + width).toBeLessThanOrEqual(page.box[2] / POINTS);
    }
  }, 120_000);

  test('is not made once nobody waits for it, and needs somebody who reckons', async () => {
    const site = checkedSite();
    const ending = new AbortController();
    const job = {
      signal: ending.signal,
      onShare: (share: number) => {
        if (share > 0.1) ending.abort();
      }
    };
    await expect(exporter(sourceOf(site), surroundingsOf(site), job)).rejects.toThrow(/abort/i);
    await expect(exporter(sourceOf(site), { typeface }, unwatched())).rejects.toThrow(TypeError);
  });
});
