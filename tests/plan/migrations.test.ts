import { describe, expect, it } from 'vitest';
import { type Migration, migrate, migrations, newestVersion } from '#plan/migrations/index';
import { headerProblem } from '#plan/reading/header';
import { site } from '#plan/schema';

const invented: readonly Migration[] = [
  { what: 'width became span', apply: ({ width, ...rest }) => ({ ...rest, span: width }) },
  {
    what: 'span is counted in halves',
    apply: ({ span, ...rest }) => ({ ...rest, halfSpan: Number(span) / 2 })
  }
];

describe('migrations', () => {
  it('bring a document through every later version, in order', () => {
    const oldest = { format: 'x', version: 1, width: 8, kept: [1, 2] };
    expect(migrate(oldest, 1, invented)).toEqual({ format: 'x', version: 3, halfSpan: 4, kept: [1, 2] });
    expect(oldest).toEqual({ format: 'x', version: 1, width: 8, kept: [1, 2] });
  });

  it('start where the document stands', () => {
    expect(migrate({ version: 2, span: 6 }, 2, invented)).toEqual({ version: 3, halfSpan: 3 });
    const newest = { version: 3, halfSpan: 3 };
    expect(migrate(newest, 3, invented)).toBe(newest);
  });

  it('decide which versions are known', () => {
    const versioned = (version: number) => ({ format: 'kerfline-site', version });
    expect(newestVersion(invented)).toBe(3);
    expect(headerProblem(versioned(3), invented)).toBeNull();
    expect(headerProblem(versioned(4), invented)?.message).toContain('version 4; this one reads up to 3');
    expect(headerProblem(versioned(0), invented)?.expected).toBe('a whole number from 1 to 3');
  });

  it('end at the version that the schema describes', () => {
    expect(site.shape.version.value).toBe(newestVersion(migrations));
  });
});
