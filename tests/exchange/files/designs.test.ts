/** Designs side by side as files: every figure that differs, signs and words, and names that would do harm. */
import Papa from 'papaparse';
import readWorkbook from 'read-excel-file/node';
import { describe, expect, it, test } from 'vitest';
import { designsCompared } from '#analysis/designs/compared';
import { designRows } from '#analysis/designs/rows';
import { typeface } from '#cli/typeface';
import { designsCsv, designsXlsx } from '#exchange/files/designs';
import { Unfit, type Exporter, type Reckon } from '#exchange/files/exported';
import { reportFile } from '#exchange/files/report-json';
import { sheetPdf } from '#exchange/files/sheet-pdf';
import { unwatched } from '#exchange/job';
import { clean } from '#exchange/sheet/text/clean';
import { designsTables } from '#exchange/tables/designs';
import { keepVariant, removeVariant, renameVariant, restoreVariant } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { HOSTILE, siteNamed } from '../../support/hostile-names';
import { readPdf } from '../../support/pdf';
import { resultsOf, siteWithDesigns } from '../designs';
import { sourceOf } from '../sheet/sites';

const reckon: Reckon = (kind, asked, site) =>
  Promise.resolve((kind === 'compare-designs' ? resultsOf(site, asked as never) : []) as never);

const made = async (exporter: Exporter, site: Site) =>
  (await exporter(sourceOf(site), { typeface, reckon }, unwatched())).content;

const present = siteWithDesigns();
const asked = { designs: designsCompared(present), pass: null };
const results = resultsOf(present, asked);

describe('which designs are compared', () => {
  it('is every kept one and the present one, which is last', () => {
    expect(designsCompared(present)).toEqual(['V1', 'V2', null]);
    expect(designsCompared(present, 2)).toEqual(['V1', null]);
  });

  it('is not the one twice that the present design still is', () => {
    expect(designsCompared(restoreVariant(present, 'V2'))).toEqual(['V1', null]);
    expect(designsCompared(restoreVariant(present, 'V1'))).toEqual(['V2', null]);
  });
});

describe('the table of results', () => {
  const [table, ...further] = designsTables(present, results);
  const differing = designRows(results).filter(({ differs }) => differs);

  it('has a row for every figure that differs, and none for the others', () => {
    expect(differing.length).toBeGreaterThan(10);
    expect(table?.rows).toHaveLength(differing.length);
  });

  it('says better and worse as the rows have it, by sign and word', () => {
    const heads = table!.columns.map(({ head }) => head);
    expect(heads).toContain('Deeper');
    const at = heads.indexOf('Deeper: better or worse');
    const words = { better: '▲ better', worse: '▼ worse', same: '' } as const;
    differing.forEach(({ marks, values }, row) => {
      const mark = marks[1] ?? null;
      const expected = mark ? words[mark] : values[1] === values[0] ? '' : '≠ different';
      expect(table!.rows[row]![at]).toBe(expected);
    });
    expect(table!.rows.some((row) => row[at] === '▲ better')).toBe(true);
    expect(table!.rows.some((row) => row[at] === '▼ worse')).toBe(true);
  });

  it('shows values in the unit it names, with enough places to tell them apart', () => {
    const heads = table!.columns.map(({ head }) => head);
    const columns = ['As tendered', 'Deeper'].map((name) => heads.indexOf(name));
    differing.forEach(({ figure, values }, row) => {
      const cells = columns.map((at) => table!.rows[row]![at] as number);
      const unit = table!.rows[row]![heads.indexOf('Unit of figures')];
      if (figure === 'inductance') {
        expect(unit).toBe('µH');
        expect(cells[0]).toBeCloseTo(values[0]! * 1e6, 9);
      }
      if (figure === 'response') expect([unit, cells[1]]).toEqual(['%', expect.closeTo(values[1]! * 100, 9)]);
      if (values[0] === null || values[1] === null || values[0] === values[1]) return;
      const places = table!.places![row]![columns[0]!]!;
      expect(places).toBeGreaterThanOrEqual(0);
      expect(places).toBeLessThanOrEqual(6);
    });
  });

  it('is followed by what differs in the drawing, in words', () => {
    const drawing = further.at(-1)!;
    const { turns, slot } = present.variants![0]!.design.loops[0]!;
    const [more] = drawing.rows.map((row) => String(row[2]));
    expect(more).toContain(`turns ${turns} → ${turns + 2}`);
    expect(more).toContain(`${slot.depth * 1000} mm → ${slot.depth * 1000 + 30} mm`);
    expect(drawing.rows.some((row) => String(row[2]).includes('16 AWG'))).toBe(true);
  });
});

test('two designs of one name stay two columns', async () => {
  const twins = renameVariant(present, 'V2', 'As tendered');
  const [table] = designsTables(twins, results);
  const heads = table!.columns.map(({ head }) => head);
  expect(new Set(heads).size).toBe(heads.length);
  expect(heads).toEqual(expect.arrayContaining(['As tendered (V1)', 'As tendered (V2)']));
  const unlucky = renameVariant(present, 'V2', 'Figure');
  expect(await made(designsCsv, unlucky)).toContain('Figure (V2)');
});

