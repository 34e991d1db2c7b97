/** Pictures of the arrangements that need no figures. */
import AlignCenterHorizontal from '@lucide/svelte/icons/align-center-horizontal';
import AlignCenterVertical from '@lucide/svelte/icons/align-center-vertical';
import AlignEndHorizontal from '@lucide/svelte/icons/align-end-horizontal';
import AlignEndVertical from '@lucide/svelte/icons/align-end-vertical';
import AlignStartHorizontal from '@lucide/svelte/icons/align-start-horizontal';
import AlignStartVertical from '@lucide/svelte/icons/align-start-vertical';
import AlignHorizontalSpaceBetween from '@lucide/svelte/icons/align-horizontal-space-between';
import AlignVerticalSpaceBetween from '@lucide/svelte/icons/align-vertical-space-between';
import FlipHorizontal2 from '@lucide/svelte/icons/triangles-centerline-dashed-horizontal';
import FlipVertical2 from '@lucide/svelte/icons/triangles-centerline-dashed-vertical';
import type { CommandId } from '#editor/types';

export const ARRANGE_ICONS = [
  ['align-left', AlignStartVertical],
  ['align-centre', AlignCenterVertical],
  ['align-right', AlignEndVertical],
  ['align-top', AlignStartHorizontal],
  ['align-middle', AlignCenterHorizontal],
  ['align-bottom', AlignEndHorizontal],
  ['distribute-x', AlignHorizontalSpaceBetween],
  ['distribute-y', AlignVerticalSpaceBetween],
  ['mirror-x', FlipHorizontal2],
  ['mirror-y', FlipVertical2]
] as const satisfies readonly (readonly [CommandId, unknown])[];
