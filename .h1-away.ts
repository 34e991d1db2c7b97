import { partsOf } from '#analysis/electrical/bodies';
import { filamentsOf } from '#physics/field/filaments';
import { externalInductance } from '#physics/inductance/loop';
import { dot } from '#physics/numeric/cholesky';
import { buildBody } from '#physics/vehicle/body';
import { compressInSteps } from '#physics/vehicle/compressed';
import { reducedFlux } from '#physics/vehicle/flux';
import { reducedAt } from '#physics/vehicle/reduce';
import { catalogueVehicles } from '#plan/catalogue/vehicles';
import { drawnWinding } from './tests/physics/support/windings';
import { finish } from '#analysis/steps';
const S: any = { square: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8, rotation: 0, cornerCut: 0.3 }, long: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 12, rotation: 0, cornerCut: 0 }, quad: { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 3, rotation: 0 },  circle: { kind: 'circle', centre: [0, 0], diameter: 1.8 } };
const W = Object.entries(S).map(([name, shape]: any) => { const w = drawnWinding({ id: 'L', name: '', turns: 3, wire: 'awg14', slot: { depth: .05, width: .008, relativePermittivity: 4 }, tail: { length: 0 }, shape: shape as any }); return { name, hl: (shape.length ?? 1.8)/2, f: filamentsOf(w), L: externalInductance(w) }; });
for (const id of ['car','bus','lorry','motorcycle','lorry-articulated']) { const v = catalogueVehicles.find(x => x.id === id)!; const b = buildBody(partsOf(v)); const n0 = finish(compressInSteps(b))!; for (const cl of [1.2, 1.0, .9]) { const c = finish(compressInSteps(b, cl))!; let out = '';
  for (const { name, hl, f, L } of W) { let w = 0, where = ''; for (const gap of [1.2, 1.5, 2, 3]) for (const at of [{ x: .9 + v.bodyWidth / 2 + gap, y: .3, heading: 90 }, { x: .2, y: hl + v.bodyLength / 2 + gap, heading: 90 }, { x: .9 + v.bodyLength / 2 + gap, y: .3, heading: 0 }, { x: .9+v.bodyWidth/2+gap*.7, y: hl+v.bodyLength/2+gap*.7, heading: 90 }]) { const y = reducedFlux(b, f, at), z = reducedAt(c, f, [at]); const m = dot(y, y), q = dot(z, z); const e = Math.abs(m - q) / Math.max(3e-3 * m, 2e-6 * L); if (e > w) { w = e; where = (m / L).toExponential(1) + (q > m ? '+' : '-')+gap; } } out += ` ${name} ${w.toFixed(2)}(${where})`; }
  console.log(id, cl, 'n', n0.samples, n0.rank, '->', c.samples, c.rank, out); } }
