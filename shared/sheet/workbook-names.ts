// Names that the whole workbook knows: where one sheet's tables stand, for all the others.
/** Where the shop's ingredient table stands; formulas of any sheet say it as it is. */
export const LARDER_NAME = "gramwright_larder";
/** What is answered where a question needs the ingredient sheet. */
export const NO_LARDER_SHEET = "There is no ingredient sheet in this workbook yet. Build it first, in Plan.";
/** What labels and advice read of it: nothing there changes with a price. */
export const LABELS_NAME = "gramwright_labels";
/** What formula sheets read of it beside the names there: prices by weight and by the piece, in the same rows. */
export const PRICES_NAME = "gramwright_prices";
/** Where every formula sheet has a row, so that all of them are read at once. */
export const LIST_NAME = "gramwright_formulas";
/** Where the sheet of label texts that was built last has its table, for the file that a label printer reads. */
export const LABEL_TEXT_NAME = "gramwright_labeltext";
/** Where the shop's settings stand; the sidebar begins new formulas with them. */
export const SETTINGS_NAME = "gramwright_settings";
/** Where the allergen table that was built last has what it says now, with the product in front, and beside it what stood on the last print. */
export const PRINTED_NAME = "gramwright_printed";
/** Where prices stand that are not the shop's: for whom, product, size, price and the tax in it. */
export const PRICE_LISTS_NAME = "gramwright_pricelists";
/** Which customer pays by which of those lists. */
export const CUSTOMERS_NAME = "gramwright_customers";
/** Where the first bake log has its rows, from the product to the pieces sold. */
export const BAKELOG_NAME = "gramwright_bakelog";
/** Where the lots of all mixes stand. */
export const LOTS_NAME = "gramwright_lots";
/** Where customers' regular orders stand, by weekday; production sheets take them from there. */
export const REGULAR_NAME = "gramwright_regular";
/** Where the first mix log tells its line: factor at 0 min, more a minute, typical miss, mixes read, degrees. */
export const MIXLOG_NAME = "gramwright_mixlog";
/** Where versions of formulas are kept. */
export const HISTORY_NAME = "gramwright_history";
