/** The dialogs that are asked for by name, from the header, by a key or from one another. */
import { createContext } from 'svelte';
import { withWords } from '../parts/with-words';

/** Loaded when first asked for: the first readout must not wait for them. */
export const DIALOGS = {
  new: withWords(() => import('./NewSiteDialog.svelte')),
  open: withWords(() => import('./OpenDialog.svelte')),
  import: withWords(() => import('../imports/ImportDialog.svelte')),
  share: withWords(() => import('./ShareDialog.svelte')),
  export: withWords(() => import('../exports/ExportDialog.svelte')),
  help: withWords(() => import('./HelpDialog.svelte')),
  settings: withWords(() => import('./SettingsDialog.svelte')),
  glossary: withWords(() => import('./GlossaryDialog.svelte')),
  ideas: withWords(() => import('./IdeasDialog.svelte')),
  lessons: withWords(() => import('../lessons/LessonsDialog.svelte')),
  palette: withWords(() => import('../palette/PaletteDialog.svelte')),
  steps: withWords(() => import('../steps/StepsDialog.svelte')),
  layers: withWords(() => import('../layers/LayersDialog.svelte')),
  gap: withWords(() => import('../arrange/GapDialog.svelte')),
  repeat: withWords(() => import('../arrange/RepeatDialog.svelte'))
} as const;

export type DialogName = keyof typeof DIALOGS;

/** Opens a dialog in place of the one that is open, if any. */
export type OpenDialog = (name: DialogName) => void;

export const [useDialogs, provideDialogs] = createContext<OpenDialog>();
