import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { createMeans } from '#analysis/means';
import { createMapper } from '#analysis/map/response-map';
import { nodeAt } from '#analysis/map/nodes';
import { boxOf, footprintOf, gapBetween, reachOf } from '#analysis/electrical/reach';
import { finish } from '#analysis/steps';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { channel, circuit, loop, siteOf, square, unit } from './tests/analysis/support/sites';
const SITE = siteOf({ loops: [ loop('L1', square(0, 0)), loop('L2', { kind: 'quadrupole', centre: [3.5, 0], width: 1.8, length: 3 }), loop('L3', { kind: 'circle', centre: [0, 5], diameter: 1.8 }), loop('L4', { kind: 'diagonal', centre: [3.5, 6], width: 1.8, length: 1.8 })], circuits: [circuit('C1', ['L1']), circuit('C2', ['L2'], { channel: channel('U1', 2) }), circuit('C3', ['L3', 'L4'], { channel: null })], units: [unit('U1')] });
const m = createMeans(); const map = createMapper(m); const s = m.surveyor.survey(SITE);
for (const [id, heading, n] of [['motorcycle', 0, 40],['bicycle',115,40],['car',90,26]] as const) { const b = m.bodies.get(vehicleOf(id, SITE)!); const fp = footprintOf(b.parts);
for (const c of ['C1','C2','C3']) { const wish = { vehicle: id, heading, circuits: [c], box: { left: -3, bottom: -4, right: 7, top: 9 }, columns: n, rows: n }; const r = finish(map(SITE, wish))!; const solved = s.circuits.get(c)!.solved; const list: any[] = [];
 for (let k = 3; k < n*n; k += 7) { const [x, y] = nodeAt(wish, k % n, Math.floor(k / n)); const want = -vehicleEffect(solved, b, { x, y, heading }); list.push([Math.abs(r.response[k]! - want) / Math.max(3e-3 * want, 2e-6), want, r.response[k], solved.input.loops.map(({ model }) => { const bx = boxOf(model.filaments); return gapBetween(bx, fp, { x, y, heading }).toFixed(2) + '/' + reachOf(bx, fp, solved.inductance, solved.input.loops.length).own.toFixed(2); }).join(' ')]); }
 list.sort((a, b) => b[0] - a[0]); console.log(id, c, list.slice(0, 3).map(l => l[0].toFixed(2)+' want '+l[1].toExponential(2)+' got '+l[2].toExponential(2)+' '+l[3]).join(' | ')); } }
