// Messages between page and add-on, JSON strings each way: each has a schema, which reads it at the end where it arrives.
import * as v from "valibot";
import { refuse, refuseUnread } from "../base/refusal.ts";

type Plain = string | number | boolean | null | undefined;
type ReadOnly<T> = T extends Plain ? T : { readonly [K in keyof T]: ReadOnly<T[K]> };

/** Reads a message, or refuses it. */
export type MessageReader<Sent, Read> = ((raw: unknown) => Read) & { readonly sent?: Sent };
/** A message as its reader gives it, with what was left out filled in. */
export type Read<R extends (raw: unknown) => unknown> = ReturnType<R>;
/** A message as it is sent. */
export type Sent<R> = R extends MessageReader<infer T, unknown> ? T : never;

type Refuse = (issue: v.BaseIssue<unknown>) => never;

/** `what` names the message where it is refused. The schema is made for the first message: every cell loads the script. */
export function messageReader<const S extends v.GenericSchema>(
  what: string | Refuse,
  schema: () => S,
): MessageReader<ReadOnly<v.InferInput<S>>, ReadOnly<v.InferOutput<S>>> {
  let known: S | undefined;
  return (raw) => {
    known ??= schema();
    const result = v.safeParse(known, raw, { abortEarly: true });
    if (result.success) return result.output as ReadOnly<v.InferOutput<S>>;
    return typeof what === "string" ? refuseUnread(what) : what(result.issues[0]);
  };
}

export const text = (most: number, least = 0) => v.pipe(v.string(), v.minLength(least), v.maxLength(most));

export const integer = (least: number, most: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));

export const id = () => integer(0, Number.MAX_SAFE_INTEGER);

export const list = <S extends v.GenericSchema>(item: S, most: number, least = 0) =>
  v.pipe(v.array(item), v.minLength(least), v.maxLength(most));

export const matching = (pattern: RegExp) => v.pipe(v.string(), v.regex(pattern));

/** Rows of cells. They are many, so that all are one check. */
export const rowsOf = <T>(fits: (cell: unknown) => boolean) =>
  v.custom<readonly (readonly T[])[]>(
    (raw) => Array.isArray(raw) && raw.every((row) => Array.isArray(row) && row.every(fits)),
  );

/** A question as it arrived: its name and the rest, or a refusal. */
export function readQuestion(json: unknown): { readonly name: string; readonly rest: unknown } {
  let question: unknown;
  try {
    question = JSON.parse(String(json));
  } catch {
    return refuseUnread("The question from the sidebar");
  }
  return { name: readNamed(question).ask, rest: question };
}

const readNamed = messageReader(
  () => refuse("The question from the sidebar has no name. Close Gramwright and open it again."),
  () => v.object({ ask: v.string() }),
);

/** A reply of the add-on. `reason` is that of a refusal; `because` is what failed, and the sentence of a planned question is made by who asked it. */
export const readReply = messageReader("The answer of the add-on", () =>
  v.variant("ok", [
    v.object({ ok: v.literal(true), answer: v.unknown() }),
    v.object({
      ok: v.literal(false),
      message: v.string(),
      because: v.exactOptional(v.string()),
      reason: v.exactOptional(v.string()),
    }),
  ]),
);
export type Reply = Read<typeof readReply>;
