<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>Card %1 of %2</source>
        <translation>Karte %1 von %2</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message numerus="yes">
        <source>Table with %n row(s)</source>
        <translation>
            <numerusform>Tabelle mit %n Zeile</numerusform>
            <numerusform>Tabelle mit %n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>Visits at each viewport width</source>
        <translation>Besuche bei jeder Viewport-Breite</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n visit(s), %2 of all visits</source>
        <translation>
            <numerusform>%1: %n Besuch, %2 aller Besuche</numerusform>
            <numerusform>%1: %n Besuche, %2 aller Besuche</numerusform>
        </translation>
    </message>
    <message>
        <source>Viewport width</source>
        <translation>Viewport-Breite</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>Share of all visits</source>
        <translation>Anteil an allen Besuchen</translation>
    </message>
    <message>
        <source>Show data as &amp;table…</source>
        <translation>Daten als &amp;Tabelle zeigen…</translation>
    </message>
    <message>
        <source>Viewport width axis</source>
        <translation>Achse der Viewport-Breite</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Bereiche</translation>
    </message>
    <message>
        <source>Drag a breakpoint to move it.</source>
        <translation>Ziehen Sie einen Breakpoint, um ihn zu verschieben.</translation>
    </message>
    <message>
        <source>Wrap points</source>
        <translation>Umbruchpunkte</translation>
    </message>
    <message>
        <source>Each tick marks one change of a line count. Ticks of the selected text are longer.</source>
        <translation>Jeder Strich steht für eine Änderung einer Zeilenzahl. Striche des ausgewählten Textes sind länger.</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>The widths at which each finding occurs. A thicker line is a more severe finding. Click a line to show the finding.</source>
        <translation>Die Breiten, bei denen ein Befund auftritt. Eine dickere Linie ist ein schwererer Befund. Ein Klick auf eine Linie zeigt den Befund.</translation>
    </message>
    <message>
        <source>Audience</source>
        <translation>Publikum</translation>
    </message>
    <message>
        <source>The number of visits at each viewport width.</source>
        <translation>Die Zahl der Besuche bei jeder Viewport-Breite.</translation>
    </message>
    <message>
        <source>Chromium/Firefox</source>
        <translation>Chromium/Firefox</translation>
    </message>
    <message>
        <source>The widths at which some text has a different number of lines in Chromium and Firefox.</source>
        <translation>Die Breiten, bei denen ein Text in Chromium und Firefox verschieden viele Zeilen hat.</translation>
    </message>
    <message>
        <source>Chromium/Firefox differences</source>
        <translation>Unterschiede Chromium/Firefox</translation>
    </message>
    <message>
        <source>Thumbnails</source>
        <translation>Vorschaubilder</translation>
    </message>
    <message>
        <source>at key widths</source>
        <translation>bei wichtigen Breiten</translation>
    </message>
    <message>
        <source>Small pictures of the row at the ends of the range, on both sides of each breakpoint and at the worst finding. Click one to go to its width.</source>
        <translation>Kleine Bilder der Reihe an den Enden der Breiten, auf beiden Seiten jedes Breakpoints und beim schwersten Befund. Ein Klick geht zur Breite des Bildes.</translation>
    </message>
    <message>
        <source>Font size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>px</source>
        <translation>px</translation>
    </message>
    <message>
        <source>Drag the ends of a ramp to change it. Sizes in hatched areas do not satisfy a wish.</source>
        <translation>Ziehen Sie an den Enden einer Rampe, um sie zu ändern. Größen in schraffierten Flächen erfüllen eine Vorgabe nicht.</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Zeilenlänge</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>Dashed lines mark the comfortable range: 45 to 75 characters in one column, 40 to 50 in several columns.</source>
        <translation>Gestrichelte Linien begrenzen die angenehme Zeilenlänge: 45 bis 75 Zeichen in einer Spalte, 40 bis 50 in mehreren Spalten.</translation>
    </message>
    <message>
        <source>Card height</source>
        <translation>Kartenhöhe</translation>
    </message>
    <message>
        <source>The height of each card at each viewport width.</source>
        <translation>Die Höhe jeder Karte bei jeder Viewport-Breite.</translation>
    </message>
    <message>
        <source>Picture size</source>
        <translation>Bildgröße</translation>
    </message>
    <message>
        <source>The plot shows the width and height of the slot at each viewport width.</source>
        <translation>Das Diagramm zeigt Breite und Höhe des Bildfelds bei jeder Viewport-Breite.</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Result of the last comparison with a browser. A thin line: the browser agrees with Tenter at this width. A bar: it differs. A taller bar is a larger difference.</source>
        <translation>Ergebnis des letzten Vergleichs mit einem Browser. Dünne Linie: Der Browser stimmt bei dieser Breite mit Tenter überein. Balken: Er weicht ab. Je höher der Balken, desto größer der Unterschied.</translation>
    </message>
    <message>
        <source>Comparison with browser</source>
        <translation>Vergleich mit Browser</translation>
    </message>
    <message>
        <source>Viewport widths</source>
        <translation>Viewport-Breiten</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Move breakpoint</source>
        <translation>Breakpoint verschieben</translation>
    </message>
    <message>
        <source>Breakpoint at %1</source>
        <translation>Breakpoint bei %1</translation>
    </message>
    <message>
        <source>Breakpoint at %1. Drag to move it.</source>
        <translation>Breakpoint bei %1. Ziehen verschiebt ihn.</translation>
    </message>
    <message>
        <source>Breakpoint %1</source>
        <translation>Breakpoint %1</translation>
    </message>
    <message>
        <source>Not compared at this width</source>
        <translation>Bei dieser Breite nicht verglichen</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>%1 · %2&#xa0;rem · %3</source>
        <translation>%1 · %2&#xa0;rem · %3</translation>
    </message>
    <message>
        <source>Data of lanes and plots</source>
        <translation>Daten der Spuren und Diagramme</translation>
    </message>
    <message>
        <source>Lane or plot</source>
        <translation>Spur oder Diagramm</translation>
    </message>
    <message>
        <source>Data</source>
        <translation>Daten</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>No differences in line count</source>
        <translation>Keine Unterschiede der Zeilenzahl</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Lines in %1</source>
        <translation>Zeilen in %1</translation>
    </message>
    <message>
        <source>Findings at each viewport width</source>
        <translation>Befunde bei jeder Viewport-Breite</translation>
    </message>
    <message>
        <source>No findings</source>
        <translation>Keine Befunde</translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s)</source>
        <translation>
            <numerusform>%n Befund</numerusform>
            <numerusform>%n Befunde</numerusform>
        </translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Measure at each viewport width</source>
        <translation>Zeilenlänge bei jeder Viewport-Breite</translation>
    </message>
    <message>
        <source>card %1</source>
        <translation>Karte %1</translation>
    </message>
    <message>
        <source>Card %1</source>
        <translation>Karte %1</translation>
    </message>
    <message>
        <source>cards 1–%1</source>
        <translation>Karten 1–%1</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>&amp;Whole range</source>
        <translation>Alle &amp;Breiten</translation>
    </message>
    <message>
        <source>&amp;Equal room for each band</source>
        <translation>&amp;Jeder Bereich gleich breit</translation>
    </message>
    <message>
        <source>Font size of each role at each viewport width</source>
        <translation>Schriftgröße jeder Rolle bei jeder Viewport-Breite</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>Change font size</source>
        <translation>Schriftgröße ändern</translation>
    </message>
    <message>
        <source>Change font size of %1</source>
        <translation>Schriftgröße ändern: %1</translation>
    </message>
    <message>
        <source>%1: %2 at viewport width %3</source>
        <translation>%1: %2 bei Viewport-Breite %3</translation>
    </message>
    <message>
        <source>%1. Drag to change the ramp.</source>
        <translation>%1. Ziehen ändert die Rampe.</translation>
    </message>
    <message>
        <source>Card height at each viewport width</source>
        <translation>Kartenhöhe bei jeder Viewport-Breite</translation>
    </message>
    <message>
        <source>Picture size at each viewport width</source>
        <translation>Bildgröße bei jeder Viewport-Breite</translation>
    </message>
    <message>
        <source>slot height</source>
        <translation>Höhe Bildfeld</translation>
    </message>
    <message>
        <source>slot width</source>
        <translation>Breite Bildfeld</translation>
    </message>
    <message>
        <source>Slot height</source>
        <translation>Höhe des Bildfelds</translation>
    </message>
    <message>
        <source>Slot width</source>
        <translation>Breite des Bildfelds</translation>
    </message>
    <message>
        <source>Breakpoints of the theme: %1</source>
        <translation>Breakpoints des Themes: %1</translation>
    </message>
    <message>
        <source>Ends of page ranges: %1</source>
        <translation>Enden von Seitenbereichen: %1</translation>
    </message>
    <message>
        <source>Breakpoint of the theme at %1: %2</source>
        <translation>Breakpoint des Themes bei %1: %2</translation>
    </message>
    <message>
        <source>End of a page range: the page changes above %1</source>
        <translation>Ende eines Seitenbereichs: Über %1 ändert sich die Seite</translation>
    </message>
    <message>
        <source>page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>theme</source>
        <translation>Theme</translation>
    </message>
    <message>
        <source>Thumbnails at key widths</source>
        <translation>Vorschaubilder bei wichtigen Breiten</translation>
    </message>
    <message numerus="yes">
        <source>%n wrap point(s)</source>
        <translation>
            <numerusform>%n Umbruchpunkt</numerusform>
            <numerusform>%n Umbruchpunkte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more change(s) at this width</source>
        <translation>
            <numerusform>%1; %n weitere Änderung bei dieser Breite</numerusform>
            <numerusform>%1; %n weitere Änderungen bei dieser Breite</numerusform>
        </translation>
    </message>
    <message>
        <source>Lines below</source>
        <translation>Zeilen darunter</translation>
    </message>
    <message>
        <source>Lines above</source>
        <translation>Zeilen darüber</translation>
    </message>
    <message numerus="yes">
        <source>%n more change(s)</source>
        <comment>of line counts</comment>
        <translation>
            <numerusform>%n weitere Änderung</numerusform>
            <numerusform>%n weitere Änderungen</numerusform>
        </translation>
    </message>
    <message>
        <source>No wrap points</source>
        <translation>Keine Umbruchpunkte</translation>
    </message>
    <message>
        <source>No browser was found. Install Chromium (sudo apt install chromium) or Firefox (sudo apt install firefox-esr), then choose Search again.</source>
        <translation>Es wurde kein Browser gefunden. Installieren Sie Chromium (sudo apt install chromium) oder Firefox (sudo apt install firefox-esr) und wählen Sie „Erneut suchen“.</translation>
    </message>
    <message numerus="yes">
        <source>%1 did not respond for %n second(s) and was stopped. Try again when the computer is less busy.</source>
        <translation>
            <numerusform>%1 hat %n Sekunde lang nicht geantwortet und wurde beendet. Versuchen Sie es erneut, wenn der Computer weniger ausgelastet ist.</numerusform>
            <numerusform>%1 hat %n Sekunden lang nicht geantwortet und wurde beendet. Versuchen Sie es erneut, wenn der Computer weniger ausgelastet ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>No free network port was found on this computer to show the page to %1. Try again later.</source>
        <translation>Auf diesem Computer ist kein Netzwerk-Port frei, um %1 die Seite zu zeigen. Versuchen Sie es später erneut.</translation>
    </message>
    <message>
        <source>%1 could not be started: %2.</source>
        <translation>%1 konnte nicht gestartet werden: %2.</translation>
    </message>
    <message>
        <source>The temporary folder for %1 could not be created. Free some disk space and try again.</source>
        <translation>Der temporäre Ordner für %1 konnte nicht angelegt werden. Schaffen Sie Speicherplatz und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>%1 closed before it was finished.</source>
        <translation>%1 wurde vorzeitig beendet.</translation>
    </message>
    <message>
        <source>Its last message: %1</source>
        <translation>Letzte Meldung: %1</translation>
    </message>
    <message>
        <source>%1 could not measure the page: %2.</source>
        <translation>%1 konnte die Seite nicht messen: %2.</translation>
    </message>
    <message>
        <source>&amp;Check</source>
        <translation>&amp;Prüfen</translation>
    </message>
    <message>
        <source>Show &amp;details…</source>
        <translation>&amp;Einzelheiten…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Check of the imported row</source>
        <translation>Prüfung der importierten Reihe</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>&amp;Check in %1</source>
        <translation>In %1 &amp;prüfen</translation>
    </message>
    <message>
        <source>Check the imported row at every viewport width, on its page %1?</source>
        <translation>Die importierte Reihe auf ihrer Seite %1 bei jeder Viewport-Breite prüfen?</translation>
    </message>
    <message>
        <source>Compare with browser</source>
        <translation>Mit Browser vergleichen</translation>
    </message>
    <message>
        <source>A browser on this computer lays out the row at every width, in the background and without network access. Tenter compares the result with its own layout.</source>
        <translation>Ein Browser auf diesem Computer setzt die Reihe bei jeder Breite, im Hintergrund und ohne Netzzugang. Tenter vergleicht das Ergebnis mit seinem eigenen Layout.</translation>
    </message>
    <message>
        <source>Search again</source>
        <translation>Erneut suchen</translation>
    </message>
    <message>
        <source>Widths compared</source>
        <translation>Verglichene Breiten</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>The row has changed since this comparison. Compare again.</source>
        <translation>Die Reihe hat sich seit diesem Vergleich geändert. Vergleichen Sie erneut.</translation>
    </message>
    <message>
        <source>Differences from Tenter (select one to show it in the row)</source>
        <translation>Unterschiede zu Tenter (Auswahl zeigt die Stelle in der Reihe)</translation>
    </message>
    <message>
        <source>Differences from Tenter</source>
        <translation>Unterschiede zu Tenter</translation>
    </message>
    <message>
        <source>Browser</source>
        <translation>Browser</translation>
    </message>
    <message>
        <source>Page for the comparison</source>
        <translation>Seite für den Vergleich</translation>
    </message>
    <message>
        <source>Row only</source>
        <translation>Nur die Reihe</translation>
    </message>
    <message>
        <source>In saved page…</source>
        <translation>In gespeicherter Seite…</translation>
    </message>
    <message>
        <source>The row on an empty page, in the container set in this project</source>
        <translation>Die Reihe auf einer leeren Seite, im Container dieses Projekts</translation>
    </message>
    <message>
        <source>The row in a saved copy of its page, with the theme CSS</source>
        <translation>Die Reihe in einer gespeicherten Kopie ihrer Seite, mit dem CSS des Themes</translation>
    </message>
    <message>
        <source>Saved page</source>
        <translation>Gespeicherte Seite</translation>
    </message>
    <message>
        <source>Open saved page</source>
        <translation>Gespeicherte Seite öffnen</translation>
    </message>
    <message>
        <source>Pages (*.html *.htm *.xhtml);;All files (*)</source>
        <translation>Seiten (*.html *.htm *.xhtml);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Parts compared</source>
        <translation>Verglichene Teile</translation>
    </message>
    <message>
        <source>Each part counts once at each width.</source>
        <translation>Jeder Teil zählt bei jeder Breite einmal.</translation>
    </message>
    <message>
        <source>Parts that differ</source>
        <translation>Abweichende Teile</translation>
    </message>
    <message>
        <source>A part differs if its line count differs, if its box differs by more than 0.5&#xa0;px, or if its font size differs by more than 0.01&#xa0;px (0.02&#xa0;px in Firefox).</source>
        <translation>Ein Teil weicht ab, wenn seine Zeilenzahl abweicht, seine Box um mehr als 0,5&#xa0;px oder seine Schriftgröße um mehr als 0,01&#xa0;px (in Firefox 0,02&#xa0;px).</translation>
    </message>
    <message>
        <source>Tight fits with other line counts</source>
        <translation>Knappe Zeilen mit anderer Zeilenzahl</translation>
    </message>
    <message>
        <source>They are not counted as parts that differ.</source>
        <translation>Sie zählen nicht als abweichende Teile.</translation>
    </message>
    <message>
        <source>Largest box difference</source>
        <translation>Größter Unterschied einer Box</translation>
    </message>
    <message>
        <source>The largest difference of a position, width or height, and where it occurs.</source>
        <translation>Der größte Unterschied einer Position, Breite oder Höhe und wo er auftritt.</translation>
    </message>
    <message>
        <source>Largest font size difference</source>
        <translation>Größter Unterschied der Schriftgröße</translation>
    </message>
    <message>
        <source>The largest difference between the font sizes of a part.</source>
        <translation>Der größte Unterschied zwischen den Schriftgrößen eines Teils.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message numerus="yes">
        <source>%1 at %n width(s)</source>
        <comment>number of parts</comment>
        <translation>
            <numerusform>%1 bei %n Breite</numerusform>
            <numerusform>%1 bei %n Breiten</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 at viewport width %2</source>
        <translation>%1 bei Viewport-Breite %2</translation>
    </message>
    <message>
        <source>%1 sent a result that cannot be understood: the number of widths is wrong.</source>
        <translation>%1 hat ein unverständliches Ergebnis gesendet: Die Zahl der Breiten ist falsch.</translation>
    </message>
    <message>
        <source>%1 sent a result that cannot be understood: %2.</source>
        <translation>%1 hat ein unverständliches Ergebnis gesendet: %2.</translation>
    </message>
    <message>
        <source>%1 laid out the page %2 wide instead of %3.</source>
        <translation>%1 hat die Seite %2 statt %3 breit gesetzt.</translation>
    </message>
    <message>
        <source>The page for the comparison could not be written.</source>
        <translation>Die Seite für den Vergleich konnte nicht geschrieben werden.</translation>
    </message>
    <message numerus="yes">
        <source>%n card(s)</source>
        <translation>
            <numerusform>%n Karte</numerusform>
            <numerusform>%n Karten</numerusform>
        </translation>
    </message>
    <message>
        <source>left edge</source>
        <translation>linke Kante</translation>
    </message>
    <message>
        <source>top edge</source>
        <translation>obere Kante</translation>
    </message>
    <message>
        <source>width</source>
        <comment>of a box</comment>
        <translation>Breite</translation>
    </message>
    <message>
        <source>height</source>
        <comment>of a box</comment>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>row</source>
        <comment>place of a difference</comment>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>%1 in %2, %3 in Tenter</source>
        <comment>measured, browser, computed</comment>
        <translation>%1 in %2, %3 in Tenter</translation>
    </message>
    <message>
        <source>%1: %2 (slack %3)</source>
        <comment>place, line counts</comment>
        <translation>%1: %2 (Luft %3)</translation>
    </message>
    <message>
        <source>%1: font size %2</source>
        <comment>place, sizes</comment>
        <translation>%1: Schriftgröße %2</translation>
    </message>
    <message>
        <source>%1: missing in %2</source>
        <comment>place, browser</comment>
        <translation>%1: fehlt in %2</translation>
    </message>
    <message>
        <source>%1: only in %2, not in Tenter</source>
        <comment>place, browser</comment>
        <translation>%1: nur in %2, nicht in Tenter</translation>
    </message>
    <message>
        <source>%1 is starting…</source>
        <translation>%1 startet…</translation>
    </message>
    <message>
        <source>No width was compared with %1</source>
        <translation>Mit %1 wurde keine Breite verglichen</translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at all %n width(s)</source>
        <translation>
            <numerusform>%1 stimmt bei der einzigen Breite (%n) mit Tenter überein</numerusform>
            <numerusform>%1 stimmt bei allen %n Breiten mit Tenter überein</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at %n width(s)</source>
        <translation>
            <numerusform>%1 stimmt bei %n Breite mit Tenter überein</numerusform>
            <numerusform>%1 stimmt bei %n Breiten mit Tenter überein</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at %n width(s) so far</source>
        <translation>
            <numerusform>%1 stimmt bisher bei %n Breite mit Tenter überein</numerusform>
            <numerusform>%1 stimmt bisher bei %n Breiten mit Tenter überein</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 differs from Tenter at %2 of %n width(s)</source>
        <translation>
            <numerusform>%1 weicht bei %2 von %n Breite von Tenter ab</numerusform>
            <numerusform>%1 weicht bei %2 von %n Breiten von Tenter ab</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 differs from Tenter at %2 of %n width(s) so far</source>
        <translation>
            <numerusform>%1 weicht bisher bei %2 von %n Breite von Tenter ab</numerusform>
            <numerusform>%1 weicht bisher bei %2 von %n Breiten von Tenter ab</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of the parts agree</source>
        <translation>%1 der Teile stimmen überein</translation>
    </message>
    <message>
        <source>%1: %2 agrees with Tenter</source>
        <comment>width, browser</comment>
        <translation>%1: %2 stimmt mit Tenter überein</translation>
    </message>
    <message>
        <source>%1: %2 differs from Tenter</source>
        <comment>width, browser</comment>
        <translation>%1: %2 weicht von Tenter ab</translation>
    </message>
    <message>
        <source>and further differences</source>
        <translation>und weitere Unterschiede</translation>
    </message>
    <message>
        <source>Largest box difference: %1</source>
        <translation>Größter Unterschied einer Box: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n tight fit(s) with another line count (not counted as a difference)</source>
        <translation>
            <numerusform>%n knappe Zeile mit anderer Zeilenzahl (zählt nicht als Unterschied)</numerusform>
            <numerusform>%n knappe Zeilen mit anderer Zeilenzahl (zählen nicht als Unterschied)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) not compared: %1 uses its own dictionary or font</source>
        <translation>
            <numerusform>%n Teil nicht verglichen: %1 verwendet ein eigenes Wörterbuch oder eine eigene Schrift</numerusform>
            <numerusform>%n Teile nicht verglichen: %1 verwendet ein eigenes Wörterbuch oder eine eigene Schrift</numerusform>
        </translation>
    </message>
    <message>
        <source>The row has changed since this comparison.</source>
        <translation>Die Reihe hat sich seit diesem Vergleich geändert.</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>enter a whole number from %1 to %2</source>
        <translation>geben Sie eine ganze Zahl von %1 bis %2 ein</translation>
    </message>
    <message>
        <source>enter a number from %1 to %2</source>
        <translation>geben Sie eine Zahl von %1 bis %2 ein</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>number in units</comment>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>%1, or %2</source>
        <comment>number or keyword</comment>
        <translation>%1, oder %2</translation>
    </message>
    <message>
        <source>One of: %1.</source>
        <translation>Eine Auswahl: %1.</translation>
    </message>
    <message>
        <source>On or off.</source>
        <translation>Ein oder aus.</translation>
    </message>
    <message>
        <source>Enter #rgb, #rrggbb, #rrggbbaa (aa is the opacity) or transparent</source>
        <translation>Geben Sie #rgb, #rrggbb, #rrggbbaa (aa ist die Deckkraft) oder transparent ein</translation>
    </message>
    <message>
        <source>%1, choose</source>
        <comment>button beside the field of a colour</comment>
        <translation>%1, wählen</translation>
    </message>
    <message>
        <source>Choose colour</source>
        <translation>Farbe wählen</translation>
    </message>
    <message>
        <source>enter #rgb, #rrggbb, #rrggbbaa or transparent; the value stays %1</source>
        <translation>geben Sie #rgb, #rrggbb, #rrggbbaa oder transparent ein; der Wert bleibt %1</translation>
    </message>
    <message>
        <source>Link</source>
        <translation>Link</translation>
    </message>
    <message>
        <source>Link address (leave empty to remove the link):</source>
        <translation>Adresse des Links (leer entfernt den Link):</translation>
    </message>
    <message>
        <source>on</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>%1&#xa0;px at a width of %2&#xa0;px, %3&#xa0;px at a width of %4&#xa0;px</source>
        <translation>%1&#xa0;px bei einer Breite von %2&#xa0;px, %3&#xa0;px bei einer Breite von %4&#xa0;px</translation>
    </message>
    <message>
        <source>Separate families by commas. The first one that is available is used.</source>
        <translation>Trennen Sie Schriftfamilien durch Kommas. Die erste vorhandene wird verwendet.</translation>
    </message>
    <message>
        <source>Separate families by commas.</source>
        <translation>Trennen Sie Schriftfamilien durch Kommas.</translation>
    </message>
    <message>
        <source>%1, %2 set</source>
        <translation>%1, %2 gesetzt</translation>
    </message>
    <message>
        <source>Band: a range of viewport widths between two breakpoints, with its own columns, spacing and sizes</source>
        <translation>Bereich: Viewport-Breiten zwischen zwei Breakpoints, mit eigenen Spalten, Abständen und Größen</translation>
    </message>
    <message>
        <source>Ramp: a font size that changes in a straight line between two widths and is constant outside them</source>
        <translation>Rampe: eine Schriftgröße, die sich zwischen zwei Breiten geradlinig ändert und außerhalb gleich bleibt</translation>
    </message>
    <message>
        <source>Wish: a condition that Solve sizes must satisfy, such as “heading in at most 2 lines”</source>
        <translation>Vorgabe: eine Bedingung, die „Größen berechnen“ erfüllen muss, etwa „Überschrift in höchstens 2 Zeilen“</translation>
    </message>
    <message>
        <source>Variant: the same cards with another column count, its own class and its own sizes</source>
        <translation>Variante: dieselben Karten mit anderer Spaltenzahl, eigener Klasse und eigenen Größen</translation>
    </message>
    <message>
        <source>Slack: the smallest change of the text width, as a share of that width, that moves a line break; below 0.25&#xa0;% another browser may break the line differently</source>
        <translation>Luft: die kleinste Änderung der Textbreite, die einen Zeilenumbruch verschiebt, als Anteil dieser Breite; unter 0,25&#xa0;% kann ein anderer Browser die Zeile anders umbrechen</translation>
    </message>
    <message>
        <source>Tight fit: a line with less than 0.25&#xa0;% slack; another browser may break it differently</source>
        <translation>Knappe Zeile: eine Zeile mit weniger als 0,25&#xa0;% Luft; ein anderer Browser kann sie anders umbrechen</translation>
    </message>
    <message>
        <source>Wrap point: a viewport width at which the line count of a text changes</source>
        <translation>Umbruchpunkt: eine Viewport-Breite, bei der sich die Zeilenzahl eines Textes ändert</translation>
    </message>
    <message>
        <source>Leeway: the range in which a value can change while all wishes stay satisfied</source>
        <translation>Spielraum: wie weit sich ein Wert ändern kann, solange alle Vorgaben erfüllt bleiben</translation>
    </message>
    <message>
        <source>Measure: the number of characters on a line</source>
        <translation>Zeilenlänge: die Zahl der Zeichen in einer Zeile</translation>
    </message>
    <message>
        <source>Slot: the box that a picture fills in the layout</source>
        <translation>Bildfeld: die Box, die ein Bild im Layout füllt</translation>
    </message>
    <message>
        <source>%1; the value stays %2</source>
        <translation>%1; der Wert bleibt %2</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>&amp;Reset to inherited value</source>
        <translation>&amp;Auf geerbten Wert zurücksetzen</translation>
    </message>
    <message>
        <source>%1; the value stays “%2”</source>
        <translation>%1; der Wert bleibt „%2“</translation>
    </message>
    <message>
        <source>This file does not exist any more.</source>
        <translation>Diese Datei gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>Choose the picture or the font again, or remove it from the project.</source>
        <translation>Wählen Sie das Bild oder die Schrift erneut, oder entfernen Sie sie aus dem Projekt.</translation>
    </message>
    <message>
        <source>the file could not be copied here: %1</source>
        <translation>die Datei konnte nicht hierher kopiert werden: %1</translation>
    </message>
    <message>
        <source>save into a folder that you may write to, on a disk with enough space</source>
        <translation>speichern Sie in einem beschreibbaren Ordner mit genug freiem Platz</translation>
    </message>
    <message>
        <source>Restore unsaved changes</source>
        <translation>Ungespeicherte Änderungen wiederherstellen</translation>
    </message>
    <message>
        <source>Load changed file</source>
        <translation>Geänderte Datei laden</translation>
    </message>
    <message>
        <source>The project is too large to be opened again.</source>
        <translation>Das Projekt ist zu groß, um es wieder zu öffnen.</translation>
    </message>
    <message>
        <source>Shorten its texts or the theme CSS of the imported row. The largest file is %1 MB.</source>
        <translation>Kürzen Sie seine Texte oder das CSS des Themes der importierten Reihe. Die größte Datei hat %1&#xa0;MB.</translation>
    </message>
    <message>
        <source>Copy files into project folder</source>
        <translation>Dateien in den Projektordner kopieren</translation>
    </message>
    <message>
        <source>the saved page cannot be read</source>
        <translation>die gespeicherte Seite ist nicht lesbar</translation>
    </message>
    <message>
        <source>check that the file still exists and that you may read it</source>
        <translation>prüfen Sie, ob die Datei noch da ist und Sie sie lesen dürfen</translation>
    </message>
    <message>
        <source>New paragraph</source>
        <comment>text of a new part</comment>
        <translation>Neuer Absatz</translation>
    </message>
    <message>
        <source>New %1</source>
        <comment>text of a new part; its role</comment>
        <translation>%1 (neu)</translation>
    </message>
    <message>
        <source>%1: this file cannot be read as a font. Choose a TTF, OTF, WOFF or WOFF2 file.</source>
        <translation>%1: Diese Datei ist als Schrift nicht lesbar. Wählen Sie eine TTF-, OTF-, WOFF- oder WOFF2-Datei.</translation>
    </message>
    <message>
        <source>Add font %1</source>
        <translation>Schrift hinzufügen: %1</translation>
    </message>
    <message>
        <source>%1 cannot be read as a picture. Use a PNG, JPEG or WebP file.</source>
        <translation>%1 ist als Bild nicht lesbar. Verwenden Sie eine PNG-, JPEG- oder WebP-Datei.</translation>
    </message>
    <message>
        <source>Drop the picture on a card.</source>
        <translation>Legen Sie das Bild auf einer Karte ab.</translation>
    </message>
    <message>
        <source>Card %1 of the imported row has no picture. Add one in the page, then import the row again.</source>
        <translation>Karte %1 der importierten Reihe hat kein Bild. Fügen Sie auf der Seite eines ein und importieren Sie die Reihe erneut.</translation>
    </message>
    <message>
        <source>Place picture</source>
        <translation>Bild einsetzen</translation>
    </message>
    <message>
        <source>Place pictures</source>
        <translation>Bilder einsetzen</translation>
    </message>
    <message>
        <source>Align parts</source>
        <translation>Teile ausrichten</translation>
    </message>
    <message>
        <source>Last line of cards</source>
        <translation>Letzte Kartenzeile</translation>
    </message>
    <message>
        <source>Maximum width</source>
        <translation>Höchstbreite</translation>
    </message>
    <message>
        <source>Picture width</source>
        <translation>Bildbreite</translation>
    </message>
    <message>
        <source>Full-bleed picture</source>
        <translation>Bild randlos</translation>
    </message>
    <message>
        <source>Whole card is a link</source>
        <translation>Ganze Karte ist Link</translation>
    </message>
    <message>
        <source>Aspect ratio</source>
        <translation>Seitenverhältnis</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>Eckenradius</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
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
        <source>Background</source>
        <translation>Hintergrund</translation>
    </message>
    <message>
        <source>Padding top</source>
        <translation>Innenabstand oben</translation>
    </message>
    <message>
        <source>Padding right</source>
        <translation>Innenabstand rechts</translation>
    </message>
    <message>
        <source>Padding bottom</source>
        <translation>Innenabstand unten</translation>
    </message>
    <message>
        <source>Padding left</source>
        <translation>Innenabstand links</translation>
    </message>
    <message>
        <source>Margin top</source>
        <translation>Außenabstand oben</translation>
    </message>
    <message>
        <source>Margin right</source>
        <translation>Außenabstand rechts</translation>
    </message>
    <message>
        <source>Margin bottom</source>
        <translation>Außenabstand unten</translation>
    </message>
    <message>
        <source>Margin left</source>
        <translation>Außenabstand links</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Schriftfamilie</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Schriftstärke</translation>
    </message>
    <message>
        <source>Slant</source>
        <translation>Schriftlage</translation>
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
        <source>Word spacing</source>
        <translation>Wortabstand</translation>
    </message>
    <message>
        <source>Hyphens</source>
        <translation>Silbentrennung</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Grows with</source>
        <translation>Wächst mit</translation>
    </message>
    <message>
        <source>Letter case</source>
        <translation>Schreibweise</translation>
    </message>
    <message>
        <source>Text align</source>
        <translation>Textausrichtung</translation>
    </message>
    <message>
        <source>Text wrap</source>
        <translation>Zeilenumbruch</translation>
    </message>
    <message>
        <source>Long words</source>
        <translation>Lange Wörter</translation>
    </message>
    <message>
        <source>Minimum lines</source>
        <translation>Mindestzeilen</translation>
    </message>
    <message>
        <source>Alignment</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>Smallest viewport width</source>
        <translation>Kleinste Viewport-Breite</translation>
    </message>
    <message>
        <source>Largest viewport width</source>
        <translation>Größte Viewport-Breite</translation>
    </message>
    <message>
        <source>Breakpoint</source>
        <translation>Breakpoint</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>turn on “Full-bleed picture”</source>
        <translation>schalten Sie „Bild randlos“ ein</translation>
    </message>
    <message>
        <source>“Align parts”</source>
        <translation>„Teile ausrichten“</translation>
    </message>
    <message>
        <source>“On”</source>
        <translation>„Ein“</translation>
    </message>
    <message>
        <source>“Off”</source>
        <translation>„Aus“</translation>
    </message>
    <message>
        <source>“At start”</source>
        <translation>„Am Anfang“</translation>
    </message>
    <message>
        <source>“Viewport width”</source>
        <translation>„Viewport-Breite“</translation>
    </message>
    <message>
        <source>“Smallest viewport width” must be smaller than “Largest viewport width”.</source>
        <translation>„Kleinste Viewport-Breite“ muss kleiner sein als „Größte Viewport-Breite“.</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>%1 of the variant “%2”</source>
        <comment>setting in quotes</comment>
        <translation>%1 der Variante „%2“</translation>
    </message>
    <message>
        <source>%1 in the band %2 of the variant “%3”</source>
        <comment>setting in quotes</comment>
        <translation>%1 im Bereich %2 der Variante „%3“</translation>
    </message>
    <message numerus="yes">
        <source>A card can have at most %n part(s).</source>
        <translation>
            <numerusform>Eine Karte kann höchstens %n Teil haben.</numerusform>
            <numerusform>Eine Karte kann höchstens %n Teile haben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A variant can have at most %n band(s).</source>
        <translation>
            <numerusform>Eine Variante kann höchstens %n Bereich haben.</numerusform>
            <numerusform>Eine Variante kann höchstens %n Bereiche haben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A project can have at most %n card(s).</source>
        <translation>
            <numerusform>Ein Projekt kann höchstens %n Karte haben.</numerusform>
            <numerusform>Ein Projekt kann höchstens %n Karten haben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A project can have at most %n variant(s).</source>
        <translation>
            <numerusform>Ein Projekt kann höchstens %n Variante haben.</numerusform>
            <numerusform>Ein Projekt kann höchstens %n Varianten haben.</numerusform>
        </translation>
    </message>
    <message>
        <source>A project can have at most %1 %2.</source>
        <translation>Ein Projekt kann von „%2“ höchstens %1 haben.</translation>
    </message>
    <message>
        <source>The size of the picture in card %1 is not known, so it cannot be shown at its own ratio. Choose the picture file again, or set another aspect ratio.</source>
        <translation>Die Größe des Bildes in Karte %1 ist nicht bekannt, daher kann es nicht in seinem eigenen Seitenverhältnis gezeigt werden. Wählen Sie die Bilddatei erneut oder ein anderes Seitenverhältnis.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>role and setting: Heading font size</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 columns</source>
        <comment>list of column counts</comment>
        <translation>%1 Spalten</translation>
    </message>
    <message numerus="yes">
        <source>%n card(s); variants: %1</source>
        <translation>
            <numerusform>%n Karte; Varianten: %1</numerusform>
            <numerusform>%n Karten; Varianten: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Heading</source>
        <translation>Überschrift</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Fließtext</translation>
    </message>
    <message>
        <source>Button</source>
        <translation>Button</translation>
    </message>
    <message>
        <source>Kicker</source>
        <translation>Dachzeile</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>%1&#xa0;%</source>
        <comment>percentage</comment>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>part %1</source>
        <translation>Teil %1</translation>
    </message>
    <message>
        <source>%1, card %2</source>
        <comment>part</comment>
        <translation>%1, Karte %2</translation>
    </message>
    <message numerus="yes">
        <source>%n column(s)</source>
        <translation>
            <numerusform>%n Spalte</numerusform>
            <numerusform>%n Spalten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>all widths</source>
        <translation>alle Breiten</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>widths, columns</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>all variants</source>
        <translation>alle Varianten</translation>
    </message>
    <message>
        <source>the variant “%1”</source>
        <translation>die Variante „%1“</translation>
    </message>
    <message>
        <source>the band %1</source>
        <translation>den Bereich %1</translation>
    </message>
    <message>
        <source>Longer text</source>
        <translation>Längerer Text</translation>
    </message>
    <message>
        <source>Longest heading in every card</source>
        <translation>Längste Überschrift in jeder Karte</translation>
    </message>
    <message>
        <source>Shortest heading in every card</source>
        <translation>Kürzeste Überschrift in jeder Karte</translation>
    </message>
    <message>
        <source>No pictures</source>
        <translation>Ohne Bilder</translation>
    </message>
    <message>
        <source>One more card</source>
        <translation>Eine Karte mehr</translation>
    </message>
    <message>
        <source>One card fewer</source>
        <translation>Eine Karte weniger</translation>
    </message>
    <message>
        <source>A role name has lower-case letters, digits and hyphens, and starts with a letter. It cannot be card, picture or row, or start with x-.</source>
        <translation>Der Name einer Rolle besteht aus Kleinbuchstaben, Ziffern und Bindestrichen und beginnt mit einem Buchstaben. Er darf nicht card, picture oder row sein und nicht mit x- beginnen.</translation>
    </message>
    <message>
        <source>class %1, %2</source>
        <comment>class of a variant, its columns</comment>
        <translation>Klasse %1, %2</translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation>&amp;Wählen…</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Choose folder</source>
        <translation>Ordner wählen</translation>
    </message>
    <message>
        <source>Choose file</source>
        <translation>Datei wählen</translation>
    </message>
    <message>
        <source>Choose a folder to write to.</source>
        <translation>Wählen Sie einen Zielordner.</translation>
    </message>
    <message>
        <source>Choose a file to write to.</source>
        <translation>Wählen Sie eine Zieldatei.</translation>
    </message>
    <message>
        <source>The path must be complete. Choose the folder with the button.</source>
        <translation>Der Pfad muss vollständig sein. Wählen Sie den Ordner mit der Schaltfläche.</translation>
    </message>
    <message>
        <source>There is a file of this name. Choose a folder.</source>
        <translation>Es gibt eine Datei mit diesem Namen. Wählen Sie einen Ordner.</translation>
    </message>
    <message>
        <source>There is a folder of this name. Choose a file.</source>
        <translation>Es gibt einen Ordner mit diesem Namen. Wählen Sie eine Datei.</translation>
    </message>
    <message>
        <source>There is no such folder. Choose another folder.</source>
        <translation>Diesen Ordner gibt es nicht. Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>This folder is read-only. Choose another folder.</source>
        <translation>Dieser Ordner ist schreibgeschützt. Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>&amp;Open folder</source>
        <translation>&amp;Ordner öffnen</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>&amp;Ordner</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>File being written</source>
        <translation>Datei, die gerade geschrieben wird</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation>Wird angehalten…</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Wird geschrieben…</translation>
    </message>
    <message>
        <source>Stopped. Complete so far: %1</source>
        <translation>Angehalten. Bisher vollständig: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message>
        <source>Will be written: %1</source>
        <translation>Wird geschrieben: %1</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>Files</source>
        <translation>Dateien</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>stylesheet of the row</source>
        <translation>Stylesheet der Reihe</translation>
    </message>
    <message>
        <source>page around the row</source>
        <translation>Seite um die Reihe</translation>
    </message>
    <message>
        <source>rules of the fonts</source>
        <translation>Regeln der Schriften</translation>
    </message>
    <message>
        <source>font</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Without the font %1: it %2.</source>
        <translation>Ohne die Schrift %1: %2.</translation>
    </message>
    <message>
        <source>Fonts are included if their files allow it. Check their licences before you publish them.</source>
        <translation>Schriften werden mitgegeben, wenn ihre Dateien es erlauben. Prüfen Sie ihre Lizenzen vor der Veröffentlichung.</translation>
    </message>
    <message>
        <source>Export page folder</source>
        <translation>Seitenordner exportieren</translation>
    </message>
    <message>
        <source>Write folder</source>
        <translation>Ordner schreiben</translation>
    </message>
    <message>
        <source>Writes the row as a page with its stylesheet, pictures and fonts. The page opens from disk and requests nothing else.</source>
        <translation>Schreibt die Reihe als Seite mit Stylesheet, Bildern und Schriften. Die Seite lässt sich ohne Server öffnen und lädt nichts aus dem Netz.</translation>
    </message>
    <message>
        <source>Content</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Include &amp;fonts that allow it</source>
        <translation>Schriften, die es erlauben, &amp;mitgeben</translation>
    </message>
    <message>
        <source>&amp;Variant</source>
        <translation>&amp;Variante</translation>
    </message>
    <message>
        <source>Cut to their slots</source>
        <translation>Auf ihre Bildfelder zugeschnitten</translation>
    </message>
    <message>
        <source>Copied as they are</source>
        <translation>Unverändert kopiert</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>Cut: up to four files of each picture, for screens with 1, 2 and 3 device pixels per CSS px. None is enlarged.</source>
        <translation>Zugeschnitten: bis zu vier Dateien je Bild, für Bildschirme mit 1, 2 und 3 Gerätepixeln je CSS-px. Keine wird vergrößert.</translation>
    </message>
    <message>
        <source>&amp;Pictures</source>
        <translation>&amp;Bilder</translation>
    </message>
    <message>
        <source>Fonts</source>
        <translation>Schriften</translation>
    </message>
    <message>
        <source>replaced</source>
        <comment>file</comment>
        <translation>ersetzt</translation>
    </message>
    <message>
        <source>new</source>
        <comment>file</comment>
        <translation>neu</translation>
    </message>
    <message>
        <source>written</source>
        <comment>file</comment>
        <translation>geschrieben</translation>
    </message>
    <message>
        <source>The picture file “%1” cannot be read; an empty place with its name is shown instead.</source>
        <translation>Die Bilddatei „%1“ ist nicht lesbar; an ihrer Stelle steht eine leere Fläche mit ihrem Namen.</translation>
    </message>
    <message>
        <source>%1 × %2 px</source>
        <translation>%1 × %2&#xa0;px</translation>
    </message>
    <message>
        <source>Export picture of this view</source>
        <translation>Bild dieser Ansicht exportieren</translation>
    </message>
    <message>
        <source>Write picture</source>
        <translation>Bild schreiben</translation>
    </message>
    <message>
        <source>Writes the row at the current viewport width as a picture, as a browser would draw it.</source>
        <translation>Schreibt die Reihe bei der aktuellen Viewport-Breite als Bild, wie ein Browser sie zeichnet.</translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg)</source>
        <translation>Bilder (*.png *.svg)</translation>
    </message>
    <message>
        <source>PNG, 1×</source>
        <translation>PNG, 1×</translation>
    </message>
    <message>
        <source>PNG, 2×</source>
        <translation>PNG, 2×</translation>
    </message>
    <message>
        <source>SVG</source>
        <translation>SVG</translation>
    </message>
    <message>
        <source>One pixel per CSS px</source>
        <translation>Ein Pixel je CSS-px</translation>
    </message>
    <message>
        <source>Two pixels per CSS px, for sharp screens and print</source>
        <translation>Zwei Pixel je CSS-px, für scharfe Bildschirme und Druck</translation>
    </message>
    <message>
        <source>Vector, with text as outlines</source>
        <translation>Vektorgrafik, Text als Konturen</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>%1 × %2&#xa0;px</source>
        <translation>%1 × %2&#xa0;px</translation>
    </message>
    <message>
        <source>%1 has too few pixels for screens with 2 device pixels per CSS px. Use a file of at least %2.</source>
        <translation>%1 hat zu wenige Pixel für Bildschirme mit 2 Gerätepixeln je CSS-px. Verwenden Sie eine Datei mit mindestens %2.</translation>
    </message>
    <message>
        <source>Every viewport width counts the same. Import an audience for widths that suit your visitors.</source>
        <translation>Jede Viewport-Breite zählt gleich viel. Importieren Sie ein Publikum, um Breiten zu erhalten, die zu Ihren Besuchern passen.</translation>
    </message>
    <message>
        <source>Write pictures</source>
        <translation>Bilder schreiben</translation>
    </message>
    <message>
        <source>Cuts each picture to the sizes that the row needs at all viewport widths, and gives the markup that lets browsers load the right one. Your own pictures do not change.</source>
        <translation>Schneidet jedes Bild auf die Größen zu, die die Reihe bei allen Viewport-Breiten braucht, und gibt das Markup dazu, mit dem Browser das richtige laden. Ihre eigenen Bilder bleiben unverändert.</translation>
    </message>
    <message>
        <source>Pixels</source>
        <translation>Pixel</translation>
    </message>
    <message>
        <source>Copy &amp;markup</source>
        <translation>&amp;Markup kopieren</translation>
    </message>
    <message>
        <source>This variant</source>
        <translation>Diese Variante</translation>
    </message>
    <message>
        <source>All variants</source>
        <translation>Alle Varianten</translation>
    </message>
    <message>
        <source>Files for the variant that the window shows</source>
        <translation>Dateien für die gezeigte Variante</translation>
    </message>
    <message>
        <source>Files that serve all variants</source>
        <translation>Dateien, die für alle Varianten reichen</translation>
    </message>
    <message>
        <source>Variants</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>Files for each picture and format</source>
        <translation>Dateien je Bild und Format</translation>
    </message>
    <message>
        <source>With more files, browsers load fewer pixels than they do not show. Four are enough for most rows.</source>
        <translation>Mit mehr Dateien laden Browser weniger Pixel, die sie nicht zeigen. Vier genügen für die meisten Reihen.</translation>
    </message>
    <message>
        <source>Usual for each format</source>
        <translation>Üblich für jedes Format</translation>
    </message>
    <message>
        <source>Quality</source>
        <translation>Qualität</translation>
    </message>
    <message>
        <source>Of 100; not used for PNG. Usual: 80 for JPEG, 78 for WebP, 58 for AVIF. A lower quality gives smaller files.</source>
        <translation>Von 100; nicht für PNG. Üblich: 80 für JPEG, 78 für WebP, 58 für AVIF. Eine niedrigere Qualität ergibt kleinere Dateien.</translation>
    </message>
    <message>
        <source>Path from the project</source>
        <translation>Pfad ab dem Projekt</translation>
    </message>
    <message>
        <source>Address on the site</source>
        <translation>Adresse auf der Website</translation>
    </message>
    <message>
        <source>Address of the folder in the copied markup, such as /media/.</source>
        <translation>Adresse des Ordners im kopierten Markup, etwa /media/.</translation>
    </message>
    <message>
        <source>&amp;Variants</source>
        <translation>&amp;Varianten</translation>
    </message>
    <message>
        <source>Formats</source>
        <translation>Formate</translation>
    </message>
    <message>
        <source>Files for &amp;each</source>
        <translation>&amp;Dateien je Bild</translation>
    </message>
    <message>
        <source>&amp;Quality</source>
        <translation>&amp;Qualität</translation>
    </message>
    <message>
        <source>&amp;Address on the site</source>
        <translation>&amp;Adresse auf der Website</translation>
    </message>
    <message>
        <source>Choose at least one format.</source>
        <translation>Wählen Sie mindestens ein Format.</translation>
    </message>
    <message>
        <source>will be replaced</source>
        <comment>file</comment>
        <translation>wird ersetzt</translation>
    </message>
    <message>
        <source>up to date</source>
        <comment>file</comment>
        <translation>aktuell</translation>
    </message>
    <message>
        <source>The row has no pictures. Add some in the Pictures panel.</source>
        <translation>Die Reihe hat keine Bilder. Fügen Sie im Bedienfeld „Bilder“ welche hinzu.</translation>
    </message>
    <message>
        <source>No picture of the row can be cut.</source>
        <translation>Kein Bild der Reihe lässt sich zuschneiden.</translation>
    </message>
    <message>
        <source>was up to date</source>
        <comment>file</comment>
        <translation>war aktuell</translation>
    </message>
    <message>
        <source>Font sizes in rem</source>
        <translation>Schriftgrößen in rem</translation>
    </message>
    <message>
        <source>Font sizes in px</source>
        <translation>Schriftgrößen in px</translation>
    </message>
    <message>
        <source>As set</source>
        <translation>Wie eingestellt</translation>
    </message>
    <message>
        <source>Card width</source>
        <translation>Kartenbreite</translation>
    </message>
    <message>
        <source>Font sizes follow the width that the project sets</source>
        <translation>Schriftgrößen folgen der Breite, die das Projekt festlegt</translation>
    </message>
    <message>
        <source>Font sizes follow the viewport width, in vw</source>
        <translation>Schriftgrößen folgen der Viewport-Breite, in vw</translation>
    </message>
    <message>
        <source>Font sizes follow the card width, in cqi</source>
        <translation>Schriftgrößen folgen der Kartenbreite, in cqi</translation>
    </message>
    <message>
        <source>Custom &amp;properties on the row</source>
        <translation>&amp;Custom Properties an der Reihe</translation>
    </message>
    <message>
        <source>Values are custom properties on the row; media queries set only these.</source>
        <translation>Die Werte sind Custom Properties an der Reihe; Media Queries ändern nur diese.</translation>
    </message>
    <message>
        <source>Cascade &amp;layer</source>
        <translation>&amp;Cascade Layer</translation>
    </message>
    <message>
        <source>All rules are in a layer with the name of the row. Rules of a theme that are in no layer override them.</source>
        <translation>Alle Regeln stehen in einem Layer mit dem Namen der Reihe. Regeln eines Themes ohne Layer gehen ihnen vor.</translation>
    </message>
    <message>
        <source>Co&amp;mments</source>
        <translation>&amp;Kommentare</translation>
    </message>
    <message>
        <source>Comments say what each band and each font size is for.</source>
        <translation>Kommentare sagen, wofür jeder Bereich und jede Schriftgröße da ist.</translation>
    </message>
    <message>
        <source>Mi&amp;nified</source>
        <translation>Mi&amp;nifiziert</translation>
    </message>
    <message>
        <source>No comments, line breaks or spaces that change nothing.</source>
        <translation>Ohne Kommentare, Zeilenumbrüche und Leerzeichen, die nichts ändern.</translation>
    </message>
    <message>
        <source>Fallback fonts for &amp;late web fonts</source>
        <translation>&amp;Ersatzschriften für späte Webfonts</translation>
    </message>
    <message>
        <source>Installed fonts with the widths and heights of the web fonts, for the time until these have loaded.</source>
        <translation>Installierte Schriften mit den Breiten und Höhen der Webfonts, bis diese geladen sind.</translation>
    </message>
    <message>
        <source>Size unit</source>
        <translation>Einheit der Größen</translation>
    </message>
    <message>
        <source>Sizes grow with</source>
        <translation>Größen wachsen mit</translation>
    </message>
    <message>
        <source>Checking the row</source>
        <translation>Die Reihe wird geprüft</translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation>%1 wird gesetzt</translation>
    </message>
    <message>
        <source>There is not enough memory for the spec sheet. Choose one variant.</source>
        <translation>Der Speicher reicht für das Datenblatt nicht aus. Wählen Sie eine einzelne Variante.</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>%1 wird geschrieben</translation>
    </message>
    <message>
        <source>Export spec sheet</source>
        <translation>Datenblatt exportieren</translation>
    </message>
    <message>
        <source>Write spec sheet</source>
        <translation>Datenblatt schreiben</translation>
    </message>
    <message>
        <source>Writes the row at its key widths, its sizes, spacing and picture slots, and the findings, for the client and for whoever maintains the row.</source>
        <translation>Schreibt die Reihe bei wichtigen Breiten, ihre Größen, Abstände und Bildfelder sowie die Befunde, für den Kunden und für alle, die die Reihe pflegen.</translation>
    </message>
    <message>
        <source>Spec sheets (*.html *.pdf)</source>
        <translation>Datenblätter (*.html *.pdf)</translation>
    </message>
    <message>
        <source>HTML</source>
        <translation>HTML</translation>
    </message>
    <message>
        <source>PDF, A4</source>
        <translation>PDF, A4</translation>
    </message>
    <message>
        <source>PDF, Letter</source>
        <translation>PDF, Letter</translation>
    </message>
    <message>
        <source>One file that needs no other file</source>
        <translation>Eine Datei, die keine andere braucht</translation>
    </message>
    <message>
        <source>Tagged PDF, 210 × 297 mm</source>
        <translation>PDF mit Tags, 210 × 297&#xa0;mm</translation>
    </message>
    <message>
        <source>Tagged PDF, 8.5 × 11 in</source>
        <translation>PDF mit Tags, 8,5 × 11 Zoll</translation>
    </message>
    <message>
        <source>minified %1</source>
        <translation>minifiziert %1</translation>
    </message>
    <message>
        <source>Export stylesheet</source>
        <translation>Stylesheet exportieren</translation>
    </message>
    <message>
        <source>Write stylesheet</source>
        <translation>Stylesheet schreiben</translation>
    </message>
    <message>
        <source>Writes the CSS of the row to a file, or copies it to paste into a site. Every form lays out the same row.</source>
        <translation>Schreibt das CSS der Reihe in eine Datei oder kopiert es zum Einfügen in eine Website. Jede Form setzt dieselbe Reihe.</translation>
    </message>
    <message>
        <source>CSS (*.css)</source>
        <translation>CSS (*.css)</translation>
    </message>
    <message>
        <source>&amp;Copy stylesheet</source>
        <translation>Stylesheet &amp;kopieren</translation>
    </message>
    <message>
        <source>Copied: %1</source>
        <translation>Kopiert: %1</translation>
    </message>
    <message>
        <source>Export design tokens</source>
        <translation>Design-Tokens exportieren</translation>
    </message>
    <message>
        <source>Write design tokens</source>
        <translation>Design-Tokens schreiben</translation>
    </message>
    <message>
        <source>Writes sizes, typography, spacing and colours as JSON, in the Design Tokens Format 2025.10, for design programs and style guides.</source>
        <translation>Schreibt Größen, Typografie, Abstände und Farben als JSON im Design Tokens Format 2025.10, für Designprogramme und Styleguides.</translation>
    </message>
    <message>
        <source>Design tokens (*.tokens.json)</source>
        <translation>Design-Tokens (*.tokens.json)</translation>
    </message>
    <message>
        <source>Dimensions in px</source>
        <translation>Maße in px</translation>
    </message>
    <message>
        <source>Dimensions in rem: multiples of 16 px</source>
        <translation>Maße in rem: Vielfache von 16&#xa0;px</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message numerus="yes">
        <source>%n token(s)</source>
        <translation>
            <numerusform>%n Token</numerusform>
            <numerusform>%n Tokens</numerusform>
        </translation>
    </message>
    <message>
        <source>Variant</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>Checks cover part of WCAG 2.2 only. &lt;a href=&quot;more&quot;&gt;Read more&lt;/a&gt;</source>
        <translation>Geprüft wird nur ein Teil der WCAG 2.2. &lt;a href=&quot;more&quot;&gt;Mehr&lt;/a&gt;</translation>
    </message>
    <message>
        <source>Basis: %1</source>
        <translation>Grundlage: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n error(s)</source>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n Warnung</numerusform>
            <numerusform>%n Warnungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n note(s)</source>
        <translation>
            <numerusform>%n Hinweis</numerusform>
            <numerusform>%n Hinweise</numerusform>
        </translation>
    </message>
    <message>
        <source>No errors at any width %1.</source>
        <translation>Keine Fehler bei irgendeiner Breite %1.</translation>
    </message>
    <message>
        <source>No warnings at any width %1.</source>
        <translation>Keine Warnungen bei irgendeiner Breite %1.</translation>
    </message>
    <message>
        <source>No notes at any width %1.</source>
        <translation>Keine Hinweise bei irgendeiner Breite %1.</translation>
    </message>
    <message>
        <source>Show or hide the findings (Alt+7)</source>
        <translation>Befunde zeigen oder ausblenden (Alt+7)</translation>
    </message>
    <message>
        <source>Filter findings by severity</source>
        <translation>Befunde nach Schwere filtern</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>Wird geprüft…</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Findings: %1</source>
        <translation>Befunde: %1</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>All findings</source>
        <translation>Alle Befunde</translation>
    </message>
    <message>
        <source>Checking every width %1…</source>
        <translation>Jede Breite %1 wird geprüft…</translation>
    </message>
    <message>
        <source>No findings at any width %1.</source>
        <translation>Keine Befunde bei irgendeiner Breite %1.</translation>
    </message>
    <message>
        <source>One check is silenced.</source>
        <translation>Eine Prüfung ist stummgeschaltet.</translation>
    </message>
    <message numerus="yes">
        <source>%n check(s) are silenced.</source>
        <translation>
            <numerusform>%n Prüfung ist stummgeschaltet.</numerusform>
            <numerusform>%n Prüfungen sind stummgeschaltet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Trying remedies…</source>
        <translation>Abhilfen werden ausprobiert…</translation>
    </message>
    <message>
        <source>Tenter found no remedy for this finding.</source>
        <translation>Tenter hat für diesen Befund keine Abhilfe gefunden.</translation>
    </message>
    <message>
        <source>Remedies</source>
        <translation>Abhilfen</translation>
    </message>
    <message>
        <source>Silence check “%1”</source>
        <translation>Prüfung „%1“ stummschalten</translation>
    </message>
    <message>
        <source>Tenter hides all findings of the check “%1” in this project.
