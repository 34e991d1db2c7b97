/** The browser's side of `files.ts`. */
import { t } from '#i18n/message';
import type { FileContent, FileHandle, FileHost } from './files';
import { handOver } from './hand-over';

interface PickerWindow {
  showOpenFilePicker?: (options: object) => Promise<FileHandle[]>;
  showSaveFilePicker?: (options: object) => Promise<FileHandle>;
}

const types = () => [{ description: t('read.fileType'), accept: { 'application/json': ['.json'] } }];

function chooseByField(): Promise<FileContent | null> {
  return new Promise((resolve) => {
    const field = document.createElement('input');
    field.type = 'file';
    field.accept = '.json,application/json';
    field.hidden = true;
    const answer = (file: File | null) => {
      field.remove();
      resolve(file);
    };
    field.addEventListener('change', () => {
      answer(field.files?.[0] ?? null);
    });
    field.addEventListener('cancel', () => {
      answer(null);
    });
    // Off the page it is swept up as garbage while the person still looks for the file.
    document.body.append(field);
    field.click();
  });
}

/** The pickers are looked up at each use. */
export function browserFileHost(): FileHost {
  const { showOpenFilePicker, showSaveFilePicker } = window as unknown as PickerWindow;
  return {
    pickToOpen: showOpenFilePicker
      ? async () => {
          const [handle] = await showOpenFilePicker.call(window, { types: types(), multiple: false });
          if (!handle) throw new DOMException('Nothing was chosen.', 'AbortError');
          return handle;
        }
      : null,
    pickToSave: showSaveFilePicker
      ? (suggestedName) => showSaveFilePicker.call(window, { types: types(), suggestedName })
      : null,
    chooseByField,
    download: (text, name) => {
      handOver(text, name, 'application/json');
    }
  };
}
