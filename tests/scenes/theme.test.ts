import { describe, expect, it } from 'vitest';
import { forcedTheme } from '#canvas/forced-theme';
import { DARK, LIGHT, type Theme } from '#scenes/theme';

type Colour = readonly [number, number, number, number];

function colourOf(text: string): Colour {
  const hex = /^#(..)(..)(..)$/.exec(text);
  if (hex) return [parseInt(hex[1]!, 16), parseInt(hex[2]!, 16), parseInt(hex[3]!, 16), 1];
  const parts = /^rgba\((\d+), (\d+), (\d+), ([\d.]+)\)$/.exec(text)!;
  return [Number(parts[1]), Number(parts[2]), Number(parts[3]), Number(parts[4])];
}

/** `upper` seen on `lower`. */
function over(upper: string, lower: string): Colour {
  const [a, b] = [colourOf(upper), colourOf(lower)];
  const mix = (index: 0 | 1 | 2): number => a[index] * a[3] + b[index] * (1 - a[3]);
  return [mix(0), mix(1), mix(2), 1];
}

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance([red, green, blue]: Colour): number {
  const linear = (value: number): number => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

function contrast(a: Colour, b: Colour): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/** As a browser computes the system's colours of two usual schemes of high contrast. */
const FORCED = {
  dark: {
    Canvas: 'rgb(0, 0, 0)',
    CanvasText: 'rgb(255, 255, 255)',
    GrayText: 'rgb(63, 242, 63)',
    LinkText: 'rgb(255, 255, 0)',
    Highlight: 'rgb(26, 235, 255)'
  },
  light: {
    Canvas: 'rgb(255, 255, 255)',
    CanvasText: 'rgb(0, 0, 0)',
    GrayText: 'rgb(96, 0, 0)',
    LinkText: 'rgb(0, 0, 159)',
    Highlight: 'rgb(55, 0, 110)'
  }
};

describe.each<[string, Theme]>([
  ['light', LIGHT],
  ['dark', DARK],
  ['forced dark', forcedTheme(FORCED.dark)],
  ['forced light', forcedTheme(FORCED.light)]
])('the %s theme', (_, theme) => {
  it('measures contrast as the standard does', () => {
    expect(contrast(colourOf('#000000'), colourOf('#ffffff'))).toBeCloseTo(21, 9);
    expect(contrast(colourOf('#777777'), colourOf('#ffffff'))).toBeCloseTo(4.48, 2);
  });

  it.each([
    'sawCut',
    'roadLine',
    'tail',
    'vehicleLine',
    'accent',
    'guide',
    'steel',
    'mapLine',
    'call'
  ] as const)('shows %s on paper and asphalt at 3 to 1 or more', (line) => {
    expect(contrast(colourOf(theme[line]), colourOf(theme.asphalt))).toBeGreaterThanOrEqual(3);
    expect(contrast(colourOf(theme[line]), colourOf(theme.paper))).toBeGreaterThanOrEqual(3);
  });

  it('keeps the saw cut clear of the tints under it', () => {
    for (const tint of [theme.callFill, theme.responseFill])
      expect(contrast(colourOf(theme.sawCut), over(tint, theme.asphalt))).toBeGreaterThanOrEqual(3);
  });

  it.each(['ink', 'inkSoft', 'guide', 'problem', 'caution', 'steel', 'mapLine', 'call'] as const)(
    'writes %s on its plate at 4.5 to 1 or more, whatever is under the plate',
    (text) => {
      for (const below of [theme.paper, theme.asphalt, theme.sawCut])
        expect(contrast(colourOf(theme[text]), over(theme.plate, below))).toBeGreaterThanOrEqual(4.5);
    }
  );
});