Reason (saved in the project, for others who work on it later):</source>
        <translation>Tenter blendet alle Befunde der Prüfung „%1“ in diesem Projekt aus.
Grund (wird im Projekt gespeichert, für alle, die später daran arbeiten):</translation>
    </message>
    <message>
        <source>Silence</source>
        <translation>Stummschalten</translation>
    </message>
    <message>
        <source>Silence check “%1”…</source>
        <translation>Prüfung „%1“ stummschalten…</translation>
    </message>
    <message>
        <source>Stop silencing check “%1” (reason: %2)</source>
        <translation>Prüfung „%1“ nicht mehr stummschalten (Grund: %2)</translation>
    </message>
    <message>
        <source>Stop silencing check “%1”</source>
        <translation>Prüfung „%1“ nicht mehr stummschalten</translation>
    </message>
    <message>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>%1 of widths</source>
        <translation>%1 der Breiten</translation>
    </message>
    <message>
        <source>%1 of visits</source>
        <translation>%1 der Besuche</translation>
    </message>
    <message>
        <source>All affected widths: %1</source>
        <translation>Alle betroffenen Breiten: %1</translation>
    </message>
    <message>
        <source>About Tenter</source>
        <translation>Über Tenter</translation>
    </message>
    <message>
        <source>A tenter is a frame that stretches cloth to an even width. Tenter does the same with a row of cards: it computes the row at every viewport width and writes the stylesheet for it.</source>
        <translation>Ein Tenter ist ein Rahmen, der Tuch auf gleiche Breite spannt. Das Programm tut dasselbe mit einer Reihe von Karten: Es berechnet die Reihe bei jeder Viewport-Breite und schreibt das Stylesheet dafür.</translation>
    </message>
    <message>
        <source>Zoom: text that grows with the viewport grows less than the browser zoom. Such text can fail WCAG 2.2 SC 1.4.4, which requires that text can be enlarged to 200&#xa0;%. Keep the largest size of a ramp at most 2.5 times the smallest. Test the published page at 200&#xa0;% and 400&#xa0;% zoom, with the keyboard and with a screen reader.</source>
        <translation>Zoom: Text, der mit dem Viewport wächst, wächst weniger als der Browser-Zoom. Solcher Text kann WCAG 2.2 SC 1.4.4 verletzen, wonach sich Text auf 200&#xa0;% vergrößern lassen muss. Die größte Größe einer Rampe sollte höchstens das 2,5-Fache der kleinsten sein. Testen Sie die veröffentlichte Seite bei 200&#xa0;% und 400&#xa0;% Zoom, mit der Tastatur und mit einem Screenreader.</translation>
    </message>
    <message>
        <source>Tenter is free software under the GNU General Public License, version 3 or later (GPL-3.0-or-later). It has no warranty. It uses these libraries:</source>
        <translation>Tenter ist freie Software unter der GNU General Public License, Version 3 oder später (GPL-3.0-or-later). Es gibt keine Gewährleistung. Tenter verwendet diese Bibliotheken:</translation>
    </message>
    <message>
        <source>Libraries</source>
        <translation>Bibliotheken</translation>
    </message>
    <message>
        <source>Library</source>
        <translation>Bibliothek</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Version</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Verwendet für</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <source>&amp;Manual</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>&amp;What’s this?</source>
        <translation>&amp;Was ist das?</translation>
    </message>
    <message>
        <source>&amp;Keyboard shortcuts</source>
        <translation>&amp;Tastenkürzel</translation>
    </message>
    <message>
        <source>&amp;About Tenter</source>
        <translation>&amp;Über Tenter</translation>
    </message>
    <message>
        <source>the window, plots</source>
        <translation>Fenster, Diagramme</translation>
    </message>
    <message>
        <source>shaping of text</source>
        <translation>Textsatz</translation>
    </message>
    <message>
        <source>line breaks, letter case</source>
        <translation>Zeilenumbrüche, Groß- und Kleinschreibung</translation>
    </message>
    <message>
        <source>outlines of glyphs</source>
        <translation>Konturen der Glyphen</translation>
    </message>
    <message>
        <source>files of font families</source>
        <translation>Dateien der Schriftfamilien</translation>
    </message>
    <message>
        <source>pictures, PDF</source>
        <translation>Bilder, PDF</translation>
    </message>
    <message>
        <source>linear programmes of Solve sizes</source>
        <translation>lineare Programme von „Größen berechnen“</translation>
    </message>
    <message>
        <source>cutting of pictures</source>
        <translation>Zuschneiden von Bildern</translation>
    </message>
    <message>
        <source>project files</source>
        <translation>Projektdateien</translation>
    </message>
    <message>
        <source>HTML of imported pages</source>
        <translation>HTML importierter Seiten</translation>
    </message>
    <message>
        <source>Markdown of a new row</source>
        <translation>Markdown einer neuen Reihe</translation>
    </message>
    <message>
        <source>WOFF2 fonts</source>
        <translation>WOFF2-Schriften</translation>
    </message>
    <message>
        <source>WOFF fonts</source>
        <translation>WOFF-Schriften</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Keyboard shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Effect</source>
        <translation>Wirkung</translation>
    </message>
    <message>
        <source>Manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Not found</source>
        <translation>Nicht gefunden</translation>
    </message>
    <message>
        <source>Tenter manual</source>
        <translation>Tenter-Handbuch</translation>
    </message>
    <message>
        <source>Find next</source>
        <translation>Weitersuchen</translation>
    </message>
    <message>
        <source>Find in the manual</source>
        <translation>Im Handbuch suchen</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>In a field</source>
        <translation>In einem Feld</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Aufwärts, Abwärts</translation>
    </message>
    <message>
        <source>One step; with Shift 10 steps, with Alt a tenth</source>
        <translation>Ein Schritt; mit Umschalt 10 Schritte, mit Alt ein Zehntel</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Restore the value from before typing</source>
        <translation>Wert von vor der Eingabe wiederherstellen</translation>
    </message>
    <message>
        <source>Delete the whole text</source>
        <translation>Ganzen Text löschen</translation>
    </message>
    <message>
        <source>Reset to inherited value</source>
        <translation>Auf geerbten Wert zurücksetzen</translation>
    </message>
    <message>
        <source>In the row</source>
        <translation>In der Reihe</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>Next, previous card</source>
        <translation>Nächste, vorige Karte</translation>
    </message>
    <message>
        <source>Previous, next part</source>
        <translation>Voriger, nächster Teil</translation>
    </message>
    <message>
        <source>Enter on a text</source>
        <translation>Eingabe auf einem Text</translation>
    </message>
    <message>
        <source>Edit it there, as a double click does</source>
        <translation>Dort bearbeiten, wie mit Doppelklick</translation>
    </message>
    <message>
        <source>Alt+Left, Alt+Right</source>
        <translation>Alt+Links, Alt+Rechts</translation>
    </message>
    <message>
        <source>Move the selected card</source>
        <translation>Ausgewählte Karte verschieben</translation>
    </message>
    <message>
        <source>Alt+Up, Alt+Down</source>
        <translation>Alt+Aufwärts, Alt+Abwärts</translation>
    </message>
    <message>
        <source>Move the selected part</source>
        <translation>Ausgewählten Teil verschieben</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Strg+D</translation>
    </message>
    <message>
        <source>Duplicate the card</source>
        <translation>Karte duplizieren</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Remove the selected part or card</source>
        <translation>Ausgewählten Teil oder Karte entfernen</translation>
    </message>
    <message>
        <source>Ctrl+click, Shift+click</source>
        <translation>Strg+Klick, Umschalt+Klick</translation>
    </message>
    <message>
        <source>Select several parts</source>
        <translation>Mehrere Teile auswählen</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
    <message>
        <source>Show what can be done with the selected part</source>
        <translation>Zeigen, was mit dem ausgewählten Teil möglich ist</translation>
    </message>
    <message>
        <source>Restore what a drag has changed, or end the selection</source>
        <translation>Wiederherstellen, was ein Ziehen geändert hat, oder Auswahl aufheben</translation>
    </message>
    <message>
        <source>In a text</source>
        <translation>In einem Text</translation>
    </message>
    <message>
        <source>Ctrl+B, Ctrl+I, Ctrl+K</source>
        <translation>Strg+B, Strg+I, Strg+K</translation>
    </message>
    <message>
        <source>Strong, emphasis, link</source>
        <translation>Fett, kursiv, Link</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Next text</source>
        <translation>Nächster Text</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Restore the text from before</source>
        <translation>Text von vorher wiederherstellen</translation>
    </message>
    <message>
        <source>Move its part up, down</source>
        <translation>Teil nach oben, nach unten verschieben</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Delete</source>
        <translation>Strg+Umschalt+Entf</translation>
    </message>
    <message>
        <source>Remove its part</source>
        <translation>Teil entfernen</translation>
    </message>
    <message>
        <source>On the width axis</source>
        <translation>Auf der Breitenachse</translation>
    </message>
    <message>
        <source>Wider, narrower by 1&#xa0;px; with Shift by 10&#xa0;px</source>
        <translation>1&#xa0;px breiter, schmaler; mit Umschalt 10&#xa0;px</translation>
    </message>
    <message>
        <source>Page Up, Page Down</source>
        <translation>Bild auf, Bild ab</translation>
    </message>
    <message>
        <source>Previous, next band end</source>
        <translation>Voriges, nächstes Bereichsende</translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation>Pos1, Ende</translation>
    </message>
    <message>
        <source>Smallest, largest width</source>
        <translation>Kleinste, größte Breite</translation>
    </message>
    <message>
        <source>In the findings</source>
        <translation>In den Befunden</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Go to the remedies of the finding</source>
        <translation>Zu den Abhilfen des Befunds gehen</translation>
    </message>
    <message>
        <source>Go to the row</source>
        <translation>Zur Reihe gehen</translation>
    </message>
    <message>
        <source>Go to the width where the finding is worst, and mark its part</source>
        <translation>Zur Breite gehen, bei der der Befund am schwersten ist, und seinen Teil markieren</translation>
    </message>
    <message>
        <source>Look: %1</source>
        <translation>Stil: %1</translation>
    </message>
    <message>
        <source>New row</source>
        <translation>Neue Reihe</translation>
    </message>
    <message>
        <source>Columns on wide screens</source>
        <translation>Spalten auf breiten Bildschirmen</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Stil</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>As the text</source>
        <translation>Wie der Text</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>Wie die Sprache</translation>
    </message>
    <message>
        <source>Left to right</source>
        <translation>Links nach rechts</translation>
    </message>
    <message>
        <source>Right to left</source>
        <translation>Rechts nach links</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>&amp;Direction</source>
        <translation>Richt&amp;ung</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>Format of the text</source>
        <translation>Format des Textes</translation>
    </message>
    <message>
        <source>Guess format</source>
        <translation>Format erkennen</translation>
    </message>
    <message>
        <source>Plain lines</source>
        <translation>Einfache Zeilen</translation>
    </message>
    <message>
        <source>Markdown</source>
        <translation>Markdown</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>&amp;Text</source>
        <translation>&amp;Text</translation>
    </message>
    <message>
        <source>%1&#xa0;px</source>
        <translation>%1&#xa0;px</translation>
    </message>
    <message>
        <source>Preview at a viewport width of %1&#xa0;px</source>
        <translation>Vorschau bei einer Viewport-Breite von %1&#xa0;px</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vorschau</translation>
    </message>
    <message>
        <source>Preview of the row</source>
        <translation>Vorschau der Reihe</translation>
    </message>
    <message>
        <source>What to check</source>
        <translation>Was zu prüfen ist</translation>
    </message>
    <message>
        <source>&amp;Cards that Tenter finds in the text</source>
        <translation>&amp;Karten, die Tenter im Text findet</translation>
    </message>
    <message>
        <source>Tenter sets breakpoints, font sizes and spacing. You can change everything afterwards.</source>
        <translation>Tenter setzt Breakpoints, Schriftgrößen und Abstände. Sie können danach alles ändern.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Create &amp;row</source>
        <translation>&amp;Reihe anlegen</translation>
    </message>
    <message>
        <source>Create the row (Ctrl+Enter)</source>
        <translation>Die Reihe anlegen (Strg+Eingabe)</translation>
    </message>
    <message numerus="yes">
        <source>New row with %n card(s). Save it to keep it.</source>
        <translation>
            <numerusform>Neue Reihe mit %n Karte. Speichern Sie sie, um sie zu behalten.</numerusform>
            <numerusform>Neue Reihe mit %n Karten. Speichern Sie sie, um sie zu behalten.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove pictures</source>
        <translation>Bilder entfernen</translation>
    </message>
    <message>
        <source>&amp;Choose pictures…</source>
        <translation>&amp;Bilder wählen…</translation>
    </message>
    <message>
        <source>Choose pictures</source>
        <translation>Bilder wählen</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.webp);;All files (*)</source>
        <translation>Bilder (*.png *.jpg *.jpeg *.webp);;Alle Dateien (*)</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <comment>pictures</comment>
        <translation>
            <numerusform>und %n weiteres</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Drop pictures on this window: one for each card, in their order.</source>
        <translation>Legen Sie Bilder auf diesem Fenster ab: für jede Karte eines, in ihrer Reihenfolge.</translation>
    </message>
    <message>
        <source>Text of the cards</source>
        <translation>Text der Karten</translation>
    </message>
    <message>
        <source>Paste the text of your cards here: plain lines, Markdown, HTML, or rows of a spreadsheet.

