import { saying } from '#i18n/saying';
import { leadOut } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import type { Command } from '../../types';
import { selectedLoops, wouldChange } from './selected';

const led = (site: Site, loops: readonly string[]): Site => loops.reduce(leadOut, site);

export const leadOutToBox: Command = {
  id: 'lead-out',
  keys: ['U'],
  applies: (state) => wouldChange(state, led),
  run(editor) {
    const { state } = editor;
    editor.commit({ label: saying('step.leadOut'), site: led(state.site, selectedLoops(state)) });
  }
};
