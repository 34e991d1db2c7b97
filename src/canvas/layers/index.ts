/** From the bottom to the top. */
import { ground } from './ground';
import type { LayerDefinition } from './layer';
import { loops } from './loops';
import { overlay } from './overlay';
import { vehicles } from './vehicles';

export const layers: readonly LayerDefinition[] = [ground, loops, vehicles, overlay];
