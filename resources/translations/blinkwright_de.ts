<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Colours</name>
    <message>
        <source>red</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>amber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pure green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DrawerModel</name>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Exporter</name>
    <message>
        <source>the name must end in .png, .svg or .pdf</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HelpTexts</name>
    <message>
        <source>Flicker.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light that flashes more than three times a second can bring on seizures in people with photosensitive epilepsy, and may disturb others. Keep to three flashes a second or fewer where people did not choose to look (the limit of WCAG 2.2, success criterion 2.3.1), and warn your audience otherwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong lamps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not look into strong lamps from near by, least of all into blue, white or infrared ones: infrared light does harm that you do not see.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacitors and batteries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrolytic capacitors burst when they are put in the wrong way round or above their rated voltage. A short-circuited battery gets hot; take it out before you rewire.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the numbers are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are computed from typical values of the parts. Timers of different makers, and capacitors above all, differ by tens of per cent; measure the board that you have built before you rely on it. A blinker is no certified signal: where safety depends on a light, local rules and licensed practice decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never mains.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of this is for batteries and low voltage. Join none of it to the mains.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A workshop for lamp blinkers built on the 555 timer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built with:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Blinkwright</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Hookup</name>
    <message>
        <source>%1, in no net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on net %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>red</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>amber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pure green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>infrared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CMOS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bipolar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>555 timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>variable resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp (LED)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trigger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>control voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>threshold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discharge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cathode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wiper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LabSheet</name>
    <message>
        <source>Title, author and date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Theory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Traces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread by tolerances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What explains the difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conclusions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>References</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Measured</name>
    <message>
        <source>none stated</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Pins</name>
    <message>
        <source>first end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RunReport</name>
    <message>
        <source>No run: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 steps, %3 ms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 flashes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This circuit cannot be run.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrendRoom</name>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WholeFile</name>
    <message>
        <source>cannot be written: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app</name>
    <message>
        <source>the name must end in .png, .svg, .pdf or .csv</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are no curves to write</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::AccountRoom</name>
    <message>
        <source>Account for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apply as Set &amp;B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makes Set B the board with the fitted values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;py</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is predicted, and how surely, stands under Uncertainty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 against a limit of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values within the tolerances explain the measurements (χ² %1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No values that the parts may have explain the measurements (χ² %1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The budget is on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fitted values are on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 predicted:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 measured:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the fitted values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::BandBehind</name>
    <message>
        <source>Ban&amp;d of boards behind the curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where 9 of 10 boards lie whose parts are anywhere within their tolerances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+H</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No band: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::ChooseRoom</name>
    <message>
        <source>Choose values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;py</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take as Set &amp;B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend the field that is marked: the answer follows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wish cannot be met: the nearest is shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wish cannot be met.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of %1 combinations %2 simulated, the best %3 shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lamps&apos; mean intensities are equal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No intensities are stated: the lamps&apos; mean currents are equal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The intensities are as good as equal: so are the mean currents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Puts these values into Set B of the open circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B of the open circuit has these values.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B of the open circuit has these values. It is wired otherwise than the proposal: look at what it does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the table of values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::Document</name>
    <message>
        <source>the circuit has no file yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::DrawerDesk</name>
    <message>
        <source>Table (*.csv);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is there could not be put aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import parts into the drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exported to %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::ExportDialog</name>
    <message>
        <source>Export curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview of the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A and %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Output, pin 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Timing capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp &amp;current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Values at the moment line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the ti&amp;me that the window shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In &amp;greys, told apart by dashes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For copiers and printers without colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Font</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dots an inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of pictures (.png); drawings and pages are sharp at any size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Resolution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As a picture %1 × %2 dots</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::EyeRoom</name>
    <message>
        <source>What the eye sees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;py</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The circuit does not blink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no lamp, or the circuit has no even flashes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For light in proportion to the current, and one lamp by itself.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::HookupActions</name>
    <message>
        <source>&amp;Supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Variable resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Diode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;witch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cu&amp;t parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose &amp;all parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a part to add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name and values…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Turn by a quarter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Mirror left to right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Join two pins…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>J</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a pin &amp;off its net…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+J</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rename a net…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Backspace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R&amp;emove net %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R&amp;emove a net…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join %1 to…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1 off net %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename net %1…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove net %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a part here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join two pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;To pin or net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a pin off its net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename a net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Net, or a pin in it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::HookupWishes</name>
    <message>
        <source>there are no parts on the clipboard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No part is chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 parts are on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was pasted: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no net &quot;%1&quot;, and a pin is written REF:PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no net &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in no net</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::LabSheetRoom</name>
    <message>
        <source>Lab sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PD&amp;F…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Document pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as HTM&amp;L…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Web page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as ODT…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Word processor document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pr&amp;int…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant %1: other values of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lab-sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>student</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the lab sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the lab sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::LeftBehindDialog</name>
    <message>
        <source>New circuit without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (new circuit)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes from last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blinkwright ended without closing. These circuits have changes that were not saved; their own files are as they were last saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circuits with unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, changed %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Discard it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are offered again at the next start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard the unsaved changes of %1? They cannot be brought back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::LivePanels</name>
    <message>
        <source>Computing …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curves come with the first circuit: add parts, or open a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No run: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::MainWindow</name>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New</source>
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
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import a record…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+I</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export curves…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;picture of the curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;%1  %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Clear this list</source>
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
        <source>Ctrl+Shift+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit the &amp;curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit the &amp;Hook-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl++</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+=</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+-</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the &amp;echo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curves from &amp;power-on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From power-on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curves from the moment the supply is switched on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curves when &amp;settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curves of the settled state, where every flash is like the last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pre&amp;vious panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+F6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cautions…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Blinkwright…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;lashes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of flashes shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture, 300 dpi (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Document page (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table of numbers (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The curves were not exported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circuit files (*.blinkwright);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables of an instrument (*.csv *.txt *.tsv *.dat);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import the record %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record was not imported</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the circuit as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new circuit is not saved. Save it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has changes that are not saved. Save them?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The circuit was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is not as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program has changed %1 since it was opened. Saving would overwrite that change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has been moved or deleted since it was opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Overwrite it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it &amp;anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program has changed %1. Read it again, and lose what is not saved here?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program has changed %1. Read it again?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Read it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep what is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The unsaved changes were not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a circuit file, or drop one here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hook-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the last run did</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1[*] – Blinkwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;ymbols</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;IEC 60617</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I&amp;EEE 315</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Timer drawn as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Package from above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Function block</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::MeasureRoom</name>
    <message>
        <source>Measurements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;py</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stopwatch…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Meter reading…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import a record…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hange…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the chosen measurement in its form (Enter)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate the chosen measurement (Ctrl+D)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete the chosen measurements (Delete)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A record is not changed by hand: title and use alone can be. Import it anew for the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with the stopwatch: the flash rate is the easiest to measure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::MeasuredPanels</name>
    <message>
        <source>Measured &amp;records</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::PartDialog</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (default)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be stated</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::PinsActions</name>
    <message>
        <source>&amp;Drawing of the Hook-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pins of the Hook-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a part to add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name and values…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::PlayActions</name>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pla&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Play</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the pre&amp;vious switching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the &amp;next switching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As fast as the &amp;board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Four times slower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Twenty times slower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, 1:%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1:%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go &amp;round in the settled cycles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show &amp;lamps as bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the next switching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the previous switching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play: move the moment line over the run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steady: the display cannot follow %1 flashes a second; the eye still may.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bars show the mean current: %1 flashes a second.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to show the lamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This blinker flashes %1 times a second at this speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lamps can glow as they flash. Or bars can show the current, without flicker: easier on the eyes of some people.

The Play menu changes this at any time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Glow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bars</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::PlayStrip</name>
    <message>
        <source>Board time to real time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::ReadyActions</name>
    <message>
        <source>New from a ready &amp;blinker…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wiring list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the wiring list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Document page (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the parts list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the wiring list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wiring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::RecordImportDialog</name>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It begins with &amp;power-on: the first flash is the one from an empty capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a record – %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was taken for what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard uncertainty of the instrument&apos;s time base: 0.01 %, 50e-6. Its data sheet says it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file&apos;s first lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stands where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;itle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uncertainty of its time &amp;base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I&amp;mport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stop reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 switchings, %2 whole cycles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a cycle time the record must hold two rises of the output.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is read yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::Recovery</name>
    <message>
        <source>this is no recovery file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder cannot be written to</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::Room</name>
    <message>
        <source>There is no circuit yet: add parts on the Hook-up, or open a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancelled. The next change, or opening this window again, asks anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::RoomActions</name>
    <message>
        <source>&amp;Ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Why it differs…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the &amp;eye sees…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Trend…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Spread…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Choose values…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Measurements…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Account for it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;ymptoms…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The &amp;drawer…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lab sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+L</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::SecondSet</name>
    <message>
        <source>Set B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No run of %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::SetActions</name>
    <message>
        <source>&amp;Sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;A to B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy &amp;B to A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;wap A and B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Compare with file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;top comparing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xports hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;all curves that are shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Set A alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it is &amp;compared with alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with Set &amp;B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file cannot be compared with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with a circuit file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circuits (*.blinkwright);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::SpreadRoom</name>
    <message>
        <source>Spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same seed gives the same boards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>evenly over the tolerance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>normally, three sigma at the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as a triangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Boards:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;eed:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Va&amp;lues lie:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;py table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Figures…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All &amp;boards…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export all boards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No part states a tolerance: all boards are alike. Give parts one by F2 on the Hook-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is nothing to write</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::SymptomsRoom</name>
    <message>
        <source>Symptoms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Likely faults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chec&amp;k card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;py as text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rint card…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport card…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the check card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check-card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The board as drawn comes to no settled state, so that there is nothing to compare with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 single faults were simulated. Tick what is seen, or type a reading; until then the order is by how often such faults happen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 single faults were compared with what was seen and measured. Choose a row: its place is shown on the Hook-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the check card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are no readings yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::TrendRoom</name>
    <message>
        <source>Trend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;py data</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the trend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in equal ratios</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in even steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the values lie along the axis: in equal ratios (logarithmic) or evenly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Usual range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two decades around the present value; for a supply, the fall of a battery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Value:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;From:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;to:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A range wants its smaller end first, and two different ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal ratios want both ends above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end of travel, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timer sure from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timer up to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>battery empty, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no number here that could move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is nothing to write</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. Set B: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::WhyRoom</name>
    <message>
        <source>Each cause is simulated by itself on the textbook circuit; “Together” is what the causes do to each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycle time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duty cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bars &amp;show:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Co&amp;py</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet</name>
    <message>
        <source>Lamp blinker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Student copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variant %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Author</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Partner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To predict the flash rate and the duty cycle of this circuit from the values of its parts, to measure both on the board, and to account for the difference.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Designators</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B, where it differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values are those of Set A.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rules of your school, laboratory and country come before this sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopwatch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oscilloscope or logger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build the circuit by the wiring list. Let somebody else check it before the supply is joined.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the supply at its terminals while the circuit runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count 20 flashes by stopwatch, from the start of a flash to the start of the twentieth after it; repeat three times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record pin 3 and pin 6 against pin 1 over several cycles, and read pulse width and space width.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the output (pin 3) while high and while low, and the current of each lamp while it is lit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State an uncertainty beside every reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pages could not be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name must end in .pdf, .html or .odt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time (s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sketch the output (pin 3) and the voltage of the timing capacitor (pin 6) over two cycles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squares to sketch the traces on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage (V)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settled: output (pin 3), timing capacitor with its two switching levels, lamp currents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From power-on: output (pin 3), timing capacitor with its two switching levels, lamp currents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A indigo, Set B ochre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black, laid over: measured, %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The circuit with the values of Set A; the small numbers are the timer&apos;s pins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The circuit; the small numbers are the timer&apos;s pins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing of the circuit; its parts and joints are told in words under Wiring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no traces: the circuit does not run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three strips on one time axis: output, timing capacitor, lamp currents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycle time T</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flash rate f</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse width (high)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space width (low)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duty cycle D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply at its terminals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output (pin 3) while high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output (pin 3) while low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Current while lit, mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lit time in a cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peak current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge a flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Battery life</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The measured cycle time lies %1 times its standard uncertainty from the simulated one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By simulation the circuit does not blink: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Predicted: by the formulas of the theory. Uncertainty: standard uncertainty, k = 1 (JCGM 100:2008).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two measurements of one figure lie further apart than their uncertainties allow: one of them is wrong, or the board changed between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The textbook&apos;s figures are those of Set A&apos;s values. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>u: standard uncertainty, k = 1 (JCGM 100:2008); measured numbers are rounded by them. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated figures are of the settled cycle, with the timer&apos;s typical values.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, standard uncertainty %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 flashes in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record %1: %2 switchings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The measured cycle time lies within the middle 90 % of the boards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The measured cycle time lies outside the middle 90 % of the boards, but within the worst case: the tolerances alone can explain it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The measured cycle time lies outside the worst case: the tolerances alone do not explain it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2&#xa0;%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shares of the variance of the flash rate: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overstress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%L1 boards with every part somewhere within its tolerance (drawn alike over all of it, seed %2); %3 of them blink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nominal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>90 % lie in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no findings: no fault, nothing overstressed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By how much do prediction and measurement differ? Which causes make the difference, and in which direction does each act?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no difference to explain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the textbook to the simulated board, cause by cause. Each is simulated by itself on the textbook circuit; “Together” is what the causes do to each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What explains the difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycle time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duty cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it does</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not blink with this alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured less simulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the model does not know: tolerance of the parts, the timer at hand, temperature, the measurement.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Formulas of the astable: TI NE555/SA555/SE555, SLFS022, astable operation, there rounded to 0.693 for ln 2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Levels of one third and two thirds of the supply: TI NE555/SA555/SE555, SLFS022. The formulas follow from them and from the law of a capacitor&apos;s charging.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical values of the bipolar timer: TI NE555/SA555/SE555, SLFS022A (rev. Sept 2000); ST Doc ID 2182 Rev 6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical values of the CMOS timer: TI TLC555, SLFS043C (rev. Sept 1997).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uncertainty: JCGM 100:2008, Evaluation of measurement data. Guide to the expression of uncertainty in measurement.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flashes: Web Content Accessibility Guidelines (WCAG) 2.2, success criterion 2.3.1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no textbook formula for this wiring: its figures come from simulation and measurement alone.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet::Cutter</name>
    <message>
        <source>%1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet::Making</name>
    <message>
        <source>Simulated</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet::PageLayout</name>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet::Rows</name>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured − predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>u</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>simulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured − %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 − textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet::SheetForm</name>
    <message>
        <source>Full lab sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Student copy, with blanks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The circuit&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number gives other preferred values of the timing parts, the same ones for the student copy and its answer key.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set &amp;B beside Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;heet:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Values:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;per:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of the variant of values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sections of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Title:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Author:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;rtner:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Group:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Date:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title of the circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ai&amp;m:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: the usual one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meth&amp;od:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: the usual steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Conclusions:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: lines to write on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet::SheetPreview</name>
    <message>
        <source>Preview of the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page before (Page Up)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next page (Page Down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet::Theory</name>
    <message>
        <source>For this wiring; work out the numbers:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For this wiring, with the values of its parts:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The timer compares the voltage of %1 with two levels: that of pin 5, which is held at k times the supply, and half of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The timer compares the voltage of %1 with two levels, one third and two thirds of its supply (pin 8).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While the output (pin 3) is high, %1 charges through %2 and %3 from the lower level to the upper. While it is low, %1 discharges through %3 into pin 7, back to the lower level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While the output (pin 3) is high, %1 charges through %2 and the diode, which is taken as ideal. While it is low, %1 discharges through %3 into pin 7.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 charges and discharges through %2 from the output (pin 3), which is taken to reach both rails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A capacitor C on its way through a resistance R from a voltage U₀ towards U∞ is at U₁ after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stands for %2 together: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse width, output high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>space width, output low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cycle time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flash rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>duty cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first flash after power-on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::app::sheet::Writer</name>
    <message>
        <source>Fields</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets</name>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check card: expected readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to measure, and cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must be less than 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must be shorter than a cycle, %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A range needs two rates that differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both intensities are needed, or none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another trace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cycles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from power-on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>while running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopwatch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output while high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output while low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp current while lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 flashes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A kind that this version does not know; it is kept as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output of %1 while high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output of %1 while low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Current of %1 while lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flash rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycle time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse width (high)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space width (low)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duty cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” and “%2” contradict each other in the %3: they are further apart than twice their common uncertainty. Look at both again, or take one out of use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The board agrees with the simulation: nothing differs by more than twice its uncertainty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Further from the simulation than twice the uncertainty: %1. “Why it differs” shows how far the known causes go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 percentage points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such figure of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such figure of Set A.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blinks: %1 (Set A) and %2 (%3) flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A: %1
%2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no readings of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean voltage of pin 3 against 0 V while it is high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean voltage of pin 3 against 0 V while it is low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage under load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean voltage at the terminals while the blinker runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Current while lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean current in the time that the lamp is lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The textbook formulas speak of times only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run gave no figure for this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycles of the output in a second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycles of the output in a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From one rise of the output to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the output is high in a cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the output is low in a cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse width over cycle time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run does not begin at power-on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the output is first high after power-on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blinks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>: %1 flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (figures over the whole cycles of the run)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not blink: the output settles high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not blink: the output settles low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not settle into even flashes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer has no cycle of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The circuit does not blink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no textbook formula for this wiring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean over a cycle, out of the plus pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peak current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest current in a cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy a flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No-load voltage times charge in a cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply states no capacity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Battery life</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stated capacity over mean current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leakage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switching levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voltage without load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voltage left by pin 7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resistance of pin 7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop of the output high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resistance of the output high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resistance of the output low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as they should be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by tolerance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on the meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at its terminals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output of %1, high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output of %1, low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 “%2”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timing tolerance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its reading on the meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start and stop by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scatter of the switchings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step between samples</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prediction and measurement agree: they differ by %1, and may by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prediction and measurement do not agree: they differ by %1, and may by %2 only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lit share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mean current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 share lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 peak current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply, mean current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: outside this range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: does not blink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 to the textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anywhere in this range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from about %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 does not blink %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does not blink %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Textbook %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discharge pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Input currents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacitor leakage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacitor&apos;s series resistance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output and its load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply sag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delay of the timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diode drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin 7 does not pull to 0 V: the switch in it has resistance and a voltage left over, so that the capacitor falls more slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Threshold (pin 6) and trigger (pin 2) take small currents, which flow through the timing resistors too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The timing capacitor loses charge by itself, most where its voltage is high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The voltage across the capacitor&apos;s own resistance is there at once, before any charge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The output reaches neither rail, and less so under load; here it charges the capacitor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The current of lamp and timer lowers the voltage at pin 8, and with it both levels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What hangs on pin 5 moves both levels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a crossed level to the output and pin 7 some time goes by.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The diode across the timing resistor takes part of the voltage that charges.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::AccountTable</name>
    <message>
        <source>Figures before and after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With fitted values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off, in u</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated with the values that the circuit states</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated with the fitted values; the uncertainty is what these leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All measurements of it together, with standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured against fitted, in standard uncertainties of the measurement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::AccountView</name>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Values that explain the measurements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the board does</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retune</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was measured yet. Build the board, then tell what it does:

•  Count flashes by stopwatch, 20 cycles or more. That gives the cycle time.

•  Or bring in a record of an oscilloscope or data logger: both phases, and much finer.

•  Measure single parts on a meter, R1 and R2 first: the rest is then found much closer.

The values of the parts that explain it then stand here, with their uncertainties.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter a &amp;measurement…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doubt:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::AnswerForm</name>
    <message>
        <source>&amp;Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>555 timer, bipolar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>555 timer, CMOS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Supply voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sec&amp;ond lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp &amp;current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mA</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L&amp;it share of the time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Groups a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2%3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::BandPlot</name>
    <message>
        <source>Band of curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time from the rise of the output (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nominal board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>9 of 10 boards, moment by moment</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::BenchDialog</name>
    <message>
        <source>Steps of the wiring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Designators</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy as text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export parts as CSV…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set whose values are listed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Values of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 steps done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wiring list</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::BudgetTable</name>
    <message>
        <source>Input</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evaluation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensitivity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contribution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One standard deviation (JCGM 100:2008, 2.3.1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type A: by statistics of readings. Type B: by what is known otherwise; rectangular: u is half the width over the square root of 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the figure moves with the input (5.1.3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensitivity times standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the variance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>normal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On one reel with another part: both move together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>combined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expanded, k = 2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::BudgetView</name>
    <message>
        <source>Budget of the prediction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Budget of the measurement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the simulated board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the textbook formula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Budget &amp;of:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pre&amp;dicted by:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Predicted from the parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This figure was not measured.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::CheckCardView</name>
    <message>
        <source>Expected readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read &amp;with:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::ChoiceModel</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>behind C4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one each way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1&#xa0;/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charges C1 together with R2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discharges C1; with a variable resistor its end stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RV1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variable resistor in series with R2, end to end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timing capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistor of the lamp, or of the pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resistor of the second lamp; of a pair behind C4 from the output to ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coupling capacitor of the pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across R2, so that R1 alone sets the high time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the lamps hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the simulated board, settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off wish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rate over the wished one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lit share of the first lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rates with the timing parts at the ends of their tolerances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stall margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charging current at the upper level over the leakage to be expected there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 1000</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean supply current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many of its scarcest part are left in the drawer</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::ChooseView</name>
    <message>
        <source>Proposals, best first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing of the chosen circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts of the chosen circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the &amp;nearest wish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D%1 carries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at most, %2 in the mean, and is lit for %3 a cycle</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::CurvesView</name>
    <message>
        <source>Curves</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>From %1 to %2 with %n switching(s): output up to %3, timing capacitor up to %4. </source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>At %1: output %2, timing capacitor %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is laid over, from %2 to %3: output up to %4. </source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n measured record(s) laid over. </source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Arrow keys move the moment line, brackets go from switching to switching, plus and minus zoom, F fits.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::DrawerDialog</name>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts in the drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawer is empty: add the parts that you own, or import a list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kinds of parts: %1. What is typed is kept at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawer</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::DrawerModel</name>
    <message>
        <source>Resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variable resistor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::EyeView</name>
    <message>
        <source>none has this rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, lit %1 to %2 % of the time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, two lamps taking turns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the eye sees of each lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looks like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flashes are seen one by one up to about 10 a second and run together above about 60</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycles of the output in a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visible flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time in a cycle with more than 5 % of the rated current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rhythm of marine lights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class and its abbreviation on charts, after IALA R0110 and IHO Chart No. 1; of a single lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean brightness, of rated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean current over the rated one. Above fusion this is the brightness that is seen (Talbot and Plateau)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effective intensity, of the peak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steady light that is just seen from as far as these flashes, by Blondel and Rey with 0.2 s: a notion for the threshold of seeing by night, not the brightness of a lamp on a bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effective intensity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same, from the lamp&apos;s stated luminous intensity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rate held against stated uses: check your local rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
Source: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: more than three flashes a second can set off seizures in some people, most often between 15 and 25 a second. Some permitted uses flash faster than that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not look into strong lamps from close by. What a light may be used for, and at which rate, is for local rules and licensed people to say.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::FiguresTable</name>
    <message>
        <source>Figures of the spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off nominal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nominal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The board with every part at its value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean of the random boards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the random boards; divided by one less than their number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst case, low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lowest anywhere within all tolerances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So many of the boards are below: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Median</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 are below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst case, high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The highest anywhere within all tolerances</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::FindingRow</name>
    <message>
        <source>Fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overstress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doubt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return shows %1 on the Hook-up, space the source.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::FindingsView</name>
    <message>
        <source>No findings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::FollowButton</name>
    <message>
        <source>%1: Set B follows Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B follows Set A: press to give it a value of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B has a value of its own: press to take the one of Set A</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::HookupView</name>
    <message>
        <source>Hook-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Drawing of the circuit, %n part(s).</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>net %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selected: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
in no net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
net %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::LayoutForm</name>
    <message>
        <source>What stands between two columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines that name the columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the time comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of the time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>µs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines above the table that are passed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time from one row to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column of the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of the %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the %1 is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Between columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lines above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines of names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;First voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sec&amp;ond voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>constant step</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::MeasuredTable</name>
    <message>
        <source>What the measurements say, beside the simulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In per cent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In u</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many standard uncertainties u of the measurement the difference is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No uncertainty is stated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The simulation has no figure for this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::MeasurementModel</name>
    <message>
        <source>Add measurement “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change measurement “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete measurement “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete %1 measurements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (copy)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate measurement “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether readings, fits and lab sheets take it into account</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cycle time that the record shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard uncertainty: one standard deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use measurement “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out measurement “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename measurement “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::MeasurementsView</name>
    <message>
        <source>&lt;p&gt;Nothing has been measured yet. Three kinds of measurement can be entered:&lt;/p&gt;&lt;p&gt;&lt;b&gt;Stopwatch&lt;/b&gt;: how long a number of flashes takes. Or tap along with the flashes; the taps make the count.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Meter reading&lt;/b&gt;: supply voltage, output while high or low, current of a lamp, or a part by itself on the meter.&lt;/p&gt;&lt;p&gt;&lt;b&gt;Record&lt;/b&gt;: the output or the timing capacitor over time, from an instrument&apos;s file.&lt;/p&gt;&lt;p&gt;Each has an uncertainty. What is measured then stands in the Readings beside Set A, records lie over the Curves, and &lt;i&gt;Why it differs&lt;/i&gt; ends at what was measured.&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All together, beside the simulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::MeterDialog</name>
    <message>
        <source>may be left empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> % of reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accuracy, per cent of the reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accuracy, steps of the last digit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Value as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How well it is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter&apos;s &amp;accuracy, ±</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tit&amp;le</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the meter shows it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In %1, with or without a prefix; the last digit counts for the accuracy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As stated; a change of the accuracy works it out anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual for a hand-held meter (from memory): see your meter&apos;s leaflet. The limits over √3, since any value between them is as likely.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No value yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The value %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the value as the meter shows it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::NetCell</name>
    <message>
        <source>Net, or a pin to join to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>net or pin</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::PageSheet</name>
    <message>
        <source>the picture could not be made: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the drawing could not be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the page could not be made</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::PartPalette</name>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kinds of parts to add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add: %1. Click here, then where it is to stand.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::PartsTable</name>
    <message>
        <source>Parts and what they do to the spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the variance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 % more moves it by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a reel with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is on a reel with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::PinsModel</name>
    <message>
        <source>%1, %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in no net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, net %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::PinsView</name>
    <message>
        <source>Filter: part, role or net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter the pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sort the pins by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No parts yet. Insert adds one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pin fits the filter.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::Reader</name>
    <message>
        <source>Must be greater than 0.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::ReadingsView</name>
    <message>
        <source>Set A against the textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 minus Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the real board, with its standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured minus Set A; u is the standard uncertainty of the measurement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured − A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 − Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse width (high)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No readings yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::ReadyDialog</name>
    <message>
        <source>Ready blinkers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing of the circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New from a ready blinker</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::RecordFiguresTable</name>
    <message>
        <source>Figures of the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard uncertainty: one standard deviation, k = 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycle time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulse width (high)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space width (low)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duty cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First flash</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::RecordPlot</name>
    <message>
        <source>The record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time from power-on (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; Home shows all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switching</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::RecordPreview</name>
    <message>
        <source>Output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timing capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First lines of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::RetuneRow</name>
    <message>
        <source>Wanted rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of the wanted rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s a cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part to change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the new value comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value to fit and rate to expect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To &amp;flash at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to a value from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rate is above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rate between 0.0001 Hz and 1 MHz is wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With %1 = %2 (%3), %4 are to be expected, duty cycle %5. Exactly right would be %6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gives %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next to it: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::RoomFrame</name>
    <message>
        <source>Set of values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::RowMenu</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tie to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Untie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B: &amp;same as A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B: a value of its &amp;own</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::SpreadPlot</name>
    <message>
        <source>Spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boards up to here (%)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boards up to here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nominal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worst</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>95 %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::SpreadView</name>
    <message>
        <source>&amp;Distribution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cur&amp;ves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All %1 boards blink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 boards blink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of 9 in 10: %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some boards at the limits do not blink: the worst case has no true end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every one lies within the worst case, %1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lie beyond the worst case that was found.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::StopwatchDialog</name>
    <message>
        <source>may be left empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard uncertainty of one press of the button, start or stop. People&apos;s reaction times differ by 0.1 to 0.2 s from press to press (from memory, no source).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tap along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or read off a stopwatch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Flashes counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;ime for them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Each press known to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tit&amp;le</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the taps: the scatter of a tap about an even beat gives the time an uncertainty of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard uncertainty; usually 0.1 to 0.2 s (from memory). Start and stop together: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No time yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycle time %1; %2 flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopwatch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the time that the flashes took, or tap along with them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::StripCaptions</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>9 of 10 boards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Output, pin 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switching levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timing capacitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp current: no lamp here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp current</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::StripPlot</name>
    <message>
        <source>Time (%1)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::SuspectsView</name>
    <message>
        <source>Likely faults, the likeliest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same from outside: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::SymptomForm</name>
    <message>
        <source>not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Flashes counted, a minute:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flashes counted, a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected readings, and cells beside them for what the meter shows. Black lead on 0 V, the other on the leg itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings of the meter, with the expected ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rate is above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 measured</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::TapTimer</name>
    <message>
        <source>Start &amp;again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press at each flash, with the mouse or the space bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tap at each flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 tap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 taps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press here or the space bar at each flash. The taps make the count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on tapping: the first tap is the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 flashes a minute.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scatter of a tap: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With %1 taps the scatter counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After tap %1 a flash seems to have gone by: start again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::TieMark</name>
    <message>
        <source>Moves together with %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::TrendPlot</name>
    <message>
        <source>Trend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 does not blink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not blink</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::ValuePanel</name>
    <message>
        <source>Values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, rated %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::ValueRow</name>
    <message>
        <source>Type a value, such as 4k7, 4.7k or 4,7 kΩ, and press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a value, such as 220n, 0.22u or 0,22 µF, and press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a value and press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag, or hold Shift to drag ten times finer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Escape brings back %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::ValuesTable</name>
    <message>
        <source>Fitted values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known beforehand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In σ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each value that the timing hangs on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the circuit states</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By tolerance, by a reading of the part itself, or by what is usual; with its standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What explains the measurements best, with its standard uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted against stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted against what was known beforehand, in standard deviations of that</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::WhyView</name>
    <message>
        <source>From the textbook to the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unexplained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured minus simulated; the whisker is the standard uncertainty u of the measurement. Parts off their stated values are a likely reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This board, measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All measurements in use together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From, through, to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycle time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duty cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the textbook&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Textbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the formula of the two phases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With this alone the circuit does not blink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not blink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the causes do to each other, beyond what each does alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This board, simulated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The settled board with all of it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::WishForm</name>
    <message>
        <source>Rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rate at the other end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of the rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flashes a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hertz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seconds a cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed rate or range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(fixed)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(set by a variable resistor)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of the lit time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% of the time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in each flash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two lamps taking turns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour of the second lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lamp current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the lamp hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to ground or the supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bipolar timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CMOS timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long each lamp stays lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currents or brightness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal currents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>equal brightness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Luminous intensity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mcd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Luminous intensity of the second lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where values come from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>preferred series:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the drawer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the dra&amp;wer…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Series of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wish</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::hookup</name>
    <message>
        <source>An empty Hook-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a part: choose one from the strip above, or press A.
Then draw wires from pin to pin.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>blinkwright::widgets::hookup::Gestures</name>
    <message>
        <source>The wire ends at %1 already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be joined to itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 are joined already, by the net %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in the net %2 already.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wording</name>
    <message>
        <source>not a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>infinite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>-infinite</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
