/** At the unit's terminals: as the study of a circuit says, or its network with turns shorted in it. */
import type { TerminalReadout } from '../../readouts/circuits';
import { shortedTerminals, type ShortedTerminals } from '../shorted';
import type { FigureMaker } from './figure';

const terminal =
  (field: keyof TerminalReadout & keyof ShortedTerminals): FigureMaker =>
  (trial, { subject }) => {
    const surveyed = trial.survey.circuits.get(subject ?? '');
    if (!surveyed) return null;
    const shorted = shortedTerminals(trial, surveyed);
    return shorted === undefined ? surveyed.readout[field] : (shorted?.[field] ?? null);
  };

export const inductance = terminal('inductance_H');
export const resistance = terminal('resistance_ohm');
export const resistanceDc = terminal('resistanceDc_ohm');
export const q = terminal('q');
export const frequency = terminal('frequency_Hz');
