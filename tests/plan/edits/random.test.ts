/** Whatever is done to a document, wild values included, the result reads back as a file does. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { builtInUnits } from '#plan/catalogue/units';
import * as edits from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Point, Shape, Site } from '#plan/schema';
import { definitionOf, shapeDefinitions } from '#plan/shapes/index';
import { fullSite } from './site';

const SEED = 718_281;

const wild = fc.oneof(
  { weight: 20, arbitrary: fc.integer({ min: -2_000, max: 2_000 }).map((number) => number / 97) },
  { weight: 1, arbitrary: fc.constantFrom(0, -0, 1e-9, 1e6, -1e6, Number.NaN, Infinity, -Infinity) }
);
const point: fc.Arbitrary<Point> = fc.tuple(wild, wild);
const shape: fc.Arbitrary<Shape> = fc.oneof(
  fc
    .tuple(fc.constantFrom('rectangle', 'quadrupole', 'diagonal', 'circle', 'polygon'), point, point)
    .map(([kind, a, b]) => shapeDefinitions[kind as 'rectangle'].fromBox(a, b) as Shape),
  fc.array(point, { minLength: 1, maxLength: 6 }).map((points): Shape => ({ kind: 'polygon', points })),
  fc.tuple(point, wild, wild, wild, wild).map(([centre, width, length, rotation, cornerCut]): Shape => ({
    kind: 'rectangle',
    centre,
    width,
    length,
    rotation,
    cornerCut
  }))
);
const anyId = fc.constantFrom('L1', 'C1', 'U1', 'lane1', 'm1', 'own', 'none', '');
/** Mostly ids of the right kind. */
const idOf = (...ids: readonly string[]) =>
  fc.oneof({ weight: 8, arbitrary: fc.constantFrom(...ids) }, { weight: 1, arbitrary: anyId });
const loopId = idOf('L1', 'L2', 'L3', 'L4', 'L5', 'L6');
const circuitId = idOf('C1', 'C2', 'C3', 'C4');
const unitId = idOf('U1', 'U2', 'U3');
const thing: fc.Arbitrary<edits.Thing> = fc.oneof(
  loopId.map((id) => ({ kind: 'loop' as const, id })),
  idOf('lane1', 'lane2').map((id) => ({ kind: 'lane' as const, id })),
  idOf('m1', 'm2').map((id) => ({ kind: 'mark' as const, id })),
  idOf('p1', 'p2').map((id) => ({ kind: 'path' as const, id })),
  idOf('0', '1', '2', '-1', '0.5').map((id) => ({ kind: 'probe' as const, id }))
);
const things = fc.array(thing, { maxLength: 4 });

