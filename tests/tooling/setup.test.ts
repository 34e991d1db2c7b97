import { cpSync, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { ROOT } from '../../src/tooling/fingerprint.mjs';
import { isSupportedNode } from '../../src/tooling/setup.mjs';

describe('the versions of Node', () => {
  test.each(['20.19.0', '20.20.2', '22.12.0', '23.0.0', '24.1.0'])('%s is supported', (version) => {
    expect(isSupportedNode(version)).toBe(true);
  });

  test.each(['18.20.8', '20.18.3', '21.7.3', '22.11.0'])('%s is not', (version) => {
    expect(isSupportedNode(version)).toBe(false);
  });
});

describe('the fingerprint of files', () => {
  let clone: string;
  let fingerprint: (paths: string[], words?: string[]) => string;

  beforeEach(async () => {
    clone = mkdtempSync(join(tmpdir(), 'kerfline-'));
    mkdirSync(join(clone, 'src', 'tooling'), { recursive: true });
    mkdirSync(join(clone, 'data'));
    writeFileSync(join(clone, 'data', 'a.txt'), 'one');
    writeFileSync(join(clone, 'data', 'b.txt'), 'two');
    const script = join(clone, 'src', 'tooling', 'fingerprint.mjs');
    cpSync(join(ROOT, 'src', 'tooling', 'fingerprint.mjs'), script);
    const module = (await import(/* @vite-ignore */ pathToFileURL(script).href)) as {
      fingerprint: typeof fingerprint;
    };
    fingerprint = module.fingerprint;
  });

  afterEach(() => {
    rmSync(clone, { recursive: true });
  });

  test('stays when a file is written again with the same bytes', () => {
    const before = fingerprint(['data']);
    writeFileSync(join(clone, 'data', 'a.txt'), 'one');
    expect(fingerprint(['data', 'missing'])).toBe(before);
  });

  test('changes with a byte, a name, a new file and a word', () => {
    const seen = [fingerprint(['data']), fingerprint(['data'], ['word'])];
    writeFileSync(join(clone, 'data', 'a.txt'), 'One');
    seen.push(fingerprint(['data']));
    renameSync(join(clone, 'data', 'a.txt'), join(clone, 'data', 'c.txt'));
    seen.push(fingerprint(['data']));
    writeFileSync(join(clone, 'data', 'd.txt'), '');
    seen.push(fingerprint(['data']));
    expect(new Set(seen).size).toBe(seen.length);
  });
});
