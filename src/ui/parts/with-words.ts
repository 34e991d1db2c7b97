import { loadMessages } from '#i18n/load';
import { spokenLanguage } from '#i18n/message';

/** A part of the page that is loaded when it is first looked at, together with what it says. */
export const withWords =
  <M>(load: () => Promise<M>): (() => Promise<M>) =>
  async () => {
    const [part] = await Promise.all([load(), loadMessages(spokenLanguage(), ['views'])]);
    return part;
  };

/** Null for a part that cannot be had, of which `onMissing` is told. */
export async function had<M>(part: Promise<M>, onMissing: () => void): Promise<M | null> {
  try {
    return await part;
  } catch {
    onMissing();
    return null;
  }
}
