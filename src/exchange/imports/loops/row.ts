/** A row of a table as a loop, or everything that is wrong with it. */
import { t } from '#i18n/message';
import { BOUNDS, COUNTS } from '#plan/bounds';
import { wiresOf } from '#plan/catalogue/wires';
import { newLoop } from '#plan/edits/index';
import {
  loop as loopSchema,
  type Loop,
  type Point,
  type Shape,
  type ShapeKind,
  type Site
} from '#plan/schema';
import { problemOf, SHAPE_KINDS } from '#plan/shapes/index';
import { format } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { parseQuantity } from '#units/parse';
import { toStored } from '#units/convert';
import { displayedUnit } from '#units/displayed-unit';
import { withinSentence, type DecimalSign } from '#i18n/locale';
import { KIND_OF, writtenHead, type Column, type ColumnName } from './columns';
import { bared, inSpokenSign } from './texts';

/** What is wrong in a cell. */
export interface CellError {
  readonly line: number;
  /** As it stands at the head of the file, or would. */
  readonly column: string;
  readonly found: string;
  readonly expected: string;
}

export interface Cells {
  readonly line: number;
  readonly columns: ReadonlyMap<ColumnName, { readonly column: Column; readonly text: string }>;
  readonly sign: DecimalSign | null;
}

interface Range {
  readonly min: number;
  readonly max: number;
}

const isWithin = (value: number, { min, max }: Range): boolean => value >= min && value <= max;

const RANGE_OF: Partial<Record<ColumnName, Range>> = {
  x: BOUNDS.coordinate,
  y: BOUNDS.coordinate,
  width: BOUNDS.side,
  length: BOUNDS.side,
  diameter: BOUNDS.side,
  rotation: { min: -3_600, max: 3_600 },
  turns: BOUNDS.turns,
  depth: BOUNDS.slotDepth,
  slotWidth: BOUNDS.slotWidth,
  cornerCut: { min: 0, max: BOUNDS.side.max },
  tail: BOUNDS.tail,
  permittivity: BOUNDS.permittivity
};

/** Words for shapes in a file, whatever language the page speaks. */
const SHAPES: Readonly<Record<ShapeKind, readonly string[]>> = {
  rectangle: ['rectangle', 'rect', 'square', 'rechteck', 'quadrat'],
  quadrupole: ['quadrupole', 'quadrupol'],
  diagonal: ['diagonal', 'diagonale'],
  circle: ['circle', 'round', 'kreis', 'rund'],
  polygon: ['polygon', 'vieleck', 'polygonzug']
};
const LONGEST_SHOWN = 60;

const wantedOf = (kind: QuantityKind): string => {
  if (kind === 'count') return t('imports.aCount');
  if (kind === 'angle') return t('imports.anAngle');
  return t(kind === 'plain' ? 'imports.aNumber' : 'imports.aLength');
};

const BARE = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

class RowReader {
  readonly errors: CellError[] = [];
  readonly #cells: Cells;
  readonly #system: UnitSystem;

  constructor(cells: Cells, system: UnitSystem) {
    this.#cells = cells;
    this.#system = system;
  }

