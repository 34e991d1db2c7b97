/** How the plan is drawn: as the page, or as the settings say for the drawing alone. */
import type { Bench } from '../bench';

export const drawingTheme = ({ settings, theme }: Bench): Bench['theme'] =>
  settings.drawingTheme === 'page' ? theme : settings.drawingTheme;
