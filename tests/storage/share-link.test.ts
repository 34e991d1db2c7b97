import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deflateRawSync } from 'node:zlib';
import { readSite, writeSite } from '#plan/read';
import { crc32 } from '#storage/crc';
import { looksLikeLink, readLink, writeLink } from '#storage/share-link';
import { damageValue } from '../fuzz/mutations';
import { seeded } from '../fuzz/random';
import { samples } from '../plan/samples';

const text = '{"format":"kerfline-site","version":1,"name":"Überweg 7 – Straße ✓"}';

describe('the checksum', () => {
  test('is the one of the standard', () => {
    // The check value that every description of CRC-32 gives.
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
    expect(crc32(new Uint8Array())).toBe(0);
  });
});

describe('a link', () => {
  test('gives back any text, and says whether pictures were left out', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 2000 }), fc.boolean(), async (any, left) => {
        const link = await writeLink(any, left);
        expect(link).toMatch(/^#site=[\w.-]+$/);
        expect(await readLink(link)).toEqual({ kind: 'text', text: any, isWithoutPictures: left });
      }),
      { seed: 7, numRuns: 100 }
    );
  });

  test('gives back sites that were changed at random, and they read as they were', async () => {
    let read = 0;
    for (let seed = 1; seed <= 300; seed++) {
      const random = seeded(seed);
      const document = JSON.parse(random.pick(samples).text) as Record<string, unknown>;
      damageValue(document, random);
      const before = readSite(JSON.stringify(document));
      if (!before.ok) continue;
      read++;
      const found = await readLink(await writeLink(JSON.stringify(before.site), false));
      const after = found.kind === 'text' ? readSite(found.text) : null;
      expect(after?.ok && writeSite(after.site), `seed ${seed}`).toBe(writeSite(before.site));
    }
    expect(read).toBeGreaterThan(50);
  });

  test('that was cut anywhere is refused, and said to be cut while it can be known', async () => {
    const link = await writeLink(text, false);
    for (let end = 0; end < link.length; end++) {
      const { kind } = await readLink(link.slice(0, end));
      expect(['cut', 'none']).toContain(kind);
      if (end >= '#site'.length) expect(kind).toBe('cut');
    }
  });

  test('with any one character changed is refused', async () => {
    const link = await writeLink(text, true);
    for (let at = 1; at < link.length; at++) {
      for (const other of ['A', 'z', '0', '.', '-', '%']) {
        if (link[at] === other) continue;
        const changed = link.slice(0, at) + other + link.slice(at + 1);
        expect((await readLink(changed)).kind, changed).not.toBe('text');
      }
    }
  });

  test('with something added is refused', async () => {
    const link = await writeLink(text, false);
    for (const more of ['A', '.', '.AAAA', '%20', '&x=1'])
      expect((await readLink(link + more)).kind).toBe('damaged');
  });

  test('of a newer kind is said to be one', async () => {
    const link = await writeLink(text, false);
    expect((await readLink(link.replace('=1.', '=2.'))).kind).toBe('newer');
  });

  test('that adds up but unfolds to gigabytes is refused without filling the memory', async () => {
    const payload = deflateRawSync(Buffer.alloc(60_000_000)).toString('base64url');
    const sum = crc32(new TextEncoder().encode(`1.${payload.length}.${payload}`));
    const link = `#site=1.${payload.length}.${sum.toString(16).padStart(8, '0')}.${payload}`;
    expect((await readLink(link)).kind).toBe('damaged');
  });

  test('is told from an anchor within the page', () => {
    expect(looksLikeLink('')).toBe(false);
    expect(looksLikeLink('#main')).toBe(false);
    expect(looksLikeLink('#site=1.4')).toBe(true);
  });
});
