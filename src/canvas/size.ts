/** Keeps the surface as large as its container and as fine as its screen. */

export interface SurfaceSize {
  readonly width: number;
  readonly height: number;
  readonly pixelRatio: number;
}

/** Calls back at once and whenever the size or the screen's pixels change; an invisible container has no size. */
export function watchSize(container: HTMLElement, changed: (size: SurfaceSize) => void): () => void {
  let last: SurfaceSize | null = null;
  let stopRatio = (): void => undefined;

  function measure(): void {
    const { clientWidth: width, clientHeight: height } = container;
    const pixelRatio = window.devicePixelRatio || 1;
    if (width === 0 || height === 0) return;
    if (last && last.width === width && last.height === height && last.pixelRatio === pixelRatio) return;
    last = { width, height, pixelRatio };
    watchRatio(pixelRatio);
    changed(last);
  }

  /** A window dragged to another screen changes its ratio without changing its size. */
  function watchRatio(ratio: number): void {
    stopRatio();
    const query = window.matchMedia(`(resolution: ${ratio}dppx)`);
    query.addEventListener('change', measure);
    stopRatio = () => {
      query.removeEventListener('change', measure);
    };
  }

  const observer = new ResizeObserver(measure);
  observer.observe(container);
  measure();
  return () => {
    observer.disconnect();
    stopRatio();
  };
}
