type Composer = { numberComposerContent(value: number, format: string | undefined, locale: object): string };

/** A percentage in the formula bar is its cell's number times 100, which has a tail of digits now and then: 58 % is 57.99999999999999. */
export function tidyPercent(store: unknown): void {
  const composer = (store as { prototype: Composer }).prototype;
  const content = composer.numberComposerContent;
  if (content === undefined) throw new Error("The grid shows numbers in the formula bar in another way now");
  composer.numberComposerContent = function (value, format, locale) {
    if (!format?.includes("%")) return content.call(this, value, format, locale);
    // Twelve digits are more than anybody types, and fewer than a product is sure of.
    return `${content.call(this, Number((value * 100).toPrecision(12)), undefined, locale)}%`;
  };
}
