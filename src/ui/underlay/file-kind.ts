/** What kind of file came in: by its first bytes, never by what it calls itself. */
export type FileKind = 'png' | 'jpeg' | 'webp' | 'pdf' | 'svg' | 'other';

/** What a choice of files offers, and what a drop on the page is taken for. */
export const ACCEPTED = '.png,.jpg,.jpeg,.webp,.pdf,image/png,image/jpeg,image/webp,application/pdf';

/** Bytes that the answer is found in; a PDF may have a little something in front of it. */
const HEAD = 1024;

/** Whether a dropped file is meant to be looked at; a site is told from its text. */
export const isMeantAsPicture = ({ name, type }: Pick<File, 'name' | 'type'>): boolean =>
  type.startsWith('image/') ||
  type === 'application/pdf' ||
  /\.(png|jpe?g|webp|pdf|gif|bmp|tiff?|heic|avif|svg)$/i.test(name);

export function kindOfBytes(bytes: Uint8Array): FileKind {
  const text = String.fromCharCode(...bytes.subarray(0, HEAD));
  if (text.startsWith('\u0089PNG\r\n')) return 'png';
  if (text.startsWith('\u00ff\u00d8\u00ff')) return 'jpeg';
  if (text.startsWith('RIFF') && text.slice(8, 12) === 'WEBP') return 'webp';
  if (text.includes('%PDF-')) return 'pdf';
  return /<svg[\s>]/i.test(text) ? 'svg' : 'other';
}

export const kindOfFile = async (file: Blob): Promise<FileKind> =>
  kindOfBytes(new Uint8Array(await file.slice(0, HEAD).arrayBuffer()));
