/** How a sheet looks: millimetres, and colours that a printer without colours keeps apart. */
export const INK = '#111716';
export const SOFT = '#46504d';
export const HAIR = '#8b9592';
export const WHITE = '#ffffff';

/** From the paper's edge to the frame: what every printer leaves, and a margin to hold it by. */
export const MARGIN = 10;

/** Sizes of the type; nothing on a sheet is smaller than `small`. */
export const TYPE = { small: 2.2, text: 2.5, value: 2.9, title: 3.4, name: 4 } as const;

export const LINE = { frame: 0.5, strong: 0.35, normal: 0.25, hair: 0.13 } as const;

/** Of a line of text, as a share of the type's size. */
export const LEADING = 1.35;
