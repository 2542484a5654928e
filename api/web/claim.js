// Reads a page to the child, and goes on and back by the arrow keys. Where the
// browser has no voice its buttons stay hidden, and the page works as it is.
"use strict";
(function () {
  var voice = window.speechSynthesis;
  if (voice && window.SpeechSynthesisUtterance) {
    document.querySelectorAll("[data-say]").forEach(function (button) {
      button.hidden = false;
      button.addEventListener("click", function () {
        voice.cancel();
        var said = new SpeechSynthesisUtterance(button.dataset.say);
        said.lang = document.documentElement.lang;
        said.rate = 0.9;
        voice.speak(said);
      });
    });
  }
  document.addEventListener("keydown", function (event) {
    if (event.target.closest("input") || event.altKey || event.ctrlKey || event.metaKey) return;
    var way = { ArrowRight: "next", ArrowLeft: "prev" }[event.key];
    var link = way && document.querySelector('a[rel="' + way + '"]');
    if (link) link.click();
  });
})();
