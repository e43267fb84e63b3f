// Functions that run in the browser to show the effect of a theme's traps. Each is sent as text, so it uses nothing
// outside itself.

/** Marks cards and parts with attributes, so that rules find them after the markup is changed. */
export function nameParts(selectors) {
  const {row, ...roles} = selectors;
  for (const [role, selector] of Object.entries(roles)) {
    for (const element of document.querySelectorAll(`.walks-3 ${selector}`)) element.dataset.role = role;
  }
  (document.querySelector(row ? `.walks-3 ${row}` : '.walks-3')).dataset.role = 'row';
}

/** For each trap in the markup, the function that removes it. */
export const undoings = {
  'button-wrapped-once': unwrapButtons,
  'button-wrapped-twice': unwrapButtons,
  'content-box': () => document.head.insertAdjacentHTML('beforeend', '<style>*, *::before, *::after { box-sizing: border-box }</style>'),
  'heading-link': () => document.querySelectorAll('[data-role="heading"] a').forEach((link) => link.replaceWith(...link.childNodes)),
  'list-cards': () => {
    const stays = (element, name) => {
      const other = document.createElement(name);
      for (const {name: key, value} of element.attributes) other.setAttribute(key, value);
      other.append(...element.childNodes);
      element.replaceWith(other);
    };
    document.querySelectorAll('li[data-role="card"]').forEach((card) => stays(card, 'div'));
    document.querySelectorAll('ul[data-role="row"]').forEach((row) => stays(row, 'div'));
  },
  'outer-class': () => {
    document.querySelector('.walks-3').classList.remove('walks-3');
    document.querySelector('[data-role="row"]').classList.add('walks-3');
  },
  'picture-space': () => {
    for (const picture of document.querySelectorAll('[data-role="picture"]')) {
      while (picture.parentElement.dataset.role !== 'card') picture.parentElement.replaceWith(...picture.parentElement.childNodes);
    }
  },
  'right-to-left': () => document.documentElement.removeAttribute('dir'),
};

function unwrapButtons() {
  for (const button of document.querySelectorAll('[data-role="button"]')) {
    while (button.parentElement.dataset.role !== 'card') button.parentElement.replaceWith(...button.parentElement.childNodes);
  }
}

/**
 * Boxes of row, cards and parts from the row's top left corner, as [x, y, width, height] by name, and the look of each
 * card and of the innermost element of each part that contains all of its text.
 */
export function readNaive() {
  const corner = document.querySelector('[data-role="row"]').getBoundingClientRect();
  const boxes = {};
  const looks = {};
  const properties = [
    'color', 'fontStyle', 'textDecorationLine', 'textUnderlineOffset', 'textTransform', 'letterSpacing', 'wordSpacing', 'textAlign', 'hyphens', 'textWrapStyle',
    'listStyleType', 'boxShadow',
  ];
  for (const element of document.querySelectorAll('[data-role]')) {
    const role = element.dataset.role;
    const name = `${role} ${Object.keys(boxes).filter((each) => each.startsWith(role)).length}`;
    const {x, y, width, height} = element.getBoundingClientRect();
    boxes[name] = [x - corner.x, y - corner.y, width, height];
    let innermost = element;
    while (role !== 'card' && role !== 'row' && innermost.children.length === 1 && innermost.textContent.trim() === innermost.children[0].textContent.trim()) {
      innermost = innermost.children[0];
    }
    const style = getComputedStyle(innermost);
    for (const property of properties) looks[`${name}: ${property}`] = style[property];
  }
  return {boxes, looks};
}
