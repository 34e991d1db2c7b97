/** The cross-section of a slot: to scale, with steel that lies too deep for the scale drawn below a break. */
import type { SlotSection } from '#analysis/section/slot-section';

export interface SectionLayout {
  readonly width: number;
  readonly height: number;
  /** Of the frame's unit, pixels on a screen, per metre; the same across and down. */
  readonly scale: number;
  /** Of the road surface. */
  readonly surface: number;
  /** Middle of each slot. */
  readonly slots: readonly number[];
  readonly steel: readonly { readonly id: string; readonly y: number; readonly isBroken: boolean }[];
  /** Where the broken part begins; null where all is to scale. */
  readonly breakAt: number | null;
}

/** What the picture is drawn in, in its own unit. */
export interface SectionFrame {
  readonly width: number;
  readonly margin: { readonly top: number; readonly bottom: number };
  /** For the ground down to the bottom of the slot, with some below it. */
  readonly ground: number;
  /** For each steel below the break. */
  readonly brokenStep: number;
}

/** Pixels. */
const SCREEN: SectionFrame = { width: 330, margin: { top: 26, bottom: 34 }, ground: 170, brokenStep: 22 };
/** Steel down to so many slot depths is drawn to scale. */
const TO_SCALE = 3;
/** The ground shown below the slot where nothing else lies there, in slot depths. */
const BELOW = 0.15;
/** A slot takes at most this part of the width, alone or beside another: the words need the rest. */
const WIDEST_SLOT = { alone: 0.2, beside: 0.1 } as const;
/** Where slots stand, in widths of the picture: to the right of each its cover is written, before the first its depth. */
const ALONE = 0.5;
const SIDE_BY_SIDE = [0.25, 0.64] as const;

/** `stated`: a scale to keep to, in place of the largest at which the ground fits. */
export function sectionLayout(
  section: SlotSection,
  frame: SectionFrame = SCREEN,
  stated?: number
): SectionLayout {
  const { depth, width, slots, steel } = section;
  const near = steel.filter((each) => each.depth <= TO_SCALE * depth);
  const far = steel.filter((each) => each.depth > TO_SCALE * depth);
  const standsOut = Math.max(0, ...slots.map(({ cover }) => -cover), ...near.map((each) => -each.depth));
  const down = Math.max(
    depth * (1 + BELOW),
    ...near.map(({ depth: at, bars }) => at + 2 * (bars?.radius ?? 0) + depth * BELOW)
  );
  const largest = Math.min(
    frame.ground / (down + standsOut),
    (frame.width * WIDEST_SLOT[slots.length > 1 ? 'beside' : 'alone']) / Math.max(width, section.insulated)
  );
  const scale = stated ?? largest;
  const surface = frame.margin.top + standsOut * scale;
  const bottom = surface + down * scale;
  const breakAt = far.length > 0 ? bottom : null;
  return {
    width: frame.width,
    height: bottom + far.length * frame.brokenStep + frame.margin.bottom,
    scale,
    surface,
    slots: slots.map((_, index) => frame.width * (slots.length > 1 ? SIDE_BY_SIDE[index]! : ALONE)),
    steel: [
      ...near.map(({ id, depth: at }) => ({ id, y: surface + at * scale, isBroken: false })),
      ...far.map(({ id }, index) => ({ id, y: bottom + (index + 0.6) * frame.brokenStep, isBroken: true }))
    ],
    breakAt
  };
}

/** A round length of about a fifth of the picture, metres. */
export function scaleBarOf({ scale, width }: SectionLayout, isImperial: boolean): number {
  const steps = isImperial
    ? [0.125, 0.25, 0.5, 1, 2, 4].map((inches) => inches * 0.0254)
    : [0.002, 0.005, 0.01, 0.02, 0.05, 0.1];
  return steps.findLast((step) => step * scale <= width / 5) ?? steps[0]!;
}
