/** Steel in the pavement. */
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { addSteel, newSteel } from '#plan/edits/index';
import type { Point, Site } from '#plan/schema';
import type { Step } from '../types';
import { areaTool } from './area';

/** Null for an outline that the site cannot hold. */
export function steelStep(site: Site, outline: readonly Point[]): Step | null {
  const steel = newSteel(site, outline);
  const next = addSteel(site, steel);
  if (next === site) return null;
  const selection = [{ kind: 'steel', id: steel.id }] as const;
  return { label: saying(`step.steel.${steel.kind}`), site: next, selection };
}

export const steelTool = areaTool({ name: 'steel', step: steelStep, refusal: () => t('drawing.crosses') });
