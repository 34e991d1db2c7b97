/** The cables of a lead-in in a row, from the pull box (0) to the cabinet. */
import { COUNTS } from '../bounds';
import type { Circuit, Site } from '../schema';
import { updateCircuit } from './circuits';
import { patched, type Patch } from './list';
import { updateLeadInRoute } from './routes';

export interface LeadInPart {
  readonly cable: string;
  /** Metres. */
  readonly length: number;
}

export const leadInParts = ({ leadIn }: Circuit): readonly LeadInPart[] => [
  { cable: leadIn.cable, length: leadIn.length },
  ...(leadIn.further ?? [])
];

/** What the file holds beside the two fields stays with its part; the route stays with the lead-in. */
function withParts(
  site: Site,
  id: string,
  change: (parts: readonly LeadInPart[]) => readonly LeadInPart[]
): Site {
  const circuit = site.circuits.find((each) => each.id === id);
  if (!circuit) return site;
  const before = leadInParts(circuit);
  const [first, ...further] = change(before);
  if (!first || further.length > COUNTS.cablesInRow) return site;
  const leadIn = patched<Circuit['leadIn']>(circuit.leadIn, {
    cable: first.cable,
    length: first.length,
    further: further.length > 0 ? further : undefined
  });
  const isSame = JSON.stringify(leadIn) === JSON.stringify(circuit.leadIn);
  return isSame ? site : updateCircuit(site, id, { leadIn });
}

/** One more cable at the cabinet's end. */
export const addLeadInPart = (site: Site, circuit: string, part: LeadInPart): Site =>
  withParts(site, circuit, (parts) => [...parts, part]);

/** A typed length of the first cable ends that its way is drawn. */
export function updateLeadInPart(site: Site, circuit: string, at: number, patch: Patch<LeadInPart>): Site {
  const next = withParts(site, circuit, (parts) =>
    parts.map((part, index) => (index === at ? patched<LeadInPart>(part, patch) : part))
  );
  const isTyped = next !== site && at === 0 && patch.length !== undefined;
  return isTyped ? updateLeadInRoute(next, circuit, undefined) : next;
}

/** The only cable of a lead-in stays. */
export const removeLeadInPart = (site: Site, circuit: string, at: number): Site =>
  withParts(site, circuit, (parts) => (parts.length > 1 ? parts.filter((_, index) => index !== at) : parts));

/** Changes places with the next cable towards the cabinet. */
export const swapLeadInParts = (site: Site, circuit: string, at: number): Site =>
  withParts(site, circuit, (parts) => {
    const [a, b] = [parts[at], parts[at + 1]];
    if (!a || !b) return parts;
    return parts.map((part, index) => (index === at ? b : index === at + 1 ? a : part));
  });
