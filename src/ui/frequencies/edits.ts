/** What the frequency view changes: one named undo step each. */
import { withRemedy } from '#analysis/beating/remedies/apply';
import type { Beat, Remedy } from '#analysis/results';
import { saying } from '#i18n/saying';
import { updateChannel } from '#plan/edits/index';
import type { Circuit } from '#plan/schema';
import type { Bench } from '../bench';
import { circuitName, nameOf } from '../names';
import { remedyWords } from './remedies';

/** `merge`: steps in a row with the same key are one; null for a step of its own. */
export function putOnSetting(bench: Bench, circuit: string, setting: number, merge: string | null): void {
  const { site } = bench.state;
  bench.editor.commit({
    label: saying('step.setting', { name: circuitName(site, circuit) }),
    site: updateChannel(site, circuit, { frequencySetting: setting, frequency_Hz: null }),
    ...(merge === null ? {} : { merge })
  });
}

export function applyRemedy(bench: Bench, beat: Beat, remedy: Remedy): void {
  const { shown } = bench;
  const site = withRemedy(bench.state.site, beat, remedy);
  const words = () => remedyWords(shown, beat, remedy);
  if (site) bench.editor.commit({ label: saying('step.remedy', { remedy: words }), site });
}

export function togglePin(bench: Bench, circuit: Circuit): void {
  const isPinned = circuit.channel?.pinned === true;
  bench.editor.commit({
    label: saying(isPinned ? 'step.unpin' : 'step.pin', { name: nameOf(circuit) }),
    site: updateChannel(bench.state.site, circuit.id, { pinned: isPinned ? undefined : true })
  });
}
