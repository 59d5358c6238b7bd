// A scanner types a code and presses Enter or Tab. Enter opens the page by itself; so does Tab when
// the code came faster than hands can type. The same code again within a second is a double read.
const DOUBLE_READ_MS = 1000;
const FASTEST_HANDS_MS = 35;
const [SCANNED, AT] = ["scanned", "scanned-at"];

document.querySelectorAll("input[data-scan]").forEach((box) => {
  let keys = 0;
  let first = 0;
  let last = 0;
  let sent = false;
  box.addEventListener("keydown", (event) => {
    if (event.key === "Tab" && !event.shiftKey) {
      if (keys > 4 && (last - first) / (keys - 1) < FASTEST_HANDS_MS) {
        event.preventDefault();
        box.form.requestSubmit();
      }
    } else if (event.key.length === 1) {
      if (sent) box.value = "";
      if (!box.value) {
        keys = 0;
        first = event.timeStamp;
      }
      sent = false;
      keys += 1;
      last = event.timeStamp;
    }
  });
  box.form.addEventListener("submit", (event) => {
    const code = box.value.trim();
    const again = sessionStorage.getItem(SCANNED) === code;
    if (again && Date.now() - sessionStorage.getItem(AT) < DOUBLE_READ_MS) event.preventDefault();
    sessionStorage.setItem(SCANNED, code);
    sessionStorage.setItem(AT, Date.now());
    sent = true;
  });
});
