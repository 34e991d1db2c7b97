/** Press and drag draws the line; a click in a lane puts it across the lane. */
import { addMark, newMark } from '#plan/edits/index';
import { distance } from '#plan/geometry/points';
import type { Point, Site } from '#plan/schema';
import { laneAt } from '../geometry/lanes';
import { hasMoved } from '../reach';
import { createSnapper } from '../snapping/snapper';
import { joinedText, lengthText } from '../wording';
import type { Outcome, ToolPointer, ToolState } from './tool';

const SHORTEST = 0.2;

type Line = readonly [Point, Point];

function acrossLane(site: Site, at: Point): Line | null {
  const found = laneAt(site.lanes, at);
  if (!found) return null;
  const { lane, station } = found;
  const half = lane.width / 2;
  const [x, y] = station.at;
  const [dx, dy] = station.ahead;
  return [
    [x + dy * half, y - dx * half],
    [x - dy * half, y + dx * half]
  ];
}

function drawn(site: Site, line: Line): { readonly site: Site; readonly id: string } | null {
  const mark = newMark(site, 'stop-line', line);
  const next = distance(...line) < SHORTEST ? site : addMark(site, mark);
  return next === site ? null : { site: next, id: mark.id };
}

function shown(site: Site, line: Line | null, at: Point, more: string): Omit<Outcome, 'next'> {
  const made = line && drawn(site, line);
  if (!line || !made) return { overlay: { cursor: 'crosshair' } };
  const label = { at, text: joinedText(lengthText(site, distance(...line)), more) };
  return { draft: made.site, overlay: { label, cursor: 'crosshair' } };
}

function left(site: Site, line: Line | null): Omit<Outcome, 'next'> {
  const made = line && drawn(site, line);
  if (!made) return {};
  return {
    step: { label: 'Draw stop line', site: made.site, selection: [{ kind: 'mark', id: made.id }] },
    tool: 'select'
  };
}

function pressing(start: ToolPointer): ToolState {
  const state: ToolState = {
    name: 'stop line: stretching',
    busy: true,
    on(input, scene): Outcome | null {
      if (input.type !== 'move' && input.type !== 'up') return null;
      const { site } = scene;
      const snapper = createSnapper(scene);
      const from = snapper.point(start.at, start);
      const to = snapper.point(input.at, input);
      const line: Line | null = hasMoved(start, input) ? [from.at, to.at] : acrossLane(site, from.at);
      if (input.type === 'up') return { next: stopLineTool, ...left(site, line) };
      return { next: state, ...shown(site, line, input.at, to.text) };
    }
  };
  return state;
}

export const stopLineTool: ToolState = {
  name: 'stop line: ready',
  busy: false,
  on(input, scene): Outcome | null {
    if (input.type === 'down') return { next: pressing(input) };
    if (input.type !== 'move') return null;
    const snap = createSnapper(scene).point(input.at, input);
    const { draft, overlay } = shown(scene.site, acrossLane(scene.site, snap.at), snap.at, snap.text);
    return { next: stopLineTool, draft: draft ?? null, overlay: { ...overlay, guides: snap.guides } };
  }
};
