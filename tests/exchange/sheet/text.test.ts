import { fileURLToPath } from 'node:url';
import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clean, cleanLines } from '#exchange/sheet/text/clean';
import { widthOf } from '#scenes/paper-type';
import { shortened, widestWord, wrapped } from '#exchange/sheet/text/wrap';

const typeface = (file: string): string =>
  fileURLToPath(import.meta.resolve(`dejavu-fonts-ttf/ttf/${file}.ttf`));
GlobalFonts.registerFromPath(typeface('DejaVuSans'), 'Sheet');
GlobalFonts.registerFromPath(typeface('DejaVuSans-Bold'), 'Sheet Bold');
const context = createCanvas(10, 10).getContext('2d');
context.fontKerning = 'none';

/** As another program measures it, in millimetres for a type of one millimetre. */
function measured(text: string, bold: boolean): number {
  context.font = `1000px "${bold ? 'Sheet Bold' : 'Sheet'}"`;
  return context.measureText(text).width / 1000;
}

const LETTERS = [...'ABCxyzÄÖÜßéñçŁőŽ0123456789 .,;:!?()[]/\\+-−–—·…„“”’«»°²³µΩΔ⌀→≤≥×±½¼½ЖжΑω€£%&@#=<>|~'];
const written = fc.string({ unit: fc.constantFrom(...LETTERS), maxLength: 60 });
const face = fc.record({ size: fc.constantFrom(2.2, 2.5, 4), bold: fc.boolean() });

describe('the width of a text', () => {
  it.each([false, true])('is what the typeface says, bold: %s', (bold) => {
    for (const letter of LETTERS)
      expect(widthOf(letter, { size: 1, bold }), letter).toBeCloseTo(measured(letter, bold), 2);
  });

  it('is never less than what another program draws', () => {
    fc.assert(
      fc.property(written, fc.boolean(), (text, bold) => {
        expect(widthOf(text, { size: 1, bold })).toBeGreaterThanOrEqual(measured(text, bold) - 0.01);
      })
    );
  });

  it('takes letters that it does not know for wide ones', () => {
    expect(widthOf('水路', { size: 10 })).toBeGreaterThanOrEqual(20);
  });
});

describe('a text in a given width', () => {
  it('fits on every line and loses no word', () => {
    fc.assert(
      fc.property(written, face, fc.double({ min: 12, max: 80, noNaN: true }), (text, hand, width) => {
        const lines = wrapped(text, width, hand);
        for (const line of lines) expect(widthOf(line, hand)).toBeLessThanOrEqual(width + 1e-9);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      })
    );
  });

  it('breaks no word that fits', () => {
    const lines = wrapped('one two three four five six', 20, { size: 4 });
    expect(lines.join(' ')).toBe('one two three four five six');
    expect(lines.length).toBeGreaterThan(1);
  });

  it('ends in an ellipsis where lines are left out', () => {
    const text = 'word '.repeat(2_000);
    const lines = wrapped(text, 40, { size: 2.5 }, 3);
    expect(lines).toHaveLength(3);
    expect(lines[2]).toMatch(/…$/);
    expect(widthOf(lines[2]!, { size: 2.5 })).toBeLessThanOrEqual(40);
  });

  it('on one line is shortened only where it must be', () => {
    fc.assert(
      fc.property(written, face, fc.double({ min: 6, max: 80, noNaN: true }), (text, hand, width) => {
        const shown = shortened(text, width, hand);
        expect(widthOf(shown, hand)).toBeLessThanOrEqual(width + 1e-9);
        if (widthOf(text, hand) <= width) expect(shown).toBe(text);
        else expect(shown).toMatch(/…$/);
      })
    );
  });

  it('is quick about ten thousand letters, and about a single word of them', () => {
    const word = 'W'.repeat(10_000);
    expect(shortened(word, 50, { size: 2.5 })).toMatch(/^W{15,25}…$/);
    expect(wrapped(word, 50, { size: 2.5 }, 4)).toHaveLength(4);
    expect(widestWord('ab '.repeat(9_000), { size: 1 })).toBeLessThan(2);
  });

  it('keeps both halves of a character together', () => {
    const lines = wrapped('🚧'.repeat(30), 10, { size: 2.5 });
    for (const line of lines) expect(line.isWellFormed()).toBe(true);
    expect(lines.join('')).toBe('🚧'.repeat(30));
  });
});

describe('a text from a site', () => {
  it('cannot turn or hide what stands beside it', () => {
    expect(clean('\u202Egate\u202C\u0000 \u2066two\u2069\u200B\uFEFF')).toBe('gate two');
    expect(clean('a\tb\r\nc\u0007d')).toBe('a b c d');
    expect(clean('half \uD83D of it')).toBe('half  of it');
  });

  it('keeps what is written in other scripts', () => {
    expect(clean('שער חניה')).toBe('שער חניה');
    expect(clean('Zürich → Łódź 🚧')).toBe('Zürich → Łódź 🚧');
  });

  it('keeps its own lines where they are asked for', () => {
    expect(cleanLines('one\r\ntwo\u2028three\n\u202Efour')).toEqual(['one', 'two', 'three', 'four']);
  });
});
