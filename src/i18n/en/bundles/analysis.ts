/** What the calculation says in words; the worker and the report load this. */
import { findings } from '../findings';

export const messages = { ...findings } as const;
