// What the .xlsx library uses of Node's "events", for the page: its streams tell each other when they have something or are done.

type Listener = (...args: unknown[]) => void;
type Emitter = { listening: Map<string, Listener[]> } & Record<string, (...args: never[]) => unknown>;

/** Called as a function by those who inherit from it, so that it is no class. */
export function EventEmitter(this: Emitter): void {
  this.listening = new Map();
}

const listenersOf = (emitter: Emitter, name: string): Listener[] => {
  emitter.listening ??= new Map();
  return emitter.listening.get(name) ?? [];
};

function on(this: Emitter, name: string, listener: Listener): Emitter {
  const all = listenersOf(this, name);
  this.listening.set(name, [...all, listener]);
  return this;
}

function off(this: Emitter, name: string, listener: Listener): Emitter {
  const all = listenersOf(this, name);
  this.listening.set(
    name,
    all.filter((one) => one !== listener),
  );
  return this;
}

function once(this: Emitter, name: string, listener: Listener): Emitter {
  const single = (...args: unknown[]) => {
    off.call(this, name, single);
    listener.apply(this, args);
  };
  return on.call(this, name, single);
}

function prependListener(this: Emitter, name: string, listener: Listener): Emitter {
  const all = listenersOf(this, name);
  this.listening.set(name, [listener, ...all]);
  return this;
}

function emit(this: Emitter, name: string, ...args: unknown[]): boolean {
  const all = listenersOf(this, name);
  if (all.length === 0 && name === "error") throw args[0];
  for (const listener of all) listener.apply(this, args);
  return all.length > 0;
}

function listeners(this: Emitter, name: string): Listener[] {
  return listenersOf(this, name);
}

function listenerCount(this: Emitter, name: string): number {
  return listenersOf(this, name).length;
}

Object.assign(EventEmitter.prototype, {
  on,
  addListener: on,
  once,
  off,
  removeListener: off,
  prependListener,
  emit,
  listeners,
  listenerCount,
});
EventEmitter.EventEmitter = EventEmitter;
EventEmitter.listenerCount = (emitter: Emitter, name: string) => listenersOf(emitter, name).length;
export default EventEmitter;
