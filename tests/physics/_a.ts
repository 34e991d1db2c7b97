import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import { bodyOf, change, plate, rim, CAR, BICYCLE, OVER } from './support/vehicles';
import { circleWinding, mirrored, rectangleWinding } from './support/windings';
for (const [side, loop] of [[2,.6],[3,.6],[4,.6],[3,1.2],[4,1.8],[5,1.8]] as const) for (const h of [.2,.4,.6]) { const w=rectangleWinding(loop,loop,{turns:2}); const im=-mutualInductance(w,mirrored(w,h)); const r:string[]=[]; for (const f of [.4,.7,1,1.5,2]) { const b=bodyOf([plate(side,side,h)],f); r.push(`${f}: ${(change(b,w)/im).toFixed(4)} (${b.size})`);} console.log(side,loop,h,r.join('  ')); }
