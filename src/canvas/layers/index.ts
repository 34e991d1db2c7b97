/** From the bottom to the top. */
import { ground } from './ground';
import type { LayerDefinition } from './layer';
import { loops } from './loops';
import { overlay } from './overlay';
import { underlay } from './underlay';
import { vehicles } from './vehicles';

export const layers: readonly LayerDefinition[] = [underlay, ground, loops, vehicles, overlay];
