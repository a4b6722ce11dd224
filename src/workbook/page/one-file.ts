// The page that is one file, opened by a double click.
import { fileHome } from "./file-home.ts";
import { openPage } from "./open-page.ts";

openPage(fileHome());
