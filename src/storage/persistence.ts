/** Asks the browser not to clear what is kept when it needs room. Worth asking only once there is work to keep. */
export function askToPersist(): void {
  // Missing where the page is not served securely; a refusal changes nothing that the page could do.
  const manager = navigator.storage as StorageManager | undefined;
  manager?.persist().catch(() => undefined);
}
