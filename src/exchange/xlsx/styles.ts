/** How cells of a workbook look: ECMA-376 part 1, 18.8. */

/** Places after the decimal sign that a format is there for. */
const MOST_DIGITS = 4;
const FIRST_FORMAT = 164;

const DIGITS = Array.from({ length: MOST_DIGITS + 1 }, (_, digits) => digits);
const FONTS = { plain: 0, bold: 1 } as const;
const BORDERS = { none: 0, below: 1, above: 2 } as const;

interface Look {
  readonly font: number;
  readonly border: number;
  readonly format: number;
  readonly wraps: boolean;
}

const numberLook = (isTotal: boolean, digits: number): Look => ({
  font: isTotal ? FONTS.bold : FONTS.plain,
  border: isTotal ? BORDERS.above : BORDERS.none,
  format: FIRST_FORMAT + digits,
  wraps: false
});

const LOOKS: readonly Look[] = [
  { font: FONTS.plain, border: BORDERS.none, format: 0, wraps: false },
  { font: FONTS.bold, border: BORDERS.below, format: 0, wraps: true },
  // format 49 is text: what is typed over it stays text too
  { font: FONTS.plain, border: BORDERS.none, format: 49, wraps: true },
  { font: FONTS.bold, border: BORDERS.above, format: 49, wraps: true },
  ...DIGITS.map((digits) => numberLook(false, digits)),
  ...DIGITS.map((digits) => numberLook(true, digits))
];

export const HEAD = 1;
export const textStyle = (isTotal: boolean): number => (isTotal ? 3 : 2);
export function numberStyle(isTotal: boolean, digits = MOST_DIGITS): number {
  return 4 + (isTotal ? DIGITS.length : 0) + Math.min(MOST_DIGITS, Math.max(0, digits));
}

const formatCode = (digits: number): string => (digits === 0 ? '0' : `0.${'0'.repeat(digits)}`);

const xf = ({ font, border, format, wraps }: Look): string =>
  `<xf numFmtId="${format}" fontId="${font}" fillId="0" borderId="${border}" xfId="0" applyNumberFormat="1" applyFont="1" applyBorder="1" applyAlignment="1"><alignment vertical="top"${wraps ? ' wrapText="1"' : ''}/></xf>`;

const border = (above: string, below: string): string =>
  `<border><left/><right/><top${above}/><bottom${below}/><diagonal/></border>`;
const THIN = ' style="thin"';

export const stylesXml = (): string =>
  [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>',
    '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">',
    `<numFmts count="${DIGITS.length}">`,
    ...DIGITS.map(
      (digits) => `<numFmt numFmtId="${FIRST_FORMAT + digits}" formatCode="${formatCode(digits)}"/>`
    ),
    '</numFmts>',
    '<fonts count="2"><font><sz val="11"/><family val="2"/></font>',
    '<font><b/><sz val="11"/><family val="2"/></font></fonts>',
    '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>',
    `<borders count="3">${border('', '')}${border('', THIN)}${border(THIN, '')}</borders>`,
    '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
    `<cellXfs count="${LOOKS.length}">${LOOKS.map(xf).join('')}</cellXfs>`,
    '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>',
    '</styleSheet>'
  ].join('');
