// Draws the icons of the installed program from static/icon.svg; run it again when that one changes.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { launchOptions } from './browser.mjs';
import { ROOT } from './fingerprint.mjs';

const drawing = readFileSync(join(ROOT, 'static/icon.svg'), 'utf8');

// A system may cut a maskable icon down to a circle of four fifths of its side: the ground goes to the edge, the sign
// stays well inside.
const maskable = drawing
  .replace(/<rect[^>]*\/>/, '<rect x="-13" y="-13" width="90" height="90" fill="#23303a" />')
  .replace('viewBox="0 0 64 64"', 'viewBox="-13 -13 90 90"');

const browser = await chromium.launch(launchOptions());
for (const [name, side, picture] of /** @type {const} */ ([
  ['icon-192.png', 192, drawing],
  ['icon-512.png', 512, drawing],
  ['icon-maskable-512.png', 512, maskable]
])) {
  const page = await browser.newPage({ viewport: { width: side, height: side } });
  const source = `data:image/svg+xml,${encodeURIComponent(picture)}`;
  await page.setContent(`<style>body{margin:0}img{display:block}</style><img width=${side} src="${source}">`);
  await page.screenshot({ path: join(ROOT, 'static', name), omitBackground: true });
  await page.close();
}
await browser.close();
