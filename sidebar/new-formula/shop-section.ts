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
    const says = `Begun with the ${WHAT} of the sheet of settings. Change them there, for every new formula.`;
    const anew = { type: "button", class: "quiet-button", click: begin };
    return [
      section("The shop", touched ? hint(says) : element("button", anew, "Start again with the bakery settings")),
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
      busy: () => "Building the sheet of settings …",
      done: ({ sheet, note = "" }) => {
        remember();
        return `Kept in “${sheet}”. ${note}`.trim();
      },
      silent: "Look at the tabs before you try again.",
    },
    "quiet-button",
  );
  const says = `Keeps the ${WHAT} above in a sheet of their own. Every new formula then begins with them.`;
  return [section("The shop", hint(says), ...keeping.nodes)];
}
