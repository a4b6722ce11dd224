// What is said where no answer to a build came in time.
export const SHEET_ON_ITS_WAY = "The sheet may still be on its way: look at the tabs under the grid.";
