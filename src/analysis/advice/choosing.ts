/**
 * Which of the choices to recommend. First what nothing, or least, speaks against; then the fewest turns, which are quick
 * to lay and leave the most cover; then the wire that is drawn if its Q is ample, else the thinnest whose Q is, else the
 * one with the highest Q.
 */
import { wireOf } from '#plan/catalogue/wires';
import type { Site } from '#plan/schema';
import type { TurnsChoice, TurnsWish, Why } from './advice';
import { missOf } from './objections';

/** Q over the least wanted from which it no longer matters: room for a wet splice or a longer lead-in. */
const AMPLE = 1.5;

const refused = ({ objections }: TurnsChoice): boolean => objections.some(({ refuses }) => refuses);

type Wires = Pick<Site, 'wires'>;

const preferred = (
  rivals: readonly TurnsChoice[],
  wish: TurnsWish,
  drawnWire: string | null,
  site: Wires
): { readonly choice: TurnsChoice; readonly wire: Why['wire'] } => {
  if (rivals.length === 1) return { choice: rivals[0]!, wire: 'only' };
  const ample = rivals.filter(({ q }) => q >= AMPLE * wish.leastQ);
  const drawn = ample.find(({ wire }) => wire === drawnWire);
  if (drawn) return { choice: drawn, wire: 'drawn' };
  const thickness = ({ wire }: TurnsChoice): number => wireOf(wire, site)!.conductorDiameter;
  if (ample.length > 0)
    return { choice: ample.reduce((a, b) => (thickness(b) < thickness(a) ? b : a)), wire: 'thinnest' };
  return { choice: rivals.reduce((a, b) => (b.q > a.q ? b : a)), wire: 'highest-q' };
};

export const bestOf = (
  choices: readonly TurnsChoice[],
  wish: TurnsWish,
  drawnWire: string | null,
  site: Wires
): { readonly best: TurnsChoice; readonly why: Why } | null => {
  const possible = choices.filter((choice) => !refused(choice));
  if (possible.length === 0) return null;
  const fewest = Math.min(...possible.map(({ objections }) => objections.length));
  const sound = possible.filter(({ objections }) => objections.length === fewest);
  const turns = Math.min(...sound.map((choice) => choice.turns));
  const { choice: best, wire } = preferred(
    sound.filter((choice) => choice.turns === turns),
    wish,
    drawnWire,
    site
  );
  const fewer = choices.find((choice) => choice.wire === best.wire && choice.turns === turns - 1);
  return { best, why: { oneTurnFewer: fewer?.objections[0] ?? null, wire, qRatio: best.q / wish.leastQ } };
};

export const nearestOf = (choices: readonly TurnsChoice[]): TurnsChoice | null =>
  choices.length === 0 ? null : choices.reduce((a, b) => (missOf(b) < missOf(a) ? b : a));
