// Rows of cards as pages print them: six kinds, all invented.
#pragma once

#include <string>

namespace tenter::markup {

/// Boxes in boxes, generated class names, a state on the first and last.
inline const std::string boxesInBoxes = R"html(<!doctype html><html lang="en-GB"><head><title>Shore</title>
<style>.wrap .row h3{color:teal}</style><script>track()</script></head><body class="page theme-tide">
<nav class="menu"><ul><li><a href="/">Home</a></li><li><a href="/walks">Walks</a></li><li><a href="/ask">Ask</a></li></ul></nav>
<div class="wrap"><h2>Our walks</h2><div class="inner"><div class="shore-grid k8231947">
 <div class="column first"><div class="column-inner"><div class="walk-box x4f9a2c">
  <div class="media"><a href="/low-tide"><img src="shore_files/low-tide.jpg" alt="Pools of still water" width="1200" height="800" loading="lazy" onerror="x()"></a></div>
  <div class="words"><h3 class="walk-title">The low-tide walk</h3><div class="text"><p>Two slow miles across the flats while the sea is out.</p><p>Wear boots you can <b>rinse</b>.</p></div></div>
  <div class="press-wrap"><div class="press-inner"><a class="press btn" href="/book/1"><span class="label">Book the walk</span></a></div></div>
 </div></div></div>
 <div class="column"><div class="column-inner"><div class="walk-box x77ab01">
  <div class="media"><a href="/dunes"><img src="shore_files/dunes.jpg" alt="" width="900" height="1200"></a></div>
  <div class="words"><h3 class="walk-title">Dune mornings</h3><div class="text"><p>Footprints, burrows and the <em>very</em> small flowers.</p></div></div>
  <div class="press-wrap"><div class="press-inner"><a class="press btn" href="/book/2"><span class="label">Find a morning</span></a></div></div>
 </div></div></div>
 <div class="column last"><div class="column-inner"><div class="walk-box x90cd3e">
  <div class="media"><a href="/creek"><img src="shore_files/creek.jpg" alt="A creek" width="1200" height="800"></a></div>
  <div class="words"><h3 class="walk-title">Up the creek at dusk</h3><div class="text"><p>When the marsh empties,<br>the waders come in.</p></div></div>
  <div class="press-wrap"><div class="press-inner"><a class="press btn" href="/book/3"><span class="label">Book a dusk walk</span></a></div></div>
 </div></div></div>
</div></div></div>
<footer><div class="cols"><div><h4>Find us</h4><p>Old harbour</p></div><div><h4>Hours</h4><p>Nine to five</p></div></div></footer>
</body></html>)html";

/// A list, with next to no classes.
inline const std::string plainList = R"html(<ul class="ferries">
 <li><img src="ferry-a.png" alt="The morning boat"><h4>Morning boat</h4><p>Leaves at seven, and waits for nobody at all.</p><p><a href="#a">See times</a></p></li>
 <li><img src="ferry-b.png" alt="The noon boat"><h4>Noon boat</h4><p>Leaves at noon; bring <a href="#lunch">your lunch</a> along.</p><p><a href="#b">See times</a></p></li>
</ul>)html";

/// Figures with captions, the caption holding the words.
inline const std::string figures =
    R"html(<div class="orchard"><figure class="tree"><img src="pear.jpg" alt="A pear tree" width="640" height="480">
<figcaption><strong class="tree-name">Old pear</strong><span class="tree-note">Planted by nobody we can name, and still bearing.</span></figcaption></figure>
<figure class="tree"><img src="quince.jpg" alt="A quince" width="640" height="480">
<figcaption><strong class="tree-name">Quince</strong><span class="tree-note">Hard until boiled; then the best of them all.</span></figcaption></figure>
<figure class="tree"><img src="medlar.jpg" alt="A medlar" width="640" height="480">
<figcaption><strong class="tree-name">Medlar</strong><span class="tree-note">Eaten when it looks as if it should not be.</span></figcaption></figure></div>)html";

/// Articles with header and footer, right to left.
inline const std::string articles = R"html(<section dir="rtl" lang="ar"><div class="news">
<article class="note"><header><p class="day">12 Mai</p><h2 class="note-head"><a href="/n/1">Nests on the island</a></h2></header><div class="note-text"><p>The terns are back, two weeks before anybody expected.</p></div><footer><button type="button">Read on</button></footer></article>
<article class="note"><header><p class="day">3 Juni</p><h2 class="note-head"><a href="/n/2">A new hide</a></h2></header><div class="note-text"><p>Six can sit in it, if none of them is tall or restless.</p></div><footer><button type="button">Read on</button></footer></article>
</div></section>)html";

/// Floated columns and an element that clears them.
inline const std::string floats =
    R"html(<div class="rooms clear"><div class="third"><h3>North room</h3><img src="north.jpg" alt=""><p>Looks on the lake and gets the early sun all year.</p><a href="/north" class="more">More of it</a></div>
<div class="third"><h3>South room</h3><img src="south.jpg" alt=""><p>Looks on the yard and is warm before any other one.</p><a href="/south" class="more">More of it</a></div>
<div class="third end"><h3>Loft</h3><img src="loft.jpg" alt=""><p>Looks on nothing but the sky, which is a good deal.</p><a href="/loft" class="more">More of it</a></div>
<div class="clearing"></div></div>)html";

/// Cards that are links as a whole, all of phrases.
inline const std::string linkedCards =
    R"html(<div class="boats-row"><a class="boat" href="/b/1"><img src="b1.jpg" alt="A skiff"><span class="boat-kind">Skiff</span><span class="boat-name">Tern</span><span class="boat-text">Carries four across, or two and a dog with luggage.</span></a>
<a class="boat" href="/b/2"><img src="b2.jpg" alt="A punt"><span class="boat-kind">Punt</span><span class="boat-name">Teal</span><span class="boat-text">Carries reeds, mostly, and whoever steers it well.</span></a></div>)html";

}  // namespace tenter::markup
