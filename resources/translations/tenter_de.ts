<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>QComboBoxListView</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Table with %n row(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Visits at each viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1: %n visit(s), %2 of all visits</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of all visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show data as &amp;table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Viewport width axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a breakpoint to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrap points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each tick marks one change of a line count. Ticks of the selected text are longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The widths at which each finding occurs. A thicker line is a more severe finding. Click a line to show the finding.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audience</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of visits at each viewport width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chromium/Firefox</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The widths at which some text has a different number of lines in Chromium and Firefox.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chromium/Firefox differences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumbnails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at key widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Small pictures of the row at the ends of the range, on both sides of each breakpoint and at the worst finding. Click one to go to its width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the ends of a ramp to change it. Sizes in hatched areas do not satisfy a wish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dashed lines mark the comfortable range: 45 to 75 characters in one column, 40 to 50 in several columns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The height of each card at each viewport width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plot shows the width and height of the slot at each viewport width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result of the last comparison with a browser. A thin line: the browser agrees with Tenter at this width. A bar: it differs. A taller bar is a larger difference.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comparison with browser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Viewport widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move breakpoint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakpoint at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakpoint at %1. Drag to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakpoint %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not compared at this width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2&#xa0;rem · %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Data of lanes and plots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lane or plot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Data</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No differences in line count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings at each viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure at each viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>card %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cards 1–%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Whole range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Equal room for each band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font size of each role at each viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change font size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change font size of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 at viewport width %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Drag to change the ramp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card height at each viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture size at each viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slot height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slot width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakpoints of the theme: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ends of page ranges: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakpoint of the theme at %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of a page range: the page changes above %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>theme</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumbnails at key widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n wrap point(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more change(s) at this width</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Lines below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines above</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n more change(s)</source>
        <comment>of line counts</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No wrap points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No browser was found. Install Chromium (sudo apt install chromium) or Firefox (sudo apt install firefox-esr), then choose Search again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 did not respond for %n second(s) and was stopped. Try again when the computer is less busy.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No free network port was found on this computer to show the page to %1. Try again later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be started: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temporary folder for %1 could not be created. Free some disk space and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 closed before it was finished.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its last message: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not measure the page: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show &amp;details…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check of the imported row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Check in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the imported row at every viewport width, on its page %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with browser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A browser on this computer lays out the row at every width, in the background and without network access. Tenter compares the result with its own layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widths compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row has changed since this comparison. Compare again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Differences from Tenter (select one to show it in the row)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Differences from Tenter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Browser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page for the comparison</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In saved page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row on an empty page, in the container set in this project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row in a saved copy of its page, with the theme CSS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open saved page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages (*.html *.htm *.xhtml);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each part counts once at each width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts that differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part differs if its line count differs, if its box differs by more than 0.5&#xa0;px, or if its font size differs by more than 0.01&#xa0;px (0.02&#xa0;px in Firefox).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tight fits with other line counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are not counted as parts that differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest box difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest difference of a position, width or height, and where it occurs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest font size difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest difference between the font sizes of a part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 at %n width(s)</source>
        <comment>number of parts</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 at viewport width %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sent a result that cannot be understood: the number of widths is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sent a result that cannot be understood: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 laid out the page %2 wide instead of %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page for the comparison could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n card(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>left edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width</source>
        <comment>of a box</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height</source>
        <comment>of a box</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>row</source>
        <comment>place of a difference</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2, %3 in Tenter</source>
        <comment>measured, browser, computed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 (slack %3)</source>
        <comment>place, line counts</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: font size %2</source>
        <comment>place, sizes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: missing in %2</source>
        <comment>place, browser</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: only in %2, not in Tenter</source>
        <comment>place, browser</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is starting…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No width was compared with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at all %n width(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at %n width(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at %n width(s) so far</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 differs from Tenter at %2 of %n width(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 differs from Tenter at %2 of %n width(s) so far</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of the parts agree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 agrees with Tenter</source>
        <comment>width, browser</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 differs from Tenter</source>
        <comment>width, browser</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and further differences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest box difference: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n tight fit(s) with another line count (not counted as a difference)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) not compared: %1 uses its own dictionary or font</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The row has changed since this comparison.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter a whole number from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter a number from %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>number in units</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, or %2</source>
        <comment>number or keyword</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On or off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter #rgb, #rrggbb, #rrggbbaa (aa is the opacity) or transparent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, choose</source>
        <comment>button beside the field of a colour</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter #rgb, #rrggbb, #rrggbbaa or transparent; the value stays %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Link</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Link address (leave empty to remove the link):</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1&#xa0;px at a width of %2&#xa0;px, %3&#xa0;px at a width of %4&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Separate families by commas. The first one that is available is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Separate families by commas.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band: a range of viewport widths between two breakpoints, with its own columns, spacing and sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ramp: a font size that changes in a straight line between two widths and is constant outside them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: a condition that Solve sizes must satisfy, such as “heading in at most 2 lines”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant: the same cards with another column count, its own class and its own sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slack: the smallest change of the text width, as a share of that width, that moves a line break; below 0.25&#xa0;% another browser may break the line differently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tight fit: a line with less than 0.25&#xa0;% slack; another browser may break it differently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrap point: a viewport width at which the line count of a text changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway: the range in which a value can change while all wishes stay satisfied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure: the number of characters on a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot: the box that a picture fills in the layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; the value stays %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Reset to inherited value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; the value stays “%2”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file does not exist any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the picture or the font again, or remove it from the project.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file could not be copied here: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save into a folder that you may write to, on a disk with enough space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restore unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load changed file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project is too large to be opened again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorten its texts or the theme CSS of the imported row. The largest file is %1 MB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy files into project folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the saved page cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check that the file still exists and that you may read it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New paragraph</source>
        <comment>text of a new part</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New %1</source>
        <comment>text of a new part; its role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: this file cannot be read as a font. Choose a TTF, OTF, WOFF or WOFF2 file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add font %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be read as a picture. Use a PNG, JPEG or WebP file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop the picture on a card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card %1 of the imported row has no picture. Add one in the page, then import the row again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last line of cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maximum width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full-bleed picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole card is a link</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aspect ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shadow offset x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shadow offset y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Background</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Padding top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Padding right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Padding bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Padding left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Border colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Border width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shadow colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shadow blur</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shadow spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hover colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hover background</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hover border colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Focus colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Focus width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Focus offset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Word spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hyphens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grows with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text align</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text wrap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minimum lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alignment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakpoint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn on “Full-bleed picture”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“Align parts”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“On”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“Off”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“At start”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“Viewport width”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“Smallest viewport width” must be smaller than “Largest viewport width”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the variant “%2”</source>
        <comment>setting in quotes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in the band %2 of the variant “%3”</source>
        <comment>setting in quotes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>A card can have at most %n part(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A variant can have at most %n band(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A project can have at most %n card(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A project can have at most %n variant(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>A project can have at most %1 %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The size of the picture in card %1 is not known, so it cannot be shown at its own ratio. Choose the picture file again, or set another aspect ratio.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>role and setting: Heading font size</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 columns</source>
        <comment>list of column counts</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n card(s); variants: %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Heading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kicker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1&#xa0;%</source>
        <comment>percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, card %2</source>
        <comment>part</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n column(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>widths, columns</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the variant “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the band %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest heading in every card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shortest heading in every card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One card fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A role name has lower-case letters, digits and hyphens, and starts with a letter. It cannot be card, picture or row, or start with x-.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>class %1, %2</source>
        <comment>class of a variant, its columns</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a folder to write to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file to write to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The path must be complete. Choose the folder with the button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a file of this name. Choose a folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a folder of this name. Choose a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such folder. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This folder is read-only. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File being written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Complete so far: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will be written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stylesheet of the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page around the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rules of the fonts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>font</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without the font %1: it %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fonts are included if their files allow it. Check their licences before you publish them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export page folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes the row as a page with its stylesheet, pictures and fonts. The page opens from disk and requests nothing else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Content</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Include &amp;fonts that allow it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut to their slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied as they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut: up to four files of each picture, for screens with 1, 2 and 3 device pixels per CSS px. None is enlarged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fonts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>replaced</source>
        <comment>file</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new</source>
        <comment>file</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written</source>
        <comment>file</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture file “%1” cannot be read; an empty place with its name is shown instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export picture of this view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes the row at the current viewport width as a picture, as a browser would draw it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG, 1×</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG, 2×</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SVG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One pixel per CSS px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two pixels per CSS px, for sharp screens and print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vector, with text as outlines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has too few pixels for screens with 2 device pixels per CSS px. Use a file of at least %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every viewport width counts the same. Import an audience for widths that suit your visitors.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cuts each picture to the sizes that the row needs at all viewport widths, and gives the markup that lets browsers load the right one. Your own pictures do not change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;markup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files for the variant that the window shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files that serve all variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files for each picture and format</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With more files, browsers load fewer pixels than they do not show. Four are enough for most rows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual for each format</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quality</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 100; not used for PNG. Usual: 80 for JPEG, 78 for WebP, 58 for AVIF. A lower quality gives smaller files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Path from the project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address on the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Address of the folder in the copied markup, such as /media/.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Formats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files for &amp;each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quality</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Address on the site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose at least one format.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>will be replaced</source>
        <comment>file</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to date</source>
        <comment>file</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row has no pictures. Add some in the Pictures panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No picture of the row can be cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was up to date</source>
        <comment>file</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font sizes in rem</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font sizes in px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font sizes follow the width that the project sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font sizes follow the viewport width, in vw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font sizes follow the card width, in cqi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Custom &amp;properties on the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values are custom properties on the row; media queries set only these.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cascade &amp;layer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All rules are in a layer with the name of the row. Rules of a theme that are in no layer override them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;mments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comments say what each band and each font size is for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mi&amp;nified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No comments, line breaks or spaces that change nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fallback fonts for &amp;late web fonts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Installed fonts with the widths and heights of the web fonts, for the time until these have loaded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes grow with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is not enough memory for the spec sheet. Choose one variant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export spec sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write spec sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes the row at its key widths, its sizes, spacing and picture slots, and the findings, for the client and for whoever maintains the row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spec sheets (*.html *.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HTML</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF, A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF, Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One file that needs no other file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tagged PDF, 210 × 297 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tagged PDF, 8.5 × 11 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minified %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export stylesheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write stylesheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes the CSS of the row to a file, or copies it to paste into a site. Every form lays out the same row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSS (*.css)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy stylesheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export design tokens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write design tokens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes sizes, typography, spacing and colours as JSON, in the Design Tokens Format 2025.10, for design programs and style guides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Design tokens (*.tokens.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dimensions in px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dimensions in rem: multiples of 16 px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n token(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks cover part of WCAG 2.2 only. &lt;a href=&quot;more&quot;&gt;Read more&lt;/a&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Basis: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n error(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n note(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No errors at any width %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No warnings at any width %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No notes at any width %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show or hide the findings (Alt+7)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter findings by severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking every width %1…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No findings at any width %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One check is silenced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n check(s) are silenced.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Trying remedies…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter found no remedy for this finding.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remedies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Silence check “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter hides all findings of the check “%1” in this project.
Reason (saved in the project, for others who work on it later):</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Silence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Silence check “%1”…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop silencing check “%1” (reason: %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop silencing check “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All affected widths: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Tenter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tenter is a frame that stretches cloth to an even width. Tenter does the same with a row of cards: it computes the row at every viewport width and writes the stylesheet for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom: text that grows with the viewport grows less than the browser zoom. Such text can fail WCAG 2.2 SC 1.4.4, which requires that text can be enlarged to 200&#xa0;%. Keep the largest size of a ramp at most 2.5 times the smallest. Test the published page at 200&#xa0;% and 400&#xa0;% zoom, with the keyboard and with a screen reader.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter is free software under the GNU General Public License, version 3 or later (GPL-3.0-or-later). It has no warranty. It uses these libraries:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Libraries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Library</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Licence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What’s this?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keyboard shortcuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Tenter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the window, plots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaping of text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line breaks, letter case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlines of glyphs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>files of font families</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pictures, PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>linear programmes of Solve sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutting of pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>project files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HTML of imported pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Markdown of a new row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WOFF2 fonts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WOFF fonts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keyboard shortcuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find in the manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step; with Shift 10 steps, with Alt a tenth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Escape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restore the value from before typing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete the whole text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reset to inherited value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next, previous card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous, next part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter on a text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit it there, as a double click does</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+Left, Alt+Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the selected card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+Up, Alt+Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the selected part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the selected part or card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+click, Shift+click</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select several parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Menu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show what can be done with the selected part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restore what a drag has changed, or end the selection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+B, Ctrl+I, Ctrl+K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong, emphasis, link</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restore the text from before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move its part up, down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove its part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the width axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wider, narrower by 1&#xa0;px; with Shift by 10&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Up, Page Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous, next band end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest, largest width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the width where the finding is worst, and mark its part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns on wide screens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Direction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left to right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right to left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Direction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Format of the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guess format</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plain lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Markdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview at a viewport width of %1&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview of the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cards that Tenter finds in the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter sets breakpoints, font sizes and spacing. You can change everything afterwards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Create &amp;row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Create the row (Ctrl+Enter)</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>New row with %n card(s). Save it to keep it.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Remove pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Choose pictures…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.webp);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <comment>pictures</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Drop pictures on this window: one for each card, in their order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of the cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste the text of your cards here: plain lines, Markdown, HTML, or rows of a spreadsheet.

Heading of the first card
Its text, one or more lines
Label of its button

Heading of the second card
…

Without text, the row has example text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards as the text was understood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards of the row and their parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>and %n more card(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Element</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;This project, which has no cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;This project: replace its card and its text</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>&amp;This project: replace its %n card(s) and their text</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Import row from page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a row of cards that is already on a page. Tenter leaves its HTML unchanged and writes a stylesheet for it. Tenter runs no scripts of the page and loads nothing from the network.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Guess again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard the roles, selectors and theme CSS that you set, and guess them again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No page yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste the HTML of a page, or only of its row of cards, into the box on the left.

Or open a saved page, or drop one on this window. Then Tenter also reads the stylesheets that were saved with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import this row (Ctrl+Enter)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A &amp;new project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import into:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makes a new project with the columns, breakpoints, sizes, spacing and colours of the page. The list says what a project cannot hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You can undo the import.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>New project with the row of the page: %n card(s). Save it to keep it.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The browser lays out the page at every whole viewport width, without scripts and without network access. Tenter reads the position and width of the container and the root font size. Where they differ from the CSS as Tenter reads it, the report says so and Tenter imports the measured values.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the browser and import what the CSS says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State of the measuring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Measure container and root size (no browser is installed)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Measure container and root size in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lays out the page at every width…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why no row was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>such as .walk, then press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selector of the cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Problem with the selector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Selector of the cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No row to import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This page cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste the HTML of a page here,
or only of its row of cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HTML of the page, or only of its row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open saved page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page that was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste HTML instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pasted text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: this file cannot be read. Check that it exists and that you may read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not a selector. Write one, such as .walk-title.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Selector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selected element</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role of the selected element, in every card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selector of all elements with this role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Problem with the last change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select an element in the tree or in the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no selector without a role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty: the element with the variant’s class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New role…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the role in lower-case letters, such as kicker or price:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elements of the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Theme CSS that applies to the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste the CSS of the page’s theme, or write the rules that apply to the row, such as:
html { font-size: 62.5% }  a { color: #064; text-decoration: underline }</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Theme CSS that applies to the row: none yet. Paste or write it here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Theme CSS that applies to the row, %1, typed by you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Theme CSS that applies to the row, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removes %1:</source>
        <comment>severity of a finding</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adds %1:</source>
        <comment>severity of a finding</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widens %1:</source>
        <comment>severity of a finding</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, at %3:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, was %2</source>
        <comment>sizes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, unchanged</source>
        <comment>size</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes in px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wide end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes before and after, their limits and their findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add breakpoint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakpoints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns, %1</source>
        <comment>widths of a band</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>column(s)</source>
        <comment>after their number</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Remove band, %1</source>
        <comment>widths of a band</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove this band. The next narrower band then covers its widths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove this band. The next wider band then covers its widths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add breakpoint at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is already a breakpoint at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use %1 in all bands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move card one place earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move card one place later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add card after this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Classes for the elements of your page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stylesheet reaches only elements with these classes. Enter them in your CMS, or copy the markup (Export › Copy markup), which has them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a class to copy it without the dot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy class names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class names copied: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class name copied: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Border</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Focus ring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shadow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>section and setting: Border width</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>text on background</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on hover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blur</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passes for text of any size (WCAG 2.2 SC 1.4.3, at AAA 1.4.6)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passes for text of any size (WCAG 2.2 SC 1.4.3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passes at %1, which is large text (WCAG 2.2 SC 1.4.3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too low at %1: needs %2, or text of at least %3 (%4 if bold; WCAG 2.2 SC 1.4.3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too low for text of any size: needs %1 (WCAG 2.2 SC 1.4.3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Focal point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This point stays visible when the slot crops the picture. Click to set it, or use the arrow keys.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the left, %2 from the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file cannot be read as a picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway of the breakpoint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change breakpoint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway of the column gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change column gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card padding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway of the card padding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change card padding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway of the row width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change row width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway in the band %1 at the current sizes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A variant with one band has no breakpoint.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One column has no gap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row width of this band is a keyword, so it has no leeway.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This band is outside the project’s range of widths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apply %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3/2 or own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width/height of every slot, such as 3/2; own: each picture keeps its own ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter width/height, such as 3/2, or own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alternative text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty for a decorative picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files to upload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For every picture the file that fills its slot at all viewport widths, in all variants, on screens with 2 device pixels per CSS px.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size of pictures, pixels, resolution, too small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change alternative text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move focal point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.webp *.avif)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No picture is too small.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 pictures are too small.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sizes of %1 of %2 pictures are not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This card has no picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The row has no cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 image pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot at this width: %1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Image pixels per CSS px: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reset %1</source>
        <comment>setting</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grows with width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste size…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste a font size as CSS: a value, a declaration or a rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at a width of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the smaller width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at the smaller width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the larger width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at the larger width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: fixed or growing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centred</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway of a breakpoint, gap, padding or width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row padding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Padding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter another class; a variant of this row has it already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class names of the elements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CMS classes, CSS class, copy classes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Container width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Container maximum width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side padding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Container side padding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Container background</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scrollbar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scrollbar width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scrollbar always visible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Always visible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Theme root size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reader text size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest viewport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest viewport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Project name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class prefix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enter a language tag, such as en, pt-BR or zh-Hant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing direction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heading level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>setting</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use card width for all sizes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use viewport width for all sizes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One ramp per role that follows the card width, for every column count. You see a preview before you apply it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ramps that follow the viewport width, one per role and band. You see a preview before you apply them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes cannot follow the card width here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use card width for all sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apply sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use viewport width for all sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each band gets its own ramps, which follow the viewport width. Cards are no longer size containers. If you change the column count later, solve the sizes again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of columns. More columns make every card narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The width of the row inside its container.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest width of the row. On wider pages the row does not grow any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space between columns. A wider gap makes every card narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space between lines of cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The position of the cards in a last line that is not full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starts the same part of neighbouring cards at the same height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space inside the edges of the row. Padding at the sides makes every card narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour behind the cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places the picture above the text or beside it. Beside it, the text is narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The width of a picture beside the text, as a share of the card. The text has the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture covers the padding of the card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A click anywhere on the card follows the link of its button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space inside the edges of a card. Padding at the sides makes its text narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the card behind its text. Contrast is computed with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the line around a card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The width of the line around a card. It takes room from the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the corners of a card are rounded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the shadow under a card, with its opacity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the shadow is moved to the right; negative: to the left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the shadow is moved down; negative: up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How soft the edge of the shadow is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much larger than the card the shadow is; negative: smaller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width to height of the slots of all pictures. Pictures of other ratios are cropped around their focal point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the corners of pictures are rounded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space around a picture. Space at the sides makes its slot narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The font families. The first one that is available is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weight of the font: 400 is regular, 700 is bold. Bold text is wider.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upright or italic letters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows the text in capitals without changing it. Capitals are wider.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The font size: the same at every width, or a ramp, which changes in a straight line between two widths and is constant outside them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the font size follows the viewport width or the width of the card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The distance between lines, as a multiple of the font size or as a length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space added after every letter. It makes lines hold fewer characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space added to every space between words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The side at which lines start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Balanced: lines of similar length, in as many lines as without.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happens to a word that is wider than its line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether words may break at the soft hyphens in the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserves the height of this number of lines, so that shorter texts take as much space.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the box of the text is across the card. Full width: it has the width of the card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the letters. Contrast is computed with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour behind the text. A role with a background is drawn as a button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the line around the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The width of the line around the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the corners of the background are rounded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the letters under the pointer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the background under the pointer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the border under the pointer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the ring around a link or button that has the keyboard focus.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The width of the focus ring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space between the part and its focus ring; negative: inside the part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space around the text. Space at the sides makes its lines shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space inside the background and border of the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The purpose of the variant, such as Home page. Tenter shows it instead of the class. A column count alone is not shown, because the bands have column counts, too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class of the row in this variant. The stylesheet applies to the element with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The width of the container: the element of the page that contains the row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest width of the container.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The left and right padding of the container.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour of the page behind the row. Contrast is computed with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part of the viewport width that the scrollbar covers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scrollbar takes its room on short pages, too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The font size that the theme gives to the root element: 1&#xa0;rem.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text size that the reader has set in the browser; 16&#xa0;px unless changed. It is for the preview only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The smallest viewport width that Tenter shows, checks and solves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest viewport width that Tenter shows, checks and solves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name of the project, shown on the start page and in the spec sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class names of the parts start with it, such as season in .season-card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The language of the text. It decides about line breaks and quotation marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The direction of the text. Right to left also mirrors the order of the cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The level of the headings of the cards in the outline of the page: h1 to h6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The unit of font sizes in the stylesheet. Sizes in rem grow with the reader’s text size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes: widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The viewport widths that the wishes below are for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes: above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wishes hold above this viewport width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes: up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wishes hold up to this viewport width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: lines at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest number of lines that a text of this role may have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: measure at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The smallest number of characters on a line, in texts of three lines or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: measure at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest number of characters on a line, in texts of three lines or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: size at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The smallest font size of this role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: size at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest font size of this role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: ratio to role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The role whose size the ratio multiplies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The size of this role as a multiple of the size of the other role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: ratio is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the ratio is the smallest one or exactly the one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked: Solve sizes does not change the sizes of this role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: growth at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The largest growth per 100&#xa0;px of viewport width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: narrower column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No growth: the text does not grow where its column narrows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: double at zoom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The browser zoom at which the text is twice as large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: breakpoints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the sizes on both sides of a breakpoint are related.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish: variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same size: at each width every variant has the same size. All variants are solved together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solver: aim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which of all sizes that satisfy the wishes are chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solver: size grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The end sizes of ramps are multiples of this length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solver: reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space for longer text, such as a translation, without another line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solver: slack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This share of each line stays free, so that another browser does not add a line. Slack is the smallest change of the text width that moves a line break.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solver: slack &lt; 500&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same at viewport widths below 500&#xa0;px.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A breakpoint is a viewport width at which the columns change. Between two breakpoints is a band: a range of widths with its own columns, spacing and sizes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leeway: the range in which a value can change while all wishes stay satisfied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space inside the edges. Padding at the sides makes what is inside narrower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The space around a part. Margins do not collapse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class that each element of your page needs, so that the stylesheet applies to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A variant has the same cards with another column count, its own class and its own sizes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makes the font sizes of all roles follow the width of the card, or the viewport width, and keeps the sizes that they have now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solve sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computes font sizes that satisfy every wish at every width, as near to the current sizes as possible. The sizes are shown as a preview first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of a card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The texts, pictures and buttons of the selected card. The layout follows each letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Link address</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The address that the button leads to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accessible name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What screen readers read in place of the text of the button. It must contain that text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer text, longest heading, no pictures, one more card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows the row with other texts, pictures or cards. The project is not changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file of the picture. It stays where it is; the project has its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What screen readers read in place of the picture; empty for a decorative picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The point of the picture that stays visible when its slot has another ratio.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solver: ignored cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The numbers of the cards that the wishes do not apply to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inherited from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>default value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use in all variants and bands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use in all bands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Applies to %1 only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some variants or bands have another value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some bands have another value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the other values of this setting from variants and bands. You can undo it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the other values of this setting from the bands of this variant. You can undo it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part or role to edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit scope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edits apply to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: nothing in this row has this setting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apply size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A font size as CSS: a value, a declaration or a rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the pasted size means</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the text is too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paste only the rule that sets the size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exact: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approximate: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste %1 size</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sizes satisfy this wish:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sizes satisfy these wishes together:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview (F4)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings that come and go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solving sizes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop solving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the row with the solved sizes; off: with the current sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finds sizes that satisfy every wish at every width, in Chromium and Firefox. You see a preview before you apply them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings: comparing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The current sizes satisfy every wish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apply: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a wish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No part uses this role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Italic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uppercase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capitalise words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font size in the stylesheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Normal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Balanced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overflow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Break anywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soft hyphens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the card’s content</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at this width</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n more error(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer error(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more warning(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer warning(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more note(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer note(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>same findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run all tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings with: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows next to each test how many findings it adds or removes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File to upload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Present file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upload %1</source>
        <comment>size of a file</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High-density screens need %1 image pixels per CSS px.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This picture is too small: %1. It looks soft on high-density screens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This picture is large enough: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture and its size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upload, px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, too small</source>
        <comment>size of a picture</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card %1, %2, %3, upload %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant with this many columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adds the same cards with this many columns. Narrower bands get fewer columns, down to one. The sizes satisfy the wishes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove variant %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added the variant %1 with %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its sizes satisfy the wishes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its sizes are derived from the variant %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it must start with a letter and have only letters, digits, - and _</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at every width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More wishes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Growth at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrower column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No growth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double at zoom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same share of column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solver settings for all roles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“Up to” must be larger than “Above”. Change the other value first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other widths…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The minimum must not exceed the maximum. Change the other one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No other role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ratio to role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ratio is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exactly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest to current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least change over widths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slack &lt; 500&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cards are counted from 1 to %1, for example %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <comment>cards</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ignored cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes, %1, in every variant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n character(s) too long</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>no room for more characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>room for %n more character(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Wish of at most %1: %2, at %3 viewport width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text has %1 characters. The fewest characters fit at a viewport width of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the row with other texts, pictures or cards; the project is not changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import again…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use Tenter’s markup</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>This row of %n card(s) is imported from a page. You can edit its text here. To add, move or remove parts, change the page and import the row again.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Move %1 up</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1 down</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 text</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emphasis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line break</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change %1 text</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room for longer text, %1</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Link address of the button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accessible name of the button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same as its text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change button link address</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change button accessible name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Internal error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report, without content of your files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restore changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Discard changes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No&amp;t now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumbnail of the unsaved row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be restored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter closed unexpectedly. It kept the unsaved changes of “%1” from %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This project was never saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n more can be restored after it.</source>
        <comment>projects</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Discard unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard the unsaved changes of “%1”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They cannot be restored after that. The saved file stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Discard changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter could not finish the last action.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your project is open as it was before it, and its changes are kept for the next start. Save the project under another name and start Tenter again. The report helps to fix the error; it has no content of your files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the project file instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recovery file cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recovery file is too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no recovery file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Select a card, or a part of it, to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the first card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the last card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate card</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Duplicate %n card(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Remove %n card(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>This is the first part of its card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the last part of its card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Remove %n part(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Drop the card at the line. Escape: leave it where it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before card %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After card %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) of %1 selected. Settings apply to %2. Delete removes the parts. Alt+Left, Alt+Right and Ctrl+D act on the cards.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source> and </source>
        <comment>between roles</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change &amp;picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move part &amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move part d&amp;own</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s) &amp;left</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Move card &amp;left</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s) &amp;right</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Move card &amp;right</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>&amp;Duplicate %n card(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Duplicate card</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Re&amp;move %n card(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Re&amp;move card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row is imported from a page. To add, move or remove cards, change the page and import the row again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text test is shown. End it to change cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a preview. Apply or discard it to change cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A text test is shown. End it to edit the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a preview. Apply or discard it to edit the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of %1, in the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab: next text. Ctrl+Enter: done. Escape: restore the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text in the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2&#xa0;rem</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 characters per line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the line width, tight fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the line width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In %1</source>
        <comment>browser</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 uses its own dictionary or font for this text, so its lines may differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Image</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 image pixels per CSS px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, card %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Boxes and spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show boxes with their padding, margins and gaps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the measure, and where the shortest and the longest comfortable line end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tight fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chromium/Firefox &amp;differences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark text that has a different number of lines in Chromium and Firefox</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slack %1 of the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row at the current width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fit to window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All &amp;variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show every variant at this width, to compare their text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Actual size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All variants at the current width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cards yet. Add a card in the Words panel, or drop pictures here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This project cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recent projects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Projects that you save or open will be here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Samples to look at and to start from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No samples were found next to the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A row of cards that holds together at every width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New row…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose columns and a look, paste your text, drop pictures (Ctrl+N)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open project…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import row from page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or drop a project, pictures or an HTML page here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import audience</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comma-separated values (*.csv *.txt);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a CSV file that you may read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The audience was not imported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The audience was imported without these lines:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings are weighted by %1 visits from %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>afvolszbhp</source>
        <comment>letters after &amp; in the View menu</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line breaks as in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown at %1, the end of the project’s range of widths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A browser window of %1 at %2 zoom has a viewport of %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a project first. Then drop fonts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 now has this font</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop a picture on a card, or a .tenter.json file anywhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n card(s) added. Edit the text in the Words panel.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Picture placed in card %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures placed in cards %1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) were not used, because there are no more cards.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>St&amp;ylesheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Page folder…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;ictures…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spec s&amp;heet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Design tokens…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture of this &amp;view…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;stylesheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy stylesheets of &amp;all variants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy stylesheet and mar&amp;kup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;class names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;font size of selected text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row keeps the markup of its page, so there is none to copy. Edit › Use Tenter’s markup gives the row markup of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stylesheet was not copied. The imported row has these problems:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stylesheet was copied. The imported row has these problems:</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n variant(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1, for the imported row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 copied: %2, %3, with the current sizes, not those of the preview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 copied: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stylesheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Markup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stylesheet and markup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 font size copied: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter projects (*.tenter.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last one is “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you discard them, you lose all changes since the last save.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>If you discard them, you lose %n change(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>If you discard them, you lose 1 change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you discard them, you lose 1 change: “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be opened. The current project stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sample %1 could not be opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a copy of the sample. Save it to keep your changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project could not be saved. The file is unchanged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restored the unsaved changes. Save the project to keep them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program has changed “%1” since you opened or saved it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you save over it, the changes of the other program are lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 was removed or renamed. Saving writes it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program has changed “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you load it, Undo restores your version with its unsaved changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you load it, Undo restores the version from before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Load it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save mine &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep mine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loaded the changed file. Undo restores the version from before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be loaded. Your version stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save project as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project could not be saved there. No file was overwritten.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the changes to “%1”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This project has never been saved. If you discard it, you lose it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (not saved yet)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Applied: %1. Undo restores the row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Row imported from a page: %n card(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The row has Tenter’s markup now. Undo restores the imported markup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has changed since the project was saved or opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revert to saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The project is as it was saved. Undo restores your changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes cannot be kept for a restart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your unsaved changes were kept. You can restore them in the window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There were no unsaved changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tenter was ended by an internal error.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The report helps to fix the error; it has no content of your files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New from sa&amp;mple</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No samples found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;vert to saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a&amp;udience…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop &amp;weighting by audience</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No recent projects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo &amp;list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Solve sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use Tenter’s &amp;markup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Silence &amp;check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select a finding in the list first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Overlays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lanes and plots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Axis &amp;scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Browser &amp;zoom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with &amp;browser…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show previe&amp;w</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reset &amp;layout of the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next band end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Previous band end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next Chromium/Firefox &amp;difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous Chromium/Firefox d&amp;ifference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next &amp;wrap point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous wrap p&amp;oint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next &amp;finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous findin&amp;g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wid&amp;er by 1&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrowe&amp;r by 1&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wider &amp;by 10&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;arrower by 10&#xa0;px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No Chromium/Firefox difference at a wider viewport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No Chromium/Firefox difference at a narrower viewport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No wrap point at a wider viewport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No wrap point at a narrower viewport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the last finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is the first finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Problems</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong, where, and how to fix it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;how saved version (hold F2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a setting by its label or another word for it (Ctrl+F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Font problems</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row imported from a page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Markup of the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stylesheet is for the markup of the imported page. For a stylesheet with Tenter’s own markup, choose Edit › Use Tenter’s markup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End this text test</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n font problem(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Text test: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last message</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All variants at this width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy stylesheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the stylesheet of this variant (Ctrl+Shift+C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a step to return to the row as it was after that step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line breaks as in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom of the row view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Actual size (Ctrl+0)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit whole cards to the window (Ctrl+9)</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n&#xa0;byte(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n&#xa0;file(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>At this width 1&#xa0;em is %1. Padding is hatched, margin is not. Small numbers are px.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here 1&#xa0;em is the root font size, %1. Padding is hatched. Small numbers are px.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2&#xa0;em</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
