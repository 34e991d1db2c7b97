/** What kind of quantity each variable is: by it values are shown, and rounded as they are shown. */
import type { QuantityKind } from '#units/kind';
import type { Variable, VariableKind } from './variable';

const KINDS: Readonly<Record<VariableKind, QuantityKind>> = {
  turns: 'count',
  width: 'length',
  length: 'length',
  rotation: 'angle',
  slotDepth: 'smallLength',
  slotWidth: 'smallLength',
  cornerCut: 'length',
  wire: 'count',
  tailLength: 'length',
  leadInLength: 'length',
  leadInCable: 'count',
  gap: 'length',
  vehicleHeight: 'length',
  offset: 'length',
  along: 'length',
  shortedTurns: 'count',
  steelDepth: 'smallLength',
  steelPitch: 'smallLength',
  measuringTime: 'time',
  tripThreshold: 'ratio',
  frequencySetting: 'count',
  temperature: 'temperature',
  permittivity: 'plain'
};

export const quantityOf = ({ kind }: Variable): QuantityKind => KINDS[kind];
