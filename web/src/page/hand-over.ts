/** Hands a file that was made here to the reader, among the browser's downloads. */
export function handOver(file: Blob, fileName: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The browser reads the file after the click; give it a minute before the memory is freed.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
