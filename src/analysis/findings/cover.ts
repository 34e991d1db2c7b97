/** Too little cover over the uppermost wire, or a wire that does not fit its slot. */
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
          ? `The wires of ${called(loop)} stand ${say(-readout.cover_m, 'smallLength')} out of a slot ${say(loop.slot.depth, 'smallLength')} deep.`
          : `Only ${say(readout.cover_m, 'smallLength')} of cover over the uppermost wire of ${called(loop)}.`,
        advice: `Cut the slot ${say(deeper, 'smallLength')} deep for ${say(LEAST_COVER, 'smallLength')} of cover, or use fewer turns or thinner wire.`
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
        message: `The wire of ${called(loop)} is ${say(wire.insulatedDiameter, 'smallLength')} thick and does not go into a slot ${say(loop.slot.width, 'smallLength')} wide.`,
        advice: 'Use a wider blade or thinner wire.'
      }
    ];
  });
