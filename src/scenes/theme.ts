/** The drawing's colours: a clean sheet by day, the same sheet by night. Lines stand out 3:1, texts 4.5:1. */
export interface Theme {
  readonly paper: string;
  readonly gridFine: string;
  readonly gridCoarse: string;
  readonly asphalt: string;
  /** The same over a picture, which must be seen through it. */
  readonly asphaltOnPicture: string;
  /** Edges of lanes, outlines of what is painted on the road. */
  readonly roadLine: string;
  readonly paint: string;
  readonly sawCut: string;
  /** The bottom of a slot that two runs share, seen between its walls. */
  readonly slotCore: string;
  readonly tail: string;
  /** Bars and outlines of steel in the pavement, and the tone of a plate. */
  readonly steel: string;
  readonly steelBars: string;
  readonly plateFill: string;
  readonly vehicleFill: string;
  readonly vehicleLine: string;
  readonly accent: string;
  readonly accentSoft: string;
  readonly guide: string;
  readonly call: string;
  readonly callFill: string;
  readonly responseFill: string;
  /** Lines of a response map, and the tone that each further level adds. */
  readonly mapLine: string;
  readonly mapFill: string;
  readonly problem: string;
  readonly caution: string;
  readonly ink: string;
  readonly inkSoft: string;
  /** Behind texts, so that they can be read over any line. */
  readonly plate: string;
  /** How large texts are, as a share of their usual size: who asks the browser for larger ones gets them here too. */
  readonly textScale: number;
}

export const LIGHT: Theme = {
  paper: '#fcfdfc',
  gridFine: 'rgba(30, 60, 55, 0.08)',
  gridCoarse: 'rgba(30, 60, 55, 0.17)',
  asphalt: '#d3d9d7',
  asphaltOnPicture: 'rgba(211, 217, 215, 0.3)',
  roadLine: '#5a6663',
  paint: '#ffffff',
  sawCut: '#151d1b',
  slotCore: '#9aa5a2',
  tail: '#3d4946',
  steel: '#6b4a3c',
  steelBars: 'rgba(107, 74, 60, 0.42)',
  plateFill: 'rgba(107, 74, 60, 0.30)',
  vehicleFill: 'rgba(252, 253, 252, 0.56)',
  vehicleLine: '#3a4a55',
  accent: '#0a6369',
  accentSoft: 'rgba(10, 99, 105, 0.12)',
  guide: '#9c1b66',
  call: '#1c6638',
  callFill: 'rgba(28, 102, 56, 0.34)',
  responseFill: 'rgba(42, 87, 135, 0.30)',
  mapLine: '#2a5787',
  mapFill: 'rgba(42, 87, 135, 0.06)',
  problem: '#a11f19',
  caution: '#7a4c00',
  ink: '#17211f',
  inkSoft: '#4b5955',
  plate: 'rgba(252, 253, 252, 0.9)',
  textScale: 1
};

export const DARK: Theme = {
  paper: '#12181a',
  gridFine: 'rgba(200, 225, 220, 0.07)',
  gridCoarse: 'rgba(200, 225, 220, 0.15)',
  asphalt: '#283130',
  asphaltOnPicture: 'rgba(40, 49, 48, 0.35)',
  roadLine: '#8f9d99',
  paint: '#73807d',
  sawCut: '#eef4f2',
  slotCore: '#5d6b68',
  tail: '#bac6c3',
  steel: '#d3ab98',
  steelBars: 'rgba(211, 171, 152, 0.42)',
  plateFill: 'rgba(211, 171, 152, 0.26)',
  vehicleFill: 'rgba(18, 24, 26, 0.55)',
  vehicleLine: '#a9bccb',
  accent: '#5fc5c6',
  accentSoft: 'rgba(95, 197, 198, 0.16)',
  guide: '#f094c6',
  call: '#82d29d',
  callFill: 'rgba(130, 210, 157, 0.32)',
  responseFill: 'rgba(148, 193, 242, 0.26)',
  mapLine: '#94c1f2',
  mapFill: 'rgba(148, 193, 242, 0.06)',
  problem: '#ff9a90',
  caution: '#f2b95d',
  ink: '#e7edeb',
  inkSoft: '#a7b5b1',
  plate: 'rgba(18, 24, 26, 0.88)',
  textScale: 1
};

/** Printed, by printers without colours too: white paper, dark lines, a light road; nothing depends on a colour. */
export const PAPER: Theme = {
  paper: '#ffffff',
  gridFine: 'rgba(0, 0, 0, 0.08)',
  gridCoarse: 'rgba(0, 0, 0, 0.16)',
  asphalt: '#eceeed',
  asphaltOnPicture: 'rgba(236, 238, 237, 0.3)',
  roadLine: '#3f4745',
  paint: '#ffffff',
  sawCut: '#000000',
  slotCore: '#b4bab8',
  tail: '#2b3230',
  steel: '#4c5250',
  steelBars: 'rgba(76, 82, 80, 0.4)',
  plateFill: 'rgba(76, 82, 80, 0.18)',
  vehicleFill: 'rgba(255, 255, 255, 0.6)',
  vehicleLine: '#3f4745',
  accent: '#111716',
  accentSoft: 'rgba(17, 23, 22, 0.08)',
  guide: '#111716',
  call: '#111716',
  callFill: 'rgba(17, 23, 22, 0.16)',
  responseFill: 'rgba(17, 23, 22, 0.1)',
  mapLine: '#3f4745',
  mapFill: 'rgba(63, 71, 69, 0.06)',
  problem: '#111716',
  caution: '#111716',
  ink: '#111716',
  inkSoft: '#3f4745',
  plate: '#ffffff',
  textScale: 1
};

export const THEMES = { light: LIGHT, dark: DARK } as const;
export type ThemeName = keyof typeof THEMES;
