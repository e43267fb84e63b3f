// Pages whose style sheets are written in different ways: utility classes, floats, nested and layered rules, logical and
// custom properties, container queries and so on. The text and the names are invented.
import {cards, documentOf, paragraphs, rowClass} from './frameworks.js';
import {box, simple, style, stylesAround} from './written_around.js';

const styles = {
  utility: style(
    `
    *,::before,::after { box-sizing:border-box; border:0 solid #ccc }
    body { margin:0; line-height:1.5 }
    .centred { margin-left:auto; margin-right:auto }
    .most-80 { max-width:80rem }
    .beside-4 { padding-left:1rem; padding-right:1rem }
    @media(min-width:640px) { .at-640-beside-6 { padding-left:1.5rem; padding-right:1.5rem }.at-640\\:two { grid-template-columns:repeat(2,minmax(0,1fr)) } }
    @media(min-width:1024px) { .at-1024-beside-8 { padding-left:2rem; padding-right:2rem }.at-1024\\:three { grid-template-columns:repeat(3,minmax(0,1fr)) } }
    .grid { display:grid }
    .apart-6 { gap:1.5rem }
    .between-4>:not([hidden])~:not([hidden]) { margin-top:calc(1rem*calc(1 - 0)); margin-bottom:0 }
    .flex { display:flex }
    .stacked { flex-direction:column }
    .rounded { border-radius:.25rem }
    .shadow { box-shadow:0 1px 2px #0003 }
    .inside-5 { padding:1.25rem }
    .large { font-size:1.25rem; line-height:1.75rem }
    .strong { font-weight:700 }
    img,video { max-width:100%; height:auto; display:block; vertical-align:middle }
    h1,h2,h3 { font-size:inherit; font-weight:inherit; margin:0 }
    p { margin:0 }
    a { color:inherit; text-decoration:inherit }
    .chip { display:inline-block }
    .full { width:100% }
    .high-48 { height:12rem }
    .covers { object-fit:cover }
    .spaced { letter-spacing:.025em }
    .uppercase { text-transform:uppercase }
    .truncate { overflow:hidden; text-overflow:ellipsis; white-space:nowrap }
    .lines-3 { overflow:hidden; display:-webkit-box; -webkit-box-orient:vertical; -webkit-line-clamp:3 }`,
    (r) => `<div class="centred most-80 beside-4 at-640-beside-6 at-1024-beside-8"><h2 class="large">What to see</h2>${r}</div>`, 'class="grid apart-6 at-640\\:two at-1024\\:three"',
    (c) => `<div class="flex stacked rounded shadow"><img class="full high-48 covers" ${c.picture} alt=""><div class="inside-5 between-4"><h3 class="large strong truncate">${c.title}</h3>${paragraphs(c, 'line-clamp-3')}<a class="chip uppercase spaced" href="#">${c.link}</a></div></div>`,
  ),
  bem: style(
    `
    .page { font:400 18px/1.6 Georgia,serif; margin:0 auto; max-width:72em; padding:0 5vw }
    .teaser-list { list-style:none; margin:2em -1em; padding:0; overflow:hidden }
    .teaser-list__item { float:left; width:50%; padding:1em }
    @media(max-width:45em) { .teaser-list__item { float:none; width:auto } }
    .teaser__title { font-size:1.333em; line-height:1.2; margin:.5em 0 .25em }
    .teaser__text+.teaser__text { text-indent:1.5em; margin-top:-1em }
    .teaser__media { margin:0; position:relative; padding-top:66.66% }
    .teaser__media img { position:absolute; inset:0; width:100%; height:100%; object-fit:cover }
    .teaser__more { display:inline-block; border:1px solid; padding:.25em 1em; margin-top:1em; white-space:nowrap }
    .teaser--wide .teaser__title { font-size:2em }`,
    (r) => `<h2>What to see</h2>${r}`, 'class="teaser-list"', (c, i) => `<li class="teaser-list__item"><article class="teaser${i === 0 ? ' teaser--wide' : ''}"><figure class="teaser__media"><img ${c.picture} alt=""></figure><h3 class="teaser__title">${c.title}</h3>${paragraphs(c, 'teaser__text')}<a class="teaser__more" href="#">${c.link}</a></article></li>`, {tag: 'ul', bodyClass: 'page'},
  ),
  floatgrid: style(
    `
    body { margin:0; font-size:14px }
    .container { width:960px; margin:0 auto }
    @media(max-width:979px) { .container { width:720px } }
    @media(max-width:767px) { .container { width:auto; padding:0 20px } }
    .row { margin-left:-20px }
    .row:before,.row:after { content:""; display:table }
    .row:after { clear:both }
    .third { float:left; margin-left:20px; width:300px }
    @media(max-width:979px) { .third { width:226px } }
    @media(max-width:767px) { .row { margin-left:0 }.third { float:none; width:100%; margin-left:0; display:block } }
    img { max-width:100%; height:auto; border:0 }
    h3 { font-size:24px; line-height:40px; margin:0 }
    p { margin:0 0 10px }
    .btn { display:inline-block; padding:4px 12px; margin-bottom:0; line-height:20px; border:1px solid #ccc; border-bottom-color:#b3b3b3 }`,
    (r) => `<div class="container"><h2>What to see</h2>${r}</div>`, 'class="row"', (c) => `<div class="third">${simple(c)}</div>`,
  ),
  autofit: style(
    `
    :root { --min:16rem; --gap:clamp(1rem,2vw,2rem) }
    body { margin:0; display:grid; grid-template-columns:[full-start] minmax(1rem,1fr) [main-start] minmax(0,70rem) [main-end] minmax(1rem,1fr) [full-end] }
    body>* { grid-column:main }
    body>.bleed { grid-column:full }
    .cards { display:grid; grid-template-columns:repeat(auto-fit,minmax(min(100%,var(--min)),1fr)); gap:var(--gap); padding:0; list-style:none }
    .cards>li { display:grid; grid-template-rows:subgrid; grid-row:span 4; gap:.5rem; border:1px solid }
    .cards img { width:100%; aspect-ratio:3/2; object-fit:cover }`,
    (r) => `<h2>What to see</h2>${r}`, 'class="cards"', (c) => `<li>${`<img ${c.picture} alt=""><h3>${c.title}</h3>${paragraphs(c)}<a href="#">${c.link}</a>`}</li>`, {tag: 'ul'},
  ),
  nested: style(
    `
    body { margin:0 }
    .site { & .inner { max-width:min(90%,64rem); margin:0 auto; & > .deck { display:flex; flex-flow:row wrap; gap:2ch; & > article { flex:1 1 18rem; padding:1lh; & h3 { margin:0; &:hover { color:red }& + p { margin-top:.5rem } }@media(width<=50rem) { flex-basis:100% }& :is(p,a) { max-width:40ch } } } } }`,
    (r) => `<div class="site"><div class="inner"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', (c) => `<article><img ${c.picture} alt=""><h3>${c.title}</h3>${paragraphs(c)}<a href="#">${c.link}</a></article>`,
  ),
  logical: style(
    `
    html { font-size:112.5% }
    body { margin:0; padding-inline:max(1rem,env(safe-area-inset-left,0px)); padding-block:2rem }
    .shell { inline-size:100%; max-inline-size:60rem; margin-inline:auto; padding-inline:1.5rem; border-inline:2px solid }
    .row { display:flex; flex-wrap:wrap; margin-inline:-.75rem; inset-inline-start:0 }
    .row>div { inline-size:50%; padding-inline:.75rem; margin-block-end:1.5rem; min-inline-size:14rem; flex:1 }
    h3 { margin-block:1em .5em; padding-block-start:.25em; border-block-start:3px solid }
    p { margin-block-start:0; max-block-size:12em; overflow:auto }
    img { inline-size:100%; block-size:auto; max-inline-size:20rem; margin-inline:auto; display:block }
    a { margin-block-start:1rem; padding-inline:1em; border-inline-start:4px solid; display:inline-block }`,
    (r) => `<div class="shell"><h2>What to see</h2>${r}</div>`, 'class="row"', simple,
  ),
  customprops: style(
    `
    :root { --w:1140px; --pad:calc(var(--unit)*2); --unit:8px; --cols:3; --fs:calc(1rem + .25vw); --cyc:var(--cyc2); --cyc2:var(--cyc) }
    @media(max-width:800px) { :root { --unit:6px; --w:100% } }
    @media(max-width:500px) { :root { --unit:4px } }
    body { margin:0; font-size:var(--fs) }
    .c { max-width:var(--w); padding:0 var(--pad); margin:0 auto; width:var(--cyc,auto) }
    .g { --gap:calc(var(--unit)*3); display:grid; grid-template-columns:repeat(var(--cols),1fr); gap:var(--gap) }
    .card { padding:var(--pad,10px) calc(var(--pad) / 2); border:var(--bw,1px) solid; font-size:var(--card-fs,inherit) }
    .card h3 { margin:0 0 var(--undefined,0.5em); font:var(--hf,600 1.2em/1.2 Georgia) }
    .card p { margin:var(--unit) 0; letter-spacing:var(--ls,0.01em) }
    .btn { --p:var(--unit); padding:var(--p) calc(var(--p)*2); display:inline-block }`,
    (r) => `<div class="c"><h2>What to see</h2>${r}</div>`, 'class="g"', simple,
  ),
  minified: style(
    `
    body,h2,h3,p { margin:0 }
    body { font:16px/1.5 arial }
    .a { width:90%; max-width:1000px; margin:auto }
    .b { display:flex; flex-wrap:wrap; margin:0 -10px }
    .b>* { width:33.3333%; padding:10px; box-sizing:border-box }
    @media only screen and (max-width:48em) and (min-width:32em) { .b>* { width:50% } }
    @media (max-width:31.99em) { .b>* { width:100% } }
    .b img { width:100%!important; height:200px!important; object-fit:cover }
    .b h3 { font-size:20px!important; line-height:1.1!important; margin:10px 0!important }
    .b p { font-size:14px!important }
    .b a { display:inline-block!important; padding:5px 10px!important; background:#333!important; color:#fff!important; font-size:13px!important; line-height:1!important }`,
    (r) => `<div class="a"><h2>What to see</h2>${r}</div>`, 'class="b"', (c) => `<div>${simple(c)}</div>`,
  ),
  inline: style(
    `
    body { margin:0 }
    .x { padding:0 3% }`,
    (r) => `<div class="x" style="max-width: 1100px; margin: 0 auto"><h2 style="margin:0">What to see</h2>${r}</div>`, 'style="display:flex;gap:20px;flex-wrap:wrap"',
    (c) => `<div style="flex:1 1 280px;padding:16px;border:1px solid #ccc;text-align:center"><img style="width:100%;height:180px;object-fit:cover" ${c.picture} alt=""><h3 style="font-size:22px;margin:12px 0 4px;line-height:1.3">${c.title}</h3>${c.text.map((t) => `<p style="font-size:15px;color:#444;margin:0 0 12px">${t}</p>`).join('')}<a href="#" style="display:inline-block;padding:8px 20px;background:#036;color:#fff">${c.link}</a></div>`,
  ),
  important: style(
    `
    body { margin:0!important }
    #main .zone .deck>.card { width:32%!important; margin:0 .5%!important; float:left!important; padding:10px!important }
    #main .zone { width:94%!important; max-width:1300px!important; margin:0 auto!important }
    #main .zone .deck { margin:0 -5px!important; display:block!important }
    #main .zone .deck h3 { font-size:1.4em!important; margin:.2em 0!important }
    #main .zone .deck a.btn { display:block!important; padding:10px!important }
    #main p { margin:0 0 1em!important; font-size:15px!important }
    @media(max-width:700px) { #main .zone .deck>.card { width:99%!important; float:none!important } }
    .deck::after { content:""; display:block!important; clear:both }`,
    (r) => `<div id="main"><div class="zone"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', simple,
  ),
  layered: style(
    `
    @layer reset,base,components,utilities; @layer reset { * { margin:0; padding:0; box-sizing:border-box }img { display:block; max-width:100% } }
    @layer base { html { font-size:calc(14px + .25vw) }body { line-height:1.6 }h3 { font-size:1.5rem } }
    @layer components { .wrap { max-width:75rem; margin-inline:auto; padding-inline:1.25rem }.deck { display:grid; grid-template-columns:repeat(3,1fr); gap:1.25rem }@media(width<60rem) { .deck { grid-template-columns:1fr 1fr } }@media(width<36rem) { .deck { grid-template-columns:1fr } }.card { padding:1rem; display:flex; flex-direction:column }@layer deep { .card { padding:3rem } } }
    @layer utilities { .mt { margin-top:2rem }.card { gap:.5rem } }`,
    (r) => `<div class="wrap"><h2>What to see</h2>${r}</div>`, 'class="deck mt"', simple, {hasFluidRoot: true},
  ),
  layeredimportant: style(
    `
    @layer a,b; @layer a { .card h3 { font-size:40px!important } }
    @layer b { .card h3 { font-size:20px!important } }
    body { margin:0 }
    .box { padding:0 20px }`,
    box, 'class="deck"', simple,
  ),
  table: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    .deck { display:table; width:100%; table-layout:fixed; border-spacing:20px 0 }
    .card { display:table-cell; width:33.3%; padding:10px; vertical-align:top }
    @media(max-width:640px) { .deck,.card { display:block; width:auto } }`,
    box, 'class="deck"', simple,
  ),
  absolute: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    .deck { position:relative; height:620px }
    .card { position:absolute; top:0; width:30% }
    .card:nth-child(1) { left:0 }
    .card:nth-child(2) { left:35% }
    .card:nth-child(3) { right:0 }
    @media(max-width:600px) { .deck { height:auto }.card { position:static; width:auto } }`,
    box, 'class="deck"', simple,
  ),
  contents: style(
    `
    body { margin:0 }
    .box { padding:0 2rem; display:flow-root }
    .outer { display:contents }
    .deck { display:flex; gap:1rem }
    .slot { display:contents }
    .card { flex:1 }`,
    (r) => `<div class="box"><div class="outer"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', (c) => `<div class="slot">${simple(c)}</div>`,
  ),
  contentbox: style(
    `
    * { box-sizing:content-box }
    body { margin:0 10px }
    .box { width:80%; padding:0 5%; margin:0 auto; border:0 solid; border-width:0 3px }
    .deck>div { width:27%; padding:0 2%; float:left }
    .deck { overflow:hidden }`,
    box, 'class="deck"', (c) => `<div>${simple(c)}</div>`,
  ),
  sidebar: style(
    `
    body { margin:0 }
    .page { display:grid; grid-template-columns:220px minmax(0,1fr); gap:2rem; max-width:1300px; margin:0 auto; padding:0 1rem }
    @media(max-width:800px) { .page { grid-template-columns:1fr } }
    .deck { display:grid; grid-template-columns:repeat(auto-fill,minmax(200px,1fr)); gap:1rem }`,
    (r) => `<div class="page"><nav><p>Side</p></nav><div><h2>What to see</h2>${r}</div></div>`, 'class="deck"', simple,
  ),
  sidebarright: style(
    `
    body { margin:0 }
    .page { display:flex; gap:3%; width:92%; margin:0 auto }
    .side { flex:0 0 25%; order:2 }
    .main { flex:1; min-width:0; order:1 }
    @media(max-width:700px) { .page { display:block } }
    .deck { display:flex; flex-wrap:wrap }`,
    (r) => `<div class="page"><div class="side">Side</div><div class="main"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', (c) => `<div class="c">${simple(c)}</div>`,
  ),
  offcentre: style(
    `
    body { margin:0 }
    .box { margin-left:12.5%; width:75%; padding-right:40px; box-sizing:border-box }
    .wide { padding-left:6% }`,
    (r) => `<div class="box"><div class="wide"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', simple,
  ),
  offset: style(
    `
    body { margin:0; max-width:1400px; padding-left:12.5%; width:87.5%; margin:0 auto; box-sizing:border-box }
    .box { width:80% }`,
    box, 'class="deck"', simple,
  ),
  halves: style(
    `
    body { margin:0 }
    .half { float:left; width:50%; padding:0 15px; box-sizing:border-box }
    .full { max-width:1800px; margin:0 auto; overflow:hidden }
    @media(max-width:600px) { .half { width:100% } }`,
    (r) => `<div class="full"><div class="half"><p>Left text</p></div><div class="half"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', simple,
  ),
  units: style(
    `
    body { margin:0 }
    .a { max-width:60em; padding:0 2vmin }
    .b { width:50cm; max-width:95vw }
    .c { padding:0 1pc; margin-left:.5in; border-left:2pt solid }`,
    (r) => `<div class="a"><div class="b"><div class="c"><h2>What to see</h2>${r}</div></div></div>`, 'class="deck"', simple,
  ),
  ch: style(
    `
    body { margin:0; font-family:Lato,sans-serif }
    .a { max-width:90ch; margin:0 auto; padding:0 2ex }`,
    (r) => `<div class="a"><h2>What to see</h2>${r}</div>`, 'class="deck"', simple,
  ),
  math: style(
    `
    body { margin:0 }
    .a { width:round(up,93%,1px); max-width:calc(abs(-1000px) + mod(250px,100px)); margin:0 auto; padding:0 calc(sign(-3)*-12px) }`,
    (r) => `<div class="a"><h2>What to see</h2>${r}</div>`, 'class="deck"', simple,
  ),
  vh: style(
    `
    body { margin:0 }
    .a { max-width:120vh; margin:0 auto }`,
    (r) => `<div class="a"><h2>What to see</h2>${r}</div>`, 'class="deck"', simple,
  ),
  container: style(
    `
    body { margin:0 }
    .outer { container:main / inline-size; max-width:1200px; margin:0 auto }
    .inner { padding:0 10px }
    @container main (min-width: 700px) { .inner { padding:0 5cqi } }
    @container (inline-size > 1000px) { .inner { padding:0 80px } }`,
    (r) => `<div class="outer"><div class="inner"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', simple,
  ),
  containercards: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    .deck { display:grid; grid-template-columns:repeat(auto-fit,minmax(260px,1fr)); gap:20px }
    .deck>li { container-type:inline-size }
    .card { padding:10px }
    @container (min-width:300px) { .card { padding:24px; display:flex }.card h3 { font-size:6cqi } }`,
    box, 'class="deck"', (c) => `<li>${simple(c)}</li>`, {tag: 'ul'},
  ),
  has: style(
    `
    body { margin:0 }
    section:has(.deck) { padding:0 6% }
    .box:has(> h2 + .deck) { max-width:1000px; margin:0 auto }
    .deck:not(:has(.none))>.card:has(img) { padding:8px }
    .card:has(> a:only-of-type) h3 { margin:0 0 9px }`,
    box, 'class="deck"', simple,
  ),
  scope: style(
    `
    body { margin:0 }
    @scope (.box) to (.deck) { :scope { padding:0 30px }h2 { margin:0 }p { margin:9em } }
    @scope (.deck) { .card { padding:12px }h3 { margin:3px 0; font-size:20px } }`,
    box, 'class="deck"', simple,
  ),
  revertlayer: style(
    `
    @layer a { .box { padding:0 50px }.card { padding:30px } }
    @layer b { .box { padding:0 10px; padding:revert-layer } }
    body { margin:0 }
    .box { max-width:900px }
    .card { padding:revert-layer }
    h3 { margin:revert; font-size:unset }`,
    box, 'class="deck"', simple,
  ),
  property: style(
    `
    @property --w { syntax:"<length>"; inherits:false; initial-value:880px }
    @property --p { syntax:"<length>"; inherits:true; initial-value:14px }
    body { margin:0; --w:20px }
    .box { max-width:var(--w); padding:0 var(--p); margin:0 auto }
    .card { padding:var(--p) }`,
    box, 'class="deck"', simple,
  ),
  writing: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    .card h3 { writing-mode:vertical-rl }
    .card { writing-mode:sideways-lr }`,
    box, 'class="deck"', simple,
  ),
  writingaround: style(
    `
    body { margin:0 }
    .box { writing-mode:vertical-rl; padding:10px }
    .deck { writing-mode:horizontal-tb }`,
    box, 'class="deck"', simple,
  ),
  zoom: style(
    `
    body { margin:0 }
    .box { zoom:1.25; padding:0 20px }
    .card { zoom:.8 }`,
    box, 'class="deck"', simple,
  ),
  transform: style(
    `
    body { margin:0 }
    .box { padding:0 20px; transform:translateX(10px) }
    .card { transform:scale(.9) rotate(2deg); translate:4px 4px }`,
    box, 'class="deck"', simple,
  ),
  animation: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    @keyframes up { from { transform:translateY(40px); opacity:0 }to { transform:none } }
    .card { animation:up 20s both }
    .card h3 { animation-name:up; animation-duration:30s; animation-fill-mode:both }
    a { transition-duration:9s }`,
    box, 'class="deck"', simple,
  ),
  rtl: style(
    `
    body { margin:0; direction:rtl }
    .box { padding:0 40px 0 10px; margin-inline-start:5% }
    .deck { display:flex }
    .card { flex:1; margin-inline-end:12px }`,
    box, 'class="deck"', simple, {rightToLeft: true},
  ),
  emroot: style(
    `
    html { font-size:62.5% }
    body { margin:0; font-size:1.6rem }
    .box { max-width:110rem; margin:0 auto; padding:0 2em }
    @media(max-width:600px) { html { font-size:50% } }
    @media(min-width:1400px) { html { font-size:75% } }`,
    box, 'class="deck"', simple,
  ),
  fluidroot: style(
    `
    html { font-size:clamp(14px,1vw + 8px,22px) }
    body { margin:0 }
    .box { max-width:64rem; margin:0 auto; padding:0 2rem }
    .card { padding:1rem }
    h3 { font-size:1.5rem; margin:0 }`,
    box, 'class="deck"', simple,
  ),
  fitcontent: style(
    `
    body { margin:0 }
    .box { width:fit-content; margin:0 auto; padding:10px }`,
    box, 'class="deck"', simple,
  ),
  inlineblock: style(
    `
    body { margin:0; text-align:center }
    .box { display:inline-block; width:80%; text-align:left }
    .deck { font-size:0 }
    .deck>.card { display:inline-block; width:33.33%; font-size:16px; vertical-align:top; padding:0 10px; box-sizing:border-box }`,
    box, 'class="deck"', simple,
  ),
  bleed: style(
    `
    body { margin:0 auto; max-width:800px; padding:0 20px }
    .box { margin-left:calc(50% - 50vw); margin-right:calc(50% - 50vw); padding:0 40px }`,
    box, 'class="deck"', simple,
  ),
  negative: style(
    `
    body { margin:0 }
    .page { max-width:900px; margin:0 auto; padding:0 30px }
    .box { margin:0 -15px }
    @media(min-width:1000px) { .box { margin:0 -60px } }`,
    (r) => `<div class="page"><div class="box"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', simple,
  ),
  linkcard: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    .deck { display:grid; gap:10px }
    .deck>a { display:block; border:1px solid; color:inherit }
    .deck>a>* { margin:10px }`,
    box, 'class="deck"', (c) => `<a href="#"><img ${c.picture} alt=""><h3>${c.title}</h3>${paragraphs(c)}<span class="more">${c.link}</span></a>`,
  ),
  dl: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    dl { display:flex }
    dl>div { flex:1 }
    dt { font-weight:bold; font-size:20px }
    dd { margin:0 0 0 40px }`,
    box, 'class="deck"', (c) => `<div><dt>${c.title}</dt><dd>${c.text[0]}</dd><dd><a href="#">${c.link}</a></dd></div>`, {tag: 'dl'},
  ),
  griditem: style(
    `
    body { margin:0 }
    .maxed { display:grid }
    @media(min-width:576px) { .maxed { grid-template-columns:minmax(.5rem,1fr) minmax(auto,900px) minmax(.5rem,1fr) }.maxed>* { grid-column:2 } }`,
    (r) => `<div class="maxed"><h2>What to see</h2>${r}</div>`, 'class="deck"', simple,
  ),
  griditemarea: style(
    `
    body { margin:0 }
    .maxed { display:grid; grid-template:"head head" auto "side main" auto / 12rem 1fr; gap:1rem; padding:0 2% }
    .maxed h2 { grid-area:head }
    .maxed aside { grid-area:side }
    .deck { grid-area:main }
    @media(max-width:700px) { .maxed { display:block } }`,
    (r) => `<div class="maxed"><h2>What to see</h2><aside>Side</aside>${r}</div>`, 'class="deck"', simple,
  ),
  flexcolumn: style(
    `
    body { margin:0; display:flex; flex-direction:column; align-items:center; min-height:100vh }
    main { width:100%; max-width:1000px }
    .box { display:flex; flex-direction:column; align-items:flex-start; padding:0 20px }`,
    box, 'class="deck"', simple,
  ),
  border: style(
    `
    body { margin:0 }
    .box { border:.1em solid; border-left-width:2.7px; padding:0 20px; outline:3px solid }`,
    box, 'class="deck"', simple,
  ),
  growmax: style(
    `
    body { margin:0 }
    .f { display:flex; justify-content:center }
    .g { flex-grow:1; max-width:900px; padding:0 15px }`,
    (r) => `<div class="f"><div class="g"><h2>What to see</h2>${r}</div></div>`, 'class="deck"', simple,
  ),
  dropcap: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    .card p:first-of-type::first-letter { font-size:3em; float:left; line-height:.8 }
    .card p::first-line { font-weight:bold; letter-spacing:.1em }
    .card h3::before { content:"→ "; margin-right:1em }
    .card::marker { content:"" }
    .card p { text-indent:2em; hyphens:auto; text-align:justify; columns:2 }`,
    box, 'class="deck"', simple,
  ),
  textbox: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    .card h3 { text-box:trim-both cap alphabetic; text-wrap:balance; max-width:15ch }
    .card p { text-wrap:pretty; hanging-punctuation:first; font-size-adjust:.6; initial-letter:2 }
    .card { contain:strict; height:500px; content-visibility:auto }`,
    box, 'class="deck"', simple,
  ),
  ...stylesAround,
};

