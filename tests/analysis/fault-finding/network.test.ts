/** The network that stands for the road in these tests, held against closed forms, published figures and quadrature. */
import { describe, expect, test } from 'vitest';
import { neumannExternal, neumannMutual } from '../../bench/quadrature';
import { buildCircuit, AS_DRAWN } from '../../support/faulty-network/as-drawn';
import type { BuiltCircuit, BuiltLoop } from '../../support/faulty-network/built';
import { pairOf, skin } from '../../support/faulty-network/copper';
import { drawSite } from '../../support/faulty-network/design';
import { alternating, directCurrent } from '../../support/faulty-network/figures';
import { ladder } from '../../support/faulty-network/ladder';
import { buildRoad } from '../../support/faulty-network/network';
import { c, Net } from '../../support/faulty-network/nodal';
import { createRandom } from '../../support/faulty-network/random';
import { turnInductances, turnOf } from '../../support/faulty-network/turns';

const AWG14 = { conductor: 1.628e-3, insulated: 3.8e-3, permittivity: 2.3 };

const square = (id: string, x: number, turns: number, over: Partial<BuiltLoop> = {}): BuiltLoop => ({
  id,
  cells: [
    {
      corners: [[x, 0], [x + 1.8, 0], [x + 1.8, 1.8], [x, 1.8]], // prettier-ignore
      shared: [false, false, false, false]
    }
  ],
  turns,
  wire: AWG14,
  ...{ depth: 0.05, slotWidth: 0.008, fillPermittivity: 4, tail: 5, leak: 1e9 },
  ...over
});

const circuitOf = (loops: readonly BuiltLoop[], over: Partial<BuiltCircuit> = {}): BuiltCircuit => ({
  loops,
  strings: [loops.map((_, loop) => ({ loop, reversed: false }))],
  leadIn: {
    cable: { conductor: 1.628e-3, spacing: 3.8e-3, permittivity: 2.3, capacitance: 8e-11 },
    length: 100,
    leak: 1e9
  },
  ...{ splice: {}, temperature: 20, pavementPermittivity: 5, setting: 1e-7 },
  ...over
});

describe('the pieces', () => {
  test('skin effect of 14 AWG as in the round-wire table: 1.1666, 1.6384, 2.2216 at 20, 50, 100 kHz', () => {
    // ASTM B258: 0.127 mm × 92^((36 − 14)/39)
    const radius = (0.127e-3 / 2) * 92 ** (22 / 39);
    const dc = 1.7241e-8 / (Math.PI * radius ** 2);
    [
      [20e3, 1.1666],
      [50e3, 1.6384],
      [100e3, 2.2216]
    ].forEach(([frequency, ratio]) =>
      expect(skin(radius, 2 * Math.PI * frequency!, 20).resistance / dc / ratio! - 1).toBeCloseTo(0, 4)
    );
  });

  // two-wire line formula at D = 0.150 in: 21.0 µH per 100 ft at 20 kHz
  test('a twisted pair of 14 AWG', () => {
    const { inductance } = pairOf(0.15 * 0.0254, 1.628e-3, 2.3, 2 * Math.PI * 20e3, 20);
    expect(inductance * 30.48e6).toBeCloseTo(21, 1);
  });

  test('a ladder of sections is the line of the telegraph equations to 1e-6', () => {
    // lossless, short at the far end: Z = jZ0·tan(ω√(LC)·l); 250 m at 100 kHz
    const line = { resistance: 0, inductance: 6.67e-7, capacitance: 8e-11 };
    const omega = 2 * Math.PI * 100e3;
    const chain = ladder(line, 250, omega);
    const exact = Math.sqrt(6.67e-7 / 8e-11) * Math.tan(omega * Math.sqrt(6.67e-7 * 8e-11) * 250);
    expect(chain.b.im / chain.d.re / exact - 1).toBeCloseTo(0, 6);
  });

  test('a chain in a net is its own sections one by one', () => {
    const omega = 2 * Math.PI * 50e3;
    const line = { resistance: 0.02, inductance: 6.67e-7, capacitance: 8e-11 };
    const whole = new Net();
    const [near, far] = [whole.node(), whole.node()];
    whole.chain(near, far, 0, ladder(line, 120, omega));
    whole.resistor(far, 0, 30);
    const pieces = new Net();
    const sections = 60;
    const first = pieces.node();
    const half = c(0, (omega * line.capacitance * 120) / sections / 2);
    const impedances: number[] = [];
    let at = first;
    for (let k = 0; k < sections; k++) {
      const next = pieces.node();
      pieces.admittance(at, 0, half);
      pieces.admittance(next, 0, half);
      impedances.push(pieces.coil(at, next));
      at = next;
    }
    const series = c((line.resistance * 120) / sections, (omega * line.inductance * 120) / sections);
    pieces.couple((i, j) => (i === j ? series : c(0)));
    pieces.resistor(at, 0, 30);
    const [a, b] = [whole.impedance(near, 0), pieces.impedance(first, 0)];
    expect(impedances).toHaveLength(sections);
    expect(a.re / b.re - 1).toBeCloseTo(0, 4);
    expect(a.im / b.im - 1).toBeCloseTo(0, 4);
  });

  test('two coupled coils, one closed on itself: L(1 − k²)', () => {
    const net = new Net();
    const [p, q] = [net.node(), net.node()];
    net.coil(p, 0);
    net.coil(q, 0);
    net.resistor(q, 0, 1e-9);
    const inductances = [
      [1, 0.6],
      [0.6, 2]
    ];
    net.couple((i, j) => c(0, inductances[i]![j]));
    expect(net.impedance(p, 0).im).toBeCloseTo(1 - 0.36 / 2, 8);
  });

  test('turn by turn, squares and quadrupoles agree with quadrature ', () => {
    for (const seed of [0, 3]) {
      const site = drawSite(createRandom(seed));
      const { loops } = buildCircuit(site, site.circuits[0]!, AS_DRAWN, () => 1e9);
      const [loop] = loops;
      const table = turnInductances(loop!, loop!);
      // quadrature of wires millimetres apart is itself good to a few parts in ten thousand
      expect(Math.abs(table[0]![0]! / neumannExternal(turnOf(loop!, 0)) - 1)).toBeLessThan(1e-3);
      expect(Math.abs(table[0]![1]! / neumannMutual(turnOf(loop!, 0), turnOf(loop!, 1)) - 1)).toBeLessThan(
        1e-3
      );
      expect(table[1]![0]).toBe(table[0]![1]);
    }
  });

  // filament sums at 0.150 in pitch, 14 AWG, 20 kHz, without capacitance: 10.5, 36.8, 76.9, 129.6, 194.0 µH
  test('6 × 6 ft with one to five turns', () => {
    const inches = { ...AWG14, insulated: 0.15 * 0.0254 };
    [10.5, 36.8, 76.9, 129.6, 194].forEach((microhenries, k) => {
      const side = 6 * 0.3048;
      const loop = square('A', 0, k + 1, {
        wire: inches,
        tail: 1e-3,
        cells: [{ corners: [[0, 0], [side, 0], [side, side], [0, side]], shared: [false, false, false, false] }] // prettier-ignore
      });
      const road = buildRoad(circuitOf([loop]));
      const { inductance } = alternating(road, { at: 'loop', loop: 0 }, 20e3);
      expect((inductance * 1e6) / microhenries).toBeGreaterThan(0.995);
      expect((inductance * 1e6) / microhenries).toBeLessThan(1.005);
    });
  });
});

