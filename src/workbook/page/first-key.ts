/** What the grid's parts know of each other. */
export type Grid = { readonly env: { getStore(store: unknown): { readonly editionMode: string } } };

/**
 * Until the next frame the grid's field still holds what the selected cell holds, or what was typed into the one before. A
 * quick hand on a slow computer has typed a second key by then, and both were read together with it: 80% over 50% became
 * "80%50%". The field is emptied when the first key comes.
 */
export function startEmpty({ env }: Grid, cellComposer: unknown): void {
  const composer = env.getStore(cellComposer);
  const begin = ({ target, inputType }: InputEvent) => {
    if (inputType !== "insertText" || composer.editionMode !== "inactive" || !(target instanceof Element)) return;
    target.closest(".o-grid .o-composer")?.replaceChildren();
  };
  window.addEventListener("beforeinput", begin, { capture: true });
}
