import { saying } from '#i18n/saying';
import { wireTogether } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import type { Command } from '../../types';
import { selectedLoops, wouldChange } from './selected';

const wire = (site: Site, loops: readonly string[]): Site => wireTogether(site, loops, 'series');

export const wireInSeries: Command = {
  id: 'join-in-series',
  keys: ['W'],
  applies: (state) => wouldChange(state, wire),
  run: (editor) => {
    const { state } = editor;
    editor.commit({ label: saying('step.wireInSeries'), site: wire(state.site, selectedLoops(state)) });
  }
};
