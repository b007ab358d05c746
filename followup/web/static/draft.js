// Keeps a form as it is typed, and says how much of it is kept; without this file the buttons between the sections do.
// - What is typed is sent a moment later, one post at a time, and again until it was answered.
// - "Kept at ..." is said of what the shop's server has, never of what is on its way.
// - What has not arrived is also held by this browser: readings alone, nothing that names a customer or a car, and no
//   longer than until it arrived. It is offered when the car's form is opened again.
"use strict";

(function () {
  const HELD = "followup form ";
  const HELD_FOR_MS = 7 * 24 * 3600 * 1000;
  const NOT_HELD = /^(csrf_token|customer.*|vehicle\.(id|plate|vin|label)|advice\.\d+\.told_by|draft|page|corrects|looked_at)$/;
  const WAIT_MS = 1200, MOST_WAIT_MS = 30000, GIVE_UP_MS = 20000;

  // A browser that keeps nothing, or is full: then the shop's server alone keeps the form.
  const held = {
    all() {
      try {
        return Object.keys(localStorage).filter((name) => name.startsWith(HELD))
          .map((name) => ({ name, ...JSON.parse(localStorage.getItem(name)) }));
      } catch (_) { return []; }
    },
    put(name, value) { try { localStorage.setItem(name, JSON.stringify(value)); } catch (_) { /* see above */ } },
    drop(name) { try { localStorage.removeItem(name); } catch (_) { /* see above */ } },
  };
  held.all().filter((one) => !(Date.now() - one.at < HELD_FOR_MS)).forEach((one) => held.drop(one.name));

  const kept = document.querySelector("[data-kept-form]");
  if (kept) held.drop(HELD + kept.dataset.keptForm);

  const form = document.querySelector("form.sheet[data-drafts]");
  const sign = document.getElementById("draft-sign");
  if (!form || !sign) return;
  const field = (name) => form.querySelector(`[name="${CSS.escape(name)}"]`);
  const mine = HELD + field("inspection").value;
  form.querySelectorAll(".so-far").forEach((one) => { one.hidden = true; });

  function typed() {
    return Array.from(new FormData(form)).filter(([name]) => name !== "csrf_token" && name !== "draft");
  }
  const written = () => JSON.stringify(typed());
  let arrived = form.dataset.arrived === "no" ? "" : written();
  let timer = 0, tries = 0, isBusy = false, isOver = false;

  function say(words, link) {
    if (sign.textContent !== words) sign.textContent = words;
    if (link) {
      const way = document.createElement("a");
      way.href = link; way.target = "_blank"; way.rel = "noopener"; way.textContent = "Sign in";
      sign.append(" ", way, ".");
    }
  }
  const time = () => new Date().toLocaleTimeString("en-US", { hour: "numeric", minute: "2-digit" }).replace(/\s?([AP]M)/, (_, half) => ` ${half.toLowerCase()}`);

  // Presses of the form's other script change fields without an event of their own, so what it holds is compared.
  function look() {
    if (isOver || written() === arrived) return;
    hold();
    if (!isBusy && !timer) {
      if (!tries) say("Not kept yet.");
      timer = setTimeout(send, WAIT_MS);
    }
  }
  ["input", "change", "click"].forEach((what) => form.addEventListener(what, () => setTimeout(look, 0)));

  function hold() {
    const fields = typed().filter(([name]) => !NOT_HELD.test(name));
    held.put(mine, { action: form.getAttribute("action"), at: Date.now(), fields });
  }

  async function send() {
    clearTimeout(timer);
    timer = 0;
    if (isBusy || isOver || written() === arrived) return;
    isBusy = true;
    const sent = written();
    let answer = null;
    try { answer = await post(); } catch (_) { /* no connection, or nobody answered in time */ }
    isBusy = false;
    if (answer && answer.status === 200) {
      arrived = sent;
      tries = 0;
      field("draft").value = answer.told.draft;
      if (written() === arrived) { held.drop(mine); say(answer.told.says); } else look();
      return;
    }
    again(answer);
  }

  function again(answer) {
    const why = answer && answer.told && answer.told.why;
    if (answer && (answer.status === 409 || answer.status === 422)) {
      isOver = true;
      say(answer.told.says);
      return;
    }
    if (why === "old_token") { freshToken(); return; }
    tries += 1;
    if (why === "signed_out") say("Not kept yet: you are signed out.", "/sign-in");
    else if (!answer) say(`Not kept yet: no connection (tried at ${time()}).`);
    else say(`Not kept yet: the shop's server has trouble (tried at ${time()}).`);
    timer = setTimeout(send, Math.min(MOST_WAIT_MS, 1000 * 2 ** tries));
  }

  async function post() {
    const stop = new AbortController();
    const clock = setTimeout(() => stop.abort(), GIVE_UP_MS);
    try {
      const response = await fetch(form.dataset.drafts, {
        method: "POST", body: new URLSearchParams(new FormData(form)), headers: { Accept: "application/json" },
        redirect: "manual", keepalive: document.visibilityState === "hidden", signal: stop.signal,
      });
      const isJson = (response.headers.get("Content-Type") || "").startsWith("application/json");
      return { status: response.status, told: isJson ? await response.json() : null };
    } finally { clearTimeout(clock); }
  }

  // Somebody signed in anew in another tab: this page's token is of the session before.
  async function freshToken() {
    try {
      const page = await (await fetch("/account")).text();
      const token = new DOMParser().parseFromString(page, "text/html").querySelector("[name=csrf_token]");
      const isNew = token && token.value !== field("csrf_token").value;
      if (isNew) field("csrf_token").value = token.value;
      tries += isNew ? 0 : 1;
      timer = setTimeout(send, isNew ? 0 : Math.min(MOST_WAIT_MS, 1000 * 2 ** tries));
    } catch (_) { again(null); }
  }

  const now = () => { tries = Math.min(tries, 1); send(); };
  window.addEventListener("online", now);
  document.addEventListener("visibilitychange", now);
  form.addEventListener("submit", () => { isOver = true; clearTimeout(timer); if (written() !== arrived) hold(); });
  // Back from a page that was sent: it goes on as before.
  window.addEventListener("pageshow", (event) => { if (event.persisted) { isOver = false; look(); } });

  // What this browser still holds of this car and the shop's server may not have.
  if (form.dataset.arrived === "yes") held.drop(mine);
  held.all().filter((one) => one.action === form.getAttribute("action")).forEach((one) => {
    const differs = one.fields.filter(([name, value]) => valueOf(name) !== value);
    // Each form has a name and a time of its own; with them it goes on as the one that it was.
    const count = differs.filter(([name]) => name !== "inspection" && name !== "inspected_at").length;
    if (count) offer(one, differs, count); else held.drop(one.name);
  });

  look();

  function valueOf(name) { return new FormData(form).get(name); }

  function offer(one, differs, count) {
    const at = new Date(one.at).toLocaleString("en-US", { month: "short", day: "numeric", hour: "numeric", minute: "2-digit" });
    const box = document.createElement("div");
    box.className = "notice";
    box.setAttribute("role", "status");
    const words = document.createElement("p");
    words.textContent = `This tablet holds what was typed on ${at} and did not reach the shop: ${count === 1 ? "one field" : `${count} fields`}.`;
    const put = button("Put it in", "second", () => { differs.forEach(([name, value]) => fill(name, value)); });
    const drop = button("Throw it away", "plain", () => {});
    [put, drop].forEach((press) => press.addEventListener("click", () => { held.drop(one.name); box.remove(); setTimeout(look, 0); }));
    const row = document.createElement("div");
    row.className = "buttons";
    row.append(put, drop);
    box.append(words, row);
    form.before(box);
  }

  function button(words, kind, press) {
    const made = document.createElement("button");
    made.type = "button";
    made.className = kind;
    made.textContent = words;
    made.addEventListener("click", press);
    return made;
  }

  function fill(name, value) {
    form.querySelectorAll(`[name="${CSS.escape(name)}"]`).forEach((one) => {
      if (one.type === "radio" || one.type === "checkbox") one.checked = one.value === value;
      else one.value = value;
    });
  }
})();
