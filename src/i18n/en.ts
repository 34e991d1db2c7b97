/** Everything that is said, in English. `{name}` is filled in; where a count decides, there is `one` and `other`. */
import { messages as analysis } from './en/bundles/analysis';
import { messages as page } from './en/bundles/page';
import { messages as views } from './en/bundles/views';

export const en = { ...analysis, ...page, ...views } as const;
