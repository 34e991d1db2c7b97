import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { createMeans } from '#analysis/means';
import { profilesAlong } from '#analysis/passing/profile';
import { placeOn, wayOf } from '#analysis/passing/way';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { channel, circuit, lane, loop, siteOf, square, unit } from './tests/analysis/support/sites';
const SITE = siteOf({ lanes: [lane('a', 0)], loops: [ loop('L3', { kind: 'circle', centre: [-0.1, 2], diameter: 1.8 }), loop('L4', { kind: 'diagonal', centre: [0, 5], width: 1.8, length: 1.8 }), loop('L2', { kind: 'quadrupole', centre: [0, -2], width: 1.8, length: 3 }), loop('L1', { kind: 'rectangle', centre: [0.2, -7], width: 1.8, length: 1.8, cornerCut: 0.3 }), loop('L5', square(0, 8)), loop('L6', square(0.3, 11))],
 circuits: ['L1','L2'].map((id,k)=>circuit('S'+id,[id],{channel:channel('U1',k+1)})).concat([circuit('C4', [], { strings: [[{ loop: 'L5', reversed: false }], [{ loop: 'L6', reversed: false }]], channel: channel('U1', 9) }), circuit('C3', [], { strings: [[{ loop: 'L3', reversed: false }, { loop: 'L4', reversed: true }]], channel: channel('U1', 8) })]), units: [unit('U1')] });
const m = createMeans(); const s = m.surveyor.survey(SITE); const way = wayOf(SITE, { kind: 'lane', id: 'a' })!;
for (const [id, off] of [['motorcycle', .9], ['bicycle', .9],['car',.25]] as const) { const v = vehicleOf(id, SITE)!; const b = m.bodies.get(v);
for (const p of profilesAlong(s, v, b, way, off)) { let w = 0, at = 0, ww = 0; p.values.forEach((x, k) => { const want = -vehicleEffect(s.circuits.get(p.circuit)!.solved, b, placeOn(way, p.from + k * p.step, off, v.bodyLength)); const e = Math.abs(x - want) / Math.max(3e-3 * want, 2e-6); if (e > w) { w = e; at = k; ww = want; } }); console.log(id, p.circuit, 'worst', w.toFixed(2), 'at k', at, 'of', p.values.length, 'want', ww.toExponential(2), 'odd', at % 2); } }