/** Pages with what no stylesheet can override, or Tenter does not read. They must have an error finding about their theme. */
const obstacles = ['layeredimportant', 'units', 'math', 'vh', 'writingaround', 'zoom', 'fitcontent', 'windowheight'];

/** Every page, with the members of those of frameworkPages(). */
export function writtenPages() {
  return Object.entries(styles).map(([name, {css, around, row, card, tag = 'div', bodyClass = '', rightToLeft = false, hasFluidRoot = false}]) => {
    const attributes = row.includes('class="') ? row.replace('class="', `class="${rowClass} `) : `class="${rowClass}" ${row}`;
    const main = `<${tag} ${attributes}>${cards.map(card).join('\n')}</${tag}>`;
    const body = `<section id="works">${around(main)}</section><section id="more"><div class="box"><h2>Nearby</h2></div></section>`;
    const html = documentOf({body}, `<style>${css}</style>`)
      .replace('<body>', `<body${bodyClass && ` class="${bodyClass}"`}>`)
      .replace('<html lang="en">', `<html lang="en"${rightToLeft ? ' dir="rtl"' : ''}>`);
    return {framework: name, kind: 'written', name, linked: html, html, sheets: [], cards: cards.length, neighbour: '#more', footer: '.page-end', hasFluidRoot, isObstacle: obstacles.includes(name)};
  });
}
