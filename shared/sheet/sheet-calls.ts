// The spreadsheet's own functions that formulas may call: every engine knows them, and none of them asks anybody outside the file.

/** Take whole ranges; a blank text in them does no harm. */
export const RANGE_CALLS: readonly string[] =
  "SUM COUNT MAX MAXIFS MIN AVERAGE SUMIF SUMIFS COUNTIF COUNTIFS SUMPRODUCT INDEX LOOKUP MATCH VLOOKUP ROWS SMALL MEDIAN COUNTA COLUMN TEXTJOIN".split(
    " ",
  );

/** Do a sum with what they are given, like an operator. */
export const ARITHMETIC_CALLS: readonly string[] =
  "ROUND ROUNDUP ROUNDDOWN INT ABS MOD CEILING FLOOR MROUND SQRT POWER TAN YEAR MONTH DAY DATE".split(" ");

export const OTHER_CALLS: readonly string[] =
  "IF IFERROR ISERROR AND OR NOT LEN SWITCH ARRAYFORMULA CHAR N TRUE FALSE ISNUMBER ISTEXT ISFORMULA ERROR.TYPE ADDRESS UNICHAR SEARCH FIND LEFT MID RIGHT LOWER TRIM SUBSTITUTE VALUE PI MMULT ROW TRANSPOSE".split(
    " ",
  );
