import type { Block, CellModel, Line, Unit } from "../../shared/sheet/model.ts";
import { computedLine, headingLine, inputLine, label } from "../blocks/line.ts";

const COMPLETE = "COUNT(@levain_wanted;@levain_hydration;@seed_hydration;@seed_share)<4";
const SEED = "@levain_wanted/(1+@levain_hydration)*@seed_share/(1+@seed_share/(1+@seed_hydration))";
/** Where the call stands, beyond what is printed. */
const ASIDE = 3;

const aside = (name: string, unit: Unit, formula: string, spills: readonly string[] = []): CellModel => ({
  at: ASIDE,
  role: "computed",
  name,
  unit,
  formula,
  spills,
});

const fed = (text: string, name: string, from: string): Line =>
  computedLine(text, name, "weight", `=IF(ISERROR(@${from});"";IF(LEN(@${from})=0;"";@${from}))`);

const DAYS = ["on the day", "the day before", "2 days before"] as const;
const typedDay = `IF(@levain_mix_day="${DAYS[1]}";1;IF(@levain_mix_day="${DAYS[2]}";2;0))`;

/** A moment in minutes from the day's midnight, as a time of day and, beside it, as a day in words. */
const moment = (text: string, name: string, minutes: string): Line => {
  const day = `INT(@${minutes}/1440)`;
  const words = `IF(${day}=0;"${DAYS[0]}";IF(${day}=0-1;"${DAYS[1]}";IF(${day}<0;(0-${day})&" days before";${day}&" days after")))`;
  return {
    cells: [
      label(text),
      {
        at: 1,
        role: "computed",
        name,
        unit: "time",
        formula: `=IF(LEN(@${minutes})=0;"";MOD(@${minutes};1440)/1440)`,
      },
      {
        at: 2,
        role: "computed",
        name: `${name}_day`,
        unit: "text",
        align: "center",
        formula: `=IF(LEN(@${minutes})=0;"";${words})`,
      },
    ],
  };
};

const withMore = (line: Line, ...more: readonly CellModel[]): Line => ({ ...line, cells: [...line.cells, ...more] });

/**
 * One levain for all doughs of the day: how much, of what, and when to feed it so that the first mix finds it ripe. What
 * is typed stands together and what is worked out too, which makes few writes of it.
 */
export const levain: Block = {
  block: "levain",
  left: 5,
  lines: [
    headingLine("Levain for this day", 3),
    // Beside the edge row of the orders.
    { cells: [] },
    inputLine("Kept as seed ({weight})", "levain_keep", "weight"),
    inputLine("Its hydration", "levain_hydration", "percent"),
    inputLine("Hydration of the seed", "seed_hydration", "percent"),
    inputLine("Seed, of flour fed", "seed_share", "percent"),
    inputLine("Hours it ripens", "levain_hours", "plain"),
    withMore(inputLine("First mix, typed", "levain_mix", "time"), {
      at: 2,
      role: "input",
      name: "levain_mix_day",
      unit: "text",
      align: "center",
      choices: DAYS,
      value: DAYS[0],
    }),
    computedLine("In the doughs ({weight})", "levain_needed", "weight", "=SUM(@day_levain)"),
    computedLine("To build ({weight})", "levain_wanted", "weight", "=@levain_needed+@levain_keep"),
    withMore(
      fed("Feed: seed ({weight})", "feed_seed", "fed_seed"),
      {
        at: 2,
        role: "remark",
        name: "feed_note",
        unit: "text",
        align: "center",
        formula:
          '=IF(ISERROR(@fed_seed);"still calculating, or see the red cell beside";IF(LEN(@fed_seed)*LEN(@levain_keep)=0;"";IF(@levain_keep<@fed_seed;"more than is kept as seed";"")))',
      },
      aside(
        "fed_seed",
        "weight",
        `=IF(${COMPLETE};"";IF(@levain_wanted=0;"";BAKE_STARTERFEED(@levain_wanted;@levain_hydration;@seed_hydration;${SEED})))`,
        ["fed_flour", "fed_water"],
      ),
    ),
    fed("with flour ({weight})", "feed_flour", "fed_flour"),
    fed("and water ({weight})", "feed_water", "fed_water"),
    withMore(
      moment("First mix with it", "levain_first", "first_minutes"),
      aside(
        "first_minutes",
        "minutes",
        `=IF(COUNT(@levain_mix)>0;ROUND(1440*@levain_mix;0)-1440*${typedDay};IF(COUNT(@day_first)=0;"";MIN(@day_first)))`,
      ),
    ),
    withMore(
      moment("Feed it at", "feed_time", "feed_minutes"),
      aside(
        "feed_minutes",
        "minutes",
        '=IF(COUNT(@first_minutes;@levain_hours)<2;"";@first_minutes-ROUND(60*@levain_hours;0))',
      ),
    ),
    computedLine(
      "which is on",
      "feed_date",
      "date",
      '=IF(COUNT(@day;@feed_minutes)<2;"";@day+INT(@feed_minutes/1440))',
      {
        align: "right",
      },
    ),
  ],
};
