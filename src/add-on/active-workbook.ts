/** The workbook that the add-on was opened in, the only one it may touch. */
export const activeWorkbook = (): GoogleAppsScript.Spreadsheet.Spreadsheet => SpreadsheetApp.getActiveSpreadsheet();
