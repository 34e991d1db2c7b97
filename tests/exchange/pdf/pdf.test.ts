import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pdfOf } from '#exchange/pdf/pdf';
import { unwatched, type Job } from '#exchange/job';
import type { Page } from '#exchange/sheet/page';
import { line, type Drawing, type TextDrawing } from '#scenes/drawing';
import { readPdf } from '../../support/pdf';

const ttf = (name: string) =>
  new Uint8Array(readFileSync(new URL(import.meta.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`))));
const TYPEFACE = { regular: ttf('DejaVuSans'), bold: ttf('DejaVuSans-Bold') };

const INK = { colour: '#111716', width: 0.25 };
const text = (written: string, at: readonly [number, number], more: Partial<TextDrawing> = {}): Drawing => ({
  kind: 'text',
  at,
  text: written,
  colour: '#111716',
  size: 3,
  align: 'left',
  ...more
});
const page = (drawings: readonly Drawing[], width = 297, height = 210): Page => ({
  width,
  height,
  title: 'Plan',
  drawings
});
const made = (pages: readonly Page[], title = 'Sheet', job: Job = unwatched()) =>
  pdfOf(pages, { title }, TYPEFACE, job);
const read = async (pages: readonly Page[], title?: string) => readPdf(await made(pages, title));

test('every paper has its own size, upright and lying', async () => {
  // ISO 216 and ANSI Y14.1, in points of 1/72 inch
  const papers = [
    [297, 210, 841.8898, 595.2756],
    [210, 297, 595.2756, 841.8898],
    [420, 297, 1190.5512, 841.8898],
    [279.4, 215.9, 792, 612],
    [279.4, 431.8, 792, 1224]
  ] as const;
  const { pages } = await read(papers.map(([width, height]) => page([], width, height)));
  expect(pages).toHaveLength(papers.length);
  papers.forEach(([, , width, height], index) => {
    const [left, bottom, right, top] = pages[index]!.box;
    expect([left, bottom]).toEqual([0, 0]);
    expect(Math.abs(right - width)).toBeLessThan(0.01);
    expect(Math.abs(top - height)).toBeLessThan(0.01);
  });
});

// the entry of ISO 32000 that keeps a viewer from fitting the page to the paper
test('asks to be printed at its actual size', async () => {
  const file = new TextDecoder('latin1').decode(await made([page([])]));
  expect(file).toMatch(/\/PrintScaling\s*\/None/);
});

test('a length comes out as it was drawn, and so does the width of its line', async () => {
  const { pages } = await read([
    page([
      line([[20, 30], [120, 30]], INK), // prettier-ignore
      line([[20, 40], [80, 100]], { ...INK, width: 0.5, dash: [2, 1] }), // prettier-ignore
      line([[20, 110], [30, 110]], INK) // prettier-ignore
    ])
  ]);
  const [bar, dashed, last] = pages[0]!.ways;
  expect(bar!.points[0]![0]).toBeCloseTo(20, 3);
  expect(bar!.points[0]![1]).toBeCloseTo(30, 3);
  expect(bar!.points[1]![0] - bar!.points[0]![0]).toBeCloseTo(100, 3);
  expect(bar!.lineWidth).toBeCloseTo(0.25, 3);
  expect(bar).toMatchObject({ dash: [], isStroked: true, isFilled: false });
  expect(dashed!.points[1]![1]).toBeCloseTo(100, 3);
  expect(dashed!.lineWidth).toBeCloseTo(0.5, 3);
  expect(dashed!.dash[0]).toBeCloseTo(2, 3);
  expect(dashed!.dash[1]).toBeCloseTo(1, 3);
  expect(last!.dash).toEqual([]);
});

test('areas with holes, circles and twisted pairs are ways, not pictures', async () => {
  const square = (half: number, turn: 1 | -1) =>
    [[-1, -1], [1, -1], [1, 1], [-1, 1]].map(([x, y]) => [50 + half * x! * turn, 50 + half * y!] as const); // prettier-ignore
  const { pages } = await read([
    page([
      { kind: 'rings', rings: [square(20, 1), square(10, -1)], fill: '#d3d9d7', stroke: INK },
      { kind: 'circle', at: [150, 50], radius: 12, stroke: INK },
      line([[20, 120], [120, 120]], { ...INK, twisted: true }) // prettier-ignore
    ])
  ]);
  const [rings, circle, pair] = pages[0]!.ways;
  expect(rings).toMatchObject({ isFilled: true, isStroked: true });
  expect(rings!.points).toHaveLength(8);
  expect(circle!.points.every(([x, y]) => Math.abs(Math.hypot(x - 150, y - 50) - 12) < 1e-3)).toBe(true);
  // two wires, each from one end to the other
  const at = (x: number) => pair!.points.filter((point) => Math.abs(point[0] - x) < 1e-3);
  expect(at(20)).toHaveLength(2);
  expect(at(120)).toHaveLength(2);
  expect(pages[0]!.images).toBe(0);
});

test('texts are read back as they were written, with every sign of the trade', async () => {
  const written = [
    'R = 0.42 Ω, L = 74.3 µH, Q = 18, ΔL/L = −0.82 %',
    '1.8 m × 1.8 m, 6 mm², 20 °C, ⌀ 50 mm, 48.7 … 52.1 kHz',
    'Stop line → pull box; ≥ 25 mm; § 4 “as built”',
    'Größe, Öffnung, Maßstab, naïve, Łódź, Ελλάς, Улица'
  ];
  const { pages } = await read([
    page(written.map((each, row) => text(each, [20, 20 + 10 * row], { bold: row % 2 === 1 })))
  ]);
  expect(pages[0]!.texts.map((each) => each.text)).toEqual(written);
  expect(new Set(pages[0]!.texts.map(({ font }) => font)).size).toBe(2);
  for (const { size } of pages[0]!.texts) expect(size).toBeCloseTo(3, 2);
});

test('a text begins, has its middle or ends where it is put', async () => {
  const { pages } = await read([
    page(
      (['left', 'center', 'right'] as const).map((align, row) =>
        text('Lead-in', [100, 20 + 10 * row], { align })
      )
    )
  ]);
  const [left, centre, right] = pages[0]!.texts;
  expect(left!.at[0]).toBeCloseTo(100, 2);
  expect(centre!.at[0] + centre!.width / 2).toBeCloseTo(100, 1);
  expect(right!.at[0] + right!.width).toBeCloseTo(100, 1);
});

test('what the typeface lacks is seen to be missing, and nothing else is lost', async () => {
  const cases: readonly (readonly [string, string])[] = [
    ['Gate 🚗 north', 'Gate \uFFFD north'],
    ['A漢字B', 'A\uFFFD\uFFFDB'],
    ['half \uD83D of a sign', 'half \uFFFD of a sign'],
    ['turned \u202Eback\u202C', 'turned back'],
    ['a\tb\nc\u0000d', 'a b c d'],
    ['e\u0301', 'é'],
    ['(un)balanced \\ (( )> << /Type', '(un)balanced \\ (( )> << /Type'],
    ['<script>alert(1)</script>', '<script>alert(1)</script>'],
    ['=HYPERLINK("a","b")', '=HYPERLINK("a","b")']
  ];
  const { pages } = await read([page(cases.map(([each], row) => text(each, [20, 20 + 8 * row])))]);
  expect(pages[0]!.texts.map((each) => each.text)).toEqual(cases.map(([, expected]) => expected));
});

test('texts that end nowhere, and empty ones, break nothing', async () => {
  const { pages } = await read([
    page([
      text('x'.repeat(100_000), [20, 20]),
      text('', [20, 30]),
      text('\u200F', [20, 40]),
      text('end', [20, 50])
    ])
  ]);
  const texts = pages[0]!.texts.map((each) => each.text);
  expect(texts.at(-1)).toBe('end');
  // the reader leaves out what lies beside the page
  expect(texts[0]!.length).toBeGreaterThan(100);
});

test.each(['Depot (north) \\ gate', 'Mündung ΔL 🚗', '<script>', 'x'.repeat(10_000), 'line\r\nbreak'])(
  'a title is only a title: %.40s',
  async (title) => {
    const { title: found, pages } = await read([page([text('one', [20, 20])])], title);
    expect(title.replace(/\p{Cc}/gu, ' ').startsWith(found)).toBe(true);
    expect(found.length).toBeGreaterThan(5);
    expect(pages[0]!.texts.map((each) => each.text)).toEqual(['one']);
  }
);

test('the same pages give the same bytes, whatever the clock says', async () => {
  const pages = [page([text('ΔL/L', [20, 20]), line([[20, 30], [120, 30]], INK)]), page([])]; // prettier-ignore
  const first = await made(pages);
  await new Promise((resolve) => setTimeout(resolve, 1100));
  const second = await made(pages);
  expect(Buffer.compare(first, second)).toBe(0);
  expect(Buffer.from(first).toString('latin1')).not.toContain('CreationDate');
});

test('only the characters that are used are embedded', async () => {
  const bytes = await made([page([text('A', [20, 20])])]);
  expect(bytes.length).toBeLessThan((TYPEFACE.regular.length + TYPEFACE.bold.length) / 10);
});

test('a job that is ended while it works makes no file', async () => {
  const control = new AbortController();
  const shares: number[] = [];
  const many = Array.from({ length: 20 }, () => page([text('page', [20, 20])]));
  const making = made(many, 'Sheet', {
    signal: control.signal,
    onShare: (share) => {
      shares.push(share);
      if (share > 0.4) control.abort(new Error('enough'));
    }
  });
  await expect(making).rejects.toThrow('enough');
  expect(Math.max(...shares)).toBeLessThan(0.6);
});

test('says how far it is, and never less than before', async () => {
  const shares: number[] = [];
  await made([page([]), page([])], 'Sheet', { ...unwatched(), onShare: (share) => shares.push(share) });
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
  expect(shares.at(-1)).toBe(1);
});
