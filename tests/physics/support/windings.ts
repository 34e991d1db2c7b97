/** Windings from plain numbers, without the plan's shapes: what a closed form or a textbook speaks of. */
import { windingOf } from '#analysis/electrical/winding-of';
import { totalLength } from '#physics/inductance/runs';
import { runLength, type Run, type Winding } from '#physics/inductance/winding';
import { wireOf } from '#plan/catalogue/wires';
import type { Loop, Point } from '#plan/schema';

export interface Wires {
  readonly turns?: number;
  readonly wireRadius?: number;
  readonly pitch?: number;
  /** Height of the lowest wire, metres. */
  readonly bottom?: number;
}

const AWG14 = { wireRadius: 0.000814, pitch: 0.0038 };

const windingFrom = (
  runsAt: (heights: number[]) => Run[],
  { turns = 1, wireRadius = AWG14.wireRadius, pitch = AWG14.pitch, bottom = -0.05 }: Wires
): Winding => {
  const runs = runsAt(Array.from({ length: turns }, (_, i) => bottom + pitch * i));
  return {
    runs,
    wireRadius,
    pitch,
    columns: runs.map((run) => ({ length: runLength(run), wires: turns })),
    wireLength: totalLength(runs)
  };
};

/** Closed polygon, wound in the order of its corners. */
export const polygonWinding = (corners: readonly Point[], wires: Wires = {}): Winding =>
  windingFrom(
    (heights) =>
      corners.map(([x, y], k) => {
        const [endX, endY] = corners[(k + 1) % corners.length]!;
        const length = Math.hypot(endX - x, endY - y);
        return {
          kind: 'straight',
          x,
          y,
          ux: (endX - x) / length,
          uy: (endY - y) / length,
          length,
          heights
        };
      }),
    wires
  );

/** Counter-clockwise. */
export const rectangleWinding = (
  width: number,
  length: number,
  wires: Wires = {},
  [x, y]: Point = [0, 0]
): Winding =>
  polygonWinding(
    [
      [x - width / 2, y - length / 2],
      [x + width / 2, y - length / 2],
      [x + width / 2, y + length / 2],
      [x - width / 2, y + length / 2]
    ],
    wires
  );

export const circleWinding = (radius: number, wires: Wires = {}, [x, y]: Point = [0, 0]): Winding =>
  windingFrom((heights) => [{ kind: 'round', x, y, radius, heights }], wires);

/** A loop of a site document, with the wire that it names. */
export const drawnWinding = (loop: Loop): Winding => {
  const wire = wireOf(loop.wire, { wires: [] });
  if (!wire) throw new Error(`no wire ${loop.wire}`);
  return windingOf(loop, { conductor: wire.conductorDiameter, insulated: wire.insulatedDiameter });
};

const eachRun = (winding: Winding, change: (run: Run) => Run): Winding => ({
  ...winding,
  runs: winding.runs.map(change)
});

/** Turned by an angle in radians about the origin, then moved, then raised; metres. */
export const placed = (winding: Winding, angle: number, dx: number, dy: number, dz = 0): Winding => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return eachRun(winding, (run) => {
    const where = {
      x: run.x * c - run.y * s + dx,
      y: run.x * s + run.y * c + dy,
      heights: run.heights.map((height) => height + dz)
    };
    return run.kind === 'round'
      ? { ...run, ...where }
      : { ...run, ...where, ux: run.ux * c - run.uy * s, uy: run.ux * s + run.uy * c };
  });
};

/** Every length `factor` times as long, wire and insulation included. */
export const scaled = (winding: Winding, factor: number): Winding => ({
  ...eachRun(winding, (run) => {
    const where = {
      x: run.x * factor,
      y: run.y * factor,
      heights: run.heights.map((height) => height * factor)
    };
    return run.kind === 'round'
      ? { ...run, ...where, radius: run.radius * factor }
      : { ...run, ...where, length: run.length * factor };
  }),
  wireRadius: winding.wireRadius * factor,
  pitch: winding.pitch * factor
});

/** The other sense of current; a circle has none of its own. */
export const reversed = (winding: Winding): Winding =>
  eachRun(winding, (run) => {
    if (run.kind === 'round') throw new Error('a circle is always counter-clockwise');
    return {
      ...run,
      x: run.x + run.ux * run.length,
      y: run.y + run.uy * run.length,
      ux: -run.ux,
      uy: -run.uy
    };
  });

/** Mirror image in a horizontal plane, with the current running the same way round. */
export const mirrored = (winding: Winding, planeHeight: number): Winding =>
  eachRun(winding, (run) => ({ ...run, heights: run.heights.map((height) => 2 * planeHeight - height) }));

/** Each wire of each column on its own. */
export const singleWires = (winding: Winding): Winding => ({
  ...winding,
  runs: winding.runs.flatMap((run) => run.heights.map((height) => ({ ...run, heights: [height] })))
});