Heading of the first card
Its text, one or more lines
Label of its button

Heading of the second card
…

Without text, the row has example text.</source>
        <translation>Fügen Sie hier den Text Ihrer Karten ein: einfache Zeilen, Markdown, HTML oder Zeilen einer Tabellenkalkulation.

Überschrift der ersten Karte
Ihr Text, eine oder mehrere Zeilen
Beschriftung ihres Buttons

Überschrift der zweiten Karte
…

Ohne Text erhält die Reihe Beispieltext.</translation>
    </message>
    <message>
        <source>Cards as the text was understood</source>
        <translation>Karten, wie der Text verstanden wurde</translation>
    </message>
    <message>
        <source>Cards of the row and their parts</source>
        <translation>Karten der Reihe und ihre Teile</translation>
    </message>
    <message numerus="yes">
        <source>and %n more card(s)</source>
        <translation>
            <numerusform>und %n weitere Karte</numerusform>
            <numerusform>und %n weitere Karten</numerusform>
        </translation>
    </message>
    <message>
        <source>Element</source>
        <translation>Element</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>&amp;This project, which has no cards</source>
        <translation>&amp;Dieses Projekt, das keine Karten hat</translation>
    </message>
    <message>
        <source>&amp;This project: replace its card and its text</source>
        <translation>&amp;Dieses Projekt: seine Karte und ihren Text ersetzen</translation>
    </message>
    <message numerus="yes">
        <source>&amp;This project: replace its %n card(s) and their text</source>
        <translation>
            <numerusform>&amp;Dieses Projekt: seine %n Karte und ihren Text ersetzen</numerusform>
            <numerusform>&amp;Dieses Projekt: seine %n Karten und ihren Text ersetzen</numerusform>
        </translation>
    </message>
    <message>
        <source>Import row from page</source>
        <translation>Reihe aus Seite importieren</translation>
    </message>
    <message>
        <source>For a row of cards that is already on a page. Tenter leaves its HTML unchanged and writes a stylesheet for it. Tenter runs no scripts of the page and loads nothing from the network.</source>
        <translation>Für eine Reihe von Karten, die schon auf einer Seite steht. Tenter lässt ihr HTML unverändert und schreibt ein Stylesheet dafür. Tenter führt keine Skripte der Seite aus und lädt nichts aus dem Netz.</translation>
    </message>
    <message>
        <source>&amp;Guess again</source>
        <translation>&amp;Neu erkennen</translation>
    </message>
    <message>
        <source>Discard the roles, selectors and theme CSS that you set, and guess them again</source>
        <translation>Verwirft die Rollen, Selektoren und das CSS des Themes, die Sie gesetzt haben, und erkennt sie neu</translation>
    </message>
    <message>
        <source>Import report</source>
        <translation>Importbericht</translation>
    </message>
    <message>
        <source>No page yet</source>
        <translation>Noch keine Seite</translation>
    </message>
    <message>
        <source>&amp;Import row</source>
        <translation>Reihe &amp;importieren</translation>
    </message>
    <message>
        <source>Import this row (Ctrl+Enter)</source>
        <translation>Diese Reihe importieren (Strg+Eingabe)</translation>
    </message>
    <message>
        <source>A &amp;new project</source>
        <translation>Ein &amp;neues Projekt</translation>
    </message>
    <message>
        <source>Import into:</source>
        <translation>Importieren in:</translation>
    </message>
    <message>
        <source>Makes a new project with the columns, breakpoints, sizes, spacing and colours of the page. The list says what a project cannot hold.</source>
        <translation>Legt ein neues Projekt mit den Spalten, Breakpoints, Größen, Abständen und Farben der Seite an. Die Liste sagt, was ein Projekt nicht aufnehmen kann.</translation>
    </message>
    <message>
        <source>Tenter wrote this page. Makes a new project with its cards and all settings.</source>
        <translation>Tenter hat diese Seite geschrieben. Legt ein neues Projekt mit ihren Karten und allen Einstellungen an.</translation>
    </message>
    <message>
        <source>What 1 rem is on the page. A stylesheet alone does not say it, unless it has a rule for html.</source>
        <translation>Wie groß 1 rem auf der Seite ist. Ein Stylesheet allein sagt das nur, wenn es eine Regel für html hat.</translation>
    </message>
    <message>
        <source>You can undo the import.</source>
        <translation>Sie können den Import rückgängig machen.</translation>
    </message>
    <message numerus="yes">
        <source>New project with the row of the page: %n card(s). Save it to keep it.</source>
        <translation>
            <numerusform>Neues Projekt mit der Reihe der Seite: %n Karte. Speichern Sie es, um es zu behalten.</numerusform>
            <numerusform>Neues Projekt mit der Reihe der Seite: %n Karten. Speichern Sie es, um es zu behalten.</numerusform>
        </translation>
    </message>
    <message>
        <source>The browser lays out the page at every whole viewport width, without scripts and without network access. Tenter reads the position and width of the container and the root font size. Where they differ from the CSS as Tenter reads it, the report says so and Tenter imports the measured values.</source>
        <translation>Der Browser setzt die Seite bei jeder ganzen Viewport-Breite, ohne Skripte und ohne Netzzugang. Tenter liest Position und Breite des Containers und die Schriftgröße der Wurzel. Wo sie vom CSS abweichen, wie Tenter es liest, steht es im Bericht, und Tenter importiert die gemessenen Werte.</translation>
    </message>
    <message>
        <source>Stop the browser and import what the CSS says</source>
        <translation>Den Browser anhalten und importieren, was das CSS sagt</translation>
    </message>
    <message>
        <source>State of the measuring</source>
        <translation>Stand der Messung</translation>
    </message>
    <message>
        <source>&amp;Measure container and root size (no browser is installed)</source>
        <translation>Container und Wurzelgröße &amp;messen (kein Browser installiert)</translation>
    </message>
    <message>
        <source>&amp;Measure container and root size in %1</source>
        <translation>Container und Wurzelgröße in %1 &amp;messen</translation>
    </message>
    <message>
        <source>%1 lays out the page at every width…</source>
        <translation>%1 setzt die Seite bei jeder Breite…</translation>
    </message>
    <message>
        <source>Why no row was found</source>
        <translation>Warum keine Reihe gefunden wurde</translation>
    </message>
    <message>
        <source>such as .walk, then press Enter</source>
        <translation>etwa .walk, dann Eingabetaste</translation>
    </message>
    <message>
        <source>Selector of the cards</source>
        <translation>Selektor der Karten</translation>
    </message>
    <message>
        <source>Problem with the selector</source>
        <translation>Problem mit dem Selektor</translation>
    </message>
    <message>
        <source>&amp;Selector of the cards</source>
        <translation>&amp;Selektor der Karten</translation>
    </message>
    <message>
        <source>Reading the page…</source>
        <translation>Die Seite wird gelesen…</translation>
    </message>
    <message>
        <source>No row to import</source>
        <translation>Keine Reihe zu importieren</translation>
    </message>
    <message>
        <source>This page cannot be read</source>
        <translation>Diese Seite ist nicht lesbar</translation>
    </message>
    <message>
        <source>HTML of the page, or only of its row</source>
        <translation>HTML der Seite oder nur ihrer Reihe</translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <source>&amp;Open saved page…</source>
        <translation>Gespeicherte Seite ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Page that was read</source>
        <translation>Gelesene Seite</translation>
    </message>
    <message>
        <source>&amp;Paste HTML instead</source>
        <translation>Stattdessen HTML &amp;einfügen</translation>
    </message>
    <message>
        <source>Pasted text</source>
        <translation>Eingefügter Text</translation>
    </message>
    <message>
        <source>%1: this file cannot be read. Check that it exists and that you may read it.</source>
        <translation>%1: Diese Datei ist nicht lesbar. Prüfen Sie, ob es sie gibt und Sie sie lesen dürfen.</translation>
    </message>
    <message>
        <source>This is not a selector. Write one, such as .walk-title.</source>
        <translation>Das ist kein Selektor. Schreiben Sie einen, etwa .walk-title.</translation>
    </message>
    <message>
        <source>Column %1: %2</source>
        <translation>Spalte %1: %2</translation>
    </message>
    <message>
        <source>&amp;Selector</source>
        <translation>Se&amp;lektor</translation>
    </message>
    <message>
        <source>&amp;Role</source>
        <translation>&amp;Rolle</translation>
    </message>
    <message>
        <source>Selected element</source>
        <translation>Ausgewähltes Element</translation>
    </message>
    <message>
        <source>Role of the selected element, in every card</source>
        <translation>Rolle des ausgewählten Elements, in jeder Karte</translation>
    </message>
    <message>
        <source>Selector of all elements with this role</source>
        <translation>Selektor aller Elemente mit dieser Rolle</translation>
    </message>
    <message>
        <source>Problem with the last change</source>
        <translation>Problem mit der letzten Änderung</translation>
    </message>
    <message>
        <source>Select an element in the tree or in the drawing</source>
        <translation>Wählen Sie ein Element im Baum oder in der Zeichnung</translation>
    </message>
    <message>
        <source>no selector without a role</source>
        <translation>kein Selektor ohne Rolle</translation>
    </message>
    <message>
        <source>empty: the element with the variant’s class</source>
        <translation>leer: das Element mit der Klasse der Variante</translation>
    </message>
    <message>
        <source>New role…</source>
        <translation>Neue Rolle…</translation>
    </message>
    <message>
        <source>New role</source>
        <translation>Neue Rolle</translation>
    </message>
    <message>
        <source>Name of the role in lower-case letters, such as kicker or price:</source>
        <translation>Name der Rolle in Kleinbuchstaben, etwa kicker oder price:</translation>
    </message>
    <message>
        <source>Elements of the row</source>
        <translation>Elemente der Reihe</translation>
    </message>
    <message>
        <source>Theme CSS that applies to the row</source>
        <translation>CSS des Themes, das für die Reihe gilt</translation>
    </message>
    <message>
        <source>Paste the CSS of the page’s theme, or write the rules that apply to the row, such as:
