/** Of one circuit: the cables of its lead-in, what joins and names them, and the crew's time for them. */
import type { StatedEstimate } from '#plan/catalogue/estimate';
import { leadInPath } from '#plan/lead-out';
import type { Circuit, Site } from '#plan/schema';
import { count, how, length, pace, time } from '../how';
import type { How, Place, TakeoffKind } from '../results';
import type { Draft } from './line';
import { cablesInRow } from './parts';

const HOUR = 3_600;

function cableDrafts({ id, leadIn }: Circuit, way: readonly Place[]): readonly Draft[] {
  const slack = leadIn.route ? Math.min(leadIn.length, leadIn.route.allowance) : 0;
  const parts = [
    { cable: leadIn.cable, run: leadIn.length - slack, isDrawn: way.length > 0 },
    ...(leadIn.further ?? []).map(({ cable, length: run }) => ({ cable, run, isDrawn: false }))
  ];
  return [
    ...parts.map(({ cable, run, isDrawn }, at): Draft => ({
      subject: id,
      what: 'lead-in',
      further: at > 0 ? String(at + 1) : undefined,
      item: `cable:${cable}`,
      amount: run,
      unit: 'm',
      how: how(isDrawn ? 'leadIn' : 'leadInTyped', { run: length(run) }),
      places: way
    })),
    {
      subject: id,
      what: 'lead-in slack',
      item: `cable:${leadIn.cable}`,
      amount: slack,
      unit: 'm',
      how: how('leadInSlack', { slack: length(slack) }),
      places: way
    }
  ];
}

/** Every end of every cable gets a label; where one cable goes over into the next a kit joins them. */
export function circuitDrafts(site: Site, circuit: Circuit, { rates }: StatedEstimate): readonly Draft[] {
  const points = leadInPath(site, circuit);
  const way: readonly Place[] = points ? [{ kind: 'line', points }] : [];
  const cables = cablesInRow(circuit);
  const changes = Math.max(0, cables.length - 1);
  const all = cables.reduce((sum, part) => sum + part.length, 0);
  const draft = (
    [what, further]: readonly [TakeoffKind, string?],
    item: string,
    amount: number,
    came: How
  ): Draft => ({
    subject: circuit.id,
    what,
    further,
    item,
    amount,
    unit: item === 'crew' ? 'h' : 'each',
    how: came,
    places: way
  });
  const ends = 2 * cables.length;
  const pulled = all / rates.pulling_m_per_h;
  const spliced = (changes * rates.splice_s) / HOUR;
  const splicing = how('splicing', { kits: count(changes), time: time(rates.splice_s) });
  const pulling = how('pulling', { length: length(all), pace: pace(rates.pulling_m_per_h) });
  const testing = how('testingCircuit', { time: time(rates.test_s) });
  return [
    ...cableDrafts(circuit, way),
    draft(['splice kit', 'cables'], 'splice kit', changes, how('spliceCables', { changes: count(changes) })),
    draft(['label', 'cables'], 'label', ends, how('labelCable', { ends: count(ends) })),
    draft(['pulling'], 'crew', pulled, pulling),
    draft(['splicing', 'cables'], 'crew', spliced, splicing),
    draft(['testing', 'circuit'], 'crew', rates.test_s / HOUR, testing)
  ];
}
