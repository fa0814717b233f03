<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>Colours</name>
        <message>
            <source>red</source>
            <translation>rot</translation>
        </message>
        <message>
            <source>amber</source>
            <translation>bernsteinfarben</translation>
        </message>
        <message>
            <source>yellow</source>
            <translation>gelb</translation>
        </message>
        <message>
            <source>green</source>
            <translation>grün</translation>
        </message>
        <message>
            <source>pure green</source>
            <translation>reingrün</translation>
        </message>
        <message>
            <source>blue</source>
            <translation>blau</translation>
        </message>
        <message>
            <source>white</source>
            <translation>weiß</translation>
        </message>
    </context>
    <context>
        <name>DrawerModel</name>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Tolerance</source>
            <translation>Toleranz</translation>
        </message>
        <message>
            <source>Rating</source>
            <translation>Belastbarkeit</translation>
        </message>
        <message>
            <source>Quantity</source>
            <translation>Anzahl</translation>
        </message>
    </context>
    <context>
        <name>Exporter</name>
        <message>
            <source>the name must end in .png, .svg or .pdf</source>
            <translation>der Name muss auf .png, .svg oder .pdf enden</translation>
        </message>
    </context>
    <context>
        <name>HelpTexts</name>
        <message>
            <source>Flicker.</source>
            <translation>Flackern.</translation>
        </message>
        <message>
            <source>Light that flashes more than three times a second can bring on seizures in people with photosensitive epilepsy, and may disturb others. Keep to three flashes a second or fewer where people did not choose to look (the limit of WCAG 2.2, success criterion 2.3.1), and warn your audience otherwise.</source>
            <translation>Licht, das mehr als dreimal je Sekunde blitzt, kann bei Menschen mit fotosensibler Epilepsie Anfälle auslösen und auch andere stören. Wo Menschen nicht aus eigener Wahl hinsehen, bei höchstens drei Blitzen je Sekunde bleiben (Grenze der WCAG 2.2, Erfolgskriterium 2.3.1); sonst das Publikum warnen.</translation>
        </message>
        <message>
            <source>Strong lamps.</source>
            <translation>Starke Lampen.</translation>
        </message>
        <message>
            <source>Do not look into strong lamps from near by, least of all into blue, white or infrared ones: infrared light does harm that you do not see.</source>
            <translation>Nicht aus der Nähe in starke Lampen sehen, erst recht nicht in blaue, weiße oder infrarote: Infrarotlicht schädigt, ohne dass man es sieht.</translation>
        </message>
        <message>
            <source>Capacitors and batteries.</source>
            <translation>Kondensatoren und Batterien.</translation>
        </message>
        <message>
            <source>Electrolytic capacitors burst when they are put in the wrong way round or above their rated voltage. A short-circuited battery gets hot; take it out before you rewire.</source>
            <translation>Elektrolytkondensatoren platzen, wenn sie verpolt oder über ihrer Nennspannung betrieben werden. Eine kurzgeschlossene Batterie wird heiß; vor jedem Umbau die Batterie herausnehmen.</translation>
        </message>
        <message>
            <source>What the numbers are.</source>
            <translation>Was die Zahlen bedeuten.</translation>
        </message>
        <message>
            <source>They are computed from typical values of the parts. Timers of different makers, and capacitors above all, differ by tens of per cent; measure the board that you have built before you rely on it. A blinker is no certified signal: where safety depends on a light, local rules and licensed practice decide.</source>
            <translation>Sie sind aus typischen Werten der Bauteile berechnet. Timer verschiedener Hersteller und vor allem Kondensatoren weichen um einige zehn Prozent ab; die gebaute Platine messen, bevor man sich auf sie verlässt. Ein Blinker ist kein zugelassenes Signal: Wo die Sicherheit von einem Licht abhängt, entscheiden die örtlichen Vorschriften und zugelassene Fachleute.</translation>
        </message>
        <message>
            <source>Never mains.</source>
            <translation>Niemals Netzspannung.</translation>
        </message>
        <message>
            <source>All of this is for batteries and low voltage. Join none of it to the mains.</source>
            <translation>All dies ist für Batterien und Kleinspannung gedacht. Nichts davon mit dem Stromnetz verbinden.</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Sicherheitshinweise</translation>
        </message>
        <message>
            <source>A workshop for lamp blinkers built on the 555 timer.</source>
            <translation>Eine Werkstatt für Lampenblinker mit dem 555-Timer.</translation>
        </message>
        <message>
            <source>Free software under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
            <translation>Freie Software unter der GNU General Public License, Version 3 oder später. Ohne jede Gewährleistung.</translation>
        </message>
        <message>
            <source>Built with:</source>
            <translation>Erstellt mit:</translation>
        </message>
        <message>
            <source>About Blinkwright</source>
            <translation>Über Blinkwright</translation>
        </message>
    </context>
    <context>
        <name>Hookup</name>
        <message>
            <source>%1, in no net</source>
            <translation>%1, in keinem Netz</translation>
        </message>
        <message>
            <source>%1, on net %2</source>
            <translation>%1, an Netz %2</translation>
        </message>
        <message>
            <source>red</source>
            <translation>rot</translation>
        </message>
        <message>
            <source>amber</source>
            <translation>bernsteinfarben</translation>
        </message>
        <message>
            <source>yellow</source>
            <translation>gelb</translation>
        </message>
        <message>
            <source>green</source>
            <translation>grün</translation>
        </message>
        <message>
            <source>pure green</source>
            <translation>reingrün</translation>
        </message>
        <message>
            <source>blue</source>
            <translation>blau</translation>
        </message>
        <message>
            <source>white</source>
            <translation>weiß</translation>
        </message>
        <message>
            <source>infrared</source>
            <translation>infrarot</translation>
        </message>
        <message>
            <source>CMOS</source>
            <translation>CMOS</translation>
        </message>
        <message>
            <source>bipolar</source>
            <translation>bipolar</translation>
        </message>
        <message>
            <source>supply</source>
            <translation>Versorgung</translation>
        </message>
        <message>
            <source>555 timer</source>
            <translation>555-Timer</translation>
        </message>
        <message>
            <source>resistor</source>
            <translation>Widerstand</translation>
        </message>
        <message>
            <source>variable resistor</source>
            <translation>Potentiometer</translation>
        </message>
        <message>
            <source>capacitor</source>
            <translation>Kondensator</translation>
        </message>
        <message>
            <source>lamp (LED)</source>
            <translation>Lampe (LED)</translation>
        </message>
        <message>
            <source>diode</source>
            <translation>Diode</translation>
        </message>
        <message>
            <source>switch</source>
            <translation>Schalter</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>ground</source>
            <translation>Masse</translation>
        </message>
        <message>
            <source>trigger</source>
            <translation>Trigger</translation>
        </message>
        <message>
            <source>output</source>
            <translation>Ausgang</translation>
        </message>
        <message>
            <source>reset</source>
            <translation>Reset</translation>
        </message>
        <message>
            <source>control voltage</source>
            <translation>Steuerspannung</translation>
        </message>
        <message>
            <source>threshold</source>
            <translation>Threshold</translation>
        </message>
        <message>
            <source>discharge</source>
            <translation>Discharge</translation>
        </message>
        <message>
            <source>pin %1, %2</source>
            <translation>Pin %1, %2</translation>
        </message>
        <message>
            <source>plus</source>
            <translation>Plus</translation>
        </message>
        <message>
            <source>minus</source>
            <translation>Minus</translation>
        </message>
        <message>
            <source>anode</source>
            <translation>Anode</translation>
        </message>
        <message>
            <source>cathode</source>
            <translation>Kathode</translation>
        </message>
        <message>
            <source>wiper</source>
            <translation>Schleifer</translation>
        </message>
        <message>
            <source>pin %1</source>
            <translation>Pin %1</translation>
        </message>
    </context>
    <context>
        <name>LabSheet</name>
        <message>
            <source>Title, author and date</source>
            <translation>Titel, Autor und Datum</translation>
        </message>
        <message>
            <source>Aim</source>
            <translation>Ziel</translation>
        </message>
        <message>
            <source>Theory</source>
            <translation>Theorie</translation>
        </message>
        <message>
            <source>Circuit</source>
            <translation>Schaltung</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Bauteile</translation>
        </message>
        <message>
            <source>Wiring</source>
            <translation>Verdrahtung</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Sicherheitshinweise</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Durchführung</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Kennwerte</translation>
        </message>
        <message>
            <source>Traces</source>
            <translation>Zeitverläufe</translation>
        </message>
        <message>
            <source>Spread by tolerances</source>
            <translation>Streuung durch Toleranzen</translation>
        </message>
        <message>
            <source>Findings</source>
            <translation>Befunde</translation>
        </message>
        <message>
            <source>What explains the difference</source>
            <translation>Was die Abweichung erklärt</translation>
        </message>
        <message>
            <source>Conclusions</source>
            <translation>Schlussfolgerungen</translation>
        </message>
        <message>
            <source>References</source>
            <translation>Quellen</translation>
        </message>
    </context>
    <context>
        <name>Measured</name>
        <message>
            <source>none stated</source>
            <translation>keine angegeben</translation>
        </message>
    </context>
    <context>
        <name>Pins</name>
        <message>
            <source>first end</source>
            <translation>erstes Ende</translation>
        </message>
        <message>
            <source>second end</source>
            <translation>zweites Ende</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
    </context>
    <context>
        <name>RunReport</name>
        <message>
            <source>No run: %1</source>
            <translation>Kein Lauf: %1</translation>
        </message>
        <message>
            <source>%1, %2 steps, %3 ms</source>
            <translation>%1, %2 Schritte, %3 ms</translation>
        </message>
        <message>
            <source>1 flash</source>
            <translation>1 Blitz</translation>
        </message>
        <message>
            <source>%1 flashes</source>
            <translation>%1 Blitze</translation>
        </message>
        <message>
            <source>%1 – %2</source>
            <translation>%1 – %2</translation>
        </message>
        <message>
            <source>This circuit cannot be run.</source>
            <translation>Diese Schaltung lässt sich nicht simulieren.</translation>
        </message>
    </context>
    <context>
        <name>TrendRoom</name>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
    </context>
    <context>
        <name>WholeFile</name>
        <message>
            <source>cannot be written: %1</source>
            <translation>lässt sich nicht schreiben: %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app</name>
        <message>
            <source>the name must end in .png, .svg, .pdf or .csv</source>
            <translation>der Name muss auf .png, .svg, .pdf oder .csv enden</translation>
        </message>
        <message>
            <source>there are no curves to write</source>
            <translation>es gibt keine Kurven zu schreiben</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::AccountRoom</name>
        <message>
            <source>Account for it</source>
            <translation>Abweichung erklären</translation>
        </message>
        <message>
            <source>Apply as Set &amp;B</source>
            <translation>Als Satz &amp;B anwenden</translation>
        </message>
        <message>
            <source>Makes Set B the board with the fitted values</source>
            <translation>Macht Satz B zur Platine mit den angepassten Werten</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <translation>Ko&amp;pieren</translation>
        </message>
        <message>
            <source>E&amp;xport…</source>
            <translation>E&amp;xportieren …</translation>
        </message>
        <message>
            <source>What is predicted, and how surely, stands under Uncertainty.</source>
            <translation>Was vorhergesagt wird und wie sicher, steht unter „Unsicherheit“.</translation>
        </message>
        <message>
            <source>%1 against a limit of %2</source>
            <translation>%1 bei einer Grenze von %2</translation>
        </message>
        <message>
            <source>Values within the tolerances explain the measurements (χ² %1).</source>
            <translation>Werte innerhalb der Toleranzen erklären die Messungen (χ² %1).</translation>
        </message>
        <message>
            <source>No values that the parts may have explain the measurements (χ² %1).</source>
            <translation>Keine Werte, die die Bauteile haben dürfen, erklären die Messungen (χ² %1).</translation>
        </message>
        <message>
            <source>The budget is on the clipboard.</source>
            <translation>Das Unsicherheitsbudget ist in der Zwischenablage.</translation>
        </message>
        <message>
            <source>The fitted values are on the clipboard.</source>
            <translation>Die angepassten Werte sind in der Zwischenablage.</translation>
        </message>
        <message>
            <source>%1 predicted:</source>
            <translation>%1 vorhergesagt:</translation>
        </message>
        <message>
            <source>%1 measured:</source>
            <translation>%1 gemessen:</translation>
        </message>
        <message>
            <source>Export the budget</source>
            <translation>Unsicherheitsbudget exportieren</translation>
        </message>
        <message>
            <source>Export the fitted values</source>
            <translation>Angepasste Werte exportieren</translation>
        </message>
        <message>
            <source>budget</source>
            <translation>budget</translation>
        </message>
        <message>
            <source>fitted</source>
            <translation>angepasst</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tabelle</translation>
        </message>
        <message>
            <source>Set B is the fitted board now.</source>
            <translation>Satz B ist jetzt die angepasste Platine.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::BandBehind</name>
        <message>
            <source>Ban&amp;d of boards behind the curves</source>
            <translation>Band der &amp;Platinen hinter den Kurven</translation>
        </message>
        <message>
            <source>Where 9 of 10 boards lie whose parts are anywhere within their tolerances</source>
            <translation>Wo 9 von 10 Platinen liegen, deren Bauteile beliebig innerhalb ihrer Toleranzen liegen</translation>
        </message>
        <message>
            <source>Ctrl+Shift+H</source>
            <translation>Ctrl+Shift+H</translation>
        </message>
        <message>
            <source>No band: %1</source>
            <translation>Kein Band: %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::ChooseRoom</name>
        <message>
            <source>Choose values</source>
            <translation>Werte wählen</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <translation>Ko&amp;pieren</translation>
        </message>
        <message>
            <source>E&amp;xport…</source>
            <translation>E&amp;xportieren …</translation>
        </message>
        <message>
            <source>Take as Set &amp;B</source>
            <translation>Als Satz &amp;B übernehmen</translation>
        </message>
        <message>
            <source>&amp;Make it</source>
            <translation>&amp;Erstellen</translation>
        </message>
        <message>
            <source>Mend the field that is marked: the answer follows.</source>
            <translation>Das markierte Feld berichtigen, dann folgt die Antwort.</translation>
        </message>
        <message>
            <source>The wish cannot be met: the nearest is shown.</source>
            <translation>Der Wunsch ist nicht erfüllbar; das Nächstliegende wird gezeigt.</translation>
        </message>
        <message>
            <source>The wish cannot be met.</source>
            <translation>Der Wunsch ist nicht erfüllbar.</translation>
        </message>
        <message>
            <source>Of %1 combinations %2 simulated, the best %3 shown.</source>
            <translation>Von %1 Kombinationen %2 simuliert, die besten %3 gezeigt.</translation>
        </message>
        <message>
            <source>The lamps' mean intensities are equal.</source>
            <translation>Die mittleren Lichtstärken der Lampen sind gleich.</translation>
        </message>
        <message>
            <source>No intensities are stated: the lamps' mean currents are equal.</source>
            <translation>Keine Lichtstärken angegeben: Die mittleren Ströme der Lampen sind gleich.</translation>
        </message>
        <message>
            <source>The intensities are as good as equal: so are the mean currents.</source>
            <translation>Die Lichtstärken sind so gut wie gleich, die mittleren Ströme auch.</translation>
        </message>
        <message>
            <source>Puts these values into Set B of the open circuit</source>
            <translation>Übernimmt diese Werte in Satz B der geöffneten Schaltung</translation>
        </message>
        <message>
            <source>Set B of the open circuit has these values.</source>
            <translation>Satz B der geöffneten Schaltung hat diese Werte.</translation>
        </message>
        <message>
            <source>Set B of the open circuit has these values. It is wired otherwise than the proposal: look at what it does.</source>
            <translation>Satz B der geöffneten Schaltung hat diese Werte. Sie ist anders verdrahtet als der Vorschlag: ansehen, was sie tut.</translation>
        </message>
        <message>
            <source>Export the table of values</source>
            <translation>Wertetabelle exportieren</translation>
        </message>
        <message>
            <source>values</source>
            <translation>werte</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tabelle</translation>
        </message>
        <message>
            <source>Made %1</source>
            <translation>%1 wurde gemacht</translation>
        </message>
        <message>
            <source>The table of values is on the clipboard.</source>
            <translation>Die Wertetabelle ist in der Zwischenablage.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::Document</name>
        <message>
            <source>the circuit has no file yet</source>
            <translation>die Schaltung hat noch keine Datei</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::DrawerDesk</name>
        <message>
            <source>Table (*.csv);;All files (*)</source>
            <translation>Tabelle (*.csv);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>what is there could not be put aside</source>
            <translation>was dort liegt, ließ sich nicht beiseitelegen</translation>
        </message>
        <message>
            <source>Import parts into the drawer</source>
            <translation>Bauteile in die Schublade importieren</translation>
        </message>
        <message>
            <source>Export the drawer</source>
            <translation>Schublade exportieren</translation>
        </message>
        <message>
            <source>Exported to %1</source>
            <translation>Exportiert nach %1</translation>
        </message>
        <message>
            <source>The drawer could not be read: %1. Its file is put aside at the first edit.</source>
            <translation>Die Schublade war nicht zu lesen: %1. Ihre Datei wird bei der ersten Änderung beiseitegelegt.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::ExportDialog</name>
        <message>
            <source>Export curves</source>
            <translation>Kurven exportieren</translation>
        </message>
        <message>
            <source>Preview of the page</source>
            <translation>Vorschau der Seite</translation>
        </message>
        <message>
            <source>&amp;Save as…</source>
            <translation>&amp;Speichern unter …</translation>
        </message>
        <message>
            <source>Copy &amp;picture</source>
            <translation>&amp;Bild kopieren</translation>
        </message>
        <message>
            <source>Copy &amp;numbers</source>
            <translation>&amp;Zahlen kopieren</translation>
        </message>
        <message>
            <source>On the page</source>
            <translation>Auf der Seite</translation>
        </message>
        <message>
            <source>Which sets</source>
            <translation>Welche Sätze</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Set A and %1</source>
            <translation>Satz A und %1</translation>
        </message>
        <message>
            <source>Set A alone</source>
            <translation>Nur Satz A</translation>
        </message>
        <message>
            <source>%1 alone</source>
            <translation>Nur %1</translation>
        </message>
        <message>
            <source>&amp;Output, pin 3</source>
            <translation>&amp;Ausgang, Pin 3</translation>
        </message>
        <message>
            <source>&amp;Timing capacitor</source>
            <translation>Zeitbestimmender &amp;Kondensator</translation>
        </message>
        <message>
            <source>Lamp &amp;current</source>
            <translation>La&amp;mpenstrom</translation>
        </message>
        <message>
            <source>&amp;Legend</source>
            <translation>&amp;Legende</translation>
        </message>
        <message>
            <source>&amp;Values at the moment line</source>
            <translation>&amp;Werte an der Zeitmarke</translation>
        </message>
        <message>
            <source>Only the ti&amp;me that the window shows</source>
            <translation>Nur die im &amp;Fenster gezeigte Zeit</translation>
        </message>
        <message>
            <source>In &amp;greys, told apart by dashes</source>
            <translation>In &amp;Grautönen, durch Strichelung unterschieden</translation>
        </message>
        <message>
            <source>For copiers and printers without colour</source>
            <translation>Für Kopierer und Drucker ohne Farbe</translation>
        </message>
        <message>
            <source>Size</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>&amp;Width</source>
            <translation>B&amp;reite</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>&amp;Height</source>
            <translation>&amp;Höhe</translation>
        </message>
        <message>
            <source>&amp;Font</source>
            <translation>Schrif&amp;t</translation>
        </message>
        <message>
            <source>pt</source>
            <translation>pt</translation>
        </message>
        <message>
            <source>dots an inch</source>
            <translation>Punkte je Zoll</translation>
        </message>
        <message>
            <source>Of pictures (.png); drawings and pages are sharp at any size</source>
            <translation>Gilt für Bilder (.png); Zeichnungen und Seiten sind in jeder Größe scharf</translation>
        </message>
        <message>
            <source>&amp;Resolution</source>
            <translation>A&amp;uflösung</translation>
        </message>
        <message>
            <source>As a picture %1 × %2 dots</source>
            <translation>Als Bild %1 × %2 Punkte</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::EyeRoom</name>
        <message>
            <source>What the eye sees</source>
            <translation>Was das Auge sieht</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <translation>Ko&amp;pieren</translation>
        </message>
        <message>
            <source>The circuit does not blink.</source>
            <translation>Die Schaltung blinkt nicht.</translation>
        </message>
        <message>
            <source>There is no lamp, or the circuit has no even flashes.</source>
            <translation>Es gibt keine Lampe, oder die Schaltung liefert keine gleichmäßigen Blitze.</translation>
        </message>
        <message>
            <source>For light in proportion to the current, and one lamp by itself.</source>
            <translation>Gilt für Licht proportional zum Strom und für jede Lampe einzeln.</translation>
        </message>
        <message>
            <source>What the eye sees is on the clipboard.</source>
            <translation>Was das Auge sieht, ist in der Zwischenablage.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::HookupActions</name>
        <message>
            <source>&amp;Supply</source>
            <translation>&amp;Versorgung</translation>
        </message>
        <message>
            <source>&amp;Timer</source>
            <translation>&amp;Timer</translation>
        </message>
        <message>
            <source>&amp;Resistor</source>
            <translation>&amp;Widerstand</translation>
        </message>
        <message>
            <source>&amp;Variable resistor</source>
            <translation>&amp;Potentiometer</translation>
        </message>
        <message>
            <source>&amp;Capacitor</source>
            <translation>&amp;Kondensator</translation>
        </message>
        <message>
            <source>&amp;Lamp</source>
            <translation>&amp;Lampe</translation>
        </message>
        <message>
            <source>&amp;Diode</source>
            <translation>&amp;Diode</translation>
        </message>
        <message>
            <source>S&amp;witch</source>
            <translation>&amp;Schalter</translation>
        </message>
        <message>
            <source>Cu&amp;t parts</source>
            <translation>Bauteile &amp;ausschneiden</translation>
        </message>
        <message>
            <source>&amp;Copy parts</source>
            <translation>Bauteile &amp;kopieren</translation>
        </message>
        <message>
            <source>&amp;Paste parts</source>
            <translation>Bauteile &amp;einfügen</translation>
        </message>
        <message>
            <source>Choose &amp;all parts</source>
            <translation>A&amp;lle Bauteile auswählen</translation>
        </message>
        <message>
            <source>&amp;Part</source>
            <translation>Bau&amp;teil</translation>
        </message>
        <message>
            <source>&amp;Add a part</source>
            <translation>Bauteil &amp;hinzufügen</translation>
        </message>
        <message>
            <source>Choose a part to add</source>
            <translation>Bauteil zum Hinzufügen wählen</translation>
        </message>
        <message>
            <source>A</source>
            <translation>A</translation>
        </message>
        <message>
            <source>&amp;Name and values…</source>
            <translation>&amp;Name und Werte …</translation>
        </message>
        <message>
            <source>F2</source>
            <translation>F2</translation>
        </message>
        <message>
            <source>&amp;Turn by a quarter</source>
            <translation>Um 90° &amp;drehen</translation>
        </message>
        <message>
            <source>T</source>
            <translation>T</translation>
        </message>
        <message>
            <source>&amp;Mirror left to right</source>
            <translation>&amp;Seitlich spiegeln</translation>
        </message>
        <message>
            <source>M</source>
            <translation>M</translation>
        </message>
        <message>
            <source>D&amp;uplicate</source>
            <translation>D&amp;uplizieren</translation>
        </message>
        <message>
            <source>Ctrl+D</source>
            <translation>Ctrl+D</translation>
        </message>
        <message>
            <source>&amp;Delete</source>
            <translation>&amp;Löschen</translation>
        </message>
        <message>
            <source>&amp;Join two pins…</source>
            <translation>&amp;Zwei Anschlüsse verbinden …</translation>
        </message>
        <message>
            <source>J</source>
            <translation>J</translation>
        </message>
        <message>
            <source>Take a pin &amp;off its net…</source>
            <translation>Anschluss vom Netz &amp;trennen …</translation>
        </message>
        <message>
            <source>Shift+J</source>
            <translation>Shift+J</translation>
        </message>
        <message>
            <source>&amp;Rename a net…</source>
            <translation>Netz um&amp;benennen …</translation>
        </message>
        <message>
            <source>Ctrl+Backspace</source>
            <translation>Ctrl+Backspace</translation>
        </message>
        <message>
            <source>R&amp;emove net %1</source>
            <translation>Netz %1 &amp;entfernen</translation>
        </message>
        <message>
            <source>R&amp;emove a net…</source>
            <translation>Netz &amp;entfernen …</translation>
        </message>
        <message>
            <source>Join %1 to…</source>
            <translation>%1 verbinden mit …</translation>
        </message>
        <message>
            <source>Take %1 off net %2</source>
            <translation>%1 von Netz %2 trennen</translation>
        </message>
        <message>
            <source>Rename net %1…</source>
            <translation>Netz %1 umbenennen …</translation>
        </message>
        <message>
            <source>Remove net %1</source>
            <translation>Netz %1 entfernen</translation>
        </message>
        <message>
            <source>&amp;Add a part here</source>
            <translation>Bauteil hier &amp;hinzufügen</translation>
        </message>
        <message>
            <source>Join two pins</source>
            <translation>Zwei Anschlüsse verbinden</translation>
        </message>
        <message>
            <source>&amp;Pin</source>
            <translation>&amp;Anschluss</translation>
        </message>
        <message>
            <source>&amp;To pin or net</source>
            <translation>&amp;Mit Anschluss oder Netz</translation>
        </message>
        <message>
            <source>Take a pin off its net</source>
            <translation>Anschluss vom Netz trennen</translation>
        </message>
        <message>
            <source>Rename a net</source>
            <translation>Netz umbenennen</translation>
        </message>
        <message>
            <source>&amp;Net</source>
            <translation>&amp;Netz</translation>
        </message>
        <message>
            <source>New &amp;name</source>
            <translation>Neuer Na&amp;me</translation>
        </message>
        <message>
            <source>Remove a net</source>
            <translation>Netz entfernen</translation>
        </message>
        <message>
            <source>&amp;Net, or a pin in it</source>
            <translation>&amp;Netz oder ein Anschluss darin</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::HookupWishes</name>
        <message>
            <source>there are no parts on the clipboard</source>
            <translation>in der Zwischenablage sind keine Bauteile</translation>
        </message>
        <message>
            <source>No part is chosen.</source>
            <translation>Kein Bauteil ist ausgewählt.</translation>
        </message>
        <message>
            <source>%1 is on the clipboard.</source>
            <translation>%1 ist in der Zwischenablage.</translation>
        </message>
        <message>
            <source>%1 parts are on the clipboard.</source>
            <translation>%1 Bauteile sind in der Zwischenablage.</translation>
        </message>
        <message>
            <source>Nothing was pasted: %1</source>
            <translation>Nichts wurde eingefügt: %1</translation>
        </message>
        <message>
            <source>there is no net "%1", and a pin is written REF:PIN</source>
            <translation>es gibt kein Netz „%1“, und ein Anschluss wird als BEZEICHNER:PIN geschrieben</translation>
        </message>
        <message>
            <source>there is no net "%1"</source>
            <translation>es gibt kein Netz „%1“</translation>
        </message>
        <message>
            <source>%1 is in no net</source>
            <translation>%1 ist in keinem Netz</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::LabSheetRoom</name>
        <message>
            <source>Lab sheet</source>
            <translation>Laborblatt</translation>
        </message>
        <message>
            <source>Save as PD&amp;F…</source>
            <translation>Als PD&amp;F speichern …</translation>
        </message>
        <message>
            <source>Document pages</source>
            <translation>Dokumentseiten</translation>
        </message>
        <message>
            <source>Save as HTM&amp;L…</source>
            <translation>Als HTM&amp;L speichern …</translation>
        </message>
        <message>
            <source>Web page</source>
            <translation>Webseite</translation>
        </message>
        <message>
            <source>Save as ODT…</source>
            <translation>Als ODT speichern …</translation>
        </message>
        <message>
            <source>Word processor document</source>
            <translation>Textdokument</translation>
        </message>
        <message>
            <source>Pr&amp;int…</source>
            <translation>D&amp;rucken …</translation>
        </message>
        <message>
            <source>Variant %1: other values of %2.</source>
            <translation>Variante %1: andere Werte für %2.</translation>
        </message>
        <message>
            <source>lab-sheet</source>
            <translation>laborblatt</translation>
        </message>
        <message>
            <source>student</source>
            <translation>schülerblatt</translation>
        </message>
        <message>
            <source>answers</source>
            <translation>lösungsblatt</translation>
        </message>
        <message>
            <source>Save the lab sheet</source>
            <translation>Laborblatt speichern</translation>
        </message>
        <message>
            <source>Print the lab sheet</source>
            <translation>Laborblatt drucken</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::LeftBehindDialog</name>
        <message>
            <source>New circuit without a name</source>
            <translation>Neue Schaltung ohne Namen</translation>
        </message>
        <message>
            <source>%1 (new circuit)</source>
            <translation>%1 (neue Schaltung)</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Unsaved changes from last time</source>
            <translation>Ungespeicherte Änderungen vom letzten Mal</translation>
        </message>
        <message>
            <source>Blinkwright ended without closing. These circuits have changes that were not saved; their own files are as they were last saved.</source>
            <translation>Blinkwright wurde nicht ordnungsgemäß beendet. Diese Schaltungen haben Änderungen, die nicht gespeichert wurden; ihre eigenen Dateien sind auf dem zuletzt gespeicherten Stand.</translation>
        </message>
        <message>
            <source>Circuits with unsaved changes</source>
            <translation>Schaltungen mit ungespeicherten Änderungen</translation>
        </message>
        <message>
            <source>%1, changed %2</source>
            <translation>%1, geändert am %2</translation>
        </message>
        <message>
            <source>&amp;Open it</source>
            <translation>&amp;Öffnen</translation>
        </message>
        <message>
            <source>&amp;Discard it…</source>
            <translation>&amp;Verwerfen …</translation>
        </message>
        <message>
            <source>&amp;Later</source>
            <translation>&amp;Später</translation>
        </message>
        <message>
            <source>They are offered again at the next start</source>
            <translation>Sie werden beim nächsten Start wieder angeboten</translation>
        </message>
        <message>
            <source>Discard unsaved changes</source>
            <translation>Ungespeicherte Änderungen verwerfen</translation>
        </message>
        <message>
            <source>Discard the unsaved changes of %1? They cannot be brought back.</source>
            <translation>Die ungespeicherten Änderungen von %1 verwerfen? Sie lassen sich nicht wiederherstellen.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::LivePanels</name>
        <message>
            <source>Computing …</source>
            <translation>Berechnung läuft …</translation>
        </message>
        <message>
            <source>Curves come with the first circuit: add parts, or open a file.</source>
            <translation>Kurven gibt es mit der ersten Schaltung: Bauteile hinzufügen oder eine Datei öffnen.</translation>
        </message>
        <message>
            <source>No run: %1</source>
            <translation>Kein Lauf: %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::MainWindow</name>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <translation>&amp;Datei</translation>
        </message>
        <message>
            <source>&amp;New</source>
            <translation>&amp;Neu</translation>
        </message>
        <message>
            <source>&amp;Open…</source>
            <translation>&amp;Öffnen …</translation>
        </message>
        <message>
            <source>Open &amp;recent</source>
            <translation>&amp;Zuletzt geöffnet</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>&amp;Speichern</translation>
        </message>
        <message>
            <source>Save &amp;as…</source>
            <translation>Speichern &amp;unter …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+S</source>
            <translation>Ctrl+Shift+S</translation>
        </message>
        <message>
            <source>&amp;Import a record…</source>
            <translation>Aufzeichnung &amp;importieren …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+I</source>
            <translation>Ctrl+Shift+I</translation>
        </message>
        <message>
            <source>&amp;Export curves…</source>
            <translation>Kurven &amp;exportieren …</translation>
        </message>
        <message>
            <source>Ctrl+E</source>
            <translation>Ctrl+E</translation>
        </message>
        <message>
            <source>Copy &amp;picture of the curves</source>
            <translation>Bild der &amp;Kurven kopieren</translation>
        </message>
        <message>
            <source>Ctrl+Shift+P</source>
            <translation>Ctrl+Shift+P</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>&amp;Beenden</translation>
        </message>
        <message>
            <source>Ctrl+Q</source>
            <translation>Ctrl+Q</translation>
        </message>
        <message>
            <source>&amp;%1  %2</source>
            <translation>&amp;%1  %2</translation>
        </message>
        <message>
            <source>&amp;Clear this list</source>
            <translation>&amp;Liste leeren</translation>
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
            <source>Ctrl+Shift+Z</source>
            <translation>Ctrl+Shift+Z</translation>
        </message>
        <message>
            <source>Ctrl+Y</source>
            <translation>Ctrl+Y</translation>
        </message>
        <message>
            <source>&amp;Copy readings</source>
            <translation>Kennwerte k&amp;opieren</translation>
        </message>
        <message>
            <source>Ctrl+Shift+C</source>
            <translation>Ctrl+Shift+C</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>&amp;Ansicht</translation>
        </message>
        <message>
            <source>Fit the &amp;curves</source>
            <translation>&amp;Kurven einpassen</translation>
        </message>
        <message>
            <source>Ctrl+0</source>
            <translation>Ctrl+0</translation>
        </message>
        <message>
            <source>Fit the &amp;Hook-up</source>
            <translation>&amp;Verdrahtung einpassen</translation>
        </message>
        <message>
            <source>Ctrl+9</source>
            <translation>Ctrl+9</translation>
        </message>
        <message>
            <source>Zoom &amp;in</source>
            <translation>Ve&amp;rgrößern</translation>
        </message>
        <message>
            <source>Ctrl++</source>
            <translation>Ctrl++</translation>
        </message>
        <message>
            <source>Ctrl+=</source>
            <translation>Ctrl+=</translation>
        </message>
        <message>
            <source>Zoom &amp;out</source>
            <translation>Verk&amp;leinern</translation>
        </message>
        <message>
            <source>Ctrl+-</source>
            <translation>Ctrl+-</translation>
        </message>
        <message>
            <source>Clear the &amp;echo</source>
            <translation>&amp;Nachbild löschen</translation>
        </message>
        <message>
            <source>Esc</source>
            <translation>Esc</translation>
        </message>
        <message>
            <source>Curves from &amp;power-on</source>
            <translation>Kurven ab dem &amp;Einschalten</translation>
        </message>
        <message>
            <source>From power-on</source>
            <translation>Ab Einschalten</translation>
        </message>
        <message>
            <source>Curves from the moment the supply is switched on</source>
            <translation>Kurven ab dem Einschalten der Versorgung</translation>
        </message>
        <message>
            <source>Ctrl+1</source>
            <translation>Ctrl+1</translation>
        </message>
        <message>
            <source>Curves when &amp;settled</source>
            <translation>Kurven eingesch&amp;wungen</translation>
        </message>
        <message>
            <source>When settled</source>
            <translation>Eingeschwungen</translation>
        </message>
        <message>
            <source>Curves of the settled state, where every flash is like the last</source>
            <translation>Kurven im eingeschwungenen Zustand, in dem jeder Blitz dem vorigen gleicht</translation>
        </message>
        <message>
            <source>Ctrl+2</source>
            <translation>Ctrl+2</translation>
        </message>
        <message>
            <source>&amp;Appearance</source>
            <translation>Er&amp;scheinungsbild</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Hell</translation>
        </message>
        <message>
            <source>&amp;Dark</source>
            <translation>&amp;Dunkel</translation>
        </message>
        <message>
            <source>As the &amp;system</source>
            <translation>Wie das &amp;System</translation>
        </message>
        <message>
            <source>&amp;Next panel</source>
            <translation>Nä&amp;chster Bereich</translation>
        </message>
        <message>
            <source>F6</source>
            <translation>F6</translation>
        </message>
        <message>
            <source>Pre&amp;vious panel</source>
            <translation>V&amp;origer Bereich</translation>
        </message>
        <message>
            <source>Shift+F6</source>
            <translation>Shift+F6</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>&amp;Hilfe</translation>
        </message>
        <message>
            <source>&amp;Cautions…</source>
            <translation>&amp;Sicherheitshinweise …</translation>
        </message>
        <message>
            <source>F1</source>
            <translation>F1</translation>
        </message>
        <message>
            <source>&amp;About Blinkwright…</source>
            <translation>&amp;Über Blinkwright …</translation>
        </message>
        <message>
            <source>Tools</source>
            <translation>Werkzeuge</translation>
        </message>
        <message>
            <source>Curves</source>
            <translation>Kurven</translation>
        </message>
        <message>
            <source>F&amp;lashes</source>
            <translation>B&amp;litze</translation>
        </message>
        <message>
            <source>Number of flashes shown</source>
            <translation>Anzahl der gezeigten Blitze</translation>
        </message>
        <message>
            <source>Picture, 300 dpi (*.png)</source>
            <translation>Bild, 300 dpi (*.png)</translation>
        </message>
        <message>
            <source>Drawing (*.svg)</source>
            <translation>Zeichnung (*.svg)</translation>
        </message>
        <message>
            <source>Document page (*.pdf)</source>
            <translation>Dokumentseite (*.pdf)</translation>
        </message>
        <message>
            <source>Table of numbers (*.csv)</source>
            <translation>Zahlentabelle (*.csv)</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Export the curves</source>
            <translation>Kurven exportieren</translation>
        </message>
        <message>
            <source>Export</source>
            <translation>Exportieren</translation>
        </message>
        <message>
            <source>curves</source>
            <translation>kurven</translation>
        </message>
        <message>
            <source>The curves were not exported</source>
            <translation>Die Kurven wurden nicht exportiert</translation>
        </message>
        <message>
            <source>Circuit files (*.blinkwright);;All files (*)</source>
            <translation>Schaltungsdateien (*.blinkwright);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>The file was not opened</source>
            <translation>Die Datei wurde nicht geöffnet</translation>
        </message>
        <message>
            <source>Open a circuit</source>
            <translation>Schaltung öffnen</translation>
        </message>
        <message>
            <source>Import a record</source>
            <translation>Aufzeichnung importieren</translation>
        </message>
        <message>
            <source>Tables of an instrument (*.csv *.txt *.tsv *.dat);;All files (*)</source>
            <translation>Tabellen eines Messgeräts (*.csv *.txt *.tsv *.dat);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Import the record %1</source>
            <translation>Aufzeichnung %1 importieren</translation>
        </message>
        <message>
            <source>The record was not imported</source>
            <translation>Die Aufzeichnung wurde nicht importiert</translation>
        </message>
        <message>
            <source>Save the circuit as</source>
            <translation>Schaltung speichern unter</translation>
        </message>
        <message>
            <source>Unsaved changes</source>
            <translation>Ungespeicherte Änderungen</translation>
        </message>
        <message>
            <source>The new circuit is not saved. Save it?</source>
            <translation>Die neue Schaltung ist nicht gespeichert. Speichern?</translation>
        </message>
        <message>
            <source>%1 has changes that are not saved. Save them?</source>
            <translation>%1 hat ungespeicherte Änderungen. Speichern?</translation>
        </message>
        <message>
            <source>The circuit was not saved</source>
            <translation>Die Schaltung wurde nicht gespeichert</translation>
        </message>
        <message>
            <source>The file is not as it was</source>
            <translation>Die Datei ist nicht mehr wie vorher</translation>
        </message>
        <message>
            <source>Another program has changed %1 since it was opened. Saving would overwrite that change.</source>
            <translation>Ein anderes Programm hat %1 seit dem Öffnen geändert. Speichern würde diese Änderung überschreiben.</translation>
        </message>
        <message>
            <source>%1 has been moved or deleted since it was opened.</source>
            <translation>%1 wurde seit dem Öffnen verschoben oder gelöscht.</translation>
        </message>
        <message>
            <source>&amp;Overwrite it</source>
            <translation>&amp;Überschreiben</translation>
        </message>
        <message>
            <source>Save it &amp;anew</source>
            <translation>&amp;Neu speichern</translation>
        </message>
        <message>
            <source>&amp;Save as…</source>
            <translation>&amp;Speichern unter …</translation>
        </message>
        <message>
            <source>The file has changed</source>
            <translation>Die Datei hat sich geändert</translation>
        </message>
        <message>
            <source>Another program has changed %1. Read it again, and lose what is not saved here?</source>
            <translation>Ein anderes Programm hat %1 geändert. Neu einlesen und verlieren, was hier nicht gespeichert ist?</translation>
        </message>
        <message>
            <source>Another program has changed %1. Read it again?</source>
            <translation>Ein anderes Programm hat %1 geändert. Neu einlesen?</translation>
        </message>
        <message>
            <source>&amp;Read it again</source>
            <translation>&amp;Neu einlesen</translation>
        </message>
        <message>
            <source>&amp;Keep what is open</source>
            <translation>Geöffnetes &amp;behalten</translation>
        </message>
        <message>
            <source>The unsaved changes were not opened</source>
            <translation>Die ungespeicherten Änderungen wurden nicht geöffnet</translation>
        </message>
        <message>
            <source>Open a circuit file, or drop one here.</source>
            <translation>Eine Schaltungsdatei öffnen oder hier ablegen.</translation>
        </message>
        <message>
            <source>Hook-up</source>
            <translation>Verdrahtung</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Kennwerte</translation>
        </message>
        <message>
            <source>Values</source>
            <translation>Werte</translation>
        </message>
        <message>
            <source>Findings</source>
            <translation>Befunde</translation>
        </message>
        <message>
            <source>What the last run did</source>
            <translation>Ergebnis des letzten Laufs</translation>
        </message>
        <message>
            <source>New circuit</source>
            <translation>Neue Schaltung</translation>
        </message>
        <message>
            <source>%1[*] – Blinkwright</source>
            <translation>%1[*] – Blinkwright</translation>
        </message>
        <message>
            <source>S&amp;ymbols</source>
            <translation>S&amp;ymbole</translation>
        </message>
        <message>
            <source>&amp;IEC 60617</source>
            <translation>&amp;IEC 60617</translation>
        </message>
        <message>
            <source>I&amp;EEE 315</source>
            <translation>I&amp;EEE 315</translation>
        </message>
        <message>
            <source>&amp;Timer drawn as</source>
            <translation>&amp;Timer gezeichnet als</translation>
        </message>
        <message>
            <source>&amp;Package from above</source>
            <translation>&amp;Gehäuse von oben</translation>
        </message>
        <message>
            <source>&amp;Function block</source>
            <translation>&amp;Funktionsblock</translation>
        </message>
        <message>
            <source>Exported to %1</source>
            <translation>Exportiert nach %1</translation>
        </message>
        <message>
            <source>There are no curves to copy.</source>
            <translation>Es gibt keine Kurven zu kopieren.</translation>
        </message>
        <message>
            <source>The picture of the curves is on the clipboard.</source>
            <translation>Das Bild der Kurven ist in der Zwischenablage.</translation>
        </message>
        <message>
            <source>The numbers of the curves are on the clipboard.</source>
            <translation>Die Zahlen der Kurven sind in der Zwischenablage.</translation>
        </message>
        <message>
            <source>There are no readings to copy.</source>
            <translation>Es gibt keine Kennwerte zu kopieren.</translation>
        </message>
        <message>
            <source>The readings are on the clipboard.</source>
            <translation>Die Kennwerte sind in der Zwischenablage.</translation>
        </message>
        <message>
            <source>Imported the record %1</source>
            <translation>Die Aufzeichnung %1 wurde eingelesen</translation>
        </message>
        <message>
            <source>Saved</source>
            <translation>Gespeichert</translation>
        </message>
        <message>
            <source>Unsaved changes are not kept for a crash: %1</source>
            <translation>Ungespeicherte Änderungen werden nicht für den Fall eines Absturzes verwahrt: %1</translation>
        </message>
        <message>
            <source>Lan&amp;guage</source>
            <translation>Sprac&amp;he</translation>
        </message>
        <message>
            <source>The language changes when the program is started the next time.</source>
            <translation>Die Sprache wechselt beim nächsten Start des Programms.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::MeasureRoom</name>
        <message>
            <source>Measurements</source>
            <translation>Messungen</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <translation>Ko&amp;pieren</translation>
        </message>
        <message>
            <source>&amp;Stopwatch…</source>
            <translation>&amp;Stoppuhr …</translation>
        </message>
        <message>
            <source>&amp;Meter reading…</source>
            <translation>&amp;Ablesung …</translation>
        </message>
        <message>
            <source>&amp;Import a record…</source>
            <translation>Aufzeichnung &amp;importieren …</translation>
        </message>
        <message>
            <source>C&amp;hange…</source>
            <translation>Ä&amp;ndern …</translation>
        </message>
        <message>
            <source>D&amp;uplicate</source>
            <translation>D&amp;uplizieren</translation>
        </message>
        <message>
            <source>&amp;Delete</source>
            <translation>&amp;Löschen</translation>
        </message>
        <message>
            <source>Change the chosen measurement in its form (Enter)</source>
            <translation>Die gewählte Messung in ihrem Formular ändern (Enter)</translation>
        </message>
        <message>
            <source>Duplicate the chosen measurement (Ctrl+D)</source>
            <translation>Die gewählte Messung duplizieren (Ctrl+D)</translation>
        </message>
        <message>
            <source>Delete the chosen measurements (Delete)</source>
            <translation>Die gewählten Messungen löschen (Delete)</translation>
        </message>
        <message>
            <source>Ctrl+Shift+Z</source>
            <translation>Ctrl+Shift+Z</translation>
        </message>
        <message>
            <source>Ctrl+Y</source>
            <translation>Ctrl+Y</translation>
        </message>
        <message>
            <source>A record is not changed by hand: title and use alone can be. Import it anew for the rest.</source>
            <translation>Von Hand lassen sich an einer Aufzeichnung nur Titel und Verwendung ändern. Für alles andere neu importieren.</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Begin with the stopwatch: the flash rate is the easiest to measure.</source>
            <translation>Mit der Stoppuhr beginnen: Die Blinkrate ist am leichtesten zu messen.</translation>
        </message>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
        <message>
            <source>The measurements are on the clipboard.</source>
            <translation>Die Messungen sind in der Zwischenablage.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::MeasuredPanels</name>
        <message>
            <source>Measured &amp;records</source>
            <translation>&amp;Gemessene Aufzeichnungen</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::PartDialog</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>%1 (default)</source>
            <translation>%1 (Vorgabe)</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>must be stated</source>
            <translation>muss angegeben werden</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::PinsActions</name>
        <message>
            <source>&amp;Drawing of the Hook-up</source>
            <translation>&amp;Zeichnung der Verdrahtung</translation>
        </message>
        <message>
            <source>Ctrl+3</source>
            <translation>Ctrl+3</translation>
        </message>
        <message>
            <source>&amp;Pins of the Hook-up</source>
            <translation>&amp;Anschlüsse der Verdrahtung</translation>
        </message>
        <message>
            <source>Ctrl+4</source>
            <translation>Ctrl+4</translation>
        </message>
        <message>
            <source>Drawing</source>
            <translation>Zeichnung</translation>
        </message>
        <message>
            <source>Pins</source>
            <translation>Anschlüsse</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Choose a part to add</source>
            <translation>Bauteil zum Hinzufügen wählen</translation>
        </message>
        <message>
            <source>Ins</source>
            <translation>Ins</translation>
        </message>
        <message>
            <source>&amp;Delete</source>
            <translation>&amp;Löschen</translation>
        </message>
        <message>
            <source>Del</source>
            <translation>Del</translation>
        </message>
        <message>
            <source>&amp;Name and values…</source>
            <translation>&amp;Name und Werte …</translation>
        </message>
        <message>
            <source>Ctrl+Return</source>
            <translation>Ctrl+Return</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::PlayActions</name>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Pla&amp;y</source>
            <translation>&amp;Wiedergabe</translation>
        </message>
        <message>
            <source>&amp;Play</source>
            <translation>&amp;Abspielen</translation>
        </message>
        <message>
            <source>F9</source>
            <translation>F9</translation>
        </message>
        <message>
            <source>To the pre&amp;vious switching</source>
            <translation>Zur v&amp;origen Umschaltung</translation>
        </message>
        <message>
            <source>F7</source>
            <translation>F7</translation>
        </message>
        <message>
            <source>To the &amp;next switching</source>
            <translation>Zur &amp;nächsten Umschaltung</translation>
        </message>
        <message>
            <source>F8</source>
            <translation>F8</translation>
        </message>
        <message>
            <source>As fast as the &amp;board</source>
            <translation>So &amp;schnell wie die Platine</translation>
        </message>
        <message>
            <source>&amp;Four times slower</source>
            <translation>&amp;Viermal langsamer</translation>
        </message>
        <message>
            <source>&amp;Twenty times slower</source>
            <translation>&amp;Zwanzigmal langsamer</translation>
        </message>
        <message>
            <source>%1, 1:%2</source>
            <translation>%1, 1:%2</translation>
        </message>
        <message>
            <source>1:%1</source>
            <translation>1:%1</translation>
        </message>
        <message>
            <source>Go &amp;round in the settled cycles</source>
            <translation>Eingeschwungene Perioden &amp;wiederholen</translation>
        </message>
        <message>
            <source>Show &amp;lamps as bars</source>
            <translation>&amp;Lampen als Balken zeigen</translation>
        </message>
        <message>
            <source>To the next switching</source>
            <translation>Zur nächsten Umschaltung</translation>
        </message>
        <message>
            <source>To the previous switching</source>
            <translation>Zur vorigen Umschaltung</translation>
        </message>
        <message>
            <source>&amp;Pause</source>
            <translation>&amp;Pause</translation>
        </message>
        <message>
            <source>Pause</source>
            <translation>Pause</translation>
        </message>
        <message>
            <source>Play: move the moment line over the run</source>
            <translation>Abspielen: die Zeitmarke über den Lauf bewegen</translation>
        </message>
        <message>
            <source>Steady: the display cannot follow %1 flashes a second; the eye still may.</source>
            <translation>Ruhig: Die Anzeige kann %1 Blitzen je Sekunde nicht folgen; das Auge vielleicht doch.</translation>
        </message>
        <message>
            <source>Bars show the mean current: %1 flashes a second.</source>
            <translation>Balken zeigen den mittleren Strom: %1 Blitze je Sekunde.</translation>
        </message>
        <message>
            <source>How to show the lamps</source>
            <translation>Wie die Lampen gezeigt werden</translation>
        </message>
        <message>
            <source>This blinker flashes %1 times a second at this speed.</source>
            <translation>Dieser Blinker blitzt bei diesem Tempo %1-mal je Sekunde.</translation>
        </message>
        <message>
            <source>The lamps can glow as they flash. Or bars can show the current, without flicker: easier on the eyes of some people.

