/** Runs when the page is prerendered, and nowhere else. */
import type { Handle } from '@sveltejs/kit';

/** Of the page itself and of its layout; named by the number of their node. */
const OF_THE_PAGE = /\/\d+\.[\w-]+\.css"/;

/**
 * Kit links the styles of everything that the page may ever load, which holds the first readout up. What is loaded when
 * it is first looked at brings its styles along.
 */
export const handle: Handle = ({ event, resolve }) =>
  resolve(event, {
    transformPageChunk: ({ html }) =>
      html.replace(/[ \t]*<link href="[^"]+" rel="stylesheet">\n?/g, (link) =>
        OF_THE_PAGE.test(link) ? link : ''
      )
  });
