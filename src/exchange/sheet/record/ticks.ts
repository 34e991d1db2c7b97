/** Boxes to tick, and lines to write on. Millimetres. */
import type { Point } from '#plan/schema';
import { boxAt, line, type Drawing } from '#scenes/drawing';
import { widthOf } from '#scenes/paper-type';
import type { Piece } from '../layout/block';
import { INK, LINE, SOFT, TYPE } from '../layout/look';
import { written, writtenWithin } from '../layout/writing';
import { clean } from '../text/clean';
import { shortened } from '../text/wrap';

const BOX = 3.4;
const ROW = 6.2;
const GAP = { afterBox: 1.4, between: 6, afterLabel: 4 } as const;
const EDGE = { colour: INK, width: LINE.normal };

export interface Tick {
  readonly label: string;
  readonly isTicked: boolean;
}

/** `at`: the middle of its left edge. */
function box([x, y]: Point, isTicked: boolean): Drawing[] {
  const half = BOX / 2;
  const inset = 0.6;
  const [left, right, top, bottom] = [x + inset, x + BOX - inset, y - half + inset, y + half - inset];
  const cross = { colour: INK, width: LINE.frame };
  return [
    { kind: 'line', points: boxAt([x + half, y], half, half), closed: true, stroke: EDGE },
    ...(isTicked
      ? [line([[left, top], [right, bottom]], cross), line([[left, bottom], [right, top]], cross)] // prettier-ignore
      : [])
  ];
}

interface Placed {
  readonly x: number;
  readonly row: number;
}

/** One after the other behind a label, going on in further rows where the width does not hold them. */
export function ticksPiece(label: string, ticks: readonly Tick[], width: number): Piece {
  const hand = { size: TYPE.text };
  const head = { size: TYPE.small, colour: SOFT };
  const title = shortened(clean(label), width / 3, head);
  const start = title === '' ? 0 : widthOf(title, head) + GAP.afterLabel;
  const most = width - start - BOX - GAP.afterBox;
  const texts = ticks.map((each) => shortened(clean(each.label), most, hand));
  const places: Placed[] = [];
  let x = start;
  let row = 0;
  for (const text of texts) {
    const needed = BOX + GAP.afterBox + widthOf(text, hand);
    if (x > start && x + needed > width) {
      x = start;
      row++;
    }
    places.push({ x, row });
    x += needed + GAP.between;
  }
  return {
    height: (row + 1) * ROW,
    draw: (left, top) => [
      ...(title === '' ? [] : [written(title, [left, top + ROW / 2], head)]),
      ...places.flatMap((place, at) => {
        const y = top + (place.row + 0.5) * ROW;
        const from = left + place.x;
        return [
          ...box([from, y], ticks[at]!.isTicked),
          ...writtenWithin(texts[at]!, [from + BOX + GAP.afterBox, y], most, hand)
        ];
      })
    ]
  };
}

export interface Blank {
  readonly label: string;
  readonly value: string;
  /** Of the width. */
  readonly share: number;
}

/** Side by side: a label, what is known, and a line beneath it to write on. */
export function blanksPiece(blanks: readonly Blank[], width: number, height: number): Piece {
  const sum = blanks.reduce((total, { share }) => total + share, 0);
  const room = width - (blanks.length - 1) * GAP.between;
  return {
    height,
    draw: (left, top) => {
      let x = left;
      return blanks.flatMap(({ label, value, share }) => {
        const own = (room * share) / sum;
        const from = x;
        x += own + GAP.between;
        const foot = top + height - 1.2;
        return [
          ...writtenWithin(clean(label), [from, top + 1.8], own, { size: TYPE.small, colour: SOFT }),
          ...writtenWithin(clean(value), [from, foot - 1.9], own, { size: TYPE.value }),
          line([[from, foot], [from + own, foot]], EDGE) // prettier-ignore
        ];
      });
    }
  };
}
