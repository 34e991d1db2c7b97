import document from '../../samples/stop-line-two-lanes.kerfline.json';
import { type Site, site } from './schema';

/** The finished site on which the page opens the first time. */
export const demoSite = (): Site => site.parse(document);
