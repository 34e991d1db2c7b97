/** What can be done with kept designs, each one step that can be undone, named in the undo menu. */
import { saying } from '#i18n/saying';
import { t } from '#i18n/message';
import {
  branchFrom,
  keepOver,
  keepVariant,
  noteVariant,
  removeVariant,
  renameVariant,
  restoreVariant,
  switchTo
} from '#plan/edits/variants';
import type { Site, Variant } from '#plan/schema';
import { variantOf, variantsOf } from '#plan/variants';
import type { Bench } from '../../bench';
import { nameOf } from '../../names';

type Verb = 'keep' | 'update' | 'switch' | 'restore' | 'branch' | 'rename' | 'note' | 'remove';
type Editing = Pick<Bench, 'editor' | 'state'>;

const now = (): string => new Date().toISOString();

/** False where nothing changed. */
function step({ editor, state }: Editing, verb: Verb, name: string, edit: (site: Site) => Site): boolean {
  const site = edit(state.site);
  if (site === state.site || state.isReadOnly) return false;
  editor.commit({ label: saying(`designs.step.${verb}`, { name }), site });
  return true;
}

/** A name that no variant has yet. */
function free(site: Site, wanted: string): string {
  const taken = new Set(variantsOf(site).map(({ name }) => name));
  if (!taken.has(wanted)) return wanted;
  for (let number = 2; ; number++) if (!taken.has(`${wanted} ${number}`)) return `${wanted} ${number}`;
}

export function keep(bench: Editing, name: string): boolean {
  const isDone = step(bench, 'keep', name, (site) => keepVariant(site, name, now()));
  if (isDone) bench.editor.say(t('designs.saidKept', { name }));
  return isDone;
}

export function update(bench: Editing, variant: Variant): void {
  const name = nameOf(variant);
  if (step(bench, 'update', name, (site) => keepOver(site, variant.id, now())))
    bench.editor.say(t('designs.saidKept', { name }));
}

export function change(bench: Editing, variant: Variant): void {
  const name = nameOf(variant);
  const before = free(bench.state.site, t('designs.presentName', { name }));
  const kept = variantOf(bench.state.site, bench.state.site.variant);
  const isDone = step(bench, 'switch', name, (site) => switchTo(site, variant.id, before, now()));
  if (!isDone) return;
  const had = bench.state.site.variants?.some((each) => each.name === before) ?? false;
  const under = kept ? nameOf(kept) : had ? before : null;
  if (under !== null) bench.editor.say(t('designs.saidSwitched', { name, before: under }));
}

export function restore(bench: Editing, variant: Variant): void {
  const name = nameOf(variant);
  if (step(bench, 'restore', name, (site) => restoreVariant(site, variant.id)))
    bench.editor.say(t('designs.saidRestored', { name }));
}

export function branch(bench: Editing, variant: Variant): void {
  const { site } = bench.state;
  const name = free(site, t('designs.branchName', { name: nameOf(variant) }));
  const before = free(site, t('designs.presentName', { name: nameOf(variant) }));
  if (step(bench, 'branch', nameOf(variant), (was) => branchFrom(was, variant.id, name, before, now())))
    bench.editor.say(t('designs.saidKept', { name }));
}

export function rename(bench: Editing, variant: Variant, name: string): void {
  step(bench, 'rename', nameOf(variant), (site) => renameVariant(site, variant.id, name));
}

export function note(bench: Editing, variant: Variant, text: string): void {
  step(bench, 'note', nameOf(variant), (site) => noteVariant(site, variant.id, text));
}

export function remove(bench: Editing, variant: Variant): void {
  const name = nameOf(variant);
  if (step(bench, 'remove', name, (site) => removeVariant(site, variant.id)))
    bench.editor.say(t('designs.saidRemoved', { name }));
}
