import { createBodyStore } from '#analysis/electrical/bodies';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { bigSite } from './tests/support/big-site';
import { profilesAlong } from '#analysis/passing/profile';
import { wayOf, placeOn } from '#analysis/passing/way';
import type { Site } from '#plan/schema';
const big = bigSite();
const site: Site = { ...big, loops: big.loops.slice(0, 8).map((l, k) => { const c = [0.1, -7 + 2 * k] as const; const s: any = l.shape; return { ...l, shape: s.kind === 'polygon' ? { ...s, points: s.points.map(([x, y]: number[]) => [x! - 3.4, y! - 5 + c[1]]) } : { ...s, centre: c } }; }), circuits: big.circuits.slice(0, 8) };
const survey = createSurveyor().survey(site); const bodies = createBodyStore(); const way = wayOf(site, { kind: 'lane', id: 'lane1' })!;
for (const id of ['car','car-small','van','lorry','bus','motorcycle']) { const v = vehicleOf(id, site)!; const b = bodies.get(v); const errs: number[] = []; let relmax = 0; let out = '';
 for (const pr of profilesAlong(survey, v, b, way, 0.2)) { const s = survey.circuits.get(pr.circuit)!.solved; let w = 0; const most = Math.max(...pr.values); for (let k = 0; k < pr.values.length; k += 4) { const want = -vehicleEffect(s, b, placeOn(way, pr.from + k*pr.step, .2, v.bodyLength)); const err = Math.abs(pr.values[k]! - want); w = Math.max(w, err / Math.max(want * 3e-3, 2e-6)); relmax = Math.max(relmax, err / most); errs.push(err / Math.max(want * 3e-3, 2e-6)); } out += ' ' + w.toFixed(2); }
 console.log(id, 'per circuit', out, 'rel to peak', relmax.toExponential(1)); }
