/** A figure that is none of the circuit's: mistyped, a bad contact, another terminal; or its digits with another prefix. */
import { SLIPS } from '../judge';
import type { Slip } from './correlated';
import { logDensity, logSum } from './normal';
import { meterAt, type Observed } from './observed';
import { PREFIX_SHARE, SLIP_SHARE } from './priors';
import { logAnything } from './unrelated';

/** `deviation`: of meter, tolerances and model together, where `predicted` is to be read. */
export const slipOf = ({ asked, value, accuracy }: Observed, predicted: number, deviation: number): Slip => {
  if (value === null) return { share: 0, logDensity: 0 };
  const anything = logAnything(asked.quantity, value, meterAt(value, accuracy));
  const factors = SLIPS[asked.quantity] ?? [];
  if (factors.length === 0) return { share: SLIP_SHARE, logDensity: anything };
  const share = SLIP_SHARE + PREFIX_SHARE;
  const prefix = Math.log(PREFIX_SHARE / share / factors.length);
  return {
    share,
    logDensity: logSum([
      Math.log(SLIP_SHARE / share) + anything,
      ...factors.map(
        (factor) => prefix + Math.log(Math.abs(factor)) + logDensity(value * factor, predicted, deviation)
      )
    ])
  };
};
