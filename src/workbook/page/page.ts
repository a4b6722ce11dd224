// The page of `npm start`.
import { openPage } from "./open-page.ts";
import { serverHome } from "./server-home.ts";

// The browser tells the mark of a script only while that script runs.
openPage(serverHome(document.currentScript?.nonce ?? ""));
