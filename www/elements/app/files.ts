/** Hands a text to the person as a file. */
export function saveFile(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = name;
  link.click();
  setTimeout(() => { URL.revokeObjectURL(link.href); }, 10_000);
}

/** A name for a build's file that every system takes. */
export function fileName(build: string): string {
  const plain = build.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '');
  return `${plain === '' ? 'build' : plain}.tagstrip.json`;
}

/** Copies a text; false where the browser does not let us. */
export async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
