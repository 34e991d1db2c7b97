/** The drawing in the few colours that a person's system forces on everything: shape, dash and width tell the rest. */
import type { Theme } from '#scenes/theme';

/** Colours that a system names, as CSS does. */
export const SYSTEM_COLOURS = ['Canvas', 'CanvasText', 'GrayText', 'LinkText', 'Highlight'] as const;
export type SystemColours = Readonly<Record<(typeof SYSTEM_COLOURS)[number], string>>;

/** The same colour, let through: `colour` as a browser computes it, "rgb(0, 128, 255)" or "rgba(0, 128, 255, 1)". */
function veil(colour: string, alpha: number): string {
  const [red = '0', green = '0', blue = '0'] = colour.match(/[\d.]+/g) ?? [];
  return `rgba(${red}, ${green}, ${blue}, ${alpha})`;
}

export function forcedTheme({ Canvas, CanvasText, GrayText, LinkText, Highlight }: SystemColours): Theme {
  const [paper, ink] = [veil(Canvas, 1), veil(CanvasText, 1)];
  return {
    paper,
    gridFine: veil(GrayText, 0.25),
    gridCoarse: veil(GrayText, 0.5),
    asphalt: paper,
    asphaltOnPicture: veil(Canvas, 0.3),
    roadLine: ink,
    paint: ink,
    sawCut: ink,
    slotCore: paper,
    tail: ink,
    steel: ink,
    steelBars: veil(CanvasText, 0.6),
    plateFill: veil(CanvasText, 0.2),
    vehicleFill: veil(Canvas, 0.6),
    vehicleLine: ink,
    accent: veil(Highlight, 1),
    accentSoft: veil(Highlight, 0.25),
    guide: veil(LinkText, 1),
    call: ink,
    callFill: veil(Highlight, 0.4),
    responseFill: veil(CanvasText, 0.2),
    mapLine: veil(LinkText, 1),
    mapFill: veil(LinkText, 0.06),
    problem: ink,
    caution: ink,
    ink,
    inkSoft: ink,
    plate: paper,
    textScale: 1
  };
}
