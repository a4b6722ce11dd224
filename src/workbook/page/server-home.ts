import type { Home, Store, StoredBook } from "./home.ts";

const AWAY =
  "Not kept: the server does not answer. Leave this page open and start it again; what you typed is sent then.";

const FILE = "gramwright-this-tab.json";

async function text(path: string): Promise<string> {
  const answer = await fetch(path);
  if (!answer.ok) throw new Error(`${path} could not be loaded (${answer.status})`);
  return answer.text();
}

/** The page of `npm start`. */
export const serverHome = (nonce: string): Home => ({
  store: serverStore,
  where: `On this computer only: ${location.host} · F6 moves on`,
  nonce,
  code: () => text("/Code.js"),
  templates: () => text("/engine/o_spreadsheet.xml"),
  showSidebar: (frame, file) => {
    frame.src = `/frame/${file}.html`;
  },
  async xlsx(engine) {
    const headers = { "content-type": "application/json" };
    const answer = await fetch("/save", { method: "POST", headers, body: engine.text() });
    if (!answer.ok) throw new Error(await answer.text());
    return answer.blob();
  },
});

const serverStore: Store = {
  async load() {
    const answer = await fetch("/workbook");
    if (!answer.ok) throw new Error(await answer.text());
    return (await answer.json()) as StoredBook;
  },
  async revision() {
    const answer = await fetch("/revision").catch(() => undefined);
    if (!answer?.ok) throw new Error(AWAY);
    return ((await answer.json()) as { revision: string }).revision;
  },
  async save(sent, revision) {
    const answer = await postWorkbook(sent, revision);
    if (answer.status === 409 && (await this.revision()) !== revision) return undefined;
    if (!answer.ok) throw new Error(`Not kept: ${await answer.text()}`);
    return ((await answer.json()) as { revision: string }).revision;
  },
  channel: () => "gramwright workbook",
  ownFile: { name: FILE, opens: "To open it, give its name after “npm start -- --file”." },
};

async function postWorkbook(sent: string, revision: string): Promise<Response> {
  const headers = { "content-type": "application/json", "x-revision": revision };
  try {
    return await fetch("/workbook", { method: "POST", headers, body: sent });
  } catch {
    throw new Error(AWAY);
  }
}
