// The line at the page's foot that says what happened.
import type { Tell } from "./home.ts";

export const byId = <T extends HTMLElement>(id: string): T => {
  const match = document.getElementById(id);
  if (!match) throw new Error(`The page has no #${id}`);
  return match as T;
};

export const tell: Tell = (text, isProblem = false) => {
  const status = byId("status");
  status.textContent = text;
  status.title = text;
  status.classList.toggle("problem", isProblem);
};

export const sentence = (error: unknown): string =>
  error instanceof Error || (error as Error)?.message ? (error as Error).message : String(error);
