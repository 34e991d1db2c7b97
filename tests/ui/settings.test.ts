import { expect, test } from 'vitest';
import { snapSwitches } from '#editor/snap-settings';
import { DEFAULT_SETTINGS, heightOf, LOWER_PANEL, readSettings, VIEWS, type Settings } from '#ui/settings';

test('settings are read back as they were', () => {
  const chosen: Settings = {
    theme: 'dark',
    drawingTheme: 'light',
    language: 'de',
    wheel: 'pan',
    penDraws: false,
    snapTolerance: 14,
    snapping: snapSwitches((name) => name === 'gaps' || name === 'showGrid'),
    view: 'quantities',
    frequencyMode: 'table',
    passingMode: 'calls',
    quantityMode: 'prices',
    compareMode: 'sweep',
    fieldCheckMode: 'causes',
    initials: 'M. K.',
    grouping: 'item',
    liveFigure: 'none',
    isLowerPanelOpen: false,
    isHintShown: false,
    openSections: ['losses', 'classes'],
    lowerPanelHeight: 300,
    sidePanelWidth: 400
  };
  expect(readSettings(JSON.parse(JSON.stringify(chosen)))).toEqual(chosen);
});

test.each([
  undefined,
  null,
  7,
  'dark',
  [],
  { snapping: { grid: 'yes', attic: false } },
  { snapping: null },
  {
    theme: 'pink',
    view: 3,
    initials: 7,
    frequencyMode: 'song',
    sidePanelWidth: 'wide',
    openSections: ['attic', 7]
  }
])('what does not fit is as usual: %o', (found) => {
  expect(readSettings(found)).toEqual(DEFAULT_SETTINGS);
});

test('a panel can be neither lost nor larger than the page', () => {
  expect(readSettings({ lowerPanelHeight: -50 }).lowerPanelHeight).toBe(LOWER_PANEL.least);
  expect(readSettings({ lowerPanelHeight: 1e9 }).lowerPanelHeight).toBe(LOWER_PANEL.most);
  expect(readSettings({ lowerPanelHeight: Number.NaN }).lowerPanelHeight).toBe(
    DEFAULT_SETTINGS.lowerPanelHeight
  );
});

test('the lower panel is as high as its view needs, until somebody chooses', () => {
  const usual = readSettings({});
  expect(usual.lowerPanelHeight).toBeNull();
  expect(heightOf({ ...usual, view: 'frequencies' })).toBeGreaterThan(
    heightOf({ ...usual, view: 'circuits' })
  );
  for (const view of VIEWS) {
    expect(heightOf({ ...usual, view })).toBeGreaterThanOrEqual(LOWER_PANEL.least);
    expect(heightOf({ view, lowerPanelHeight: 400 })).toBe(400);
  }
});
