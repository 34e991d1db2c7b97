/** The browser's side of `files.ts`. */
import { t } from '#i18n/message';
import type { FileContent, FileHandle, FileHost } from './files';

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
    field.addEventListener('change', () => {
      resolve(field.files?.[0] ?? null);
    });
    field.addEventListener('cancel', () => {
      resolve(null);
    });
    field.click();
  });
}

function download(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers start reading only after the click has been handled.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
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
    download
  };
}
