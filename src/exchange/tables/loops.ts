/** What is sawn and wound, loop by loop. */
import { t } from '#i18n/message';
import type { Loop, Shape } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { circuitWith } from '#plan/wiring';
import type { ExportSource } from '../files/exported';
import { number, quantity, tableOf, text } from './fields';
import { circuitName, nameOf, wireName } from './names';
import type { Table } from './table';

/** Metres; of a polygon those of its box. */
function sizeOf(shape: Shape): { readonly width: number; readonly length: number } {
  if (shape.kind === 'circle') return { width: shape.diameter, length: shape.diameter };
  if (shape.kind !== 'polygon') return shape;
  const outline = outlineOf(shape);
  const extent = (axis: 0 | 1): number => {
    const values = outline.map((point) => point[axis]);
    return Math.max(...values) - Math.min(...values);
  };
  return { width: extent(0), length: extent(1) };
}

export function loopsTable({ site, assessment }: Pick<ExportSource, 'site' | 'assessment'>): Table {
  const { displayUnits: system, loops } = site;
  const readouts = new Map(assessment.loops.map((readout) => [readout.id, readout]));
  const circuitOf = ({ id }: Loop): string => {
    const circuit = circuitWith(site, id);
    return circuit ? circuitName(site, circuit.id) : '';
  };
  return tableOf({
    title: t('tables.loops'),
    rows: loops,
    fields: [
      text<Loop>(t('tables.loop'), nameOf),
      text<Loop>(t('tables.circuit'), circuitOf),
      text<Loop>(t('tables.shape'), ({ shape }) => t(`tool.${shape.kind}`)),
      quantity<Loop>(t('tables.width'), 'length', system, ({ shape }) => sizeOf(shape).width),
      quantity<Loop>(t('tables.length'), 'length', system, ({ shape }) => sizeOf(shape).length),
      number<Loop>(t('tables.turns'), 0, ({ turns }) => turns),
      text<Loop>(t('tables.wire'), ({ wire }) => wireName(site, wire)),
      quantity<Loop>(t('tables.wireInSlot'), 'length', system, ({ id }) => readouts.get(id)?.wireLength_m),
      quantity<Loop>(t('tables.tail'), 'length', system, ({ tail }) => tail.length),
      quantity<Loop>(t('tables.slotDepth'), 'depth', system, ({ slot }) => slot.depth),
      quantity<Loop>(t('tables.slotWidth'), 'thickness', system, ({ slot }) => slot.width),
      quantity<Loop>(t('tables.sawCut'), 'length', system, ({ id }) => readouts.get(id)?.slotLength_m)
    ],
    notes: [
      t('tables.loopsNote'),
      ...(loops.some(({ shape }) => shape.kind === 'polygon') ? [t('tables.polygonNote')] : [])
    ]
  });
}
