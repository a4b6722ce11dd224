// What a shop on Google Workspace needs to have Gramwright in every spreadsheet of its domain.
import { readFileSync } from "node:fs";

/** The steps, and the manifest of the standalone script: an `addOns` key would make it another sort of add-on, without functions in cells. */
export const workspaceText = (
  manifest: string,
): string => `Gramwright for all of a Google Workspace domain. You need its administrator, and nobody outside reviews it.

1. Open script.google.com, choose New project, and name it Gramwright. It belongs to no spreadsheet.
2. Put the three files into it, as gramwright-install.html shows in its steps 3 to 6. The manifest is this one:

${manifest.trim()}

3. At console.cloud.google.com, make a project of your domain. Set its OAuth consent screen to Internal, with the two scopes above.
4. In the script's Project settings, under Google Cloud Platform project, choose Change project and enter that project's number.
5. In the script, choose Deploy, New deployment, Add-on, and copy the deployment's ID.
6. In the Cloud project, switch on the Google Workspace Marketplace SDK. In its App Configuration choose Private, Editor Add-on for Sheets, and enter the script's ID
   and the version that was deployed. Fill in the Store Listing, and publish. Private listings are not reviewed.
7. In the Admin console, choose Apps, Google Workspace Marketplace apps, Install app, find Gramwright among your domain's own, and install it for everybody.

It is then in the Extensions menu of every spreadsheet, without Google's warning. To update: paste the new files, deploy a new version (Manage deployments, Edit, New version),
and enter its number in App Configuration.
`;

export const printWorkspace = (): void =>
  console.log(workspaceText(readFileSync("src/add-on/appsscript.json", "utf8")));
