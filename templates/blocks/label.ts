import type { Block, CellModel, Formula, Line } from "../../shared/sheet/model.ts";
import type { Labelled } from "./labelled.ts";
import { computedLine, headingLine, inputLine, label } from "./line.ts";

/** What is weighed out: the table's rows, and what goes in beside them. */
function rowsOf({ extra, rows }: Labelled): { names: string; weights: string; kinds: string } {
  if (extra === undefined) return { ...rows, weights: "@grams" };
  return {
    names: `{${rows.names};${extra.name}}`,
    weights: `{@grams;${extra.weight}}`,
    kinds: `{${rows.kinds};"${extra.kind}"}`,
  };
}

/** 1 lb is 453.59237 g (international yard and pound agreement, 1959). */
const OUNCE = "28349523125/1000000000";
const inGrams = (formula: (grams: string) => string): Formula => [
  { when: "oz", formula: formula(`*${OUNCE}`) },
  { formula: formula("") },
];

const bySizes = (formula: string) =>
  `IF(@by="pieces";IF(SUM(@size_dough)=0;1;SUMPRODUCT(@size_pieces;@size_weight)/(SUM(@size_dough)*(1-@handling_loss)));${formula})`;

/** Letters that fit between the label and the sheet's edge. */
const LINE_LETTERS = 96;
const upTo = (text: string) =>
  `IF(LEN(${text})<=${LINE_LETTERS + 12};MID(${text};1;2000);LEFT(${text};FIND(" ";${text}&" ";${LINE_LETTERS})))`;
const from = (...lines: string[]) => `MID(@list;${lines.map((line) => `LEN(${line})+`).join("")}1;2000)`;

/** What a label is made from: ingredient list, allergens, and the quantity to declare. */
export function labelBlock(costed: Labelled): Block {
  const { names, weights } = rowsOf(costed);
  const asked = (call: string) => `=IF(LEN(@law)*COUNT(@baked)=0;"";IF(@baked=0;"";${call}))`;
  const shown = (formula: string) => `=IF(ISERROR(@list);"";${formula})`;
  return {
    block: "label",
    left: 0,
    when: "label",
    lines: [
      headingLine("Label", 9),
      inputLine("Sold under the rules of", "law", "text", { choices: ["EU", "UK", "US"], onSheet: true }),
      inputLine("Which size, by its number", "piece_size", "count", { value: 1, onSheet: true }),
      ...(costed.sold ? [] : [inputLine("Lost in baking", "label_loss", "share", { onSheet: true })]),
      inputLine("Allergens of the last version", "allergens_last", "text", { onSheet: true }),
      inputLine("Quantity is declared of", "declare", "text", { onSheet: true }),
      computedLine("The piece is sold at ({weight})", "piece", "weight", pieceWeight(costed)),
      computedLine(
        "All of it, baked ({weight})",
        "baked",
        "weight",
        `=IF(COUNT(${costed.whole})=0;"";${costed.whole}*${costed.sold ? `(${bySizes("1-N(INDEX(@size_loss;2;1))")})` : "(1-@label_loss)"})`,
      ),
      {
        cells: [
          label("Ingredient list, to copy"),
          {
            at: 1,
            role: "computed",
            name: "list",
            unit: "text",
            formula: asked(`BAKE_LABELLIST(${names};${weights};gramwright_larder;@law;@baked)`),
          },
          {
            at: 2,
            role: "remark",
            name: "list_length",
            unit: "text",
            formula: '=IF(ISERROR(@list);"see the red cell";IF(LEN(@list)=0;"";LEN(@list)&" letters"))',
          },
        ],
      },
      said("", "list_1", shown(upTo("@list"))),
      said("", "list_2", shown(upTo(from("@list_1")))),
      said("", "list_3", shown(from("@list_1", "@list_2"))),
      said("Allergens", "allergens", asked(`BAKE_ALLERGENS(${names};gramwright_larder;@law)`)),
      said("came since then", "allergens_came", onlyIn("@allergens", "@allergens_last")),
      said("gone since then", "allergens_gone", onlyIn("@allergens_last", "@allergens")),
      said(
        "",
        "allergens_change",
        compared(
          'IF(@allergens=@allergens_last;"As in the last version.";"CHANGED since the last version: check the label and everything it is printed on.")',
        ),
      ),
      computedLine(
        "Quantity to declare of that",
        "declared",
        "share",
        `=IF(LEN(@declare)*COUNT(@baked)=0;"";BAKE_LABELSHARE(@declare;${names};${weights};@baked;gramwright_larder))`,
        { spills: ["declared_of"], worded: ["declared_of"] },
      ),
    ],
  };
}

const said = (text: string, name: string, formula: string): Line => computedLine(text, name, "text", formula);

/** Beginnings of the allergens' names in the lists of the EU, the UK and the US. */
const ALLERGEN_WORDS =
  "wheat,rye,barley,oats,crustacean,egg,fish,peanut,soy,milk,almond,hazelnut,walnut,cashew,pecan,brazil,pistachio,macadamia,celery,mustard,sesame,sul,lupin,mollus".split(
    ",",
  );

