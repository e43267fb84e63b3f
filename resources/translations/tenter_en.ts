<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message numerus="yes">
        <source>Table with %n row(s)</source>
        <translation>
            <numerusform>Table with %n row</numerusform>
            <numerusform>Table with %n rows</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n visit(s), %2 of all visits</source>
        <translation>
            <numerusform>%1: %n visit, %2 of all visits</numerusform>
            <numerusform>%1: %n visits, %2 of all visits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s)</source>
        <translation>
            <numerusform>%n finding</numerusform>
            <numerusform>%n findings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wrap point(s)</source>
        <translation>
            <numerusform>%n wrap point</numerusform>
            <numerusform>%n wrap points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n more change(s) at this width</source>
        <translation>
            <numerusform>%1; %n more change at this width</numerusform>
            <numerusform>%1; %n more changes at this width</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more change(s)</source>
        <comment>of line counts</comment>
        <translation>
            <numerusform>%n more change</numerusform>
            <numerusform>%n more changes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 did not respond for %n second(s) and was stopped. Try again when the computer is less busy.</source>
        <translation>
            <numerusform>%1 did not respond for %n second and was stopped. Try again when the computer is less busy.</numerusform>
            <numerusform>%1 did not respond for %n seconds and was stopped. Try again when the computer is less busy.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 at %n width(s)</source>
        <comment>number of parts</comment>
        <translation>
            <numerusform>%1 at %n width</numerusform>
            <numerusform>%1 at %n widths</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n card(s)</source>
        <translation>
            <numerusform>%n card</numerusform>
            <numerusform>%n cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at all %n width(s)</source>
        <translation>
            <numerusform>%1 agrees with Tenter at all %n width</numerusform>
            <numerusform>%1 agrees with Tenter at all %n widths</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at %n width(s)</source>
        <translation>
            <numerusform>%1 agrees with Tenter at %n width</numerusform>
            <numerusform>%1 agrees with Tenter at %n widths</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 agrees with Tenter at %n width(s) so far</source>
        <translation>
            <numerusform>%1 agrees with Tenter at %n width so far</numerusform>
            <numerusform>%1 agrees with Tenter at %n widths so far</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 differs from Tenter at %2 of %n width(s)</source>
        <translation>
            <numerusform>%1 differs from Tenter at %2 of %n width</numerusform>
            <numerusform>%1 differs from Tenter at %2 of %n widths</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 differs from Tenter at %2 of %n width(s) so far</source>
        <translation>
            <numerusform>%1 differs from Tenter at %2 of %n width so far</numerusform>
            <numerusform>%1 differs from Tenter at %2 of %n widths so far</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tight fit(s) with another line count (not counted as a difference)</source>
        <translation>
            <numerusform>%n tight fit with another line count (not counted as a difference)</numerusform>
            <numerusform>%n tight fits with another line count (not counted as a difference)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) not compared: %1 uses its own dictionary or font</source>
        <translation>
            <numerusform>%n part not compared: %1 uses its own dictionary or font</numerusform>
            <numerusform>%n parts not compared: %1 uses its own dictionary or font</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A card can have at most %n part(s).</source>
        <translation>
            <numerusform>A card can have at most %n part.</numerusform>
            <numerusform>A card can have at most %n parts.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A variant can have at most %n band(s).</source>
        <translation>
            <numerusform>A variant can have at most %n band.</numerusform>
            <numerusform>A variant can have at most %n bands.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A project can have at most %n card(s).</source>
        <translation>
            <numerusform>A project can have at most %n card.</numerusform>
            <numerusform>A project can have at most %n cards.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A project can have at most %n variant(s).</source>
        <translation>
            <numerusform>A project can have at most %n variant.</numerusform>
            <numerusform>A project can have at most %n variants.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n card(s); variants: %1</source>
        <translation>
            <numerusform>%n card; variants: %1</numerusform>
            <numerusform>%n cards; variants: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n column(s)</source>
        <translation>
            <numerusform>%n column</numerusform>
            <numerusform>%n columns</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s)</source>
        <translation>
            <numerusform>%n line</numerusform>
            <numerusform>%n lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n token(s)</source>
        <translation>
            <numerusform>%n token</numerusform>
            <numerusform>%n tokens</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n error(s)</source>
        <translation>
            <numerusform>%n error</numerusform>
            <numerusform>%n errors</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <translation>
            <numerusform>%n warning</numerusform>
            <numerusform>%n warnings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n note(s)</source>
        <translation>
            <numerusform>%n note</numerusform>
            <numerusform>%n notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check(s) are silenced.</source>
        <translation>
            <numerusform>%n check is silenced.</numerusform>
            <numerusform>%n checks are silenced.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>New row with %n card(s). Save it to keep it.</source>
        <translation>
            <numerusform>New row with %n card. Save it to keep it.</numerusform>
            <numerusform>New row with %n cards. Save it to keep it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <comment>pictures</comment>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more card(s)</source>
        <translation>
            <numerusform>and %n more card</numerusform>
            <numerusform>and %n more cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;This project: replace its %n card(s) and their text</source>
        <translation>
            <numerusform>&amp;This project: replace its %n card and their text</numerusform>
            <numerusform>&amp;This project: replace its %n cards and their text</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>New project with the row of the page: %n card(s). Save it to keep it.</source>
        <translation>
            <numerusform>New project with the row of the page: %n card. Save it to keep it.</numerusform>
            <numerusform>New project with the row of the page: %n cards. Save it to keep it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>column(s)</source>
        <comment>after their number</comment>
        <translation>
            <numerusform>column</numerusform>
            <numerusform>columns</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more error(s)</source>
        <translation>
            <numerusform>%n more error</numerusform>
            <numerusform>%n more errors</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer error(s)</source>
        <translation>
            <numerusform>%n fewer error</numerusform>
            <numerusform>%n fewer errors</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more warning(s)</source>
        <translation>
            <numerusform>%n more warning</numerusform>
            <numerusform>%n more warnings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer warning(s)</source>
        <translation>
            <numerusform>%n fewer warning</numerusform>
            <numerusform>%n fewer warnings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more note(s)</source>
        <translation>
            <numerusform>%n more note</numerusform>
            <numerusform>%n more notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer note(s)</source>
        <translation>
            <numerusform>%n fewer note</numerusform>
            <numerusform>%n fewer notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n character(s) too long</source>
        <translation>
            <numerusform>%n character too long</numerusform>
            <numerusform>%n characters too long</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>room for %n more character(s)</source>
        <translation>
            <numerusform>room for %n more character</numerusform>
            <numerusform>room for %n more characters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This row of %n card(s) is imported from a page. You can edit its text here. To add, move or remove parts, change the page and import the row again.</source>
        <translation>
            <numerusform>This row of %n card is imported from a page. You can edit its text here. To add, move or remove parts, change the page and import the row again.</numerusform>
            <numerusform>This row of %n cards is imported from a page. You can edit its text here. To add, move or remove parts, change the page and import the row again.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more can be restored after it.</source>
        <comment>projects</comment>
        <translation>
            <numerusform>%n more can be restored after it.</numerusform>
            <numerusform>%n more can be restored after it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s)</source>
        <translation>
            <numerusform>Move %n card</numerusform>
            <numerusform>Move %n cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Duplicate %n card(s)</source>
        <translation>
            <numerusform>Duplicate %n card</numerusform>
            <numerusform>Duplicate %n cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Remove %n card(s)</source>
        <translation>
            <numerusform>Remove %n card</numerusform>
            <numerusform>Remove %n cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Remove %n part(s)</source>
        <translation>
            <numerusform>Remove %n part</numerusform>
            <numerusform>Remove %n parts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part(s) of %1 selected. Settings apply to %2. Delete removes the parts. Alt+Left, Alt+Right and Ctrl+D act on the cards.</source>
        <translation>
            <numerusform>%n part of %1 selected. Settings apply to %2. Delete removes the parts. Alt+Left, Alt+Right and Ctrl+D act on the cards.</numerusform>
            <numerusform>%n parts of %1 selected. Settings apply to %2. Delete removes the parts. Alt+Left, Alt+Right and Ctrl+D act on the cards.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s) &amp;left</source>
        <translation>
            <numerusform>Move %n card &amp;left</numerusform>
            <numerusform>Move %n cards &amp;left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move %n card(s) &amp;right</source>
        <translation>
            <numerusform>Move %n card &amp;right</numerusform>
            <numerusform>Move %n cards &amp;right</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&amp;Duplicate %n card(s)</source>
        <translation>
            <numerusform>&amp;Duplicate %n card</numerusform>
            <numerusform>&amp;Duplicate %n cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Re&amp;move %n card(s)</source>
        <translation>
            <numerusform>Re&amp;move %n card</numerusform>
            <numerusform>Re&amp;move %n cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n card(s) added. Edit the text in the Words panel.</source>
        <translation>
            <numerusform>%n card added. Edit the text in the Words panel.</numerusform>
            <numerusform>%n cards added. Edit the text in the Words panel.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) were not used, because there are no more cards.</source>
        <translation>
            <numerusform>%n picture was not used, because there are no more cards.</numerusform>
            <numerusform>%n pictures were not used, because there are no more cards.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n variant(s)</source>
        <translation>
            <numerusform>%n variant</numerusform>
            <numerusform>%n variants</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>If you discard them, you lose %n change(s).</source>
        <translation>
            <numerusform>If you discard them, you lose %n change.</numerusform>
            <numerusform>If you discard them, you lose %n changes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Row imported from a page: %n card(s)</source>
        <translation>
            <numerusform>Row imported from a page: %n card</numerusform>
            <numerusform>Row imported from a page: %n cards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n font problem(s)</source>
        <translation>
            <numerusform>%n font problem</numerusform>
            <numerusform>%n font problems</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n&#xa0;byte(s)</source>
        <translation>
            <numerusform>%n&#xa0;byte</numerusform>
            <numerusform>%n&#xa0;bytes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n&#xa0;file(s)</source>
        <translation>
            <numerusform>%n&#xa0;file</numerusform>
            <numerusform>%n&#xa0;files</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n setting(s) differ.</source>
        <translation>
            <numerusform>%n setting differs.</numerusform>
            <numerusform>%n settings differ.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n setting(s) of the stylesheet applied</source>
        <translation>
            <numerusform>%n setting of the stylesheet applied</numerusform>
            <numerusform>%n settings of the stylesheet applied</numerusform>
        </translation>
    </message>
</context>
</TS>
