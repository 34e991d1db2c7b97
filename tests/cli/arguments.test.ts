import { describe, expect, it } from 'vitest';
import { readArguments } from '#cli/arguments';

describe('readArguments', () => {
  it('takes files and defaults to the whole report as JSON', () => {
    expect(readArguments(['a.json', 'b.json'])).toEqual({
      ok: true,
      request: { files: ['a.json', 'b.json'], format: 'json', only: null, strict: false, language: 'en' }
    });
  });

  it('takes options before, between and after files, in both spellings', () => {
    expect(readArguments(['--format=csv', 'a.json', '--only', 'loops', '--strict'])).toEqual({
      ok: true,
      request: { files: ['a.json'], format: 'csv', only: 'loops', strict: true, language: 'en' }
    });
  });

  it('takes the id of a circuit for a netlist, whichever option comes first', () => {
    const request = { files: ['a.json'], format: 'netlist', only: 'C 1', strict: false, language: 'en' };
    expect(readArguments(['a.json', '--only', 'C 1', '--format=netlist'])).toEqual({ ok: true, request });
    expect(readArguments(['a.json', '--format', 'netlist', '--only=C 1'])).toEqual({ ok: true, request });
    expect(readArguments(['a.json', '--format', 'netlist'])).toEqual({
      ok: true,
      request: { ...request, only: null }
    });
  });

  it('takes a language', () => {
    const reading = readArguments(['a.json', '--language=de']);
    expect(reading.ok && reading.request.language).toBe('de');
  });

  it.each([
    [[], 'no file given'],
    [['--format', 'xml', 'a'], '--format expects one of json, text, csv, netlist, found xml'],
    [['a', '--only'], '--only expects one of'],
    [['a', '--only', 'C1'], '--only expects one of'],
    [['a', '--strict', '--format', 'netlist'], '--strict looks at findings'],
    [['a', '--language', 'fr'], '--language expects one of en, de, found fr'],
    [['a', '--fast'], 'unknown option --fast'],
    [['a', '--strict=yes'], 'unknown option --strict=yes']
  ])('refuses %j', (words, sentence) => {
    const reading = readArguments(words);
    expect(reading.ok ? '' : reading.message).toContain(sentence);
  });
});
