import { createBodyStore } from '#analysis/electrical/bodies';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import { vehicleOf, vehiclesOf } from '#plan/catalogue/vehicles';
import { bigSite, withLoopAt } from './tests/support/big-site';
import { profileOver, profilesAlong } from '#analysis/passing/profile';
import { responseAt } from '#analysis/passing/zones';
import { wayOf, placeOn } from '#analysis/passing/way';
import type { Site } from '#plan/schema';
const big = bigSite();
// 8 circuits in one lane: shapes 1..6, 7, 8 moved into lane, 5 m apart... within 20 m
const pick = big.loops.slice(0, 8);
const centres = pick.map((_, k) => -7 + 2 * k);
const site: Site = { ...big, loops: pick.map((l, k) => { const c = [0.1, centres[k]!] as const; const s: any = l.shape; return { ...l, shape: s.kind === 'polygon' ? { ...s, points: s.points.map(([x, y]: number[]) => [x! - 3.5 + .1, y! - 5 + c[1]]) } : { ...s, centre: c } }; }), circuits: big.circuits.slice(0, 8) };
const surveyor = createSurveyor(); const bodies = createBodyStore(); let survey = surveyor.survey(site);
const way = wayOf(site, { kind: 'lane', id: 'lane1' })!;
const ids = ['car','van','lorry','bus','motorcycle','bicycle'];
for (const id of ids) { const v = vehicleOf(id, site)!; const b = bodies.get(v); let t = performance.now(); profilesAlong(survey, v, b, way, 0.2); t = performance.now() - t; 
 const p = profilesAlong(survey, v, b, way, 0.2); let worst = 0, wr = 0, n = 0;
 for (const pr of p) { const s = survey.circuits.get(pr.circuit)!.solved; n += pr.values.length; for (let k = 0; k < pr.values.length; k += 7) { const want = -vehicleEffect(s, b, placeOn(way, pr.from + k*pr.step, .2, v.bodyLength)); const err = Math.abs(pr.values[k]! - want); const sc = Math.min(err/want/3e-3, err/2e-6); if (sc > worst) { worst = sc; wr = k; } } }
 console.log(id, 'first', t.toFixed(1), 'profiles', p.length, 'values', n, 'worst score', worst.toFixed(2), 'at', wr); }
const times: number[] = [];
for (let rep = 0; rep < 12; rep++) { const moved: Site = { ...site, loops: site.loops.map((l, k) => withLoopAt(site, k, [0.01*(rep+1), 0]).loops[k]!) }; survey = surveyor.survey(moved); let s = ''; let t0 = performance.now(); for (const id of ids) { const v = vehicleOf(id, site)!; const t = performance.now(); profilesAlong(survey, v, bodies.get(v), way, 0.2); s += ` ${id} ${(performance.now()-t).toFixed(1)}`; } times.push(performance.now()-t0); if (rep > 8) console.log(s); }
console.log(times.map(t => t.toFixed(0)).join(' '));
