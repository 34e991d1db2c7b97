/** Frequency plans of whole sites: what is said is what the assessment says once the plan is applied. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { FrequencyPlan, PlanAim, PlanWish } from '#analysis/frequency-plan/plan';
import { createFrequencyPlanner, planFrequencies } from '#analysis/frequency-plan/plan-in-steps';
import { shiftsOf } from '#analysis/frequency-plan/shifts';
import type { Assessment } from '#analysis/results';
import { finish } from '#analysis/steps';
import { applyPlan } from '#plan/edits/index';
import type { Channel, Site } from '#plan/schema';
import { bigSite, withMats } from '../../support/big-site';

const assessor = createAssessor();
const assess = (site: Site): Assessment => assessor.assess(site, 'all');

/** Loops of four lanes on units that measure all their channels at once, with eight settings. */
const SETTINGS_F = Array.from({ length: 8 }, (_, k) => 2.6e-7 / 1.22 ** k);
const site = (count = 8): Site => {
  const big = bigSite(count);
  return {
    ...big,
    units: big.units.map((unit) => ({ ...unit, scansInTurn: false, settings_F: SETTINGS_F }))
  };
};

const withChannel = (given: Site, id: string, patch: Partial<Channel>): Site => ({
  ...given,
  circuits: given.circuits.map((circuit) =>
    circuit.id === id && circuit.channel ? { ...circuit, channel: { ...circuit.channel, ...patch } } : circuit
  )
});

const wishFor = (given: Site, aim: PlanAim = 'smallest ripple'): PlanWish => ({
  aim,
  shifts: shiftsOf(assess(given))
});
const planOf = (given: Site, aim?: PlanAim): FrequencyPlan => planFrequencies(given, wishFor(given, aim));

const applied = (given: Site, { channels }: FrequencyPlan): Site =>
  applyPlan(
    given,
    channels.flatMap(({ circuit, unit, after: { setting } }) =>
      setting === null ? [] : [{ circuit, unit, setting }]
    )
  );

const worstBeat = (given: Site): number => Math.max(...assess(given).beats.map(({ ratio }) => ratio));
const channelOf = ({ channels }: FrequencyPlan, id: string) =>
  channels.find(({ circuit }) => circuit === id)!;

