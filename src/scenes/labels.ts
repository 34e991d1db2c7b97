/** A label a loop: name, turns, one live figure, how far its circuit is from a call, and whether something is wrong. */
import { fixed } from '#units/digits';
import type { Severity } from '#analysis/results';
import { t } from '#i18n/message';
import type { Loop, Point } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { boxAround, type Box } from '#editor/geometry/box';
import { includesRef } from '#editor/selection';
import { visibleBox } from '#editor/viewport';
import { line, shortened, textWidth, type Drawing } from './drawing';
import { sectionObstacles } from './field';
import { isInSight, onScreen, type Call, type Frame } from './frame';
import { furnitureBoxes } from './furniture';
import { tapeObstacles } from './help';
import type { Theme } from './theme';
import { boxAbout, placeLabels, type Place, type Want } from './label-places';

const NAME_SIZE = 12;
const TEXT_SIZE = 11;
const LINE_HEIGHT = 16;
/** Pixels: the label of a loop that is smaller than this on the screen would only hide it. */
const SMALLEST = 16;
/** More labels than this nobody reads. */
const CROWD = 80;
/** Characters: a longer name would lie over the plan. */
const LONGEST_NAME = 36;
const BAR = { width: 64, height: 5, fullAt: 2 } as const;

const SIGNS: Readonly<Record<Severity, string>> = { problem: '▲ ', caution: '◆ ', note: '' };

/** In words as well, so that nothing depends on seeing the colour. */
export function callText({ ratio }: Call): string {
  const times = fixed(ratio, ratio >= 10 ? 0 : ratio >= 1 ? 1 : 2);
  return ratio >= 1 ? t('plan.call', { times }) : `${times}×`;
}

/** The strip under the label: full at twice the threshold, with a tick at the threshold. */
function bar(call: Call, [x, y]: Point, theme: Theme): Drawing[] {
  const share = Math.min(1, Math.max(0, call.ratio / BAR.fullAt));
  const left = x - BAR.width / 2;
  const at = (along: number): Point => [left + along * BAR.width, y];
  const tick = left + BAR.width / BAR.fullAt;
  return [
    line([at(0), at(1)], { colour: theme.inkSoft, width: 1 }),
    line([at(0), at(share)], { colour: call.ratio >= 1 ? theme.call : theme.inkSoft, width: BAR.height }),
    line([[tick, y - BAR.height], [tick, y + BAR.height]], { colour: theme.ink, width: 1.5 }) // prettier-ignore
  ];
}

interface Label extends Want {
  readonly loop: Loop;
  readonly name: string;
  readonly facts: string;
}

function labelOf(loop: Loop, outline: readonly Point[], frame: Frame): Label {
  const { figures, severities, calls, theme } = frame;
  const severity = severities.get(loop.id);
  const name = `${severity ? SIGNS[severity] : ''}${shortened(loop.name || loop.id, LONGEST_NAME)}`;
  const call = calls.get(loop.id);
  const turns = t('plan.turns', { count: loop.turns });
  const parts = [turns, figures.get(loop.id) ?? '', call ? callText(call) : ''];
  const facts = parts.filter((part) => part !== '').join(' · ');
  const scale = theme.textScale;
  const width = Math.max(textWidth(name, NAME_SIZE), textWidth(facts, TEXT_SIZE)) * scale + 8;
  const height = (call ? 3 : 2) * LINE_HEIGHT * scale;
  return { loop, name, facts, width, height, thing: boxAround(outline)! };
}

function labelDrawings(label: Label, { at, leader }: Place, frame: Frame): Drawing[] {
  const { theme, severities, calls } = frame;
  const severity = severities.get(label.loop.id);
  const call = calls.get(label.loop.id);
  const colour = severity === 'problem' || severity === 'caution' ? theme[severity] : theme.ink;
  const text = { kind: 'text', align: 'center', plate: theme.plate } as const;
  const [x, y] = at;
  const lineHeight = LINE_HEIGHT * theme.textScale;
  const first = y - label.height / 2 + lineHeight / 2;
  return [
    ...(leader ? [line([leader, at], { colour: theme.inkSoft, width: 1 })] : []),
    { ...text, at: [x, first], text: label.name, colour, size: NAME_SIZE, bold: true },
    { ...text, at: [x, first + lineHeight], text: label.facts, colour: theme.ink, size: TEXT_SIZE },
    ...(call ? bar(call, [x, first + 2 * lineHeight - 3], theme) : [])
  ];
}

const isSpeck = ({ thing }: Label): boolean =>
  Math.max(thing.right - thing.left, thing.top - thing.bottom) < SMALLEST;

/** In a crowd only what is selected or under the pointer is labelled. */
function chosen(labels: readonly Label[], { state }: Frame): readonly Label[] {
  if (labels.length <= CROWD) return labels;
  const { selection, overlay } = state;
  const wanted = overlay.hover ? [...selection, overlay.hover] : selection;
  return labels.filter(({ loop }) => includesRef(wanted, { kind: 'loop', id: loop.id }));
}

interface Placed {
  readonly label: Label;
  readonly place: Place;
}

function placedLabels(frame: Frame): readonly Placed[] {
  if (!frame.showsLabels) return [];
  const { viewport } = frame.state;
  const sight = visibleBox(viewport);
  const labels = frame.site.loops.flatMap((loop) => {
    const outline = outlineOf(loop.shape);
    return isInSight(outline, sight) ? [labelOf(loop, onScreen(viewport, outline), frame)] : [];
  });
  const shown = chosen(
    labels.filter((label) => !isSpeck(label)),
    frame
  );
  const screen = { left: 0, bottom: 0, right: viewport.width, top: viewport.height };
  const lines = [...sectionObstacles(frame), ...tapeObstacles(frame)];
  const already = [...furnitureBoxes(viewport, frame.site.displayUnits, frame.theme), ...lines];
  const places = placeLabels(shown, screen, already, { givesWay: lines.length > 0 });
  return shown.flatMap((label, index) => {
    const place = places[index];
    return place ? [{ label, place }] : [];
  });
}

/** What labels cover, pixels: other writing on the plan keeps clear of them. */
export const labelBoxes = (frame: Frame): readonly Box[] =>
  placedLabels(frame).map(({ label, place }) => boxAbout(place.at, label));

export const labelsScene = (frame: Frame): Drawing[] =>
  placedLabels(frame).flatMap(({ label, place }) => labelDrawings(label, place, frame));
