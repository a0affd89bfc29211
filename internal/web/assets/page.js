// Sends what is typed and answered without reloading, and puts what comes back into the page: what the reader is doing
// there, the focus, the caret and the opened parts, stays. Without this script the same forms load the same pages.
"use strict";
(() => {
  let sending = false, waiting = [];
  document.documentElement.classList.add("scripted");

  addEventListener("input", (event) => {
    const form = event.target.closest("form[data-live]");
    if (form && event.target.hasAttribute("data-type")) send(form, null);
  });

  addEventListener("submit", (event) => {
    const form = event.target.closest("form[data-live], form[data-stay]");
    if (!form || event.defaultPrevented) return;
    event.preventDefault();
    send(form, event.submitter);
  });

  document.addEventListener("click", (event) => {
    const ask = event.target.closest("[data-print]");
    if (ask) print();
    const copy = event.target.closest("[data-copy]");
    if (copy && navigator.clipboard) navigator.clipboard.writeText(document.getElementById(copy.dataset.copy).textContent);
  });

  // What a sheet shows on paper is open while it prints, also where the browser cannot open it by style.
  addEventListener("beforeprint", () => document.querySelectorAll("details.printed:not([open])").forEach((part) => { part.open = true; part.dataset.shut = ""; }));
  addEventListener("afterprint", () => document.querySelectorAll("details[data-shut]").forEach((part) => { part.open = false; delete part.dataset.shut; }));

  // A file that is chosen or dropped is sent at once. While it is dragged over the page, the page shows that it takes it.
  addEventListener("change", (event) => {
    const form = event.target.closest("form[data-live]");
    if (form && event.target.hasAttribute("data-file") && event.target.files.length) send(form, form.querySelector("button"));
  });
  const dropping = () => document.querySelector("form[data-drop]") || document.querySelector("[data-file]")?.form;
  const dragged = (event, on) => {
    if (!event.dataTransfer?.types.includes("Files") || !dropping()) return false;
    event.preventDefault();
    document.body.classList.toggle("dropping", on);
    return true;
  };
  addEventListener("dragover", (event) => dragged(event, true));
  addEventListener("dragleave", (event) => { if (!event.relatedTarget) dragged(event, false); });
  addEventListener("drop", (event) => {
    if (!dragged(event, false) || !event.dataTransfer.files.length) return;
    const form = dropping(), file = form.querySelector("[data-file]");
    for (let part = form.closest("details"); part; part = part.parentElement.closest("details")) part.open = true;
    file.files = event.dataTransfer.files;
    send(form, form.querySelector("button"));
  });

  // send sends a form, one after the other: what is typed or pressed while an answer is under way is sent when it has
  // come, what is typed into one form once, as it stands then.
  async function send(form, button) {
    if (sending) {
      if (button || !typing(form)) waiting.push([form, button]);
      return;
    }
    sending = true;
    const data = new FormData(form, button || undefined);
    let address = button?.getAttribute("formaction") || form.action, options = {};
    if (form.method === "get") {
      const url = new URL(address, location.href);
      url.search = new URLSearchParams(data).toString();
      address = url.href;
    } else {
      options = { method: "POST", body: form.enctype === "multipart/form-data" ? data : new URLSearchParams(data) };
    }
    try {
      const answer = await fetch(address, options);
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      if (!page.querySelector("main")) throw new Error(answer.statusText);
      if (!answer.ok && answer.status !== 422 && answer.status !== 409) { // the page it was sent from stays
        trouble(page.querySelector("main p:not([hidden])")?.textContent);
        return done();
      }
      if (answer.ok) history.replaceState(null, "", answer.url.replace(/#.*/, ""));
      const file = form.querySelector("[data-file]");
      if (file) file.value = ""; // its text stands in the page now
      const chip = answer.ok && button && form.closest("details.chip");
      if (answer.ok && button && form.hasAttribute("data-reset")) form.reset();
      if (chip) { chip.open = false; if (chip.contains(document.activeElement)) chip.querySelector("summary").focus(); }
      put(page, button && form.dataset.then);
      document.getElementById("offline")?.setAttribute("hidden", "");
    } catch {
      trouble();
    }
    done();
  }

  // trouble says what went wrong without taking the page away.
  function trouble(text) {
    const place = document.getElementById("offline");
    if (!place) return;
    place.textContent = text || place.dataset.text;
    place.hidden = false;
  }

  function done() {
    sending = false;
    while (waiting.length && !sending) { const next = waiting.shift(); if (next[0].isConnected) send(...next); }
  }

  // typing says whether what was typed into a form waits to be sent.
  const typing = (form) => waiting.some(([other, button]) => other === form && !button);

  // put takes the parts of a new page over into this one; then, the place to go on at, gets the focus if it was lost.
  function put(page, then) {
    const active = document.activeElement;
    document.title = page.title;
    document.body.className = page.body.className;
    for (const part of ["main", "header"]) {
      const old = document.querySelector("body > " + part), fresh = page.querySelector("body > " + part);
      if (old && fresh) morph(old, fresh);
    }
    const goOn = then && document.getElementById(then);
    if (goOn && (!active || !active.isConnected || active.closest("[data-then]"))) {
      (goOn.querySelector("input:not([type=hidden]), select, button") || goOn).focus({ preventScroll: false });
    }
  }

  const key = (node) => node.nodeType === 1 ? node.id || node.dataset?.key || "" : "";
  const alike = (a, b) => a.nodeType === b.nodeType && a.nodeName === b.nodeName && key(a) === key(b);

  // morph makes an element like another, changing only what differs.
  function morph(old, fresh) {
    attributes(old, fresh);
    let at = old.firstChild;
    for (const child of [...fresh.childNodes]) {
      let found = at;
      if (key(child)) { while (found && !alike(found, child)) found = found.nextSibling; }
      else if (found && !alike(found, child)) { found = key(found) ? null : found; }
      if (found && alike(found, child)) {
        while (at !== found) { const gone = at; at = at.nextSibling; gone.remove(); }
        at = found.nextSibling;
        if (found.nodeType === 1) morph(found, child);
        else if (found.nodeValue !== child.nodeValue) found.nodeValue = child.nodeValue;
      } else {
        old.insertBefore(document.importNode(child, true), at);
      }
    }
    while (at) { const gone = at; at = at.nextSibling; gone.remove(); }
  }

  function attributes(old, fresh) {
    const changed = old.defaultValue !== fresh.defaultValue; // by the server; what somebody typed meanwhile stays
    for (const { name, value } of [...fresh.attributes]) {
      if (old.getAttribute(name) !== value && !(old.nodeName === "DETAILS" && name === "open")) old.setAttribute(name, value);
    }
    for (const { name } of [...old.attributes]) {
      if (!fresh.hasAttribute(name) && !(old.nodeName === "DETAILS" && name === "open")) old.removeAttribute(name);
    }
    if (old === document.activeElement || old.form && typing(old.form)) return; // somebody is typing there
    if (changed && (old.nodeName === "INPUT" && old.type !== "hidden" || old.nodeName === "TEXTAREA")) old.value = fresh.value;
    if (old.nodeName === "SELECT") queueMicrotask(() => { if (old.querySelector("option[selected]")) old.value = old.querySelector("option[selected]").value; });
  }
})();
