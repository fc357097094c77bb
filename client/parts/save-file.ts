/** Has the browser save what was made on this page. */
export function saveFile(file: Blob, name: string): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken hold of the file by the next turn.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}
