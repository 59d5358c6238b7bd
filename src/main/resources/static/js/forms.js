// Holds the button of a form that is on its way, so that a wet double tap is one tap.
// The form's key makes the second arrival harmless anyway; this only spares the wait.
document.addEventListener("submit", (event) => {
  const button = event.submitter;
  if (!button || event.target.method !== "post") return;
  if (button.getAttribute("aria-disabled")) return event.preventDefault();
  button.setAttribute("aria-disabled", "true");
  setTimeout(() => button.removeAttribute("aria-disabled"), 3000);
});

// Back from the next page, the form may be sent again.
window.addEventListener("pageshow", () => {
  document
    .querySelectorAll("button[aria-disabled]")
    .forEach((button) => button.removeAttribute("aria-disabled"));
});

document.querySelector(".errors")?.focus();
document
  .querySelector(".places [aria-current]")
  ?.scrollIntoView({ block: "nearest", inline: "center" });