The Play menu changes this at any time.</source>
            <translation>Die Lampen können leuchten, wie sie blitzen. Oder Balken zeigen den Strom, ohne Flackern: für manche Augen schonender.

Im Menü „Wiedergabe“ lässt sich das jederzeit ändern.</translation>
        </message>
        <message>
            <source>&amp;Glow</source>
            <translation>&amp;Leuchten</translation>
        </message>
        <message>
            <source>&amp;Bars</source>
            <translation>&amp;Balken</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::PlayStrip</name>
        <message>
            <source>Board time to real time</source>
            <translation>Platinenzeit zu Echtzeit</translation>
        </message>
        <message>
            <source>Play</source>
            <translation>Wiedergabe</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::ReadyActions</name>
        <message>
            <source>New from a ready &amp;blinker…</source>
            <translation>Neu aus &amp;fertigem Blinker …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+N</source>
            <translation>Ctrl+Shift+N</translation>
        </message>
        <message>
            <source>&amp;Wiring list…</source>
            <translation>Ve&amp;rdrahtungsliste …</translation>
        </message>
        <message>
            <source>Ctrl+L</source>
            <translation>Ctrl+L</translation>
        </message>
        <message>
            <source>Save the wiring list</source>
            <translation>Verdrahtungsliste speichern</translation>
        </message>
        <message>
            <source>Document page (*.pdf)</source>
            <translation>Dokumentseite (*.pdf)</translation>
        </message>
        <message>
            <source>Export the parts list</source>
            <translation>Bauteilliste exportieren</translation>
        </message>
        <message>
            <source>Table (*.csv)</source>
            <translation>Tabelle (*.csv)</translation>
        </message>
        <message>
            <source>Print the wiring list</source>
            <translation>Verdrahtungsliste drucken</translation>
        </message>
        <message>
            <source>circuit</source>
            <translation>schaltung</translation>
        </message>
        <message>
            <source>parts</source>
            <translation>bauteile</translation>
        </message>
        <message>
            <source>wiring</source>
            <translation>verdrahtung</translation>
        </message>
        <message>
            <source>The file was not written</source>
            <translation>Die Datei wurde nicht geschrieben</translation>
        </message>
        <message>
            <source>Made %1</source>
            <translation>%1 wurde gemacht</translation>
        </message>
        <message>
            <source>The wiring list is on the clipboard.</source>
            <translation>Die Verdrahtungsliste ist in der Zwischenablage.</translation>
        </message>
        <message>
            <source>Exported to %1</source>
            <translation>Exportiert nach %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::RecordImportDialog</name>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>It begins with &amp;power-on: the first flash is the one from an empty capacitor</source>
            <translation>Beginnt mit dem &amp;Einschalten: Der erste Blitz ist der aus dem leeren Kondensator</translation>
        </message>
        <message>
            <source>Import a record – %1</source>
            <translation>Aufzeichnung importieren – %1</translation>
        </message>
        <message>
            <source>What was taken for what</source>
            <translation>Was als was gelesen wurde</translation>
        </message>
        <message>
            <source>Standard uncertainty of the instrument's time base: 0.01 %, 50e-6. Its data sheet says it.</source>
            <translation>Standardunsicherheit der Zeitbasis des Messgeräts, etwa 0,01 % oder 50e-6. Sie steht in seinem Datenblatt.</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>The file's first lines</source>
            <translation>Die ersten Zeilen der Datei</translation>
        </message>
        <message>
            <source>What stands where</source>
            <translation>Was wo steht</translation>
        </message>
        <message>
            <source>The record</source>
            <translation>Die Aufzeichnung</translation>
        </message>
        <message>
            <source>T&amp;itle</source>
            <translation>T&amp;itel</translation>
        </message>
        <message>
            <source>Uncertainty of its time &amp;base</source>
            <translation>Unsicherheit der Zeit&amp;basis</translation>
        </message>
        <message>
            <source>I&amp;mport</source>
            <translation>I&amp;mportieren</translation>
        </message>
        <message>
            <source>&amp;Stop reading</source>
            <translation>&amp;Lesen abbrechen</translation>
        </message>
        <message>
            <source>%1 switchings, %2 whole cycles.</source>
            <translation>%1 Umschaltungen, %2 ganze Perioden.</translation>
        </message>
        <message>
            <source>For a cycle time the record must hold two rises of the output.</source>
            <translation>Für eine Periodendauer muss die Aufzeichnung zwei steigende Flanken des Ausgangs enthalten.</translation>
        </message>
        <message>
            <source>Nothing is read yet.</source>
            <translation>Noch ist nichts gelesen.</translation>
        </message>
        <message>
            <source>Reading was stopped. The next change of a setting reads the file again.</source>
            <translation>Das Einlesen wurde abgebrochen. Die nächste Änderung einer Einstellung liest die Datei neu ein.</translation>
        </message>
        <message>
            <source>Reading…</source>
            <translation>Wird eingelesen …</translation>
        </message>
        <message>
            <source>It cannot be read so: %1</source>
            <translation>So ist sie nicht zu lesen: %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::Recovery</name>
        <message>
            <source>this is no recovery file</source>
            <translation>dies ist keine Wiederherstellungsdatei</translation>
        </message>
        <message>
            <source>the folder cannot be made</source>
            <translation>der Ordner lässt sich nicht anlegen</translation>
        </message>
        <message>
            <source>the folder cannot be written to</source>
            <translation>in den Ordner lässt sich nicht schreiben</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::Room</name>
        <message>
            <source>There is no circuit yet: add parts on the Hook-up, or open a file.</source>
            <translation>Es gibt noch keine Schaltung: Bauteile in der Verdrahtung hinzufügen oder eine Datei öffnen.</translation>
        </message>
        <message>
            <source>Cancelled. The next change, or opening this window again, asks anew.</source>
            <translation>Abgebrochen. Die nächste Änderung oder erneutes Öffnen dieses Fensters fragt neu.</translation>
        </message>
        <message>
            <source>circuit</source>
            <translation>schaltung</translation>
        </message>
        <message>
            <source>The file was not written</source>
            <translation>Die Datei wurde nicht geschrieben</translation>
        </message>
        <message>
            <source>Exported to %1</source>
            <translation>Exportiert nach %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::RoomActions</name>
        <message>
            <source>&amp;Ask</source>
            <translation>&amp;Fragen</translation>
        </message>
        <message>
            <source>&amp;Why it differs…</source>
            <translation>&amp;Warum es abweicht …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+Y</source>
            <translation>Ctrl+Shift+Y</translation>
        </message>
        <message>
            <source>What the &amp;eye sees…</source>
            <translation>Was das &amp;Auge sieht …</translation>
        </message>
        <message>
            <source>Ctrl+I</source>
            <translation>Ctrl+I</translation>
        </message>
        <message>
            <source>&amp;Trend…</source>
            <translation>&amp;Trend …</translation>
        </message>
        <message>
            <source>Ctrl+T</source>
            <translation>Ctrl+T</translation>
        </message>
        <message>
            <source>&amp;Spread…</source>
            <translation>&amp;Streuung …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+D</source>
            <translation>Ctrl+Shift+D</translation>
        </message>
        <message>
            <source>&amp;Choose values…</source>
            <translation>Werte wä&amp;hlen …</translation>
        </message>
        <message>
            <source>Ctrl+K</source>
            <translation>Ctrl+K</translation>
        </message>
        <message>
            <source>&amp;Measurements…</source>
            <translation>&amp;Messungen …</translation>
        </message>
        <message>
            <source>Ctrl+M</source>
            <translation>Ctrl+M</translation>
        </message>
        <message>
            <source>&amp;Account for it…</source>
            <translation>Abweichung &amp;erklären …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+M</source>
            <translation>Ctrl+Shift+M</translation>
        </message>
        <message>
            <source>S&amp;ymptoms…</source>
            <translation>S&amp;ymptome …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+F</source>
            <translation>Ctrl+Shift+F</translation>
        </message>
        <message>
            <source>The &amp;drawer…</source>
            <translation>Schubla&amp;de …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+K</source>
            <translation>Ctrl+Shift+K</translation>
        </message>
        <message>
            <source>&amp;Lab sheet…</source>
            <translation>&amp;Laborblatt …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+L</source>
            <translation>Ctrl+Shift+L</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::SecondSet</name>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
        <message>
            <source>B</source>
            <translation>B</translation>
        </message>
        <message>
            <source>No run of %1: %2</source>
            <translation>Kein Lauf von %1: %2</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::SetActions</name>
        <message>
            <source>&amp;Sets</source>
            <translation>&amp;Sätze</translation>
        </message>
        <message>
            <source>Copy &amp;A to B</source>
            <translation>&amp;A nach B kopieren</translation>
        </message>
        <message>
            <source>Ctrl+Shift+B</source>
            <translation>Ctrl+Shift+B</translation>
        </message>
        <message>
            <source>Copy &amp;B to A</source>
            <translation>&amp;B nach A kopieren</translation>
        </message>
        <message>
            <source>Ctrl+Shift+A</source>
            <translation>Ctrl+Shift+A</translation>
        </message>
        <message>
            <source>S&amp;wap A and B</source>
            <translation>A und B &amp;tauschen</translation>
        </message>
        <message>
            <source>Ctrl+Shift+W</source>
            <translation>Ctrl+Shift+W</translation>
        </message>
        <message>
            <source>&amp;Compare with file…</source>
            <translation>Mit Datei &amp;vergleichen …</translation>
        </message>
        <message>
            <source>S&amp;top comparing</source>
            <translation>Ver&amp;gleich beenden</translation>
        </message>
        <message>
            <source>E&amp;xports hold</source>
            <translation>E&amp;xporte enthalten</translation>
        </message>
        <message>
            <source>&amp;all curves that are shown</source>
            <translation>&amp;alle gezeigten Kurven</translation>
        </message>
        <message>
            <source>&amp;Set A alone</source>
            <translation>nur &amp;Satz A</translation>
        </message>
        <message>
            <source>what it is &amp;compared with alone</source>
            <translation>nur das, womit &amp;verglichen wird</translation>
        </message>
        <message>
            <source>Compare with Set &amp;B</source>
            <translation>Mit Satz &amp;B vergleichen</translation>
        </message>
        <message>
            <source>Ctrl+B</source>
            <translation>Ctrl+B</translation>
        </message>
        <message>
            <source>The file cannot be compared with</source>
            <translation>Mit der Datei lässt sich nicht vergleichen</translation>
        </message>
        <message>
            <source>Compare with a circuit file</source>
            <translation>Mit einer Schaltungsdatei vergleichen</translation>
        </message>
        <message>
            <source>Circuits (*.blinkwright);;All files (*)</source>
            <translation>Schaltungen (*.blinkwright);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Set A is compared with %1. Stop comparing is in the File menu.</source>
            <translation>Satz A wird mit %1 verglichen. Der Vergleich lässt sich im Menü Datei beenden.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::SpreadRoom</name>
        <message>
            <source>Spread</source>
            <translation>Streuung</translation>
        </message>
        <message>
            <source>The same seed gives the same boards</source>
            <translation>Derselbe Startwert ergibt dieselben Platinen</translation>
        </message>
        <message>
            <source>evenly over the tolerance</source>
            <translation>gleichmäßig über die Toleranz</translation>
        </message>
        <message>
            <source>normally, three sigma at the limit</source>
            <translation>normal, drei Sigma an der Grenze</translation>
        </message>
        <message>
            <source>as a triangle</source>
            <translation>als Dreieck</translation>
        </message>
        <message>
            <source>&amp;Show:</source>
            <translation>&amp;Zeigen:</translation>
        </message>
        <message>
            <source>&amp;Boards:</source>
            <translation>P&amp;latinen:</translation>
        </message>
        <message>
            <source>S&amp;eed:</source>
            <translation>&amp;Startwert:</translation>
        </message>
        <message>
            <source>Va&amp;lues lie:</source>
            <translation>&amp;Werte verteilt:</translation>
        </message>
        <message>
            <source>Co&amp;py table</source>
            <translation>Tabelle ko&amp;pieren</translation>
        </message>
        <message>
            <source>E&amp;xport</source>
            <translation>E&amp;xportieren</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tabelle</translation>
        </message>
        <message>
            <source>&amp;Picture…</source>
            <translation>&amp;Bild …</translation>
        </message>
        <message>
            <source>Export the picture</source>
            <translation>Bild exportieren</translation>
        </message>
        <message>
            <source>Picture</source>
            <translation>Bild</translation>
        </message>
        <message>
            <source>Drawing</source>
            <translation>Zeichnung</translation>
        </message>
        <message>
            <source>Page</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>&amp;Figures…</source>
            <translation>&amp;Zahlenwerte …</translation>
        </message>
        <message>
            <source>Export the figures</source>
            <translation>Zahlenwerte exportieren</translation>
        </message>
        <message>
            <source>All &amp;boards…</source>
            <translation>&amp;Alle Platinen …</translation>
        </message>
        <message>
            <source>Export all boards</source>
            <translation>Alle Platinen exportieren</translation>
        </message>
        <message>
            <source>No part states a tolerance: all boards are alike. Give parts one by F2 on the Hook-up.</source>
            <translation>Kein Bauteil gibt eine Toleranz an: Alle Platinen sind gleich. Toleranzen in der Verdrahtung mit F2 eintragen.</translation>
        </message>
        <message>
            <source>there is nothing to write</source>
            <translation>es gibt nichts zu schreiben</translation>
        </message>
        <message>
            <source>The table is on the clipboard.</source>
            <translation>Die Tabelle ist in der Zwischenablage.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::SymptomsRoom</name>
        <message>
            <source>Symptoms</source>
            <translation>Symptome</translation>
        </message>
        <message>
            <source>&amp;Likely faults</source>
            <translation>&amp;Wahrscheinliche Fehler</translation>
        </message>
        <message>
            <source>Chec&amp;k card</source>
            <translation>Prüf&amp;karte</translation>
        </message>
        <message>
            <source>Co&amp;py as text</source>
            <translation>Als Text ko&amp;pieren</translation>
        </message>
        <message>
            <source>P&amp;rint card…</source>
            <translation>Karte d&amp;rucken …</translation>
        </message>
        <message>
            <source>E&amp;xport card…</source>
            <translation>Karte e&amp;xportieren …</translation>
        </message>
        <message>
            <source>Export the check card</source>
            <translation>Prüfkarte exportieren</translation>
        </message>
        <message>
            <source>check-card</source>
            <translation>prüfkarte</translation>
        </message>
        <message>
            <source>Page</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>Text</source>
            <translation>Text</translation>
        </message>
        <message>
            <source>The board as drawn comes to no settled state, so that there is nothing to compare with.</source>
            <translation>Die Platine erreicht, wie gezeichnet, keinen eingeschwungenen Zustand; daher gibt es nichts, womit sich vergleichen ließe.</translation>
        </message>
        <message>
            <source>%1 single faults were simulated. Tick what is seen, or type a reading; until then the order is by how often such faults happen.</source>
            <translation>%1 Einzelfehler wurden simuliert. Ankreuzen, was zu sehen ist, oder eine Ablesung eingeben; bis dahin ist nach der Häufigkeit solcher Fehler geordnet.</translation>
        </message>
        <message>
            <source>%1 single faults were compared with what was seen and measured. Choose a row: its place is shown on the Hook-up.</source>
            <translation>%1 Einzelfehler wurden mit dem Gesehenen und Gemessenen verglichen. Eine Zeile wählen: Ihre Stelle wird in der Verdrahtung gezeigt.</translation>
        </message>
        <message>
            <source>Print the check card</source>
            <translation>Prüfkarte drucken</translation>
        </message>
        <message>
            <source>there are no readings yet</source>
            <translation>es gibt noch keine Ablesungen</translation>
        </message>
        <message>
            <source>The likely faults are on the clipboard.</source>
            <translation>Die wahrscheinlichen Fehler sind in der Zwischenablage.</translation>
        </message>
        <message>
            <source>The check card is on the clipboard.</source>
            <translation>Die Prüfkarte ist in der Zwischenablage.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::TrendRoom</name>
        <message>
            <source>Trend</source>
            <translation>Trend</translation>
        </message>
        <message>
            <source>Co&amp;py data</source>
            <translation>Daten ko&amp;pieren</translation>
        </message>
        <message>
            <source>E&amp;xport…</source>
            <translation>E&amp;xportieren …</translation>
        </message>
        <message>
            <source>Export the trend</source>
            <translation>Trend exportieren</translation>
        </message>
        <message>
            <source>Picture</source>
            <translation>Bild</translation>
        </message>
        <message>
            <source>Drawing</source>
            <translation>Zeichnung</translation>
        </message>
        <message>
            <source>Page</source>
            <translation>Seite</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tabelle</translation>
        </message>
        <message>
            <source>in equal ratios</source>
            <translation>in gleichen Verhältnissen</translation>
        </message>
        <message>
            <source>in even steps</source>
            <translation>in gleichen Abständen</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>How the values lie along the axis: in equal ratios (logarithmic) or evenly</source>
            <translation>Wie die Werte auf der Achse liegen: in gleichen Verhältnissen (logarithmisch) oder in gleichen Abständen</translation>
        </message>
        <message>
            <source>&amp;Usual range</source>
            <translation>&amp;Üblicher Bereich</translation>
        </message>
        <message>
            <source>Two decades around the present value; for a supply, the fall of a battery</source>
            <translation>Zwei Dekaden um den jetzigen Wert; bei einer Versorgung das Absinken einer Batterie</translation>
        </message>
        <message>
            <source>&amp;Value:</source>
            <translation>&amp;Wert:</translation>
        </message>
        <message>
            <source>&amp;Show:</source>
            <translation>&amp;Zeigen:</translation>
        </message>
        <message>
            <source>&amp;From:</source>
            <translation>&amp;Von:</translation>
        </message>
        <message>
            <source>&amp;to:</source>
            <translation>&amp;bis:</translation>
        </message>
        <message>
            <source>A range wants its smaller end first, and two different ends.</source>
            <translation>Ein Bereich braucht zuerst das kleinere Ende und zwei verschiedene Enden.</translation>
        </message>
        <message>
            <source>Equal ratios want both ends above 0.</source>
            <translation>Gleiche Verhältnisse brauchen beide Enden über 0.</translation>
        </message>
        <message>
            <source>end of travel, %1</source>
            <translation>Anschlag, %1</translation>
        </message>
        <message>
            <source>timer sure from %1</source>
            <translation>Timer sicher ab %1</translation>
        </message>
        <message>
            <source>timer up to %1</source>
            <translation>Timer bis %1</translation>
        </message>
        <message>
            <source>battery empty, %1</source>
            <translation>Batterie leer, %1</translation>
        </message>
        <message>
            <source>There is no number here that could move.</source>
            <translation>Hier gibt es keine Zahl, die sich ändern ließe.</translation>
        </message>
        <message>
            <source>there is nothing to write</source>
            <translation>es gibt nichts zu schreiben</translation>
        </message>
        <message>
            <source>. Set B: %1</source>
            <translation>. Satz B: %1</translation>
        </message>
        <message>
            <source>The points of the curves are on the clipboard.</source>
            <translation>Die Punkte der Kurven sind in der Zwischenablage.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::WhyRoom</name>
        <message>
            <source>Each cause is simulated by itself on the textbook circuit; “Together” is what the causes do to each other.</source>
            <translation>Jede Ursache ist für sich an der Lehrbuchschaltung simuliert; „Zusammen“ ist, was die Ursachen aneinander bewirken.</translation>
        </message>
        <message>
            <source>Why it differs</source>
            <translation>Warum es abweicht</translation>
        </message>
        <message>
            <source>Cycle time</source>
            <translation>Periodendauer</translation>
        </message>
        <message>
            <source>Duty cycle</source>
            <translation>Tastgrad</translation>
        </message>
        <message>
            <source>Bars &amp;show:</source>
            <translation>&amp;Balken zeigen:</translation>
        </message>
        <message>
            <source>Co&amp;py</source>
            <translation>Ko&amp;pieren</translation>
        </message>
        <message>
            <source>The table of causes is on the clipboard.</source>
            <translation>Die Tabelle der Ursachen ist in der Zwischenablage.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet</name>
        <message>
            <source>Lamp blinker</source>
            <translation>Lampenblinker</translation>
        </message>
        <message>
            <source>Student copy</source>
            <translation>Schülerblatt</translation>
        </message>
        <message>
            <source>Answer key</source>
            <translation>Lösungsblatt</translation>
        </message>
        <message>
            <source>Variant %1</source>
            <translation>Variante %1</translation>
        </message>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
        <message>
            <source>Author</source>
            <translation>Autor</translation>
        </message>
        <message>
            <source>Date</source>
            <translation>Datum</translation>
        </message>
        <message>
            <source>Partner</source>
            <translation>Partner</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Gruppe</translation>
        </message>
        <message>
            <source>To predict the flash rate and the duty cycle of this circuit from the values of its parts, to measure both on the board, and to account for the difference.</source>
            <translation>Blinkrate und Tastgrad dieser Schaltung aus den Werten ihrer Bauteile vorhersagen, beides an der Platine messen und die Abweichung erklären.</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Bauteile</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Bauteil</translation>
        </message>
        <message>
            <source>Marking</source>
            <translation>Aufdruck</translation>
        </message>
        <message>
            <source>Designators</source>
            <translation>Bezeichner</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Set B, where it differs</source>
            <translation>Satz B, wo er abweicht</translation>
        </message>
        <message>
            <source>Values are those of Set A.</source>
            <translation>Die Werte sind die von Satz A.</translation>
        </message>
        <message>
            <source>The rules of your school, laboratory and country come before this sheet.</source>
            <translation>Die Regeln von Schule, Labor und Land gehen diesem Blatt vor.</translation>
        </message>
        <message>
            <source>Stopwatch</source>
            <translation>Stoppuhr</translation>
        </message>
        <message>
            <source>Meter</source>
            <translation>Messgerät</translation>
        </message>
        <message>
            <source>Oscilloscope or logger</source>
            <translation>Oszilloskop oder Datenlogger</translation>
        </message>
        <message>
            <source>Temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>Build the circuit by the wiring list. Let somebody else check it before the supply is joined.</source>
            <translation>Die Schaltung nach der Verdrahtungsliste aufbauen. Vor dem Anschließen der Versorgung von jemand anderem prüfen lassen.</translation>
        </message>
        <message>
            <source>Measure the supply at its terminals while the circuit runs.</source>
            <translation>Die Versorgungsspannung an den Klemmen messen, während die Schaltung läuft.</translation>
        </message>
        <message>
            <source>Count 20 flashes by stopwatch, from the start of a flash to the start of the twentieth after it; repeat three times.</source>
            <translation>20 Blitze mit der Stoppuhr zählen, vom Beginn eines Blitzes bis zum Beginn des zwanzigsten danach; dreimal wiederholen.</translation>
        </message>
        <message>
            <source>Record pin 3 and pin 6 against pin 1 over several cycles, and read pulse width and space width.</source>
            <translation>Pin 3 und Pin 6 gegen Pin 1 über mehrere Perioden aufzeichnen und Impulsbreite und Pausenbreite ablesen.</translation>
        </message>
        <message>
            <source>Measure the output (pin 3) while high and while low, and the current of each lamp while it is lit.</source>
            <translation>Den Ausgang (Pin 3) bei High und bei Low messen und den Strom jeder Lampe, während sie leuchtet.</translation>
        </message>
        <message>
            <source>State an uncertainty beside every reading.</source>
            <translation>Zu jeder Ablesung eine Unsicherheit angeben.</translation>
        </message>
        <message>
            <source>What was measured</source>
            <translation>Was gemessen wurde</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>the pages could not be made</source>
            <translation>die Seiten konnten nicht erzeugt werden</translation>
        </message>
        <message>
            <source>the name must end in .pdf, .html or .odt</source>
            <translation>der Name muss auf .pdf, .html oder .odt enden</translation>
        </message>
        <message>
            <source>Time (s)</source>
            <translation>Zeit (s)</translation>
        </message>
        <message>
            <source>Sketch the output (pin 3) and the voltage of the timing capacitor (pin 6) over two cycles.</source>
            <translation>Den Ausgang (Pin 3) und die Spannung des zeitbestimmenden Kondensators (Pin 6) über zwei Perioden skizzieren.</translation>
        </message>
        <message>
            <source>Squares to sketch the traces on</source>
            <translation>Raster zum Skizzieren der Zeitverläufe</translation>
        </message>
        <message>
            <source>Voltage (V)</source>
            <translation>Spannung (V)</translation>
        </message>
        <message>
            <source>Settled: output (pin 3), timing capacitor with its two switching levels, lamp currents.</source>
            <translation>Eingeschwungen: Ausgang (Pin 3), zeitbestimmender Kondensator mit seinen zwei Schaltschwellen, Lampenströme.</translation>
        </message>
        <message>
            <source>From power-on: output (pin 3), timing capacitor with its two switching levels, lamp currents.</source>
            <translation>Ab dem Einschalten: Ausgang (Pin 3), zeitbestimmender Kondensator mit seinen zwei Schaltschwellen, Lampenströme.</translation>
        </message>
        <message>
            <source>Set A indigo, Set B ochre.</source>
            <translation>Satz A indigo, Satz B ocker.</translation>
        </message>
        <message>
            <source>Black, laid over: measured, %1.</source>
            <translation>Schwarz, darübergelegt: gemessen, %1.</translation>
        </message>
        <message>
            <source>The circuit with the values of Set A; the small numbers are the timer's pins.</source>
            <translation>Die Schaltung mit den Werten von Satz A; die kleinen Zahlen sind die Pins des Timers.</translation>
        </message>
        <message>
            <source>The circuit; the small numbers are the timer's pins.</source>
            <translation>Die Schaltung; die kleinen Zahlen sind die Pins des Timers.</translation>
        </message>
        <message>
            <source>The drawing of the circuit; its parts and joints are told in words under Wiring.</source>
            <translation>Die Zeichnung der Schaltung; ihre Bauteile und Verbindungen sind unter Verdrahtung in Worten beschrieben.</translation>
        </message>
        <message>
            <source>There are no traces: the circuit does not run.</source>
            <translation>Es gibt keine Zeitverläufe: Die Schaltung läuft nicht.</translation>
        </message>
        <message>
            <source>Three strips on one time axis: output, timing capacitor, lamp currents.</source>
            <translation>Drei Streifen über einer Zeitachse: Ausgang, zeitbestimmender Kondensator, Lampenströme.</translation>
        </message>
        <message>
            <source>Timer %1</source>
            <translation>Timer %1</translation>
        </message>
        <message>
            <source>Cycle time T</source>
            <translation>Periodendauer T</translation>
        </message>
        <message>
            <source>Flash rate f</source>
            <translation>Blinkrate f</translation>
        </message>
        <message>
            <source>Flashes a minute</source>
            <translation>Blitze je Minute</translation>
        </message>
        <message>
            <source>Pulse width (high)</source>
            <translation>Impulsbreite (high)</translation>
        </message>
        <message>
            <source>Space width (low)</source>
            <translation>Pausenbreite (low)</translation>
        </message>
        <message>
            <source>Duty cycle D</source>
            <translation>Tastgrad D</translation>
        </message>
        <message>
            <source>First flash</source>
            <translation>Erster Blitz</translation>
        </message>
        <message>
            <source>Voltages</source>
            <translation>Spannungen</translation>
        </message>
        <message>
            <source>Supply at its terminals</source>
            <translation>Versorgung an den Klemmen</translation>
        </message>
        <message>
            <source>Output (pin 3) while high</source>
            <translation>Ausgang (Pin 3) bei High</translation>
        </message>
        <message>
            <source>Output (pin 3) while low</source>
            <translation>Ausgang (Pin 3) bei Low</translation>
        </message>
        <message>
            <source>Lamp %1</source>
            <translation>Lampe %1</translation>
        </message>
        <message>
            <source>Current while lit, mean</source>
            <translation>Strom beim Leuchten, Mittel</translation>
        </message>
        <message>
            <source>Lit time in a cycle</source>
            <translation>Leuchtdauer je Periode</translation>
        </message>
        <message>
            <source>Peak current</source>
            <translation>Spitzenstrom</translation>
        </message>
        <message>
            <source>Mean current</source>
            <translation>Mittlerer Strom</translation>
        </message>
        <message>
            <source>Charge a flash</source>
            <translation>Ladung je Blitz</translation>
        </message>
        <message>
            <source>Supply %1</source>
            <translation>Versorgung %1</translation>
        </message>
        <message>
            <source>Battery life</source>
            <translation>Batterielaufzeit</translation>
        </message>
        <message>
            <source>The measured cycle time lies %1 times its standard uncertainty from the simulated one.</source>
            <translation>Die gemessene Periodendauer liegt um das %1-Fache ihrer Standardunsicherheit neben der simulierten.</translation>
        </message>
        <message>
            <source>By simulation the circuit does not blink: %1.</source>
            <translation>Nach der Simulation blinkt die Schaltung nicht: %1.</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Kennwerte</translation>
        </message>
        <message>
            <source>Predicted: by the formulas of the theory. Uncertainty: standard uncertainty, k = 1 (JCGM 100:2008).</source>
            <translation>Vorhergesagt: nach den Formeln der Theorie. Unsicherheit: Standardunsicherheit, k = 1 (JCGM 100:2008).</translation>
        </message>
        <message>
            <source>Two measurements of one figure lie further apart than their uncertainties allow: one of them is wrong, or the board changed between them.</source>
            <translation>Zwei Messungen derselben Größe liegen weiter auseinander, als ihre Unsicherheiten zulassen: Eine davon ist falsch, oder die Platine hat sich zwischen ihnen verändert.</translation>
        </message>
        <message>
            <source>The textbook's figures are those of Set A's values. </source>
            <translation>Die Lehrbuchwerte gelten für die Werte von Satz A. </translation>
        </message>
        <message>
            <source>u: standard uncertainty, k = 1 (JCGM 100:2008); measured numbers are rounded by them. </source>
            <translation>u: Standardunsicherheit, k = 1 (JCGM 100:2008); danach sind gemessene Zahlen gerundet. </translation>
        </message>
        <message>
            <source>Simulated figures are of the settled cycle, with the timer's typical values.</source>
            <translation>Simulierte Werte gelten für die eingeschwungene Periode, mit den typischen Werten des Timers.</translation>
        </message>
        <message>
            <source>%1, standard uncertainty %2</source>
            <translation>%1, Standardunsicherheit %2</translation>
        </message>
        <message>
            <source>%1 flashes in %2</source>
            <translation>%1 Blitze in %2</translation>
        </message>
        <message>
            <source>%1 of %2: %3</source>
            <translation>%1 von %2: %3</translation>
        </message>
        <message>
            <source>Record %1: %2 switchings</source>
            <translation>Aufzeichnung %1: %2 Umschaltungen</translation>
        </message>
        <message>
            <source>%1 points</source>
            <translation>%1 %-Punkte</translation>
        </message>
        <message>
            <source>The measured cycle time lies within the middle 90 % of the boards.</source>
            <translation>Die gemessene Periodendauer liegt innerhalb der mittleren 90 % der Platinen.</translation>
        </message>
        <message>
            <source>The measured cycle time lies outside the middle 90 % of the boards, but within the worst case: the tolerances alone can explain it.</source>
            <translation>Die gemessene Periodendauer liegt außerhalb der mittleren 90 % der Platinen, aber innerhalb des ungünstigsten Falls: Die Toleranzen allein können sie erklären.</translation>
        </message>
        <message>
            <source>The measured cycle time lies outside the worst case: the tolerances alone do not explain it.</source>
            <translation>Die gemessene Periodendauer liegt außerhalb des ungünstigsten Falls: Die Toleranzen allein erklären sie nicht.</translation>
        </message>
        <message>
            <source>%1 %2 %</source>
            <translation>%1 %2 %</translation>
        </message>
        <message>
            <source>Shares of the variance of the flash rate: %1.</source>
            <translation>Anteile an der Varianz der Blinkrate: %1.</translation>
        </message>
        <message>
            <source>Fault</source>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>Overstress</source>
            <translation>Überlastung</translation>
        </message>
        <message>
            <source>Doubtful</source>
            <translation>Zweifelhaft</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Hinweis</translation>
        </message>
        <message>
            <source>%L1 boards with every part somewhere within its tolerance (drawn alike over all of it, seed %2); %3 of them blink.</source>
            <translation>%L1 Platinen, bei denen jedes Bauteil irgendwo innerhalb seiner Toleranz liegt (über die ganze Toleranz gleichverteilt gezogen, Startwert %2); %3 davon blinken.</translation>
        </message>
        <message>
            <source>Spread</source>
            <translation>Streuung</translation>
        </message>
        <message>
            <source>Figure</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Nominal</source>
            <translation>Nennwert</translation>
        </message>
        <message>
            <source>Mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>Standard deviation</source>
            <translation>Standardabweichung</translation>
        </message>
        <message>
            <source>90 % lie in</source>
            <translation>90 % liegen in</translation>
        </message>
        <message>
            <source>Worst case</source>
            <translation>Ungünstigster Fall</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>Set B: %1</source>
            <translation>Satz B: %1</translation>
        </message>
        <message>
            <source>There are no findings: no fault, nothing overstressed.</source>
            <translation>Es gibt keine Befunde: kein Fehler, nichts überlastet.</translation>
        </message>
        <message>
            <source>By how much do prediction and measurement differ? Which causes make the difference, and in which direction does each act?</source>
            <translation>Um wie viel weichen Vorhersage und Messung voneinander ab? Welche Ursachen hat der Unterschied, und in welche Richtung wirkt jede davon?</translation>
        </message>
        <message>
            <source>There is no difference to explain.</source>
            <translation>Es gibt keinen Unterschied zu erklären.</translation>
        </message>
        <message>
            <source>From the textbook to the simulated board, cause by cause. Each is simulated by itself on the textbook circuit; “Together” is what the causes do to each other.</source>
            <translation>Vom Lehrbuch zur simulierten Platine, Ursache für Ursache. Jede ist für sich allein an der Lehrbuchschaltung simuliert; „Zusammen“ ist, was die Ursachen aneinander bewirken.</translation>
        </message>
        <message>
            <source>What explains the difference</source>
            <translation>Was die Abweichung erklärt</translation>
        </message>
        <message>
            <source>Cause</source>
            <translation>Ursache</translation>
        </message>
        <message>
            <source>Cycle time</source>
            <translation>Periodendauer</translation>
        </message>
        <message>
            <source>in %</source>
            <translation>in %</translation>
        </message>
        <message>
            <source>Duty cycle</source>
            <translation>Tastgrad</translation>
        </message>
        <message>
            <source>What it does</source>
            <translation>Was sie bewirkt</translation>
        </message>
        <message>
            <source>Textbook</source>
            <translation>Lehrbuch</translation>
        </message>
        <message>
            <source>Does not blink with this alone.</source>
            <translation>Blinkt damit allein nicht.</translation>
        </message>
        <message>
            <source>Together</source>
            <translation>Zusammen</translation>
        </message>
        <message>
            <source>Simulated</source>
            <translation>Simuliert</translation>
        </message>
        <message>
            <source>Measured less simulated</source>
            <translation>Gemessen minus simuliert</translation>
        </message>
        <message>
            <source>What the model does not know: tolerance of the parts, the timer at hand, temperature, the measurement.</source>
            <translation>Was das Modell nicht kennt: Toleranz der Bauteile, den vorliegenden Timer, die Temperatur, die Messung.</translation>
        </message>
        <message>
            <source>Formulas of the astable: TI NE555/SA555/SE555, SLFS022, astable operation, there rounded to 0.693 for ln 2.</source>
            <translation>Formeln der astabilen Kippstufe: TI NE555/SA555/SE555, SLFS022, astabiler Betrieb, dort ln 2 auf 0,693 gerundet.</translation>
        </message>
        <message>
            <source>Levels of one third and two thirds of the supply: TI NE555/SA555/SE555, SLFS022. The formulas follow from them and from the law of a capacitor's charging.</source>
            <translation>Schwellen bei einem Drittel und zwei Dritteln der Versorgungsspannung: TI NE555/SA555/SE555, SLFS022. Die Formeln folgen daraus und aus dem Ladegesetz des Kondensators.</translation>
        </message>
        <message>
            <source>Typical values of the bipolar timer: TI NE555/SA555/SE555, SLFS022A (rev. Sept 2000); ST Doc ID 2182 Rev 6.</source>
            <translation>Typische Werte des bipolaren Timers: TI NE555/SA555/SE555, SLFS022A (Rev. Sept. 2000); ST Doc ID 2182 Rev 6.</translation>
        </message>
        <message>
            <source>Typical values of the CMOS timer: TI TLC555, SLFS043C (rev. Sept 1997).</source>
            <translation>Typische Werte des CMOS-Timers: TI TLC555, SLFS043C (Rev. Sept. 1997).</translation>
        </message>
        <message>
            <source>Uncertainty: JCGM 100:2008, Evaluation of measurement data. Guide to the expression of uncertainty in measurement.</source>
            <translation>Unsicherheit: JCGM 100:2008, Evaluation of measurement data. Guide to the expression of uncertainty in measurement.</translation>
        </message>
        <message>
            <source>Flashes: Web Content Accessibility Guidelines (WCAG) 2.2, success criterion 2.3.1.</source>
            <translation>Blitze: Web Content Accessibility Guidelines (WCAG) 2.2, Erfolgskriterium 2.3.1.</translation>
        </message>
        <message>
            <source>There is no textbook formula for this wiring: its figures come from simulation and measurement alone.</source>
            <translation>Für diese Verdrahtung gibt es keine Lehrbuchformel: Ihre Werte kommen allein aus Simulation und Messung.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet::Cutter</name>
        <message>
            <source>%1.</source>
            <translation>%1.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet::Making</name>
        <message>
            <source>Simulated</source>
            <translation>Simuliert</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet::PageLayout</name>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet::Rows</name>
        <message>
            <source>Figure</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Predicted</source>
            <translation>Vorhergesagt</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>Measured − predicted</source>
            <translation>Gemessen − vorhergesagt</translation>
        </message>
        <message>
            <source>in %</source>
            <translation>in %</translation>
        </message>
        <message>
            <source>Textbook</source>
            <translation>Lehrbuch</translation>
        </message>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
        <message>
            <source>u</source>
            <translation>u</translation>
        </message>
        <message>
            <source>simulated</source>
            <translation>simuliert</translation>
        </message>
        <message>
            <source>Measured − %1</source>
            <translation>Gemessen − %1</translation>
        </message>
        <message>
            <source>%1 − textbook</source>
            <translation>%1 − Lehrbuch</translation>
        </message>
        <message>
            <source>Simulated</source>
            <translation>Simuliert</translation>
        </message>
        <message>
            <source>%1 points</source>
            <translation>%1 %-Punkte</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet::SheetForm</name>
        <message>
            <source>Full lab sheet</source>
            <translation>Vollständiges Laborblatt</translation>
        </message>
        <message>
            <source>Student copy, with blanks</source>
            <translation>Schülerblatt mit Lücken</translation>
        </message>
        <message>
            <source>Answer key</source>
            <translation>Lösungsblatt</translation>
        </message>
        <message>
            <source>The circuit's own</source>
            <translation>Wie in der Schaltung</translation>
        </message>
        <message>
            <source>A number gives other preferred values of the timing parts, the same ones for the student copy and its answer key.</source>
            <translation>Eine Nummer ergibt andere Vorzugswerte der zeitbestimmenden Bauteile, dieselben für das Schülerblatt und sein Lösungsblatt.</translation>
        </message>
        <message>
            <source>A4</source>
            <translation>A4</translation>
        </message>
        <message>
            <source>Letter</source>
            <translation>US-Letter</translation>
        </message>
        <message>
            <source>Set &amp;B beside Set A</source>
            <translation>Satz &amp;B neben Satz A</translation>
        </message>
        <message>
            <source>S&amp;heet:</source>
            <translation>Bla&amp;tt:</translation>
        </message>
        <message>
            <source>&amp;Values:</source>
            <translation>&amp;Werte:</translation>
        </message>
        <message>
            <source>Pa&amp;per:</source>
            <translation>&amp;Papier:</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Blatt</translation>
        </message>
        <message>
            <source>Number of the variant of values</source>
            <translation>Nummer der Wertevariante</translation>
        </message>
        <message>
            <source>Paper</source>
            <translation>Papier</translation>
        </message>
        <message>
            <source>Sections of the sheet</source>
            <translation>Abschnitte des Blatts</translation>
        </message>
        <message>
            <source>&amp;Sections</source>
            <translation>Ab&amp;schnitte</translation>
        </message>
        <message>
            <source>&amp;Title:</source>
            <translation>T&amp;itel:</translation>
        </message>
        <message>
            <source>&amp;Author:</source>
            <translation>&amp;Autor:</translation>
        </message>
        <message>
            <source>Pa&amp;rtner:</source>
            <translation>Part&amp;ner:</translation>
        </message>
        <message>
            <source>&amp;Group:</source>
            <translation>&amp;Gruppe:</translation>
        </message>
        <message>
            <source>&amp;Date:</source>
            <translation>Datu&amp;m:</translation>
        </message>
        <message>
            <source>Title of the circuit</source>
            <translation>Titel der Schaltung</translation>
        </message>
        <message>
            <source>Ai&amp;m:</source>
            <translation>&amp;Ziel:</translation>
        </message>
        <message>
            <source>Empty: the usual one</source>
            <translation>Leer: das übliche</translation>
        </message>
        <message>
            <source>Meth&amp;od:</source>
            <translation>D&amp;urchführung:</translation>
        </message>
        <message>
            <source>Empty: the usual steps</source>
            <translation>Leer: die üblichen Schritte</translation>
        </message>
        <message>
            <source>&amp;Conclusions:</source>
            <translation>S&amp;chlussfolgerungen:</translation>
        </message>
        <message>
            <source>Empty: lines to write on</source>
            <translation>Leer: Linien zum Schreiben</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet::SheetPreview</name>
        <message>
            <source>Preview of the page</source>
            <translation>Vorschau der Seite</translation>
        </message>
        <message>
            <source>Page before</source>
            <translation>Vorige Seite</translation>
        </message>
        <message>
            <source>Page before (Page Up)</source>
            <translation>Vorige Seite (Bild auf)</translation>
        </message>
        <message>
            <source>Next page</source>
            <translation>Nächste Seite</translation>
        </message>
        <message>
            <source>Next page (Page Down)</source>
            <translation>Nächste Seite (Bild ab)</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet::Theory</name>
        <message>
            <source>For this wiring; work out the numbers:</source>
            <translation>Für diese Verdrahtung; die Zahlen ausrechnen:</translation>
        </message>
        <message>
            <source>For this wiring, with the values of its parts:</source>
            <translation>Für diese Verdrahtung, mit den Werten ihrer Bauteile:</translation>
        </message>
        <message>
            <source>The timer compares the voltage of %1 with two levels: that of pin 5, which is held at k times the supply, and half of it.</source>
            <translation>Der Timer vergleicht die Spannung an %1 mit zwei Schwellen: der von Pin 5, die auf dem k-Fachen der Versorgungsspannung gehalten wird, und der Hälfte davon.</translation>
        </message>
        <message>
            <source>The timer compares the voltage of %1 with two levels, one third and two thirds of its supply (pin 8).</source>
            <translation>Der Timer vergleicht die Spannung an %1 mit zwei Schwellen, einem Drittel und zwei Dritteln seiner Versorgungsspannung (Pin 8).</translation>
        </message>
        <message>
            <source>While the output (pin 3) is high, %1 charges through %2 and %3 from the lower level to the upper. While it is low, %1 discharges through %3 into pin 7, back to the lower level.</source>
            <translation>Solange der Ausgang (Pin 3) auf High ist, lädt sich %1 über %2 und %3 von der unteren Schwelle bis zur oberen auf. Solange er auf Low ist, entlädt sich %1 über %3 in Pin 7, zurück bis zur unteren Schwelle.</translation>
        </message>
        <message>
            <source>While the output (pin 3) is high, %1 charges through %2 and the diode, which is taken as ideal. While it is low, %1 discharges through %3 into pin 7.</source>
            <translation>Solange der Ausgang (Pin 3) auf High ist, lädt sich %1 über %2 und die Diode auf, die als ideal angenommen wird. Solange er auf Low ist, entlädt sich %1 über %3 in Pin 7.</translation>
        </message>
        <message>
            <source>%1 charges and discharges through %2 from the output (pin 3), which is taken to reach both rails.</source>
            <translation>%1 lädt und entlädt sich über %2 vom Ausgang (Pin 3) her, für den angenommen wird, dass er beide Versorgungspotenziale erreicht.</translation>
        </message>
        <message>
            <source>A capacitor C on its way through a resistance R from a voltage U₀ towards U∞ is at U₁ after</source>
            <translation>Ein Kondensator C, der sich über einen Widerstand R von einer Spannung U₀ in Richtung U∞ umlädt, erreicht U₁ nach der Zeit</translation>
        </message>
        <message>
            <source>%1 stands for %2 together: %3.</source>
            <translation>%1 steht für %2 zusammen: %3.</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>pulse width, output high</source>
            <translation>Impulsbreite, Ausgang auf High</translation>
        </message>
        <message>
            <source>space width, output low</source>
            <translation>Pausenbreite, Ausgang auf Low</translation>
        </message>
        <message>
            <source>cycle time</source>
            <translation>Periodendauer</translation>
        </message>
        <message>
            <source>flash rate</source>
            <translation>Blinkrate</translation>
        </message>
        <message>
            <source>duty cycle</source>
            <translation>Tastgrad</translation>
        </message>
        <message>
            <source>first flash after power-on</source>
            <translation>erster Blitz nach dem Einschalten</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::sheet::Writer</name>
        <message>
            <source>Fields</source>
            <translation>Felder</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets</name>
        <message>
            <source>Parts</source>
            <translation>Bauteile</translation>
        </message>
        <message>
            <source>Wiring</source>
            <translation>Verdrahtung</translation>
        </message>
        <message>
            <source>%1.</source>
            <translation>%1.</translation>
        </message>
        <message>
            <source>Cautions</source>
            <translation>Sicherheitshinweise</translation>
        </message>
        <message>
            <source>Check card: expected readings</source>
            <translation>Prüfkarte: erwartete Ablesungen</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Messpunkt</translation>
        </message>
        <message>
            <source>Least</source>
            <translation>Min.</translation>
        </message>
        <message>
            <source>Mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>Most</source>
            <translation>Max.</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>How to measure, and cautions</source>
            <translation>Hinweise zum Messen und zur Sicherheit</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>Must be less than 100 %.</source>
            <translation>Muss kleiner als 100 % sein.</translation>
        </message>
        <message>
            <source>Must be shorter than a cycle, %1.</source>
            <translation>Muss kürzer als eine Periode sein, %1.</translation>
        </message>
        <message>
            <source>A range needs two rates that differ.</source>
            <translation>Ein Bereich braucht zwei verschiedene Raten.</translation>
        </message>
        <message>
            <source>Both intensities are needed, or none.</source>
            <translation>Es braucht beide Lichtstärken oder keine.</translation>
        </message>
        <message>
            <source>cannot be written: %1</source>
            <translation>lässt sich nicht schreiben: %1</translation>
        </message>
        <message>
            <source>output</source>
            <translation>Ausgang</translation>
        </message>
        <message>
            <source>capacitor</source>
            <translation>Kondensator</translation>
        </message>
        <message>
            <source>another trace</source>
            <translation>ein anderer Zeitverlauf</translation>
        </message>
        <message>
            <source>%1 cycles</source>
            <translation>%1 Perioden</translation>
        </message>
        <message>
            <source>from power-on</source>
            <translation>ab dem Einschalten</translation>
        </message>
        <message>
            <source>while running</source>
            <translation>im Betrieb</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <translation>%1: %2, %3</translation>
        </message>
        <message>
            <source> and </source>
            <translation> und </translation>
        </message>
        <message>
            <source>Stopwatch</source>
            <translation>Stoppuhr</translation>
        </message>
        <message>
            <source>Meter</source>
            <translation>Messgerät</translation>
        </message>
        <message>
            <source>Record</source>
            <translation>Aufzeichnung</translation>
        </message>
        <message>
            <source>Unknown</source>
            <translation>Unbekannt</translation>
        </message>
        <message>
            <source>Supply voltage</source>
            <translation>Versorgungsspannung</translation>
        </message>
        <message>
            <source>Output while high</source>
            <translation>Ausgang bei High</translation>
        </message>
        <message>
            <source>Output while low</source>
            <translation>Ausgang bei Low</translation>
        </message>
        <message>
            <source>Lamp current while lit</source>
            <translation>Lampenstrom beim Leuchten</translation>
        </message>
        <message>
            <source>Part by itself</source>
            <translation>Bauteil für sich allein</translation>
        </message>
        <message>
            <source>1 flash</source>
            <translation>1 Blitz</translation>
        </message>
        <message>
            <source>%1 flashes</source>
            <translation>%1 Blitze</translation>
        </message>
        <message>
            <source>A kind that this version does not know; it is kept as it is</source>
            <translation>Eine Art, die diese Version nicht kennt; sie bleibt unverändert erhalten</translation>
        </message>
        <message>
            <source>Voltage of %1</source>
            <translation>Spannung von %1</translation>
        </message>
        <message>
            <source>Output of %1 while high</source>
            <translation>Ausgang von %1 bei High</translation>
        </message>
        <message>
            <source>Output of %1 while low</source>
            <translation>Ausgang von %1 bei Low</translation>
        </message>
        <message>
            <source>Current of %1 while lit</source>
            <translation>Strom von %1 beim Leuchten</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Flash rate</source>
            <translation>Blinkrate</translation>
        </message>
        <message>
            <source>Flashes a minute</source>
            <translation>Blitze je Minute</translation>
        </message>
        <message>
            <source>Cycle time</source>
            <translation>Periodendauer</translation>
        </message>
        <message>
            <source>Pulse width (high)</source>
            <translation>Impulsbreite (high)</translation>
        </message>
        <message>
            <source>Space width (low)</source>
            <translation>Pausenbreite (low)</translation>
        </message>
        <message>
            <source>Duty cycle</source>
            <translation>Tastgrad</translation>
        </message>
        <message>
            <source>First flash</source>
            <translation>Erster Blitz</translation>
        </message>
        <message>
            <source>“%1” and “%2” contradict each other in the %3: they are further apart than twice their common uncertainty. Look at both again, or take one out of use.</source>
            <translation>„%1“ und „%2“ widersprechen sich (%3): Sie liegen weiter auseinander als das Doppelte ihrer gemeinsamen Unsicherheit. Beide noch einmal prüfen oder eine davon nicht nutzen.</translation>
        </message>
        <message>
            <source>The board agrees with the simulation: nothing differs by more than twice its uncertainty.</source>
            <translation>Die Platine stimmt mit der Simulation überein: Nichts weicht um mehr als das Doppelte seiner Unsicherheit ab.</translation>
        </message>
        <message>
            <source>Further from the simulation than twice the uncertainty: %1. “Why it differs” shows how far the known causes go.</source>
            <translation>Weiter von der Simulation entfernt als das Doppelte der Unsicherheit: %1. „Warum es abweicht“ zeigt, wie weit die bekannten Ursachen reichen.</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>%1 percentage points</source>
            <translation>%1 Prozentpunkte</translation>
        </message>
        <message>
            <source>There is no such figure of %1.</source>
            <translation>Diesen Wert gibt es bei %1 nicht.</translation>
        </message>
        <message>
            <source>There is no such figure of Set A.</source>
            <translation>Diesen Wert gibt es bei Satz A nicht.</translation>
        </message>
        <message>
            <source>Blinks: %1 (Set A) and %2 (%3) flashes a minute</source>
            <translation>Blinkt: %1 (Satz A) und %2 (%3) Blitze je Minute</translation>
        </message>
        <message>
            <source>Set A: %1