html { font-size: 62.5% }  a { color: #064; text-decoration: underline }</source>
        <translation>Fügen Sie das CSS des Themes der Seite ein, oder schreiben Sie die Regeln, die für die Reihe gelten, etwa:
html { font-size: 62.5% }  a { color: #064; text-decoration: underline }</translation>
    </message>
    <message>
        <source>Theme CSS that applies to the row: none yet. Paste or write it here</source>
        <translation>CSS des Themes, das für die Reihe gilt: noch keines. Hier einfügen oder schreiben</translation>
    </message>
    <message>
        <source>Theme CSS that applies to the row, %1, typed by you</source>
        <translation>CSS des Themes, das für die Reihe gilt, %1, von Ihnen eingegeben</translation>
    </message>
    <message>
        <source>Theme CSS that applies to the row, %1</source>
        <translation>CSS des Themes, das für die Reihe gilt, %1</translation>
    </message>
    <message>
        <source>Other findings</source>
        <translation>Andere Befunde</translation>
    </message>
    <message>
        <source>Removes %1:</source>
        <comment>severity of a finding</comment>
        <translation>Entfernt %1:</translation>
    </message>
    <message>
        <source>Adds %1:</source>
        <comment>severity of a finding</comment>
        <translation>Ergibt %1:</translation>
    </message>
    <message>
        <source>Widens %1:</source>
        <comment>severity of a finding</comment>
        <translation>Verbreitert %1:</translation>
    </message>
    <message>
        <source>%1, %2, at %3:</source>
        <translation>%1, %2, bei %3:</translation>
    </message>
    <message>
        <source>%1, was %2</source>
        <comment>sizes</comment>
        <translation>%1, vorher %2</translation>
    </message>
    <message>
        <source>%1, unchanged</source>
        <comment>size</comment>
        <translation>%1, unverändert</translation>
    </message>
    <message>
        <source>Sizes in px</source>
        <translation>Größen in px</translation>
    </message>
    <message>
        <source>Narrow end</source>
        <translation>Schmal</translation>
    </message>
    <message>
        <source>Wide end</source>
        <translation>Breit</translation>
    </message>
    <message>
        <source>Sizes before and after, their limits and their findings</source>
        <translation>Größen vorher und nachher, ihre Grenzen und ihre Befunde</translation>
    </message>
    <message>
        <source>Add breakpoint</source>
        <translation>Breakpoint hinzufügen</translation>
    </message>
    <message>
        <source>Breakpoints</source>
        <translation>Breakpoints</translation>
    </message>
    <message>
        <source>up to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Columns, %1</source>
        <comment>widths of a band</comment>
        <translation>Spalten, %1</translation>
    </message>
    <message numerus="yes">
        <source>column(s)</source>
        <comment>after their number</comment>
        <translation>
            <numerusform>Spalte</numerusform>
            <numerusform>Spalten</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove band, %1</source>
        <comment>widths of a band</comment>
        <translation>Bereich entfernen, %1</translation>
    </message>
    <message>
        <source>Remove this band. The next narrower band then covers its widths.</source>
        <translation>Diesen Bereich entfernen. Der nächste schmalere Bereich umfasst dann seine Breiten.</translation>
    </message>
    <message>
        <source>Remove this band. The next wider band then covers its widths.</source>
        <translation>Diesen Bereich entfernen. Der nächste breitere Bereich umfasst dann seine Breiten.</translation>
    </message>
    <message>
        <source>Add breakpoint at %1</source>
        <translation>Breakpoint bei %1 hinzufügen</translation>
    </message>
    <message>
        <source>Change columns</source>
        <translation>Spalten ändern</translation>
    </message>
    <message>
        <source>There is already a breakpoint at %1.</source>
        <translation>Bei %1 ist schon ein Breakpoint.</translation>
    </message>
    <message>
        <source>Remove band</source>
        <translation>Bereich entfernen</translation>
    </message>
    <message>
        <source>Use %1 in all bands</source>
        <translation>„%1“ in allen Bereichen verwenden</translation>
    </message>
    <message>
        <source>Previous card</source>
        <translation>Vorige Karte</translation>
    </message>
    <message>
        <source>Next card</source>
        <translation>Nächste Karte</translation>
    </message>
    <message>
        <source>Move card one place earlier</source>
        <translation>Karte einen Platz nach vorn</translation>
    </message>
    <message>
        <source>Move card one place later</source>
        <translation>Karte einen Platz nach hinten</translation>
    </message>
    <message>
        <source>Add card after this one</source>
        <translation>Karte nach dieser hinzufügen</translation>
    </message>
    <message>
        <source>Remove card</source>
        <translation>Karte entfernen</translation>
    </message>
    <message>
        <source>No cards</source>
        <translation>Keine Karten</translation>
    </message>
    <message>
        <source>Add card</source>
        <translation>Karte hinzufügen</translation>
    </message>
    <message>
        <source>Move card</source>
        <translation>Karte verschieben</translation>
    </message>
    <message>
        <source>Classes for the elements of your page</source>
        <translation>Klassen für die Elemente Ihrer Seite</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>The stylesheet reaches only elements with these classes. Enter them in your CMS, or copy the markup (Export › Copy markup), which has them.</source>
        <translation>Das Stylesheet erreicht nur Elemente mit diesen Klassen. Tragen Sie sie in Ihrem CMS ein, oder kopieren Sie das Markup (Exportieren › Markup kopieren), das sie enthält.</translation>
    </message>
    <message>
        <source>Click a class to copy it without the dot</source>
        <translation>Ein Klick auf eine Klasse kopiert sie ohne den Punkt</translation>
    </message>
    <message>
        <source>Copy class names</source>
        <translation>Klassennamen kopieren</translation>
    </message>
    <message>
        <source>Class names copied: %1</source>
        <translation>Klassennamen kopiert: %1</translation>
    </message>
    <message>
        <source>Class name copied: %1</source>
        <translation>Klassenname kopiert: %1</translation>
    </message>
    <message>
        <source>Border</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>Hover</source>
        <translation>Hover</translation>
    </message>
    <message>
        <source>Focus ring</source>
        <translation>Fokusring</translation>
    </message>
    <message>
        <source>Shadow</source>
        <translation>Schatten</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>section and setting: Border width</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>text on background</source>
        <translation>Text auf Hintergrund</translation>
    </message>
    <message>
        <source>on hover</source>
        <translation>bei Hover</translation>
    </message>
    <message>
        <source>Offset</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Offset x</source>
        <translation>Versatz x</translation>
    </message>
    <message>
        <source>Offset y</source>
        <translation>Versatz y</translation>
    </message>
    <message>
        <source>Blur</source>
        <translation>Unschärfe</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Ausdehnung</translation>
    </message>
    <message>
        <source>Passes for text of any size (WCAG 2.2 SC 1.4.3, at AAA 1.4.6)</source>
        <translation>Genügt für Text jeder Größe (WCAG 2.2 SC 1.4.3, bei AAA 1.4.6)</translation>
    </message>
    <message>
        <source>Passes for text of any size (WCAG 2.2 SC 1.4.3)</source>
        <translation>Genügt für Text jeder Größe (WCAG 2.2 SC 1.4.3)</translation>
    </message>
    <message>
        <source>Passes at %1, which is large text (WCAG 2.2 SC 1.4.3)</source>
        <translation>Genügt bei %1; das ist großer Text (WCAG 2.2 SC 1.4.3)</translation>
    </message>
    <message>
        <source>Too low at %1: needs %2, or text of at least %3 (%4 if bold; WCAG 2.2 SC 1.4.3)</source>
        <translation>Zu gering bei %1: nötig sind %2 oder Text von mindestens %3 (%4, wenn fett; WCAG 2.2 SC 1.4.3)</translation>
    </message>
    <message>
        <source>Too low for text of any size: needs %1 (WCAG 2.2 SC 1.4.3)</source>
        <translation>Zu gering für Text jeder Größe: nötig sind %1 (WCAG 2.2 SC 1.4.3)</translation>
    </message>
    <message>
        <source>Focal point</source>
        <translation>Bildschwerpunkt</translation>
    </message>
    <message>
        <source>This point stays visible when the slot crops the picture. Click to set it, or use the arrow keys.</source>
        <translation>Dieser Punkt bleibt sichtbar, wenn das Bildfeld das Bild beschneidet. Setzen Sie ihn mit einem Klick oder mit den Pfeiltasten.</translation>
    </message>
    <message>
        <source>%1 from the left, %2 from the top</source>
        <translation>%1 von links, %2 von oben</translation>
    </message>
    <message>
        <source>No picture</source>
        <translation>Kein Bild</translation>
    </message>
    <message>
        <source>The file cannot be read as a picture.</source>
        <translation>Die Datei ist als Bild nicht lesbar.</translation>
    </message>
    <message>
        <source>Leeway of the breakpoint</source>
        <translation>Spielraum des Breakpoints</translation>
    </message>
    <message>
        <source>Change breakpoint</source>
        <translation>Breakpoint ändern</translation>
    </message>
    <message>
        <source>Leeway of the column gap</source>
        <translation>Spielraum des Spaltenabstands</translation>
    </message>
    <message>
        <source>Change column gap</source>
        <translation>Spaltenabstand ändern</translation>
    </message>
    <message>
        <source>Card padding</source>
        <translation>Karteninnenabstand</translation>
    </message>
    <message>
        <source>Leeway of the card padding</source>
        <translation>Spielraum des Karteninnenabstands</translation>
    </message>
    <message>
        <source>Change card padding</source>
        <translation>Karteninnenabstand ändern</translation>
    </message>
    <message>
        <source>Row width</source>
        <translation>Reihenbreite</translation>
    </message>
    <message>
        <source>Leeway of the row width</source>
        <translation>Spielraum der Reihenbreite</translation>
    </message>
    <message>
        <source>Change row width</source>
        <translation>Reihenbreite ändern</translation>
    </message>
    <message>
        <source>Leeway in the band %1 at the current sizes.</source>
        <translation>Spielraum im Bereich %1 bei den aktuellen Größen.</translation>
    </message>
    <message>
        <source>A variant with one band has no breakpoint.</source>
        <translation>Eine Variante mit nur einem Bereich hat keinen Breakpoint.</translation>
    </message>
    <message>
        <source>One column has no gap.</source>
        <translation>Eine einzelne Spalte hat keinen Abstand.</translation>
    </message>
    <message>
        <source>The row width of this band is a keyword, so it has no leeway.</source>
        <translation>Die Reihenbreite dieses Bereichs ist ein Schlüsselwort und hat daher keinen Spielraum.</translation>
    </message>
    <message>
        <source>This band is outside the project’s range of widths.</source>
        <translation>Dieser Bereich liegt außerhalb der Breiten des Projekts.</translation>
    </message>
    <message>
        <source>Apply %1</source>
        <translation>%1 übernehmen</translation>
    </message>
    <message>
        <source>3/2 or own</source>
        <translation>3/2 oder own</translation>
    </message>
    <message>
        <source>Width/height of every slot, such as 3/2; own: each picture keeps its own ratio</source>
        <translation>Breite/Höhe jedes Bildfelds, etwa 3/2; own: jedes Bild behält sein eigenes Verhältnis</translation>
    </message>
    <message>
        <source>enter width/height, such as 3/2, or own</source>
        <translation>geben Sie Breite/Höhe ein, etwa 3/2, oder own</translation>
    </message>
    <message>
        <source>Choose picture…</source>
        <translation>Bild wählen…</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Bildfeld</translation>
    </message>
    <message>
        <source>Alternative text</source>
        <translation>Alternativtext</translation>
    </message>
    <message>
        <source>empty for a decorative picture</source>
        <translation>leer bei einem dekorativen Bild</translation>
    </message>
    <message>
        <source>Picture file</source>
        <translation>Bilddatei</translation>
    </message>
    <message>
        <source>Files to upload</source>
        <translation>Dateien zum Hochladen</translation>
    </message>
    <message>
        <source>For every picture the file that fills its slot at all viewport widths, in all variants, on screens with 2 device pixels per CSS px.</source>
        <translation>Zu jedem Bild die Datei, die sein Bildfeld bei allen Viewport-Breiten und in allen Varianten füllt, auf Bildschirmen mit 2 Gerätepixeln je CSS-px.</translation>
    </message>
    <message>
        <source>size of pictures, pixels, resolution, too small</source>
        <translation>Bildgröße, Pixel, Auflösung, zu klein</translation>
    </message>
    <message>
        <source>All pictures</source>
        <translation>Alle Bilder</translation>
    </message>
    <message>
        <source>Change alternative text</source>
        <translation>Alternativtext ändern</translation>
    </message>
    <message>
        <source>Move focal point</source>
        <translation>Bildschwerpunkt verschieben</translation>
    </message>
    <message>
        <source>Choose picture</source>
        <translation>Bild wählen</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.webp *.avif)</source>
        <translation>Bilder (*.png *.jpg *.jpeg *.webp *.avif)</translation>
    </message>
    <message>
        <source>No picture is too small.</source>
        <translation>Kein Bild ist zu klein.</translation>
    </message>
    <message>
        <source>%1 of %2 pictures are too small.</source>
        <translation>%1 von %2 Bildern sind zu klein.</translation>
    </message>
    <message>
        <source>The sizes of %1 of %2 pictures are not known.</source>
        <translation>Die Größen von %1 der %2 Bilder sind nicht bekannt.</translation>
    </message>
    <message>
        <source>This card has no picture.</source>
        <translation>Diese Karte hat kein Bild.</translation>
    </message>
    <message>
        <source>The row has no cards.</source>
        <translation>Die Reihe hat keine Karten.</translation>
    </message>
    <message>
        <source>%1 × %2 image pixels</source>
        <translation>%1 × %2 Bildpixel</translation>
    </message>
    <message>
        <source>Slot at this width: %1 × %2</source>
        <translation>Bildfeld bei dieser Breite: %1 × %2</translation>
    </message>
    <message>
        <source>Image pixels per CSS px: %1</source>
        <translation>Bildpixel je CSS-px: %1</translation>
    </message>
    <message>
        <source>Reset %1</source>
        <comment>setting</comment>
        <translation>„%1“ zurücksetzen</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Fixed</source>
        <translation>Fest</translation>
    </message>
    <message>
        <source>Grows with width</source>
        <translation>Mit der Breite</translation>
    </message>
    <message>
        <source>Paste size…</source>
        <translation>Größe einfügen…</translation>
    </message>
    <message>
        <source>Paste a font size as CSS: a value, a declaration or a rule</source>
        <translation>Eine Schriftgröße als CSS einfügen: einen Wert, eine Deklaration oder eine Regel</translation>
    </message>
    <message>
        <source>at a width of</source>
        <translation>bei Breite</translation>
    </message>
    <message>
        <source>%1: the smaller width</source>
        <translation>%1: die kleinere Breite</translation>
    </message>
    <message>
        <source>%1 at the smaller width</source>
        <translation>%1 bei der kleineren Breite</translation>
    </message>
    <message>
        <source>%1: the larger width</source>
        <translation>%1: die größere Breite</translation>
    </message>
    <message>
        <source>%1 at the larger width</source>
        <translation>%1 bei der größeren Breite</translation>
    </message>
    <message>
        <source>%1: fixed or growing</source>
        <translation>%1: fest oder mit der Breite</translation>
    </message>
    <message>
        <source>At start</source>
        <translation>Am Anfang</translation>
    </message>
    <message>
        <source>Centred</source>
        <translation>Zentriert</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Ein</translation>
    </message>
    <message>
        <source>Leeway</source>
        <translation>Spielraum</translation>
    </message>
    <message>
        <source>Leeway of a breakpoint, gap, padding or width</source>
        <translation>Spielraum eines Breakpoints, Abstands oder einer Breite</translation>
    </message>
    <message>
        <source>Row padding</source>
        <translation>Innenabstand der Reihe</translation>
    </message>
    <message>
        <source>Padding</source>
        <translation>Innenabstand</translation>
    </message>
    <message>
        <source>Variant name</source>
        <translation>Name der Variante</translation>
    </message>
    <message>
        <source>enter another class; a variant of this row has it already</source>
        <translation>geben Sie eine andere Klasse ein; eine Variante dieser Reihe hat sie schon</translation>
    </message>
    <message>
        <source>Variant class</source>
        <translation>Klasse der Variante</translation>
    </message>
    <message>
        <source>Class names of the elements</source>
        <translation>Klassennamen der Elemente</translation>
    </message>
    <message>
        <source>CMS classes, CSS class, copy classes</source>
        <translation>CMS-Klassen, CSS-Klasse, Klassen kopieren</translation>
    </message>
    <message>
        <source>Add a variant</source>
        <translation>Eine Variante hinzufügen</translation>
    </message>
    <message>
        <source>Above text</source>
        <translation>Über dem Text</translation>
    </message>
    <message>
        <source>Beside text</source>
        <translation>Neben dem Text</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Container width</source>
        <translation>Containerbreite</translation>
    </message>
    <message>
        <source>Container maximum width</source>
        <translation>Höchstbreite des Containers</translation>
    </message>
    <message>
        <source>Side padding</source>
        <translation>Seitlich innen</translation>
    </message>
    <message>
        <source>Container side padding</source>
        <translation>Seitlicher Innenabstand des Containers</translation>
    </message>
    <message>
        <source>Container background</source>
        <translation>Hintergrund des Containers</translation>
    </message>
    <message>
        <source>Scrollbar</source>
        <translation>Scrollbalken</translation>
    </message>
    <message>
        <source>Scrollbar width</source>
        <translation>Breite des Scrollbalkens</translation>
    </message>
    <message>
        <source>Scrollbar always visible</source>
        <translation>Scrollbalken immer sichtbar</translation>
    </message>
    <message>
        <source>Always visible</source>
        <translation>Immer sichtbar</translation>
    </message>
    <message>
        <source>Theme root size</source>
        <translation>Wurzelgröße</translation>
    </message>
    <message>
        <source>Reader text size</source>
        <translation>Textgröße der Leser</translation>
    </message>
    <message>
        <source>Smallest viewport</source>
        <translation>Kleinster Viewport</translation>
    </message>
    <message>
        <source>Largest viewport</source>
        <translation>Größter Viewport</translation>
    </message>
    <message>
        <source>Project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>Project name</source>
        <translation>Name des Projekts</translation>
    </message>
    <message>
        <source>Class prefix</source>
        <translation>Klassenpräfix</translation>
    </message>
    <message>
        <source>enter a language tag, such as en, pt-BR or zh-Hant</source>
        <translation>geben Sie ein Sprachkürzel ein, etwa de, pt-BR oder zh-Hant</translation>
    </message>
    <message>
        <source>Writing direction</source>
        <translation>Schreibrichtung</translation>
    </message>
    <message>
        <source>Heading level</source>
        <translation>Überschriftebene</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>setting</comment>
        <translation>„%1“ ändern</translation>
    </message>
    <message>
        <source>Use card width for all sizes…</source>
        <translation>Alle Größen nach Kartenbreite…</translation>
    </message>
    <message>
        <source>Use viewport width for all sizes…</source>
        <translation>Alle Größen nach Viewport-Breite…</translation>
    </message>
    <message>
        <source>One ramp per role that follows the card width, for every column count. You see a preview before you apply it.</source>
        <translation>Eine Rampe je Rolle, die der Kartenbreite folgt, für jede Spaltenzahl. Sie sehen eine Vorschau, bevor Sie sie übernehmen.</translation>
    </message>
    <message>
        <source>Ramps that follow the viewport width, one per role and band. You see a preview before you apply them.</source>
        <translation>Rampen, die der Viewport-Breite folgen, eine je Rolle und Bereich. Sie sehen eine Vorschau, bevor Sie sie übernehmen.</translation>
    </message>
    <message>
        <source>Sizes cannot follow the card width here.</source>
        <translation>Die Größen können hier nicht der Kartenbreite folgen.</translation>
    </message>
    <message>
        <source>Use card width for all sizes</source>
        <translation>Alle Größen nach Kartenbreite</translation>
    </message>
    <message>
        <source>Apply sizes</source>
        <translation>Größen übernehmen</translation>
    </message>
    <message>
        <source>Use viewport width for all sizes</source>
        <translation>Alle Größen nach Viewport-Breite</translation>
    </message>
    <message>
        <source>Each band gets its own ramps, which follow the viewport width. Cards are no longer size containers. If you change the column count later, solve the sizes again.</source>
        <translation>Jeder Bereich erhält eigene Rampen, die der Viewport-Breite folgen. Karten sind keine Größencontainer mehr. Wenn Sie später die Spaltenzahl ändern, berechnen Sie die Größen neu.</translation>
    </message>
    <message>
        <source>The number of columns. More columns make every card narrower.</source>
        <translation>Die Zahl der Spalten. Mehr Spalten machen jede Karte schmaler.</translation>
    </message>
    <message>
        <source>The width of the row inside its container.</source>
        <translation>Die Breite der Reihe in ihrem Container.</translation>
    </message>
    <message>
        <source>The largest width of the row. On wider pages the row does not grow any more.</source>
        <translation>Die größte Breite der Reihe. Auf breiteren Seiten wächst die Reihe nicht weiter.</translation>
    </message>
    <message>
        <source>The space between columns. A wider gap makes every card narrower.</source>
        <translation>Der Abstand zwischen Spalten. Ein größerer Abstand macht jede Karte schmaler.</translation>
    </message>
    <message>
        <source>The space between lines of cards.</source>
        <translation>Der Abstand zwischen untereinanderliegenden Karten.</translation>
    </message>
    <message>
        <source>The position of the cards in a last line that is not full.</source>
        <translation>Wo die Karten in einer nicht vollen letzten Zeile stehen.</translation>
    </message>
    <message>
        <source>Starts the same part of neighbouring cards at the same height.</source>
        <translation>Lässt gleiche Teile benachbarter Karten auf gleicher Höhe beginnen.</translation>
    </message>
    <message>
        <source>The space inside the edges of the row. Padding at the sides makes every card narrower.</source>
        <translation>Der Abstand innerhalb der Kanten der Reihe. Seitlicher Innenabstand macht jede Karte schmaler.</translation>
    </message>
    <message>
        <source>The colour behind the cards.</source>
        <translation>Die Farbe hinter den Karten.</translation>
    </message>
    <message>
        <source>Places the picture above the text or beside it. Beside it, the text is narrower.</source>
        <translation>Setzt das Bild über den Text oder daneben. Neben dem Bild ist der Text schmaler.</translation>
    </message>
    <message>
        <source>The width of a picture beside the text, as a share of the card. The text has the rest.</source>
        <translation>Die Breite eines Bildes neben dem Text, als Anteil der Karte. Der Text hat den Rest.</translation>
    </message>
    <message>
        <source>The picture covers the padding of the card.</source>
        <translation>Das Bild überdeckt den Innenabstand der Karte.</translation>
    </message>
    <message>
        <source>A click anywhere on the card follows the link of its button.</source>
        <translation>Ein Klick irgendwo auf die Karte folgt dem Link ihres Buttons.</translation>
    </message>
    <message>
        <source>The space inside the edges of a card. Padding at the sides makes its text narrower.</source>
        <translation>Der Abstand innerhalb der Kanten einer Karte. Seitlicher Innenabstand macht ihren Text schmaler.</translation>
    </message>
    <message>
        <source>The colour of the card behind its text. Contrast is computed with it.</source>
        <translation>Die Farbe der Karte hinter ihrem Text. Der Kontrast wird damit berechnet.</translation>
    </message>
    <message>
        <source>The colour of the line around a card.</source>
        <translation>Die Farbe der Linie um eine Karte.</translation>
    </message>
    <message>
        <source>The width of the line around a card. It takes room from the text.</source>
        <translation>Die Breite der Linie um eine Karte. Sie nimmt dem Text Platz.</translation>
    </message>
    <message>
        <source>How far the corners of a card are rounded.</source>
        <translation>Wie stark die Ecken einer Karte abgerundet sind.</translation>
    </message>
    <message>
        <source>The colour of the shadow under a card, with its opacity.</source>
        <translation>Die Farbe des Schattens unter einer Karte, mit seiner Deckkraft.</translation>
    </message>
    <message>
        <source>How far the shadow is moved to the right; negative: to the left.</source>
        <translation>Wie weit der Schatten nach rechts versetzt ist; negativ: nach links.</translation>
    </message>
    <message>
        <source>How far the shadow is moved down; negative: up.</source>
        <translation>Wie weit der Schatten nach unten versetzt ist; negativ: nach oben.</translation>
    </message>
    <message>
        <source>How soft the edge of the shadow is.</source>
        <translation>Wie weich der Rand des Schattens ist.</translation>
    </message>
    <message>
        <source>How much larger than the card the shadow is; negative: smaller.</source>
        <translation>Um wie viel der Schatten größer ist als die Karte; negativ: kleiner.</translation>
    </message>
    <message>
        <source>Width to height of the slots of all pictures. Pictures of other ratios are cropped around their focal point.</source>
        <translation>Breite zu Höhe der Bildfelder aller Bilder. Bilder mit anderem Verhältnis werden um ihren Bildschwerpunkt beschnitten.</translation>
    </message>
    <message>
        <source>How far the corners of pictures are rounded.</source>
        <translation>Wie stark die Ecken von Bildern abgerundet sind.</translation>
    </message>
    <message>
        <source>The space around a picture. Space at the sides makes its slot narrower.</source>
        <translation>Der Abstand um ein Bild. Seitlicher Abstand macht sein Bildfeld schmaler.</translation>
    </message>
    <message>
        <source>The font families. The first one that is available is used.</source>
        <translation>Die Schriftfamilien. Die erste vorhandene wird verwendet.</translation>
    </message>
    <message>
        <source>The weight of the font: 400 is regular, 700 is bold. Bold text is wider.</source>
        <translation>Die Stärke der Schrift: 400 ist normal, 700 ist fett. Fetter Text ist breiter.</translation>
    </message>
    <message>
        <source>Upright or italic letters.</source>
        <translation>Aufrechte oder kursive Buchstaben.</translation>
    </message>
    <message>
        <source>Shows the text in capitals without changing it. Capitals are wider.</source>
        <translation>Zeigt den Text in Großbuchstaben, ohne ihn zu ändern. Großbuchstaben sind breiter.</translation>
    </message>
    <message>
        <source>The font size: the same at every width, or a ramp, which changes in a straight line between two widths and is constant outside them.</source>
        <translation>Die Schriftgröße: bei jeder Breite gleich oder eine Rampe, die sich zwischen zwei Breiten geradlinig ändert und außerhalb gleich bleibt.</translation>
    </message>
    <message>
        <source>Whether the font size follows the viewport width or the width of the card.</source>
        <translation>Ob die Schriftgröße der Viewport-Breite folgt oder der Breite der Karte.</translation>
    </message>
    <message>
        <source>The distance between lines, as a multiple of the font size or as a length.</source>
        <translation>Der Abstand zwischen Zeilen, als Vielfaches der Schriftgröße oder als Länge.</translation>
    </message>
    <message>
        <source>Space added after every letter. It makes lines hold fewer characters.</source>
        <translation>Zusätzlicher Abstand nach jedem Buchstaben. Dadurch fassen Zeilen weniger Zeichen.</translation>
    </message>
    <message>
        <source>Space added to every space between words.</source>
        <translation>Zusätzlicher Abstand zu jedem Leerzeichen zwischen Wörtern.</translation>
    </message>
    <message>
        <source>The side at which lines start.</source>
        <translation>Die Seite, an der Zeilen beginnen.</translation>
    </message>
    <message>
        <source>Balanced: lines of similar length, in as many lines as without.</source>
        <translation>Ausgeglichen: ähnlich lange Zeilen, in ebenso vielen Zeilen wie ohne.</translation>
    </message>
    <message>
        <source>What happens to a word that is wider than its line.</source>
        <translation>Was mit einem Wort geschieht, das breiter ist als seine Zeile.</translation>
    </message>
    <message>
        <source>Whether words may break at the soft hyphens in the text.</source>
        <translation>Ob Wörter an den weichen Trennstrichen im Text getrennt werden dürfen.</translation>
    </message>
    <message>
        <source>Reserves the height of this number of lines, so that shorter texts take as much space.</source>
        <translation>Hält die Höhe so vieler Zeilen frei, damit kürzere Texte gleich viel Platz einnehmen.</translation>
    </message>
    <message>
        <source>Where the box of the text is across the card. Full width: it has the width of the card.</source>
        <translation>Wo die Box des Textes quer in der Karte steht. Volle Breite: Sie ist so breit wie die Karte.</translation>
    </message>
    <message>
        <source>The colour of the letters. Contrast is computed with it.</source>
        <translation>Die Farbe der Buchstaben. Der Kontrast wird damit berechnet.</translation>
    </message>
    <message>
        <source>The colour behind the text. A role with a background is drawn as a button.</source>
        <translation>Die Farbe hinter dem Text. Eine Rolle mit Hintergrund wird als Button gezeichnet.</translation>
    </message>
    <message>
        <source>The colour of the line around the text.</source>
        <translation>Die Farbe der Linie um den Text.</translation>
    </message>
    <message>
        <source>The width of the line around the text.</source>
        <translation>Die Breite der Linie um den Text.</translation>
    </message>
    <message>
        <source>How far the corners of the background are rounded.</source>
        <translation>Wie stark die Ecken des Hintergrunds abgerundet sind.</translation>
    </message>
    <message>
        <source>The colour of the letters under the pointer.</source>
        <translation>Die Farbe der Buchstaben unter dem Mauszeiger.</translation>
    </message>
    <message>
        <source>The colour of the background under the pointer.</source>
        <translation>Die Farbe des Hintergrunds unter dem Mauszeiger.</translation>
    </message>
    <message>
        <source>The colour of the border under the pointer.</source>
        <translation>Die Farbe des Rahmens unter dem Mauszeiger.</translation>
    </message>
    <message>
        <source>The colour of the ring around a link or button that has the keyboard focus.</source>
        <translation>Die Farbe des Rings um einen Link oder Button, der den Tastaturfokus hat.</translation>
    </message>
    <message>
        <source>The width of the focus ring.</source>
        <translation>Die Breite des Fokusrings.</translation>
    </message>
    <message>
        <source>The space between the part and its focus ring; negative: inside the part.</source>
        <translation>Der Abstand zwischen dem Teil und seinem Fokusring; negativ: im Teil.</translation>
    </message>
    <message>
        <source>The space around the text. Space at the sides makes its lines shorter.</source>
        <translation>Der Abstand um den Text. Seitlicher Abstand macht seine Zeilen kürzer.</translation>
    </message>
    <message>
        <source>The space inside the background and border of the text.</source>
        <translation>Der Abstand innerhalb von Hintergrund und Rahmen des Textes.</translation>
    </message>
    <message>
        <source>The purpose of the variant, such as Home page. Tenter shows it instead of the class. A column count alone is not shown, because the bands have column counts, too.</source>
        <translation>Der Zweck der Variante, etwa Startseite. Tenter zeigt ihn anstelle der Klasse. Eine bloße Spaltenzahl wird nicht gezeigt, weil auch die Bereiche Spaltenzahlen haben.</translation>
    </message>
    <message>
        <source>The class of the row in this variant. The stylesheet applies to the element with it.</source>
        <translation>Die Klasse der Reihe in dieser Variante. Das Stylesheet gilt für das Element mit dieser Klasse.</translation>
    </message>
    <message>
        <source>The width of the container: the element of the page that contains the row.</source>
        <translation>Die Breite des Containers: des Elements der Seite, das die Reihe enthält.</translation>
    </message>
    <message>
        <source>The largest width of the container.</source>
        <translation>Die größte Breite des Containers.</translation>
    </message>
    <message>
        <source>The left and right padding of the container.</source>
        <translation>Der linke und rechte Innenabstand des Containers.</translation>
    </message>
    <message>
        <source>The colour of the page behind the row. Contrast is computed with it.</source>
        <translation>Die Farbe der Seite hinter der Reihe. Der Kontrast wird damit berechnet.</translation>
    </message>
    <message>
        <source>The part of the viewport width that the scrollbar covers.</source>
        <translation>Der Teil der Viewport-Breite, den der Scrollbalken verdeckt.</translation>
    </message>
    <message>
        <source>The scrollbar takes its room on short pages, too.</source>
        <translation>Der Scrollbalken nimmt auch auf kurzen Seiten seinen Platz ein.</translation>
    </message>
    <message>
        <source>The font size that the theme gives to the root element: 1&#xa0;rem.</source>
        <translation>Die Schriftgröße, die das Theme dem Wurzelelement gibt: 1&#xa0;rem.</translation>
    </message>
    <message>
        <source>The text size that the reader has set in the browser; 16&#xa0;px unless changed. It is for the preview only.</source>
        <translation>Die Textgröße, die der Leser im Browser eingestellt hat; 16&#xa0;px, wenn nicht geändert. Sie gilt nur für die Vorschau.</translation>
    </message>
    <message>
        <source>The smallest viewport width that Tenter shows, checks and solves.</source>
        <translation>Die kleinste Viewport-Breite, die Tenter zeigt, prüft und berechnet.</translation>
    </message>
    <message>
        <source>The largest viewport width that Tenter shows, checks and solves.</source>
        <translation>Die größte Viewport-Breite, die Tenter zeigt, prüft und berechnet.</translation>
    </message>
    <message>
        <source>The name of the project, shown on the start page and in the spec sheet.</source>
        <translation>Der Name des Projekts, auf der Startseite und im Datenblatt.</translation>
    </message>
    <message>
        <source>The class names of the parts start with it, such as season in .season-card.</source>
        <translation>Damit beginnen die Klassennamen der Teile, etwa season in .season-card.</translation>
    </message>
    <message>
        <source>The language of the text. It decides about line breaks and quotation marks.</source>
        <translation>Die Sprache des Textes. Von ihr hängen Zeilenumbrüche und Anführungszeichen ab.</translation>
    </message>
    <message>
        <source>The direction of the text. Right to left also mirrors the order of the cards.</source>
        <translation>Die Richtung des Textes. Rechts nach links spiegelt auch die Reihenfolge der Karten.</translation>
    </message>
    <message>
        <source>The level of the headings of the cards in the outline of the page: h1 to h6.</source>
        <translation>Die Ebene der Kartenüberschriften in der Gliederung der Seite: h1 bis h6.</translation>
    </message>
    <message>
        <source>The unit of font sizes in the stylesheet. Sizes in rem grow with the reader’s text size.</source>
        <translation>Die Einheit der Schriftgrößen im Stylesheet. Größen in rem wachsen mit der Textgröße der Leser.</translation>
    </message>
    <message>
        <source>Wishes: widths</source>
        <translation>Vorgaben: Breiten</translation>
    </message>
    <message>
        <source>The viewport widths that the wishes below are for.</source>
        <translation>Die Viewport-Breiten, für die die folgenden Vorgaben gelten.</translation>
    </message>
    <message>
        <source>Wishes: above</source>
        <translation>Vorgaben: über</translation>
    </message>
    <message>
        <source>The wishes hold above this viewport width.</source>
        <translation>Die Vorgaben gelten über dieser Viewport-Breite.</translation>
    </message>
    <message>
        <source>Wishes: up to</source>
        <translation>Vorgaben: bis</translation>
    </message>
    <message>
        <source>The wishes hold up to this viewport width.</source>
        <translation>Die Vorgaben gelten bis zu dieser Viewport-Breite.</translation>
    </message>
    <message>
        <source>Wish: lines at most</source>
        <translation>Vorgabe: Zeilen höchstens</translation>
    </message>
    <message>
        <source>The largest number of lines that a text of this role may have.</source>
        <translation>Die größte Zeilenzahl, die ein Text dieser Rolle haben darf.</translation>
    </message>
    <message>
        <source>Wish: measure at least</source>
        <translation>Vorgabe: Zeilenlänge mindestens</translation>
    </message>
    <message>
        <source>The smallest number of characters on a line, in texts of three lines or more.</source>
        <translation>Die kleinste Zahl der Zeichen in einer Zeile, bei Texten ab drei Zeilen.</translation>
    </message>
    <message>
        <source>Wish: measure at most</source>
        <translation>Vorgabe: Zeilenlänge höchstens</translation>
    </message>
    <message>
        <source>The largest number of characters on a line, in texts of three lines or more.</source>
        <translation>Die größte Zahl der Zeichen in einer Zeile, bei Texten ab drei Zeilen.</translation>
    </message>
    <message>
        <source>Wish: size at least</source>
        <translation>Vorgabe: Größe mindestens</translation>
    </message>
    <message>
        <source>The smallest font size of this role.</source>
        <translation>Die kleinste Schriftgröße dieser Rolle.</translation>
    </message>
    <message>
        <source>Wish: size at most</source>
        <translation>Vorgabe: Größe höchstens</translation>
    </message>
    <message>
        <source>The largest font size of this role.</source>
        <translation>Die größte Schriftgröße dieser Rolle.</translation>
    </message>
    <message>
        <source>Wish: ratio to role</source>
        <translation>Vorgabe: Verhältnis zu Rolle</translation>
    </message>
    <message>
        <source>The role whose size the ratio multiplies.</source>
        <translation>Die Rolle, deren Größe mit dem Verhältnis multipliziert wird.</translation>
    </message>
    <message>
        <source>Wish: ratio</source>
        <translation>Vorgabe: Verhältnis</translation>
    </message>
    <message>
        <source>The size of this role as a multiple of the size of the other role.</source>
        <translation>Die Größe dieser Rolle als Vielfaches der Größe der anderen Rolle.</translation>
    </message>
    <message>
        <source>Wish: ratio is</source>
        <translation>Vorgabe: Verhältnis ist</translation>
    </message>
    <message>
        <source>Whether the ratio is the smallest one or exactly the one.</source>
        <translation>Ob das Verhältnis das kleinste ist oder genau eingehalten wird.</translation>
    </message>
    <message>
        <source>Wish: sizes</source>
        <translation>Vorgabe: Größen</translation>
    </message>
    <message>
        <source>Locked: Solve sizes does not change the sizes of this role.</source>
        <translation>Gesperrt: „Größen berechnen“ ändert die Größen dieser Rolle nicht.</translation>
    </message>
    <message>
        <source>Wish: growth at most</source>
        <translation>Vorgabe: Wachstum höchstens</translation>
    </message>
    <message>
        <source>The largest growth per 100&#xa0;px of viewport width.</source>
        <translation>Das größte Wachstum je 100&#xa0;px Viewport-Breite.</translation>
    </message>
    <message>
        <source>Wish: narrower column</source>
        <translation>Vorgabe: schmalere Spalte</translation>
    </message>
    <message>
        <source>No growth: the text does not grow where its column narrows.</source>
        <translation>Kein Wachstum: Der Text wächst nicht, wo seine Spalte schmaler wird.</translation>
    </message>
    <message>
        <source>Wish: double at zoom</source>
        <translation>Vorgabe: doppelt bei Zoom</translation>
    </message>
    <message>
        <source>The browser zoom at which the text is twice as large.</source>
        <translation>Der Browser-Zoom, bei dem der Text doppelt so groß ist.</translation>
    </message>
    <message>
        <source>Wish: breakpoints</source>
        <translation>Vorgabe: Breakpoints</translation>
    </message>
    <message>
        <source>How the sizes on both sides of a breakpoint are related.</source>
        <translation>In welchem Verhältnis die Größen auf beiden Seiten eines Breakpoints stehen.</translation>
    </message>
    <message>
        <source>Wish: variants</source>
        <translation>Vorgabe: Varianten</translation>
    </message>
    <message>
        <source>Same size: at each width every variant has the same size. All variants are solved together.</source>
        <translation>Gleiche Größe: Bei jeder Breite hat jede Variante dieselbe Größe. Alle Varianten werden gemeinsam berechnet.</translation>
    </message>
    <message>
        <source>Solver: aim</source>
        <translation>Berechnung: Ziel</translation>
    </message>
    <message>
        <source>Which of all sizes that satisfy the wishes are chosen.</source>
        <translation>Welche von allen Größen gewählt werden, die die Vorgaben erfüllen.</translation>
    </message>
    <message>
        <source>Solver: size grid</source>
        <translation>Berechnung: Größenraster</translation>
    </message>
    <message>
        <source>The end sizes of ramps are multiples of this length.</source>
        <translation>Die Größen an den Enden von Rampen sind Vielfache dieser Länge.</translation>
    </message>
    <message>
        <source>Solver: reserve</source>
        <translation>Berechnung: Reserve</translation>
    </message>
    <message>
        <source>Space for longer text, such as a translation, without another line.</source>
        <translation>Platz für längeren Text, etwa eine Übersetzung, ohne eine weitere Zeile.</translation>
    </message>
    <message>
        <source>Solver: slack</source>
        <translation>Berechnung: Luft</translation>
    </message>
    <message>
        <source>This share of each line stays free, so that another browser does not add a line. Slack is the smallest change of the text width that moves a line break.</source>
        <translation>Dieser Anteil jeder Zeile bleibt frei, damit ein anderer Browser keine Zeile hinzufügt. Luft ist die kleinste Änderung der Textbreite, die einen Zeilenumbruch verschiebt.</translation>
    </message>
    <message>
        <source>Solver: slack &lt; 500&#xa0;px</source>
        <translation>Berechnung: Luft &lt; 500&#xa0;px</translation>
    </message>
    <message>
        <source>The same at viewport widths below 500&#xa0;px.</source>
        <translation>Dasselbe bei Viewport-Breiten unter 500&#xa0;px.</translation>
    </message>
    <message>
        <source>A breakpoint is a viewport width at which the columns change. Between two breakpoints is a band: a range of widths with its own columns, spacing and sizes.</source>
        <translation>Ein Breakpoint ist eine Viewport-Breite, bei der sich die Spalten ändern. Zwischen zwei Breakpoints liegt ein Bereich: Breiten mit eigenen Spalten, Abständen und Größen.</translation>
    </message>
    <message>
        <source>Leeway: the range in which a value can change while all wishes stay satisfied.</source>
        <translation>Spielraum: wie weit sich ein Wert ändern kann, solange alle Vorgaben erfüllt bleiben.</translation>
    </message>
    <message>
        <source>The space inside the edges. Padding at the sides makes what is inside narrower.</source>
        <translation>Der Abstand innerhalb der Kanten. Seitlicher Innenabstand macht den Inhalt schmaler.</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Außenabstand</translation>
    </message>
    <message>
        <source>The space around a part. Margins do not collapse.</source>
        <translation>Der Abstand um einen Teil. Außenabstände fallen nicht zusammen.</translation>
    </message>
    <message>
        <source>The class that each element of your page needs, so that the stylesheet applies to it.</source>
        <translation>Die Klasse, die jedes Element Ihrer Seite braucht, damit das Stylesheet dafür gilt.</translation>
    </message>
    <message>
        <source>A variant has the same cards with another column count, its own class and its own sizes.</source>
        <translation>Eine Variante hat dieselben Karten mit anderer Spaltenzahl, eigener Klasse und eigenen Größen.</translation>
    </message>
    <message>
        <source>Makes the font sizes of all roles follow the width of the card, or the viewport width, and keeps the sizes that they have now.</source>
        <translation>Lässt die Schriftgrößen aller Rollen der Breite der Karte oder der Viewport-Breite folgen und behält ihre jetzigen Größen bei.</translation>
    </message>
    <message>
        <source>Solve sizes</source>
        <translation>Größen berechnen</translation>
    </message>
    <message>
        <source>Computes font sizes that satisfy every wish at every width, as near to the current sizes as possible. The sizes are shown as a preview first.</source>
        <translation>Berechnet Schriftgrößen, die jede Vorgabe bei jeder Breite erfüllen, so nah wie möglich an den aktuellen Größen. Die Größen werden zuerst als Vorschau gezeigt.</translation>
    </message>
    <message>
        <source>Text of a card</source>
        <translation>Text einer Karte</translation>
    </message>
    <message>
        <source>The texts, pictures and buttons of the selected card. The layout follows each letter.</source>
        <translation>Die Texte, Bilder und Buttons der ausgewählten Karte. Das Layout folgt jedem Buchstaben.</translation>
    </message>
    <message>
        <source>Link address</source>
        <translation>Linkadresse</translation>
    </message>
    <message>
        <source>The address that the button leads to.</source>
        <translation>Die Adresse, zu der der Button führt.</translation>
    </message>
    <message>
        <source>Accessible name</source>
        <translation>Zugänglicher Name</translation>
    </message>
    <message>
        <source>What screen readers read in place of the text of the button. It must contain that text.</source>
        <translation>Was Screenreader anstelle des Button-Textes vorlesen. Er muss diesen Text enthalten.</translation>
    </message>
    <message>
        <source>Longer text, longest heading, no pictures, one more card</source>
        <translation>Längerer Text, längste Überschrift, ohne Bilder, eine Karte mehr</translation>
    </message>
    <message>
        <source>Shows the row with other texts, pictures or cards. The project is not changed.</source>
        <translation>Zeigt die Reihe mit anderen Texten, Bildern oder Karten. Das Projekt ändert sich nicht.</translation>
    </message>
    <message>
        <source>The file of the picture. It stays where it is; the project has its place.</source>
        <translation>Die Datei des Bildes. Sie bleibt, wo sie ist; das Projekt merkt sich ihren Ort.</translation>
    </message>
    <message>
        <source>What screen readers read in place of the picture; empty for a decorative picture.</source>
        <translation>Was Screenreader anstelle des Bildes vorlesen; leer bei einem dekorativen Bild.</translation>
    </message>
    <message>
        <source>The point of the picture that stays visible when its slot has another ratio.</source>
        <translation>Der Punkt des Bildes, der sichtbar bleibt, wenn sein Bildfeld ein anderes Verhältnis hat.</translation>
    </message>
    <message>
        <source>Solver: ignored cards</source>
        <translation>Berechnung: ausgenommene Karten</translation>
    </message>
    <message>
        <source>The numbers of the cards that the wishes do not apply to.</source>
        <translation>Die Nummern der Karten, für die die Vorgaben nicht gelten.</translation>
    </message>
    <message>
        <source>set for %1</source>
        <translation>gesetzt für %1</translation>
    </message>
    <message>
        <source>inherited from %1</source>
        <translation>geerbt, gesetzt für %1</translation>
    </message>
    <message>
        <source>default value</source>
        <translation>Standardwert</translation>
    </message>
    <message>
        <source>Use in all variants and bands</source>
        <translation>In allen Varianten und Bereichen verwenden</translation>
    </message>
    <message>
        <source>Use in all bands</source>
        <translation>In allen Bereichen verwenden</translation>
    </message>
    <message>
        <source>Applies to %1 only.</source>
        <translation>Gilt nur für %1.</translation>
    </message>
    <message>
        <source>Some variants or bands have another value.</source>
        <translation>Einige Varianten oder Bereiche weichen ab.</translation>
    </message>
    <message>
        <source>Some bands have another value.</source>
        <translation>Einige Bereiche weichen ab.</translation>
    </message>
    <message>
        <source>Remove the other values of this setting from variants and bands. You can undo it.</source>
        <translation>Entfernt die anderen Werte dieser Einstellung aus Varianten und Bereichen. Sie können es rückgängig machen.</translation>
    </message>
    <message>
        <source>Remove the other values of this setting from the bands of this variant. You can undo it.</source>
        <translation>Entfernt die anderen Werte dieser Einstellung aus den Bereichen dieser Variante. Sie können es rückgängig machen.</translation>
    </message>
    <message>
        <source>Part or role to edit</source>
        <translation>Teil oder Rolle, die bearbeitet wird</translation>
    </message>
    <message>
        <source>Edit scope</source>
        <translation>Wofür Änderungen gelten</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Abstände</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>Edits apply to %1.</source>
        <translation>Änderungen gelten für %1.</translation>
    </message>
    <message>
        <source>This band</source>
        <translation>Dieser Bereich</translation>
    </message>
    <message>
        <source>%1: nothing in this row has this setting.</source>
        <translation>%1: Nichts in dieser Reihe hat diese Einstellung.</translation>
    </message>
    <message>
        <source>Apply size</source>
        <translation>Größe übernehmen</translation>
    </message>
    <message>
        <source>A font size as CSS: a value, a declaration or a rule</source>
        <translation>Eine Schriftgröße als CSS: ein Wert, eine Deklaration oder eine Regel</translation>
    </message>
    <message>
        <source>What the pasted size means</source>
        <translation>Was die eingefügte Größe bedeutet</translation>
    </message>
    <message>
        <source>the text is too long</source>
        <translation>der Text ist zu lang</translation>
    </message>
    <message>
        <source>paste only the rule that sets the size</source>
        <translation>fügen Sie nur die Regel ein, die die Größe setzt</translation>
    </message>
    <message>
        <source>Exact: %1</source>
        <translation>Genau: %1</translation>
    </message>
    <message>
        <source>Approximate: %1</source>
        <translation>Angenähert: %1</translation>
    </message>
    <message>
        <source>Paste %1 size</source>
        <comment>role</comment>
        <translation>Größe einfügen: %1</translation>
    </message>
    <message>
        <source>No sizes satisfy this wish:</source>
        <translation>Keine Größen erfüllen diese Vorgabe:</translation>
    </message>
    <message>
        <source>No sizes satisfy these wishes together:</source>
        <translation>Keine Größen erfüllen diese Vorgaben zusammen:</translation>
    </message>
    <message>
        <source>Preview (F4)</source>
        <translation>Vorschau (F4)</translation>
    </message>
    <message>
        <source>Findings that come and go</source>
        <translation>Befunde, die entfallen und hinzukommen</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Rat</translation>
    </message>
    <message>
        <source>Solving sizes…</source>
        <translation>Größen werden berechnet…</translation>
    </message>
    <message>
        <source>Stop solving</source>
        <translation>Berechnung anhalten</translation>
    </message>
    <message>
        <source>Show the row with the solved sizes; off: with the current sizes</source>
        <translation>Zeigt die Reihe mit den berechneten Größen; aus: mit den aktuellen Größen</translation>
    </message>
    <message>
        <source>Finds sizes that satisfy every wish at every width, in Chromium and Firefox. You see a preview before you apply them.</source>
        <translation>Sucht Größen, die jede Vorgabe bei jeder Breite erfüllen, in Chromium und Firefox. Sie sehen eine Vorschau, bevor Sie sie übernehmen.</translation>
    </message>
    <message>
        <source>Findings: comparing…</source>
        <translation>Befunde: werden verglichen…</translation>
    </message>
    <message>
        <source>The current sizes satisfy every wish.</source>
        <translation>Die aktuellen Größen erfüllen jede Vorgabe.</translation>
    </message>
    <message>
        <source>Apply: %1</source>
        <translation>Übernehmen: %1</translation>
    </message>
    <message>
        <source>Change a wish</source>
        <translation>Eine Vorgabe ändern</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Box</translation>
    </message>
    <message>
        <source>Full width</source>
        <translation>Volle Breite</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>No part uses this role.</source>
        <translation>Kein Teil verwendet diese Rolle.</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Bedienfelder</translation>
    </message>
    <message>
        <source>Font</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Aufrecht</translation>
    </message>
    <message>
        <source>Italic</source>
        <translation>Kursiv</translation>
    </message>
    <message>
        <source>As typed</source>
        <translation>Wie eingegeben</translation>
    </message>
    <message>
        <source>Uppercase</source>
        <translation>Großbuchstaben</translation>
    </message>
    <message>
        <source>Capitalise words</source>
        <translation>Wörter groß</translation>
    </message>
    <message>
        <source>Font size in the stylesheet</source>
        <translation>Schriftgröße im Stylesheet</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Balanced</source>
        <translation>Ausgeglichen</translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation>Überstehen lassen</translation>
    </message>
    <message>
        <source>Break</source>
        <translation>Umbrechen</translation>
    </message>
    <message>
        <source>Break anywhere</source>
        <translation>Überall umbrechen</translation>
    </message>
    <message>
        <source>Soft hyphens</source>
        <translation>Weiche Trennstriche</translation>
    </message>
    <message>
        <source>Width of the card’s content</source>
        <translation>Breite des Karteninhalts</translation>
    </message>
    <message>
        <source>%1 at this width</source>
        <translation>%1 bei dieser Breite</translation>
    </message>
    <message numerus="yes">
        <source>%n more error(s)</source>
        <translation>
            <numerusform>%n Fehler mehr</numerusform>
            <numerusform>%n Fehler mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer error(s)</source>
        <translation>
            <numerusform>%n Fehler weniger</numerusform>
            <numerusform>%n Fehler weniger</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more warning(s)</source>
        <translation>
            <numerusform>%n Warnung mehr</numerusform>
            <numerusform>%n Warnungen mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer warning(s)</source>
        <translation>
            <numerusform>%n Warnung weniger</numerusform>
            <numerusform>%n Warnungen weniger</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more note(s)</source>
        <translation>
            <numerusform>%n Hinweis mehr</numerusform>
            <numerusform>%n Hinweise mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer note(s)</source>
        <translation>
            <numerusform>%n Hinweis weniger</numerusform>
            <numerusform>%n Hinweise weniger</numerusform>
        </translation>
    </message>
    <message>
        <source>same findings</source>
        <translation>gleiche Befunde</translation>
    </message>
    <message>
        <source>Run all tests</source>
        <translation>Alle Tests ausführen</translation>
    </message>
    <message>
        <source>Findings with: %1</source>
        <translation>Befunde mit: %1</translation>
    </message>
    <message>
        <source>No test</source>
        <translation>Kein Test</translation>
    </message>
    <message>
        <source>Longer by</source>
        <translation>Länger um</translation>
    </message>
    <message>
        <source>Shows next to each test how many findings it adds or removes</source>
        <translation>Zeigt neben jedem Test, wie viele Befunde er hinzufügt oder entfernt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>File to upload</source>
        <translation>Datei zum Hochladen</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Present file</source>
        <translation>Vorhandene Datei</translation>
    </message>
    <message>
        <source>Upload %1</source>
        <comment>size of a file</comment>
        <translation>Hochladen: %1</translation>
    </message>
    <message>
        <source>High-density screens need %1 image pixels per CSS px.</source>
        <translation>Hochauflösende Bildschirme brauchen %1 Bildpixel je CSS-px.</translation>
    </message>
    <message>
        <source>This picture is too small: %1. It looks soft on high-density screens.</source>
        <translation>Dieses Bild ist zu klein: %1. Auf hochauflösenden Bildschirmen wirkt es unscharf.</translation>
    </message>
    <message>
        <source>This picture is large enough: %1.</source>
        <translation>Dieses Bild ist groß genug: %1.</translation>
    </message>
    <message>
        <source>Picture and its size</source>
        <translation>Bild und seine Größe</translation>
    </message>
    <message>
        <source>Upload, px</source>
        <translation>Hochladen, px</translation>
    </message>
    <message>
        <source>%1, too small</source>
        <comment>size of a picture</comment>
        <translation>%1, zu klein</translation>
    </message>
    <message>
        <source>no slot</source>
        <translation>kein Bildfeld</translation>
    </message>
    <message>
        <source>Card %1, %2, %3, upload %4</source>
        <translation>Karte %1, %2, %3, hochladen %4</translation>
    </message>
    <message>
        <source>Add variant</source>
        <translation>Variante hinzufügen</translation>
    </message>
    <message>
        <source>Remove variant</source>
        <translation>Variante entfernen</translation>
    </message>
    <message>
        <source>Variant with</source>
        <translation>Variante mit</translation>
    </message>
    <message>
        <source>Variant with this many columns</source>
        <translation>Variante mit dieser Spaltenzahl</translation>
    </message>
    <message>
        <source>Adds the same cards with this many columns. Narrower bands get fewer columns, down to one. The sizes satisfy the wishes.</source>
        <translation>Fügt dieselben Karten mit dieser Spaltenzahl hinzu. Schmalere Bereiche erhalten weniger Spalten, bis hinab zu einer. Die Größen erfüllen die Vorgaben.</translation>
    </message>
    <message>
        <source>Remove variant %1</source>
        <translation>Variante entfernen: %1</translation>
    </message>
    <message>
        <source>Added the variant %1 with %2.</source>
        <translation>Variante %1 mit %2 hinzugefügt.</translation>
    </message>
    <message>
        <source>Its sizes satisfy the wishes.</source>
        <translation>Ihre Größen erfüllen die Vorgaben.</translation>
    </message>
    <message>
        <source>Its sizes are derived from the variant %1.</source>
        <translation>Ihre Größen sind aus der Variante %1 abgeleitet.</translation>
    </message>
    <message>
        <source>it must start with a letter and have only letters, digits, - and _</source>
        <translation>sie muss mit einem Buchstaben beginnen und darf nur Buchstaben, Ziffern, - und _ enthalten</translation>
    </message>
    <message>
        <source>at every width</source>
        <translation>bei jeder Breite</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Vorgaben</translation>
    </message>
    <message>
        <source>Lines at most</source>
        <translation>Zeilen höchstens</translation>
    </message>
    <message>
        <source>Measure at least</source>
        <translation>Zeilenlänge mindestens</translation>
    </message>
    <message>
        <source>Measure at most</source>
        <translation>Zeilenlänge höchstens</translation>
    </message>
    <message>
        <source>Size at least</source>
        <translation>Größe mindestens</translation>
    </message>
    <message>
        <source>Size at most</source>
        <translation>Größe höchstens</translation>
    </message>
    <message>
        <source>More wishes</source>
        <translation>Weitere Vorgaben</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Größen</translation>
    </message>
    <message>
        <source>May change</source>
        <translation>Änderbar</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Gesperrt</translation>
    </message>
    <message>
        <source>Growth at most</source>
        <translation>Wachstum höchstens</translation>
    </message>
    <message>
        <source>Narrower column</source>
        <translation>Schmalere Spalte</translation>
    </message>
    <message>
        <source>No growth</source>
        <translation>Kein Wachstum</translation>
    </message>
    <message>
        <source>Free</source>
        <translation>Frei</translation>
    </message>
    <message>
        <source>Double at zoom</source>
        <translation>Doppelt bei Zoom</translation>
    </message>
    <message>
        <source>Same size</source>
        <translation>Gleiche Größe</translation>
    </message>
    <message>
        <source>Same share of column</source>
        <translation>Gleicher Anteil der Spalte</translation>
    </message>
    <message>
        <source>Own sizes</source>
        <translation>Eigene Größen</translation>
    </message>
    <message>
        <source>Solver settings for all roles</source>
        <translation>Einstellungen der Berechnung für alle Rollen</translation>
    </message>
    <message>
        <source>Every width</source>
        <translation>Jede Breite</translation>
    </message>
    <message>
        <source>Widths</source>
        <translation>Breiten</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Über</translation>
    </message>
    <message>
        <source>Up to</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>“Up to” must be larger than “Above”. Change the other value first.</source>
        <translation>„Bis“ muss größer sein als „Über“. Ändern Sie zuerst den anderen Wert.</translation>
    </message>
    <message>
        <source>Other widths…</source>
        <translation>Andere Breiten…</translation>
    </message>
    <message>
        <source>The minimum must not exceed the maximum. Change the other one first.</source>
        <translation>Das Minimum darf das Maximum nicht übersteigen. Ändern Sie zuerst den anderen Wert.</translation>
    </message>
    <message>
        <source>No other role</source>
        <translation>Keine andere Rolle</translation>
    </message>
    <message>
        <source>Ratio to role</source>
        <translation>Verhältnis zu Rolle</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>Ratio is</source>
        <translation>Verhältnis ist</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>Exactly</source>
        <translation>Genau</translation>
    </message>
    <message>
        <source>Aim</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Nearest to current</source>
        <translation>Nah an den aktuellen</translation>
    </message>
    <message>
        <source>Largest sizes</source>
        <translation>Größte Größen</translation>
    </message>
    <message>
        <source>Least change over widths</source>
        <translation>Kleinste Änderung über die Breiten</translation>
    </message>
    <message>
        <source>Size grid</source>
        <translation>Größenraster</translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Slack</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Slack &lt; 500&#xa0;px</source>
        <translation>Luft &lt; 500&#xa0;px</translation>
    </message>
    <message>
        <source>cards are counted from 1 to %1, for example %2</source>
        <translation>Karten werden von 1 bis %1 gezählt, zum Beispiel %2</translation>
    </message>
    <message>
        <source>none</source>
        <comment>cards</comment>
        <translation>keine</translation>
    </message>
    <message>
        <source>Ignored cards</source>
        <translation>Ausgenommene Karten</translation>
    </message>
    <message>
        <source>Wishes, %1, in every variant</source>
        <translation>Vorgaben, %1, in jeder Variante</translation>
    </message>
    <message>
        <source>Wishes, %1</source>
        <translation>Vorgaben, %1</translation>
    </message>
    <message numerus="yes">
        <source>%n character(s) too long</source>
        <translation>
            <numerusform>%n Zeichen zu lang</numerusform>
            <numerusform>%n Zeichen zu lang</numerusform>
        </translation>
    </message>
    <message>
        <source>no room for more characters</source>
        <translation>kein Platz für weitere Zeichen</translation>
    </message>
    <message numerus="yes">
        <source>room for %n more character(s)</source>
        <translation>
            <numerusform>Platz für %n weiteres Zeichen</numerusform>
            <numerusform>Platz für %n weitere Zeichen</numerusform>
        </translation>
    </message>
    <message>
        <source>Wish of at most %1: %2, at %3 viewport width</source>
        <translation>Vorgabe von höchstens %1: %2, bei %3 Viewport-Breite</translation>
    </message>
    <message>
        <source>The text has %1 characters. The fewest characters fit at a viewport width of %2.</source>
        <translation>Der Text hat %1 Zeichen. Am wenigsten Zeichen passen bei einer Viewport-Breite von %2.</translation>
    </message>
    <message>
        <source>Add part</source>
        <translation>Teil hinzufügen</translation>
    </message>
    <message>
        <source>Text tests</source>
        <translation>Texttests</translation>
    </message>
    <message>
        <source>Show the row with other texts, pictures or cards; the project is not changed</source>
        <translation>Zeigt die Reihe mit anderen Texten, Bildern oder Karten; das Projekt ändert sich nicht</translation>
    </message>
    <message>
        <source>Import again…</source>
        <translation>Erneut importieren…</translation>
    </message>
    <message>
        <source>Use Tenter’s markup</source>
        <translation>Markup von Tenter verwenden</translation>
    </message>
    <message numerus="yes">
        <source>This row of %n card(s) is imported from a page. You can edit its text here. To add, move or remove parts, change the page and import the row again.</source>
        <translation>
            <numerusform>Diese Reihe aus %n Karte ist von einer Seite importiert. Ihren Text können Sie hier bearbeiten. Um Teile hinzuzufügen, zu verschieben oder zu entfernen, ändern Sie die Seite und importieren Sie die Reihe erneut.</numerusform>
            <numerusform>Diese Reihe aus %n Karten ist von einer Seite importiert. Ihren Text können Sie hier bearbeiten. Um Teile hinzuzufügen, zu verschieben oder zu entfernen, ändern Sie die Seite und importieren Sie die Reihe erneut.</numerusform>
        </translation>
    </message>
    <message>
        <source>Move %1 up</source>
        <comment>role</comment>
        <translation>%1 nach oben</translation>
    </message>
    <message>
        <source>Move %1 down</source>
        <comment>role</comment>
        <translation>%1 nach unten</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <comment>role</comment>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1 text</source>
        <comment>role</comment>
        <translation>Text: %1</translation>
    </message>
    <message>
        <source>Strong</source>
        <translation>Fett</translation>
    </message>
    <message>
        <source>Emphasis</source>
        <translation>Kursiv</translation>
    </message>
    <message>
        <source>Line break</source>
        <translation>Zeilenumbruch einfügen</translation>
    </message>
    <message>
        <source>Change %1 text</source>
        <comment>role</comment>
        <translation>Text ändern: %1</translation>
    </message>
    <message>
        <source>Room for longer text, %1</source>
        <comment>role</comment>
        <translation>Platz für längeren Text, %1</translation>
    </message>
    <message>
        <source>Link address of the button</source>
        <translation>Linkadresse des Buttons</translation>
    </message>
    <message>
        <source>Accessible name of the button</source>
        <translation>Zugänglicher Name des Buttons</translation>
    </message>
    <message>
        <source>same as its text</source>
        <translation>wie sein Text</translation>
    </message>
    <message>
        <source>Change button link address</source>
        <translation>Linkadresse des Buttons ändern</translation>
    </message>
    <message>
        <source>Change button accessible name</source>
        <translation>Zugänglichen Namen des Buttons ändern</translation>
    </message>
    <message>
        <source>Remove part</source>
        <translation>Teil entfernen</translation>
    </message>
    <message>
        <source>Move part</source>
        <translation>Teil verschieben</translation>
    </message>
    <message>
        <source>Internal error</source>
        <translation>Interner Fehler</translation>
    </message>
    <message>
        <source>Report, without content of your files</source>
        <translation>Bericht, ohne Inhalt Ihrer Dateien</translation>
    </message>
    <message>
        <source>&amp;Copy report</source>
        <translation>Bericht &amp;kopieren</translation>
    </message>
    <message>
        <source>Copied</source>
        <translation>Kopiert</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>&amp;Restore changes</source>
        <translation>Änderungen &amp;wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Discard changes…</source>
        <translation>Änderungen &amp;verwerfen…</translation>
    </message>
    <message>
        <source>No&amp;t now</source>
        <translation>&amp;Jetzt nicht</translation>
    </message>
    <message>
        <source>Thumbnail of the unsaved row</source>
        <translation>Vorschaubild der ungespeicherten Reihe</translation>
    </message>
    <message>
        <source>What can be restored</source>
        <translation>Was wiederhergestellt werden kann</translation>
    </message>
    <message>
        <source>Tenter closed unexpectedly. It kept the unsaved changes of “%1” from %2.</source>
        <translation>Tenter wurde unerwartet beendet. Die ungespeicherten Änderungen an „%1“ von %2 sind erhalten.</translation>
    </message>
    <message>
        <source>This project was never saved.</source>
        <translation>Dieses Projekt wurde nie gespeichert.</translation>
    </message>
    <message numerus="yes">
        <source>%n more can be restored after it.</source>
        <comment>projects</comment>
        <translation>
            <numerusform>%n weiteres kann danach wiederhergestellt werden.</numerusform>
            <numerusform>%n weitere können danach wiederhergestellt werden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Discard unsaved changes</source>
        <translation>Ungespeicherte Änderungen verwerfen</translation>
    </message>
    <message>
        <source>Discard the unsaved changes of “%1”?</source>
        <translation>Die ungespeicherten Änderungen an „%1“ verwerfen?</translation>
    </message>
    <message>
        <source>They cannot be restored after that. The saved file stays as it is.</source>
        <translation>Sie lassen sich danach nicht wiederherstellen. Die gespeicherte Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>&amp;Discard changes</source>
        <translation>Änderungen &amp;verwerfen</translation>
    </message>
    <message>
        <source>Tenter could not finish the last action.</source>
        <translation>Tenter konnte die letzte Aktion nicht beenden.</translation>
    </message>
    <message>
        <source>Your project is open as it was before it, and its changes are kept for the next start. Save the project under another name and start Tenter again. The report helps to fix the error; it has no content of your files.</source>
        <translation>Ihr Projekt ist geöffnet, wie es davor war, und seine Änderungen bleiben für den nächsten Start erhalten. Speichern Sie das Projekt unter einem anderen Namen und starten Sie Tenter neu. Der Bericht hilft, den Fehler zu beheben; er enthält nichts aus Ihren Dateien.</translation>
    </message>
    <message>
        <source>Open the project file instead.</source>
        <translation>Öffnen Sie stattdessen die Projektdatei.</translation>
    </message>
    <message>
        <source>The recovery file cannot be read.</source>
        <translation>Die Wiederherstellungsdatei ist nicht lesbar.</translation>
    </message>
    <message>
        <source>The recovery file is too large.</source>
        <translation>Die Wiederherstellungsdatei ist zu groß.</translation>
    </message>
    <message>
        <source>This is no recovery file.</source>
        <translation>Das ist keine Wiederherstellungsdatei.</translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s)</source>
        <translation>
            <numerusform>%n Karte verschieben</numerusform>
            <numerusform>%n Karten verschieben</numerusform>
        </translation>
    </message>
    <message>
        <source>Select a card, or a part of it, to move it.</source>
        <translation>Wählen Sie eine Karte oder einen Teil davon aus, um sie zu verschieben.</translation>
    </message>
    <message>
        <source>This is the first card.</source>
        <translation>Das ist die erste Karte.</translation>
    </message>
    <message>
        <source>This is the last card.</source>
        <translation>Das ist die letzte Karte.</translation>
    </message>
    <message>
        <source>Duplicate card</source>
        <translation>Karte duplizieren</translation>
    </message>
    <message numerus="yes">
        <source>Duplicate %n card(s)</source>
        <translation>
            <numerusform>%n Karte duplizieren</numerusform>
            <numerusform>%n Karten duplizieren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Remove %n card(s)</source>
        <translation>
            <numerusform>%n Karte entfernen</numerusform>
            <numerusform>%n Karten entfernen</numerusform>
        </translation>
    </message>
    <message>
        <source>This is the first part of its card.</source>
        <translation>Das ist der erste Teil seiner Karte.</translation>
    </message>
    <message>
        <source>This is the last part of its card.</source>
        <translation>Das ist der letzte Teil seiner Karte.</translation>
    </message>
    <message numerus="yes">
        <source>Remove %n part(s)</source>
        <translation>
            <numerusform>%n Teil entfernen</numerusform>
            <numerusform>%n Teile entfernen</numerusform>
        </translation>
    </message>
    <message>
        <source>Drop the card at the line. Escape: leave it where it is.</source>
        <translation>Legen Sie die Karte an der Linie ab. Esc: dort lassen, wo sie ist.</translation>
    </message>
    <message>
        <source>Before card %1</source>
        <translation>Vor Karte %1</translation>
    </message>
    <message>
        <source>After card %1</source>
        <translation>Nach Karte %1</translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) of %1 selected. Settings apply to %2. Delete removes the parts. Alt+Left, Alt+Right and Ctrl+D act on the cards.</source>
        <translation>
            <numerusform>%n Teil von %1 ausgewählt. Einstellungen gelten für %2. Entf entfernt die Teile. Alt+Links, Alt+Rechts und Strg+D wirken auf die Karten.</numerusform>
            <numerusform>%n Teile von %1 ausgewählt. Einstellungen gelten für %2. Entf entfernt die Teile. Alt+Links, Alt+Rechts und Strg+D wirken auf die Karten.</numerusform>
        </translation>
    </message>
    <message>
        <source> and </source>
        <comment>between roles</comment>
        <translation> und </translation>
    </message>
    <message>
        <source>&amp;Show settings</source>
        <translation>Einstellungen &amp;zeigen</translation>
    </message>
    <message>
        <source>Change &amp;picture…</source>
        <translation>&amp;Bild wechseln…</translation>
    </message>
    <message>
        <source>&amp;Edit text</source>
        <translation>Text &amp;bearbeiten</translation>
    </message>
    <message>
        <source>Move part &amp;up</source>
        <translation>Teil nach &amp;oben</translation>
    </message>
    <message>
        <source>Move part d&amp;own</source>
        <translation>Teil nach &amp;unten</translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s) &amp;left</source>
        <translation>
            <numerusform>%n Karte nach &amp;links</numerusform>
            <numerusform>%n Karten nach &amp;links</numerusform>
        </translation>
    </message>
    <message>
        <source>Move card &amp;left</source>
        <translation>Karte nach &amp;links</translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s) &amp;right</source>
        <translation>
            <numerusform>%n Karte nach &amp;rechts</numerusform>
            <numerusform>%n Karten nach &amp;rechts</numerusform>
        </translation>
    </message>
    <message>
        <source>Move card &amp;right</source>
        <translation>Karte nach &amp;rechts</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Duplicate %n card(s)</source>
        <translation>
            <numerusform>%n Karte &amp;duplizieren</numerusform>
            <numerusform>%n Karten &amp;duplizieren</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Duplicate card</source>
        <translation>Karte &amp;duplizieren</translation>
    </message>
    <message numerus="yes">
        <source>Re&amp;move %n card(s)</source>
        <translation>
            <numerusform>%n Karte &amp;entfernen</numerusform>
            <numerusform>%n Karten &amp;entfernen</numerusform>
        </translation>
    </message>
    <message>
        <source>Re&amp;move card</source>
        <translation>Karte &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Add card</source>
        <translation>Karte &amp;hinzufügen</translation>
    </message>
    <message>
        <source>This row is imported from a page. To add, move or remove cards, change the page and import the row again.</source>
        <translation>Diese Reihe ist von einer Seite importiert. Um Karten hinzuzufügen, zu verschieben oder zu entfernen, ändern Sie die Seite und importieren Sie die Reihe erneut.</translation>
    </message>
    <message>
        <source>A text test is shown. End it to change cards.</source>
        <translation>Ein Texttest wird gezeigt. Beenden Sie ihn, um Karten zu ändern.</translation>
    </message>
    <message>
        <source>This is a preview. Apply or discard it to change cards.</source>
        <translation>Das ist eine Vorschau. Übernehmen oder verwerfen Sie sie, um Karten zu ändern.</translation>
    </message>
    <message>
        <source>%1, top</source>
        <translation>%1, oben</translation>
    </message>
    <message>
        <source>%1, right</source>
        <translation>%1, rechts</translation>
    </message>
    <message>
        <source>%1, bottom</source>
        <translation>%1, unten</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1, links</translation>
    </message>
    <message>
        <source>A text test is shown. End it to edit the text.</source>
        <translation>Ein Texttest wird gezeigt. Beenden Sie ihn, um den Text zu bearbeiten.</translation>
    </message>
    <message>
        <source>This is a preview. Apply or discard it to edit the text.</source>
        <translation>Das ist eine Vorschau. Übernehmen oder verwerfen Sie sie, um den Text zu bearbeiten.</translation>
    </message>
    <message>
        <source>Text of %1, in the row</source>
        <translation>Text von %1, in der Reihe</translation>
    </message>
    <message>
        <source>Tab: next text. Ctrl+Enter: done. Escape: restore the text.</source>
        <translation>Tab: nächster Text. Strg+Eingabe: fertig. Esc: Text wiederherstellen.</translation>
    </message>
    <message>
        <source>Text in the row</source>
        <translation>Text in der Reihe</translation>
    </message>
    <message>
        <source>%1 · %2&#xa0;rem</source>
        <translation>%1 · %2&#xa0;rem</translation>
    </message>
    <message>
        <source>%1 characters per line</source>
        <translation>%1 Zeichen je Zeile</translation>
    </message>
    <message>
        <source>%1 of the line width, tight fit</source>
        <translation>%1 der Zeilenbreite, knappe Zeile</translation>
    </message>
    <message>
        <source>%1 of the line width</source>
        <translation>%1 der Zeilenbreite</translation>
    </message>
    <message>
        <source>In %1</source>
        <comment>browser</comment>
        <translation>In %1</translation>
    </message>
    <message>
        <source>%1 uses its own dictionary or font for this text, so its lines may differ.</source>
        <translation>%1 verwendet für diesen Text ein eigenes Wörterbuch oder eine eigene Schrift, daher können seine Zeilen abweichen.</translation>
    </message>
    <message>
        <source>Image</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>%1 × %2 pixels</source>
        <translation>%1 × %2 Pixel</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Pixeldichte</translation>
    </message>
    <message>
        <source>%1 image pixels per CSS px</source>
        <translation>%1 Bildpixel je CSS-px</translation>
    </message>
    <message>
        <source>%1, card %2</source>
        <translation>%1, Karte %2</translation>
    </message>
    <message>
        <source>&amp;Boxes and spacing</source>
        <translation>&amp;Boxen und Abstände</translation>
    </message>
    <message>
        <source>Show boxes with their padding, margins and gaps</source>
        <translation>Boxen mit ihren Innen-, Außen- und Spaltenabständen zeigen</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>&amp;Zeilenlänge</translation>
    </message>
    <message>
        <source>Show the measure, and where the shortest and the longest comfortable line end</source>
        <translation>Die Zeilenlänge zeigen und wo die kürzeste und die längste angenehme Zeile enden</translation>
    </message>
    <message>
        <source>&amp;Tight fits</source>
        <translation>&amp;Knappe Zeilen</translation>
    </message>
    <message>
        <source>Chromium/Firefox &amp;differences</source>
        <translation>&amp;Unterschiede Chromium/Firefox</translation>
    </message>
    <message>
        <source>Mark text that has a different number of lines in Chromium and Firefox</source>
        <translation>Text markieren, der in Chromium und Firefox verschieden viele Zeilen hat</translation>
    </message>
    <message>
        <source>%1 characters</source>
        <translation>%1 Zeichen</translation>
    </message>
    <message>
        <source>slack %1 of the line</source>
        <translation>Luft %1 der Zeile</translation>
    </message>
    <message>
        <source>Row at the current width</source>
        <translation>Reihe bei der aktuellen Breite</translation>
    </message>
    <message>
        <source>&amp;Fit to window</source>
        <translation>Ein&amp;passen</translation>
    </message>
    <message>
        <source>All &amp;variants</source>
        <translation>Alle Va&amp;rianten</translation>
    </message>
    <message>
        <source>Show every variant at this width, to compare their text</source>
        <translation>Jede Variante bei dieser Breite zeigen, um ihren Text zu vergleichen</translation>
    </message>
    <message>
        <source>&amp;Actual size</source>
        <translation>&amp;Originalgröße</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>All variants at the current width</source>
        <translation>Alle Varianten bei der aktuellen Breite</translation>
    </message>
    <message>
        <source>No cards yet. Add a card in the Words panel, or drop pictures here.</source>
        <translation>Noch keine Karten. Fügen Sie im Bedienfeld „Wörter“ eine hinzu, oder legen Sie hier Bilder ab.</translation>
    </message>
    <message>
        <source>This project cannot be read</source>
        <translation>Dieses Projekt ist nicht lesbar</translation>
    </message>
    <message>
        <source>Recent projects</source>
        <translation>Zuletzt geöffnete Projekte</translation>
    </message>
    <message>
        <source>Projects that you save or open will be here.</source>
        <translation>Hier stehen Projekte, die Sie speichern oder öffnen.</translation>
    </message>
    <message>
        <source>Samples to look at and to start from</source>
        <translation>Beispiele zum Ansehen und Weiterverwenden</translation>
    </message>
    <message>
        <source>No samples were found next to the program.</source>
        <translation>Neben dem Programm wurden keine Beispiele gefunden.</translation>
    </message>
    <message>
        <source>A row of cards that holds together at every width</source>
        <translation>Eine Reihe von Karten, die bei jeder Breite stimmt</translation>
    </message>
    <message>
        <source>&amp;New row…</source>
        <translation>&amp;Neue Reihe…</translation>
    </message>
    <message>
        <source>Choose columns and a look, paste your text, drop pictures (Ctrl+N)</source>
        <translation>Spalten und Stil wählen, Text einfügen, Bilder ablegen (Strg+N)</translation>
    </message>
    <message>
        <source>&amp;Open project…</source>
        <translation>Projekt ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Import row from page…</source>
        <translation>Reihe aus Seite &amp;importieren…</translation>
    </message>
    <message>
        <source>Or drop a project, pictures or an HTML page here.</source>
        <translation>Oder legen Sie hier ein Projekt, Bilder oder eine HTML-Seite ab.</translation>
    </message>
    <message>
        <source>Import audience</source>
        <translation>Publikum importieren</translation>
    </message>
    <message>
        <source>Comma-separated values (*.csv *.txt);;All files (*)</source>
        <translation>Kommagetrennte Werte (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>die Datei ist nicht lesbar</translation>
    </message>
    <message>
        <source>choose a CSV file that you may read</source>
        <translation>wählen Sie eine CSV-Datei, die Sie lesen dürfen</translation>
    </message>
    <message>
        <source>The audience was not imported.</source>
        <translation>Das Publikum wurde nicht importiert.</translation>
    </message>
    <message>
        <source>The audience was imported without these lines:</source>
        <translation>Das Publikum wurde ohne diese Zeilen importiert:</translation>
    </message>
    <message>
        <source>Findings are weighted by %1 visits from %2</source>
        <translation>Befunde sind nach %1 Besuchen aus %2 gewichtet</translation>
    </message>
    <message>
        <source>afvolszbhp</source>
        <comment>letters after &amp; in the View menu</comment>
        <translation>esazvgudopr</translation>
    </message>
    <message>
        <source>Line breaks as in %1</source>
        <translation>Zeilenumbruch wie in %1</translation>
    </message>
    <message>
        <source>Shown at %1, the end of the project’s range of widths.</source>
        <translation>Gezeigt bei %1, dem Ende der Breiten des Projekts.</translation>
    </message>
    <message>
        <source>A browser window of %1 at %2 zoom has a viewport of %3.</source>
        <translation>Ein Browserfenster von %1 hat bei %2 Zoom einen Viewport von %3.</translation>
    </message>
    <message>
        <source>Open a project first. Then drop fonts.</source>
        <translation>Öffnen Sie zuerst ein Projekt. Legen Sie dann Schriften ab.</translation>
    </message>
    <message>
        <source>%1 now has this font</source>
        <translation>%1 hat jetzt diese Schrift</translation>
    </message>
    <message>
        <source>Drop a picture on a card, or a .tenter.json file anywhere.</source>
        <translation>Legen Sie ein Bild auf einer Karte ab oder eine .tenter.json-Datei irgendwo.</translation>
    </message>
    <message numerus="yes">
        <source>%n card(s) added. Edit the text in the Words panel.</source>
        <translation>
            <numerusform>%n Karte hinzugefügt. Bearbeiten Sie den Text im Bedienfeld „Wörter“.</numerusform>
            <numerusform>%n Karten hinzugefügt. Bearbeiten Sie den Text im Bedienfeld „Wörter“.</numerusform>
        </translation>
    </message>
    <message>
        <source>Picture placed in card %1.</source>
        <translation>Bild in Karte %1 eingesetzt.</translation>
    </message>
    <message>
        <source>Pictures placed in cards %1 to %2.</source>
        <translation>Bilder in die Karten %1 bis %2 eingesetzt.</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) were not used, because there are no more cards.</source>
        <translation>
            <numerusform>%n Bild wurde nicht verwendet, weil es keine weiteren Karten gibt.</numerusform>
            <numerusform>%n Bilder wurden nicht verwendet, weil es keine weiteren Karten gibt.</numerusform>
        </translation>
    </message>
    <message>
        <source>St&amp;ylesheet…</source>
        <translation>St&amp;ylesheet…</translation>
    </message>
    <message>
        <source>&amp;Page folder…</source>
        <translation>&amp;Seitenordner…</translation>
    </message>
    <message>
        <source>P&amp;ictures…</source>
        <translation>&amp;Bilder…</translation>
    </message>
    <message>
        <source>Spec s&amp;heet…</source>
        <translation>&amp;Datenblatt…</translation>
    </message>
    <message>
        <source>&amp;Design tokens…</source>
        <translation>Design-&amp;Tokens…</translation>
    </message>
    <message>
        <source>Picture of this &amp;view…</source>
        <translation>Bild dieser &amp;Ansicht…</translation>
    </message>
    <message>
        <source>Copy &amp;stylesheet</source>
        <translation>&amp;Stylesheet kopieren</translation>
    </message>
    <message>
        <source>Copy stylesheets of &amp;all variants</source>
        <translation>Stylesheets aller &amp;Varianten kopieren</translation>
    </message>
    <message>
        <source>Copy stylesheet and mar&amp;kup</source>
        <translation>Stylesheet &amp;und Markup kopieren</translation>
    </message>
    <message>
        <source>Copy &amp;class names</source>
        <translation>&amp;Klassennamen kopieren</translation>
    </message>
    <message>
        <source>Copy &amp;font size of selected text</source>
        <translation>Schrift&amp;größe des ausgewählten Textes kopieren</translation>
    </message>
    <message>
        <source>This row keeps the markup of its page, so there is none to copy. Edit › Use Tenter’s markup gives the row markup of its own.</source>
        <translation>Diese Reihe behält das Markup ihrer Seite, daher gibt es keines zu kopieren. Bearbeiten › „Markup von Tenter verwenden“ gibt der Reihe ein eigenes Markup.</translation>
    </message>
    <message>
        <source>The stylesheet was not copied. The imported row has these problems:</source>
        <translation>Das Stylesheet wurde nicht kopiert. Die importierte Reihe hat diese Probleme:</translation>
    </message>
    <message>
        <source>The stylesheet was copied. The imported row has these problems:</source>
        <translation>Das Stylesheet wurde kopiert. Die importierte Reihe hat diese Probleme:</translation>
    </message>
    <message numerus="yes">
        <source>%n variant(s)</source>
        <translation>
            <numerusform>%n Variante</numerusform>
            <numerusform>%n Varianten</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, for the imported row</source>
        <translation>%1, für die importierte Reihe</translation>
    </message>
    <message>
        <source>%1 copied: %2, %3, with the current sizes, not those of the preview</source>
        <translation>%1 kopiert: %2, %3, mit den aktuellen Größen, nicht denen der Vorschau</translation>
    </message>
    <message>
        <source>%1 copied: %2, %3</source>
        <translation>%1 kopiert: %2, %3</translation>
    </message>
    <message>
        <source>Stylesheet</source>
        <translation>Stylesheet</translation>
    </message>
    <message>
        <source>Markup</source>
        <translation>Markup</translation>
    </message>
    <message>
        <source>Stylesheet and markup</source>
        <translation>Stylesheet und Markup</translation>
    </message>
    <message>
        <source>Class names</source>
        <translation>Klassennamen</translation>
    </message>
    <message>
        <source>%1 font size copied: %2</source>
        <translation>Schriftgröße kopiert, %1: %2</translation>
    </message>
    <message>
        <source>Tenter projects (*.tenter.json)</source>
        <translation>Tenter-Projekte (*.tenter.json)</translation>
    </message>
    <message>
        <source>The last one is “%1”.</source>
        <translation>Die letzte ist „%1“.</translation>
    </message>
    <message>
        <source>If you discard them, you lose all changes since the last save.</source>
        <translation>Wenn Sie sie verwerfen, verlieren Sie alle Änderungen seit dem letzten Speichern.</translation>
    </message>
    <message numerus="yes">
        <source>If you discard them, you lose %n change(s).</source>
        <translation>
            <numerusform>Wenn Sie sie verwerfen, verlieren Sie %n Änderung.</numerusform>
            <numerusform>Wenn Sie sie verwerfen, verlieren Sie %n Änderungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>If you discard them, you lose 1 change.</source>
        <translation>Wenn Sie sie verwerfen, verlieren Sie 1 Änderung.</translation>
    </message>
    <message>
        <source>If you discard them, you lose 1 change: “%1”.</source>
        <translation>Wenn Sie sie verwerfen, verlieren Sie 1 Änderung: „%1“.</translation>
    </message>
    <message>
        <source>Open project</source>
        <translation>Projekt öffnen</translation>
    </message>
    <message>
        <source>%1 could not be opened. The current project stays open.</source>
        <translation>%1 konnte nicht geöffnet werden. Das aktuelle Projekt bleibt offen.</translation>
    </message>
    <message>
        <source>%1 could not be opened.</source>
        <translation>%1 konnte nicht geöffnet werden.</translation>
    </message>
    <message>
        <source>Opened %1</source>
        <translation>%1 geöffnet</translation>
    </message>
    <message>
        <source>The sample %1 could not be opened.</source>
        <translation>Das Beispiel %1 konnte nicht geöffnet werden.</translation>
    </message>
    <message>
        <source>This is a copy of the sample. Save it to keep your changes.</source>
        <translation>Das ist eine Kopie des Beispiels. Speichern Sie sie, um Ihre Änderungen zu behalten.</translation>
    </message>
    <message>
        <source>The project could not be saved. The file is unchanged.</source>
        <translation>Das Projekt konnte nicht gespeichert werden. Die Datei ist unverändert.</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>Restored the unsaved changes. Save the project to keep them.</source>
        <translation>Die ungespeicherten Änderungen sind wiederhergestellt. Speichern Sie das Projekt, um sie zu behalten.</translation>
    </message>
    <message>
        <source>File changed</source>
        <translation>Datei geändert</translation>
    </message>
    <message>
        <source>Another program has changed “%1” since you opened or saved it.</source>
        <translation>Ein anderes Programm hat „%1“ geändert, seit Sie die Datei geöffnet oder gespeichert haben.</translation>
    </message>
    <message>
        <source>If you save over it, the changes of the other program are lost.</source>
        <translation>Wenn Sie darüber speichern, gehen die Änderungen des anderen Programms verloren.</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save &amp;over it</source>
        <translation>&amp;Überschreiben</translation>
    </message>
    <message>
        <source>The file %1 was removed or renamed. Saving writes it again.</source>
        <translation>Die Datei %1 wurde entfernt oder umbenannt. Speichern schreibt sie neu.</translation>
    </message>
    <message>
        <source>Another program has changed “%1”.</source>
        <translation>Ein anderes Programm hat „%1“ geändert.</translation>
    </message>
    <message>
        <source>If you load it, Undo restores your version with its unsaved changes.</source>
        <translation>Wenn Sie sie laden, stellt „Rückgängig“ Ihre Fassung mit den ungespeicherten Änderungen wieder her.</translation>
    </message>
    <message>
        <source>If you load it, Undo restores the version from before.</source>
        <translation>Wenn Sie sie laden, stellt „Rückgängig“ die Fassung von vorher wieder her.</translation>
    </message>
    <message>
        <source>&amp;Load it</source>
        <translation>&amp;Laden</translation>
    </message>
    <message>
        <source>Save mine &amp;as…</source>
        <translation>Meine Fassung speichern &amp;unter…</translation>
    </message>
    <message>
        <source>&amp;Keep mine</source>
        <translation>Meine &amp;behalten</translation>
    </message>
    <message>
        <source>Loaded the changed file. Undo restores the version from before.</source>
        <translation>Geänderte Datei geladen. „Rückgängig“ stellt die Fassung von vorher wieder her.</translation>
    </message>
    <message>
        <source>%1 could not be loaded. Your version stays open.</source>
        <translation>%1 konnte nicht geladen werden. Ihre Fassung bleibt offen.</translation>
    </message>
    <message>
        <source>Save project as</source>
        <translation>Projekt speichern unter</translation>
    </message>
    <message>
        <source>The project could not be saved there. No file was overwritten.</source>
        <translation>Das Projekt konnte dort nicht gespeichert werden. Keine Datei wurde überschrieben.</translation>
    </message>
    <message>
        <source>Save the changes to “%1”?</source>
        <translation>Die Änderungen an „%1“ speichern?</translation>
    </message>
    <message>
        <source>This project has never been saved. If you discard it, you lose it.</source>
        <translation>Dieses Projekt wurde nie gespeichert. Wenn Sie es verwerfen, verlieren Sie es.</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>%1 (not saved yet)</source>
        <translation>%1 (noch nicht gespeichert)</translation>
    </message>
    <message>
        <source>Applied: %1. Undo restores the row.</source>
        <translation>Übernommen: %1. „Rückgängig“ stellt die Reihe wieder her.</translation>
    </message>
    <message numerus="yes">
        <source>Row imported from a page: %n card(s)</source>
        <translation>
            <numerusform>Reihe von einer Seite importiert: %n Karte</numerusform>
            <numerusform>Reihe von einer Seite importiert: %n Karten</numerusform>
        </translation>
    </message>
    <message>
        <source>The row has Tenter’s markup now. Undo restores the imported markup.</source>
        <translation>Die Reihe hat jetzt das Markup von Tenter. „Rückgängig“ stellt das importierte Markup wieder her.</translation>
    </message>
    <message>
        <source>Nothing has changed since the project was saved or opened.</source>
        <translation>Seit dem Speichern oder Öffnen des Projekts hat sich nichts geändert.</translation>
    </message>
    <message>
        <source>Revert to saved</source>
        <translation>Zum gespeicherten Stand zurückkehren</translation>
    </message>
    <message>
        <source>The project is as it was saved. Undo restores your changes.</source>
        <translation>Das Projekt ist wieder wie gespeichert. „Rückgängig“ stellt Ihre Änderungen wieder her.</translation>
    </message>
    <message>
        <source>Unsaved changes cannot be kept for a restart.</source>
        <translation>Ungespeicherte Änderungen können für einen Neustart nicht aufbewahrt werden.</translation>
    </message>
    <message>
        <source>Your unsaved changes were kept. You can restore them in the window.</source>
        <translation>Ihre ungespeicherten Änderungen sind erhalten. Sie können sie im Fenster wiederherstellen.</translation>
    </message>
    <message>
        <source>There were no unsaved changes.</source>
        <translation>Es gab keine ungespeicherten Änderungen.</translation>
    </message>
    <message>
        <source>Tenter was ended by an internal error.</source>
        <translation>Tenter wurde durch einen internen Fehler beendet.</translation>
    </message>
    <message>
        <source>The report helps to fix the error; it has no content of your files.</source>
        <translation>Der Bericht hilft, den Fehler zu beheben; er enthält nichts aus Ihren Dateien.</translation>
    </message>
    <message>
        <source>New from sa&amp;mple</source>
        <translation>Neu aus &amp;Beispiel</translation>
    </message>
    <message>
        <source>No samples found</source>
        <translation>Keine Beispiele gefunden</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Re&amp;vert to saved</source>
        <translation>Zum &amp;gespeicherten Stand zurückkehren</translation>
    </message>
    <message>
        <source>Import a&amp;udience…</source>
        <translation>&amp;Publikum importieren…</translation>
    </message>
    <message>
        <source>Stop &amp;weighting by audience</source>
        <translation>Nicht mehr nach Publikum ge&amp;wichten</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>E&amp;xportieren</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>No recent projects</source>
        <translation>Keine zuletzt geöffneten Projekte</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
    <message>
        <source>Undo &amp;list…</source>
        <translation>&amp;Liste der Schritte…</translation>
    </message>
    <message>
        <source>&amp;Solve sizes</source>
        <translation>&amp;Größen berechnen</translation>
    </message>
    <message>
        <source>Use Tenter’s &amp;markup</source>
        <translation>&amp;Markup von Tenter verwenden</translation>
    </message>
    <message>
        <source>Silence &amp;check</source>
        <translation>&amp;Prüfung stummschalten</translation>
    </message>
    <message>
        <source>Select a finding in the list first</source>
        <translation>Wählen Sie zuerst einen Befund in der Liste</translation>
    </message>
    <message>
        <source>&amp;Find setting</source>
        <translation>&amp;Einstellung suchen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Overlays</source>
        <translation>&amp;Einblendungen</translation>
    </message>
    <message>
        <source>&amp;Lanes and plots</source>
        <translation>&amp;Spuren und Diagramme</translation>
    </message>
    <message>
        <source>Axis &amp;scale</source>
        <translation>&amp;Achsenskala</translation>
    </message>
    <message>
        <source>Browser &amp;zoom</source>
        <translation>Browser-&amp;Zoom</translation>
    </message>
    <message>
        <source>Compare with &amp;browser…</source>
        <translation>Mit Browser &amp;vergleichen…</translation>
    </message>
    <message>
        <source>Show previe&amp;w</source>
        <translation>Vorscha&amp;u zeigen</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>Be&amp;dienfelder</translation>
    </message>
    <message>
        <source>&amp;Row</source>
        <translation>&amp;Reihe</translation>
    </message>
    <message>
        <source>&amp;Spacing</source>
        <translation>&amp;Abstände</translation>
    </message>
    <message>
        <source>&amp;Colour</source>
        <translation>&amp;Farbe</translation>
    </message>
    <message>
        <source>&amp;Words</source>
        <translation>&amp;Wörter</translation>
    </message>
    <message>
        <source>&amp;Findings</source>
        <translation>B&amp;efunde</translation>
    </message>
    <message>
        <source>Reset &amp;layout of the window</source>
        <translation>Anordnung des &amp;Fensters zurücksetzen</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>&amp;Next band end</source>
        <translation>&amp;Nächstes Bereichsende</translation>
    </message>
    <message>
        <source>&amp;Previous band end</source>
        <translation>&amp;Voriges Bereichsende</translation>
    </message>
    <message>
        <source>Next Chromium/Firefox &amp;difference</source>
        <translation>Nächster &amp;Unterschied Chromium/Firefox</translation>
    </message>
    <message>
        <source>Previous Chromium/Firefox d&amp;ifference</source>
        <translation>Voriger Unterschied &amp;Chromium/Firefox</translation>
    </message>
    <message>
        <source>Next &amp;wrap point</source>
        <translation>Nächster Umbruch&amp;punkt</translation>
    </message>
    <message>
        <source>Previous wrap p&amp;oint</source>
        <translation>Voriger U&amp;mbruchpunkt</translation>
    </message>
    <message>
        <source>Next &amp;finding</source>
        <translation>Nächster &amp;Befund</translation>
    </message>
    <message>
        <source>Previous findin&amp;g</source>
        <translation>Voriger Be&amp;fund</translation>
    </message>
    <message>
        <source>Wid&amp;er by 1&#xa0;px</source>
        <translation>1&#xa0;px b&amp;reiter</translation>
    </message>
    <message>
        <source>Narrowe&amp;r by 1&#xa0;px</source>
        <translation>1&#xa0;px &amp;schmaler</translation>
    </message>
    <message>
        <source>Wider &amp;by 10&#xa0;px</source>
        <translation>10&#xa0;px bre&amp;iter</translation>
    </message>
    <message>
        <source>N&amp;arrower by 10&#xa0;px</source>
        <translation>10&#xa0;px schm&amp;aler</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>No Chromium/Firefox difference at a wider viewport</source>
        <translation>Bei breiterem Viewport kein Unterschied Chromium/Firefox</translation>
    </message>
    <message>
        <source>No Chromium/Firefox difference at a narrower viewport</source>
        <translation>Bei schmalerem Viewport kein Unterschied Chromium/Firefox</translation>
    </message>
    <message>
        <source>No wrap point at a wider viewport</source>
        <translation>Bei breiterem Viewport kein Umbruchpunkt</translation>
    </message>
    <message>
        <source>No wrap point at a narrower viewport</source>
        <translation>Bei schmalerem Viewport kein Umbruchpunkt</translation>
    </message>
    <message>
        <source>There are no findings</source>
        <translation>Es gibt keine Befunde</translation>
    </message>
    <message>
        <source>This is the last finding</source>
        <translation>Das ist der letzte Befund</translation>
    </message>
    <message>
        <source>This is the first finding</source>
        <translation>Das ist der erste Befund</translation>
    </message>
    <message>
        <source>Problems</source>
        <translation>Probleme</translation>
    </message>
    <message>
        <source>What is wrong, where, and how to fix it</source>
        <translation>Was falsch ist, wo, und wie es zu beheben ist</translation>
    </message>
    <message>
        <source>S&amp;how saved version (hold F2)</source>
        <translation>Gespeicherten Stand zei&amp;gen (F2 halten)</translation>
    </message>
    <message>
        <source>Saved version</source>
        <translation>Gespeicherter Stand</translation>
    </message>
    <message>
        <source>Settings found</source>
        <translation>Gefundene Einstellungen</translation>
    </message>
    <message>
        <source>Find setting</source>
        <translation>Einstellung suchen</translation>
    </message>
    <message>
        <source>Find a setting by its label or another word for it (Ctrl+F)</source>
        <translation>Eine Einstellung nach ihrer Bezeichnung oder einem anderen Wort dafür suchen (Strg+F)</translation>
    </message>
    <message>
        <source>Font problems</source>
        <translation>Schriftprobleme</translation>
    </message>
    <message>
        <source>Row imported from a page</source>
        <translation>Reihe von einer Seite importiert</translation>
    </message>
    <message>
        <source>Markup of the row</source>
        <translation>Markup der Reihe</translation>
    </message>
    <message>
        <source>The stylesheet is for the markup of the imported page. For a stylesheet with Tenter’s own markup, choose Edit › Use Tenter’s markup.</source>
        <translation>Das Stylesheet gilt für das Markup der importierten Seite. Für ein Stylesheet mit dem Markup von Tenter wählen Sie Bearbeiten › Markup von Tenter verwenden.</translation>
    </message>
    <message>
        <source>Text test</source>
        <translation>Texttest</translation>
    </message>
    <message>
        <source>End this text test</source>
        <translation>Diesen Texttest beenden</translation>
    </message>
    <message numerus="yes">
        <source>%n font problem(s)</source>
        <translation>
            <numerusform>%n Schriftproblem</numerusform>
            <numerusform>%n Schriftprobleme</numerusform>
        </translation>
    </message>
    <message>
        <source>Text test: %1</source>
        <translation>Texttest: %1</translation>
    </message>
    <message>
        <source>Last message</source>
        <translation>Letzte Meldung</translation>
    </message>
    <message>
        <source>All variants at this width</source>
        <translation>Alle Varianten bei dieser Breite</translation>
    </message>
    <message>
        <source>Copy stylesheet</source>
        <translation>Stylesheet kopieren</translation>
    </message>
    <message>
        <source>Copy the stylesheet of this variant (Ctrl+Shift+C)</source>
        <translation>Das Stylesheet dieser Variante kopieren (Strg+Umschalt+C)</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>Undo list</source>
        <translation>Liste der Schritte</translation>
    </message>
    <message>
        <source>Choose a step to return to the row as it was after that step.</source>
        <translation>Wählen Sie einen Schritt, um zur Reihe nach diesem Schritt zurückzukehren.</translation>
    </message>
    <message>
        <source>As opened</source>
        <translation>Wie geöffnet</translation>
    </message>
    <message>
        <source>Line breaks as in</source>
        <translation>Zeilenumbruch wie in</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Zoom of the row view</source>
        <translation>Zoom der Reihenansicht</translation>
    </message>
    <message>
        <source>Fit %1</source>
        <translation>Eingepasst %1</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Einpassen</translation>
    </message>
    <message>
        <source>Actual size (Ctrl+0)</source>
        <translation>Originalgröße (Strg+0)</translation>
    </message>
    <message>
        <source>Fit whole cards to the window (Ctrl+9)</source>
        <translation>Ganze Karten ins Fenster einpassen (Strg+9)</translation>
    </message>
    <message numerus="yes">
        <source>%n&#xa0;byte(s)</source>
        <translation>
            <numerusform>%n&#xa0;Byte</numerusform>
            <numerusform>%n&#xa0;Byte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n&#xa0;file(s)</source>
        <translation>
            <numerusform>%n&#xa0;Datei</numerusform>
            <numerusform>%n&#xa0;Dateien</numerusform>
        </translation>
    </message>
    <message>
        <source>At this width 1&#xa0;em is %1. Padding is hatched, margin is not. Small numbers are px.</source>
        <translation>Bei dieser Breite ist 1&#xa0;em %1. Innenabstand ist schraffiert, Außenabstand nicht. Kleine Zahlen sind px.</translation>
    </message>
    <message>
        <source>Here 1&#xa0;em is the root font size, %1. Padding is hatched. Small numbers are px.</source>
        <translation>Hier ist 1&#xa0;em die Schriftgröße der Wurzel, %1. Innenabstand ist schraffiert. Kleine Zahlen sind px.</translation>
    </message>
    <message>
        <source>%1 · %2&#xa0;em</source>
        <translation>%1 · %2&#xa0;em</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>lines, browser</comment>
        <translation>%1, in %2</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>range</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>at %1</source>
        <comment>width</comment>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <comment>widths</comment>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>The chapters “A first session” and “Terms” are in English.</source>
        <translation>Die Kapitel „A first session“ und „Terms“ sind auf Englisch.</translation>
    </message>
    <message>
        <source>columns</source>
        <comment>after a field: Variant with 3 columns</comment>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>none</source>
        <comment>no limit</comment>
        <translation>ohne</translation>
    </message>
    <message>
        <source>Property</source>
        <translation>Eigenschaft</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>From rule</source>
        <translation>Aus Regel</translation>
    </message>
    <message>
        <source>Declarations that were read</source>
        <translation>Gelesene Deklarationen</translation>
    </message>
    <message>
        <source>style attribute</source>
        <translation>style-Attribut</translation>
    </message>
    <message>
        <source>%1, inherited</source>
        <translation>%1, geerbt</translation>
    </message>
    <message>
        <source>Elements</source>
        <translation>Elemente</translation>
    </message>
    <message>
        <source>Declarations</source>
        <translation>Deklarationen</translation>
    </message>
    <message>
        <source>Paste the HTML of a page, or only of its row of cards, or a stylesheet, into the box on the left.

