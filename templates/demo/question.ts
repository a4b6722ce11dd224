import type { Questions } from "../../shared/protocol/questions.ts";

type Kinds = "build" | "day" | "card";
/** One question of the sidebar that makes a sheet or links some, as the demo shop asks it. */
export type DemoQuestion =
  | { readonly [Q in Kinds]: { readonly ask: Q } & Questions[Q]["ask"] }[Kinds]
  | { readonly ask: "list" | "link" };
