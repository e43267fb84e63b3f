<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>wording</name>
    <message>
        <source>%1 has no alternative text</source>
        <translation>%1 hat keinen Alternativtext</translation>
    </message>
    <message>
        <source>Screen readers skip it</source>
        <translation>Bildschirmleser übergehen es</translation>
    </message>
    <message>
        <source>Describe in a few words what it shows (Pictures › Alternative text); leave only a decorative picture without</source>
        <translation>Mit wenigen Worten beschreiben, was es zeigt (Bilder › Alternativtext); nur ein schmückendes Bild bleibt ohne</translation>
    </message>
    <message>
        <source>%1 or darker</source>
        <translation>%1 oder dunkler</translation>
    </message>
    <message>
        <source>%1 or lighter</source>
        <translation>%1 oder heller</translation>
    </message>
    <message>
        <source>in the variant %1</source>
        <translation>in der Variante %1</translation>
    </message>
    <message numerus="yes">
        <source>in %n band</source>
        <comment>in %n bands</comment>
        <translation>
            <numerusform>in %n Bereich</numerusform>
            <numerusform>in %n Bereichen</numerusform>
        </translation>
    </message>
    <message>
        <source>in the band %1</source>
        <translation>im Bereich %1</translation>
    </message>
    <message>
        <source>in the bands %1</source>
        <translation>in den Bereichen %1</translation>
    </message>
    <message>
        <source>at every width</source>
        <translation>bei jeder Breite</translation>
    </message>
    <message>
        <source>in all variants</source>
        <translation>in allen Varianten</translation>
    </message>
    <message>
        <source>in card %1</source>
        <translation>in Karte %1</translation>
    </message>
    <message numerus="yes">
        <source>in %n card</source>
        <comment>in %n cards</comment>
        <translation>
            <numerusform>in %n Karte</numerusform>
            <numerusform>in %n Karten</numerusform>
        </translation>
    </message>
    <message>
        <source>Move the breakpoint from %1 to %2</source>
        <translation>Breakpoint von %1 auf %2 verschieben</translation>
    </message>
    <message>
        <source>Solve sizes</source>
        <translation>Größen berechnen</translation>
    </message>
    <message>
        <source>Reduce %1 by %2, to %3</source>
        <translation>%1 um %2 verkleinern, auf %3</translation>
    </message>
    <message>
        <source>Increase %1 by %2, to %3</source>
        <translation>%1 um %2 vergrößern, auf %3</translation>
    </message>
    <message>
        <source>Set letter spacing of %1 to %2</source>
        <translation>Zeichenabstand von %1 auf %2 setzen</translation>
    </message>
    <message numerus="yes">
        <source>Use %n column</source>
        <comment>Use %n columns</comment>
        <translation>
            <numerusform>%n Spalte verwenden</numerusform>
            <numerusform>%n Spalten verwenden</numerusform>
        </translation>
    </message>
    <message>
        <source>Use one column fewer</source>
        <translation>Eine Spalte weniger verwenden</translation>
    </message>
    <message>
        <source>Use one more column</source>
        <translation>Eine Spalte mehr verwenden</translation>
    </message>
    <message>
        <source>Reduce the side padding of cards to %1</source>
        <translation>Seitlichen Innenabstand der Karten auf %1 verringern</translation>
    </message>
    <message>
        <source>Reduce the column gap to %1</source>
        <translation>Spaltenabstand auf %1 verringern</translation>
    </message>
    <message>
        <source>Set the maximum width of the row to %1</source>
        <translation>Maximale Breite der Reihe auf %1 setzen</translation>
    </message>
    <message>
        <source>Make the row narrower by %1</source>
        <translation>Reihe um %1 schmaler machen</translation>
    </message>
    <message>
        <source>Set “Long words” of %1 to “Break”</source>
        <translation>„Lange Wörter“ von %1 auf „Umbrechen“ setzen</translation>
    </message>
    <message>
        <source>Set “Long words” of %1 to “Break anywhere”</source>
        <translation>„Lange Wörter“ von %1 auf „Überall umbrechen“ setzen</translation>
    </message>
    <message>
        <source>Turn on soft hyphens of %1</source>
        <translation>Weiche Trennstriche von %1 einschalten</translation>
    </message>
    <message>
        <source>Use the aspect ratio %1</source>
        <translation>Seitenverhältnis %1 verwenden</translation>
    </message>
    <message>
        <source>for all pictures</source>
        <translation>für alle Bilder</translation>
    </message>
    <message>
        <source>Align parts of neighbouring cards</source>
        <translation>Teile benachbarter Karten ausrichten</translation>
    </message>
    <message>
        <source>Align parts of neighbouring cards, with the last line of cards at the start</source>
        <translation>Teile benachbarter Karten ausrichten, mit der letzten Kartenzeile am Anfang</translation>
    </message>
    <message>
        <source>%1 on hover</source>
        <translation>%1 bei Hover</translation>
    </message>
    <message>
        <source>%1, %2 is %3 on %4, a contrast of %5:1 instead of %6:1</source>
        <translation>%1 hat der %2 die Farbe %3 auf %4, also einen Kontrast von %5:1 statt %6:1</translation>
    </message>
    <message>
        <source>It is hard to read in sunlight or with low vision</source>
        <translation>Das ist in der Sonne oder bei Sehschwäche schwer zu lesen</translation>
    </message>
    <message>
        <source>Set the text colour to %1 (Colour › Hover)</source>
        <translation>Textfarbe auf %1 setzen (Farbe › Hover)</translation>
    </message>
    <message>
        <source>Set the text colour to %1 (Colour › Text)</source>
        <translation>Textfarbe auf %1 setzen (Farbe › Text)</translation>
    </message>
    <message>
        <source>Use %1 for %2</source>
        <translation>%1 für %2 verwenden</translation>
    </message>
    <message>
        <source>Use %1 behind %2</source>
        <translation>%1 hinter %2 verwenden</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <extracomment>A line count, in a browser: 3 lines in Chromium and 2 in Firefox</extracomment>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>%1, %2 has %3</source>
        <translation>%1 hat %2 %3</translation>
    </message>
    <message>
        <source>The two browsers shape or balance its lines differently</source>
        <translation>Die beiden Browser setzen die Zeilen unterschiedlich oder gleichen sie unterschiedlich aus</translation>
    </message>
    <message>
        <source>The browsers shape or balance its lines differently</source>
        <translation>Die Browser setzen die Zeilen unterschiedlich oder gleichen sie unterschiedlich aus</translation>
    </message>
    <message>
        <source>Only %1 breaks a line after %2</source>
        <translation>Nur %1 bricht eine Zeile nach %2 um</translation>
    </message>
    <message>
        <source>Only %1 break a line after %2</source>
        <translation>Nur %1 brechen eine Zeile nach %2 um</translation>
    </message>
    <message>
        <source>Write %1 to allow the break in both browsers, or write &amp;#8209; instead of “-” to prevent it</source>
        <translation>%1 schreiben, um den Umbruch in beiden Browsern zu erlauben, oder &amp;#8209; statt „-“ schreiben, um ihn zu verhindern</translation>
    </message>
    <message>
        <source>Write %1 to allow the break in both browsers</source>
        <translation>%1 schreiben, um den Umbruch in beiden Browsern zu erlauben</translation>
    </message>
    <message>
        <source>Write %1 to allow the break in all browsers, or write &amp;#8209; instead of “-” to prevent it</source>
        <translation>%1 schreiben, um den Umbruch in allen Browsern zu erlauben, oder &amp;#8209; statt „-“ schreiben, um ihn zu verhindern</translation>
    </message>
    <message>
        <source>Write %1 to allow the break in all browsers</source>
        <translation>%1 schreiben, um den Umbruch in allen Browsern zu erlauben</translation>
    </message>
    <message>
        <source>measured in two browsers</source>
        <translation>in zwei Browsern gemessen</translation>
    </message>
    <message numerus="yes">
        <source>measured in %n browser</source>
        <comment>measured in %n browsers</comment>
        <translation>
            <numerusform>in %n Browser gemessen</numerusform>
            <numerusform>in %n Browsern gemessen</numerusform>
        </translation>
    </message>
    <message>
        <source>Allow a line break after %1 in every browser</source>
        <translation>Zeilenumbruch nach %1 in jedem Browser erlauben</translation>
    </message>
    <message>
        <source>Prevent a line break after %1 in every browser</source>
        <translation>Zeilenumbruch nach %1 in jedem Browser verhindern</translation>
    </message>
    <message>
        <source>%1 only: %2</source>
        <translation>Nur %1: %2</translation>
    </message>
    <message>
        <source>buttons</source>
        <translation>Buttons</translation>
    </message>
    <message>
        <source>links in %1</source>
        <translation>Links im %1</translation>
    </message>
    <message>
        <source>Keyboard users cannot see where they are</source>
        <translation>Wer die Tastatur benutzt, sieht nicht, wo der Fokus ist</translation>
    </message>
    <message>
        <source>the focus ring of %1 has no width or no colour</source>
        <translation>der Fokusring von %1 hat keine Breite oder keine Farbe</translation>
    </message>
    <message>
        <source>Give it 2 or 3&#xa0;px in %1 (Colour › Focus ring)</source>
        <translation>Ihm eine Breite von 2 oder 3&#xa0;px und die Farbe %1 geben (Farbe › Fokusring)</translation>
    </message>
    <message>
        <source>the focus ring of %1 is %2 on %3, a contrast of %4:1 instead of 3:1</source>
        <translation>der Fokusring von %1 hat die Farbe %2 auf %3, also einen Kontrast von %4:1 statt 3:1</translation>
    </message>
    <message>
        <source>Set its colour to %1 (Colour › Focus ring)</source>
        <translation>Seine Farbe auf %1 setzen (Farbe › Fokusring)</translation>
    </message>
    <message>
        <source>Use %1 for the focus ring of %2</source>
        <translation>%1 für den Fokusring von %2 verwenden</translation>
    </message>
    <message>
        <source>Make the focus ring of %1 3&#xa0;px wide, in %2</source>
        <translation>Fokusring von %1 3&#xa0;px breit machen, in %2</translation>
    </message>
    <message>
        <source>Readers may see different letters and different line breaks</source>
        <translation>Leser sehen möglicherweise andere Buchstaben und andere Zeilenumbrüche</translation>
    </message>
    <message>
        <source>Browsers slant the upright letters; line breaks stay the same</source>
        <translation>Browser stellen die aufrechten Buchstaben schräg; die Zeilenumbrüche bleiben gleich</translation>
    </message>
    <message>
        <source>Add a font file with %1, or choose another font (Text › Family)</source>
        <translation>Eine Schriftdatei mit %1 hinzufügen oder eine andere Schrift wählen (Text › Schriftfamilie)</translation>
    </message>
    <message>
        <source>Use the weight %1 of %2</source>
        <translation>Die Stärke %1 von %2 verwenden</translation>
    </message>
    <message>
        <source>Use the font %1 instead of %2</source>
        <translation>Die Schrift %1 statt %2 verwenden</translation>
    </message>
    <message numerus="yes">
        <source>%1 also jumps</source>
        <comment>%1 also jump</comment>
        <translation>
            <numerusform>auch %1 springt</numerusform>
            <numerusform>auch %1 springen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 shrinks</source>
        <comment>%1 shrink</comment>
        <translation>
            <numerusform>%1 schrumpft</numerusform>
            <numerusform>%1 schrumpfen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 grows</source>
        <comment>%1 grow</comment>
        <translation>
            <numerusform>%1 wächst</numerusform>
            <numerusform>%1 wachsen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 also grows</source>
        <comment>%1 also grow</comment>
        <translation>
            <numerusform>auch %1 wächst</numerusform>
            <numerusform>auch %1 wachsen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 also shrinks</source>
        <comment>%1 also shrink</comment>
        <translation>
            <numerusform>auch %1 schrumpft</numerusform>
            <numerusform>auch %1 schrumpfen</numerusform>
        </translation>
    </message>
    <message>
        <source>its column stays %1 wide</source>
        <extracomment>Part of a sentence: body text shrinks from 16 to 14 px while its column …</extracomment>
        <translation>die Spalte %1 breit bleibt</translation>
    </message>
    <message>
        <source>its column grows from %1 to %2</source>
        <translation>die Spalte von %1 auf %2 wächst</translation>
    </message>
    <message>
        <source>its column shrinks from %1 to %2</source>
        <translation>die Spalte von %1 auf %2 schrumpft</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2 grows from %3 to %4 while %5</source>
        <translation>%1 wächst der %2 von %3 auf %4, während %5</translation>
    </message>
    <message>
        <source>%1, %2 shrinks from %3 to %4 while %5</source>
        <translation>%1 schrumpft der %2 von %3 auf %4, während %5</translation>
    </message>
    <message>
        <source>Text should grow and shrink with its column</source>
        <translation>Text soll mit seiner Spalte wachsen und schrumpfen</translation>
    </message>
    <message>
        <source>Change the ramp in the same direction as the column (Text › Font size)</source>
        <translation>Die Rampe in derselben Richtung wie die Spalte verlaufen lassen (Text › Schriftgröße)</translation>
    </message>
    <message>
        <source>just above %1, %2 jumps from %3 to %4 although %5</source>
        <translation>knapp über %1 springt der %2 von %3 auf %4, obwohl %5</translation>
    </message>
    <message>
        <source>A jump without a change of the column looks like a mistake</source>
        <translation>Ein Sprung ohne Änderung der Spalte sieht wie ein Fehler aus</translation>
    </message>
    <message>
        <source>Larger text in a narrower column looks like a mistake</source>
        <translation>Größerer Text in einer schmaleren Spalte sieht wie ein Fehler aus</translation>
    </message>
    <message>
        <source>Smaller text in a wider column looks like a mistake</source>
        <translation>Kleinerer Text in einer breiteren Spalte sieht wie ein Fehler aus</translation>
    </message>
    <message>
        <source>Give both ramps the same size at the breakpoint (Text › Font size)</source>
        <translation>Beiden Rampen am Breakpoint dieselbe Größe geben (Text › Schriftgröße)</translation>
    </message>
    <message>
        <source>At the breakpoint, do not make the size on the wide side larger than on the narrow side (Text › Font size)</source>
        <translation>Am Breakpoint die Größe auf der breiten Seite nicht größer machen als auf der schmalen (Text › Schriftgröße)</translation>
    </message>
    <message>
        <source>At the breakpoint, do not make the size on the wide side smaller than on the narrow side (Text › Font size)</source>
        <translation>Am Breakpoint die Größe auf der breiten Seite nicht kleiner machen als auf der schmalen (Text › Schriftgröße)</translation>
    </message>
    <message>
        <source>Give %1 the same size on both sides of the breakpoint at %2</source>
        <translation>%1 auf beiden Seiten des Breakpoints bei %2 dieselbe Größe geben</translation>
    </message>
    <message>
        <source>Let %1 grow with the column</source>
        <translation>%1 mit der Spalte wachsen lassen</translation>
    </message>
    <message>
        <source>Keep one size of %1</source>
        <translation>Eine einzige Größe von %1 beibehalten</translation>
    </message>
    <message>
        <source>%1 is an %2, but the heading before it is an %3</source>
        <translation>%1 ist ein %2, aber die Überschrift davor ist ein %3</translation>
    </message>
    <message>
        <source>Readers who navigate by headings notice a missing level</source>
        <translation>Wer mit Überschriften navigiert, bemerkt eine fehlende Ebene</translation>
    </message>
    <message>
        <source>Make it an %1 in the page’s markup; its look can stay the same</source>
        <translation>Im Markup der Seite daraus ein %1 machen; das Aussehen kann gleich bleiben</translation>
    </message>
    <message>
        <source>Use %1 columns (Row › Columns), which fill every line, or centre the last line of cards (Row › Last line of cards)</source>
        <translation>%1 Spalten verwenden (Reihe › Spalten), die jede Zeile füllen, oder die letzte Kartenzeile zentrieren (Reihe › Letzte Kartenzeile)</translation>
    </message>
    <message numerus="yes">
        <source>Use %1 columns (Row › Columns), which leave %n place empty, or centre the last line of cards (Row › Last line of cards)</source>
        <comment>Use %1 columns (Row › Columns), which leave %n places empty, or centre the last line of cards (Row › Last line of cards)</comment>
        <translation>
            <numerusform>%1 Spalten verwenden (Reihe › Spalten), die %n Platz leer lassen, oder die letzte Kartenzeile zentrieren (Reihe › Letzte Kartenzeile)</numerusform>
            <numerusform>%1 Spalten verwenden (Reihe › Spalten), die %n Plätze leer lassen, oder die letzte Kartenzeile zentrieren (Reihe › Letzte Kartenzeile)</numerusform>
        </translation>
    </message>
    <message>
        <source>Centre the last line of cards (Row › Last line of cards)</source>
        <translation>Die letzte Kartenzeile zentrieren (Reihe › Letzte Kartenzeile)</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n of %2 places in the last line of cards is empty</source>
        <comment>%1, %n of %2 places in the last line of cards are empty</comment>
        <translation>
            <numerusform>%1 ist %n von %2 Plätzen in der letzten Kartenzeile leer</numerusform>
            <numerusform>%1 sind %n von %2 Plätzen in der letzten Kartenzeile leer</numerusform>
        </translation>
    </message>
    <message>
        <source>The row looks unfinished</source>
        <translation>Die Reihe wirkt unfertig</translation>
    </message>
    <message>
        <source>Use fewer columns that fill every line of cards</source>
        <translation>Weniger Spalten verwenden, die jede Kartenzeile füllen</translation>
    </message>
    <message>
        <source>Use more columns that fill every line of cards</source>
        <translation>Mehr Spalten verwenden, die jede Kartenzeile füllen</translation>
    </message>
    <message>
        <source>Centre the last line of cards</source>
        <translation>Letzte Kartenzeile zentrieren</translation>
    </message>
    <message>
        <source>%1, %2 comes within %3 of the visible edge of its card</source>
        <translation>%1 kommt %2 bis auf %3 an den sichtbaren Rand der Karte heran</translation>
    </message>
    <message>
        <source>The text looks squeezed</source>
        <translation>Der Text wirkt eingezwängt</translation>
    </message>
    <message>
        <source>Increase the padding (Spacing › Padding), or remove the card’s border and background</source>
        <translation>Den Innenabstand vergrößern (Abstände › Innenabstand) oder Rahmen und Hintergrund der Karte entfernen</translation>
    </message>
    <message>
        <source>Set the side padding of cards to %1</source>
        <translation>Seitlichen Innenabstand der Karten auf %1 setzen</translation>
    </message>
    <message>
        <source>Remove border and background of cards</source>
        <translation>Rahmen und Hintergrund der Karten entfernen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>A list of facts about the container of a page
