/** Times and mistakes in plain words. */
import { fixed } from '#units/digits';
import type { CallsPicture, Cause, Mistake, MistakeKind } from '#analysis/calls/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import { circuitName, vehicleName } from '../../names';
import type { ListedMistake } from './stops';

/** In the order in which they are counted. */
export const KINDS = ['missed', 'merged', 'split', 'false'] as const satisfies readonly MistakeKind[];

/** "1:23.456" from a minute on, else "23.456 s"; `decimals` of the seconds. */
export function clockText(time: number, decimals = 1): string {
  const unit = 10 ** decimals;
  const rounded = Math.round(time * unit) / unit;
  if (rounded < 60) return t('calls.seconds', { value: fixed(rounded, decimals) });
  const minutes = Math.floor(rounded / 60);
  const seconds = fixed(rounded - minutes * 60, decimals).padStart(decimals > 0 ? decimals + 3 : 2, '0');
  return `${minutes}:${seconds}`;
}

/** What is less is only what rounding leaves. */
const NOTHING = 1e-7;

/** Seconds as the sentences give them, to the millisecond under a second. */
const secondsText = (seconds: number): string =>
  format(seconds, 'time', 'metric', { unit: seconds < 1 ? 'ms' : 's', digits: 3 }).text;

export const responseText = (response: number): string =>
  format(Math.abs(response) < NOTHING ? 0 : response, 'ratio', 'metric', {
    digits: response >= 0.001 ? 3 : 2
  }).text;

/** "Car 12": counted from 1 in the order of the simulation. */
function vehicleText(site: Site, picture: CallsPicture, number: number): string {
  const vehicle = picture.vehicles[number];
  return vehicle
    ? t('calls.vehicleNumber', { name: vehicleName(site, vehicle.vehicle), number: number + 1 })
    : '–';
}

export const vehiclesText = (site: Site, picture: CallsPicture, numbers: readonly number[]): string =>
  numbers.map((number) => vehicleText(site, picture, number)).join(', ');

type Measure = 'response' | 'seconds';
/** What the numbers of a mistake are about: the cause itself, or a case of it in which they mean something else. */
type Matter = Cause | 'against-the-road' | 'ended-before-delay';

const MEASURES: Readonly<Record<Matter, Measure>> = {
  'too-weak': 'response',
  'left-before-delay': 'seconds',
  'still-occupied': 'seconds',
  'still-extended': 'seconds',
  'not-re-armed': 'seconds',
  'tuned-out': 'seconds',
  'timed-out': 'seconds',
  'lost-in-between': 'response',
  'other-lane': 'response',
  'several-together': 'response',
  'against-the-road': 'response',
  'ended-before-delay': 'seconds'
};

function matterOf({ kind, cause, response }: Mistake): Matter {
  if (cause !== 'tuned-out' && cause !== 'timed-out') return cause;
  // A vehicle that comes after one that counts as part of the road must change more than that one does.
  if (response !== null) return 'against-the-road';
  return cause === 'timed-out' && kind === 'missed' ? 'ended-before-delay' : cause;
}

/** The cause as a sentence, and another with its numbers where there are any. */
export function causeText(mistake: Mistake): string {
  const sentence = t(`calls.cause.${mistake.cause}`);
  const matter = matterOf(mistake);
  const isResponse = MEASURES[matter] === 'response';
  const found = isResponse ? mistake.response : mistake.seconds;
  const needed = isResponse ? mistake.needed : mistake.neededSeconds;
  if (found === null) return sentence;
  const say = isResponse ? responseText : secondsText;
  const numbers =
    needed === null
      ? t(`calls.found.${matter}`, { found: say(found) })
      : t(`calls.needed.${matter}`, { found: say(found), needed: say(needed) });
  return `${sentence} ${numbers}`;
}

/** The whole of a mistake: when, on which circuit, what, who and why. */
export const mistakeText = (site: Site, picture: CallsPicture, { circuit, mistake }: ListedMistake): string =>
  t('calls.mistakeAt', {
    time: clockText(mistake.time_s, 3),
    circuit: circuitName(site, circuit),
    what: t(`calls.kind.${mistake.kind}`),
    who: mistake.vehicles.length > 0 ? ` (${vehiclesText(site, picture, mistake.vehicles)})` : '',
    why: causeText(mistake)
  });
