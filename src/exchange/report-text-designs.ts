/** Kept variants in the report for people: what each of them comes to. */
import { typed } from '#units/digits';
import type { ReportedDesign } from './report-designs';
import type { Say } from './report-text-model';
import { blockIfAny } from './text-table';

const called = ({ id, name, isPresent }: ReportedDesign): string =>
  `${name.trim() === '' ? id : name}${isPresent ? ' (present)' : ''}`;

/** Nothing for a site without variants. */
export const designsBlock = (designs: readonly ReportedDesign[], say: Say): string[] =>
  designs.length === 0
    ? []
    : [
        ...blockIfAny('Kept designs: circuits at the terminals', [
          ['design', 'circuit', 'f', 'L', 'R', 'Q'],
          ...designs.flatMap((design) =>
            design.circuits.map((circuit) => [
              called(design),
              circuit.id,
              say(circuit.frequency_Hz, 'frequency'),
              say(circuit.inductance_H, 'inductance'),
              say(circuit.resistance_ohm, 'resistance'),
              typed(circuit.q.toPrecision(3))
            ])
          )
        ]),
        ...blockIfAny('Kept designs: quantities', [
          ['design', 'wire', 'saw cut', 'sealant', 'lead-in', 'cost'],
          ...designs.map((design) => {
            const { wire_m, sawCut_m, sealant_m3, leadIn_m, currency, costWithContingency } =
              design.quantities;
            return [
              called(design),
              say(wire_m, 'length'),
              say(sawCut_m, 'length'),
              say(sealant_m3, 'volume'),
              say(leadIn_m, 'length'),
              currency === null ? '–' : `${typed(costWithContingency.toFixed(2))} ${currency}`
            ];
          })
        ])
      ];
