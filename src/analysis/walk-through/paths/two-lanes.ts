/** Two circuits that call together: one vehicle seen by both, wires that touch, or two channels that beat. */
import { WATCH_FROM } from '../../beating/rate';
import type { OwnBeat, PickUp } from '../figures/figures';
import { answer, said, yesOrNo, type Path, type Place } from '../node';
import { beatEnd, beatFact } from '../parts/beat';
import { besideEnd, nothingBeside, pickUpFact } from '../parts/beside';
import { unexplained } from '../parts/ends';
import { circuitName, laneName, own, vehicleName } from '../parts/names';
import { insulation } from '../values';

/** More than so many are not offered. */
const MOST = 6;

/** Whichever of the two sees more of the other's lanes. */
function pickUpBetween(place: Place): PickUp | undefined {
  const { circuit, about, lanes, pickUps } = place;
  return pickUps.find(
    (each) =>
      (each.circuit === circuit.id && (lanes.get(about ?? '') ?? []).includes(each.lane)) ||
      (each.circuit === about && (lanes.get(circuit.id) ?? []).includes(each.lane))
  );
}

const beatBetween = ({ beats, about }: Place): OwnBeat | undefined =>
  beats.find(({ other }) => other === about);

/** Those that disturb or see one another most come first. */
const partners = (place: Place) => {
  const weight = (id: string): number =>
    Math.max(
      pickUpBetween({ ...place, about: id })?.ratio ?? 0,
      beatBetween({ ...place, about: id })?.ratio ?? 0
    );
  return place.site.circuits
    .filter(({ id, channel }) => id !== place.circuit.id && channel !== null)
    .map((circuit) => ({ circuit, weight: weight(circuit.id) }))
    .sort((a, b) => b.weight - a.weight)
    .slice(0, MOST)
    .map(({ circuit }) => circuit);
};

const other = (place: Place): string => circuitName(place, place.about ?? '');

export const twoLanes: Path = {
  start: 'which',
  needs: ['beats'],
  nodes: {
    which: {
      decide: (place) => {
        const found = partners(place);
        const [only] = found;
        if (!only) return { to: 'end-alone', said: null };
        if (found.length > 1) return null;
        return {
          to: 'who',
          about: only.id,
          said: said('lanes.which.only', { circuit: own(place), other: circuitName(place, only.id) })
        };
      },
      question: (place) => said('lanes.which.ask', { circuit: own(place) }),
      answers: (place) =>
        partners(place).map(({ id }) =>
          answer(id, said('lanes.which.other', { other: circuitName(place, id) }), 'who', id)
        )
    },
    who: {
      question: (place) => said('lanes.who.ask', { circuit: own(place), other: other(place) }),
      hazards: ['traffic'],
      answers: () => [
        answer('one', said('lanes.who.one'), 'pick-up'),
        answer('across', said('lanes.who.across'), 'end-across'),
        answer('nobody', said('lanes.who.nobody'), 'beat')
      ]
    },
    'pick-up': {
      decide: (place) => {
        const pickUp = pickUpBetween(place);
        if (!pickUp)
          return {
            to: 'apart',
            said: said('lanes.pickUp.none', { circuit: own(place), other: other(place) })
          };
        return nothingBeside(place, pickUp, 'apart');
      },
      question: (place) => {
        const pickUp = pickUpBetween(place);
        return said('lanes.pickUp.ask', {
          vehicle: pickUp ? vehicleName(place, pickUp.vehicle) : '',
          lane: pickUp ? laneName(place, pickUp.lane) : '',
          circuit: pickUp ? circuitName(place, pickUp.circuit) : ''
        });
      },
      facts: (place) => {
        const pickUp = pickUpBetween(place);
        return pickUp ? [pickUpFact(place, pickUp)] : [];
      },
      hazards: ['traffic', 'gate'],
      answers: yesOrNo('end-beside', 'apart')
    },
    apart: {
      question: (place) => said('lanes.apart.ask', { circuit: own(place), other: other(place) }),
      hazards: ['mains', 'traffic', 'gate'],
      answers: yesOrNo('end-crossed', 'between')
    },
    between: {
      question: (place) => said('lanes.between.ask', { circuit: own(place), other: other(place) }),
      facts: ({ insulationLimit_ohm: limit }) => [
        said('loop.insulation.limit', { limit: insulation(limit) })
      ],
      hazards: ['insulation tester', 'mains', 'gate'],
      answers: ({ insulationLimit_ohm: limit }) => [
        answer('good', said('loop.insulation.good', { limit: insulation(limit) }), 'beat'),
        answer('bad', said('loop.insulation.bad', { limit: insulation(limit) }), 'end-touching')
      ]
    },
    beat: {
      decide: (place) => {
        const beat = beatBetween(place);
        const names = { circuit: own(place), other: other(place) };
        if (!beat) return { to: 'outputs', said: said('lanes.beat.never', names) };
        return beat.ratio >= WATCH_FROM
          ? null
          : {
              to: 'outputs',
              said: said('beat.weak', { ...names, share: { value: beat.ratio, kind: 'share' } })
            };
      },
      question: (place) => said('lanes.beat.ask', { other: other(place), circuit: own(place) }),
      facts: (place) => {
        const beat = beatBetween(place);
        if (!beat) return [];
        return [
          beatFact(place, beat),
          ...(beat.conduitShare > 0
            ? [said('lanes.beat.conduit', { share: { value: beat.conduitShare, kind: 'share' } })]
            : [])
        ];
      },
      hazards: ['mains', 'traffic', 'gate'],
      answers: yesOrNo('end-beat', 'outputs')
    },
    outputs: {
      question: (place) => said('lanes.outputs.ask', { circuit: own(place), other: other(place) }),
      hazards: ['mains', 'gate', 'traffic'],
      answers: yesOrNo('end-outputs', 'end-unexplained')
    },
    'end-alone': {
      verdict: (place) => said('lanes.end.alone', { circuit: own(place) }),
      remedies: () => [said('lanes.end.alone.draw')],
      check: () => said('lanes.check')
    },
    'end-across': {
      verdict: () => said('lanes.end.across'),
      remedies: () => [said('lanes.end.across.markings'), said('lanes.end.across.narrower')],
      hazards: ['traffic'],
      check: () => said('lanes.check')
    },
    'end-crossed': {
      verdict: (place) => said('lanes.end.crossed', { circuit: own(place), other: other(place) }),
      remedies: () => [said('lanes.end.crossed.trace')],
      hazards: ['mains', 'traffic'],
      check: () => said('lanes.check')
    },
    'end-touching': {
      verdict: (place) => said('lanes.end.touching', { circuit: own(place), other: other(place) }),
      remedies: () => [said('lanes.end.touching.splices'), said('lanes.end.touching.cable')],
      hazards: ['traffic', 'insulation tester'],
      check: ({ insulationLimit_ohm: limit }) => said('check.insulation', { limit: insulation(limit) })
    },
    'end-outputs': {
      verdict: () => said('lanes.end.outputs'),
      remedies: () => [said('lanes.end.outputs.separate')],
      hazards: ['mains', 'gate', 'traffic'],
      check: () => said('lanes.check')
    },
    'end-beside': besideEnd(pickUpBetween),
    'end-beat': beatEnd,
    'end-unexplained': unexplained
  }
};
