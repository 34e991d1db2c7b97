import { sameRef } from './selection';
import type { Overlay } from './types';

/** Nothing in hand, nothing under the pointer. */
export const AT_REST: Overlay = { box: null, guides: [], label: null, hover: null, cursor: 'default' };

export const overlayOf = (shown: Partial<Overlay> | undefined): Overlay =>
  shown === undefined ? AT_REST : { ...AT_REST, ...shown };

/** A pointer that only wanders must not make anybody redraw. */
export const looksSame = (a: Overlay, b: Overlay): boolean =>
  a === b ||
  (a.cursor === b.cursor &&
    sameRef(a.hover, b.hover) &&
    a.box === b.box &&
    a.label === b.label &&
    a.guides.length === 0 &&
    b.guides.length === 0);
