import { strict } from "./guard.ts";
import type { MenuItem, Session } from "./session.ts";

const htmlOutputs = new WeakMap<object, { readonly file: string; title: string; added: string }>();

/** SpreadsheetApp.getUi(): what it is told to show is kept in the session for the page or a test. */
export function makeUi(session: Session): object {
  const { guard, shown } = session;
  const say = (...parts: readonly unknown[]) => {
    guard.show("Ui.alert");
    shown.messages.push(parts.filter((part) => typeof part === "string" && part !== "").join(": "));
    return "OK";
  };
  return strict("Ui", {
    createMenu: (caption: string) => makeMenu(session, caption),
    createAddonMenu: () => makeMenu(session, "Gramwright"),
    alert: (...parts: readonly unknown[]) => say(...parts),
    showSidebar: (output: object) => {
      guard.show("Ui.showSidebar");
      if (session.isScopeMissing) throw new Error("Specified permissions are not sufficient to call Ui.showSidebar.");
      const html = htmlOutputs.get(output);
      if (html === undefined) throw new Error("showSidebar takes what HtmlService made");
      shown.sidebar = { title: html.title, file: html.file, ...(html.added === "" ? {} : { added: html.added }) };
    },
    Button: strict("Ui.Button", { OK: "OK", CANCEL: "CANCEL", YES: "YES", NO: "NO", CLOSE: "CLOSE" }),
    ButtonSet: strict("Ui.ButtonSet", { OK: "OK", OK_CANCEL: "OK_CANCEL", YES_NO: "YES_NO" }),
  });
}

function makeMenu(session: Session, caption: string): object {
  const items: MenuItem[] = [];
  const menu: object = strict("Menu", {
    addItem: (text: string, functionName: string) => {
      items.push({ caption: String(text), functionName: String(functionName) });
      return menu;
    },
    addSeparator: () => {
      items.push("separator");
      return menu;
    },
    addToUi: () => {
      session.shown.menu = { caption, items: [...items] };
    },
  });
  return menu;
}

/** HtmlService: only files that the project pushes. */
export function makeHtmlService(session: Session): object {
  return strict("HtmlService", {
    createHtmlOutput: (html: string) => strict("HtmlOutput", { getContent: () => String(html) }),
    createHtmlOutputFromFile: (name: string) => {
      const file = name.replace(/\.html$/, "");
      const content = session.htmlFiles.get(file);
      if (content === undefined) throw new Error(`No HTML file named ${name} was found.`);
      const page = { file, title: "", added: "" };
      const output: object = strict("HtmlOutput", {
        setTitle: (title: string) => {
          page.title = String(title);
          return output;
        },
        append: (html: string) => {
          page.added += String(html);
          return output;
        },
        getContent: () => content + page.added,
        // Google gives every sidebar 300 pixels, whatever is asked for.
        setWidth: () => output,
      });
      htmlOutputs.set(output, page);
      return output;
    },
  });
}

/** ScriptApp, as far as it asks a person for what was not allowed yet. */
export function makeScriptApp(session: Session): object {
  return strict("ScriptApp", {
    AuthMode: strict("ScriptApp.AuthMode", { NONE: "NONE", LIMITED: "LIMITED", FULL: "FULL" }),
    requireAllScopes: (mode: string) => {
      if (mode !== "FULL") throw new Error("Invalid argument: authMode");
      session.shown.messages.push("log: asked for all permissions");
      if (session.isScopeMissing) throw new Error("Authorization is required to perform that action.");
    },
  });
}

/** LockService: one document, one lock. */
export function makeLockService(session: Session): object {
  let held = false;
  const take = () => {
    if (session.lockIsTaken) return false;
    held = true;
    return true;
  };
  const lock = strict("Lock", {
    tryLock: (_milliseconds: number) => take(),
    waitLock: (_milliseconds: number) => {
      if (!take()) throw new Error("Lock timeout: another process was holding the lock for too long.");
    },
    hasLock: () => held,
    releaseLock: () => {
      session.flush();
      held = false;
    },
  });
  return strict("LockService", { getDocumentLock: () => lock });
}
