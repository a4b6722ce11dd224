// Service calls that fail on purpose, for tests of what a person reads then.
import { unansweredCalls } from "./cell-readers.ts";
import type { Engine } from "./engine/engine.ts";
import type { Script } from "./service/script.ts";
import type { Session } from "./service/session.ts";

/** What may go wrong while the script calls the service. */
export function serviceFailures(engine: Engine, session: Session, script: Script) {
  const { guard } = session;
  return {
    ...unansweredCalls(engine, session, script),
    /** Makes the n-th service call from now fail once, as Google's service sometimes does; undefined takes it back. */
    failAt: (call: number | undefined) => guard.failAt(call),
    /** Makes the n-th service call from now fail and `many` in all, as in an outage; `failAt(undefined)` takes it back. */
    failFrom: (call: number, many = Number.POSITIVE_INFINITY) => guard.failAt(call, { many }),
    /** Has the n-th service call from now carried out and fail all the same, as where its answer gets lost; `many` fail in all. */
    loseAnswer: (call: number, many = 1) => guard.failAt(call, { many, isDone: true }),
    /** What another person does right before the n-th service call from now. */
    meanwhile: (call: number, act: () => void) =>
      guard.beforeCall(call, () => {
        session.flush();
        act();
      }),
    /** From now on it is the workbook of a person who may only view it, or not. */
    setViewer: (isViewer: boolean) => {
      guard.isViewer = isViewer;
    },
  };
}
