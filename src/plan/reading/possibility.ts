/** Drawings and parts that are well formed field by field and still impossible. */
import { t } from '#i18n/message';
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
      ? [problem(['lanes', index, 'centreline'], t('read.noLength'), t('read.apart'))]
      : []
  );

const paths = (lists: Lists) =>
  lists.paths.flatMap(({ index, value }) =>
    runOf(value.points) < SHORTEST_LANE
      ? [problem(['paths', index, 'points'], t('read.noLength'), t('read.apart'))]
      : []
  );

function steel(lists: Lists): readonly Problem[] {
  return lists.steel.flatMap(({ index, value: { outline } }) => {
    const crossing = crossingSides(outline);
    const path = ['steel', index, 'outline'];
    if (crossing) {
      const found = t('shape.crossing', { a: crossing[0] + 1, b: crossing[1] + 1 });
      return [problem(path, found, t('shape.simple'))];
    }
    const empty = Math.abs(signedArea(outline)) < 1e-4;
    return empty ? [problem(path, t('shape.empty'), t('shape.area', { least: '1 cm²' }))] : [];
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
            t('read.ringRadius', { radius: part.radius })
          )
        );
      if (Math.hypot(...part.axis) < 1e-9)
        found.push(problem([...path, 'axis'], t('read.noAxis'), t('read.direction')));
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
            t('read.range', { least: range[0], most: range[1] }),
            t('read.smallerFirst')
          )
        ]
  );

/** Of a setting that the unit has, and no other of the same. */
const calibrations = (lists: Lists) =>
  lists.units.flatMap(({ index, value: { id, settings_F: settings, calibrations: all = [] } }) =>
    all.flatMap(({ setting }, at) => {
      const path = ['units', index, 'calibrations', at, 'setting'];
      if (setting > settings.length) {
        const expected = t('read.settings', { most: settings.length, unit: quoted(id) });
        return [problem(path, String(setting), expected)];
      }
      const first = all.findIndex((each) => each.setting === setting);
      if (first === at) return [];
      const found = t('read.settingTwice', { setting, place: `calibrations[${first}]` });
      return [problem(path, found, t('read.oneCalibration'))];
    })
  );

const conduits = (lists: Lists) =>
  lists.conduits.flatMap(({ index, value: { circuits } }) =>
    circuits.flatMap((id, at) => {
      const first = circuits.indexOf(id);
      if (first === at) return [];
      const found = t('read.secondTime', { id: quoted(id), place: `circuits[${first}]` });
      return [problem(['conduits', index, 'circuits', at], found, t('read.eachCircuitOnce'))];
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
        : [problem([...path, 'spacing'], `${spacing}`, t('read.overDiameter', { diameter }))];
    const stated = ['resistancePerMetre_ohm', 'inductancePerMetre_H', 'capacitancePerMetre_F'] as const;
    return stated
      .filter((key) => value[key] === undefined)
      .map((key) => problem([...path, key], t('read.nothing'), t('read.orGeometry')));
  });

const wires = (lists: Lists) =>
  lists.wires.flatMap(({ index, value: { conductorDiameter, insulatedDiameter } }) =>
    insulatedDiameter > conductorDiameter
      ? []
      : [
          problem(
            ['wires', index, 'insulatedDiameter'],
            `${insulatedDiameter}`,
            t('read.overDiameter', { diameter: conductorDiameter })
          )
        ]
  );

export const impossibilities = (lists: Lists): readonly Problem[] =>
  [loops, lanes, paths, steel, rings, units, calibrations, conduits, cables, wires].flatMap((check) =>
    check(lists)
  );
