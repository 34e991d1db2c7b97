/** The report for people: one block a section, lengths and figures in the site's display system. */
import { typed } from '#units/digits';
import { format } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';
import type { PartialReport } from './report';
import { beatBlock, channelBlock } from './report-text-beats';
import {
  capacitanceBlock,
  classBlock,
  conditionsBlock,
  lossBlock,
  rangeBlock,
  steelBlock
} from './report-text-model';
import { callBlock, heightBlock, passBlock } from './report-text-passes';
import { designsBlock } from './report-text-designs';
import { cuttingBlock } from './report-text-cutting';
import { quantityBlock } from './report-text-quantities';
import { readingsBlock } from './report-text-readings';
import { block } from './text-table';

/** A name must neither break a line nor command whatever shows it: a terminal obeys some controls. */
const onOneLine = (text: string): string =>
  text.replace(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ').replace(/[\p{Cf}\p{Cs}]/gu, '');

export const reportText = (report: PartialReport, system: UnitSystem): string => {
  const say = (value: number, kind: QuantityKind): string => format(value, kind, system).text;
  const lines = [`${report.site}  (${report.file})`];
  // pairs of hundreds of things are more than a call takes arguments
  const add = (more: readonly string[]) => {
    for (const line of more) lines.push(line);
  };
  const { loops, couplings, circuits, probes, passes, detectionHeights, calls } = report;
  const { channels, beats, quantities, cutting, readings, findings, designs } = report;
  if (loops)
    lines.push(
      ...block(
        'Loops alone',
        [
          ['loop', 'at', 'L', 'R dc', 'R ac', 'C', 'self-resonance', 'wire', 'slot'],
          ...loops.map((loop) => [
            loop.id,
            say(loop.frequency_Hz, 'frequency'),
            say(loop.inductance_H, 'inductance'),
            say(loop.resistanceDc_ohm, 'resistance'),
            say(loop.resistanceAc_ohm, 'resistance'),
            say(loop.capacitance_F, 'capacitance'),
            say(loop.selfResonance_Hz, 'frequency'),
            say(loop.wireLength_m, 'length'),
            say(loop.slotLength_m, 'length')
          ])
        ],
        'no loops'
      ),
      ...capacitanceBlock(loops, say)
    );
  if (couplings)
    add(
      block(
        'Coupling between loops',
        [
          ['pair', 'M', 'k'],
          ...couplings.map(({ a, b, mutual_H, k }) => [
            `${a} + ${b}`,
            say(mutual_H, 'inductance'),
            typed(k.toExponential(2))
          ])
        ],
        'no pairs'
      )
    );
  if (circuits) {
    lines.push(
      ...block(
        'Circuits at the terminals',
        [
          ['circuit', 'f', 'L', 'R', 'Q', 'R dc'],
          ...circuits.map((circuit) => [
            circuit.id,
            say(circuit.frequency_Hz, 'frequency'),
            say(circuit.inductance_H, 'inductance'),
            say(circuit.resistance_ohm, 'resistance'),
            typed(circuit.q.toPrecision(3)),
            say(circuit.resistanceDc_ohm, 'resistance')
          ])
        ],
        'no circuits'
      ),
      ...block(
        'Strongest ΔL/L of a passing vehicle, best and worst path',
        [
          ['circuit', 'vehicle', 'best', 'worst', 'times threshold', 'asked for'],
          ...circuits.flatMap((circuit) =>
            circuit.responses.map((response) => [
              circuit.id,
              response.vehicle,
              say(response.best, 'ratio'),
              say(response.worst, 'ratio'),
              response.margin === null ? '–' : typed(response.margin.toPrecision(3)),
              response.wanted ? 'yes' : ''
            ])
          )
        ],
        'no circuits'
      ),
      ...lossBlock(circuits, say),
      ...conditionsBlock(circuits, say),
      ...rangeBlock(circuits, say),
      ...classBlock(circuits, say),
      ...steelBlock(circuits, say)
    );
  }
  if (probes)
    lines.push(
      ...block(
        'Placed vehicles',
        [
          ['vehicle', 'at', 'circuit', 'ΔL', 'ΔL/L', 'Δf', 'call'],
          ...probes.flatMap((probe) =>
            probe.circuits.map((circuit) => [
              probe.vehicle,
              probe.at.map((value) => say(value, 'length')).join(', '),
              circuit.id,
              say(circuit.deltaL_H, 'inductance'),
              say(circuit.deltaLOverL, 'ratio'),
              say(circuit.deltaF_Hz, 'frequency'),
              circuit.detected ? 'yes' : 'no'
            ])
          )
        ],
        'none'
      )
    );
  if (passes) lines.push(...passBlock(passes, say));
  if (detectionHeights) lines.push(...heightBlock(detectionHeights, say));
  if (calls) lines.push(...callBlock(calls));
  if (channels) lines.push(...channelBlock(channels, say));
  if (beats) add(beatBlock(beats, say));
  if (quantities) lines.push(...quantityBlock(quantities, say));
  if (cutting) lines.push(...cuttingBlock(cutting, say));
  if (readings) lines.push(...readingsBlock(readings, say));
  if (findings) {
    lines.push('', 'Findings');
    if (findings.length === 0) lines.push('  none');
    for (const { severity, message, advice } of findings)
      lines.push(`  ${severity.toUpperCase()}: ${message}`, `    ${advice}`);
  }
  if (designs) lines.push(...designsBlock(designs, say));
  return `${lines.map(onOneLine).join('\n')}\n`;
};
