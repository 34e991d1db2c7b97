/** The pages of a PDF as pictures. Everything that draws them stands here and is loaded when a PDF comes in. */
import {
  getDocument,
  GlobalWorkerOptions,
  VerbosityLevel,
  type PDFDocumentProxy
} from 'pdfjs-dist/legacy/build/pdf.mjs';
import workerAddress from 'pdfjs-dist/legacy/build/pdf.worker.min.mjs?url';
import decoderAddress from 'pdfjs-dist/wasm/openjpeg_nowasm_fallback.js?url';
import { t } from '#i18n/message';

export interface Pages {
  readonly count: number;
  /** A page, counted from 1, whose longer side has so many pixels. Rejects when it cannot be drawn. */
  draw(page: number, side: number): Promise<ImageBitmap>;
  close(): void;
}

type Opening = { readonly ok: true; readonly pages: Pages } | { readonly ok: false; readonly reason: string };

async function draw(document: PDFDocumentProxy, number: number, side: number): Promise<ImageBitmap> {
  const page = await document.getPage(number);
  const natural = page.getViewport({ scale: 1 });
  const viewport = page.getViewport({ scale: side / Math.max(natural.width, natural.height) });
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(viewport.width)),
    Math.max(1, Math.round(viewport.height))
  );
  const context = canvas.getContext('2d') as unknown as CanvasRenderingContext2D;
  await page.render({ canvas: null, canvasContext: context, viewport, background: '#ffffff' }).promise;
  page.cleanup();
  return canvas.transferToImageBitmap();
}

/** Never rejects. Nothing in the PDF runs, and nothing is fetched for it. */
export async function openPages(file: Blob): Promise<Opening> {
  GlobalWorkerOptions.workerSrc = workerAddress;
  const task = getDocument({
    data: new Uint8Array(await file.arrayBuffer()),
    verbosity: VerbosityLevel.ERRORS,
    // The page's policy allows neither texts as programs nor WebAssembly; letters are drawn as shapes.
    isEvalSupported: false,
    useWasm: false,
    // A folder, to which a file's name is added: behind the mark that browsers leave out it does no harm.
    wasmUrl: `${new URL(decoderAddress, location.href).href}#/`,
    disableFontFace: true,
    useSystemFonts: false,
    isOffscreenCanvasSupported: true,
    stopAtErrors: false
  });
  try {
    const document = await task.promise;
    return {
      ok: true,
      pages: {
        count: document.numPages,
        draw: (page, side) => draw(document, page, side),
        close: () => void task.destroy()
      }
    };
  } catch (problem) {
    void task.destroy();
    const isLocked = problem instanceof Error && problem.name === 'PasswordException';
    return { ok: false, reason: t(isLocked ? 'underlay.password' : 'underlay.damagedPdf') };
  }
}
