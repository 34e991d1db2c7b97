/** Everything the page says, in English. `{name}` is filled in; where a count decides, there is `one` and `other`. */
import { across } from './en/across';
import { along } from './en/along';
import { approach } from './en/approach';
import { calls } from './en/calls';
import { map } from './en/map';
import { passing } from './en/passing';
import { speed } from './en/speed';
import { traffic } from './en/traffic';
import { vehicles } from './en/vehicles';
import { advice } from './en/advice';
import { details } from './en/details';
import { explain } from './en/explain';
import { explainCircuit } from './en/explain-circuit';
import { explainPasses } from './en/explain-passes';
import { frequencies } from './en/frequencies';
import { plan } from './en/plan';
import { planner } from './en/planner';
import { readout } from './en/readout';
import { section } from './en/section';
import { steel } from './en/steel';
import { shell } from './en/shell';
import { simulator } from './en/simulator';
import { units } from './en/units';
import { views } from './en/views';
import { wiring } from './en/wiring';

export const en = {
  ...across,
  ...along,
  ...approach,
  ...calls,
  ...map,
  ...passing,
  ...speed,
  ...traffic,
  ...vehicles,
  ...advice,
  ...shell,
  ...simulator,
  ...steel,
  ...section,
  ...explain,
  ...explainCircuit,
  ...explainPasses,
  ...frequencies,
  ...plan,
  ...planner,
  ...details,
  ...readout,
  ...units,
  ...views,
  ...wiring
} as const;
