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
});
