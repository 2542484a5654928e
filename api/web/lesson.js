// Leads through a lesson one move at a time in the same place, lights what belongs
// together, and opens the printer's window. Everything else of the page, and the
// moves one at a time as pages of their own, work without it.
"use strict";
(function () {
  var lesson = document.getElementById("lesson");
  var moves = Array.from(lesson.querySelectorAll(".move"));
  var walk = lesson.querySelector(".walk");
  var story = document.getElementById("story");
  var now = document.getElementById("now");
  var calm = matchMedia("(prefers-reduced-motion: reduce)");
  var stations = Array.from(walk.querySelectorAll(".stations a"));
  var name = document.title.split(" · ").slice(-2).join(" · ");

  function at() {
    return lesson.classList.contains("one") ? moves.findIndex(function (m) { return !m.hidden; }) : -1;
  }

  // Pictures of one lesson have one scale, so the new one is laid over the old one
  // and fades in: what is the same in both stands still.
  function overlay(from, to) {
    if (calm.matches || !from || !to) return;
    var old = Array.from(from.querySelectorAll(".picture > *")).find(function (n) { return n.getClientRects().length; });
    var room = to.querySelector(".picture");
    if (!old || !room) return;
    var under = old.cloneNode(true);
    under.classList.add("under");
    under.setAttribute("aria-hidden", "true");
    under.removeAttribute("alt");
    room.append(under);
    room.classList.add("arriving");
    room.addEventListener("animationend", function () {
      room.classList.remove("arriving");
      under.remove();
    }, { once: true });
  }

  function go(n) {
    var before = at();
    if (n < 0 || n >= moves.length || n === before || before < 0) return;
    overlay(moves[before], moves[n]);
    moves.forEach(function (m, i) { m.hidden = i !== n; });
    stations.forEach(function (s, i) {
      if (i === n) s.setAttribute("aria-current", "step");
      else s.removeAttribute("aria-current");
    });
    lead(".back", n - 1);
    lead(".on", n + 1);
    if (story) story.hidden = n < moves.length - 1;
    var says = stations[n].getAttribute("aria-label");
    document.title = says + " · " + name;
    now.textContent = says + ": " + moves[n].querySelector("h3 > :last-child").textContent;
    history.replaceState(null, "", moves[n].dataset.url);
  }

  function lead(which, n) {
    var link = walk.querySelector(which);
    if (n >= 0 && n < moves.length) {
      link.href = moves[n].dataset.url;
      link.removeAttribute("aria-disabled");
    } else {
      link.removeAttribute("href");
      link.setAttribute("aria-disabled", "true");
      if (document.activeElement === link) stations[at()].focus();
    }
  }

  walk.addEventListener("click", function (event) {
    var link = event.target.closest("a");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey || event.button) return;
    event.preventDefault();
    if (link.matches(".back")) go(at() - 1);
    else if (link.matches(".on")) go(at() + 1);
    else go(stations.indexOf(link));
  });

  document.addEventListener("keydown", function (event) {
    if (event.target.closest("input, button, summary") || event.altKey || event.ctrlKey || event.metaKey || at() < 0) return;
    var step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (step) go(at() + step);
  });

  var touch = null;
  lesson.addEventListener("touchstart", function (event) {
    var still = event.touches.length === 1 && !event.target.closest(".symbols");
    touch = still ? [event.touches[0].clientX, event.touches[0].clientY] : null;
  }, { passive: true });
  lesson.addEventListener("touchend", function (event) {
    if (!touch || at() < 0) return;
    var far = 40; // pixels; less is a tap
    var x = event.changedTouches[0].clientX - touch[0], y = event.changedTouches[0].clientY - touch[1];
    if (Math.abs(x) > far && Math.abs(x) > 2 * Math.abs(y)) go(at() + (x < 0 ? 1 : -1));
    touch = null;
  }, { passive: true });

  // Lighting. In a picture a role is known by its color, which the style sheet has
  // from the same table as the picture.
  var roles = ["first", "second", "result", "moved", "gone"];
  var paints = { text: "", edge: "-edge", deep: "-deep", tint: "-tint" };

  function colors() {
    var style = getComputedStyle(document.documentElement), of = {};
    var plain = style.getPropertyValue("--paper").trim();
    roles.forEach(function (role) {
      Object.keys(paints).forEach(function (paint) {
        var color = style.getPropertyValue("--" + role + paints[paint]).trim();
        if (color && color !== plain && !of[color]) of[color] = role;
      });
    });
    return of;
  }

  // Puts the picture itself in the page in place of the image, once, and names the
  // roles of its shapes.
  function open(move) {
    if (move.dataset.open) return;
    move.dataset.open = "yes";
    var image = Array.from(move.querySelectorAll(".picture img")).find(function (n) { return n.getClientRects().length; });
    if (!image || document.documentElement.classList.contains("ink")) return;
    fetch(image.src).then(function (answer) { return answer.text(); }).then(function (text) {
      var drawn = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
      if (drawn.nodeName !== "svg") return;
      var of = colors();
      drawn.querySelectorAll("[fill], [stroke]").forEach(function (shape) {
        var role = of[shape.getAttribute("fill")] || of[shape.getAttribute("stroke")];
        if (role) shape.dataset.role = role;
      });
      // The words of the picture stay those of the image.
      drawn.querySelectorAll("title, desc").forEach(function (n) { n.remove(); });
      drawn.setAttribute("aria-label", image.alt);
      drawn.setAttribute("class", image.className);
      image.replaceWith(document.importNode(drawn, true));
    }).catch(function () { delete move.dataset.open; });
  }

  function roleAt(target) {
    var one = target.closest("[data-role], .first, .second, .result, .moved, .gone");
    if (!one || one.closest(".key")) return "";
    return one.dataset.role || roles.find(function (r) { return one.classList.contains(r); }) || "";
  }

  var kept = ""; // what the key lights in all moves
  moves.forEach(function (move) {
    move.addEventListener("pointerenter", function () { open(move); });
    move.addEventListener("pointerover", function (event) { light(move, roleAt(event.target) || kept); });
    move.addEventListener("pointerleave", function () { light(move, kept); });
  });

  function light(move, role) {
    if (role) move.dataset.lit = role;
    else delete move.dataset.lit;
  }

  lesson.querySelectorAll(".key li").forEach(function (one) {
    var button = document.createElement("button");
    button.type = "button";
    button.append.apply(button, Array.from(one.childNodes));
    button.setAttribute("aria-pressed", "false");
    one.append(button);
    button.addEventListener("click", function () {
      kept = kept === one.dataset.role ? "" : one.dataset.role;
      lesson.querySelectorAll(".key button").forEach(function (b) {
        b.setAttribute("aria-pressed", String(b.parentNode.dataset.role === kept));
      });
      moves.forEach(function (m) { open(m); light(m, kept); });
    });
  });

  var print = document.querySelector("button.print");
  print.hidden = false;
  print.addEventListener("click", function () { window.print(); });
})();