----------
The start of a list, and its next entry</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>narrowest viewport</source>
        <translation>schmalster Viewport</translation>
    </message>
    <message>
        <source>last width of %1</source>
        <translation>letzte Breite von %1</translation>
    </message>
    <message>
        <source>last width of a band</source>
        <translation>letzte Breite eines Bereichs</translation>
    </message>
    <message>
        <source>first width of %1</source>
        <translation>erste Breite von %1</translation>
    </message>
    <message>
        <source>first width of a band</source>
        <translation>erste Breite eines Bereichs</translation>
    </message>
    <message>
        <source>last width of a page range</source>
        <translation>letzte Breite eines Seitenbereichs</translation>
    </message>
    <message>
        <source>first width of a page range</source>
        <translation>erste Breite eines Seitenbereichs</translation>
    </message>
    <message>
        <source>widest viewport</source>
        <translation>breitester Viewport</translation>
    </message>
    <message>
        <source>width of the worst finding (%1)</source>
        <translation>Breite des schwersten Befunds (%1)</translation>
    </message>
    <message>
        <source>%1, %2 has only %3 on its last line</source>
        <translation>%1 hat %2 in der letzten Zeile nur %3</translation>
    </message>
    <message>
        <source>A single short word looks lost there</source>
        <translation>Ein einzelnes kurzes Wort wirkt dort verloren</translation>
    </message>
    <message>
        <source>Put a no-break space before it, or change the text in the Words panel</source>
        <translation>Ein geschütztes Leerzeichen davor setzen oder den Text unter „Wörter“ ändern</translation>
    </message>
    <message>
        <source>%1, %2 has only the end of a word, %3, on its last line</source>
        <translation>%1 hat %2 in der letzten Zeile nur das Ende eines Wortes, %3</translation>
    </message>
    <message>
        <source>The end of a word is hard to read alone</source>
        <translation>Das Ende eines Wortes allein ist schwer zu lesen</translation>
    </message>
    <message>
        <source>Remove the soft hyphen or hyphen before it in the Words panel, so that the whole word moves down</source>
        <translation>Unter „Wörter“ den weichen Trennstrich oder Bindestrich davor entfernen, damit das ganze Wort nach unten rückt</translation>
    </message>
    <message>
        <source>Remove the last soft hyphen</source>
        <translation>Den letzten weichen Trennstrich entfernen</translation>
    </message>
    <message>
        <source>Put a no-break space before the last word</source>
        <translation>Ein geschütztes Leerzeichen vor das letzte Wort setzen</translation>
    </message>
    <message>
        <source>Balance the lines of %1</source>
        <translation>Zeilen von %1 ausgleichen</translation>
    </message>
    <message>
        <source>the default font</source>
        <translation>die Standardschrift</translation>
    </message>
    <message>
        <source>the %1 font</source>
        <translation>die Schrift %1</translation>
    </message>
    <message>
        <source>%1, %2 has %3 until %4 has loaded, then %5</source>
        <translation>%1 hat %2 %3, bis %4 geladen ist, dann %5</translation>
    </message>
    <message>
        <source>The page jumps when the font arrives</source>
        <translation>Die Seite springt, wenn die Schrift eintrifft</translation>
    </message>
    <message>
        <source>Add an @font-face for %1 with “size-adjust: %2%”, choose a fallback of similar width, or use “font-display: optional”</source>
        <translation>Ein @font-face für %1 mit „size-adjust: %2%“ hinzufügen, eine ähnlich breite Ersatzschrift wählen oder „font-display: optional“ verwenden</translation>
    </message>
    <message>
        <source>%1, %2 has %3; the wish is at most %4</source>
        <translation>%1 hat %2 %3; die Vorgabe ist höchstens %4</translation>
    </message>
    <message>
        <source>It pushes the text below it down</source>
        <translation>Das schiebt den Text darunter nach unten</translation>
    </message>
    <message>
        <source>Reduce its font size at these widths (Text › Font size), widen the column, or shorten the heading</source>
        <translation>Die Schriftgröße bei diesen Breiten verkleinern (Text › Schriftgröße), die Spalte verbreitern oder die Überschrift kürzen</translation>
    </message>
    <message>
        <source>It no longer looks like a button</source>
        <translation>Das sieht nicht mehr wie ein Button aus</translation>
    </message>
    <message>
        <source>Reduce its font size (Text › Font size) or its padding at these widths, or shorten its text</source>
        <translation>Bei diesen Breiten die Schriftgröße (Text › Schriftgröße) oder den Innenabstand verkleinern oder den Text kürzen</translation>
    </message>
    <message>
        <source>Reduce the side padding of %1 to %2</source>
        <translation>Seitlichen Innenabstand von %1 auf %2 verringern</translation>
    </message>
    <message>
        <source>%1 has the accessible name %2, which does not contain its text</source>
        <translation>%1 hat den zugänglichen Namen %2, der den Text nicht enthält</translation>
    </message>
    <message>
        <source>Readers who use voice control say the text that they see, and nothing happens</source>
        <translation>Wer mit der Stimme steuert, spricht den sichtbaren Text, und nichts geschieht</translation>
    </message>
    <message>
        <source>Start the name with that text (Words › Accessible name)</source>
        <translation>Den Namen mit diesem Text beginnen (Wörter › Zugänglicher Name)</translation>
    </message>
    <message>
        <source>Screen readers have nothing to read out</source>
        <translation>Bildschirmleser haben nichts vorzulesen</translation>
    </message>
    <message>
        <source>Give it text, or a name (Words › Accessible name)</source>
        <translation>Ihm einen Text oder einen Namen geben (Wörter › Zugänglicher Name)</translation>
    </message>
    <message>
        <source>Start the accessible name with the text</source>
        <translation>Zugänglichen Namen mit dem Text beginnen</translation>
    </message>
    <message>
        <source>Remove the accessible name, so that the text is read out</source>
        <translation>Zugänglichen Namen entfernen, damit der Text vorgelesen wird</translation>
    </message>
    <message>
        <source>card %1 has links named %2 that lead to %3 different addresses</source>
        <translation>Karte %1 hat Links namens %2, die zu %3 verschiedenen Adressen führen</translation>
    </message>
    <message numerus="yes">
        <source>card %1 and %n other have links named %2 that lead to %3 different addresses</source>
        <comment>card %1 and %n others have links named %2 that lead to %3 different addresses</comment>
        <translation>
            <numerusform>Karte %1 und %n weitere haben Links namens %2, die zu %3 verschiedenen Adressen führen</numerusform>
            <numerusform>Karte %1 und %n weitere haben Links namens %2, die zu %3 verschiedenen Adressen führen</numerusform>
        </translation>
    </message>
    <message>
        <source>In a list of links they look the same</source>
        <translation>In einer Liste von Links sehen sie gleich aus</translation>
    </message>
    <message>
        <source>Give each link its own text, or a name that starts with this text (Words › Accessible name)</source>
        <translation>Jedem Link einen eigenen Text geben oder einen Namen, der mit diesem Text beginnt (Wörter › Zugänglicher Name)</translation>
    </message>
    <message>
        <source>Add the heading of the card to the accessible name</source>
        <translation>Überschrift der Karte zum zugänglichen Namen hinzufügen</translation>
    </message>
    <message>
        <source>%1, lines of %2 hold up to %3 characters; the wish is at most %4 characters</source>
        <translation>%1 hat %2 bis zu %3 Zeichen je Zeile; die Vorgabe ist höchstens %4 Zeichen</translation>
    </message>
    <message>
        <source>The eye loses the start of the next line</source>
        <translation>Das Auge verliert den Anfang der nächsten Zeile</translation>
    </message>
    <message>
        <source>Use larger text, a narrower row, or one more column</source>
        <translation>Größeren Text, eine schmalere Reihe oder eine Spalte mehr verwenden</translation>
    </message>
    <message>
        <source>R. Bringhurst, The Elements of Typographic Style § 2.1.2 (we did not verify this section)</source>
        <translation>R. Bringhurst, The Elements of Typographic Style § 2.1.2 (diesen Abschnitt haben wir nicht geprüft)</translation>
    </message>
    <message>
        <source>%1, lines of %2 hold only %3 characters; the wish is at least %4 characters</source>
        <translation>%1 hat %2 nur %3 Zeichen je Zeile; die Vorgabe ist mindestens %4 Zeichen</translation>
    </message>
    <message>
        <source>Reading such short lines is tiring</source>
        <translation>So kurze Zeilen zu lesen ermüdet</translation>
    </message>
    <message>
        <source>Use smaller text, less padding, or one column fewer</source>
        <translation>Kleineren Text, weniger Innenabstand oder eine Spalte weniger verwenden</translation>
    </message>
    <message>
        <source>%1, %2 and its neighbours reserve space for %3, but none of them needs %4</source>
        <translation>%1 halten %2 und die Texte daneben Platz für %3 frei, aber keiner dieser Texte braucht %4</translation>
    </message>
    <message>
        <source>Each of these cards has an empty line</source>
        <translation>Jede dieser Karten hat eine leere Zeile</translation>
    </message>
    <message>
        <source>Reduce the minimum at these widths (Text › Minimum lines), or align the parts instead (Row › Align parts)</source>
        <translation>Das Minimum bei diesen Breiten verringern (Text › Mindestzeilen) oder stattdessen die Teile ausrichten (Reihe › Teile ausrichten)</translation>
    </message>
    <message>
        <source>Reduce the minimum at these widths (Text › Minimum lines)</source>
        <translation>Das Minimum bei diesen Breiten verringern (Text › Mindestzeilen)</translation>
    </message>
    <message>
        <source>Reserve space for %1 of %2 at least</source>
        <translation>Platz für mindestens %1 von %2 freihalten</translation>
    </message>
    <message>
        <source>Reserve no lines of %1</source>
        <translation>Keine Zeilen von %1 freihalten</translation>
    </message>
    <message>
        <source>Align parts of neighbouring cards instead of reserving lines</source>
        <translation>Teile benachbarter Karten ausrichten, statt Zeilen freizuhalten</translation>
    </message>
    <message>
        <source>The texts below do not start at the same height</source>
        <translation>Die Texte darunter beginnen nicht auf gleicher Höhe</translation>
    </message>
    <message>
        <source>%1, %2 has %3; its neighbour has %4</source>
        <translation>%1 hat %2 %3; das Gegenstück in der Nachbarkarte hat %4</translation>
    </message>
    <message>
        <source>%1, %2 is up to %3 taller than its neighbour</source>
        <translation>%1 ist %2 bis zu %3 höher als das Bild daneben</translation>
    </message>
    <message>
        <source>Use one aspect ratio for all pictures (Pictures › Aspect ratio), or align the parts (Row › Align parts)</source>
        <translation>Ein Seitenverhältnis für alle Bilder verwenden (Bilder › Seitenverhältnis) oder die Teile ausrichten (Reihe › Teile ausrichten)</translation>
    </message>
    <message>
        <source>Use one aspect ratio for all pictures (Pictures › Aspect ratio)</source>
        <translation>Ein Seitenverhältnis für alle Bilder verwenden (Bilder › Seitenverhältnis)</translation>
    </message>
    <message>
        <source>%1, card %2 has no %3, but its neighbour has %4</source>
        <translation>%1 fehlt in Karte %2 ein Teil (%3); in der Nachbarkarte steht %4</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Use the same parts in every card</source>
        <translation>In jeder Karte dieselben Teile verwenden</translation>
    </message>
    <message>
        <source>Reserve space for the longest %1 in every card</source>
        <translation>In jeder Karte Platz für den längsten Text freihalten (%1)</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>the picture %1</source>
        <translation>das Bild %1</translation>
    </message>
    <message>
        <source>the empty %1 of card %2</source>
        <translation>der leere Text in Karte %2 (Rolle „%1“)</translation>
    </message>
    <message>
        <source>the %1 %2</source>
        <extracomment>A role that the project names, and a text in quotes: the price “12 €”</extracomment>
        <translation>der Text %2 (Rolle „%1“)</translation>
    </message>
    <message numerus="yes">
        <source>%1 (and %n other)</source>
        <comment>%1 (and %n others)</comment>
        <translation>
            <numerusform>%1 (ebenso %n weiterer Teil)</numerusform>
            <numerusform>%1 (ebenso %n weitere Teile)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line</source>
        <comment>%n lines</comment>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>every width</source>
        <translation>jede Breite</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more range</source>
        <comment>%1 and %n more ranges</comment>
        <translation>
            <numerusform>%1 und %n weiterer Abschnitt</numerusform>
            <numerusform>%1 und %n weitere Abschnitte</numerusform>
        </translation>
    </message>
    <message>
        <source>heading</source>
        <translation>Überschrift</translation>
    </message>
    <message>
        <source>paragraph</source>
        <translation>Absatz</translation>
    </message>
    <message>
        <source>button</source>
        <translation>Button</translation>
    </message>
    <message>
        <source>heading text</source>
        <translation>Überschriftentext</translation>
    </message>
    <message>
        <source>body text</source>
        <translation>Fließtext</translation>
    </message>
    <message>
        <source>button text</source>
        <translation>Buttontext</translation>
    </message>
    <message>
        <source>%1 text</source>
        <extracomment>The text of a role with this name</extracomment>
        <translation>Text der Rolle „%1“</translation>
    </message>
    <message>
        <source>Change the font size slightly at these widths (Text › Font size)</source>
        <translation>Die Schriftgröße bei diesen Breiten leicht ändern (Text › Schriftgröße)</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>CSS Images 3 § 5.5; common practice</source>
        <translation>CSS Images 3 § 5.5; übliche Praxis</translation>
    </message>
    <message>
        <source>at %1 viewport width, %2 has %3 image pixels per CSS px (slot: %4 × %5)</source>
        <translation>bei %1 Viewport-Breite hat %2 %3 Bildpixel je CSS-px (Bildfeld: %4 × %5)</translation>
    </message>
    <message>
        <source>High-density screens have 2 or more device pixels per CSS px, so it looks soft there</source>
        <translation>Hochauflösende Bildschirme haben 2 oder mehr Gerätepixel je CSS-px, dort wirkt es also unscharf</translation>
    </message>
    <message>
        <source>Use a file at least %1 wide</source>
        <translation>Eine mindestens %1 breite Datei verwenden</translation>
    </message>
    <message>
        <source>%1, %2 shows less than %3 of its image, at worst %4</source>
        <translation>%1 zeigt %2 weniger als %3 der Bilddatei, im schlimmsten Fall %4</translation>
    </message>
    <message>
        <source>Without a focal point, only the centre is visible</source>
        <translation>Ohne Bildschwerpunkt ist nur die Mitte sichtbar</translation>
    </message>
    <message>
        <source>Set a focal point (Pictures › Focal point), or choose an aspect ratio closer to that of the image (Pictures › Aspect ratio)</source>
        <translation>Einen Bildschwerpunkt setzen (Bilder › Bildschwerpunkt) oder ein Seitenverhältnis wählen, das dem der Bilddatei näher kommt (Bilder › Seitenverhältnis)</translation>
    </message>
    <message>
        <source>Use each picture’s own aspect ratio</source>
        <translation>Das eigene Seitenverhältnis jedes Bildes verwenden</translation>
    </message>
    <message>
        <source>at 320&#xa0;px, %1 overflows the page by %2</source>
        <translation>bei 320&#xa0;px ragt %1 um %2 über die Seite hinaus</translation>
    </message>
    <message>
        <source>Readers who zoom to 400&#xa0;% must scroll sideways for every line</source>
        <translation>Wer auf 400&#xa0;% zoomt, muss für jede Zeile seitlich scrollen</translation>
    </message>
    <message>
        <source>the row</source>
        <translation>die Reihe</translation>
    </message>
    <message>
        <source>Set its width in percent, or reduce it (Row › Width)</source>
        <translation>Die Breite in Prozent angeben oder verringern (Reihe › Breite)</translation>
    </message>
    <message>
        <source>card %1</source>
        <translation>Karte %1</translation>
    </message>
    <message>
        <source>Use fewer columns or smaller gaps at this width (Row › Columns, Column gap)</source>
        <translation>Bei dieser Breite weniger Spalten oder kleinere Abstände verwenden (Reihe › Spalten, Spaltenabstand)</translation>
    </message>
    <message>
        <source>Allow breaks in long words (Text › Long words), or reduce the font size at this width</source>
        <translation>Umbrüche in langen Wörtern erlauben (Text › Lange Wörter) oder die Schriftgröße bei dieser Breite verkleinern</translation>
    </message>
    <message>
        <source>Set the width of the row to 100&#xa0;%, at most what it was</source>
        <translation>Breite der Reihe auf 100&#xa0;% setzen, höchstens die bisherige</translation>
    </message>
    <message>
        <source>Many readers find text under %1 hard to read</source>
        <translation>Viele Leser finden Text unter %1 schwer zu lesen</translation>
    </message>
    <message>
        <source>The wish is at least %1</source>
        <translation>Die Vorgabe ist mindestens %1</translation>
    </message>
    <message>
        <source>%1, %2 is as small as %3</source>
        <translation>%1 ist der %2 nur %3 groß</translation>
    </message>
    <message>
        <source>Raise the lower end of its ramp (Text › Font size)</source>
        <translation>Das untere Ende der Rampe anheben (Text › Schriftgröße)</translation>
    </message>
    <message>
        <source>Make %1 at least %2</source>
        <translation>%1 mindestens %2 groß machen</translation>
    </message>
    <message>
        <source>%1, the card of %2 has more empty space than the card beside it: up to %3 more</source>
        <translation>%1 hat die Karte, in der %2 steht, mehr Leerraum als die Karte daneben: bis zu %3 mehr</translation>
    </message>
    <message>
        <source>The row looks uneven</source>
        <translation>Die Reihe wirkt unruhig</translation>
    </message>
    <message>
        <source>Make the texts more similar in length, or change the order of the cards</source>
        <translation>Die Längen der Texte angleichen oder die Reihenfolge der Karten ändern</translation>
    </message>
    <message numerus="yes">
        <source>%1, %2 does not grow, but the column does</source>
        <comment>%1, %2 do not grow, but the column does</comment>
        <translation>
            <numerusform>%1 wächst %2 nicht, die Spalte aber schon</numerusform>
            <numerusform>%1 wachsen %2 nicht, die Spalte aber schon</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %2 grows, but the column does not</source>
        <comment>%1, %2 grow, but the column does not</comment>
        <translation>
            <numerusform>%1 wächst %2, die Spalte aber nicht</numerusform>
            <numerusform>%1 wachsen %2, die Spalte aber nicht</numerusform>
        </translation>
    </message>
    <message>
        <source>The lines hold more and more characters</source>
        <translation>Die Zeilen fassen immer mehr Zeichen</translation>
    </message>
    <message>
        <source>The lines hold fewer and fewer characters</source>
        <translation>Die Zeilen fassen immer weniger Zeichen</translation>
    </message>
    <message numerus="yes">
        <source>End the ramp at %1, where the column stops growing (Text › Font size)</source>
        <comment>End the ramps at %1, where the column stops growing (Text › Font size)</comment>
        <translation>
            <numerusform>Die Rampe bei %1 enden lassen, wo die Spalte aufhört zu wachsen (Text › Schriftgröße)</numerusform>
            <numerusform>Die Rampen bei %1 enden lassen, wo die Spalte aufhört zu wachsen (Text › Schriftgröße)</numerusform>
        </translation>
    </message>
    <message>
        <source>End the ramp of %1 at %2, at the same size</source>
        <translation>Rampe von %1 bei %2 enden lassen, mit derselben Größe</translation>
    </message>
    <message>
        <source>End the ramp of %1 at %2, with the same slope</source>
        <translation>Rampe von %1 bei %2 enden lassen, mit derselben Steigung</translation>
    </message>
    <message>
        <source>%1, %2 is less than %3 high or wide, at worst %4, and another link is close</source>
        <translation>%1 ist %2 weniger als %3 hoch oder breit, im schlimmsten Fall %4, und ein anderer Link ist nahe</translation>
    </message>
    <message>
        <source>Readers can press the wrong link by mistake</source>
        <translation>Leser können versehentlich den falschen Link treffen</translation>
    </message>
    <message>
        <source>Increase the padding (Spacing › Padding) to reach %1, or leave as much room around it</source>
        <translation>Den Innenabstand vergrößern (Abstände › Innenabstand), bis %1 erreicht sind, oder ebenso viel Platz ringsum lassen</translation>
    </message>
    <message>
        <source>%1, %2 is less than %3 high or wide, at worst %4</source>
        <translation>%1 ist %2 weniger als %3 hoch oder breit, im schlimmsten Fall %4</translation>
    </message>
    <message>
        <source>Targets of at least %1 are easier to press</source>
        <translation>Ziele von mindestens %1 sind leichter zu treffen</translation>
    </message>
    <message>
        <source>Increase the padding (Spacing › Padding)</source>
        <translation>Den Innenabstand vergrößern (Abstände › Innenabstand)</translation>
    </message>
    <message>
        <source>Increase the padding of %1 to %2 at top and bottom, and at the sides</source>
        <translation>Innenabstand von %1 oben und unten auf %2 vergrößern, ebenso an den Seiten</translation>
    </message>
    <message>
        <source>Increase the padding of %1 to %2 at top and bottom</source>
        <translation>Innenabstand von %1 oben und unten auf %2 vergrößern</translation>
    </message>
    <message>
        <source>Leave 24&#xa0;px between links of %1</source>
        <translation>Zwischen Links in %1 24&#xa0;px Abstand lassen</translation>
    </message>
    <message>
        <source>Make the whole card a link</source>
        <translation>Die ganze Karte zum Link machen</translation>
    </message>
    <message>
        <source>%1, %2 overflows by %3 when a reader increases the text spacing</source>
        <translation>%1 läuft %2 um %3 über, wenn ein Leser die Textabstände vergrößert</translation>
    </message>
    <message>
        <source>Allow breaks anywhere in its words (Text › Long words), or give it more room</source>
        <translation>Umbrüche überall in den Wörtern erlauben (Text › Lange Wörter) oder mehr Platz geben</translation>
    </message>
    <message>
        <source>between %1 and %2, the theme’s rules for %3 have ended and those for %4 have not started</source>
        <translation>zwischen %1 und %2 gelten die Regeln des Themes für %3 nicht mehr und die für %4 noch nicht</translation>
    </message>
    <message>
        <source>A zoomed page can have such a width, and neither set of rules applies there</source>
        <translation>Eine gezoomte Seite kann eine solche Breite haben, und dort gilt keine der beiden Regelgruppen</translation>
    </message>
    <message>
        <source>Use the same limit in both, such as “width &lt;= 980px” and “width &gt; 980px”</source>
        <translation>In beiden dieselbe Grenze verwenden, etwa „width &lt;= 980px“ und „width &gt; 980px“</translation>
    </message>
    <message>
        <source>elements around the parts</source>
        <translation>Elemente um die Teile</translation>
    </message>
    <message>
        <source>the card</source>
        <translation>die Karte</translation>
    </message>
    <message>
        <source>the picture</source>
        <translation>das Bild</translation>
    </message>
    <message>
        <source>the body</source>
        <translation>den Fließtext</translation>
    </message>
    <message>
        <source>the %1</source>
        <extracomment>The elements of a role that the project names: the price</extracomment>
        <translation>Teile der Rolle „%1“</translation>
    </message>
    <message>
        <source>So the row on its page can be at another place, with another width than here</source>
        <translation>Deshalb kann die Reihe auf ihrer Seite an anderer Stelle und mit anderer Breite stehen als hier</translation>
    </message>
    <message>
        <source>Import the row again and measure the page in a browser, or set the container of the page</source>
        <translation>Die Reihe noch einmal importieren und die Seite in einem Browser messen oder den Container der Seite angeben</translation>
    </message>
    <message>
        <source>the theme’s rule %1 sets %2 of %3 with !important in a cascade layer or in a style attribute</source>
        <translation>die Regel %1 des Themes setzt %2 für %3 mit !important in einer Kaskadenebene oder in einem style-Attribut</translation>
    </message>
    <message>
        <source>No stylesheet for the row can override it, so the row on the page differs from the one here</source>
        <translation>Kein Stylesheet der Reihe kann sie überstimmen, deshalb weicht die Reihe auf der Seite von dieser hier ab</translation>
    </message>
    <message>
        <source>Remove !important from that rule in the theme</source>
        <translation>!important aus dieser Regel des Themes entfernen</translation>
    </message>
    <message>
        <source>%1, a line of %2 is a tight fit</source>
        <translation>%1 hat %2 eine knappe Zeile</translation>
    </message>
    <message>
        <source>Another browser may break this line differently</source>
        <translation>Ein anderer Browser bricht diese Zeile möglicherweise anders um</translation>
    </message>
    <message>
        <source>Another browser may break this line differently, into %1; the wish is at most %2</source>
        <translation>Ein anderer Browser bricht diese Zeile möglicherweise anders um, in %1; die Vorgabe ist höchstens %2</translation>
    </message>
    <message>
        <source>Change the letter spacing of %1 by %2</source>
        <translation>Zeichenabstand von %1 um %2 ändern</translation>
    </message>
    <message>
        <source>the stylesheet of these cards gives font sizes in px</source>
        <translation>das Stylesheet dieser Karten gibt Schriftgrößen in px an</translation>
    </message>
    <message>
        <source>Text in px does not follow the text size that readers set in their browser</source>
        <translation>Text in px folgt nicht der Textgröße, die Leser in ihrem Browser einstellen</translation>
    </message>
    <message>
        <source>Choose rem (Row › Size unit)</source>
        <translation>rem wählen (Reihe › Einheit der Größen)</translation>
    </message>
    <message>
        <source>Give font sizes in rem</source>
        <translation>Schriftgrößen in rem angeben</translation>
    </message>
    <message>
        <source>in the stylesheet</source>
        <translation>im Stylesheet</translation>
    </message>
    <message>
        <source>A word that breaks at any letter is hard to read</source>
        <translation>Ein Wort, das an beliebiger Stelle umbricht, ist schwer zu lesen</translation>
    </message>
    <message>
        <source>It can cover other text or disappear at the edge</source>
        <translation>Es kann anderen Text verdecken oder am Rand verschwinden</translation>
    </message>
    <message>
        <source>Reduce the font size (Text › Font size), widen the column, or add a soft hyphen</source>
        <translation>Die Schriftgröße verkleinern (Text › Schriftgröße), die Spalte verbreitern oder einen weichen Trennstrich einfügen</translation>
    </message>
    <message>
        <source>%1, %2 zoom (the highest zoom in most browsers) makes %3 only %4 times as large</source>
        <translation>%1 macht ein Zoom von %2 (der höchste der meisten Browser) den %3 nur %4-mal so groß</translation>
    </message>
    <message>
        <source>%1, %2 zoom (the highest zoom in one desktop browser) makes %3 only %4 times as large</source>
        <translation>%1 macht ein Zoom von %2 (der höchste eines Desktop-Browsers) den %3 nur %4-mal so groß</translation>
    </message>
    <message>
        <source>WCAG requires twice the size, but zoom narrows the viewport, and the text shrinks with it</source>
        <translation>WCAG verlangt die doppelte Größe, aber Zoom macht den Viewport schmaler, und der Text schrumpft mit ihm</translation>
    </message>
    <message>
        <source>Keep the largest size of %1 at most %2 times the smallest (Text › Font size)</source>
        <translation>Die größte Größe von %1 auf höchstens das %2-Fache der kleinsten begrenzen (Text › Schriftgröße)</translation>
    </message>
    <message>
        <source>WCAG 2.2 SC 1.4.4, failure F94</source>
        <translation>WCAG 2.2 SC 1.4.4, Fehler F94</translation>
    </message>
    <message>
        <source>WCAG 2.2 SC 1.4.4; the limit of 300&#xa0;% was not verified</source>
        <translation>WCAG 2.2 SC 1.4.4; die Grenze von 300&#xa0;% wurde nicht geprüft</translation>
    </message>
    <message>
        <source>Make %1 at least %2 everywhere</source>
        <translation>%1 überall mindestens %2 groß machen</translation>
    </message>
    <message>
        <source>Make %1 at most %2 everywhere</source>
        <translation>%1 überall höchstens %2 groß machen</translation>
    </message>
    <message numerus="yes">
        <source>%n column</source>
        <comment>%n columns</comment>
        <translation>
            <numerusform>%n Spalte</numerusform>
            <numerusform>%n Spalten</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1 (%2)</source>
        <extracomment>The viewport widths of a band, and its columns</extracomment>
        <translation>bis %1 (%2)</translation>
    </message>
    <message>
        <source>from %1 (%2)</source>
        <translation>ab %1 (%2)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>Columns: 1 to 3 columns</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>“%1”, class %2</source>
        <translation>„%1“, Klasse %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>the default family</source>
        <translation>die Standardfamilie</translation>
    </message>
    <message>
        <source>%1 has no “%2”; the fallback font “%3” is used for it</source>
        <translation>%1 hat kein „%2“; dafür wird die Ersatzschrift „%3“ verwendet</translation>
    </message>
    <message>
        <source>%1 has no “%2”; no installed font has it</source>
        <translation>%1 hat kein „%2“; keine installierte Schrift hat es</translation>
    </message>
    <message>
        <source>%1 has no %2 characters; the fallback font “%3” is used for them</source>
        <translation>%1 hat keine Zeichen des Schriftsystems %2; dafür wird die Ersatzschrift „%3“ verwendet</translation>
    </message>
    <message>
        <source>%1 has no %2 characters; no installed font has them</source>
        <translation>%1 hat keine Zeichen des Schriftsystems %2; keine installierte Schrift hat sie</translation>
    </message>
    <message>
        <source>these characters</source>
        <extracomment>Add a font file with …</extracomment>
        <translation>diesen Zeichen</translation>
    </message>
    <message>
        <source>italic of weight %1</source>
        <translation>die kursive Stärke %1</translation>
    </message>
    <message>
        <source>weight %1</source>
        <translation>die Stärke %1</translation>
    </message>
    <message>
        <source>upright weight %1</source>
        <translation>die aufrechte Stärke %1</translation>
    </message>
    <message>
        <source>%1 cannot be read from its file</source>
        <translation>%1 kann nicht aus der Datei gelesen werden</translation>
    </message>
    <message>
        <source>%1 was not found</source>
        <translation>%1 wurde nicht gefunden</translation>
    </message>
    <message>
        <source>this family</source>
        <extracomment>Add a font file with …</extracomment>
        <translation>dieser Familie</translation>
    </message>
    <message>
        <source>%1 has no %2; %3 is used</source>
        <translation>%1 hat %2 nicht; stattdessen wird %3 verwendet</translation>
    </message>
    <message>
        <source>this style</source>
        <extracomment>Add a font file with …</extracomment>
        <translation>diesem Schnitt</translation>
    </message>
    <message>
        <source>.</source>
        <extracomment>The sign between the whole number and its decimals</extracomment>
        <translation>,</translation>
    </message>
    <message>
        <source>at %1</source>
        <extracomment>A width or a size with its unit</extracomment>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>Readers may add %1 between letters and %2 between words</source>
        <translation>Leser dürfen %1 zwischen Buchstaben und %2 zwischen Wörtern hinzufügen</translation>
    </message>
    <message>
        <source>body</source>
        <translation>Fließtext</translation>
    </message>
    <message numerus="yes">
        <source>%n error</source>
        <comment>%n errors</comment>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n warning</source>
        <comment>%n warnings</comment>
        <translation>
            <numerusform>%n Warnung</numerusform>
            <numerusform>%n Warnungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n note</source>
        <comment>%n notes</comment>
        <translation>
            <numerusform>%n Hinweis</numerusform>
            <numerusform>%n Hinweise</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n variant</source>
        <comment>%1 in %n variants</comment>
        <translation>
            <numerusform>%1 in %n Variante</numerusform>
            <numerusform>%1 in %n Varianten</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 in the variant %2</source>
        <translation>%1 in der Variante %2</translation>
    </message>
    <message>
        <source>Removes %1.</source>
        <translation>Behebt %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n other finding</source>
        <comment>%n other findings</comment>
        <translation>
            <numerusform>%n weiteren Befund</numerusform>
            <numerusform>%n weitere Befunde</numerusform>
        </translation>
    </message>
    <message>
        <source>Adds %1.</source>
        <translation>Neu: %1.</translation>
    </message>
    <message>
        <source>Widens %1.</source>
        <translation>Bei mehr Breiten: %1.</translation>
    </message>
    <message>
        <source>Boxes move by up to %1, at %2.</source>
        <translation>Boxen verschieben sich um bis zu %1, bei %2.</translation>
    </message>
    <message>
        <source>No box moves.</source>
        <translation>Keine Box verschiebt sich.</translation>
    </message>
    <message>
        <source>Variant %1: %2</source>
        <translation>Variante %1: %2</translation>
    </message>
    <message>
        <source>No finding comes or goes.</source>
        <translation>Kein Befund kommt hinzu oder fällt weg.</translation>
    </message>
    <message>
        <source>Removes: %1</source>
        <translation>Behebt: %1</translation>
    </message>
    <message>
        <source>Adds: %1</source>
        <translation>Neu: %1</translation>
    </message>
    <message>
        <source>At more widths: %1</source>
        <translation>Bei mehr Breiten: %1</translation>
    </message>
    <message>
        <source>%1, variant %2, %3: %4</source>
        <extracomment>A role, a band, and what limits the size of the role there</extracomment>
        <translation>%1, Variante %2, %3: %4</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>at %1 with %2 browser zoom</source>
        <translation>bei %1 mit %2 Browser-Zoom</translation>
    </message>
    <message>
        <source>just above %1</source>
        <translation>knapp über %1</translation>
    </message>
    <message>
        <source>just above %1 viewport width</source>
        <translation>knapp über %1 Viewport-Breite</translation>
    </message>
    <message>
        <source>at %1 viewport width</source>
        <translation>bei %1 Viewport-Breite</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>A size, and the place where it is reached: 21.4 px at 931 px viewport width
