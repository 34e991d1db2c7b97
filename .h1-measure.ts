import { createBodyStore } from '#analysis/electrical/bodies';
import { vehicleEffect, changeOf } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { bigSite } from './tests/support/big-site';
const site = bigSite();
const survey = createSurveyor().survey(site);
const bodies = createBodyStore();
for (const c of survey.circuits.values()) console.log(c.circuit.id, c.loops.map(l => l.shape.kind+l.turns+JSON.stringify((l.shape as any).centre)).join(' '));
const { solved } = survey.circuits.get('C9')!;
for (const id of ['car','van','lorry','bus','motorcycle','bicycle']) {
  let t = performance.now();
  const body = bodies.get(vehicleOf(id, site)!);
  const prep = performance.now() - t;
  const run = (f: (k: number) => void) => { f(0); const s = performance.now(); for (let k = 0; k < 200; k++) f(k); return (performance.now() - s) / 200 * 1000; };
  const e = run(k => vehicleEffect(solved, body, { x: 0, y: 2 + .08*k, heading: 90 }));
  const c = run(k => changeOf(solved, body, { x: 0, y: 2 + .08*k, heading: 90 }));
  console.log(id, 'N', body.fine.size, 'points', body.fine.plates.map(p => p.pointX.length).join('+'), 'prep', prep.toFixed(0), 'ms; effect', e.toFixed(0), 'µs change', c.toFixed(0), 'µs, network', (e-c).toFixed(0));
}
for (const cid of ['C1','C9']) { const s = survey.circuits.get(cid)?.solved; if(!s) continue; const n = s.input.loops.length; let t = performance.now(); for (let k=0;k<2000;k++) s.inductanceWith((i,j)=> -1e-6*(i===j?1:0.1)); console.log(cid, n, 'inductanceWith', ((performance.now()-t)/2).toFixed(1),'µs'); }
