/** Everything the page says, in English. `{name}` is filled in; where a count decides, there is `one` and `other`. */
import { details } from './en/details';
import { plan } from './en/plan';
import { readout } from './en/readout';
import { steel } from './en/steel';
import { shell } from './en/shell';
import { views } from './en/views';

export const en = { ...shell, ...steel, ...plan, ...details, ...readout, ...views } as const;
