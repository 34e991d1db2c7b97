/** The netlist of a circuit, and this program's own solution against that of a general-purpose network solver. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { equivalentCircuit } from '#analysis/electrical/equivalent';
import { netlistOf } from '#exchange/netlist';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { circuit, loop, siteOf, square } from '../analysis/support/sites';
import { referenceOf } from '../physics/support/reference';

interface SpiceCase {
  readonly name: string;
  readonly frequency: number;
  readonly impedance: readonly [number, number];
  readonly netlist: readonly string[];
}

const reference = referenceOf<SpiceCase>('networks-spice');
const { cases, tolerance, generator } = reference;
const { sites } = reference as unknown as { readonly sites: Readonly<Record<string, unknown>> };

const siteNamed = (name: string): Site => {
  const reading = readSite(JSON.stringify(sites[name]));
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
};

const apart = (
  [re, im]: readonly [number, number],
  found: { readonly re: number; readonly im: number }
): number => Math.hypot(found.re - re, found.im - im) / Math.hypot(re, im);

const NUMBER = /(?<=[ =])-?\d+(?:\.\d+)?(?:e[-+]?\d+)?(?= |$)/g;
/** A line without its numbers, and they. The last digits may differ from machine to machine. */
const taken = (line: string): readonly [string, number[]] => [
  line.replace(NUMBER, '#'),
  (line.match(NUMBER) ?? []).map(Number)
];

describe(`circuits against ${reference.source.split(' ')[0]!} (${generator})`, () => {
  it.each(cases)('$name at $frequency Hz', ({ name, frequency, impedance, netlist }) => {
    const site = siteNamed(name);
    const found = equivalentCircuit(site, site.circuits[0]!, frequency)!;
    expect(apart(impedance, found.impedance)).toBeLessThan(tolerance);
    expect(Math.abs(found.impedance.re / impedance[0] - 1)).toBeLessThan(tolerance);
    // what was solved there is what the program writes today
    const lines = netlistOf(site, 'C1', frequency)!.split('\n');
    expect(lines.map((line) => taken(line)[0])).toEqual(netlist.map((line) => taken(line)[0]));
    lines.forEach((line, k) => {
      const wanted = taken(netlist[k]!)[1];
      taken(line)[1].forEach((value, n) => {
        expect(Math.abs(value - wanted[n]!)).toBeLessThanOrEqual(1e-7 * Math.abs(wanted[n]!));
      });
    });
  });

  const isThere = spawnSync('ngspice', ['--version']).status === 0;
  it.runIf(isThere)('solved again where ngspice is installed', () => {
    const name = 'strings of three and of one';
    const netlist = netlistOf(siteNamed(name), 'C1', 5e4)!;
    const file = join(mkdtempSync(join(tmpdir(), 'netlist-')), 'circuit.cir');
    writeFileSync(file, netlist);
    const { stdout } = spawnSync('ngspice', ['-b', file], { encoding: 'utf8' });
    const row = /^0\t\S+\t(\S+)\t(\S+)/m.exec(stdout);
    const { impedance } = cases.find((each) => each.name === name && each.frequency === 5e4)!;
    expect(apart(impedance, { re: Number(row?.[1]), im: Number(row?.[2]) })).toBeLessThan(1e-5);
  });
});

describe('a netlist', () => {
  const elements =
    /^(?:\* [\w ,]+|\* [\w ,:-]+|[LRCKOVHI]\w+( \w+){2,5}( -?[\d.e-]+)?|I1 0 in DC 0 AC 1|\.model \w+ LTRA( \w+=[\d.e-]+){5}|\.ac lin 1 [\d.]+ [\d.]+|\.print ac vr\(in\) vi\(in\)|\.end|)$/;

  it('lets no name of the file become a line, an element or a command', () => {
    const nasty = ['L1\u2028R9 in 0 1', '.include /etc/hosts', 'ж"; * + $x', `${'long '.repeat(15)}end`];
    const site = siteOf({
      name: '.end',
      loops: nasty.map((id, k) => loop(id, square(3 * k, 0))),
      circuits: [circuit('C1 .control\u2029shell', nasty, { channel: null })]
    });
    const text = netlistOf(site, site.circuits[0]!.id)!;
    expect(text).toMatch(/^[\x20-\x7e\n]*$/);
    for (const line of text.split('\n')) expect(line).toMatch(elements);
    expect(text.match(/^L/gm)).toHaveLength(4);
    expect(text.match(/^\.end$/gm)).toHaveLength(1);
  });

  it('names loops in the order of the wiring, each with its sense', () => {
    const site = siteOf({
      loops: [loop('A', square(0, 0), { tail: { length: 2 } }), loop('B', square(3, 0))],
      circuits: [
        circuit('C1', [], {
          strings: [[{ loop: 'B', reversed: true }], [{ loop: 'A' }]],
          channel: null
        })
      ]
    });
    const text = netlistOf(site, 'C1')!;
    expect(text).toContain('* loop B in string 1, reversed\nL1 0 w1_1 ');
    expect(text).toContain('* loop A in string 2\nL2 t2 w2_1 ');
    expect(text).toMatch(/^\* circuit C1 at 50000 Hz/);
  });

  it('is null for an unknown circuit and for one that cannot be wound', () => {
    const site = siteOf({
      loops: [loop('L1', square(0, 0)), loop('L2', square(3, 0))],
      circuits: [circuit('C1', ['L1', 'L2'], { channel: null })]
    });
    const wireless = { ...site, loops: [site.loops[0]!, { ...site.loops[1]!, wire: 'none such' }] };
    expect(netlistOf(site, 'C1')).not.toBeNull();
    expect(netlistOf(site, 'C2')).toBeNull();
    expect(netlistOf(wireless, 'C1')).toBeNull();
  });
});
