/** The file that waits to be looked at before it changes anything. */
import { createContext } from 'svelte';

export class ImportDesk {
  file = $state.raw<File | null>(null);
}

export const [useImports, provideImports] = createContext<ImportDesk>();

/** Whether a dropped file is a drawing or a table; a site is told from its text, a picture by its kind. */
export const isMeantToImport = ({ name, type }: Pick<File, 'name' | 'type'>): boolean =>
  type === 'text/csv' || /\.(dxf|dwg|csv|tsv)$/i.test(name);
