// Brings new texts onto an open test phone. Without it the page is read again by its link "Look again".
"use strict"

const EVERY_MS = 2000

async function lookAgain() {
  const shown = document.getElementById("texts")
  if (document.hidden || !shown) return
  const answer = await fetch(location.pathname, { credentials: "same-origin" })
  if (!answer.ok || answer.redirected) return
  const page = new DOMParser().parseFromString(await answer.text(), "text/html")
  const fresh = page.getElementById("texts")
  if (!fresh || fresh.dataset.lines === shown.dataset.lines) return
  shown.replaceChildren(...fresh.childNodes)
  shown.dataset.lines = fresh.dataset.lines
}

setInterval(() => lookAgain().catch(() => {}), EVERY_MS)
