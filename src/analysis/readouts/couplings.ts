/** Mutual inductance of every two loops, alone and wound as drawn. */
import type { Coupling } from '../results';
import type { Survey } from '../survey';

export const couplingsOf = ({ loops, modelled, means }: Survey): Coupling[] =>
  loops.flatMap((a, i) =>
    loops.slice(i + 1).map((b) => {
      const value = means.mutual(modelled.get(a.id)!.model, modelled.get(b.id)!.model);
      return { a: a.id, b: b.id, mutual_H: value, k: value / Math.sqrt(a.inductance_H * b.inductance_H) };
    })
  );
