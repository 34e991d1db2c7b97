/** Commands that put things in relation to each other. */
import type { Command } from '../../types';
import { aligning } from './align';
import { centring } from './centre';
import { distributing } from './distribute';
import { mirroring } from './mirror';
import { typedArrangements } from './typed';

export const arrangeCommands: readonly Command[] = [
  ...aligning,
  centring,
  ...distributing,
  ...typedArrangements,
  ...mirroring
];
