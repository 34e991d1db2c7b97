/** Files that are no document at all, or one that is made to hurt. */
import { describe, expect, it } from 'vitest';
import { readSite } from '#plan/read';
import { soundDocument } from './sound-document';

const first = (text: string) => {
  const reading = readSite(text);
  if (reading.ok) throw new Error('was read');
  return reading.problems[0]!;
};
const head = '{"format":"kerfline-site","version":1';

describe('text that is not JSON', () => {
  it.each([
    ['', 'an empty file', 'a site document'],
    [' \n\t', 'an empty file', 'a site document'],
    ['hello', '"hello"', 'a value'],
    ['{', 'the end of the file', 'a name in double quotes or "}"'],
    ['{"a":1,}', '"}"', 'a name in double quotes'],
    ["{'a':1}", `"'"`, 'a name in double quotes or "}"'],
    ['{"a" 1}', '"1"', '":"'],
    ['{"a":1 "b":2}', '"""', '"," or "}"'],
    ['[1,]', '"]"', 'a value'],
    ['[1 2]', '"2"', '"," or "]"'],
    ['[1}', '"}"', '"," or "]"'],
    ['{"a":01}', '"1"', '"," or "}"'],
    ['{"a":.5}', '".5"', 'a value'],
    ['{"a":NaN}', '"NaN"', 'a value'],
    ['{"a":-Infinity}', '"-Infinity"', 'a value'],
    ['{} {}', '"{"', 'the end of the file'],
    ['{"a":"\\x"}', '"\\"', 'a known escape after the backslash'],
    ['{"a":"b', 'the end of the file', 'a closing double quote'],
    ['<html></html>', '"<"', 'a value'],
    ['%PDF-1.7', '"%"', 'a value'],
    ['\u0000\u0001', 'a line break or control character', 'a value']
  ])('%j', (text, found, expected) => {
    expect(first(text)).toMatchObject({ path: '', found, expected });
  });

  it('is placed by line and column', () => {
    expect(first('{\n  "a": 1,\n  "b": tru\n}').message).toContain('line 3, column 8');
    expect(first('{"a":"two\nlines"}').message).toContain('line 1, column 10');
  });

  it('is placed after texts of megabytes too', () => {
    expect(first(`["${'a'.repeat(4_000_000)}", oops]`).message).toContain('column 4000006');
  });
});

describe('JSON that is not a site', () => {
  it.each([
    ['[]', 'a list of 0 entries'],
    ['null', 'null'],
    ['3', '3'],
    ['"kerfline-site"', '"kerfline-site" (text)'],
    ['true', 'true']
  ])('%s', (text, found) => {
    expect(first(text)).toMatchObject({ path: '', found, expected: 'an object' });
  });

  it('says so plainly when a newer program wrote it', () => {
    expect(first('{"format":"kerfline-site","version":7}').message).toBe(
      'version: the file was written by a newer version of Kerfline (version 7; this one reads up to 1).'
    );
  });
});

describe('JSON that is made to hurt', () => {
  it.each(['__proto__', 'constructor', 'prototype'])('refuses the name %s at any depth', (name) => {
    expect(first(`${head},"${name}":{"polluted":1}}`)).toMatchObject({
      path: name,
      expected: 'another name'
    });
    expect(first(`${head},"notes":"","more":[{"${name}":1}]}`).path).toBe(`more[0].${name}`);
    expect({}).not.toHaveProperty('polluted');
  });

  it('refuses numbers that overflow, in known and in unknown fields', () => {
    expect(first(`${head},"temperature_C":1e999}`)).toMatchObject({
      path: 'temperature_C',
      found: 'a number too large to hold'
    });
    expect(first(`${head},"more":[-1e999]}`)).toMatchObject({ path: 'more[0]', expected: 'a finite number' });
  });

  it('refuses nesting, however deep', () => {
    const nested = (depth: number) => `${head},"more":${'['.repeat(depth)}${']'.repeat(depth)}}`;
    expect(readSite(nested(31)).ok).toBe(true);
    expect(first(nested(40)).found).toBe('more than 32 levels of nesting');
    expect(first(nested(1_000_000)).expected).toMatch(/at most 32 levels/);
    expect(first('['.repeat(1_000_000)).expected).toBe('a value or "]"');
  });

  it('refuses lists and files without measure', () => {
    expect(first(`${head},"more":[${'0,'.repeat(10_000)}0]}`).found).toBe('a list of 10001 entries');
    expect(first(`${head},"more":[${'[0,0,0,0],'.repeat(9_999)}0]}`.padEnd(33 * 1024 * 1024))).toMatchObject({
      found: '33.0 million characters'
    });
    const wide = JSON.stringify(Array.from({ length: 9_000 }, () => Array<number>(200).fill(0)));
    expect(first(`${head},"more":${wide}}`).found).toBe('more than 1000000 values');
  });
});

describe('harmless habits', () => {
  it('reads a byte order mark away', () => {
    expect(readSite(`\uFEFF${JSON.stringify(soundDocument())}`).ok).toBe(true);
  });

  it.each(['metric', 'imperial'])('takes units "%s" for the display system', (units) => {
    const reading = readSite(`${head},"units":"${units}"}`);
    expect(reading).toMatchObject({ ok: true, site: { displayUnits: units, units: [] } });
  });

  it('keeps a strange path readable', () => {
    expect(first(`${head},"a b":{"\\u0007":[1e999]}}`).path).toBe('["a b"][" "][0]');
  });
});
