/** Calls back after `delay` seconds, unless the returned function is called before. */
export function after(delay: number, callback: () => void): () => void {
  const timer = setTimeout(callback, delay * 1000);
  return () => {
    clearTimeout(timer);
  };
}
