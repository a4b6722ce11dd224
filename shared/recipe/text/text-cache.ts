// Answers kept by the text they are about: lines come again with every keystroke, and recipes repeat theirs.

/** The same function, which works a text out once; so many texts are kept. */
export function cachedByText<T>(make: (text: string) => T, most = 3000): (text: string) => T {
  const known = new Map<string, { readonly value: T }>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before.value;
    const value = make(text);
    if (known.size >= most) known.clear();
    known.set(text, { value });
    return value;
  };
}
