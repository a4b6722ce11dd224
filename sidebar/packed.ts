/** JSON that the build deflated and wrote in letters, as it was. Throws where the browser cannot unpack. */
export async function unpacked(text: string): Promise<unknown> {
  const letters = text.replace(/-/g, "+").replace(/_/g, "/");
  const bytes = Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return JSON.parse(await new Response(stream).text());
}
