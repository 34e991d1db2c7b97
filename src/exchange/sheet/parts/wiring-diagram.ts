/** A circuit's diagram in millimetres: terminals, lead-in, pull box, and the coils of its strings. */
import { t } from '#i18n/message';
import type { Circuit, Point, Site } from '#plan/schema';
import { sectionsOf } from '#scenes/cable-sections';
import { area, line, type Drawing } from '#scenes/drawing';
import type { Coil, Place, Schematic } from '#scenes/schematic';
import { cableName, loopName, unitName } from '../../tables/names';
import { INK, LINE, SOFT, TYPE, WHITE } from '../layout/look';
import { writtenWithin } from '../layout/writing';
import { lengthText } from '#scenes/tape';

/** Millimetres to a unit of the diagram. */
export const SCALE = 0.27;
/** Units: where the words beside the lead-in begin, and how many turns are drawn. */
const WORDS = 44;
const TURNS = 4;
const WIRE = { colour: INK, width: LINE.strong };
const SMALL = { size: TYPE.small, colour: SOFT };

/** Half circles down the wire. */
function turns({ wire, from, to }: Coil, at: (place: Place) => Point): Drawing[] {
  const radius = (to - from) / TURNS / 2;
  return Array.from({ length: TURNS }, (_, k) => {
    const middle = from + (2 * k + 1) * radius;
    const points = Array.from({ length: 9 }, (_, j) => {
      const angle = (Math.PI * j) / 8 - Math.PI / 2;
      return at({ x: wire + 6 * Math.cos(angle), y: middle + radius * Math.sin(angle) });
    });
    return line(points, WIRE);
  });
}

function coilDrawings(site: Site, coil: Coil, at: (place: Place) => Point): Drawing[] {
  const loop = site.loops.find(({ id }) => id === coil.loop);
  const left = coil.wire + 15;
  const room = (coil.x + coil.width - left - 4) * SCALE;
  const words = [
    ...(loop ? [t('wiring.turns', { count: loop.turns })] : []),
    ...(loop ? [t('wiring.tail', { length: lengthText(loop.tail.length, site.displayUnits) })] : []),
    ...(coil.reversed ? [t('wiring.reversed')] : [])
  ];
  return [
    ...turns(coil, at),
    { kind: 'circle', at: at(coil.dot), radius: 0.6, fill: INK },
    ...writtenWithin(loopName(site, coil.loop), at({ x: left, y: coil.y + 18 }), room, {
      size: TYPE.text,
      bold: true
    }),
    ...words.flatMap((text, k) => writtenWithin(text, at({ x: left, y: coil.y + 31 + 13 * k }), room, SMALL))
  ];
}

function leadInDrawings(
  site: Site,
  circuit: Circuit,
  drawing: Schematic,
  at: (place: Place) => Point
): Drawing[] {
  const room = (drawing.width - WORDS) * SCALE;
  const cables = sectionsOf(circuit);
  const shield = ({ y, height }: { y: number; height: number }): Point[] =>
    Array.from({ length: 24 }, (_, k) => {
      const angle = (Math.PI * k) / 12;
      return at({ x: 21 + 14 * Math.cos(angle), y: y + height / 2 + 6 * Math.sin(angle) });
    });
  const words = drawing.sections.flatMap((section, k): Drawing[] => {
    const { cable, length } = cables[k]!;
    const middle = section.y + section.height / 2;
    return [
      { kind: 'line', points: shield(section), closed: true, stroke: { colour: SOFT, width: LINE.hair } },
      ...writtenWithin(lengthText(length, site.displayUnits), at({ x: WORDS, y: middle - 6 }), room, {
        size: TYPE.text
      }),
      ...writtenWithin(cableName(site, cable), at({ x: WORDS, y: middle + 6 }), room, SMALL)
    ];
  });
  const none =
    cables.length === 0
      ? writtenWithin(t('wiring.noLeadIn'), at({ x: WORDS, y: drawing.pullBox.y - 18 }), room, SMALL)
      : [];
  return [...words, ...none];
}

function terminalsOf(site: Site, { channel }: Circuit): string {
  if (!channel) return t('wiring.terminals');
  return t('sheet.terminals', { unit: unitName(site, channel.unit), number: channel.number });
}

/** Upper left corner at the place given. */
export function diagram(
  site: Site,
  circuit: Circuit,
  drawing: Schematic,
  left: number,
  top: number
): Drawing[] {
  const at = ({ x, y }: Place): Point => [left + x * SCALE, top + y * SCALE];
  const { pullBox } = drawing;
  const corner = (x: number, y: number): Point => at({ x: pullBox.x + x, y: pullBox.y + y });
  const rail = (places: readonly Place[]) => line(places.map(at), WIRE);
  const box: Drawing = area(
    [
      corner(0, 0),
      corner(pullBox.width, 0),
      corner(pullBox.width, pullBox.height),
      corner(0, pullBox.height)
    ],
    WHITE,
    { colour: SOFT, width: LINE.normal, dash: [1.2, 0.9] }
  );
  const room = (drawing.width - WORDS) * SCALE;
  return [
    box,
    ...writtenWithin(t('wiring.pullBox'), at({ x: WORDS, y: pullBox.y + pullBox.height / 2 }), room, SMALL),
    rail(drawing.goRail),
    rail(drawing.returnRail),
    ...drawing.wires.map(rail),
    ...drawing.terminals.map((terminal): Drawing => ({
      kind: 'circle',
      at: at(terminal),
      radius: 0.9,
      fill: WHITE,
      stroke: WIRE
    })),
    ...writtenWithin(terminalsOf(site, circuit), at({ x: WORDS, y: 12 }), room, SMALL),
    ...leadInDrawings(site, circuit, drawing, at),
    ...drawing.coils.flatMap((coil) => coilDrawings(site, coil, at))
  ];
}
