/**
 * The bytes of pictures made ready to be drawn, off the main path: each is decoded once, with smaller versions beside it
 * for views from afar, and let go when it is no longer on the plan.
 */
import type { Picture, Underlay } from '#plan/schema';
import type { Pictures, PictureState } from '#scenes/pictures';

/** Versions, and the side in pixels below which none is made any more. */
const MOST_VERSIONS = 4;
const COARSEST = 512;
/** Characters of base64 that are read in one go: a few milliseconds. A multiple of four, where bytes begin. */
const PORTION = 1_048_576;

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Rejects with a DOMException for what is not base64. */
async function bytesOf({ data }: Picture): Promise<Uint8Array<ArrayBuffer>[]> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  for (let from = 0; from < data.length; from += PORTION) {
    const text = atob(data.slice(from, from + PORTION));
    const bytes = new Uint8Array(text.length);
    for (let index = 0; index < text.length; index++) bytes[index] = text.charCodeAt(index);
    parts.push(bytes);
    await pause();
  }
  return parts;
}

/** Rejects when the bytes are no picture. */
async function versionsOf(picture: Picture): Promise<ImageBitmap[]> {
  const blob = new Blob(await bytesOf(picture), { type: picture.mediaType });
  const versions = [await createImageBitmap(blob)];
  for (let last = versions[0]!; versions.length < MOST_VERSIONS; last = versions.at(-1)!) {
    const [resizeWidth, resizeHeight] = [last.width / 2, last.height / 2].map(Math.round) as [number, number];
    if (Math.max(resizeWidth, resizeHeight) < COARSEST || Math.min(resizeWidth, resizeHeight) < 1) break;
    versions.push(await createImageBitmap(last, { resizeWidth, resizeHeight, resizeQuality: 'medium' }));
  }
  return versions;
}

export interface PictureKeeper {
  /** Begins to make ready what is new among these, and lets go of the rest. */
  show(underlays: readonly Underlay[]): void;
  destroy(): void;
}

/** `onChange` is told whenever a picture is ready, broken or gone. */
export function createPictureKeeper(onChange: (pictures: Pictures) => void): PictureKeeper {
  let pictures = new Map<Picture, PictureState>();
  let shown: readonly Underlay[] = [];

  function drop(picture: Picture): void {
    const state = pictures.get(picture);
    pictures.delete(picture);
    if (state?.kind === 'ready') for (const version of state.versions) version.close();
  }

  function settle(picture: Picture, state: PictureState): void {
    pictures = new Map(pictures).set(picture, state);
    onChange(pictures);
  }

  function begin(picture: Picture): void {
    pictures.set(picture, { kind: 'waiting' });
    versionsOf(picture).then(
      (versions) => {
        if (pictures.has(picture)) settle(picture, { kind: 'ready', versions });
        else for (const version of versions) version.close();
      },
      () => {
        if (pictures.has(picture)) settle(picture, { kind: 'broken' });
      }
    );
  }

  return {
    show(underlays) {
      if (underlays === shown) return;
      shown = underlays;
      const wanted = new Set(underlays.flatMap(({ picture }) => (picture ? [picture] : [])));
      const gone = [...pictures.keys()].filter((picture) => !wanted.has(picture));
      const fresh = [...wanted].filter((picture) => !pictures.has(picture));
      if (gone.length + fresh.length === 0) return;
      pictures = new Map(pictures);
      gone.forEach(drop);
      fresh.forEach(begin);
      onChange(pictures);
    },
    destroy() {
      [...pictures.keys()].forEach(drop);
    }
  };
}
