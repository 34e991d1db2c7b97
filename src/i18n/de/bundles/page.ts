/** What the page says before anything else is asked for. */
import { situations } from '../situations';
import { atOnce } from '../at-once';
import type { messages as english } from '../../en/bundles/page';
import type { Translation } from '../../message';
import { arrange } from '../arrange';
import { calculation } from '../calculation';
import { canvas } from '../canvas';
import { catalogue } from '../catalogue';
import { details } from '../details';
import { drawing } from '../drawing';
import { editor } from '../editor';
import { entry } from '../entry';
import { keeping } from '../keeping';
import { naming } from '../naming';
import { opening } from '../opening';
import { plan } from '../plan';
import { readout } from '../readout';
import { reading } from '../reading';
import { refusals } from '../refusals';
import { shapes } from '../shapes';
import { shell } from '../shell';
import { steel } from '../steel';
import { underlay } from '../underlay';
import { views } from '../views';
import { wiring } from '../wiring';

export const messages = {
  ...situations,
  ...atOnce,
  ...arrange,
  ...calculation,
  ...canvas,
  ...catalogue,
  ...details,
  ...drawing,
  ...editor,
  ...entry,
  ...keeping,
  ...naming,
  ...opening,
  ...plan,
  ...readout,
  ...reading,
  ...refusals,
  ...shapes,
  ...shell,
  ...steel,
  ...underlay,
  ...views,
  ...wiring
} as const satisfies Pick<Translation, keyof typeof english>;
