/** Frames for scenes: a site, an editor's state about it, and nothing from outside unless given. */
import type { Site } from '#plan/schema';
import { createEditor } from '#editor/create-editor';
import type { Editor } from '#editor/types';
import type { Frame } from '#scenes/frame';
import { LIGHT } from '#scenes/theme';

export function editorOf(site: Site, scale = 50): Editor {
  const editor = createEditor(site);
  editor.setViewport({ centre: [0, 0], scale, width: 1000, height: 800 });
  return editor;
}

const NO_PLACES: Frame['marked'] = [];
const NO_PICTURES: Frame['pictures'] = new Map();

export const frameOf = ({ state }: Editor, more: Partial<Frame> = {}): Frame => ({
  state,
  site: state.draft ?? state.site,
  theme: LIGHT,
  figures: new Map(),
  severities: new Map(),
  calls: new Map(),
  pointed: null,
  map: null,
  moment: null,
  marked: NO_PLACES,
  cutting: null,
  showsLabels: true,
  pictures: NO_PICTURES,
  ...more
});
