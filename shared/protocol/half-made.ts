// What a build says where its sheet can be neither finished nor removed.

export const halfMade = (sheet: string): string =>
  `The half-made sheet “${sheet}” is left: delete it, then build again.`;

/** Whether a sentence of the add-on says so. */
export const tellsOfHalfMade = (sentence: string): boolean =>
  /The half-made sheet “.*” is left: delete it/s.test(sentence);
