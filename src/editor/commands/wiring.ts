import { joinInSeries, splitCircuit } from '#plan/edits/index';
import type { Circuit } from '#plan/schema';
import type { Command, EditorState } from '../types';

/** Circuits that the selected loops belong to. */
function circuitsOf({ site, selection }: EditorState): Circuit[] {
  const loops = new Set(selection.filter(({ kind }) => kind === 'loop').map(({ id }) => id));
  return site.circuits.filter(({ strings }) =>
    strings.some((string) => string.some(({ loop }) => loops.has(loop)))
  );
}

export const joinCircuits: Command = {
  id: 'join-in-series',
  label: 'Wire the loops in series',
  keys: [],
  applies: (state) => !state.busy && circuitsOf(state).length > 1,
  run(editor) {
    const ids = circuitsOf(editor.state).map(({ id }) => id);
    editor.commit({ label: 'Wire in series', site: joinInSeries(editor.state.site, ids) });
  }
};

export const splitCircuits: Command = {
  id: 'split-circuit',
  label: 'Give each loop its own circuit',
  keys: [],
  applies: (state) => !state.busy && circuitsOf(state).some(({ strings }) => strings.flat().length > 1),
  run(editor) {
    const ids = circuitsOf(editor.state).map(({ id }) => id);
    editor.commit({ label: 'Split the circuit', site: ids.reduce(splitCircuit, editor.state.site) });
  }
};
