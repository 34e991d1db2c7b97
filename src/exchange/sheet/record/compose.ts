/** The pages of the commissioning record, and of the empty form for it. */
import type { CheckedCircuit } from '#analysis/fault-finding/checked';
import { t } from '#i18n/message';
import { recordPaperOf } from '#plan/catalogue/record-paper';
import { paperSize } from '#plan/catalogue/sheet';
import { SCALES } from '#plan/schema/sheet';
import type { ExportSource } from '../../files/exported';
import type { Block } from '../layout/block';
import { columnsOf, tallest } from '../layout/columns';
import { flow, type Placed } from '../layout/flow';
import { textsBlock } from '../layout/texts-block';
import type { Page, Sheet } from '../page';
import { formBlock, formHead } from './form-blocks';
import { contentArea, frame } from './frame';
import { circuitBlock, facts, remarks, signatures } from './record-blocks';

/** `chapters`: each begins on a page of its own. */
function pagesOf({ site }: ExportSource, chapters: readonly (readonly Block[])[], isForm: boolean): Sheet {
  const paper = paperSize(recordPaperOf(site));
  const area = contentArea(paper);
  const placed: Placed[] = [];
  let count = 0;
  for (const blocks of chapters) {
    const from = count;
    const laid = flow(blocks, columnsOf(area, null), tallest(area));
    placed.push(...laid.map((each) => ({ ...each, page: each.page + from })));
    count = Math.max(from + 1, ...placed.map(({ page }) => page + 1));
  }
  const pages = Array.from({ length: count }, (_, at): Page => {
    const own = placed.filter(({ page }) => page === at);
    const title = [...new Set(own.flatMap((each) => each.title ?? []))].join(', ');
    const about = { site, title, number: at + 1, count, isForm };
    return {
      ...paper,
      title,
      drawings: [...frame(paper, about), ...own.flatMap(({ drawings }) => drawings)]
    };
  });
  return { kind: 'pages', pages, scale: SCALES.at(-1)!, site };
}

const of = (checked: readonly CheckedCircuit[], id: string) => checked.find(({ circuit }) => circuit === id);

const noCircuits = (title: string): Block => textsBlock(title, [t('record.noCircuits')]);

export function composeRecord(source: ExportSource, checked: readonly CheckedCircuit[]): Sheet {
  const { site } = source;
  const circuits = site.circuits.map((circuit) => circuitBlock(source, circuit, of(checked, circuit.id)));
  const body = circuits.length > 0 ? circuits : [noCircuits(t('record.title'))];
  return pagesOf(source, [[facts(site), ...body, remarks(site), signatures(site)]], false);
}

export function composeForm(source: ExportSource, checked: readonly CheckedCircuit[]): Sheet {
  const { site } = source;
  const circuits = site.circuits.map((circuit) => formBlock(source, circuit, of(checked, circuit.id)));
  if (circuits.length === 0)
    return pagesOf(source, [[formHead(site), noCircuits(t('record.formTitle'))]], true);
  const [first, ...others] = circuits as [Block, ...Block[]];
  const begun = [formHead(site), first];
  const isEach = site.fieldCheck?.record?.onePageEach ?? false;
  return pagesOf(source, isEach ? [begun, ...others.map((each) => [each])] : [[...begun, ...others]], true);
}