----------
A role, and a condition: body at least 15 px</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>at least %1, because of the wish “%2”.</source>
        <translation>mindestens %1, wegen der Vorgabe „%2“.</translation>
    </message>
    <message>
        <source>at most %1, because of the wish “%2”.</source>
        <translation>höchstens %1, wegen der Vorgabe „%2“.</translation>
    </message>
    <message>
        <source>%1 With three letters fewer in this word, the limit is %2.</source>
        <translation>%1 Mit drei Buchstaben weniger in diesem Wort ist die Grenze %2.</translation>
    </message>
    <message>
        <source>at least %1, because of the wish “%2”, limited by the %3.</source>
        <translation>mindestens %1, wegen der Vorgabe „%2“, begrenzt durch: %3.</translation>
    </message>
    <message>
        <source>at most %1, because of the wish “%2”, limited by the %3.</source>
        <translation>höchstens %1, wegen der Vorgabe „%2“, begrenzt durch: %3.</translation>
    </message>
    <message>
        <source>at least %1, because of the wish “%2” with a reserve of %3, limited by the %4.</source>
        <translation>mindestens %1, wegen der Vorgabe „%2“ mit einer Reserve von %3, begrenzt durch: %4.</translation>
    </message>
    <message>
        <source>at most %1, because of the wish “%2” with a reserve of %3, limited by the %4.</source>
        <translation>höchstens %1, wegen der Vorgabe „%2“ mit einer Reserve von %3, begrenzt durch: %4.</translation>
    </message>
    <message>
        <source>word %1 (card %2)</source>
        <translation>Wort %1 (Karte %2)</translation>
    </message>
    <message>
        <source>text %1 (card %2)</source>
        <translation>Text %1 (Karte %2)</translation>
    </message>
    <message>
        <source>Solving was cancelled.</source>
        <translation>Die Berechnung wurde abgebrochen.</translation>
    </message>
    <message>
        <source>Sizes that satisfy the wishes exist, but none on the size grid. Choose a finer grid.</source>
        <translation>Es gibt Größen, die die Vorgaben erfüllen, aber keine im Größenraster. Ein feineres Raster wählen.</translation>
    </message>
    <message>
        <source>In the solved row, “%1” is still violated at some widths. Make this wish slightly stricter than you need.</source>
        <translation>In der berechneten Reihe ist „%1“ bei einigen Breiten noch verletzt. Diese Vorgabe etwas strenger stellen als nötig.</translation>
    </message>
    <message>
        <source>%1 has one ramp %2 in every variant because the variants’ breakpoints differ there. With common breakpoints it can have one ramp per band.</source>
        <translation>%1 hat %2 in jeder Variante eine einzige Rampe, weil sich die Breakpoints der Varianten dort unterscheiden. Mit gemeinsamen Breakpoints ist eine Rampe je Bereich möglich.</translation>
    </message>
    <message>
        <source>%1 follows the card width, and the variants have cards of different widths. Set “Grows with” to “Viewport width”.</source>
        <translation>%1 folgt der Kartenbreite, und die Varianten haben verschieden breite Karten. „Wächst mit“ auf „Viewport-Breite“ setzen.</translation>
    </message>
    <message>
        <source>Without the reserve of %1 for longer text, these wishes can be satisfied.</source>
        <translation>Ohne die Reserve von %1 für längeren Text lassen sich diese Vorgaben erfüllen.</translation>
    </message>
    <message>
        <source>No readable size satisfies the other wishes. Shorten the text, or use fewer columns there.</source>
        <translation>Keine lesbare Größe erfüllt die übrigen Vorgaben. Den Text kürzen oder dort weniger Spalten verwenden.</translation>
    </message>
    <message>
        <source>This change resolves the conflict:</source>
        <translation>Diese Änderung löst den Konflikt:</translation>
    </message>
    <message>
        <source>Any one of these changes resolves the conflict:</source>
        <translation>Jede einzelne dieser Änderungen löst den Konflikt:</translation>
    </message>
    <message>
        <source>There is a second conflict. Tenter shows it when you solve again after this change.</source>
        <translation>Es gibt einen zweiten Konflikt. Tenter zeigt ihn, wenn Sie nach dieser Änderung erneut berechnen.</translation>
    </message>
    <message>
        <source>Remove “%1”</source>
        <translation>„%1“ entfernen</translation>
    </message>
    <message>
        <source>Change to “%1”</source>
        <translation>In „%1“ ändern</translation>
    </message>
    <message>
        <source>Change “%1” to “%2”</source>
        <translation>„%1“ in „%2“ ändern</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>narrow end</source>
        <translation>schmales Ende</translation>
    </message>
    <message>
        <source>wide end</source>
        <translation>breites Ende</translation>
    </message>
    <message>
        <source>variant</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>Sizes in px at the two ends of each band (before: converted, not yet solved):</source>
        <translation>Größen in px an den beiden Enden jedes Bereichs (vorher: umgerechnet, noch nicht berechnet):</translation>
    </message>
    <message>
        <source>Sizes in px at the two ends of each band:</source>
        <translation>Größen in px an den beiden Enden jedes Bereichs:</translation>
    </message>
    <message>
        <source>No sizes satisfy these wishes together:</source>
        <translation>Keine Größen erfüllen diese Vorgaben zusammen:</translation>
    </message>
    <message>
        <source>The current sizes satisfy every wish.</source>
        <translation>Die aktuellen Größen erfüllen jede Vorgabe.</translation>
    </message>
    <message>
        <source>Limits:</source>
        <translation>Grenzen:</translation>
    </message>
    <message>
        <source>No sizes satisfy this wish: %1.</source>
        <translation>Keine Größen erfüllen diese Vorgabe: %1.</translation>
    </message>
    <message>
        <source>No sizes satisfy these wishes together: %1.</source>
        <translation>Keine Größen erfüllen diese Vorgaben zusammen: %1.</translation>
    </message>
    <message>
        <source>No size changes.</source>
        <translation>Keine Größe ändert sich.</translation>
    </message>
    <message>
        <source>The conversion changes it most at %1 viewport width (variant %2): from %3 to %4.</source>
        <translation>Die Umrechnung ändert die Größe am stärksten bei %1 Viewport-Breite (Variante %2): von %3 auf %4.</translation>
    </message>
    <message>
        <source>The conversion changes it most at %1 viewport width: from %2 to %3.</source>
        <translation>Die Umrechnung ändert die Größe am stärksten bei %1 Viewport-Breite: von %2 auf %3.</translation>
    </message>
    <message>
        <source>%1: %2 in every card.</source>
        <translation>%1: %2 in jeder Karte.</translation>
    </message>
    <message>
        <source>%1: %2 where the card’s content is %3 wide, %4 where it is %5.</source>
        <translation>%1: %2 bei %3 breitem Karteninhalt, %4 bei %5.</translation>
    </message>
    <message>
        <source>Each card becomes a size container, and its sizes use the unit cqi. Chrome 105, Edge 105, Safari 16, Firefox 110 and later versions support this (we did not verify these versions). Older browsers ignore these sizes.</source>
        <translation>Jede Karte wird ein Größencontainer, und ihre Größen verwenden die Einheit cqi. Chrome 105, Edge 105, Safari 16, Firefox 110 und spätere Versionen unterstützen das (diese Versionen haben wir nicht geprüft). Ältere Browser ignorieren diese Größen.</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the same size on both sides of a breakpoint</source>
        <translation>gleiche Größe auf beiden Seiten eines Breakpoints</translation>
    </message>
    <message>
        <source>the same share of its column on both sides of a breakpoint</source>
        <translation>gleicher Anteil an der Spalte auf beiden Seiten eines Breakpoints</translation>
    </message>
    <message>
        <source>no growth where its column narrows</source>
        <translation>kein Wachsen, wo die Spalte schmaler wird</translation>
    </message>
    <message>
        <source>at least %1, because text must not shrink where its column widens. To allow a smaller size, move the breakpoint, or set the wish “Narrower column” to “Free”.</source>
        <translation>mindestens %1, weil Text nicht schrumpfen darf, wo die Spalte breiter wird. Um eine kleinere Größe zu erlauben, den Breakpoint verschieben oder die Vorgabe „Schmalere Spalte“ auf „Frei“ setzen.</translation>
    </message>
    <message>
        <source>at least %1, because text must not shrink where its column widens. To allow a smaller size, set the wish “Narrower column” to “Free”.</source>
        <translation>mindestens %1, weil Text nicht schrumpfen darf, wo die Spalte breiter wird. Um eine kleinere Größe zu erlauben, die Vorgabe „Schmalere Spalte“ auf „Frei“ setzen.</translation>
    </message>
    <message>
        <source>at most %1, because text must not grow where its column narrows. To allow a larger size, move the breakpoint, or set the wish “Narrower column” to “Free”.</source>
        <translation>höchstens %1, weil Text nicht wachsen darf, wo die Spalte schmaler wird. Um eine größere Größe zu erlauben, den Breakpoint verschieben oder die Vorgabe „Schmalere Spalte“ auf „Frei“ setzen.</translation>
    </message>
    <message>
        <source>at most %1, because text must not grow where its column narrows. To allow a larger size, set the wish “Narrower column” to “Free”.</source>
        <translation>höchstens %1, weil Text nicht wachsen darf, wo die Spalte schmaler wird. Um eine größere Größe zu erlauben, die Vorgabe „Schmalere Spalte“ auf „Frei“ setzen.</translation>
    </message>
    <message>
        <source>growth of at most %1 per %2 of width</source>
        <translation>Wachstum von höchstens %1 je %2 Breite</translation>
    </message>
    <message>
        <source>one line</source>
        <translation>eine Zeile</translation>
    </message>
    <message>
        <source>at most %1 lines</source>
        <translation>höchstens %1 Zeilen</translation>
    </message>
    <message>
        <source>%1 on one line</source>
        <extracomment>A role, and a wish on its lines</extracomment>
        <translation>%1: eine Zeile</translation>
    </message>
    <message>
        <source>%1 in at most %2 lines</source>
        <translation>%1: höchstens %2 Zeilen</translation>
    </message>
    <message>
        <source>at least %1 characters per line</source>
        <translation>mindestens %1 Zeichen je Zeile</translation>
    </message>
    <message>
        <source>at most %1 characters per line</source>
        <translation>höchstens %1 Zeichen je Zeile</translation>
    </message>
    <message>
        <source>%1 times the size of %2</source>
        <translation>%1-fache Größe von %2</translation>
    </message>
    <message>
        <source>at least %1 times the size of %2</source>
        <translation>mindestens %1-fache Größe von %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>%1, reached %2.</source>
        <extracomment>A wish on the size, and the place where the size is as large or small as it allows</extracomment>
        <translation>%1, erreicht %2.</translation>
    </message>
    <message>
        <source>locked at its sizes</source>
        <translation>gesperrt, die Größen bleiben</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>the same size in every variant</source>
        <translation>gleiche Größe in jeder Variante</translation>
    </message>
    <message>
        <source>%1, limited %2.</source>
        <translation>%1, begrenzt %2.</translation>
    </message>
    <message>
        <source>no word wider than its box</source>
        <translation>kein Wort breiter als seine Box</translation>
    </message>
    <message>
        <source>Put a soft hyphen into the word, or use a shorter word</source>
        <translation>Einen weichen Trennstrich in das Wort setzen oder ein kürzeres Wort verwenden</translation>
    </message>
    <message>
        <source>twice as large at %1 browser zoom</source>
        <translation>doppelt so groß bei %1 Browser-Zoom</translation>
    </message>
    <message>
        <source>at most %1, because of the wish “%2”: the largest size may be at most %3 times the smallest size of this role.</source>
        <translation>höchstens %1, wegen der Vorgabe „%2“: die größte Größe darf höchstens das %3-Fache der kleinsten Größe dieser Rolle sein.</translation>
    </message>
    <message>
        <source>every tested value (%1 to %2) satisfies the wishes (now %3)</source>
        <translation>jeder geprüfte Wert (%1 bis %2) erfüllt die Vorgaben (jetzt %3)</translation>
    </message>
    <message>
        <source>must be %1 (now %2)</source>
        <extracomment>The values of a setting that satisfy the wishes, and its value now</extracomment>
        <translation>muss im zulässigen Bereich liegen: %1 (jetzt %2)</translation>
    </message>
    <message>
        <source>%1 (now %2)</source>
        <translation>%1 (jetzt %2)</translation>
    </message>
    <message>
        <source>Column gap, %1</source>
        <translation>Spaltenabstand, %1</translation>
    </message>
    <message>
        <source>Card padding, %1</source>
        <translation>Karteninnenabstand, %1</translation>
    </message>
    <message>
        <source>Row width, %1</source>
        <translation>Reihenbreite, %1</translation>
    </message>
    <message>
        <source>Breakpoint at %1 (%2)</source>
        <translation>Breakpoint bei %1 (%2)</translation>
    </message>
    <message>
        <source>Breakpoint at %1 (%2 to %3)</source>
        <translation>Breakpoint bei %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>A smaller value violates %1; a larger value violates %2.</source>
        <translation>Ein kleinerer Wert verletzt %1; ein größerer Wert verletzt %2.</translation>
    </message>
    <message>
        <source>A smaller value violates %1.</source>
        <translation>Ein kleinerer Wert verletzt %1.</translation>
    </message>
    <message>
        <source>A larger value violates %1.</source>
        <translation>Ein größerer Wert verletzt %1.</translation>
    </message>
    <message>
        <source>%1: no value satisfies the wishes at the current sizes. The current value violates %2.</source>
        <translation>%1: kein Wert erfüllt die Vorgaben bei den aktuellen Größen. Der aktuelle Wert verletzt %2.</translation>
    </message>
    <message>
        <source>%1: no value satisfies the wishes at the current sizes (now %2). The current value violates %3.</source>
        <translation>%1: kein Wert erfüllt die Vorgaben bei den aktuellen Größen (jetzt %2). Der aktuelle Wert verletzt %3.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <extracomment>A setting, and its values that satisfy the wishes</extracomment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Suggested: %1.</source>
        <translation>Vorschlag: %1.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <extracomment>A wish, and a range of widths</extracomment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>From %1 to %2 of visits.</source>
        <translation>Von %1 auf %2 der Besuche.</translation>
    </message>
    <message>
        <source>From %1 to %2 of widths.</source>
        <translation>Von %1 auf %2 der Breiten.</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>%1 of visits</source>
        <translation>%1 der Besuche</translation>
    </message>
    <message>
        <source>%1 of widths</source>
        <translation>%1 der Breiten</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <extracomment>Numbers of findings: 1 error, 2 warnings, 3 notes</extracomment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>All affected widths: %1</source>
        <translation>Alle betroffenen Breiten: %1</translation>
    </message>
    <message>
        <source>Basis: %1</source>
        <translation>Grundlage: %1</translation>
    </message>
    <message>
        <source>Tenter found no remedy.</source>
        <translation>Tenter hat keine Abhilfe gefunden.</translation>
    </message>
    <message>
        <source>silenced</source>
        <translation>ausgeblendet</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Grund: %1</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>No picture</extracomment>
        <translation>keins</translation>
    </message>
    <message>
        <source>%1 give the same line counts at every whole width.</source>
        <translation>%1 ergeben bei jeder ganzen Breite dieselben Zeilenzahlen.</translation>
    </message>
    <message>
        <source>%1 give different line counts at %2.</source>
        <translation>%1 ergeben verschiedene Zeilenzahlen bei %2.</translation>
    </message>
    <message>
        <source>The page’s theme has no breakpoints.</source>
        <translation>Das Theme der Seite hat keine Breakpoints.</translation>
    </message>
    <message>
        <source>The page’s theme has breakpoints at %1.</source>
        <translation>Das Theme der Seite hat Breakpoints bei %1.</translation>
    </message>
    <message>
        <source>The variant %1: until the fonts have loaded, line counts differ at %2; with the fallback fonts, at %3. On average, the row changes its height by %4; with the fallback fonts, by %5.</source>
        <translation>Variante %1: bis die Schriften geladen sind, weichen die Zeilenzahlen bei %2 ab; mit den Ersatzschriften bei %3. Im Mittel ändert sich die Höhe der Reihe um %4; mit den Ersatzschriften um %5.</translation>
    </message>
    <message>
        <source>No fallback font was found for %1: no installed family after it has the characters of its texts.</source>
        <translation>Für %1 wurde keine Ersatzschrift gefunden: keine installierte Familie danach hat die Zeichen der Texte.</translation>
    </message>
    <message>
        <source>Some of it is transparent, so PNG is written in place of JPEG.</source>
        <translation>Ein Teil ist durchsichtig, deshalb wird PNG statt JPEG geschrieben.</translation>
    </message>
    <message>
        <source>The largest slot is %1 × %2, at %3 viewport width in the variant %4.</source>
        <translation>Das größte Bildfeld ist %1 × %2, bei %3 Viewport-Breite in der Variante %4.</translation>
    </message>
    <message>
        <source>The largest slot is %1 × %2, at %3 viewport width.</source>
        <translation>Das größte Bildfeld ist %1 × %2, bei %3 Viewport-Breite.</translation>
    </message>
    <message>
        <source>At other widths the slot is taller for its width, so the file is taller.</source>
        <translation>Bei anderen Breiten ist das Bildfeld im Verhältnis höher, deshalb ist die Datei höher.</translation>
    </message>
    <message>
        <source>At other widths the slot is wider for its height, so the file is wider.</source>
        <translation>Bei anderen Breiten ist das Bildfeld im Verhältnis breiter, deshalb ist die Datei breiter.</translation>
    </message>
    <message numerus="yes">
        <source>The row at a viewport width of %1: %n card in %2, %3 tall.</source>
        <comment>The row at a viewport width of %1: %n cards in %2, %3 tall.</comment>
        <translation>
            <numerusform>Die Reihe bei einer Viewport-Breite von %1: %n Karte in %2, %3 hoch.</numerusform>
            <numerusform>Die Reihe bei einer Viewport-Breite von %1: %n Karten in %2, %3 hoch.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 of widths</source>
        <translation>%1, %2 der Breiten</translation>
    </message>
    <message>
        <source>A row of cards</source>
        <translation>Eine Kartenreihe</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>Viewport widths</source>
        <translation>Viewport-Breiten</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Classes</source>
        <translation>Klassen</translation>
    </message>
    <message>
        <source>Line breaks as in</source>
        <translation>Zeilenumbrüche wie in</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>The row at its key widths</source>
        <translation>Die Reihe bei ihren Schlüsselbreiten</translation>
    </message>
    <message>
        <source>Font size and measure</source>
        <translation>Schriftgröße und Zeilenlänge</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>%1: spec sheet</source>
        <translation>%1: Spezifikation</translation>
    </message>
    <message>
        <source>Spec sheet</source>
        <translation>Spezifikation</translation>
    </message>
    <message>
        <source>%1 at %2 of card to %3 at %4 of card</source>
        <translation>%1 bei %2 Karte bis %3 bei %4 Karte</translation>
    </message>
    <message>
        <source>%1 at %2 to %3 at %4</source>
        <translation>%1 bei %2 bis %3 bei %4</translation>
    </message>
    <message>
        <source>%1 italic</source>
        <translation>%1 kursiv</translation>
    </message>
    <message>
        <source>Key widths</source>
        <translation>Schlüsselbreiten</translation>
    </message>
    <message>
        <source>Viewport</source>
        <translation>Viewport</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Card content</source>
        <translation>Karteninhalt</translation>
    </message>
    <message>
        <source>Widest picture</source>
        <translation>Breitestes Bild</translation>
    </message>
    <message>
        <source>Slack</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Why this width</source>
        <translation>Warum diese Breite</translation>
    </message>
    <message>
        <source>Widths and font sizes in CSS px. Under each role: font size · the highest line count of any card. Slack: the smallest change of the text width, as a share of that width, that moves a line break; below 0.25&#xa0;% another browser may break the line differently.</source>
        <translation>Breiten und Schriftgrößen in CSS-px. Unter jeder Rolle: Schriftgröße · höchste Zeilenzahl aller Karten. Luft: die kleinste Änderung der Textbreite, als Anteil dieser Breite, die einen Zeilenumbruch verschiebt; unter 0,25&#xa0;% bricht ein anderer Browser die Zeile möglicherweise anders um.</translation>
    </message>
    <message>
        <source>Row width</source>
        <translation>Reihenbreite</translation>
    </message>
    <message>
        <source>Maximum</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Column gap</source>
        <translation>Spaltenabstand</translation>
    </message>
    <message>
        <source>Row gap</source>
        <translation>Abstand untereinander</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typografie</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Font size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>Font</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>Line height</source>
        <translation>Zeilenhöhe</translation>
    </message>
    <message>
        <source>Letter spacing</source>
        <translation>Zeichenabstand</translation>
    </message>
    <message>
        <source>A font size with two values is a ramp: it changes in a straight line between the two widths and is constant outside them.</source>
        <translation>Eine Schriftgröße mit zwei Werten ist eine Rampe: zwischen den beiden Breiten ändert sie sich geradlinig, außerhalb ist sie konstant.</translation>
    </message>
    <message>
        <source>Row padding</source>
        <translation>Innenabstand der Reihe</translation>
    </message>
    <message>
        <source>Card padding</source>
        <translation>Karteninnenabstand</translation>
    </message>
    <message>
        <source>Card border</source>
        <translation>Rahmen der Karte</translation>
    </message>
    <message>
        <source>Card corner radius</source>
        <translation>Eckenradius der Karte</translation>
    </message>
    <message>
        <source>Picture margin</source>
        <translation>Außenabstand des Bildes</translation>
    </message>
    <message>
        <source>%1 margin</source>
        <translation>%1: Außenabstand</translation>
    </message>
    <message>
        <source>%1 padding</source>
        <translation>%1: Innenabstand</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Abstände</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>As in the stylesheet. An em is the font size of the text itself, so its space follows the type. Spaces that are 0 at every width are left out.</source>
        <translation>Wie im Stylesheet. Ein em ist die Schriftgröße des Textes selbst, sein Abstand folgt also der Schrift. Abstände, die bei jeder Breite 0 sind, fehlen.</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Zeilenlänge</translation>
    </message>
    <message>
        <source>Fewest characters</source>
        <translation>Wenigste Zeichen</translation>
    </message>
    <message>
        <source>Most characters</source>
        <translation>Meiste Zeichen</translation>
    </message>
    <message>
        <source>Measure: the number of characters that fit on a line. WCAG 2.2 SC 1.4.8 (AAA): at most 80 characters.</source>
        <translation>Zeilenlänge: die Zahl der Zeichen, die in eine Zeile passen. WCAG 2.2 SC 1.4.8 (AAA): höchstens 80 Zeichen.</translation>
    </message>
    <message>
        <source>Picture slots</source>
        <translation>Bildfelder</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Slot width</source>
        <translation>Breite des Bildfelds</translation>
    </message>
    <message>
        <source>Largest at viewport</source>
        <translation>Am größten bei Viewport</translation>
    </message>
    <message>
        <source>Present file</source>
        <translation>Vorhandene Datei</translation>
    </message>
    <message>
        <source>File at %1×</source>
        <translation>Datei bei %1×</translation>
    </message>
    <message>
        <source>No picture</source>
        <translation>Kein Bild</translation>
    </message>
    <message>
        <source>File: pixels of a file that is cut to the slot and fills it at every viewport width, for screens with 1, 2 and 3 pixels per CSS px.</source>
        <translation>Datei: Pixel einer Datei, die auf das Bildfeld zugeschnitten ist und es bei jeder Viewport-Breite füllt, für Bildschirme mit 1, 2 und 3 Pixeln je CSS-px.</translation>
    </message>
    <message>
        <source>Fonts</source>
        <translation>Schriften</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Check the licence of each font before it goes on a site: a licence for a desktop program does not always include web use.</source>
        <translation>Die Lizenz jeder Schrift prüfen, bevor sie auf eine Website kommt: eine Lizenz für ein Desktop-Programm schließt die Nutzung im Web nicht immer ein.</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>%1: %2 to %3 characters.</source>
        <translation>%1: %2 bis %3 Zeichen.</translation>
    </message>
    <message>
        <source>Plot of font size over viewport widths %1.</source>
        <translation>Diagramm der Schriftgröße über Viewport-Breiten %1.</translation>
    </message>
    <message>
        <source>Plot of the measure of the first card over viewport widths %1.</source>
        <translation>Diagramm der Zeilenlänge der ersten Karte über Viewport-Breiten %1.</translation>
    </message>
    <message>
        <source>Automated checks cover only a part of WCAG 2.2. They do not prove conformance. That needs a qualified audit, and local law can require more.</source>
        <translation>Automatische Prüfungen decken nur einen Teil der WCAG 2.2 ab. Sie beweisen keine Konformität. Dafür ist eine fachkundige Prüfung nötig, und das Recht vor Ort kann mehr verlangen.</translation>
    </message>
    <message>
        <source>the viewport</source>
        <translation>der Viewport</translation>
    </message>
    <message>
        <source>%1 at every width.</source>
        <translation>%1 bei jeder Breite.</translation>
    </message>
    <message>
        <source>%1 where %2 is %3 wide, %4 where it is %5 wide. Between these widths the size changes in a straight line; outside them it is constant.</source>
        <translation>%1, wo %2 %3 breit ist, %4 bei %5. Zwischen diesen Breiten ändert sich die Größe geradlinig; außerhalb ist sie konstant.</translation>
    </message>
    <message>
        <source>The pasted size is not exactly this ramp: the difference is at most %1, where %2 is %3 wide.</source>
        <translation>Die eingefügte Größe ist nicht genau diese Rampe: der Unterschied beträgt höchstens %1, wo %2 %3 breit ist.</translation>
    </message>
    <message>
        <source>Assumed: 1em is %1, the root size.</source>
        <translation>Angenommen: 1em ist %1, die Wurzelgröße.</translation>
    </message>
    <message>
        <source>Assumed: 1em is %1.</source>
        <translation>Angenommen: 1em ist %1.</translation>
    </message>
    <message>
        <source>Assumed: 100&#xa0;% is %1, the root size.</source>
        <translation>Angenommen: 100&#xa0;% sind %1, die Wurzelgröße.</translation>
    </message>
    <message>
        <source>Assumed: 100&#xa0;% is %1.</source>
        <translation>Angenommen: 100&#xa0;% sind %1.</translation>
    </message>
    <message>
        <source>Assumed: 1rem is %1.</source>
        <translation>Angenommen: 1rem ist %1.</translation>
    </message>
    <message>
        <source>Some text in the cards is not in an element of its own and was left out.</source>
        <translation>Etwas Text in den Karten steht in keinem eigenen Element und wurde weggelassen.</translation>
    </message>
    <message>
        <source>The HTML is nested too deeply to be read. Paste only the text.</source>
        <translation>Das HTML ist zu tief verschachtelt, um gelesen zu werden. Nur den Text einfügen.</translation>
    </message>
    <message>
        <source>White cards with a soft shadow and a filled button</source>
        <translation>Weiße Karten mit weichem Schatten und gefülltem Button</translation>
    </message>
    <message>
        <source>No boxes, tall pictures, book type</source>
        <translation>Keine Kästen, hohe Bilder, Buchschrift</translation>
    </message>
    <message>
        <source>Dark cards with light type and a bright button</source>
        <translation>Dunkle Karten mit heller Schrift und leuchtendem Button</translation>
    </message>
    <message>
        <source>Tinted, round and centred</source>
        <translation>Getönt, rund und zentriert</translation>
    </message>
    <message>
        <source>New row</source>
        <translation>Neue Reihe</translation>
    </message>
    <message>
        <source>The text needs this: %1.</source>
        <translation>Der Text erfordert dies: %1.</translation>
    </message>
    <message>
        <source>No sizes satisfy all wishes with this text. Shorten the longest words, or use fewer columns.</source>
        <translation>Keine Größen erfüllen mit diesem Text alle Vorgaben. Die längsten Wörter kürzen oder weniger Spalten verwenden.</translation>
    </message>
    <message>
        <source>The text is an example. Replace it in the Words panel.</source>
        <translation>Der Text ist ein Beispiel. Ihn unter „Wörter“ ersetzen.</translation>
    </message>
    <message>
        <source>%1 of the pictures were not used, because there are only %2 cards.</source>
        <translation>%1 der Bilder wurden nicht verwendet, weil es nur %2 Karten gibt.</translation>
    </message>
    <message>
        <source>The text is longer than %1 MB. Only its start was read.</source>
        <translation>Der Text ist länger als %1 MB. Nur sein Anfang wurde gelesen.</translation>
    </message>
    <message>
        <source>The text has %1 cards. Only the first %2 were read.</source>
        <translation>Der Text hat %1 Karten. Nur die ersten %2 wurden gelesen.</translation>
    </message>
    <message>
        <source>A card has more than %1 paragraphs. The others were left out. Check where cards start.</source>
        <translation>Eine Karte hat mehr als %1 Absätze. Die übrigen wurden weggelassen. Prüfen, wo Karten beginnen.</translation>
    </message>
    <message>
        <source>The text before the first heading is in no card: %1.</source>
        <translation>Der Text vor der ersten Überschrift steht in keiner Karte: %1.</translation>
    </message>
    <message>
        <source>%1 · Spec sheet · %2</source>
        <translation>%1 · Spezifikation · %2</translation>
    </message>
    <message>
        <source>viewport width, px</source>
        <translation>Viewport-Breite, px</translation>
    </message>
    <message>
        <source>%1; the lower part is not shown</source>
        <translation>%1; der untere Teil ist nicht gezeigt</translation>
    </message>
    <message>
        <source>Remedy %1: %2. %3</source>
        <extracomment>The number of a remedy, what it changes, and its effect</extracomment>
        <translation>Abhilfe %1: %2. %3</translation>
    </message>
    <message>
        <source>Check the container in the project.</source>
        <translation>Den Container im Projekt prüfen.</translation>
    </message>
    <message>
        <source>Text of this %1</source>
        <translation>Beispieltext (%1)</translation>
    </message>
    <message>
        <source>The value “%1” of %2 of the %3 is not set in the project.</source>
        <translation>Der Wert „%1“ von %2 (%3) ist im Projekt nicht gesetzt.</translation>
    </message>
    <message>
        <source>The value “%1” of %2 of the %3 is “%4” in the project.</source>
        <translation>Der Wert „%1“ von %2 (%3) ist im Projekt „%4“.</translation>
    </message>
    <message>
        <source>The picture “%1” is embedded in the page and was left out. Add it under Pictures.</source>
        <translation>Das Bild „%1“ ist in die Seite eingebettet und wurde weggelassen. Es unter „Bilder“ hinzufügen.</translation>
    </message>
    <message>
        <source>The picture file %1 was not found beside the page.</source>
        <translation>Die Bilddatei %1 wurde neben der Seite nicht gefunden.</translation>
    </message>
    <message>
        <source>This has Tenter’s own markup, but is read like a page of another author: %1</source>
        <translation>Das Markup ist das von Tenter, wird aber wie die Seite eines anderen Autors gelesen: %1</translation>
    </message>
    <message>
        <source>The stylesheet has no texts and pictures: the card has placeholder texts.</source>
        <translation>Das Stylesheet hat keine Texte und Bilder: die Karte hat Platzhaltertexte.</translation>
    </message>
    <message>
        <source>The value “%1” of %2 of the %3 was not understood.</source>
        <translation>Der Wert „%1“ von %2 (%3) wurde nicht verstanden.</translation>
    </message>
    <message>
        <source>The row on the page does not have the class of a variant. Tenter added %1 to the imported markup. Add it to the row in the CMS, too.</source>
        <translation>Die Reihe auf der Seite hat nicht die Klasse einer Variante. Tenter hat %1 im importierten Markup hinzugefügt. Sie auch im CMS zur Reihe hinzufügen.</translation>
    </message>
    <message>
        <source>The cards are directly in the body of the page. If they have an element around them, paste that element too.</source>
        <translation>Die Karten stehen unmittelbar im body der Seite. Wenn ein Element sie umgibt, auch dieses Element einfügen.</translation>
    </message>
    <message numerus="yes">
        <source>Some text is not inside an element of its own and was not imported (%n piece). Put it into an element on the page, or type it in the Words panel.</source>
        <comment>Some text is not inside an element of its own and was not imported (%n pieces). Put it into an element on the page, or type it in the Words panel.</comment>
        <translation>
            <numerusform>Etwas Text steht in keinem eigenen Element und wurde nicht importiert (%n Stück). Ihn auf der Seite in ein Element setzen oder unter „Wörter“ eingeben.</numerusform>
            <numerusform>Etwas Text steht in keinem eigenen Element und wurde nicht importiert (%n Stücke). Ihn auf der Seite in ein Element setzen oder unter „Wörter“ eingeben.</numerusform>
        </translation>
    </message>
    <message>
        <source>chosen</source>
        <extracomment>A selector of a role</extracomment>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>guessed</source>
        <translation>vermutet</translation>
    </message>
    <message>
        <source>The selector %1 for %2 also selects other elements. Choose a selector for %2, or add a class on the page.</source>
        <translation>Der Selektor %1 für %2 wählt auch andere Elemente aus. Einen Selektor für %2 wählen oder auf der Seite eine Klasse hinzufügen.</translation>
    </message>
    <message numerus="yes">
        <source>Row: %1 with %n card (%2).</source>
        <comment>Row: %1 with %n cards (%2).</comment>
        <translation>
            <numerusform>Reihe: %1 mit %n Karte (%2).</numerusform>
            <numerusform>Reihe: %1 mit %n Karten (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n element with the selector %2; the first is %3 (%4).</source>
        <comment>%1: %n elements with the selector %2; the first is %3 (%4).</comment>
        <translation>
            <numerusform>%1: %n Element mit dem Selektor %2; das erste ist %3 (%4).</numerusform>
            <numerusform>%1: %n Elemente mit dem Selektor %2; das erste ist %3 (%4).</numerusform>
        </translation>
    </message>
    <message>
        <source>Heading level: %1.</source>
        <translation>Überschriftenebene: %1.</translation>
    </message>
    <message numerus="yes">
        <source>The picture file %1 is not saved with the page. Put it into the folder of the project.</source>
        <comment>The picture files %1 are not saved with the page. Put them into the folder of the project.</comment>
        <translation>
            <numerusform>Die Bilddatei %1 ist nicht mit der Seite gespeichert. Sie in den Ordner des Projekts legen.</numerusform>
            <numerusform>Die Bilddateien %1 sind nicht mit der Seite gespeichert. Sie in den Ordner des Projekts legen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture on the page has no src with a file name. Save a picture file for it in the folder of the project, named %1, or choose another picture.</source>
        <comment>%n pictures on the page have no src with a file name. Save a picture file for each in the folder of the project, named %1, or choose other pictures.</comment>
        <translation>
            <numerusform>%n Bild auf der Seite hat kein src mit einem Dateinamen. Im Ordner des Projekts eine Bilddatei namens %1 dafür speichern oder ein anderes Bild wählen.</numerusform>
            <numerusform>%n Bilder auf der Seite haben kein src mit einem Dateinamen. Im Ordner des Projekts für jedes eine Bilddatei speichern, mit den Namen %1, oder andere Bilder wählen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The size of the picture %1 is not known. Tenter assumes an aspect ratio of 3/2.</source>
        <comment>The sizes of the pictures %1 are not known. Tenter assumes an aspect ratio of 3/2.</comment>
        <translation>
            <numerusform>Die Größe des Bildes %1 ist nicht bekannt. Tenter nimmt ein Seitenverhältnis von 3/2 an.</numerusform>
            <numerusform>Die Größen der Bilder %1 sind nicht bekannt. Tenter nimmt ein Seitenverhältnis von 3/2 an.</numerusform>
        </translation>
    </message>
    <message>
        <source>Language: %1.</source>
        <translation>Sprache: %1.</translation>
    </message>
    <message>
        <source>Direction: right to left.</source>
        <translation>Schreibrichtung: von rechts nach links.</translation>
    </message>
    <message>
        <source>Direction: left to right.</source>
        <translation>Schreibrichtung: von links nach rechts.</translation>
    </message>
    <message>
        <source>Root font size: %1.</source>
        <translation>Wurzel-Schriftgröße: %1.</translation>
    </message>
    <message>
        <source>The page could not be measured in a browser. What the CSS says was imported.</source>
        <translation>Die Seite konnte nicht in einem Browser gemessen werden. Importiert wurde, was das CSS angibt.</translation>
    </message>
    <message>
        <source>A browser confirms the container and the root font size at every whole viewport width.</source>
        <translation>Ein Browser bestätigt den Container und die Wurzel-Schriftgröße bei jeder ganzen Viewport-Breite.</translation>
    </message>
    <message>
        <source>Encoding: %1.</source>
        <translation>Zeichencodierung: %1.</translation>
    </message>
    <message>
        <source>Theme: no CSS that affects the row was found.</source>
        <translation>Theme: kein CSS gefunden, das auf die Reihe wirkt.</translation>
    </message>
    <message>
        <source>Theme: the page has no CSS that affects the row; the theme in the project stays.</source>
        <translation>Theme: die Seite hat kein CSS, das auf die Reihe wirkt; das Theme im Projekt bleibt.</translation>
    </message>
    <message>
        <source>No rule of the theme&apos;s CSS affects the row. Check that it is the right CSS.</source>
        <translation>Keine Regel im CSS des Themes wirkt auf die Reihe. Prüfen, ob es das richtige CSS ist.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <extracomment>A sentence, and what to do about it</extracomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1 (in its style attribute)</source>
        <translation>%1 (im eigenen style-Attribut)</translation>
    </message>
    <message>
        <source>%1 (line %2 of a style element)</source>
        <translation>%1 (Zeile %2 eines style-Elements)</translation>
    </message>
    <message>
        <source>%1 (line %2 of the pasted text)</source>
        <translation>%1 (Zeile %2 des eingefügten Textes)</translation>
    </message>
    <message>
        <source>line %1 of the pasted text</source>
        <translation>Zeile %1 des eingefügten Textes</translation>
    </message>
    <message>
        <source>line %1, column %2 of the pasted text</source>
        <translation>Zeile %1, Spalte %2 des eingefügten Textes</translation>
    </message>
    <message>
        <source>%1 has %2, which is not supported</source>
        <translation>%1 hat %2, was nicht unterstützt wird</translation>
    </message>
    <message>
        <source>%1 has columns, so the width that it gives the row is not known</source>
        <translation>%1 hat Spalten, daher ist die Breite für die Reihe nicht bekannt</translation>
    </message>
    <message>
        <source>%1 has %2, so a scrollbar can take room from the row</source>
        <translation>%1 hat %2, daher kann ein Scrollbalken der Reihe Platz nehmen</translation>
    </message>
    <message>
        <source>%1 is a grid whose columns depend on their content</source>
        <translation>%1 ist ein Raster, dessen Spalten vom Inhalt abhängen</translation>
    </message>
    <message>
        <source>%1 puts the row beside other elements in a flex container</source>
        <translation>%1 stellt die Reihe in einem Flex-Container neben andere Elemente</translation>
    </message>
    <message>
        <source>%1 has %2, so its width depends on its content</source>
        <translation>%1 hat %2, daher hängt die Breite vom Inhalt ab</translation>
    </message>
    <message>
        <source>%1 is in a line with other content, so its place is not known</source>
        <translation>%1 steht in einer Zeile mit anderem Inhalt, daher ist die Lage nicht bekannt</translation>
    </message>
    <message>
        <source>%1 has %2, so its place is not known</source>
        <translation>%1 hat %2, daher ist die Lage nicht bekannt</translation>
    </message>
    <message>
        <source>%1 is only as wide as its content</source>
        <translation>%1 ist nur so breit wie der Inhalt</translation>
    </message>
    <message>
        <source>%1 floats next to other elements, so its place is not known</source>
        <translation>%1 steht als Float neben anderen Elementen, daher ist die Lage nicht bekannt</translation>
    </message>
    <message>
        <source>%1 is in a grid whose columns depend on their content</source>
        <translation>%1 steht in einem Raster, dessen Spalten vom Inhalt abhängen</translation>
    </message>
    <message>
        <source>The %1 around the row</source>
        <translation>%1 um die Reihe</translation>
    </message>
    <message>
        <source>%1 is in a flex container next to elements whose width depends on their content</source>
        <translation>%1 steht in einem Flex-Container neben Elementen, deren Breite vom Inhalt abhängt</translation>
    </message>
    <message>
        <source>%1 is in a flex container that is too narrow for its elements</source>
        <translation>%1 steht in einem Flex-Container, der für seine Elemente zu schmal ist</translation>
    </message>
    <message>
        <source>The browser&apos;s %1 differs from the theme&apos;s CSS as Tenter reads it, from %2 to %3: at %4 it is %5, not %6. Tenter imported what was measured.</source>
        <translation>Im Browser weicht ein Wert (%1) von dem ab, was Tenter im CSS des Themes liest, von %2 bis %3: bei %4 ist er %5, nicht %6. Tenter hat den gemessenen Wert importiert.</translation>
    </message>
    <message>
        <source>width of the container</source>
        <translation>Breite des Containers</translation>
    </message>
    <message>
        <source>position of the container</source>
        <translation>Lage des Containers</translation>
    </message>
    <message>
        <source>root font size</source>
        <translation>Wurzel-Schriftgröße</translation>
    </message>
    <message>
        <source>%1 is a table of which the row is a cell</source>
        <translation>%1 ist eine Tabelle, deren Zelle die Reihe ist</translation>
    </message>
    <message>
        <source>%1 is in a table whose columns depend on their content</source>
        <translation>%1 steht in einer Tabelle, deren Spalten vom Inhalt abhängen</translation>
    </message>
    <message>
        <source>The stylesheet %1 is not saved with the page, so its rules for the row are not known. Save the page with its files, or give the CSS of the theme.</source>
        <translation>Das Stylesheet %1 ist nicht mit der Seite gespeichert, daher sind seine Regeln für die Reihe nicht bekannt. Die Seite mit ihren Dateien speichern oder das CSS des Themes angeben.</translation>
    </message>
    <message>
        <source>The &lt;%1&gt; around the row has %2 under the media condition %3, which depends on the height of the window. Check the container in the project.</source>
        <translation>&lt;%1&gt; um die Reihe hat %2 unter der Medienbedingung %3, die von der Höhe des Fensters abhängt. Den Container im Projekt prüfen.</translation>
    </message>
    <message>
        <source>The root font size of the page is %1, which is not supported. Assumed: 16&#xa0;px. Set it in the project.</source>
        <translation>Die Wurzel-Schriftgröße der Seite ist %1, was nicht unterstützt wird. Angenommen: 16&#xa0;px. Sie im Projekt setzen.</translation>
    </message>
    <message>
        <source>The content of an element around the row is wider than this element at some viewport widths. Tenter shows the row with less width there.</source>
        <translation>Der Inhalt eines Elements um die Reihe ist bei manchen Viewport-Breiten breiter als dieses Element. Tenter zeigt die Reihe dort schmaler.</translation>
    </message>
    <message>
        <source>The theme has lengths in ch, ex, cap or ic around the row. They depend on the font. Tenter assumes the fonts of this computer.</source>
        <translation>Das Theme hat um die Reihe Längen in ch, ex, cap oder ic. Sie hängen von der Schrift ab. Tenter geht von den Schriften dieses Computers aus.</translation>
    </message>
    <message>
        <source>%1 of the viewport width</source>
        <translation>%1 der Viewport-Breite</translation>
    </message>
    <message>
        <source>%1 wide</source>
        <translation>%1 breit</translation>
    </message>
    <message>
        <source>and %1</source>
        <translation>dazu %1</translation>
    </message>
    <message>
        <source>padding %1 on each side</source>
        <translation>Innenabstand %1 auf jeder Seite</translation>
    </message>
    <message>
        <source>padding %1 on the left</source>
        <translation>Innenabstand %1 links</translation>
    </message>
    <message>
        <source>padding %1 on the right</source>
        <translation>Innenabstand %1 rechts</translation>
    </message>
    <message numerus="yes">
        <source>%1; the theme changes it or the root font size at %n viewport width</source>
        <comment>%1; the theme changes it or the root font size at %n viewport widths</comment>
        <translation>
            <numerusform>%1; das Theme ändert ihn oder die Wurzel-Schriftgröße bei %n Viewport-Breite</numerusform>
            <numerusform>%1; das Theme ändert ihn oder die Wurzel-Schriftgröße bei %n Viewport-Breiten</numerusform>
        </translation>
    </message>
    <message>
        <source>Container: %1.</source>
        <translation>Container: %1.</translation>
    </message>
    <message>
        <source>Container (assumed): %1.</source>
        <translation>Container (angenommen): %1.</translation>
    </message>
    <message>
        <source>card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Warning: %1</source>
        <translation>Warnung: %1</translation>
    </message>
    <message>
        <source>%1: the picture or gradient behind the card is not in the project.</source>
        <translation>%1: das Bild oder der Verlauf hinter der Karte ist nicht im Projekt.</translation>
    </message>
    <message>
        <source>%1 is a colour that cannot be read.</source>
        <translation>%1 ist eine nicht lesbare Farbe.</translation>
    </message>
    <message>
        <source>%1: Tenter draws a solid border.</source>
        <translation>%1: Tenter zeichnet einen durchgezogenen Rahmen.</translation>
    </message>
    <message>
        <source>%1 under the pointer is not in the project.</source>
        <translation>%1 unter dem Zeiger ist nicht im Projekt.</translation>
    </message>
    <message>
        <source>%1: the project has the first shadow only.</source>
        <translation>%1: das Projekt hat nur den ersten Schatten.</translation>
    </message>
    <message>
        <source>%1: this shadow is not in the project.</source>
        <translation>%1: dieser Schatten ist nicht im Projekt.</translation>
    </message>
    <message>
        <source>%1: Tenter places a picture beside the text at its start only.</source>
        <translation>%1: Tenter stellt ein Bild neben dem Text nur an dessen Anfang.</translation>
    </message>
    <message>
        <source>%1: the text is in the middle of the card on the page. In the project it starts at the top.</source>
        <translation>%1: der Text steht auf der Seite in der Mitte der Karte. Im Projekt beginnt er oben.</translation>
    </message>
    <message>
        <source>%1: Tenter gives a picture beside the text a share of the card&apos;s width. The share is exact at one viewport width of each band.</source>
        <translation>%1: Tenter gibt einem Bild neben dem Text einen Anteil an der Kartenbreite. Der Anteil stimmt bei einer Viewport-Breite jedes Bereichs genau.</translation>
    </message>
    <message>
        <source>%1: Tenter uses one distance on both sides of the picture: that from the edge of the card.</source>
        <translation>%1: Tenter verwendet auf beiden Seiten des Bildes einen Abstand: den zum Rand der Karte.</translation>
    </message>
    <message>
        <source>%1: some elements of this role differ. Tenter uses the value of the first.</source>
        <translation>%1: einige Elemente dieser Rolle weichen ab. Tenter verwendet den Wert des ersten.</translation>
    </message>
    <message>
        <source>%1: some elements of this role have another size. Tenter uses the size of the first.</source>
        <translation>%1: einige Elemente dieser Rolle haben eine andere Größe. Tenter verwendet die Größe des ersten.</translation>
    </message>
    <message>
        <source>%1: Tenter has no maximum width for text. The text fills the card.</source>
        <translation>%1: Tenter kennt keine maximale Breite für Text. Der Text füllt die Karte.</translation>
    </message>
    <message>
        <source>%1: Tenter breaks this text into lines.</source>
        <translation>%1: Tenter bricht diesen Text in Zeilen um.</translation>
    </message>
    <message>
        <source>%1: Tenter shows the whole text.</source>
        <translation>%1: Tenter zeigt den ganzen Text.</translation>
    </message>
    <message>
        <source>%1: Tenter gives a picture an aspect ratio instead of a height. The ratio is exact at one viewport width of each band.</source>
        <translation>%1: Tenter gibt einem Bild ein Seitenverhältnis statt einer Höhe. Das Verhältnis stimmt bei einer Viewport-Breite jedes Bereichs genau.</translation>
    </message>
    <message>
        <source>%1: Tenter crops the picture so that it covers its box.</source>
        <translation>%1: Tenter beschneidet das Bild, damit es seine Box füllt.</translation>
    </message>
    <message>
        <source>%1: Tenter makes pictures as wide as their card.</source>
        <translation>%1: Tenter macht Bilder so breit wie ihre Karte.</translation>
    </message>
    <message>
        <source>%1: some pictures are narrower than their card on the page. In the project they are as wide.</source>
        <translation>%1: einige Bilder sind auf der Seite schmaler als ihre Karte. Im Projekt sind sie gleich breit.</translation>
    </message>
    <message>
        <source>margin: the distances between parts on the page depend on which parts follow each other. In the project each role has one margin, so some distances differ.</source>
        <translation>margin: die Abstände zwischen Teilen hängen auf der Seite davon ab, welche Teile aufeinander folgen. Im Projekt hat jede Rolle einen Außenabstand, daher weichen einige Abstände ab.</translation>
    </message>
    <message>
        <source>display: %1 and %2 are side by side on the page (%3). In the project parts stand below each other.</source>
        <translation>display: %1 und %2 stehen auf der Seite nebeneinander (%3). Im Projekt stehen Teile untereinander.</translation>
    </message>
    <message>
        <source>%1 (style attribute)</source>
        <translation>%1 (style-Attribut)</translation>
    </message>
    <message>
        <source>%1 is a length that Tenter does not have. It uses %2, which is the length at %3.</source>
        <translation>%1 ist eine Länge, die Tenter nicht kennt. Verwendet wird %2, die Länge bei %3.</translation>
    </message>
    <message>
        <source>%1 cannot be read. The project has 0.</source>
        <translation>%1 ist nicht lesbar. Das Projekt hat 0.</translation>
    </message>
    <message>
        <source>Imported row</source>
        <translation>Importierte Reihe</translation>
    </message>
    <message>
        <source>%1 of the page is not in the project. %2</source>
        <translation>%1 der Seite ist nicht im Projekt. %2</translation>
    </message>
    <message>
        <source>The settings of the page were not imported, because a project cannot have them.</source>
        <translation>Die Einstellungen der Seite wurden nicht importiert, weil ein Projekt sie nicht haben kann.</translation>
    </message>
    <message>
        <source>The %1 of the row</source>
        <translation>%1 der Reihe</translation>
    </message>
    <message>
        <source>Check the columns in the project.</source>
        <translation>Die Spalten im Projekt prüfen.</translation>
    </message>
    <message>
        <source>%1: card %2 has another width than the first at some viewport widths. In the project all cards of a row are equally wide.</source>
        <translation>%1: Karte %2 hat bei manchen Viewport-Breiten eine andere Breite als die erste. Im Projekt sind alle Karten einer Reihe gleich breit.</translation>
    </message>
    <message>
        <source>%1, %2: Tenter cannot place the row there at every width. It uses the nearest place.</source>
        <translation>%1, %2: Tenter kann die Reihe nicht bei jeder Breite dorthin stellen. Verwendet wird die nächste Lage.</translation>
    </message>
    <message>
        <source>The gaps between the cards of the page are not equal. The project has the first.</source>
        <translation>Die Abstände zwischen den Karten der Seite sind ungleich. Das Projekt hat den ersten.</translation>
    </message>
    <message>
        <source>%1: the row of the page has a border. A project has none; its width is in the padding.</source>
        <translation>%1: die Reihe der Seite hat einen Rahmen. Ein Projekt hat keinen; seine Breite steckt im Innenabstand.</translation>
    </message>
    <message>
        <source>%1: cards of one line have different heights on the page. In the project they are as tall as the tallest.</source>
        <translation>%1: Karten einer Kartenzeile sind auf der Seite verschieden hoch. Im Projekt sind sie so hoch wie die höchste.</translation>
    </message>
    <message>
        <source>%1 is not a colour. The project has no background there.</source>
        <translation>%1 ist keine Farbe. Das Projekt hat dort keinen Hintergrund.</translation>
    </message>
    <message>
        <source>%1 is a colour in a notation that is not supported. Set it in the project.</source>
        <translation>%1 ist eine Farbe in einer nicht unterstützten Schreibweise. Sie im Projekt setzen.</translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <translation>%1 ist nicht lesbar.</translation>
    </message>
    <message>
        <source>%1: a project has no lower case.</source>
        <translation>%1: ein Projekt kennt keine Kleinschreibung.</translation>
    </message>
    <message>
        <source>%1: a project hyphenates only at soft hyphens.</source>
        <translation>%1: ein Projekt trennt nur an weichen Trennstrichen.</translation>
    </message>
    <message>
        <source>%1: Tenter does not justify text. It aligns the text at the start.</source>
        <translation>%1: Tenter setzt keinen Blocksatz. Der Text wird am Anfang ausgerichtet.</translation>
    </message>
    <message>
        <source>%1 of an element in a line takes no room on the page. The project has no padding above and below it.</source>
        <translation>%1 eines Elements in einer Zeile nimmt auf der Seite keinen Platz ein. Das Projekt hat darüber und darunter keinen Innenabstand.</translation>
    </message>
    <message>
        <source>%1: the background fills the free room of the card on the page, in the project only the text.</source>
        <translation>%1: der Hintergrund füllt auf der Seite den freien Platz der Karte, im Projekt nur den Text.</translation>
    </message>
    <message>
        <source>%1: the corners differ. The project has the radius of the first.</source>
        <translation>%1: die Ecken unterscheiden sich. Das Projekt hat den Radius der ersten.</translation>
    </message>
    <message>
        <source>%1: Tenter has no percentages for corners. It uses 999&#xa0;px.</source>
        <translation>%1: Tenter kennt keine Prozentwerte für Ecken. Verwendet werden 999&#xa0;px.</translation>
    </message>
    <message>
        <source>style attribute</source>
        <translation>style-Attribut</translation>
    </message>
    <message>
        <source>Alternative</source>
        <translation>Alternativtext</translation>
    </message>
    <message>
        <source>Button lines</source>
        <translation>Zeilen im Button</translation>
    </message>
    <message>
        <source>Contrast</source>
        <translation>Kontrast</translation>
    </message>
    <message>
        <source>Engines</source>
        <translation>Browserunterschied</translation>
    </message>
    <message>
        <source>Focus</source>
        <translation>Fokus</translation>
    </message>
    <message>
        <source>Growth</source>
        <translation>Wachstum</translation>
    </message>
    <message>
        <source>Heading levels</source>
        <translation>Überschriftenebenen</translation>
    </message>
    <message>
        <source>Heading lines</source>
        <translation>Zeilen der Überschrift</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation>Lücken</translation>
    </message>
    <message>
        <source>Inset</source>
        <translation>Randabstand</translation>
    </message>
    <message>
        <source>Label in name</source>
        <translation>Beschriftung im Namen</translation>
    </message>
    <message>
        <source>Last word</source>
        <translation>Letztes Wort</translation>
    </message>
    <message>
        <source>Late font</source>
        <translation>Späte Schrift</translation>
    </message>
    <message>
        <source>Link name</source>
        <translation>Linkname</translation>
    </message>
    <message>
        <source>Link purpose</source>
        <translation>Linkzweck</translation>
    </message>
    <message>
        <source>Out of line</source>
        <translation>Nicht ausgerichtet</translation>
    </message>
    <message>
        <source>Reflow</source>
        <translation>Umfluss</translation>
    </message>
    <message>
        <source>Small type</source>
        <translation>Kleine Schrift</translation>
    </message>
    <message>
        <source>Spare room</source>
        <translation>Leerraum</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Rampenende</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Zielgröße</translation>
    </message>
    <message>
        <source>Text spacing</source>
        <translation>Textabstand</translation>
    </message>
    <message>
        <source>Theme gap</source>
        <translation>Lücke im Theme</translation>
    </message>
    <message>
        <source>Theme obstacle</source>
        <translation>Hindernis im Theme</translation>
    </message>
    <message>
        <source>Tight fit</source>
        <translation>Knappe Zeile</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Word</source>
        <translation>Wort</translation>
    </message>
    <message>
        <source>Zoom</source>
        <translation>Zoom</translation>
    </message>
    <message>
        <source>The page has more than %1 stylesheets. The others are not read. Give the CSS of the theme.</source>
        <translation>Die Seite hat mehr als %1 Stylesheets. Die übrigen werden nicht gelesen. Das CSS des Themes angeben.</translation>
    </message>
    <message>
        <source>The stylesheets of the page are together larger than %1 MB, so not all rules for the row are known. Give the CSS of the theme alone.</source>
        <translation>Die Stylesheets der Seite sind zusammen größer als %1 MB, deshalb sind nicht alle Regeln für die Reihe bekannt. Nur das CSS des Themes angeben.</translation>
    </message>
    <message>
        <source>A text is longer than %1 characters, or all texts together than %2. The rest was left out.</source>
        <translation>Ein Text ist länger als %1 Zeichen, oder alle Texte zusammen länger als %2. Der Rest wurde weggelassen.</translation>
    </message>
    <message>
        <source>%1: the borders of the card&apos;s sides differ. The project has no border there; its width is in the padding.</source>
        <translation>%1: die Rahmen der Seiten der Karte unterscheiden sich. Das Projekt hat dort keinen Rahmen; seine Breite steckt im Innenabstand.</translation>
    </message>
    <message>
        <source>%1: this is not in the project, which has no such setting.</source>
        <translation>%1: das ist nicht im Projekt; es hat keine solche Einstellung.</translation>
    </message>
    <message>
        <source>The project has no variant with the class %1. Its rules are not compared.</source>
        <translation>Das Projekt hat keine Variante mit der Klasse %1. Ihre Regeln werden nicht verglichen.</translation>
    </message>
    <message>
        <source>Breakpoints</source>
        <translation>Breakpoints</translation>
    </message>
    <message>
        <source>%1 is %2 in the project and %3 in the stylesheet.</source>
        <translation>%1 ist im Projekt %2 und im Stylesheet %3.</translation>
    </message>
    <message>
        <source>%1 (%2) is %3 in the project and %4 in the stylesheet.</source>
        <translation>%1 (%2) ist im Projekt %3 und im Stylesheet %4.</translation>
    </message>
    <message>
        <source>The stylesheet has the values of the project.</source>
        <translation>Das Stylesheet hat die Werte des Projekts.</translation>
    </message>
    <message numerus="yes">
        <source>%n difference.</source>
        <comment>%n differences.</comment>
        <translation>
            <numerusform>%n Unterschied.</numerusform>
            <numerusform>%n Unterschiede.</numerusform>
        </translation>
    </message>
    <message>
        <source>No rule of the stylesheet lays out a row of columns: none has a grid with columns, a flex container or floats with a width for elements with a class of their own.</source>
        <translation>Keine Regel des Stylesheets ordnet eine Reihe in Spalten an: keine hat ein Raster mit Spalten, einen Flex-Container oder Floats mit einer Breite für Elemente mit eigener Klasse.</translation>
    </message>
    <message>
        <source>The stylesheet lays out a row (%1), but no rule is for a heading, a text, a button or a picture in it.</source>
        <translation>Das Stylesheet ordnet eine Reihe an (%1), aber keine Regel gilt einer Überschrift, einem Text, einem Button oder einem Bild darin.</translation>
    </message>
    <message>
        <source>Import the page instead, or its HTML together with the stylesheet.</source>
        <translation>Stattdessen die Seite importieren, oder ihr HTML zusammen mit dem Stylesheet.</translation>
    </message>
    <message>
        <source>The file is not text in UTF-8.</source>
        <translation>Die Datei ist kein Text in UTF-8.</translation>
    </message>
    <message>
        <source>The row of the stylesheet cannot be laid out.</source>
        <translation>Die Reihe des Stylesheets lässt sich nicht anordnen.</translation>
    </message>
    <message>
        <source>The columns are as many as the cards, and a stylesheet has no cards. The project has %1.</source>
        <translation>Es gibt so viele Spalten wie Karten, und ein Stylesheet hat keine Karten. Das Projekt hat %1.</translation>
    </message>
    <message>
        <source>%1: recognised by the rules for %2.</source>
        <translation>%1: erkannt an den Regeln für %2.</translation>
    </message>
    <message>
        <source>The stylesheet has no texts and pictures: the cards have placeholder texts.</source>
        <translation>Das Stylesheet hat keine Texte und Bilder: die Karten haben Platzhaltertexte.</translation>
    </message>
    <message>
        <source>no breakpoint</source>
        <translation>kein Breakpoint</translation>
    </message>
    <message>
        <source>%1: the borders of the sides differ. Tenter draws no border; its width is in the padding.</source>
        <translation>%1: die Rahmen der Seiten unterscheiden sich. Tenter zeichnet keinen Rahmen; seine Breite steckt im Innenabstand.</translation>
    </message>
    <message>
        <source>container</source>
        <translation>Container</translation>
    </message>
    <message>
        <source>the font %1, first %2</source>
        <translation>die Schrift %1, zuerst %2</translation>
    </message>
    <message>
        <source>a link %1 has neither text nor a name</source>
        <translation>ein Link %1 hat weder Text noch Namen</translation>
    </message>
    <message>
        <source>Align the parts of neighbouring cards (Row › Align parts), or %1</source>
        <translation>Die Teile benachbarter Karten ausrichten (Reihe › Teile ausrichten) oder %1</translation>
    </message>
    <message>
        <source>Reserve space for as many lines (Text › Minimum lines), or %1</source>
        <translation>Platz für ebenso viele Zeilen freihalten (Text › Mindestzeilen) oder %1</translation>
    </message>
    <message>
        <source>the heading %1</source>
        <translation>die Überschrift %1</translation>
    </message>
    <message>
        <source>in the heading %1</source>
        <translation>in der Überschrift %1</translation>
    </message>
    <message>
        <source>the empty heading of card %1</source>
        <translation>die leere Überschrift in Karte %1</translation>
    </message>
    <message>
        <source>in the empty heading of card %1</source>
        <translation>in der leeren Überschrift in Karte %1</translation>
    </message>
    <message>
        <source>shorten the heading</source>
        <translation>die Überschrift kürzen</translation>
    </message>
    <message>
        <source>the paragraph %1</source>
        <translation>der Absatz %1</translation>
    </message>
    <message>
        <source>in the paragraph %1</source>
        <translation>im Absatz %1</translation>
    </message>
    <message>
        <source>the empty paragraph of card %1</source>
        <translation>der leere Absatz in Karte %1</translation>
    </message>
    <message>
        <source>in the empty paragraph of card %1</source>
        <translation>im leeren Absatz in Karte %1</translation>
    </message>
    <message>
        <source>shorten the paragraph</source>
        <translation>den Absatz kürzen</translation>
    </message>
    <message>
        <source>the button %1</source>
        <translation>der Button %1</translation>
    </message>
    <message>
        <source>in the button %1</source>
        <translation>im Button %1</translation>
    </message>
    <message>
        <source>the empty button of card %1</source>
        <translation>der Button ohne Text in Karte %1</translation>
    </message>
    <message>
        <source>in the empty button of card %1</source>
        <translation>im Button ohne Text in Karte %1</translation>
    </message>
    <message>
        <source>shorten the button</source>
        <translation>den Text des Buttons kürzen</translation>
    </message>
    <message>
        <source>in the picture %1</source>
        <translation>im Bild %1</translation>
    </message>
    <message>
        <source>in the empty %1 of card %2</source>
        <translation>im leeren Text in Karte %2 (Rolle „%1“)</translation>
    </message>
    <message>
        <source>in the %1 %2</source>
        <extracomment>A role that the project names, and a text in quotes: in the price “12 €”</extracomment>
        <translation>im Text %2 (Rolle „%1“)</translation>
    </message>
    <message>
        <source>shorten the %1</source>
        <translation>den Text der Rolle „%1“ kürzen</translation>
    </message>
    <message>
        <source>the heading</source>
        <translation>die Überschrift</translation>
    </message>
    <message>
        <source>the button</source>
        <translation>den Button</translation>
    </message>
    <message>
        <source>%1, the line that ends with %2 %3 has only about %4 of free space</source>
        <translation>%1 hat die Zeile, die %3 mit %2 endet, nur etwa %4 Platz</translation>
    </message>
    <message>
        <source>%1, the word %2 %3 would fit on the previous line with only about %4 more space</source>
        <translation>%1 würde das Wort %2 %3 mit nur etwa %4 mehr Platz noch in die vorige Zeile passen</translation>
    </message>
    <message>
        <source>%1, the word %2 %3 is up to %4 wider than its box and breaks in two</source>
        <translation>%1 ist das Wort %2 %3 bis zu %4 breiter als seine Box und wird zerteilt</translation>
    </message>
    <message>
        <source>%1, the word %2 %3 is up to %4 wider than its box and overflows it</source>
        <translation>%1 ist das Wort %2 %3 bis zu %4 breiter als seine Box und ragt darüber hinaus</translation>
    </message>
    <message>
        <source>%1 in the cards is no part. Its room is not in the layout of the project.</source>
        <translation>%1 in den Karten ist kein Teil. Sein Platz fehlt im Layout des Projekts.</translation>
    </message>
    <message>
        <source>%1: %2 in the cards is no part. Its room is not in the layout of the project.</source>
        <translation>%1: %2 in den Karten ist kein Teil. Sein Platz fehlt im Layout des Projekts.</translation>
    </message>
</context>
</TS>
