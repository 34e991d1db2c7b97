/** What the units can do: scan both in turn, or measure for longer. */
import { freeNumber, updateUnit } from '#plan/edits/index';
import type { Site, Unit } from '#plan/schema';
import type { Remedy } from '../../results';
import type { Steps } from '../../steps';
import { WATCH_FROM } from '../rate';
import type { BeatTank } from '../tank';
import { effectOf, type RemedyContext, type Trial } from './trial';
import { roundedUp } from './rounding';

/** Both circuits on a unit that scans in turn; it need not hold them in the document, only the rating asks. */
const together =
  (unit: Unit, { circuit: a }: BeatTank, { circuit: b }: BeatTank) =>
  (site: Site): Site => ({
    ...site,
    units: [...site.units.filter(({ id }) => id !== unit.id), unit],
    circuits: site.circuits.map((circuit) => {
      const { channel } = circuit;
      if (!channel || (circuit.id !== a.id && circuit.id !== b.id)) return circuit;
      const frequencySetting = Math.min(channel.frequencySetting, unit.settings_F.length);
      return { ...circuit, channel: { ...channel, unit: unit.id, frequencySetting } };
    })
  });

export function* scanning({ a, b, survey: { site } }: RemedyContext, attempt: Trial): Steps<Remedy[]> {
  const place = (): { readonly unit: Unit; readonly known: boolean } => {
    if (a.unit.id === b.unit.id) return { unit: { ...a.unit, scansInTurn: true }, known: true };
    const free = [a.unit, b.unit].find((unit) => unit.scansInTurn && freeNumber(site, unit) !== null);
    if (free) return { unit: free, known: true };
    return { unit: { ...a.unit, id: NEW_UNIT, channels: 2, scansInTurn: true }, known: false };
  };
  const { unit, known } = place();
  const outcome = attempt(together(unit, a, b), [a.circuit.id, b.circuit.id]);
  yield;
  return outcome ? [{ kind: 'scanning', unit: known ? unit.id : null, ...effectOf(outcome) }] : [];
}

/** No document holds such an id: control characters are refused. */
const NEW_UNIT = '\u0000';

/** Seconds: longer than this a vehicle would wait for its call. */
const LONGEST = 1;

/** Channels that have to wait for one another. */
const turnsOf = (unit: Unit, { circuits }: Pick<Site, 'circuits'>): number =>
  unit.scansInTurn ? circuits.filter(({ channel }) => channel?.unit === unit.id).length : 1;

/** Where the averaging has set in, the ripple falls with the time. */
export function* longerMeasuring(
  { a, b, pair, survey: { site } }: RemedyContext,
  attempt: Trial
): Steps<Remedy[]> {
  // locked, no time helps
  if (pair.separation_Hz < pair.lockingRange_Hz) return [];
  const unclear = pair.sides.filter(({ ratio }) => ratio >= WATCH_FROM);
  const needed = Math.max(
    ...unclear.map(({ ratio, measuringTime_s }) => {
      // before it has set in, it first has to
      const start = Math.max(measuringTime_s, 1 / (Math.PI * pair.separation_Hz));
      return (start * ratio) / WATCH_FROM;
    })
  );
  const measuringTime_s = roundedUp(needed);
  const units = [a, b]
    .filter(({ circuit }) => unclear.some((side) => side.circuit === circuit.id))
    .map(({ unit }) => unit.id);
  const isSlow = [a, b].some(
    ({ unit }) => units.includes(unit.id) && !(measuringTime_s * turnsOf(unit, site) <= LONGEST)
  );
  if (isSlow) return [];
  const edit = (before: Site): Site =>
    units.reduce((result, id) => updateUnit(result, id, { measuringTime_s }), before);
  const outcome = attempt(edit, [a.circuit.id, b.circuit.id]);
  yield;
  return outcome
    ? [{ kind: 'measuring-time', units: [...new Set(units)], measuringTime_s, ...effectOf(outcome) }]
    : [];
}
