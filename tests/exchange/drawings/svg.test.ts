/** SVG of drawings, read as text and rendered by a library of its own. */
import { createCanvas, loadImage } from '@napi-rs/canvas';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { svgOf, type Layer } from '#exchange/drawings/svg';
import { planPicture } from '#exchange/drawings/plan-picture';
import { planSvg } from '#exchange/files/plan-svg';
import { Unfit } from '#exchange/files/exported';
import { unwatched } from '#exchange/job';
import { emptySite } from '#plan/read';
import type { Point, Site } from '#plan/schema';
import type { Drawing } from '#scenes/drawing';
import { bigSite } from '../../support/big-site';
import { HOSTILE, siteNamed } from '../../support/hostile-names';
import { sample, SAMPLES } from '../sheet/sites';
import { wellFormed } from '../../support/well-formed';

const surroundings = { typeface: () => Promise.reject(new Error('no paper is asked for')) };
async function written(site: Site): Promise<string> {
  const assessment = undefined as never;
  const { content } = await planSvg({ site, assessment, file: 'a site' }, surroundings, unwatched());
  if (typeof content !== 'string') throw new Error('SVG is text');
  return content;
}

const PER_MM = 5;
/** Where it is dark, as pixels so many to the millimetre. */
async function dark(svg: string, width: number, height: number): Promise<(at: Point) => boolean> {
  const canvas = createCanvas(Math.round(width * PER_MM), Math.round(height * PER_MM));
  const context = canvas.getContext('2d');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(await loadImage(Buffer.from(svg)), 0, 0, canvas.width, canvas.height);
  const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
  return ([x, y]) => data[4 * (Math.floor(y * PER_MM) * canvas.width + Math.floor(x * PER_MM))]! < 128;
}

const INK = { colour: '#000000', width: 0.4 };
const page = { width: 100, height: 60, title: 'A plan' };

test('has its size in millimetres, and its user units are millimetres', () => {
  const svg = svgOf([], page);
  expect(svg).toContain('width="100mm" height="60mm" viewBox="0 0 100 60"');
  expect(svg).toContain('<title>A plan</title>');
});

test('what is drawn is rendered where it is drawn, holes left free', async () => {
  const drawings: Drawing[] = [
    { kind: 'line', points: [[10, 10], [90, 10]], stroke: { ...INK, width: 1 } }, // prettier-ignore
    { kind: 'circle', at: [20, 40], radius: 8, stroke: { ...INK, width: 1 } },
    {
      kind: 'rings',
      rings: [
        [[50, 30], [80, 30], [80, 55], [50, 55]], // prettier-ignore
        [[60, 38], [60, 48], [70, 48], [70, 38]] // prettier-ignore
      ],
      fill: '#000000'
    }
  ];
  const isDark = await dark(svgOf(drawings, page), page.width, page.height);
  for (const at of [
    [50, 10],
    [12, 40],
    [28, 40],
    [20, 32],
    [55, 45],
    [75, 45]
  ] as Point[])
    // prettier-ignore
    expect(isDark(at), at.join()).toBe(true);
  for (const at of [
    [5, 10],
    [95, 10],
    [50, 12],
    [20, 40],
    [65, 43],
    [85, 40]
  ] as Point[])
    // prettier-ignore
    expect(isDark(at), at.join()).toBe(false);
});

test('text is text, anchored where it is aligned', () => {
  const text = { kind: 'text', at: [50, 30], text: 'a < b & "c"', colour: '#111111', size: 3 } as const;
  const svg = svgOf([{ ...text, align: 'right', bold: true, plate: '#ffffff' }], page);
  expect(svg).toMatch(
    /<text x="50" y="31.05" font-size="3" font-weight="bold" text-anchor="end" fill="#111111">a &lt; b &amp; &quot;c&quot;<\/text>/
  );
  expect(svg).toMatch(/font-family="[^"]*sans-serif"/);
});

test('two twisted wires are two ways that cross', () => {
  const svg = svgOf([{ kind: 'line', points: [[0, 30], [100, 30]], stroke: { ...INK, twisted: true } }], page); // prettier-ignore
  const [, d = ''] = /<path d="([^"]+)"/.exec(svg) ?? [];
  expect(d.match(/M/g)).toHaveLength(2);
  const sides = (way: string) =>
    [...way.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, , y]) => Math.sign(Number(y) - 30)).filter(Boolean);
  const [first, second] = d.split('M').filter(Boolean).map((way) => sides(`M${way}`)); // prettier-ignore
  expect(first!.length).toBeGreaterThan(4);
  expect(second).toEqual(first!.map((side) => -side));
});

