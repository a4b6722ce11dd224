import vm from "node:vm";
import { describe, expect, test } from "vitest";
import { asciiScript, checkAscii, checkPage, withoutMarkup } from "../../src/build/plain-text.ts";

const valueIn = (script: string): unknown => vm.runInNewContext(script);

describe("a script without what a server takes for markup", () => {
  test.each([
    ["a text with two slashes", '"http://a"', "http://a"],
    ["a text with an escaped slash before another", String.raw`"a\//b"`, "a//b"],
    ["a text with a backslash before two slashes", String.raw`"a\\//b"`, "a\\//b"],
    ["three slashes", '"///"', "///"],
    ["the beginning of a comment", '"/* a */"', "/* a */"],
    ["a tag", '"<!-- <? <script></script>"', "<!-- <? <script></script>"],
    ["a regular expression that ends with a slash", String.raw`/a\//.exec("xa/")[0]`, "a/"],
    ["a regular expression of a slash, repeated", String.raw`/\/*$/.exec("a//")[0]`, "//"],
    ["a class with a slash before its star", '"a/b*c".split(/[/*]/).join("")', "abc"],
    ["a class with two slashes", String.raw`/[\//]+/.exec("a//b")[0]`, "//"],
    ["an optional angle", '/a<?b/.test("ab")', true],
    ["a look behind", '/(?<!a)b/.exec("cb")[0]', "b"],
  ])("%s means what it meant", (_, script, value) => {
    expect(valueIn(script)).toBe(value);
    const plain = withoutMarkup(script);
    expect(valueIn(plain)).toBe(value);
    expect(/\/\/|\/\*|<!--|<\?|<\/?script/.exec(plain)).toBeNull();
  });
});

test("letters outside ASCII and control characters become escapes with the same value", () => {
  const text = "½ cup jalapeño – \u0001\u2028 🍞";
  const plain = asciiScript(JSON.stringify(text));
  expect(plain).toMatch(/^[ -~]+$/);
  expect(valueIn(plain)).toBe(text);
});

describe("what cannot be mended stops the build", () => {
  test.each(["//", "/*", "<!--", "<?"])("a page with %s below its first lines", (sign) => {
    expect(() => checkPage(`<!-- what it is -->\n<p>${sign}</p>`)).toThrow(`sidebar.html holds ${sign}`);
  });
  test("a letter outside ASCII", () => {
    expect(() => checkAscii("Code.js", 'var a = "½"')).toThrow("Code.js holds U+00bd");
  });
});
