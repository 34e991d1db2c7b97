import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { causeEvidence as german } from '#i18n/de/cause-evidence';
import { causeEvidence as english } from '#i18n/en/cause-evidence';
import { demoSite } from '#plan/demo';
import { ReadingDesk } from '#ui/field-check/readings/desk.svelte.ts';
import type { Bench } from '#ui/bench';

const site = demoSite();
const circuit = site.circuits[0]!.id;
const shown = {
  ...site,
  readings: [1.2, 1.4].map((resistanceDc_ohm) => ({
    circuit,
    testPoint: 'cabinet' as const,
    resistanceDc_ohm,
    weather: 'dry' as const
  }))
};
const said: string[] = [];

function deskNow(): ReadingDesk {
  const bench = {
    shown,
    state: { site: shown },
    editor: { say: (text: string) => said.push(text) },
    keeping: { slot: 's' },
    settings: { initials: 'M. K.' },
    drafts: { read: () => undefined, keep: () => 'kept' }
  };
  return new ReadingDesk(bench as unknown as Bench);
}

const asked = { circuit, testPoint: 'pull-box', loop: null, quantity: 'q' } as const;

beforeEach(() => {
  said.length = 0;
  vi.useFakeTimers();
  vi.setSystemTime(new Date(2025, 10, 26, 23, 50));
});
afterEach(() => {
  vi.useRealTimers();
});

test('what is asked to be measured waits behind a change that is half made', () => {
  const desk = deskNow();
  desk.edit(0, circuit);
  desk.change(circuit, { texts: { resistanceDc_ohm: '1.7' } });
  expect(desk.take(asked)).toBe(false);
  expect(said).toEqual([expect.stringContaining('half changed')]);
  expect(desk.entry(circuit).texts.resistanceDc_ohm).toBe('1.7');
  desk.clear(circuit);
  expect(desk.editing(circuit)).toBeNull();
  expect(desk.entry(circuit).testPoint).toBe('pull-box');
});

test('another kept reading waits behind it too, and the same one is not put back', () => {
  const desk = deskNow();
  desk.edit(0, circuit);
  desk.change(circuit, { texts: { resistanceDc_ohm: '1.7' } });
  desk.edit(0, circuit);
  expect(said).toEqual([]);
  desk.edit(1, circuit);
  expect(desk.entry(circuit).texts.resistanceDc_ohm).toBe('1.7');
  expect(said).toHaveLength(1);
  desk.clear(circuit);
  desk.edit(1, circuit);
  expect(desk.entry(circuit).texts.resistanceDc_ohm).toContain('1.4');
});

test('of a kept reading that nobody touched it takes the place', () => {
  const desk = deskNow();
  desk.edit(0, circuit);
  expect(desk.take(asked)).toBe(true);
  expect(desk.editing(circuit)).toBeNull();
});

test('a form that stays open past midnight lets go of yesterday’s weather, not of figures read in it', () => {
  for (const text of ['', '1.3']) {
    vi.setSystemTime(new Date(2025, 10, 26, 23, 50));
    const desk = deskNow();
    const stop = desk.run();
    desk.changeConditions(circuit, { weather: 'wet', temperature: '4 °C' });
    desk.change(circuit, { texts: { resistanceDc_ohm: text } });
    vi.advanceTimersByTime(15 * 60_000);
    expect(desk.conditions(circuit)).toMatchObject(
      text === '' ? { weather: null, temperature: '' } : { weather: 'wet', temperature: '4 °C' }
    );
    stop();
  }
});

test('yesterday’s weather goes with the figures that it waited for', () => {
  const desk = deskNow();
  const stop = desk.run();
  desk.changeConditions(circuit, { weather: 'wet' });
  desk.change(circuit, { texts: { resistanceDc_ohm: '1.3' } });
  vi.advanceTimersByTime(15 * 60_000);
  desk.clear(circuit);
  expect(desk.conditions(circuit).weather).toBeNull();
  stop();
});

test('of the same day it stays for the next reading', () => {
  const desk = deskNow();
  desk.changeConditions(circuit, { weather: 'wet' });
  desk.change(circuit, { texts: { resistanceDc_ohm: '1.3' } });
  desk.clear(circuit);
  expect(desk.conditions(circuit).weather).toBe('wet');
});

test('words for a cause pass no verdict on insulation: the limit does', () => {
  for (const key of ['causes.for.sound', 'causes.for.nothing-wrong.insulation'] as const) {
    expect(english[key]).not.toMatch(/sound/);
    expect(german[key]).not.toMatch(/in Ordnung/);
  }
});