test('coordinates keep to a ten-thousandth of a millimetre, without exponents', () => {
  const place = fc.double({ min: -1e5, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(place, place, (x, y) => {
      const svg = svgOf([{ kind: 'line', points: [[x, y], [0, 1e-9]], stroke: INK }], page); // prettier-ignore
      const [, a, b] = /M(-?[\d.]+) (-?[\d.]+)L0 0"/.exec(svg) ?? [];
      expect(Math.abs(Number(a) - x)).toBeLessThan(1e-4);
      expect(Math.abs(Number(b) - y)).toBeLessThan(1e-4);
    })
  );
  expect(() => svgOf([{ kind: 'circle', at: [NaN, 0], radius: 1 }], page)).toThrow(RangeError);
});

test('layers are groups by name, empty ones left out', () => {
  const layer = (name: string, drawings: Drawing[]): Layer => ({ kind: 'layer', name, drawings });
  const svg = svgOf(
    [layer('loops', [{ kind: 'circle', at: [1, 1], radius: 1, fill: '#000' }]), layer('marks', [])],
    page
  );
  expect(svg).toContain('<g id="loops">');
  expect(svg).not.toContain('marks');
});

describe('the plan', () => {
  test.each(SAMPLES)('%s: well formed, with the size that it says and named layers', async (name) => {
    const site = sample(name);
    const svg = await written(site);
    const picture = planPicture(site)!;
    expect(wellFormed(svg)).toBe(true);
    const [, width, height] = /<svg[^>]* width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
    expect(Number(width)).toBeCloseTo(picture.width, 3);
    expect(Number(height)).toBeCloseTo(picture.height, 3);
    for (const layer of ['loops', 'frame']) expect(svg).toContain(`<g id="${layer}">`);
    expect(svg).not.toContain('style=');
  });

  test('a loop of 1.8 m is as long on paper as the scale says, and its slot is rendered there', async () => {
    const loop = { ...bigSite(1).loops[0]!, name: 'L', tail: { length: 0 }, shape: { kind: 'rectangle' as const, centre: [100, 200] as Point, width: 1.8, length: 1.8, rotation: 0, cornerCut: 0 } }; // prettier-ignore
    const site: Site = { ...emptySite(), loops: [loop], sheet: { scale: 50 } };
    const svg = await written(site);
    const [, group = ''] = /<g id="loops">([\s\S]*?)<\/g>/.exec(svg) ?? [];
    const ways = [...group.matchAll(/<path d="([^"]+)Z" fill="none"/g)].map(([, d]) =>
      [...d!.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]): Point => [Number(x), Number(y)])
    );
    expect(ways).toHaveLength(1);
    const [a, b, c] = ways[0]!;
    // 1.8 m at 1:50 are 36 mm
    expect(Math.abs(Math.hypot(b![0] - a![0], b![1] - a![1]) - 36)).toBeLessThan(0.1);
    expect(Math.abs(Math.hypot(c![0] - b![0], c![1] - b![1]) - 36)).toBeLessThan(0.1);
    const { width, height } = planPicture(site)!;
    const isDark = await dark(svg, width, height);
    expect(isDark([a![0], (2 * a![1] + c![1]) / 3])).toBe(true);
    expect(isDark([a![0] + 6, a![1] + (c![1] > a![1] ? 6 : -6)])).toBe(false);
  });

  test('has a check bar of 100 mm', async () => {
    const svg = await written(bigSite(4));
    const [, group = ''] = /<g id="frame">([\s\S]*?)<\/g>/.exec(svg) ?? [];
    const level = [...group.matchAll(/d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)"/g)]
      .map(([, x, y, toX, toY]) => [Number(x), Number(y), Number(toX), Number(toY)] as const)
      .filter(([, y, , toY]) => y === toY);
    expect(level).toHaveLength(1);
    expect(Math.abs(level[0]![2] - level[0]![0] - 100)).toBeLessThan(0.1);
    const upright = [...group.matchAll(/d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)"/g)].filter(([, x, , toX]) => x === toX); // prettier-ignore
    const places = upright.map(([, x]) => Number(x));
    expect(Math.max(...places) - Math.min(...places)).toBeCloseTo(100, 3);
  });

  test('of 200 loops, of one far away, of nothing', async () => {
    const big = await written(bigSite(200));
    expect(wellFormed(big)).toBe(true);
    expect(big).toContain('>Loop 1</text>');
    // at 1:1000 not every label finds a place of its own
    expect(big.match(/>Loop \d+<\/text>/g)!.length).toBeGreaterThan(100);
    const loop = { ...bigSite(1).loops[0]!, tail: { length: 0 }, shape: { kind: 'circle' as const, centre: [20_000, -20_000] as Point, diameter: 2 } }; // prettier-ignore
    const far = await written({ ...emptySite(), loops: [loop], sheet: { scale: 100 } });
    expect(far).toMatch(/<circle cx="[\d.]{2,8}" cy="[\d.]{2,8}" r="10" fill="none"/);
    await expect(written(emptySite())).rejects.toThrow(Unfit);
  });

  test.each(HOSTILE)('a name such as %j is never markup', async (name) => {
    const [plain, harmed] = [await written(siteNamed('x')), await written(siteNamed(name))];
    expect(wellFormed(harmed)).toBe(true);
    const elements = (svg: string) => new Set([...svg.matchAll(/<([a-z]+)/gi)].map(([, element]) => element));
    expect([...elements(harmed)].filter((each) => !elements(plain).has(each))).toEqual([]);
    expect(harmed).not.toMatch(/<script|on\w+="|href/i);
    expect(harmed).not.toMatch(/[\u202A-\u202E\u2066-\u2069]/u);
  });

  test('a job that is ended makes no file', async () => {
    const ended = { signal: AbortSignal.abort(new Error('ended')), onShare: () => {} };
    const source = { site: bigSite(4), assessment: undefined as never, file: 'x' };
    await expect(planSvg(source, surroundings, ended)).rejects.toThrow('ended');
  });
});
