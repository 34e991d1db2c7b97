/** Vehicles from above: the body, what conducts in it, and an arrow ahead. */
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Point, Probe, Site, VehiclePart } from '#plan/schema';
import { bodyOf, onPlan } from '#editor/things';
import type { Viewport } from '#editor/types';
import { area, line, type Drawing } from './drawing';
import { drawnBox, isInSight, onScreen } from './frame';
import type { Theme } from './theme';

/** Corners of the body are cut by this part of its width: more ahead than behind. */
const NOSE = 0.24;
const REAR = 0.12;
/** A wheel is drawn so many pixels wide. */
const WHEEL = 4;

/** Body outline from rear left, clockwise, in the vehicle's frame. */
function bodyOutline(width: number, length: number): Point[] {
  const x = width / 2;
  const y = length / 2;
  const nose = NOSE * width;
  const rear = REAR * width;
  return [
    [-x, rear - y],
    [-x, y - nose],
    [nose - x, y],
    [x - nose, y],
    [x, y - nose],
    [x, rear - y],
    [x - rear, -y],
    [rear - x, -y]
  ];
}

function partDrawing(part: VehiclePart, probe: Probe, view: Viewport, theme: Theme): Drawing {
  const [x, y] = part.centre;
  const placed = (points: readonly Point[]): Point[] =>
    onScreen(
      view,
      points.map((point) => onPlan(probe, point))
    );
  if (part.kind === 'plate') {
    const dx = part.width / 2;
    const dy = part.length / 2;
    const corners: Point[] = [[x - dx, y - dy], [x - dx, y + dy], [x + dx, y + dy], [x + dx, y - dy]]; // prettier-ignore
    const stroke = { colour: theme.vehicleLine, width: 1, dash: [3, 3] };
    return { kind: 'line', points: placed(corners), closed: true, stroke };
  }
  // A ring seen from above is a line across its axis; a ring that lies flat is a circle.
  const [ax, ay] = part.axis;
  const across = Math.hypot(ax, ay);
  const stroke = { colour: theme.vehicleLine, width: WHEEL };
  if (across < 1e-6) {
    const at = placed([[x, y]])[0]!;
    return { kind: 'circle', at, radius: part.radius * view.scale, stroke: { ...stroke, width: 1.5 } };
  }
  const dx = (-ay / across) * part.radius;
  const dy = (ax / across) * part.radius;
  return line(placed([[x - dx, y - dy], [x + dx, y + dy]]), stroke); // prettier-ignore
}

function arrowAhead(probe: Probe, length: number, view: Viewport, theme: Theme): Drawing {
  const size = Math.min(length * 0.12, 0.5);
  const tip = length / 2 - size * 0.7;
  const points: Point[] = [[-size * 0.7, tip - size], [0, tip], [size * 0.7, tip - size]]; // prettier-ignore
  const placed = points.map((point) => onPlan(probe, point));
  return line(onScreen(view, placed), { colour: theme.vehicleLine, width: 2 });
}

function vehicleDrawings(probe: Probe, site: Site, view: Viewport, theme: Theme): Drawing[] {
  const vehicle = vehicleOf(probe.vehicle, site);
  if (!vehicle) return [];
  const { bodyWidth, bodyLength, parts } = vehicle;
  const body = bodyOutline(bodyWidth, bodyLength).map((point) => onPlan(probe, point));
  return [
    area(onScreen(view, body), theme.vehicleFill, { colour: theme.vehicleLine, width: 1.5 }),
    ...parts.map((part) => partDrawing(part, probe, view, theme)),
    arrowAhead(probe, bodyLength, view, theme)
  ];
}

export function vehiclesScene(site: Site, view: Viewport, theme: Theme): Drawing[] {
  const sight = drawnBox(view);
  return site.probes
    .filter((probe) => isInSight(bodyOf(site, probe), sight))
    .flatMap((probe) => vehicleDrawings(probe, site, view, theme));
}
