import { saying } from '#i18n/saying';
import { setReversed } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { circuitWith } from '#plan/wiring';
import { sayRefs } from '../../selection';
import type { Command } from '../../types';
import { selectedLoops, wouldChange } from './selected';

/** Each loop for itself: what was reversed is as drawn again. */
const reversed = (before: Site, loops: readonly string[]): Site =>
  loops.reduce((site, loop) => {
    const circuit = circuitWith(site, loop);
    const entry = circuit?.strings.flat().find((each) => each.loop === loop);
    return circuit && entry ? setReversed(site, circuit.id, loop, !entry.reversed) : site;
  }, before);

export const reverse: Command = {
  id: 'reverse-winding',
  keys: ['I'],
  applies: (state) => wouldChange(state, reversed),
  run(editor) {
    const { site, selection } = editor.state;
    const things = sayRefs(selection.filter(({ kind }) => kind === 'loop'));
    const label = saying('step.reverseThings', { things });
    editor.commit({ label, site: reversed(site, selectedLoops(editor.state)) });
  }
};
