import { loadMessages } from '#i18n/load';
import { spokenLanguage } from '#i18n/message';

/** A part of the page that is loaded when it is first looked at, together with what it says. */
export const withWords =
  <M>(load: () => Promise<M>): (() => Promise<M>) =>
  async () => {
    const [part] = await Promise.all([load(), loadMessages(spokenLanguage(), ['views'])]);
    return part;
  };
