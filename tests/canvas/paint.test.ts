import type { Point } from '#plan/schema';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '#scenes/drawing';
import { paint, type Context } from '#canvas/paint';

/** Writes down what a canvas would be told. */
function recorder() {
  const calls: string[] = [];
  const context = new Proxy(
    {},
    {
      get:
        (_, name: string) =>
        (...values: unknown[]) => {
          const written = values
            .flat()
            .map((value) => (typeof value === 'number' ? Number(value.toFixed(6)) : value));
          calls.push(`${name}(${written.join(' ')})`);
          return name === 'measureText' ? { width: 40 } : undefined;
        },
      set: (_, name: string, value) => {
        calls.push(`${name}=${String(value)}`);
        return true;
      }
    }
  );
  return { calls, context: context as unknown as Context };
}

function painted(...drawings: Drawing[]): string[] {
  const { calls, context } = recorder();
  paint(context, drawings);
  return calls.slice(2);
}

describe('paint', () => {
  it('fills before it strokes and closes what is closed', () => {
    expect(
      painted({
        kind: 'line',
        points: [[0, 0], [5, 0], [5, 5]], // prettier-ignore
        closed: true,
        fill: 'grey',
        stroke: { colour: 'black', width: 2, dash: [3, 1] }
      })
    ).toEqual([
      'beginPath()',
      'moveTo(0 0)',
      'lineTo(5 0)',
      'lineTo(5 5)',
      'closePath()',
      'fillStyle=grey',
      'fill()',
      'strokeStyle=black',
      'lineWidth=2',
      'setLineDash(3 1)',
      'stroke()'
    ]);
  });

  it('fills all rings at once, so that holes stay open', () => {
    const ring = (side: number): Point[] => [[0, 0], [side, 0], [0, side]]; // prettier-ignore
    const calls = painted({ kind: 'rings', rings: [ring(9), ring(3)], fill: 'grey' });
    expect(calls.filter((call) => /^(beginPath|closePath|fill)\(/.test(call))).toEqual([
      'beginPath()',
      'closePath()',
      'closePath()',
      'fill()'
    ]);
  });

  it('forgets the dashes of the line before', () => {
    const line = { kind: 'line', points: [[0, 0], [1, 1]] } as const; // prettier-ignore
    const calls = painted(
      { ...line, stroke: { colour: 'red', width: 1, dash: [2, 2] } },
      { ...line, stroke: { colour: 'red', width: 1 } }
    );
    expect(calls.filter((call) => call.startsWith('setLineDash'))).toEqual([
      'setLineDash(2 2)',
      'setLineDash()'
    ]);
  });

  it('puts the plate of a text where the text will be', () => {
    const text = {
      kind: 'text',
      at: [100, 50],
      text: 'Exit',
      colour: 'black',
      size: 10,
      plate: 'white'
    } as const;
    const plateOf = (align: 'left' | 'center' | 'right') =>
      painted({ ...text, align }).find((call) => call.startsWith('rect'));
    expect(plateOf('left')).toBe('rect(96 42.8 48 14.4)');
    expect(plateOf('center')).toBe('rect(76 42.8 48 14.4)');
    expect(plateOf('right')).toBe('rect(56 42.8 48 14.4)');
  });

  it('draws circles whole', () => {
    expect(painted({ kind: 'circle', at: [3, 4], radius: 5, fill: 'red' })).toContain(
      'arc(3 4 5 0 6.283185)'
    );
  });
});
