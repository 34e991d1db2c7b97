/** A label a loop: name, turns, one live figure, how far its circuit is from a call, and whether something is wrong. */
import type { Severity } from '#analysis/results';
import type { Loop, Point } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { textWidth, type Drawing } from '../drawing';
import { drawnBox, isInSight, onScreen, type Call, type Frame } from '../frame';
import type { Theme } from '../theme';

const NAME_SIZE = 12;
const TEXT_SIZE = 11;
const LINE_HEIGHT = 16;
/** Pixels: the label of a loop that is smaller than this on the screen would only hide it. */
const SMALLEST = 16;
const BAR = { width: 64, height: 5, fullAt: 2 } as const;

const SIGNS: Readonly<Record<Severity, string>> = { problem: '▲ ', caution: '◆ ', note: '' };

/** In words as well, so that nothing depends on seeing the colour. */
export function callText({ ratio }: Call): string {
  const times = ratio >= 10 ? ratio.toFixed(0) : ratio.toFixed(ratio >= 1 ? 1 : 2);
  return ratio >= 1 ? `call ${times}×` : `${times}×`;
}

/** The strip under the label: full at twice the threshold, with a tick at the threshold. */
function bar(call: Call, [x, y]: Point, theme: Theme): Drawing[] {
  const share = Math.min(1, Math.max(0, call.ratio / BAR.fullAt));
  const colour = call.ratio >= 1 ? theme.call : theme.inkSoft;
  const left = x - BAR.width / 2;
  const at = (along: number): Point => [left + along * BAR.width, y];
  const tick = left + BAR.width / BAR.fullAt;
  return [
    { kind: 'line', points: [at(0), at(1)], stroke: { colour: theme.plate, width: BAR.height } },
    { kind: 'line', points: [at(0), at(share)], stroke: { colour, width: BAR.height } },
    {
      kind: 'line',
      points: [[tick, y - BAR.height], [tick, y + BAR.height]], // prettier-ignore
      stroke: { colour: theme.ink, width: 1 }
    }
  ];
}

interface Lines {
  readonly name: string;
  readonly facts: string;
  readonly call: Call | undefined;
}

function linesOf(loop: Loop, { figures, severities, calls }: Frame): Lines {
  const severity = severities.get(loop.id);
  const sign = severity ? SIGNS[severity] : '';
  const figure = figures.get(loop.id) ?? '';
  const turns = `${loop.turns} ${loop.turns === 1 ? 'turn' : 'turns'}`;
  const name = loop.name || loop.id;
  return {
    name: `${sign}${name}`,
    facts: figure === '' ? turns : `${turns} · ${figure}`,
    call: calls.get(loop.id)
  };
}

/** In the middle of the loop where it fits, else to its right. */
function place(outline: readonly Point[], width: number, height: number): Point | null {
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  if (Math.max(right - left, bottom - top) < SMALLEST) return null;
  const fits = right - left > width + 8 && bottom - top > height + 8;
  return fits ? [(left + right) / 2, (top + bottom) / 2] : [right + 10 + width / 2, (top + bottom) / 2];
}

function labelDrawings(loop: Loop, frame: Frame): Drawing[] {
  const { theme, state } = frame;
  const { name, facts, call } = linesOf(loop, frame);
  const facts2 = call ? `${facts} · ${callText(call)}` : facts;
  const width = Math.max(textWidth(name, NAME_SIZE), textWidth(facts2, TEXT_SIZE));
  const at = place(onScreen(state.viewport, outlineOf(loop.shape)), width, 2 * LINE_HEIGHT);
  if (!at) return [];
  const severity = frame.severities.get(loop.id);
  const colour = severity === 'problem' || severity === 'caution' ? theme[severity] : theme.ink;
  const text = { kind: 'text', align: 'center', plate: theme.plate } as const;
  const above: Point = [at[0], at[1] - LINE_HEIGHT / 2];
  const below: Point = [at[0], at[1] + LINE_HEIGHT / 2];
  return [
    { ...text, at: above, text: name, colour, size: NAME_SIZE, bold: true },
    { ...text, at: below, text: facts2, colour: theme.ink, size: TEXT_SIZE },
    ...(call ? bar(call, [at[0], at[1] + LINE_HEIGHT * 1.5 - 2], theme) : [])
  ];
}

export function labelsScene(frame: Frame): Drawing[] {
  if (!frame.showsLabels) return [];
  const sight = drawnBox(frame.state.viewport);
  return frame.site.loops
    .filter((loop) => isInSight(outlineOf(loop.shape), sight))
    .flatMap((loop) => labelDrawings(loop, frame));
}