test('a site with one design has nothing to compare, and says so', async () => {
  const one = keepVariant(removeVariant(removeVariant(present, 'V1'), 'V2'), 'Only');
  for (const site of [one, removeVariant(one, one.variant!)])
    await expect(made(designsCsv, site)).rejects.toThrow(Unfit);
});

describe('the report', () => {
  const designsOf = async (site: Site) =>
    (JSON.parse((await made(reportFile, site)) as string) as { designs: unknown[] }).designs;

  it('holds every kept design with its circuits and quantities', async () => {
    const designs = await designsOf(present);
    expect(designs).toMatchObject([
      { id: 'V1', name: 'As tendered', isPresent: false, circuits: expect.any(Array) as object[] },
      { id: 'V2', name: 'Deeper', isPresent: false, quantities: { wire_m: expect.any(Number) as number } }
    ]);
    const first = designs[0] as { circuits: { id: string; inductance_H: number }[] };
    expect(first.circuits.map(({ id }) => id)).toEqual(present.circuits.map(({ id }) => id));
    expect(first.circuits[0]?.inductance_H).toBe(results[0]?.circuits[0]?.inductance_H);
    expect(await designsOf(restoreVariant(present, 'V2'))).toMatchObject([{ isPresent: false }, { isPresent: true }]); // prettier-ignore
  });

  it('of a site without kept designs asks nobody', async () => {
    const bare = removeVariant(removeVariant(present, 'V1'), 'V2');
    const nobody: Reckon = () => Promise.reject(new Error('asked'));
    const { content } = await reportFile(sourceOf(bare), { typeface, reckon: nobody }, unwatched());
    expect(JSON.parse(content as string)).toMatchObject({ designs: [] });
  });
});

describe('the sheet', () => {
  const comparing = (site: Site): Site => ({ ...site, sheet: { ...site.sheet, comparesDesigns: true } });
  const pagesOf = async (site: Site) =>
    (await readPdf((await made(sheetPdf, site)) as Uint8Array<ArrayBuffer>)).pages.map(({ texts }) =>
      texts.map(({ text }) => text).join(' ')
    );

  it('has a page of its own for them where it asks for it, and is as it was where it does not', async () => {
    const plain = await pagesOf(present);
    const whole = await pagesOf(comparing(present));
    expect(whole.length).toBe(plain.length + 1);
    expect(plain.join(' ')).not.toContain('Designs compared');
    const last = whole.at(-1)!;
    for (const words of ['Designs compared', 'As tendered', 'Deeper', '▲ better', '▼ worse', 'What differs'])
      expect(last).toContain(words);
    expect(whole.slice(0, -1).join(' ')).not.toContain('Designs compared');
  });

  it('leaves it out where there is nothing to compare', async () => {
    const bare = comparing(removeVariant(removeVariant(present, 'V1'), 'V2'));
    expect((await pagesOf(bare)).join(' ')).not.toContain('Designs compared');
  });

  it('names the designs for which there is no room', async () => {
    const many = keepVariant(keepVariant(present, 'Thin'), 'Thin again');
    const last = (await pagesOf(comparing(many))).at(-1)!;
    expect(last).toContain('Designs that are not on this page');
  });
});

const NUMBER = /^-?\d+(\.\d+)?$/;
const runs = (cell: string) => !NUMBER.test(cell) && /^[\s\p{C}]*[=+\-@]/u.test(cell);

describe.each(HOSTILE.filter((name) => name.length <= 200))('with %j wherever a text may stand', (name) => {
  const site = siteWithDesigns(siteNamed(name), [name, `${name}.`]);

  test('the text file is text and numbers', async () => {
    const content = (await made(designsCsv, site)) as string;
    const { data, errors } = Papa.parse<string[]>(content, { delimiter: ',', newline: '\r\n' });
    expect(errors).toEqual([]);
    const records = data.slice(0, -1);
    expect(new Set(records.map(({ length }) => length)).size).toBe(1);
    const cells = records.flat();
    expect(cells.filter(runs)).toEqual([]);
    expect(cells.filter((cell) => /[\p{Cf}\p{Cc}]/u.test(cell))).toEqual([]);
    expect(cells.some((cell) => cell.includes(clean(name)))).toBe(true);
  });

  test('the workbook is text and numbers', async () => {
    const content = (await made(designsXlsx, site)) as Uint8Array<ArrayBuffer>;
    const cells = (await readWorkbook(Buffer.from(content), { trim: false })).flatMap(({ data }) =>
      data.flat()
    );
    expect(cells.filter((cell) => !['string', 'number'].includes(typeof cell) && cell !== null)).toEqual([]);
    expect(cells.some((cell) => typeof cell === 'string' && cell.includes(clean(name)))).toBe(true);
  });
});
