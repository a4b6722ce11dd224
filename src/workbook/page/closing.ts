/** The browser asks before it closes the page while anything typed is not kept, also in a cell that is still being typed. */
export function askBeforeClosing(isUnkept: () => boolean): { allow(): void } {
  let isAllowed = false;
  window.addEventListener("beforeunload", (event) => {
    if (!isAllowed && (isTyping() || isUnkept())) event.preventDefault();
  });
  return {
    allow() {
      isAllowed = true;
    },
  };
}

/** A cell whose text was not entered yet; the grid keeps an idle field for the selected cell all the time. */
const isTyping = (): boolean => document.querySelector(".o-composer.active") !== null;
