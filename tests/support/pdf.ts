/** A PDF read back by a library other than the one that wrote it. */
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

interface ReadText {
  readonly text: string;
  /** Start of the baseline, millimetres from the upper left corner of the page. */
  readonly at: readonly [number, number];
  /** Millimetres. */
  readonly size: number;
  readonly width: number;
  readonly font: string;
}

export interface ReadWay {
  /** Millimetres from the upper left corner of the page. */
  readonly points: readonly (readonly [number, number])[];
  readonly isStroked: boolean;
  readonly isFilled: boolean;
  /** Millimetres. */
  readonly lineWidth: number;
  readonly dash: readonly number[];
}

export interface ReadPage {
  /** Points of 1/72 inch. */
  readonly box: readonly [number, number, number, number];
  readonly texts: readonly ReadText[];
  readonly ways: readonly ReadWay[];
  /** How often something is cut off. */
  readonly clips: number;
  readonly images: number;
}

export interface ReadFile {
  readonly title: string;
  readonly info: Readonly<Record<string, unknown>>;
  readonly pages: readonly ReadPage[];
}

const MILLIMETRES = 25.4 / 72;
const STROKES = new Set<number>([OPS.stroke, OPS.closeStroke, OPS.fillStroke, OPS.closeFillStroke]);
const FILLS = new Set<number>([OPS.fill, OPS.eoFill, OPS.fillStroke, OPS.eoFillStroke]);

type Matrix = readonly [number, number, number, number, number, number];
const UNMOVED: Matrix = [1, 0, 0, 1, 0, 0];

/** The inner matrix applied first. */
const combined = (o: Matrix, i: Matrix): Matrix => [
  o[0] * i[0] + o[2] * i[1],
  o[1] * i[0] + o[3] * i[1],
  o[0] * i[2] + o[2] * i[3],
  o[1] * i[2] + o[3] * i[3],
  o[0] * i[4] + o[2] * i[5] + o[4],
  o[1] * i[4] + o[3] * i[5] + o[5]
];

/** From the library's flat list: 0 move, 1 line, 2 curve, 3 quadratic, 4 close. */
function pointsOf(
  flat: ArrayLike<number>,
  [a, b, c, d, e, f]: Matrix,
  height: number
): (readonly [number, number])[] {
  const points: (readonly [number, number])[] = [];
  const take = (x: number, y: number) =>
    points.push([(a * x + c * y + e) * MILLIMETRES, (height - (b * x + d * y + f)) * MILLIMETRES]);
  for (let at = 0; at < flat.length;) {
    const kind = flat[at]!;
    const coordinates = [2, 2, 6, 4, 0][kind]!;
    if (coordinates > 0) take(flat[at + coordinates - 1]!, flat[at + coordinates]!);
    at += 1 + coordinates;
  }
  return points;
}

export async function readPdf(bytes: Uint8Array): Promise<ReadFile> {
  const task = getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 });
  const file = await task.promise;
  const info = (await file.getMetadata()).info as unknown as Record<string, unknown>;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= file.numPages; number++) {
    const page = await file.getPage(number);
    const height = page.view[3]!;
    const content = await page.getTextContent({ disableNormalization: true });
    const texts = content.items.flatMap((item): ReadText[] => {
      if (!('str' in item) || item.str === '') return [];
      const [, , , scale, x, y] = item.transform as number[];
      const at = [x! * MILLIMETRES, (height - y!) * MILLIMETRES] as const;
      return [
        {
          text: item.str,
          at,
          size: scale! * MILLIMETRES,
          width: item.width * MILLIMETRES,
          font: item.fontName
        }
      ];
    });
    const list = await page.getOperatorList();
    const ways: ReadWay[] = [];
    let [lineWidth, dash, clips, images]: [number, number[], number, number] = [0, [], 0, 0];
    let matrix = UNMOVED;
    const kept: Matrix[] = [];
    list.fnArray.forEach((operation, index) => {
      const given = list.argsArray[index] as unknown[];
      if (operation === OPS.save || operation === OPS.paintFormXObjectBegin) kept.push(matrix);
      if (operation === OPS.restore || operation === OPS.paintFormXObjectEnd) matrix = kept.pop() ?? UNMOVED;
      if (operation === OPS.transform) matrix = combined(matrix, given as unknown as Matrix);
      if (operation === OPS.paintFormXObjectBegin && given[0])
        matrix = combined(matrix, given[0] as unknown as Matrix);
      if (operation === OPS.setLineWidth) lineWidth = (given[0] as number) * MILLIMETRES;
      if (operation === OPS.setDash) dash = (given[0] as number[]).map((part) => part * MILLIMETRES);
      if (operation === OPS.clip || operation === OPS.eoClip) clips++;
      if (operation === OPS.paintImageXObject || operation === OPS.paintInlineImageXObject) images++;
      if (operation !== OPS.constructPath) return;
      const [painting, [flat]] = given as [number, [ArrayLike<number> | null]];
      if (!flat) return;
      ways.push({
        points: pointsOf(flat, matrix, height),
        isStroked: STROKES.has(painting),
        isFilled: FILLS.has(painting),
        lineWidth,
        dash
      });
    });
    pages.push({ box: page.view as [number, number, number, number], texts, ways, clips, images });
  }
  await task.destroy();
  return { title: (info['Title'] as string | undefined) ?? '', info, pages };
}
