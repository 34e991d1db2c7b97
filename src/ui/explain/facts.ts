/** What an explanation can draw its present values from. */
import type {
  Assessment,
  Beat,
  CircuitReadout,
  ClassMargin,
  LoopReadout,
  NeighbourResponse,
  PlausibleRange,
  VehicleResponse
} from '#analysis/results';
import type { PlainMessageKey } from '#i18n/message';
import { wireOf, type Wire } from '#plan/catalogue/wires';
import type { Circuit, Loop, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { perimeter } from '#plan/geometry/polygons';
import type { FormatOptions } from '#units/format';
import type { QuantityKind } from '#units/kind';
import type { Topic } from './topic';

export interface Facts {
  readonly site: Site;
  readonly topic: Topic;
  readonly loop: (LoopReadout & { readonly drawn: Loop; readonly wireUsed: Wire | undefined }) | undefined;
  readonly circuit: (CircuitReadout & { readonly drawn: Circuit }) | undefined;
  readonly response: VehicleResponse | undefined;
  readonly range: PlausibleRange | undefined;
  readonly margin: ClassMargin | undefined;
  readonly beat: Beat | undefined;
  readonly neighbour: NeighbourResponse | undefined;
  readonly assessment: Assessment | null;
}

/** One value with its symbol: what went in, or what came out. */
export interface Given {
  /** In the notation of `formula.ts`; empty where there is none. */
  readonly symbol: string;
  readonly label: PlainMessageKey;
  readonly value: number | null | undefined;
  readonly kind: QuantityKind;
  readonly options?: FormatOptions;
}

export interface Entry {
  readonly formulas: readonly string[];
  readonly inputs: (facts: Facts) => readonly Given[];
  readonly result: (facts: Facts) => Given;
}

export const given = (
  symbol: string,
  label: PlainMessageKey,
  value: number | null | undefined,
  kind: QuantityKind,
  options?: FormatOptions
): Given => ({ symbol, label, value, kind, ...(options ? { options } : {}) });

/** One turn's length along the saw cut without shared slots; enough to recognise the loop by. */
export const perimeterOf = (loop: Loop | undefined): number | undefined =>
  loop && perimeter(outlineOf(loop.shape));

export function factsOf(site: Site, assessment: Assessment | null, topic: Topic): Facts {
  const drawnLoop = site.loops.find(({ id }) => id === topic.loop);
  const loop = assessment?.loops.find(({ id }) => id === topic.loop);
  const drawnCircuit = site.circuits.find(({ id }) => id === topic.circuit);
  const circuit = assessment?.circuits.find(({ id }) => id === topic.circuit);
  const ranges = circuit?.ranges;
  return {
    site,
    topic,
    assessment,
    loop: loop && drawnLoop && { ...loop, drawn: drawnLoop, wireUsed: wireOf(drawnLoop.wire, site) },
    circuit: circuit && drawnCircuit && { ...circuit, drawn: drawnCircuit },
    response: circuit?.responses.find(({ vehicle }) => vehicle === topic.vehicle),
    range: topic.figure
      ? ranges?.[topic.figure]
      : ranges?.responses.find(({ vehicle }) => vehicle === topic.vehicle)?.worst,
    margin: circuit?.classes?.find(({ vehicle }) => vehicle === topic.vehicle),
    beat: assessment?.beats.find(({ a, b }) => a === topic.circuit && b === topic.other),
    neighbour: circuit?.neighbours.find(
      ({ lane, vehicle }) => lane === topic.lane && vehicle === topic.vehicle
    )
  };
}
