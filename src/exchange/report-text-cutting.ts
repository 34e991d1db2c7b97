/** The cutting plan in the report for people: in the order of sawing, set out from the baseline. */
import type { ReportedCutting } from './report-cutting';
import type { Say } from './report-text-model';
import { block, blockIfAny } from './text-table';

type SetOut = ReportedCutting['cuts'][number]['setOutFrom'];

export const cuttingBlock = (cutting: ReportedCutting, say: Say): string[] => {
  const { baseline, cuts, holes, unplaced, totals } = cutting;
  const place = (setOut: SetOut): string =>
    setOut ? `${say(setOut.station_m, 'length')} / ${say(setOut.offset_m, 'length')}` : '–';
  const size = ({ depth_m, width_m }: { readonly depth_m: number; readonly width_m: number }): string =>
    `${say(depth_m, 'smallLength')} × ${say(width_m, 'smallLength')}`;
  return [
    ...block(
      baseline === null
        ? 'Cutting plan, without a baseline'
        : `Cutting plan, station / offset from ${baseline}`,
      [
        ['cut', 'loop', 'kind', 'from', 'to', 'length', 'deep × wide', 'past its ends', 'shared with'],
        ...cuts.map((cut) => [
          String(cut.order),
          cut.loop,
          cut.kind,
          place(cut.setOutFrom),
          cut.radius_m === null ? place(cut.setOutTo) : `radius ${say(cut.radius_m, 'length')}`,
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
        place(hole.setOut),
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
    ])
  ];
};
