/**
 * Which turns and which wire bring a circuit into a wanted window of inductance: every choice is wound, wired and solved
 * as the circuit itself is, with its couplings, lead-in and steel.
 */
import { resonance } from '#physics/circuit/slot-capacitance';
import type { Chain } from '#physics/circuit/line';
import { wireOf, wiresOf } from '#plan/catalogue/wires';
import type { Circuit, Loop, Site } from '#plan/schema';
import { createModeller, ownMeans, solveAlone, type Alone, type AloneMeans } from '../electrical/alone';
import { ASSUMED_FREQUENCY } from '../electrical/circuit-model';
import { leadInChains, tailChain } from '../electrical/lead';
import { loopShareOf } from '../electrical/loop-share';
import { conditionsOf, coverOf, impedanceOf, leakageOf } from '../electrical/loop-model';
import { finish, type Steps } from '../steps';
import type { TurnsAdvice, TurnsChoice, TurnsWish } from './advice';
import { bestOf, nearestOf } from './choosing';
import { objectionsTo } from './objections';
import { rulesOfThumb } from './rules-of-thumb';
import { steelOfChoices } from './steel-of-choices';

const MOST_TURNS = 12;
/** Over the window's upper end by this factor. */
const FAR_BEYOND = 2;
const TURNS = Array.from({ length: MOST_TURNS }, (_, k) => k + 1);

const lowestResonance = ({ solved, loops }: Alone, site: Site): number =>
  Math.min(
    ...solved.input.loops.map(({ id, model }, i) => {
      const { turns, ground } = leakageOf(model, loops.get(id)!.loop, solved.frequency, conditionsOf(site));
      return resonance(solved.loops[i]!.inductance + solved.steelOf(i).re, turns + ground.capacitance);
    })
  );

const figuresOf = (
  alone: Alone,
  site: Site,
  changing: ReadonlySet<string>,
  choice: Pick<TurnsChoice, 'turns' | 'wire'>
): Omit<TurnsChoice, 'objections'> => {
  const { solved } = alone;
  const models = solved.input.loops.filter(({ id }) => changing.has(id)).map(({ model }) => model);
  return {
    ...choice,
    inductance_H: solved.inductance,
    resistance_ohm: solved.resistance,
    q: solved.q,
    frequency_Hz: solved.frequency,
    resonanceRatio: lowestResonance(alone, site) / solved.frequency,
    loopShare: loopShareOf(solved),
    cover_m: Math.min(...models.map(coverOf)),
    wireLength_m: models.reduce((sum, { winding }) => sum + winding.wireLength, 0)
  };
};

const withChoice = (site: Site, changing: ReadonlySet<string>, turns: number, wire: string): Site => ({
  ...site,
  loops: site.loops.map((loop) => (changing.has(loop.id) ? { ...loop, turns, wire } : loop))
});

const henriesOf = ({ b }: Chain): number => b.im / (2 * Math.PI * ASSUMED_FREQUENCY);

const thumbOf = (
  site: Site,
  circuit: Circuit,
  loops: readonly Loop[],
  changing: ReadonlySet<string>,
  wish: TurnsWish,
  modeller: ReturnType<typeof createModeller>
) => {
  const conditions = conditionsOf(site);
  const byId = new Map(loops.map((loop) => [loop.id, loop]));
  return rulesOfThumb({
    circuit,
    loops,
    isChanging: (id) => changing.has(id),
    wish,
    turns: TURNS,
    modelled: (id, turns) => {
      const loop = byId.get(id)!;
      const model = modeller(changing.has(id) ? { ...loop, turns } : loop, wireOf(loop.wire, site))!;
      return impedanceOf(model, ASSUMED_FREQUENCY, conditions).inductance;
    },
    leadIn: leadInChains(circuit, site, ASSUMED_FREQUENCY).reduce((sum, chain) => sum + henriesOf(chain), 0),
    tailOf: (id) => {
      const { wire, tail } = byId.get(id)!;
      return henriesOf(tailChain(wireOf(wire, site)!, tail.length, ASSUMED_FREQUENCY, site.temperature_C));
    }
  });
};

/** More turns would only lie further beyond what is wanted, or further out of the slot. */
const isBeyond = ({ inductance_H, cover_m }: TurnsChoice, { most_H }: TurnsWish): boolean =>
  inductance_H > FAR_BEYOND * most_H || cover_m < 0;

/**
 * Null for a circuit or a loop that is not there, or loops that cannot be wound. From one turn of every wire that the site
 * knows up to 12, or the first that is far beyond the window or does not fit the slot. In steps, one wire each.
 */
export function* adviseTurnsInSteps(
  site: Site,
  circuitId: string,
  wish: TurnsWish,
  means: AloneMeans = ownMeans()
): Steps<TurnsAdvice | null> {
  const circuit = site.circuits.find(({ id }) => id === circuitId);
  if (!circuit) return null;
  const inCircuit = [...new Set(circuit.strings.flat().map(({ loop }) => loop))];
  const changing = new Set(wish.loop === undefined ? inCircuit : inCircuit.filter((id) => id === wish.loop));
  const loops = inCircuit.flatMap((id) => site.loops.find((loop) => loop.id === id) ?? []);
  const modeller = createModeller(means);
  if (changing.size === 0 || !loops.every((loop) => modeller(loop, wireOf(loop.wire, site)))) return null;
  const altered = loops.filter(({ id }) => changing.has(id));
  const narrowestSlot = Math.min(...altered.map(({ slot }) => slot.width));
  const wires = wiresOf(site);
  const steel = steelOfChoices({
    ...{ site, loops, means, modeller },
    isChanging: (id) => changing.has(id),
    wireOf: (loop) => wireOf(loop.wire, site)!,
    tallest: Math.min(
      MOST_TURNS * Math.max(...wires.map(({ insulatedDiameter }) => insulatedDiameter)),
      Math.max(...altered.map(({ slot }) => slot.depth))
    )
  });
  yield;
  const choices: TurnsChoice[] = [];
  for (const { id: wire, insulatedDiameter: wireDiameter } of wires) {
    for (const turns of TURNS) {
      const changed = withChoice(site, changing, turns, wire);
      const under = { ...means, steel: () => steel(turns, wireDiameter) };
      const alone = solveAlone(changed, circuit, under, modeller);
      if (!alone) continue;
      const figures = figuresOf(alone, changed, changing, { turns, wire });
      const choice = { ...figures, objections: objectionsTo(figures, wish, { wireDiameter, narrowestSlot }) };
      choices.push(choice);
      if (isBeyond(choice, wish)) break;
    }
    yield;
  }
  const [first] = altered;
  const drawnWire = altered.every(({ wire }) => wire === first!.wire) ? first!.wire : null;
  const chosen = bestOf(choices, wish, drawnWire, site);
  return {
    circuit: circuit.id,
    loops: [...changing],
    wish,
    choices,
    best: chosen?.best ?? null,
    why: chosen?.why ?? null,
    nearest: chosen ? null : nearestOf(choices),
    rulesOfThumb: thumbOf(site, circuit, loops, changing, wish, modeller)
  };
}

/** The same at once. */
export const adviseTurns = (...given: Parameters<typeof adviseTurnsInSteps>): TurnsAdvice | null =>
  finish(adviseTurnsInSteps(...given));
