/** Ends that several ways share. */
import type { WalkFigures } from '../figures/figures';
import { said, type EndNode, type Place } from '../node';
import type { Said, WalkEnd } from '../results';
import { count, hertz, metres, ohms, ratio } from '../values';
import { own, ownLoops, ownUnit } from './names';

/** What a sound circuit reads. */
export const soundReadings = (place: Pick<Place, 'circuit' | 'expected'>) => {
  const { resistanceDc_ohm: r, frequency_Hz: f } = place.expected;
  return said('check.sound', {
    circuit: own(place),
    low: ohms(r.low),
    high: ohms(r.high),
    frequency: hertz(f.value)
  });
};

/** Without a channel nothing is compared with anything. */
export const withoutChannel = (figures: Pick<WalkFigures, 'circuit' | 'expected'>): WalkEnd => ({
  id: 'no-channel',
  verdict: said('end.noChannel', { circuit: own(figures) }),
  remedies: [said('end.noChannel.choose')],
  facts: [],
  hazards: [],
  check: soundReadings(figures),
  ruledOut: []
});

export const unitFault: EndNode = {
  verdict: (place) => said('end.unit', { circuit: own(place), unit: ownUnit(place) }),
  remedies: ({ channel, ...place }) => [
    channel.frequency_Hz === null
      ? said('end.unit.replace', {
          unit: ownUnit(place),
          number: count(channel.number),
          threshold: ratio(channel.tripThreshold),
          setting: count(channel.frequencySetting)
        })
      : said('end.unit.replaceGiven', {
          unit: ownUnit(place),
          number: count(channel.number),
          threshold: ratio(channel.tripThreshold)
        })
  ],
  hazards: ['mains', 'gate'],
  check: soundReadings
};

export const unexplained: EndNode = {
  verdict: () => said('end.unexplained'),
  remedies: () => [said('end.unexplained.readings'), said('end.unexplained.log')],
  check: soundReadings
};

export const wiredElsewhere: EndNode = {
  verdict: (place) => said('end.elsewhere', { circuit: own(place) }),
  remedies: (place) => [said('end.elsewhere.trace', { loops: ownLoops(place) })],
  hazards: ['mains', 'traffic'],
  check: (place) => said('end.elsewhere.check', { circuit: own(place), loops: ownLoops(place) })
};

/** The lead-in alone, for whoever looks for a place along it; nothing where the tails reach the cabinet. */
export const leadInFacts = ({ leadIn }: Pick<Place, 'leadIn'>): readonly Said[] =>
  leadIn.length > 0
    ? [said('end.short.leadIn', { resistance: ohms(leadIn.resistance_ohm), length: metres(leadIn.length) })]
    : [];
