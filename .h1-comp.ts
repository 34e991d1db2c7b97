import { createBodyStore } from '#analysis/electrical/bodies';
import { changeOf } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import { vehiclesOf } from '#plan/catalogue/vehicles';
import { bigSite } from './tests/support/big-site';
import { dot } from '#physics/numeric/cholesky';
import { inFrame, verticalField, potentialAlong } from '#physics/field/filaments';
import { compressInSteps, compressInto } from '#physics/vehicle/compressed';
import { finish } from '#analysis/steps';
const site = bigSite();
const survey = createSurveyor().survey(site);
const bodies = createBodyStore();
const rnd = (() => { let s = 12345; return () => (s = (s*1103515245+12345) % 2147483648)/2147483648; })();
for (const v of vehiclesOf(site)) {
  const body = bodies.get(v);
  let t0 = performance.now();
  const c = finish(compressInSteps(body.fine));
  const prep = performance.now()-t0; t0 = performance.now(); finish(compressInSteps(body.fine)); const prep2 = performance.now()-t0;
  if (!c) { console.log(v.id, 'null'); continue; }
  const errs: [number, number][] = [];
  const g = new Float64Array(c.samples), z = new Float64Array(c.rank), room = new Float64Array(c.samples);
  const ev = (local: Float64Array, end: number) => { let at=0; for (const p of c.plates) { const X=new Float64Array(p.xs.length*p.ys.length), Y=X.slice(), F=X.slice(); let k=0; for (const x of p.xs) for (const y of p.ys) {X[k]=x;Y[k++]=y;} verticalField(local,end,X,Y,p.height,F); g.set(F,at); at+=F.length; }
    for (const r of c.rings) { let s=0; for (let k=0;k<r.x.length;k++) s+=potentialAlong(local,end,r.x[k]!,r.y[k]!,r.z[k]!,r.dx[k]!,r.dy[k]!); g[at++]=s; }
    compressInto(c, g, z, room); return dot(z,z); };
  for (const cc of survey.circuits.values()) {
    if (Number(cc.circuit.id.slice(1))>6) break;
    const m = cc.solved.input.loops[0]!.model; const L = cc.solved.inductance;
    const xs=m.winding.runs.map(r=>r.x), ys=m.winding.runs.map(r=>r.y); const cx=(Math.min(...xs)+Math.max(...xs))/2, cy=(Math.min(...ys)+Math.max(...ys))/2;
    for (let k=0;k<60;k++) { const place = { x: cx+(rnd()-.5)*5, y: cy+(rnd()-.5)*(v.bodyLength+5), heading: rnd()<.3?90:rnd()*360 };
      const fine = -(changeOf(cc.solved, body, place)[0]![0] as number);
      const e = ev(inFrame(m.filaments, place), m.filaments.length);
      errs.push([Math.abs(e-fine)/fine, Math.abs(e-fine)/L]); } }
  const s = errs.map(([r,a])=>Math.min(r/3e-3,a/2e-6));
  let t=performance.now(); for (let k=0;k<3000;k++) compressInto(c,g,z,room); t=(performance.now()-t)/3;
  console.log(v.id.padEnd(18), 'samples', c.samples, 'rank', c.blocks.map(b=>b.rank).join('+'), 'prep', prep.toFixed(0), prep2.toFixed(0), 'score', Math.max(...s).toFixed(2), 'maxabs', (Math.max(...errs.map(e=>e[1]))*1e6).toFixed(1), 'medrel%', (errs.map(e=>e[0]).sort((a,b)=>a-b)[errs.length>>1]!*100).toFixed(4), 'C·g', t.toFixed(1),'µs');
}
