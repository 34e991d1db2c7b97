import { vehicleEffect, quickEffect } from '#analysis/electrical/vehicle-effect';
import { createMeans } from '#analysis/means';
import { profilesAlong } from '#analysis/passing/profile';
import { placeOn, wayOf } from '#analysis/passing/way';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { circuit, lane, loop, siteOf, square, unit } from './tests/analysis/support/sites';
const SITE = siteOf({ lanes: [lane('a', 0)], loops: [loop('L1', square(0, 0))], circuits: [circuit('C1', ['L1'])], units: [unit('U1')], steel: [{ id: 'S1', kind: 'mat', depth: .14, pitch: .2, barRadius: .005, outline: [[-1.6,-2],[1.6,-2],[1.6,2],[-1.6,2]] }] });
const m = createMeans(); const s = m.surveyor.survey(SITE); const way = wayOf(SITE, { kind: 'lane', id: 'a' })!;
for (const id of ['car','lorry']) { const v = vehicleOf(id, SITE)!; const b = m.bodies.get(v); const t = performance.now(); const [p] = profilesAlong(s, v, b, way, .4); console.log(id, (performance.now()-t).toFixed(0)+'ms'); const most = Math.max(...p!.values);
 let out=''; for (let k = 0; k < p!.values.length; k += 5) { const pl = placeOn(way, p!.from + k * .05, .4, v.bodyLength); const want = -vehicleEffect(s.circuits.get('C1')!.solved, b, pl); const q = -quickEffect(s.circuits.get('C1')!.solved, b, pl); if (Math.abs(p!.values[k]!-want) > .008*most) out += `${(p!.from+k*.05).toFixed(2)}: ${(want/most).toFixed(3)} err ${((p!.values[k]!-want)/most).toFixed(4)} quick/fine ${(q/want).toFixed(3)}\n`; } console.log(out); }
for (const id of ['car','lorry','bicycle']) { const v = vehicleOf(id, SITE)!; const b = m.bodies.get(v); profilesAlong(s, v, b, way, .3); const t = performance.now(); const [p] = profilesAlong(s, v, b, way, .5); console.log(id, 'again', (performance.now()-t).toFixed(0)+'ms', p!.values.length); let w=0; const most = Math.max(...p!.values); for (let k = 0; k < p!.values.length; k += 6) { const want = -vehicleEffect(s.circuits.get('C1')!.solved, b, placeOn(way, p!.from + k * .05, .5, v.bodyLength)); w=Math.max(w, Math.abs(want-p!.values[k]!)/Math.max(want*.003,2e-6)); } console.log('score', w.toFixed(2)); }
