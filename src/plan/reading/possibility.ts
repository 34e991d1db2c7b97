/** Drawings and parts that are well formed field by field and still impossible. */
import { distance } from '../geometry/points';
import { crossingSides, signedArea } from '../geometry/polygons';
import type { Point } from '../schema';
import { problemOf } from '../shapes/index';
import type { Lists } from './lists';
import { type Problem, problem, quoted } from './problem';

/** Shorter than this a lane or a path is a point: metres. */
const SHORTEST_LANE = 0.01;

const runOf = (points: readonly Point[]): number =>
  points.reduce((sum, point, index) => sum + (index === 0 ? 0 : distance(points[index - 1]!, point)), 0);

const loops = (lists: Lists) =>
  lists.loops.flatMap(({ index, value }) => {
    const wrong = problemOf(value.shape);
    return wrong ? [problem(['loops', index, 'shape', wrong.key], wrong.found, wrong.expected)] : [];
  });

const lanes = (lists: Lists) =>
  lists.lanes.flatMap(({ index, value }) =>
    runOf(value.centreline) < SHORTEST_LANE
      ? [problem(['lanes', index, 'centreline'], 'a line without length', 'points that lie apart')]
      : []
  );

const paths = (lists: Lists) =>
  lists.paths.flatMap(({ index, value }) =>
    runOf(value.points) < SHORTEST_LANE
      ? [problem(['paths', index, 'points'], 'a line without length', 'points that lie apart')]
      : []
  );

function steel(lists: Lists): readonly Problem[] {
  return lists.steel.flatMap(({ index, value: { outline } }) => {
    const crossing = crossingSides(outline);
    const path = ['steel', index, 'outline'];
    if (crossing) {
      const found = `side ${crossing[0] + 1} crossing or touching side ${crossing[1] + 1}`;
      return [problem(path, found, 'an outline that neither crosses nor touches itself')];
    }
    const empty = Math.abs(signedArea(outline)) < 1e-4;
    return empty ? [problem(path, 'an outline that encloses nothing', 'an area of at least 1 cm²')] : [];
  });
}

function rings(lists: Lists): readonly Problem[] {
  return lists.vehicles.flatMap(({ index, value }) =>
    value.parts.flatMap((part, at) => {
      if (part.kind !== 'ring') return [];
      const path = ['vehicles', index, 'parts', at];
      const found: Problem[] = [];
      if (part.conductorRadius >= part.radius)
        found.push(
          problem(
            [...path, 'conductorRadius'],
            `${part.conductorRadius}`,
            `less than the ring's radius, ${part.radius}`
          )
        );
      if (Math.hypot(...part.axis) < 1e-9)
        found.push(problem([...path, 'axis'], 'an axis without length', 'a direction'));
      return found;
    })
  );
}

const units = (lists: Lists) =>
  lists.units.flatMap(({ index, value: { inductanceRange_H: range } }) =>
    range[0] < range[1]
      ? []
      : [
          problem(
            ['units', index, 'inductanceRange_H'],
            `${range[0]} to ${range[1]}`,
            'the smaller inductance first'
          )
        ]
  );

/** Of a setting that the unit has, and no other of the same. */
const calibrations = (lists: Lists) =>
  lists.units.flatMap(({ index, value: { id, settings_F: settings, calibrations: all = [] } }) =>
    all.flatMap(({ setting }, at) => {
      const path = ['units', index, 'calibrations', at, 'setting'];
      if (setting > settings.length) {
        const expected = `at most ${settings.length}, the settings of unit ${quoted(id)}`;
        return [problem(path, String(setting), expected)];
      }
      const first = all.findIndex((each) => each.setting === setting);
      if (first === at) return [];
      const found = `setting ${setting} a second time (first at calibrations[${first}])`;
      return [problem(path, found, 'one calibration for each setting')];
    })
  );

const conduits = (lists: Lists) =>
  lists.conduits.flatMap(({ index, value: { circuits } }) =>
    circuits.flatMap((id, at) => {
      const first = circuits.indexOf(id);
      if (first === at) return [];
      const found = `${quoted(id)} a second time (first at circuits[${first}])`;
      return [problem(['conduits', index, 'circuits', at], found, 'each circuit once')];
    })
  );

/** Every constant of a cable is stated or follows from its geometry. */
const cables = (lists: Lists) =>
  lists.cables.flatMap(({ index, value }) => {
    const { conductorDiameter: diameter, spacing } = value;
    const path = ['cables', index];
    if (diameter !== undefined && spacing !== undefined)
      return spacing > diameter
        ? []
        : [problem([...path, 'spacing'], `${spacing}`, `more than the conductor's diameter, ${diameter}`)];
    const stated = ['resistancePerMetre_ohm', 'inductancePerMetre_H', 'capacitancePerMetre_F'] as const;
    return stated
      .filter((key) => value[key] === undefined)
      .map((key) =>
        problem([...path, key], 'nothing', 'a number, or conductorDiameter and spacing to compute it from')
      );
  });

const wires = (lists: Lists) =>
  lists.wires.flatMap(({ index, value: { conductorDiameter, insulatedDiameter } }) =>
    insulatedDiameter > conductorDiameter
      ? []
      : [
          problem(
            ['wires', index, 'insulatedDiameter'],
            `${insulatedDiameter}`,
            `more than the conductor's diameter, ${conductorDiameter}`
          )
        ]
  );

export const impossibilities = (lists: Lists): readonly Problem[] =>
  [loops, lanes, paths, steel, rings, units, calibrations, conduits, cables, wires].flatMap((check) =>
    check(lists)
  );
