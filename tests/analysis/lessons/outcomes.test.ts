/**
 * What each lesson states, asserted from the computed numbers. Every range has its reason from physics or geometry beside it,
 * and every published comparison its source and what is allowed.
 */
import { describe, expect, it } from 'vitest';
import { outcomeOfLesson } from './shelf';

const within = (value: number, least: number, most: number): void => {
  expect(value).toBeGreaterThanOrEqual(least);
  expect(value).toBeLessThanOrEqual(most);
};

describe('turns', () => {
  const { of } = outcomeOfLesson('turns');

  it('inductance goes nearly with their square', () => {
    // Turns that shared all their field would give 2. Neighbours 3.8 mm apart in a loop of 1.8 m share most of it: with a wire
    // radius of 0.8 mm, ln(distance/side) against ln(radius/side) leaves some four fifths, so that the power lies little below.
    within(of('exponent'), 1.75, 2);
  });

  it('as the rule of thumb has it: L ≈ P/4·(N² + N), FHWA-IP-90-002 chapter 2 (from memory), ±16 %', () => {
    within(of('times') / (20 / 6), 0.84, 1.16);
  });

  it('a car gains what the lead-in no longer takes, and what no vehicle reaches close to the wires', () => {
    // Share of the loop in the whole, L/(L + cable): 30 m of pair and 3 m of tail are some 22 µH. What the car takes goes with
    // the square of the turns, so that over the inductance, which does not quite, a little more is gained.
    const shareOf = (inductance: number) => inductance / (inductance + 22e-6);
    const byLeadIn = shareOf(of('four')) / shareOf(of('two'));
    const byField = (4 / 2) ** 2 / of('times');
    within(of('carTimes') / (byLeadIn * byField), 0.97, 1.03);
    // “most of what is gained”
    expect(byLeadIn - 1).toBeGreaterThan(2 * (byField - 1));
  });
});

describe('short side', () => {
  const { of } = outcomeOfLesson('short-side');

  it('doubled, it raises the height by up to the root of two; the long side, doubled, hardly', () => {
    // Two currents against each other, w apart: seen from far above their field goes with w/h², the response with w²/h⁴, so that
    // the height of a given response goes with √w; lower down less. The long side enters only by its ends.
    within(of('wideTimes'), 1.2, Math.SQRT2);
    within(of('longTimes'), 1, 1.15);
  });
});

describe('figure of eight', () => {
  const { of } = outcomeOfLesson('figure-of-eight');

  it('its halves cancel from afar', () => {
    // the field falls one power faster, over a distance of several half widths, and it counts twice
    expect(of('farShare')).toBeLessThan(0.25);
    const { picture } = outcomeOfLesson('figure-of-eight');
    const [rectangle, eight] = picture.figures[0]!.values.map((row) => row[picture.x.values.indexOf(2.5)]!);
    expect(of('farShare')).toBeCloseTo(eight! / rectangle!, 9);
  });

  it('answers less to a car than the rectangle: Day et al., TRB 2009, paper 09-0018 (a comparison: less)', () => {
    expect(of('carShare')).toBeLessThan(1);
    // each half has half the short side: certainly less than half
    expect(of('carShare')).toBeLessThan(0.5);
  });

  it('sees a bicycle in the middle, where the rectangle by symmetry does not at all', () => {
    expect(of('bicycle')).toBeLessThan(1e-9);
    // twice the current in the slot, four times the response, over an inductance that is larger by up to two
    within(of('bicycleTimes'), 1.5, 4);
  });
});

describe('dead spot', () => {
  const { of } = outcomeOfLesson('dead-spot');

  it('lies in the middle of round and eight-sided loops, which answer nearly alike: Kidarsa et al., TRR 1978, 2006 (within 15 %)', () => {
    expect(of('middle')).toBeLessThan(1e-9);
    expect(of('octagonMiddle')).toBeLessThan(1e-9);
    within(of('alike'), 0.85, 1.15);
  });

  it('a square is best along its side, a round loop a little inside its edge', () => {
    // the step of the offsets is 5 cm
    within(of('squareAt'), 0.85, 0.95);
    within(of('bestAt'), 0.6, 0.95);
  });

  it('a motorcycle, whose engine lies flat, has none', () => {
    expect(of('motorcycleShare')).toBeGreaterThan(0.5);
  });
});

