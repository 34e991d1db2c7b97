/** The cutting plan in the report for people: in the order of sawing, set out from the baseline. */
import type { Point } from '#plan/schema';
import type { ReportedCutting } from './report-cutting';
import type { Say } from './report-text-model';
import { clean } from './sheet/text/clean';
import { block, blockIfAny } from './text-table';

type SetOut = ReportedCutting['cuts'][number]['setOutFrom'];

export const cuttingBlock = (cutting: ReportedCutting, say: Say): string[] => {
  const { baseline, cuts, holes, unplaced, totals, cautions } = cutting;
  const pair = (one: number, other: number): string => `${say(one, 'length')} / ${say(other, 'length')}`;
  /** As a tape finds it; by the plan's own coordinates where there is nothing to measure from. */
  const place = (setOut: SetOut, [x, y]: Point): string =>
    setOut ? pair(setOut.station_m, setOut.offset_m) : pair(x, y);
  const size = ({ depth_m, width_m }: { readonly depth_m: number; readonly width_m: number }): string =>
    `${say(depth_m, 'smallLength')} × ${say(width_m, 'smallLength')}`;
  return [
    ...block(
      baseline === null
        ? 'Cutting plan, x / y of the plan without a baseline'
        : `Cutting plan, station / offset from ${clean(baseline)}`,
      [
        ['cut', 'loop', 'kind', 'from', 'to', 'length', 'deep × wide', 'past its ends', 'shared with'],
        ...cuts.map((cut) => [
          String(cut.order),
          cut.loop,
          cut.kind,
          place(cut.setOutFrom, cut.centre ?? cut.from),
          cut.radius_m === null ? place(cut.setOutTo, cut.to) : `radius ${say(cut.radius_m, 'length')}`,
          say(cut.length_m, 'length'),
          size(cut),
          `${say(cut.overcutFrom_m, 'length')}, ${say(cut.overcutTo_m, 'length')}`,
          cut.sharedWith.join(', ')
        ])
      ],
      'nothing to cut'
    ),
    ...blockIfAny('Core holes', [
      ['loop', 'at', 'across', 'deep'],
      ...holes.map((hole) => [
        hole.loop,
        place(hole.setOut, hole.at),
        say(hole.diameter_m, 'smallLength'),
        say(hole.depth_m, 'smallLength')
      ])
    ]),
    ...blockIfAny('Home runs that are not drawn', [
      ['loop', 'length', 'deep × wide'],
      ...unplaced.map((each) => [each.loop, say(each.length_m, 'length'), size(each)])
    ]),
    ...blockIfAny('Way of the blade', [
      ['deep × wide', 'as drawn', 'past the ends', 'together'],
      ...totals.map((total) => [
        size(total),
        say(total.length_m, 'length'),
        say(total.overcut_m, 'length'),
        say(total.length_m + total.overcut_m, 'length')
      ])
    ]),
    ...(cautions.length > 0 ? ['', ...cautions.map(({ message }) => `  ! ${clean(message)}`)] : [])
  ];
};
