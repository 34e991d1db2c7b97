/** What the calculation says in words; the worker and the report load this. */
import { catalogue } from '../catalogue';
import { findings } from '../findings';
import { shapes } from '../shapes';

export const messages = { ...catalogue, ...findings, ...shapes } as const;