type Edit = (site: Site) => Site;
const itemName = fc.constantFrom('wire:awg14', 'crew', 'extra:X1', '');
const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(itemName, fc.option(wild), wild).map(
    ([item, price, size]): Edit =>
      (site) =>
        edits.setPack(edits.setPrice(site, item, price), item, size / 10)
  ),
  fc.tuple(wild, fc.constantFrom('X1', 'X2'), wild).map(([waste, id, amount]): Edit => (site) => {
    const next = edits.addExtra(edits.updateWaste(site, { wire: waste / 20 }), edits.newExtra(site, id));
    return edits.removeExtra(edits.updateExtra(next, id, { amount }), amount > 10 ? 'X1' : 'X3');
  }),
  fc.tuple(things, point).map(
    ([a, by]): Edit =>
      (site) =>
        edits.moveThings(site, a, by)
  ),
  fc.tuple(things, wild, point).map(
    ([a, by, about]): Edit =>
      (site) =>
        edits.rotateThings(site, a, by * 20, about)
  ),
  things.map(
    (a): Edit =>
      (site) =>
        edits.removeThings(site, a)
  ),
  fc.tuple(things, point).map(
    ([a, by]): Edit =>
      (site) =>
        edits.insertCopies(site, edits.extractThings(site, a), by).site
  ),
  fc.tuple(point, point, idOf('p1', 'p2')).map(
    ([from, to, path]): Edit =>
      (site) =>
        edits.movePathPoint(edits.addPath(site, edits.newPath(site, [from, to])), path, 1, from)
  ),
  shape.map(
    (drawn): Edit =>
      (site) =>
        definitionOf(drawn).problem(drawn) ? site : edits.addWiredLoop(site, edits.newLoop(site, drawn))
  ),
  fc.tuple(loopId, shape).map(
    ([loop, drawn]): Edit =>
      (site) =>
        edits.setShape(site, loop, drawn)
  ),
  fc.tuple(loopId, fc.constantFrom('n', 'se', 'w', '0', '2'), point, fc.boolean()).map(
    ([loop, handle, to, centred]): Edit =>
      (site) =>
        edits.dragLoopHandle(site, loop, handle, to, centred)
  ),
  fc.tuple(loopId, fc.oneof(fc.integer({ min: 0, max: 12 }), wild), idOf('awg12', 'mm2-1.5')).map(
    ([loop, turns, wire]): Edit =>
      (site) =>
        edits.updateLoop(site, loop, { turns, wire })
  ),
  fc.tuple(loopId, wild, wild).map(
    ([loop, depth, width]): Edit =>
      (site) =>
        edits.updateLoop(site, loop, {
          slot: { depth: depth / 50, width: width / 500, relativePermittivity: 4 }
        })
  ),
  fc.tuple(idOf('lane1', 'lane2', 'm1', 'm2'), fc.integer({ min: 0, max: 3 }), point).map(
    ([lane, index, to]): Edit =>
      (site) =>
        edits.moveLanePoint(edits.moveMarkPoint(site, lane, index, to), lane, index, to)
  ),
  fc.array(point, { maxLength: 4 }).map(
    (points): Edit =>
      (site) =>
        edits.addLane(edits.addMark(site, edits.newMark(site, 'kerb', points)), edits.newLane(site, points))
  ),
  fc.tuple(idOf('own', 'car', 'bicycle'), point, wild).map(
    ([vehicle, at, heading]): Edit =>
      (site) =>
        edits.addProbe(site, { vehicle, at, heading })
  ),
  fc.tuple(circuitId, unitId, fc.integer({ min: 0, max: 3 }), wild).map(
    ([circuit, unit, number, tripThreshold]): Edit =>
      (site) =>
        edits.updateChannel(edits.updateChannel(site, circuit, { unit, number }), circuit, {
          tripThreshold: tripThreshold / 100
        })
  ),
  fc.tuple(unitId, fc.integer({ min: 0, max: 5 }), wild).map(
    ([unit, channels, setting]): Edit =>
      (site) =>
        edits.updateUnit(site, unit, { channels, settings_F: [Math.abs(setting) * 1e-8] })
  ),
  fc
    .tuple(unitId, fc.integer({ min: 0, max: 5 }), wild, fc.integer({ min: 0, max: 6 }))
    .map(([unit, setting, value, what]): Edit => (site) => {
      const capacitance = Math.abs(value) * 1e-8;
      const found = { circuit: 'C1', frequency_Hz: 5e4, inductance_H: 1e-4, capacitance_F: capacitance };
      const stated = edits.updateUnit(site, unit, { statedInductance_H: 1e-4 });
      return [
        () => edits.addSetting(site, unit),
        () => edits.removeSetting(site, unit, setting),
        () => edits.setSetting(site, unit, setting, capacitance),
        () => edits.setSettingFrequency(stated, unit, setting, value * 1e4),
        () => edits.calibrateSetting(site, unit, setting, found),
        () => edits.undoCalibration(site, unit, setting),
        () => edits.removeUnit(site, unit)
      ][what]!();
    }),
  fc
    .tuple(unitId, fc.integer({ min: 0, max: 3 }), fc.option(circuitId), fc.constantFrom(...builtInUnits))
    .map(
      ([unit, number, circuit, from]): Edit =>
        (site) =>
          edits.assignChannel(
            number === 3 ? edits.addUnit(site, edits.newUnit(site, from, from.name)) : site,
            unit,
            number,
            circuit
          )
    ),
  fc.tuple(fc.array(circuitId, { maxLength: 3 }), wild, fc.boolean()).map(
    ([circuits, length, isNew]): Edit =>
      (site) =>
        isNew
          ? edits.addConduit(site, edits.newConduit(site, circuits, length))
          : edits.updateConduit(site, 'D1', { circuits, length, mutualPerMetre_H: length * 1e-9 })
  ),
  fc.tuple(circuitId, fc.boolean()).map(
    ([circuit, on]): Edit =>
      (site) =>
        edits.connectCircuit(site, circuit, on)
  ),
  fc.array(circuitId, { maxLength: 3 }).map(
    (circuits): Edit =>
      (site) =>
        edits.joinInSeries(site, circuits)
  ),
  circuitId.map(
    (circuit): Edit =>
      (site) =>
        edits.splitCircuit(site, circuit)
  ),
  fc.tuple(fc.oneof(loopId, circuitId, unitId), fc.oneof(loopId, circuitId, unitId)).map(
    ([from, to]): Edit =>
      (site) =>
        edits.renameUnit(edits.renameCircuit(edits.renameLoop(site, from, to), from, to), from, to)
  ),
  fc.tuple(circuitId, loopId, fc.boolean()).map(
    ([circuit, loop, on]): Edit =>
      (site) =>
        edits.setReversed(site, circuit, loop, on)
  ),
  fc.tuple(circuitId, idOf('k1', 'pair-16'), wild).map(
    ([circuit, cable, length]): Edit =>
      (site) =>
        edits.updateCircuit(site, circuit, { leadIn: { cable, length }, detect: [] })
  )
);

describe('random edits', () => {
  it('always leave a document that can be opened', () => {
    let changes = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 5, maxLength: 40, size: 'max' }), (list) => {
        let site = fullSite();
        for (const apply of list) {
          const next = apply(site);
          if (next === site) continue;
          changes += 1;
          const read = readSite(writeSite(next));
          expect(read.ok ? [] : read.problems.map(({ message }) => message)).toEqual([]);
          site = next;
        }
      }),
      { seed: SEED, numRuns: 100 }
    );
    expect(changes).toBeGreaterThan(500);
  }, 60_000);
});
