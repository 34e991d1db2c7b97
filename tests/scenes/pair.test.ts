import { describe, expect, it } from 'vitest';
import { BEAT_VERDICTS, type BeatVerdict } from '#analysis/results';
import type { Drawing, LineDrawing } from '#scenes/drawing';
import { pairScene, VERDICT_SIGNS } from '#scenes/pair';
import { DARK, LIGHT } from '#scenes/theme';
import { siteWith, square } from '../editor/sites';
import { editorOf, frameOf } from './frames';

/** Squares of 2 m, the first two 4 m apart from middle to middle, at 50 pixels a metre round the middle of 1000 by 800. */
const editor = editorOf(siteWith({ shapes: [square(-2, 0), square(2, 0), square(0, 6)] }));
const between = (a: string, b: string, verdict: BeatVerdict = 'watch', theme = LIGHT) =>
  pairScene(frameOf(editor, { pointed: { a, b, verdict }, theme }));
const lines = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is LineDrawing => each.kind === 'line');

describe('a pair on the plan', () => {
  it('is not drawn when nobody points at one', () => {
    expect(pairScene(frameOf(editor))).toEqual([]);
  });

  it('outlines the loops of both and joins their middles, with the sign half way', () => {
    const drawn = between('C1', 'C2');
    const outlines = lines(drawn).filter(({ closed }) => closed);
    expect(outlines).toHaveLength(2);
    expect(outlines[0]!.points).toContainEqual([350, 450]);
    expect(lines(drawn).find(({ closed }) => !closed)!.points).toEqual([
      [400, 400],
      [600, 400]
    ]);
    expect(drawn.find(({ kind }) => kind === 'text')).toMatchObject({ at: [500, 400], text: '◆' });
  });

  it('takes all loops of a circuit of several', () => {
    const { site } = editor.state;
    const [first, second, third] = site.circuits;
    const both = { ...first!, strings: [...first!.strings, ...third!.strings] };
    const frame = frameOf(editor, { site: { ...site, circuits: [both, second!] } });
    const drawn = lines(pairScene({ ...frame, pointed: { a: 'C1', b: 'C2', verdict: 'clear' } }));
    expect(drawn.filter(({ closed }) => closed)).toHaveLength(3);
    // The middle of loops at (−2, 0) and (0, 6), whose box reaches from −3 to 1 and from −1 to 7.
    expect(drawn.find(({ closed }) => !closed)!.points[0]).toEqual([450, 250]);
  });

  it('tells the verdicts apart by sign, by dash and by a colour of the theme', () => {
    for (const theme of [LIGHT, DARK]) {
      const looks = BEAT_VERDICTS.map((verdict) => lines(between('C1', 'C2', verdict, theme))[0]!.stroke!);
      expect(looks.map(({ colour }) => colour)).toEqual([theme.call, theme.caution, theme.problem]);
      expect(new Set(looks.map(({ dash }) => String(dash))).size).toBe(3);
    }
    expect(new Set(Object.values(VERDICT_SIGNS)).size).toBe(3);
  });

  it('leaves out what is no longer on the plan', () => {
    expect(lines(between('C1', 'gone'))).toHaveLength(1);
    expect(between('gone', 'C2').some(({ kind }) => kind === 'text')).toBe(false);
    expect(between('gone', 'gone too')).toEqual([]);
  });
});
