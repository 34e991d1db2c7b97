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
const S: any = { square: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8, rotation: 0, cornerCut: 0.3 }, long: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 12, rotation: 10, cornerCut: 0 }, quad: { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 3, rotation: 0 }, diag: { kind: 'diagonal', centre: [0, 0], width: 1.8, length: 1.8, rotation: 0 }, circle: { kind: 'circle', centre: [0, 0], diameter: 1.8 } };
const W = Object.entries(S).map(([name, shape]) => { const w = drawnWinding({ id: 'L', name: '', turns: 3, wire: 'awg14', slot: { depth: .05, width: .008, relativePermittivity: 4 }, tail: { length: 0 }, shape: shape as any }); return { name, f: filamentsOf(w), L: externalInductance(w) }; });
let st = 77; const rnd = () => (st = (st * 1103515245 + 12345) % 2 ** 31) / 2 ** 31;
for (const id of (process.argv[2] ?? 'car,van,lorry,bus,lorry-articulated').split(',')) { const v = catalogueVehicles.find(x => x.id === id)!; const b = buildBody(partsOf(v)); const c = finish(compressInSteps(b))!; let out = '';
  for (const { name, f, L } of W) { let w = 0, where = ''; for (let k = 0; k < 50; k++) { const at = { x: 5 * (rnd() - .5), y: (v.bodyLength + 5) * (rnd() - .5), heading: k % 3 ? 360 * rnd() : 90 }; const y = reducedFlux(b, f, at), z = reducedAt(c, f, [at]); const m = dot(y, y), q = dot(z, z); const e = Math.abs(m - q) / Math.max(3e-3 * m, 2e-6 * L); if (e > w) { w = e; where = (m / L).toExponential(1) + (q > m ? '+' : '-'); } } out += ` ${name} ${w.toFixed(2)}(${where})`; }
  console.log(id, 'n', c.samples, 'r', c.rank, out); }
