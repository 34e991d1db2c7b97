/** A vehicle of the user's own whose plates are too large for their height: its mesh cannot follow the field. */
import { vehicleOf } from '#plan/catalogue/vehicles';
import { called, type FindingRule } from './finding';

export const vehicleTooLow: FindingRule = ({ site, result, say }) =>
  result.beyondModel.map((id) => {
    const vehicle = vehicleOf(id, site) ?? { id, name: '', parts: [] };
    const [largest] = vehicle.parts
      .flatMap((part) => (part.kind === 'plate' ? [part] : []))
      .sort((a, b) => (b.width * b.length) / b.height ** 2 - (a.width * a.length) / a.height ** 2);
    const plate = largest
      ? ` A plate of ${say(largest.width, 'length')} × ${say(largest.length, 'length')} at ${say(largest.height, 'smallLength')} is too large for its height.`
      : '';
    return {
      severity: 'problem',
      code: 'vehicle-too-low',
      subject: id,
      selects: [],
      message: `What ${called(vehicle)} does to a loop is beyond the model: do not trust its figures.${plate}`,
      advice:
        'Give the plate its effective height, which lies above the clearance of a real underside, or make it smaller.'
    };
  });