%2: %3</source>
            <translation>Satz A: %1
%2: %3</translation>
        </message>
        <message>
            <source>There are no readings of %1.</source>
            <translation>Zu %1 gibt es keine Kennwerte.</translation>
        </message>
        <message>
            <source>%1 points</source>
            <translation>%1 %-Punkte</translation>
        </message>
        <message>
            <source>Mean voltage of pin 3 against 0 V while it is high</source>
            <translation>Mittlere Spannung von Pin 3 gegen 0 V bei High</translation>
        </message>
        <message>
            <source>Mean voltage of pin 3 against 0 V while it is low</source>
            <translation>Mittlere Spannung von Pin 3 gegen 0 V bei Low</translation>
        </message>
        <message>
            <source>Voltage under load</source>
            <translation>Spannung unter Last</translation>
        </message>
        <message>
            <source>Mean voltage at the terminals while the blinker runs</source>
            <translation>Mittlere Spannung an den Klemmen, während der Blinker läuft</translation>
        </message>
        <message>
            <source>Current while lit</source>
            <translation>Strom beim Leuchten</translation>
        </message>
        <message>
            <source>Mean current in the time that the lamp is lit</source>
            <translation>Mittlerer Strom in der Zeit, in der die Lampe leuchtet</translation>
        </message>
        <message>
            <source>The textbook formulas speak of times only.</source>
            <translation>Die Lehrbuchformeln machen nur über Zeiten eine Aussage.</translation>
        </message>
        <message>
            <source>The run gave no figure for this.</source>
            <translation>Der Lauf hat hierfür keinen Wert ergeben.</translation>
        </message>
        <message>
            <source>Not measured.</source>
            <translation>Nicht gemessen.</translation>
        </message>
        <message>
            <source>Cycles of the output in a second</source>
            <translation>Perioden des Ausgangs je Sekunde</translation>
        </message>
        <message>
            <source>Cycles of the output in a minute</source>
            <translation>Perioden des Ausgangs je Minute</translation>
        </message>
        <message>
            <source>From one rise of the output to the next</source>
            <translation>Von einer steigenden Flanke des Ausgangs zur nächsten</translation>
        </message>
        <message>
            <source>How long the output is high in a cycle</source>
            <translation>Wie lange der Ausgang je Periode auf High ist</translation>
        </message>
        <message>
            <source>How long the output is low in a cycle</source>
            <translation>Wie lange der Ausgang je Periode auf Low ist</translation>
        </message>
        <message>
            <source>Pulse width over cycle time</source>
            <translation>Impulsbreite geteilt durch Periodendauer</translation>
        </message>
        <message>
            <source>The run does not begin at power-on.</source>
            <translation>Der Lauf beginnt nicht mit dem Einschalten.</translation>
        </message>
        <message>
            <source>How long the output is first high after power-on</source>
            <translation>Wie lange der Ausgang nach dem Einschalten zuerst auf High ist</translation>
        </message>
        <message>
            <source>Blinks</source>
            <translation>Blinkt</translation>
        </message>
        <message>
            <source>: %1 flashes a minute</source>
            <translation>: %1 Blitze je Minute</translation>
        </message>
        <message>
            <source> (figures over the whole cycles of the run)</source>
            <translation> (Werte über die ganzen Perioden des Laufs)</translation>
        </message>
        <message>
            <source>Does not blink: the output settles high</source>
            <translation>Blinkt nicht: Der Ausgang bleibt auf High</translation>
        </message>
        <message>
            <source>Does not blink: the output settles low</source>
            <translation>Blinkt nicht: Der Ausgang bleibt auf Low</translation>
        </message>
        <message>
            <source>Does not settle into even flashes</source>
            <translation>Schwingt sich nicht auf gleichmäßige Blitze ein</translation>
        </message>
        <message>
            <source>Cannot run</source>
            <translation>Nicht lauffähig</translation>
        </message>
        <message>
            <source>This timer has no cycle of its own.</source>
            <translation>Dieser Timer hat keine eigene Periode.</translation>
        </message>
        <message>
            <source>The circuit does not blink.</source>
            <translation>Die Schaltung blinkt nicht.</translation>
        </message>
        <message>
            <source>There is no textbook formula for this wiring.</source>
            <translation>Für diese Verdrahtung gibt es keine Lehrbuchformel.</translation>
        </message>
        <message>
            <source>Mean current</source>
            <translation>Mittlerer Strom</translation>
        </message>
        <message>
            <source>Mean over a cycle, out of the plus pin</source>
            <translation>Mittel über eine Periode, am Pluspol</translation>
        </message>
        <message>
            <source>Peak current</source>
            <translation>Spitzenstrom</translation>
        </message>
        <message>
            <source>Largest current in a cycle</source>
            <translation>Größter Strom in einer Periode</translation>
        </message>
        <message>
            <source>Energy a flash</source>
            <translation>Energie je Blitz</translation>
        </message>
        <message>
            <source>No-load voltage times charge in a cycle</source>
            <translation>Leerlaufspannung mal Ladung je Periode</translation>
        </message>
        <message>
            <source>The supply states no capacity.</source>
            <translation>Zur Versorgung ist keine Kapazität angegeben.</translation>
        </message>
        <message>
            <source>Battery life</source>
            <translation>Batterielaufzeit</translation>
        </message>
        <message>
            <source>Stated capacity over mean current</source>
            <translation>Angegebene Kapazität geteilt durch mittleren Strom</translation>
        </message>
        <message>
            <source>leakage</source>
            <translation>Leckstrom</translation>
        </message>
        <message>
            <source>switching levels</source>
            <translation>Schaltschwellen</translation>
        </message>
        <message>
            <source>voltage without load</source>
            <translation>Leerlaufspannung</translation>
        </message>
        <message>
            <source>voltage left by pin 7</source>
            <translation>Restspannung von Pin 7</translation>
        </message>
        <message>
            <source>resistance of pin 7</source>
            <translation>Widerstand von Pin 7</translation>
        </message>
        <message>
            <source>drop of the output high</source>
            <translation>Spannungsabfall des Ausgangs auf High</translation>
        </message>
        <message>
            <source>resistance of the output high</source>
            <translation>Widerstand des Ausgangs auf High</translation>
        </message>
        <message>
            <source>resistance of the output low</source>
            <translation>Widerstand des Ausgangs auf Low</translation>
        </message>
        <message>
            <source>forward voltage</source>
            <translation>Durchlassspannung</translation>
        </message>
        <message>
            <source>as they should be</source>
            <translation>wie vorgesehen</translation>
        </message>
        <message>
            <source>%1, by tolerance</source>
            <translation>%1, nach Toleranz</translation>
        </message>
        <message>
            <source>%1, on the meter</source>
            <translation>%1, am Messgerät</translation>
        </message>
        <message>
            <source>%1, as usual</source>
            <translation>%1, wie üblich</translation>
        </message>
        <message>
            <source>%1 at its terminals</source>
            <translation>%1 an den Klemmen</translation>
        </message>
        <message>
            <source>Output of %1, high</source>
            <translation>Ausgang von %1, high</translation>
        </message>
        <message>
            <source>Output of %1, low</source>
            <translation>Ausgang von %1, low</translation>
        </message>
        <message>
            <source>Count</source>
            <translation>Zählung</translation>
        </message>
        <message>
            <source>%1 “%2”</source>
            <translation>%1 „%2“</translation>
        </message>
        <message>
            <source>tolerance</source>
            <translation>Toleranz</translation>
        </message>
        <message>
            <source>timing tolerance</source>
            <translation>Zeittoleranz</translation>
        </message>
        <message>
            <source>its reading on the meter</source>
            <translation>eigene Ablesung am Messgerät</translation>
        </message>
        <message>
            <source>what is usual</source>
            <translation>übliche Annahme</translation>
        </message>
        <message>
            <source>start and stop by hand</source>
            <translation>Start und Stopp von Hand</translation>
        </message>
        <message>
            <source>scatter of the switchings</source>
            <translation>Streuung der Umschaltungen</translation>
        </message>
        <message>
            <source>step between samples</source>
            <translation>Abtastschritt</translation>
        </message>
        <message>
            <source>time base</source>
            <translation>Zeitbasis</translation>
        </message>
        <message>
            <source>Prediction and measurement agree: they differ by %1, and may by %2.</source>
            <translation>Vorhersage und Messung stimmen überein: Sie weichen um %1 voneinander ab, zulässig sind %2.</translation>
        </message>
        <message>
            <source>Prediction and measurement do not agree: they differ by %1, and may by %2 only.</source>
            <translation>Vorhersage und Messung stimmen nicht überein: Sie weichen um %1 voneinander ab, zulässig sind nur %2.</translation>
        </message>
        <message>
            <source>%1 lit share</source>
            <translation>Leuchtanteil %1</translation>
        </message>
        <message>
            <source>%1 mean current</source>
            <translation>Mittlerer Strom %1</translation>
        </message>
        <message>
            <source>%1 share lit</source>
            <translation>Leuchtanteil %1</translation>
        </message>
        <message>
            <source>%1 peak current</source>
            <translation>Spitzenstrom %1</translation>
        </message>
        <message>
            <source>Supply, mean current</source>
            <translation>Versorgung, mittlerer Strom</translation>
        </message>
        <message>
            <source>%1: outside this range.</source>
            <translation>%1: außerhalb dieses Bereichs.</translation>
        </message>
        <message>
            <source>%1: does not blink.</source>
            <translation>%1: blinkt nicht.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>, %1 to the textbook</source>
            <translation>, %1 gegenüber dem Lehrbuch</translation>
        </message>
        <message>
            <source>anywhere in this range</source>
            <translation>im ganzen Bereich</translation>
        </message>
        <message>
            <source>below about %1</source>
            <translation>unter etwa %1</translation>
        </message>
        <message>
            <source>above about %1</source>
            <translation>über etwa %1</translation>
        </message>
        <message>
            <source>from about %1 to %2</source>
            <translation>von etwa %1 bis %2</translation>
        </message>
        <message>
            <source>%1 does not blink %2.</source>
            <translation>%1 blinkt %2 nicht.</translation>
        </message>
        <message>
            <source>Does not blink %1.</source>
            <translation>Blinkt %1 nicht.</translation>
        </message>
        <message>
            <source>Textbook %1</source>
            <translation>Lehrbuch %1</translation>
        </message>
        <message>
            <source>Discharge pin</source>
            <translation>Discharge (Pin 7)</translation>
        </message>
        <message>
            <source>Input currents</source>
            <translation>Eingangsströme</translation>
        </message>
        <message>
            <source>Capacitor leakage</source>
            <translation>Leckstrom des Kondensators</translation>
        </message>
        <message>
            <source>Capacitor's series resistance</source>
            <translation>Serienwiderstand des Kondensators</translation>
        </message>
        <message>
            <source>Output and its load</source>
            <translation>Ausgang und seine Last</translation>
        </message>
        <message>
            <source>Supply sag</source>
            <translation>Versorgungseinbruch</translation>
        </message>
        <message>
            <source>Control pin</source>
            <translation>Steuerspannung (Pin 5)</translation>
        </message>
        <message>
            <source>Delay of the timer</source>
            <translation>Verzögerung des Timers</translation>
        </message>
        <message>
            <source>Diode drop</source>
            <translation>Diodenspannung</translation>
        </message>
        <message>
            <source>Pin 7 does not pull to 0 V: the switch in it has resistance and a voltage left over, so that the capacitor falls more slowly.</source>
            <translation>Pin 7 zieht nicht ganz auf 0 V: Der Schalter darin hat einen Widerstand und eine Restspannung, sodass die Spannung des Kondensators langsamer fällt.</translation>
        </message>
        <message>
            <source>Threshold (pin 6) and trigger (pin 2) take small currents, which flow through the timing resistors too.</source>
            <translation>Threshold (Pin 6) und Trigger (Pin 2) nehmen kleine Ströme auf, die auch durch die zeitbestimmenden Widerstände fließen.</translation>
        </message>
        <message>
            <source>The timing capacitor loses charge by itself, most where its voltage is high.</source>
            <translation>Der zeitbestimmende Kondensator verliert von selbst Ladung, am meisten bei hoher Spannung.</translation>
        </message>
        <message>
            <source>The voltage across the capacitor's own resistance is there at once, before any charge.</source>
            <translation>Die Spannung am eigenen Widerstand des Kondensators ist sofort da, noch vor jeder Ladung.</translation>
        </message>
        <message>
            <source>The output reaches neither rail, and less so under load; here it charges the capacitor.</source>
            <translation>Der Ausgang erreicht weder 0 V noch die volle Versorgungsspannung, unter Last noch weniger; hier lädt er den Kondensator.</translation>
        </message>
        <message>
            <source>The current of lamp and timer lowers the voltage at pin 8, and with it both levels.</source>
            <translation>Der Strom von Lampe und Timer senkt die Spannung an Pin 8 und damit beide Schwellen.</translation>
        </message>
        <message>
            <source>What hangs on pin 5 moves both levels.</source>
            <translation>Was an Pin 5 angeschlossen ist, verschiebt beide Schwellen.</translation>
        </message>
        <message>
            <source>From a crossed level to the output and pin 7 some time goes by.</source>
            <translation>Vom Überschreiten einer Schwelle bis zur Reaktion von Ausgang und Pin 7 vergeht etwas Zeit.</translation>
        </message>
        <message>
            <source>The diode across the timing resistor takes part of the voltage that charges.</source>
            <translation>Die Diode parallel zum zeitbestimmenden Widerstand nimmt einen Teil der ladenden Spannung weg.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::AccountTable</name>
        <message>
            <source>Figures before and after</source>
            <translation>Zahlenwerte vorher und nachher</translation>
        </message>
        <message>
            <source>Figure</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>As stated</source>
            <translation>Angegeben</translation>
        </message>
        <message>
            <source>With fitted values</source>
            <translation>Angepasst</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>Off, in u</source>
            <translation>Abw. in u</translation>
        </message>
        <message>
            <source>Settled</source>
            <translation>Eingeschwungen</translation>
        </message>
        <message>
            <source>Simulated with the values that the circuit states</source>
            <translation>Simuliert mit den Werten, die in der Schaltung angegeben sind</translation>
        </message>
        <message>
            <source>Simulated with the fitted values; the uncertainty is what these leave</source>
            <translation>Simuliert mit den angepassten Werten; die Unsicherheit ist die, die diese übrig lassen</translation>
        </message>
        <message>
            <source>All measurements of it together, with standard uncertainty</source>
            <translation>Alle Messungen davon zusammen, mit Standardunsicherheit</translation>
        </message>
        <message>
            <source>Measured against fitted, in standard uncertainties of the measurement</source>
            <translation>Gemessen gegenüber angepasst, in Standardunsicherheiten der Messung</translation>
        </message>
        <message>
            <source>Flashes a minute</source>
            <translation>Blitze je Minute</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::AccountView</name>
        <message>
            <source>Notes</source>
            <translation>Hinweise</translation>
        </message>
        <message>
            <source>Values that explain the measurements</source>
            <translation>Werte, die die Messungen erklären</translation>
        </message>
        <message>
            <source>What the board does</source>
            <translation>Was die Platine tut</translation>
        </message>
        <message>
            <source>Retune</source>
            <translation>Nachstimmen</translation>
        </message>
        <message>
            <source>&amp;Values</source>
            <translation>&amp;Werte</translation>
        </message>
        <message>
            <source>&amp;Uncertainty</source>
            <translation>&amp;Unsicherheit</translation>
        </message>
        <message>
            <source>Nothing was measured yet. Build the board, then tell what it does:

