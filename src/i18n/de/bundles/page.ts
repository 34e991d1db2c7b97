import type { Translation } from '../../message';

export const messages: Partial<Translation> = {};
