// Texts that would act as code if a page were assembled without escaping.

/** Texts for copy, alternative text, accessible names, links and titles. */
export const hostileTexts = [
  '</style><script>top.hits.push("style")</script>',
  '<script>top.hits.push("script")</script>',
  '</p></article></section></body><h1>Out</h1>',
  '<img src=x onerror=top.hits.push("img")>',
  '<svg onload=top.hits.push("svg")></svg>',
  '" onmouseover="top.hits.push(1)" x="',
  "' onfocus='top.hits.push(2)' autofocus x='",
  '"><iframe src=//127.0.0.1:9/></iframe>',
  '<!-- <style> ]]> --> <![CDATA[ ?> <?php',
  '&lt;b&gt; &amp; &quot; &#60; &#x3c; &nbsp; &notit; &',
  '\\3c script\\3e *{} /* } @import "//127.0.0.1:9/x.css"; */ url(//127.0.0.1:9/y)',
  '${top.hits.push(3)} {{top.hits}} `<%= 1 %>`',
  'javascript:top.hits.push("link")',
  ' \u0001JaVa\tScRiPt:top.hits.push("tab")',
  'data:text/html,<script>top.hits.push("data")</script>',
  'vbscript:x//http://a',
  '\u0000<\u0000script\u0000>\u0000',
  'low\u202etide\u202c \u2066marsh\u2069 \u200f\u061c\u2067walk',
  '\ufeff\u200b\u2028\u2029\u0085\u00ad\ufffe\u007f\u009b',
  '\ud83c\udf0a tide \u{10ffff} \u{1f468}\u200d\u{1f469}\u200d\u{1f467}',
  '#tide',
  'https://example.org/?a=1&copy=2&"<>\'',
];

const halves = ['a\ud800b', 'a\udc00', '\udfff\ud800'];

/** Project files that must be refused, each with the reason. */
export function refusedProjects(project) {
  const spoilt = [];
  const add = (what, change) => {
    const copy = structuredClone(project);
    change(copy);
    spoilt.push({what, json: JSON.stringify(copy)});
  };
  for (const text of halves) add(`half a surrogate pair, ${JSON.stringify(text)}`, (copy) => (copy.cards[0].parts[1].copy = text));
  for (const name of ['</style>', 'a b', 'a"b', 'a{}', '.a', '\u202ea', 'a\u0000', 'ä', '1a', '']) {
    add(`class ${JSON.stringify(name)}`, (copy) => (copy.variants[0].class = name));
    add(`row ${JSON.stringify(name)}`, (copy) => (copy.row = name));
    add(`role ${JSON.stringify(name)}`, (copy) => (copy.cards[0].parts[1].role = name));
  }
  for (const language of ['en"><script>', 'e', 'en_GB', 'en-']) add(`language ${language}`, (copy) => (copy.language = language));
  for (const family of ['a\nb', '\u0000']) add(`family ${JSON.stringify(family)}`, (copy) => (copy.style.text.body.family = [family]));
  return spoilt;
}

/** A page with a row of cards that has `texts` as classes, ids, addresses, texts and attributes, and handlers of events. */
export function pageWith(texts) {
  const quoted = (text) => text.replaceAll('\0', '').replaceAll('&', '&amp;').replaceAll('"', '&quot;');
  const escaped = (text) => quoted(text).replaceAll('<', '&lt;');
  const cards = texts.map(
    (text, i) => `<article class="card ${quoted(text)}" id="${quoted(text)}" onclick="top.hits.push(${i})" data-x="${quoted(text)}">
      <img src="${quoted(text)}" srcset="${quoted(text)} 2x" alt="${quoted(text)}" onerror="top.hits.push('src')">
      <h3 style="background: url(${quoted(text)})">Low tide ${escaped(text)}</h3>
      <p lang="${quoted(text)}">${escaped(text)} <b onmouseover="top.hits.push('b')">Marsh</b></p>
      <script>top.hits.push('script')</script>
      <a href="${quoted(text)}" target="${quoted(text)}" ping="http://127.0.0.1:9/">Book</a></article>`,
  );
  return `<!doctype html><html lang="en"><title>${escaped(texts[0])}</title><base href="http://127.0.0.1:9/">
    <style>.row { display: grid; grid-template-columns: repeat(3, 1fr); background: url(//127.0.0.1:9/z) }
    .card::before { content: "</p><script>top.hits.push('content')<\\/script>" } @import "//127.0.0.1:9/i.css";</style>
    <div class="row">${cards.join('')}</div>`;
}

/** A card with `text` in every place that takes text. */
function card(picture, text) {
  return {
    parts: [
      {picture, size: [1200, 800], alt: text},
      {role: 'heading', copy: text},
      {role: 'heading', copy: text, link: text, name: text},
      {role: 'body', copy: [text, {strong: text}, {emphasis: text}, {break: true}, {link: text, to: text}]},
      {role: 'button', copy: text, link: text, name: text},
    ],
  };
}

/** A project with `texts` in every place; `families` come before a family that exists. */
export function projectOf(picture, texts, families) {
  return {
    format: 'tenter-project',
    version: 1,
    name: texts[0],
    row: 'walks',
    cards: texts.map((text) => card(picture, text)),
    style: {text: {body: {family: [...families, 'Lato', 'serif']}, heading: {family: [...families, 'Vollkorn', 'serif']}}},
    variants: [{class: 'walks-pair', name: texts[1 % texts.length], bands: [{upTo: 600, set: {row: {columns: 1}}}, {}]}],
  };
}