/** Words of the first text that the second lacks. */
function onlyIn(there: string, missing: string): string {
  const has = (word: string, text: string) => `ISNUMBER(SEARCH("${word}";${text}))`;
  const words = ALLERGEN_WORDS.map(
    (word) => `IF(AND(${has(word, there)};NOT(${has(word, missing)}));"${word === "sul" ? "sulphites" : word} ";"")`,
  );
  return compared(words.join("&"));
}

const compared = (formula: string) =>
  `=IF(ISERROR(@allergens);"";IF(LEN(@allergens)*LEN(@allergens_last)=0;"";${formula}))`;

const PARTS = [
  ["energy", "Energy"],
  ["fat", "Fat"],
  ["saturates", "Saturates"],
  ["carbohydrate", "Carbohydrate"],
  ["sugar", "Sugars"],
  ["fibre", "Fibre"],
  ["protein", "Protein"],
  ["salt", "Salt"],
] as const;

/** 1 kcal is 4.184 kJ (the thermochemical calorie). */
const KILOJOULES = "4184/1000";

/** Energy and seven parts, in all, per 100 g and per piece as sold, from one call. */
export function nutritionBlock(costed: Labelled): Block {
  const { names, weights, kinds } = rowsOf(costed);
  const list = PARTS.map(([part]) => `"${part}"`).join(";");
  const call = (grams: string) =>
    `=IF(COUNT(@baked)=0;"";IF(@baked=0;"";BAKE_CONTENT(${names};${grams === "" ? weights : `ARRAYFORMULA(IF(LEN(${weights})=0;"";${weights}${grams}))`};{${list}};gramwright_larder;${kinds})))`;
  const cells = (of: (part: string, name: string) => CellModel["formula"], suffix: string): CellModel[] =>
    PARTS.map(([part], at) => ({
      at: at + 1,
      role: "computed",
      name: `${part}_${suffix}`,
      unit: part === "salt" ? "fill" : part === "energy" ? "count" : "figure",
      ...formulaOf(of(part, `@${part}_all`)),
    }));
  const per100 = cells(
    (part, all) =>
      inGrams(
        (grams) =>
          `=IF(ISERROR(@energy_all);"";IF(LEN(${all})*LEN(@fibre_all)*COUNT(@baked)=0;"";${part === "carbohydrate" ? `(${all}-IF(@law="US";0;@fibre_all))` : all}*100/(@baked${grams})))`,
      ),
    "100",
  );
  const perPiece = cells(
    (part) => inGrams((grams) => `=IF(COUNT(@${part}_100;@piece)<2;"";@${part}_100*@piece${grams}/100)`),
    "piece",
  );
  return {
    block: "nutrition",
    left: 0,
    when: "label",
    lines: [
      headingLine("Nutrition, estimated", 9),
      {
        cells: [
          label("Energy in kcal, the rest in g"),
          ...PARTS.map(([, text], at): CellModel => ({ at: at + 1, role: "label", align: "right", text })),
        ],
      },
      {
        cells: [
          label("In all of it"),
          {
            at: 1,
            role: "computed",
            name: "energy_all",
            unit: "count",
            formula: inGrams(call),
            spills: PARTS.slice(1).map(([part]) => `${part}_all`),
          },
        ],
      },
      { cells: [label("per 100 g as sold"), ...per100] },
      { cells: [label("per piece"), ...perPiece] },
      {
        cells: [
          label("Energy (kJ): 100 g, piece"),
          { at: 1, role: "computed", name: "joules_100", unit: "count", formula: joules("@energy_100") },
          { at: 2, role: "computed", name: "joules_piece", unit: "count", formula: joules("@energy_piece") },
        ],
      },
    ],
  };
}

const formulaOf = (formula: CellModel["formula"]) => (formula === undefined ? {} : { formula });
const joules = (energy: string) => `=IF(COUNT(${energy})=0;"";${energy}*${KILOJOULES})`;

function pieceWeight({ sold, each }: Labelled): Formula {
  const weight = `INDEX(${sold ? "@size_weight" : each};@piece_size+1;1)`;
  return `=IF(COUNT(@piece_size)=0;"";IF(COUNT(${weight})=0;"";${weight}${sold ? "" : "*(1-@label_loss)"}))`;
}

/** Where label and nutrition are read. */
export const labelCautions: readonly Line[] = [
  "List, allergens and nutrition are estimates from your ingredient sheet and typical figures: check them against your suppliers' specifications before anything is printed. In the US carbohydrate counts the fibre in.",
  "An allergen list is only as good as the specifications behind it, and cross-contact is not computed. What a label must say is settled by local law and those licensed to advise on it.",
].map((text) => ({ when: "label", cells: [{ at: 0, role: "caution", text }] }));
