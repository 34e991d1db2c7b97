/** The typeface of papers, from the package that brings it. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Typeface } from '#exchange/files/exported';

const bytesOf = async (name: string): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(await readFile(fileURLToPath(import.meta.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`))));

export const typeface = async (): Promise<Typeface> => ({
  regular: await bytesOf('DejaVuSans'),
  bold: await bytesOf('DejaVuSans-Bold')
});
