/** What the outline says. */
import type { OutlineItem } from '#editor/outline';
import type { Ref } from '#editor/types';
import { t } from '#i18n/message';
import { isHidden, isLocked, LAYERS } from '#plan/layers';
import type { DisplayUnits, Site } from '#plan/schema';
import { format } from '#units/format';
import type { Bench } from '../bench';

export const keyOf = ({ ref }: Pick<OutlineItem, 'ref'>): string => `${ref.kind} ${ref.id}`;
export const keysOf = (refs: readonly Ref[]): ReadonlySet<string> =>
  new Set(refs.map((ref) => keyOf({ ref })));

/** By loop, as its label on the plan says it. */
type Figures = ReadonlyMap<string, string>;
export const NO_FIGURES: Figures = new Map();
export const figuresOf = (assessment: Bench['assessment'], units: DisplayUnits): Figures =>
  new Map(
    (assessment?.loops ?? []).map(({ id, inductance_H }) => [
      id,
      `L ${format(inductance_H, 'inductance', units).text}`
    ])
  );

/** Layers that are not as usual. */
export const layerTexts = (site: Site): readonly string[] =>
  LAYERS.flatMap((layer) => {
    const held = site.layers?.[layer];
    const how = [held?.locked ? t('outline.locked') : '', held?.hidden ? t('outline.hidden') : ''].filter(
      (part) => part !== ''
    );
    return how.length === 0 ? [] : t('outline.layer', { layer: t(`layer.${layer}`), how: how.join(', ') });
  });

export const textOf = ({ ref, size, position }: OutlineItem, site: Site, figures: Figures): string =>
  [
    isLocked(site, ref) ? t('outline.locked') : '',
    isHidden(site, ref) ? t('outline.hidden') : '',
    size,
    position === '' ? '' : t('outline.at', { position }),
    ref.kind === 'loop' ? (figures.get(ref.id) ?? '') : ''
  ]
    .filter((part) => part !== '')
    .join('; ')
    // A unit alone in the next line says nothing.
    .replaceAll(/(?<=\d) (?=\p{L})/gu, '\u00a0');
