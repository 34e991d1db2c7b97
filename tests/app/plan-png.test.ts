import fc from 'fast-check';
import { expect, test } from 'vitest';
import { finest, isPaintable, MOST_PIXELS, pixelsAt } from '#app/pixels';
import { planPng } from '#app/plan-png';
import { planPicture } from '#exchange/drawings/plan-picture';
import { Unfit } from '#exchange/files/exported';
import { unwatched } from '#exchange/job';
import { emptySite } from '#plan/read';
import { bigSite } from '../support/big-site';

const surroundings = { typeface: () => Promise.reject(new Error('no paper is asked for')) };
const source = (site: Parameters<typeof planPicture>[0]) => ({ site, assessment: undefined as never, file: 'x' }); // prettier-ignore

test('an inch of paper has as many pixels as dots are asked for', () => {
  expect(pixelsAt({ width: 254, height: 25.4 }, 200)).toEqual({ width: 2000, height: 200 });
});

test('the finest is the finest: it can be painted, one dot more cannot', () => {
  const side = fc.double({ min: 20, max: 20_000, noNaN: true });
  fc.assert(
    fc.property(side, side, (width, height) => {
      const most = finest({ width, height });
      expect(isPaintable(pixelsAt({ width, height }, most))).toBe(true);
      const more = pixelsAt({ width, height }, most + 1);
      const isTooMuch =
        more.width * more.height > MOST_PIXELS.area || Math.max(more.width, more.height) > MOST_PIXELS.side;
      expect(isTooMuch).toBe(true);
    })
  );
});

test('what is too large is refused in a sentence that names the largest that fits', async () => {
  const site = { ...bigSite(200), sheet: { scale: 50 as const } };
  const most = finest(planPicture(site)!);
  const possible = pixelsAt(planPicture(site)!, most);
  const made = planPng(source(site), { ...surroundings, dotsPerInch: most + 1 }, unwatched());
  await expect(made).rejects.toThrow(Unfit);
  await expect(made).rejects.toThrow(
    `${most} dots to the inch, ${possible.width} × ${possible.height} pixels`
  );
});

test('of nothing no picture is made', async () => {
  await expect(planPng(source(emptySite()), surroundings, unwatched())).rejects.toThrow('Nothing is drawn yet.'); // prettier-ignore
});
