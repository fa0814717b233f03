<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>Words</name>
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
        <message>
            <source>Must be greater than 0.</source>
            <translation>Muss größer als 0 sein.</translation>
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
        <message>
            <source>%1, in no net</source>
            <translation>%1, in keinem Netz</translation>
        </message>
        <message>
            <source>%1, on net %2</source>
            <translation>%1, an Netz %2</translation>
        </message>
        <message>
            <source>glows at %1 % of its rated current</source>
            <translation>leuchtet mit %1 % des Nennstroms</translation>
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
            <source>first end</source>
            <translation>erstes Ende</translation>
        </message>
        <message>
            <source>second end</source>
            <translation>zweites Ende</translation>
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
            <source>Lit time</source>
            <translation>Leuchtzeit</translation>
        </message>
        <message>
            <source>Time in a cycle with more than 5 % of the rated current</source>
            <translation>Zeit je Periode mit mehr als 5 % des Nennstroms</translation>
        </message>
        <message>
            <source>Share lit</source>
            <translation>Leuchtanteil</translation>
        </message>
        <message>
            <source>Lit time over cycle time</source>
            <translation>Leuchtzeit durch Periodendauer</translation>
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
            <source>Mean current</source>
            <translation>Mittlerer Strom</translation>
        </message>
        <message>
            <source>Mean over a cycle</source>
            <translation>Mittelwert über eine Periode</translation>
        </message>
        <message>
            <source>Effective current</source>
            <translation>Effektivstrom</translation>
        </message>
        <message>
            <source>Root of the mean square over a cycle</source>
            <translation>Wurzel des quadratischen Mittels über eine Periode</translation>
        </message>
        <message>
            <source>Charge a flash</source>
            <translation>Ladung je Blitz</translation>
        </message>
        <message>
            <source>Current times time in a cycle</source>
            <translation>Strom mal Zeit in einer Periode</translation>
        </message>
        <message>
            <source>Mean over a cycle, out of the plus pin</source>
            <translation>Mittel über eine Periode, am Pluspol</translation>
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
        <message>
            <source>none stated</source>
            <translation>keine angegeben</translation>
        </message>
        <message>
            <source>How far the real part may be from its value, such as 5 %. Spread, Account for it and the band behind the curves draw on it; a single run does not.</source>
            <translation>Wie weit das wirkliche Bauteil von seinem Wert abweichen kann, etwa 5 %. „Streuung“, „Abweichung erklären“ und das Band hinter den Kurven verwenden sie; ein einzelner Lauf nicht.</translation>
        </message>
        <message>
            <source>In watts, above 0: the power that the resistor may turn into heat for good. Findings tell when it is exceeded.</source>
            <translation>In Watt, über 0: die Leistung, die der Widerstand dauernd in Wärme umsetzen darf. Befunde melden, wenn sie überschritten wird.</translation>
        </message>
        <message>
            <source>From 0 to 100 %: the share of the resistance that lies between pin 1 and the wiper. The rest lies between the wiper and pin 2.</source>
            <translation>Von 0 bis 100 %: der Anteil des Widerstands zwischen Pin 1 und dem Schleifer. Der Rest liegt zwischen dem Schleifer und Pin 2.</translation>
        </message>
        <message>
            <source>In volts, above 0: the voltage across it while the test current flows. A higher one leaves less for the resistor, and so less current.</source>
            <translation>In Volt, über 0: die Spannung an der Lampe oder Diode, während der Messstrom fließt. Bei einer höheren bleibt weniger für den Widerstand, und es fließt weniger Strom.</translation>
        </message>
        <message>
            <source>In amperes, above 0: the current at which the forward voltage is stated.</source>
            <translation>In Ampere, über 0: der Strom, bei dem die Durchlassspannung angegeben ist.</translation>
        </message>
        <message>
            <source>A number above 0, for silicon 1 to 2, for lamps 1.5 to 3: how slowly the current rises with the voltage. At a larger one the curve is flatter.</source>
            <translation>Eine Zahl über 0, bei Silizium 1 bis 2, bei Lampen 1,5 bis 3: wie langsam der Strom mit der Spannung steigt. Je größer sie ist, desto flacher die Kennlinie.</translation>
        </message>
        <message>
            <source>In ohms, 0 or more: the resistance of the material and its leads. It makes the voltage rise in proportion at large currents.</source>
            <translation>In Ohm, 0 oder mehr: der Widerstand des Materials und seiner Anschlüsse. Bei großen Strömen lässt er die Spannung proportional steigen.</translation>
        </message>
        <message>
            <source>In amperes, above 0: the current that the lamp bears all the time. Brightness is shown against it, and findings tell when it is exceeded.</source>
            <translation>In Ampere, über 0: der Strom, den die Lampe dauernd verträgt. Auf ihn wird die Helligkeit bezogen, und Befunde melden, wenn er überschritten wird.</translation>
        </message>
        <message>
            <source>In amperes, above 0: the largest current that the lamp bears in short flashes. Findings tell when it is exceeded.</source>
            <translation>In Ampere, über 0: der größte Strom, den die Lampe in kurzen Blitzen verträgt. Befunde melden, wenn er überschritten wird.</translation>
        </message>
        <message>
            <source>In volts, above 0: the largest voltage the wrong way round that the lamp bears. Findings tell when it is exceeded.</source>
            <translation>In Volt, über 0: die größte Sperrspannung, die die Lampe verträgt. Befunde melden, wenn sie überschritten wird.</translation>
        </message>
        <message>
            <source>In candelas, above 0, as the maker states it at the test current. What the eye sees is told in candelas with it; the circuit runs without it.</source>
            <translation>In Candela, über 0, wie vom Hersteller beim Messstrom angegeben. Was das Auge sieht, wird damit in Candela genannt; die Schaltung läuft auch ohne.</translation>
        </message>
        <message>
            <source>Colour of the light. It brings the usual forward voltage, ideality, resistance and ratings of such a lamp, wherever none are stated.</source>
            <translation>Farbe des Lichts. Sie bringt die übliche Durchlassspannung, den Idealitätsfaktor, den Widerstand und die Nennwerte einer solchen Lampe mit, wo keine angegeben sind.</translation>
        </message>
        <message>
            <source>In farads, above 0. As the timing capacitor, twice the capacitance makes high time and low time twice as long.</source>
            <translation>In Farad, über 0. Beim zeitbestimmenden Kondensator macht die doppelte Kapazität High-Zeit und Low-Zeit doppelt so lang.</translation>
        </message>
        <message>
            <source>In ohms, 1 mΩ or more: a resistance in series with the capacitor itself. It adds a step to its voltage wherever the current jumps.</source>
            <translation>In Ohm, 1 mΩ oder mehr: ein Widerstand in Reihe mit dem Kondensator selbst. Überall, wo der Strom springt, fügt er der Spannung eine Stufe hinzu.</translation>
        </message>
        <message>
            <source>In ohms, above 0, or none: the resistance by which the capacitor loses its charge. With large timing resistors it slows charging down, or stops it short of the upper level.</source>
            <translation>In Ohm, über 0, oder keiner: der Widerstand, über den der Kondensator seine Ladung verliert. Bei großen zeitbestimmenden Widerständen verlangsamt er das Laden oder lässt es unterhalb der oberen Schwelle enden.</translation>
        </message>
        <message>
            <source>In volts, above 0, or none: the largest voltage that the capacitor bears. Findings tell when it is exceeded.</source>
            <translation>In Volt, über 0, oder keine: die größte Spannung, die der Kondensator verträgt. Befunde melden, wenn sie überschritten wird.</translation>
        </message>
        <message>
            <source>Whether the capacitor must stand the right way round, as electrolytic ones must. Findings tell when such a one gets voltage the wrong way.</source>
            <translation>Ob der Kondensator richtig herum sitzen muss, wie bei Elkos nötig. Befunde melden, wenn ein solcher verpolt Spannung bekommt.</translation>
        </message>
        <message>
            <source>In volts: the voltage across the capacitor when the supply is switched on. It changes the first flash from power-on, not the settled ones.</source>
            <translation>In Volt: die Spannung am Kondensator beim Einschalten der Versorgung. Sie ändert den ersten Blitz ab dem Einschalten, nicht die eingeschwungenen.</translation>
        </message>
        <message>
            <source>In volts, 0 or more: what the supply gives while no current flows. Brightness hangs on it much more than the flash rate does.</source>
            <translation>In Volt, 0 oder mehr: was die Versorgung abgibt, wenn kein Strom fließt. Die Helligkeit hängt viel stärker davon ab als die Blinkrate.</translation>
        </message>
        <message>
            <source>Charge that a battery holds, or none for a supply that lasts. The battery life in the readings is worked out from it.</source>
            <translation>Ladung, die eine Batterie enthält, oder keine bei einer Versorgung, die nicht zu Ende geht. Daraus wird die Batterielaufzeit in den Kennwerten berechnet.</translation>
        </message>
        <message>
            <source>In volts, 0 or more, or none: the voltage at which the battery counts as empty.</source>
            <translation>In Volt, 0 oder mehr, oder keine: die Spannung, bei der die Batterie als leer gilt.</translation>
        </message>
        <message>
            <source>Bipolar or CMOS. The bipolar one drives large currents but takes milliamperes itself and loses over a volt at its output; the CMOS one takes far less.</source>
            <translation>Bipolar oder CMOS. Der bipolare liefert große Ströme, nimmt aber selbst Milliampere auf und verliert über ein Volt an seinem Ausgang; der CMOS-Timer nimmt weit weniger auf.</translation>
        </message>
        <message>
            <source>How the switch stands at power-on: closed it joins its contacts, open it parts them.</source>
            <translation>Wie der Schalter beim Einschalten steht: Geschlossen verbindet er seine Kontakte, offen trennt er sie.</translation>
        </message>
        <message>
            <source>When the switch is pressed, in seconds from power-on: pairs of begin and end. It is then in its other position.</source>
            <translation>Wann der Schalter gedrückt ist, in Sekunden ab dem Einschalten: Paare aus Anfang und Ende. Dann ist er in der anderen Stellung.</translation>
        </message>
        <message>
            <source>In ohms, above 0: the resistance inside the supply. The voltage sags by it times the current while a lamp is lit; an old battery has more of it.</source>
            <translation>In Ohm, über 0: der Innenwiderstand der Versorgung. Mal dem Strom ergibt er, um wie viel die Spannung einbricht, während eine Lampe leuchtet; bei einer alten Batterie ist er größer.</translation>
        </message>
        <message>
            <source>In ohms, above 0: the resistance from end to end. The setting says how much of it is on either side of the wiper.</source>
            <translation>In Ohm, über 0: der Widerstand von Ende zu Ende. Die Einstellung sagt, wie viel davon auf jeder Seite des Schleifers liegt.</translation>
        </message>
        <message>
            <source>In ohms, above 0. More of it makes a timing phase longer in proportion, or a lamp's current smaller: it depends on where the resistor stands.</source>
            <translation>In Ohm, über 0. Ein größerer macht eine Phase der Schwingung proportional länger oder den Strom einer Lampe kleiner: Es hängt davon ab, wo der Widerstand liegt.</translation>
        </message>
        <message>
            <source>Gives the circuit its voltage: a battery or another source of low voltage, with its inner resistance.</source>
            <translation>Gibt der Schaltung ihre Spannung: eine Batterie oder eine andere Quelle von Kleinspannung, mit ihrem Innenwiderstand.</translation>
        </message>
        <message>
            <source>The timer with eight pins that makes the beat. Its levels are a third and two thirds of the supply.</source>
            <translation>Der Timer mit acht Pins, der den Takt gibt. Seine Schwellen sind ein Drittel und zwei Drittel der Versorgungsspannung.</translation>
        </message>
        <message>
            <source>Sets how fast the timing capacitor charges and discharges, or how much current a lamp gets.</source>
            <translation>Bestimmt, wie schnell der zeitbestimmende Kondensator lädt und entlädt oder wie viel Strom eine Lampe bekommt.</translation>
        </message>
        <message>
            <source>A resistor with a wiper, to set the rate by hand.</source>
            <translation>Ein Widerstand mit Schleifer, um die Rate von Hand einzustellen.</translation>
        </message>
        <message>
            <source>Stores charge. The one at pins 2 and 6 sets the time together with its resistors.</source>
            <translation>Speichert Ladung. Der an den Pins 2 und 6 bestimmt die Zeit zusammen mit seinen Widerständen.</translation>
        </message>
        <message>
            <source>A light-emitting diode. It needs a resistor in series that limits its current.</source>
            <translation>Eine Leuchtdiode. Sie braucht einen Vorwiderstand, der ihren Strom begrenzt.</translation>
        </message>
        <message>
            <source>Lets current flow one way only; across R2 it lets the lit time be set by R1 alone.</source>
            <translation>Lässt Strom nur in eine Richtung fließen; parallel zu R2 sorgt sie dafür, dass R1 allein die Leuchtdauer bestimmt.</translation>
        </message>
        <message>
            <source>Joins two nets or parts them, such as to switch the blinker on or to hold its reset low.</source>
            <translation>Verbindet zwei Netze oder trennt sie, etwa um den Blinker einzuschalten oder seinen Reset auf Low zu halten.</translation>
        </message>
        <message>
            <source>the name must end in .png, .svg, .pdf or .csv</source>
            <translation>der Name muss auf .png, .svg, .pdf oder .csv enden</translation>
        </message>
        <message>
            <source>there are no curves to write</source>
            <translation>es gibt keine Kurven zu schreiben</translation>
        </message>
        <message>
            <source>The window</source>
            <translation>Das Fenster</translation>
        </message>
        <message>
            <source>Questions</source>
            <translation>Fragen</translation>
        </message>
        <message>
            <source>The real board</source>
            <translation>Die wirkliche Platine</translation>
        </message>
        <message>
            <source>Results and files</source>
            <translation>Ergebnisse und Dateien</translation>
        </message>
        <message>
            <source>Reference</source>
            <translation>Nachschlagen</translation>
        </message>
        <message>
            <source>the name must end in .png, .svg or .pdf</source>
            <translation>der Name muss auf .png, .svg oder .pdf enden</translation>
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
            <source>No run: %1</source>
            <translation>Kein Lauf: %1</translation>
        </message>
        <message>
            <source>%1, %2 steps, %3 ms</source>
            <translation>%1, %2 Schritte, %3 ms</translation>
        </message>
        <message>
            <source>%1 – %2</source>
            <translation>%1 – %2</translation>
        </message>
        <message>
            <source>This circuit cannot be run.</source>
            <translation>Diese Schaltung lässt sich nicht simulieren.</translation>
        </message>
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
            <source>Simulated</source>
            <translation>Simuliert</translation>
        </message>
        <message>
            <source>Fields</source>
            <translation>Felder</translation>
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
            <source>Figure</source>
            <translation>Größe</translation>
        </message>
        <message>
            <source>Predicted</source>
            <translation>Vorhergesagt</translation>
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
            <source>Duty cycle D</source>
            <translation>Tastgrad D</translation>
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
            <source>Supply %1</source>
            <translation>Versorgung %1</translation>
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
            <source>Nominal</source>
            <translation>Nennwert</translation>
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
            <source>Cause</source>
            <translation>Ursache</translation>
        </message>
        <message>
            <source>What it does</source>
            <translation>Was sie bewirkt</translation>
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
        <message>
            <source>There is no textbook formula for this wiring: its figures come from simulation and measurement alone.</source>
            <translation>Für diese Verdrahtung gibt es keine Lehrbuchformel: Ihre Werte kommen allein aus Simulation und Messung.</translation>
        </message>
        <message>
            <source>%1, decimal comma</source>
            <translation>%1, Dezimalkomma</translation>
        </message>
        <message>
            <source>%1, decimal point</source>
            <translation>%1, Dezimalpunkt</translation>
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
        <message>
            <source>Gives Set B the fitted values: the board as it seems to be, beside the one as stated.</source>
            <translation>Gibt Satz B die angepassten Werte: die Platine, wie sie wohl ist, neben der angegebenen.</translation>
        </message>
        <message>
            <source>Puts the page in front on the clipboard as text.</source>
            <translation>Legt die vorn liegende Seite als Text in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Writes the table in front to a file (.csv).</source>
            <translation>Schreibt die vorn liegende Tabelle in eine Datei (.csv).</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::BandBehind</name>
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
        <message>
            <source>Shades where 9 of 10 boards lie whose parts are anywhere within their tolerances. Boards are simulated for it after each change.</source>
            <translation>Schattiert, wo 9 von 10 Platinen liegen, deren Bauteile beliebig innerhalb ihrer Toleranzen liegen. Dafür werden nach jeder Änderung Platinen simuliert.</translation>
        </message>
        <message>
            <source>Band o&amp;f boards behind the curves</source>
            <translation>Band der &amp;Platinen hinter den Kurven</translation>
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
        <message>
            <source>Puts the table of proposals on the clipboard as text.</source>
            <translation>Legt die Tabelle der Vorschläge als Text in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Writes the table of proposals to a file (.csv).</source>
            <translation>Schreibt die Tabelle der Vorschläge in eine Datei (.csv).</translation>
        </message>
        <message>
            <source>Gives Set B of the open circuit the chosen values, where it has these parts.</source>
            <translation>Gibt Satz B der geöffneten Schaltung die gewählten Werte, soweit sie diese Bauteile hat.</translation>
        </message>
        <message>
            <source>Opens the chosen proposal as a new circuit in place of what is open.</source>
            <translation>Öffnet den gewählten Vorschlag als neue Schaltung anstelle dessen, was geöffnet ist.</translation>
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
        <message>
            <source>Asks for a file and writes the page: picture, drawing, page or table of numbers, by the ending.</source>
            <translation>Fragt nach einer Datei und schreibt die Seite: Bild, Zeichnung, Seite oder Zahlentabelle, je nach Endung.</translation>
        </message>
        <message>
            <source>Puts the page as previewed on the clipboard, as a picture.</source>
            <translation>Legt die Seite der Vorschau als Bild in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Puts the points of the curves on the clipboard, as a table with SI units.</source>
            <translation>Legt die Punkte der Kurven als Tabelle mit SI-Einheiten in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Which curves stand on the page, where Set A is compared with something.</source>
            <translation>Welche Kurven auf der Seite stehen, wo Satz A mit etwas verglichen wird.</translation>
        </message>
        <message>
            <source>The voltage at the output of the timer over time. One strip at least stays on the page.</source>
            <translation>Die Spannung am Ausgang des Timers über der Zeit. Mindestens ein Streifen bleibt auf der Seite.</translation>
        </message>
        <message>
            <source>The voltage of the timing capacitor between the two levels of the timer.</source>
            <translation>Die Spannung des zeitbestimmenden Kondensators zwischen den zwei Schwellen des Timers.</translation>
        </message>
        <message>
            <source>The current of each lamp over time; brightness goes with it.</source>
            <translation>Der Strom jeder Lampe über der Zeit; die Helligkeit folgt ihm.</translation>
        </message>
        <message>
            <source>Says beside the curves which is which.</source>
            <translation>Sagt neben den Kurven, welche welche ist.</translation>
        </message>
        <message>
            <source>Draws the moment line with the voltages and currents at it.</source>
            <translation>Zeichnet die Zeitmarke mit den Spannungen und Strömen an ihr.</translation>
        </message>
        <message>
            <source>Leaves out what lies outside of the zoomed part. Without it the page has the whole run.</source>
            <translation>Lässt aus, was außerhalb des vergrößerten Ausschnitts liegt. Sonst zeigt die Seite den ganzen Lauf.</translation>
        </message>
        <message>
            <source>Draws curves grey and dashed, for copiers and printers without colour.</source>
            <translation>Zeichnet Kurven grau und gestrichelt, für Kopierer und Drucker ohne Farbe.</translation>
        </message>
        <message>
            <source>Width of the page on paper, in millimetres.</source>
            <translation>Breite der Seite auf dem Papier, in Millimetern.</translation>
        </message>
        <message>
            <source>Height of the page on paper, in millimetres, shared by its strips.</source>
            <translation>Höhe der Seite auf dem Papier in Millimetern, die sich ihre Streifen teilen.</translation>
        </message>
        <message>
            <source>Size of the texts on paper, in points. Texts in a report are usually of 8 to 11.</source>
            <translation>Größe der Texte auf dem Papier, in Punkt. In einem Bericht sind 8 bis 11 üblich.</translation>
        </message>
        <message>
            <source>How finely a picture is drawn. More dots make a larger file; 300 are usual for print.</source>
            <translation>Wie fein ein Bild gezeichnet wird. Mehr Punkte ergeben eine größere Datei; für den Druck sind 300 üblich.</translation>
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
        <message>
            <source>Puts the table and the cautions below it on the clipboard as text.</source>
            <translation>Legt die Tabelle und die Sicherheitshinweise darunter als Text in die Zwischenablage.</translation>
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
        <message>
            <source>Takes the chosen parts out of the circuit and puts them on the clipboard.</source>
            <translation>Nimmt die gewählten Bauteile aus der Schaltung und legt sie in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Puts the chosen parts on the clipboard with their values and the nets between them.</source>
            <translation>Legt die gewählten Bauteile mit ihren Werten und den Netzen zwischen ihnen in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Adds the parts of the clipboard under new names, joined among themselves as they were.</source>
            <translation>Fügt die Bauteile aus der Zwischenablage unter neuen Namen hinzu, untereinander verbunden wie zuvor.</translation>
        </message>
        <message>
            <source>Chooses every part, to move, copy or delete all together.</source>
            <translation>Wählt alle Bauteile aus, um sie gemeinsam zu verschieben, zu kopieren oder zu löschen.</translation>
        </message>
        <message>
            <source>Adds a part where there is room for it, with usual values. Its pins are joined afterwards.</source>
            <translation>Fügt ein Bauteil mit üblichen Werten hinzu, wo Platz dafür ist. Verbunden werden seine Anschlüsse danach.</translation>
        </message>
        <message>
            <source>Opens the list of kinds of parts; a letter chooses one.</source>
            <translation>Öffnet die Liste der Bauteilarten; ein Buchstabe wählt eine.</translation>
        </message>
        <message>
            <source>Opens a form with the name of the chosen part and all its values, tolerance and ratings among them.</source>
            <translation>Öffnet ein Formular mit dem Namen des gewählten Bauteils und allen seinen Werten, darunter Toleranz und Nennwerte.</translation>
        </message>
        <message>
            <source>Turns the chosen parts by 90°. Their wires follow; the circuit stays the same.</source>
            <translation>Dreht die gewählten Bauteile um 90°. Ihre Leitungen folgen; die Schaltung bleibt dieselbe.</translation>
        </message>
        <message>
            <source>Exchanges left and right of the chosen parts. Their wires follow; the circuit stays the same.</source>
            <translation>Vertauscht links und rechts bei den gewählten Bauteilen. Ihre Leitungen folgen; die Schaltung bleibt dieselbe.</translation>
        </message>
        <message>
            <source>Adds the chosen parts once more under new names, with the same values.</source>
            <translation>Fügt die gewählten Bauteile noch einmal hinzu, unter neuen Namen, mit denselben Werten.</translation>
        </message>
        <message>
            <source>Takes the chosen parts, or the chosen net, out of the circuit. Undo brings them back.</source>
            <translation>Nimmt die gewählten Bauteile oder das gewählte Netz aus der Schaltung. „Rückgängig“ bringt sie wieder.</translation>
        </message>
        <message>
            <source>Joins a pin to another pin or to a net, by their names, such as R1:1: no wire need be drawn by hand.</source>
            <translation>Verbindet einen Anschluss mit einem anderen oder mit einem Netz, nach ihren Namen, etwa R1:1: Von Hand muss keine Leitung gezogen werden.</translation>
        </message>
        <message>
            <source>Frees one pin. The other pins of its net stay joined.</source>
            <translation>Gibt einen Anschluss frei. Die anderen Anschlüsse seines Netzes bleiben verbunden.</translation>
        </message>
        <message>
            <source>Shift+F2</source>
            <translation>Shift+F2</translation>
        </message>
        <message>
            <source>Gives a net another name. The name stands beside its wires, in Pins and in lists.</source>
            <translation>Gibt einem Netz einen anderen Namen. Der Name steht neben seinen Leitungen, unter „Anschlüsse“ und in Listen.</translation>
        </message>
        <message>
            <source>Takes all wires of a net away. Its pins are free then; the parts stay.</source>
            <translation>Nimmt alle Leitungen eines Netzes weg. Seine Anschlüsse sind dann frei; die Bauteile bleiben.</translation>
        </message>
        <message>
            <source>The pin to be joined, by part and pin, such as R1:1. Names that fit are offered.</source>
            <translation>Der zu verbindende Anschluss, nach Bauteil und Pin, etwa R1:1. Passende Namen werden angeboten.</translation>
        </message>
        <message>
            <source>Another pin, such as U1:7, or the name of a net. A pin's whole net is joined.</source>
            <translation>Ein anderer Anschluss, etwa U1:7, oder der Name eines Netzes. Bei einem Anschluss wird sein ganzes Netz verbunden.</translation>
        </message>
        <message>
            <source>The pin to be freed, by part and pin, such as R1:1. Names that fit are offered.</source>
            <translation>Der freizugebende Anschluss, nach Bauteil und Pin, etwa R1:1. Passende Namen werden angeboten.</translation>
        </message>
        <message>
            <source>The net that gets another name. Names that fit are offered.</source>
            <translation>Das Netz, das einen anderen Namen bekommt. Passende Namen werden angeboten.</translation>
        </message>
        <message>
            <source>Its name from then on. No other net may have it.</source>
            <translation>Sein Name von da an. Kein anderes Netz darf ihn haben.</translation>
        </message>
        <message>
            <source>The net to be removed, by its name or by one of its pins, such as R1:1.</source>
            <translation>Das zu entfernende Netz, nach seinem Namen oder einem seiner Anschlüsse, etwa R1:1.</translation>
        </message>
        <message>
            <source>Adds a part where the menu was opened, with usual values. Its pins are joined afterwards.</source>
            <translation>Fügt ein Bauteil mit üblichen Werten dort ein, wo das Menü geöffnet wurde. Seine Anschlüsse werden danach verbunden.</translation>
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
        <message>
            <source>Writes the sheet as pages that look everywhere as in the preview.</source>
            <translation>Schreibt das Blatt als Seiten, die überall wie in der Vorschau aussehen.</translation>
        </message>
        <message>
            <source>Writes the sheet as one web page, with its pictures in it.</source>
            <translation>Schreibt das Blatt als eine Webseite, mit den Bildern darin.</translation>
        </message>
        <message>
            <source>Writes the sheet as a document in which a word processor can change everything.</source>
            <translation>Schreibt das Blatt als Dokument, in dem eine Textverarbeitung alles ändern kann.</translation>
        </message>
        <message>
            <source>Prints the sheet as the preview shows it.</source>
            <translation>Druckt das Blatt, wie die Vorschau es zeigt.</translation>
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
        <message>
            <source>What was not saved when the program ended last time. Enter opens the chosen one as it was.</source>
            <translation>Was beim letzten Ende des Programms nicht gespeichert war. Die Eingabetaste öffnet das Gewählte, wie es war.</translation>
        </message>
        <message>
            <source>Opens the chosen circuit with its unsaved changes. Its file changes only when it is saved.</source>
            <translation>Öffnet die gewählte Schaltung mit ihren ungespeicherten Änderungen. Ihre Datei ändert sich erst beim Speichern.</translation>
        </message>
        <message>
            <source>Throws the unsaved changes of the chosen circuit away, after a question.</source>
            <translation>Verwirft nach einer Rückfrage die ungespeicherten Änderungen der gewählten Schaltung.</translation>
        </message>
        <message>
            <source>Keeps them all, to be offered again at the next start.</source>
            <translation>Behält alle, um sie beim nächsten Start wieder anzubieten.</translation>
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
        <message>
            <source>Begins an empty circuit. Changes that are not saved are asked about first.</source>
            <translation>Beginnt eine leere Schaltung. Bei ungespeicherten Änderungen wird vorher gefragt.</translation>
        </message>
        <message>
            <source>Opens a circuit file (.blinkwright) in place of what is open. Changes that are not saved are asked about first.</source>
            <translation>Öffnet eine Schaltungsdatei (.blinkwright) anstelle dessen, was geöffnet ist. Bei ungespeicherten Änderungen wird vorher gefragt.</translation>
        </message>
        <message>
            <source>Circuit files that were open before, the latest first.</source>
            <translation>Schaltungsdateien, die zuvor geöffnet waren, die jüngste zuerst.</translation>
        </message>
        <message>
            <source>Writes the circuit to its file, with both sets of values and all measurements. A new one is asked for a name.</source>
            <translation>Schreibt die Schaltung in ihre Datei, mit beiden Wertesätzen und allen Messungen. Bei einer neuen wird nach einem Namen gefragt.</translation>
        </message>
        <message>
            <source>Writes the circuit to another file and goes on with that one. The file that was open stays as it was last saved.</source>
            <translation>Schreibt die Schaltung in eine andere Datei und macht mit dieser weiter. Die zuvor geöffnete Datei bleibt auf dem zuletzt gespeicherten Stand.</translation>
        </message>
        <message>
            <source>Reads voltages over time from an instrument's table (.csv, .txt, .tsv, .dat). They become a measurement of this circuit.</source>
            <translation>Liest Spannungen über der Zeit aus der Tabelle eines Messgeräts (.csv, .txt, .tsv, .dat). Sie werden eine Messung dieser Schaltung.</translation>
        </message>
        <message>
            <source>Writes the curves as picture (.png), drawing (.svg), page (.pdf) or table of numbers (.csv). A form with a preview comes first.</source>
            <translation>Schreibt die Kurven als Bild (.png), Zeichnung (.svg), Seite (.pdf) oder Zahlentabelle (.csv). Vorher erscheint ein Formular mit Vorschau.</translation>
        </message>
        <message>
            <source>Puts the curves on the clipboard as a picture on white, in the size and with the choices of the last export.</source>
            <translation>Legt die Kurven als Bild auf Weiß in die Zwischenablage, in der Größe und mit der Auswahl des letzten Exports.</translation>
        </message>
        <message>
            <source>Ends the program. Changes that are not saved are asked about first.</source>
            <translation>Beendet das Programm. Bei ungespeicherten Änderungen wird vorher gefragt.</translation>
        </message>
        <message>
            <source>Opens %1 in place of what is open.</source>
            <translation>Öffnet %1 anstelle dessen, was geöffnet ist.</translation>
        </message>
        <message>
            <source>Forgets the names of these files. The files themselves stay where they are.</source>
            <translation>Vergisst die Namen dieser Dateien. Die Dateien selbst bleiben, wo sie sind.</translation>
        </message>
        <message>
            <source>Takes back the last step. Every change of the circuit can be taken back, one by one; the drag of a slider is one step.</source>
            <translation>Macht den letzten Schritt rückgängig. Jede Änderung der Schaltung lässt sich einzeln zurücknehmen; ein Zug an einem Schieber ist ein Schritt.</translation>
        </message>
        <message>
            <source>Does again the step that was taken back last. It is gone once something else is changed.</source>
            <translation>Wiederholt den Schritt, der zuletzt rückgängig gemacht wurde. Er ist verloren, sobald etwas anderes geändert wird.</translation>
        </message>
        <message>
            <source>Puts the table of Readings on the clipboard as text with units, for a report or a spreadsheet.</source>
            <translation>Legt die Tabelle der Kennwerte als Text mit Einheiten in die Zwischenablage, für einen Bericht oder eine Tabellenkalkulation.</translation>
        </message>
        <message>
            <source>Shows the whole run along the time axis again, after zooming or panning.</source>
            <translation>Zeigt nach dem Zoomen oder Verschieben wieder den ganzen Lauf auf der Zeitachse.</translation>
        </message>
        <message>
            <source>Makes the whole drawing as large as its panel holds.</source>
            <translation>Macht die ganze Zeichnung so groß, wie der Bereich es zulässt.</translation>
        </message>
        <message>
            <source>Shows a shorter time of the curves, larger. While the Hook-up has the focus, it is enlarged instead.</source>
            <translation>Zeigt weniger Zeit der Kurven, größer. Hat die Verdrahtung den Fokus, wird stattdessen sie vergrößert.</translation>
        </message>
        <message>
            <source>Shows a longer time of the curves, smaller. While the Hook-up has the focus, it is made smaller instead.</source>
            <translation>Zeigt mehr Zeit der Kurven, kleiner. Hat die Verdrahtung den Fokus, wird stattdessen sie verkleinert.</translation>
        </message>
        <message>
            <source>Takes away the faint curves of before the last change. The circuit stays as it is.</source>
            <translation>Nimmt das Nachbild weg, die blassen Kurven von vor der letzten Änderung. Die Schaltung bleibt, wie sie ist.</translation>
        </message>
        <message>
            <source>The run begins when the supply is switched on, with each capacitor at its initial voltage. It shows the first flash, which is usually longer than the others.</source>
            <translation>Der Lauf beginnt mit dem Einschalten der Versorgung, jeder Kondensator bei seiner Anfangsspannung. Er zeigt den ersten Blitz, der meist länger ist als die anderen.</translation>
        </message>
        <message>
            <source>The run begins where each cycle is like the one before: what the blinker does in the long run. That state is solved for, however slow the circuit gets there.</source>
            <translation>Der Lauf beginnt dort, wo jede Periode der vorigen gleicht: was der Blinker auf Dauer tut. Dieser Zustand wird berechnet, wie langsam die Schaltung ihn auch erreicht.</translation>
        </message>
        <message>
            <source>Takes the focus on: Hook-up, Curves, Readings, Values, Findings, and round again.</source>
            <translation>Gibt den Fokus weiter: Verdrahtung, Kurven, Kennwerte, Werte, Befunde und wieder von vorn.</translation>
        </message>
        <message>
            <source>Takes the focus back: Findings, Values, Readings, Curves, Hook-up, and round again.</source>
            <translation>Gibt den Fokus zurück: Befunde, Werte, Kennwerte, Kurven, Verdrahtung und wieder von vorn.</translation>
        </message>
        <message>
            <source>How many flashes the curves show, on from their beginning. More of them take longer to simulate.</source>
            <translation>Wie viele Blitze die Kurven zeigen, von ihrem Anfang an. Mehr davon brauchen mehr Rechenzeit.</translation>
        </message>
        <message>
            <source>By which standard the Hook-up draws its parts. The circuit stays the same.</source>
            <translation>Nach welcher Norm die Verdrahtung ihre Bauteile zeichnet. Die Schaltung bleibt dieselbe.</translation>
        </message>
        <message>
            <source>Draws resistors as boxes, as the international standard has them.</source>
            <translation>Zeichnet Widerstände als Rechtecke, wie in der internationalen Norm.</translation>
        </message>
        <message>
            <source>Draws resistors as zigzag lines, as the American standard has them.</source>
            <translation>Zeichnet Widerstände als Zickzacklinien, wie in der amerikanischen Norm.</translation>
        </message>
        <message>
            <source>How the Hook-up draws the timer. Its pins and nets stay the same.</source>
            <translation>Wie die Verdrahtung den Timer zeichnet. Seine Anschlüsse und Netze bleiben dieselben.</translation>
        </message>
        <message>
            <source>Pins stand as on the package that is seen from above: easy to wire from.</source>
            <translation>Anschlüsse stehen wie am Gehäuse in der Ansicht von oben: leicht danach zu verdrahten.</translation>
        </message>
        <message>
            <source>Pins stand by what they do: easy to read as a circuit.</source>
            <translation>Anschlüsse stehen nach ihrer Funktion: leicht als Schaltung zu lesen.</translation>
        </message>
        <message>
            <source>Colours of all windows. Exports are on white in any case.</source>
            <translation>Farben aller Fenster. Exporte sind in jedem Fall auf Weiß.</translation>
        </message>
        <message>
            <source>Dark texts and curves on a light ground.</source>
            <translation>Dunkle Texte und Kurven auf hellem Grund.</translation>
        </message>
        <message>
            <source>Light texts and curves on a dark ground, for a dim room.</source>
            <translation>Helle Texte und Kurven auf dunklem Grund, für einen abgedunkelten Raum.</translation>
        </message>
        <message>
            <source>Light or dark, as the colours of the desktop are.</source>
            <translation>Hell oder dunkel, wie die Farben der Arbeitsumgebung.</translation>
        </message>
        <message>
            <source>All texts at %1 % of the size that the desktop asks for.</source>
            <translation>Alle Texte in %1 % der Größe, die die Arbeitsumgebung vorgibt.</translation>
        </message>
        <message>
            <source>Te&amp;xt size</source>
            <translation>Te&amp;xtgröße</translation>
        </message>
        <message>
            <source>Size of the texts in all windows and plots, at once and from then on.</source>
            <translation>Größe der Texte in allen Fenstern und Diagrammen, sofort und von da an.</translation>
        </message>
        <message>
            <source>Language of all texts, from the next start of the program on.</source>
            <translation>Sprache aller Texte, ab dem nächsten Start des Programms.</translation>
        </message>
        <message>
            <source>Takes the language of the desktop, or English where there is no translation.</source>
            <translation>Nimmt die Sprache der Arbeitsumgebung oder Englisch, wo es keine Übersetzung gibt.</translation>
        </message>
        <message>
            <source>All texts are in this language from the next start on.</source>
            <translation>Alle Texte sind ab dem nächsten Start in dieser Sprache.</translation>
        </message>
        <message>
            <source>Copy readin&amp;gs</source>
            <translation>Kennwerte k&amp;opieren</translation>
        </message>
        <message>
            <source>Curves from po&amp;wer-on</source>
            <translation>Kurven ab dem &amp;Einschalten</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>Picture, 300 dpi</source>
            <translation>Bild, 300 dpi</translation>
        </message>
        <message>
            <source>Drawing</source>
            <translation>Zeichnung</translation>
        </message>
        <message>
            <source>Document page</source>
            <translation>Dokumentseite</translation>
        </message>
        <message>
            <source>Table of numbers</source>
            <translation>Zahlentabelle</translation>
        </message>
        <message>
            <source>From the next start on</source>
            <translation>Ab dem nächsten Start</translation>
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
        <message>
            <source>Puts the measurements and what they say on the clipboard as text.</source>
            <translation>Legt die Messungen und was sie ergeben als Text in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Enters how long a number of flashes takes: typed, or tapped along with the lamp.</source>
            <translation>Nimmt auf, wie lange eine Anzahl Blitze dauert: eingegeben oder im Takt der Lampe mitgetippt.</translation>
        </message>
        <message>
            <source>Enters what a meter shows: supply voltage, output, lamp current, or a part by itself.</source>
            <translation>Nimmt auf, was ein Messgerät zeigt: Versorgungsspannung, Ausgang, Lampenstrom oder ein Bauteil für sich allein.</translation>
        </message>
        <message>
            <source>Reads voltages over time from an instrument's table (.csv, .txt, .tsv, .dat).</source>
            <translation>Liest Spannungen über der Zeit aus der Tabelle eines Messgeräts (.csv, .txt, .tsv, .dat).</translation>
        </message>
        <message>
            <source>Opens the chosen measurement in the form that it was entered in.</source>
            <translation>Öffnet die gewählte Messung in dem Formular, in dem sie eingegeben wurde.</translation>
        </message>
        <message>
            <source>Adds the chosen measurement once more, as a start for a similar one.</source>
            <translation>Fügt die gewählte Messung noch einmal hinzu, als Anfang für eine ähnliche.</translation>
        </message>
        <message>
            <source>Takes the chosen measurements out of the circuit. Undo brings them back.</source>
            <translation>Nimmt die gewählten Messungen aus der Schaltung. „Rückgängig“ bringt sie wieder.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::MeasuredPanels</name>
        <message>
            <source>Measured &amp;records</source>
            <translation>&amp;Gemessene Aufzeichnungen</translation>
        </message>
        <message>
            <source>Ctrl+Shift+R</source>
            <translation>Ctrl+Shift+R</translation>
        </message>
        <message>
            <source>Lays what an instrument recorded on the real board over the curves, for those records that are in use in Measurements.</source>
            <translation>Legt über die Kurven, was ein Messgerät an der wirklichen Platine aufgezeichnet hat, bei Aufzeichnungen, die unter „Messungen“ genutzt werden.</translation>
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
        <message>
            <source>The part's name in drawing, lists and findings, such as R1. No other part may have it.</source>
            <translation>Der Name des Bauteils in Zeichnung, Listen und Befunden, etwa R1. Kein anderes Bauteil darf ihn haben.</translation>
        </message>
        <message>
            <source>Name and values</source>
            <translation>Name und Werte</translation>
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
        <message>
            <source>Shows the circuit as a drawing: parts are placed, moved and wired by hand in it.</source>
            <translation>Zeigt die Schaltung als Zeichnung: Darin werden Bauteile von Hand gesetzt, verschoben und verdrahtet.</translation>
        </message>
        <message>
            <source>Shows the circuit as a table: each pin with its role, its net and its voltage at the moment line. A net can be typed into it.</source>
            <translation>Zeigt die Schaltung als Tabelle: jeden Anschluss mit seiner Funktion, seinem Netz und seiner Spannung an der Zeitmarke. Ein Netz lässt sich darin eingeben.</translation>
        </message>
        <message>
            <source>Opens the list of kinds of parts; a letter chooses one.</source>
            <translation>Öffnet die Liste der Bauteilarten; ein Buchstabe wählt eine.</translation>
        </message>
        <message>
            <source>Takes the part of this pin out of the circuit. Undo brings it back.</source>
            <translation>Nimmt das Bauteil dieses Anschlusses aus der Schaltung. „Rückgängig“ bringt es wieder.</translation>
        </message>
        <message>
            <source>Opens a form with the name of this pin's part and all its values.</source>
            <translation>Öffnet ein Formular mit dem Namen des Bauteils an diesem Anschluss und allen seinen Werten.</translation>
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
        <message>
            <source>Moves the moment line over the run, or stops it. The lamps of the Hook-up glow meanwhile as their current says.</source>
            <translation>Bewegt die Zeitmarke über den Lauf oder hält sie an. Die Lampen in der Verdrahtung leuchten währenddessen nach ihrem Strom.</translation>
        </message>
        <message>
            <source>Moves the moment line back to where an output turned high or low last.</source>
            <translation>Bewegt die Zeitmarke zurück zur letzten Umschaltung eines Ausgangs auf High oder Low.</translation>
        </message>
        <message>
            <source>Moves the moment line on to where an output turns high or low next.</source>
            <translation>Bewegt die Zeitmarke vor zur nächsten Umschaltung eines Ausgangs auf High oder Low.</translation>
        </message>
        <message>
            <source>Ctrl+5</source>
            <translation>Ctrl+5</translation>
        </message>
        <message>
            <source>Ctrl+6</source>
            <translation>Ctrl+6</translation>
        </message>
        <message>
            <source>Ctrl+7</source>
            <translation>Ctrl+7</translation>
        </message>
        <message>
            <source>One second of the board takes %1 s to play. Slower shows what is too fast to see.</source>
            <translation>Eine Sekunde der Platine dauert in der Wiedergabe %1 s. Langsamer zeigt, was zum Sehen zu schnell ist.</translation>
        </message>
        <message>
            <source>Ctrl+R</source>
            <translation>Ctrl+R</translation>
        </message>
        <message>
            <source>Plays the settled cycles over and over. Without it, playing stops at the end of the run.</source>
            <translation>Spielt die eingeschwungenen Perioden immer wieder ab. Sonst endet die Wiedergabe am Ende des Laufs.</translation>
        </message>
        <message>
            <source>Ctrl+G</source>
            <translation>Ctrl+G</translation>
        </message>
        <message>
            <source>Shows the current of each lamp as a bar beside it instead of a glow: nothing flickers.</source>
            <translation>Zeigt den Strom jeder Lampe als Balken daneben statt als Leuchten: Nichts flackert.</translation>
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
        <message>
            <source>How fast Play moves over the run: 1:1 as the board does, 1:4 and 1:20 so many times slower.</source>
            <translation>Wie schnell die Wiedergabe den Lauf durchläuft: bei 1:1 wie die Platine, bei 1:4 und 1:20 so viele Male langsamer.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::ProjectorView</name>
        <message>
            <source>Pro&amp;jector view</source>
            <translation>Ansicht für den Pro&amp;jektor</translation>
        </message>
        <message>
            <source>F11</source>
            <translation>F11</translation>
        </message>
        <message>
            <source>Hook-up and Curves alone, with large texts and wide lines, for a class</source>
            <translation>Nur Verdrahtung und Kurven, mit großer Schrift und breiten Linien, für eine Klasse</translation>
        </message>
        <message>
            <source>Projector view: %1 or Esc leaves it.</source>
            <translation>Ansicht für den Projektor: %1 oder Esc beendet sie.</translation>
        </message>
        <message>
            <source>Shows Hook-up and Curves alone on the whole screen, with large texts and wide lines, for a class. Leaving it brings back all that was.</source>
            <translation>Zeigt nur Verdrahtung und Kurven auf dem ganzen Bildschirm, mit großer Schrift und breiten Linien, für eine Klasse. Beim Verlassen kommt alles Vorige zurück.</translation>
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
            <source>Export the parts list</source>
            <translation>Bauteilliste exportieren</translation>
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
        <message>
            <source>Makes a whole circuit from a few answers: supply, lamp, flash rate and lit share. Its values are of preferred series, and it blinks as asked.</source>
            <translation>Macht aus wenigen Antworten eine ganze Schaltung: Versorgung, Lampe, Blinkrate und Leuchtanteil. Ihre Werte stammen aus Vorzugsreihen, und sie blinkt wie gewünscht.</translation>
        </message>
        <message>
            <source>Steps for wiring the circuit on the bench, to be ticked off, and a list of its parts with their markings.</source>
            <translation>Schritte zum Verdrahten der Schaltung an der Werkbank, zum Abhaken, und eine Liste ihrer Bauteile mit deren Aufdruck.</translation>
        </message>
        <message>
            <source>Document page</source>
            <translation>Dokumentseite</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tabelle</translation>
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
        <message>
            <source>How the file was read: columns, levels and switchings that were found. Mend above what is wrong in it.</source>
            <translation>Wie die Datei gelesen wurde: gefundene Spalten, Pegel und Umschaltungen. Was darin falsch ist, lässt sich oben berichtigen.</translation>
        </message>
        <message>
            <source>Name of the record in Measurements and beside its curve.</source>
            <translation>Name der Aufzeichnung unter „Messungen“ und neben ihrer Kurve.</translation>
        </message>
        <message>
            <source>Tick it if recording began when the supply was switched on. The first flash then counts as the longer one that it is, and not as a settled one.</source>
            <translation>Ankreuzen, wenn die Aufzeichnung mit dem Einschalten der Versorgung begann. Der erste Blitz zählt dann als der längere, der er ist, und nicht als eingeschwungener.</translation>
        </message>
        <message>
            <source>How well the instrument keeps time, relative, from 0 to 10 %. It goes into the uncertainty of every time of the record.</source>
            <translation>Wie genau das Messgerät die Zeit hält, relativ, von 0 bis 10 %. Das geht in die Unsicherheit jeder Zeit der Aufzeichnung ein.</translation>
        </message>
        <message>
            <source>Adds the record to the measurements of the circuit, in one step.</source>
            <translation>Fügt die Aufzeichnung in einem Schritt zu den Messungen der Schaltung hinzu.</translation>
        </message>
        <message>
            <source>Stops reading the file. The next change of a setting reads it again.</source>
            <translation>Bricht das Lesen der Datei ab. Die nächste Änderung einer Einstellung liest sie erneut.</translation>
        </message>
        <message>
            <source>Uncertaint&amp;y of its time base</source>
            <translation>Unsicherheit der Zeit&amp;basis</translation>
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
        <message>
            <source>Goes from the cycle time of the textbook to that of the simulated board, cause by cause.</source>
            <translation>Geht von der Periodendauer des Lehrbuchs zu der der simulierten Platine, Ursache für Ursache.</translation>
        </message>
        <message>
            <source>What each lamp looks like: flashes or flicker, how bright, and which stated uses its rate suits.</source>
            <translation>Wie jede Lampe aussieht: Blitze oder Flackern, wie hell, und zu welchen angegebenen Anwendungen ihre Rate passt.</translation>
        </message>
        <message>
            <source>Draws a figure, such as the flash rate, over one value of the circuit. The value can be dragged on it.</source>
            <translation>Zeichnet eine Größe, etwa die Blinkrate, über einem Wert der Schaltung. Der Wert lässt sich darauf ziehen.</translation>
        </message>
        <message>
            <source>How far the figures of thousands of boards scatter whose parts are within their tolerances, and which part does most of it.</source>
            <translation>Wie weit die Größen von Tausenden Platinen streuen, deren Bauteile innerhalb ihrer Toleranzen liegen, und welches Bauteil am meisten dazu beiträgt.</translation>
        </message>
        <message>
            <source>Finds resistors and a capacitor for a wished rate and lit time, from preferred series or from the drawer.</source>
            <translation>Findet Widerstände und einen Kondensator für eine gewünschte Rate und Leuchtdauer, aus Vorzugsreihen oder aus der Schublade.</translation>
        </message>
        <message>
            <source>What was measured on the real board: counted flashes, meter readings and records, each with its uncertainty.</source>
            <translation>Was an der wirklichen Platine gemessen wurde: gezählte Blitze, Ablesungen am Messgerät und Aufzeichnungen, jeweils mit Unsicherheit.</translation>
        </message>
        <message>
            <source>Finds the values of the parts that explain the measurements best, and which part to change for a wished rate.</source>
            <translation>Findet die Werte der Bauteile, die die Messungen am besten erklären, und das Bauteil, das für eine gewünschte Rate zu ändern ist.</translation>
        </message>
        <message>
            <source>Ranks what is likely wrong with a board, from what is seen and measured. It also has a card of the readings to expect.</source>
            <translation>Ordnet nach Wahrscheinlichkeit, was an einer Platine falsch ist, nach dem Gesehenen und Gemessenen. Dazu gehört eine Karte der zu erwartenden Ablesungen.</translation>
        </message>
        <message>
            <source>The stock of resistors and capacitors at hand. Values can be chosen and boards retuned from it.</source>
            <translation>Der vorhandene Bestand an Widerständen und Kondensatoren. Daraus lassen sich Werte wählen und Platinen nachstimmen.</translation>
        </message>
        <message>
            <source>A report of the circuit to print or hand out, with theory, drawing, values, curves and tables to fill in.</source>
            <translation>Ein Bericht über die Schaltung zum Drucken oder Austeilen, mit Theorie, Zeichnung, Werten, Kurven und Tabellen zum Ausfüllen.</translation>
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
        <message>
            <source>Gives Set B all values of Set A, in one step.</source>
            <translation>Gibt Satz B alle Werte von Satz A, in einem Schritt.</translation>
        </message>
        <message>
            <source>Gives Set A all values of Set B, in one step.</source>
            <translation>Gibt Satz A alle Werte von Satz B, in einem Schritt.</translation>
        </message>
        <message>
            <source>Exchanges the values of the two sets: what was Set A is Set B then.</source>
            <translation>Tauscht die Werte der beiden Sätze: Was Satz A war, ist danach Satz B.</translation>
        </message>
        <message>
            <source>Ctrl+Shift+O</source>
            <translation>Ctrl+Shift+O</translation>
        </message>
        <message>
            <source>Shows curves, readings and findings of another circuit file beside Set A, in place of Set B. That file is only read.</source>
            <translation>Zeigt Kurven, Kennwerte und Befunde einer anderen Schaltungsdatei neben Satz A, anstelle von Satz B. Diese Datei wird nur gelesen.</translation>
        </message>
        <message>
            <source>Ctrl+Shift+E</source>
            <translation>Ctrl+Shift+E</translation>
        </message>
        <message>
            <source>Puts the file away that Set A is compared with. Set B takes its place again.</source>
            <translation>Legt die Datei weg, mit der Satz A verglichen wird. Satz B tritt wieder an ihre Stelle.</translation>
        </message>
        <message>
            <source>Which curves go into exports and copies, where two are shown.</source>
            <translation>Welche Kurven in Exporte und Kopien kommen, wo zwei gezeigt werden.</translation>
        </message>
        <message>
            <source>Exports hold Set A and what it is compared with.</source>
            <translation>Exporte enthalten Satz A und das, womit er verglichen wird.</translation>
        </message>
        <message>
            <source>Exports leave out what Set A is compared with.</source>
            <translation>Exporte lassen aus, womit Satz A verglichen wird.</translation>
        </message>
        <message>
            <source>Exports hold Set B, or the file that is compared with, and not Set A.</source>
            <translation>Exporte enthalten Satz B oder die verglichene Datei, nicht Satz A.</translation>
        </message>
        <message>
            <source>Shows Set B, a second set of values for the same parts, beside Set A: in Values, Curves, Readings and Findings.</source>
            <translation>Zeigt Satz B, einen zweiten Satz Werte für dieselben Bauteile, neben Satz A: in Werten, Kurven, Kennwerten und Befunden.</translation>
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
        <message>
            <source>Which figure of the boards is drawn and tabled, such as the flash rate.</source>
            <translation>Welche Größe der Platinen gezeichnet und in die Tabelle gesetzt wird, etwa die Blinkrate.</translation>
        </message>
        <message>
            <source>How many random boards are simulated. Four times as many make the figures twice as sure.</source>
            <translation>Wie viele Zufallsplatinen simuliert werden. Viermal so viele machen die Zahlenwerte doppelt so sicher.</translation>
        </message>
        <message>
            <source>Which random boards are drawn: another seed gives others, the same one the same again. What changes with the seed is chance.</source>
            <translation>Welche Zufallsplatinen gezogen werden: Ein anderer Startwert ergibt andere, derselbe wieder dieselben. Was sich mit dem Startwert ändert, ist Zufall.</translation>
        </message>
        <message>
            <source>How the values of parts lie within their tolerances. Evenly is the most careful; normally, as from a good maker, has most of them near the middle.</source>
            <translation>Wie die Werte der Bauteile innerhalb ihrer Toleranzen liegen. „Gleichmäßig“ ist am vorsichtigsten; „normal“, wie von einem guten Hersteller, hat die meisten nahe der Mitte.</translation>
        </message>
        <message>
            <source>Puts the table of the page in front on the clipboard as text: figures, or parts.</source>
            <translation>Legt die Tabelle der vorn liegenden Seite als Text in die Zwischenablage: Zahlenwerte oder Bauteile.</translation>
        </message>
        <message>
            <source>Writes the picture in front, the figures, or the values and figures of every board.</source>
            <translation>Schreibt das vorn liegende Bild, die Zahlenwerte oder die Werte und Zahlenwerte jeder Platine.</translation>
        </message>
        <message>
            <source>Writes the picture in front as dots (PNG), as a drawing (SVG) or as a page (PDF).</source>
            <translation>Schreibt das Bild im Vordergrund als Bildpunkte (PNG), als Zeichnung (SVG) oder als Seite (PDF).</translation>
        </message>
        <message>
            <source>Writes a table (CSV) of every figure: nominal, mean, standard deviation, shares and worst case.</source>
            <translation>Schreibt eine Tabelle (CSV) aller Größen: Nennwert, Mittelwert, Standardabweichung, Anteile und ungünstigster Fall.</translation>
        </message>
        <message>
            <source>Writes a table (CSV) with a row for each board: its part values, and its figures.</source>
            <translation>Schreibt eine Tabelle (CSV) mit einer Zeile je Platine: ihre Bauteilwerte und ihre Zahlenwerte.</translation>
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
        <message>
            <source>What is seen and measured at the left, what is likely wrong at the right.</source>
            <translation>Links das Gesehene und Gemessene, rechts der wahrscheinliche Fehler.</translation>
        </message>
        <message>
            <source>The readings to expect at each pin and lamp of a sound board, to print and take to the bench.</source>
            <translation>Die zu erwartenden Ablesungen an jedem Anschluss und jeder Lampe einer fehlerfreien Platine, zum Drucken und Mitnehmen an die Werkbank.</translation>
        </message>
        <message>
            <source>Puts the page in front on the clipboard as text: the likely faults, or the card.</source>
            <translation>Legt die vorn liegende Seite als Text in die Zwischenablage: die wahrscheinlichen Fehler oder die Karte.</translation>
        </message>
        <message>
            <source>Prints the check card on paper, with room for the readings.</source>
            <translation>Druckt die Prüfkarte auf Papier, mit Platz für die Ablesungen.</translation>
        </message>
        <message>
            <source>Writes the check card to a file, as a page (.pdf) or as text (.txt).</source>
            <translation>Schreibt die Prüfkarte in eine Datei, als Seite (.pdf) oder als Text (.txt).</translation>
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
        <message>
            <source>Puts the points of the trend on the clipboard as a table, one line a value.</source>
            <translation>Legt die Punkte des Trends als Tabelle in die Zwischenablage, eine Zeile je Wert.</translation>
        </message>
        <message>
            <source>Writes the trend as picture (.png), drawing (.svg), page (.pdf) or table (.csv).</source>
            <translation>Schreibt den Trend als Bild (.png), Zeichnung (.svg), Seite (.pdf) oder Tabelle (.csv).</translation>
        </message>
        <message>
            <source>Which value of the circuit runs along the axis: a resistance, a capacitance, a setting or a supply voltage. All others stay as they are.</source>
            <translation>Welcher Wert der Schaltung auf der Achse liegt: ein Widerstand, eine Kapazität, eine Einstellung oder eine Versorgungsspannung. Alle anderen bleiben, wie sie sind.</translation>
        </message>
        <message>
            <source>Which figure of the settled board is drawn over the value.</source>
            <translation>Welche Größe der eingeschwungenen Platine über dem Wert gezeichnet wird.</translation>
        </message>
        <message>
            <source>Equal ratios suit resistances and capacitances over decades, even steps suit voltages and settings.</source>
            <translation>Gleiche Verhältnisse eignen sich für Widerstände und Kapazitäten über Dekaden, gleiche Abstände für Spannungen und Einstellungen.</translation>
        </message>
        <message>
            <source>Lower end of the axis, with its unit, such as 4k7. Enter draws the trend anew.</source>
            <translation>Unteres Ende der Achse, mit Einheit, etwa 4k7. Die Eingabetaste zeichnet den Trend neu.</translation>
        </message>
        <message>
            <source>Upper end of the axis, with its unit, such as 470k. Enter draws the trend anew.</source>
            <translation>Oberes Ende der Achse, mit Einheit, etwa 470k. Die Eingabetaste zeichnet den Trend neu.</translation>
        </message>
        <message>
            <source>Takes the range that is usual for this value.</source>
            <translation>Nimmt den Bereich, der für diesen Wert üblich ist.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::WhatIsThis</name>
        <message>
            <source>Gives this answer to the message, and closes it.</source>
            <translation>Gibt diese Antwort auf die Meldung und schließt sie.</translation>
        </message>
        <message>
            <source>Takes over what the form says and closes it. Undo takes it back.</source>
            <translation>Übernimmt, was im Formular steht, und schließt es. „Rückgängig“ nimmt es zurück.</translation>
        </message>
        <message>
            <source>Closes the form and leaves everything as it was.</source>
            <translation>Schließt das Formular und lässt alles, wie es war.</translation>
        </message>
        <message>
            <source>Closes this window. What was entered in it is kept.</source>
            <translation>Schließt dieses Fenster. Was darin eingegeben wurde, bleibt erhalten.</translation>
        </message>
        <message>
            <source>Opens the page of the help about this window.</source>
            <translation>Öffnet die Seite der Hilfe über dieses Fenster.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>Range: %1</source>
            <translation>Bereich: %1</translation>
        </message>
        <message>
            <source>Range: %1 to %2%3</source>
            <translation>Bereich: %1 bis %2%3</translation>
        </message>
        <message>
            <source>Key: %1</source>
            <translation>Taste: %1</translation>
        </message>
        <message>
            <source>A text to read. Parts of it can be chosen and copied.</source>
            <translation>Ein Text zum Lesen. Teile davon lassen sich auswählen und kopieren.</translation>
        </message>
        <message>
            <source>&amp;What is this?</source>
            <translation>&amp;Was ist das?</translation>
        </message>
        <message>
            <source>Shift+F1</source>
            <translation>Shift+F1</translation>
        </message>
        <message>
            <source>Click a control after it to read what that is for, with its range and its key. Shift+F1 tells it of the control that has the focus.</source>
            <translation>Danach ein Bedienelement anklicken, um zu lesen, wozu es dient, mit Bereich und Taste. Shift+F1 sagt es von dem Bedienelement, das den Fokus hat.</translation>
        </message>
        <message>
            <source>Opens the buttons that have no room in the tool bar.</source>
            <translation>Öffnet die Knöpfe, die in der Werkzeugleiste keinen Platz haben.</translation>
        </message>
        <message>
            <source>Moves the tabs, where not all of them have room.</source>
            <translation>Verschiebt die Reiter, wo nicht alle Platz haben.</translation>
        </message>
        <message>
            <source>Holds more than it has room for: arrow keys, Page Up and Page Down scroll it.</source>
            <translation>Enthält mehr, als Platz hat: Pfeiltasten, Bild auf und Bild ab verschieben den Inhalt.</translation>
        </message>
        <message>
            <source>Takes back what was typed last in this field.</source>
            <translation>Nimmt zurück, was in diesem Feld zuletzt getippt wurde.</translation>
        </message>
        <message>
            <source>Types again what was taken back last in this field.</source>
            <translation>Schreibt wieder, was in diesem Feld zuletzt zurückgenommen wurde.</translation>
        </message>
        <message>
            <source>Puts the marked text on the clipboard and takes it away here.</source>
            <translation>Legt den markierten Text in die Zwischenablage und nimmt ihn hier weg.</translation>
        </message>
        <message>
            <source>Puts the marked text on the clipboard.</source>
            <translation>Legt den markierten Text in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Puts the address of the link on the clipboard.</source>
            <translation>Legt die Adresse des Verweises in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Writes the text of the clipboard here, in place of what is marked.</source>
            <translation>Schreibt den Text der Zwischenablage hierher, an die Stelle des Markierten.</translation>
        </message>
        <message>
            <source>Takes the marked text away.</source>
            <translation>Nimmt den markierten Text weg.</translation>
        </message>
        <message>
            <source>Marks all of the text, to copy or to replace it.</source>
            <translation>Markiert den ganzen Text, um ihn zu kopieren oder zu ersetzen.</translation>
        </message>
        <message>
            <source>Makes the number larger by one step, as the Up key does.</source>
            <translation>Macht die Zahl um einen Schritt größer, wie die Taste Pfeil auf.</translation>
        </message>
        <message>
            <source>Makes the number smaller by one step, as the Down key does.</source>
            <translation>Macht die Zahl um einen Schritt kleiner, wie die Taste Pfeil ab.</translation>
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
        <message>
            <source>Which figure is explained: the time of a cycle, or the duty cycle, the share of it with the output high.</source>
            <translation>Welche Größe erklärt wird: die Dauer einer Periode oder der Tastgrad, ihr Anteil mit dem Ausgang auf High.</translation>
        </message>
        <message>
            <source>Puts the table of causes on the clipboard as text, for a report or a spreadsheet.</source>
            <translation>Legt die Tabelle der Ursachen als Text in die Zwischenablage, für einen Bericht oder eine Tabellenkalkulation.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::help::AboutDialog</name>
        <message>
            <source>About Blinkwright</source>
            <translation>Über Blinkwright</translation>
        </message>
        <message>
            <source>A workshop for lamp blinkers built on the 555 timer.</source>
            <translation>Eine Werkstatt für Lampenblinker mit dem 555-Timer.</translation>
        </message>
        <message>
            <source>Copyright 2026 The Blinkwright developers. Licence: GPL-3.0-or-later.</source>
            <translation>Copyright 2026 The Blinkwright developers. Lizenz: GPL-3.0-or-later.</translation>
        </message>
        <message>
            <source>This program is free software: you may pass it on and change it under the terms of the GNU General Public License as the Free Software Foundation publishes it, version 3 or (at your option) any later one. It comes without any warranty. The licence is at %1.</source>
            <translation>Dieses Programm ist freie Software: Es darf unter den Bedingungen der GNU General Public License, wie von der Free Software Foundation veröffentlicht, weitergegeben und geändert werden, in Version 3 oder (nach eigener Wahl) jeder späteren. Es kommt ohne jede Gewährleistung. Die Lizenz steht unter %1.</translation>
        </message>
        <message>
            <source>Built with:</source>
            <translation>Erstellt mit:</translation>
        </message>
        <message>
            <source>In its tests and benchmarks only:</source>
            <translation>Nur in seinen Tests und Messungen:</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::help::HelpDesk</name>
        <message>
            <source>&amp;Help on this panel</source>
            <translation>&amp;Hilfe zu diesem Bereich</translation>
        </message>
        <message>
            <source>F1</source>
            <translation>F1</translation>
        </message>
        <message>
            <source>The page of the help about where you are, in a window of its own.</source>
            <translation>Die Seite der Hilfe, die zur Stelle passt, in einem eigenen Fenster.</translation>
        </message>
        <message>
            <source>How the &amp;blinker works</source>
            <translation>Wie der &amp;Blinker arbeitet</translation>
        </message>
        <message>
            <source>Ctrl+F1</source>
            <translation>Ctrl+F1</translation>
        </message>
        <message>
            <source>The timer's switching levels, the formulas of the astable, and what they leave out.</source>
            <translation>Die Schaltschwellen des Timers, die Formeln der astabilen Kippstufe und was sie auslassen.</translation>
        </message>
        <message>
            <source>&amp;Keys</source>
            <translation>&amp;Tasten</translation>
        </message>
        <message>
            <source>Ctrl+F2</source>
            <translation>Ctrl+F2</translation>
        </message>
        <message>
            <source>All keys of the menus in one list.</source>
            <translation>Alle Tasten der Menüs in einer Liste.</translation>
        </message>
        <message>
            <source>&amp;Tour of the window</source>
            <translation>&amp;Rundgang durch das Fenster</translation>
        </message>
        <message>
            <source>Ctrl+F3</source>
            <translation>Ctrl+F3</translation>
        </message>
        <message>
            <source>Five steps through the window, as at the first start; Esc leaves them.</source>
            <translation>Fünf Schritte durch das Fenster, wie beim ersten Start; Esc verlässt sie.</translation>
        </message>
        <message>
            <source>&amp;Cautions</source>
            <translation>&amp;Sicherheitshinweise</translation>
        </message>
        <message>
            <source>Ctrl+Shift+F1</source>
            <translation>Ctrl+Shift+F1</translation>
        </message>
        <message>
            <source>What to heed with flashing light, strong lamps, capacitors and batteries, and how far the figures can be trusted.</source>
            <translation>Was bei blitzendem Licht, starken Lampen, Kondensatoren und Batterien zu beachten ist und wie weit den Zahlenwerten zu trauen ist.</translation>
        </message>
        <message>
            <source>&amp;About Blinkwright…</source>
            <translation>&amp;Über Blinkwright …</translation>
        </message>
        <message>
            <source>Ctrl+Shift+F2</source>
            <translation>Ctrl+Shift+F2</translation>
        </message>
        <message>
            <source>Version and licence, and the libraries that the program is built with.</source>
            <translation>Version und Lizenz und die Bibliotheken, mit denen das Programm erstellt ist.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::help::HelpWindow</name>
        <message>
            <source>Help</source>
            <translation>Hilfe</translation>
        </message>
        <message>
            <source>Page of the help</source>
            <translation>Seite der Hilfe</translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>Back</source>
            <translation>Zurück</translation>
        </message>
        <message>
            <source>Alt+Left</source>
            <translation>Alt+Left</translation>
        </message>
        <message>
            <source>Forward</source>
            <translation>Vor</translation>
        </message>
        <message>
            <source>Alt+Right</source>
            <translation>Alt+Right</translation>
        </message>
        <message>
            <source>Find in the page</source>
            <translation>Auf der Seite suchen</translation>
        </message>
        <message>
            <source>Pages of the help</source>
            <translation>Seiten der Hilfe</translation>
        </message>
        <message>
            <source>F3</source>
            <translation>F3</translation>
        </message>
        <message>
            <source>Shift+F3</source>
            <translation>Shift+F3</translation>
        </message>
        <message>
            <source>Found from the other end of the page.</source>
            <translation>Vom anderen Ende der Seite her gefunden.</translation>
        </message>
        <message>
            <source>“%1” is not on this page.</source>
            <translation>„%1“ steht nicht auf dieser Seite.</translation>
        </message>
        <message>
            <source>%1 – Help</source>
            <translation>%1 – Hilfe</translation>
        </message>
        <message>
            <source>One page of the help. Tab goes from link to link and Enter follows one; texts can be chosen and copied.</source>
            <translation>Eine Seite der Hilfe. Tab geht von Verweis zu Verweis, Enter folgt einem; Texte lassen sich auswählen und kopieren.</translation>
        </message>
        <message>
            <source>Shows the page that was read before this one.</source>
            <translation>Zeigt die Seite, die vor dieser gelesen wurde.</translation>
        </message>
        <message>
            <source>Shows the page again that Back was pressed on.</source>
            <translation>Zeigt wieder die Seite, auf der Zurück gedrückt wurde.</translation>
        </message>
        <message>
            <source>Opens a field for a word to look for in this page.</source>
            <translation>Öffnet ein Feld für ein Wort, das auf dieser Seite gesucht wird.</translation>
        </message>
        <message>
            <source>All pages of the help, in groups. The chosen one is shown beside the list.</source>
            <translation>Alle Seiten der Hilfe in Gruppen. Die gewählte wird neben der Liste gezeigt.</translation>
        </message>
        <message>
            <source>A word to look for in the page. Enter goes on to the next place with it.</source>
            <translation>Ein Wort, das auf der Seite gesucht wird. Enter geht zur nächsten Stelle damit.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::help::Tour</name>
        <message>
            <source>Begin with a ready blinker</source>
            <translation>Mit einem fertigen Blinker beginnen</translation>
        </message>
        <message>
            <source>File &gt; New from a ready blinker (Ctrl+Shift+N) builds a working circuit from a few answers: supply, lamp, flashes a minute. Or open one of the samples.</source>
            <translation>Datei &gt; Neu aus fertigem Blinker (Ctrl+Shift+N) baut aus wenigen Antworten eine Schaltung, die funktioniert: Versorgung, Lampe, Blitze je Minute. Oder eines der Beispiele öffnen.</translation>
        </message>
        <message>
            <source>Drag a value</source>
            <translation>Einen Wert ziehen</translation>
        </message>
        <message>
            <source>Drag the slider of R2, or type a value such as 4k7. Everything else follows at once. Ctrl+Z takes a whole drag back.</source>
            <translation>Den Schieber von R2 ziehen oder einen Wert wie 4k7 eintippen. Alles andere folgt sofort. Ctrl+Z nimmt einen ganzen Zug zurück.</translation>
        </message>
        <message>
            <source>See the curves</source>
            <translation>Die Kurven ansehen</translation>
        </message>
        <message>
            <source>Output, timing capacitor and lamp current over time. The curves from before the drag stay behind, pale. Drag the vertical line to read off a moment; F9 plays it.</source>
            <translation>Ausgang, zeitbestimmender Kondensator und Lampenstrom über der Zeit. Die Kurven von vor dem Zug bleiben blass stehen. Die senkrechte Linie ziehen, um einen Augenblick abzulesen; F9 spielt ab.</translation>
        </message>
        <message>
            <source>Compare two sets of values</source>
            <translation>Zwei Wertesätze vergleichen</translation>
        </message>
        <message>
            <source>Ctrl+B shows Set B beside Set A: own sliders, own curves, and what lies between the two here in the readings.</source>
            <translation>Ctrl+B zeigt Satz B neben Satz A: eigene Schieber, eigene Kurven, und was zwischen beiden liegt, hier in den Kennwerten.</translation>
        </message>
        <message>
            <source>Take it with you</source>
            <translation>Mitnehmen</translation>
        </message>
        <message>
            <source>Ctrl+E exports the curves; Ctrl+Shift+L writes a lab sheet as PDF, HTML or ODT. F1 opens the help that fits where you are.</source>
            <translation>Ctrl+E exportiert die Kurven; Ctrl+Shift+L schreibt ein Laborblatt als PDF, HTML oder ODT. F1 öffnet die Hilfe, die zur Stelle passt.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::app::help::TourCard</name>
        <message>
            <source>Leave</source>
            <translation>Verlassen</translation>
        </message>
        <message>
            <source>&amp;Back</source>
            <translation>&amp;Zurück</translation>
        </message>
        <message>
            <source>Leave the tour (Esc)</source>
            <translation>Den Rundgang verlassen (Esc)</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>&amp;Next</source>
            <translation>&amp;Weiter</translation>
        </message>
        <message>
            <source>&amp;Done</source>
            <translation>&amp;Fertig</translation>
        </message>
        <message>
            <source>Tour, %1 of %2: %3</source>
            <translation>Rundgang, %1 von %2: %3</translation>
        </message>
        <message>
            <source>Ends the tour. The Help menu begins it again.</source>
            <translation>Beendet den Rundgang. Das Menü Hilfe beginnt ihn wieder.</translation>
        </message>
        <message>
            <source>Goes back to the panel before this one.</source>
            <translation>Geht zum vorigen Feld zurück.</translation>
        </message>
        <message>
            <source>Goes on to the next panel, and ends the tour after the last.</source>
            <translation>Geht zum nächsten Feld weiter und beendet den Rundgang nach dem letzten.</translation>
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
        <message>
            <source>The full sheet has everything, the student copy leaves blanks to fill in, and the answer key says what belongs there.</source>
            <translation>Das vollständige Blatt hat alles, das Schülerblatt lässt Lücken zum Ausfüllen, und das Lösungsblatt sagt, was dorthin gehört.</translation>
        </message>
        <message>
            <source>Gives each student other values: every number from 1 on is another variant of the timing parts. 0 leaves those of the circuit.</source>
            <translation>Gibt allen Lernenden andere Werte: Jede Nummer ab 1 ist eine andere Variante der zeitbestimmenden Bauteile. 0 lässt die der Schaltung.</translation>
        </message>
        <message>
            <source>Size of the paper that the pages are laid out for.</source>
            <translation>Format des Papiers, für das die Seiten eingerichtet sind.</translation>
        </message>
        <message>
            <source>Tells the values and figures of both sets side by side. Without it the sheet is of Set A alone.</source>
            <translation>Nennt die Werte und Zahlenwerte beider Sätze nebeneinander. Sonst gilt das Blatt nur für Satz A.</translation>
        </message>
        <message>
            <source>Which sections the sheet has. The space bar ticks the chosen one or leaves it out.</source>
            <translation>Welche Abschnitte das Blatt hat. Die Leertaste kreuzt den gewählten an oder lässt ihn aus.</translation>
        </message>
        <message>
            <source>Heading of the sheet. Left empty, it is the title of the circuit.</source>
            <translation>Überschrift des Blatts. Bleibt sie leer, gilt der Titel der Schaltung.</translation>
        </message>
        <message>
            <source>Who has written the sheet. It is remembered for the next one.</source>
            <translation>Wer das Blatt geschrieben hat. Der Name wird für das nächste gemerkt.</translation>
        </message>
        <message>
            <source>With whom the work was done. It is remembered for the next sheet.</source>
            <translation>Mit wem zusammen gearbeitet wurde. Der Name wird für das nächste Blatt gemerkt.</translation>
        </message>
        <message>
            <source>Class or group at the head of the sheet. It is remembered for the next one.</source>
            <translation>Klasse oder Gruppe im Kopf des Blatts. Sie wird für das nächste gemerkt.</translation>
        </message>
        <message>
            <source>Day at the head of the sheet: today, unless another text is typed.</source>
            <translation>Tag im Kopf des Blatts: heute, wenn kein anderer Text eingegeben wird.</translation>
        </message>
        <message>
            <source>What the work is to show. Left empty, the sheet has the usual sentence.</source>
            <translation>Was die Arbeit zeigen soll. Bleibt das Feld leer, hat das Blatt den üblichen Satz.</translation>
        </message>
        <message>
            <source>What is done, step by step. Left empty, the sheet has the usual steps.</source>
            <translation>Was getan wird, Schritt für Schritt. Bleibt das Feld leer, hat das Blatt die üblichen Schritte.</translation>
        </message>
        <message>
            <source>What was found out. Left empty, the sheet has lines to write on by hand.</source>
            <translation>Was herausgefunden wurde. Bleibt das Feld leer, hat das Blatt Linien zum Schreiben von Hand.</translation>
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
        <message>
            <source>One page of the sheet as it will be printed. Page Up and Page Down turn the pages.</source>
            <translation>Eine Seite des Blatts, wie sie gedruckt wird. Bild auf und Bild ab blättern um.</translation>
        </message>
        <message>
            <source>Turns the preview one page back; Page Up in the preview does the same.</source>
            <translation>Blättert die Vorschau eine Seite zurück; Bild auf in der Vorschau bewirkt dasselbe.</translation>
        </message>
        <message>
            <source>Turns the preview one page on; Page Down in the preview does the same.</source>
            <translation>Blättert die Vorschau eine Seite weiter; Bild ab in der Vorschau bewirkt dasselbe.</translation>
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
        <message>
            <source>What the settled board does with the values as stated and with the fitted ones, beside what was measured.</source>
            <translation>Was die eingeschwungene Platine mit den angegebenen und mit den angepassten Werten tut, neben dem Gemessenen.</translation>
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
        <message>
            <source>The values of the parts that explain the measurements best, and how to get a wished rate.</source>
            <translation>Die Werte der Bauteile, die die Messungen am besten erklären, und wie eine gewünschte Rate zu erreichen ist.</translation>
        </message>
        <message>
            <source>What each part and each reading adds to the uncertainty, and whether prediction and measurement agree within it.</source>
            <translation>Was jedes Bauteil und jede Ablesung zur Unsicherheit beiträgt, und ob Vorhersage und Messung innerhalb von ihr übereinstimmen.</translation>
        </message>
        <message>
            <source>Opens Measurements, where counts, readings and records are entered.</source>
            <translation>Öffnet „Messungen“, wo Zählungen, Ablesungen und Aufzeichnungen eingegeben werden.</translation>
        </message>
        <message>
            <source>What was found</source>
            <translation>Was gefunden wurde</translation>
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
        <message>
            <source>A bipolar timer drives more current; a CMOS timer takes less itself and runs from a lower voltage.</source>
            <translation>Ein bipolarer Timer liefert mehr Strom; ein CMOS-Timer nimmt selbst weniger auf und läuft mit niedrigerer Spannung.</translation>
        </message>
        <message>
            <source>Voltage of the battery or other source, in volts.</source>
            <translation>Spannung der Batterie oder anderen Quelle, in Volt.</translation>
        </message>
        <message>
            <source>Colour of the lamp. It sets the forward voltage, and with it the resistor.</source>
            <translation>Farbe der Lampe. Sie bestimmt die Durchlassspannung und damit den Widerstand.</translation>
        </message>
        <message>
            <source>Colour of the lamp that is lit while the first one is dark.</source>
            <translation>Farbe der Lampe, die leuchtet, während die erste dunkel ist.</translation>
        </message>
        <message>
            <source>Current of a lit lamp, in milliamperes. The resistor in series with it follows from this.</source>
            <translation>Strom einer leuchtenden Lampe in Milliampere. Ihr Vorwiderstand ergibt sich daraus.</translation>
        </message>
        <message>
            <source>How often the lamp flashes. The timing resistors and the capacitor follow from it.</source>
            <translation>Wie oft die Lampe blitzt. Die zeitbestimmenden Widerstände und der Kondensator ergeben sich daraus.</translation>
        </message>
        <message>
            <source>Share of each cycle in which the lamp is lit, in per cent.</source>
            <translation>Anteil jeder Periode, in dem die Lampe leuchtet, in Prozent.</translation>
        </message>
        <message>
            <source>How often a group of flashes begins, with a dark pause before it.</source>
            <translation>Wie oft eine Gruppe von Blitzen beginnt, mit einer dunklen Pause davor.</translation>
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
        <message>
            <source>Between which voltages the curves of most boards run at each time, around those of the nominal board.</source>
            <translation>Zwischen welchen Spannungen die Kurven der meisten Platinen zu jedem Zeitpunkt verlaufen, um die der Platine mit Nennwerten herum.</translation>
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
        <message>
            <source>What to join, step by step. The space bar ticks a step off; a step that has changed loses its tick.</source>
            <translation>Was zu verbinden ist, Schritt für Schritt. Die Leertaste hakt einen Schritt ab; ein geänderter Schritt verliert seinen Haken.</translation>
        </message>
        <message>
            <source>What to fetch before building: how many of each part, and how it is marked.</source>
            <translation>Was vor dem Aufbau bereitzulegen ist: wie viele von jedem Bauteil und mit welchem Aufdruck.</translation>
        </message>
        <message>
            <source>Puts steps and parts on the clipboard as text.</source>
            <translation>Legt Schritte und Bauteile als Text in die Zwischenablage.</translation>
        </message>
        <message>
            <source>Prints steps and parts on paper, to take to the bench.</source>
            <translation>Druckt Schritte und Bauteile auf Papier, zum Mitnehmen an die Werkbank.</translation>
        </message>
        <message>
            <source>Writes steps and parts to a file, as they would be printed.</source>
            <translation>Schreibt Schritte und Bauteile in eine Datei, wie sie gedruckt würden.</translation>
        </message>
        <message>
            <source>Writes the parts list as a table, such as for an order.</source>
            <translation>Schreibt die Bauteilliste als Tabelle, etwa für eine Bestellung.</translation>
        </message>
        <message>
            <source>Whose values stand in steps and parts. The wiring is the same in both sets.</source>
            <translation>Wessen Werte in Schritten und Bauteilen stehen. Die Verdrahtung ist in beiden Sätzen dieselbe.</translation>
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
        <message>
            <source>What the uncertainty of each part's value adds to that of the predicted figure.</source>
            <translation>Was die Unsicherheit jedes Bauteilwerts zu der der vorhergesagten Größe beiträgt.</translation>
        </message>
        <message>
            <source>What each source of error adds to the uncertainty of the measured figure.</source>
            <translation>Was jede Fehlerquelle zur Unsicherheit der gemessenen Größe beiträgt.</translation>
        </message>
        <message>
            <source>The figure whose uncertainty is taken apart: what each part adds to it.</source>
            <translation>Die Größe, deren Unsicherheit aufgeteilt wird: was jedes Bauteil zu ihr beiträgt.</translation>
        </message>
        <message>
            <source>By what the figure is predicted: the simulated board, or the formula of the textbook, which leaves out the losses of a real one.</source>
            <translation>Wonach die Größe vorhergesagt wird: nach der simulierten Platine oder nach der Lehrbuchformel, die die Verluste einer wirklichen auslässt.</translation>
        </message>
        <message>
            <source>Budget of the uncertainty</source>
            <translation>Unsicherheitsbudget</translation>
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
        <message>
            <source>With what it is measured. An instrument loads the circuit by its own resistance, which changes some readings.</source>
            <translation>Womit gemessen wird. Ein Messgerät belastet die Schaltung mit seinem eigenen Widerstand, was manche Ablesungen verändert.</translation>
        </message>
        <message>
            <source>What the instrument shows at each place of a sound board, against 0 V, with the instrument's own load in the simulation.</source>
            <translation>Was das Messgerät an jedem Messpunkt einer fehlerfreien Platine zeigt, gegen 0 V, mit der Belastung durch das Messgerät in der Simulation.</translation>
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
        <message>
            <source>Circuits that meet the wish, each simulated, the best first. The chosen one is drawn below; Enter makes it.</source>
            <translation>Schaltungen, die den Wunsch erfüllen, jede simuliert, die beste zuerst. Die gewählte ist darunter gezeichnet; die Eingabetaste erstellt sie.</translation>
        </message>
        <message>
            <source>Changes the wish to the nearest one that can be met.</source>
            <translation>Ändert den Wunsch in den nächstliegenden, der erfüllbar ist.</translation>
        </message>
        <message>
            <source>Parts of the chosen proposal</source>
            <translation>Bauteile des gewählten Vorschlags</translation>
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
        <message>
            <source>Output, timing capacitor and lamp currents over time. Click or use the arrow keys to set the moment line, Ctrl with them goes to the next switching; + and - or the wheel zoom, F fits the whole run.</source>
            <translation>Ausgang, zeitbestimmender Kondensator und Lampenströme über der Zeit. Ein Klick oder die Pfeiltasten setzen die Zeitmarke, mit Ctrl gehen sie zur nächsten Umschaltung; + und - oder das Mausrad zoomen, F passt den ganzen Lauf ein.</translation>
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
        <message>
            <source>Resistor, variable resistor or capacitor: it says in which unit the value is.</source>
            <translation>Widerstand, Potentiometer oder Kondensator: Danach richtet sich, in welcher Einheit der Wert steht.</translation>
        </message>
        <message>
            <source>The own stock: kind, value with unit, tolerance, rating and quantity of each part. Typing into a cell changes it; Delete takes the row away. It is kept at once.</source>
            <translation>Der eigene Bestand: Art, Wert mit Einheit, Toleranz, Belastbarkeit und Anzahl jedes Bauteils. Eine Eingabe in eine Zelle ändert sie; Entf nimmt die Zeile weg. Alles wird sofort gespeichert.</translation>
        </message>
        <message>
            <source>Adds a row of the kind of the chosen one, ready for its value.</source>
            <translation>Fügt eine Zeile von der Art der gewählten hinzu, bereit für ihren Wert.</translation>
        </message>
        <message>
            <source>Takes the chosen rows out of the drawer.</source>
            <translation>Nimmt die gewählten Zeilen aus der Schublade.</translation>
        </message>
        <message>
            <source>Takes back the last change of the drawer. Changes of the circuit are apart from it.</source>
            <translation>Macht die letzte Änderung der Schublade rückgängig. Änderungen der Schaltung sind davon unabhängig.</translation>
        </message>
        <message>
            <source>Does the change again that was taken back last.</source>
            <translation>Wiederholt die Änderung, die zuletzt rückgängig gemacht wurde.</translation>
        </message>
        <message>
            <source>Adds the parts of a table (.csv) to the drawer.</source>
            <translation>Fügt die Bauteile einer Tabelle (.csv) zur Schublade hinzu.</translation>
        </message>
        <message>
            <source>Writes the drawer as a table (.csv), which can be imported elsewhere.</source>
            <translation>Schreibt die Schublade als Tabelle (.csv), die sich anderswo importieren lässt.</translation>
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
        <message>
            <source>Each lamp as a viewer sees it: rate, length of the flash, brightness, and uses that have rules about the rate.</source>
            <translation>Jede Lampe, wie ein Betrachter sie sieht: Rate, Länge des Blitzes, Helligkeit und Anwendungen mit Vorschriften zur Rate.</translation>
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
        <message>
            <source>The chosen figure over all boards: mean, scatter, shares, and the worst case within all tolerances.</source>
            <translation>Die gewählte Größe über alle Platinen: Mittel, Streuung, Anteile und der ungünstigste Fall innerhalb aller Toleranzen.</translation>
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
        <message>
            <source>Something in the circuit that is wrong, doubtful or worth knowing, and what to do about it. Return shows the place on the Hook-up, the space bar the source of the rule.</source>
            <translation>Etwas in der Schaltung, das falsch, zweifelhaft oder wissenswert ist, und was dagegen zu tun ist. Die Eingabetaste zeigt die Stelle in der Verdrahtung, die Leertaste die Quelle der Regel.</translation>
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
        <message>
            <source>Joined, Set B always has the value of Set A; parted, it has a value of its own, which its slider changes.</source>
            <translation>Verbunden hat Satz B immer den Wert von Satz A; getrennt hat er einen eigenen Wert, den sein Schieber ändert.</translation>
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
        <message>
            <source>The circuit as a drawing. Arrow keys choose a part and Ctrl with them moves it; F2 opens its values, J joins two pins, A adds a part. With the mouse, drag from pin to pin to draw a wire.</source>
            <translation>Die Schaltung als Zeichnung. Pfeiltasten wählen ein Bauteil, mit Ctrl verschieben sie es; F2 öffnet seine Werte, J verbindet zwei Anschlüsse, A fügt ein Bauteil hinzu. Mit der Maus wird eine Leitung von Anschluss zu Anschluss gezogen.</translation>
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
        <message>
            <source>How many lines stand before the table, such as notes of the instrument. They are not read.</source>
            <translation>Wie viele Zeilen vor der Tabelle stehen, etwa Notizen des Messgeräts. Sie werden nicht gelesen.</translation>
        </message>
        <message>
            <source>Time between two rows, above 0, such as 1 ms: for files that have no column of times.</source>
            <translation>Zeit zwischen zwei Zeilen, über 0, etwa 1 ms: für Dateien ohne Zeitspalte.</translation>
        </message>
        <message>
            <source>The sign between two numbers of a line. It must not be the decimal mark as well.</source>
            <translation>Das Zeichen zwischen zwei Zahlen einer Zeile. Es darf nicht zugleich das Dezimalzeichen sein.</translation>
        </message>
        <message>
            <source>Whether numbers are written 4.7 or 4,7.</source>
            <translation>Ob Zahlen als 4.7 oder als 4,7 geschrieben sind.</translation>
        </message>
        <message>
            <source>How many lines between notes and numbers name the columns or their units.</source>
            <translation>Wie viele Zeilen zwischen Notizen und Zahlen die Spalten oder ihre Einheiten benennen.</translation>
        </message>
        <message>
            <source>The column that holds the time, or none: rows are then evenly apart by a constant step.</source>
            <translation>Die Spalte mit der Zeit oder keine: Dann liegen die Zeilen gleichmäßig um eine feste Schrittweite auseinander.</translation>
        </message>
        <message>
            <source>Unit that the times of that column are in.</source>
            <translation>Einheit der Zeiten in dieser Spalte.</translation>
        </message>
        <message>
            <source>The column that holds this voltage. A record has one or two of them.</source>
            <translation>Die Spalte mit dieser Spannung. Eine Aufzeichnung hat eine oder zwei davon.</translation>
        </message>
        <message>
            <source>Unit that the voltages of that column are in.</source>
            <translation>Einheit der Spannungen in dieser Spalte.</translation>
        </message>
        <message>
            <source>Where it was measured: at the output, across the timing capacitor, or elsewhere. What the record says of the blinker hangs on it.</source>
            <translation>Wo gemessen wurde: am Ausgang, am zeitbestimmenden Kondensator oder anderswo. Davon hängt ab, was die Aufzeichnung über den Blinker aussagt.</translation>
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
        <message>
            <source>Each figure from all measurements of it together, with its standard uncertainty, beside what the simulation gives and the difference.</source>
            <translation>Jede Größe aus allen ihren Messungen zusammen, mit ihrer Standardunsicherheit, neben dem Ergebnis der Simulation und der Differenz.</translation>
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
        <message>
            <source>All measurements of the circuit. The space bar takes one into use or leaves it out, F2 edits a cell, Enter opens its form, Delete takes it away.</source>
            <translation>Alle Messungen der Schaltung. Die Leertaste nimmt eine in Gebrauch oder lässt sie aus, F2 bearbeitet eine Zelle, die Eingabetaste öffnet das Formular, Entf löscht die Messung.</translation>
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
        <message>
            <source>A name for the measurement in lists and on the lab sheet.</source>
            <translation>Ein Name der Messung für Listen und Laborblatt.</translation>
        </message>
        <message>
            <source>What the meter was held to: supply voltage, the output while high or low, the current of a lamp, or a part by itself.</source>
            <translation>Woran das Messgerät gehalten wurde: Versorgungsspannung, Ausgang bei High oder Low, Strom einer Lampe oder ein Bauteil für sich allein.</translation>
        </message>
        <message>
            <source>The part at which it was measured.</source>
            <translation>Das Bauteil, an dem gemessen wurde.</translation>
        </message>
        <message>
            <source>What the meter shows, with all its digits, such as 5.930 V: the last one counts for the uncertainty.</source>
            <translation>Was das Messgerät zeigt, mit allen Stellen, etwa 5,930 V: Die letzte zählt für die Unsicherheit.</translation>
        </message>
        <message>
            <source>First part of the accuracy in the meter's leaflet: the limit of error, in per cent of the reading.</source>
            <translation>Erster Teil der Genauigkeit aus der Anleitung des Messgeräts: die Fehlergrenze in Prozent vom Messwert.</translation>
        </message>
        <message>
            <source>Second part of the accuracy in the meter's leaflet: the limit of error, in steps of the last digit.</source>
            <translation>Zweiter Teil der Genauigkeit aus der Anleitung des Messgeräts: die Fehlergrenze in Schritten der letzten Stelle.</translation>
        </message>
        <message>
            <source>One standard deviation of the reading, with its unit, 0 or more. It follows from the accuracy unless one is typed.</source>
            <translation>Eine Standardabweichung der Ablesung, mit Einheit, 0 oder mehr. Sie folgt aus der Genauigkeit, wenn keine eingegeben wird.</translation>
        </message>
        <message>
            <source>Value and its uncertainty</source>
            <translation>Wert und seine Unsicherheit</translation>
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
        <message>
            <source>A net or a pin, such as U1:7: the pin of this row is joined to it. A new name makes a new net, nothing frees the pin.</source>
            <translation>Ein Netz oder ein Anschluss, etwa U1:7: Der Anschluss dieser Zeile wird damit verbunden. Ein neuer Name ergibt ein neues Netz, ein leeres Feld gibt den Anschluss frei.</translation>
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
        <message>
            <source>Each part with a tolerance: its share of the scatter, and by how much the figure changes with one per cent of its value.</source>
            <translation>Jedes Bauteil mit einer Toleranz: sein Anteil an der Streuung und um wie viel sich die Größe mit einem Prozent seines Werts ändert.</translation>
        </message>
        <message>
            <source>Parts from one reel are off their values by the same share. Then they do not make up for each other, and the spread changes.</source>
            <translation>Bauteile von einer Rolle weichen alle um denselben Anteil von ihren Werten ab. Dann gleichen sie sich nicht gegenseitig aus, und die Streuung ändert sich.</translation>
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
        <message>
            <source>Shows only the pins in whose row each typed word stands, such as R1 or discharge. Enter goes on to the table.</source>
            <translation>Zeigt nur die Anschlüsse, in deren Zeile jedes eingegebene Wort steht, etwa R1 oder Discharge. Die Eingabetaste geht weiter zur Tabelle.</translation>
        </message>
        <message>
            <source>By which column the rows are sorted. A click on the head of a column does the same.</source>
            <translation>Nach welcher Spalte die Zeilen geordnet sind. Ein Klick auf den Spaltenkopf bewirkt dasselbe.</translation>
        </message>
        <message>
            <source>Every pin of every part. Type into the column Net: the name of a net, or of a pin to join to; an empty cell frees the pin. Voltages are those at the moment line.</source>
            <translation>Jeder Anschluss jedes Bauteils. In die Spalte „Netz“ den Namen eines Netzes eingeben oder den Anschluss, mit dem verbunden werden soll; eine leere Zelle gibt den Anschluss frei. Die Spannungen gelten an der Zeitmarke.</translation>
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
        <message>
            <source>What the simulated circuit does, beside the formula of the textbook, what it is compared with, and what was measured. Ctrl+C copies the table.</source>
            <translation>Was die simulierte Schaltung tut, neben der Lehrbuchformel, dem, womit sie verglichen wird, und dem Gemessenen. Ctrl+C kopiert die Tabelle.</translation>
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
        <message>
            <source>What kind of blinker is to be made. The questions beside the list and the drawing follow it; Enter makes it.</source>
            <translation>Welche Art von Blinker entstehen soll. Die Fragen neben der Liste und die Zeichnung folgen ihr; die Eingabetaste erstellt ihn.</translation>
        </message>
        <message>
            <source>Opens the circuit that is drawn above as a new one, in place of what is open.</source>
            <translation>Öffnet die oben gezeichnete Schaltung als neue, anstelle dessen, was geöffnet ist.</translation>
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
        <message>
            <source>What the record says of the blinker, each figure with its standard uncertainty.</source>
            <translation>Was die Aufzeichnung über den Blinker aussagt, jede Größe mit ihrer Standardunsicherheit.</translation>
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
        <message>
            <source>The voltages as they were read, with the levels and switchings that were found in them. The wheel or + and - zoom, the arrows pan, Home shows all.</source>
            <translation>Die Spannungen, wie sie gelesen wurden, mit den darin gefundenen Pegeln und Umschaltungen. Das Mausrad oder + und - zoomen, die Pfeiltasten verschieben, Pos1 zeigt alles.</translation>
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
        <message>
            <source>The beginning of the file as it is split into columns, and what each column is taken for.</source>
            <translation>Der Anfang der Datei, wie sie in Spalten geteilt wird, und was in jeder Spalte gelesen wird.</translation>
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
        <message>
            <source>The rate that the real board is to have, between 0.0001 Hz and 1 MHz, in the unit beside it.</source>
            <translation>Die Rate, die die wirkliche Platine haben soll, zwischen 0,0001 Hz und 1 MHz, in der Einheit daneben.</translation>
        </message>
        <message>
            <source>Unit of the rate beside it. The rate stays the same; its number is worked out anew.</source>
            <translation>Einheit der Rate daneben. Die Rate bleibt dieselbe; ihre Zahl wird neu berechnet.</translation>
        </message>
        <message>
            <source>The part that gets another value. All others keep their fitted ones.</source>
            <translation>Das Bauteil, das einen anderen Wert bekommt. Alle anderen behalten ihre angepassten.</translation>
        </message>
        <message>
            <source>A preferred series, E24 with 24 values in a decade, or the stock in the drawer. Of these the value is taken that comes nearest.</source>
            <translation>Eine Vorzugsreihe, E24 mit 24 Werten je Dekade, oder der Bestand in der Schublade. Daraus wird der Wert genommen, der am nächsten kommt.</translation>
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
        <message>
            <source>Which set of values the question is about. It stands here only while the sets differ.</source>
            <translation>Für welchen Wertesatz die Frage gilt. Die Auswahl steht hier nur, während sich die Sätze unterscheiden.</translation>
        </message>
        <message>
            <source>Stops the computation. The next change of the circuit or of a choice asks anew.</source>
            <translation>Bricht die Berechnung ab. Die nächste Änderung der Schaltung oder einer Auswahl fragt neu.</translation>
        </message>
        <message>
            <source>Help</source>
            <translation>Hilfe</translation>
        </message>
        <message>
            <source>The page of the help about this window.</source>
            <translation>Die Seite der Hilfe zu diesem Fenster.</translation>
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
        <message>
            <source>Ties this value to another one: it takes that value, and from then on both change together.</source>
            <translation>Koppelt diesen Wert mit einem anderen: Er übernimmt dessen Wert, und von da an ändern sich beide gemeinsam.</translation>
        </message>
        <message>
            <source>Ties to %1: this value takes that one, and from then on both change together.</source>
            <translation>Koppelt mit %1: Dieser Wert übernimmt jenen, und von da an ändern sich beide gemeinsam.</translation>
        </message>
        <message>
            <source>Frees this value of its tie: it stays as it is, and changes alone from then on.</source>
            <translation>Löst die Kopplung dieses Werts: Er bleibt, wie er ist, und ändert sich von da an allein.</translation>
        </message>
        <message>
            <source>Takes away what Set B has of its own here: it follows Set A from then on.</source>
            <translation>Nimmt weg, was Satz B hier Eigenes hat: Der Wert folgt von da an Satz A.</translation>
        </message>
        <message>
            <source>Gives Set B a value of its own here, at first the same as in Set A.</source>
            <translation>Gibt Satz B hier einen eigenen Wert, zuerst denselben wie in Satz A.</translation>
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
        <message>
            <source>How many boards have which figure, as bars; the line says how many per cent lie up to there. Marks show the nominal board and the worst case.</source>
            <translation>Wie viele Platinen welchen Wert haben, als Balken; die Linie sagt, wie viele Prozent bis dahin liegen. Marken zeigen die Platine mit Nennwerten und den ungünstigsten Fall.</translation>
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
        <message>
            <source>How the chosen figure is distributed over the boards, as bars and as figures.</source>
            <translation>Wie die gewählte Größe über die Platinen verteilt ist, als Balken und als Zahlenwerte.</translation>
        </message>
        <message>
            <source>Which part does how much of the scatter, and which parts come from one reel.</source>
            <translation>Welches Bauteil wie viel zur Streuung beiträgt und welche Bauteile von einer Rolle sind.</translation>
        </message>
        <message>
            <source>How far the curves of the boards lie apart at each time.</source>
            <translation>Wie weit die Kurven der Platinen zu jedem Zeitpunkt auseinanderliegen.</translation>
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
        <message>
            <source>A name for the measurement in lists and on the lab sheet.</source>
            <translation>Ein Name der Messung für Listen und Laborblatt.</translation>
        </message>
        <message>
            <source>How many cycles the time was taken for. The press that starts the watch counts as 0. More flashes make the rate surer.</source>
            <translation>Für wie viele Perioden die Zeit genommen wurde. Der Druck, der die Uhr startet, zählt als 0. Mehr Blitze machen die Rate sicherer.</translation>
        </message>
        <message>
            <source>Time for all the flashes together, in seconds or with a unit, above 0.</source>
            <translation>Zeit für alle Blitze zusammen, in Sekunden oder mit Einheit, über 0.</translation>
        </message>
        <message>
            <source>How far a press of the button may be off, as one standard deviation. It sets the uncertainty of the time.</source>
            <translation>Wie weit ein Tastendruck danebenliegen kann, als eine Standardabweichung. Daraus folgt die Unsicherheit der Zeit.</translation>
        </message>
        <message>
            <source>Count and time</source>
            <translation>Zählung und Zeit</translation>
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
        <message>
            <source>Faults that would explain what was seen and measured, with their share of the likelihood. The chosen one is shown on the Hook-up; what to look at is said below.</source>
            <translation>Fehler, die das Gesehene und Gemessene erklären würden, mit ihrem Anteil an der Wahrscheinlichkeit. Der gewählte wird in der Verdrahtung gezeigt; darunter steht, was zu prüfen ist.</translation>
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
        <message>
            <source>Tick what is seen on the board. Faults that would look otherwise get less likely; what is not ticked says nothing.</source>
            <translation>Ankreuzen, was an der Platine zu sehen ist. Fehler, die anders aussähen, werden weniger wahrscheinlich; was nicht angekreuzt ist, sagt nichts aus.</translation>
        </message>
        <message>
            <source>How many flashes were counted in a minute, above 0; 10 flashes in 4 s are 150. Left empty, the rate counts for nothing.</source>
            <translation>Wie viele Blitze in einer Minute gezählt wurden, über 0; 10 Blitze in 4 s sind 150. Bleibt das Feld leer, zählt die Rate nicht.</translation>
        </message>
        <message>
            <source>What a meter shows at each place of a sound board: mean, least and most. Type what yours shows beside it, such as 5.9 or 12 mA; an empty cell counts for nothing.</source>
            <translation>Was ein Messgerät an jedem Messpunkt einer fehlerfreien Platine zeigt: Mittel, Minimum und Maximum. Daneben eingeben, was das eigene zeigt, etwa 5,9 oder 12 mA; eine leere Zelle zählt nicht.</translation>
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
        <message>
            <source>Press it, or the space bar, at each flash. The taps give the rate, and their scatter its uncertainty.</source>
            <translation>Bei jedem Blitz hier oder die Leertaste drücken. Die Anschläge ergeben die Rate, ihre Streuung die Unsicherheit.</translation>
        </message>
        <message>
            <source>Forgets the taps, so that counting begins anew.</source>
            <translation>Vergisst die Anschläge, sodass die Zählung neu beginnt.</translation>
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
        <message>
            <source>The figure over the value. The upright line stands at the present value: drag it, or move it by the arrow keys, Page Up and Page Down, Home and End; the circuit follows.</source>
            <translation>Die Größe über dem Wert. Die senkrechte Linie steht beim jetzigen Wert: Sie lässt sich ziehen oder mit den Pfeiltasten, Bild auf, Bild ab, Pos1 und Ende bewegen; die Schaltung folgt.</translation>
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
        <message>
            <source>%1 The arrow keys move it finely, Page Up and Page Down coarsely; the curves follow at once.</source>
            <translation>%1 Die Pfeiltasten ändern den Wert fein, Bild auf und Bild ab grob; die Kurven folgen sofort.</translation>
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
        <message>
            <source>The values that the timing hangs on, as stated, as known beforehand, and as they explain the measurements best.</source>
            <translation>Die Werte, von denen die Zeiten abhängen: wie angegeben, wie vorab bekannt und wie sie die Messungen am besten erklären.</translation>
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
        <message>
            <source>From the figure of the textbook down to that of the board: each row is one cause and what it adds. What was measured stands last.</source>
            <translation>Vom Wert des Lehrbuchs bis hinunter zu dem der Platine: Jede Zeile ist eine Ursache und ihr Beitrag. Zuletzt steht, was gemessen wurde.</translation>
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
        <message>
            <source>Opens the list of the parts at hand, to add to it or to see what is left.</source>
            <translation>Öffnet die Liste der vorhandenen Bauteile, um sie zu ergänzen oder zu sehen, was übrig ist.</translation>
        </message>
        <message>
            <source>How often the lamp is to flash, above 0, in the unit beside it.</source>
            <translation>Wie oft die Lampe blitzen soll, über 0, in der Einheit daneben.</translation>
        </message>
        <message>
            <source>The rate with the variable resistor at its other end, in the same unit.</source>
            <translation>Die Rate mit dem Potentiometer am anderen Ende, in derselben Einheit.</translation>
        </message>
        <message>
            <source>How long the lamp is to be lit: a share of the cycle in per cent, or a time, as the unit beside it says.</source>
            <translation>Wie lange die Lampe leuchten soll: als Anteil der Periode in Prozent oder als Zeit, nach der Einheit daneben.</translation>
        </message>
        <message>
            <source>Current of a lit lamp, such as 10 mA. The resistor in series with it follows from this.</source>
            <translation>Strom einer leuchtenden Lampe, etwa 10 mA. Ihr Vorwiderstand ergibt sich daraus.</translation>
        </message>
        <message>
            <source>Voltage of the supply, such as 9 V. It must be one that the chosen timer bears.</source>
            <translation>Spannung der Versorgung, etwa 9 V. Der gewählte Timer muss sie vertragen.</translation>
        </message>
        <message>
            <source>How long each of the two lamps is to stay lit, such as 0.5 s. Left empty, any time will do.</source>
            <translation>Wie lange jede der beiden Lampen leuchten soll, etwa 0,5 s. Bleibt das Feld leer, ist jede Zeit recht.</translation>
        </message>
        <message>
            <source>Luminous intensity of the lamp as its maker states it, in millicandela; of both lamps at one current.</source>
            <translation>Lichtstärke der Lampe nach Angabe des Herstellers, in Millicandela; bei beiden Lampen für denselben Strom.</translation>
        </message>
        <message>
            <source>Luminous intensity of the second lamp as its maker states it, in millicandela; of both lamps at one current.</source>
            <translation>Lichtstärke der zweiten Lampe nach Angabe des Herstellers, in Millicandela; bei beiden Lampen für denselben Strom.</translation>
        </message>
        <message>
            <source>Unit of the rate before it. The number that was typed stays.</source>
            <translation>Einheit der Rate davor. Die eingegebene Zahl bleibt.</translation>
        </message>
        <message>
            <source>One fixed rate, or a range that a variable resistor in series with R2 covers.</source>
            <translation>Eine feste Rate oder ein Bereich, den ein Potentiometer in Reihe mit R2 abdeckt.</translation>
        </message>
        <message>
            <source>Whether the lit time is a share of each cycle or a time in seconds.</source>
            <translation>Ob die Leuchtdauer ein Anteil jeder Periode ist oder eine Zeit in Sekunden.</translation>
        </message>
        <message>
            <source>One lamp that goes on and off, or two that are lit by turns.</source>
            <translation>Eine Lampe, die an- und ausgeht, oder zwei, die im Wechsel leuchten.</translation>
        </message>
        <message>
            <source>A lamp to ground is lit while the output is high, one to the supply while it is low. The best of both can be asked for.</source>
            <translation>Eine Lampe nach Masse leuchtet, während der Ausgang auf High ist, eine nach Plus, während er auf Low ist. Auch die bessere von beiden Möglichkeiten kann verlangt werden.</translation>
        </message>
        <message>
            <source>A bipolar timer drives more current; a CMOS timer takes less itself and loses less voltage at its output.</source>
            <translation>Ein bipolarer Timer liefert mehr Strom; ein CMOS-Timer nimmt selbst weniger auf und verliert weniger Spannung an seinem Ausgang.</translation>
        </message>
        <message>
            <source>Whether the two lamps get the same current, or currents that make them equally bright.</source>
            <translation>Ob die zwei Lampen denselben Strom bekommen oder Ströme, bei denen sie gleich hell sind.</translation>
        </message>
        <message>
            <source>Preferred series are what shops sell; the drawer is the own stock, with its quantities.</source>
            <translation>Vorzugsreihen sind das, was der Handel führt; die Schublade ist der eigene Bestand mit seinen Stückzahlen.</translation>
        </message>
        <message>
            <source>Colour of the lamp. It sets the forward voltage, and with it the resistor.</source>
            <translation>Farbe der Lampe. Sie bestimmt die Durchlassspannung und damit den Widerstand.</translation>
        </message>
        <message>
            <source>Colour of the second lamp. It sets the forward voltage, and with it the resistor.</source>
            <translation>Farbe der zweiten Lampe. Sie bestimmt die Durchlassspannung und damit den Widerstand.</translation>
        </message>
        <message>
            <source>Preferred series of the values to choose from: E24 has 24 values in a decade, E6 has 6. More values come nearer to the wish.</source>
            <translation>Vorzugsreihe der Werte zur Auswahl: E24 hat 24 Werte je Dekade, E6 hat 6. Mehr Werte kommen dem Wunsch näher.</translation>
        </message>
    </context>
    <context>
        <name>blinkwright::wording</name>
        <message>
            <source>there is no such part</source>
            <translation>es gibt kein solches Bauteil</translation>
        </message>
        <message>
            <source>there is no such net</source>
            <translation>es gibt kein solches Netz</translation>
        </message>
        <message>
            <source>a pin is written REF:PIN, got %1</source>
            <translation>ein Anschluss wird als REF:PIN geschrieben, hier steht %1</translation>
        </message>
        <message>
            <source>there is no part "%1"</source>
            <translation>es gibt kein Bauteil „%1“</translation>
        </message>
        <message>
            <source>%1 has no pin "%2"; a %3 has %4</source>
            <translation>%1 hat keinen Anschluss „%2“; die Bauteilart „%3“ hat %4</translation>
        </message>
        <message>
            <source>must be letters, then digits, such as R1 (at most 32 characters), got %1</source>
            <translation>muss aus Buchstaben und dann Ziffern bestehen, etwa R1 (höchstens 32 Zeichen), ist aber %1</translation>
        </message>
        <message>
            <source>%1 is in use already</source>
            <translation>%1 ist schon vergeben</translation>
        </message>
        <message>
            <source>must not be empty</source>
            <translation>darf nicht leer sein</translation>
        </message>
        <message>
            <source>"%1" is the name of another net already</source>
            <translation>„%1“ heißt schon ein anderes Netz</translation>
        </message>
        <message>
            <source>%1 has no such pin</source>
            <translation>%1 hat keinen solchen Anschluss</translation>
        </message>
        <message>
            <source>%1 is in this net already</source>
            <translation>%1 ist schon in diesem Netz</translation>
        </message>
        <message>
            <source>%1 is in the net "%2" already</source>
            <translation>%1 ist schon im Netz „%2“</translation>
        </message>
        <message>
            <source>"%1" is no number that could be tied</source>
            <translation>„%1“ ist keine Zahl, die gekoppelt werden kann</translation>
        </message>
        <message>
            <source>"%1" has another unit than the values before it</source>
            <translation>„%1“ hat eine andere Einheit als die Werte davor</translation>
        </message>
        <message>
            <source>"%1" is tied already</source>
            <translation>„%1“ ist schon gekoppelt</translation>
        </message>
        <message>
            <source>"%1" is on a reel already</source>
            <translation>„%1“ ist schon von einer Rolle</translation>
        </message>
        <message>
            <source>more than %1 parts are not supported</source>
            <translation>mehr als %1 Bauteile sind nicht möglich</translation>
        </message>
        <message>
            <source>parts with more than %1 pins together are not supported</source>
            <translation>Bauteile mit zusammen mehr als %1 Anschlüssen sind nicht möglich</translation>
        </message>
        <message>
            <source>missing: a %1 needs it</source>
            <translation>fehlt: Die Bauteilart „%1“ braucht diese Angabe</translation>
        </message>
        <message>
            <source>the id of the part is in use</source>
            <translation>die Kennung des Bauteils ist vergeben</translation>
        </message>
        <message>
            <source>Add %1</source>
            <translation>%1 hinzufügen</translation>
        </message>
        <message>
            <source>the id of the net is in use</source>
            <translation>die Kennung des Netzes ist vergeben</translation>
        </message>
        <message>
            <source>%1 is in a net already</source>
            <translation>%1 ist schon in einem Netz</translation>
        </message>
        <message>
            <source>a place must be finite</source>
            <translation>ein Ort muss endlich sein</translation>
        </message>
        <message>
            <source>a turn must be 0, 90, 180 or 270, got %1</source>
            <translation>eine Drehung muss 0, 90, 180 oder 270 sein, ist aber %1</translation>
        </message>
        <message>
            <source>there is nothing in it</source>
            <translation>enthält nichts</translation>
        </message>
        <message>
            <source>a %1 needs it</source>
            <translation>die Bauteilart „%1“ braucht diese Angabe</translation>
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
            <source>supply</source>
            <translation>Versorgung</translation>
        </message>
        <message>
            <source>first end</source>
            <translation>erstes Ende</translation>
        </message>
        <message>
            <source>second end</source>
            <translation>zweites Ende</translation>
        </message>
        <message>
            <source>wiper</source>
            <translation>Schleifer</translation>
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
            <source>first contact</source>
            <translation>erster Kontakt</translation>
        </message>
        <message>
            <source>second contact</source>
            <translation>zweiter Kontakt</translation>
        </message>
        <message>
            <source>voltage</source>
            <translation>Spannung</translation>
        </message>
        <message>
            <source>inner resistance</source>
            <translation>Innenwiderstand</translation>
        </message>
        <message>
            <source>capacity</source>
            <translation>Kapazität</translation>
        </message>
        <message>
            <source>end voltage</source>
            <translation>Entladeschlussspannung</translation>
        </message>
        <message>
            <source>family</source>
            <translation>Bauart</translation>
        </message>
        <message>
            <source>device parameters</source>
            <translation>Parameter des Timers</translation>
        </message>
        <message>
            <source>resistance</source>
            <translation>Widerstand</translation>
        </message>
        <message>
            <source>tolerance</source>
            <translation>Toleranz</translation>
        </message>
        <message>
            <source>rated power</source>
            <translation>Nennleistung</translation>
        </message>
        <message>
            <source>setting</source>
            <translation>Einstellung</translation>
        </message>
        <message>
            <source>capacitance</source>
            <translation>Kapazität</translation>
        </message>
        <message>
            <source>series resistance</source>
            <translation>Serienwiderstand</translation>
        </message>
        <message>
            <source>leakage resistance</source>
            <translation>Leckwiderstand</translation>
        </message>
        <message>
            <source>rated voltage</source>
            <translation>Nennspannung</translation>
        </message>
        <message>
            <source>polarised</source>
            <translation>gepolt</translation>
        </message>
        <message>
            <source>initial voltage</source>
            <translation>Anfangsspannung</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>forward voltage</source>
            <translation>Durchlassspannung</translation>
        </message>
        <message>
            <source>test current</source>
            <translation>Prüfstrom</translation>
        </message>
        <message>
            <source>ideality</source>
            <translation>Idealitätsfaktor</translation>
        </message>
        <message>
            <source>rated current</source>
            <translation>Nennstrom</translation>
        </message>
        <message>
            <source>pulse current</source>
            <translation>Impulsstrom</translation>
        </message>
        <message>
            <source>reverse limit</source>
            <translation>Grenze der Sperrspannung</translation>
        </message>
        <message>
            <source>luminous intensity</source>
            <translation>Lichtstärke</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>geschlossen</translation>
        </message>
        <message>
            <source>presses</source>
            <translation>Betätigungen</translation>
        </message>
        <message>
            <source>timer</source>
            <translation>Timer</translation>
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
            <source>lamp</source>
            <translation>Lampe</translation>
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
            <source>must be a finite number, got %1</source>
            <translation>muss eine endliche Zahl sein, ist aber %1</translation>
        </message>
        <message>
            <source>must be between %1 and %2, got %3</source>
            <translation>muss zwischen %1 und %2 liegen, ist aber %3</translation>
        </message>
        <message>
            <source>must be at most %1, got %2</source>
            <translation>darf höchstens %1 sein, ist aber %2</translation>
        </message>
        <message>
            <source>must be greater than %1, got %2</source>
            <translation>muss größer als %1 sein, ist aber %2</translation>
        </message>
        <message>
            <source>must be at least %1, got %2</source>
            <translation>muss mindestens %1 sein, ist aber %2</translation>
        </message>
        <message>
            <source>must be a finite number</source>
            <translation>muss eine endliche Zahl sein</translation>
        </message>
        <message>
            <source>must be a number of at least 0</source>
            <translation>muss eine Zahl von mindestens 0 sein</translation>
        </message>
        <message>
            <source>must be a number greater than 0</source>
            <translation>muss eine Zahl größer als 0 sein</translation>
        </message>
        <message>
            <source>must be a number not below the one before</source>
            <translation>muss eine Zahl sein, die nicht kleiner als die vorige ist</translation>
        </message>
        <message>
            <source>more than %1 samples are not supported</source>
            <translation>mehr als %1 Abtastwerte sind nicht möglich</translation>
        </message>
        <message>
            <source>more than %1 switchings are not supported</source>
            <translation>mehr als %1 Umschaltungen sind nicht möglich</translation>
        </message>
        <message>
            <source>must hold one or two traces</source>
            <translation>muss ein oder zwei Spuren enthalten</translation>
        </message>
        <message>
            <source>must hold one value for each of the times</source>
            <translation>muss zu jedem Zeitpunkt einen Wert enthalten</translation>
        </message>
        <message>
            <source>must be a %1, got %2</source>
            <translation>muss von der Bauteilart „%1“ sein, ist aber %2</translation>
        </message>
        <message>
            <source>%1 has no such number: %2</source>
            <translation>%1 hat keine solche Zahl: %2</translation>
        </message>
        <message>
            <source>must be 1 to %1, got %2</source>
            <translation>muss 1 bis %1 sein, ist aber %2</translation>
        </message>
        <message>
            <source>no part is chosen</source>
            <translation>kein Bauteil ist ausgewählt</translation>
        </message>
        <message>
            <source>Delete %1</source>
            <translation>%1 löschen</translation>
        </message>
        <message>
            <source>Move %1</source>
            <translation>%1 verschieben</translation>
        </message>
        <message>
            <source>Turn %1</source>
            <translation>%1 drehen</translation>
        </message>
        <message>
            <source>Mirror %1</source>
            <translation>%1 spiegeln</translation>
        </message>
        <message>
            <source>there is no part to paste</source>
            <translation>es gibt kein Bauteil zum Einfügen</translation>
        </message>
        <message>
            <source>Paste %1</source>
            <translation>%1 einfügen</translation>
        </message>
        <message>
            <source>there is no part to duplicate</source>
            <translation>es gibt kein Bauteil zum Verdoppeln</translation>
        </message>
        <message>
            <source>Duplicate %1</source>
            <translation>%1 verdoppeln</translation>
        </message>
        <message>
            <source>Set A and Set B hold the same values already</source>
            <translation>Satz A und Satz B haben schon dieselben Werte</translation>
        </message>
        <message>
            <source>%1 in Set B follows Set A already</source>
            <translation>%1 folgt in Satz B schon Satz A</translation>
        </message>
        <message>
            <source>Let %1 in Set B follow Set A</source>
            <translation>%1 in Satz B Satz A folgen lassen</translation>
        </message>
        <message>
            <source>Copy Set A to Set B</source>
            <translation>Satz A nach Satz B kopieren</translation>
        </message>
        <message>
            <source>Copy Set B to Set A</source>
            <translation>Satz B nach Satz A kopieren</translation>
        </message>
        <message>
            <source>Swap Set A and Set B</source>
            <translation>Satz A und Satz B tauschen</translation>
        </message>
        <message>
            <source>a value cannot be tied to itself</source>
            <translation>ein Wert kann nicht an sich selbst gekoppelt werden</translation>
        </message>
        <message>
            <source>%1 is tied to %2 already</source>
            <translation>%1 ist schon an %2 gekoppelt</translation>
        </message>
        <message>
            <source>Tie %1 to %2</source>
            <translation>%1 an %2 koppeln</translation>
        </message>
        <message>
            <source>%1 is not tied to anything</source>
            <translation>%1 ist an nichts gekoppelt</translation>
        </message>
        <message>
            <source>Untie %1</source>
            <translation>Kopplung von %1 lösen</translation>
        </message>
        <message>
            <source>must be at least 0 and less than 1, got %1</source>
            <translation>muss mindestens 0 und kleiner als 1 sein, ist aber %1</translation>
        </message>
        <message>
            <source>must be a number or a list of two numbers</source>
            <translation>muss eine Zahl oder eine Liste von zwei Zahlen sein</translation>
        </message>
        <message>
            <source>must be greater than -1 and at most 0, got %1</source>
            <translation>muss größer als -1 und höchstens 0 sein, ist aber %1</translation>
        </message>
        <message>
            <source>must be a list of [from, to] in seconds</source>
            <translation>muss eine Liste von [von, bis] in Sekunden sein</translation>
        </message>
        <message>
            <source>must end after it begins, got %1 to %2</source>
            <translation>muss enden, nachdem es begonnen hat, ist aber %1 bis %2</translation>
        </message>
        <message>
            <source>must not begin before the press ahead of it ends at %1, got %2</source>
            <translation>darf nicht beginnen, bevor die vorige Betätigung bei %1 endet, ist aber %2</translation>
        </message>
        <message>
            <source>the timer has no such parameter</source>
            <translation>der Timer hat keinen solchen Parameter</translation>
        </message>
        <message>
            <source>must be an object of parameter names and numbers</source>
            <translation>muss ein Objekt aus Parameternamen und Zahlen sein</translation>
        </message>
        <message>
            <source>must be one of %1</source>
            <translation>muss eines von diesen sein: %1</translation>
        </message>
        <message>
            <source>must be one of %1, got %2</source>
            <translation>muss eines von diesen sein: %1; ist aber %2</translation>
        </message>
        <message>
            <source>must be a number</source>
            <translation>muss eine Zahl sein</translation>
        </message>
        <message>
            <source>a %1 has no such value</source>
            <translation>die Bauteilart „%1“ hat keinen solchen Wert</translation>
        </message>
        <message>
            <source>must be a number or null</source>
            <translation>muss eine Zahl oder null sein</translation>
        </message>
        <message>
            <source>must be true or false</source>
            <translation>muss true oder false sein</translation>
        </message>
        <message>
            <source>%1 is in no net</source>
            <translation>%1 ist in keinem Netz</translation>
        </message>
        <message>
            <source>%1 is the only pin of its net</source>
            <translation>%1 ist der einzige Anschluss seines Netzes</translation>
        </message>
        <message>
            <source>%1 cannot be joined to itself</source>
            <translation>%1 kann nicht mit sich selbst verbunden werden</translation>
        </message>
        <message>
            <source>%1 and %2 are joined already, by the net "%3"</source>
            <translation>%1 und %2 sind schon verbunden, durch das Netz „%3“</translation>
        </message>
        <message>
            <source>Join %1 and %2</source>
            <translation>%1 und %2 verbinden</translation>
        </message>
        <message>
            <source>Join %1 to net %2</source>
            <translation>%1 mit Netz %2 verbinden</translation>
        </message>
        <message>
            <source>Put %1 into net %2</source>
            <translation>%1 in Netz %2 legen</translation>
        </message>
        <message>
            <source>Take %1 off net %2</source>
            <translation>%1 von Netz %2 trennen</translation>
        </message>
        <message>
            <source>the wire ends at %1 already</source>
            <translation>die Leitung endet schon an %1</translation>
        </message>
        <message>
            <source>Move the wire from %1 to %2</source>
            <translation>Leitung von %1 nach %2 umlegen</translation>
        </message>
        <message>
            <source>Move the wire from %1 to net %2</source>
            <translation>Leitung von %1 nach Netz %2 umlegen</translation>
        </message>
        <message>
            <source>%1 ohm alone drops %2 V at the test current of %3 A, which leaves nothing of the forward voltage of %4 V</source>
            <translation>an %1 Ohm allein fallen beim Prüfstrom von %3 A %2 V ab, was von der Durchlassspannung von %4 V nichts übrig lässt</translation>
        </message>
        <message>
            <source>no junction of ideality %1 carries %2 A at %3 V</source>
            <translation>kein Übergang mit dem Idealitätsfaktor %1 führt %2 A bei %3 V</translation>
        </message>
        <message>
            <source>There is no timer.</source>
            <translation>Es gibt keinen Timer.</translation>
        </message>
        <message>
            <source>There is no supply.</source>
            <translation>Es gibt keine Versorgung.</translation>
        </message>
        <message>
            <source>%1 has no single period of its own: other timers switch beside it on the same supply.</source>
            <translation>%1 hat keine einheitliche eigene Periode: Andere Timer schalten neben ihm an derselben Versorgung.</translation>
        </message>
        <message>
            <source>The output of %1 stops switching.</source>
            <translation>Der Ausgang von %1 hört auf zu schalten.</translation>
        </message>
        <message>
            <source>The search for the settled state of %1 ended early: %2.</source>
            <translation>Die Suche nach dem eingeschwungenen Zustand von %1 endete vorzeitig: %2.</translation>
        </message>
        <message>
            <source>%1 has no single period of its own: other timers switch it or switch beside it.</source>
            <translation>%1 hat keine einheitliche eigene Periode: Andere Timer schalten ihn oder schalten neben ihm.</translation>
        </message>
        <message>
            <source>The cycles of %1 go on changing: no two of %2 are alike.</source>
            <translation>Die Perioden von %1 ändern sich fortwährend: Von %2 gleichen sich keine zwei.</translation>
        </message>
        <message>
            <source>The settled period of %1 was not finished: %2.</source>
            <translation>Die eingeschwungene Periode von %1 wurde nicht zu Ende gerechnet: %2.</translation>
        </message>
        <message>
            <source>there is no part %1</source>
            <translation>es gibt kein Bauteil %1</translation>
        </message>
        <message>
            <source>a circuit file holds one JSON object, got %1</source>
            <translation>eine Schaltungsdatei enthält ein JSON-Objekt, hier steht %1</translation>
        </message>
        <message>
            <source>must be "blinkwright-circuit", got %1</source>
            <translation>muss "blinkwright-circuit" sein, ist aber %1</translation>
        </message>
        <message>
            <source>this program reads version 1, the file has version %1</source>
            <translation>dieses Programm liest Version 1, die Datei hat Version %1</translation>
        </message>
        <message>
            <source>more than %1 parts are not supported, got %2</source>
            <translation>mehr als %1 Bauteile sind nicht möglich, hier sind es %2</translation>
        </message>
        <message>
            <source>more than %1 nets are not supported</source>
            <translation>mehr als %1 Netze sind nicht möglich</translation>
        </message>
        <message>
            <source>a pin written REF:PIN</source>
            <translation>ein Anschluss in der Form REF:PIN</translation>
        </message>
        <message>
            <source>0, 90, 180 or 270</source>
            <translation>0, 90, 180 oder 270</translation>
        </message>
        <message>
            <source>a value is written REF.KEY, got %1</source>
            <translation>ein Wert wird als REF.SCHLÜSSEL geschrieben, hier steht %1</translation>
        </message>
        <message>
            <source>"power-on" or "settled"</source>
            <translation>"power-on" oder "settled"</translation>
        </message>
        <message>
            <source>a circuit file of more than %1 MiB is not supported</source>
            <translation>eine Schaltungsdatei von mehr als %1 MiB ist nicht möglich</translation>
        </message>
        <message>
            <source>has %1 fields, where there are %2 columns</source>
            <translation>hat %1 Felder bei %2 Spalten</translation>
        </message>
        <message>
            <source>line %1</source>
            <translation>Zeile %1</translation>
        </message>
        <message>
            <source>is one more than the %1 allowed</source>
            <translation>ist eine mehr als die erlaubten %1</translation>
        </message>
        <message>
            <source>there is no such file</source>
            <translation>es gibt keine solche Datei</translation>
        </message>
        <message>
            <source>this is a folder, not a file</source>
            <translation>das ist ein Ordner, keine Datei</translation>
        </message>
        <message>
            <source>cannot be opened for reading</source>
            <translation>kann nicht zum Lesen geöffnet werden</translation>
        </message>
        <message>
            <source>larger than %1 MiB, which is not supported</source>
            <translation>größer als %1 MiB, was nicht möglich ist</translation>
        </message>
        <message>
            <source>cannot be read to its end</source>
            <translation>kann nicht bis zum Ende gelesen werden</translation>
        </message>
        <message>
            <source>given twice</source>
            <translation>zweimal angegeben</translation>
        </message>
        <message>
            <source>the number is too large (%1)</source>
            <translation>die Zahl ist zu groß (%1)</translation>
        </message>
        <message>
            <source>more than %1 values are not supported</source>
            <translation>mehr als %1 Werte sind nicht möglich</translation>
        </message>
        <message>
            <source>the number is too large, got %1</source>
            <translation>die Zahl ist zu groß: %1</translation>
        </message>
        <message>
            <source>nested deeper than %1 levels</source>
            <translation>tiefer als %1 Ebenen verschachtelt</translation>
        </message>
        <message>
            <source>must be %1, got %2</source>
            <translation>muss %1 sein, ist aber %2</translation>
        </message>
        <message>
            <source>the file is empty</source>
            <translation>die Datei ist leer</translation>
        </message>
        <message>
            <source>the text is not UTF-8</source>
            <translation>der Text ist kein UTF-8</translation>
        </message>
        <message>
            <source>this is not JSON</source>
            <translation>das ist kein JSON</translation>
        </message>
        <message>
            <source>must be a whole number</source>
            <translation>muss eine ganze Zahl sein</translation>
        </message>
        <message>
            <source>there is no such part: %1</source>
            <translation>es gibt kein solches Bauteil: %1</translation>
        </message>
        <message>
            <source>must be output, capacitor or other, got %1</source>
            <translation>muss output, capacitor oder other sein, ist aber %1</translation>
        </message>
        <message>
            <source>must be power-on or running, got %1</source>
            <translation>muss power-on oder running sein, ist aber %1</translation>
        </message>
        <message>
            <source>must be rise or fall, got %1</source>
            <translation>muss rise oder fall sein, ist aber %1</translation>
        </message>
        <message>
            <source>missing</source>
            <translation>fehlt</translation>
        </message>
        <message>
            <source>cancelled</source>
            <translation>abgebrochen</translation>
        </message>
        <message>
            <source>%1 is out of all reason</source>
            <translation>%1 liegt außerhalb alles Sinnvollen</translation>
        </message>
        <message>
            <source>the time %1 s lies before the %2 s of the row above</source>
            <translation>die Zeit %1 s liegt vor den %2 s der Zeile darüber</translation>
        </message>
        <message>
            <source>line %1, column %2</source>
            <translation>Zeile %1, Spalte %2</translation>
        </message>
        <message>
            <source>more than %1 rows are not supported</source>
            <translation>mehr als %1 Zeilen sind nicht möglich</translation>
        </message>
        <message>
            <source>is longer than %1 KiB: this is no table</source>
            <translation>ist länger als %1 KiB: Das ist keine Tabelle</translation>
        </message>
        <message>
            <source>cannot be read</source>
            <translation>kann nicht gelesen werden</translation>
        </message>
        <message>
            <source>there are no rows of numbers in these columns</source>
            <translation>in diesen Spalten stehen keine Zeilen mit Zahlen</translation>
        </message>
        <message>
            <source>a number is missing here and in %1 of %2 rows in all</source>
            <translation>hier fehlt eine Zahl, insgesamt in %1 von %2 Zeilen</translation>
        </message>
        <message>
            <source>this is text of two bytes a letter (UTF-16): save it as plain text or UTF-8</source>
            <translation>das ist Text mit zwei Byte je Zeichen (UTF-16): als einfachen Text oder UTF-8 speichern</translation>
        </message>
        <message>
            <source>this is no text file</source>
            <translation>das ist keine Textdatei</translation>
        </message>
        <message>
            <source>there are no rows of numbers in its beginning</source>
            <translation>am Anfang stehen keine Zeilen mit Zahlen</translation>
        </message>
        <message>
            <source>neither a column of times nor a time step above the numbers was found</source>
            <translation>weder eine Spalte mit Zeiten noch eine Schrittweite über den Zahlen wurde gefunden</translation>
        </message>
        <message>
            <source>Between two columns stands %1, the decimal mark is a comma.</source>
            <translation>Zwischen zwei Spalten steht %1, das Dezimalzeichen ist ein Komma.</translation>
        </message>
        <message>
            <source>Between two columns stands %1, the decimal mark is a point.</source>
            <translation>Zwischen zwei Spalten steht %1, das Dezimalzeichen ist ein Punkt.</translation>
        </message>
        <message>
            <source>%1 is the time, in %2.</source>
            <translation>%1 ist die Zeit, in %2.</translation>
        </message>
        <message>
            <source>There is no time column: one row follows the other by %1.</source>
            <translation>Es gibt keine Zeitspalte: Zeile folgt auf Zeile im Abstand von %1.</translation>
        </message>
        <message>
            <source>%1 is %2.</source>
            <translation>%1 ist %2.</translation>
        </message>
        <message>
            <source>%1 is %2, unless its shape says otherwise.</source>
            <translation>%1 ist %2, sofern die Kurvenform nichts anderes sagt.</translation>
        </message>
        <message>
            <source>the timer has no parameter %1</source>
            <translation>der Timer hat keinen Parameter %1</translation>
        </message>
        <message>
            <source>another kind of value</source>
            <translation>eine andere Art von Wert</translation>
        </message>
        <message>
            <source>it does not blink within this time</source>
            <translation>die Schaltung blinkt in dieser Zeit nicht</translation>
        </message>
        <message>
            <source>anode of %1</source>
            <translation>Anode von %1</translation>
        </message>
        <message>
            <source>cathode of %1</source>
            <translation>Kathode von %1</translation>
        </message>
        <message>
            <source>current of %1</source>
            <translation>Strom von %1</translation>
        </message>
        <message>
            <source>The drawer has no resistor fit for the timing.</source>
            <translation>In der Schublade ist kein Widerstand, der für die Zeitbestimmung taugt.</translation>
        </message>
        <message>
            <source>The drawer has no capacitor fit for the timing.</source>
            <translation>In der Schublade ist kein Kondensator, der für die Zeitbestimmung taugt.</translation>
        </message>
        <message>
            <source>The drawer has no variable resistor fit for the timing.</source>
            <translation>In der Schublade ist kein Potentiometer, das für die Zeitbestimmung taugt.</translation>
        </message>
        <message>
            <source>No blinker can be made of the parts in the drawer.</source>
            <translation>Aus den Bauteilen in der Schublade lässt sich kein Blinker bauen.</translation>
        </message>
        <message>
            <source>No board with such values blinks.</source>
            <translation>Keine Platine mit solchen Werten blinkt.</translation>
        </message>
        <message>
            <source>A CMOS timer works from %1 to %2, not from %3.</source>
            <translation>Ein CMOS-Timer arbeitet mit %1 bis %2, nicht mit %3.</translation>
        </message>
        <message>
            <source>A bipolar timer works from %1 to %2, not from %3.</source>
            <translation>Ein bipolarer Timer arbeitet mit %1 bis %2, nicht mit %3.</translation>
        </message>
        <message>
            <source>The shorter turn of the two lamps lasts %1; a lamp cannot stay lit for %2 of it.</source>
            <translation>Die kürzere der beiden Lampenphasen dauert %1; darin kann keine Lampe %2 lang leuchten.</translation>
        </message>
        <message>
            <source>A supply of %1 is too low: the timer's output and the lamps leave nothing of it at %2.</source>
            <translation>Eine Versorgung mit %1 reicht nicht: Der Ausgang des Timers und die Lampen lassen bei %2 nichts davon übrig.</translation>
        </message>
        <message>
            <source>No supply of this timer drives such lamps at %1.</source>
            <translation>Keine Versorgungsspannung, die dieser Timer verträgt, treibt solche Lampen mit %1.</translation>
        </message>
        <message>
            <source>the threshold input of %1</source>
            <translation>Threshold-Eingang von %1</translation>
        </message>
        <message>
            <source>the trigger input of %1</source>
            <translation>Trigger-Eingang von %1</translation>
        </message>
        <message>
            <source>the reset input of %1</source>
            <translation>Reset-Eingang von %1</translation>
        </message>
        <message>
            <source>the discharge pin of %1</source>
            <translation>Discharge-Pin von %1</translation>
        </message>
        <message>
            <source>the output of %1</source>
            <translation>Ausgang von %1</translation>
        </message>
        <message>
            <source>the divider of %1</source>
            <translation>Spannungsteiler von %1</translation>
        </message>
        <message>
            <source>%1 itself</source>
            <translation>%1 selbst</translation>
        </message>
        <message>
            <source>leakage of %1</source>
            <translation>Leckstrom von %1</translation>
        </message>
        <message>
            <source>must be greater than 0, got %1</source>
            <translation>muss größer als 0 sein, angegeben: %1</translation>
        </message>
        <message>
            <source>must be a whole number of 0 or more, got %1</source>
            <translation>muss eine ganze Zahl ab 0 sein, angegeben: %1</translation>
        </message>
        <message>
            <source>must be resistor, variable or capacitor, got %1</source>
            <translation>muss resistor, variable oder capacitor sein, angegeben: %1</translation>
        </message>
        <message>
            <source>is missing</source>
            <translation>fehlt</translation>
        </message>
        <message>
            <source>must be less than 1, got %1</source>
            <translation>muss kleiner als 1 sein, angegeben: %1</translation>
        </message>
        <message>
            <source>Black lead on 0 V, the minus of the supply. Touch the legs of the timer itself, and of a lamp the places where anode and cathode belong.</source>
            <translation>Schwarze Messleitung an 0 V, den Minuspol der Versorgung. Die Beine des Timers selbst berühren, bei einer Lampe die Stellen, an die Anode und Kathode gehören.</translation>
        </message>
        <message>
            <source>Readings are with a DC meter of 10 MΩ on that place alone. “Mean” is what a slow meter settles on; a meter that follows wanders between least and most.</source>
            <translation>Die Ablesungen gelten für ein Gleichspannungsmessgerät mit 10 MΩ allein an dieser Stelle. „Mittel“ ist, worauf sich ein langsames Messgerät einstellt; ein schnelles wandert zwischen kleinstem und größtem Wert.</translation>
        </message>
        <message>
            <source>Lamp currents want the meter in series with the lamp: take the battery off before a joint is opened.</source>
            <translation>Für Lampenströme gehört das Messgerät in Reihe mit der Lampe: Batterie abnehmen, bevor eine Verbindung geöffnet wird.</translation>
        </message>
        <message>
            <source>vehicle hazard lamps and direction indicators</source>
            <translation>Warnblinker und Fahrtrichtungsanzeiger an Fahrzeugen</translation>
        </message>
        <message>
            <source>FMVSS 108 with SAE J945, 60 to 120 a minute; UN R48 and R6, 90 +/- 30 a minute</source>
            <translation>FMVSS 108 mit SAE J945, 60 bis 120 je Minute; UN R48 und R6, 90 ± 30 je Minute</translation>
        </message>
        <message>
            <source>cycle lamp</source>
            <translation>Fahrradlicht</translation>
        </message>
        <message>
            <source>UK Road Vehicles Lighting Regulations 1989, regulation 13, as amended by SI 2005/2559; elsewhere flashing may be forbidden</source>
            <translation>UK Road Vehicles Lighting Regulations 1989, Regulation 13, in der Fassung von SI 2005/2559; anderswo kann Blinken verboten sein</translation>
        </message>
        <message>
            <source>traffic beacon</source>
            <translation>Blinkleuchte im Straßenverkehr</translation>
        </message>
        <message>
            <source>MUTCD 4L.01, 50 to 60 a minute and lit for 1/2 to 2/3 (FHWA interpretation 4(09)-64)</source>
            <translation>MUTCD 4L.01, 50 bis 60 je Minute, Leuchtanteil 1/2 bis 2/3 (FHWA-Auslegung 4(09)-64)</translation>
        </message>
        <message>
            <source>rail crossing</source>
            <translation>Bahnübergang</translation>
        </message>
        <message>
            <source>FHWA Railroad-Highway Grade Crossing Handbook, 2nd edition 2007, 45 to 65 a minute; others begin at 35, from memory</source>
            <translation>FHWA Railroad-Highway Grade Crossing Handbook, 2. Auflage 2007, 45 bis 65 je Minute; andere beginnen bei 35, aus dem Gedächtnis</translation>
        </message>
        <message>
            <source>no fault</source>
            <translation>kein Fehler</translation>
        </message>
        <message>
            <source>No fault: the board does what its parts and their tolerances allow.</source>
            <translation>Kein Fehler: Die Platine tut, was ihre Bauteile und deren Toleranzen zulassen.</translation>
        </message>
        <message>
            <source>Compare the readings with the check card; measure the parts that set the rate.</source>
            <translation>Ablesungen mit der Prüfkarte vergleichen; die Bauteile messen, die die Rate bestimmen.</translation>
        </message>
        <message>
            <source>nothing else</source>
            <translation>nichts anderem</translation>
        </message>
        <message>
            <source>As drawn: %1.</source>
            <translation>Wie gezeichnet: %1.</translation>
        </message>
        <message>
            <source>pin %1 of %2 without contact</source>
            <translation>Pin %1 von %2 ohne Kontakt</translation>
        </message>
        <message>
            <source>Pin %1 of %2 has no contact: the leg is bent, stands beside its row, or its wire is missing.</source>
            <translation>Pin %1 von %2 hat keinen Kontakt: Das Bein ist verbogen, steckt neben seiner Reihe, oder die Leitung fehlt.</translation>
        </message>
        <message>
            <source>Join pin %1 with %2.</source>
            <translation>Pin %1 mit %2 verbinden.</translation>
        </message>
        <message>
            <source>pins %1 and %2 of %3 joined</source>
            <translation>Pins %1 und %2 von %3 verbunden</translation>
        </message>
        <message>
            <source>Pins %1 and %2 of %3 touch: a strand, solder, or a wire in the wrong row.</source>
            <translation>Pins %1 und %2 von %3 berühren sich: eine Litze, Lötzinn oder eine Leitung in der falschen Reihe.</translation>
        </message>
        <message>
            <source>Part the two pins. Pin %1 belongs to %2, pin %3 to %4.</source>
            <translation>Die beiden Pins trennen. Pin %1 gehört zu %2, Pin %3 zu %4.</translation>
        </message>
        <message>
            <source>%1 turned by half</source>
            <translation>%1 halb gedreht</translation>
        </message>
        <message>
            <source>%1 is turned by half: its pin 1 stands where pin 5 belongs.</source>
            <translation>%1 ist um eine halbe Drehung verdreht: Pin 1 steckt, wo Pin 5 hingehört.</translation>
        </message>
        <message>
            <source>Turn it so that the notch is up and pin 1 at the top left; it may have been damaged.</source>
            <translation>So drehen, dass die Kerbe oben und Pin 1 oben links ist; er kann beschädigt sein.</translation>
        </message>
        <message>
            <source>%1 dead or missing</source>
            <translation>%1 defekt oder nicht da</translation>
        </message>
        <message>
            <source>%1 is dead, or not in its place.</source>
            <translation>%1 ist defekt oder nicht an seinem Platz.</translation>
        </message>
        <message>
            <source>Try another timer in its place.</source>
            <translation>Einen anderen Timer an seiner Stelle versuchen.</translation>
        </message>
        <message>
            <source>%1 not joined</source>
            <translation>%1 nicht angeschlossen</translation>
        </message>
        <message>
            <source>%1 is not joined: its clip or one of its wires has no contact.</source>
            <translation>%1 ist nicht angeschlossen: Der Clip oder eine der Leitungen hat keinen Kontakt.</translation>
        </message>
        <message>
            <source>Look at clip, holder and the wires to both rails. %1</source>
            <translation>Clip, Halter und die Leitungen zu beiden Schienen ansehen. %1</translation>
        </message>
        <message>
            <source>%1 at its end</source>
            <translation>%1 am Ende</translation>
        </message>
        <message>
            <source>%1 is at its end: low voltage, and lower still under load.</source>
            <translation>%1 ist am Ende: niedrige Spannung, unter Last noch niedriger.</translation>
        </message>
        <message>
            <source>Measure its voltage while the circuit runs; put in a fresh one.</source>
            <translation>Die Spannung messen, während die Schaltung läuft; eine frische einsetzen.</translation>
        </message>
        <message>
            <source>%1 the wrong way round</source>
            <translation>%1 verpolt</translation>
        </message>
        <message>
            <source>%1 is the wrong way round.</source>
            <translation>%1 ist verpolt.</translation>
        </message>
        <message>
            <source>Take it off at once. Timer and polarised capacitors may be damaged: replace what gets warm. %1</source>
            <translation>Sofort abnehmen. Timer und gepolte Kondensatoren können beschädigt sein: Ersetzen, was warm wird. %1</translation>
        </message>
        <message>
            <source>rails of %1 joined</source>
            <translation>Schienen von %1 verbunden</translation>
        </message>
        <message>
            <source>The two rails of %1 are joined: a short.</source>
            <translation>Die beiden Schienen von %1 sind verbunden: ein Kurzschluss.</translation>
        </message>
        <message>
            <source>Take it off at once, a shorted battery can burn you. Look for a wire or a part from rail to rail.</source>
            <translation>Sofort abnehmen, an einer kurzgeschlossenen Batterie kann man sich verbrennen. Nach einer Leitung oder einem Bauteil von Schiene zu Schiene suchen.</translation>
        </message>
        <message>
            <source>%1 is ten times too large: not %2.</source>
            <translation>%1 ist zehnmal zu groß: nicht %2.</translation>
        </message>
        <message>
            <source>%1 is ten times too small: not %2.</source>
            <translation>%1 ist zehnmal zu klein: nicht %2.</translation>
        </message>
        <message>
            <source>%1 is ten times too large: %2 in place of %3.</source>
            <translation>%1 ist zehnmal zu groß: %2 statt %3.</translation>
        </message>
        <message>
            <source>%1 is ten times too small: %2 in place of %3.</source>
            <translation>%1 ist zehnmal zu klein: %2 statt %3.</translation>
        </message>
        <message>
            <source>%1 stays open</source>
            <translation>%1 bleibt offen</translation>
        </message>
        <message>
            <source>%1 without contact</source>
            <translation>%1 ohne Kontakt</translation>
        </message>
        <message>
            <source>%1 does not close.</source>
            <translation>%1 schließt nicht.</translation>
        </message>
        <message>
            <source>%1 has no contact, or is a lamp that has failed.</source>
            <translation>%1 hat keinen Kontakt oder ist eine defekte Lampe.</translation>
        </message>
        <message>
            <source>%1 is missing, or one of its legs has no contact.</source>
            <translation>%1 fehlt, oder eines der Beine hat keinen Kontakt.</translation>
        </message>
        <message>
            <source>%1 stays closed</source>
            <translation>%1 bleibt geschlossen</translation>
        </message>
        <message>
            <source>%1 bridged</source>
            <translation>%1 überbrückt</translation>
        </message>
        <message>
            <source>%1 does not open.</source>
            <translation>%1 öffnet nicht.</translation>
        </message>
        <message>
            <source>%1 is bridged: its legs touch, stand in one row, or it has a short inside.</source>
            <translation>%1 ist überbrückt: Die Beine berühren sich, stecken in einer Reihe, oder es ist innen kurzgeschlossen.</translation>
        </message>
        <message>
            <source>%1 is the wrong way round: its minus stands where plus belongs.</source>
            <translation>%1 ist verpolt: Minus steckt, wo Plus hingehört.</translation>
        </message>
        <message>
            <source>Take the battery off at once: such a capacitor can fail with force. Replace it. %1</source>
            <translation>Batterie sofort abnehmen: Ein solcher Kondensator kann platzen. Ersetzen. %1</translation>
        </message>
        <message>
            <source>%1 is the wrong way round: its anode stands where the cathode belongs.</source>
            <translation>%1 ist verpolt: Die Anode steckt, wo die Kathode hingehört.</translation>
        </message>
        <message>
            <source>%1 and %2 swapped</source>
            <translation>%1 und %2 vertauscht</translation>
        </message>
        <message>
            <source>%1 and %2 are in each other's place (%3 and %4).</source>
            <translation>%1 und %2 sind miteinander vertauscht (%3 und %4).</translation>
        </message>
        <message>
            <source>%1 ten times too large</source>
            <translation>%1 zehnmal zu groß</translation>
        </message>
        <message>
            <source>%1 ten times too small</source>
            <translation>%1 zehnmal zu klein</translation>
        </message>
        <message>
            <source>wiper of %1 without contact</source>
            <translation>Schleifer von %1 ohne Kontakt</translation>
        </message>
        <message>
            <source>The wiper of %1 has no contact.</source>
            <translation>Der Schleifer von %1 hat keinen Kontakt.</translation>
        </message>
        <message>
            <source>follows from the wiring</source>
            <translation>folgt aus der Verdrahtung</translation>
        </message>
        <message>
            <source>%1 falls to %2, the least that %3 is sure to work from, after some %4 with %5 % of its capacity left, if its voltage falls evenly and the current stays.</source>
            <translation>%1 sinkt nach etwa %4 auf %2, die kleinste Spannung, mit der %3 sicher arbeitet; dann sind noch %5 % der Kapazität übrig, wenn die Spannung gleichmäßig sinkt und der Strom gleich bleibt.</translation>
        </message>
        <message>
            <source>Take more cells.</source>
            <translation>Mehr Zellen nehmen.</translation>
        </message>
        <message>
            <source>Take more cells, or a CMOS timer, which works from 2 V.</source>
            <translation>Mehr Zellen nehmen oder einen CMOS-Timer, der ab 2 V arbeitet.</translation>
        </message>
        <message>
            <source>%1 carries %2 (effective value); it is rated for %3.</source>
            <translation>%1 führt %2 (Effektivwert); zulässig sind %3.</translation>
        </message>
        <message>
            <source>In the first flash after power-on %1 carries %2 at its peak, more than twice the %3 that pulses may reach.</source>
            <translation>Beim ersten Blitz nach dem Einschalten führt %1 bis zu %2, mehr als das Doppelte der %3, die Impulse erreichen dürfen.</translation>
        </message>
        <message>
            <source>%1 carries %2 at its peak; pulses may reach %3.</source>
            <translation>%1 führt bis zu %2; Impulse dürfen %3 erreichen.</translation>
        </message>
        <message>
            <source>In the first flash after power-on %1 carries %2 at its peak and stays more than twice the %3 that it is rated for, for %4.</source>
            <translation>Beim ersten Blitz nach dem Einschalten führt %1 bis zu %2 und bleibt %4 lang über dem Doppelten des Nennstroms von %3.</translation>
        </message>
        <message>
            <source>%1 carries %2 at its peak and stays over its rating for %3, too long for a pulse; it is rated for %4.</source>
            <translation>%1 führt bis zu %2 und bleibt %3 lang über dem Nennstrom von %4, zu lang für einen Impuls.</translation>
        </message>
        <message>
            <source>rating of the lamp; pulses of up to 10 ms, from memory</source>
            <translation>Nennwert der Lampe; Impulse bis 10 ms, aus dem Gedächtnis</translation>
        </message>
        <message>
            <source>Take a larger lamp resistor.</source>
            <translation>Einen größeren Lampenwiderstand nehmen.</translation>
        </message>
        <message>
            <source>In the first flash after power-on %1 sees %2 the wrong way round; it stands %3.</source>
            <translation>Beim ersten Blitz nach dem Einschalten liegen an %1 verkehrt herum %2 an; zulässig sind %3.</translation>
        </message>
        <message>
            <source>%1 sees %2 the wrong way round; it stands %3.</source>
            <translation>An %1 liegen verkehrt herum %2 an; zulässig sind %3.</translation>
        </message>
        <message>
            <source>Turn it, or put a diode or a second lamp beside it in the opposite direction.</source>
            <translation>Umdrehen oder eine Diode oder eine zweite Lampe gegensinnig parallel schalten.</translation>
        </message>
        <message>
            <source>Only %1 lies in the current path of %2, so nothing limits its current.</source>
            <translation>Im Strompfad von %2 liegen nur %1, sodass nichts den Strom begrenzt.</translation>
        </message>
        <message>
            <source>Put a resistor in series with the lamp, commonly 220 Ω to 1 kΩ.</source>
            <translation>Einen Widerstand in Reihe zur Lampe schalten, üblich sind 220 Ω bis 1 kΩ.</translation>
        </message>
        <message>
            <source>%1 is the wrong way round: it cannot conduct in any phase.</source>
            <translation>%1 ist verkehrt herum eingebaut: In keiner Phase kann Strom fließen.</translation>
        </message>
        <message>
            <source>Swap its anode and cathode.</source>
            <translation>Anode und Kathode vertauschen.</translation>
        </message>
        <message>
            <source>%1 stays dark: its current peaks at %2, under 5 % of the rated %3.</source>
            <translation>%1 bleibt dunkel: Der Strom erreicht höchstens %2, weniger als 5 % des Nennstroms von %3.</translation>
        </message>
        <message>
            <source>Check that its path is closed and the voltage is enough; else take a smaller lamp resistor.</source>
            <translation>Prüfen, ob der Strompfad geschlossen ist und die Spannung reicht; sonst einen kleineren Lampenwiderstand nehmen.</translation>
        </message>
        <message>
            <source>5 % of the rated current counts as lit: common practice, no source</source>
            <translation>ab 5 % des Nennstroms gilt eine Lampe als leuchtend: übliche Praxis, keine Quelle</translation>
        </message>
        <message>
            <source>%1 carries %2 in the phase in which it should be dark, and may be seen to glow.</source>
            <translation>%1 führt %2 in der Phase, in der die Lampe dunkel sein soll, und kann sichtbar glimmen.</translation>
        </message>
        <message>
            <source>Put a resistor of 1 to 4.7 kΩ across the lamp, or take a CMOS timer, whose output reaches the supply.</source>
            <translation>Einen Widerstand von 1 bis 4,7 kΩ parallel zur Lampe schalten oder einen CMOS-Timer nehmen, dessen Ausgang die Versorgungsspannung erreicht.</translation>
        </message>
        <message>
            <source>5 µA can be seen in the dark: memory</source>
            <translation>5 µA sind im Dunkeln zu sehen: aus dem Gedächtnis</translation>
        </message>
        <message>
            <source>%1 flashes at %2, too fast for the eye: it appears to be lit steadily.</source>
            <translation>%1 blinkt mit %2, zu schnell für das Auge: Die Lampe scheint stetig zu leuchten.</translation>
        </message>
        <message>
            <source>For flashes that are seen apart, stay under about 10 Hz.</source>
            <translation>Damit die Blitze einzeln zu sehen sind, unter etwa 10 Hz bleiben.</translation>
        </message>
        <message>
            <source>critical flicker fusion of the cones, about 60 Hz at high luminance</source>
            <translation>Flimmerverschmelzung der Zapfen, etwa 60 Hz bei hoher Leuchtdichte</translation>
        </message>
        <message>
            <source>%1 flashes %2 times a second. More than three flashes a second can set off seizures in some people.</source>
            <translation>%1 blinkt %2-mal je Sekunde. Mehr als drei Blitze je Sekunde können bei manchen Menschen Anfälle auslösen.</translation>
        </message>
        <message>
            <source>Stay at three flashes a second or fewer where others look on.</source>
            <translation>Wo andere zusehen, bei höchstens drei Blitzen je Sekunde bleiben.</translation>
        </message>
        <message>
            <source>WCAG 2.2, success criterion 2.3.1</source>
            <translation>WCAG 2.2, Erfolgskriterium 2.3.1</translation>
        </message>
        <message>
            <source>%1 is a strong lamp of %2; do not look into it from close by.</source>
            <translation>%1 ist eine starke Lampe mit %2; nicht aus der Nähe hineinsehen.</translation>
        </message>
        <message>
            <source>Use a diffused lens, less current, or turn it away from the eyes.</source>
            <translation>Eine matte Linse oder weniger Strom verwenden oder die Lampe von den Augen abwenden.</translation>
        </message>
        <message>
            <source>memory</source>
            <translation>aus dem Gedächtnis</translation>
        </message>
        <message>
            <source>%1 and %2 stay dark or nearly so: the output of %3 swings by %4, and behind a capacitor the pair needs more than both forward voltages together, %5.</source>
            <translation>%1 und %2 bleiben dunkel oder fast dunkel: Der Ausgang von %3 hat einen Hub von %4, und hinter einem Kondensator braucht das Paar mehr als beide Flussspannungen zusammen, %5.</translation>
        </message>
        <message>
            <source>Take a higher supply voltage, a CMOS timer, or lamps of lower forward voltage; or put one lamp to each rail.</source>
            <translation>Eine höhere Versorgungsspannung, einen CMOS-Timer oder Lampen mit kleinerer Flussspannung nehmen; oder je eine Lampe nach Masse und nach Plus schalten.</translation>
        </message>
        <message>
            <source>charge balance of the coupling capacitor: each lamp conducts only with what the other has left of the swing</source>
            <translation>Ladungsbilanz des Koppelkondensators: Jeder Lampe bleibt nur, was die andere vom Hub übrig lässt</translation>
        </message>
        <message>
            <source>Take a larger resistance or a part of higher rating.</source>
            <translation>Einen größeren Widerstand oder ein höher belastbares Bauteil nehmen.</translation>
        </message>
        <message>
            <source>In the first flash after power-on %1 sees up to %2, more than twice the %3 that it is rated for.</source>
            <translation>Beim ersten Blitz nach dem Einschalten liegen an %1 bis zu %2 an, mehr als das Doppelte der Nennspannung von %3.</translation>
        </message>
        <message>
            <source>%1 sees up to %2; it is rated for %3.</source>
            <translation>An %1 liegen bis zu %2 an; die Nennspannung ist %3.</translation>
        </message>
        <message>
            <source>Take a capacitor of higher rated voltage.</source>
            <translation>Einen Kondensator mit höherer Nennspannung nehmen.</translation>
        </message>
        <message>
            <source>In the first flash after power-on %1 sees %2 the wrong way round; a polarised capacitor stands about 1 V.</source>
            <translation>Beim ersten Blitz nach dem Einschalten liegen an %1 verkehrt herum %2 an; ein gepolter Kondensator verträgt etwa 1 V.</translation>
        </message>
        <message>
            <source>%1 sees %2 the wrong way round; a polarised capacitor stands about 1 V.</source>
            <translation>An %1 liegen verkehrt herum %2 an; ein gepolter Kondensator verträgt etwa 1 V.</translation>
        </message>
        <message>
            <source>Turn it, or take one that is not polarised.</source>
            <translation>Umdrehen oder einen ungepolten Kondensator nehmen.</translation>
        </message>
        <message>
            <source>Take a larger lamp resistor, or fewer lamps on the output.</source>
            <translation>Einen größeren Lampenwiderstand nehmen oder weniger Lampen an den Ausgang hängen.</translation>
        </message>
        <message>
            <source>TI TLC555: 10 mA sourced, 100 mA sunk</source>
            <translation>TI TLC555: 10 mA liefernd, 100 mA aufnehmend</translation>
        </message>
        <message>
            <source>TI NE555/SA555, SLFS022A: 200 mA either way</source>
            <translation>TI NE555/SA555, SLFS022A: 200 mA in beide Richtungen</translation>
        </message>
        <message>
            <source>Put the lamp between the supply and the output: a CMOS timer sinks far more than it sources. Or take a larger lamp resistor.</source>
            <translation>Die Lampe zwischen Versorgung und Ausgang schalten: Ein CMOS-Timer nimmt weit mehr Strom auf, als er liefert. Oder einen größeren Lampenwiderstand nehmen.</translation>
        </message>
        <message>
            <source>the limit of the output, from memory</source>
            <translation>Grenzwert des Ausgangs, aus dem Gedächtnis</translation>
        </message>
        <message>
            <source>Take a larger R1, 1 kΩ or more.</source>
            <translation>Ein größeres R1 nehmen, 1 kΩ oder mehr.</translation>
        </message>
        <message>
            <source>%1 turns %2 into heat and would reach about %3 °C.</source>
            <translation>%1 setzt %2 in Wärme um und würde etwa %3 °C heiß.</translation>
        </message>
        <message>
            <source>Take less current from its pins, or a lower supply voltage.</source>
            <translation>Weniger Strom über die Pins führen oder eine kleinere Versorgungsspannung nehmen.</translation>
        </message>
        <message>
            <source>memory: 25 °C and 100 K/W</source>
            <translation>aus dem Gedächtnis: 25 °C und 100 K/W</translation>
        </message>
        <message>
            <source>No capacitor is joined to trigger and threshold (pins 2 and 6) of %1, so nothing but its own delay paces it.</source>
            <translation>An Trigger und Threshold (Pins 2 und 6) von %1 liegt kein Kondensator, sodass nur die eigene Verzögerung den Takt gibt.</translation>
        </message>
        <message>
            <source>No capacitor is joined to trigger and threshold (pins 2 and 6) of %1.</source>
            <translation>An Trigger und Threshold (Pins 2 und 6) von %1 liegt kein Kondensator.</translation>
        </message>
        <message>
            <source>Join pins 2 and 6 to each other and to a timing capacitor that leads to ground.</source>
            <translation>Pins 2 und 6 miteinander und mit einem zeitbestimmenden Kondensator nach Masse verbinden.</translation>
        </message>
        <message>
            <source>No resistor leads from the supply to the timing capacitor of %1, so nothing charges it.</source>
            <translation>Kein Widerstand führt von der Versorgung zum zeitbestimmenden Kondensator von %1, sodass ihn nichts auflädt.</translation>
        </message>
        <message>
            <source>Join R1 from the supply to pin 7 and R2 from pin 7 to pins 2 and 6.</source>
            <translation>R1 von der Versorgung an Pin 7 und R2 von Pin 7 an die Pins 2 und 6 legen.</translation>
        </message>
        <message>
            <source>Discharge (pin 7) of %1 is joined to nothing and no resistor leads from the output to the timing capacitor, so nothing discharges it.</source>
            <translation>Discharge (Pin 7) von %1 ist mit nichts verbunden, und kein Widerstand führt vom Ausgang zum zeitbestimmenden Kondensator, sodass ihn nichts entlädt.</translation>
        </message>
        <message>
            <source>Join pin 7 between R1 and R2, or a resistor from pin 3 to pins 2 and 6.</source>
            <translation>Pin 7 zwischen R1 und R2 legen oder einen Widerstand von Pin 3 an die Pins 2 und 6.</translation>
        </message>
        <message>
            <source>Trigger (pin 2) and threshold (pin 6) of %1 are not on one net, and the circuit does not blink.</source>
            <translation>Trigger (Pin 2) und Threshold (Pin 6) von %1 liegen nicht am selben Netz, und die Schaltung blinkt nicht.</translation>
        </message>
        <message>
            <source>Join pins 2 and 6 to each other and to the timing capacitor.</source>
            <translation>Pins 2 und 6 miteinander und mit dem zeitbestimmenden Kondensator verbinden.</translation>
        </message>
        <message>
            <source>Take pin 7 off ground and join it between R1 and R2.</source>
            <translation>Pin 7 von der Masse lösen und zwischen R1 und R2 legen.</translation>
        </message>
        <message>
            <source>Put R1, 1 kΩ or more, between the supply and pin 7.</source>
            <translation>R1 mit 1 kΩ oder mehr zwischen die Versorgung und Pin 7 schalten.</translation>
        </message>
        <message>
            <source>R1 and R2 of %1 together are %2; over %3 the input currents of the timer upset the timing or stop it.</source>
            <translation>R1 und R2 von %1 haben zusammen %2; über %3 stören die Eingangsströme des Timers den Zeitablauf oder halten ihn an.</translation>
        </message>
        <message>
            <source>Take smaller resistors and a larger capacitor.</source>
            <translation>Kleinere Widerstände und einen größeren Kondensator nehmen.</translation>
        </message>
        <message>
            <source>TI SLFS022, 3.4 MΩ at 5 V and 10 MΩ at 15 V</source>
            <translation>TI SLFS022, 3,4 MΩ bei 5 V und 10 MΩ bei 15 V</translation>
        </message>
        <message>
            <source>Near the threshold level the timing capacitor of %1 is charged with %2, while leakage and the threshold input take %3: the threshold is never reached.</source>
            <translation>Nahe der oberen Schaltschwelle wird der zeitbestimmende Kondensator von %1 mit %2 geladen, während Leckstrom und Threshold-Eingang %3 abziehen: Die Schwelle wird nie erreicht.</translation>
        </message>
        <message>
            <source>Near the threshold level the timing capacitor of %1 is charged with %2, while leakage and the threshold input take %3: the high phase grows longer.</source>
            <translation>Nahe der oberen Schaltschwelle wird der zeitbestimmende Kondensator von %1 mit %2 geladen, während Leckstrom und Threshold-Eingang %3 abziehen: Die High-Phase wird länger.</translation>
        </message>
        <message>
            <source>Take smaller resistors, or a capacitor that leaks less.</source>
            <translation>Kleinere Widerstände oder einen Kondensator mit kleinerem Leckstrom nehmen.</translation>
        </message>
        <message>
            <source>a tenth of the charging current: common practice, no source</source>
            <translation>ein Zehntel des Ladestroms: übliche Praxis, keine Quelle</translation>
        </message>
        <message>
            <source>No supply reaches pins 8 and 1 of %1.</source>
            <translation>Keine Versorgung erreicht die Pins 8 und 1 von %1.</translation>
        </message>
        <message>
            <source>The supply of %1 is the wrong way round: pin 8 would lie %2 below pin 1, which destroys the timer.</source>
            <translation>Die Versorgung von %1 ist verpolt: Pin 8 läge %2 unter Pin 1; das zerstört den Timer.</translation>
        </message>
        <message>
            <source>pin functions of the 555 timer</source>
            <translation>Anschlussbelegung des 555-Timers</translation>
        </message>
        <message>
            <source>The supply of %1 is %2; a CMOS timer may have at most %3.</source>
            <translation>Die Versorgung von %1 hat %2; ein CMOS-Timer verträgt höchstens %3.</translation>
        </message>
        <message>
            <source>The supply of %1 is %2; a bipolar timer may have at most %3.</source>
            <translation>Die Versorgung von %1 hat %2; ein bipolarer Timer verträgt höchstens %3.</translation>
        </message>
        <message>
            <source>Use a supply of lower voltage.</source>
            <translation>Eine Versorgung mit kleinerer Spannung verwenden.</translation>
        </message>
        <message>
            <source>The supply of %1 is %2; a CMOS timer is only sure to work from %3.</source>
            <translation>Die Versorgung von %1 hat %2; ein CMOS-Timer arbeitet erst ab %3 sicher.</translation>
        </message>
        <message>
            <source>The supply of %1 is %2; a bipolar timer is only sure to work from %3.</source>
            <translation>Die Versorgung von %1 hat %2; ein bipolarer Timer arbeitet erst ab %3 sicher.</translation>
        </message>
        <message>
            <source>Use a supply of higher voltage.</source>
            <translation>Eine Versorgung mit höherer Spannung verwenden.</translation>
        </message>
        <message>
            <source>Use a supply of higher voltage, or a CMOS timer, which works from 2 V.</source>
            <translation>Eine Versorgung mit höherer Spannung verwenden oder einen CMOS-Timer, der ab 2 V arbeitet.</translation>
        </message>
        <message>
            <source>Reset (pin 4) of %1 is joined to nothing and may pick up noise.</source>
            <translation>Reset (Pin 4) von %1 ist mit nichts verbunden und kann Störungen auffangen.</translation>
        </message>
        <message>
            <source>Join pin 4 to pin 8.</source>
            <translation>Pin 4 mit Pin 8 verbinden.</translation>
        </message>
        <message>
            <source>Reset (pin 4) of %1 stays at %2, under its level of %3, which holds the output low.</source>
            <translation>Reset (Pin 4) von %1 bleibt bei %2, unter seiner Schaltschwelle von %3; das hält den Ausgang auf Low.</translation>
        </message>
        <message>
            <source>Output (pin 3) of %1 is joined straight to the ground net.</source>
            <translation>Der Ausgang (Pin 3) von %1 ist direkt mit dem Massenetz verbunden.</translation>
        </message>
        <message>
            <source>Output (pin 3) of %1 is joined straight to a supply net.</source>
            <translation>Der Ausgang (Pin 3) von %1 ist direkt mit einem Netz der Versorgung verbunden.</translation>
        </message>
        <message>
            <source>Take pin 3 off that net; lamps go from pin 3 through a resistor.</source>
            <translation>Pin 3 von diesem Netz lösen; Lampen kommen über einen Widerstand an Pin 3.</translation>
        </message>
        <message>
            <source>The control voltage (pin 5) of %1 has no capacitor. Most CMOS timers need none.</source>
            <translation>An der Steuerspannung (Pin 5) von %1 liegt kein Kondensator. Die meisten CMOS-Timer brauchen keinen.</translation>
        </message>
        <message>
            <source>The control voltage (pin 5) of %1 has no capacitor.</source>
            <translation>An der Steuerspannung (Pin 5) von %1 liegt kein Kondensator.</translation>
        </message>
        <message>
            <source>A capacitor of 10 nF from pin 5 to ground keeps noise off the switching levels.</source>
            <translation>Ein Kondensator von 10 nF von Pin 5 nach Masse hält Störungen von den Schaltschwellen fern.</translation>
        </message>
        <message>
            <source>10 nF in the circuits of TI SLFS022 and ST Doc ID 2182; the Philips ICM7555 sheet (Aug 1994) needs none</source>
            <translation>10 nF in den Schaltungen von TI SLFS022 und ST Doc ID 2182; laut Philips-Datenblatt ICM7555 (August 1994) nicht nötig</translation>
        </message>
        <message>
            <source>No capacitor of 10 nF or more lies across pins 8 and 1 of %1; each switching draws a short pulse from the supply.</source>
            <translation>Zwischen den Pins 8 und 1 von %1 liegt kein Kondensator von 10 nF oder mehr; jedes Umschalten zieht einen kurzen Stromimpuls aus der Versorgung.</translation>
        </message>
        <message>
            <source>Put 100 nF close to the pins, and 10 to 100 µF beside it.</source>
            <translation>100 nF nahe an die Pins setzen und 10 bis 100 µF daneben.</translation>
        </message>
        <message>
            <source>Both pins of %1 are in one net, so it does nothing.</source>
            <translation>Beide Anschlüsse von %1 liegen am selben Netz, das Bauteil bewirkt also nichts.</translation>
        </message>
        <message>
            <source>Join its pins to two nets, or take it out.</source>
            <translation>Die Anschlüsse mit zwei Netzen verbinden oder das Bauteil herausnehmen.</translation>
        </message>
        <message>
            <source>%1 has no path to 0 V through any part, so it does nothing.</source>
            <translation>Von %1 führt über kein Bauteil ein Weg nach 0 V, das Bauteil bewirkt also nichts.</translation>
        </message>
        <message>
            <source>Join it to the rest of the circuit, or take it out.</source>
            <translation>Mit dem Rest der Schaltung verbinden oder herausnehmen.</translation>
        </message>
        <message>
            <source>%1 is the wrong way round: its plus lies up to %2 below its minus; a polarised capacitor stands about 1 V.</source>
            <translation>%1 ist verpolt: Der Pluspol liegt bis zu %2 unter dem Minuspol; ein gepolter Kondensator verträgt etwa 1 V.</translation>
        </message>
        <message>
            <source>The circuit has no supply.</source>
            <translation>Die Schaltung hat keine Versorgung.</translation>
        </message>
        <message>
            <source>Add a supply and join its plus to pin 8 and its minus to pin 1.</source>
            <translation>Eine Versorgung hinzufügen und ihren Pluspol mit Pin 8 und ihren Minuspol mit Pin 1 verbinden.</translation>
        </message>
        <message>
            <source>The circuit has no timer.</source>
            <translation>Die Schaltung hat keinen Timer.</translation>
        </message>
        <message>
            <source>Add a 555 timer.</source>
            <translation>Einen 555-Timer hinzufügen.</translation>
        </message>
        <message>
            <source>Nothing was measured yet that a board could be held against.</source>
            <translation>Noch wurde nichts gemessen, womit sich eine Platine vergleichen lässt.</translation>
        </message>
        <message>
            <source>No part of the timing was found whose value could be off.</source>
            <translation>Kein zeitbestimmendes Bauteil wurde gefunden, dessen Wert abweichen könnte.</translation>
        </message>
        <message>
            <source>No values of the parts were found that explain the measurements.</source>
            <translation>Es wurden keine Werte der Bauteile gefunden, die die Messungen erklären.</translation>
        </message>
        <message>
            <source>there are no fitted values</source>
            <translation>es gibt keine angepassten Werte</translation>
        </message>
        <message>
            <source>Apply fitted values as Set B</source>
            <translation>Angepasste Werte als Satz B übernehmen</translation>
        </message>
        <message>
            <source>The measurements cannot tell %1 apart: each can bring about what was measured, and only their tolerances share it out.</source>
            <translation>Die Messungen können %1 nicht auseinanderhalten: Jedes davon kann das Gemessene bewirken, und nur die Toleranzen teilen es auf.</translation>
        </message>
        <message>
            <source>Measure %1 by itself and enter what the meter reads.</source>
            <translation>%1 einzeln messen und die Ablesung eintragen.</translation>
        </message>
        <message>
            <source>Measure %1 by themselves and enter what the meter reads.</source>
            <translation>%1 jeweils einzeln messen und die Ablesungen eintragen.</translation>
        </message>
        <message>
            <source>No values that the parts may have explain the %1 measured: it is %2 of its standard uncertainties off.</source>
            <translation>Keine zulässigen Werte der Bauteile erklären die gemessene Größe „%1“: Sie liegt um das %2-Fache ihrer Standardunsicherheit daneben.</translation>
        </message>
        <message>
            <source>Two measurements of the %1 contradict each other: they lie further apart than twice their common uncertainty.</source>
            <translation>Zwei Messungen der Größe „%1“ widersprechen sich: Sie liegen weiter auseinander als das Doppelte ihrer gemeinsamen Unsicherheit.</translation>
        </message>
        <message>
            <source>Each figure is explained by itself, but not all of them together.</source>
            <translation>Jede Größe für sich ist erklärt, aber nicht alle zusammen.</translation>
        </message>
        <message>
            <source>The levels of %1 count as exact here: makers state 1 to 2.25 % for the timing (TI, Fairchild LM555). State it as its timing tolerance to let them move.</source>
            <translation>Die Schwellen von %1 gelten hier als genau: Hersteller geben für die Zeiten 1 bis 2,25 % an (TI, Fairchild LM555). Als Zeittoleranz angegeben, dürfen sie sich bewegen.</translation>
        </message>
        <message>
            <source>The measurements say next to nothing of %1.</source>
            <translation>Über %1 sagen die Messungen so gut wie nichts.</translation>
        </message>
        <message>
            <source>%1 is taken at %2 under load, as measured; the circuit states %3 without load.</source>
            <translation>%1 wird mit %2 unter Last angesetzt, wie gemessen; in der Schaltung stehen %3 ohne Last.</translation>
        </message>
        <message>
            <source>The levels of %1 are no value of a part: Set B leaves them where they are.</source>
            <translation>Die Schwellen von %1 sind kein Wert eines Bauteils: Satz B lässt sie, wo sie sind.</translation>
        </message>
        <message>
            <source>the %1 of %2 is joined to %3 of %4</source>
            <translation>%1 von %2 ist mit %3 von %4 verbunden</translation>
        </message>
        <message>
            <source>the %1 of %2 reaches %3 of %4 through %5</source>
            <translation>%1 von %2 wirkt über %5 auf %3 von %4</translation>
        </message>
        <message>
            <source>%1 has no single period of its own: %2.</source>
            <translation>%1 hat keine einheitliche eigene Periode: %2.</translation>
        </message>
        <message>
            <source>%1 has no single period of its own: %2 switch beside it in other cycles, and the timers shift each other a little through the supply that they share.</source>
            <translation>%1 hat keine einheitliche eigene Periode: %2 schalten neben ihm in anderen Perioden, und die Timer verschieben einander ein wenig über die gemeinsame Versorgung.</translation>
        </message>
        <message>
            <source>%1 has no single period of its own: %2 switches beside it in other cycles, and the timers shift each other a little through the supply that they share.</source>
            <translation>%1 hat keine einheitliche eigene Periode: %2 schaltet neben ihm in anderen Perioden, und die Timer verschieben einander ein wenig über die gemeinsame Versorgung.</translation>
        </message>
        <message>
            <source>%1 has no period: its output stops switching after the first flashes.</source>
            <translation>%1 hat keine Periode: Der Ausgang hört nach den ersten Blitzen auf zu schalten.</translation>
        </message>
        <message>
            <source>%1 has no single period of its own: with the switches as drawn its output stops switching, so its flashes are commanded by %2.</source>
            <translation>%1 hat keine einheitliche eigene Periode: Mit den Schaltern wie gezeichnet hört der Ausgang auf zu schalten, die Blitze werden also von %2 gesteuert.</translation>
        </message>
        <message>
            <source>Set B</source>
            <translation>Satz B</translation>
        </message>
        <message>
            <source>Set A</source>
            <translation>Satz A</translation>
        </message>
        <message>
            <source>cycle time</source>
            <translation>Periodendauer</translation>
        </message>
        <message>
            <source>pulse width</source>
            <translation>Impulsbreite</translation>
        </message>
        <message>
            <source>space width</source>
            <translation>Pausenbreite</translation>
        </message>
        <message>
            <source>duty cycle</source>
            <translation>Tastgrad</translation>
        </message>
        <message>
            <source>first flash</source>
            <translation>erster Blitz</translation>
        </message>
        <message>
            <source>supply voltage</source>
            <translation>Versorgungsspannung</translation>
        </message>
        <message>
            <source>output high</source>
            <translation>Ausgang auf High</translation>
        </message>
        <message>
            <source>output low</source>
            <translation>Ausgang auf Low</translation>
        </message>
        <message>
            <source>meter of 10 MΩ</source>
            <translation>Messgerät mit 10 MΩ</translation>
        </message>
        <message>
            <source>probe of 10 MΩ and 12 pF</source>
            <translation>Tastkopf mit 10 MΩ und 12 pF</translation>
        </message>
        <message>
            <source>resistor %1</source>
            <translation>Widerstand %1</translation>
        </message>
        <message>
            <source>variable resistor %1</source>
            <translation>Potentiometer %1</translation>
        </message>
        <message>
            <source>electrolytic capacitor %1</source>
            <translation>Elektrolytkondensator %1</translation>
        </message>
        <message>
            <source>capacitor %1</source>
            <translation>Kondensator %1</translation>
        </message>
        <message>
            <source>%1 lamp (LED)</source>
            <translation>Lampe (LED), %1</translation>
        </message>
        <message>
            <source>rated %1</source>
            <translation>Nennstrom %1</translation>
        </message>
        <message>
            <source>555 timer, CMOS</source>
            <translation>555-Timer, CMOS</translation>
        </message>
        <message>
            <source>555 timer, bipolar</source>
            <translation>555-Timer, bipolar</translation>
        </message>
        <message>
            <source>supply %1</source>
            <translation>Versorgung %1</translation>
        </message>
        <message>
            <source>%1 to +%2</source>
            <translation>%1 bis +%2</translation>
        </message>
        <message>
            <source>One lamp to ground</source>
            <translation>Eine Lampe nach Masse</translation>
        </message>
        <message>
            <source>The lamp is lit while the output is high, for more than half of the time.</source>
            <translation>Die Lampe leuchtet, während der Ausgang auf High ist, mehr als die Hälfte der Zeit.</translation>
        </message>
        <message>
            <source>Mole light</source>
            <translation>Molenfeuer</translation>
        </message>
        <message>
            <source>One lamp to the + rail</source>
            <translation>Eine Lampe nach Plus</translation>
        </message>
        <message>
            <source>The lamp is lit while the output is low, for less than half of the time.</source>
            <translation>Die Lampe leuchtet, während der Ausgang auf Low ist, weniger als die Hälfte der Zeit.</translation>
        </message>
        <message>
            <source>Winch warning lamp</source>
            <translation>Warnlampe der Winde</translation>
        </message>
        <message>
            <source>Two lamps taking turns through a capacitor</source>
            <translation>Zwei Lampen im Wechsel über einen Kondensator</translation>
        </message>
        <message>
            <source>One capacitor passes the swing of the output on to two lamps, each lit in its own half of the cycle.</source>
            <translation>Ein Kondensator gibt den Hub des Ausgangs an zwei Lampen weiter, die je in ihrer eigenen Hälfte der Periode leuchten.</translation>
        </message>
        <message>
            <source>Channel buoy pair</source>
            <translation>Tonnenpaar im Fahrwasser</translation>
        </message>
        <message>
            <source>One lamp to each rail</source>
            <translation>Je eine Lampe nach Masse und nach Plus</translation>
        </message>
        <message>
            <source>One lamp is lit while the output is high, the other while it is low; one of them is always lit.</source>
            <translation>Eine Lampe leuchtet, während der Ausgang auf High ist, die andere, während er auf Low ist; eine von beiden leuchtet immer.</translation>
        </message>
        <message>
            <source>Slipway crossing signal</source>
            <translation>Signal am Slipübergang</translation>
        </message>
        <message>
            <source>Short flash with a steering diode</source>
            <translation>Kurzer Blitz mit einer Steuerdiode</translation>
        </message>
        <message>
            <source>A diode lets the capacitor charge past R2, so that the lamp can be lit for less than half of the time.</source>
            <translation>Eine Diode lässt den Kondensator an R2 vorbei laden, sodass die Lampe weniger als die Hälfte der Zeit leuchten kann.</translation>
        </message>
        <message>
            <source>Breakwater beacon</source>
            <translation>Bake am Wellenbrecher</translation>
        </message>
        <message>
            <source>Equal halves from one resistor</source>
            <translation>Gleiche Hälften mit einem Widerstand</translation>
        </message>
        <message>
            <source>One resistor from the output charges and discharges the capacitor, so that both phases are alike.</source>
            <translation>Ein Widerstand am Ausgang lädt und entlädt den Kondensator, sodass beide Phasen gleich lang sind.</translation>
        </message>
        <message>
            <source>Chandler's window sign</source>
            <translation>Schaufensterlicht des Schiffsausrüsters</translation>
        </message>
        <message>
            <source>Rate set by a control voltage</source>
            <translation>Blinkrate über eine Steuerspannung</translation>
        </message>
        <message>
            <source>A variable resistor sets the voltage of pin 5 and with it the rate; the wish holds at its middle.</source>
            <translation>Ein Potentiometer stellt die Spannung an Pin 5 und damit die Blinkrate ein; der Wunsch gilt für seine Mittelstellung.</translation>
        </message>
        <message>
            <source>Tide gauge lamp</source>
            <translation>Pegellampe</translation>
        </message>
        <message>
            <source>Groups of flashes: a slow timer gates a fast one</source>
            <translation>Gruppen von Blitzen: ein langsamer Timer schaltet einen schnellen</translation>
        </message>
        <message>
            <source>The output of a slow timer holds the reset of a fast one, so that flashes come in groups.</source>
            <translation>Der Ausgang eines langsamen Timers steuert den Reset eines schnellen, sodass die Blitze in Gruppen kommen.</translation>
        </message>
        <message>
            <source>Ferry berth light</source>
            <translation>Licht am Fähranleger</translation>
        </message>
        <message>
            <source>must be %1 to %2, got %3</source>
            <translation>zulässig sind %1 bis %2, angegeben ist %3</translation>
        </message>
        <message>
            <source>at %1 the %2 lamp takes %3, and the output leaves it %4; ask for a higher supply voltage, another colour or less current</source>
            <translation>bei %1 braucht die Lampe (%2) %3, und der Ausgang lässt ihr %4; eine höhere Versorgungsspannung, eine andere Farbe oder weniger Strom wünschen</translation>
        </message>
        <message>
            <source>lamps</source>
            <translation>Lampen</translation>
        </message>
        <message>
            <source>both lamps together take %1, and the output swings by only %2; ask for a higher supply voltage, another colour or less current</source>
            <translation>beide Lampen zusammen brauchen %1, und der Ausgang hat nur %2 Hub; eine höhere Versorgungsspannung, eine andere Farbe oder weniger Strom wünschen</translation>
        </message>
        <message>
            <source>'%1' is no colour that a ready blinker can have</source>
            <translation>„%1“ ist keine Farbe, die ein fertiger Blinker haben kann</translation>
        </message>
        <message>
            <source>lamp current</source>
            <translation>Lampenstrom</translation>
        </message>
        <message>
            <source>flashes a minute</source>
            <translation>je Minute</translation>
        </message>
        <message>
            <source>lit share</source>
            <translation>Leuchtanteil</translation>
        </message>
        <message>
            <source>groups a minute</source>
            <translation>Gruppen je Minute</translation>
        </message>
        <message>
            <source>a group would hold only %1 flashes; ask for fewer groups or more flashes a minute</source>
            <translation>eine Gruppe hätte nur %1 Blitze; weniger Gruppen oder mehr Blitze je Minute wünschen</translation>
        </message>
        <message>
            <source>answers</source>
            <translation>lösungsblatt</translation>
        </message>
        <message>
            <source>the circuit would not blink</source>
            <translation>die Schaltung würde nicht blinken</translation>
        </message>
        <message>
            <source>the output changes with nearly every sample: record it with a shorter time step</source>
            <translation>der Ausgang wechselt mit fast jedem Abtastwert: mit kleinerer Schrittweite aufzeichnen</translation>
        </message>
        <message>
            <source>the output goes from %1 to %2 and does not stay at two levels that stand out: its switchings cannot be told</source>
            <translation>der Ausgang geht von %1 bis %2 und bleibt nicht auf zwei deutlichen Pegeln: Umschaltungen sind nicht zu erkennen</translation>
        </message>
        <message>
            <source>the capacitor does not turn at two steady levels: no switchings can be told</source>
            <translation>der Kondensator kehrt nicht an zwei festen Schwellen um: Umschaltungen sind nicht zu erkennen</translation>
        </message>
        <message>
            <source>no column has two levels that it goes between, and none turns at two steady levels as a timing capacitor does: no switchings can be told</source>
            <translation>keine Spalte wechselt zwischen zwei Pegeln, und keine kehrt wie ein zeitbestimmender Kondensator an zwei festen Schwellen um: Umschaltungen sind nicht zu erkennen</translation>
        </message>
        <message>
            <source>there are only %1 rows of numbers: at least %2 are needed</source>
            <translation>es gibt nur %1 Zeilen mit Zahlen: mindestens %2 werden gebraucht</translation>
        </message>
        <message>
            <source>the time does not advance from row to row</source>
            <translation>die Zeit schreitet von Zeile zu Zeile nicht fort</translation>
        </message>
        <message>
            <source>1 switching was found.</source>
            <translation>1 Umschaltung wurde gefunden.</translation>
        </message>
        <message>
            <source>%1 switchings were found.</source>
            <translation>%1 Umschaltungen wurden gefunden.</translation>
        </message>
        <message>
            <source>1 state of a sample or two was taken for glitches and passed over.</source>
            <translation>1 Zustand von ein oder zwei Abtastwerten wurde als Störung angesehen und übergangen.</translation>
        </message>
        <message>
            <source>%1 states of a sample or two were taken for glitches and passed over.</source>
            <translation>%1 Zustände von ein oder zwei Abtastwerten wurden als Störungen angesehen und übergangen.</translation>
        </message>
        <message>
            <source>1 row without a number was passed over, the first in line %1.</source>
            <translation>1 Zeile ohne Zahl wurde übergangen, die erste ist Zeile %1.</translation>
        </message>
        <message>
            <source>%1 rows without a number were passed over, the first in line %2.</source>
            <translation>%1 Zeilen ohne Zahl wurden übergangen, die erste ist Zeile %2.</translation>
        </message>
        <message>
            <source>Times of neighbouring rows are equal as written: they are spaced evenly here.</source>
            <translation>Zeiten benachbarter Zeilen sind gleich geschrieben: Sie werden hier gleichmäßig verteilt.</translation>
        </message>
        <message>
            <source>It seems to begin with power-on: the first high phase is longer than the others.</source>
            <translation>Sie scheint mit dem Einschalten zu beginnen: Die erste High-Phase ist länger als die anderen.</translation>
        </message>
        <message>
            <source>There is no fitted value of %1.</source>
            <translation>Von %1 gibt es keinen angepassten Wert.</translation>
        </message>
        <message>
            <source>The drawer has no such part.</source>
            <translation>Die Schublade hat kein solches Bauteil.</translation>
        </message>
        <message>
            <source>No value of %1 gives this rate on this board.</source>
            <translation>Kein Wert von %1 ergibt diese Rate auf dieser Platine.</translation>
        </message>
        <message>
            <source>Reset (pin 4) of %1, in net '%2', stays at %3, under its level of %4, which holds the output low: join it to the supply.</source>
            <translation>Reset (Pin 4) von %1, im Netz „%2“, bleibt bei %3, unter seiner Schaltschwelle von %4; das hält den Ausgang auf Low: mit der Versorgung verbinden.</translation>
        </message>
        <message>
            <source>%1 through %2</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>%1 takes %2</source>
            <translation>%2 (%1)</translation>
        </message>
        <message>
            <source>Trigger (pin 2) of %1, in net '%2', stays at %3, under its level of %4, which keeps the output high: join pins 2 and 6 to the timing capacitor.</source>
            <translation>Trigger (Pin 2) von %1, im Netz „%2“, bleibt bei %3, unter seiner Schaltschwelle von %4; das hält den Ausgang auf High: Pins 2 und 6 mit dem zeitbestimmenden Kondensator verbinden.</translation>
        </message>
        <message>
            <source>Threshold (pin 6) of %1 is joined to nothing, so nothing ends the high phase: join it to pin 2.</source>
            <translation>Threshold (Pin 6) von %1 ist mit nichts verbunden, sodass nichts die High-Phase beendet: mit Pin 2 verbinden.</translation>
        </message>
        <message>
            <source>Threshold (pin 6) of %1 comes to rest at %2, under its level of %3: %4</source>
            <translation>Threshold (Pin 6) von %1 kommt bei %2 zur Ruhe, unter seiner Schaltschwelle von %3. %4</translation>
        </message>
        <message>
            <source>Trigger (pin 2) of %1 is joined to nothing, so nothing starts the next flash: join it to pin 6.</source>
            <translation>Trigger (Pin 2) von %1 ist mit nichts verbunden, sodass nichts den nächsten Blitz auslöst: mit Pin 6 verbinden.</translation>
        </message>
        <message>
            <source>Trigger (pin 2) of %1 comes to rest at %2, above its level of %3: %4</source>
            <translation>Trigger (Pin 2) von %1 kommt bei %2 zur Ruhe, über seiner Schaltschwelle von %3. %4</translation>
        </message>
        <message>
            <source>Take chosen values as Set A</source>
            <translation>Gewählte Werte als Satz A übernehmen</translation>
        </message>
        <message>
            <source>Take chosen values as Set B</source>
            <translation>Gewählte Werte als Satz B übernehmen</translation>
        </message>
        <message>
            <source>The open circuit has no such part as %1.</source>
            <translation>In der offenen Schaltung fehlt: %1.</translation>
        </message>
        <message>
            <source>wants at least 2 points</source>
            <translation>braucht mindestens 2 Punkte</translation>
        </message>
        <message>
            <source>takes logarithmic steps between ends above 0 only; even steps go from and to any value</source>
            <translation>logarithmische Schritte gehen nur zwischen Werten über 0; gleichmäßige Schritte gehen von jedem zu jedem Wert</translation>
        </message>
        <message>
            <source>The wiring has no textbook formula.</source>
            <translation>Für diese Verdrahtung gibt es keine Lehrbuchformel.</translation>
        </message>
        <message>
            <source>%1 is shorted: its plus and minus are both in net '%2'. Give each a net of its own.</source>
            <translation>%1 ist kurzgeschlossen: Plus und Minus liegen beide am Netz „%2“. Jedem ein eigenes Netz geben.</translation>
        </message>
        <message>
            <source>%1 is shorted by %2, %3 together, and only %4 of its %5 are left at its pins.</source>
            <translation>%1 ist kurzgeschlossen (über %2, zusammen %3), und an den Anschlüssen bleiben nur %4 von %5.</translation>
        </message>
        <message>
            <source>%1 is shorted by %2, %3, and only %4 of its %5 are left at its pins.</source>
            <translation>%1 ist kurzgeschlossen (über %2, %3), und an den Anschlüssen bleiben nur %4 von %5.</translation>
        </message>
        <message>
            <source>%1 is shorted by %2, and only %3 of its %4 are left at its pins.</source>
            <translation>%1 ist kurzgeschlossen (Ursache: %2), und an den Anschlüssen bleiben nur %3 von %4.</translation>
        </message>
        <message>
            <source>No path leads from pin 8 of %2 to the plus of %1: join them.</source>
            <translation>Von Pin 8 von %2 führt kein Weg zum Pluspol von %1: beide verbinden.</translation>
        </message>
        <message>
            <source>%3 is open between the plus of %1 and pin 8 of %2, and there is no other path.</source>
            <translation>%3 ist offen zwischen dem Pluspol von %1 und Pin 8 von %2, und es gibt keinen anderen Weg.</translation>
        </message>
        <message>
            <source>%3 are open between the plus of %1 and pin 8 of %2, and there is no other path.</source>
            <translation>%3 sind offen zwischen dem Pluspol von %1 und Pin 8 von %2, und es gibt keinen anderen Weg.</translation>
        </message>
        <message>
            <source>%3 lies the wrong way round between the plus of %1 and pin 8 of %2, and there is no other path.</source>
            <translation>%3 liegt verkehrt herum zwischen dem Pluspol von %1 und Pin 8 von %2, und es gibt keinen anderen Weg.</translation>
        </message>
        <message>
            <source>No path leads from pin 1 of %2 to the minus of %1: join them.</source>
            <translation>Von Pin 1 von %2 führt kein Weg zum Minuspol von %1: beide verbinden.</translation>
        </message>
        <message>
            <source>%3 is open between the minus of %1 and pin 1 of %2, and there is no other path.</source>
            <translation>%3 ist offen zwischen dem Minuspol von %1 und Pin 1 von %2, und es gibt keinen anderen Weg.</translation>
        </message>
        <message>
            <source>%3 are open between the minus of %1 and pin 1 of %2, and there is no other path.</source>
            <translation>%3 sind offen zwischen dem Minuspol von %1 und Pin 1 von %2, und es gibt keinen anderen Weg.</translation>
        </message>
        <message>
            <source>%3 lies the wrong way round between the minus of %1 and pin 1 of %2, and there is no other path.</source>
            <translation>%3 liegt verkehrt herum zwischen dem Minuspol von %1 und Pin 1 von %2, und es gibt keinen anderen Weg.</translation>
        </message>
        <message>
            <source>The circuit has no supply: add one.</source>
            <translation>Die Schaltung hat keine Versorgung: eine hinzufügen.</translation>
        </message>
        <message>
            <source>%1 has no supply: pins 8 and 1 are joined to nothing. Join pin 8 to the supply's plus and pin 1 to its minus.</source>
            <translation>%1 hat keine Versorgung: Die Pins 8 und 1 sind mit nichts verbunden. Pin 8 mit dem Pluspol und Pin 1 mit dem Minuspol der Versorgung verbinden.</translation>
        </message>
        <message>
            <source>%1 has no supply: pin %2 is joined to nothing. Join pin 8 to the supply's plus and pin 1 to its minus.</source>
            <translation>%1 hat keine Versorgung: Pin %2 ist mit nichts verbunden. Pin 8 mit dem Pluspol und Pin 1 mit dem Minuspol der Versorgung verbinden.</translation>
        </message>
        <message>
            <source>Pins 8 and 1 of %1 are both in net '%2': join pin 8 to the supply's plus and pin 1 to its minus.</source>
            <translation>Die Pins 8 und 1 von %1 liegen beide am Netz „%2“: Pin 8 mit dem Pluspol und Pin 1 mit dem Minuspol der Versorgung verbinden.</translation>
        </message>
        <message>
            <source>Pin 8 of %1 lies %2 below pin 1: %3 is the wrong way round. Join pin 8 to its plus and pin 1 to its minus.</source>
            <translation>Pin 8 von %1 liegt %2 unter Pin 1: %3 ist verpolt. Pin 8 mit dem Pluspol und Pin 1 mit dem Minuspol verbinden.</translation>
        </message>
        <message>
            <source>The plus of %1 is joined to nothing.</source>
            <translation>Der Pluspol von %1 ist mit nichts verbunden.</translation>
        </message>
        <message>
            <source>The minus of %1 is joined to nothing.</source>
            <translation>Der Minuspol von %1 ist mit nichts verbunden.</translation>
        </message>
        <message>
            <source>%1 more parts</source>
            <translation>%1 weitere Bauteile</translation>
        </message>
        <message>
            <source>%1 float: no part joins them to %2. Join pin 8 of %3 to its plus and pin 1 to its minus.</source>
            <translation>%1 hängen in der Luft: Kein Bauteil verbindet sie mit %2. Pin 8 von %3 mit dem Pluspol und Pin 1 mit dem Minuspol verbinden.</translation>
        </message>
        <message>
            <source>%1 floats: no part joins it to %2. Join pin 8 of %3 to its plus and pin 1 to its minus.</source>
            <translation>%1 hängt in der Luft: Kein Bauteil stellt eine Verbindung mit %2 her. Pin 8 von %3 mit dem Pluspol und Pin 1 mit dem Minuspol verbinden.</translation>
        </message>
        <message>
            <source>Only %1 are left between pins 8 and 1 of %2: %3 gives no more than %4.</source>
            <translation>Zwischen den Pins 8 und 1 von %2 bleiben nur %1: %3 liefert nicht mehr als %4.</translation>
        </message>
        <message>
            <source>Only %1 are left between pins 8 and 1 of %2: %3, %4 together, lie between them and %5.</source>
            <translation>Zwischen den Pins 8 und 1 von %2 bleiben nur %1: Zwischen ihnen und %5 liegen %3, zusammen %4.</translation>
        </message>
        <message>
            <source>Only %1 are left between pins 8 and 1 of %2: %3, %4, lies between them and %5.</source>
            <translation>Zwischen den Pins 8 und 1 von %2 bleiben nur %1: Zwischen ihnen und %5 liegt %3 mit %4.</translation>
        </message>
        <message>
            <source>Only %1 are left between pins 8 and 1 of %2.</source>
            <translation>Zwischen den Pins 8 und 1 von %2 bleiben nur %1.</translation>
        </message>
        <message>
            <source>there are no number variants of a wiring that has no textbook formula</source>
            <translation>zu einer Verdrahtung ohne Lehrbuchformel gibt es keine Zahlenvarianten</translation>
        </message>
        <message>
            <source>there are no number variants of a circuit that does not blink</source>
            <translation>zu einer Schaltung, die nicht blinkt, gibt es keine Zahlenvarianten</translation>
        </message>
        <message>
            <source>no other preferred values of the timing parts give a blinker that serves</source>
            <translation>keine anderen Vorzugswerte der zeitbestimmenden Bauteile ergeben einen brauchbaren Blinker</translation>
        </message>
        <message>
            <source>The run was ended after %1 steps within %2: something in the circuit moves far faster than the timer. Look for a value that is far too small or too large.</source>
            <translation>Der Lauf wurde nach %1 Schritten innerhalb von %2 beendet: Etwas in der Schaltung ändert sich viel schneller als der Timer. Nach einem viel zu kleinen oder viel zu großen Wert suchen.</translation>
        </message>
        <message>
            <source>The run was ended after %1 switchings within %2: %3 switches without end. Look for feedback from its output to its pins 2, 4, 5 or 6.</source>
            <translation>Der Lauf wurde nach %1 Umschaltungen innerhalb von %2 beendet: %3 schaltet ohne Ende um. Nach einer Rückkopplung vom Ausgang auf die Pins 2, 4, 5 oder 6 suchen.</translation>
        </message>
        <message>
            <source>The run ended at %1 (%2), and %3 had not switched till then.</source>
            <translation>Der Lauf endete bei %1 (%2), und bis dahin hatte %3 nicht umgeschaltet.</translation>
        </message>
        <message>
            <source>The run ended at %1 (%2), and %3 had switched only once till then.</source>
            <translation>Der Lauf endete bei %1 (%2), und bis dahin hatte %3 nur einmal umgeschaltet.</translation>
        </message>
        <message>
            <source>The circuit has no timer: add one.</source>
            <translation>Die Schaltung hat keinen Timer: einen hinzufügen.</translation>
        </message>
        <message>
            <source>The circuit equations have no solution at %1: look for a short, or for a source across another.</source>
            <translation>Die Gleichungen der Schaltung haben bei %1 keine Lösung: nach einem Kurzschluss oder nach parallel liegenden Quellen suchen.</translation>
        </message>
        <message>
            <source>Check for shorts before the supply is joined, and take it off before the wiring is changed: a shorted battery can burn you, or burst. Never mains.</source>
            <translation>Vor dem Anschließen der Versorgung auf Kurzschlüsse prüfen und sie vor dem Umbau trennen: Eine kurzgeschlossene Batterie kann Verbrennungen verursachen oder platzen. Niemals Netzspannung.</translation>
        </message>
        <message>
            <source>Mind plus and minus of the electrolytic capacitors: the wrong way round they can fail with force.</source>
            <translation>Auf Plus und Minus der Elektrolytkondensatoren achten: Verpolt können sie platzen.</translation>
        </message>
        <message>
            <source>More than three flashes a second can set off seizures in some people. Do not look into strong lamps from close by. Local rules and licensed practice decide what a light may be used for.</source>
            <translation>Mehr als drei Blitze je Sekunde können bei manchen Menschen Anfälle auslösen. Nicht aus der Nähe in starke Lampen sehen. Wofür ein Licht verwendet werden darf, bestimmen örtliche Vorschriften und zugelassene Fachleute.</translation>
        </message>
        <message>
            <source>pink</source>
            <translation>rosa</translation>
        </message>
        <message>
            <source>silver</source>
            <translation>silber</translation>
        </message>
        <message>
            <source>gold</source>
            <translation>gold</translation>
        </message>
        <message>
            <source>black</source>
            <translation>schwarz</translation>
        </message>
        <message>
            <source>brown</source>
            <translation>braun</translation>
        </message>
        <message>
            <source>red</source>
            <translation>rot</translation>
        </message>
        <message>
            <source>orange</source>
            <translation>orange</translation>
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
            <source>blue</source>
            <translation>blau</translation>
        </message>
        <message>
            <source>violet</source>
            <translation>violett</translation>
        </message>
        <message>
            <source>grey</source>
            <translation>grau</translation>
        </message>
        <message>
            <source>white</source>
            <translation>weiß</translation>
        </message>
        <message>
            <source>must be greater than 0 to have colour bands, got %1</source>
            <translation>muss größer als 0 sein, um Farbringe zu haben, ist aber %1</translation>
        </message>
        <message>
            <source>must be 3 to 6, got %1</source>
            <translation>muss 3 bis 6 sein, ist aber %1</translation>
        </message>
        <message>
            <source>%1 has more than the %2 figures that %3 bands show</source>
            <translation>%1 hat mehr als die %2 Ziffern, die %3 Ringe zeigen</translation>
        </message>
        <message>
            <source>no multiplier band reaches %1</source>
            <translation>kein Multiplikatorring reicht bis %1</translation>
        </message>
        <message>
            <source>three bands stand for 20 %, not for %1</source>
            <translation>drei Ringe stehen für 20 %, nicht für %1</translation>
        </message>
        <message>
            <source>no band stands for %1</source>
            <translation>kein Ring steht für %1</translation>
        </message>
        <message>
            <source>the sixth band needs one</source>
            <translation>der sechste Ring braucht einen</translation>
        </message>
        <message>
            <source>%1 stands for no figure</source>
            <translation>%1 steht für keine Ziffer</translation>
        </message>
        <message>
            <source>the figures must not all be 0</source>
            <translation>die Ziffern dürfen nicht alle 0 sein</translation>
        </message>
        <message>
            <source>%1 stands for no tolerance</source>
            <translation>%1 steht für keine Toleranz</translation>
        </message>
        <message>
            <source>%1 stands for no temperature coefficient</source>
            <translation>%1 steht für keinen Temperaturkoeffizienten</translation>
        </message>
        <message>
            <source>'%1' is no colour of a band</source>
            <translation>„%1“ ist keine Farbe eines Rings</translation>
        </message>
        <message>
            <source>no letter stands for %1 % to %2 %</source>
            <translation>kein Buchstabe steht für %1 % bis %2 %</translation>
        </message>
        <message>
            <source>must be greater than 0 to have a code, got %1</source>
            <translation>muss größer als 0 sein, um einen Aufdruck zu haben, ist aber %1</translation>
        </message>
        <message>
            <source>%1 has more than %2 figures</source>
            <translation>%1 hat mehr als %2 Ziffern</translation>
        </message>
        <message>
            <source>no letter code reaches %1</source>
            <translation>kein Buchstabencode reicht bis %1</translation>
        </message>
        <message>
            <source>'%1' has no letter in the place of the decimal point, such as 4K7 or R47</source>
            <translation>„%1“ hat keinen Buchstaben an der Stelle des Kommas, wie 4K7 oder R47</translation>
        </message>
        <message>
            <source>'%1' has no letter in the place of the decimal point, such as 4n7 or 33p</source>
            <translation>„%1“ hat keinen Buchstaben an der Stelle des Kommas, wie 4n7 oder 33p</translation>
        </message>
        <message>
            <source>'%1' has no figures around its letter, or too many</source>
            <translation>„%1“ hat um den Buchstaben keine oder zu viele Ziffern</translation>
        </message>
        <message>
            <source>'%1' says 0</source>
            <translation>„%1“ bedeutet 0</translation>
        </message>
        <message>
            <source>%1 has more than the two figures that a three-digit code shows</source>
            <translation>%1 hat mehr als die zwei Ziffern, die ein dreistelliger Code zeigt</translation>
        </message>
        <message>
            <source>no three-digit code reaches %1</source>
            <translation>kein dreistelliger Code reicht bis %1</translation>
        </message>
        <message>
            <source>'%1' is not three digits and at most a tolerance letter, such as 104K</source>
            <translation>„%1“ besteht nicht aus drei Ziffern und höchstens einem Toleranzbuchstaben, wie 104K</translation>
        </message>
        <message>
            <source>the sign '%1' has no meaning in a value</source>
            <translation>das Zeichen „%1“ hat in einem Wert keine Bedeutung</translation>
        </message>
        <message>
            <source>'%1' is %2, but %3</source>
            <translation>„%1“ steht für %2, aber %3</translation>
        </message>
        <message>
            <source>'%1' does not fit: %2</source>
            <translation>„%1“ passt nicht: %2</translation>
        </message>
        <message>
            <source>two prefixes in '%1'</source>
            <translation>zwei Vorsätze in „%1“</translation>
        </message>
        <message>
            <source>'%1' is no SI prefix; '%2' is one</source>
            <translation>„%1“ ist kein SI-Vorsatz; „%2“ ist einer</translation>
        </message>
        <message>
            <source>'%1' is no SI prefix; the large ones are k, M, G and T</source>
            <translation>„%1“ ist kein SI-Vorsatz; die großen sind k, M, G und T</translation>
        </message>
        <message>
            <source>'%1' is no SI prefix or unit that fits; %2</source>
            <translation>„%1“ ist kein passender SI-Vorsatz und keine passende Einheit; %2</translation>
        </message>
        <message>
            <source>the power of ten after '%1' is missing</source>
            <translation>nach „%1“ fehlt die Zehnerpotenz</translation>
        </message>
        <message>
            <source>two decimal marks in '%1'; write the number without grouping, with one point or comma</source>
            <translation>zwei Dezimalzeichen in „%1“; die Zahl ohne Gruppierung und mit einem Punkt oder Komma schreiben</translation>
        </message>
        <message>
            <source>there is no number in '%1'</source>
            <translation>in „%1“ steht keine Zahl</translation>
        </message>
        <message>
            <source>'R' stands for the decimal mark of ohms only; %1</source>
            <translation>„R“ steht nur bei Ohm für das Dezimalzeichen; %1</translation>
        </message>
        <message>
            <source>two decimal marks: '%1' between digits stands for one itself</source>
            <translation>zwei Dezimalzeichen: „%1“ zwischen Ziffern steht selbst für eines</translation>
        </message>
        <message>
            <source>two prefixes: '%1' and '%2'</source>
            <translation>zwei Vorsätze: „%1“ und „%2“</translation>
        </message>
        <message>
            <source>a space inside the number; write it in one piece</source>
            <translation>ein Leerzeichen in der Zahl; sie in einem Stück schreiben</translation>
        </message>
        <message>
            <source>'%1' after the number has digits in it, which has no meaning</source>
            <translation>„%1“ nach der Zahl enthält Ziffern, was keine Bedeutung hat</translation>
        </message>
        <message>
            <source>the text is too long for a value</source>
            <translation>der Text ist zu lang für einen Wert</translation>
        </message>
        <message>
            <source>nothing is written; %1</source>
            <translation>es steht nichts da; %1</translation>
        </message>
        <message>
            <source>'%1' is too large for a number</source>
            <translation>„%1“ ist zu groß für eine Zahl</translation>
        </message>
        <message>
            <source>'%1' is too close to 0 for a number</source>
            <translation>„%1“ liegt für eine Zahl zu nahe bei 0</translation>
        </message>
        <message>
            <source>volt</source>
            <translation>Volt</translation>
        </message>
        <message>
            <source>ampere</source>
            <translation>Ampere</translation>
        </message>
        <message>
            <source>ohm</source>
            <translation>Ohm</translation>
        </message>
        <message>
            <source>farad</source>
            <translation>Farad</translation>
        </message>
        <message>
            <source>second</source>
            <translation>Sekunden</translation>
        </message>
        <message>
            <source>hertz</source>
            <translation>Hertz</translation>
        </message>
        <message>
            <source>watt</source>
            <translation>Watt</translation>
        </message>
        <message>
            <source>joule</source>
            <translation>Joule</translation>
        </message>
        <message>
            <source>coulomb</source>
            <translation>Coulomb</translation>
        </message>
        <message>
            <source>candela</source>
            <translation>Candela</translation>
        </message>
        <message>
            <source>siemens</source>
            <translation>Siemens</translation>
        </message>
        <message>
            <source>kelvin</source>
            <translation>Kelvin</translation>
        </message>
        <message>
            <source>Change %1</source>
            <translation>%1 ändern</translation>
        </message>
        <message>
            <source>two values as in "%1" are needed</source>
            <translation>zwei Werte wie in „%1“ sind nötig</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>Blinker of %1</source>
            <translation>Blinker mit %1</translation>
        </message>
        <message>
            <source>the time step must be greater than 0</source>
            <translation>der Zeitschritt muss größer als 0 sein</translation>
        </message>
        <message>
            <source>must not be negative</source>
            <translation>darf nicht negativ sein</translation>
        </message>
        <message>
            <source>must be greater than 0</source>
            <translation>muss größer als 0 sein</translation>
        </message>
        <message>
            <source>the time base's uncertainty must be from 0 to 10 %</source>
            <translation>die Unsicherheit der Zeitbasis muss zwischen 0 und 10 % liegen</translation>
        </message>
        <message>
            <source>%1. Say below what stands where.</source>
            <translation>%1. Unten angeben, was wo steht.</translation>
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
        <message>
            <source>none</source>
            <translation>keine</translation>
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
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>1 press</source>
            <translation>1 Betätigung</translation>
        </message>
        <message>
            <source>%1 presses</source>
            <translation>%1 Betätigungen</translation>
        </message>
        <message>
            <source>1 stated value</source>
            <translation>1 angegebenen Wert</translation>
        </message>
        <message>
            <source>%1 stated values</source>
            <translation>%1 angegebene Werte</translation>
        </message>
        <message>
            <source>a part</source>
            <translation>ein Bauteil</translation>
        </message>
        <message>
            <source>net %1</source>
            <translation>Netz %1</translation>
        </message>
        <message>
            <source>a net</source>
            <translation>ein Netz</translation>
        </message>
        <message>
            <source>Change the title</source>
            <translation>Titel ändern</translation>
        </message>
        <message>
            <source>Change the notes</source>
            <translation>Notizen ändern</translation>
        </message>
        <message>
            <source>Change the run</source>
            <translation>Lauf ändern</translation>
        </message>
        <message>
            <source>Set a value</source>
            <translation>Wert setzen</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>Add %1</source>
            <translation>%1 hinzufügen</translation>
        </message>
        <message>
            <source>Remove %1</source>
            <translation>%1 entfernen</translation>
        </message>
        <message>
            <source>Rename %1 to %2</source>
            <translation>%1 in %2 umbenennen</translation>
        </message>
        <message>
            <source>Add net %1</source>
            <translation>Netz %1 hinzufügen</translation>
        </message>
        <message>
            <source>Join %1 to %2</source>
            <translation>%1 mit %2 verbinden</translation>
        </message>
        <message>
            <source>Leave %1 open</source>
            <translation>%1 offen lassen</translation>
        </message>
        <message>
            <source>Move %1</source>
            <translation>%1 verschieben</translation>
        </message>
        <message>
            <source>Take off the drawing: %1</source>
            <translation>Aus der Zeichnung nehmen: %1</translation>
        </message>
        <message>
            <source>Change the ties</source>
            <translation>Kopplungen ändern</translation>
        </message>
        <message>
            <source>Change the reels</source>
            <translation>Rollen ändern</translation>
        </message>
        <message>
            <source>Change the measurements</source>
            <translation>Messungen ändern</translation>
        </message>
        <message>
            <source>No change</source>
            <translation>Keine Änderung</translation>
        </message>
        <message>
            <source>Set %1 to %2 in Set A</source>
            <translation>%1 in Satz A auf %2 setzen</translation>
        </message>
        <message>
            <source>Set %1 to %2 in Set B</source>
            <translation>%1 in Satz B auf %2 setzen</translation>
        </message>
        <message>
            <source>Set %1 to %2</source>
            <translation>%1 auf %2 setzen</translation>
        </message>
        <message>
            <source>Set %1 to none in Set A</source>
            <translation>%1 in Satz A auf „keine Angabe“ setzen</translation>
        </message>
        <message>
            <source>Set %1 to none in Set B</source>
            <translation>%1 in Satz B auf „keine Angabe“ setzen</translation>
        </message>
        <message>
            <source>Set %1 to none</source>
            <translation>%1 auf „keine Angabe“ setzen</translation>
        </message>
        <message>
            <source>Take back the %1 in Set A</source>
            <translation>%1 in Satz A zurücknehmen</translation>
        </message>
        <message>
            <source>Take back the %1 in Set B</source>
            <translation>%1 in Satz B zurücknehmen</translation>
        </message>
        <message>
            <source>Take back the %1</source>
            <translation>%1 zurücknehmen</translation>
        </message>
        <message>
            <source>bipolar</source>
            <translation>bipolar</translation>
        </message>
        <message>
            <source>cmos</source>
            <translation>CMOS</translation>
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
            <source>pure-green</source>
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
            <source>%1 parts</source>
            <translation>%1 Bauteile</translation>
        </message>
        <message>
            <source>%1 has no such pin</source>
            <translation>%1 hat keinen solchen Anschluss</translation>
        </message>
        <message>
            <source>flashes reached</source>
            <translation>Zahl der Blitze erreicht</translation>
        </message>
        <message>
            <source>time limit reached</source>
            <translation>Zeitgrenze erreicht</translation>
        </message>
        <message>
            <source>nothing moves any more</source>
            <translation>nichts bewegt sich mehr</translation>
        </message>
        <message>
            <source>cancelled</source>
            <translation>abgebrochen</translation>
        </message>
        <message>
            <source>step budget used up</source>
            <translation>Vorrat an Schritten aufgebraucht</translation>
        </message>
        <message>
            <source>switching budget used up</source>
            <translation>Vorrat an Umschaltungen aufgebraucht</translation>
        </message>
        <message>
            <source>no solution of the circuit equations</source>
            <translation>keine Lösung der Schaltungsgleichungen</translation>
        </message>
        <message>
            <source>no powered timer</source>
            <translation>kein versorgter Timer</translation>
        </message>
        <message>
            <source>it has a period</source>
            <translation>er hat eine Periode</translation>
        </message>
        <message>
            <source>its output stops switching</source>
            <translation>sein Ausgang hört auf zu schalten</translation>
        </message>
        <message>
            <source>other timers switch within its cycles</source>
            <translation>andere Timer schalten innerhalb seiner Perioden</translation>
        </message>
        <message>
            <source>its cycles go on changing</source>
            <translation>seine Perioden ändern sich fortwährend</translation>
        </message>
        <message>
            <source>the search ended early</source>
            <translation>die Suche endete vorzeitig</translation>
        </message>
        <message>
            <source>There is no supply.</source>
            <translation>Es gibt keine Versorgung.</translation>
        </message>
        <message>
            <source>There is no timer.</source>
            <translation>Es gibt keinen Timer.</translation>
        </message>
        <message>
            <source>%1 has no supply: join pins 8 and 1.</source>
            <translation>%1 hat keine Versorgung: Pins 8 und 1 anschließen.</translation>
        </message>
        <message>
            <source>has a quote that does not end</source>
            <translation>enthält ein Anführungszeichen ohne Ende</translation>
        </message>
        <message>
            <source>line %1, column %2</source>
            <translation>Zeile %1, Spalte %2</translation>
        </message>
        <message>
            <source>the text ends before the JSON does</source>
            <translation>der Text endet vor dem JSON</translation>
        </message>
        <message>
            <source>a text holds a line end or another control sign, or lacks its closing quote</source>
            <translation>ein Text enthält ein Zeilenende oder ein anderes Steuerzeichen, oder das schließende Anführungszeichen fehlt</translation>
        </message>
        <message>
            <source>a text holds an escape that JSON does not know</source>
            <translation>ein Text enthält eine Umschreibung, die JSON nicht kennt</translation>
        </message>
        <message>
            <source>something follows after the end of the JSON</source>
            <translation>nach dem Ende des JSON folgt noch etwas</translation>
        </message>
        <message>
            <source>%1 is no JSON value</source>
            <translation>%1 ist kein JSON-Wert</translation>
        </message>
        <message>
            <source>%1 cannot stand here; perhaps a comma or colon is missing before it</source>
            <translation>%1 kann hier nicht stehen; vielleicht fehlt davor ein Komma oder Doppelpunkt</translation>
        </message>
        <message>
            <source>'%1' cannot stand here; the comma before it is too much</source>
            <translation>„%1“ kann hier nicht stehen; das Komma davor ist zu viel</translation>
        </message>
        <message>
            <source>'%1' cannot stand here</source>
            <translation>„%1“ kann hier nicht stehen</translation>
        </message>
        <message>
            <source>a list</source>
            <translation>eine Liste</translation>
        </message>
        <message>
            <source>an object</source>
            <translation>ein Objekt</translation>
        </message>
        <message>
            <source>a text</source>
            <translation>ein Text</translation>
        </message>
        <message>
            <source>true or false</source>
            <translation>true oder false</translation>
        </message>
        <message>
            <source>a number</source>
            <translation>eine Zahl</translation>
        </message>
        <message>
            <source>a whole number</source>
            <translation>eine ganze Zahl</translation>
        </message>
        <message>
            <source>a number or null</source>
            <translation>eine Zahl oder null</translation>
        </message>
        <message>
            <source>a list of numbers</source>
            <translation>eine Liste von Zahlen</translation>
        </message>
        <message>
            <source>a list of two numbers</source>
            <translation>eine Liste von zwei Zahlen</translation>
        </message>
        <message>
            <source>a number or a list of two numbers</source>
            <translation>eine Zahl oder eine Liste von zwei Zahlen</translation>
        </message>
        <message>
            <source>a list of [from, to] in seconds</source>
            <translation>eine Liste von [von, bis] in Sekunden</translation>
        </message>
        <message>
            <source>an object of parameter names and numbers</source>
            <translation>ein Objekt aus Parameternamen und Zahlen</translation>
        </message>
        <message>
            <source>line %1</source>
            <translation>Zeile %1</translation>
        </message>
        <message>
            <source>%1 is no number with a decimal comma</source>
            <translation>%1 ist keine Zahl mit Dezimalkomma</translation>
        </message>
        <message>
            <source>%1 is no number with a decimal point</source>
            <translation>%1 ist keine Zahl mit Dezimalpunkt</translation>
        </message>
        <message>
            <source>Column %1</source>
            <translation>Spalte %1</translation>
        </message>
        <message>
            <source>Column %1 (“%2”)</source>
            <translation>Spalte %1 („%2“)</translation>
        </message>
        <message>
            <source>something else, in %1</source>
            <translation>etwas anderes, in %1</translation>
        </message>
        <message>
            <source>the output, in %1</source>
            <translation>der Ausgang, in %1</translation>
        </message>
        <message>
            <source>the timing capacitor, in %1</source>
            <translation>der zeitbestimmende Kondensator, in %1</translation>
        </message>
        <message>
            <source>a comma</source>
            <translation>ein Komma</translation>
        </message>
        <message>
            <source>a semicolon</source>
            <translation>ein Semikolon</translation>
        </message>
        <message>
            <source>a tab</source>
            <translation>ein Tabulator</translation>
        </message>
        <message>
            <source>blanks</source>
            <translation>Leerzeichen</translation>
        </message>
        <message>
            <source>Line 1 above the table is passed over.</source>
            <translation>Zeile 1 über der Tabelle wird übergangen.</translation>
        </message>
        <message>
            <source>Lines 1 to %1 above the table are passed over.</source>
            <translation>Die Zeilen 1 bis %1 über der Tabelle werden übergangen.</translation>
        </message>
        <message>
            <source>The columns have no names.</source>
            <translation>Die Spalten haben keine Namen.</translation>
        </message>
        <message>
            <source>Line %1 names the columns.</source>
            <translation>Zeile %1 nennt die Spalten.</translation>
        </message>
        <message>
            <source>Lines %1 to %2 name the columns.</source>
            <translation>Die Zeilen %1 bis %2 nennen die Spalten.</translation>
        </message>
        <message>
            <source>comma</source>
            <translation>Komma</translation>
        </message>
        <message>
            <source>semicolon</source>
            <translation>Semikolon</translation>
        </message>
        <message>
            <source>tab</source>
            <translation>Tabulator</translation>
        </message>
        <message>
            <source>pin %1 of %2 (%3)</source>
            <translation>Pin %1 von %2 (%3)</translation>
        </message>
        <message>
            <source>%1 (%2 a minute)</source>
            <translation>%1 (%2 je Minute)</translation>
        </message>
        <message>
            <source>The parts in the drawer come no nearer to this wish.</source>
            <translation>Näher kommen die Bauteile in der Schublade diesem Wunsch nicht.</translation>
        </message>
        <message>
            <source>A rate of %1 is too fast for the timer with R1 and R2 of at least %2 each and at most %3 together, and C1 from %4 to %5.</source>
            <translation>Eine Blinkrate von %1 ist zu schnell für den Timer mit R1 und R2 von je mindestens %2 und zusammen höchstens %3 und C1 von %4 bis %5.</translation>
        </message>
        <message>
            <source>A rate of %1 is too slow for R1 and R2 of at least %2 each and at most %3 together, and C1 from %4 to %5, since leakage would keep larger ones from their level.</source>
            <translation>Eine Blinkrate von %1 ist zu langsam für R1 und R2 von je mindestens %2 und zusammen höchstens %3 und C1 von %4 bis %5; bei größeren Werten hielte der Leckstrom die Spannung unter der Schaltschwelle.</translation>
        </message>
        <message>
            <source>Lamps of %1 fade before they were lit for %2.</source>
            <translation>Lampen mit %1 verlöschen, bevor sie %2 lang geleuchtet haben.</translation>
        </message>
        <message>
            <source>A lit share of %1 at this rate is out of reach of R1 and R2 of at least %2 each and at most %3 together, and C1 from %4 to %5.</source>
            <translation>Ein Leuchtanteil von %1 ist bei dieser Blinkrate mit R1 und R2 von je mindestens %2 und zusammen höchstens %3 und C1 von %4 bis %5 nicht zu erreichen.</translation>
        </message>
        <message>
            <source>The parts in the drawer come no nearer to this range.</source>
            <translation>Näher kommen die Bauteile in der Schublade diesem Bereich nicht.</translation>
        </message>
        <message>
            <source>One variable resistor cannot hold a lit share of %1 from %2 to %3: it moves one phase more than the other.</source>
            <translation>Mit einem Potentiometer lässt sich ein Leuchtanteil von %1 nicht von %2 bis %3 halten: Es verändert eine Phase mehr als die andere.</translation>
        </message>
        <message>
            <source>The range from %1 to %2 is out of reach of one variable resistor of at most %3, with R1 and R2 of at least %4 each and at most %5 together, and C1 from %6 to %7.</source>
            <translation>Der Bereich von %1 bis %2 ist mit einem Potentiometer von höchstens %3 nicht zu erreichen, mit R1 und R2 von je mindestens %4 und zusammen höchstens %5 und C1 von %6 bis %7.</translation>
        </message>
        <message>
            <source>The drawer has no resistor near %1 for the lamp.</source>
            <translation>In der Schublade ist kein Widerstand von etwa %1 für die Lampe.</translation>
        </message>
        <message>
            <source>The drawer has no capacitor of %1 or more for the pair.</source>
            <translation>In der Schublade ist kein Kondensator von %1 oder mehr für das Paar.</translation>
        </message>
        <message>
            <source>The drawer has no resistor for the second lamp.</source>
            <translation>In der Schublade ist kein Widerstand für die zweite Lampe.</translation>
        </message>
        <message>
            <source>Over one settled cycle of %1.</source>
            <translation>Über eine eingeschwungene Periode von %1.</translation>
        </message>
        <message>
            <source>The cycles are not alike; over several of them, %1 on average.</source>
            <translation>Die Perioden gleichen sich nicht; über mehrere, im Mittel %1.</translation>
        </message>
        <message>
            <source>The board does not blink: at rest.</source>
            <translation>Die Platine blinkt nicht: in Ruhe.</translation>
        </message>
        <message>
            <source>The timer has no supply: at rest.</source>
            <translation>Der Timer hat keine Versorgung: in Ruhe.</translation>
        </message>
        <message>
            <source>There are no readings: the simulation found no settled state.</source>
            <translation>Es gibt keine Ablesungen: Die Simulation fand keinen eingeschwungenen Zustand.</translation>
        </message>
        <message>
            <source>Expected readings. %1</source>
            <translation>Erwartete Ablesungen. %1</translation>
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
            <source>dark</source>
            <translation>dunkel</translation>
        </message>
        <message>
            <source>always lit</source>
            <translation>leuchtet ständig</translation>
        </message>
        <message>
            <source>separate flashes</source>
            <translation>einzelne Blitze</translation>
        </message>
        <message>
            <source>flickers</source>
            <translation>flackert</translation>
        </message>
        <message>
            <source>appears steady</source>
            <translation>erscheint stetig</translation>
        </message>
        <message>
            <source>fixed</source>
            <translation>Festfeuer</translation>
        </message>
        <message>
            <source>flashing</source>
            <translation>Blitzfeuer</translation>
        </message>
        <message>
            <source>long-flashing</source>
            <translation>Blinkfeuer</translation>
        </message>
        <message>
            <source>isophase</source>
            <translation>Gleichtaktfeuer</translation>
        </message>
        <message>
            <source>occulting</source>
            <translation>unterbrochenes Feuer</translation>
        </message>
        <message>
            <source>quick</source>
            <translation>Funkelfeuer</translation>
        </message>
        <message>
            <source>very quick</source>
            <translation>schnelles Funkelfeuer</translation>
        </message>
        <message>
            <source>ultra quick</source>
            <translation>ultraschnelles Funkelfeuer</translation>
        </message>
        <message>
            <source>within</source>
            <translation>im Bereich</translation>
        </message>
        <message>
            <source>too slow</source>
            <translation>zu langsam</translation>
        </message>
        <message>
            <source>too fast</source>
            <translation>zu schnell</translation>
        </message>
        <message>
            <source>lit too short</source>
            <translation>leuchtet zu kurz</translation>
        </message>
        <message>
            <source>lit too long</source>
            <translation>leuchtet zu lang</translation>
        </message>
        <message>
            <source>wants two lamps taking turns</source>
            <translation>verlangt zwei Lampen im Wechsel</translation>
        </message>
        <message>
            <source>Take the battery off first. %1</source>
            <translation>Zuerst die Batterie abnehmen. %1</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>übliche Praxis, keine Quelle</translation>
        </message>
        <message>
            <source>rating of the lamp</source>
            <translation>Nennwert der Lampe</translation>
        </message>
        <message>
            <source>rating of the part</source>
            <translation>Nennwert des Bauteils</translation>
        </message>
        <message>
            <source>In the first flash after power-on %1 turns %2 into heat, more than twice the %3 that it is rated for.</source>
            <translation>Beim ersten Blitz nach dem Einschalten setzt %1 %2 in Wärme um, mehr als das Doppelte der Nennleistung von %3.</translation>
        </message>
        <message>
            <source>%1 turns %2 into heat for %3 at a time; it is rated for %4.</source>
            <translation>%1 setzt jeweils %3 lang %2 in Wärme um; die Nennleistung ist %4.</translation>
        </message>
        <message>
            <source>%1 turns %2 into heat; it is rated for %3.</source>
            <translation>%1 setzt %2 in Wärme um; die Nennleistung ist %3.</translation>
        </message>
        <message>
            <source>In the first flash after power-on pin %1 of %2 sinks up to %3, more than twice the %4 that it may carry.</source>
            <translation>Beim ersten Blitz nach dem Einschalten nimmt Pin %1 von %2 bis zu %3 auf, mehr als das Doppelte der zulässigen %4.</translation>
        </message>
        <message>
            <source>In the first flash after power-on pin %1 of %2 sources up to %3, more than twice the %4 that it may carry.</source>
            <translation>Beim ersten Blitz nach dem Einschalten liefert Pin %1 von %2 bis zu %3, mehr als das Doppelte der zulässigen %4.</translation>
        </message>
        <message>
            <source>Pin %1 of %2 sinks up to %3; it may carry %4.</source>
            <translation>Pin %1 von %2 nimmt bis zu %3 auf; zulässig sind %4.</translation>
        </message>
        <message>
            <source>Pin %1 of %2 sources up to %3; it may carry %4.</source>
            <translation>Pin %1 von %2 liefert bis zu %3; zulässig sind %4.</translation>
        </message>
        <message>
            <source>Discharge (pin 7) of %1 is joined through only %2 to ground, so the timing capacitor cannot charge.</source>
            <translation>Discharge (Pin 7) von %1 ist über nur %2 mit Masse verbunden, sodass sich der zeitbestimmende Kondensator nicht aufladen kann.</translation>
        </message>
        <message>
            <source>Discharge (pin 7) of %1 is joined straight to ground, so the timing capacitor cannot charge.</source>
            <translation>Discharge (Pin 7) von %1 ist direkt mit Masse verbunden, sodass sich der zeitbestimmende Kondensator nicht aufladen kann.</translation>
        </message>
        <message>
            <source>Discharge (pin 7) of %1 is joined through only %2 to the supply, and shorts it while the output is low.</source>
            <translation>Discharge (Pin 7) von %1 ist über nur %2 mit der Versorgung verbunden und schließt sie kurz, während der Ausgang auf Low ist.</translation>
        </message>
        <message>
            <source>Discharge (pin 7) of %1 is joined straight to the supply, and shorts it while the output is low.</source>
            <translation>Discharge (Pin 7) von %1 ist direkt mit der Versorgung verbunden und schließt sie kurz, während der Ausgang auf Low ist.</translation>
        </message>
        <message>
            <source>Join pin 8 to the plus of the supply and pin 1 to its minus.</source>
            <translation>Pin 8 mit dem Pluspol und Pin 1 mit dem Minuspol der Versorgung verbinden.</translation>
        </message>
        <message>
            <source>rate</source>
            <translation>Rate</translation>
        </message>
        <message>
            <source>cycle time</source>
            <translation>Periodendauer</translation>
        </message>
        <message>
            <source>pulse width</source>
            <translation>Impulsbreite</translation>
        </message>
        <message>
            <source>space width</source>
            <translation>Pausenbreite</translation>
        </message>
        <message>
            <source>duty cycle</source>
            <translation>Tastgrad</translation>
        </message>
        <message>
            <source>first flash</source>
            <translation>erster Blitz</translation>
        </message>
        <message>
            <source>voltage of %1</source>
            <translation>Spannung von %1</translation>
        </message>
        <message>
            <source>output high of %1</source>
            <translation>Ausgang von %1 auf High</translation>
        </message>
        <message>
            <source>output low of %1</source>
            <translation>Ausgang von %1 auf Low</translation>
        </message>
        <message>
            <source>current of %1</source>
            <translation>Strom von %1</translation>
        </message>
        <message>
            <source>The levels of %1 would have to be %2 off</source>
            <translation>Die Schwellen von %1 müssten um %2 daneben liegen</translation>
        </message>
        <message>
            <source>Of %1, %2 would have to be %3</source>
            <translation>Bei %1 müsste %2 den Wert %3 haben</translation>
        </message>
        <message>
            <source>%1 would have to be %2</source>
            <translation>%1 müsste %2 haben</translation>
        </message>
        <message>
            <source>%1 would have to be %2, %3 above what the circuit states</source>
            <translation>%1 müsste %2 haben, %3 über der Angabe der Schaltung</translation>
        </message>
        <message>
            <source>%1 would have to be %2, %3 below what the circuit states</source>
            <translation>%1 müsste %2 haben, %3 unter der Angabe der Schaltung</translation>
        </message>
        <message>
            <source>%1, which its own reading does not allow. Look for a wrong part or a fault in the wiring.</source>
            <translation>%1, was die eigene Ablesung nicht zulässt. Nach einem falschen Bauteil oder einem Fehler in der Verdrahtung suchen.</translation>
        </message>
        <message>
            <source>%1, far from what is usual. Look for a wrong part or a fault in the wiring.</source>
            <translation>%1, weitab vom Üblichen. Nach einem falschen Bauteil oder einem Fehler in der Verdrahtung suchen.</translation>
        </message>
        <message>
            <source>%1, outside its tolerance. Look for a wrong part or a fault in the wiring.</source>
            <translation>%1, außerhalb der Toleranz. Nach einem falschen Bauteil oder einem Fehler in der Verdrahtung suchen.</translation>
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
            <source>control</source>
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
            <source>supply</source>
            <translation>Versorgung</translation>
        </message>
        <message>
            <source>%1 (pin %2)</source>
            <translation>%1 (Pin %2)</translation>
        </message>
        <message>
            <source>%1, which leads to %2</source>
            <translation>%1 (führt zu %2)</translation>
        </message>
        <message>
            <source>%1, which leads to %2 through %3</source>
            <translation>%1 (führt über %3 zu %2)</translation>
        </message>
        <message>
            <source>mean</source>
            <translation>Mittelwert</translation>
        </message>
        <message>
            <source>least</source>
            <translation>kleinster Wert</translation>
        </message>
        <message>
            <source>most</source>
            <translation>größter Wert</translation>
        </message>
        <message>
            <source>%1 variable resistor</source>
            <translation>Potentiometer %1</translation>
        </message>
        <message>
            <source>%1 %2 electrolytic</source>
            <translation>Elko %1 %2</translation>
        </message>
        <message>
            <source>%1 electrolytic</source>
            <translation>Elko %1</translation>
        </message>
        <message>
            <source>%1 lamp</source>
            <translation>Lampe %1</translation>
        </message>
        <message>
            <source>Asked for: %1 flashes a minute within a group, lit for %2 % of the time, %3 groups a minute, %4 through a lamp, from %5.</source>
            <translation>Gewünscht: %1 Blitze je Minute innerhalb einer Gruppe, Leuchtanteil %2 %, %3 Gruppen je Minute, %4 durch eine Lampe, aus %5.</translation>
        </message>
        <message>
            <source>Asked for: %1 flashes a minute, lit for %2 % of the time, %3 through a lamp, from %4.</source>
            <translation>Gewünscht: %1 Blitze je Minute, Leuchtanteil %2 %, %3 durch eine Lampe, aus %4.</translation>
        </message>
        <message>
            <source>Asked for: %1 flashes a minute, %2 through a lamp, from %3.</source>
            <translation>Gewünscht: %1 Blitze je Minute, %2 durch eine Lampe, aus %3.</translation>
        </message>
        <message>
            <source>the output</source>
            <translation>der Ausgang</translation>
        </message>
        <message>
            <source>the timing capacitor</source>
            <translation>der zeitbestimmende Kondensator</translation>
        </message>
        <message>
            <source>neither output nor timing capacitor: it is kept and shown</source>
            <translation>weder Ausgang noch zeitbestimmender Kondensator (sie wird aufbewahrt und gezeigt)</translation>
        </message>
        <message>
            <source>The first voltage is %1, the second %2.</source>
            <translation>Die erste Spannung ist %1, die zweite %2.</translation>
        </message>
        <message>
            <source>The voltage is %1.</source>
            <translation>Die Spannung ist %1.</translation>
        </message>
        <message>
            <source>%1 samples, one every %2. %3 of them are kept for the picture.</source>
            <translation>%1 Abtastwerte, einer alle %2. %3 davon werden für das Bild behalten.</translation>
        </message>
        <message>
            <source>%1 samples, one every %2.</source>
            <translation>%1 Abtastwerte, einer alle %2.</translation>
        </message>
        <message>
            <source>The output stands at %1 and %2; the noise on it is %3.</source>
            <translation>Der Ausgang steht auf %1 und %2; das Rauschen darauf beträgt %3.</translation>
        </message>
        <message>
            <source>There is no output in it: the switchings are the capacitor's turns, at %1 and %2.</source>
            <translation>Es ist kein Ausgang darin: Die Umschaltungen sind die Umkehrpunkte des Kondensators, bei %1 und %2.</translation>
        </message>
        <message>
            <source>%1 (pin 5 holds it there)</source>
            <translation>%1 (von Pin 5 vorgegeben)</translation>
        </message>
        <message>
            <source>net '%1' is on no charging path. Join R1 from the supply to pin 7 and R2 from pin 7 to pins 2 and 6.</source>
            <translation>Das Netz „%1“ liegt an keinem Ladepfad. R1 von der Versorgung an Pin 7 und R2 von Pin 7 an die Pins 2 und 6 legen.</translation>
        </message>
        <message>
            <source>%1 is open in its only charging path.</source>
            <translation>Im einzigen Ladepfad offen: %1.</translation>
        </message>
        <message>
            <source>%1 lies the wrong way round in its only charging path.</source>
            <translation>Im einzigen Ladepfad verkehrt herum: %1.</translation>
        </message>
        <message>
            <source>it gets %1, and %2.</source>
            <translation>Dem Netz fließt zu: %1; es fließt ab: %2.</translation>
        </message>
        <message>
            <source>nothing charges it further.</source>
            <translation>Nichts lädt es weiter auf.</translation>
        </message>
        <message>
            <source>Take smaller timing resistors or a capacitor that leaks less.</source>
            <translation>Kleinere zeitbestimmende Widerstände oder einen Kondensator mit kleinerem Leckstrom nehmen.</translation>
        </message>
        <message>
            <source>Take %1 off that net, or smaller timing resistors.</source>
            <translation>%1 von diesem Netz lösen oder kleinere zeitbestimmende Widerstände nehmen.</translation>
        </message>
        <message>
            <source>discharge (pin 7) does not pull its net under %1, since it gets %2, and %3. Take larger resistors there.</source>
            <translation>Discharge (Pin 7) zieht sein Netz nicht unter %1. Dem Netz fließt zu: %2; es fließt ab: %3. Dort größere Widerstände nehmen.</translation>
        </message>
        <message>
            <source>the timing capacitor does not discharge. Join pin 7 to it through R2.</source>
            <translation>Der zeitbestimmende Kondensator entlädt sich nicht. Pin 7 über R2 mit ihm verbinden.</translation>
        </message>
        <message>
            <source>it gets %1, and %2. Lead %3 to pin 7 instead of the timing capacitor, or take it out.</source>
            <translation>Dem Netz fließt zu: %1; es fließt ab: %2. %3 an Pin 7 statt an den zeitbestimmenden Kondensator führen oder herausnehmen.</translation>
        </message>
        <message>
            <source>stays dark</source>
            <translation>bleibt dunkel</translation>
        </message>
        <message>
            <source>faint</source>
            <translation>zu schwach</translation>
        </message>
        <message>
            <source>too bright</source>
            <translation>zu hell</translation>
        </message>
        <message>
            <source>one lamp only</source>
            <translation>nur eine Lampe</translation>
        </message>
        <message>
            <source>both at once</source>
            <translation>beide zugleich</translation>
        </message>
        <message>
            <source>blinks as it should</source>
            <translation>blinkt, wie es soll</translation>
        </message>
        <message>
            <source>under 1 %</source>
            <translation>unter 1 %</translation>
        </message>
        <message>
            <source>%1, or %2</source>
            <translation>%1 oder %2</translation>
        </message>
        <message>
            <source>%1, or %2 more</source>
            <translation>%1 oder %2 weitere</translation>
        </message>
        <message>
            <source>That is plain enough to act on: mend the first one and look again.</source>
            <translation>Das ist deutlich genug: den ersten Fehler beheben und noch einmal nachsehen.</translation>
        </message>
        <message>
            <source>No reading at these places tells the first ones apart: look at the parts and joints themselves.</source>
            <translation>Keine Ablesung an diesen Stellen unterscheidet die ersten: die Bauteile und Verbindungen selbst ansehen.</translation>
        </message>
        <message>
            <source>Measure next: %1, %2.</source>
            <translation>Als Nächstes messen: %1, %2.</translation>
        </message>
        <message>
            <source>About %1 would mean %2</source>
            <translation>Etwa %1 hieße: %2</translation>
        </message>
        <message>
            <source>To tell it from the others: %1, %2, would read about %3.</source>
            <translation>Zur Unterscheidung von den anderen: %1, %2, wäre etwa %3.</translation>
        </message>
        <message>
            <source>Each single fault was simulated; two at a time, and parts that fail in odd ways, were not. Shares compare these faults with one another, no more.</source>
            <translation>Jeder einzelne Fehler wurde simuliert; zwei zugleich und Bauteile, die auf ungewöhnliche Art versagen, nicht. Die Anteile vergleichen diese Fehler miteinander, mehr nicht.</translation>
        </message>
        <message>
            <source>%1 and %2</source>
            <translation>%1 und %2</translation>
        </message>
        <message>
            <source>%1, %2: %3</source>
            <translation>%1, %2: %3</translation>
        </message>
        <message>
            <source>%1, %2: plus to %3, minus to %4; join it last</source>
            <translation>%1, %2: Plus an %3, Minus an %4; zuletzt anschließen</translation>
        </message>
        <message>
            <source>%1, %2: one end to %3, the other end to %4, wiper to %5</source>
            <translation>%1, %2: ein Ende an %3, das andere Ende an %4, Schleifer an %5</translation>
        </message>
        <message>
            <source>%1, %2: anode (the longer lead) to %3, cathode to %4</source>
            <translation>%1, %2: Anode (der längere Draht) an %3, Kathode an %4</translation>
        </message>
        <message>
            <source>%1, %2: anode to %3, cathode (the ring) to %4</source>
            <translation>%1, %2: Anode an %3, Kathode (der Ring) an %4</translation>
        </message>
        <message>
            <source>%1, %2: plus to %3, minus to %4</source>
            <translation>%1, %2: Plus an %3, Minus an %4</translation>
        </message>
        <message>
            <source>%1, %2: from %3 to %4</source>
            <translation>%1, %2: von %3 an %4</translation>
        </message>
        <message>
            <source>+ rail</source>
            <translation>Plus-Schiene</translation>
        </message>
        <message>
            <source>0 V rail</source>
            <translation>0-V-Schiene</translation>
        </message>
        <message>
            <source>nothing (left open)</source>
            <translation>nichts (bleibt offen)</translation>
        </message>
        <message>
            <source>pin %1 of %2</source>
            <translation>Pin %1 von %2</translation>
        </message>
        <message>
            <source>pins %1 of %2</source>
            <translation>Pins %1 von %2</translation>
        </message>
        <message>
            <source>pin %1</source>
            <translation>Pin %1</translation>
        </message>
        <message>
            <source>pins %1</source>
            <translation>Pins %1</translation>
        </message>
        <message>
            <source>the %1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>pin %1 to %2</source>
            <translation>Pin %1 an %2</translation>
        </message>
        <message>
            <source>pins %1 to each other</source>
            <translation>Pins %1 miteinander</translation>
        </message>
        <message>
            <source>pins %1 to %2</source>
            <translation>Pins %1 an %2</translation>
        </message>
        <message>
            <source>notch up, pin 1 at the top left</source>
            <translation>Kerbe oben, Pin 1 oben links</translation>
        </message>
        <message>
            <source>notch up, pin 1 at the top left; %1</source>
            <translation>Kerbe oben, Pin 1 oben links; %1</translation>
        </message>
        <message>
            <source>Values of Set A</source>
            <translation>Werte von Satz A</translation>
        </message>
        <message>
            <source>Values of Set B</source>
            <translation>Werte von Satz B</translation>
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
            <source>band %1</source>
            <translation>Ring %1</translation>
        </message>
        <message>
            <source>'%1' ends in '%2', which stands for no tolerance here</source>
            <translation>„%1“ endet mit „%2“, was hier für keine Toleranz steht</translation>
        </message>
        <message>
            <source>a plain number is wanted</source>
            <translation>eine Zahl ohne Einheit wird gebraucht</translation>
        </message>
        <message>
            <source>a value in %1 (%2) is wanted</source>
            <translation>ein Wert in %1 (%2) wird gebraucht</translation>
        </message>
    </context>
</TS>
