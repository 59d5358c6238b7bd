// A table of boxes by keyboard: Enter and Down go down the column, Up goes back. Tab is the browser's.
document.querySelectorAll("table.grid").forEach((table) => {
  table.addEventListener("keydown", (event) => {
    const by = { Enter: event.shiftKey ? -1 : 1, ArrowDown: 1, ArrowUp: -1 }[event.key];
    const cell = event.target.closest("td");
    if (!by || !cell || event.target.type !== "text" || event.altKey || event.ctrlKey) return;
    event.preventDefault();
    const rows = [...table.tBodies].flatMap((body) => [...body.rows]);
    let at = rows.indexOf(cell.parentElement) + by;
    while (rows[at] && !rows[at].cells[cell.cellIndex]?.querySelector("input")) at += by;
    const box = rows[at]?.cells[cell.cellIndex].querySelector("input");
    if (box) {
      box.focus();
      box.select();
    }
  });
  // A block from a spreadsheet goes into the boxes from this one on; saving is another matter.
  table.addEventListener("paste", (event) => {
    const cell = event.target.closest("td");
    const text = event.clipboardData.getData("text").replace(/\s+$/, "");
    if (!cell || !/[\t\n]/.test(text)) return;
    event.preventDefault();
    const rows = [...table.tBodies].flatMap((body) => [...body.rows]);
    text.split(/\r?\n/).forEach((line, down) => {
      const row = rows[rows.indexOf(cell.parentElement) + down];
      line.split("\t").forEach((value, across) => {
        const box = row?.cells[cell.cellIndex + across]?.querySelector("input[type=text]");
        if (box) box.value = value.trim();
      });
    });
  });
});
