/** Objections and choices in words. */
import type { Objection, TurnsChoice } from '#analysis/advice/advice';
import { t } from '#i18n/message';
import { wireOf } from '#plan/catalogue/wires';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import type { QuantityKind } from '#units/kind';

const KINDS: Readonly<Record<Objection['code'], QuantityKind>> = {
  'inductance-low': 'inductance',
  'inductance-high': 'inductance',
  'q-low': 'plain',
  'slot-narrow': 'smallLength',
  'slot-full': 'smallLength',
  'cover-thin': 'smallLength',
  'lead-in-heavy': 'ratio',
  'resonance-near': 'plain'
};

export function objectionText({ displayUnits }: Site, { code, value, limit }: Objection): string {
  const kind = KINDS[code];
  const options = kind === 'smallLength' ? {} : { digits: 3 };
  const say = (amount: number) => format(amount, kind, displayUnits, options).text;
  // What stands out of the slot is told as a length, not as a cover below nought.
  return t(`advice.no.${code}`, { value: say(code === 'slot-full' ? -value : value), limit: say(limit) });
}

export const choiceText = (site: Site, { turns, wire }: Pick<TurnsChoice, 'turns' | 'wire'>): string => {
  const found = wireOf(wire, site);
  return t('advice.choice', { count: turns, wire: found?.name || wire });
};
