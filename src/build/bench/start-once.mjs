// One start of a script in this fresh process, as milliseconds of processor time in JSON. V8 keeps what it compiled and knows
// equal text again, so that only a fresh process with a text of its own pays what a formula cell pays.
import { readFileSync } from "node:fs";
import vm from "node:vm";

const code = readFileSync(process.argv[2] ?? "dist/Code.js", "utf8");
const unlike = `\n// ${process.pid} ${process.hrtime.bigint()}\n`;
const bare = vm.createContext({});
const context = vm.createContext({});

/** @param {string} script @param {vm.Context} where */
function run(script, where) {
  const from = process.cpuUsage();
  vm.runInContext(script, where);
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
}

run("1", bare);
run("1", context);
const times = {
  empty: run(`1;${unlike}`, bare),
  code: run(code + unlike, context),
  firstCall: run("BAKE_MIXES(1000, 400)", context),
  larderCall: run('BAKE_GRAMS("1 cup honey")', context),
};
console.log(JSON.stringify(times));
