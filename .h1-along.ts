import { createBodyStore } from '#analysis/electrical/bodies';
import { createSurveyor } from '#analysis/survey';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { bigSite } from './tests/support/big-site';
import { dot } from '#physics/numeric/cholesky';
import { compressInSteps } from '#physics/vehicle/compressed';
import { reducedAlong, reducedAt } from '#physics/vehicle/reduce';
import { finish } from '#analysis/steps';
const site = bigSite(); const survey = createSurveyor().survey(site); const bodies = createBodyStore();
for (const id of ['car','van','lorry','bus','motorcycle','bicycle']) {
  const v = vehicleOf(id, site)!; const c = finish(compressInSteps(bodies.get(v).fine))!;
  const g = id.includes('cycle') ? 1 : 2;
  let out = '';
  for (const cid of ['C1','C5']) {
    const m = survey.circuits.get(cid)!.solved.input.loops[0]!.model;
    const count = Math.round(((v.bodyLength+10)/0.05)/g);
    const first = { x: 0.3, y: -v.bodyLength/2-5+(cid==='C5'?5:0), heading: 90 };
    const f = () => reducedAlong(c, m.filaments, first, count, g);
    const z = f(); const zz = reducedAt(c, m.filaments, [{...first, y: first.y + 0.05*g*70}]); let d=0; for (let r=0;r<c.rank;r++) d=Math.max(d,Math.abs(z[70*c.rank+r]!-zz[r]!)); 
    for (let k=0;k<5;k++) f(); let t=performance.now(); for (let k=0;k<20;k++) f(); t=(performance.now()-t)/20;
    const pl = Array.from({length:count},(_, k)=>({...first,y:first.y+.05*g*k})); let t2=performance.now(); for (let k=0;k<5;k++) reducedAt(c,m.filaments,pl); t2=(performance.now()-t2)/5;
    out += ` ${cid} n=${count} ${t.toFixed(2)}ms =${(t/count*1000).toFixed(1)}µs each; direct ${(t2/count*1000).toFixed(1)} diff ${(d/Math.sqrt(dot(zz,zz))).toExponential(1)}`;
  }
  console.log(id, c.samples, c.rank, out);
}
