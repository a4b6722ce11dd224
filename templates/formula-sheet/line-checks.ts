// What is wrong in a line of a block stands beside the page, and in the check line.
import type { Block, CellModel, Formula, Line } from "../../shared/sheet/model.ts";
import { fraction, within } from "./bounds.ts";
import { MESSAGES, RIGHT } from "./columns.ts";

/** The row of a message; one at the right has half a row more, so that no two are the same. */
export const messageRow = (name: string, side: "left" | "right"): string =>
  `=IF(LEN(@${name})=0;"";ROW(@${name})${side === "left" ? "" : "+1/2"})`;

const CELL = (name: string) => `ADDRESS(ROW(@${name});COLUMN(@${name});4)`;

/** Every line of a block says beside the page what is wrong in it: an input that is no number within its bounds, or a formula typed over. */
export function withChecks(block: Block): Block {
  const side = block.left >= RIGHT ? "right" : "left";
  return { ...block, lines: block.lines.map((line) => checkedLine(line, block.left, side)) };
}

function checkedLine(line: Line, left: number, side: "left" | "right"): Line {
  const text = line.cells.find(({ role }) => role === "label")?.text ?? "";
  const label = text.replace(/ \([^)]*\)$/, "");
  const checks = checksOf(line.cells, label);
  if (checks.length === 0) return line;
  const first = checks.map(({ name }) => name)[0] ?? "";
  const name = `says_${first}`;
  const at = MESSAGES[side] - left;
  const formula = joinChecks(checks.map(({ formula: one }) => one));
  return {
    ...line,
    cells: [
      ...line.cells,
      { at, role: "helper", name, unit: "plain", formula },
      { at: at + 1, role: "helper", unit: "plain", formula: messageRow(name, side) },
    ],
  };
}

type Check = {
  readonly name: string;
  readonly formula: readonly { readonly when?: string; readonly formula: string }[];
};

/** Several inputs side by side with the same bounds are checked together, and so are several formulas. */
function checksOf(cells: readonly CellModel[], label: string): Check[] {
  const inputs = cells.filter(({ role, bounds }) => role === "input" && bounds !== undefined);
  const computed = cells.flatMap(({ name, role, formula }) =>
    name !== undefined && formula !== undefined && role !== "helper" && role !== "remark" ? [name] : [],
  );
  const one =
    inputs.length === 1
      ? inputs.flatMap((cell) => checkOf(cell, label, computed.length > 0))
      : togetherCheck(inputs, label);
  return [...one, ...typedOverChecks(computed)];
}

function checkOf({ name, bounds, asks }: CellModel, label: string, isShort: boolean): Check[] {
  if (name === undefined || bounds === undefined) return [];
  return [
    {
      name,
      formula: within(bounds).map((one) => ({ ...one, formula: boundCheck(name, asks ?? label, one, isShort) })),
    },
  ];
}

function togetherCheck(inputs: readonly CellModel[], label: string): Check[] {
  const [first, last] = [inputs[0], inputs[inputs.length - 1]];
  if (first?.name === undefined || last?.name === undefined) return [];
  const range = `@${first.name}:@${last.name}`;
  const formula = within(first.bounds ?? []).map(({ when, least, most }) => ({
    ...(when === undefined ? {} : { when }),
    formula: `IF(IFERROR((COUNTA(${range})=0)+(COUNT(${range})=COUNTA(${range}))*(MIN(${range})>=${fraction(least)})*(MAX(${range})<=${fraction(most)});0)>0;"";"${label || "Sizes"} in row "&ROW(@${first.name})&"? ")`,
  }));
  return [{ name: first.name, formula }];
}

function typedOverChecks(names: readonly string[]): Check[] {
  const [name] = names;
  if (name === undefined) return [];
  const there = names.map((one) => `ISFORMULA(@${one})`).join(";");
  const are = names.length > 1 ? `AND(${there})` : there;
  return [{ name, formula: [{ formula: `IF(${are};"";"Row "&ROW(@${name})&": typed over. ")` }] }];
}

function boundCheck(
  name: string,
  label: string,
  { least, most }: { readonly least: number; readonly most: number },
  isShort: boolean,
): string {
  const within = `(LEN(@${name})=0)+ISNUMBER(@${name})*(@${name}>=${fraction(least)})*(@${name}<=${fraction(most)})`;
  const where = isShort ? `"${label} in row "&ROW(@${name})&"? "` : `"${label} ("&${CELL(name)}&")? "`;
  return `IF(IFERROR(${within};0)>0;"";${where})`;
}

/** One formula for each unit that the checks differ by. */
function joinChecks(formulas: readonly Check["formula"][]): Formula {
  const units = [...new Set(formulas.flatMap((one) => one.map(({ when }) => when ?? "")))].sort().reverse();
  return units.map((when) => {
    const parts = formulas.map(
      (one) => (one.find((each) => (each.when ?? "") === when) ?? one[one.length - 1])?.formula,
    );
    return { ...(when === "" ? {} : { when }), formula: `=${parts.join("&")}` };
  });
}
