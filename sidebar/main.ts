import { VERSION } from "../shared/base/version.ts";
import { adjust } from "./adjust/panel.ts";
import { check } from "./check/panel.ts";
import { functions } from "./functions/panel.ts";
import { selfCheck } from "./installation/panel.ts";
import { ask, failureSentence } from "./kit/ask.ts";
import { element } from "./kit/element.ts";
import { newId } from "./kit/fields.ts";
import { onPanelWanted, type Panel, SHOWN_AGAIN } from "./kit/panel.ts";
import { watchPrices } from "./kit/price-watch.ts";
import { CODE_DAMAGED, PAGE_DAMAGED, wholePage } from "./kit/whole-page.ts";
import { make } from "./new-formula/panel.ts";
import { pasteRecipe } from "./paste-recipe/panel.ts";
import { day } from "./plan/panel.ts";
import { handOut } from "./staff-card/panel.ts";

/** In the order of their tabs. */
const PANELS: readonly Panel[] = [make, pasteRecipe, adjust, check, day, handOut, functions];

/** A server that was not used for a while takes seconds to wake. */
const PATIENCE_MS = 20_000;

/** The sidebar's styles; the build puts them here. */
declare const STYLES: string;

const notice = element("div", { class: "notice", role: "alert" });
/** What changed by itself since the sidebar was open last. */
const news = element("div", { class: "notice" });

// What the add-on appends to the page is there once the page is read to its end.
if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", start);
else start();

function start(): void {
  // The menu's "Test this installation" opens this page with a mark at its end.
  const isCheck = document.getElementById("check-now") !== null;
  document.head.append(element("style", {}, STYLES));
  const version = element("p", { class: "version" }, `Gramwright ${VERSION}`);
  // A page that lost something might build a sheet with something lost.
  const isDamaged = wholePage().whole === "damaged";
  const body = isDamaged ? [element("p", { class: "fault" }, PAGE_DAMAGED)] : isCheck ? [shown(selfCheck)] : tabbed();
  document.getElementById("sidebar")?.replaceChildren(notice, news, ...body, version);
  // Only a page that was pasted whole gets here.
  document.getElementById("not-whole")?.remove();
  void greet();
}

function shown(panel: Panel): HTMLElement {
  return element("div", { class: "panel" }, element("h1", {}, panel.heading), panel.open());
}

/** A panel is opened when it is first wanted, and keeps what was typed. */
function tabbed(): HTMLElement[] {
  const bodies = PANELS.map(() => element("div", { id: newId(), hidden: true }));
  const tabs = PANELS.map(({ name }, at) =>
    element("button", { type: "button", "aria-controls": bodies[at]?.id ?? "", click: () => choose(at) }, name),
  );
  choose(0);
  onPanelWanted((name) => {
    const at = PANELS.findIndex((panel) => panel.name === name);
    choose(at);
    tabs[at]?.focus();
    tabs[at]?.scrollIntoView({ block: "nearest" });
  });
  return [element("nav", { "aria-label": "Panels" }, ...tabs), ...bodies];

  function choose(wanted: number): void {
    PANELS.forEach((panel, at) => {
      const body = bodies[at];
      if (body === undefined) return;
      if (at === wanted && body.childElementCount === 0) body.append(shown(panel));
      else if (at === wanted && body.hidden) body.querySelector(".panel > div")?.dispatchEvent(new Event(SHOWN_AGAIN));
      body.hidden = at !== wanted;
      tabs[at]?.setAttribute("aria-pressed", String(at === wanted));
    });
  }
}

/** Is the add-on there, and as the right account? Only a no is said. */
async function greet(): Promise<void> {
  notice.replaceChildren();
  const outcome = await ask("ping", {}, PATIENCE_MS, (late) => {
    if ("answer" in late) notice.replaceChildren();
  });
  if ("answer" in outcome) {
    const { version, whole } = outcome.answer;
    void watchPrices(news);
    if (whole === "damaged") notice.append(element("p", {}, CODE_DAMAGED));
    else if (version !== VERSION)
      notice.append(
        element(
          "p",
          {},
          `The sidebar is version ${VERSION}, and Code.gs is version ${version}. Paste both from the same install page, then reload.`,
        ),
      );
    return;
  }
  notice.append(
    element("p", {}, failureSentence(outcome)),
    element("button", { type: "button", class: "quiet-button", click: () => void greet() }, "Try again"),
  );
}
