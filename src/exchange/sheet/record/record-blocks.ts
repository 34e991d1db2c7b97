/** What stands in the commissioning record. */
import type { CheckedCircuit } from '#analysis/fault-finding/checked';
import { recordRowsOf, type RecordRow } from '#analysis/fault-finding/record';
import { inRow } from '#i18n/locale';
import { t } from '#i18n/message';
import { limitsOfSite } from '#plan/catalogue/acceptance';
import { acceptanceOf, type RecordVerdict } from '#plan/edits/record';
import type { Circuit, Site } from '#plan/schema';
import {
  figureText,
  limitsText,
  placeText,
  quantityText,
  rangeText,
  timeText,
  verdictText
} from '../../tables/field-words';
import { nameOf } from '../../tables/names';
import type { Table } from '../../tables/table';
import type { ExportSource } from '../../files/exported';
import { space, type Block, type Piece } from '../layout/block';
import { heading, headingAgain } from '../layout/heading';
import { TYPE } from '../layout/look';
import { tableBlock } from '../layout/table-block';
import { textsBlock } from '../layout/texts-block';
import { paragraph } from '../layout/writing';
import { clean, cleanLines } from '../text/clean';
import { settingsText } from './settings';
import { blanksPiece, ticksPiece } from './ticks';

const VERDICTS: readonly RecordVerdict[] = ['accepted', 'conditional', 'refused'];

/** Over as many pieces as it has lines of the user's, each of them wrapped. */
export const textPieces = (text: string, width: number): Piece[] =>
  cleanLines(text)
    .filter((each) => each !== '')
    .map((each): Piece => {
      const lines = paragraph(each, width, { size: TYPE.text }, 12);
      return { height: lines.height + 0.8, draw: (left, top) => lines.draw([left, top]) };
    });

/** Who, when, with what, and by which limits. */
export function facts(site: Site): Block {
  const record = site.fieldCheck?.record ?? {};
  const instruments = inRow((site.fieldCheck?.instruments ?? []).map((each) => nameOf(each)));
  const sources = limitsOfSite(site).map(({ id, isFromMemory }) => {
    const source = t(`field.source.${id}` as 'field.source.wsdot-8-20-q');
    return isFromMemory ? t('record.fromMemory', { source }) : source;
  });
  const own = site.fieldCheck?.insulationLimit_ohm;
  const agreed =
    own === undefined
      ? []
      : [t('record.ownLimit', { limit: figureText(own, 'insulation_ohm', site.displayUnits) })];
  const limits = [...new Set([...sources, ...agreed])].join('; ');
  return (width) => ({
    pieces: [
      heading(t('record.title'), width),
      blanksPiece(
        [
          { label: t('record.installedBy'), value: record.installedBy ?? '', share: 1 },
          { label: t('record.testedBy'), value: record.testedBy ?? '', share: 1 },
          { label: t('record.witnessedBy'), value: record.witnessedBy ?? '', share: 1 },
          { label: t('record.date'), value: record.date ?? '', share: 0.6 }
        ],
        width,
        9
      ),
      space(1.5),
      ...(instruments === '' ? [] : textPieces(t('record.instruments', { instruments }), width)),
      ...(limits === '' ? [] : textPieces(t('record.limits', { limits }), width)),
      ...textPieces(t('record.howToRead'), width)
    ],
    again: [headingAgain(t('record.title'), width)]
  });
}

function measuredText({ displayUnits }: Site, { measured, quantity }: RecordRow): string {
  if (!measured) return t('record.notMeasured');
  return measured.value === null ? t('field.overRange') : figureText(measured.value, quantity, displayUnits);
}

function takenText({ readings }: Site, { measured }: RecordRow): string {
  const reading = measured ? readings[measured.reading] : undefined;
  if (!reading) return '';
  return [timeText(reading).slice(0, 10), reading.by ?? ''].map(clean).filter(Boolean).join(', ');
}