•  Count flashes by stopwatch, 20 cycles or more. That gives the cycle time.

•  Or bring in a record of an oscilloscope or data logger: both phases, and much finer.

•  Measure single parts on a meter, R1 and R2 first: the rest is then found much closer.

The values of the parts that explain it then stand here, with their uncertainties.</source>
            <translation>Noch wurde nichts gemessen. Die Platine aufbauen, dann eingeben, was sie tut:

•  Blitze mit der Stoppuhr zählen, 20 Perioden oder mehr. Das ergibt die Periodendauer.

•  Oder eine Aufzeichnung von Oszilloskop oder Datenlogger einlesen: beide Phasen, und viel feiner.

•  Einzelne Bauteile am Messgerät messen, zuerst R1 und R2: Der Rest wird dann viel genauer gefunden.

Die Werte der Bauteile, die es erklären, stehen dann hier, mit ihren Unsicherheiten.</translation>
        </message>
        <message>
            <source>Enter a &amp;measurement…</source>
            <translation>&amp;Messung eingeben …</translation>
        </message>
        <message>
            <source>Doubt:</source>
            <translation>Zweifel:</translation>
        </message>
        <message>
            <source>Note:</source>
            <translation>Hinweis:</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::AnswerForm</name>
        <message>
            <source>&amp;Timer</source>
            <translation>&amp;Timer</translation>
        </message>
        <message>
            <source>555 timer, bipolar</source>
            <translation>555-Timer, bipolar</translation>
        </message>
        <message>
            <source>555 timer, CMOS</source>
            <translation>555-Timer, CMOS</translation>
        </message>
        <message>
            <source>&amp;Supply voltage</source>
            <translation>&amp;Versorgungsspannung</translation>
        </message>
        <message>
            <source>V</source>
            <translation>V</translation>
        </message>
        <message>
            <source>&amp;Lamp</source>
            <translation>&amp;Lampe</translation>
        </message>
        <message>
            <source>Sec&amp;ond lamp</source>
            <translation>&amp;Zweite Lampe</translation>
        </message>
        <message>
            <source>Lamp &amp;current</source>
            <translation>La&amp;mpenstrom</translation>
        </message>
        <message>
            <source>mA</source>
            <translation>mA</translation>
        </message>
        <message>
            <source>&amp;Flashes a minute</source>
            <translation>&amp;Blitze je Minute</translation>
        </message>
        <message>
            <source>/min</source>
            <translation>/min</translation>
        </message>
        <message>
            <source>L&amp;it share of the time</source>
            <translation>Leucht&amp;anteil</translation>
        </message>
        <message>
            <source>%</source>
            <translation>%</translation>
        </message>
        <message>
            <source>&amp;Groups a minute</source>
            <translation>&amp;Gruppen je Minute</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>%1: %2%3</source>
            <translation>%1: %2%3</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::BandPlot</name>
        <message>
            <source>Band of curves</source>
            <translation>Kurvenband</translation>
        </message>
        <message>
            <source>Capacitor</source>
            <translation>Kondensator</translation>
        </message>
        <message>
            <source>Lamps</source>
            <translation>Lampen</translation>
        </message>
        <message>
            <source>Time from the rise of the output (%1)</source>
            <translation>Zeit ab der steigenden Flanke des Ausgangs (%1)</translation>
        </message>
        <message>
            <source>nominal board</source>
            <translation>Platine mit Nennwerten</translation>
        </message>
        <message>
            <source>9 of 10 boards, moment by moment</source>
            <translation>9 von 10 Platinen, zu jedem Zeitpunkt</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::BenchDialog</name>
        <message>
            <source>Steps of the wiring</source>
            <translation>Schritte der Verdrahtung</translation>
        </message>
        <message>
            <source>Parts list</source>
            <translation>Bauteilliste</translation>
        </message>
        <message>
            <source>Quantity</source>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Bauteil</translation>
        </message>
        <message>
            <source>Marking</source>
            <translation>Aufdruck</translation>
        </message>
        <message>
            <source>Designators</source>
            <translation>Bezeichner</translation>
        </message>
        <message>
            <source>Wiring</source>
            <translation>Verdrahtung</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Bauteile</translation>
        </message>
        <message>
            <source>&amp;Copy as text</source>
            <translation>Als Text &amp;kopieren</translation>
        </message>
        <message>
            <source>&amp;Print…</source>
            <translation>&amp;Drucken …</translation>
        </message>
        <message>
            <source>Save as P&amp;DF…</source>
            <translation>Als &amp;PDF speichern …</translation>
        </message>
        <message>
            <source>&amp;Export parts as CSV…</source>
            <translation>Bauteile als CSV &amp;exportieren …</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
        <message>
            <source>Set whose values are listed</source>
            <translation>Satz, dessen Werte aufgeführt sind</translation>
        </message>
        <message>
            <source>&amp;Values of</source>
            <translation>&amp;Werte von</translation>
        </message>
        <message>
            <source>%1. %2</source>
            <translation>%1. %2</translation>
        </message>
        <message>
            <source>%1 of %2 steps done</source>
            <translation>%1 von %2 Schritten erledigt</translation>
        </message>
        <message>
            <source>Wiring list</source>
            <translation>Verdrahtungsliste</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::BudgetTable</name>
        <message>
            <source>Input</source>
            <translation>Eingangsgröße</translation>
        </message>
        <message>
            <source>Known by</source>
            <translation>Bekannt durch</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>Evaluation</source>
            <translation>Ermittlung</translation>
        </message>
        <message>
            <source>Sensitivity</source>
            <translation>Empfindlichkeit</translation>
        </message>
        <message>
            <source>Contribution</source>
            <translation>Beitrag</translation>
        </message>
        <message>
            <source>Share</source>
            <translation>Anteil</translation>
        </message>
        <message>
            <source>Best estimate</source>
            <translation>Bester Schätzwert</translation>
        </message>
        <message>
            <source>One standard deviation (JCGM 100:2008, 2.3.1)</source>
            <translation>Eine Standardabweichung (JCGM 100:2008, 2.3.1)</translation>
        </message>
        <message>
            <source>Type A: by statistics of readings. Type B: by what is known otherwise; rectangular: u is half the width over the square root of 3</source>
            <translation>Typ A: durch Statistik von Ablesungen. Typ B: durch anderweitiges Wissen; Rechteckverteilung: u ist die halbe Breite geteilt durch die Wurzel aus 3</translation>
        </message>
        <message>
            <source>How far the figure moves with the input (5.1.3)</source>
            <translation>Wie weit sich der Wert mit der Eingangsgröße verschiebt (5.1.3)</translation>
        </message>
        <message>
            <source>Sensitivity times standard uncertainty</source>
            <translation>Empfindlichkeit mal Standardunsicherheit</translation>
        </message>
        <message>
            <source>Of the variance</source>
            <translation>Anteil an der Varianz</translation>
        </message>
        <message>
            <source>A</source>
            <translation>A</translation>
        </message>
        <message>
            <source>B</source>
            <translation>B</translation>
        </message>
        <message>
            <source>normal</source>
            <translation>normal</translation>
        </message>
        <message>
            <source>rectangular</source>
            <translation>Rechteck</translation>
        </message>
        <message>
            <source>On one reel with another part: both move together</source>
            <translation>Mit einem anderen Bauteil von einer Rolle: Beide ändern sich gemeinsam</translation>
        </message>
        <message>
            <source>combined</source>
            <translation>kombiniert</translation>
        </message>
        <message>
            <source>expanded, k = 2</source>
            <translation>erweitert, k = 2</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::BudgetView</name>
        <message>
            <source>Budget of the prediction</source>
            <translation>Budget der Vorhersage</translation>
        </message>
        <message>
            <source>Budget of the measurement</source>
            <translation>Budget der Messung</translation>
        </message>
        <message>
            <source>the simulated board</source>
            <translation>die simulierte Platine</translation>
        </message>
        <message>
            <source>the textbook formula</source>
            <translation>die Lehrbuchformel</translation>
        </message>
        <message>
            <source>Budget &amp;of:</source>
            <translation>Budget &amp;für:</translation>
        </message>
        <message>
            <source>Pre&amp;dicted by:</source>
            <translation>&amp;Vorhersage durch:</translation>
        </message>
        <message>
            <source>Predicted from the parts</source>
            <translation>Vorhersage aus den Bauteilen</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>This figure was not measured.</source>
            <translation>Diese Größe wurde nicht gemessen.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::CheckCardView</name>
        <message>
            <source>Expected readings</source>
            <translation>Erwartete Ablesungen</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Messpunkt</translation>
        </message>
        <message>
            <source>Least</source>
            <translation>Min.</translation>
        </message>
        <message>
            <source>Mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>Most</source>
            <translation>Max.</translation>
        </message>
        <message>
            <source>Read &amp;with:</source>
            <translation>Ablesen &amp;mit:</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::ChoiceModel</name>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>behind C4</source>
            <translation>hinter C4</translation>
        </message>
        <message>
            <source>one each way</source>
            <translation>eine je Seite</translation>
        </message>
        <message>
            <source>to supply</source>
            <translation>nach Plus</translation>
        </message>
        <message>
            <source>to ground</source>
            <translation>nach Masse</translation>
        </message>
        <message>
            <source>%1 /min</source>
            <translation>%1 /min</translation>
        </message>
        <message>
            <source>R1</source>
            <translation>R1</translation>
        </message>
        <message>
            <source>Charges C1 together with R2</source>
            <translation>Lädt C1 gemeinsam mit R2</translation>
        </message>
        <message>
            <source>R2</source>
            <translation>R2</translation>
        </message>
        <message>
            <source>Discharges C1; with a variable resistor its end stop</source>
            <translation>Entlädt C1; bei einem Potentiometer dessen Endbegrenzung</translation>
        </message>
        <message>
            <source>RV1</source>
            <translation>RV1</translation>
        </message>
        <message>
            <source>Variable resistor in series with R2, end to end</source>
            <translation>Potentiometer in Reihe mit R2, Gesamtwiderstand</translation>
        </message>
        <message>
            <source>C1</source>
            <translation>C1</translation>
        </message>
        <message>
            <source>Timing capacitor</source>
            <translation>Zeitbestimmender Kondensator</translation>
        </message>
        <message>
            <source>R3</source>
            <translation>R3</translation>
        </message>
        <message>
            <source>Resistor of the lamp, or of the pair</source>
            <translation>Widerstand der Lampe oder des Paars</translation>
        </message>
        <message>
            <source>R4</source>
            <translation>R4</translation>
        </message>
        <message>
            <source>Resistor of the second lamp; of a pair behind C4 from the output to ground</source>
            <translation>Widerstand der zweiten Lampe; bei einem Paar hinter C4 vom Ausgang nach Masse</translation>
        </message>
        <message>
            <source>C4</source>
            <translation>C4</translation>
        </message>
        <message>
            <source>Coupling capacitor of the pair</source>
            <translation>Koppelkondensator des Paars</translation>
        </message>
        <message>
            <source>Diode</source>
            <translation>Diode</translation>
        </message>
        <message>
            <source>Across R2, so that R1 alone sets the high time</source>
            <translation>Parallel zu R2, sodass R1 allein die High-Zeit bestimmt</translation>
        </message>
        <message>
            <source>D3</source>
            <translation>D3</translation>
        </message>
        <message>
            <source>Lamps</source>
            <translation>Lampen</translation>
        </message>
        <message>
            <source>Where the lamps hang</source>
            <translation>Wo die Lampen angeschlossen sind</translation>
        </message>
        <message>
            <source>Rate</source>
            <translation>Rate</translation>
        </message>
        <message>
            <source>Of the simulated board, settled</source>
            <translation>Der simulierten Platine, eingeschwungen</translation>
        </message>
        <message>
            <source>Off wish</source>
            <translation>Abweichung</translation>
        </message>
        <message>
            <source>Rate over the wished one</source>
            <translation>Abweichung der Rate von der gewünschten</translation>
        </message>
        <message>
            <source>Lit</source>
            <translation>Leuchtet</translation>
        </message>
        <message>
            <source>Lit share of the first lamp</source>
            <translation>Leuchtanteil der ersten Lampe</translation>
        </message>
        <message>
            <source>Band</source>
            <translation>Band</translation>
        </message>
        <message>
            <source>Rates with the timing parts at the ends of their tolerances</source>
            <translation>Raten mit den zeitbestimmenden Bauteilen an den Enden ihrer Toleranzen</translation>
        </message>
        <message>
            <source>Stall margin</source>
            <translation>Ladereserve</translation>
        </message>
        <message>
            <source>Charging current at the upper level over the leakage to be expected there</source>
            <translation>Ladestrom an der oberen Schwelle geteilt durch den dort zu erwartenden Leckstrom</translation>
        </message>
        <message>
            <source>over 1000</source>
            <translation>über 1000</translation>
        </message>
        <message>
            <source>Supply</source>
            <translation>Versorgung</translation>
        </message>
        <message>
            <source>Mean supply current</source>
            <translation>Mittlerer Versorgungsstrom</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Übrig</translation>
        </message>
        <message>
            <source>How many of its scarcest part are left in the drawer</source>
            <translation>Wie viele Stück des knappsten Bauteils in der Schublade übrig bleiben</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::ChooseView</name>
        <message>
            <source>Proposals, best first</source>
            <translation>Vorschläge, der beste zuerst</translation>
        </message>
        <message>
            <source>Drawing of the chosen circuit</source>
            <translation>Zeichnung der gewählten Schaltung</translation>
        </message>
        <message>
            <source>Parts of the chosen circuit</source>
            <translation>Bauteile der gewählten Schaltung</translation>
        </message>
        <message>
            <source>Take the &amp;nearest wish</source>
            <translation>&amp;Nächstliegenden Wunsch nehmen</translation>
        </message>
        <message>
            <source>D%1 carries</source>
            <translation>D%1 führt</translation>
        </message>
        <message>
            <source>%1 at most, %2 in the mean, and is lit for %3 a cycle</source>
            <translation>höchstens %1, im Mittel %2, und leuchtet %3 je Periode</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::CurvesView</name>
        <message>
            <source>Curves</source>
            <translation>Kurven</translation>
        </message>
        <message numerus="yes">
            <source>From %1 to %2 with %n switching(s): output up to %3, timing capacitor up to %4. </source>
            <translation>
                <numerusform>Von %1 bis %2 mit %n Umschaltung: Ausgang bis %3, zeitbestimmender Kondensator bis %4. </numerusform>
                <numerusform>Von %1 bis %2 mit %n Umschaltungen: Ausgang bis %3, zeitbestimmender Kondensator bis %4. </numerusform>
            </translation>
        </message>
        <message>
            <source>At %1: output %2, timing capacitor %3</source>
            <translation>Bei %1: Ausgang %2, zeitbestimmender Kondensator %3</translation>
        </message>
        <message>
            <source>%1 is laid over, from %2 to %3: output up to %4. </source>
            <translation>%1 ist darübergelegt, von %2 bis %3: Ausgang bis %4. </translation>
        </message>
        <message numerus="yes">
            <source>%n measured record(s) laid over. </source>
            <translation>
                <numerusform>%n gemessene Aufzeichnung darübergelegt. </numerusform>
                <numerusform>%n gemessene Aufzeichnungen darübergelegt. </numerusform>
            </translation>
        </message>
        <message>
            <source>Arrow keys move the moment line, brackets go from switching to switching, plus and minus zoom, F fits.</source>
            <translation>Pfeiltasten bewegen die Zeitmarke, eckige Klammern springen von Umschaltung zu Umschaltung, Plus und Minus zoomen, F passt ein.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::DrawerDialog</name>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Parts in the drawer</source>
            <translation>Bauteile in der Schublade</translation>
        </message>
        <message>
            <source>&amp;Add a part</source>
            <translation>Bauteil &amp;hinzufügen</translation>
        </message>
        <message>
            <source>&amp;Remove</source>
            <translation>Ent&amp;fernen</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>&amp;Rückgängig</translation>
        </message>
        <message>
            <source>Re&amp;do</source>
            <translation>&amp;Wiederholen</translation>
        </message>
        <message>
            <source>&amp;Import…</source>
            <translation>&amp;Importieren …</translation>
        </message>
        <message>
            <source>&amp;Export…</source>
            <translation>&amp;Exportieren …</translation>
        </message>
        <message>
            <source>The drawer is empty: add the parts that you own, or import a list.</source>
            <translation>Die Schublade ist leer: vorhandene Bauteile hinzufügen oder eine Liste importieren.</translation>
        </message>
        <message>
            <source>Kinds of parts: %1. What is typed is kept at once.</source>
            <translation>Bauteilsorten: %1. Eingaben werden sofort gespeichert.</translation>
        </message>
        <message>
            <source>The drawer</source>
            <translation>Die Schublade</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::DrawerModel</name>
        <message>
            <source>Resistor</source>
            <translation>Widerstand</translation>
        </message>
        <message>
            <source>Capacitor</source>
            <translation>Kondensator</translation>
        </message>
        <message>
            <source>Variable resistor</source>
            <translation>Potentiometer</translation>
        </message>
        <message>
            <source>Row %1, %2: %3</source>
            <translation>Zeile %1, %2: %3</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::EyeView</name>
        <message>
            <source>none has this rate</source>
            <translation>keine Kennung hat diese Rate</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1 to %2 a minute</source>
            <translation>%1 bis %2 je Minute</translation>
        </message>
        <message>
            <source>, lit %1 to %2 % of the time</source>
            <translation>, Leuchtanteil %1 bis %2 %</translation>
        </message>
        <message>
            <source>, two lamps taking turns</source>
            <translation>, zwei Lampen im Wechsel</translation>
        </message>
        <message>
            <source>What the eye sees of each lamp</source>
            <translation>Was das Auge von jeder Lampe sieht</translation>
        </message>
        <message>
            <source>Figure</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Looks like</source>
            <translation>Eindruck</translation>
        </message>
        <message>
            <source>Flashes are seen one by one up to about 10 a second and run together above about 60</source>
            <translation>Blitze werden bis etwa 10 je Sekunde einzeln gesehen und verschmelzen oberhalb von etwa 60</translation>
        </message>
        <message>
            <source>Flashes a minute</source>
            <translation>Blitze je Minute</translation>
        </message>
        <message>
            <source>Cycles of the output in a minute</source>
            <translation>Perioden des Ausgangs je Minute</translation>
        </message>
        <message>
            <source>Visible flash</source>
            <translation>Sichtbarer Blitz</translation>
        </message>
        <message>
            <source>Time in a cycle with more than 5 % of the rated current</source>
            <translation>Zeit je Periode mit mehr als 5 % des Nennstroms</translation>
        </message>
        <message>
            <source>Rhythm of marine lights</source>
            <translation>Leuchtfeuer-Kennung</translation>
        </message>
        <message>
            <source>Class and its abbreviation on charts, after IALA R0110 and IHO Chart No. 1; of a single lamp</source>
            <translation>Art der Kennung und ihre Abkürzung in Seekarten, nach IALA R0110 und IHO Chart No. 1; für eine einzelne Lampe</translation>
        </message>
        <message>
            <source>Mean brightness, of rated</source>
            <translation>Mittlere Helligkeit, vom Nennwert</translation>
        </message>
        <message>
            <source>Mean current over the rated one. Above fusion this is the brightness that is seen (Talbot and Plateau)</source>
            <translation>Mittlerer Strom geteilt durch den Nennstrom. Oberhalb der Verschmelzungsfrequenz ist das die gesehene Helligkeit (Talbot und Plateau)</translation>
        </message>
        <message>
            <source>Effective intensity, of the peak</source>
            <translation>Effektive Lichtstärke, vom Spitzenwert</translation>
        </message>
        <message>
            <source>Steady light that is just seen from as far as these flashes, by Blondel and Rey with 0.2 s: a notion for the threshold of seeing by night, not the brightness of a lamp on a bench</source>
            <translation>Dauerlicht, das gerade noch aus derselben Entfernung gesehen wird wie diese Blitze, nach Blondel und Rey mit 0,2 s: ein Begriff für die Sehschwelle bei Nacht, nicht die Helligkeit einer Lampe auf dem Tisch</translation>
        </message>
        <message>
            <source>Effective intensity</source>
            <translation>Effektive Lichtstärke</translation>
        </message>
        <message>
            <source>The same, from the lamp's stated luminous intensity</source>
            <translation>Dasselbe, aus der angegebenen Lichtstärke der Lampe</translation>
        </message>
        <message>
            <source>The rate held against stated uses: check your local rules</source>
            <translation>Die Rate im Vergleich mit angegebenen Anwendungen: örtliche Vorschriften prüfen</translation>
        </message>
        <message>
            <source>%1
