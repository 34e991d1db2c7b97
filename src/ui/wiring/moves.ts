/** Where a loop can be moved, as a list to choose from: what dragging does, for hands that do not drag. */
import { t } from '#i18n/message';
import type { WiringPlace } from '#plan/edits/index';
import type { Circuit, Site } from '#plan/schema';
import { loopName, nameOf } from '../names';

export interface Move {
  readonly value: string;
  readonly label: string;
  readonly place: WiringPlace;
}

/** Beside the other loops of the circuit, then to the end of the first string of every other circuit. */
export function movesOf(site: Site, circuit: Circuit, loop: string): readonly Move[] {
  const within = circuit.strings.flatMap((string) => {
    const others = string.filter((entry) => entry.loop !== loop);
    const [first] = others;
    const before: Move[] = first
      ? [move('before', first.loop, t('wiring.before', { name: loopName(site, first.loop) }))]
      : [];
    const after = others.map((entry) =>
      move('after', entry.loop, t('wiring.after', { name: loopName(site, entry.loop) }))
    );
    return [...before, ...after];
  });
  const elsewhere = site.circuits.flatMap((other) => {
    const last = other.id === circuit.id ? undefined : other.strings[0]?.at(-1);
    return last ? [move('after', last.loop, t('wiring.inCircuit', { name: nameOf(other) }))] : [];
  });
  return [...within, ...elsewhere];
}

const move = (kind: 'before' | 'after', loop: string, label: string): Move => ({
  value: `${kind} ${loop}`,
  label,
  place: { kind, loop }
});
