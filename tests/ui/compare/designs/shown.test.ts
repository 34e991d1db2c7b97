import { describe, expect, it } from 'vitest';
import { createEditor } from '#editor/create-editor';
import { isKept } from '#plan/variants';
import { change, keep, remove, rename, restore, update } from '#ui/compare/designs/commit';
import { ghostOf } from '#ui/compare/designs/ghost';
import { designsShown, measuredAgainst, suggestedName, toggled } from '#ui/compare/designs/shown';
import { updateSite } from '#plan/edits/index';
import { designSite } from '#plan/variants';
import { samples } from '../../../plan/samples';

const { site } = samples.find(({ name }) => name.includes('two-ways'))!;

describe('designs that are shown', () => {
  it('are the other variants and the present one, until somebody chooses', () => {
    expect(designsShown(site, null)).toEqual(['V1', null]);
    expect(designsShown({ ...site, loops: [] }, null)).toEqual(['V1', 'V2', null]);
    expect(designsShown(site, ['V2', 'gone', 'V1'])).toEqual(['V1', 'V2']);
  });

  it('are at most three: of too many the first gives way', () => {
    expect(toggled(['V1', 'V2', null], 'V3')).toEqual(['V2', null, 'V3']);
    expect(toggled(['V1', null], 'V1')).toEqual([null]);
  });

  it('begin with the one that they are measured against', () => {
    expect(measuredAgainst(['V1', 'V2', null], null)).toEqual([null, 'V1', 'V2']);
    expect(measuredAgainst(['V1', null], 'gone')).toEqual(['V1', null]);
    expect(measuredAgainst(['V1', null], undefined)).toEqual(['V1', null]);
  });

  it('get a name that none has', () => {
    expect(suggestedName(site)).toBe('Variant 3');
    const taken = site.variants!.map((each, at) => ({ ...each, name: `Variant ${at + 2}` }));
    expect(suggestedName({ ...site, variants: taken })).toBe('Variant 4');
  });

  it('lay over the plan only what the other has otherwise', () => {
    const first = designSite(site, 'V1')!;
    const ghost = ghostOf(site, first, 'One long rectangle');
    expect(ghost.name).toBe('One long rectangle');
    expect(ghost.places.length).toBeGreaterThan(0);
    expect(ghostOf(site, site, 'Itself').places).toEqual([]);
  });
});

describe('what is done with kept designs', () => {
  const desk = () => {
    const editor = createEditor(site);
    return {
      editor,
      get state() {
        return editor.state;
      }
    };
  };
  const variant = (bench: ReturnType<typeof desk>, id: string) =>
    bench.state.site.variants!.find((each) => each.id === id)!;

  it('is one step each, named by what it is about, and undone whole', () => {
    const bench = desk();
    expect(keep(bench, 'A third')).toBe(true);
    expect(bench.state.undoLabel).toBe('Keep design A third');
    rename(bench, variant(bench, 'V3'), 'Third');
    expect(bench.state.undoLabel).toBe('Rename design A third');
    change(bench, variant(bench, 'V1'));
    expect(bench.state.undoLabel).toBe('Switch to design One long rectangle');
    expect(bench.state.site.loops.map(({ id }) => id)).toEqual(['L1']);
    remove(bench, variant(bench, 'V2'));
    for (let step = 0; step < 4; step++) bench.editor.undo();
    expect(bench.state.site).toBe(site);
  });

  it('keeps what is worked on before another takes its place, and says where', () => {
    const bench = desk();
    const changed = updateSite(site, { temperature_C: 30 });
    bench.editor.commit({ label: 'warmer', site: changed });
    change(bench, variant(bench, 'V1'));
    expect(variant(bench, 'V2').design.temperature_C).toBe(30);
    expect(bench.state.notice?.text).toContain('Two in series');
  });

  it('goes back to what was kept, or keeps what is there instead', () => {
    const bench = desk();
    const warmer = updateSite(site, { temperature_C: 30 });
    bench.editor.commit({ label: 'warmer', site: warmer });
    restore(bench, variant(bench, 'V2'));
    expect(bench.state.site.temperature_C).toBe(site.temperature_C);
    bench.editor.undo();
    expect(isKept(bench.state.site)).toBe(false);
    update(bench, variant(bench, 'V2'));
    expect(isKept(bench.state.site)).toBe(true);
    expect(bench.state.site.temperature_C).toBe(30);
  });

  it('is nothing while another tab has the site', () => {
    const bench = desk();
    bench.editor.setReadOnly(true);
    expect(keep(bench, 'A third')).toBe(false);
    expect(bench.state.site).toBe(site);
  });
});