Source: %2</source>
            <translation>%1
Quelle: %2</translation>
        </message>
        <message>
            <source>%1: more than three flashes a second can set off seizures in some people, most often between 15 and 25 a second. Some permitted uses flash faster than that.</source>
            <translation>%1: Mehr als drei Blitze je Sekunde können bei manchen Menschen Anfälle auslösen, am häufigsten zwischen 15 und 25 je Sekunde. Manche zulässigen Anwendungen blinken schneller als das.</translation>
        </message>
        <message>
            <source>Do not look into strong lamps from close by. What a light may be used for, and at which rate, is for local rules and licensed people to say.</source>
            <translation>Nicht aus der Nähe in starke Lampen blicken. Wofür und mit welcher Rate ein Licht eingesetzt werden darf, bestimmen örtliche Vorschriften und zugelassene Fachleute.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::FiguresTable</name>
        <message>
            <source>Figures of the spread</source>
            <translation>Zahlenwerte der Streuung</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Off nominal</source>
            <translation>Abweichung</translation>
        </message>
        <message>
            <source>Nominal</source>
            <translation>Nennwert</translation>
        </message>
        <message>
            <source>The board with every part at its value</source>
            <translation>Die Platine mit jedem Bauteil bei seinem Wert</translation>
        </message>
        <message>
            <source>Mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>Mean of the random boards</source>
            <translation>Mittel der Zufallsplatinen</translation>
        </message>
        <message>
            <source>Standard deviation</source>
            <translation>Standardabweichung</translation>
        </message>
        <message>
            <source>Of the random boards; divided by one less than their number</source>
            <translation>Der Zufallsplatinen; geteilt durch ihre Anzahl minus eins</translation>
        </message>
        <message>
            <source>Worst case, low</source>
            <translation>Ungünstigster Fall, unten</translation>
        </message>
        <message>
            <source>The lowest anywhere within all tolerances</source>
            <translation>Der niedrigste Wert innerhalb aller Toleranzen</translation>
        </message>
        <message>
            <source>So many of the boards are below: %1</source>
            <translation>So viele der Platinen liegen darunter: %1</translation>
        </message>
        <message>
            <source>Median</source>
            <translation>Median</translation>
        </message>
        <message>
            <source>%1 are below</source>
            <translation>%1 liegen darunter</translation>
        </message>
        <message>
            <source>Worst case, high</source>
            <translation>Ungünstigster Fall, oben</translation>
        </message>
        <message>
            <source>The highest anywhere within all tolerances</source>
            <translation>Der höchste Wert innerhalb aller Toleranzen</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::FindingRow</name>
        <message>
            <source>Fault</source>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>Overstress</source>
            <translation>Überlastung</translation>
        </message>
        <message>
            <source>Doubt</source>
            <translation>Zweifel</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Hinweis</translation>
        </message>
        <message>
            <source>Source: %1</source>
            <translation>Quelle: %1</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Return shows %1 on the Hook-up, space the source.</source>
            <translation>Die Eingabetaste zeigt %1 in der Verdrahtung, die Leertaste die Quelle.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::FindingsView</name>
        <message>
            <source>No findings.</source>
            <translation>Keine Befunde.</translation>
        </message>
        <message>
            <source>Findings</source>
            <translation>Befunde</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::FollowButton</name>
        <message>
            <source>%1: Set B follows Set A</source>
            <translation>%1: Satz B folgt Satz A</translation>
        </message>
        <message>
            <source>Set B follows Set A: press to give it a value of its own</source>
            <translation>Satz B folgt Satz A: drücken, um ihm einen eigenen Wert zu geben</translation>
        </message>
        <message>
            <source>Set B has a value of its own: press to take the one of Set A</source>
            <translation>Satz B hat einen eigenen Wert: drücken, um den von Satz A zu übernehmen</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::HookupView</name>
        <message>
            <source>Hook-up</source>
            <translation>Verdrahtung</translation>
        </message>
        <message numerus="yes">
            <source>Drawing of the circuit, %n part(s).</source>
            <translation>
                <numerusform>Zeichnung der Schaltung, %n Bauteil.</numerusform>
                <numerusform>Zeichnung der Schaltung, %n Bauteile.</numerusform>
            </translation>
        </message>
        <message>
            <source>net %1</source>
            <translation>Netz %1</translation>
        </message>
        <message>
            <source>Selected: %1.</source>
            <translation>Ausgewählt: %1.</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1