describe('lead-in', () => {
  const { of } = outcomeOfLesson('lead-in');

  it('leaves the share that the loop has in the whole inductance', () => {
    // ΔL is the same; capacitance and frequency move it by a few per cent
    within(of('left') / of('loopShare'), 0.9, 1.1);
  });

  it('a pair of 14 AWG has 20 to 24 µH in 100 ft: notes to the test-loop figure, NEMA TS 1', () => {
    within(of('per100feet'), 20e-6, 24e-6);
  });

  it('takes less from a loop with more turns', () => {
    expect(of('leftFour')).toBeGreaterThan(2 * of('left'));
    // “less than a third”: 100 m of pair, some 66 µH, beside some 12 µH of the loop with its tail
    expect(of('left')).toBeLessThan(1 / 3);
  });
});

describe('steel', () => {
  const { of } = outcomeOfLesson('steel');

  it('takes more from the response than from the inductance', () => {
    // Perfect sheet s below the loop: its image at 2·s takes the inductance's share M(2s)/L. Where the car is the field of loop and
    // image, 2·s apart, is what is left, and it counts twice.
    within(of('inductanceLeft'), 0.6, 0.9);
    expect(of('carLeft')).toBeLessThan(of('inductanceLeft') ** 2);
    // “by far”: the images' field, twice, at a car's height against their field at the wire
    expect(of('compared')).toBeLessThan(0.5);
    // what counts as “without steel”
    const { picture } = outcomeOfLesson('steel');
    const car = picture.figures[0]!.values[0] as number[];
    expect(of('carLeft')).toBeCloseTo(car[0]! / car.at(-1)!, 9);
    const [deepest, before] = [...(picture.figures[1]!.values[0] as number[])].reverse();
    within(deepest! / before!, 1, 1.02);
  });

  it('costs quality as well, and less when deeper', () => {
    expect(of('q')).toBeLessThan(of('qClear'));
    expect(of('deeperTimes')).toBeGreaterThan(2);
  });
});

describe('neighbours', () => {
  const { of } = outcomeOfLesson('neighbours');

  it('another setting averages the beat out', () => {
    // A beat of Δf over T = 5 ms leaves 1/(π·Δf·T) of the ripple that one of the same frequency has. The smallest Δf that
    // vehicles leave counts (½·ΔL/L of some 4 % on the lower tone: a tenth less), and so does the higher of the two weights.
    within(of('other') / of('now') / (1 / (Math.PI * of('separation') * 0.005)), 1, 1.3);
    // settings of 220 and 150 nF: frequencies as the root, 21 % apart of some 40 kHz
    within(of('separation'), 5_000, 9_000);
  });

  it('gain far more by another setting than by twice the distance', () => {
    // both channels call at first, at twice the distance still, and not at all on another setting
    expect(of('now')).toBeGreaterThan(1);
    expect(of('twice')).toBeGreaterThan(1);
    expect(of('other')).toBeLessThan(0.25);
    expect(of('advantage')).toBeCloseTo(of('twice') / of('other'), 9);
    // “many times while the unit measures once”
    expect(of('separation') * 0.005).toBeGreaterThan(10);
  });

  it('couple as small magnets do far apart, with the cube of the distance of their middles', () => {
    // middles 1.8 m farther apart than the gap: from 3.8 m to 7.8 m, over gaps from 2 m to 6 m; a little steeper near by
    const dipoles = (-3 * Math.log(7.8 / 3.8)) / Math.log(6 / 2);
    within(of('exponent') - dipoles, -0.3, 0.05);
  });
});

describe('high lorry', () => {
  const { of } = outcomeOfLesson('high-lorry');

  it('drops out of a short loop and stays on a longer one', () => {
    expect(of('floor')).toBeLessThan(0.6 * 0.003);
    expect(of('floorTwo')).toBeGreaterThan(0.003);
    expect(of('floorFour')).toBeGreaterThan(of('floorTwo'));
    expect(of('highest')).toBeGreaterThan(0.003);
  });

  it('is called three times on the short loop, once on the longer ones', () => {
    const { picture } = outcomeOfLesson('high-lorry');
    const calls = picture.figures[0]!.values.map((row) => {
      let count = 0;
      let isCalled = false;
      for (const response of row as number[]) {
        if (!isCalled && response >= 0.003) count += 1;
        isCalled = isCalled ? response >= 0.0018 : response >= 0.003;
      }
      return count;
    });
    expect(calls).toEqual([3, 1, 1]);
    expect(of('axles')).toBeLessThan(0.0018);
  });
});

