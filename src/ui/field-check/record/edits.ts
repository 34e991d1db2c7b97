/** What is entered into the record, each an undo step. */
import { t } from '#i18n/message';
import { acceptCircuit, remarkOnCircuit, updateRecord, type RecordVerdict } from '#plan/edits/record';
import type { Circuit } from '#plan/schema';
import type { Bench } from '../../bench';
import { commitField } from '../../details/commit';
import { nameOf } from '../../names';

type RecordPatch = Parameters<typeof updateRecord>[1];

/** `field`: what was changed, as its label says it. */
export function changeRecord(bench: Bench, field: string, patch: RecordPatch): void {
  commitField(bench, { field, subject: t('record.subject') }, (site) => updateRecord(site, patch));
}

/** "open" where nothing is decided. */
export type Decision = RecordVerdict | 'open';
export const DECISIONS: readonly Decision[] = ['open', 'accepted', 'conditional', 'refused'];

export function decide(bench: Bench, circuit: Circuit, decision: Decision): void {
  const about = { field: t('record.acceptance'), subject: nameOf(circuit) };
  commitField(bench, about, (site) => acceptCircuit(site, circuit.id, decision === 'open' ? null : decision));
}

export function remark(bench: Bench, circuit: Circuit, text: string): void {
  const about = { field: t('record.remarks'), subject: nameOf(circuit) };
  commitField(bench, about, (site) => remarkOnCircuit(site, circuit.id, text));
}
