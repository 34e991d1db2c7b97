import { createBodyStore } from '#analysis/electrical/bodies';
import { changeOf } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { bigSite } from './tests/support/big-site';
import { choleskyFactor, forwardSubstitute, backSubstituteInPlace, dot } from '#physics/numeric/cholesky';
import { reduceBlocks } from '#physics/vehicle/symmetry';
import { inFrame, verticalField, potentialAlong } from '#physics/field/filaments';
import type { Body } from '#physics/vehicle/body';
const MU0 = 4e-7*Math.PI;
const site = bigSite();
const survey = createSurveyor().survey(site);
const bodies = createBodyStore();
const [spacingF, marginF, below, power] = process.argv.slice(2).map(Number) as [number, number, number, number];
const kern = (p: number, h: number) => { const q = p + h*h; return power === 1 ? 1/Math.sqrt(q) : h/(q*Math.sqrt(q)); };
interface S { x: number; y: number; h: number }
const lattice = (body: Body): S[] => body.plates.flatMap(({plate}) => {
  const H = Math.max(plate.height, .12) + below;
  const axis = (side: number) => { const n = Math.max(2, Math.ceil((side + 2*marginF*H)/(spacingF*H)) + 1); const half = side/2 + marginF*H; return Array.from({length:n},(_, k)=> -half + 2*half*k/(n-1)); };
  return axis(plate.width).flatMap(x => axis(plate.length).map(y => ({ x: x+plate.x, y: y+plate.y, h: plate.height })));
});
const rnd = (() => { let s = 12345; return () => (s = (s*1103515245+12345) % 2147483648)/2147483648; })();
for (const id of ['car','van','lorry','bus','motorcycle','motorcycle-small']) {
  const body = bodies.get(vehicleOf(id, site)!).fine;
  let t0 = performance.now();
  const g = lattice(body); const n = g.length;
  const K = new Float64Array(n*n);
  const H = (a: number, b: number) => Math.max(a,.12)+Math.max(b,.12)+2*below;
  for (let i=0;i<n;i++) for (let j=0;j<=i;j++) { const a=g[i]!, b=g[j]!; K[i*n+j]=K[j*n+i]=kern((a.x-b.x)**2+(a.y-b.y)**2, H(a.h,b.h)); }
  for (let i=0;i<n;i++) K[i*n+i]! *= 1+1e-9;
  const R = choleskyFactor(K, n); if (!R) { console.log(id, 'K fails'); continue; }
  // columns: reduced(cov(phi, g_j))
  const P: Float64Array[] = g.map((s) => {
    const phi = new Float64Array(body.size); let first = 0;
    for (const pl of body.plates) { for (let k=0;k<pl.pointIndex.length;k++) { const idx=pl.pointIndex[k]!; if (idx<0) continue; const q=k>>2; phi[first+idx]! += MU0/(4*Math.PI)*pl.pointWeight[k]!*kern((pl.pointX[q]!-s.x)**2+(pl.pointY[q]!-s.y)**2, H(pl.plate.height,s.h)); } first += pl.unknowns; }
    return reduceBlocks(body.blocks, phi);
  });
  // Qw = P R^-T : rows: for each unknown row p (n) solve R w = p
  const Q: Float64Array[] = []; for (let u=0;u<body.size;u++) Q.push(forwardSubstitute(R, Float64Array.from({length:n},(_, j)=>P[j]![u]!)));
  const M = new Float64Array(n*n); for (const q of Q) for (let i=0;i<n;i++) for (let j=0;j<=i;j++) M[i*n+j]! += q[i]!*q[j]!;
  for (let i=0;i<n;i++) for (let j=0;j<i;j++) M[j*n+i]=M[i*n+j]!;
  // pivoted cholesky of M
  let trace=0; for (let i=0;i<n;i++) trace+=M[i*n+i]!;
  const d = Float64Array.from({length:n},(_, i)=>M[i*n+i]!); const cols: Float64Array[]=[]; const ranks: Record<string, number> = {}; 
  for (let r=0;r<n;r++) { let p=0; for (let i=1;i<n;i++) if (d[i]!>d[p]!) p=i; let rest=0; for (const v of d) rest+=v; for (const e of [1e-2,1e-3,3e-4,1e-4,1e-5]) if (rest<e*trace && ranks[e]===undefined) ranks[e]=r; if (rest<1e-5*trace) break; const c=new Float64Array(n); const s=Math.sqrt(d[p]!); for (let i=0;i<n;i++) { let v=M[i*n+p]!; for (const o of cols) v-=o[i]!*o[p]!; c[i]=v/s; } cols.push(c); for (let i=0;i<n;i++) d[i]=Math.max(0,d[i]!-c[i]!*c[i]!); }
  const prep = performance.now()-t0;
  // rank test sets
  const evals = (zs: Float64Array[]) => { // error stats
    const errs: number[] = []; const abs: number[]=[];
    for (const c of survey.circuits.values()) {
      if (Number(c.circuit.id.slice(1))>6) break;
      const m = c.solved.input.loops[0]!.model; const L = c.solved.inductance;
      const xs=m.winding.runs.map(r=>r.x), ys=m.winding.runs.map(r=>r.y); const cx=(Math.min(...xs)+Math.max(...xs))/2, cy=(Math.min(...ys)+Math.max(...ys))/2;
      for (let k=0;k<40;k++) { const place = { x: cx+(rnd()-.5)*5, y: cy+(rnd()-.5)*12, heading: rnd()<.3?90:rnd()*360 };
        const fine = -(changeOf(c.solved, bodies.get(vehicleOf(id, site)!), place)[0]![0] as number);
        const local = inFrame(m.filaments, place);
        const v = new Float64Array(n); const one=new Float64Array(1), X=new Float64Array(1), Y=new Float64Array(1);
        g.forEach((s,i)=>{X[0]=s.x;Y[0]=s.y; verticalField(local, m.filaments.length, X, Y, s.h, one); v[i]=one[0]!;});
        const w = forwardSubstitute(R, v);
        let e=0; for (const z of zs) { const a=dot(z,w); e+=a*a; }
        // rings ignored in proto
        errs.push(Math.abs(e-fine)/fine); abs.push(Math.abs(e-fine)/L);
      } }
    const bad = errs.map((e,i)=>Math.min(e/3e-3, abs[i]!/2e-6));
    return `worst score ${Math.max(...bad).toFixed(2)}  max abs ${(Math.max(...abs)*1e6).toFixed(1)}e-6 medianrel ${(errs.sort((a,b)=>a-b)[errs.length>>1]!*100).toFixed(3)}%`;
  };
  if (body.rings.length) { console.log(id, n, JSON.stringify(ranks), 'rings'); continue; }
  console.log(id, 'samples', n, 'prep', prep.toFixed(0), 'ranks', JSON.stringify(ranks), '| full:', evals(Q), '| 1e-3:', evals(cols.slice(0,ranks[0.001])), '| 1e-4', evals(cols.slice(0,ranks[0.0001])));
}
