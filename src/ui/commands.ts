/**
 * What the page itself can do, beside what the editor does with the drawing. Keys, palette, context menu and help all read
 * this list; what each is called stands in `palette/actions.ts`, which is only loaded where somebody reads it.
 */
import { t } from '#i18n/message';
import { updateSite } from '#plan/edits/index';
import type { KeyInput } from '#editor/types';
import { keyText } from '#editor/commands/key';
import type { Bench } from './bench';
import { commitField } from './details/commit';
import type { OpenDialog } from './dialogs/registry';
import { withWords } from './parts/with-words';
import { SAMPLES, type SampleName } from './samples';
import { VIEWS, type ViewName } from './settings';

/** What a page command may work with. */
export interface Desk {
  readonly bench: Bench;
  readonly open: OpenDialog;
}

export type PageCommandName =
  | 'new'
  | 'open'
  | 'save'
  | 'save-copy'
  | 'share'
  | 'import'
  | 'export'
  | 'print'
  | 'lessons'
  | 'keep-variant'
  | 'palette'
  | 'steps'
  | 'layers'
  | 'settings'
  | 'help'
  | 'glossary'
  | 'ideas'
  | 'unit-system';

export type PageCommandId = PageCommandName | `view-${ViewName}` | `sample-${SampleName}`;

export interface PageCommand {
  readonly id: PageCommandId;
  /** As for the editor's commands. With Control, or a function key, they work in text fields too. */
  readonly keys: readonly string[];
  readonly applies: (desk: Desk) => boolean;
  readonly run: (desk: Desk) => void;
}

const always = (): boolean => true;

const dialog = (name: Parameters<OpenDialog>[0], ...keys: readonly string[]): PageCommand => ({
  id: name as PageCommandName,
  keys,
  applies: always,
  run: ({ open }) => {
    open(name);
  }
});

const canSave = ({ bench }: Desk): boolean => bench.keeping.tenure !== 'newer';

export const pageCommands: readonly PageCommand[] = [
  dialog('new'),
  dialog('open', 'Control+O'),
  {
    id: 'save',
    keys: ['Control+S'],
    applies: canSave,
    run: ({ bench }) => {
      void bench.saveFile();
    }
  },
  {
    id: 'save-copy',
    keys: ['Control+Shift+S'],
    applies: canSave,
    run: ({ bench }) => {
      void bench.saveFile(true);
    }
  },
  dialog('share'),
  { ...dialog('import'), applies: ({ bench }) => !bench.state.isReadOnly },
  dialog('export', 'Control+E'),
  {
    id: 'print',
    keys: ['Control+P'],
    applies: ({ bench }) => bench.assessment !== null,
    run: ({ bench }) => {
      withWords(() => import('./sheet/print'))().then(
        ({ printNow, paperInSight }) => printNow(bench, paperInSight(bench)),
        () => {
          bench.editor.say(t('view.missing'));
        }
      );
    }
  },
  dialog('palette', 'Control+K'),
  { ...dialog('steps'), applies: ({ bench }) => bench.state.undoLabel !== null },
  dialog('layers'),
  dialog('settings'),
  dialog('help', '?', 'F1'),
  dialog('glossary'),
  dialog('ideas'),
  dialog('lessons'),
  {
    id: 'keep-variant',
    keys: [],
    applies: ({ bench }) => !bench.state.isReadOnly,
    run({ bench }) {
      bench.change({ view: 'compare', compareMode: 'designs', isLowerPanelOpen: true });
      void import('./compare/designs/choices.svelte').then(({ choices }) => {
        choices.isNaming = true;
      });
    }
  },
  {
    id: 'unit-system',
    keys: [],
    applies: ({ bench }) => !bench.state.isReadOnly,
    run({ bench }) {
      const { site } = bench.state;
      const displayUnits = site.displayUnits === 'metric' ? 'imperial' : 'metric';
      const about = { field: t('site.units'), subject: t('site.subject') };
      commitField(bench, about, (before) => updateSite(before, { displayUnits }));
    }
  },
  ...VIEWS.map((view): PageCommand => ({
    id: `view-${view}`,
    keys: [],
    applies: always,
    run: ({ bench }) => {
      bench.change({ view, isLowerPanelOpen: true });
    }
  })),
  ...SAMPLES.map((sample): PageCommand => ({
    id: `sample-${sample}`,
    keys: [],
    applies: always,
    run: ({ bench }) => {
      bench.openSample(sample).catch(() => {
        bench.editor.say(t('notice.sampleFailed'));
      });
    }
  }))
];

const byKey = new Map(pageCommands.flatMap((command) => command.keys.map((key) => [key, command] as const)));

export const pageCommandForKey = (input: KeyInput): PageCommand | null => byKey.get(keyText(input)) ?? null;

/** Whether a press may be a page command although a text field has the focus. */
export const worksInFields = ({ key, control }: Pick<KeyInput, 'key' | 'control'>): boolean =>
  control || /^F\d+$/.test(key);
