/** A cut across each kind of slot, at a round scale, with its dimensions. */
import { slotSection, type SectionSteel, type SlotSection } from '#analysis/section/slot-section';
import { inRow } from '#i18n/locale';
import { t } from '#i18n/message';
import type { DisplayUnits, Loop, Point, Site } from '#plan/schema';
import { area, line, type Drawing } from '#scenes/drawing';
import { sectionLayout, type SectionFrame, type SectionLayout } from '#scenes/section-layout';
import { plain } from '#units/digits';
import { format } from '#units/format';
import type { Block } from '../layout/block';
import { figuresBlock, type Figure } from '../layout/grid';
import { HAIR, INK, LINE, SOFT, TYPE, WHITE } from '../layout/look';
import { paragraph, written, type Lines } from '../layout/writing';
import { nameOf } from '../../tables/names';

const FRAME: SectionFrame = {
  width: 88,
  margin: { top: 5, bottom: 6 },
  ground: 90,
  brokenStep: 8
};
/** Millimetres on paper for a millimetre in the road. */
const RATIOS = [2, 1, 0.5, 0.25, 0.2, 0.1, 0.05] as const;
/** Of the drawing. */
const TALLEST = 100;
const SEALANT = '#dde2e0';
const SMALL = { size: TYPE.small };
const THIN = { colour: SOFT, width: LINE.hair };

/** Loops of one kind of slot share a picture. */
function kinds(site: Site): readonly { readonly loops: readonly Loop[]; readonly section: SlotSection }[] {
  const found = new Map<string, { loops: Loop[]; section: SlotSection }>();
  for (const loop of site.loops) {
    const section = slotSection(loop, site);
    if (!section) continue;
    const key = JSON.stringify(section);
    const kind = found.get(key);
    if (kind) kind.loops.push(loop);
    else found.set(key, { loops: [loop], section });
  }
  return [...found.values()];
}

function scaledLayout(section: SlotSection, tallest: number): { layout: SectionLayout; ratio: number } {
  const layouts = RATIOS.map((ratio) => ({ ratio, layout: sectionLayout(section, FRAME, 1000 * ratio) }));
  const widest = FRAME.width * (section.slots.length > 1 ? 0.14 : 0.25);
  return (
    layouts.find(
      ({ layout }) =>
        layout.height <= tallest && Math.max(section.width, section.insulated) * layout.scale <= widest
    ) ?? layouts.at(-1)!
  );
}

const ratioText = (ratio: number): string =>
  ratio >= 1 ? `${plain(ratio)}:1` : `1:${plain(Math.round(1 / ratio))}`;

/** A line with a stroke across each end. */
function dimension(from: Point, to: Point): Drawing[] {
  const isUpright = from[0] === to[0];
  const stroke = ([x, y]: Point): Drawing =>
    isUpright ? line([[x - 1, y], [x + 1, y]], THIN) : line([[x, y - 1], [x, y + 1]], THIN); // prettier-ignore
  return [line([from, to], THIN), stroke(from), stroke(to)];
}

const say = (metres: number, units: DisplayUnits): string => format(metres, 'smallLength', units).text;

function slotDrawings(section: SlotSection, layout: SectionLayout, units: DisplayUnits): Drawing[] {
  const { surface, scale } = layout;
  const bottom = surface + section.depth * scale;
  const half = (section.width / 2) * scale;
  return section.slots.flatMap((slot, at): Drawing[] => {
    const x = layout.slots[at]!;
    const top = surface + slot.cover * scale;
    const cover =
      slot.cover < 0
        ? t('section.out', { length: say(-slot.cover, units) })
        : t('section.cover', { cover: say(slot.cover, units) });
    const width = say(section.width, units);
    return [
      area([[x - half, surface], [x + half, surface], [x + half, bottom], [x - half, bottom]], SEALANT), // prettier-ignore
      line([[x - half, surface], [x - half, bottom], [x + half, bottom], [x + half, surface]], { colour: INK, width: LINE.strong }), // prettier-ignore
      ...slot.wires.flatMap(({ z, cell }): Drawing[] => {
        const middle: Point = [x, surface - z * scale];
        return [
          {
            kind: 'circle',
            at: middle,
            radius: (section.insulated / 2) * scale,
            fill: WHITE,
            stroke: { colour: INK, width: LINE.hair, ...(cell === 1 ? { dash: [0.5, 0.4] } : {}) }
          },
          { kind: 'circle', at: middle, radius: (section.conductor / 2) * scale, fill: INK }
        ];
      }),
      ...dimension([x + half + 2.5, surface], [x + half + 2.5, top]),
      written(cover, [x + half + 4.5, (surface + top) / 2], SMALL),
      ...(at === 0
        ? [
            ...dimension([x - half - 2.5, surface], [x - half - 2.5, bottom]),
            written(say(section.depth, units), [x - half - 4.5, (surface + bottom) / 2], {
              ...SMALL,
              align: 'right'
            })
          ]
        : []),
      written(slot.isShared ? `${width}, ${t('section.shared')}` : width, [x, bottom + 3], {
        ...SMALL,
        align: 'center'
      })
    ];
  });
}

