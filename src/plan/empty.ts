import { t } from '#i18n/message';
import { type Site, site } from './schema';

/** A site with nothing on it, every default filled in. */
export const emptySite = (name = t('site.untitled')): Site =>
  site.parse({ format: 'kerfline-site', version: 1, name });
