/** Too little cover over the uppermost wire, or a wire that does not fit its slot. */
import { t } from '#i18n/message';
import { wireOf } from '#plan/catalogue/wires';
import { called, type FindingRule } from './finding';

/** Sealant over the wires, metres: an inch, common practice. */
export const LEAST_COVER = 0.0254;

export const cover: FindingRule = ({ loops, say }) =>
  loops
    .filter(({ readout }) => readout.cover_m < LEAST_COVER)
    .map(({ loop, readout }) => {
      const out = readout.cover_m < 0;
      const deeper = loop.slot.depth + LEAST_COVER - readout.cover_m;
      return {
        severity: out ? ('problem' as const) : ('caution' as const),
        code: 'cover',
        subject: loop.id,
        selects: [loop.id],
        message: out
          ? t('finding.cover.out', {
              loop: called(loop),
              out: say(-readout.cover_m, 'smallLength'),
              depth: say(loop.slot.depth, 'smallLength')
            })
          : t('finding.cover', { cover: say(readout.cover_m, 'smallLength'), loop: called(loop) }),
        advice: t('finding.cover.advice', {
          deeper: say(deeper, 'smallLength'),
          least: say(LEAST_COVER, 'smallLength')
        })
      };
    });

export const slotWidth: FindingRule = ({ site, loops, say }) =>
  loops.flatMap(({ loop }) => {
    const wire = wireOf(loop.wire, site);
    if (!wire || wire.insulatedDiameter <= loop.slot.width) return [];
    return [
      {
        severity: 'problem' as const,
        code: 'slot-width',
        subject: loop.id,
        selects: [loop.id],
        message: t('finding.slotWidth', {
          loop: called(loop),
          diameter: say(wire.insulatedDiameter, 'smallLength'),
          width: say(loop.slot.width, 'smallLength')
        }),
        advice: t('finding.slotWidth.advice')
      }
    ];
  });
