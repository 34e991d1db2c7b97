import { saying } from '#i18n/saying';
import { splitCircuit } from '#plan/edits/index';
import { loopsIn } from '#plan/wiring';
import type { Command } from '../../types';
import { circuitsOf } from './selected';

export const takeApart: Command = {
  id: 'split-circuit',
  keys: ['Shift+X'],
  applies: (state) => !state.busy && circuitsOf(state).some((circuit) => loopsIn(circuit).length > 1),
  run(editor) {
    const ids = circuitsOf(editor.state).map(({ id }) => id);
    editor.commit({ label: saying('step.takeApart'), site: ids.reduce(splitCircuit, editor.state.site) });
  }
};
