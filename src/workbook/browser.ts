import open from "open";

/** What decides whether a browser can be opened: the environment's variables, and Node's name of the system. */
export type Surroundings = {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
};

/** False under CI, and on Linux without a display: there a browser would fail, or open where nobody sits. */
export function hasBrowser({ env, platform }: Surroundings): boolean {
  const isSet = (name: string) => (env[name] ?? "") !== "";
  if (isSet("CI") && env.CI !== "false" && env.CI !== "0") return false;
  return platform !== "linux" || isSet("DISPLAY") || isSet("WAYLAND_DISPLAY");
}

/** Opens the address in the computer's usual browser; false if there is none, which is no reason to stop the server. */
export async function openBrowser(address: string): Promise<boolean> {
  if (!hasBrowser(process)) return false;
  try {
    (await open(address)).on("error", () => undefined);
    return true;
  } catch {
    return false;
  }
}
