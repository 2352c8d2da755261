/** Hands it to the browser as a file to keep. */
export const saveFile = (name: string, content: BlobPart, type = 'application/json'): void => {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
};
