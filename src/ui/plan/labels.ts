/** What the labels on the plan say about each loop. */
import type { Assessment, Severity } from '#analysis/results';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import { circuitWith, loopsIn } from '#plan/wiring';
import { refsOf } from '../details/subject';
import { shownResponse } from '../readout/share';
import type { LiveFigure } from '../settings';
import { callsOf } from './calls';

const WORST_FIRST: readonly Severity[] = ['problem', 'caution', 'note'];

function responses(site: Site, assessment: Assessment, probe: number | null): ReadonlyMap<string, string> {
  const entries = callsOf(site, assessment, probe).flatMap((call) => {
    const { value, digits } = shownResponse(call.response);
    const text = `ΔL/L ${format(value, 'ratio', site.displayUnits, { digits }).text}`;
    const circuit = site.circuits.find(({ id }) => id === call.circuit);
    return circuit ? loopsIn(circuit).map((loop) => [loop, text] as const) : [];
  });
  return new Map(entries);
}

/** The figure that the person chose, ready to read, by loop; response is that to the watched vehicle. */
export function figuresOf(
  site: Site,
  assessment: Assessment | null,
  figure: LiveFigure,
  probe: number | null
): ReadonlyMap<string, string> {
  if (!assessment || figure === 'none') return new Map();
  if (figure === 'response') return responses(site, assessment, probe);
  const system = site.displayUnits;
  return new Map(
    assessment.loops.map(({ id, inductance_H, frequency_Hz }) => {
      if (figure === 'inductance') return [id, `L ${format(inductance_H, 'inductance', system).text}`];
      if (figure === 'frequency') return [id, `f ${format(frequency_Hz, 'frequency', system).text}`];
      // A loop's own Q flatters it: what counts is the circuit's.
      const q = assessment.circuits.find((circuit) => circuit.id === circuitWith(site, id)?.id)?.q;
      return [id, `Q ${format(q, 'plain', system).text}`];
    })
  );
}

/** The worst finding about each loop; one about a circuit is about all its loops. */
export function severitiesOf(site: Site, assessment: Assessment | null): ReadonlyMap<string, Severity> {
  const severities = new Map<string, Severity>();
  for (const severity of [...WORST_FIRST].reverse()) {
    for (const finding of assessment?.findings ?? []) {
      if (finding.severity !== severity) continue;
      for (const { kind, id } of refsOf(site, finding.selects))
        if (kind === 'loop') severities.set(id, severity);
    }
  }
  return severities;
}
