/** What a rule sees, and how it writes. A rule is one file: numbers in, findings out. */
import { withinSentence } from '#i18n/locale';
import { format, type FormatOptions } from '#units/format';
import type { QuantityKind } from '#units/kind';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Circuit, Loop, Site } from '#plan/schema';
import type { Assessment, CircuitReadout, Finding, LoopReadout } from '../results';

export interface FindingContext {
  readonly site: Site;
  readonly result: Omit<Assessment, 'findings'>;
  readonly loops: readonly { readonly loop: Loop; readonly readout: LoopReadout }[];
  readonly circuits: readonly { readonly circuit: Circuit; readonly readout: CircuitReadout }[];
  /** A number with its unit in the site's display system. */
  readonly say: (value: number, kind: QuantityKind, options?: FormatOptions) => string;
}

export type FindingRule = (context: FindingContext) => readonly Finding[];

/** The name a person gave, else the id. */
export const called = ({ id, name }: { readonly id: string; readonly name: string }): string =>
  name.trim() === '' ? id : name;

/** A vehicle's name inside a sentence. */
export const calledVehicle = (id: string, site: Site): string =>
  withinSentence(called(vehicleOf(id, site) ?? { id, name: '' }));

export const createContext = (site: Site, result: Omit<Assessment, 'findings'>): FindingContext => ({
  site,
  result,
  loops: site.loops.flatMap((loop) => {
    const readout = result.loops.find(({ id }) => id === loop.id);
    return readout ? [{ loop, readout }] : [];
  }),
  circuits: site.circuits.flatMap((circuit) => {
    const readout = result.circuits.find(({ id }) => id === circuit.id);
    return readout ? [{ circuit, readout }] : [];
  }),
  say: (value, kind, options) => format(value, kind, site.displayUnits, options).text
});
