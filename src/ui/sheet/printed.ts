/** What the browser prints: the pages of the sheet at their true size, and nothing of the page around them. */
import type { Page, Sheet } from '#exchange/sheet/page';
import { t } from '#i18n/message';
import { pageElement } from './page-drawing';
import always from './printed.css?inline';

type Paper = Pick<Page, 'width' | 'height'>;

const ID = 'printed-sheet';

let rules: CSSStyleSheet | null = null;

/** Rules that only hold on paper, and on the screen keep what is to be printed out of sight. */
function rulesFor(paper: Paper | null): CSSStyleSheet {
  const made = new CSSStyleSheet();
  made.replaceSync(always);
  if (paper) {
    const [width, height] = [`${paper.width}mm`, `${paper.height}mm`];
    made.insertRule(`@page{size:${width} ${height};margin:0}`);
    made.insertRule(`@media print{#${ID}>svg{width:${width};height:${height}}}`, made.cssRules.length);
  }
  return made;
}

function show(content: readonly Node[], paper: Paper | null): void {
  clearPrint();
  const place = document.createElement('div');
  place.id = ID;
  place.ariaHidden = 'true';
  place.append(...content);
  document.body.append(place);
  rules = rulesFor(paper);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
}

export function layOutPages(pages: readonly Page[]): void {
  const named = pages.map((page, index) =>
    pageElement(page, t('sheetView.page', { number: index + 1, count: pages.length, title: page.title }))
  );
  show(named, pages[0] ?? null);
}

/** In place of a sheet that there is not: why. */
function layOutSentence(sentence: string): void {
  const paragraph = document.createElement('p');
  paragraph.textContent = sentence;
  show([paragraph], null);
}

/**
 * For the browser's own print, which waits for nothing. What is laid out already stays, such as what a command has composed.
 * `sheetNow`: what there is at this moment, null while its figures are on their way.
 */
export function layOutInTime(sheetNow: () => Sheet | null): void {
  if (document.getElementById(ID)) return;
  const sheet = sheetNow();
  if (sheet?.kind === 'pages') layOutPages(sheet.pages);
  else layOutSentence(sheet?.message ?? t('sheetView.printLater'));
  addEventListener('afterprint', clearPrint, { once: true });
}

export function clearPrint(): void {
  document.getElementById(ID)?.remove();
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== rules);
}
