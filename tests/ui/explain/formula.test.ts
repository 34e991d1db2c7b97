import { describe, expect, it } from 'vitest';
import { readFormula } from '#ui/explain/formula';

describe('formulas', () => {
  it('reads names, numbers and operators one after the other', () => {
    expect(readFormula('L = 2π f')).toEqual({
      kind: 'row',
      items: [
        { kind: 'name', text: 'L' },
        { kind: 'operator', text: '=' },
        { kind: 'number', text: '2' },
        { kind: 'name', text: 'π' },
        { kind: 'name', text: 'f' }
      ]
    });
  });

  it('reads fractions, roots and scripts into one another', () => {
    expect(readFormula('frac{1}{sqrt{L_1 C^2}}')).toEqual({
      kind: 'fraction',
      top: { kind: 'number', text: '1' },
      bottom: {
        kind: 'root',
        of: {
          kind: 'row',
          items: [
            {
              kind: 'script',
              base: { kind: 'name', text: 'L' },
              below: { kind: 'number', text: '1' },
              above: null
            },
            {
              kind: 'script',
              base: { kind: 'name', text: 'C' },
              below: null,
              above: { kind: 'number', text: '2' }
            }
          ]
        }
      }
    });
  });

  it('takes both scripts of one base in either order', () => {
    expect(readFormula('φ_i^T')).toMatchObject({ below: { text: 'i' }, above: { text: 'T' } });
    expect(readFormula('φ^T_i')).toMatchObject({ below: { text: 'i' }, above: { text: 'T' } });
  });

  it.each(['frac{1}', 'sqrt{2', 'x_', 'a } b'])('refuses %s', (text) => {
    expect(() => readFormula(text)).toThrow(SyntaxError);
  });
});
