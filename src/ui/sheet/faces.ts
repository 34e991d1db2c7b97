/** The typeface of the sheet for what the page draws and prints of it: the same file that goes into the PDF. */
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url';
import regular from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';

/** A name of its own, so that no version of the system's stands in for it; others where it cannot be had. */
const NAME = 'DejaVuOfSheets';
export const SHEET_FONT = `${NAME}, "DejaVu Sans", Verdana, sans-serif`;

let kept: Promise<boolean> | undefined;

/** Whether the typeface is there; it is asked for once, and again where that failed. */
export function sheetFaces(): Promise<boolean> {
  kept ??= Promise.all(
    [
      new FontFace(NAME, `url(${regular})`, { weight: '400' }),
      new FontFace(NAME, `url(${bold})`, { weight: '700' })
    ].map(async (face) => {
      document.fonts.add(await face.load());
    })
  ).then(
    () => true,
    () => {
      kept = undefined;
      return false;
    }
  );
  return kept;
}