in no net</source>
            <translation>%1
in keinem Netz</translation>
        </message>
        <message>
            <source>%1
net %2</source>
            <translation>%1
Netz %2</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::LayoutForm</name>
        <message>
            <source>What stands between two columns</source>
            <translation>Was zwischen zwei Spalten steht</translation>
        </message>
        <message>
            <source>Decimal mark</source>
            <translation>Dezimalzeichen</translation>
        </message>
        <message>
            <source>point</source>
            <translation>Punkt</translation>
        </message>
        <message>
            <source>comma</source>
            <translation>Komma</translation>
        </message>
        <message>
            <source>Lines that name the columns</source>
            <translation>Zeilen mit den Namen der Spalten</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>one</source>
            <translation>eine</translation>
        </message>
        <message>
            <source>two</source>
            <translation>zwei</translation>
        </message>
        <message>
            <source>Where the time comes from</source>
            <translation>Woher die Zeit kommt</translation>
        </message>
        <message>
            <source>Unit of the time</source>
            <translation>Einheit der Zeit</translation>
        </message>
        <message>
            <source>s</source>
            <translation>s</translation>
        </message>
        <message>
            <source>ms</source>
            <translation>ms</translation>
        </message>
        <message>
            <source>µs</source>
            <translation>µs</translation>
        </message>
        <message>
            <source>Lines above the table that are passed over</source>
            <translation>Zeilen über der Tabelle, die übergangen werden</translation>
        </message>
        <message>
            <source>Time from one row to the next</source>
            <translation>Zeit von einer Zeile zur nächsten</translation>
        </message>
        <message>
            <source>in</source>
            <translation>in</translation>
        </message>
        <message>
            <source>of</source>
            <translation>von</translation>
        </message>
        <message>
            <source>first voltage</source>
            <translation>erste Spannung</translation>
        </message>
        <message>
            <source>second voltage</source>
            <translation>zweite Spannung</translation>
        </message>
        <message>
            <source>Column of the %1</source>
            <translation>Spalte (%1)</translation>
        </message>
        <message>
            <source>Unit of the %1</source>
            <translation>Einheit (%1)</translation>
        </message>
        <message>
            <source>V</source>
            <translation>V</translation>
        </message>
        <message>
            <source>mV</source>
            <translation>mV</translation>
        </message>
        <message>
            <source>What the %1 is</source>
            <translation>Bedeutung (%1)</translation>
        </message>
        <message>
            <source>&amp;Between columns</source>
            <translation>Spalten &amp;getrennt durch</translation>
        </message>
        <message>
            <source>decimal mark</source>
            <translation>Dezimalzeichen</translation>
        </message>
        <message>
            <source>&amp;Lines above it</source>
            <translation>Zeilen &amp;darüber</translation>
        </message>
        <message>
            <source>lines of names</source>
            <translation>Namenszeilen</translation>
        </message>
        <message>
            <source>&amp;Time</source>
            <translation>&amp;Zeit</translation>
        </message>
        <message>
            <source>&amp;First voltage</source>
            <translation>&amp;Erste Spannung</translation>
        </message>
        <message>
            <source>is</source>
            <translation>ist</translation>
        </message>
        <message>
            <source>Sec&amp;ond voltage</source>
            <translation>Z&amp;weite Spannung</translation>
        </message>
        <message>
            <source>column %1</source>
            <translation>Spalte %1</translation>
        </message>
        <message>
            <source>column %1: %2</source>
            <translation>Spalte %1: %2</translation>
        </message>
        <message>
            <source>constant step</source>
            <translation>feste Schrittweite</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::MeasuredTable</name>
        <message>
            <source>What the measurements say, beside the simulation</source>
            <translation>Was die Messungen ergeben, neben der Simulation</translation>
        </message>
        <message>
            <source>Figure</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Differenz</translation>
        </message>
        <message>
            <source>In per cent</source>
            <translation>In Prozent</translation>
        </message>
        <message>
            <source>In u</source>
            <translation>In u</translation>
        </message>
        <message>
            <source>How many standard uncertainties u of the measurement the difference is</source>
            <translation>Wie viele Standardunsicherheiten u der Messung die Differenz beträgt</translation>
        </message>
        <message>
            <source>%1 points</source>
            <translation>%1 %-Punkte</translation>
        </message>
        <message>
            <source>No uncertainty is stated.</source>
            <translation>Es ist keine Unsicherheit angegeben.</translation>
        </message>
        <message>
            <source>The simulation has no figure for this.</source>
            <translation>Die Simulation hat hierfür keinen Wert.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::MeasurementModel</name>
        <message>
            <source>Add measurement “%1”</source>
            <translation>Messung „%1“ hinzufügen</translation>
        </message>
        <message>
            <source>Change measurement “%1”</source>
            <translation>Messung „%1“ ändern</translation>
        </message>
        <message>
            <source>Delete measurement “%1”</source>
            <translation>Messung „%1“ löschen</translation>
        </message>
        <message>
            <source>Delete %1 measurements</source>
            <translation>%1 Messungen löschen</translation>
        </message>
        <message>
            <source>%1 (copy)</source>
            <translation>%1 (Kopie)</translation>
        </message>
        <message>
            <source>Duplicate measurement “%1”</source>
            <translation>Messung „%1“ duplizieren</translation>
        </message>
        <message>
            <source>Whether readings, fits and lab sheets take it into account</source>
            <translation>Ob Kennwerte, Anpassungen und Laborblätter sie berücksichtigen</translation>
        </message>
        <message>
            <source>The cycle time that the record shows</source>
            <translation>Die Periodendauer, die die Aufzeichnung zeigt</translation>
        </message>
        <message>
            <source>In use</source>
            <translation>Wird genutzt</translation>
        </message>
        <message>
            <source>Not in use</source>
            <translation>Wird nicht genutzt</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Standard uncertainty: one standard deviation</source>
            <translation>Standardunsicherheit: eine Standardabweichung</translation>
        </message>
        <message>
            <source>Used</source>
            <translation>Genutzt</translation>
        </message>
        <message>
            <source>Title</source>
            <translation>Titel</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>Use measurement “%1”</source>
            <translation>Messung „%1“ nutzen</translation>
        </message>
        <message>
            <source>Leave out measurement “%1”</source>
            <translation>Messung „%1“ auslassen</translation>
        </message>
        <message>
            <source>Rename measurement “%1”</source>
            <translation>Messung „%1“ umbenennen</translation>
        </message>
        <message>
            <source>The %1 %2.</source>
            <translation>%1 %2.</translation>
        </message>
        <message>
            <source>value</source>
            <translation>Der Wert</translation>
        </message>
        <message>
            <source>uncertainty</source>
            <translation>Die Unsicherheit</translation>
        </message>
        <message>
            <source>Set %1 to %2</source>
            <translation>%1 auf %2 setzen</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::MeasurementsView</name>
        <message>
            <source>&lt;p&gt;Nothing has been measured yet. Three kinds of measurement can be entered:&lt;/p&gt;&lt;p&gt;&lt;b&gt;Stopwatch&lt;/b&gt;: how long a number of flashes takes. Or tap along with the flashes; the taps make the count.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Meter reading&lt;/b&gt;: supply voltage, output while high or low, current of a lamp, or a part by itself on the meter.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Record&lt;/b&gt;: the output or the timing capacitor over time, from an instrument's file.&lt;/p&gt;&lt;p&gt;Each has an uncertainty. What is measured then stands in the Readings beside Set A, records lie over the Curves, and &lt;i&gt;Why it differs&lt;/i&gt; ends at what was measured.&lt;/p&gt;</source>
            <translation>&lt;p&gt;Noch wurde nichts gemessen. Drei Arten von Messungen können eingegeben werden:&lt;/p&gt;&lt;p&gt;&lt;b&gt;Stoppuhr&lt;/b&gt;: wie lange eine Anzahl von Blitzen dauert. Oder zu den Blitzen mittippen; die Anschläge ergeben die Zählung.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Ablesung am Messgerät&lt;/b&gt;: Versorgungsspannung, Ausgang bei High oder Low, Strom einer Lampe oder ein Bauteil für sich allein.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Aufzeichnung&lt;/b&gt;: der Ausgang oder der zeitbestimmende Kondensator über der Zeit, aus der Datei eines Messgeräts.&lt;/p&gt;&lt;p&gt;Zu jeder gehört eine Unsicherheit. Was gemessen wurde, steht dann in den Kennwerten neben Satz A, Aufzeichnungen liegen über den Kurven, und &lt;i&gt;Warum es abweicht&lt;/i&gt; endet bei dem, was gemessen wurde.&lt;/p&gt;</translation>
        </message>
        <message>
            <source>All together, beside the simulation</source>
            <translation>Alles zusammen, neben der Simulation</translation>
        </message>
        <message>
            <source>Measurements</source>
            <translation>Messungen</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::MeterDialog</name>
        <message>
            <source>may be left empty</source>
            <translation>darf leer bleiben</translation>
        </message>
        <message>
            <source> % of reading</source>
            <translation> % vom Messwert</translation>
        </message>
        <message>
            <source> digits</source>
            <translation> Digit</translation>
        </message>
        <message>
            <source>Accuracy, per cent of the reading</source>
            <translation>Genauigkeit, Prozent vom Messwert</translation>
        </message>
        <message>
            <source>Accuracy, steps of the last digit</source>
            <translation>Genauigkeit, Schritte der letzten Stelle</translation>
        </message>
        <message>
            <source>&amp;Quantity</source>
            <translation>Mess&amp;größe</translation>
        </message>
        <message>
            <source>&amp;Part</source>
            <translation>Bau&amp;teil</translation>
        </message>
        <message>
            <source>&amp;Value as read</source>
            <translation>Abgelesener &amp;Wert</translation>
        </message>
        <message>
            <source>How well it is known</source>
            <translation>Wie gut er bekannt ist</translation>
        </message>
        <message>
            <source>Meter's &amp;accuracy, ±</source>
            <translation>Genauigkeit des &amp;Messgeräts, ±</translation>
        </message>
        <message>
            <source>&amp;Standard uncertainty</source>
            <translation>&amp;Standardunsicherheit</translation>
        </message>
        <message>
            <source>Tit&amp;le</source>
            <translation>Tite&amp;l</translation>
        </message>
        <message>
            <source>as the meter shows it: %1</source>
            <translation>wie das Messgerät ihn zeigt: %1</translation>
        </message>
        <message>
            <source>In %1, with or without a prefix; the last digit counts for the accuracy</source>
            <translation>In %1, mit oder ohne Vorsatz; die letzte Stelle zählt für die Genauigkeit</translation>
        </message>
        <message>
            <source>As stated; a change of the accuracy works it out anew.</source>
            <translation>Wie angegeben; eine Änderung der Genauigkeit berechnet sie neu.</translation>
        </message>
        <message>
            <source>Usual for a hand-held meter (from memory): see your meter's leaflet. The limits over √3, since any value between them is as likely.</source>
            <translation>Üblich für ein Handmessgerät (aus dem Gedächtnis): siehe Anleitung des Messgeräts. Die Grenzen geteilt durch √3, da jeder Wert dazwischen gleich wahrscheinlich ist.</translation>
        </message>
        <message>
            <source>No value yet.</source>
            <translation>Noch kein Wert.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>The value %1.</source>
            <translation>Der Wert %1.</translation>
        </message>
        <message>
            <source>Meter reading</source>
            <translation>Ablesung am Messgerät</translation>
        </message>
        <message>
            <source>Enter the value as the meter shows it.</source>
            <translation>Den Wert eingeben, wie ihn das Messgerät zeigt.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::NetCell</name>
        <message>
            <source>Net, or a pin to join to</source>
            <translation>Netz oder zu verbindender Anschluss</translation>
        </message>
        <message>
            <source>net or pin</source>
            <translation>Netz oder Anschluss</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::PageSheet</name>
        <message>
            <source>the picture could not be made: %1</source>
            <translation>das Bild konnte nicht erzeugt werden: %1</translation>
        </message>
        <message>
            <source>the drawing could not be made</source>
            <translation>die Zeichnung konnte nicht erzeugt werden</translation>
        </message>
        <message>
            <source>the page could not be made</source>
            <translation>die Seite konnte nicht erzeugt werden</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::PartPalette</name>
        <message>
            <source>Add</source>
            <translation>Hinzufügen</translation>
        </message>
        <message>
            <source>Kinds of parts to add</source>
            <translation>Bauteilarten zum Hinzufügen</translation>
        </message>
        <message>
            <source>Add: %1</source>
            <translation>Hinzufügen: %1</translation>
        </message>
        <message>
            <source>Add: %1. Click here, then where it is to stand.</source>
            <translation>Hinzufügen: %1. Hier klicken, dann dorthin, wo es stehen soll.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::PartsTable</name>
        <message>
            <source>Parts and what they do to the spread</source>
            <translation>Bauteile und was sie zur Streuung beitragen</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Bauteil</translation>
        </message>
        <message>
            <source>Tolerance</source>
            <translation>Toleranz</translation>
        </message>
        <message>
            <source>Share of the variance</source>
            <translation>Varianzanteil</translation>
        </message>
        <message>
            <source>1 % more moves it by</source>
            <translation>1 % mehr ändert um</translation>
        </message>
        <message>
            <source>On a reel with</source>
            <translation>Von einer Rolle mit</translation>
        </message>
        <message>
            <source>%1 is on a reel with</source>
            <translation>%1 ist von einer Rolle mit</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::PinsModel</name>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>%1, in no net</source>
            <translation>%1, in keinem Netz</translation>
        </message>
        <message>
            <source>%1, net %2</source>
            <translation>%1, Netz %2</translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Pin</source>
            <translation>Anschluss</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Bauteil</translation>
        </message>
        <message>
            <source>Role</source>
            <translation>Funktion</translation>
        </message>
        <message>
            <source>Net</source>
            <translation>Netz</translation>
        </message>
        <message>
            <source>Voltage</source>
            <translation>Spannung</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::PinsView</name>
        <message>
            <source>Filter: part, role or net</source>
            <translation>Filter: Bauteil, Funktion oder Netz</translation>
        </message>
        <message>
            <source>Filter the pins</source>
            <translation>Anschlüsse filtern</translation>
        </message>
        <message>
            <source>Sort the pins by</source>
            <translation>Anschlüsse sortieren nach</translation>
        </message>
        <message>
            <source>by %1</source>
            <translation>nach %1</translation>
        </message>
        <message>
            <source>No parts yet. Insert adds one.</source>
            <translation>Noch keine Bauteile. Einfg fügt eines hinzu.</translation>
        </message>
        <message>
            <source>Pins</source>
            <translation>Anschlüsse</translation>
        </message>
        <message>
            <source>No pin fits the filter.</source>
            <translation>Kein Anschluss passt zum Filter.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::Reader</name>
        <message>
            <source>Must be greater than 0.</source>
            <translation>Muss größer als 0 sein.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::ReadingsView</name>
        <message>
            <source>Set A against the textbook</source>
            <translation>Satz A gegenüber dem Lehrbuch</translation>
        </message>
        <message>
            <source>%1 minus Set A</source>
            <translation>%1 minus Satz A</translation>
        </message>
        <message>
            <source>On the real board, with its standard uncertainty</source>
            <translation>An der wirklichen Platine, mit der Standardunsicherheit</translation>
        </message>
        <message>
            <source>Measured minus Set A; u is the standard uncertainty of the measurement</source>
            <translation>Gemessen minus Satz A; u ist die Standardunsicherheit der Messung</translation>
        </message>
        <message>
            <source>Figure</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Textbook</source>
            <translation>Lehrbuch</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Difference</source>
            <translation>Differenz</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>Measured − A</source>
            <translation>Gemessen − A</translation>
        </message>
        <message>
            <source>%1 − Set A</source>
            <translation>%1 − Satz A</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Kennwerte</translation>
        </message>
        <message>
            <source>Pulse width (high)</source>
            <translation>Impulsbreite (high)</translation>
        </message>
        <message>
            <source>No readings yet.</source>
            <translation>Noch keine Kennwerte.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::ReadyDialog</name>
        <message>
            <source>Ready blinkers</source>
            <translation>Fertige Blinker</translation>
        </message>
        <message>
            <source>%1
