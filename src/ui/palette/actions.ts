/** Everything that can be done, from the drawing's commands and the page's, ready to be listed. */
import { commands } from '#editor/commands/index';
import { t } from '#i18n/message';
import type { Clipboard } from '../clipboard/clipboard';
import { pageCommands, type Desk, type PageCommandId, type PageCommandName } from '../commands';
import { commandLabel } from '../keys';
import type { SampleName } from '../samples';
import type { ViewName } from '../settings';

export interface Action {
  readonly id: string;
  readonly label: string;
  readonly keys: readonly string[];
  readonly isPossible: boolean;
  readonly run: () => void;
}

export function pageLabel(id: PageCommandId): string {
  if (id.startsWith('view-'))
    return t('action.view', { view: t(`view.${id.slice('view-'.length) as ViewName}`) });
  if (id.startsWith('sample-'))
    return t('action.sample', { sample: t(`sample.${id.slice('sample-'.length) as SampleName}`) });
  return t(`action.${id as PageCommandName}`);
}

const CLIPBOARD = new Set(['copy', 'cut', 'paste', 'paste-in-place']);

/** `clipboard`: the system's, which a menu must ask for while a key is given it. */
export function actionsOf(desk: Desk, clipboard: Clipboard): readonly Action[] {
  const { editor, state } = desk.bench;
  return [
    ...commands.map((command): Action => ({
      id: command.id,
      label: commandLabel(command),
      keys: command.keys,
      isPossible: command.applies(state),
      run: () => {
        if (CLIPBOARD.has(command.id)) void clipboard.run(command.id);
        else editor.run(command.id);
      }
    })),
    ...pageCommands.map((command): Action => ({
      id: `page-${command.id}`,
      label: pageLabel(command.id),
      keys: command.keys,
      isPossible: command.applies(desk),
      run: () => {
        command.run(desk);
      }
    }))
  ];
}
