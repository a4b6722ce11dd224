/** By this a kept workbook is known, as in keep.ts. */
export async function revisionOf(file: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(file)));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
