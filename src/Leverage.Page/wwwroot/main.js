// Starts the page: the core, the views, the address.
import { $, make } from "./dom.js";
import { questions, started } from "./core.js";
import * as address from "./address.js";
import { loosenView } from "./loosen.js";
import { tightenView } from "./tighten.js";
import { tablesView } from "./tables.js";
import { chestView } from "./chest.js";
import { jobView } from "./job.js";
import { lessonView } from "./lesson.js";

const makers = { loosen: loosenView, tighten: tightenView, tables: tablesView, chest: chestView, job: jobView, lesson: lessonView };
const views = {};
let shown = "";

function show() {
  const place = address.read();
  const name = Object.hasOwn(makers, place.view) ? place.view : "loosen";
  views[name] ??= makers[name](lists);
  if (shown !== name) {
    shown = name;
    $("main").replaceChildren(views[name].element);
    $("verdict").hidden = name !== "loosen";
    document.body.dataset.view = name;
    for (const link of document.querySelectorAll("[data-view]")) {
      if (link.dataset.view === name) link.setAttribute("aria-current", "page");
      else link.removeAttribute("aria-current");
    }
    document.title = name === "loosen" ? "Leverage" : `Leverage: ${name}`;
  }
  views[name].show(place);
}

/** A link to another view takes the set-up along where that view can use it. */
function follow(event) {
  const link = event.target.closest("a[data-view], a[data-skip]");
  if (!link) return;
  event.preventDefault();
  if (link.dataset.skip) return $("main").focus();
  const view = link.dataset.view;
  const fields = views.loosen?.fields() ?? address.read().fields;
  const own = view === "tables" ? {} : view === "tighten" ? views.tighten?.fields() ?? {} : fields;
  address.write({ view, fields: own }, true);
  show();
  scrollTo(0, 0);
}

async function keep() {
  const offline = $("offline");
  if (globalThis.leverageParts) offline.textContent = "This is the single file: it needs no network and no server.";
  else if (!("serviceWorker" in navigator)) {
    offline.textContent = "Over plain http a browser keeps no copy for later. The single file leverage.html does: keep it on the phone. ";
    if ((await fetch("leverage.html", { method: "HEAD" })).ok) offline.append(make("a", { href: "leverage.html", download: "leverage.html", text: "Fetch it here." }));
  }
  else {
    try {
      await navigator.serviceWorker.register("sw.js");
      await navigator.serviceWorker.ready;
      offline.textContent = "Kept on this device: it works without a network from now on.";
      document.documentElement.dataset.kept = "yes";
    } catch {
      offline.textContent = "This browser keeps no copy for later. The single file leverage.html does.";
    }
  }
}

/** The page takes the place of the words that stood in for it. */
function ready() {
  $("starting")?.remove();
  document.documentElement.dataset.ready = "yes";
}

let lists;
try {
  // The letters first: what is shown then stays where it is.
  [lists] = await Promise.all([questions, started, ...["1rem", "700 1rem"].map(size => document.fonts.load(`${size} "Leverage Sans"`).catch(() => null))]);
  document.addEventListener("click", follow);
  addEventListener("popstate", show);
  addEventListener("hashchange", show);
  show();
  ready();
  keep();
} catch (problem) {
  const old = "This browser could not start the page. It needs WebAssembly: Chrome or Edge from 95, Firefox from 100, Safari from 16.4.";
  $("main").replaceChildren(make("p", { className: "refusal", role: "alert", text: old }), make("p", { className: "quiet", text: String(problem) }));
  ready();
  $("word").textContent = "no answer";
  $("why").textContent = "The page could not start.";
}
