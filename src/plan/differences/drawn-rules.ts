/** Fields of what is drawn on the plan. Locking and hiding differ in no result and are no difference. */
import type { Lane, Loop, Mark, Path, Probe, Shape, Steel } from '../schema';
import { vehicleName, wireName } from './names';
import { drawn, named, value, type Rule } from './rule';

/** A side of shapes of one kind; of different kinds the kind says it all. */
const side =
  (key: 'width' | 'length' | 'rotation' | 'cornerCut' | 'diameter') =>
  ({ shape }: Loop): number | null =>
    ((shape as Readonly<Record<string, unknown>>)[key] as number | undefined) ?? null;

const placeOf = (shape: Shape): unknown => (shape.kind === 'polygon' ? null : shape.centre);

export const loopRules: readonly Rule<Loop>[] = [
  value('name', 'text', ({ name }) => name),
  value('shape', 'word', ({ shape }) => shape.kind),
  value('turns', 'count', ({ turns }) => turns),
  value('width', 'length', side('width')),
  value('length', 'length', side('length')),
  value('diameter', 'length', side('diameter')),
  value('rotation', 'angle', side('rotation')),
  value('cornerCut', 'smallLength', side('cornerCut')),
  drawn('outline', ({ shape }) => (shape.kind === 'polygon' ? shape.points : null)),
  drawn('place', ({ shape }) => placeOf(shape)),
  named(
    'wire',
    'text',
    ({ wire }) => wire,
    ({ wire }, site) => wireName(wire, site)
  ),
  value('slotDepth', 'smallLength', ({ slot }) => slot.depth),
  value('slotWidth', 'smallLength', ({ slot }) => slot.width),
  value('slotPermittivity', 'plain', ({ slot }) => slot.relativePermittivity),
  value('tailLength', 'length', ({ tail }) => tail.length),
  drawn('way', ({ tail }) => tail.route),
  value('addedResistance', 'resistance', (loop) => loop.addedResistance_ohm)
];

export const laneRules: readonly Rule<Lane>[] = [
  value('name', 'text', ({ name }) => name),
  value('width', 'length', ({ width }) => width),
  drawn('course', ({ centreline, bends }) => [centreline, bends]),
  named(
    'largestVehicle',
    'text',
    ({ largestVehicle }) => largestVehicle,
    ({ largestVehicle }, site) => (largestVehicle === undefined ? null : vehicleName(largestVehicle, site))
  )
];

export const markRules: readonly Rule<Mark>[] = [
  value('kind', 'word', ({ kind }) => kind),
  drawn('place', ({ points }) => points),
  value('text', 'text', ({ text }) => text),
  drawn('more', ({ opening, turn, offset }) => [opening, turn, offset])
];

export const steelRules: readonly Rule<Steel>[] = [
  value('kind', 'word', ({ kind }) => kind),
  value('depth', 'smallLength', ({ depth }) => depth),
  value('pitch', 'smallLength', (steel) => (steel.kind === 'mat' ? steel.pitch : null)),
  value('barRadius', 'smallLength', (steel) => (steel.kind === 'mat' ? steel.barRadius : null)),
  drawn('outline', ({ outline }) => outline),
  drawn('more', ({ resistivity_ohm_m, relativePermeability }) => [resistivity_ohm_m, relativePermeability])
];

export const pathRules: readonly Rule<Path>[] = [
  value('name', 'text', ({ name }) => name),
  drawn('course', ({ points }) => points)
];

export const probeRules: readonly Rule<Probe>[] = [
  named(
    'vehicle',
    'text',
    ({ vehicle }) => vehicle,
    ({ vehicle }, site) => vehicleName(vehicle, site)
  ),
  drawn('place', ({ at }) => at),
  value('heading', 'angle', ({ heading }) => heading)
];
