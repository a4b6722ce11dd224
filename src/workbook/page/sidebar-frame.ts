// The sidebar in its frame beside the grid.
import type { Script } from "../service/script.ts";
import type { Session } from "../service/session.ts";
import type { Home } from "./home.ts";
import { byId } from "./status.ts";

export function openSidebar(home: Home, session: Session, script: Script): void {
  script.run("FULL", "openSidebar");
  showSidebar(home, session);
}

export function showSidebar(home: Home, { shown: { sidebar } }: Session): void {
  byId("sidebar-title").textContent = sidebar?.title || "Gramwright";
  const frame = byId<HTMLIFrameElement>("sidebar-frame");
  frame.title = sidebar?.title || "Gramwright";
  const added = sidebar?.added ?? "";
  // Google opens a sidebar anew each time; here what was typed in it stays, unless another page is asked for.
  if (byId("sidebar").hidden || frame.dataset.added !== added) home.showSidebar(frame, sidebar?.file ?? "sidebar");
  frame.dataset.added = added;
  byId("sidebar").hidden = false;
  window.dispatchEvent(new Event("resize"));
}

export function closeSidebar(): void {
  byId("sidebar").hidden = true;
  const frame = byId<HTMLIFrameElement>("sidebar-frame");
  frame.removeAttribute("srcdoc");
  frame.src = "about:blank";
  window.dispatchEvent(new Event("resize"));
}
