/**
 * `npm run bench`: the figures of the README. Wall time; a quiet machine is assumed. Nothing here is a test.
 */
import { cpus } from 'node:os';
import { windingOf } from '#analysis/electrical/winding-of';
import { createAssessor } from '#analysis/assess';
import { createBodyStore } from '#analysis/electrical/bodies';
import { quickEffect, vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { createSurveyor } from '#analysis/survey';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import type { Winding } from '#physics/inductance/winding';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { wireOf } from '#plan/catalogue/wires';
import type { Site } from '#plan/schema';
import { bigSite, withLoopAt, withMats } from '../support/big-site';
import { measureBeside } from './beside';
import { measureCalls } from './calls';
import { measureDesigns } from './designs';
import { measureDrag } from './drag';
import { measureFaultFinding } from './fault-finding';
import { measureField } from './field';
import { measureFrequencyPlans } from './frequency-plan';
import { measurePage } from './page';
import { measurePassing } from './passing';
import { measureSweeps } from './sweep';
import { measureTakeoff } from './takeoff';
import { neumannExternal, neumannMutual } from './quadrature';

const timed = (work: () => void): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

const percentile = (times: readonly number[], share: number): number =>
  [...times].sort((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * share))]!;

const say = (what: string, times: readonly number[], budget: string): void => {
  const p = (share: number) => `${percentile(times, share).toFixed(2)} ms`;
  console.log(`${what.padEnd(58)} median ${p(0.5)}  p95 ${p(0.95)}  (budget p95 ${budget})`);
};

console.log(`Node ${process.version}, ${cpus().length} × ${cpus()[0]!.model}`);

const EDITS = 150;
const VEHICLES = ['car', 'van', 'lorry', 'bus', 'motorcycle', 'bicycle'];

/** Edits and drags on one site; `what` names it. */
const study = (site: Site, what: string): void => {
  const assessor = createAssessor();
  const follow = (given: Site): number =>
    timed(() => {
      while (assessor.followNext(given));
    });
  const prepare = timed(() => {
    while (assessor.prepareNext(site));
  });
  const first = timed(() => assessor.assess(site, 'prepared'));
  console.log(`\n${what}`);
  console.log(
    `prepare the vehicles ${prepare.toFixed(0)} ms, everything in sight from nothing ${first.toFixed(0)} ms, ` +
      `what follows from nothing ${follow(site).toFixed(0)} ms`
  );
  const series = (variant: (step: number) => Site): number[] =>
    Array.from({ length: 2 * EDITS }, (_, step) => {
      const next = variant(step);
      return timed(() => assessor.assess(next, 'prepared'));
    }).slice(EDITS);
  site.loops.slice(0, 6).forEach(({ shape }, k) => {
    const variant = (step: number): Site => withLoopAt(site, 8 + k, [0.001 * (step + 1), 0.0003 * step]);
    say(`edit of a ${shape.kind} among 24 loops, to what is in sight`, series(variant), '16 ms');
    const rest = Array.from({ length: 12 }, (_, n) => follow(variant(1_000 + 37 * n)));
    say('  and what follows it', rest.slice(2), '250 ms');
  });
  for (const vehicle of VEHICLES) {
    const at = (step: number): Site => ({
      ...site,
      probes: [{ vehicle, at: [0.01 * step, 0.1 * step], heading: 90 }]
    });
    while (assessor.prepareNext(at(0)));
    say(`dragged ${vehicle} over 24 loops, to all circuits`, series(at), '8 ms');
  }
};

study(bigSite(), '24 loops');
study(withMats(bigSite()), '24 loops, a mat of bars under each');

// one pass: 200 positions of a vehicle over one circuit
for (const site of [bigSite(), withMats(bigSite())]) {
  const { solved } = createSurveyor().survey(site).circuits.get('C9')!;
  const bodies = createBodyStore();
  const where = site.steel.length > 0 ? 'over a mat' : 'without steel';
  for (const id of VEHICLES) {
    const body = bodies.get(vehicleOf(id, site)!);
    const passes = { 'quick mesh': quickEffect, 'fine mesh': vehicleEffect };
    for (const [mesh, effect] of Object.entries(passes)) {
      const pass = (): void => {
        for (let k = 0; k < 200; k++) effect(solved, body, { x: 0, y: 2 + 0.08 * k, heading: 90 });
      };
      pass();
      const times = Array.from({ length: 12 }, () => timed(pass));
      say(`200 positions of a ${id} ${where}, ${mesh}`, times, '30 ms');
    }
  }
}

console.log('');
// the same inductances by plain numeric quadrature of Neumann's double integral
const windings: readonly Winding[] = bigSite()
  .loops.filter(({ shape }) => shape.kind !== 'circle')
  .map((loop) => {
    const wire = wireOf(loop.wire, { wires: [] })!;
    return windingOf(loop, { conductor: wire.conductorDiameter, insulated: wire.insulatedDiameter });
  });
interface Inductances {
  readonly self: readonly number[];
  readonly mutual: readonly number[];
}
const all = (self: (w: Winding) => number, mutual: (a: Winding, b: Winding) => number): Inductances => ({
  self: windings.map(self),
  mutual: windings.flatMap((a, i) => windings.slice(i + 1).map((b) => mutual(a, b)))
});
let closed = all(externalInductance, mutualInductance);
let numeric = closed;
const closedTime = timed(() => (closed = all(externalInductance, mutualInductance)));
const numericTime = timed(() => (numeric = all(neumannExternal, neumannMutual)));
const selfError = Math.max(...closed.self.map((value, k) => Math.abs(numeric.self[k]! / value - 1)));
const mutualError = Math.max(...closed.mutual.map((value, k) => Math.abs(numeric.mutual[k]! - value)));
console.log(
  `all inductances of the ${windings.length} straight-sided loops: closed form ${closedTime.toFixed(1)} ms, ` +
    `numeric quadrature ${numericTime.toFixed(0)} ms, ratio ${(numericTime / closedTime).toFixed(0)}; they differ by at ` +
    `most ${(100 * selfError).toPrecision(2)} % of a self-inductance and ${(1e12 * mutualError).toPrecision(2)} pH of a mutual one`
);

measureTakeoff();
measureFrequencyPlans();
measurePassing();
measureSweeps();
measureDesigns();
measureCalls();
measureFaultFinding();
measureField();
await measurePage();
await measureDrag();
await measureBeside();