describe('Q', () => {
  const { of } = outcomeOfLesson('q');

  it('falls with the resistance that is put in series', () => {
    // Q = ωL/R, some 26 Ω of reactance: 5 Ω more than sound
    const sound = 1 / of('q');
    const reactance = 2 * Math.PI * of('f') * 99e-6;
    within(1 / of('qBad') / (sound + 5 / reactance), 0.95, 1.05);
  });

  it('is under the limit of acceptance with the bad joint: Q ≥ 5, a city’s revision of WSDOT 8-20.3(14)D', () => {
    expect(of('q')).toBeGreaterThan(5);
    expect(of('qBad')).toBeLessThan(5);
  });

  it('hardly touches the response, but the frequency, by 1/(8·Q²)', () => {
    within(of('carLeft'), 0.99, 1.01);
    const law = 1 / (8 * of('qBad') ** 2) - 1 / (8 * of('q') ** 2);
    within(of('fallShare') / law, 0.85, 1.15);
  });
});

describe('deep loop', () => {
  const { of } = outcomeOfLesson('deep-loop');

  it('answers far less to a bicycle at 30 cm: Kidarsa et al., TRR 1978, 2006 (about a third at most)', () => {
    expect(of('bicycleLeft')).toBeLessThan(0.35);
    // under the usual threshold of 0.16 %, while the car is not
    expect(of('bicycleDeep')).toBeLessThan(0.0016);
    expect(of('carDeep')).toBeGreaterThan(0.0016);
    expect(of('bicycleLeft')).toBeLessThan(of('carLeft'));
  });

  it('has the same inductance', () => {
    within(of('inductanceDeep') / of('inductance'), 0.999, 1.001);
  });
});

describe('aiding and opposing', () => {
  const { of } = outcomeOfLesson('aiding-opposing');

  it('differ by four times the mutual inductance, which is negative side by side', () => {
    expect(of('mutual')).toBeLessThan(0);
    // L₁ + L₂ ± 2M; capacitance raises both by a few per cent
    within(of('more') / -of('mutual'), 3.95, 4.3);
    expect(of('moreApart')).toBeLessThan(of('more') / 4);
  });

  it('of two squares 1.8 m wide and 20 cm apart M is less than with 1 ft between 6 ft squares per N², but of its size', () => {
    // Neumann: one-turn squares of 6 ft, gap 1 ft: −0.2581 µH; three turns each count nine times, and a smaller gap couples more
    within(of('mutual') / (9 * -0.2581e-6), 1.1, 1.6);
  });

  it('a bicycle between them is seen only where the currents there run together', () => {
    expect(Math.abs(of('bicycle'))).toBeLessThan(1e-9);
    expect(of('bicycleAgainst')).toBeGreaterThan(0.0016);
  });
});

describe('shorted turn', () => {
  const { of } = outcomeOfLesson('shorted-turn');

  it('takes far more than a turn: it is a secondary, shorted', () => {
    // From the inductances of 1, 2, 3 and 4 turns alone follow L of a turn and M of two that lie one, two and three places apart.
    // The second turn shorted without resistance takes (M₁ + M₁ + M₂)²/L from what the other three have.
    const [one, two, three, four] = outcomeOfLesson('turns').picture.figures[0]!.values[0]! as number[];
    const m1 = (two! - 2 * one!) / 2;
    const m2 = (three! - 3 * one! - 4 * m1) / 2;
    const m3 = (four! - 4 * one! - 6 * m1 - 4 * m2) / 2;
    const left = 3 * one! + 2 * (m1 + m2 + m3) - (2 * m1 + m2) ** 2 / one!;
    const cable = of('whole') - four!;
    within((of('shorted') - cable) / left, 0.9, 1.05);
  });

  it('leaves a car little, and costs quality', () => {
    expect(of('carLeft')).toBeLessThan(0.5);
    expect(of('qShorted')).toBeLessThan(of('q'));
    // far from what the three turns that are left would have
    expect(of('toThree')).toBeLessThan(0.6);
  });
});
