/** Pictures that tests draw themselves: an invented junction as PNG, and the smallest PDF with pages of their own. */
import type { Page } from '@playwright/test';
import { crc32, deflateSync } from 'node:zlib';

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

type Colour = readonly [number, number, number];

export function png(width: number, height: number, colourAt: (x: number, y: number) => Colour): Buffer {
  const rows = Buffer.alloc(height * (1 + 3 * width));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) rows.set(colourAt(x, y), y * (1 + 3 * width) + 1 + 3 * x);
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0))
  ]);
}

const GRASS: Colour = [104, 132, 84];
const ROAD: Colour = [96, 98, 102];
const PAINT: Colour = [240, 240, 236];

/** Two lanes that run upwards to a crossing road, with a stop line across both and a line between them. */
export const junction = (width = 600, height = 400): Buffer =>
  png(width, height, (x, y) => {
    const along = x / width;
    const down = y / height;
    const isApproach = along > 0.35 && along < 0.65;
    if (isApproach && down > 0.42 && down < 0.45) return PAINT;
    if (isApproach && down > 0.45 && Math.abs(along - 0.5) < 0.004 && y % 24 < 14) return PAINT;
    return isApproach || (down > 0.12 && down < 0.4) ? ROAD : GRASS;
  });

/** Pages of 300 × 200 points, each with a filled bar so wide as its number says. */
export function pdf(pages: number): Buffer {
  const contents = Array.from({ length: pages }, (_, index) => `0.2 g 20 80 ${60 * (index + 1)} 40 re f`);
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    `<< /Type /Pages /Count ${pages} /Kids [${contents.map((_, index) => `${3 + 2 * index} 0 R`).join(' ')}] >>`,
    ...contents.flatMap((content, index) => [
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 300 200] /Contents ${4 + 2 * index} 0 R /Resources << >> >>`,
      `<< /Length ${content.length} >>\nstream\n${content}\nendstream`
    ])
  ];
  return pdfOf(objects);
}

function pdfOf(objects: readonly string[]): Buffer {
  let text = '%PDF-1.5\n';
  const places = objects.map((object, index) => {
    const place = text.length;
    text += `${index + 1} 0 obj\n${object}\nendobj\n`;
    return place;
  });
  const table = places.map((place) => `${String(place).padStart(10, '0')} 00000 n \n`).join('');
  const start = text.length;
  const size = objects.length + 1;
  text += `xref\n0 ${size}\n0000000000 65535 f \n${table}trailer\n<< /Size ${size} /Root 1 0 R >>\nstartxref\n${start}\n%%EOF\n`;
  return Buffer.from(text, 'latin1');
}

/** Red and blue side by side, 200 × 100 pixels, as JPEG 2000: what many scanned plans are packed in. */
const SCAN = Buffer.from(
  'AAAADGpQICANCocKAAAAFGZ0eXBqcDIgAAAAAGpwMiAAAAAtanAyaAAAABZpaGRyAAAAZAAAAMgAAwcHAAAAAAAPY29scgEAAAAAABAAAAH1anAyY/9P/1EALwAAAAAAyAAAAGQAAAAAAAAAAAAAAMgAAABkAAAAAAAAAAAAAwcBAQcBAQcBAf9SAAwAAAABAAUEBAAB/1wAE0BASEhQSEhQSEhQSEhQSEhQ/2QAJQABQ3JlYXRlZCBieSBPcGVuSlBFRyB2ZXJzaW9uIDIuNS40/5AACgAAAAABbgAB/5PPtGQUACrQ783Tfu8BI2jXFz2iqAZ32jM8o4rpz7RYEVBCbR6HjGZaTgAwjNnwgowtH2H8Uc+0VBFQItDlrqIANdgBjxFAdHimcKa8D8faEAAhbdklpNJN18HzhwAiGbvOGmOPx9oSACIanBmoVxL/f8faFgAw0acqr9SJvbK6D8HziAAxfah9G3agn8faFAAxfak+e0ddyIv5w+oRAE+XxRY8XHE5ueHTP39490PuwfOHAFBDxyuuIIPD6hQAUEPHFjxca9k54ncgDCNyJLFsPu/H2jAAg+2vZkMQJAufTxF6qr+QXhEmGLW66sQ/wfOOAIPCruZCujjJ8iwDCQl/x9osAIPCruZ/XUPLmw0BjI53R5hCML+GEg/j9o2Anooxz/7D0F+wAADCQhrSYSES8eMJCIA8GEhH4PzjwJ5fMU//f5FW/gAAAAYSD+P2iACeXzFP/sPQX7AAAMJCX/9//9k=',
  'base64'
);

/** A page of 300 × 200 points that is a scan from edge to edge. */
export function scannedPdf(): Buffer {
  const content = 'q 300 0 0 200 0 0 cm /Scan Do Q';
  return pdfOf([
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Count 1 /Kids [3 0 R] >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 300 200] /Contents 4 0 R /Resources << /XObject << /Scan 5 0 R >> >> >>',
    `<< /Length ${content.length} >>\nstream\n${content}\nendstream`,
    `<< /Type /XObject /Subtype /Image /Width 200 /Height 100 /Filter /JPXDecode /Length ${SCAN.length} >>\nstream\n${SCAN.toString('latin1')}\nendstream`
  ]);
}

export async function dropFile(page: Page, name: string, type: string, bytes: Buffer): Promise<void> {
  const transfer = await page.evaluateHandle(
    ([title, kind, text]) => {
      const data = new DataTransfer();
      const content = Uint8Array.from(atob(text!), (character) => character.charCodeAt(0));
      data.items.add(new File([content], title!, { type: kind! }));
      return data;
    },
    [name, type, bytes.toString('base64')]
  );
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
}

/** Everything that is drawn on the plan, without the buttons over it: their rounded corners never come out twice alike. */
export const drawingOnPlan = (page: Page): Promise<string> =>
  page
    .locator('[role="application"] canvas')
    .evaluateAll((layers) => layers.map((layer) => (layer as HTMLCanvasElement).toDataURL()).join());

/** The colour in the middle of the plan as it is on the screen, or at a place from there. */
export async function colourOnPlan(page: Page, [x, y]: readonly [number, number]): Promise<Colour> {
  return page.evaluate(
    ([dx, dy]) => {
      const layers = [...document.querySelectorAll<HTMLCanvasElement>('[role="application"] canvas')];
      const [ground] = layers;
      if (!ground) throw new Error('no plan');
      const ratio = ground.width / ground.clientWidth;
      const place = [ground.width / 2 + dx! * ratio, ground.height / 2 + dy! * ratio] as const;
      const [red, green, blue] = ground.getContext('2d')!.getImageData(...place, 1, 1).data;
      return [red!, green!, blue!] as const;
    },
    [x, y]
  );
}
