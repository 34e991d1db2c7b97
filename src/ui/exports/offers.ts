/** What can be made of a site for others, what it is for, and in which formats. */
import type { ExportKind } from '#exchange/files/exported';
import { t } from '#i18n/message';

const OFFERS = [
  { what: 'sheet', formats: ['pdf'] },
  { what: 'plan', formats: ['svg', 'png', 'dxf'] },
  { what: 'takeoff', formats: ['csv', 'xlsx'] },
  { what: 'readings', formats: ['csv', 'xlsx'] },
  { what: 'measured', formats: ['csv', 'xlsx'] },
  { what: 'record', formats: ['pdf'] },
  { what: 'form', formats: ['pdf'] },
  { what: 'cutting', formats: ['csv', 'xlsx'] },
  { what: 'designs', formats: ['csv', 'xlsx'] },
  { what: 'report', formats: ['json'] }
] as const;

/** Pixels per inch of paper: for a screen, for an office printer, for fine print. */
export const RESOLUTIONS = [100, 200, 300, 600] as const;
export const USUAL_RESOLUTION = 200;

type Offered = (typeof OFFERS)[number];

interface OfferedFile {
  readonly kind: ExportKind;
  readonly format: string;
  /** "Take-off as CSV". */
  readonly name: string;
}

export interface Offer {
  readonly what: Offered['what'];
  readonly title: string;
  readonly purpose: string;
  readonly files: readonly OfferedFile[];
}

const fileOf = ({ what }: Offered, format: Offered['formats'][number]): OfferedFile => ({
  // every pair that OFFERS lists is a kind, which a test holds it to
  kind: `${what}-${format}` as ExportKind,
  format: format.toUpperCase(),
  name: t('exports.make', { what: t(`exports.${what}`), format: format.toUpperCase() })
});

export const offers = (): readonly Offer[] =>
  OFFERS.map((offered) => ({
    what: offered.what,
    title: t(`exports.${offered.what}`),
    purpose: t(`exports.${offered.what}For`),
    files: offered.formats.map((format) => fileOf(offered, format))
  }));

/** "Take-off as CSV". */
export const fileName = (kind: ExportKind): string =>
  offers()
    .flatMap(({ files }) => files)
    .find((file) => file.kind === kind)?.name ?? kind;
