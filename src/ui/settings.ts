/** What a person likes, apart from any site. */
import { defaultSnap, snapSwitches, type SnapSwitches } from '#editor/snap-settings';

export const THEMES = ['system', 'light', 'dark'] as const;
/** Of the plan: as the page is, or always the same. */
export const DRAWING_THEMES = ['page', 'light', 'dark'] as const;
export const WHEELS = ['zoom', 'pan'] as const;
export const LANGUAGE_CHOICES = ['system', 'en', 'de'] as const;
export const VIEWS = [
  'circuits',
  'passing',
  'frequencies',
  'units',
  'vehicles',
  'quantities',
  'compare',
  'field-check',
  'sheet'
] as const;
/** How the frequencies of all channels are shown. */
export const FREQUENCY_MODES = ['chart', 'table', 'simulator'] as const;
/** What is looked at of vehicles that pass. */
export const PASSING_MODES = ['along', 'across', 'calls', 'speed', 'approach'] as const;
/** What is looked at of what is bought, cut and paid. */
export const QUANTITY_MODES = ['take-off', 'prices', 'cutting'] as const;
/** What is looked at of designs side by side, and of what a change would do. */
export const COMPARE_MODES = ['designs', 'sweep', 'goal', 'field'] as const;
/** What is looked at of meters and faults. */
export const FIELD_CHECK_MODES = ['expected', 'readings', 'causes', 'walk-through', 'record'] as const;
/** By what the lines of a take-off are gathered. */
export const GROUPINGS = ['subject', 'kind', 'item'] as const;
/** The one figure that every loop's label on the plan carries. */
export const LIVE_FIGURES = ['inductance', 'quality', 'frequency', 'response', 'none'] as const;

/** Parts of the details that can be folded away. */
const SECTIONS = [
  'losses',
  'circuit-losses',
  'capacitance',
  'conditions',
  'ranges',
  'classes',
  'steel',
  'cross-section',
  'more',
  'tolerances',
  'pavement',
  'catalogue',
  'way',
  'timings'
] as const;

export type Theme = (typeof THEMES)[number];
export type DrawingTheme = (typeof DRAWING_THEMES)[number];
export type Wheel = (typeof WHEELS)[number];
export type LanguageChoice = (typeof LANGUAGE_CHOICES)[number];
export type ViewName = (typeof VIEWS)[number];
export type PassingMode = (typeof PASSING_MODES)[number];
export type FieldCheckMode = (typeof FIELD_CHECK_MODES)[number];
export type CompareMode = (typeof COMPARE_MODES)[number];
export type QuantityMode = (typeof QUANTITY_MODES)[number];
export type Grouping = (typeof GROUPINGS)[number];
export type FrequencyMode = (typeof FREQUENCY_MODES)[number];
export type SectionName = (typeof SECTIONS)[number];
export type LiveFigure = (typeof LIVE_FIGURES)[number];

export interface Settings {
  readonly theme: Theme;
  readonly drawingTheme: DrawingTheme;
  readonly language: LanguageChoice;
  /** What a turned wheel does; with control, and two fingers that pinch, always zoom. */
  readonly wheel: Wheel;
  /** Once a pen was seen, a finger only moves the view. */
  readonly penDraws: boolean;
  /** Pixels within which a pointer is drawn to what it snaps to. */
  readonly snapTolerance: number;
  /** What is snapped to, and whether the grid is seen. */
  readonly snapping: SnapSwitches;
  readonly view: ViewName;
  readonly frequencyMode: FrequencyMode;
  readonly passingMode: PassingMode;
  readonly quantityMode: QuantityMode;
  readonly compareMode: CompareMode;
  readonly fieldCheckMode: FieldCheckMode;
  /** Of who takes readings, until another name is written down. */
  readonly initials: string;
  readonly grouping: Grouping;
  readonly liveFigure: LiveFigure;
  readonly isLowerPanelOpen: boolean;
  /** The line that says what to try first. */
  readonly isHintShown: boolean;
  readonly openSections: readonly SectionName[];
  /** Pixels; null until somebody chooses: as much as the view needs. */
  readonly lowerPanelHeight: number | null;
  /** Pixels. */
  readonly sidePanelWidth: number;
}

/** Characters, as many as a reading can hold. */
export const LONGEST_INITIALS = 40;
export const SIDE_PANEL = { least: 280, most: 520 } as const;
export const SNAP_TOLERANCE = { least: 1, most: 40 } as const;
export const LOWER_PANEL = { least: 120, most: 560 } as const;

