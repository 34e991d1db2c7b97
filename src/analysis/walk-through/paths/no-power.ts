/** Nothing lights up: from the unit's own sign back to the cabinet's supply, or to one dark channel. */
import { listed } from '#i18n/locale';
import { answer, said, yesOrNo, type Path, type Place } from '../node';
import { soundReadings, unexplained } from '../parts/ends';
import { loopChecks } from '../parts/loop-checks';
import { circuitsOn, own, ownUnit } from '../parts/names';
import { called } from '../../findings/finding';
import type { Said } from '../results';
import { count, insulation } from '../values';

const othersOn = ({ site, unit, circuit }: Place) =>
  circuitsOn(site, unit.id).filter(({ id }) => id !== circuit.id);

const runs = (place: Place): Said => said('power.check', { unit: ownUnit(place) });

export const noPower: Path = {
  start: 'sign',
  needs: [],
  nodes: {
    sign: {
      question: (place) => said('power.sign.ask', { unit: ownUnit(place) }),
      facts: (place) => {
        const others = othersOn(place);
        const unit = ownUnit(place);
        return [
          others.length > 0
            ? said('power.sign.serves', { unit, circuits: listed(others.map(called)) })
            : said('power.sign.alone', { unit, circuit: own(place) })
        ];
      },
      hazards: ['mains'],
      answers: (place) => [
        answer('dark', said('power.sign.dark'), 'others'),
        answer('channel', said('power.sign.channel', { number: count(place.channel.number) }), 'channel'),
        answer('alive', said('power.sign.alive'), 'end-alive')
      ]
    },
    others: {
      decide: ({ site, unit }) =>
        site.units.length > 1
          ? null
          : { to: 'supply', said: said('power.others.none', { unit: ownUnit({ unit }) }) },
      question: ({ site, unit }) =>
        said('power.others.ask', {
          units: listed(site.units.filter(({ id }) => id !== unit.id).map(called))
        }),
      hazards: ['mains'],
      answers: yesOrNo('terminals', 'supply')
    },
    supply: {
      question: () => said('power.supply.ask'),
      hazards: ['mains'],
      answers: () => [
        answer('on', said('power.supply.on'), 'terminals'),
        answer('off', said('power.supply.off'), 'end-off'),
        answer('tripped', said('power.supply.tripped'), 'end-tripped')
      ]
    },
    terminals: {
      question: (place) => said('power.terminals.ask', { unit: ownUnit(place) }),
      hazards: ['mains'],
      answers: () => [
        answer('right', said('power.terminals.right'), 'fuse'),
        answer('low', said('power.terminals.low'), 'end-low'),
        answer('none', said('power.terminals.none'), 'end-wire')
      ]
    },
    fuse: {
      question: (place) => said('power.fuse.ask', { unit: ownUnit(place) }),
      hazards: ['mains'],
      answers: () => [
        answer('whole', said('power.fuse.whole'), 'another'),
        answer('loose', said('power.fuse.loose'), 'end-loose'),
        answer('blown', said('power.fuse.blown'), 'end-fuse')
      ]
    },
    another: {
      question: () => said('power.another.ask'),
      hazards: ['mains', 'gate'],
      answers: yesOrNo('end-dead', 'end-base')
    },
    channel: {
      question: (place) =>
        said('power.channel.ask', { number: count(place.channel.number), unit: ownUnit(place) }),
      hazards: ['mains', 'gate'],
      answers: yesOrNo('resistance', 'end-switched-off')
    },
    ...loopChecks('other-channel'),
    'other-channel': {
      decide: (place) =>
        place.unit.channels > 1
          ? null
          : { to: 'end-dead', said: said('power.other.one', { unit: ownUnit(place) }) },
      question: (place) => said('power.other.ask', { circuit: own(place), unit: ownUnit(place) }),
      hazards: ['mains', 'gate', 'traffic'],
      answers: yesOrNo('end-dead', 'end-unexplained')
    },
    'end-alive': {
      verdict: (place) => said('power.end.alive', { unit: ownUnit(place) }),
      remedies: () => [said('power.end.alive.other')],
      check: soundReadings
    },
    'end-off': {
      verdict: () => said('power.end.off'),
      remedies: () => [said('power.end.off.why')],
      hazards: ['mains', 'gate'],
      check: runs
    },
    'end-tripped': {
      verdict: () => said('power.end.tripped'),
      remedies: () => [said('power.end.tripped.once'), said('power.end.tripped.apart')],
      hazards: ['mains', 'gate'],
      check: runs
    },
    'end-low': {
      verdict: (place) => said('power.end.low', { unit: ownUnit(place) }),
      remedies: () => [said('power.end.low.load')],
      hazards: ['mains'],
      check: runs
    },
    'end-wire': {
      verdict: (place) => said('power.end.wire', { unit: ownUnit(place) }),
      remedies: () => [said('power.end.wire.trace')],
      hazards: ['mains'],
      check: runs
    },
    'end-loose': {
      verdict: (place) => said('power.end.loose', { unit: ownUnit(place) }),
      remedies: () => [said('power.end.loose.seat')],
      hazards: ['mains', 'gate'],
      check: runs
    },
    'end-fuse': {
      verdict: (place) => said('power.end.fuse', { unit: ownUnit(place) }),
      remedies: (place) => [
        said('power.end.fuse.once'),
        said('power.end.fuse.surge', { limit: insulation(place.insulationLimit_ohm) })
      ],
      hazards: ['mains', 'gate'],
      check: runs
    },
    'end-dead': {
      verdict: (place) => said('power.end.dead', { unit: ownUnit(place) }),
      remedies: (place) => [said('power.end.dead.replace', { number: count(place.channel.number) })],
      hazards: ['mains', 'gate'],
      check: soundReadings
    },
    'end-base': {
      verdict: (place) => said('power.end.base', { unit: ownUnit(place) }),
      remedies: () => [said('power.end.base.pins')],
      hazards: ['mains'],
      check: runs
    },
    'end-switched-off': {
      verdict: (place) => said('power.end.switchedOff', { number: count(place.channel.number) }),
      remedies: () => [said('power.end.switchedOff.on')],
      hazards: ['mains', 'gate'],
      check: soundReadings
    },
    'end-unexplained': unexplained
  }
};