describe('a frequency plan of a site', () => {
  it.each([
    ['without steel', site()],
    ['over mats of bars', withMats(site(6))],
    [
      'with lead-ins in one conduit',
      { ...site(6), conduits: [{ id: 'D1', name: 'Duct', circuits: ['C1', 'C3', 'C6'], length: 40 }] }
    ],
    [
      'with long lead-ins',
      {
        ...site(6),
        circuits: site(6).circuits.map((circuit) => ({
          ...circuit,
          leadIn: { cable: 'pair-14', length: 400 }
        }))
      }
    ]
  ])('says what the assessment says before and after: %s', (_, given) => {
    const plan = planOf(given);
    const next = applied(given, plan);
    expect(next).not.toBe(given);
    expect(plan.before.worst[0]!.ratio).toBeCloseTo(worstBeat(given), 12);
    expect(plan.after.changeable).toBeLessThan(plan.before.changeable! / 3);
    expect(plan.isProven).toBe(true);
    const beats = assess(next).beats;
    expect(Math.abs(worstBeat(next) / plan.after.worst[0]!.ratio - 1)).toBeLessThan(0.01);
    for (const { a, b, ratio, verdict } of plan.after.worst) {
      const beat = beats.find((each) => each.a === a && each.b === b)!;
      expect(Math.abs(beat.ratio / ratio - 1)).toBeLessThan(0.01);
      expect(beat.verdict).toBe(verdict);
    }
    expect(plan.after.verdicts.clear).toBe(beats.filter(({ verdict }) => verdict === 'clear').length);
    const channels = assess(next).channels;
    for (const { circuit, after } of plan.channels) {
      const readout = channels.find((each) => each.circuit === circuit)!;
      expect(readout.setting).toBe(after.setting);
      expect(readout.sweep.rest_Hz / after.frequency_Hz!).toBeCloseTo(1, 9);
    }
  });

  it('clears every pair with fewer changes where that is what is asked for', () => {
    const given = site(12);
    const [smallest, fewest] = [planOf(given), planOf(given, 'fewest changes')];
    const changes = ({ channels }: FrequencyPlan) =>
      channels.filter(({ before, after }) => before.setting !== after.setting).length;
    expect(smallest.before.verdicts['false calls likely']).toBeGreaterThan(0);
    expect(fewest.after.verdicts).toEqual({ clear: 66, watch: 0, 'false calls likely': 0 });
    expect(changes(fewest)).toBeLessThan(changes(smallest));
    expect(fewest.smallest).toBe(smallest.after.changeable);
    expect(fewest.after.changeable).toBeGreaterThan(fewest.smallest);
    // each change is needed: without any one of them a pair is not clear
    const next = applied(given, fewest);
    for (const { circuit, before, after } of fewest.channels)
      if (before.setting !== after.setting)
        expect(worstBeat(withChannel(next, circuit, { frequencySetting: before.setting! }))).toBeGreaterThan(
          0.2
        );
    expect(
      planOf(next, 'fewest changes').channels.every(({ before, after }) => before.setting === after.setting)
    ).toBe(true);
  });

  it('beats every plan of one channel changed', () => {
    const given = site(6);
    const plan = planOf(given);
    const next = applied(given, plan);
    const worst = worstBeat(next);
    for (const { id } of given.circuits)
      for (const setting of [1, 4, 8])
        expect(worstBeat(withChannel(next, id, { frequencySetting: setting }))).toBeGreaterThan(0.99 * worst);
  });

  it('changes nothing where the plan is applied already', () => {
    const given = site();
    const next = applied(given, planOf(given));
    const again = planOf(next);
    expect(again.channels.every(({ before, after }) => before.setting === after.setting)).toBe(true);
    expect(applied(next, again)).toBe(next);
    expect(again.isProven).toBe(true);
  });

  it('keeps what is pinned, and what has a frequency given', () => {
    const free = planOf(site());
    const changed = free.channels.filter(({ before, after }) => before.setting !== after.setting);
    const [first, second] = changed.map(({ circuit }) => circuit);
    const given = withChannel(withChannel(site(), first!, { pinned: true }), second!, {
      frequency_Hz: 41_000
    });
    const plan = planOf(given);
    expect(channelOf(plan, first!)).toMatchObject({ kept: 'pinned', after: channelOf(plan, first!).before });
    expect(channelOf(plan, second!)).toMatchObject({
      kept: 'given',
      before: { setting: null, frequency_Hz: 41_000 },
      after: { setting: null, frequency_Hz: 41_000 }
    });
    const next = applied(given, plan);
    for (const id of [first, second])
      expect(next.circuits.find((circuit) => circuit.id === id)).toBe(
        given.circuits.find((circuit) => circuit.id === id)
      );
    expect(plan.after.changeable).toBeGreaterThanOrEqual(free.after.changeable!);
  });

  it('sets a pair that no setting changes apart, and plans the rest as if it were not there', () => {
    const [a, b] = ['C1', 'C2'];
    const same = { frequency_Hz: 50_000 };
    const given = withChannel(withChannel(site(), a, same), b, same);
    const plan = planOf(given);
    const worst = plan.after.worst[0]!;
    expect(worst).toMatchObject({ a, b, isKept: true, verdict: 'false calls likely' });
    expect(plan.after.changeable).toBeLessThan(0.25);
    expect(plan.after.worst[1]).toMatchObject({ isKept: false, ratio: plan.after.changeable });
    expect(plan.isProven).toBe(true);
  });

  it('does not offer settings outside the usual band of 20 to 100 kHz while another lies inside', () => {
    // f = 1/(2π√(LC)): on these loops 2 µF runs near 12 kHz and 10 nF near 170 kHz
    const unusual = [2e-6, 1.5e-7, 1e-7, 1e-8];
    const given = { ...site(4), units: site(4).units.map((unit) => ({ ...unit, settings_F: unusual })) };
    const [channel] = planOf(given).channels;
    expect(channel!.excluded.map(({ setting, why }) => [setting, why])).toEqual([
      [1, 'outside the usual band'],
      [4, 'outside the usual band']
    ]);
    expect(channel!.excluded[0]!.frequency_Hz).toBeLessThan(20_000);
    expect(channel!.excluded[1]!.frequency_Hz).toBeGreaterThan(100_000);
    // it stood on the first setting, which is not offered: it moves
    expect(channel!.before.setting).toBe(1);
    expect([2, 3]).toContain(channel!.after.setting);

    const only = { ...given, units: given.units.map((unit) => ({ ...unit, settings_F: [2e-6, 3e-6] })) };
    const onlyUnusual = withFirstSettings(only);
    expect(planOf(onlyUnusual).channels.every(({ excluded }) => excluded.length === 0)).toBe(true);
  });

  it('says of a unit with one setting that there is no choice, and of nothing that can be done that it is best', () => {
    const given = withFirstSettings({
      ...site(4),
      units: site(4).units.map((unit) => ({ ...unit, settings_F: [1e-7] }))
    });
    const plan = planOf(given);
    expect(plan.channels.map(({ kept }) => kept)).toEqual(Array(4).fill('one setting'));
    expect(plan.after.changeable).toBeNull();
    expect(plan.after).toEqual(plan.before);
    expect(plan.after.worst.every(({ isKept }) => isKept)).toBe(true);
  });

  it('leaves out a circuit that oscillates on no setting', () => {
    // a kilometre and a half of lead-in has more capacitance than the settings, and looks capacitive to them
    const tiny = {
      ...site(3),
      units: site(3).units.map((unit) => ({ ...unit, settings_F: [2e-11, 3e-11] }))
    };
    const given = withFirstSettings({
      ...tiny,
      circuits: tiny.circuits.map((circuit, k) =>
        k === 0 ? { ...circuit, leadIn: { cable: 'pair-14', length: 9_000 } } : circuit
      )
    });
    const [first] = planOf(given).channels;
    expect(first).toMatchObject({ kept: 'no oscillation', after: first!.before });
    expect(first!.excluded.every(({ why }) => why === 'no oscillation')).toBe(true);
    expect(planOf(given).after.worst.some(({ a }) => a === 'C1')).toBe(false);
  });

  it('has nothing to do where channels run in turn, and where there are none', () => {
    const turns = { ...site(4), units: site(4).units.map((unit) => ({ ...unit, scansInTurn: true })) };
    expect(planOf(turns)).toMatchObject({ after: { worst: [], changeable: null }, isProven: true });
    const bare = { ...site(4), circuits: site(4).circuits.map((circuit) => ({ ...circuit, channel: null })) };
    expect(planOf(bare)).toMatchObject({ channels: [], after: { worst: [], changeable: null } });
  });

  it('says the same a second time, with what it kept, also of a drawing whose threshold changed', () => {
    const planner = createFrequencyPlanner();
    const given = site();
    const wish = wishFor(given);
    const first = finish(planner(given, wish));
    expect(finish(planner(structuredClone(given), wish))).toEqual(first);
    const firmer = withChannel(given, 'C2', { tripThreshold: 0.01 });
    expect(finish(planner(firmer, wish))).toEqual(planFrequencies(firmer, wish));
    expect(finish(planner(firmer, wish)).before).not.toEqual(first.before);
  });

  it('works in steps that say how far it is', () => {
    const given = site();
    const steps = createFrequencyPlanner()(given, wishFor(given));
    const shares: number[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) if (typeof step.value === 'number') shares.push(step.value);
    expect(shares.length).toBeGreaterThan(given.circuits.length);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
    shares.forEach((share, k) => {
      expect(share).toBeGreaterThanOrEqual(shares[k - 1] ?? 0);
    });
  });
});

const withFirstSettings = (given: Site): Site => ({
  ...given,
  circuits: given.circuits.map((circuit) =>
    circuit.channel ? { ...circuit, channel: { ...circuit.channel, frequencySetting: 1 } } : circuit
  )
});