export const DEFAULT_SETTINGS: Settings = {
  theme: 'system',
  drawingTheme: 'page',
  language: 'system',
  wheel: 'zoom',
  penDraws: true,
  snapTolerance: 8,
  snapping: snapSwitches((name) => defaultSnap('metric')[name]),
  view: 'circuits',
  frequencyMode: 'chart',
  passingMode: 'along',
  quantityMode: 'take-off',
  compareMode: 'designs',
  fieldCheckMode: 'expected',
  initials: '',
  grouping: 'subject',
  liveFigure: 'inductance',
  isLowerPanelOpen: true,
  isHintShown: true,
  openSections: [],
  lowerPanelHeight: null,
  sidePanelWidth: 364
};

/** Pixels: tables are read a few rows at a time, an axis with its channels wants to be seen whole. */
const USUAL_HEIGHT: Readonly<Record<ViewName, number>> = {
  circuits: 210,
  passing: 380,
  frequencies: 320,
  units: 320,
  vehicles: 340,
  quantities: 380,
  compare: 420,
  'field-check': 420,
  sheet: 460
};

export const heightOf = ({ view, lowerPanelHeight }: Pick<Settings, 'view' | 'lowerPanelHeight'>): number =>
  lowerPanelHeight ?? USUAL_HEIGHT[view];

const clamped = (value: number, { least, most }: { least: number; most: number }): number =>
  Math.min(most, Math.max(least, value));

/** Settings from whatever was stored; each one that does not fit is the usual one. */
export function readSettings(found: unknown): Settings {
  const stored = (typeof found === 'object' && found !== null ? found : {}) as Readonly<
    Record<string, unknown>
  >;
  const usual = DEFAULT_SETTINGS;
  const oneOf = <T extends string>(options: readonly T[], key: string, fallback: T): T =>
    options.find((option) => option === stored[key]) ?? fallback;
  const size = <T>(key: string, range: { least: number; most: number }, fallback: T): number | T => {
    const value = stored[key];
    return typeof value === 'number' && Number.isFinite(value) ? clamped(value, range) : fallback;
  };
  const flag = (key: string, fallback: boolean): boolean => {
    const value = stored[key];
    return typeof value === 'boolean' ? value : fallback;
  };
  const { initials } = stored;
  const opened = stored['openSections'];
  const snapping = (stored['snapping'] ?? {}) as Readonly<Record<string, unknown>>;
  return {
    theme: oneOf(THEMES, 'theme', usual.theme),
    drawingTheme: oneOf(DRAWING_THEMES, 'drawingTheme', usual.drawingTheme),
    language: oneOf(LANGUAGE_CHOICES, 'language', usual.language),
    wheel: oneOf(WHEELS, 'wheel', usual.wheel),
    penDraws: flag('penDraws', usual.penDraws),
    snapTolerance: size('snapTolerance', SNAP_TOLERANCE, usual.snapTolerance),
    snapping: snapSwitches((name) => {
      const isOn = snapping[name];
      return typeof isOn === 'boolean' ? isOn : usual.snapping[name];
    }),
    view: oneOf(VIEWS, 'view', usual.view),
    frequencyMode: oneOf(FREQUENCY_MODES, 'frequencyMode', usual.frequencyMode),
    passingMode: oneOf(PASSING_MODES, 'passingMode', usual.passingMode),
    quantityMode: oneOf(QUANTITY_MODES, 'quantityMode', usual.quantityMode),
    compareMode: oneOf(COMPARE_MODES, 'compareMode', usual.compareMode),
    fieldCheckMode: oneOf(FIELD_CHECK_MODES, 'fieldCheckMode', usual.fieldCheckMode),
    initials: typeof initials === 'string' ? initials.slice(0, LONGEST_INITIALS) : usual.initials,
    grouping: oneOf(GROUPINGS, 'grouping', usual.grouping),
    liveFigure: oneOf(LIVE_FIGURES, 'liveFigure', usual.liveFigure),
    isLowerPanelOpen: flag('isLowerPanelOpen', usual.isLowerPanelOpen),
    isHintShown: flag('isHintShown', usual.isHintShown),
    openSections: Array.isArray(opened)
      ? SECTIONS.filter((name) => opened.includes(name))
      : usual.openSections,
    lowerPanelHeight: size('lowerPanelHeight', LOWER_PANEL, usual.lowerPanelHeight),
    sidePanelWidth: size('sidePanelWidth', SIDE_PANEL, usual.sidePanelWidth)
  };
}
