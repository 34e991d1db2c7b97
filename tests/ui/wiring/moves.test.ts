import { describe, expect, it } from 'vitest';
import { placeLoop } from '#plan/edits/index';
import { movesOf } from '#ui/wiring/moves';
import { sectionsOf } from '#scenes/cable-sections';
import { fullSite } from '../../plan/edits/site';

describe('the places that a loop can be moved to', () => {
  it('are beside the others of its circuit, and in every other circuit', () => {
    const site = fullSite();
    expect(movesOf(site, site.circuits[0]!, 'L1').map(({ label }) => label)).toEqual([
      'before Loop L2',
      'after Loop L2',
      'to the circuit C2'
    ]);
    expect(movesOf(site, site.circuits[1]!, 'L3').map(({ label }) => label)).toEqual(['to the circuit C1']);
  });

  it('all lead to another wiring, or to the one that there is', () => {
    const site = fullSite();
    const results = movesOf(site, site.circuits[0]!, 'L1').map(({ place }) => placeLoop(site, 'L1', place));
    expect(
      results.map((next) => next.circuits.map(({ strings }) => strings.flat().map(({ loop }) => loop)))
    ).toEqual([
      [['L1', 'L2'], ['L3']],
      [['L2', 'L1'], ['L3']],
      [['L2'], ['L3', 'L1']]
    ]);
  });
});

it('the cables are read from the terminals to the pull box, without those of no length', () => {
  const circuit = fullSite().circuits[0]!;
  const leadIn = {
    cable: 'k1',
    length: 40,
    further: [
      { cable: 'pair-14', length: 0 },
      { cable: 'pair-12', length: 7 }
    ]
  };
  expect(sectionsOf({ ...circuit, leadIn }).map(({ cable, length }) => [cable, length])).toEqual([
    ['pair-12', 7],
    ['k1', 40]
  ]);
});
