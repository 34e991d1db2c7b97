/** Wire of one loop: turns in the slot, tail, slack, and what twisting takes up. */
import { count, how, length, perMetre, share, smallLength } from '../how';
import type { How, Place, TakeoffKind } from '../results';
import type { Draft } from './line';
import { placeOf, slotsOf, type OfLoop } from './of-loop';

/**
 * Two wires wound around each other lie half a diameter off the middle: along a helix of n twists a metre each is longer by
 * √(1 + (π·n·D)²), D the diameter with insulation.
 */
const twistFactor = (twistsPerMetre: number, diameter: number): number =>
  Math.sqrt(1 + (Math.PI * twistsPerMetre * diameter) ** 2);

export function wireDrafts(each: OfLoop): readonly Draft[] {
  const { of, estimate } = each;
  const { loop, wire, turn } = of;
  const item = `wire:${loop.wire}`;
  const { tail } = loop;
  const slack = Math.min(tail.length, tail.route?.allowance ?? 0);
  const run = tail.length - slack;
  const factor = twistFactor(estimate.twistsPerMetre, wire.insulatedDiameter);
  const wayPlaces: readonly Place[] = of.tail ? [{ kind: 'line', points: of.tail }] : [];
  const end = of.tail?.at(-1);
  const draft = (what: TakeoffKind, amount: number, how: How, places: readonly Place[]): Draft => ({
    subject: loop.id,
    what,
    item,
    amount,
    unit: 'm',
    how,
    places
  });
  return [
    draft(
      'loop wire',
      loop.turns * turn,
      how('loopWire', { turns: count(loop.turns), turn: length(turn) }),
      each.others.length === 0
        ? each.places.filter((_, at) => each.own[at]!.kind !== 'home run')
        : slotsOf(each, false).map(placeOf)
    ),
    draft('tail wire', 2 * run, how(of.tail ? 'tailWire' : 'tailWireTyped', { run: length(run) }), wayPlaces),
    draft(
      'tail slack',
      2 * slack,
      how('tailSlack', { slack: length(slack) }),
      end ? [{ kind: 'point', at: end }] : []
    ),
    draft(
      'twist take-up',
      2 * tail.length * (factor - 1),
      how('twist', {
        wire: length(2 * tail.length),
        twists: perMetre(estimate.twistsPerMetre),
        diameter: smallLength(wire.insulatedDiameter),
        share: share(factor - 1)
      }),
      wayPlaces
    )
  ];
}