Or open a saved page, or drop one on this window. Then Tenter also reads the stylesheets that were saved with it.</source>
        <translation>Das HTML einer Seite, oder nur das ihrer Kartenreihe, oder ein Stylesheet links in das Feld einfügen.

Oder eine gespeicherte Seite öffnen oder in dieses Fenster ziehen. Dann liest Tenter auch die Stylesheets, die mit ihr gespeichert wurden.</translation>
    </message>
    <message>
        <source>Makes a new project with the settings of the stylesheet and placeholder texts.</source>
        <translation>Legt ein neues Projekt mit den Einstellungen des Stylesheets und mit Platzhaltertexten an.</translation>
    </message>
    <message>
        <source>New project with the settings of the stylesheet. Save it to keep it.</source>
        <translation>Neues Projekt mit den Einstellungen des Stylesheets. Zum Behalten speichern.</translation>
    </message>
    <message>
        <source>Paste the HTML of a page here,
or only of its row of cards,
or a stylesheet</source>
        <translation>Das HTML einer Seite hier einfügen,
oder nur das ihrer Kartenreihe,
oder ein Stylesheet</translation>
    </message>
    <message>
        <source>Pages and stylesheets (*.html *.htm *.xhtml *.css);;All files (*)</source>
        <translation>Seiten und Stylesheets (*.html *.htm *.xhtml *.css);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>A stylesheet has no cards to put into this project.</source>
        <translation>Ein Stylesheet hat keine Karten für dieses Projekt.</translation>
    </message>
    <message>
        <source>Choose “A new project”, or compare it with this project (Edit › Compare with stylesheet…).</source>
        <translation>Wählen Sie „Ein neues Projekt“, oder vergleichen Sie es mit diesem Projekt (Bearbeiten › Mit Stylesheet vergleichen…).</translation>
    </message>
    <message>
        <source>%1 at %2, %3 at %4</source>
        <extracomment>A font size at two viewport widths</extracomment>
        <translation>%1 bei %2, %3 bei %4</translation>
    </message>
    <message>
        <source>Compare with stylesheet</source>
        <translation>Mit Stylesheet vergleichen</translation>
    </message>
    <message>
        <source>For a stylesheet that is live and was changed there. Tenter shows which settings differ from the project. Apply all of them, or some.</source>
        <translation>Für ein Stylesheet, das im Einsatz ist und dort geändert wurde. Tenter zeigt, welche Einstellungen vom Projekt abweichen. Alle oder einige davon lassen sich anwenden.</translation>
    </message>
    <message>
        <source>Style&amp;sheet</source>
        <translation>Style&amp;sheet</translation>
    </message>
    <message>
        <source>&amp;Open stylesheet…</source>
        <translation>Stylesheet &amp;öffnen…</translation>
    </message>
    <message>
        <source>Paste the stylesheet here</source>
        <translation>Das Stylesheet hier einfügen</translation>
    </message>
    <message>
        <source>Stylesheet to compare with</source>
        <translation>Stylesheet zum Vergleichen</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>&amp;Alle auswählen</translation>
    </message>
    <message>
        <source>Select &amp;none</source>
        <translation>&amp;Keine auswählen</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>In the project</source>
        <translation>Im Projekt</translation>
    </message>
    <message>
        <source>In the stylesheet</source>
        <translation>Im Stylesheet</translation>
    </message>
    <message>
        <source>Settings that differ</source>
        <translation>Abweichende Einstellungen</translation>
    </message>
    <message>
        <source>A&amp;pply</source>
        <translation>An&amp;wenden</translation>
    </message>
    <message>
        <source>Apply the selected settings (Ctrl+Enter)</source>
        <translation>Die ausgewählten Einstellungen anwenden (Strg+Enter)</translation>
    </message>
    <message>
        <source>Open stylesheet</source>
        <translation>Stylesheet öffnen</translation>
    </message>
    <message>
        <source>Stylesheets (*.css);;All files (*)</source>
        <translation>Stylesheets (*.css);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The stylesheet has the values of the project.</source>
        <translation>Das Stylesheet hat die Werte des Projekts.</translation>
    </message>
    <message numerus="yes">
        <source>%n setting(s) differ.</source>
        <translation>
            <numerusform>%n Einstellung weicht ab.</numerusform>
            <numerusform>%n Einstellungen weichen ab.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2 selected. You can undo the change.</source>
        <translation>%1 von %2 ausgewählt. Die Änderung lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>Apply settings of stylesheet</source>
        <translation>Einstellungen des Stylesheets anwenden</translation>
    </message>
    <message numerus="yes">
        <source>%n setting(s) of the stylesheet applied</source>
        <translation>
            <numerusform>%n Einstellung des Stylesheets angewandt</numerusform>
            <numerusform>%n Einstellungen des Stylesheets angewandt</numerusform>
        </translation>
    </message>
    <message>
        <source>This is not a regular file.</source>
        <translation>Das ist keine gewöhnliche Datei.</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation>Wählen Sie eine andere Datei.</translation>
    </message>
    <message>
        <source>Compare wit&amp;h stylesheet…</source>
        <translation>Mit Style&amp;sheet vergleichen…</translation>
    </message>
