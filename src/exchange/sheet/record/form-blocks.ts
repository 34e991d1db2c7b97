/** The empty form for the road: beside each box stands what should be read. Millimetres. */
import type { CheckedCircuit } from '#analysis/fault-finding/checked';
import { recordRowsOf, type RecordRow } from '#analysis/fault-finding/record';
import { t } from '#i18n/message';
import { WEATHER, type Circuit, type Site } from '#plan/schema';
import { boxAt, line, type Drawing } from '#scenes/drawing';
import { figureText, limitsText, placeText, quantityText, rangeText, unitOf } from '../../tables/field-words';
import { nameOf } from '../../tables/names';
import type { ExportSource } from '../../files/exported';
import { space, type Block, type Piece } from '../layout/block';
import { heading, headingAgain } from '../layout/heading';
import { HAIR, INK, LINE, SOFT, TYPE } from '../layout/look';
import { paragraph, writtenWithin } from '../layout/writing';
import { clean } from '../text/clean';
import { textPieces } from './record-blocks';
import { settingsText } from './settings';
import { blanksPiece, ticksPiece } from './ticks';

/** Large enough for a hand in a glove. */
const BOX = { height: 9, share: 0.3 } as const;
const ROW = BOX.height + 1.6;
const QUANTITY_SHARE = 0.32;
const BETWEEN = 3;
/** Instruments that may be written in beside those that the site lists. */
const FREE_INSTRUMENTS = 2;

/** Weather and instruments, once: date and initials stand at the foot of every page. */
export function formHead({ fieldCheck }: Site): Block {
  const instruments = fieldCheck?.instruments ?? [];
  const unticked = (label: string) => ({ label, isTicked: false });
  return (width) => ({
    pieces: [
      heading(t('record.formTitle'), width),
      ticksPiece(
        t('record.weather'),
        WEATHER.map((weather) => unticked(t(`field.weather.${weather}`))),
        width
      ),
      blanksPiece(
        [
          { label: t('record.temperature'), value: '', share: 1 },
          { label: t('record.meterFrequency'), value: '', share: 1 },
          { label: t('record.insulationVoltage'), value: '', share: 1 }
        ],
        width,
        11
      ),
      ...(instruments.length > 0
        ? [
            ticksPiece(
              t('record.instrumentsUsed'),
              instruments.map((each) => unticked(nameOf(each))),
              width
            )
          ]
        : []),
      blanksPiece(
        Array.from({ length: FREE_INSTRUMENTS }, () => ({
          label: t('record.instrument'),
          value: '',
          share: 1
        })),
        width,
        11
      ),
      space(1),
      ...textPieces(t('record.formHint'), width)
    ],
    again: []
  });
}

function expectedLines({ displayUnits }: Site, { expected, quantity }: RecordRow): readonly string[] {
  if (!expected) return [];
  const limits = limitsText(expected, displayUnits);
  return [
    expected.value === null ? '' : figureText(expected.value, quantity, displayUnits),
    [rangeText(expected, displayUnits), limits].filter(Boolean).join('; ')
  ].filter((each) => each !== '');
}

function rowPiece(site: Site, row: RecordRow, width: number): Piece {
  const box = width * BOX.share;
  const what = width * QUANTITY_SHARE;
  const middle = width - box - what - 2 * BETWEEN;
  const name = paragraph(
    quantityText(site, row.quantity, {
      frequency_Hz: row.expected?.frequency_Hz ?? null,
      vehicle: row.vehicle
    }),
    what,
    { size: TYPE.text },
    3
  );
  const [first = '', second = ''] = expectedLines(site, row);
  const value = paragraph(first, middle, { size: TYPE.value, bold: true }, 1);
  const range = paragraph(second, middle, { size: TYPE.text }, 2);
  const high = value.height + (second === '' ? 0 : range.height);
  const unit = unitOf(row.expected?.value ?? null, row.quantity, site.displayUnits);
  return {
    height: ROW,
    draw: (left, top) => {
      const centre = top + ROW / 2;
      const edge = left + width;
      return [
        ...name.draw([left, centre - name.height / 2]),
        ...value.draw([left + what + BETWEEN, centre - high / 2]),
        ...(second === '' ? [] : range.draw([left + what + BETWEEN, centre - high / 2 + value.height])),
        {
          kind: 'line',
          points: boxAt([edge - box / 2, centre], box / 2, BOX.height / 2),
          closed: true,
          stroke: { colour: INK, width: LINE.strong }
        },
        ...writtenWithin(unit, [edge - 1.6, centre + BOX.height / 2 - 2.2], box / 3, {
          size: TYPE.text,
          colour: SOFT,
          align: 'right'
        })
      ] satisfies Drawing[];
    }
  };
}

/** Where the meter hangs from here on, and what is connected then. */
function placePiece(site: Site, row: RecordRow, width: number): Piece {
  const text = clean(
    t('record.placeHint', { place: placeText(site, row), hint: t(`record.hint.${row.testPoint}`) })
  );
  return {
    height: 6.4,
    staysWithNext: true,
    draw: (left, top) => [
      ...writtenWithin(text, [left, top + 3.4], width, { size: TYPE.text, bold: true }),
      line([[left, top + 5.4], [left + width, top + 5.4]], { colour: HAIR, width: LINE.hair }) // prettier-ignore
    ]
  };
}

const together = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.map((piece) => ({ ...piece, staysWithNext: true }));

const isSamePlace = (a: RecordRow, b: RecordRow | undefined): boolean =>
  b !== undefined && a.testPoint === b.testPoint && a.loop === b.loop;

/** Of one circuit; what is read at one place stays together. */
export function formBlock(
  source: ExportSource,
  circuit: Circuit,
  checked: CheckedCircuit | undefined
): Block {
  const { site } = source;
  const rows = checked ? recordRowsOf(site, { ...checked, measured: [] }) : [];
  const settings = settingsText(source, circuit);
  return (width) => {
    const accepted = ticksPiece(
      t('record.acceptance'),
      (['accepted', 'conditional', 'refused'] as const).map((verdict) => ({
        label: t(`record.acceptance.${verdict}`),
        isTicked: false
      })),
      width
    );
    const pieces = [
      heading(nameOf(circuit), width),
      ...together(textPieces(settings, width)),
      ...(rows.length === 0 ? together(textPieces(t('record.nothingExpected'), width)) : []),
      ...rows.flatMap((row, at) => {
        const next = rows[at + 1];
        const isFollowed = next !== undefined && isSamePlace(row, next);
        return [
          ...(isSamePlace(row, rows[at - 1]) ? [] : [placePiece(site, row, width)]),
          { ...rowPiece(site, row, width), staysWithNext: isFollowed }
        ];
      }),
      ...together([space(1), accepted]),
      blanksPiece([{ label: t('record.remarks'), value: '', share: 1 }], width, 11)
    ];
    return { pieces, again: [headingAgain(nameOf(circuit), width)] };
  };
}
