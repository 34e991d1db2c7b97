import { saying } from '#i18n/saying';
import { leadIn } from '#plan/edits/index';
import type { Command, EditorState } from '../../types';
import type { Site } from '#plan/schema';
import { circuitsOf } from './selected';

const led = (state: EditorState): Site =>
  circuitsOf(state).reduce((site, { id }) => leadIn(site, id), state.site);

export const leadInToCabinet: Command = {
  id: 'lead-in',
  keys: ['Shift+U'],
  applies: (state) => !state.busy && led(state) !== state.site,
  run: (editor) => {
    editor.commit({ label: saying('step.leadIn'), site: led(editor.state) });
  }
};
