/** The browser needs the address of a file until it has begun to save it. */
const SAVING_MS = 60_000;

/** Hands the person a file of that name and type. */
export function saveFile(name: string, content: string | Blob, type: string): void {
  const url = URL.createObjectURL(typeof content === "string" ? new Blob([content], { type }) : content);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), SAVING_MS);
}
