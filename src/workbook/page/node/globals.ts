// The names of Node that the .xlsx library takes for granted, for the page.
export { Buffer } from "buffer/index.js";

export const process = {
  env: {},
  version: "",
  browser: true,
  nextTick: (act: (...args: unknown[]) => void, ...args: unknown[]) => queueMicrotask(() => act(...args)),
};
