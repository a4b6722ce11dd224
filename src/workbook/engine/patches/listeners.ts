import type { Library, Model } from "../library.ts";

type Command = { readonly type: string };
type Ask = "allowDispatch" | "beforeHandle" | "handle";
type Handler = Record<Ask, (command: Command) => unknown>;
type Handlers = readonly Handler[];
type ReaderRequest = {
  readonly handlers: Handlers;
  checkDispatchAllowedCoreCommand(command: Command): readonly unknown[];
  dispatchToHandlers(handlers: Handlers, command: Command): void;
  trigger(event: string, what: object): void;
};

/**
 * Each command goes to sixty parts of the engine three times over, though most of them have nothing to say to most of it. Those
 * that answer as the engine's base class does are not asked. A sheet takes thousands of commands.
 */
export function askWhoListens(library: Library, model: Model): void {
  const engine = model as unknown as ReaderRequest;
  const { CorePlugin, coreTypes } = library;
  const base = Object.getPrototypeOf(CorePlugin.prototype) as Handler;
  const who = (handlers: Handlers, ask: Ask): Handlers => handlers.filter((one) => one[ask] !== base[ask]);
  const known = new Map<Handlers, Record<"all" | "others", { before: Handlers; handle: Handlers }>>();
  const listeners = (handlers: Handlers) => {
    const old = known.get(handlers);
    if (old !== undefined) return old;
    const of = (some: Handlers) => ({ before: who(some, "beforeHandle"), handle: who(some, "handle") });
    const lists = { all: of(handlers), others: of(handlers.filter((one) => !(one instanceof CorePlugin))) };
    known.set(handlers, lists);
    return lists;
  };
  const allowing = who(engine.handlers, "allowDispatch");
  engine.checkDispatchAllowedCoreCommand = (command) => {
    const refusals: unknown[] = [];
    for (const one of allowing) {
      const answer = one.allowDispatch(command);
      if (answer !== "Success") refusals.push(answer);
    }
    return refusals;
  };
  engine.dispatchToHandlers = (handlers, command) => {
    const { before, handle } = listeners(handlers)[coreTypes.has(command.type) ? "all" : "others"];
    for (const one of before) one.beforeHandle(command);
    for (const one of handle) one.handle(command);
    engine.trigger("command-dispatched", command);
  };
}
