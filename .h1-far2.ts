import { createBodyStore } from '#analysis/electrical/bodies';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { bigSite } from './tests/support/big-site';
import type { Site } from '#plan/schema';
const base = bigSite();
const site: Site = { ...base, loops: base.loops.map((l, k) => k === 0 ? { ...l, turns: 2, shape: { kind: 'rectangle', centre: [0, -20], width: 1.8, length: 15, rotation: 0, cornerCut: 0 } } : k===1 ? { ...l, turns: 2, shape: { kind: 'rectangle', centre: [60, -20], width: 3, length: 6, rotation: 0, cornerCut: 0 } } : l) };
const survey = createSurveyor().survey(site); const bodies = createBodyStore();
for (const cid of ['C1','C2','C5']) { const s = survey.circuits.get(cid)!; const l = s.loops[0]!.shape as any; const half = (l.width ?? l.diameter)/2; const hl=(l.length ?? l.diameter)/2;
for (const id of ['car','bus','lorry-articulated','motorcycle']) { const v = vehicleOf(id, site)!; const b = bodies.get(v);
 console.log(cid, id, 'side', [1,2,3,4,5,6].map(d => d+':'+(-vehicleEffect(s.solved,b,{x:l.centre[0]+half+v.bodyWidth/2+d,y:l.centre[1],heading:90})).toExponential(1)).join(' '), 'end', [2,3,4].map(d => d+':'+(-vehicleEffect(s.solved,b,{x:l.centre[0],y:l.centre[1]+hl+v.bodyLength/2+d,heading:90})).toExponential(1)).join(' ')); } }
