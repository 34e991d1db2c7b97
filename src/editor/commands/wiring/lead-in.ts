import { t } from '#i18n/message';
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
    editor.commit({ label: t('step.leadIn'), site: led(editor.state) });
  }
};
