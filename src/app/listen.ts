/** Listens until the returned function is called. */
export function listen(target: EventTarget, type: string, listener: (event: Event) => void): () => void {
  target.addEventListener(type, listener);
  return () => {
    target.removeEventListener(type, listener);
  };
}
