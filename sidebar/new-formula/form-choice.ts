import { choiceField, type Form } from "../kit/fields.ts";

/** Whose formulas the sheet is to hold. */
export const formChoice = (form: Form, draft: { plain: boolean }): HTMLElement =>
  choiceField(
    form,
    { at: () => "form", label: () => "Formulas" },
    [
      { value: "", text: "the add-on's" },
      { value: "plain", text: "plain, for people without the add-on" },
    ],
    {
      get: () => (draft.plain ? "plain" : ""),
      set: (chosen) => {
        draft.plain = chosen === "plain";
      },
    },
  );
