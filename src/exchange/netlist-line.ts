/** A uniform line as elements of a netlist. */
import type { EquivalentLine } from '#analysis/electrical/equivalent';
import { figure } from './netlist-words';

interface LineElements {
  /** The node at the far end: the near one where nothing lies between. */
  readonly far: string;
  readonly lines: readonly string[];
}

/**
 * `O` is the lossy line of SPICE's syntax, exact at one frequency. It wants a series part and a capacitance: a line that
 * has only one of the two is that. Both ends share the return: a load that hangs on the far end alone sends nothing
 * through it but what the line brings, and a node that nothing ties down has no solution at direct current.
 */
export const lineElements = (
  name: string,
  near: string,
  far: string,
  back: string,
  { length, resistance, inductance, capacitance }: EquivalentLine
): LineElements => {
  const series = [
    ...(resistance > 0 ? [{ sign: 'R', value: resistance }] : []),
    ...(inductance > 0 ? [{ sign: 'L', value: inductance }] : [])
  ];
  if (length === 0) return { far: near, lines: [] };
  if (capacitance > 0 && series.length > 0) {
    const constants = `R=${figure(resistance)} L=${figure(inductance)} G=0 C=${figure(capacitance)}`;
    return {
      far,
      lines: [
        `O${name} ${near} ${back} ${far} ${back} ${name}`,
        `.model ${name} LTRA ${constants} LEN=${figure(length)}`
      ]
    };
  }
  if (series.length === 0)
    return {
      far: near,
      lines: capacitance > 0 ? [`C${name} ${near} ${back} ${figure(capacitance * length)}`] : []
    };
  return {
    far,
    lines: series.map(({ sign, value }, k) => {
      const from = k === 0 ? near : `${name}_${k}`;
      const to = k === series.length - 1 ? far : `${name}_${k + 1}`;
      return `${sign}${name} ${from} ${to} ${figure(value * length)}`;
    })
  };
};
