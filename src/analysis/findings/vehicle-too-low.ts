/** A vehicle of the user's own whose plates are too large for their height: its mesh cannot follow the field. */
import { t } from '#i18n/message';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { called, type FindingRule } from './finding';

export const vehicleTooLow: FindingRule = ({ site, result, say }) =>
  result.beyondModel.map((id) => {
    const vehicle = vehicleOf(id, site) ?? { id, name: '', parts: [] };
    const [largest] = vehicle.parts
      .flatMap((part) => (part.kind === 'plate' ? [part] : []))
      .sort((a, b) => (b.width * b.length) / b.height ** 2 - (a.width * a.length) / a.height ** 2);
    const plate = largest
      ? t('finding.vehicleTooLow.plate', {
          width: say(largest.width, 'length'),
          length: say(largest.length, 'length'),
          height: say(largest.height, 'smallLength')
        })
      : '';
    return {
      severity: 'problem',
      code: 'vehicle-too-low',
      subject: id,
      selects: [],
      message: t('finding.vehicleTooLow', { vehicle: called(vehicle), plate }),
      advice: t('finding.vehicleTooLow.advice')
    };
  });