%2</source>
            <translation>%1
%2</translation>
        </message>
        <message>
            <source>Drawing of the circuit</source>
            <translation>Zeichnung der Schaltung</translation>
        </message>
        <message>
            <source>&amp;Make it</source>
            <translation>&amp;Erstellen</translation>
        </message>
        <message>
            <source>New from a ready blinker</source>
            <translation>Neu aus fertigem Blinker</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::RecordFiguresTable</name>
        <message>
            <source>Figures of the record</source>
            <translation>Zahlenwerte der Aufzeichnung</translation>
        </message>
        <message>
            <source>Figure</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>Uncertainty</source>
            <translation>Unsicherheit</translation>
        </message>
        <message>
            <source>Standard uncertainty: one standard deviation, k = 1</source>
            <translation>Standardunsicherheit: eine Standardabweichung, k = 1</translation>
        </message>
        <message>
            <source>Cycle time</source>
            <translation>Periodendauer</translation>
        </message>
        <message>
            <source>Pulse width (high)</source>
            <translation>Impulsbreite (high)</translation>
        </message>
        <message>
            <source>Space width (low)</source>
            <translation>Pausenbreite (low)</translation>
        </message>
        <message>
            <source>Duty cycle</source>
            <translation>Tastgrad</translation>
        </message>
        <message>
            <source>First flash</source>
            <translation>Erster Blitz</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::RecordPlot</name>
        <message>
            <source>The record</source>
            <translation>Die Aufzeichnung</translation>
        </message>
        <message>
            <source>Time from power-on (%1)</source>
            <translation>Zeit ab dem Einschalten (%1)</translation>
        </message>
        <message>
            <source>Time (%1)</source>
            <translation>Zeit (%1)</translation>
        </message>
        <message>
            <source>; Home shows all of it</source>
            <translation>; Pos1 zeigt alles</translation>
        </message>
        <message>
            <source>Voltage</source>
            <translation>Spannung</translation>
        </message>
        <message>
            <source>switching</source>
            <translation>Umschaltung</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::RecordPreview</name>
        <message>
            <source>Output</source>
            <translation>Ausgang</translation>
        </message>
        <message>
            <source>Timing capacitor</source>
            <translation>Zeitbestimmender Kondensator</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Etwas anderes</translation>
        </message>
        <message>
            <source>First lines of the file</source>
            <translation>Erste Zeilen der Datei</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>not read</source>
            <translation>nicht gelesen</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::RetuneRow</name>
        <message>
            <source>Wanted rate</source>
            <translation>Gewünschte Rate</translation>
        </message>
        <message>
            <source>Unit of the wanted rate</source>
            <translation>Einheit der gewünschten Rate</translation>
        </message>
        <message>
            <source>a minute</source>
            <translation>je Minute</translation>
        </message>
        <message>
            <source>Hz</source>
            <translation>Hz</translation>
        </message>
        <message>
            <source>s a cycle</source>
            <translation>s je Periode</translation>
        </message>
        <message>
            <source>Part to change</source>
            <translation>Zu änderndes Bauteil</translation>
        </message>
        <message>
            <source>Where the new value comes from</source>
            <translation>Woher der neue Wert kommt</translation>
        </message>
        <message>
            <source>the drawer</source>
            <translation>der Schublade</translation>
        </message>
        <message>
            <source>Value to fit and rate to expect</source>
            <translation>Einzubauender Wert und zu erwartende Rate</translation>
        </message>
        <message>
            <source>To &amp;flash at</source>
            <translation>Zum Bl&amp;inken mit</translation>
        </message>
        <message>
            <source>change</source>
            <translation>ist</translation>
        </message>
        <message>
            <source>to a value from</source>
            <translation>zu ändern auf einen Wert aus</translation>
        </message>
        <message>
            <source>A rate is above 0.</source>
            <translation>Eine Rate liegt über 0.</translation>
        </message>
        <message>
            <source>A rate between 0.0001 Hz and 1 MHz is wanted.</source>
            <translation>Gefragt ist eine Rate zwischen 0,0001 Hz und 1 MHz.</translation>
        </message>
        <message>
            <source>%1 flashes a minute</source>
            <translation>%1 Blitze je Minute</translation>
        </message>
        <message>
            <source>With %1 = %2 (%3), %4 are to be expected, duty cycle %5. Exactly right would be %6.</source>
            <translation>Mit %1 = %2 (%3) sind %4 zu erwarten, Tastgrad %5. Genau richtig wäre %6.</translation>
        </message>
        <message>
            <source>%1 gives %2</source>
            <translation>%1 ergibt %2</translation>
        </message>
        <message>
            <source>Next to it: %1.</source>
            <translation>Benachbart: %1.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::RoomFrame</name>
        <message>
            <source>Set of values</source>
            <translation>Wertesatz</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
        <message>
            <source>Progress</source>
            <translation>Fortschritt</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::RowMenu</name>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>&amp;Tie to</source>
            <translation>&amp;Koppeln mit</translation>
        </message>
        <message>
            <source>&amp;Untie</source>
            <translation>Kopplung &amp;lösen</translation>
        </message>
        <message>
            <source>Set B: &amp;same as A</source>
            <translation>Satz B: &amp;gleich wie A</translation>
        </message>
        <message>
            <source>Set B: a value of its &amp;own</source>
            <translation>Satz B: &amp;eigener Wert</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::SpreadPlot</name>
        <message>
            <source>Spread</source>
            <translation>Streuung</translation>
        </message>
        <message>
            <source>Boards</source>
            <translation>Platinen</translation>
        </message>
        <message>
            <source>Boards up to here (%)</source>
            <translation>Platinen bis hier (%)</translation>
        </message>
        <message>
            <source>Boards up to here</source>
            <translation>Platinen bis hier</translation>
        </message>
        <message>
            <source>nominal</source>
            <translation>Nennwert</translation>
        </message>
        <message>
            <source>worst</source>
            <translation>ungünstigst</translation>
        </message>
        <message>
            <source>5 %</source>
            <translation>5 %</translation>
        </message>
        <message>
            <source>95 %</source>
            <translation>95 %</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::SpreadView</name>
        <message>
            <source>&amp;Distribution</source>
            <translation>Ver&amp;teilung</translation>
        </message>
        <message>
            <source>&amp;Parts</source>
            <translation>Ba&amp;uteile</translation>
        </message>
        <message>
            <source>Cur&amp;ves</source>
            <translation>Kur&amp;ven</translation>
        </message>
        <message>
            <source>All %1 boards blink.</source>
            <translation>Alle %1 Platinen blinken.</translation>
        </message>
        <message>
            <source>%1 of %2 boards blink.</source>
            <translation>%1 von %2 Platinen blinken.</translation>
        </message>
        <message>
            <source>%1 of 9 in 10: %2 to %3.</source>
            <translation>%1 bei 9 von 10: %2 bis %3.</translation>
        </message>
        <message>
            <source>Some boards at the limits do not blink: the worst case has no true end.</source>
            <translation>Manche Platinen an den Grenzen blinken nicht: Der ungünstigste Fall hat kein echtes Ende.</translation>
        </message>
        <message>
            <source>Every one lies within the worst case, %1 to %2.</source>
            <translation>Alle liegen innerhalb des ungünstigsten Falls, %1 bis %2.</translation>
        </message>
        <message>
            <source>%1 lie beyond the worst case that was found.</source>
            <translation>%1 liegen jenseits des gefundenen ungünstigsten Falls.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::StopwatchDialog</name>
        <message>
            <source>may be left empty</source>
            <translation>darf leer bleiben</translation>
        </message>
        <message>
            <source>Standard uncertainty of one press of the button, start or stop. People's reaction times differ by 0.1 to 0.2 s from press to press (from memory, no source).</source>
            <translation>Standardunsicherheit eines einzelnen Tastendrucks, Start oder Stopp. Reaktionszeiten schwanken von Druck zu Druck um 0,1 bis 0,2 s (aus dem Gedächtnis, ohne Quelle).</translation>
        </message>
        <message>
            <source>Tap along</source>
            <translation>Mittippen</translation>
        </message>
        <message>
            <source>Or read off a stopwatch</source>
            <translation>Oder von einer Stoppuhr ablesen</translation>
        </message>
        <message>
            <source>&amp;Flashes counted</source>
            <translation>Gezählte &amp;Blitze</translation>
        </message>
        <message>
            <source>T&amp;ime for them</source>
            <translation>&amp;Zeit dafür</translation>
        </message>
        <message>
            <source>&amp;Each press known to</source>
            <translation>Unsicherheit je &amp;Druck</translation>
        </message>
        <message>
            <source>Tit&amp;le</source>
            <translation>Tite&amp;l</translation>
        </message>
        <message>
            <source>From the taps: the scatter of a tap about an even beat gives the time an uncertainty of %1.</source>
            <translation>Aus den Anschlägen: Die Streuung eines Anschlags um einen gleichmäßigen Takt gibt der Zeit eine Unsicherheit von %1.</translation>
        </message>
        <message>
            <source>Standard uncertainty; usually 0.1 to 0.2 s (from memory). Start and stop together: %1.</source>
            <translation>Standardunsicherheit; üblich sind 0,1 bis 0,2 s (aus dem Gedächtnis). Start und Stopp zusammen: %1.</translation>
        </message>
        <message>
            <source>No time yet.</source>
            <translation>Noch keine Zeit.</translation>
        </message>
        <message>
            <source>Cycle time %1; %2 flashes a minute</source>
            <translation>Periodendauer %1; %2 Blitze je Minute</translation>
        </message>
        <message>
            <source>Stopwatch</source>
            <translation>Stoppuhr</translation>
        </message>
        <message>
            <source>Enter the time that the flashes took, or tap along with them.</source>
            <translation>Die Zeit eingeben, die die Blitze gedauert haben, oder mittippen.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::StripCaptions</name>
        <message numerus="yes">
            <source>and %n more</source>
            <translation>
                <numerusform>und %n weitere</numerusform>
                <numerusform>und %n weitere</numerusform>
            </translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 in %2</translation>
        </message>
        <message>
            <source>A</source>
            <translation>A</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Measured</source>
            <translation>Gemessen</translation>
        </message>
        <message>
            <source>9 of 10 boards</source>
            <translation>9 von 10 Platinen</translation>
        </message>
        <message>
            <source>Output, pin 3</source>
            <translation>Ausgang, Pin 3</translation>
        </message>
        <message>
            <source>switching levels</source>
            <translation>Schaltschwellen</translation>
        </message>
        <message>
            <source>Timing capacitor</source>
            <translation>Zeitbestimmender Kondensator</translation>
        </message>
        <message>
            <source>Lamp current: no lamp here</source>
            <translation>Lampenstrom: keine Lampe vorhanden</translation>
        </message>
        <message>
            <source>Lamp current</source>
            <translation>Lampenstrom</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::StripPlot</name>
        <message>
            <source>Time (%1)</source>
            <translation>Zeit (%1)</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::SuspectsView</name>
        <message>
            <source>Likely faults, the likeliest first</source>
            <translation>Wahrscheinliche Fehler, der wahrscheinlichste zuerst</translation>
        </message>
        <message>
            <source>Share</source>
            <translation>Anteil</translation>
        </message>
        <message>
            <source>Likely wrong</source>
            <translation>Wahrscheinlicher Fehler</translation>
        </message>
        <message>
            <source>The same from outside: %1.</source>
            <translation>Von außen gleich: %1.</translation>
        </message>
        <message>
            <source>What to do: %1</source>
            <translation>Abhilfe: %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::SymptomForm</name>
        <message>
            <source>not counted</source>
            <translation>nicht gezählt</translation>
        </message>
        <message>
            <source>&amp;Flashes counted, a minute:</source>
            <translation>&amp;Gezählte Blitze je Minute:</translation>
        </message>
        <message>
            <source>Flashes counted, a minute</source>
            <translation>Gezählte Blitze je Minute</translation>
        </message>
        <message>
            <source>What is seen</source>
            <translation>Was zu sehen ist</translation>
        </message>
        <message>
            <source>What was measured</source>
            <translation>Was gemessen wurde</translation>
        </message>
        <message>
            <source>Expected readings, and cells beside them for what the meter shows. Black lead on 0 V, the other on the leg itself.</source>
            <translation>Erwartete Ablesungen, daneben Felder für die Anzeige des Messgeräts. Schwarze Messleitung an 0 V, die andere direkt an das Anschlussbein.</translation>
        </message>
        <message>
            <source>Readings of the meter, with the expected ones</source>
            <translation>Ablesungen des Messgeräts, mit den erwarteten</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Messpunkt</translation>
        </message>
        <message>
            <source>Mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>read</source>
            <translation>Ist</translation>
        </message>
        <message>
            <source>Least</source>
            <translation>Min.</translation>
        </message>
        <message>
            <source>Most</source>
            <translation>Max.</translation>
        </message>
        <message>
            <source>A rate is above 0.</source>
            <translation>Eine Rate liegt über 0.</translation>
        </message>
        <message>
            <source>%1, %2 measured</source>
            <translation>%1, %2 gemessen</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::TapTimer</name>
        <message>
            <source>Start &amp;again</source>
            <translation>&amp;Neu beginnen</translation>
        </message>
        <message>
            <source>Press at each flash, with the mouse or the space bar</source>
            <translation>Bei jedem Blitz drücken, mit der Maus oder der Leertaste</translation>
        </message>
        <message>
            <source>&amp;Tap at each flash</source>
            <translation>Bei jedem Blitz &amp;tippen</translation>
        </message>
        <message>
            <source>1 tap</source>
            <translation>1 Anschlag</translation>
        </message>
        <message>
            <source>%1 taps</source>
            <translation>%1 Anschläge</translation>
        </message>
        <message>
            <source>Press here or the space bar at each flash. The taps make the count.</source>
            <translation>Bei jedem Blitz hier oder die Leertaste drücken. Die Anschläge ergeben die Zählung.</translation>
        </message>
        <message>
            <source>Go on tapping: the first tap is the start.</source>
            <translation>Weitertippen: Der erste Anschlag ist der Start.</translation>
        </message>
        <message>
            <source>%1 flashes a minute.</source>
            <translation>%1 Blitze je Minute.</translation>
        </message>
        <message>
            <source>Scatter of a tap: %1.</source>
            <translation>Streuung eines Anschlags: %1.</translation>
        </message>
        <message>
            <source>With %1 taps the scatter counts.</source>
            <translation>Ab %1 Anschlägen zählt die Streuung.</translation>
        </message>
        <message>
            <source>After tap %1 a flash seems to have gone by: start again.</source>
            <translation>Nach Anschlag %1 ist wohl ein Blitz ohne Anschlag vergangen: neu beginnen.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::TieMark</name>
        <message>
            <source>Moves together with %1</source>
            <translation>Ändert sich zusammen mit %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::TrendPlot</name>
        <message>
            <source>Trend</source>
            <translation>Trend</translation>
        </message>
        <message>
            <source>Textbook</source>
            <translation>Lehrbuch</translation>
        </message>
        <message>
            <source>%1 does not blink</source>
            <translation>%1 blinkt nicht</translation>
        </message>
        <message>
            <source>does not blink</source>
            <translation>blinkt nicht</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::ValuePanel</name>
        <message>
            <source>Values</source>
            <translation>Werte</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
        <message>
            <source>lamp, %1</source>
            <translation>Lampe, %1</translation>
        </message>
        <message>
            <source>lamp</source>
            <translation>Lampe</translation>
        </message>
        <message>
            <source>, rated %1</source>
            <translation>, Nennstrom %1</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::ValueRow</name>
        <message>
            <source>Type a value, such as 4k7, 4.7k or 4,7 kΩ, and press Enter</source>
            <translation>Wert eingeben, etwa 4k7, 4.7k oder 4,7 kΩ, dann Eingabetaste drücken</translation>
        </message>
        <message>
            <source>Type a value, such as 220n, 0.22u or 0,22 µF, and press Enter</source>
            <translation>Wert eingeben, etwa 220n, 0.22u oder 0,22 µF, dann Eingabetaste drücken</translation>
        </message>
        <message>
            <source>Type a value and press Enter</source>
            <translation>Wert eingeben und Eingabetaste drücken</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>Drag, or hold Shift to drag ten times finer</source>
            <translation>Ziehen; mit gedrückter Umschalttaste zehnmal feiner</translation>
        </message>
        <message>
            <source>%1 in %2</source>
            <translation>%1 in %2</translation>
        </message>
        <message>
            <source>Read only</source>
            <translation>Nur lesbar</translation>
        </message>
        <message>
            <source>%1. Escape brings back %2.</source>
            <translation>%1. Esc stellt %2 wieder her.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::ValuesTable</name>
        <message>
            <source>Fitted values</source>
            <translation>Angepasste Werte</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Stated</source>
            <translation>Angegeben</translation>
        </message>
        <message>
            <source>Known beforehand</source>
            <translation>Vorwissen</translation>
        </message>
        <message>
            <source>Fitted</source>
            <translation>Angepasst</translation>
        </message>
        <message>
            <source>Moved by</source>
            <translation>Änderung</translation>
        </message>
        <message>
            <source>In σ</source>
            <translation>In σ</translation>
        </message>
        <message>
            <source>Each value that the timing hangs on</source>
            <translation>Jeder Wert, von dem die Zeiten abhängen</translation>
        </message>
        <message>
            <source>What the circuit states</source>
            <translation>Was in der Schaltung angegeben ist</translation>
        </message>
        <message>
            <source>By tolerance, by a reading of the part itself, or by what is usual; with its standard uncertainty</source>
            <translation>Nach Toleranz, nach einer Ablesung am Bauteil selbst oder nach dem Üblichen; mit Standardunsicherheit</translation>
        </message>
        <message>
            <source>What explains the measurements best, with its standard uncertainty</source>
            <translation>Was die Messungen am besten erklärt, mit Standardunsicherheit</translation>
        </message>
        <message>
            <source>Fitted against stated</source>
            <translation>Angepasst gegenüber angegeben</translation>
        </message>
        <message>
            <source>Fitted against what was known beforehand, in standard deviations of that</source>
            <translation>Angepasst gegenüber dem Vorwissen, in Standardabweichungen des Vorwissens</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::WhyView</name>
        <message>
            <source>From the textbook to the board</source>
            <translation>Vom Lehrbuch zur Platine</translation>
        </message>
        <message>
            <source>%1 points</source>
            <translation>%1 %-Punkte</translation>
        </message>
        <message>
            <source> (%1)</source>
            <translation> (%1)</translation>
        </message>
        <message>
            <source>Unexplained</source>
            <translation>Unerklärt</translation>
        </message>
        <message>
            <source>Measured minus simulated; the whisker is the standard uncertainty u of the measurement. Parts off their stated values are a likely reason.</source>
            <translation>Gemessen minus simuliert; der Fehlerbalken ist die Standardunsicherheit u der Messung. Bauteile, die von ihren angegebenen Werten abweichen, sind ein wahrscheinlicher Grund.</translation>
        </message>
        <message>
            <source>This board, measured</source>
            <translation>Diese Platine, gemessen</translation>
        </message>
        <message>
            <source>All measurements in use together</source>
            <translation>Alle genutzten Messungen zusammen</translation>
        </message>
        <message>
            <source>From, through, to</source>
            <translation>Von, über, bis</translation>
        </message>
        <message>
            <source>Cycle time</source>
            <translation>Periodendauer</translation>
        </message>
        <message>
            <source>Duty cycle</source>
            <translation>Tastgrad</translation>
        </message>
        <message>
            <source>Of the textbook's</source>
            <translation>Vom Lehrbuchwert</translation>
        </message>
        <message>
            <source>Textbook</source>
            <translation>Lehrbuch</translation>
        </message>
        <message>
            <source>By the formula of the two phases</source>
            <translation>Nach der Formel der zwei Phasen</translation>
        </message>
        <message>
            <source>With this alone the circuit does not blink.</source>
            <translation>Damit allein blinkt die Schaltung nicht.</translation>
        </message>
        <message>
            <source>does not blink</source>
            <translation>blinkt nicht</translation>
        </message>
        <message>
            <source>Together</source>
            <translation>Zusammen</translation>
        </message>
        <message>
            <source>What the causes do to each other, beyond what each does alone</source>
            <translation>Was die Ursachen aneinander bewirken, über die Wirkung jeder einzelnen hinaus</translation>
        </message>
        <message>
            <source>This board, simulated</source>
            <translation>Diese Platine, simuliert</translation>
        </message>
        <message>
            <source>The settled board with all of it</source>
            <translation>Die eingeschwungene Platine mit alledem</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::WishForm</name>
        <message>
            <source>Rate</source>
            <translation>Rate</translation>
        </message>
        <message>
            <source>Rate at the other end</source>
            <translation>Rate am anderen Ende</translation>
        </message>
        <message>
            <source>Unit of the rate</source>
            <translation>Einheit der Rate</translation>
        </message>
        <message>
            <source>flashes a minute</source>
            <translation>je Minute</translation>
        </message>
        <message>
            <source>hertz</source>
            <translation>Hertz</translation>
        </message>
        <message>
            <source>seconds a cycle</source>
            <translation>Sekunden je Periode</translation>
        </message>
        <message>
            <source>Fixed rate or range</source>
            <translation>Feste Rate oder Bereich</translation>
        </message>
        <message>
            <source>(fixed)</source>
            <translation>(fest)</translation>
        </message>
        <message>
            <source>(set by a variable resistor)</source>
            <translation>(mit Potentiometer einstellbar)</translation>
        </message>
        <message>
            <source>Lit</source>
            <translation>Leuchtet</translation>
        </message>
        <message>
            <source>Unit of the lit time</source>
            <translation>Einheit der Leuchtdauer</translation>
        </message>
        <message>
            <source>% of the time</source>
            <translation>% der Zeit</translation>
        </message>
        <message>
            <source>in each flash</source>
            <translation>je Blitz</translation>
        </message>
        <message>
            <source>Lamps</source>
            <translation>Lampen</translation>
        </message>
        <message>
            <source>one lamp</source>
            <translation>einer Lampe</translation>
        </message>
        <message>
            <source>two lamps taking turns</source>
            <translation>zwei Lampen im Wechsel</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>Colour of the second lamp</source>
            <translation>Farbe der zweiten Lampe</translation>
        </message>
        <message>
            <source>Lamp current</source>
            <translation>Lampenstrom</translation>
        </message>
        <message>
            <source>Where the lamp hangs</source>
            <translation>Wo die Lampe angeschlossen ist</translation>
        </message>
        <message>
            <source>to ground</source>
            <translation>nach Masse</translation>
        </message>
        <message>
            <source>to the supply</source>
            <translation>nach Plus</translation>
        </message>
        <message>
            <source>to ground or the supply</source>
            <translation>nach Masse oder Plus</translation>
        </message>
        <message>
            <source>Supply</source>
            <translation>Versorgung</translation>
        </message>
        <message>
            <source>Timer</source>
            <translation>Timer</translation>
        </message>
        <message>
            <source>bipolar timer</source>
            <translation>Bipolar-Timer</translation>
        </message>
        <message>
            <source>CMOS timer</source>
            <translation>CMOS-Timer</translation>
        </message>
        <message>
            <source>How long each lamp stays lit</source>
            <translation>Wie lange jede Lampe leuchtet</translation>
        </message>
        <message>
            <source>any time</source>
            <translation>beliebig</translation>
        </message>
        <message>
            <source>Currents or brightness</source>
            <translation>Ströme oder Helligkeit</translation>
        </message>
        <message>
            <source>equal currents</source>
            <translation>gleichen Strömen</translation>
        </message>
        <message>
            <source>equal brightness</source>
            <translation>gleicher Helligkeit</translation>
        </message>
        <message>
            <source>Luminous intensity</source>
            <translation>Lichtstärke</translation>
        </message>
        <message>
            <source>mcd</source>
            <translation>mcd</translation>
        </message>
        <message>
            <source>Luminous intensity of the second lamp</source>
            <translation>Lichtstärke der zweiten Lampe</translation>
        </message>
        <message>
            <source>Where values come from</source>
            <translation>Woher die Werte kommen</translation>
        </message>
        <message>
            <source>preferred series:</source>
            <translation>Vorzugsreihen:</translation>
        </message>
        <message>
            <source>the drawer</source>
            <translation>der Schublade</translation>
        </message>
        <message>
            <source>R1</source>
            <translation>R1</translation>
        </message>
        <message>
            <source>R2</source>
            <translation>R2</translation>
        </message>
        <message>
            <source>C1</source>
            <translation>C1</translation>
        </message>
        <message>
            <source>Open the dra&amp;wer…</source>
            <translation>S&amp;chublade öffnen …</translation>
        </message>
        <message>
            <source>Series of %1</source>
            <translation>Reihe für %1</translation>
        </message>
        <message>
            <source>Wish</source>
            <translation>Wunsch</translation>
        </message>
        <message>
            <source>Blinking at</source>
            <translation>Blinken mit</translation>
        </message>
        <message>
            <source>to</source>
            <translation>bis</translation>
        </message>
        <message>
            <source>lit for</source>
            <translation>leuchtend für</translation>
        </message>
        <message>
            <source>with</source>
            <translation>mit</translation>
        </message>
        <message>
            <source>and</source>
            <translation>und</translation>
        </message>
        <message>
            <source>at</source>
            <translation>bei</translation>
        </message>
        <message>
            <source>from</source>
            <translation>an</translation>
        </message>
        <message>
            <source>by a</source>
            <translation>mit</translation>
        </message>
        <message>
            <source>Each lamp is to stay lit for</source>
            <translation>Jede Lampe soll leuchten für</translation>
        </message>
        <message>
            <source>of lamps of</source>
            <translation>bei Lampen mit</translation>
        </message>
        <message>
            <source>Values come from</source>
            <translation>Werte aus</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::hookup</name>
        <message>
            <source>An empty Hook-up</source>
            <translation>Leere Verdrahtung</translation>
        </message>
        <message>
            <source>Add a part: choose one from the strip above, or press A.
