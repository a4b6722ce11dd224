// What a label printer needs of each product, as cells to copy and as a file.
import { type SheetModel, WORKED_OUT } from "../shared/sheet/model.ts";
import { LABEL_TEXT_NAME } from "../shared/sheet/workbook-names.ts";
import { inputLine, when } from "./blocks/line.ts";
import { leftOutLine, ofProduct, productColumn, shownOf, unitOfProduct } from "./product-rows.ts";

const ROWS = 12;
const wide = { wraps: true } as const;

/** 1 oz is 28.349523125 g (international yard and pound agreement, 1959). */
const OUNCE = "28349523125/10^9";
const PIECE = ofProduct("piece");
const GRAMS = `IF(${unitOfProduct}="oz";${PIECE}*${OUNCE};${PIECE})`;
/** 21 CFR 101.7 (from memory): ounces first, the metric weight beside them. */
const NET = `IF(LEN(${PIECE})=0;"";IF(${ofProduct("law")}="US";"Net Wt "&ROUND(${GRAMS}/(${OUNCE});1)&" oz ("&ROUND(${GRAMS};0)&" g)";ROUND(${GRAMS};0)&" g"))`;
const DAYS = ofProduct("shelf_days");
const LAST_DAY = `IF(ISNUMBER(@date)*(LEN(${DAYS})>0)=1;@date+${DAYS};"")`;
const two = (part: string) => `RIGHT("0"&${part};2)`;
const iso = (day: string) =>
  `IF(ISNUMBER(${day});YEAR(${day})&"-"&${two(`MONTH(${day})`)}&"-"&${two(`DAY(${day})`)};"")`;
const LIST = ofProduct("list");
const TITLE = ofProduct("title");
/** Letters that the planner gave a product are found by its name: in its own row, or where one row alone has it. */
const NAMED = `${TITLE}&CHAR(9)`;
const beginsWithIt = (cells: string) => `(LEFT(${cells};LEN(${TITLE})+1)=${NAMED})`;
const lettersIn = (cells: string) => `MID(${cells};LEN(${TITLE})+2;20)`;
const OWN_LETTERS = "INDEX(@letters;[place]+1;1)";
const LETTERS = `IF(LEN(${TITLE})=0;"";IF(${beginsWithIt(OWN_LETTERS)};${lettersIn(OWN_LETTERS)};IF(SUMPRODUCT(${beginsWithIt("@letters")}*1)=1;ARRAYFORMULA(TEXTJOIN("";TRUE();IF(${beginsWithIt("@letters")};${lettersIn("@letters")};"")));"")))`;
/** Where the list names all allergens, in the US, the line behind it is the declaration. */
export const NO_LIST = "no ingredient list: see its formula sheet";
const MISSING = [
  [`LEN(${LIST})=0`, NO_LIST],
  [`ISNUMBER(SEARCH("not known";${LIST}))`, "flour: enter what was added, under Made of in Ingredients"],
  [`LEN(${ofProduct("date_kind")})*LEN(${DAYS})=0`, "shelf life?"],
  ["LEN(INDEX(@letters_now;[place]+1;1))=0", "batch code: build this sheet again"],
] as const;
const REMARK = `IF(LEN(${ofProduct("title")})=0;"";${MISSING.map(([when, says]) => `IF(${when};"${says}";`).join("")}""${")".repeat(MISSING.length)})`;

export const labelText: SheetModel = {
  name: "label-text",
  title: "Label text",
  says: "What a label printer needs of every product: name, list, allergens, net weight, date, batch code, storage, address.",
  widths: [110, 130, 410, 220, 90, 84, 84, 110, 140, 150, 130, 76, 76, 76],
  parts: ["listed"],
  defines: { name: LABEL_TEXT_NAME, from: "labels_table", to: "labels_table" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Label text" }] },
          { cells: [{ at: 0, role: "remark", name: "shop", text: "" }] },
          leftOutLine,
          {
            when: "!listed",
            cells: [
              {
                at: 0,
                role: "remark",
                text: "There is no formula sheet yet. Build an ingredient sheet, then formula sheets, then this sheet again.",
              },
            ],
          },
          inputLine("Baked on", "date", "date"),
          inputLine("Mark before code", "code_begins", "text", { value: "L" }),
          when("listed", inputLine("Business address", "address", "text", { wide: 3 })),
          {
            cells: [
              {
                at: 0,
                role: "caution",
                text: "Lists and allergens are estimates: check them against your suppliers' specifications before anything is printed. Cross-contact is not assessed.",
              },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "caution",
                text: "Use by and best before come from your own shelf-life tests. Packed weights follow the average-weight rules of your country. Local law comes first.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "labels",
        left: 0,
        when: "listed",
        rows: ROWS,
        spare: 0,
        columns: [
          productColumn("product", "Product", shownOf("title"), wide),
          productColumn(
            "label_name",
            "Name on the label",
            `IF(LEN(${ofProduct("label_title")})=0;${shownOf("title")};${ofProduct("label_title")})`,
            wide,
          ),
          productColumn("label_list", "Ingredient list", shownOf("list"), wide),
          productColumn("label_allergens", "Allergens", shownOf("allergens"), wide),
          productColumn("net_weight", "Net weight", NET),
          productColumn("date_words", "Date", shownOf("date_kind")),
          productColumn("last_day", "Day", LAST_DAY, {}, "date"),
          productColumn(
            "batch_code",
            "Batch code",
            `IF((LEN(${LIST})=0)+(ISNUMBER(@date)=FALSE())+(LEN(INDEX(@letters_now;[place]+1;1))=0)>0;"";TRIM(@code_begins&" "&INDEX(@letters_now;[place]+1;1)&"-"&SUBSTITUTE(MID(${iso("@date")};3;8);"-";"")))`,
          ),
          productColumn("storage_words", "Storage", shownOf("storage"), wide),
          productColumn("address_words", "Business address", `IF(LEN(${LIST})=0;"";@address&"")`, wide),
          productColumn("label_remark", "Remark", REMARK, { role: "linked", ...wide }),
          productColumn("day_text", `${WORKED_OUT}: day`, iso(`(${LAST_DAY})`)),
          productColumn("letters_now", "Letters of its code", LETTERS),
          { name: "letters", head: "Letters when it was built", unit: "text", role: "input" },
        ],
      },
    ],
  ],
  sample: { title: "Label text", shop: "Tern Quay Bakehouse", code_begins: "L" },
  expects: { title: "Label text", code_begins: "L" },
};
