document.getElementById("bench")?.append("Gramwright");