const text = (head: string) => ({ head, kind: 'text' }) as const;

/** Expected, plausible, limit; empty where there is none. */
function expectedTexts({ displayUnits }: Site, { expected, quantity }: RecordRow): readonly string[] {
  if (!expected) return ['', '', ''];
  return [
    expected.value === null ? '' : figureText(expected.value, quantity, displayUnits),
    rangeText(expected, displayUnits),
    limitsText(expected, displayUnits)
  ];
}

function figuresTable(site: Site, circuit: Circuit, rows: readonly RecordRow[]): Table {
  const cells = (row: RecordRow): readonly string[] => [
    placeText(site, row),
    quantityText(site, row.quantity, {
      frequency_Hz: row.expected?.frequency_Hz ?? null,
      vehicle: row.vehicle
    }),
    ...expectedTexts(site, row),
    measuredText(site, row),
    takenText(site, row),
    row.measured ? verdictText(row.measured.verdict) : ''
  ];
  return {
    title: nameOf(circuit),
    columns: [
      text(t('record.table.where')),
      text(t('record.table.quantity')),
      text(t('record.table.expected')),
      text(t('record.table.range')),
      text(t('record.table.limit')),
      text(t('record.table.measured')),
      text(t('record.table.taken')),
      text(t('record.table.verdict'))
    ],
    rows: rows.map(cells)
  };
}

/** The figures, how the channel is set, and how the circuit was accepted. */
export function circuitBlock(
  source: ExportSource,
  circuit: Circuit,
  checked: CheckedCircuit | undefined
): Block {
  const { site } = source;
  const rows = checked ? recordRowsOf(site, checked) : [];
  const acceptance = acceptanceOf(site, circuit.id);
  return (width, height) => {
    const table =
      rows.length > 0
        ? tableBlock(figuresTable(site, circuit, rows))(width, height)
        : {
            pieces: [heading(nameOf(circuit), width), ...textPieces(t('record.nothingExpected'), width)],
            again: [headingAgain(nameOf(circuit), width)]
          };
    const ticks = ticksPiece(
      t('record.acceptance'),
      VERDICTS.map((verdict) => ({
        label: t(`record.acceptance.${verdict}`),
        isTicked: acceptance?.verdict === verdict
      })),
      width
    );
    const remarks = acceptance?.remarks ?? '';
    return {
      ...table,
      pieces: [
        ...table.pieces,
        { ...space(1), staysWithNext: true },
        ...textPieces(settingsText(source, circuit), width).map((each) => ({ ...each, staysWithNext: true })),
        { ...ticks, staysWithNext: remarks !== '' },
        ...(remarks === '' ? [] : textPieces(t('record.remarked', { remarks }), width))
      ]
    };
  };
}

export const remarks = ({ fieldCheck }: Site): Block =>
  textsBlock(
    t('record.remarks'),
    cleanLines(fieldCheck?.record?.remarks ?? '').filter((each) => each !== '')
  );

/** To be signed on the paper: nobody signs on a screen. */
export function signatures({ fieldCheck }: Site): Block {
  const { installedBy, testedBy, witnessedBy } = fieldCheck?.record ?? {};
  const between = { ...space(1.6), staysWithNext: true };
  const line = (label: string, value: string | undefined, width: number): Piece => ({
    ...blanksPiece(
      [
        { label, value: value ?? '', share: 1 },
        { label: t('record.signature'), value: '', share: 1.4 },
        { label: t('record.date'), value: '', share: 0.6 }
      ],
      width,
      15
    ),
    staysWithNext: true
  });
  return (width) => ({
    pieces: [
      heading(t('record.signatures'), width),
      line(t('record.installedBy'), installedBy, width),
      between,
      line(t('record.testedBy'), testedBy, width),
      between,
      line(t('record.witnessedBy'), witnessedBy, width),
      space(0)
    ],
    again: []
  });
}
