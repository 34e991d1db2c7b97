/** What the browser and the system have to say about looks: forced colours, the size of texts, a sheet of white paper. */
import { forcedTheme, SYSTEM_COLOURS, type SystemColours } from './forced-theme';
import { THEMES, type Theme, type ThemeName } from '#scenes/theme';

/** Pixels of the root's text in a browser that nobody has changed. */
const USUAL_TEXT = 16;

export interface Look {
  /** A theme as it is to be drawn now. */
  themeOf(name: ThemeName): Theme;
  stop(): void;
}

/** Calls back whenever `themeOf` may answer differently; before printing there is no time for another frame. */
export function watchLook(container: HTMLElement, changed: () => void): Look {
  const forced = window.matchMedia('(forced-colors: active)');
  // As large as the root's text, so that its size tells when that changes; it also resolves the names of colours.
  const gauge = document.createElement('div');
  Object.assign(gauge.style, { position: 'absolute', width: '1rem', height: '1rem', visibility: 'hidden' });
  gauge.style.setProperty('forced-color-adjust', 'none');
  gauge.ariaHidden = 'true';
  container.append(gauge);

  function resolved(name: string): string {
    gauge.style.color = name;
    return getComputedStyle(gauge).color;
  }

  function systemTheme(): Theme {
    const colours = Object.fromEntries(SYSTEM_COLOURS.map((name) => [name, resolved(name)]));
    return forcedTheme(colours as SystemColours);
  }

  let isPrinting = false;
  const print = (now: boolean) => () => {
    isPrinting = now;
    changed();
  };
  const [begin, end] = [print(true), print(false)];
  window.addEventListener('beforeprint', begin);
  window.addEventListener('afterprint', end);

  let textScale = gauge.offsetWidth / USUAL_TEXT || 1;
  const observer = new ResizeObserver(() => {
    const now = gauge.offsetWidth / USUAL_TEXT || 1;
    if (now === textScale) return;
    textScale = now;
    changed();
  });
  observer.observe(gauge);
  forced.addEventListener('change', changed);

  return {
    themeOf(name) {
      const theme = isPrinting ? THEMES.light : forced.matches ? systemTheme() : THEMES[name];
      return textScale === 1 ? theme : { ...theme, textScale };
    },
    stop() {
      observer.disconnect();
      forced.removeEventListener('change', changed);
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
      gauge.remove();
    }
  };
}
