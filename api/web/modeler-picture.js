// <modeler-picture problem="3/4 = 6/8"></modeler-picture> shows the picture of a
// problem. Its attributes are the parameters of /v1/picture.svg; the pictures come
// from where this script does. The words of the picture become its alternative
// text, and it is dark where the reader's screen is, unless a theme is set.
const home = new URL(".", import.meta.url);
const parameters = ["problem", "model", "step", "answer", "theme", "words"];

class ModelerPicture extends HTMLElement {
  static observedAttributes = parameters;

  connectedCallback() {
    this.dark = matchMedia("(prefers-color-scheme: dark)");
    this.redraw = () => this.draw();
    this.dark.addEventListener("change", this.redraw);
    this.draw();
  }

  disconnectedCallback() {
    this.dark.removeEventListener("change", this.redraw);
  }

  attributeChangedCallback() {
    if (this.dark) this.draw(); // not while it is being made, before it is connected
  }

  address(format) {
    const url = new URL("v1/picture." + format, home);
    for (const name of parameters) {
      if (this.hasAttribute(name)) url.searchParams.set(name, this.getAttribute(name));
    }
    if (format === "svg" && !this.hasAttribute("theme") && this.dark.matches) url.searchParams.set("theme", "dark");
    return url;
  }

  async draw() {
    let image = this.querySelector("img");
    if (!image) {
      image = document.createElement("img");
      image.style.maxWidth = "100%";
      this.append(image);
    }
    image.src = this.address("svg");
    image.alt = this.getAttribute("problem") || "";
    const words = this.address("txt");
    try {
      const answer = await fetch(words);
      if (answer.ok && words.href === this.address("txt").href) image.alt = (await answer.text()).trim();
    } catch {
      // Without the words the problem itself is the text.
    }
  }
}

customElements.define("modeler-picture", ModelerPicture);
