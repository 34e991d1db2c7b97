/** Names that would do harm in one format or another, and a site in which every name is one of them. */
import { demoSite } from '#plan/demo';
import type { Site } from '#plan/schema';

export const HOSTILE = [
  '=HYPERLINK("http://x")',
  '+1',
  '-1',
  '@SUM(1)',
  '\t=1+1',
  '\r=1+1',
  '\n=1+1',
  ' =1+1',
  '\u202E=1+1',
  '\uFF1D1+1',
  '<script>alert(1)</script>',
  ']]>&amp;<!--',
  '_x003D_1+1',
  'left \u202E right',
  'a, "b"; c\r\nd',
  "'quoted'",
  'x'.repeat(10_000)
] as const;

const named = <T extends { readonly name: string }>(things: readonly T[], name: string): T[] =>
  things.map((thing) => ({ ...thing, name }));

/** Two circuits, so that lists of names are made too; with prices, own lines and a lane to set out from. */
export function siteNamed(name: string): Site {
  const site = demoSite();
  return {
    ...site,
    name,
    lanes: named(site.lanes, name),
    loops: named(site.loops, name),
    circuits: named(site.circuits, name),
    units: named(site.units, name),
    conduits: named(site.conduits, name),
    marks: site.marks.map((mark) => ({ ...mark, text: name })),
    estimate: {
      currency: 'EUR',
      wholePacks: true,
      coreHoles: true,
      prices: [{ item: `wire:${site.loops[0]!.wire}`, price: 0.85 }],
      extras: [{ id: 'x1', name, amount: 2, unit: 'day', price: 300 }]
    },
    sheet: { baseline: { kind: 'lane', lane: site.lanes[0]!.id } }
  };
}
