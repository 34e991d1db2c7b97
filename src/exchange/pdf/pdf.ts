/** Pages as PDF: vectors and embedded type. The same pages give the same bytes, in a page and on a command line. */
import { jsPDF } from 'jspdf';
import { spokenLanguage } from '#i18n/message';
import type { Typeface } from '../files/exported';
import { breathe, type Job } from '../job';
import type { Page } from '../sheet/page';
import { Pen } from './pen';
import { embedded } from './typeface';
import { untimed } from './untimed';

/** Drawings between two rests: some milliseconds of work. */
const AT_ONCE = 400;
/** Shares of the whole work: the typeface is there, the pages are drawn; the rest is packing. */
const SHARE = { typeface: 0.2, pages: 0.8 } as const;
const LONGEST_TITLE = 300;

const lying = ({ width, height }: Page): 'landscape' | 'portrait' =>
  width > height ? 'landscape' : 'portrait';

function begun(page: Page, title: string): jsPDF {
  const file = new jsPDF({
    unit: 'mm',
    format: [page.width, page.height],
    orientation: lying(page),
    compress: true,
    putOnlyUsedFonts: true,
    // of a point: a thousandth of a hair
    floatPrecision: 4
  });
  file.setFileId('0'.repeat(32));
  file.setProperties({ title: title.slice(0, LONGEST_TITLE).replace(/\p{Cc}/gu, ' '), creator: 'Kerfline' });
  file.setLanguage(spokenLanguage());
  file.setDisplayMode('fullpage', 'continuous');
  // a sheet is true to scale only where nobody fits it to the paper
  file.viewerPreferences({ DisplayDocTitle: true, PrintScaling: 'None', PickTrayByPDFSize: true });
  return file;
}

/**
 * Rejects with the signal's reason for a job that was ended, with a RangeError for no pages or a colour that is none.
 * Characters that the typeface does not have are replaced by a sign that can be seen.
 */
export async function pdfOf(
  pages: readonly Page[],
  about: { readonly title: string },
  typeface: Typeface,
  job: Job
): Promise<Uint8Array<ArrayBuffer>> {
  const [first] = pages;
  if (!first) throw new RangeError('a file needs a page');
  await breathe(job, 0);
  const file = begun(first, about.title);
  const regular = embedded(file, 'regular', typeface.regular);
  await breathe(job, SHARE.typeface / 2);
  const bold = embedded(file, 'bold', typeface.bold);
  await breathe(job, SHARE.typeface);
  const pen = new Pen(file, { regular, bold });
  const drawn = (index: number, part: number): number =>
    SHARE.typeface + ((SHARE.pages - SHARE.typeface) * (index + part)) / pages.length;
  for (const [index, page] of pages.entries()) {
    if (index > 0) file.addPage([page.width, page.height], lying(page));
    file.saveGraphicsState();
    for (const [number, drawing] of page.drawings.entries()) {
      if (number > 0 && number % AT_ONCE === 0)
        await breathe(job, drawn(index, number / page.drawings.length));
      pen.draw(drawing);
    }
    file.restoreGraphicsState();
    await breathe(job, drawn(index, 1));
  }
  const bytes = untimed(file.output());
  job.onShare(1);
  return bytes;
}
