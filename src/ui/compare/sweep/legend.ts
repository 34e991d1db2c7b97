/** Where the names of curves stand under a chart: in rows, as many in each as there is room for. Pure. */
export interface LegendPlace {
  readonly text: string;
  readonly n: number;
  readonly x: number;
  readonly row: number;
}

const SAMPLE = 32;
const BETWEEN = 18;

/** `letter`: pixels of a character on the average. */
export function legendPlaces(
  texts: readonly string[],
  from: number,
  to: number,
  letter: number
): readonly LegendPlace[] {
  let [x, row] = [from, 0];
  return texts.map((text, n) => {
    const width = SAMPLE + text.length * letter + BETWEEN;
    if (x > from && x + width > to) [x, row] = [from, row + 1];
    const place = { text, n, x, row };
    x += width;
    return place;
  });
}
