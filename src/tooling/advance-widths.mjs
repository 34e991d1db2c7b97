// Writes how wide the characters of the sheets' typeface are, so that a sheet can be laid out without the typeface at hand;
// run it again when the typeface's package changes.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './fingerprint.mjs';

const FOLDER = 'node_modules/dejavu-fonts-ttf/ttf';
const TARGET = 'src/scenes/advance-widths.json';
/**
 * What names and tables are written with, from the first character of a range to the last: European scripts, Hebrew and
 * Arabic letters, punctuation, symbols. Other characters are rare enough to be taken for wide ones.
 */
const RANGES = [
  [0x20, 0x6ff],
  [0x1e00, 0x26ff]
];
const LAST = 0xffff;

/** @param {string} file */
function readFont(file) {
  const bytes = readFileSync(join(ROOT, FOLDER, file));
  /** @type {Record<string, number>} */
  const tables = {};
  for (let at = 12, left = bytes.readUInt16BE(4); left > 0; left--, at += 16)
    tables[bytes.toString('latin1', at, at + 4)] = bytes.readUInt32BE(at + 8);
  const start = (/** @type {string} */ name) => {
    const found = tables[name];
    if (found === undefined) throw new Error(`${file} has no table ${name}`);
    return found;
  };
  const unitsPerEm = bytes.readUInt16BE(start('head') + 18);
  const metrics = bytes.readUInt16BE(start('hhea') + 34);
  const widthOf = (/** @type {number} */ glyph) =>
    bytes.readUInt16BE(start('hmtx') + 4 * Math.min(glyph, metrics - 1));
  return { unitsPerEm, widthOf, glyphs: glyphsOf(bytes, start('cmap')) };
}

/**
 * By character, from the table of 16 bit (format 4 of the OpenType specification).
 * @param {Buffer} bytes
 * @param {number} cmap
 */
function glyphsOf(bytes, cmap) {
  /** @type {Map<number, number>} */
  const glyphs = new Map();
  const table = Array.from({ length: bytes.readUInt16BE(cmap + 2) }, (_, index) =>
    bytes.readUInt32BE(cmap + 8 + 8 * index)
  ).find((offset) => bytes.readUInt16BE(cmap + offset) === 4);
  if (table === undefined) throw new Error('no table of characters in format 4');
  const base = cmap + table;
  const doubled = bytes.readUInt16BE(base + 6);
  for (let at = 0; at < doubled; at += 2) {
    const last = bytes.readUInt16BE(base + 14 + at);
    const first = bytes.readUInt16BE(base + 16 + doubled + at);
    const delta = bytes.readUInt16BE(base + 16 + 2 * doubled + at);
    const rangeAt = base + 16 + 3 * doubled + at;
    const range = bytes.readUInt16BE(rangeAt);
    for (let code = first; code <= Math.min(last, LAST); code++) {
      const listed = range === 0 ? code : bytes.readUInt16BE(rangeAt + range + 2 * (code - first));
      const glyph = range === 0 || listed !== 0 ? (listed + delta) & 0xffff : 0;
      const isWanted = RANGES.some(([from, to]) => code >= (from ?? 0) && code <= (to ?? 0));
      if (glyph !== 0 && isWanted) glyphs.set(code, glyph);
    }
  }
  return glyphs;
}

/**
 * Runs of characters of one width: where the run begins, how many it has, thousandths of the type's size.
 * @param {string} file
 */
function runsOf(file) {
  const { unitsPerEm, widthOf, glyphs } = readFont(file);
  /** @type {[number, number, number][]} */
  const runs = [];
  for (const [code, glyph] of [...glyphs].sort(([a], [b]) => a - b)) {
    const width = Math.ceil((widthOf(glyph) * 1000) / unitsPerEm);
    const last = runs.at(-1);
    if (last && last[0] + last[1] === code && last[2] === width) last[1]++;
    else runs.push([code, 1, width]);
  }
  return runs.map((run) => run.join(' ')).join(',');
}

writeFileSync(
  join(ROOT, TARGET),
  `${JSON.stringify({ regular: runsOf('DejaVuSans.ttf'), bold: runsOf('DejaVuSans-Bold.ttf') })}\n`
);
