/** Files that people hand to each other: saved by a download, read from an entry for files. */

/** Saves a text under a name, where the browser keeps downloads. */
export function saveFile(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser takes the address up after this task; a minute is more than any needs.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A file as text, and nothing when it is larger than any that people here hand to each other. */
export async function readFile(file: File, mostBytes = 32_000_000): Promise<string | undefined> {
  return file.size > mostBytes ? undefined : file.text();
}