describe('the issue’s own arithmetic', () => {
  const far = { at: 'cabinet' } as const;

  test('a dead short half way leaves half of the lead-in’s loop resistance', () => {
    const whole = circuitOf([square('A', 0, 3)]);
    const shorted = (at: number): number =>
      directCurrent(
        buildRoad({ ...whole, leadIn: { ...whole.leadIn, short: { at, resistance: 1e-6 } } }),
        far
      );
    expect(shorted(50) / shorted(99.999)).toBeCloseTo(0.5, 4);
  });

  test('the reversed loop of a series pair gives L1 + L2 − 2M', () => {
    // no tails and no capacitance to speak of at 1 kHz
    const loops = [square('A', 0, 3, { tail: 1e-3 }), square('B', 1.9, 3, { tail: 1e-3 })];
    const helping = buildRoad(circuitOf(loops));
    const opposing = buildRoad(
      circuitOf(loops, { strings: [[{ loop: 0, reversed: false }, { loop: 1, reversed: true }]] }) // prettier-ignore
    );
    const at = (road: typeof helping, point: Parameters<typeof alternating>[1]) =>
      alternating(road, point, 1e3).inductance;
    const alone = at(helping, { at: 'loop', loop: 0 }) + at(helping, { at: 'loop', loop: 1 });
    const twice =
      2 *
      turnInductances(loops[0]!, loops[1]!)
        .flat()
        .reduce((sum, m) => sum + m, 0);
    expect(at(helping, { at: 'pull-box' }) / (alone + twice) - 1).toBeCloseTo(0, 6);
    expect(at(opposing, { at: 'pull-box' }) / (alone - twice) - 1).toBeCloseTo(0, 6);
    expect(twice).toBeLessThan(0);
  });

  test('bridged turns: nothing through an infinite contact, a ring through a perfect one', () => {
    const bridged = (resistance: number): number =>
      alternating(
        buildRoad(circuitOf([square('A', 0, 4, { bridged: { first: 1, count: 1, resistance } })])),
        { at: 'loop', loop: 0 },
        50e3
      ).inductance;
    const sound = alternating(
      buildRoad(circuitOf([square('A', 0, 4)])),
      { at: 'loop', loop: 0 },
      50e3
    ).inductance;
    const fewer = alternating(
      buildRoad(circuitOf([square('A', 0, 3)])),
      { at: 'loop', loop: 0 },
      50e3
    ).inductance;
    expect(bridged(1e9) / sound).toBeCloseTo(1, 5);
    // the ring takes away more than the turn that is missing
    expect(bridged(1e-4)).toBeLessThan(0.8 * fewer);
  });
});
