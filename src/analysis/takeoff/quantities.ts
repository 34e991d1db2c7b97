/**
 * What goes into the road. Wire: turns in the slot, and both ends of the tail. Saw cut: the loop's slot, a shared slot once,
 * and the home run as long as the tail, without the slack and depth that a drawn tail is longer by. Sealant: slot volume less
 * the wires in it, no waste added.
 */
import type { LoopModel } from '../electrical/loop-model';
import type { Circuit, Loop } from '#plan/schema';
import type { Quantities, QuantityLine } from '../results';

const linesOfLoop = (loop: Loop, model: LoopModel): QuantityLine[] => {
  const wire = model.winding.wireLength;
  const tail = loop.tail.length;
  const homeRun = Math.max(0, tail - (loop.tail.route?.allowance ?? 0));
  const slot = (model.sawCut + homeRun) * loop.slot.depth * loop.slot.width;
  const radius = model.wire.insulatedDiameter / 2;
  const sealant = slot - Math.PI * radius * radius * (wire + 2 * homeRun);
  const line = (what: QuantityLine['what'], amount: number, unit: QuantityLine['unit']): QuantityLine => ({
    subject: loop.id,
    what,
    amount,
    unit
  });
  return [
    line('loop wire', wire, 'm'),
    line('tail wire', 2 * tail, 'm'),
    line('loop saw cut', model.sawCut, 'm'),
    line('home run saw cut', homeRun, 'm'),
    line('sealant', Math.max(0, sealant), 'm3')
  ];
};

export const quantitiesOf = (
  loops: readonly { readonly loop: Loop; readonly model: LoopModel }[],
  circuits: readonly Circuit[]
): Quantities => {
  const lines = [
    ...loops.flatMap(({ loop, model }) => linesOfLoop(loop, model)),
    ...circuits.map(({ id, leadIn }): QuantityLine => ({
      subject: id,
      what: 'lead-in',
      amount: (leadIn.further ?? []).reduce((sum, { length }) => sum + length, leadIn.length),
      unit: 'm'
    }))
  ].filter(({ amount }) => amount > 0);
  const total = (...what: QuantityLine['what'][]): number =>
    lines.filter((line) => what.includes(line.what)).reduce((sum, { amount }) => sum + amount, 0);
  return {
    wire_m: total('loop wire', 'tail wire'),
    sawCut_m: total('loop saw cut', 'home run saw cut'),
    sealant_m3: total('sealant'),
    leadIn_m: total('lead-in'),
    lines
  };
};
