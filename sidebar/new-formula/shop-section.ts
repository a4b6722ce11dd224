import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { type FormContext, section } from "./sections.ts";
import { type Shop, settingsOf } from "./shop.ts";

export type KnownShop = {
  /** Of the workbook: its settings, null where it has none, undefined while nobody knows. */
  shop: Shop | null | undefined;
  /** Whether the form began with them. */
  touched: boolean;
  /** Starts a new form. */
  readonly begin: () => void;
  /** There are settings now. */
  readonly remember: () => void;
  /** Shows what is known now; the form that is open sets it. */
  redraw?: () => void;
};

const WHAT = "units, scales, mixer and kitchen";

/** Where the shop's settings stand, and how they get there. */
export function shopSection(context: FormContext, known: KnownShop): HTMLElement {
  const place = element("div", {});
  known.redraw = () => place.replaceChildren(...nodesFor(context, known));
  known.redraw();
  return place;
}

function nodesFor({ draft }: FormContext, { shop, touched, begin, remember }: KnownShop): Node[] {
  if (shop === undefined) return [];
  const hint = (says: string) => element("p", { class: "hint" }, says);
  if (shop !== null) {
    const says = `Started from your bakery settings (${WHAT}). Change them there for every new formula.`;
    const anew = { type: "button", class: "quiet-button", click: begin };
    return [
      section(
        "Bakery settings",
        touched ? hint(says) : element("button", anew, "Start again with the bakery settings"),
      ),
    ];
  }
  const keeping = actionButton(
    {
      question: "build",
      label: "Keep as the bakery settings",
      request: () => ({
        template: "settings",
        options: { ...draft.units, parts: [] },
        values: { title: "Bakery settings", ...settingsOf(draft) },
      }),
      busy: () => "Building the settings sheet …",
      done: ({ sheet, note = "" }) => {
        remember();
        return `Kept in “${sheet}”. ${note}`.trim();
      },
      silent: "Look for the new tab before you try again.",
    },
    "quiet-button",
  );
  const says = `Saves the ${WHAT} above in a settings sheet. Every new formula then starts from them.`;
  return [section("Bakery settings", hint(says), ...keeping.nodes)];
}
