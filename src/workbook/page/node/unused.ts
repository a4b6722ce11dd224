// What the .xlsx library asks for and the page never uses: files, passwords, .csv.
export {};
