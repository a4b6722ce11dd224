/** Hands a file to the person; the browser asks where it goes, or puts it with the other downloads. */
export function download(file: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  // The browser reads it a moment after the click.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
