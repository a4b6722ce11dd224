/** The little of `google.script` that the sidebar uses. Absent where the page is opened outside a spreadsheet. */
interface ScriptRunner {
  withSuccessHandler(handler: (answer: unknown) => void): ScriptRunner;
  withFailureHandler(handler: (error: unknown) => void): ScriptRunner;
  answerSidebar(question: string): void;
}

declare const google: { readonly script: { readonly run: ScriptRunner } } | undefined;
