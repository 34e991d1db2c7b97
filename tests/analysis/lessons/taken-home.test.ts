/** The site that a learner goes on with. */
import { afterEach, describe, expect, it } from 'vitest';
import { speakWhole } from '#i18n/whole';
import { siteTakenHome } from '#analysis/lessons/taken-home';
import { readSite, writeSite } from '#plan/read';
import { shelf } from './shelf';

const shelved = (id: string) => shelf.find(({ lesson }) => lesson.id === id)!;

describe('a site taken home', () => {
  afterEach(() => {
    speakWhole('en');
  });

  it('is named after the lesson and its curves, in the language that is spoken', () => {
    const { lesson, site } = shelved('figure-of-eight');
    expect(siteTakenHome(lesson, site).variants?.map(({ name }) => name)).toEqual(['figure of eight']);
    speakWhole('de');
    const german = siteTakenHome(lesson, site);
    expect(german.name).toBe(lesson.title.de);
    expect(german.variants?.map(({ name }) => name)).toEqual(['Acht']);
  });

  it('is the lesson’s in everything else', () => {
    const { lesson, site } = shelved('turns');
    expect(siteTakenHome(lesson, site)).toEqual({ ...site, name: lesson.title.en });
  });

  it.each(shelf)('of $file is a sound document', ({ lesson, site }) => {
    expect(readSite(writeSite(siteTakenHome(lesson, site)))).toMatchObject({ ok: true });
  });
});
