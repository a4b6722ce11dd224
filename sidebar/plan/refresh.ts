// What keeps ingredients and formula sheets together: names that Ingredients lacks, and formulas that use other formulas.
import { quote } from "../../shared/base/show.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { changesSentence, today } from "../kit/price-watch.ts";
import { section } from "../new-formula/sections.ts";

export const refresh = (): HTMLElement =>
  section(
    "Ingredients in use",
    element(
      "p",
      {},
      "Names that your formula sheets use come into Ingredients, each with its type. You enter price and allergens there.",
    ),
    ...actionButton(
      {
        question: "missing",
        label: "Add what is missing",
        request: () => ({}),
        busy: () => "Comparing the sheets …",
        done: addedSentence,
        silent: "Look at Ingredients before you try again.",
      },
      "quiet-button",
    ).nodes,
    element(
      "p",
      {},
      "Prices are compared with those seen last. What each was before stays in Ingredients, far at the right.",
    ),
    ...actionButton(
      {
        question: "prices",
        label: "Compare prices",
        request: () => ({ day: today(new Date()) }),
        busy: () => "Comparing prices …",
        done: changesSentence,
        silent: "Look at “Price before” in Ingredients before you try again.",
      },
      "quiet-button",
    ).nodes,
    element(
      "p",
      {},
      "An ingredient that has its own formula sheet, such as a filling, takes price, parts and allergens from there.",
    ),
    ...actionButton(
      {
        question: "link",
        label: "Link formulas",
        request: () => ({}),
        busy: () => "Reading the formula sheets …",
        done: linkedSentence,
        silent: "Look at the costs of a formula that uses another before you try again.",
      },
      "quiet-button",
    ).nodes,
  );

export function addedSentence({ sheet, added, also, note = "" }: Questions["missing"]["answer"]): string {
  const rows =
    added.length === 0 ? "" : `Added to ${quote(sheet)}: ${added.join(", ")}. Enter prices and allergens there.`;
  const names = also.length === 0 ? "" : `Known now by other names: ${also.join(", ")}.`;
  const nothing =
    added.length + also.length === 0 && note === "" ? "Ingredients has all that your formula sheets use." : "";
  return [rows, names, nothing, note].filter((one) => one !== "").join(" ");
}

export function linkedSentence({ sheets, note = "" }: Questions["link"]["answer"]): string {
  const done =
    sheets.length > 0
      ? `Linked: ${sheets.map(quote).join(", ")}.`
      : note === ""
        ? "Every formula that uses another is linked already."
        : "";
  return [done, note].filter((one) => one !== "").join(" ");
}
