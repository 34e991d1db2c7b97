const cpu=()=>{const u=process.cpuUsage();return (u.user+u.system)/1000};
import { createMeans } from '#analysis/means';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { bigSite, withMats } from './tests/support/big-site';
import { createMapper } from '#analysis/map/response-map';
import { nodeAt } from '#analysis/map/nodes';
import { finish } from '#analysis/steps';
import type { Site } from '#plan/schema';
const big = bigSite();
const site: Site = { ...big, loops: big.loops.slice(0, 8), circuits: big.circuits.slice(0, 8) };
for (const id of ['car','lorry','lorry-articulated','bus','motorcycle','bicycle']) for (const heading of [90, 37]) {
  const means = createMeans(); const map = createMapper(means); means.surveyor.survey(site); const v = vehicleOf(id, site)!; const b = means.bodies.get(v);
  const wish = (n: number) => ({ vehicle: id, heading, circuits: null, box: { left: -3, right: 14, bottom: -6, top: 11 }, columns: n, rows: n });
  let most = 0, steps = 0;
  const run = (n: number) => { const t = cpu(); const it = map(site, wish(n)); for (;;) { const s = cpu(); const r = it.next(); most = Math.max(most, cpu() - s); steps++; if (r.done) return [cpu() - t, r.value!] as const; } };
  const [t1] = run(26); const m1 = most; most = 0; const [t2, m] = run(100);
  let worst = 0; const survey = means.surveyor.survey(site);
  for (let k = 0; k < 10000; k += 397) { const [x, y] = nodeAt(m, k % 100, Math.floor(k / 100)); const want = Math.max(...[...survey.circuits.values()].map(c => -vehicleEffect(c.solved, b, { x, y, heading }))); const e = Math.abs(m.response[k]! - want); worst = Math.max(worst, Math.min(e / want / 3e-3, e / 2e-6)); }
  console.log(id, heading, '26²', t1.toFixed(0), 'ms (longest step', m1.toFixed(0) + ')', '100²', t2.toFixed(0), 'longest', most.toFixed(0), 'score', worst.toFixed(2));
}
