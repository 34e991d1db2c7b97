/**
 * Where everything of a circuit's wiring diagram stands, in pixels from its upper left corner: terminals at the top, the
 * lead-in downwards, the pull box, below it the strings side by side with their coils one below the other.
 */
import type { Circuit } from '#plan/schema';

export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Box extends Place {
  readonly width: number;
  readonly height: number;
}

/** One loop: its wire runs down at `wire`, its turns between `from` and `to`. */
export interface Coil extends Box {
  readonly loop: string;
  readonly reversed: boolean;
  readonly string: number;
  readonly place: number;
  readonly wire: number;
  readonly from: number;
  readonly to: number;
  /** The end at which the winding starts: above, or below when the loop is reversed. */
  readonly dot: Place;
}

export interface Schematic {
  readonly width: number;
  readonly height: number;
  /** Go and return. */
  readonly terminals: readonly [Place, Place];
  /** Lead-in cables from the terminals to the pull box, that is from the last of the document to the first. */
  readonly sections: readonly Box[];
  readonly pullBox: Box;
  /** From the pull box to the upper ends of the strings, and from their lower ends back. */
  readonly goRail: readonly Place[];
  readonly returnRail: readonly Place[];
  /** Wires of the strings between the rails, without the turns. */
  readonly wires: readonly (readonly [Place, Place])[];
  readonly coils: readonly Coil[];
  /** Left edges of the strings' columns, and the right edge of the last. */
  readonly columns: readonly number[];
  readonly rails: { readonly top: number; readonly bottom: number };
  /** Where a coil is dropped that leaves the circuit; null for the only one. */
  readonly out: Box | null;
}

const RETURN = 14;
const GO = 28;
const TERMINALS = 12;
const SECTION = 36;
const PULL_BOX = 26;
const COLUMNS = 44;
const COLUMN = { least: 112, most: 200 } as const;
const COIL = 72;
/** Turns are drawn from here to there within a coil's box. */
const TURNS = { from: 12, to: 60 } as const;
const WIRE = 14;
const GAP = 12;
const OUT = 28;

/** `width`: pixels that there are; a circuit of many strings takes more, and is then scrolled. */
export function schematicOf(strings: Circuit['strings'], cables: number, width: number): Schematic {
  const share = (width - COLUMNS) / strings.length;
  const column = Math.round(Math.min(COLUMN.most, Math.max(COLUMN.least, share)));
  const columns = Array.from({ length: strings.length + 1 }, (_, index) => COLUMNS + index * column);
  const right = columns.at(-1)!;
  const whole = Math.max(Math.round(width), right);

  const leadIn = TERMINALS + 10;
  const boxTop = leadIn + Math.max(1, cables) * SECTION;
  const top = boxTop + PULL_BOX + GAP;
  const first = top + GAP / 2;
  const most = Math.max(...strings.map((string) => string.length));
  const bottom = first + most * COIL + GAP / 2;
  const loops = strings.flat().length;
  const out = loops > 1 ? { x: COLUMNS, y: bottom + GAP, width: whole - COLUMNS - 2, height: OUT } : null;

  const coils = strings.flatMap((string, row) =>
    string.map(({ loop, reversed }, place): Coil => {
      const x = columns[row]!;
      const y = first + place * COIL;
      const wire = x + WIRE;
      const [from, to] = [y + TURNS.from, y + TURNS.to];
      const dot = { x: wire - 7, y: reversed ? to - 3 : from + 3 };
      return { loop, reversed, string: row, place, x, y, width: column, height: COIL, wire, from, to, dot };
    })
  );

  return {
    width: whole,
    height: out ? out.y + out.height + 2 : bottom + GAP,
    terminals: [
      { x: GO, y: TERMINALS },
      { x: RETURN, y: TERMINALS }
    ],
    sections: Array.from({ length: cables }, (_, index) => ({
      x: 0,
      y: leadIn + index * SECTION,
      width: whole,
      height: SECTION
    })),
    pullBox: { x: 2, y: boxTop, width: whole - 4, height: PULL_BOX },
    goRail: [
      { x: GO, y: TERMINALS },
      { x: GO, y: top },
      { x: columns[strings.length - 1]! + WIRE, y: top }
    ],
    returnRail: [
      { x: RETURN, y: TERMINALS },
      { x: RETURN, y: bottom },
      { x: columns[strings.length - 1]! + WIRE, y: bottom }
    ],
    wires: strings.flatMap((string, row) =>
      wiresOf(columns[row]! + WIRE, coils, row, string.length, top, bottom)
    ),
    coils,
    columns,
    rails: { top, bottom },
    out
  };
}

function wiresOf(
  x: number,
  coils: readonly Coil[],
  row: number,
  count: number,
  top: number,
  bottom: number
): (readonly [Place, Place])[] {
  const own = coils.filter((coil) => coil.string === row);
  return Array.from({ length: count + 1 }, (_, index) => [
    { x, y: own[index - 1]?.to ?? top },
    { x, y: own[index]?.from ?? bottom }
  ]);
}
