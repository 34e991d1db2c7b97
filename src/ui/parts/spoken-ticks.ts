import { decimalSign } from '#i18n/locale';

const THIN_SPACE = '\u202f';

/** An axis's numbers as the language writes them; thousands stand apart and are never taken for decimals. */
export const spokenTicks =
  (format: (value: number) => string) =>
  (value: number): string =>
    format(value).replace(/[.,]/g, (sign) => (sign === '.' ? decimalSign() : THIN_SPACE));