  text(name: ColumnName): string {
    return bared(this.#cells.columns.get(name)?.text ?? '');
  }

  wrong(name: ColumnName, expected: string, found = this.text(name)): void {
    const column = this.#cells.columns.get(name)?.column.head ?? writtenHead(name);
    const shown = found.length > LONGEST_SHOWN ? `${found.slice(0, LONGEST_SHOWN - 1)}…` : found;
    this.errors.push({
      line: this.#cells.line,
      column,
      found: shown.trim() === '' ? t('imports.nothing') : shown,
      expected
    });
  }

  /** Stored units; undefined for an empty cell, and for a wrong one, which is noted. */
  number(name: ColumnName): number | undefined {
    const cell = this.#cells.columns.get(name);
    const kind = KIND_OF[name];
    if (!cell || !kind || cell.text.trim() === '') return undefined;
    const text = this.text(name).trim();
    const { unit } = cell.column;
    const dotted = this.#cells.sign === ',' ? text.replace(',', '.') : text;
    const isExact = BARE.test(dotted) && (unit !== null || this.#cells.sign !== null);
    const reading =
      isExact && unit
        ? ({ ok: true, value: toStored(Number(dotted), unit) } as const)
        : parseQuantity(inSpokenSign(text, this.#cells.sign), kind, this.#system);
    if (!reading.ok) {
      this.wrong(name, t('imports.because', { expected: wantedOf(kind), reason: reading.reason }));
      return undefined;
    }
    const range = RANGE_OF[name];
    if (range && !isWithin(reading.value, range)) {
      this.wrong(name, this.#between(range, kind));
      return undefined;
    }
    return reading.value;
  }

  #between({ min, max }: Range, kind: QuantityKind): string {
    const shown = (value: number): string => format(value, kind, this.#system).text;
    return t('imports.between', { least: shown(min), most: shown(max) });
  }

  /** The same, where a loop cannot do without. */
  needed(name: ColumnName, also?: ColumnName): number {
    const before = this.errors.length;
    const value = this.number(name) ?? (also ? this.number(also) : undefined);
    if (value === undefined && this.errors.length === before) {
      this.wrong(name, wantedOf(KIND_OF[name] ?? 'length'));
    }
    return value ?? NaN;
  }

  /** "0 0 | 2 0 | 1 2", in the unit of the head, or else in that of the site. */
  points(): Point[] {
    const parts = this.text('points').trim();
    const unit = this.#cells.columns.get('points')?.column.unit ?? displayedUnit('length', this.#system);
    const numbers = (part: string): number[] =>
      part
        .trim()
        .split(/\s+/)
        .map((each) => (each === '' ? NaN : Number(each.replace(',', '.'))))
        .map((value) => (unit ? toStored(value, unit) : value));
    const points = parts === '' ? [] : parts.split('|').map(numbers);
    if (points.length < 3 || points.some((point) => point.length !== 2 || !point.every(Number.isFinite))) {
      this.wrong('points', t('imports.points'));
      return [];
    }
    const far = points.flat().find((value) => !isWithin(value, BOUNDS.coordinate));
    if (far !== undefined) this.wrong('points', this.#between(BOUNDS.coordinate, 'length'));
    return points as unknown as Point[];
  }

  shapeKind(): ShapeKind | null {
    const word = this.text('shape').trim().toLowerCase();
    if (word === '') return this.text('diameter').trim() === '' ? 'rectangle' : 'circle';
    const found = SHAPE_KINDS.find((kind) => SHAPES[kind].includes(word));
    if (!found) this.wrong('shape', SHAPE_KINDS.map((kind) => withinSentence(t(`tool.${kind}`))).join(', '));
    return found ?? null;
  }

  wire(site: Site, usual: string): string {
    const word = this.text('wire').trim();
    if (word === '') return usual;
    const same = (other: string): boolean => other.toLowerCase() === word.toLowerCase();
    const wires = wiresOf(site);
    const found = wires.find(({ id }) => id === word) ?? wires.find(({ id, name }) => same(id) || same(name));
    if (!found) this.wrong('wire', wires.map(({ id }) => id).join(', '));
    return found?.id ?? usual;
  }

  shape(): Shape | null {
    const kind = this.shapeKind();
    if (kind === null) return null;
    if (kind === 'polygon') return { kind, points: this.points() };
    const centre: Point = [this.needed('x'), this.needed('y')];
    if (kind === 'circle') return { kind, centre, diameter: this.needed('diameter', 'width') };
    const box = { centre, width: this.needed('width'), length: this.needed('length') };
    const rotation = this.number('rotation') ?? 0;
    if (kind === 'rectangle') return { kind, ...box, rotation, cornerCut: this.number('cornerCut') ?? 0 };
    return { kind, ...box, rotation };
  }
}

export interface RowReading {
  /** Null with at least one error. */
  readonly loop: Loop | null;
  /** The file says no id: the loop has the one that would be next in the site. */
  readonly isUnnumbered: boolean;
  readonly errors: readonly CellError[];
}

export function loopFrom(cells: Cells, site: Site): RowReading {
  const reader = new RowReader(cells, site.displayUnits);
  const shape = reader.shape();
  const numbers = (['turns', 'depth', 'slotWidth', 'tail', 'permittivity'] as const).map((name) =>
    reader.number(name)
  );
  const [turns, depth, width, tail, relativePermittivity] = numbers;
  const name = reader.text('name');
  if (name.length > COUNTS.nameLength)
    reader.wrong('name', t('imports.shortName', { most: COUNTS.nameLength }));
  const id = reader.text('id').trim();
  if (id !== '' && !loopSchema.shape.id.safeParse(id).success) reader.wrong('id', t('imports.plainId'));
  const wire = reader.wire(site, site.loops.at(-1)?.wire ?? 'awg14');
  const isUnnumbered = id === '';
  if (!shape || reader.errors.length > 0) return { loop: null, isUnnumbered, errors: reader.errors };
  const problem = problemOf(shape);
  if (problem) {
    const column = problem.key in KIND_OF ? (problem.key as ColumnName) : 'shape';
    reader.wrong(column, problem.expected, problem.found);
    return { loop: null, isUnnumbered, errors: reader.errors };
  }
  const usual = newLoop(site, shape);
  const slot = { depth, width, relativePermittivity };
  const given = Object.fromEntries(Object.entries(slot).filter(([, value]) => value !== undefined));
  const loop: Loop = {
    ...usual,
    id: id || usual.id,
    name,
    turns: turns ?? usual.turns,
    wire,
    slot: { ...usual.slot, ...given },
    tail: tail === undefined ? { length: usual.tail.length } : { length: tail },
    shape
  };
  return { loop, isUnnumbered, errors: [] };
}
