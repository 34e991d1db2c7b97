import { afterAll, describe, expect, it } from 'vitest';
import { LANGUAGES } from '#i18n/message';
import { speakWhole } from '#i18n/whole';
import { builtInCables } from '#plan/catalogue/cables';
import { pavements } from '#plan/catalogue/pavements';
import { builtInUnits } from '#plan/catalogue/units';
import { catalogueVehicles, listedVehicle } from '#plan/catalogue/vehicles';
import { builtInWires } from '#plan/catalogue/wires';
import { demoSite } from '#plan/demo';
import { readSite, writeSite } from '#plan/read';
import { situations } from '#plan/situations/index';

afterAll(() => {
  speakWhole('en');
});

const all = [builtInWires, builtInCables, pavements, builtInUnits, catalogueVehicles].flat();

describe.each(LANGUAGES)('in %s', (language) => {
  it('every entry of the catalogue, and every part of a vehicle, has a name', () => {
    speakWhole(language);
    const parts = catalogueVehicles.flatMap((vehicle) => vehicle.parts.flatMap(({ name }) => name ?? []));
    const sources = catalogueVehicles.map(({ source }) => source ?? '');
    const names = [...all.map(({ name }) => name), ...parts, ...sources];
    expect(parts.length).toBeGreaterThan(20);
    // a key that has no message is said as it stands
    expect(names.filter((name) => /^(catalogue|source)\./.test(name) || name === '')).toEqual([]);
  });

  it('every situation says what it is, and builds a site that can be read back', () => {
    speakWhole(language);
    for (const { title, description, build } of situations) {
      expect(`${title} ${description}`).not.toContain('situation.');
      const text = writeSite(build());
      expect(text).not.toMatch(/"(named|situation|demo|site|unit)\./);
      expect(readSite(text).ok).toBe(true);
    }
    expect(writeSite(demoSite())).not.toMatch(/"(named|demo|site|unit)\./);
  });
});

describe('another language', () => {
  it('renames what the catalogue offers and leaves what a site took from it', () => {
    speakWhole('en');
    expect(listedVehicle('van')?.name).toBe('Delivery van');
    const taken = structuredClone(listedVehicle('van')!);
    speakWhole('de');
    expect(listedVehicle('van')?.name).toBe('Lieferwagen');
    expect(taken.name).toBe('Delivery van');
  });
});
