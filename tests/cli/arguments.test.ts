import { describe, expect, it } from 'vitest';
import { readArguments } from '#cli/arguments';

describe('readArguments', () => {
  it('takes files and defaults to the whole report as JSON', () => {
    expect(readArguments(['a.json', 'b.json'])).toEqual({
      ok: true,
      request: {
        kind: 'report',
        files: ['a.json', 'b.json'],
        format: 'json',
        only: null,
        strict: false,
        language: 'en',
        output: null
      }
    });
  });

  it('takes options before, between and after files, in both spellings', () => {
    expect(readArguments(['--format=csv', 'a.json', '--only', 'loops', '--strict'])).toEqual({
      ok: true,
      request: {
        kind: 'report',
        files: ['a.json'],
        format: 'csv',
        only: 'loops',
        strict: true,
        language: 'en',
        output: null
      }
    });
  });

  it('takes the id of a circuit for a netlist, whichever option comes first', () => {
    const request = {
      kind: 'netlist',
      files: ['a.json'],
      only: 'C 1',
      strict: false,
      language: 'en',
      output: null
    };
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
    [['--format', 'csv', '--only', 'quantities'], 'takeoff-csv'],
    [['--only=readings', '--format=csv'], 'readings-csv'],
    [['--format', 'csv', '--only', 'cutting'], 'cutting-csv'],
    [['--format', 'xlsx'], 'takeoff-xlsx'],
    [['--format', 'xlsx', '--only', 'readings'], 'readings-xlsx'],
    [['--format', 'csv', '--only', 'measured'], 'measured-csv'],
    [['--format', 'xlsx', '--only', 'measured'], 'measured-xlsx'],
    [['--format', 'pdf'], 'sheet-pdf'],
    [['--format', 'pdf', '--only', 'sheet'], 'sheet-pdf'],
    [['--only=record', '--format=pdf'], 'record-pdf'],
    [['--format', 'pdf', '--only', 'form'], 'form-pdf'],
    [['--format', 'svg'], 'plan-svg'],
    [['--format', 'dxf'], 'plan-dxf']
  ])('%j is the file that the page makes', (words, file) => {
    const reading = readArguments(['a.json', ...words, '--output', 'b']);
    expect(reading.ok && reading.request).toMatchObject({ kind: 'file', file, output: 'b' });
  });

  it.each([
    [[], 'no file given'],
    [['a', '--output'], '--output expects the name of a file'],
    [['a', '--format', 'pdf', '--only', 'loops'], '--only expects one of sheet, record, form, found loops'],
    [['a', '--format', 'svg', '--only', 'loops'], '--only says nothing with --format svg'],
    [
      ['a', '--format', 'xlsx', '--only', 'loops'],
      '--only expects one of quantities, readings, measured, cutting, designs, found loops'
    ],
    [['a', '--format', 'json', '--only', 'measured'], '--only expects one of'],
    [['a', 'b', '--format', 'pdf'], 'one file of one site, found 2 files'],
    [['a', 'b', '--format', 'csv', '--only', 'quantities'], 'one file of one site, found 2 files'],
    [
      ['--format', 'xml', 'a'],
      '--format expects one of json, text, csv, netlist, xlsx, pdf, svg, dxf, found xml'
    ],
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
