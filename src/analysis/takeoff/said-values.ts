/** Numbers in a sentence about how a line of the take-off came about, in the units and the language shown. */
import { significant, typeset } from '#units/digits';
import { format } from '#units/format';
import type { UnitSystem } from '#units/kind';
import type { HowValue } from './results';

const FOOT = 0.3048;

const withUnit = (value: number, digits: number, unit: string): string =>
  `${typeset(significant(value, digits))} ${unit}`;

/** `pace`: metres an hour; `perMetre`: a metre; `time`: seconds; `area`: square metres; the others as `units` keeps them. */
export const valueSaid =
  (system: UnitSystem) =>
  ({ value, kind }: HowValue): string => {
    const isMetric = system === 'metric';
    switch (kind) {
      case 'count':
      case 'length':
      case 'smallLength':
      case 'volume':
        return format(value, kind, system).text;
      case 'share':
        return format(value, 'ratio', system).text;
      case 'area':
        return isMetric ? withUnit(value, 3, 'm²') : withUnit(value / FOOT ** 2, 3, 'ft²');
      case 'pace':
        return isMetric ? withUnit(value, 3, 'm/h') : withUnit(value / FOOT, 3, 'ft/h');
      case 'perMetre':
        return isMetric ? withUnit(value, 3, '1/m') : withUnit(value * FOOT, 3, '1/ft');
      case 'time':
        return format(value, 'time', system, value < 60 ? {} : { unit: value < 3_600 ? 'min' : 'h' }).text;
    }
  };
