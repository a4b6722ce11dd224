import { copyAcross, type Script } from "../service/script.ts";

type Handler = (...args: unknown[]) => void;
type Chosen = { readonly success?: Handler; readonly failure?: Handler; readonly user?: { readonly value: unknown } };

/**
 * The `google` object of a client: `google.script.run` asks the script asynchronously, in no promised order, and tells
 * its failures to the failure handler alone.
 */
export function googleFor(client: Window, script: Script, close: () => void): object {
  const runner = (chosen: Chosen): object =>
    new Proxy(
      {},
      {
        get: (_target, name) => {
          switch (name) {
            case "withSuccessHandler":
              return (success: Handler) => runner({ ...chosen, success });
            case "withFailureHandler":
              return (failure: Handler) => runner({ ...chosen, failure });
            case "withUserObject":
              return (value: unknown) => runner({ ...chosen, user: { value } });
            default:
              return (...args: unknown[]) => ask(client, script, String(name), args, chosen);
          }
        },
      },
    );
  return {
    script: {
      run: runner({}),
      host: { close, setHeight: () => {}, setWidth: () => {}, editor: { focus: () => window.focus() } },
    },
  };
}

function ask(client: Window, script: Script, name: string, args: readonly unknown[], chosen: Chosen): void {
  const more = chosen.user === undefined ? [] : [chosen.user.value];
  // What cannot travel fails at once, in the client's own code, as in Google's sandbox.
  const sent = args.map((one) => copyAcross(one, "argument"));
  client.setTimeout(() => {
    let answer: unknown;
    try {
      answer = script.serve(name, sent);
    } catch (error) {
      if (chosen.failure) chosen.failure(error, ...more);
      else console.error("google.script.run without a failure handler:", error);
      return;
    }
    chosen.success?.(answer, ...more);
  }, 30);
}