function steelDrawings({ steel }: SlotSection, layout: SectionLayout): Drawing[] {
  const { scale, width } = layout;
  return layout.steel.flatMap(({ y, isBroken }, at): Drawing[] => {
    const { bars } = steel[at]!;
    const ends = (height: number): Point[] => [[0, height], [width, height]]; // prettier-ignore
    if (!bars || isBroken)
      return [line(ends(y), { colour: SOFT, width: 0.8, ...(bars ? { dash: [2.4, 1.2] } : {}) })];
    const radius = Math.max(0.4, bars.radius * scale);
    const step = bars.pitch * scale;
    const count = Math.floor(width / 2 / step);
    return [
      line(ends(y + 2 * radius), { colour: HAIR, width: 2 * radius }),
      ...Array.from({ length: 2 * count + 1 }, (_, k): Drawing => ({
        kind: 'circle',
        at: [width / 2 + (k - count) * step, y],
        radius,
        fill: INK
      })).filter(
        (drawing) => drawing.kind === 'circle' && drawing.at[0] >= radius && drawing.at[0] <= width - radius
      )
    ];
  });
}

function breakLine(at: number, width: number): Drawing {
  const points = Array.from({ length: 23 }, (_, k): Point => [
    (k * width) / 22,
    at + (k % 2 === 0 ? 0.6 : -0.6)
  ]);
  return line(points, THIN);
}

function picture(section: SlotSection, layout: SectionLayout, units: DisplayUnits): Drawing[] {
  const { width, surface, breakAt } = layout;
  return [
    ...steelDrawings(section, layout),
    line([[0, surface], [width, surface]], { colour: INK, width: LINE.frame }), // prettier-ignore
    ...(breakAt === null ? [] : [breakLine(breakAt, width)]),
    ...slotDrawings(section, layout, units),
    written(t('section.surface'), [0, surface - 2.4], { ...SMALL, colour: SOFT })
  ];
}

const steelText = ({ kind, depth, bars }: SectionSteel, units: DisplayUnits): string =>
  kind === 'mat' && bars
    ? t('section.mat', {
        depth: say(depth, units),
        pitch: say(bars.pitch, units),
        bar: say(2 * bars.radius, units)
      })
    : t('section.plate', { depth: say(depth, units) });

function moved(drawings: readonly Drawing[], [dx, dy]: Point): Drawing[] {
  const move = ([x, y]: Point): Point => [x + dx, y + dy];
  return drawings.map((drawing): Drawing => {
    if (drawing.kind === 'line') return { ...drawing, points: drawing.points.map(move) };
    return 'at' in drawing ? { ...drawing, at: move(drawing.at) } : drawing;
  });
}

function figureOf(loops: readonly Loop[], section: SlotSection, site: Site, tallest: number): Figure {
  const units = site.displayUnits;
  const words: Lines[] = [
    paragraph(inRow(loops.map(nameOf)), FRAME.width, { size: TYPE.value, bold: true }, 3),
    paragraph(
      [
        t('sheet.sectionScale', { wires: say(section.insulated, units) }),
        ...section.steel.map((steel) => steelText(steel, units))
      ].join(' '),
      FRAME.width,
      { size: TYPE.small, colour: SOFT },
      6
    )
  ];
  const above = words.reduce((sum, { height }) => sum + height, 1);
  const { layout, ratio } = scaledLayout(section, Math.min(TALLEST, tallest / 2, tallest - above));
  const scale = written(t('sheet.scaleOf', { scale: ratioText(ratio) }), [FRAME.width, layout.height - 1.5], {
    ...SMALL,
    align: 'right'
  });
  return {
    width: FRAME.width,
    height: above + layout.height,
    draw: (left, top) => {
      let y = top;
      const written = words.flatMap((lines) => {
        const drawings = lines.draw([left, y]);
        y += lines.height;
        return drawings;
      });
      return [...written, ...moved([...picture(section, layout, units), scale], [left, top + above])];
    }
  };
}

export const sections = (site: Site): Block =>
  figuresBlock(t('sheet.section'), (_, height) =>
    kinds(site).map(({ loops, section }) => figureOf(loops, section, site, height))
  );
