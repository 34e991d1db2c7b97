/** What the calculation says in words; the worker and the report load this. */
import type { messages as english } from '../../en/bundles/analysis';
import type { Translation } from '../../message';
import { catalogue } from '../catalogue';
import { findings } from '../findings';
import { shapes } from '../shapes';

export const messages = { ...catalogue, ...findings, ...shapes } as const satisfies Pick<
  Translation,
  keyof typeof english
>;
