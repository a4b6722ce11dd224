/** By this a file says what it holds. */
export const KIND = "gramwright workbook 1";

/** The text of a kept file, from its workbook as JSON; the page knows by it whether a save is in the file. */
export const keptText = (json: string): string => `{"kind":"${KIND}","data":${json}}`;
