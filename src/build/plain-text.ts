// What the pushed files are made of: plain ASCII, in lines that an editor shows, with nothing that a server takes for a comment.

/** Longer lines make the script editor slow, and are hard to compare; esbuild breaks them where the language allows. */
export const LINE_LIMIT = 120;

const escaped = (code: number): string => `\\u${code.toString(16).padStart(4, "0")}`;

/** A script in ASCII: what is not becomes an escape, which texts and regular expressions both know. */
export const asciiScript = (script: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  script.replace(/[\u0000-\u0009\u000b-\u001f\u007f-\uffff]/g, (sign) => escaped(sign.charCodeAt(0)));

/** A backslash that is not itself escaped. */
const ESCAPE = String.raw`(?<!\\)((?:\\\\)*)\\`;

/**
 * The same script without the signs that HtmlService or a browser takes for comments and tags. The script must hold no comment
 * and no `String.raw`: then each of these stands in a text or in a regular expression, where an escape means the same.
 */
export function withoutMarkup(script: string): string {
  return script
    .replace(new RegExp(`${ESCAPE}/(?=[/*])`, "g"), (_, before: string) => `${before}\\x2f`)
    .replace(/\/(?=[/*])/g, "\\x2f")
    .replace(/<(?=!--|\?|\/?script)/gi, "\\x3c");
}

/** What may not stand in a page below its first lines, as pairs of what is looked for and its name. */
const REFUSED: readonly (readonly [RegExp, string])[] = [
  [/\/\//, "//"],
  [/\/\*/, "/*"],
  [/<!--/, "<!--"],
  [/<\?/, "<?"],
];

/** Throws where a page has something that the service would cut or refuse, naming it and what stands around it. */
export function checkPage(page: string): void {
  const below = page.slice(page.indexOf("-->") + 3);
  for (const [sign, name] of REFUSED) {
    const at = below.search(sign);
    if (at >= 0) throw new Error(`sidebar.html holds ${name}: ${below.slice(Math.max(0, at - 40), at + 40)}`);
  }
  checkAscii("sidebar.html", page);
}

export function checkAscii(name: string, text: string): void {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  const at = text.search(/[^\u000a\u0020-\u007e]/);
  if (at >= 0)
    throw new Error(`${name} holds U+${escaped(text.charCodeAt(at)).slice(2)}: ${text.slice(at - 40, at + 40)}`);
}