</context>
<context>
    <name>SettingSearch</name>
    <message>
        <source>size at least</source>
        <translation>größe mindestens</translation>
    </message>
    <message>
        <source>size from</source>
        <translation>größe ab</translation>
    </message>
    <message>
        <source>minimum size</source>
        <translation>mindestgröße</translation>
    </message>
    <message>
        <source>least size</source>
        <translation>minimale größe</translation>
    </message>
    <message>
        <source>smallest size</source>
        <translation>kleinste größe</translation>
    </message>
    <message>
        <source>size at most</source>
        <translation>größe höchstens</translation>
    </message>
    <message>
        <source>size to</source>
        <translation>größe bis</translation>
    </message>
    <message>
        <source>maximum size</source>
        <translation>höchstgröße</translation>
    </message>
    <message>
        <source>largest size</source>
        <translation>größte größe</translation>
    </message>
    <message>
        <source>measure at least</source>
        <translation>zeilenlänge mindestens</translation>
    </message>
    <message>
        <source>measure from</source>
        <translation>zeilenlänge ab</translation>
    </message>
    <message>
        <source>minimum measure</source>
        <translation>zeichen je zeile mindestens</translation>
    </message>
    <message>
        <source>measure at most</source>
        <translation>zeilenlänge höchstens</translation>
    </message>
    <message>
        <source>measure to</source>
        <translation>zeilenlänge bis</translation>
    </message>
    <message>
        <source>maximum measure</source>
        <translation>zeichen je zeile höchstens</translation>
    </message>
    <message>
        <source>lines at most</source>
        <translation>zeilen höchstens</translation>
    </message>
    <message>
        <source>lines up to</source>
        <translation>zeilen bis</translation>
    </message>
    <message>
        <source>maximum lines</source>
        <translation>höchstens zeilen</translation>
    </message>
    <message>
        <source>at most lines</source>
        <translation>maximale zeilen</translation>
    </message>
    <message>
        <source>measure</source>
        <translation>zeilenlänge</translation>
    </message>
    <message>
        <source>line length</source>
        <translation>measure</translation>
    </message>
    <message>
        <source>characters per line</source>
        <translation>zeichen je zeile</translation>
    </message>
    <message>
        <source>characters to a line</source>
        <translation>zeichen pro zeile</translation>
    </message>
    <message>
        <source>column gap</source>
        <translation>spaltenabstand</translation>
    </message>
    <message>
        <source>gutter</source>
        <translation>gutter</translation>
    </message>
    <message>
        <source>line height</source>
        <translation>zeilenhöhe</translation>
    </message>
    <message>
        <source>leading</source>
        <translation>zeilenabstand</translation>
    </message>
    <message>
        <source>letter spacing</source>
        <translation>zeichenabstand</translation>
    </message>
    <message>
        <source>tracking</source>
        <translation>laufweite</translation>
    </message>
    <message>
        <source>letter case</source>
        <translation>schreibweise</translation>
    </message>
    <message>
        <source>capitals</source>
        <translation>großbuchstaben</translation>
    </message>
    <message>
        <source>text transform</source>
        <translation>groß- und kleinschreibung</translation>
    </message>
    <message>
        <source>text wrap</source>
        <translation>zeilenumbruch</translation>
    </message>
    <message>
        <source>balanced</source>
        <translation>ausgeglichen</translation>
    </message>
    <message>
        <source>greedy</source>
        <translation>text-wrap</translation>
    </message>
    <message>
        <source>long words</source>
        <translation>lange wörter</translation>
    </message>
    <message>
        <source>overflow wrap</source>
        <translation>overflow-wrap</translation>
    </message>
    <message>
        <source>minimum lines</source>
        <translation>mindestzeilen</translation>
    </message>
    <message>
        <source>keep lines</source>
        <translation>zeilen reservieren</translation>
    </message>
    <message>
        <source>reserve lines</source>
        <translation>zeilen freihalten</translation>
    </message>
    <message>
        <source>grows with</source>
        <translation>wächst mit</translation>
    </message>
    <message>
        <source>follows</source>
        <translation>folgt</translation>
    </message>
    <message>
        <source>container query</source>
        <translation>container query</translation>
    </message>
    <message>
        <source>align parts</source>
        <translation>teile ausrichten</translation>
    </message>
    <message>
        <source>level parts</source>
        <translation>gleiche höhe</translation>
    </message>
    <message>
        <source>subgrid</source>
        <translation>subgrid</translation>
    </message>
    <message>
        <source>alignment</source>
        <translation>ausrichtung</translation>
    </message>
    <message>
        <source>stands at</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>position</source>
        <translation>position</translation>
    </message>
    <message>
        <source>background</source>
        <translation>hintergrund</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>grund</translation>
    </message>
    <message>
        <source>corner radius</source>
        <translation>eckenradius</translation>
    </message>
    <message>
        <source>corners</source>
        <translation>ecken</translation>
    </message>
    <message>
        <source>border radius</source>
        <translation>border-radius</translation>
    </message>
    <message>
        <source>rounded</source>
        <translation>abgerundet</translation>
    </message>
    <message>
        <source>hover</source>
        <translation>hover</translation>
    </message>
    <message>
        <source>under the pointer</source>
        <translation>unter dem mauszeiger</translation>
    </message>
    <message>
        <source>focus ring</source>
        <translation>fokusring</translation>
    </message>
    <message>
        <source>outline</source>
        <translation>outline</translation>
    </message>
    <message>
        <source>offset x</source>
        <translation>versatz x</translation>
    </message>
    <message>
        <source>right by</source>
        <translation>nach rechts</translation>
    </message>
    <message>
        <source>offset y</source>
        <translation>versatz y</translation>
    </message>
    <message>
        <source>down by</source>
        <translation>nach unten</translation>
    </message>
    <message>
        <source>full-bleed picture</source>
        <translation>bild randlos</translation>
    </message>
    <message>
        <source>edge to edge</source>
        <translation>bis zum rand</translation>
    </message>
    <message>
        <source>picture width</source>
        <translation>bildbreite</translation>
    </message>
    <message>
        <source>its share</source>
        <translation>anteil</translation>
    </message>
    <message>
        <source>aspect ratio</source>
        <translation>seitenverhältnis</translation>
    </message>
    <message>
        <source>crop</source>
        <translation>zuschnitt</translation>
    </message>
    <message>
        <source>container</source>
        <translation>container</translation>
    </message>
    <message>
        <source>page container</source>
        <translation>seitencontainer</translation>
    </message>
    <message>
        <source>container background</source>
        <translation>hintergrund des containers</translation>
    </message>
    <message>
        <source>page ground</source>
        <translation>seitenhintergrund</translation>
    </message>
    <message>
        <source>container side padding</source>
        <translation>seitlicher innenabstand des containers</translation>
    </message>
    <message>
        <source>page sides</source>
        <translation>seitenränder</translation>
    </message>
    <message>
        <source>solver: slack &lt;</source>
        <translation>berechnung: luft &lt;</translation>
    </message>
    <message>
        <source>slack below</source>
        <translation>luft unter</translation>
    </message>
    <message>
        <source>container </source>
        <translation>container</translation>
    </message>
    <message>
        <source>page </source>
        <translation>seite</translation>
    </message>
    <message>
        <source>maximum width</source>
        <translation>höchstbreite</translation>
    </message>
    <message>
        <source>widest</source>
        <translation>maximale breite</translation>
    </message>
    <message>
        <source>max-width</source>
        <translation>max-width</translation>
    </message>
    <message>
        <source>container maximum width</source>
        <translation>höchstbreite des containers</translation>
    </message>
    <message>
        <source>container widest</source>
        <translation>maximale breite des containers</translation>
    </message>
    <message>
        <source>side padding</source>
        <translation>seitlich innen</translation>
    </message>
    <message>
        <source>sides</source>
        <translation>seiten</translation>
    </message>
    <message>
        <source>theme root size</source>
        <translation>wurzelgröße</translation>
    </message>
    <message>
        <source>theme’s root</source>
        <translation>schriftgröße des themes</translation>
    </message>
    <message>
        <source>rem</source>
        <translation>rem</translation>
    </message>
    <message>
        <source>reader text size</source>
        <translation>textgröße der leser</translation>
    </message>
    <message>
        <source>reader’s size</source>
        <translation>browser-schriftgröße</translation>
    </message>
    <message>
        <source>smallest viewport width</source>
        <translation>kleinste viewport-breite</translation>
    </message>
    <message>
        <source>preview from</source>
        <translation>vorschau ab</translation>
    </message>
    <message>
        <source>widths from</source>
        <translation>breiten ab</translation>
    </message>
    <message>
        <source>checked range</source>
        <translation>geprüfte breiten</translation>
    </message>
    <message>
        <source>largest viewport width</source>
        <translation>größte viewport-breite</translation>
    </message>
    <message>
        <source>preview to</source>
        <translation>vorschau bis</translation>
    </message>
    <message>
        <source>widths to</source>
        <translation>breiten bis</translation>
    </message>
    <message>
        <source>class prefix</source>
        <translation>klassenpräfix</translation>
    </message>
    <message>
        <source>row name</source>
        <translation>name der reihe</translation>
    </message>
    <message>
        <source>double at zoom</source>
        <translation>doppelt bei zoom</translation>
    </message>
    <message>
        <source>zoom for 2×</source>
        <translation>zoom für 2×</translation>
    </message>
    <message>
        <source>wish: ratio to role</source>
        <translation>vorgabe: verhältnis zu rolle</translation>
    </message>
    <message>
        <source>wish: factor</source>
        <translation>vorgabe: faktor</translation>
    </message>
    <message>
        <source>solver: reserve</source>
        <translation>berechnung: reserve</translation>
    </message>
    <message>
        <source>room for longer text</source>
        <translation>platz für längeren text</translation>
    </message>
    <message>
        <source>viewport width for all sizes</source>
        <translation>alle größen nach viewport-breite</translation>
    </message>
    <message>
        <source>page width for all sizes</source>
        <translation>alle größen nach seitenbreite</translation>
    </message>
    <message>
        <source>longest heading</source>
        <translation>längste überschrift</translation>
    </message>
    <message>
        <source>longest title</source>
        <translation>längster titel</translation>
    </message>
    <message>
        <source>size unit</source>
        <translation>einheit der größen</translation>
    </message>
    <message>
        <source>sizes in</source>
        <translation>größen in</translation>
    </message>
    <message>
        <source>text of a card</source>
        <translation>text einer karte</translation>
    </message>
    <message>
        <source>copy of a card</source>
        <translation>inhalt einer karte</translation>
    </message>
    <message>
        <source>link address</source>
        <translation>linkadresse</translation>
    </message>
    <message>
        <source>leads to</source>
        <translation>führt zu</translation>
    </message>
    <message>
        <source>accessible name</source>
        <translation>zugänglicher name</translation>
    </message>
    <message>
        <source>read out as</source>
        <translation>vorgelesen als</translation>
    </message>
    <message>
        <source>text tests</source>
        <translation>texttests</translation>
    </message>
    <message>
        <source>try the row with</source>
        <translation>reihe testen</translation>
    </message>
    <message>
        <source>breakpoint</source>
        <translation>breakpoint</translation>
    </message>
    <message>
        <source>media query</source>
        <translation>media query</translation>
    </message>
</context>
</TS>
