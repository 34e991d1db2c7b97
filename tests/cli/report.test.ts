/** What the command prints and how it ends; once as a user runs it, in a process of its own. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Report } from '#exchange/report';
import { report as bytes } from './command';

const CONTRACT = 'tests/archive/contract.kerfline.json';
const SAMPLE = 'samples/driveway-gate.kerfline.json';

const report = async (...words: string[]) => {
  const { code, out, err } = await bytes(...words);
  return { code, out: out.toString(), err };
};

const folder = mkdtempSync(join(tmpdir(), 'kerfline-'));
const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const altered = (change: (site: Record<string, never>) => void): string => {
  const site = JSON.parse(readFileSync(CONTRACT, 'utf8')) as Record<string, never>;
  change(site);
  return JSON.stringify(site);
};

interface Expected {
  tolerance: Record<string, number>;
  loops: { id: string; inductance_H: number; resistanceDc_ohm: number; wireLength_m: number }[];
  couplings: { a: string; b: string; mutual_H: number }[];
  probes: { probe: number; loop: string; deltaL_H: number }[];
  circuits: { id: string; inductance_H: number; resistance_ohm: number; q: number }[];
}

describe('npm run report', () => {
  it('is a process with two streams and an exit code', () => {
    const run = (...words: string[]) => {
      const { status, stdout, stderr } = spawnSync(
        process.execPath,
        ['--import', 'tsx', 'src/cli/report.ts', ...words],
        { maxBuffer: 1 << 28 }
      );
      return { status, out: stdout.subarray(0, 5).toString(), err: stderr.toString() };
    };
    // all that a paper needs, its typeface too, is found where nothing but the command runs
    expect(run(SAMPLE, '--format', 'pdf')).toEqual({ status: 0, out: '%PDF-', err: '' });
    const nothing = run('none.json');
    expect(nothing).toMatchObject({ status: 2, out: '' });
    expect(nothing.err).toContain('none.json: there is no such file');
  }, 120_000);

  it('agrees with the independent figures of the contract example', async () => {
    const expected = JSON.parse(readFileSync('tests/reference/contract.expected.json', 'utf8')) as Expected;
    const { code, out } = await report(CONTRACT);
    expect(code).toBe(0);
    const got = JSON.parse(out) as Report;
    const near = (value: number | undefined, wanted: number, tolerance: number) => {
      expect(Math.abs(value! / wanted - 1)).toBeLessThanOrEqual(tolerance);
    };
    for (const loop of expected.loops) {
      const mine = got.loops.find(({ id }) => id === loop.id);
      near(mine?.inductance_H, loop.inductance_H, expected.tolerance['loops']!);
      near(mine?.resistanceDc_ohm, loop.resistanceDc_ohm, expected.tolerance['loops']!);
      near(mine?.wireLength_m, loop.wireLength_m, expected.tolerance['loops']!);
    }
    for (const { a, b, mutual_H } of expected.couplings)
      near(
        got.couplings.find((each) => each.a === a && each.b === b)?.mutual_H,
        mutual_H,
        expected.tolerance['couplings']!
      );
    for (const { probe, loop, deltaL_H } of expected.probes)
      near(
        got.probes[probe]?.loops.find(({ id }) => id === loop)?.deltaL_H,
        deltaL_H,
        expected.tolerance['probes']!
      );
    for (const circuit of expected.circuits) {
      const mine = got.circuits.find(({ id }) => id === circuit.id);
      near(mine?.inductance_H, circuit.inductance_H, expected.tolerance['circuits.inductance_H']!);
      near(mine?.resistance_ohm, circuit.resistance_ohm, expected.tolerance['circuits.resistance_ohm']!);
      near(mine?.q, circuit.q, expected.tolerance['circuits.q']!);
    }
  });

  it('prints one document a line for several files', async () => {
    const { code, out } = await report(SAMPLE, CONTRACT, '--only', 'quantities');
    expect(code).toBe(0);
    const lines = out.trimEnd().split('\n');
    expect(lines.map((line) => (JSON.parse(line) as Report).file)).toEqual([SAMPLE, CONTRACT]);
    expect(Object.keys(JSON.parse(lines[0]!) as object)).toEqual(['site', 'file', 'quantities']);
  });

  it('prints text with units and CSV with one value a row', async () => {
    const text = (await report(SAMPLE, '--format', 'text')).out;
    expect(text).toMatch(/Circuits at the terminals/);
    expect(text).toMatch(/µH/);
    const csv = (await report(SAMPLE, '--format', 'csv', '--only', 'circuits')).out;
    const [head, ...rows] = csv.split('\r\n');
    expect(head).toBe('file,section,subject,quantity,value');
    expect(rows.find((row) => row.includes('frequency_Hz'))).toMatch(
      /^samples\/driveway-gate\.kerfline\.json,circuits,[^,]+,frequency_Hz,[0-9.]+$/
    );
  });

  it('prints the netlist of every circuit, or of the one that is named', async () => {
    const { code, out } = await report(CONTRACT, '--format', 'netlist');
    const site = JSON.parse(readFileSync(CONTRACT, 'utf8')) as { circuits: { id: string }[] };
    expect(code).toBe(0);
    expect(out.match(/^\* circuit .*$/gm)).toHaveLength(site.circuits.length);
    expect(out.match(/^\.end$/gm)).toHaveLength(site.circuits.length);
    const [first] = out.split(/(?<=^\.end\n)/m);
    expect((await report(CONTRACT, '--format', 'netlist', '--only', site.circuits[0]!.id)).out).toBe(first);
    const unknown = await report(SAMPLE, CONTRACT, '--format', 'netlist', '--only', 'none such');
    expect(unknown).toMatchObject({ code: 2, out: '' });
    expect(unknown.err).toContain(`${CONTRACT}: no circuit "none such"`);
  });

  it.each([
    ['not JSON', '{"format": "kerfline-site", "version": 1,', /not-JSON\.json: /],
    ['another format', '{"format": "other", "version": 1}', /format: found "other"/],
    ['a newer version', '{"format": "kerfline-site", "version": 7}', /newer/],
    [
      'fractional turns',
      altered((site) => Object.assign(site['loops']![0], { turns: 2.5 })),
      /loops\[0\]\.turns: found 2\.5, expected a whole number/
    ],
    [
      'a dangling loop',
      altered((site) => Object.assign(site['loops']![0], { id: 'Z9' })),
      /circuits\[0\].*A1/
    ]
  ])(
    'refuses %s: exit 2, nothing on stdout, the file and the place on stderr',
    async (name, text, wanted) => {
      const path = file(`${name.replace(/ /g, '-')}.json`, text);
      const { code, out, err } = await report(SAMPLE, path);
      expect(code).toBe(2);
      expect(out).toBe('');
      expect(err).toContain(path);
      expect(err).toMatch(wanted);
      expect(err).not.toMatch(/\n\s+at /);
    }
  );

  it('refuses a missing file and a folder', async () => {
    expect(await report(join(folder, 'nothing.json'))).toMatchObject({ code: 2, out: '' });
    expect((await report(folder)).err).toContain('is a folder');
  });

  it('prints how it is used when it is asked, and nothing is wrong', async () => {
    for (const word of ['--help', '-h']) {
      const { code, out, err } = await report(word);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out).toMatch(/^usage: .*--format json\|/);
    }
    expect(await report()).toMatchObject({ code: 2, out: '' });
  });

  it('exits 1 with --strict where a finding is a problem, and prints the report all the same', async () => {
    const path = file(
      'low.json',
      altered((site) => Object.assign(site['units']![0], { inductanceRange_H: [5e-4, 2e-3] }))
    );
    const { code, out } = await report(path, '--strict', '--only', 'findings');
    expect(code).toBe(1);
    expect((JSON.parse(out) as Report).findings.map((finding) => finding.code)).toContain('inductance-range');
    expect((await report(SAMPLE, '--strict')).code).toBe(0);
  });

  it('says findings and refusals in German where that is asked for, with codes and numbers as ever', async () => {
    const path = file(
      'low-german.json',
      altered((site) => Object.assign(site['units']![0], { inductanceRange_H: [5e-4, 2e-3] }))
    );
    const english = JSON.parse((await report(path)).out) as Report;
    const german = JSON.parse((await report(path, '--language', 'de')).out) as Report;
    expect(german.findings.map(({ code }) => code)).toEqual(english.findings.map(({ code }) => code));
    expect(german.findings.find(({ code }) => code === 'inductance-range')?.message).toMatch(
      /hat \d+,?\d* µH an den Klemmen/
    );
    expect({ ...german, findings: [] }).toEqual({ ...english, findings: [] });
    expect((await report(file('bad.json', '{"format":'), '--language=de')).err).toContain(
      'Die Datei ist kein JSON'
    );
  });
});
