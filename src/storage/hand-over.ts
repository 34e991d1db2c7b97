/** Gives a file to the browser's downloads. */
export function handOver(content: BlobPart, name: string, mediaType: string): void {
  const address = URL.createObjectURL(new Blob([content], { type: mediaType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers start reading only after the click has been handled.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 60_000);
}
