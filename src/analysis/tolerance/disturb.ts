/** A circuit built otherwise than drawn: what each tolerance acts on, and how far it can go. */
import { BOUNDS } from '#plan/bounds';
import { wireOf, type Wire } from '#plan/catalogue/wires';
import { scale, subtract, add } from '#plan/geometry/points';
import { signedArea } from '#plan/geometry/polygons';
import type { Circuit, Loop, Shape, Site } from '#plan/schema';
import { centreOf, problemOf } from '#plan/shapes/index';
import type { ToleranceInput } from '../results';

/** What acts on the circuit itself; a vehicle's height is not its business. */
export type CircuitInputKey = Exclude<ToleranceInput, 'vehicleHeight'>;

/** By how much each input differs from the drawing: metres, kelvins, and for the permittivity its own unit. */
export type Amounts = Readonly<Partial<Record<CircuitInputKey, number>>>;

export interface BuiltCircuit {
  readonly site: Site;
  readonly circuit: Circuit;
}

const loopIdsOf = ({ strings }: Circuit): ReadonlySet<string> =>
  new Set(strings.flat().map(({ loop }) => loop));

/** Side of the square of the same area, metres: what a polygon's tolerance is measured against. */
const meanSide = (shape: Extract<Shape, { kind: 'polygon' }>): number =>
  Math.sqrt(Math.abs(signedArea(shape.points)));

/** Every side longer by `by`, the centre and the corner cuts as they are; a polygon is scaled about its centre. */
const resized = (shape: Shape, by: number): Shape => {
  if (shape.kind === 'circle') return { ...shape, diameter: shape.diameter + by };
  if (shape.kind !== 'polygon') return { ...shape, width: shape.width + by, length: shape.length + by };
  const centre = centreOf(shape);
  const factor = 1 + by / meanSide(shape);
  return {
    ...shape,
    points: shape.points.map((point) => add(centre, scale(subtract(point, centre), factor)))
  };
};

const wiresInUse = (site: Site, loops: readonly Loop[]): readonly Wire[] =>
  [...new Set(loops.map(({ wire }) => wire))].flatMap((id) => wireOf(id, site) ?? []);

/** The inputs have to lie within `limitsOf`. */
export const built = (site: Site, circuit: Circuit, amounts: Amounts): BuiltCircuit => {
  const own = loopIdsOf(circuit);
  const { dimensions = 0, depth = 0, wirePitch = 0 } = amounts;
  const { leadInLength = 0, temperature = 0, permittivity = 0 } = amounts;
  const changed = (loop: Loop): Loop => {
    const shape = dimensions === 0 ? loop.shape : resized(loop.shape, dimensions);
    return {
      ...loop,
      shape: problemOf(shape) ? loop.shape : shape,
      slot: { ...loop.slot, depth: loop.slot.depth + depth }
    };
  };
  const inUse = wiresInUse(
    site,
    site.loops.filter(({ id }) => own.has(id))
  );
  const wires = wirePitch === 0 ? [] : inUse.map((wire) => thicker(wire, wirePitch));
  return {
    site: {
      ...site,
      loops: site.loops.map((loop) => (own.has(loop.id) ? changed(loop) : loop)),
      wires: [...wires, ...site.wires],
      temperature_C: site.temperature_C + temperature,
      pavement: { ...site.pavement, relativePermittivity: site.pavement.relativePermittivity + permittivity }
    },
    circuit: { ...circuit, leadIn: { ...circuit.leadIn, length: circuit.leadIn.length + leadInLength } }
  };
};

const thicker = (
  { id, name, conductorDiameter, insulatedDiameter, insulationPermittivity }: Wire,
  by: number
) => ({
  id,
  name,
  conductorDiameter,
  insulatedDiameter: insulatedDiameter + by,
  insulationPermittivity
});

export type Limits = Readonly<Record<CircuitInputKey, readonly [least: number, most: number]>>;

/** Insulation of nothing has no finite capacitance. */
const THINNEST_INSULATION = 1.02;
/** What a shape must keep of its size whatever the tolerance. */
const KEPT = 0.2;

const roomToShrink = (shape: Shape): number => {
  if (shape.kind === 'polygon') return (1 - KEPT) * meanSide(shape);
  const side = shape.kind === 'circle' ? shape.diameter : Math.min(shape.width, shape.length);
  const taken = shape.kind === 'rectangle' ? 2 * shape.cornerCut : 0;
  return (1 - KEPT) * Math.max(0, side - Math.max(BOUNDS.side.min, taken));
};

const roomToGrow = (shape: Shape): number => {
  if (shape.kind === 'polygon') return meanSide(shape);
  const side = shape.kind === 'circle' ? shape.diameter : Math.max(shape.width, shape.length);
  return Math.max(0, BOUNDS.side.max - side);
};

/** From the least to the most that each input can differ by in something that can be built; zero lies within. */
export const limitsOf = (site: Site, circuit: Circuit): Limits => {
  const own = loopIdsOf(circuit);
  const loops = site.loops.filter(({ id }) => own.has(id));
  const wires = wiresInUse(site, loops);
  const within = (values: readonly number[], { min, max }: { min: number; max: number }) =>
    [
      Math.min(0, Math.max(...values.map((value) => min - value))),
      Math.max(0, Math.min(...values.map((value) => max - value)))
    ] as const;
  return {
    dimensions: [
      -Math.min(...loops.map(({ shape }) => roomToShrink(shape))),
      Math.min(...loops.map(({ shape }) => roomToGrow(shape)))
    ],
    depth: within(
      loops.map(({ slot }) => slot.depth),
      BOUNDS.slotDepth
    ),
    wirePitch: [
      Math.min(
        0,
        Math.max(
          ...wires.map(
            ({ conductorDiameter, insulatedDiameter }) =>
              THINNEST_INSULATION * conductorDiameter - insulatedDiameter
          )
        )
      ),
      BOUNDS.wireDiameter.max
    ],
    leadInLength: within([circuit.leadIn.length], BOUNDS.leadIn),
    temperature: within([site.temperature_C], BOUNDS.temperature),
    permittivity: within([site.pavement.relativePermittivity], BOUNDS.permittivity)
  };
};
