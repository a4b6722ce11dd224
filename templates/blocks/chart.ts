import type { Block, CellModel } from "../../shared/sheet/model.ts";

const ROOMS = [1, 2, 3, 4];
const FLOURS = [1, 2, 3, 4, 5];
/** The factor method with the factor of the water block; a preferment's temperature joins when there is one. */
const WATER = "IF(COUNT(@preferment_temp)=0;3*@dough_target;4*@dough_target-@preferment_temp)-@friction";

/** Water temperature by the flour's (down) and the room's (across), to hang beside the mixer. */
export const chartBlockOf = (down: number): Block => ({
  block: "chart",
  left: 4,
  down,
  when: "chart&water",
  lines: [
    {
      cells: [
        { at: 0, role: "heading", text: "Water chart ({temperature}); from, step" },
        { at: 1, role: "heading" },
        { at: 2, role: "heading" },
        ...(["C", "F"] as const).flatMap((scale): CellModel[] => [
          {
            at: 3,
            role: "input",
            name: "chart_from",
            unit: "temperature",
            when: scale,
            value: scale === "C" ? 14 : 58,
          },
          { at: 4, role: "input", name: "chart_step", unit: "temperature", when: scale, value: scale === "C" ? 3 : 5 },
        ]),
      ],
    },
    {
      cells: [
        // A formula, so that both axes and the table are one rectangle.
        { at: 0, role: "label", name: "chart_corner", unit: "text", align: "right", formula: '="flour \\ room"' },
        ...ROOMS.map((room) => ({ ...axis(`chart_room_${room}`, room), at: room })),
      ],
    },
    ...FLOURS.map((flour) => ({
      cells: [
        { ...axis(`chart_flour_${flour}`, flour), at: 0 },
        ...ROOMS.map(
          (room): CellModel => ({
            at: room,
            role: "computed",
            name: `chart_${flour}_${room}`,
            unit: "temperature",
            formula: `=IF(COUNT(@dough_target;@friction)<2;"";${WATER}-@chart_flour_${flour}-@chart_room_${room})`,
          }),
        ),
      ],
    })),
  ],
});

function axis(name: string, place: number): Omit<CellModel, "at"> {
  return {
    role: "label",
    name,
    unit: "temperature",
    formula: `=@chart_from+@chart_step*${place - 1}`,
  };
}
