/** Everything the page says, in English. `{name}` is filled in; where a count decides, there is `one` and `other`. */
import { details } from './en/details';
import { plan } from './en/plan';
import { readout } from './en/readout';
import { shell } from './en/shell';
import { views } from './en/views';

export const en = { ...shell, ...plan, ...details, ...readout, ...views } as const;
