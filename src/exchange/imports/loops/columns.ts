/** The columns of a table of loops: what each is called in any language that people write heads in, and in which unit. */
import { findUnit, type Unit } from '#units/unit';
import type { QuantityKind } from '#units/kind';

export type ColumnName = 'id' | 'name' | 'shape' | 'x' | 'y' | 'width' | 'length' | 'diameter' | 'rotation' | 'turns' | 'wire' | 'depth' | 'slotWidth' | 'cornerCut' | 'tail' | 'permittivity' | 'points'; // prettier-ignore

/** Kind of the number in a column; the others hold words. */
export const KIND_OF: Partial<Record<ColumnName, QuantityKind>> = {
  x: 'length',
  y: 'length',
  width: 'length',
  length: 'length',
  diameter: 'length',
  rotation: 'angle',
  turns: 'count',
  depth: 'smallLength',
  slotWidth: 'smallLength',
  cornerCut: 'length',
  tail: 'length',
  permittivity: 'plain'
};

/**
 * Words of a file, not of the page: the same whatever language the page speaks, so that a table from a colleague is read. The
 * first is the one that is written.
 */
const HEADS: Readonly<Record<ColumnName, readonly string[]>> = {
  id: ['id', 'kennung', 'loop', 'schleife', 'no', 'nr', 'nummer', 'number'],
  name: ['name', 'bezeichnung'],
  shape: ['shape', 'form'],
  x: ['x', 'centre x', 'center x', 'mitte x', 'x position'],
  y: ['y', 'centre y', 'center y', 'mitte y', 'y position'],
  width: ['width', 'breite'],
  length: ['length', 'länge', 'laenge'],
  diameter: ['diameter', 'durchmesser'],
  rotation: ['rotation', 'drehung', 'angle', 'winkel'],
  turns: ['turns', 'windungen', 'windungszahl'],
  wire: ['wire', 'draht', 'schleifendraht'],
  depth: ['depth', 'slot depth', 'tiefe', 'fugentiefe'],
  slotWidth: ['slot width', 'fugenbreite'],
  cornerCut: ['corner cut', 'cornercut', 'eckschnitt'],
  tail: ['tail', 'tail length', 'anschlussende', 'ende'],
  permittivity: ['slot permittivity', 'permittivity', 'permittivität'],
  points: ['points', 'punkte']
};

const BY_HEAD = new Map(
  (Object.entries(HEADS) as [ColumnName, readonly string[]][]).flatMap(([name, heads]) =>
    heads.map((head) => [head, name] as const)
  )
);

export const writtenHead = (name: ColumnName): string => HEADS[name][0]!;

export interface Column {
  readonly name: ColumnName;
  /** As it stands in the file. */
  readonly head: string;
  /** Of numbers that have none of their own. */
  readonly unit: Unit | null;
}

export type Head = Column | { readonly name: null; readonly head: string };

/** What a unit at the head of a column is of: corners are words of numbers. */
const unitKindOf = (name: ColumnName): QuantityKind | undefined =>
  name === 'points' ? 'length' : KIND_OF[name];

/** "Width (m)", "Breite [m]", "x, ft", "corner_cut": a name, and a unit where one stands behind it. */
export function columnOf(head: string): Head {
  const plain = head.normalize('NFC').trim();
  const [, words = '', bracketed, listed] = /^([^([,]*)(?:[([]\s*([^)\]]*)[)\]]|,\s*(\S+))?\s*$/.exec(plain) ?? []; // prettier-ignore
  const name = BY_HEAD.get(
    words
      .replaceAll(/[_\s]+/g, ' ')
      .trim()
      .toLowerCase()
  );
  if (name === undefined) return { name: null, head: plain };
  const symbol = bracketed ?? listed;
  const kind = unitKindOf(name);
  const unit = symbol !== undefined && kind ? (findUnit(kind, symbol.trim()) ?? null) : null;
  // a unit that nobody knows must not be taken for another
  if (symbol !== undefined && kind && kind !== 'count' && kind !== 'plain' && !unit)
    return { name: null, head: plain };
  return { name, head: plain, unit };
}
