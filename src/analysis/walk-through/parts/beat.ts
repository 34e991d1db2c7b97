/** Other circuits that run at the same time: which of them, and what would clear it. */
import { listed } from '#i18n/locale';
import { WATCH_FROM } from '../../beating/rate';
import type { Remedy } from '../../results';
import { answer, said, type AskNode, type Decision, type EndNode, type Place } from '../node';
import type { OwnBeat } from '../figures/figures';
import type { Said } from '../results';
import { count, hertz, metres, ratio, seconds, times } from '../values';
import { circuitName, loopName, own, unitName, vehicleName } from './names';

/** More than so many are not tried one by one. */
const MOST = 4;

const share = (value: number) => ({ value, kind: 'share' }) as const;

export const beatFact = (place: Pick<Place, 'site' | 'circuit'>, beat: OwnBeat): Said => {
  const names = { other: circuitName(place, beat.other), circuit: own(place) };
  const weak = { ...names, share: share(beat.ratio) };
  const strong = { ...names, times: times(beat.ratio) };
  const isStrong = beat.ratio >= 1;
  if (beat.separation_Hz > 0) {
    const separation = hertz(beat.separation_Hz);
    return isStrong
      ? said('beat.strong', { ...strong, separation })
      : said('beat.fact', { ...weak, separation });
  }
  return isStrong ? said('beat.strongOverlap', strong) : said('beat.overlap', weak);
};

const worthALook = ({ beats }: Pick<Place, 'beats'>): readonly OwnBeat[] =>
  beats.filter(({ ratio: own }) => own >= WATCH_FROM).slice(0, MOST);

/** Null where some neighbour is worth a look. */
function noBeat(place: Pick<Place, 'site' | 'circuit' | 'beats'>, to: string): Decision | null {
  const [strongest] = place.beats;
  if (!strongest) return { to, said: said('beat.none', { circuit: own(place) }) };
  if (strongest.ratio >= WATCH_FROM) return null;
  return {
    to,
    said: said('beat.weak', {
      other: circuitName(place, strongest.other),
      circuit: own(place),
      share: share(strongest.ratio)
    })
  };
}

export const beatNode = (goesOn: string): AskNode => ({
  decide: (place) => noBeat(place, goesOn),
  question: () => said('beat.ask'),
  facts: (place) => worthALook(place).map((beat) => beatFact(place, beat)),
  hazards: ['mains', 'traffic', 'gate'],
  answers: (place) => [
    ...worthALook(place).map(({ other }) =>
      answer(other, said('beat.off', { other: circuitName(place, other) }), 'end-beat', other)
    ),
    answer('goes-on', said('beat.goesOn'), goesOn)
  ]
});

function remedySaid(place: Place, remedy: Remedy): readonly Said[] {
  const left = share(remedy.ratio);
  switch (remedy.kind) {
    case 'setting':
      return [settingSaid(place, remedy)];
    case 'distance':
      return [
        said('remedy.distance', {
          circuit: circuitName(place, remedy.circuit),
          distance: metres(remedy.by_m),
          share: left
        })
      ];
    case 'winding':
      return [said('remedy.winding', { loop: loopName(place, remedy.loop), share: left })];
    case 'scanning':
      return [
        remedy.unit === null
          ? said('remedy.scanningNew')
          : said('remedy.scanning', { unit: unitName(place, remedy.unit) })
      ];
    case 'threshold':
      return remedy.circuits.map(({ circuit, tripThreshold, lost }) => {
        const values = {
          circuit: circuitName(place, circuit),
          threshold: ratio(tripThreshold),
          share: left
        };
        return lost.length === 0
          ? said('remedy.threshold', values)
          : said('remedy.thresholdLoses', {
              ...values,
              vehicles: listed(lost.map((id) => vehicleName(place, id)))
            });
      });
    case 'measuring-time':
      return [
        said('remedy.measuring', {
          units: listed(remedy.units.map((id) => unitName(place, id))),
          time: seconds(remedy.measuringTime_s),
          share: left
        })
      ];
    case 'conduit':
      return [said('remedy.conduit', { share: left })];
  }
}

function settingSaid(place: Place, remedy: Extract<Remedy, { kind: 'setting' }>): Said {
  const { circuit: changed, setting, frequency_Hz } = remedy;
  const partner = changed === place.circuit.id ? (place.about ?? '') : place.circuit.id;
  const there = place.frequencies.get(partner);
  const channel = place.site.circuits.find(({ id }) => id === changed)?.channel;
  const values = {
    circuit: circuitName(place, changed),
    setting: count(setting),
    other: circuitName(place, partner),
    apart: hertz(Math.abs(frequency_Hz - (there ?? frequency_Hz))),
    share: share(remedy.ratio)
  };
  return channel && channel.frequency_Hz === null
    ? said('remedy.setting', { ...values, before: count(channel.frequencySetting) })
    : said('remedy.settingFirst', values);
}

/** The best few that there are. */
const OFFERED = 3;

export const beatEnd: EndNode = {
  verdict: (place) => said('end.beat', { other: circuitName(place, place.about ?? ''), circuit: own(place) }),
  facts: (place) =>
    place.beats.filter(({ other }) => other === place.about).map((beat) => beatFact(place, beat)),
  remedies: (place) => {
    const found = place.remedies.slice(0, OFFERED).flatMap((remedy) => remedySaid(place, remedy));
    return found.length > 0 ? found : [said('remedy.none')];
  },
  hazards: ['mains', 'traffic', 'gate'],
  check: (place) => said('end.beat.check', { other: circuitName(place, place.about ?? '') })
};
