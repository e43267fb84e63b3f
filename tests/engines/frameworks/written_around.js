// Pages whose row stands in tables, positioned boxes, lines of flex items and the wrappers of page builders. The text and the
// names are invented.
import {paragraphs} from './frameworks.js';

/** A style sheet, what is around the row, the attributes of the row's element, a card, and further facts. */
export const style = (css, around, row, card, facts = {}) => ({css, around, row, card, ...facts});
export const simple = (c) => `<div class="card"><img ${c.picture} alt=""><h3>${c.title}</h3>${paragraphs(c)}<a class="btn" href="#">${c.link}</a></div>`;
export const box = (r) => `<div class="box"><h2>What to see</h2>${r}</div>`;

const beside = (r) => `<div class="outer"><div class="main"><h2>What to see</h2>${r}</div><div class="aside"><p>Beside</p></div></div>`;

export const stylesAround = {
  wrapperbuilder: style(
    `
    * { box-sizing:border-box }
    body { margin:0; font-family:Lato,sans-serif; line-height:1.5 }
    .part { position:relative }
    .part .lane { display:flex; margin-right:auto; margin-left:auto; position:relative }
    .part.is-boxed>.lane { max-width:1140px }
    @media (max-width:1024px) { .part .lane { flex-wrap:wrap }.part.is-boxed>.lane { max-width:1024px } }
    .spot { min-height:1px; position:relative; display:flex; width:25% }
    .gap-usual>.spot>.fill { padding:10px }
    @media (max-width:767px) { .spot { width:100% }.part.is-boxed>.lane { max-width:767px } }
    .fill { display:flex; width:100%; flex-wrap:wrap; align-content:flex-start }
    .piece { position:relative; width:100% }
    .piece:not(:last-child) { margin-bottom:20px }
    .piece img { max-width:100%; height:auto; vertical-align:middle; display:inline-block }
    .title { padding:0; margin:0; line-height:1; font-size:29px }
    .knob { display:inline-block; line-height:1; padding:12px 24px; font-size:15px; transition:all .3s }
    .knob-in { display:flex; justify-content:center; gap:5px }`,
    (r) => `<div class="part is-boxed" style="padding:60px 20px"><h2 class="title">What to see</h2>${r}</div>`, 'class="lane gap-usual"',
    (c) => `<div class="spot"><div class="fill"><div class="piece"><div class="in"><img ${c.picture} alt=""></div></div><div class="piece"><div class="in"><h3 class="title">${c.title}</h3></div></div><div class="piece"><div class="in">${paragraphs(c)}</div></div><div class="piece"><div class="in"><a class="knob" href="#"><span class="knob-in"><span>${c.link}</span></span></a></div></div></div></div>`,
  ),
  blocks: style(
    `
    :root { --body:46rem; --broad:72rem; --edge:clamp(1rem,4vw,3.5rem); --flow:1.25rem }
    body { margin:0; --edge-in:var(--edge) }
    .edges { padding-left:var(--edge-in); padding-right:var(--edge-in) }
    .edges>.full { margin-left:calc(var(--edge-in)*-1); margin-right:calc(var(--edge-in)*-1) }
    .bound>:where(:not(.left):not(.right):not(.full)) { max-width:var(--body); margin-left:auto!important; margin-right:auto!important }
    .bound>.broad { max-width:var(--broad) }
    :where(.flow)>* { margin-block-start:var(--flow); margin-block-end:0 }
    :where(.flow)>:first-child { margin-block-start:0 }
    body .cols { display:flex; align-items:normal!important; flex-wrap:wrap!important; gap:2em }
    @media (min-width:782px) { .cols { flex-wrap:nowrap!important }.cols:not(.keep)>.col { flex-basis:0; flex-grow:1 } }
    @media (max-width:781px) { .cols:not(.keep)>.col { flex-basis:100%!important } }
    .col { min-width:0; overflow-wrap:break-word; word-break:break-word }
    .pic { margin:0 0 1em }
    .links { display:flex; flex-wrap:wrap; gap:.5em }
    .link a { display:inline-block; padding:calc(.667em + 2px) calc(1.333em + 2px); text-align:center }`,
    (r) => `<div class="edges bound flow"><h2>What to see</h2>${r}</div>`, 'class="cols broad"',
    (c) => `<div class="col flow"><figure class="pic"><img ${c.picture} alt=""></figure><h3>${c.title}</h3>${paragraphs(c)}<div class="links"><div class="link"><a href="#">${c.link}</a></div></div></div>`,
  ),
  tablefixed: style(
    `
    body { margin:0 }
    .outer { display:table; width:100%; table-layout:fixed; border-collapse:separate; border-spacing:20px }
    .main { display:table-cell; width:72%; padding-right:24px }
    .aside { display:table-cell }
    @media (max-width:760px) { .outer,.main,.aside { display:block; width:auto; padding:0 12px } }`,
    beside, 'class="deck"', simple,
  ),
  tableauto: style(
    `
    body { margin:0 }
    .outer { display:table; width:92%; margin:0 auto; border-spacing:10px }
    .main { display:table-cell; padding:0 30px }
    .aside { display:table-cell; width:230px; padding:0 10px }
    @media (max-width:760px) { .outer,.main,.aside { display:block; width:auto; padding:0 12px } }`,
    beside, 'class="deck"', simple,
  ),
  growing: style(
    `
    body { margin:0 }
    .outer { display:flex; flex-wrap:wrap; gap:1.5rem; padding:0 1rem }
    .aside { flex:1 1 260px; max-width:400px; order:-1 }
    .main { flex:3 1 420px; min-width:50% }`,
    beside, 'class="deck"', simple,
  ),
  shrinking: style(
    `
    body { margin:0 }
    .outer { display:flex; gap:20px }
    .main { width:100% }
    .aside { flex:0 0 280px; order:-1 }
    .pair { display:flex; justify-content:space-between; width:100% }
    .pair>.thin { width:30% }
    .pair>div { width:110% }
    @media (max-width:700px) { .outer,.pair { display:block }.pair>div { width:auto } }`,
    (r) => beside(`<div class="pair"><div class="thin"><p>One</p></div><div>${r}</div></div>`), 'class="deck"', simple,
  ),
  spread: style(
    `
    * { box-sizing:border-box }
    body { margin:0 }
    .outer { display:flex; justify-content:space-between; width:94%; margin:0 auto }
    .main { width:68% }
    .aside { width:28%; order:-1 }
    @media (max-width:700px) { .outer { display:block }.main,.aside { width:auto } }`,
    beside, 'class="deck"', simple,
  ),
  bleedrelative: style(
    `
    body { margin:0 }
    .page { max-width:800px; margin:0 auto; padding:0 20px }
    .box { width:100vw; position:relative; left:50%; right:50%; margin-left:-50vw; margin-right:-50vw; padding:0 40px; box-sizing:border-box }`,
    (r) => `<div class="page">${box(r)}</div>`, 'class="deck"', simple,
  ),
  bleedtranslated: style(
    `
    body { margin:0 }
    .page { max-width:800px; margin:0 auto; padding:0 20px }
    .box { width:96vw; position:relative; left:50%; transform:translateX(-50%) translateZ(0) }`,
    (r) => `<div class="page">${box(r)}</div>`, 'class="deck"', simple,
  ),
  positioned: style(
    `
    body { margin:0 }
    .stage { position:relative; max-width:1300px; margin:0 auto; min-height:3000px; padding:0 9px }
    .box { position:absolute; left:5%; right:40px; top:20px }
    @media (max-width:600px) { .box { position:static } }`,
    (r) => `<div class="stage">${box(r)}</div>`, 'class="deck"', simple,
  ),
  steppedborder: style(
    `
    body { margin:0 }
    .box { inline-size:min(100% - 2*var(--gap,1rem),70rem); margin-inline:auto; border-inline-start:clamp(1px,.2vw,4px) solid }
    @media (min-width:800px) { .box { --gap:3vw } }
    h3 { font-size:clamp(1.1rem,.8rem + 1vw,2rem); line-height:calc(1em + .4rem) }`,
    box, 'class="deck"', simple,
  ),
  innerdirection: style(
    `
    body { margin:0 }
    .outer { direction:rtl; padding:0 10% 0 0 }
    .box { direction:ltr; width:80%; padding:0 10px }`,
    (r) => `<div class="outer">${box(r)}</div>`, 'class="deck"', simple,
  ),
  halfpage: style(
    `
    body { margin:0 }
    .page { display:grid; grid-template-columns:repeat(2,1fr) }
    .box { padding:0 calc((100vw - 1200px)/2) 0 40px }
    @media (max-width:900px) { .page { display:block }.box { padding:0 20px } }`,
    (r) => `<div class="page"><div>Left</div>${box(r)}</div>`, 'class="deck"', simple,
  ),
  filledgrid: style(
    `
    body { margin:0 }
    .page { display:grid; grid-template-columns:repeat(auto-fill,minmax(min(100%,500px),1fr)); gap:1rem; padding:0 1rem }`,
    (r) => `<div class="page">${box(r)}<div>Other</div></div>`, 'class="deck"', simple,
  ),
  everything: style(
    `
    * { max-width:100%; transition:all .3s; letter-spacing:.02em }
    * { line-height:1.25!important }
    [class] { min-width:0 }
    div { display:flex; flex-direction:column }
    body { margin:0 }
    .box { padding:0 16px }
    .deck>* { min-height:500px }`,
    box, 'class="deck"', simple,
  ),
  numbered: style(
    `
    body { margin:0; counter-reset:number }
    .box { padding:0 16px }
    .card { counter-increment:number; position:relative }
    .card::before { content:counter(number,decimal-leading-zero) ". "; float:left; font-size:3em }
    .card h3::after { content:" no. " counter(number) }
    .btn::after { content:"→"; margin-left:.5em }
    .btn::before { content:""; width:10px; display:inline-block }`,
    box, 'class="deck"', simple,
  ),
  windowheight: style(
    `
    body { margin:0 }
    .box { padding:0 20px }
    @media (min-height:700px) and (min-width:900px) { .box { padding:0 60px } }`,
    box, 'class="deck"', simple,
  ),
  supports: style(
    `
    body { margin:0 }
    .box { padding:0 1em }
    @supports not (display:grid) { .box { padding:0 9em } }
    @supports (display:grid) and (not (display:nonsense)) { @media (min-width:50em) { .box { padding:0 3em }@supports (gap:1px) or (grid-gap:1px) { .box { padding-right:5em } } } }
    @supports selector(:has(a)) { .box:has(h2) { margin-left:1em } }
    @supports (position:-webkit-sticky) or (-webkit-overflow-scrolling:touch) { .box { padding:0 } }
    @supports ((-webkit-hyphens:none) and (not (margin-trim:inline))) { .box { padding:1px } }`,
    box, 'class="deck"', simple,
  ),
  stickingout: style(
    `
    html { font-size:4.2vw }
    @media (min-width:480px) { html { font-size:calc(16px + 4*(100vw - 480px)/960) } }
    @media (min-width:1440px) { html { font-size:20px } }
    body { margin:0 }
    .box { max-width:56rem; margin:0 auto; padding:0 1.25rem }
    .deck { margin:-12px -12px -30px }
    .card { float:left; width:45%; margin:0 12px 3rem }`,
    box, 'class="deck"', simple, {hasFluidRoot: true},
  ),
};