Then draw wires from pin to pin.</source>
            <translation>Ein Bauteil hinzufügen: in der Leiste oben eines wählen oder A drücken.
Dann Leitungen von Anschluss zu Anschluss ziehen.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::widgets::hookup::Gestures</name>
        <message>
            <source>The wire ends at %1 already.</source>
            <translation>Die Leitung endet schon an %1.</translation>
        </message>
        <message>
            <source>%1 cannot be joined to itself.</source>
            <translation>%1 kann nicht mit sich selbst verbunden werden.</translation>
        </message>
        <message>
            <source>%1 and %2 are joined already, by the net %3.</source>
            <translation>%1 und %2 sind schon über das Netz %3 verbunden.</translation>
        </message>
        <message>
            <source>%1 is in the net %2 already.</source>
            <translation>%1 ist schon im Netz %2.</translation>
        </message>
        <message>
            <source>No wire was drawn from %1: a wire ends on a pin or on another wire.</source>
            <translation>Von %1 wurde keine Leitung gezogen: Eine Leitung endet an einem Anschluss oder an einer anderen Leitung.</translation>
        </message>
    </context>
    <context>
        <name>wording</name>
        <message>
            <source>not a number</source>
            <translation>keine Zahl</translation>
        </message>
        <message>
            <source>infinite</source>
            <translation>unendlich</translation>
        </message>
        <message>
            <source>-infinite</source>
            <translation>-unendlich</translation>
        </message>
    </context>
</TS>
