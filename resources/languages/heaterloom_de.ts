<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>AboutPart</name>
  <message>
   <source>The catalogue does not know {type}.</source>
   <translation>Der Katalog kennt {type} nicht.</translation>
  </message>
  <message>
   <source>{type} in the catalogue</source>
   <translation>{type} im Katalog</translation>
  </message>
  <message>
   <source>also {names}</source>
   <translation>auch {names}</translation>
  </message>
  <message>
   <source>no source is on record</source>
   <translation>keine Quelle verzeichnet</translation>
  </message>
 </context>
 <context>
  <name>Banner</name>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
 </context>
 <context>
  <name>ChainBuilder</name>
  <message>
   <source>Chain</source>
   <translation>Kette</translation>
  </message>
 </context>
 <context>
  <name>ChainPane</name>
  <message>
   <source>Supply</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>Chassis</source>
   <translation>Chassis</translation>
  </message>
  <message>
   <source>Wire</source>
   <translation>Draht</translation>
  </message>
  <message>
   <source>Replace wiring</source>
   <translation>Verdrahtung ersetzen</translation>
  </message>
  <message>
   <source>Shunts where unequal</source>
   <translation>Ungleiche ausgleichen</translation>
  </message>
  <message>
   <source>Sockets that are wired already lose their heater wires first</source>
   <translation>Schon verdrahtete Fassungen verlieren zuerst ihre Heizdrähte</translation>
  </message>
  <message>
   <source>Resistors across heaters that want less than their string carries</source>
   <translation>Widerstände parallel zu Heizfäden, die weniger wollen, als ihr Serienkreis führt</translation>
  </message>
  <message>
   <source>Order</source>
   <translation>Reihenfolge</translation>
  </message>
  <message>
   <source>Order of the chain</source>
   <translation>Reihenfolge der Kette</translation>
  </message>
  <message>
   <source>Drag, or Alt with the arrows, to change the order</source>
   <translation>Ziehen, oder Alt mit Pfeilen, ändert die Reihenfolge</translation>
  </message>
  <message>
   <source>Build</source>
   <translation>Bauen</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>Spare length</source>
   <translation>Zugabe</translation>
  </message>
  <message>
   <source>tied already</source>
   <translation>schon verbunden</translation>
  </message>
  <message>
   <source>{socket} – not wired</source>
   <translation>{socket} – nicht verdrahtet</translation>
  </message>
 </context>
 <context>
  <name>ConditionsStrip</name>
  <message>
   <source>cold</source>
   <translation>kalt</translation>
  </message>
  <message>
   <source>hot</source>
   <translation>heiß</translation>
  </message>
  <message>
   <source>Heaters</source>
   <translation>Heizfäden</translation>
  </message>
  <message>
   <source>Rename sheet</source>
   <translation>Blatt umbenennen</translation>
  </message>
  <message>
   <source>as it would be</source>
   <translation>wie es wäre</translation>
  </message>
  <message>
   <source>solving…</source>
   <translation>rechnet…</translation>
  </message>
  <message>
   <source>solved for this drawing</source>
   <translation>für diese Zeichnung berechnet</translation>
  </message>
 </context>
 <context>
  <name>Dialogs</name>
  <message>
   <source>{title} has changes that are not saved.</source>
   <translation>{title} hat Änderungen, die nicht gespeichert sind.</translation>
  </message>
  <message>
   <source>Sheets</source>
   <translation>Blätter</translation>
  </message>
  <message>
   <source>All files</source>
   <translation>Alle Dateien</translation>
  </message>
  <message>
   <source>Open a sheet</source>
   <translation>Blatt öffnen</translation>
  </message>
  <message>
   <source>Save the sheet</source>
   <translation>Blatt speichern</translation>
  </message>
  <message>
   <source>Pictures</source>
   <translation>Bilder</translation>
  </message>
  <message>
   <source>Save a picture</source>
   <translation>Bild speichern</translation>
  </message>
  <message>
   <source>{name} is there already.</source>
   <translation>{name} gibt es schon.</translation>
  </message>
  <message>
   <source>Replace it?</source>
   <translation>Ersetzen?</translation>
  </message>
  <message>
   <source>No printer is set up on this computer.</source>
   <translation>Auf diesem Rechner ist kein Drucker eingerichtet.</translation>
  </message>
  <message>
   <source>The pages can be saved as a PDF document and printed elsewhere.</source>
   <translation>Die Seiten lassen sich als PDF-Dokument speichern und anderswo drucken.</translation>
  </message>
  <message>
   <source>Save a PDF…</source>
   <translation>PDF speichern…</translation>
  </message>
  <message>
   <source>and {count} more</source>
   <translation>und {count} weitere</translation>
  </message>
 </context>
 <context>
  <name>Drawer</name>
  <message>
   <source>Progress of the warm-up</source>
   <translation>Fortschritt des Anheizens</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>What is shown</source>
   <translation>Was gezeigt wird</translation>
  </message>
  <message>
   <source>Condition</source>
   <translation>Zustand</translation>
  </message>
  <message>
   <source>How long</source>
   <translation>Wie lange</translation>
  </message>
  <message>
   <source>Compare soft starts</source>
   <translation>Sanftanläufe vergleichen</translation>
  </message>
  <message>
   <source>Close the warm-up</source>
   <translation>Anheizen schließen</translation>
  </message>
  <message>
   <source>Close the warm-up (F5)</source>
   <translation>Anheizen schließen (F5)</translation>
  </message>
  <message>
   <source>Switching on…</source>
   <translation>Wird eingeschaltet…</translation>
  </message>
  <message>
   <source>Not switched on for this drawing</source>
   <translation>Für diese Zeichnung nicht eingeschaltet</translation>
  </message>
  <message>
   <source>as drawn</source>
   <translation>wie gezeichnet</translation>
  </message>
 </context>
 <context>
  <name>FindingsPane</name>
  <message>
   <source>Findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <source>Show findings of</source>
   <translation>Befunde zeigen für</translation>
  </message>
  <message>
   <source>Not solved for this drawing yet</source>
   <translation>Für diese Zeichnung noch nicht berechnet</translation>
  </message>
  <message>
   <source>The sheet is empty. Type a part into the add field.</source>
   <translation>Das Blatt ist leer. Ein Bauteil in das Eingabefeld schreiben.</translation>
  </message>
  <message>
   <source>Nothing to report: every heater is within its tolerance.</source>
   <translation>Nichts zu melden: Jeder Heizfaden liegt in seiner Toleranz.</translation>
  </message>
  <message>
   <source>all conditions</source>
   <translation>alle Zustände</translation>
  </message>
  <message>
   <source>Nothing to report under this condition.</source>
   <translation>In diesem Zustand nichts zu melden.</translation>
  </message>
 </context>
 <context>
  <name>InstantNote</name>
  <message>
   <source>back to the steady state</source>
   <translation>zurück zum Beharrungszustand</translation>
  </message>
  <message>
   <source>Leave the instant (Shift+F8)</source>
   <translation>Den Augenblick verlassen (Umschalt+F8)</translation>
  </message>
 </context>
 <context>
  <name>KeyPage</name>
  <message>
   <source>Keys and gestures</source>
   <translation>Tasten und Gesten</translation>
  </message>
  <message>
   <source>search: wire, table, Ctrl…</source>
   <translation>suchen: Draht, Tabelle, Strg…</translation>
  </message>
  <message>
   <source>Search keys and gestures</source>
   <translation>Tasten und Gesten suchen</translation>
  </message>
  <message>
   <source>&amp;Print…</source>
   <translation>&amp;Drucken…</translation>
  </message>
 </context>
 <context>
  <name>Legend</name>
  <message>
   <source>Curves</source>
   <translation>Kurven</translation>
  </message>
 </context>
 <context>
  <name>MainWindow</name>
  <message>
   <source>Your own tube types are not used until this is mended:</source>
   <translation>Die eigenen Röhrentypen werden erst benutzt, wenn dies behoben ist:</translation>
  </message>
  <message>
   <source>The new size is used when Heaterloom is started again.</source>
   <translation>Die neue Größe gilt, wenn Heaterloom neu gestartet wird.</translation>
  </message>
  <message>
   <source>Save a copy…</source>
   <translation>Kopie speichern…</translation>
  </message>
 </context>
 <context>
  <name>MainsControl</name>
  <message>
   <source>low {volts}</source>
   <translation>niedrig {volts}</translation>
  </message>
  <message>
   <source>nominal {volts}</source>
   <translation>Nennwert {volts}</translation>
  </message>
  <message>
   <source>high {volts}</source>
   <translation>hoch {volts}</translation>
  </message>
  <message>
   <source>Low mains</source>
   <translation>Netzunterspannung</translation>
  </message>
  <message>
   <source>Nominal mains</source>
   <translation>Netznennspannung</translation>
  </message>
  <message>
   <source>High mains</source>
   <translation>Netzüberspannung</translation>
  </message>
 </context>
 <context>
  <name>MainsSlider</name>
  <message>
   <source>Mains volts</source>
   <translation>Netzspannung</translation>
  </message>
  <message>
   <source>mains {volts}</source>
   <translation>Netz {volts}</translation>
  </message>
 </context>
 <context>
  <name>Menus</name>
  <message>
   <source>&amp;Wires</source>
   <translation>&amp;Drähte</translation>
  </message>
  <message>
   <source>&amp;File</source>
   <translation>&amp;Datei</translation>
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>&amp;Bearbeiten</translation>
  </message>
  <message>
   <source>&amp;Arrange</source>
   <translation>&amp;Anordnen</translation>
  </message>
  <message>
   <source>&amp;View</source>
   <translation>&amp;Ansicht</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>&amp;Hilfe</translation>
  </message>
  <message>
   <source>&amp;New sheet</source>
   <translation>&amp;Neues Blatt</translation>
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
   <source>Open a &amp;sample</source>
   <translation>&amp;Beispiel öffnen</translation>
  </message>
  <message>
   <source>&amp;Save</source>
   <translation>&amp;Speichern</translation>
  </message>
  <message>
   <source>Save &amp;as…</source>
   <translation>Speichern &amp;unter…</translation>
  </message>
  <message>
   <source>Save a &amp;picture…</source>
   <translation>B&amp;ild speichern…</translation>
  </message>
  <message>
   <source>P&amp;rint…</source>
   <translation>&amp;Drucken…</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>&amp;Beenden</translation>
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
   <source>Re&amp;name the sheet</source>
   <translation>Blatt &amp;umbenennen</translation>
  </message>
  <message>
   <source>&amp;Line up</source>
   <translation>&amp;Ausrichten</translation>
  </message>
  <message>
   <source>To the &amp;drawing</source>
   <translation>Zur &amp;Zeichnung</translation>
  </message>
  <message>
   <source>To the f&amp;indings</source>
   <translation>Zu den &amp;Befunden</translation>
  </message>
  <message>
   <source>To the &amp;properties</source>
   <translation>Zu den &amp;Eigenschaften</translation>
  </message>
  <message>
   <source>To the pa&amp;rts to add</source>
   <translation>Zu den &amp;Teilen</translation>
  </message>
  <message>
   <source>To the ta&amp;bles</source>
   <translation>Zu den Ta&amp;bellen</translation>
  </message>
  <message>
   <source>War&amp;m-up</source>
   <translation>&amp;Anheizen</translation>
  </message>
  <message>
   <source>&amp;Go on the drawing</source>
   <translation>&amp;Gehen in der Zeichnung</translation>
  </message>
  <message>
   <source>Pa&amp;nes</source>
   <translation>&amp;Fenster</translation>
  </message>
  <message>
   <source>&amp;Theme</source>
   <translation>&amp;Farben</translation>
  </message>
  <message>
   <source>Si&amp;ze of everything</source>
   <translation>&amp;Größe von allem</translation>
  </message>
  <message>
   <source>&amp;Language</source>
   <translation>&amp;Sprache</translation>
  </message>
  <message>
   <source>Restore the &amp;usual panes</source>
   <translation>Ü&amp;bliche Fenster wiederherstellen</translation>
  </message>
  <message>
   <source>As the &amp;system</source>
   <translation>Wie das &amp;System</translation>
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
   <source>Heaterloom speaks {language} from its next start on.</source>
   <translation>Heaterloom spricht ab dem nächsten Start {language}.</translation>
  </message>
  <message>
   <source>&amp;Keys and gestures</source>
   <translation>&amp;Tasten und Gesten</translation>
  </message>
  <message>
   <source>&amp;Cautions</source>
   <translation>&amp;Warnungen</translation>
  </message>
  <message>
   <source>&amp;About Heaterloom</source>
   <translation>&amp;Über Heaterloom</translation>
  </message>
  <message>
   <source>Cautions</source>
   <translation>Warnungen</translation>
  </message>
  <message>
   <source>Heaterloom lays out the heater wiring of valve amplifiers and solves every heater.

Its figures are computed from published data and models, some of them unverified and marked so. They do not replace a measurement at the pins.

MIT licence.</source>
   <translation>Heaterloom zeichnet die Heizungsverdrahtung von Röhrenverstärkern und berechnet jeden Heizfaden.

Die Werte folgen aus veröffentlichten Daten und Modellen; manche sind ungeprüft und so gekennzeichnet. Sie ersetzen keine Messung an den Stiften.

MIT-Lizenz.</translation>
  </message>
  <message>
   <source>About Heaterloom</source>
   <translation>Über Heaterloom</translation>
  </message>
  <message>
   <source>Rehearsal amplifier</source>
   <translation>Probeverstärker</translation>
  </message>
  <message>
   <source>Twelve volts on the bench</source>
   <translation>Zwölf Volt auf dem Labortisch</translation>
  </message>
  <message>
   <source>Mains string radio</source>
   <translation>Radio mit Serienkreis am Netz</translation>
  </message>
  <message>
   <source>Five mistakes</source>
   <translation>Fünf Fehler</translation>
  </message>
  <message>
   <source>Cold start</source>
   <translation>Kaltstart</translation>
  </message>
  <message>
   <source>Cold start with a thermistor</source>
   <translation>Kaltstart mit Heißleiter</translation>
  </message>
  <message>
   <source>Cold start with thermistor and relay</source>
   <translation>Kaltstart mit Heißleiter und Relais</translation>
  </message>
  <message>
   <source>High tension kills. Switch off, unplug, let capacitors discharge and measure before touching anything.</source>
   <translation>Hochspannung tötet. Vor jedem Berühren ausschalten, Stecker ziehen, Kondensatoren entladen lassen und messen.</translation>
  </message>
  <message>
   <source>A heater string fed straight from the mains makes the chassis live. Work on it only with an isolating transformer, and leave mains wiring to those licensed for it where you live.</source>
   <translation>Ein Serienkreis direkt am Netz macht das Chassis lebensgefährlich. Nur mit Trenntransformator daran arbeiten und die Netzverdrahtung denen überlassen, die dort dafür zugelassen sind.</translation>
  </message>
  <message>
   <source>Heater windings may float at full high tension. Use insulated leads and a meter rated for it.</source>
   <translation>Heizwicklungen können auf voller Hochspannung liegen. Isolierte Leitungen und ein dafür bemessenes Messgerät benutzen.</translation>
  </message>
  <message>
   <source>Droppers, thermistors and glass get hot enough to burn. Leave them room.</source>
   <translation>Vorwiderstände, Heißleiter und Glas werden so heiß, dass man sich verbrennt. Ihnen Platz lassen.</translation>
  </message>
  <message>
   <source>One fuse for each winding, never a bigger one than designed.</source>
   <translation>Für jede Wicklung eine Sicherung, nie eine größere als vorgesehen.</translation>
  </message>
  <message>
   <source>What this program says does not replace a measurement at the pins, nor your local codes.</source>
   <translation>Was dieses Programm sagt, ersetzt weder eine Messung an den Stiften noch die örtlichen Vorschriften.</translation>
  </message>
 </context>
 <context>
  <name>PagesPreview</name>
  <message>
   <source>Preview</source>
   <translation>Vorschau</translation>
  </message>
 </context>
 <context>
  <name>Pane</name>
  <message>
   <source>To the &amp;left</source>
   <translation>Nach &amp;links</translation>
  </message>
  <message>
   <source>To the &amp;right</source>
   <translation>Nach &amp;rechts</translation>
  </message>
  <message>
   <source>&amp;Below the drawing</source>
   <translation>&amp;Unter die Zeichnung</translation>
  </message>
  <message>
   <source>In a &amp;window of its own</source>
   <translation>In ein eigenes &amp;Fenster</translation>
  </message>
  <message>
   <source>&amp;Close</source>
   <translation>S&amp;chließen</translation>
  </message>
  <message>
   <source>Share the place of {name}</source>
   <translation>Platz mit {name} teilen</translation>
  </message>
 </context>
 <context>
  <name>PartsList</name>
  <message>
   <source>find: ECC83, 6.3 V winding, relay…</source>
   <translation>suchen: ECC83, Wicklung, Relais…</translation>
  </message>
  <message>
   <source>Find a part</source>
   <translation>Bauteil suchen</translation>
  </message>
  <message>
   <source>Parts that can be added</source>
   <translation>Bauteile zum Einfügen</translation>
  </message>
 </context>
 <context>
  <name>PictureDialog</name>
  <message>
   <source>Print the sheet</source>
   <translation>Blatt drucken</translation>
  </message>
  <message>
   <source>Save a picture</source>
   <translation>Bild speichern</translation>
  </message>
  <message>
   <source>the whole sheet</source>
   <translation>das ganze Blatt</translation>
  </message>
  <message>
   <source>what is in view</source>
   <translation>was zu sehen ist</translation>
  </message>
  <message>
   <source>what is selected</source>
   <translation>was gewählt ist</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <source>Condition</source>
   <translation>Zustand</translation>
  </message>
  <message>
   <source>Figures, marks and glow</source>
   <translation>Werte, Zeichen und Glühen</translation>
  </message>
  <message>
   <source>Gauges and lengths</source>
   <translation>Drahtstärken und Längen</translation>
  </message>
  <message>
   <source>Title block</source>
   <translation>Schriftfeld</translation>
  </message>
  <message>
   <source>Dark, as on a dark screen</source>
   <translation>Dunkel, wie auf dunklem Bildschirm</translation>
  </message>
  <message>
   <source>as large as the drawing</source>
   <translation>so groß wie die Zeichnung</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Held</source>
   <translation>Lage</translation>
  </message>
  <message>
   <source>landscape</source>
   <translation>Querformat</translation>
  </message>
  <message>
   <source>upright</source>
   <translation>Hochformat</translation>
  </message>
  <message>
   <source>Scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <source>fit to one page</source>
   <translation>auf eine Seite einpassen</translation>
  </message>
  <message>
   <source>a unit is 1 mm, in tiles</source>
   <translation>eine Einheit ist 1 mm, in Kacheln</translation>
  </message>
  <message>
   <source>SVG drawing</source>
   <translation>SVG-Zeichnung</translation>
  </message>
  <message>
   <source>PNG image</source>
   <translation>PNG-Bild</translation>
  </message>
  <message>
   <source>PDF document</source>
   <translation>PDF-Dokument</translation>
  </message>
  <message>
   <source>File</source>
   <translation>Datei</translation>
  </message>
  <message>
   <source>Letters as shapes</source>
   <translation>Buchstaben als Formen</translation>
  </message>
  <message>
   <source>For programs that do not read fonts in SVG files. Shapes cannot be searched or copied.</source>
   <translation>Für Programme, die Schriften in SVG-Dateien nicht lesen. Formen lassen sich nicht suchen oder kopieren.</translation>
  </message>
  <message>
   <source>cold</source>
   <translation>kalt</translation>
  </message>
  <message>
   <source>hot</source>
   <translation>heiß</translation>
  </message>
  <message>
   <source>nominal mains</source>
   <translation>Netznennspannung</translation>
  </message>
  <message>
   <source>low mains</source>
   <translation>Netzunterspannung</translation>
  </message>
  <message>
   <source>high mains</source>
   <translation>Netzüberspannung</translation>
  </message>
  <message>
   <source>at switch-on</source>
   <translation>beim Einschalten</translation>
  </message>
  <message>
   <source>as in the window: {volts}, {state}</source>
   <translation>wie im Fenster: {volts}, {state}</translation>
  </message>
  <message>
   <source>Print…</source>
   <translation>Drucken…</translation>
  </message>
  <message>
   <source>Save…</source>
   <translation>Speichern…</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>{width} × {height} pixels</source>
   <translation>{width} × {height} Pixel</translation>
  </message>
  <message>
   <source>One page, {width} × {height} mm</source>
   <translation>Eine Seite, {width} × {height} mm</translation>
  </message>
  <message>
   <source>{pages} pages, {width} × {height} mm each, to be joined at their corner marks</source>
   <translation>{pages} Seiten, je {width} × {height} mm, an den Eckmarken zusammenzufügen</translation>
  </message>
  <message>
   <source>The picture is not saved.</source>
   <translation>Das Bild ist nicht gespeichert.</translation>
  </message>
 </context>
 <context>
  <name>Playback</name>
  <message>
   <source>Previous event</source>
   <translation>Voriges Ereignis</translation>
  </message>
  <message>
   <source>Play</source>
   <translation>Abspielen</translation>
  </message>
  <message>
   <source>Next event</source>
   <translation>Nächstes Ereignis</translation>
  </message>
  <message>
   <source>How fast it plays</source>
   <translation>Wie schnell abgespielt wird</translation>
  </message>
  <message>
   <source>Leave the instant</source>
   <translation>Den Augenblick verlassen</translation>
  </message>
  <message>
   <source>Show the steady state again (Escape)</source>
   <translation>Den Beharrungszustand wieder zeigen (Escape)</translation>
  </message>
  <message>
   <source>Pause</source>
   <translation>Anhalten</translation>
  </message>
 </context>
 <context>
  <name>Plot</name>
  <message>
   <source>Warm-up over time</source>
   <translation>Anheizen über der Zeit</translation>
  </message>
 </context>
 <context>
  <name>PropertiesPane</name>
  <message>
   <source>{count} selected</source>
   <translation>{count} gewählt</translation>
  </message>
  <message>
   <source>Turn each</source>
   <translation>Jedes drehen</translation>
  </message>
  <message>
   <source>Delete</source>
   <translation>Löschen</translation>
  </message>
 </context>
 <context>
  <name>Session</name>
  <message>
   <source>Untitled</source>
   <translation>Ohne Titel</translation>
  </message>
  <message>
   <source>{name} was not opened.</source>
   <translation>{name} wurde nicht geöffnet.</translation>
  </message>
  <message>
   <source>The sheet is not saved.</source>
   <translation>Das Blatt ist nicht gespeichert.</translation>
  </message>
 </context>
 <context>
  <name>SidePanes</name>
  <message>
   <source>Findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <source>Properties</source>
   <translation>Eigenschaften</translation>
  </message>
  <message>
   <source>Add parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>Tables</source>
   <translation>Tabellen</translation>
  </message>
 </context>
 <context>
  <name>SoftStarts</name>
  <message>
   <source>Soft starts are being tried…</source>
   <translation>Sanftanläufe werden probiert…</translation>
  </message>
  <message>
   <source>No soft start is needed, or none can be proposed for this supply.</source>
   <translation>Ein Sanftanlauf ist nicht nötig, oder für diese Quelle ist keiner vorzuschlagen.</translation>
  </message>
  <message>
   <source>Put it on the sheet</source>
   <translation>Aufs Blatt setzen</translation>
  </message>
 </context>
 <context>
  <name>TablesPane</name>
  <message>
   <source>Heaters</source>
   <translation>Heizfäden</translation>
  </message>
  <message>
   <source>Supplies</source>
   <translation>Quellen</translation>
  </message>
  <message>
   <source>Pins</source>
   <translation>Stifte</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Bauteile</translation>
  </message>
  <message>
   <source>Wires</source>
   <translation>Drähte</translation>
  </message>
  <message>
   <source>Tables</source>
   <translation>Tabellen</translation>
  </message>
  <message>
   <source>None on this sheet.</source>
   <translation>Keine auf diesem Blatt.</translation>
  </message>
  <message>
   <source>Add a part to the table</source>
   <translation>Ein Bauteil in die Tabelle einfügen</translation>
  </message>
  <message>
   <source>add: ECC83, 47R 5 W, relay…</source>
   <translation>einfügen: ECC83, 47R 5 W, Relais…</translation>
  </message>
  <message>
   <source>Add a wire to the table</source>
   <translation>Einen Draht in die Tabelle einfügen</translation>
  </message>
  <message>
   <source>add: T1.a V1.4, or V1.4-5 for a strap</source>
   <translation>einfügen: T1.a V1.4, oder V1.4-5 als Brücke</translation>
  </message>
 </context>
 <context>
  <name>TimeSlider</name>
  <message>
   <source>Seconds after switch-on</source>
   <translation>Sekunden nach dem Einschalten</translation>
  </message>
  <message>
   <source>and {count} more</source>
   <translation>und {count} weitere</translation>
  </message>
 </context>
 <context>
  <name>TitleLine</name>
  <message>
   <source>Panes</source>
   <translation>Fenster</translation>
  </message>
  <message>
   <source>Move the pane {name}</source>
   <translation>Fenster {name} bewegen</translation>
  </message>
  <message>
   <source>Close the pane {name}</source>
   <translation>Fenster {name} schließen</translation>
  </message>
  <message>
   <source>Sheet title</source>
   <translation>Titel des Blatts</translation>
  </message>
  <message>
   <source>Untitled</source>
   <translation>Ohne Titel</translation>
  </message>
  <message>
   <source>Double click or F2 renames the sheet</source>
   <translation>Doppelklick oder F2 benennt das Blatt um</translation>
  </message>
 </context>
 <context>
  <name>Warmup</name>
  <message>
   <source>supply current</source>
   <translation>Quellenstrom</translation>
  </message>
  <message>
   <source>supply volts</source>
   <translation>Quellenspannung</translation>
  </message>
  <message>
   <source>heater volts</source>
   <translation>Heizspannung</translation>
  </message>
  <message>
   <source>cathodes</source>
   <translation>Kathoden</translation>
  </message>
  <message>
   <source>heaters</source>
   <translation>Heizfäden</translation>
  </message>
  <message>
   <source>thermistors</source>
   <translation>Heißleiter</translation>
  </message>
  <message>
   <source>thermistor ohms</source>
   <translation>Heißleiter-Ohm</translation>
  </message>
  <message>
   <source>relays</source>
   <translation>Relais</translation>
  </message>
  <message>
   <source>limit of {id}</source>
   <translation>Grenze von {id}</translation>
  </message>
  <message>
   <source>1.5 × rated</source>
   <translation>1,5 × Nennwert</translation>
  </message>
  <message>
   <source>Ready: the cathode has made {share} % of its rise from the room to its rated temperature.</source>
   <translation>Bereit: Die Kathode hat {share} % ihres Anstiegs von der Raum- auf die Nenntemperatur hinter sich.</translation>
  </message>
  <message>
   <source>The warm-up times of {ids} are estimates by class.</source>
   <translation>Die Anheizzeiten von {ids} sind nach der Klasse geschätzt.</translation>
  </message>
 </context>
 <context>
  <name>WarmupPlot</name>
  <message>
   <source>limit of {id}</source>
   <translation>Grenze von {id}</translation>
  </message>
  <message>
   <source>Supply current</source>
   <translation>Quellenstrom</translation>
  </message>
  <message>
   <source>Supply volts</source>
   <translation>Quellenspannung</translation>
  </message>
  <message>
   <source>Heater volts</source>
   <translation>Heizspannung</translation>
  </message>
  <message>
   <source>1.5 × rated</source>
   <translation>1,5 × Nennwert</translation>
  </message>
  <message>
   <source>Cathodes</source>
   <translation>Kathoden</translation>
  </message>
  <message>
   <source>Thermistors</source>
   <translation>Heißleiter</translation>
  </message>
  <message>
   <source>Relays pulled in</source>
   <translation>Angezogene Relais</translation>
  </message>
  <message>
   <source>{names} and {count} more</source>
   <translation>{names} und {count} weitere</translation>
  </message>
 </context>
 <context>
  <name>actions</name>
  <message>
   <source>&amp;Add a part</source>
   <translation>&amp;Bauteil hinzufügen</translation>
  </message>
  <message>
   <source>Add a part</source>
   <translation>Bauteil hinzufügen</translation>
  </message>
  <message>
   <source>&amp;Delete</source>
   <translation>&amp;Löschen</translation>
  </message>
  <message>
   <source>&amp;Turn right</source>
   <translation>Nach &amp;rechts drehen</translation>
  </message>
  <message>
   <source>Turn &amp;left</source>
   <translation>Nach &amp;links drehen</translation>
  </message>
  <message>
   <source>&amp;Select all</source>
   <translation>&amp;Alles auswählen</translation>
  </message>
  <message>
   <source>&amp;Properties</source>
   <translation>&amp;Eigenschaften</translation>
  </message>
  <message>
   <source>&amp;Fit the sheet</source>
   <translation>Blatt &amp;einpassen</translation>
  </message>
  <message>
   <source>Fit the sheet</source>
   <translation>Blatt einpassen</translation>
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
   <source>Zoom in</source>
   <translation>Vergrößern</translation>
  </message>
  <message>
   <source>Zoom out</source>
   <translation>Verkleinern</translation>
  </message>
  <message>
   <source>&amp;Actual size</source>
   <translation>&amp;Originalgröße</translation>
  </message>
  <message>
   <source>Actual size</source>
   <translation>Originalgröße</translation>
  </message>
  <message>
   <source>Turn right &amp;as one</source>
   <translation>Gemeinsam nach rechts &amp;drehen</translation>
  </message>
  <message>
   <source>All selected parts about their common middle.</source>
   <translation>Alle gewählten Bauteile um ihre gemeinsame Mitte.</translation>
  </message>
  <message>
   <source>Turn left as &amp;one</source>
   <translation>&amp;Gemeinsam nach links drehen</translation>
  </message>
  <message>
   <source>&amp;Mirror left to right</source>
   <translation>&amp;Seitlich spiegeln</translation>
  </message>
  <message>
   <source>A socket is only moved: its pins cannot change sides.</source>
   <translation>Eine Fassung wird nur verschoben: Ihre Stifte können die Seite nicht wechseln.</translation>
  </message>
  <message>
   <source>Mirror &amp;upside down</source>
   <translation>&amp;Kopfüber spiegeln</translation>
  </message>
  <message>
   <source>&amp;Left edges</source>
   <translation>&amp;Linke Kanten</translation>
  </message>
  <message>
   <source>&amp;Centres</source>
   <translation>&amp;Mitten nebeneinander</translation>
  </message>
  <message>
   <source>&amp;Right edges</source>
   <translation>&amp;Rechte Kanten</translation>
  </message>
  <message>
   <source>&amp;Top edges</source>
   <translation>&amp;Obere Kanten</translation>
  </message>
  <message>
   <source>&amp;Middles</source>
   <translation>Mitten über&amp;einander</translation>
  </message>
  <message>
   <source>&amp;Bottom edges</source>
   <translation>&amp;Untere Kanten</translation>
  </message>
  <message>
   <source>Even gaps &amp;across</source>
   <translation>Gleiche Abstände &amp;quer</translation>
  </message>
  <message>
   <source>Even gaps &amp;down</source>
   <translation>Gleiche Abstände &amp;längs</translation>
  </message>
  <message>
   <source>Put on the &amp;grid</source>
   <translation>Auf das Raster &amp;setzen</translation>
  </message>
  <message>
   <source>&amp;Number the tubes</source>
   <translation>Röhren &amp;nummerieren</translation>
  </message>
  <message>
   <source>V1, V2… from the supply along the heater wiring.</source>
   <translation>V1, V2… von der Quelle an der Heizverdrahtung entlang.</translation>
  </message>
  <message>
   <source>Number the &amp;selected tubes</source>
   <translation>&amp;Gewählte Röhren nummerieren</translation>
  </message>
  <message>
   <source>Along the heater wiring; all other ids stay.</source>
   <translation>An der Heizverdrahtung entlang; alle anderen Kennungen bleiben.</translation>
  </message>
  <message>
   <source>S&amp;wap the tubes of two sockets</source>
   <translation>Röhren zweier Fassungen &amp;tauschen</translation>
  </message>
  <message>
   <source>The wires stay; where pins differ you are told.</source>
   <translation>Die Drähte bleiben; wo Stifte abweichen, wird es gesagt.</translation>
  </message>
  <message>
   <source>Swap the &amp;places of two parts</source>
   <translation>Plätze zweier Bauteile t&amp;auschen</translation>
  </message>
  <message>
   <source>The wires follow their parts.</source>
   <translation>Die Drähte folgen ihren Bauteilen.</translation>
  </message>
  <message>
   <source>Show the &amp;grid</source>
   <translation>&amp;Raster zeigen</translation>
  </message>
  <message>
   <source>&amp;Keep to the grid</source>
   <translation>Am Raster &amp;halten</translation>
  </message>
  <message>
   <source>Alt, held while dragging, does the opposite.</source>
   <translation>Alt, beim Ziehen gehalten, tut das Gegenteil.</translation>
  </message>
  <message>
   <source>The selected sockets, or all that are not wired, in parallel or in series.</source>
   <translation>Die gewählten Fassungen, oder alle nicht verdrahteten, parallel oder in Serie.</translation>
  </message>
  <message>
   <source>&amp;Wire a chain…</source>
   <translation>&amp;Kette verdrahten…</translation>
  </message>
  <message>
   <source>Cu&amp;t</source>
   <translation>&amp;Ausschneiden</translation>
  </message>
  <message>
   <source>&amp;Copy</source>
   <translation>&amp;Kopieren</translation>
  </message>
  <message>
   <source>The parts and the wires between them, as the text of a sheet file.</source>
   <translation>Die Bauteile und die Drähte dazwischen, als Text einer Blattdatei.</translation>
  </message>
  <message>
   <source>&amp;Paste</source>
   <translation>&amp;Einfügen</translation>
  </message>
  <message>
   <source>At the pointer; otherwise beside where it was copied.</source>
   <translation>Beim Zeiger; sonst neben dem Kopierten.</translation>
  </message>
  <message>
   <source>D&amp;uplicate</source>
   <translation>&amp;Verdoppeln</translation>
  </message>
  <message>
   <source>Select what is co&amp;nnected</source>
   <translation>Ver&amp;bundenes auswählen</translation>
  </message>
  <message>
   <source>Everything that wires join to what is selected.</source>
   <translation>Alles, was Drähte mit der Auswahl verbinden.</translation>
  </message>
  <message>
   <source>Select the same strin&amp;g</source>
   <translation>Selben Serien&amp;kreis auswählen</translation>
  </message>
  <message>
   <source>All heaters that carry the same current.</source>
   <translation>Alle Heizfäden, die denselben Strom führen.</translation>
  </message>
  <message>
   <source>&amp;Find…</source>
   <translation>&amp;Suchen…</translation>
  </message>
  <message>
   <source>By id, type, rating, or words of a note.</source>
   <translation>Nach Kennung, Typ, Werten oder Wörtern einer Notiz.</translation>
  </message>
  <message>
   <source>Menu of what is selected</source>
   <translation>Menü der Auswahl</translation>
  </message>
  <message>
   <source>&amp;Replace the type…</source>
   <translation>T&amp;yp ersetzen…</translation>
  </message>
  <message>
   <source>Another tube type, with what it means for the wires.</source>
   <translation>Ein anderer Röhrentyp, mit dem, was das für die Drähte heißt.</translation>
  </message>
  <message>
   <source>Arrows, or a pin's name, choose one; Enter begins a wire there.</source>
   <translation>Pfeile oder der Name eines Stifts wählen einen; Enter beginnt dort einen Draht.</translation>
  </message>
  <message>
   <source>&amp;Pins of the part</source>
   <translation>&amp;Stifte des Bauteils</translation>
  </message>
  <message>
   <source>Next &amp;wire on the part or pin</source>
   <translation>Nächster &amp;Draht am Bauteil oder Stift</translation>
  </message>
  <message>
   <source>Previous w&amp;ire on the part or pin</source>
   <translation>Voriger D&amp;raht am Bauteil oder Stift</translation>
  </message>
  <message>
   <source>Part to the &amp;left</source>
   <translation>Bauteil &amp;links</translation>
  </message>
  <message>
   <source>Part to the &amp;right</source>
   <translation>Bauteil &amp;rechts</translation>
  </message>
  <message>
   <source>Part &amp;above</source>
   <translation>Bauteil &amp;oben</translation>
  </message>
  <message>
   <source>Part &amp;below</source>
   <translation>Bauteil &amp;unten</translation>
  </message>
  <message>
   <source>The arrows then move this piece of the selected wire.</source>
   <translation>Die Pfeile bewegen dann dieses Stück des gewählten Drahts.</translation>
  </message>
  <message>
   <source>Next piece of the &amp;wire</source>
   <translation>Nächstes Stück des &amp;Drahts</translation>
  </message>
  <message>
   <source>Previous piece of the w&amp;ire</source>
   <translation>Voriges Stück des D&amp;rahts</translation>
  </message>
  <message>
   <source>Let the route &amp;find its way</source>
   <translation>Den &amp;Weg suchen lassen</translation>
  </message>
  <message>
   <source>Forgets the corners that were set for the selected wires.</source>
   <translation>Vergisst die Ecken, die für die gewählten Drähte gesetzt sind.</translation>
  </message>
  <message>
   <source>Draw wires in &amp;pairs</source>
   <translation>Drähte &amp;paarweise ziehen</translation>
  </message>
  <message>
   <source>A wire brings the one from the other end of the heater along, twisted with it.</source>
   <translation>Ein Draht bringt den vom anderen Ende des Heizfadens mit, damit verdrillt.</translation>
  </message>
  <message>
   <source>T&amp;wist</source>
   <translation>&amp;Verdrillen</translation>
  </message>
  <message>
   <source>Twists two selected wires between the same two parts.</source>
   <translation>Verdrillt zwei gewählte Drähte zwischen denselben zwei Bauteilen.</translation>
  </message>
  <message>
   <source>&amp;Untwist</source>
   <translation>&amp;Entdrillen</translation>
  </message>
  <message>
   <source>Split the wire with a &amp;joint</source>
   <translation>Draht mit &amp;Lötstützpunkt teilen</translation>
  </message>
  <message>
   <source>Take the joint &amp;out</source>
   <translation>Lötstützpunkt &amp;herausnehmen</translation>
  </message>
  <message>
   <source>Its two wires become one.</source>
   <translation>Seine zwei Drähte werden einer.</translation>
  </message>
 </context>
 <context>
  <name>adding</name>
  <message>
   <source>What can be added</source>
   <translation>Was sich einfügen lässt</translation>
  </message>
  <message>
   <source>add: ECC83, 10R, relay…</source>
   <translation>einfügen: ECC83, 10R, Relais…</translation>
  </message>
  <message>
   <source>Add a part</source>
   <translation>Bauteil hinzufügen</translation>
  </message>
  <message>
   <source>Type a tube, a value or a word, then Enter. The key / brings you here.</source>
   <translation>Röhre, Wert oder Wort eintippen, dann Enter. Die Taste / führt hierher.</translation>
  </message>
 </context>
 <context>
  <name>areas</name>
  <message>
   <source>Ne&amp;xt area</source>
   <translation>Nä&amp;chster Bereich</translation>
  </message>
  <message>
   <source>Pre&amp;vious area</source>
   <translation>&amp;Voriger Bereich</translation>
  </message>
 </context>
 <context>
  <name>canvas</name>
  <message>
   <source>Mirror {what}</source>
   <translation>{what} spiegeln</translation>
  </message>
  <message>
   <source>Turn {what} as one</source>
   <translation>{what} gemeinsam drehen</translation>
  </message>
  <message>
   <source>Align {what}</source>
   <translation>{what} ausrichten</translation>
  </message>
  <message>
   <source>Distribute {what}</source>
   <translation>{what} verteilen</translation>
  </message>
  <message>
   <source>Put {what} on the grid</source>
   <translation>{what} auf das Raster setzen</translation>
  </message>
  <message>
   <source>Number the selected tubes</source>
   <translation>Gewählte Röhren nummerieren</translation>
  </message>
  <message>
   <source>Number the tubes</source>
   <translation>Röhren nummerieren</translation>
  </message>
  <message>
   <source>Swap the tubes of {what}</source>
   <translation>Röhren von {what} tauschen</translation>
  </message>
  <message>
   <source>Swap the places of {what}</source>
   <translation>Plätze von {what} tauschen</translation>
  </message>
  <message>
   <source>Line &amp;up</source>
   <translation>A&amp;usrichten</translation>
  </message>
  <message>
   <source>Find</source>
   <translation>Suchen</translation>
  </message>
  <message>
   <source>id, type, rating, note</source>
   <translation>Kennung, Typ, Werte, Notiz</translation>
  </message>
  <message>
   <source>Find on the drawing</source>
   <translation>In der Zeichnung suchen</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>{number} of {count}</source>
   <translation>{number} von {count}</translation>
  </message>
  <message>
   <source>pulled in</source>
   <translation>angezogen</translation>
  </message>
  <message>
   <source>released</source>
   <translation>abgefallen</translation>
  </message>
  <message>
   <source>pulled</source>
   <translation>gezogen</translation>
  </message>
  <message>
   <source>type not known</source>
   <translation>Typ nicht bekannt</translation>
  </message>
  <message>
   <source>not solved</source>
   <translation>nicht berechnet</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>Ctrl+Enter keeps it, Escape keeps what was there.</source>
   <translation>Strg+Enter behält es, Esc behält, was da war.</translation>
  </message>
  <message>
   <source>Delete {what}</source>
   <translation>{what} löschen</translation>
  </message>
  <message>
   <source>Write {what}</source>
   <translation>{what} schreiben</translation>
  </message>
  <message>
   <source>more than {factor} times its volts</source>
   <translation>mehr als das {factor}-Fache der Spannung</translation>
  </message>
  <message>
   <source>no volts at this instant</source>
   <translation>in diesem Augenblick keine Spannung</translation>
  </message>
  <message>
   <source>still cold, no glow yet</source>
   <translation>noch kalt, glüht noch nicht</translation>
  </message>
  <message>
   <source>warming up, not judged yet</source>
   <translation>heizt an, noch nicht beurteilt</translation>
  </message>
  <message>
   <source>ready, within tolerance</source>
   <translation>bereit, innerhalb der Toleranz</translation>
  </message>
  <message>
   <source>over</source>
   <translation>darüber</translation>
  </message>
  <message>
   <source>under</source>
   <translation>darunter</translation>
  </message>
  <message>
   <source>heater {kelvin}</source>
   <translation>Heizfaden {kelvin}</translation>
  </message>
  <message>
   <source>cathode {kelvin}</source>
   <translation>Kathode {kelvin}</translation>
  </message>
  <message>
   <source>above its rating, which is judged once the heaters are hot</source>
   <translation>über dem Nennwert, was erst mit heißen Heizfäden beurteilt wird</translation>
  </message>
  <message>
   <source>mains off</source>
   <translation>Netz aus</translation>
  </message>
  <message>
   <source>gives nothing while the mains is off</source>
   <translation>gibt nichts, solange das Netz aus ist</translation>
  </message>
  <message>
   <source>cut out</source>
   <translation>abgeschaltet</translation>
  </message>
  <message>
   <source>gives nothing until it tries again by itself</source>
   <translation>gibt nichts, bis sie es von selbst wieder versucht</translation>
  </message>
  <message>
   <source>latched</source>
   <translation>verriegelt</translation>
  </message>
  <message>
   <source>gives nothing until it is switched off and on</source>
   <translation>gibt nichts, bis sie aus- und eingeschaltet wird</translation>
  </message>
  <message>
   <source>at limit</source>
   <translation>an der Grenze</translation>
  </message>
  <message>
   <source>gives no more than its limit</source>
   <translation>gibt nicht mehr als ihre Grenze</translation>
  </message>
  <message>
   <source>Wires are copied together with the parts at both ends: choose the parts as well.</source>
   <translation>Drähte werden mit den Bauteilen an beiden Enden kopiert: auch die Bauteile wählen.</translation>
  </message>
  <message>
   <source>Cut {what}</source>
   <translation>{what} ausschneiden</translation>
  </message>
  <message>
   <source>Paste {what}</source>
   <translation>{what} einsetzen</translation>
  </message>
  <message>
   <source>Duplicate {what}</source>
   <translation>{what} verdoppeln</translation>
  </message>
  <message>
   <source>New type</source>
   <translation>Neuer Typ</translation>
  </message>
  <message>
   <source>Replace {what} by</source>
   <translation>{what} ersetzen durch</translation>
  </message>
  <message>
   <source>Type a tube type; Enter puts it into the socket.</source>
   <translation>Einen Röhrentyp eintippen; Enter setzt ihn in die Fassung.</translation>
  </message>
  <message>
   <source>No tube type is called that.</source>
   <translation>So heißt kein Röhrentyp.</translation>
  </message>
  <message>
   <source>Replace {what} by {type}</source>
   <translation>{what} durch {type} ersetzen</translation>
  </message>
  <message>
   <source>and {count} more</source>
   <translation>und {count} weitere</translation>
  </message>
  <message>
   <source>Resize {what}</source>
   <translation>Größe von {what} ändern</translation>
  </message>
  <message>
   <source>empty note</source>
   <translation>leere Notiz</translation>
  </message>
  <message>
   <source>Nothing selected</source>
   <translation>Nichts gewählt</translation>
  </message>
  <message>
   <source>Wire from {start}: go to where it ends.</source>
   <translation>Draht von {start}: dorthin gehen, wo er endet.</translation>
  </message>
  <message>
   <source>Wire from {start} to {pin}</source>
   <translation>Draht von {start} nach {pin}</translation>
  </message>
  <message>
   <source>{pin}, heater</source>
   <translation>{pin}, Heizfaden</translation>
  </message>
  <message>
   <source>wires: {ids}</source>
   <translation>Drähte: {ids}</translation>
  </message>
  <message>
   <source>no wire</source>
   <translation>kein Draht</translation>
  </message>
  <message>
   <source>Seen from the wiring side.</source>
   <translation>Von der Verdrahtungsseite gesehen.</translation>
  </message>
  <message>
   <source>Sheet</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <source>No wires here.</source>
   <translation>Hier sind keine Drähte.</translation>
  </message>
  <message>
   <source>A wire needs two different terminals.</source>
   <translation>Ein Draht braucht zwei verschiedene Anschlüsse.</translation>
  </message>
  <message>
   <source>Wires are drawn in pairs.</source>
   <translation>Drähte werden paarweise gezogen.</translation>
  </message>
  <message>
   <source>Wires are drawn singly.</source>
   <translation>Drähte werden einzeln gezogen.</translation>
  </message>
  <message>
   <source>Lead {id} another way</source>
   <translation>{id} anders führen</translation>
  </message>
  <message>
   <source>Let {what} find its way</source>
   <translation>{what} den Weg finden lassen</translation>
  </message>
  <message>
   <source>Piece {number} of {count}: the arrows move it.</source>
   <translation>Stück {number} von {count}: Die Pfeile bewegen es.</translation>
  </message>
  <message>
   <source>Twist {first} and {second}</source>
   <translation>{first} und {second} verdrillen</translation>
  </message>
  <message>
   <source>Untwist {what}</source>
   <translation>{what} entdrillen</translation>
  </message>
  <message>
   <source>Split {id}</source>
   <translation>{id} teilen</translation>
  </message>
  <message>
   <source>Take {what} out</source>
   <translation>{what} herausnehmen</translation>
  </message>
  <message>
   <source>{start} has no second end: one wire is drawn.</source>
   <translation>{start} hat kein zweites Ende: Es wird ein Draht gezeichnet.</translation>
  </message>
  <message>
   <source>Twisted pair from {start} and {second}</source>
   <translation>Verdrilltes Paar von {start} und {second}</translation>
  </message>
  <message>
   <source>{end} has no second end: one wire is drawn.</source>
   <translation>{end} hat kein zweites Ende: Es wird ein Draht gezeichnet.</translation>
  </message>
  <message>
   <source>{pair} to {end} and {second}</source>
   <translation>{pair} nach {end} und {second}</translation>
  </message>
  <message>
   <source>a wire along its route</source>
   <translation>ein Draht auf seinem Weg</translation>
  </message>
  <message>
   <source>Nothing is called that.</source>
   <translation>So heißt nichts.</translation>
  </message>
  <message>
   <source>Type the terminal where the wire from {start} ends.</source>
   <translation>Den Anschluss eintippen, an dem der Draht von {start} endet.</translation>
  </message>
  <message>
   <source>There is no part {id}.</source>
   <translation>Ein Bauteil {id} gibt es nicht.</translation>
  </message>
  <message>
   <source>{id} has no terminal {name}.</source>
   <translation>{id} hat keinen Anschluss {name}.</translation>
  </message>
  <message>
   <source>Wire a pair from {start} to {end}</source>
   <translation>Paar von {start} nach {end}</translation>
  </message>
  <message>
   <source>1 part</source>
   <translation>1 Bauteil</translation>
  </message>
  <message>
   <source>{count} parts</source>
   <translation>{count} Bauteile</translation>
  </message>
  <message>
   <source>1 wire</source>
   <translation>1 Draht</translation>
  </message>
  <message>
   <source>{count} wires</source>
   <translation>{count} Drähte</translation>
  </message>
  <message>
   <source> and </source>
   <translation> und </translation>
  </message>
  <message>
   <source>Move {what}</source>
   <translation>{what} verschieben</translation>
  </message>
  <message>
   <source>Turn {what}</source>
   <translation>{what} drehen</translation>
  </message>
  <message>
   <source>Add {what}</source>
   <translation>{what} einfügen</translation>
  </message>
  <message>
   <source>Strap {start} to {end}</source>
   <translation>Brücke von {start} nach {end}</translation>
  </message>
  <message>
   <source>Wire {start} to {end}</source>
   <translation>Draht von {start} nach {end}</translation>
  </message>
  <message>
   <source>not heated</source>
   <translation>nicht geheizt</translation>
  </message>
  <message>
   <source>not yet solved</source>
   <translation>noch nicht berechnet</translation>
  </message>
  <message>
   <source>within tolerance</source>
   <translation>in der Toleranz</translation>
  </message>
  <message>
   <source>{start} to {end}</source>
   <translation>{start} bis {end}</translation>
  </message>
  <message>
   <source>strap</source>
   <translation>Brücke</translation>
  </message>
 </context>
 <context>
  <name>chain</name>
  <message>
   <source>{length} of wire</source>
   <translation>{length} Draht</translation>
  </message>
  <message>
   <source>Pairs in series on {volts}</source>
   <translation>Paare in Serie an {volts}</translation>
  </message>
  <message>
   <source>Series string</source>
   <translation>Serienkreis</translation>
  </message>
  <message>
   <source>Parallel chain at {volts}</source>
   <translation>Parallele Kette an {volts}</translation>
  </message>
  <message>
   <source>Wire a string of {count}</source>
   <translation>Serienkreis aus {count} verdrahten</translation>
  </message>
  <message>
   <source>Wire {count} in pairs</source>
   <translation>{count} paarweise verdrahten</translation>
  </message>
  <message>
   <source>Wire a chain of {count}</source>
   <translation>Kette aus {count} verdrahten</translation>
  </message>
  <message>
   <source>a new winding</source>
   <translation>eine neue Wicklung</translation>
  </message>
  <message>
   <source>a new DC supply</source>
   <translation>ein neues Netzteil</translation>
  </message>
  <message>
   <source>one side</source>
   <translation>eine Seite</translation>
  </message>
  <message>
   <source>{side} to the chassis</source>
   <translation>{side} ans Chassis</translation>
  </message>
  <message>
   <source>centre tap to the chassis</source>
   <translation>Mittelanzapfung ans Chassis</translation>
  </message>
  <message>
   <source>two equal resistors to the chassis</source>
   <translation>zwei gleiche Widerstände zum Chassis</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>by the current, mm²</source>
   <translation>nach dem Strom, mm²</translation>
  </message>
  <message>
   <source>by the current, AWG</source>
   <translation>nach dem Strom, AWG</translation>
  </message>
  <message>
   <source>the heaviest first</source>
   <translation>die stärksten zuerst</translation>
  </message>
  <message>
   <source>the nearest first</source>
   <translation>die nächsten zuerst</translation>
  </message>
  <message>
   <source>by their numbers</source>
   <translation>nach ihren Nummern</translation>
  </message>
  <message>
   <source>low cathodes last</source>
   <translation>niedrige Kathoden zuletzt</translation>
  </message>
  <message>
   <source>my own order</source>
   <translation>eigene Reihenfolge</translation>
  </message>
 </context>
 <context>
  <name>choices</name>
  <message>
   <source>constant-current</source>
   <translation>Konstantstrom</translation>
  </message>
  <message>
   <source>hiccup</source>
   <translation>Aussetzbetrieb</translation>
  </message>
  <message>
   <source>foldback</source>
   <translation>Foldback</translation>
  </message>
  <message>
   <source>latch-off</source>
   <translation>bleibend aus</translation>
  </message>
  <message>
   <source>bridge</source>
   <translation>Graetzbrücke</translation>
  </message>
  <message>
   <source>centre-tap</source>
   <translation>Mittelpunkt</translation>
  </message>
  <message>
   <source>quick</source>
   <translation>flink</translation>
  </message>
  <message>
   <source>time-lag</source>
   <translation>träge</translation>
  </message>
 </context>
 <context>
  <name>clipboard</name>
  <message>
   <source>This is too much to be copied at once.</source>
   <translation>Das ist zu viel, um es auf einmal zu kopieren.</translation>
  </message>
  <message>
   <source>There are no parts on the clipboard.</source>
   <translation>In der Zwischenablage sind keine Bauteile.</translation>
  </message>
  <message>
   <source>There is nothing on the clipboard that could be pasted.</source>
   <translation>In der Zwischenablage ist nichts, was sich einfügen ließe.</translation>
  </message>
  <message>
   <source>What is on the clipboard is too large for a sheet.</source>
   <translation>Was in der Zwischenablage ist, ist zu groß für ein Blatt.</translation>
  </message>
  <message>
   <source>The text on the clipboard is no part of a sheet. Copy parts of a drawing.</source>
   <translation>Der Text in der Zwischenablage ist kein Teil eines Blatts. Bauteile einer Zeichnung kopieren.</translation>
  </message>
  <message>
   <source>clipboard</source>
   <translation>Zwischenablage</translation>
  </message>
  <message>
   <source>The text on the clipboard cannot be pasted: {why}</source>
   <translation>Der Text in der Zwischenablage lässt sich nicht einfügen: {why}</translation>
  </message>
 </context>
 <context>
  <name>crash</name>
  <message>
   <source>Something unexpected happened: {what}. Your sheet is as it was before.</source>
   <translation>Etwas Unerwartetes ist geschehen: {what}. Das Blatt ist wie zuvor.</translation>
  </message>
  <message>
   <source>Details are in {file}.</source>
   <translation>Einzelheiten stehen in {file}.</translation>
  </message>
 </context>
 <context>
  <name>facts</name>
  <message>
   <source>section {pins}</source>
   <translation>Abschnitt {pins}</translation>
  </message>
  <message>
   <source>volts may be off by</source>
   <translation>Spannung darf abweichen</translation>
  </message>
  <message>
   <source>current may be off by</source>
   <translation>Strom darf abweichen</translation>
  </message>
  <message>
   <source>made between</source>
   <translation>gefertigt zwischen</translation>
  </message>
  <message>
   <source>heater above cathode, peak</source>
   <translation>Heizf. über Kath., Spitze</translation>
  </message>
  <message>
   <source>heater above cathode, DC</source>
   <translation>Heizf. über Kath., DC</translation>
  </message>
  <message>
   <source>heater below cathode, peak</source>
   <translation>Heizf. unter Kath., Spitze</translation>
  </message>
  <message>
   <source>heater below cathode, DC</source>
   <translation>Heizf. unter Kath., DC</translation>
  </message>
  <message>
   <source>heater to cathode, at most</source>
   <translation>Heizfaden–Kathode, höchstens</translation>
  </message>
  <message>
   <source>warm-up time</source>
   <translation>Anheizzeit</translation>
  </message>
  <message>
   <source>hot to cold</source>
   <translation>heiß zu kalt</translation>
  </message>
 </context>
 <context>
  <name>fields</name>
  <message>
   <source>{value} (default)</source>
   <translation>{value} (Vorgabe)</translation>
  </message>
  <message>
   <source>not given</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>nominal mains</source>
   <translation>Netznennspannung</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>Katalog</translation>
  </message>
  <message>
   <source>75 % of coil volts</source>
   <translation>75 % der Spulenspannung</translation>
  </message>
  <message>
   <source>10 % of coil volts</source>
   <translation>10 % der Spulenspannung</translation>
  </message>
  <message>
   <source>default</source>
   <translation>Vorgabe</translation>
  </message>
  <message>
   <source>Pair {first} and {second}</source>
   <translation>Paar {first} und {second}</translation>
  </message>
  <message>
   <source>title</source>
   <translation>Titel</translation>
  </message>
  <message>
   <source>The sheet</source>
   <translation>Das Blatt</translation>
  </message>
  <message>
   <source>id</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>none (ideal strap)</source>
   <translation>keine (ideale Brücke)</translation>
  </message>
  <message>
   <source>from</source>
   <translation>von</translation>
  </message>
  <message>
   <source>to</source>
   <translation>nach</translation>
  </message>
  <message>
   <source>gauge</source>
   <translation>Stärke</translation>
  </message>
  <message>
   <source>colour</source>
   <translation>Farbe</translation>
  </message>
  <message>
   <source>twisted pair</source>
   <translation>verdrilltes Paar</translation>
  </message>
  <message>
   <source>Wire {id}</source>
   <translation>Draht {id}</translation>
  </message>
  <message>
   <source>turned by</source>
   <translation>gedreht um</translation>
  </message>
  <message>
   <source>Nothing is entered; {label} cannot be left out.</source>
   <translation>Nichts eingegeben; {label} darf nicht fehlen.</translation>
  </message>
  <message>
   <source>Rename sheet</source>
   <translation>Blatt umbenennen</translation>
  </message>
  <message>
   <source>Set {label}</source>
   <translation>{label} einstellen</translation>
  </message>
  <message>
   <source>Rename {id}</source>
   <translation>{id} umbenennen</translation>
  </message>
  <message>
   <source>Set {id} {label}</source>
   <translation>{id}: {label} einstellen</translation>
  </message>
  <message>
   <source>Two numbers are expected here, such as 120, 40.</source>
   <translation>Erwartet werden zwei Zahlen, etwa 120, 40.</translation>
  </message>
  <message>
   <source>Drag left or right, or press Alt+Up and Alt+Down.</source>
   <translation>Nach links oder rechts ziehen, oder Alt+Hoch und Alt+Herunter drücken.</translation>
  </message>
 </context>
 <context>
  <name>findings</name>
  <message>
   <source>{mend} (helps)</source>
   <translation>{mend} (hilft)</translation>
  </message>
  <message>
   <source>Mend: {mend}</source>
   <translation>Abhilfe: {mend}</translation>
  </message>
  <message>
   <source>Fault</source>
   <translation>Fehler</translation>
  </message>
  <message>
   <source>Caution</source>
   <translation>Warnung</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>{card} To choose from: {mends}.</source>
   <translation>{card} Zur Wahl: {mends}.</translation>
  </message>
  <message>
   <source>nominal</source>
   <translation>Netznennspannung</translation>
  </message>
  <message>
   <source>low mains</source>
   <translation>Netzunterspannung</translation>
  </message>
  <message>
   <source>high mains</source>
   <translation>Netzüberspannung</translation>
  </message>
  <message>
   <source>after a dip</source>
   <translation>nach einem Aussetzer</translation>
  </message>
  <message>
   <source>cold</source>
   <translation>kalt</translation>
  </message>
  <message>
   <source>chosen</source>
   <translation>gewählt</translation>
  </message>
  <message>
   <source>switch-on</source>
   <translation>Einschalten</translation>
  </message>
  <message>
   <source>the mains chosen above</source>
   <translation>der oben gewählten Netzspannung</translation>
  </message>
  <message>
   <source>at {conditions}</source>
   <translation>bei {conditions}</translation>
  </message>
  <message>
   <source>nominal mains</source>
   <translation>Netznennspannung</translation>
  </message>
  <message>
   <source>low and nominal mains</source>
   <translation>Netzunter- und -nennspannung</translation>
  </message>
  <message>
   <source>low and high mains</source>
   <translation>Netzunter- und -überspannung</translation>
  </message>
  <message>
   <source>nominal and high mains</source>
   <translation>Netznenn- und -überspannung</translation>
  </message>
  <message>
   <source>low, nominal and high mains</source>
   <translation>Netzunter-, -nenn- und -überspannung</translation>
  </message>
  <message>
   <source>no findings</source>
   <translation>keine Befunde</translation>
  </message>
  <message>
   <source>1 fault</source>
   <translation>1 Fehler</translation>
  </message>
  <message>
   <source>{count} faults</source>
   <translation>{count} Fehler</translation>
  </message>
  <message>
   <source>1 caution</source>
   <translation>1 Warnung</translation>
  </message>
  <message>
   <source>{count} cautions</source>
   <translation>{count} Warnungen</translation>
  </message>
  <message>
   <source>1 note</source>
   <translation>1 Hinweis</translation>
  </message>
  <message>
   <source>{count} notes</source>
   <translation>{count} Hinweise</translation>
  </message>
  <message>
   <source>{count} would appear, {gone} would vanish</source>
   <translation>{count} kämen dazu, {gone} fielen weg</translation>
  </message>
  <message>
   <source>What would change</source>
   <translation>Was sich ändern würde</translation>
  </message>
 </context>
 <context>
  <name>gestures</name>
  <message>
   <source>Drag from pin to pin</source>
   <translation>Von Stift zu Stift ziehen</translation>
  </message>
  <message>
   <source>a wire; on one socket a strap</source>
   <translation>ein Draht; an einer Fassung eine Brücke</translation>
  </message>
  <message>
   <source>Shift while a wire is drawn</source>
   <translation>Umschalt, während ein Draht gezogen wird</translation>
  </message>
  <message>
   <source>a joint where it is let go in the open</source>
   <translation>ein Lötstützpunkt, wo er im Freien losgelassen wird</translation>
  </message>
  <message>
   <source>Drag a part</source>
   <translation>Bauteil ziehen</translation>
  </message>
  <message>
   <source>moves it on the grid; with Alt off the grid</source>
   <translation>verschiebt es auf dem Raster; mit Alt frei davon</translation>
  </message>
  <message>
   <source>Click a part or a wire</source>
   <translation>Bauteil oder Draht anklicken</translation>
  </message>
  <message>
   <source>selects it; with Shift adds it or takes it away</source>
   <translation>wählt es; mit Umschalt dazu oder weg</translation>
  </message>
  <message>
   <source>Drag on the paper</source>
   <translation>Auf dem Papier ziehen</translation>
  </message>
  <message>
   <source>selects what the band touches; with Shift adds to what is selected</source>
   <translation>wählt, was der Rahmen berührt; mit Umschalt zur Auswahl dazu</translation>
  </message>
  <message>
   <source>Double click a part or a wire</source>
   <translation>Bauteil oder Draht doppelt anklicken</translation>
  </message>
  <message>
   <source>its properties</source>
   <translation>seine Eigenschaften</translation>
  </message>
  <message>
   <source>Double click a note</source>
   <translation>Notiz doppelt anklicken</translation>
  </message>
  <message>
   <source>writes it; Ctrl+Enter keeps it, Escape keeps what was there</source>
   <translation>schreibt sie; Strg+Enter behält es, Esc behält, was da war</translation>
  </message>
  <message>
   <source>Drag the title of a frame</source>
   <translation>Titel eines Rahmens ziehen</translation>
  </message>
  <message>
   <source>moves it with what stands in it; with Alt alone</source>
   <translation>verschiebt ihn mit dem, was darin steht; mit Alt allein</translation>
  </message>
  <message>
   <source>Drag an edge or a corner of a frame</source>
   <translation>Kante oder Ecke eines Rahmens ziehen</translation>
  </message>
  <message>
   <source>makes it larger or smaller</source>
   <translation>macht ihn größer oder kleiner</translation>
  </message>
  <message>
   <source>Click a part in the parts list, then the sheet</source>
   <translation>Bauteil in der Teileliste, dann das Blatt anklicken</translation>
  </message>
  <message>
   <source>places it there; with Shift it stays in hand for the next one</source>
   <translation>setzt es dort; mit Umschalt bleibt es für das nächste in der Hand</translation>
  </message>
  <message>
   <source>Drag a part from the parts list</source>
   <translation>Bauteil aus der Teileliste ziehen</translation>
  </message>
  <message>
   <source>places it where it is dropped</source>
   <translation>setzt es, wo es losgelassen wird</translation>
  </message>
  <message>
   <source>Wheel</source>
   <translation>Rad</translation>
  </message>
  <message>
   <source>scrolls; with Ctrl zooms about the pointer</source>
   <translation>rollt; mit Strg Zoom um den Zeiger</translation>
  </message>
  <message>
   <source>Drag with the middle button or Space</source>
   <translation>Mit mittlerer Taste oder Leertaste ziehen</translation>
  </message>
  <message>
   <source>moves the paper</source>
   <translation>bewegt das Papier</translation>
  </message>
  <message>
   <source>Right button</source>
   <translation>Rechte Taste</translation>
  </message>
  <message>
   <source>the menu of what is there; gives up a part in hand</source>
   <translation>das Menü von dem, was dort ist; legt ein Bauteil aus der Hand</translation>
  </message>
  <message>
   <source>Ctrl and drag from pin to pin</source>
   <translation>Mit Strg von Stift zu Stift ziehen</translation>
  </message>
  <message>
   <source>a twisted pair: the wire from the other end of the heater comes along</source>
   <translation>ein verdrilltes Paar: Der Draht vom anderen Ende des Heizfadens kommt mit</translation>
  </message>
  <message>
   <source>Drag from a pin onto a wire</source>
   <translation>Von einem Stift auf einen Draht ziehen</translation>
  </message>
  <message>
   <source>a joint where they meet</source>
   <translation>ein Lötstützpunkt, wo sie sich treffen</translation>
  </message>
  <message>
   <source>Drag a handle of the selected wire</source>
   <translation>Griff des gewählten Drahts ziehen</translation>
  </message>
  <message>
   <source>leads it another way; with Alt off the grid</source>
   <translation>führt ihn anders; mit Alt frei vom Raster</translation>
  </message>
  <message>
   <source>Double click a handle</source>
   <translation>Griff doppelt anklicken</translation>
  </message>
  <message>
   <source>lets the route find its way again</source>
   <translation>lässt den Weg wieder von selbst finden</translation>
  </message>
  <message>
   <source>Ctrl and double click a wire</source>
   <translation>Draht mit Strg doppelt anklicken</translation>
  </message>
  <message>
   <source>splits it with a joint</source>
   <translation>teilt ihn mit einem Lötstützpunkt</translation>
  </message>
  <message>
   <source>Click a wire of a twisted pair</source>
   <translation>Draht eines verdrillten Paars anklicken</translation>
  </message>
  <message>
   <source>selects both; with Alt only this one</source>
   <translation>wählt beide; mit Alt nur diesen</translation>
  </message>
  <message>
   <source>Tab, Shift+Tab</source>
   <translation>Tab, Umschalt+Tab</translation>
  </message>
  <message>
   <source>next and previous part: left to right, then the row below; after the last out of the drawing</source>
   <translation>nächstes und voriges Bauteil: von links nach rechts, dann die Zeile darunter; nach dem letzten aus der Zeichnung</translation>
  </message>
  <message>
   <source>Arrows</source>
   <translation>Pfeile</translation>
  </message>
  <message>
   <source>move what is selected; with Alt by single units</source>
   <translation>bewegen, was gewählt ist; mit Alt um einzelne Einheiten</translation>
  </message>
  <message>
   <source>Escape</source>
   <translation>Esc</translation>
  </message>
  <message>
   <source>gives up what is under way, then the selection, then the instant on show</source>
   <translation>gibt auf, was im Gange ist, dann die Auswahl, dann den gezeigten Augenblick</translation>
  </message>
  <message>
   <source>the next and the previous pin, round the socket</source>
   <translation>der nächste und der vorige Stift, rund um die Fassung</translation>
  </message>
  <message>
   <source>A digit or letter</source>
   <translation>Ziffer oder Buchstabe</translation>
  </message>
  <message>
   <source>the pin of that name, or the next one that begins so</source>
   <translation>der Stift dieses Namens, oder der nächste, der so beginnt</translation>
  </message>
  <message>
   <source>Enter</source>
   <translation>Enter</translation>
  </message>
  <message>
   <source>begins a wire at the pin; at another pin lays it</source>
   <translation>beginnt am Stift einen Draht; an einem anderen Stift legt es ihn</translation>
  </message>
  <message>
   <source>Tab, Ctrl+arrows while a wire is laid</source>
   <translation>Tab, Strg+Pfeile, während ein Draht gelegt wird</translation>
  </message>
  <message>
   <source>go to the part where it ends; its likeliest pin is proposed</source>
   <translation>gehen zum Bauteil, wo er endet; der wahrscheinlichste Stift wird vorgeschlagen</translation>
  </message>
  <message>
   <source>Ctrl+Enter at the other pin</source>
   <translation>Strg+Enter am anderen Stift</translation>
  </message>
  <message>
   <source>lays a twisted pair</source>
   <translation>legt ein verdrilltes Paar</translation>
  </message>
  <message>
   <source>/ while a wire is laid</source>
   <translation>/ während ein Draht gelegt wird</translation>
  </message>
  <message>
   <source>type where it ends</source>
   <translation>eintippen, wo er endet</translation>
  </message>
  <message>
   <source>gives the wire up, then steps out of the pins</source>
   <translation>gibt den Draht auf, dann aus den Stiften heraus</translation>
  </message>
  <message>
   <source>ECC83, 10R 5 W, 6.3 V 3 A ct, relay</source>
   <translation>ECC83, 10R 5 W, 6.3 V 3 A ct, Relais</translation>
  </message>
  <message>
   <source>adds a part</source>
   <translation>fügt ein Bauteil ein</translation>
  </message>
  <message>
   <source>T1.a V1.4</source>
   <translation>T1.a V1.4</translation>
  </message>
  <message>
   <source>adds a wire between two pins</source>
   <translation>fügt einen Draht zwischen zwei Stiften ein</translation>
  </message>
  <message>
   <source>V1.4-5</source>
   <translation>V1.4-5</translation>
  </message>
  <message>
   <source>adds a strap on one socket</source>
   <translation>fügt eine Brücke an einer Fassung ein</translation>
  </message>
  <message>
   <source>Down, Up</source>
   <translation>Herunter, Hoch</translation>
  </message>
  <message>
   <source>choose among what is offered</source>
   <translation>wählen unter den Angeboten</translation>
  </message>
  <message>
   <source>takes it; the drawing has the keyboard again</source>
   <translation>nimmt es; die Tastatur geht zurück zur Zeichnung</translation>
  </message>
  <message>
   <source>F2, or a double click</source>
   <translation>F2 oder Doppelklick</translation>
  </message>
  <message>
   <source>edits a cell; figures are read as they are written</source>
   <translation>ändert eine Zelle; Werte werden gelesen, wie man sie schreibt</translation>
  </message>
  <message>
   <source>shows the selected rows on the drawing</source>
   <translation>zeigt die gewählten Zeilen in der Zeichnung</translation>
  </message>
  <message>
   <source>Ins</source>
   <translation>Einfg</translation>
  </message>
  <message>
   <source>to the line where a part or a wire is typed to be added</source>
   <translation>zur Zeile, in der man Bauteil oder Draht zum Einfügen eintippt</translation>
  </message>
  <message>
   <source>Del</source>
   <translation>Entf</translation>
  </message>
  <message>
   <source>deletes the parts or wires of the selected rows</source>
   <translation>löscht die Bauteile oder Drähte der gewählten Zeilen</translation>
  </message>
  <message>
   <source>brings the old value back; a text that is refused stays until it is mended or given up</source>
   <translation>holt den alten Wert zurück; ein abgelehnter Text bleibt, bis er berichtigt oder aufgegeben wird</translation>
  </message>
  <message>
   <source>Click on a heading</source>
   <translation>Klick auf eine Überschrift</translation>
  </message>
  <message>
   <source>sorts; the third click brings back the sheet's order</source>
   <translation>sortiert; der dritte Klick holt die Reihenfolge des Blatts zurück</translation>
  </message>
  <message>
   <source>builds the chain as it is shown</source>
   <translation>baut die Kette, wie sie gezeigt wird</translation>
  </message>
  <message>
   <source>Alt+Up, Alt+Down, or a drag in the order</source>
   <translation>Alt+Hoch, Alt+Herunter, oder in der Reihenfolge ziehen</translation>
  </message>
  <message>
   <source>moves a socket along the chain</source>
   <translation>verschiebt eine Fassung in der Kette</translation>
  </message>
  <message>
   <source>gives it up; nothing has happened</source>
   <translation>gibt sie auf; nichts ist geschehen</translation>
  </message>
  <message>
   <source>Click or drag on the time slider</source>
   <translation>Klick oder Ziehen auf dem Zeitschieber</translation>
  </message>
  <message>
   <source>shows that instant everywhere; on a tick exactly when it switched</source>
   <translation>zeigt diesen Augenblick überall; auf einem Strich genau den des Schaltens</translation>
  </message>
  <message>
   <source>Left, Right</source>
   <translation>Links, Rechts</translation>
  </message>
  <message>
   <source>a tenth of a second back or on; from ten seconds on a whole one</source>
   <translation>eine Zehntelsekunde zurück oder vor; ab zehn Sekunden eine ganze</translation>
  </message>
  <message>
   <source>Page Up, Page Down</source>
   <translation>Bild auf, Bild ab</translation>
  </message>
  <message>
   <source>ten seconds on or back</source>
   <translation>zehn Sekunden vor oder zurück</translation>
  </message>
  <message>
   <source>Home, End</source>
   <translation>Pos1, Ende</translation>
  </message>
  <message>
   <source>the instant of switching on, the last one</source>
   <translation>der Augenblick des Einschaltens, der letzte</translation>
  </message>
  <message>
   <source>Space</source>
   <translation>Leertaste</translation>
  </message>
  <message>
   <source>plays and pauses</source>
   <translation>spielt ab und hält an</translation>
  </message>
  <message>
   <source>back to the steady state</source>
   <translation>zurück zum Beharrungszustand</translation>
  </message>
  <message>
   <source>Pointer on the drawing</source>
   <translation>Zeiger auf der Zeichnung</translation>
  </message>
  <message>
   <source>Pointer on wires</source>
   <translation>Zeiger auf Drähten</translation>
  </message>
  <message>
   <source>Walking the drawing by keys</source>
   <translation>Mit Tasten durch die Zeichnung</translation>
  </message>
  <message>
   <source>In the pins of a part</source>
   <translation>In den Stiften eines Bauteils</translation>
  </message>
  <message>
   <source>Typing into the add field</source>
   <translation>Im Eingabefeld tippen</translation>
  </message>
  <message>
   <source>In the tables</source>
   <translation>In den Tabellen</translation>
  </message>
  <message>
   <source>While a chain is chosen</source>
   <translation>Solange eine Kette gewählt wird</translation>
  </message>
  <message>
   <source>On the time slider of a warm-up</source>
   <translation>Auf dem Zeitschieber eines Anheizens</translation>
  </message>
 </context>
 <context>
  <name>help</name>
  <message>
   <source>While the drawing has the keyboard</source>
   <translation>Solange die Zeichnung die Tastatur hat</translation>
  </message>
  <message>
   <source>Nothing here holds these words.</source>
   <translation>Nichts hier enthält diese Wörter.</translation>
  </message>
 </context>
 <context>
  <name>model</name>
  <message>
   <source>{folder} does not allow writing. Save under another name or folder.</source>
   <translation>In {folder} darf nicht geschrieben werden. Unter anderem Namen oder in einem anderen Ordner speichern.</translation>
  </message>
  <message>
   <source>The folder {folder} does not exist. Save into another folder.</source>
   <translation>Den Ordner {folder} gibt es nicht. In einem anderen Ordner speichern.</translation>
  </message>
  <message>
   <source>{name} could not be written: {why}. The old file is untouched.</source>
   <translation>{name} konnte nicht geschrieben werden: {why}. Die alte Datei ist unberührt.</translation>
  </message>
  <message>
   <source>{name} is write-protected</source>
   <translation>{name} ist schreibgeschützt</translation>
  </message>
  <message>
   <source>what was written does not read back the same</source>
   <translation>was geschrieben wurde, liest sich nicht gleich zurück</translation>
  </message>
  <message>
   <source>A length from 0 to {most} is expected.</source>
   <translation>Erwartet wird eine Länge von 0 bis {most}.</translation>
  </message>
  <message>
   <source>a wire size is expected here, such as 20 AWG or 0.5 mm²</source>
   <translation>erwartet wird eine Drahtstärke, etwa 20 AWG oder 0.5 mm²</translation>
  </message>
  <message>
   <source>'{text}' could be a gauge or an area; {expected}.</source>
   <translation>'{text}' kann AWG oder Querschnitt sein; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' is not understood; {expected}.</source>
   <translation>'{text}' ist nicht zu verstehen; {expected}.</translation>
  </message>
  <message>
   <source>{path} is larger than {most} MB, which no sheet is.</source>
   <translation>{path} ist größer als {most} MB; so groß ist kein Blatt.</translation>
  </message>
  <message>
   <source>There is no file {path}. The built-in sheets are: {samples}.</source>
   <translation>Die Datei {path} gibt es nicht. Eingebaute Blätter: {samples}.</translation>
  </message>
  <message>
   <source>{path} is a folder; the name of a sheet file is expected.</source>
   <translation>{path} ist ein Ordner; erwartet wird der Name einer Blattdatei.</translation>
  </message>
  <message>
   <source>{path} may not be read: its permissions do not allow it.</source>
   <translation>{path} darf nicht gelesen werden: Die Rechte fehlen.</translation>
  </message>
  <message>
   <source>{path} cannot be read: {why}.</source>
   <translation>{path} lässt sich nicht lesen: {why}.</translation>
  </message>
  <message>
   <source>{items} and {last}</source>
   <translation>{items} und {last}</translation>
  </message>
  <message>
   <source>is not UTF-8 text</source>
   <translation>ist kein Text in UTF-8</translation>
  </message>
  <message>
   <source>cannot be read: {why}</source>
   <translation>lässt sich nicht lesen: {why}</translation>
  </message>
  <message>
   <source>{owner} has no {fields}</source>
   <translation>{owner} fehlt: {fields}</translation>
  </message>
  <message>
   <source>'{name}' is already a name of {type}</source>
   <translation>'{name}' ist schon ein Name von {type}</translation>
  </message>
  <message>
   <source>'{name}' is the designation itself</source>
   <translation>'{name}' ist die Bezeichnung selbst</translation>
  </message>
  <message>
   <source>'{given}' should be '{wanted}'</source>
   <translation>'{given}' müsste '{wanted}' heißen</translation>
  </message>
  <message>
   <source>{type} has no heater section (volts and amps)</source>
   <translation>{type} hat keinen Heizfadenabschnitt (volts und amps)</translation>
  </message>
  <message>
   <source>the sections of {type} do not join into one heater</source>
   <translation>die Abschnitte von {type} ergeben zusammen keinen Heizfaden</translation>
  </message>
  <message>
   <source>'{given}' is not two pins such as 4-5</source>
   <translation>'{given}' sind nicht zwei Stifte wie 4-5</translation>
  </message>
  <message>
   <source>there is no pin {pin} on base {base}</source>
   <translation>Sockel {base} hat keinen Stift {pin}</translation>
  </message>
  <message>
   <source>is below spread_low_a, {low} A</source>
   <translation>liegt unter spread_low_a, {low} A</translation>
  </message>
  <message>
   <source>is above the peak limit, {peak} V</source>
   <translation>liegt über der Spitzengrenze, {peak} V</translation>
  </message>
  <message>
   <source>{file} line {line}, column '{column}'</source>
   <translation>{file} Zeile {line}, Spalte '{column}'</translation>
  </message>
  <message>
   <source>has {count} cells, expected {wanted}</source>
   <translation>hat {count} Zellen, erwartet werden {wanted}</translation>
  </message>
  <message>
   <source>'{name}' is already in this file</source>
   <translation>'{name}' steht schon in dieser Datei</translation>
  </message>
  <message>
   <source>is not CSV: {why}</source>
   <translation>ist kein CSV: {why}</translation>
  </message>
  <message>
   <source>unknown column, expected {columns}</source>
   <translation>unbekannte Spalte, erwartet wird {columns}</translation>
  </message>
  <message>
   <source>this column is missing</source>
   <translation>diese Spalte fehlt</translation>
  </message>
  <message>
   <source>columns must come in the order {columns}</source>
   <translation>die Spalten müssen so aufeinander folgen: {columns}</translation>
  </message>
  <message>
   <source>is empty</source>
   <translation>ist leer</translation>
  </message>
  <message>
   <source>unknown field '{name}', expected one of {fields}</source>
   <translation>unbekanntes Feld '{name}', erwartet wird eines von {fields}</translation>
  </message>
  <message>
   <source>'{name}' is given twice for {owner}</source>
   <translation>'{name}' ist für {owner} zweimal angegeben</translation>
  </message>
  <message>
   <source>needs two pins such as 4-5</source>
   <translation>braucht zwei Stifte wie 4-5</translation>
  </message>
  <message>
   <source>must be empty</source>
   <translation>muss leer sein</translation>
  </message>
  <message>
   <source>should be '{wanted}'</source>
   <translation>müsste '{wanted}' heißen</translation>
  </message>
  <message>
   <source>'{given}' is not one of {choices}</source>
   <translation>'{given}' ist keines von {choices}</translation>
  </message>
  <message>
   <source>is empty, but the status is '{status}'</source>
   <translation>ist leer, aber der Status ist '{status}'</translation>
  </message>
  <message>
   <source>'{given}' is not a number</source>
   <translation>'{given}' ist keine Zahl</translation>
  </message>
  <message>
   <source>'{given}' is not a finite number</source>
   <translation>'{given}' ist keine endliche Zahl</translation>
  </message>
  <message>
   <source>{given} is not between {low} and {high} {unit}</source>
   <translation>{given} liegt nicht zwischen {low} und {high} {unit}</translation>
  </message>
  <message>
   <source>{rating}, lamp tap at {v}</source>
   <translation>{rating}, Lampenanzapfung bei {v}</translation>
  </message>
  <message>
   <source>{ohm} at {c}</source>
   <translation>{ohm} bei {c}</translation>
  </message>
  <message>
   <source>up to {a}</source>
   <translation>bis {a}</translation>
  </message>
  <message>
   <source>coil {rating}</source>
   <translation>Spule {rating}</translation>
  </message>
  <message>
   <source>contact {a}</source>
   <translation>Kontakt {a}</translation>
  </message>
  <message>
   <source>{items} · {last}</source>
   <translation>{items} · {last}</translation>
  </message>
  <message>
   <source>general knowledge, no sheet at hand</source>
   <translation>Allgemeinwissen, kein Datenblatt zur Hand</translation>
  </message>
  <message>
   <source>{source} (unverified)</source>
   <translation>{source} (ungeprüft)</translation>
  </message>
  <message>
   <source>With the wires that are taken away {ids} get no heat any more.</source>
   <translation>Ohne die entfernten Drähte werden {ids} nicht mehr geheizt.</translation>
  </message>
  <message>
   <source>With the wires that are taken away {id} gets no heat any more.</source>
   <translation>Ohne die entfernten Drähte wird {id} nicht mehr geheizt.</translation>
  </message>
  <message>
   <source>With the wires that are taken away the volts of {ids} change by {off}.</source>
   <translation>Ohne die entfernten Drähte ändert sich die Spannung von {ids} um {off}.</translation>
  </message>
  <message>
   <source>At {condition} {ids} is about {off} off its rated current; {band} is allowed.</source>
   <translation>Bei {condition} liegt {ids} etwa {off} neben dem Nennstrom; erlaubt sind {band}.</translation>
  </message>
  <message>
   <source>At {condition} {ids} are about {off} off their rated current; {band} is allowed.</source>
   <translation>Bei {condition} liegen {ids} etwa {off} neben dem Nennstrom; erlaubt sind {band}.</translation>
  </message>
  <message>
   <source>At {condition} {ids} is about {off} off its rated volts; {band} is allowed.</source>
   <translation>Bei {condition} liegt {ids} etwa {off} neben der Nennspannung; erlaubt sind {band}.</translation>
  </message>
  <message>
   <source>At {condition} {ids} are about {off} off their rated volts; {band} is allowed.</source>
   <translation>Bei {condition} liegen {ids} etwa {off} neben der Nennspannung; erlaubt sind {band}.</translation>
  </message>
  <message>
   <source>{id} may give {rated}; with this chain it is asked for {asked}.</source>
   <translation>{id} darf {rated} geben; mit dieser Kette soll es {asked} sein.</translation>
  </message>
  <message>
   <source>{id} feeds {others} already; its volts change by {off}.</source>
   <translation>{id} speist schon {others}; deren Spannung ändert sich um {off}.</translation>
  </message>
  <message>
   <source>The cathode of {id} ({type}) is its heater or joined to it: it needs a supply of its own.</source>
   <translation>Bei {id} ({type}) ist der Heizfaden die Kathode oder mit ihr verbunden: Er braucht eine eigene Quelle.</translation>
  </message>
  <message>
   <source>{id} ({type}) is made for {rated}, not for {line}.</source>
   <translation>{id} ({type}) ist für {rated} gemacht, nicht für {line}.</translation>
  </message>
  <message>
   <source>{items} or {last}</source>
   <translation>{items} oder {last}</translation>
  </message>
  <message>
   <source>{id} ({type}) is made for {rated}: neither {line} nor half of it.</source>
   <translation>{id} ({type}) ist für {rated} gemacht: weder {line} noch die Hälfte davon.</translation>
  </message>
  <message>
   <source>{id} ({type}, {a}) finds no partner of the same current.</source>
   <translation>{id} ({type}, {a}) findet keinen Partner mit gleichem Strom.</translation>
  </message>
  <message>
   <source>{id} ({type}) wants {own}; the string carries {a}.</source>
   <translation>{id} ({type}) will {own}; der Serienkreis führt {a}.</translation>
  </message>
  <message>
   <source>No heater may be as far from its cathode as those of {ids} would be.</source>
   <translation>So weit, wie die Heizfäden von {ids} von ihrer Kathode lägen, darf keiner liegen.</translation>
  </message>
  <message>
   <source>No heater may be as far from its cathode as that of {id} would be.</source>
   <translation>So weit, wie der Heizfaden von {id} von seiner Kathode läge, darf keiner liegen.</translation>
  </message>
  <message>
   <source>The type {type} of {id} is not known.</source>
   <translation>Der Typ {type} von {id} ist nicht bekannt.</translation>
  </message>
  <message>
   <source>None of them is made for {v}.</source>
   <translation>Keine davon ist für {v} gemacht.</translation>
  </message>
  <message>
   <source>A pair from socket to socket; {n} of {all} suit {v}.</source>
   <translation>Ein Paar von Fassung zu Fassung; {n} von {all} passen zu {v}.</translation>
  </message>
  <message>
   <source>A twisted pair from socket to socket, every heater at {v}.</source>
   <translation>Ein verdrilltes Paar von Fassung zu Fassung, jeder Heizfaden an {v}.</translation>
  </message>
  <message>
   <source>Two heaters of half the volts in series, pair beside pair on {v}.</source>
   <translation>Zwei Heizfäden mit halber Spannung in Serie, Paar neben Paar an {v}.</translation>
  </message>
  <message>
   <source>Needs two heaters of half of {v}.</source>
   <translation>Braucht zwei Heizfäden mit der Hälfte von {v}.</translation>
  </message>
  <message>
   <source>One current through all: {v} at {a}.</source>
   <translation>Ein Strom durch alle: {v} bei {a}.</translation>
  </message>
  <message>
   <source>Needs two heaters or more.</source>
   <translation>Braucht zwei Heizfäden oder mehr.</translation>
  </message>
  <message>
   <source>Only with a resistor across the heater that wants less current.</source>
   <translation>Nur mit einem Widerstand parallel zum Heizfaden, der weniger Strom will.</translation>
  </message>
  <message>
   <source>The id {id} is already in use.</source>
   <translation>Die Kennung {id} ist schon vergeben.</translation>
  </message>
  <message>
   <source>{id} is the mains: only a string can be fed from them.</source>
   <translation>{id} ist das Netz: Daraus lässt sich nur ein Serienkreis speisen.</translation>
  </message>
  <message>
   <source>{id} gives {v}; the string needs {chain}.</source>
   <translation>{id} gibt {v}; der Serienkreis braucht {chain}.</translation>
  </message>
  <message>
   <source>{id} gives {v}; this chain is for {chain}.</source>
   <translation>{id} gibt {v}; diese Kette ist für {chain}.</translation>
  </message>
  <message>
   <source>What {id} gives under load is not computed.</source>
   <translation>Was {id} unter Last gibt, ist nicht berechnet.</translation>
  </message>
  <message>
   <source>{id} is the mains: every heater pin can be live. Work behind an isolating transformer; local codes and licensed practice come first.</source>
   <translation>{id} ist das Netz: Jeder Heizstift kann Netzspannung führen. Hinter einem Trenntransformator arbeiten; örtliche Vorschriften und zugelassene Fachleute gehen vor.</translation>
  </message>
  <message>
   <source>{ids} would carry more than their size should.</source>
   <translation>{ids} würde mehr führen, als die Stärke erlaubt.</translation>
  </message>
  <message>
   <source>{ids} pulled: what stands in series with it stays cold.</source>
   <translation>{ids} gezogen: Was damit in Serie steht, bleibt kalt.</translation>
  </message>
  <message>
   <source>The filament of {ids} is the cathode: all on this line share it.</source>
   <translation>Bei {ids} ist der Heizfaden die Kathode: Alle in diesem Heizkreis teilen sie.</translation>
  </message>
  <message>
   <source>A dropper of {ohm} {w} takes what {id} gives too much; it turns {heat} into heat.</source>
   <translation>Ein Vorwiderstand von {ohm} {w} nimmt, was {id} zu viel gibt; er setzt {heat} in Wärme um.</translation>
  </message>
  <message>
   <source>A shunt of {ohm} carries what {id} does not take.</source>
   <translation>Ein Parallelwiderstand von {ohm} führt, was {id} nicht nimmt.</translation>
  </message>
  <message>
   <source>{id} is tied to the chassis already.</source>
   <translation>{id} liegt schon am Chassis.</translation>
  </message>
  <message>
   <source>{id} gives {a} to others already.</source>
   <translation>{id} gibt schon {a} an andere.</translation>
  </message>
  <message>
   <source>{id} is wired already ({wires}).</source>
   <translation>{id} ist schon verdrahtet ({wires}).</translation>
  </message>
  <message>
   <source>Select the sockets that the chain is to heat.</source>
   <translation>Die Fassungen wählen, die die Kette heizen soll.</translation>
  </message>
  <message>
   <source>None of the selected sockets can be wired so.</source>
   <translation>Keine der gewählten Fassungen lässt sich so verdrahten.</translation>
  </message>
  <message>
   <source>The volts of {id} are out of all reason for heaters.</source>
   <translation>Die Spannung von {id} ist für Heizfäden jenseits aller Vernunft.</translation>
  </message>
  <message>
   <source>The supply that was chosen is no longer on the sheet.</source>
   <translation>Die gewählte Quelle steht nicht mehr auf dem Blatt.</translation>
  </message>
  <message>
   <source>above {low} and at most {high}</source>
   <translation>über {low} und höchstens {high}</translation>
  </message>
  <message>
   <source>from {low} to {high}</source>
   <translation>von {low} bis {high}</translation>
  </message>
  <message>
   <source>greater than 0</source>
   <translation>größer als 0</translation>
  </message>
  <message>
   <source>0 or greater</source>
   <translation>0 oder größer</translation>
  </message>
  <message>
   <source>between {low} and {high}</source>
   <translation>zwischen {low} und {high}</translation>
  </message>
  <message>
   <source>the title</source>
   <translation>Titel</translation>
  </message>
  <message>
   <source>the sheet</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <source>low mains must not lie above high mains</source>
   <translation>die Netzunterspannung darf nicht über der Netzüberspannung liegen</translation>
  </message>
  <message>
   <source>'{id}' cannot be an id: use 1 to 40 characters without spaces or dots, such as V1</source>
   <translation>'{id}' taugt nicht als Kennung: 1 bis 40 Zeichen ohne Leerzeichen und Punkte, etwa V1</translation>
  </message>
  <message>
   <source>the id {id} is already used by {place}</source>
   <translation>die Kennung {id} gehört schon zu {place}</translation>
  </message>
  <message>
   <source>{label} of {owner}</source>
   <translation>{owner}: {label}</translation>
  </message>
  <message>
   <source>{what} must be a finite number</source>
   <translation>{what} muss eine endliche Zahl sein</translation>
  </message>
  <message>
   <source>{what} is too large to be meant</source>
   <translation>{what} ist zu groß, um gemeint zu sein</translation>
  </message>
  <message>
   <source>{what} is too small to be meant</source>
   <translation>{what} ist zu klein, um gemeint zu sein</translation>
  </message>
  <message>
   <source>{what} must be {range}, not {value}</source>
   <translation>{what} muss {range} sein, nicht {value}</translation>
  </message>
  <message>
   <source>place of {owner} must be within ±{most}</source>
   <translation>{owner}: Die Lage muss innerhalb von ±{most} sein</translation>
  </message>
  <message>
   <source>{what} holds half of a character pair</source>
   <translation>{what} enthält ein halbes Zeichenpaar</translation>
  </message>
  <message>
   <source>{id} cannot be mirrored: pins are counted as the socket is seen from below</source>
   <translation>{id} lässt sich nicht spiegeln: Die Stifte werden von unten auf die Fassung gesehen gezählt</translation>
  </message>
  <message>
   <source>{id} is longer than {most} characters</source>
   <translation>{id} ist länger als {most} Zeichen</translation>
  </message>
  <message>
   <source>{id} needs a type, or both rated_v and rated_a</source>
   <translation>{id} braucht einen Typ, oder rated_v und rated_a</translation>
  </message>
  <message>
   <source>{id} needs a type, or all of r25_ohm, beta_k and dissipation_w_per_k</source>
   <translation>{id} braucht einen Typ, oder r25_ohm, beta_k und dissipation_w_per_k</translation>
  </message>
  <message>
   <source>foldback current of {id} must not exceed its current limit</source>
   <translation>{id}: Der Foldback-Strom darf nicht über der Strombegrenzung liegen</translation>
  </message>
  <message>
   <source>drop-out volts of {id} must not exceed its pull-in volts</source>
   <translation>{id}: Die Abfallspannung darf nicht über der Anzugsspannung liegen</translation>
  </message>
  <message>
   <source>{id} starts and ends at the same terminal; it needs two</source>
   <translation>{id} beginnt und endet am selben Anschluss; es braucht zwei</translation>
  </message>
  <message>
   <source>{id} has both awg and area_mm2; give one of them</source>
   <translation>{id} hat awg und area_mm2; nur eines davon angeben</translation>
  </message>
  <message>
   <source>{id} has {count} corners; {most} are the most</source>
   <translation>{id} hat {count} Ecken; höchstens {most} sind erlaubt</translation>
  </message>
  <message>
   <source>a corner of {id}</source>
   <translation>Ecke von {id}</translation>
  </message>
  <message>
   <source>{id} starts at {terminal}</source>
   <translation>{id} beginnt an {terminal}</translation>
  </message>
  <message>
   <source>{id} ends at {terminal}</source>
   <translation>{id} endet an {terminal}</translation>
  </message>
  <message>
   <source>pins are numbered 1 to {most}</source>
   <translation>Stifte haben Nummern von 1 bis {most}</translation>
  </message>
  <message>
   <source>it has {names}</source>
   <translation>es gibt {names}</translation>
  </message>
  <message>
   <source>{end}, but {id} has no terminal '{name}'; {known}</source>
   <translation>{end}, aber {id} hat keinen Anschluss '{name}'; {known}</translation>
  </message>
  <message>
   <source>{end}, but there is no part {id}</source>
   <translation>{end}, aber ein Bauteil {id} gibt es nicht</translation>
  </message>
  <message>
   <source>{end}, which is no terminal: write part and terminal with a dot, such as V1.4</source>
   <translation>{end}, und das ist kein Anschluss: Bauteil und Anschluss mit Punkt schreiben, etwa V1.4</translation>
  </message>
  <message>
   <source>a tube type needs a designation</source>
   <translation>ein Röhrentyp braucht eine Bezeichnung</translation>
  </message>
  <message>
   <source>the tube type {type} stands here twice</source>
   <translation>der Röhrentyp {type} steht hier zweimal</translation>
  </message>
  <message>
   <source>{type} has no heater section</source>
   <translation>{type} hat keinen Heizfadenabschnitt</translation>
  </message>
  <message>
   <source>a section of {type} needs two different pins from 1 to {most}</source>
   <translation>ein Abschnitt von {type} braucht zwei verschiedene Stifte von 1 bis {most}</translation>
  </message>
  <message>
   <source>a capacitor in an AC circuit is not computed yet</source>
   <translation>ein Kondensator im Wechselstromkreis wird noch nicht berechnet</translation>
  </message>
  <message>
   <source>a diode in an AC circuit is not computed yet</source>
   <translation>eine Diode im Wechselstromkreis wird noch nicht berechnet</translation>
  </message>
  <message>
   <source>a supply without internal resistance is short-circuited</source>
   <translation>eine Quelle ohne Innenwiderstand ist kurzgeschlossen</translation>
  </message>
  <message>
   <source>supplies without internal resistance are in parallel</source>
   <translation>Quellen ohne Innenwiderstand liegen parallel</translation>
  </message>
  <message>
   <source>a plain number</source>
   <translation>eine reine Zahl</translation>
  </message>
  <message>
   <source>volts</source>
   <translation>Volt</translation>
  </message>
  <message>
   <source>amperes</source>
   <translation>Ampere</translation>
  </message>
  <message>
   <source>ohms</source>
   <translation>Ohm</translation>
  </message>
  <message>
   <source>{one} or {other}</source>
   <translation>{one} oder {other}</translation>
  </message>
  <message>
   <source>watts</source>
   <translation>Watt</translation>
  </message>
  <message>
   <source>farads</source>
   <translation>Farad</translation>
  </message>
  <message>
   <source>metres</source>
   <translation>Meter</translation>
  </message>
  <message>
   <source>square millimetres</source>
   <translation>Quadratmillimeter</translation>
  </message>
  <message>
   <source>seconds</source>
   <translation>Sekunden</translation>
  </message>
  <message>
   <source>hertz</source>
   <translation>Hertz</translation>
  </message>
  <message>
   <source>degrees Celsius</source>
   <translation>Grad Celsius</translation>
  </message>
  <message>
   <source>kelvins</source>
   <translation>Kelvin</translation>
  </message>
  <message>
   <source>per cent</source>
   <translation>Prozent</translation>
  </message>
  <message>
   <source>watts per kelvin</source>
   <translation>Watt je Kelvin</translation>
  </message>
  <message>
   <source>kelvins per watt</source>
   <translation>Kelvin je Watt</translation>
  </message>
  <message>
   <source>ampere-squared seconds</source>
   <translation>Amperequadratsekunden</translation>
  </message>
  <message>
   <source>{what} is expected here, such as {example}</source>
   <translation>erwartet wird {what}, etwa {example}</translation>
  </message>
  <message>
   <source>{what} are expected here, such as {example}</source>
   <translation>erwartet werden {what}, etwa {example}</translation>
  </message>
  <message>
   <source>A wire needs two different terminals.</source>
   <translation>Ein Draht braucht zwei verschiedene Anschlüsse.</translation>
  </message>
  <message>
   <source>There is no terminal {terminal} on this sheet.</source>
   <translation>Den Anschluss {terminal} gibt es auf diesem Blatt nicht.</translation>
  </message>
  <message>
   <source>There is no part {id}.</source>
   <translation>Ein Bauteil {id} gibt es nicht.</translation>
  </message>
  <message>
   <source>There is no wire {id}.</source>
   <translation>Einen Draht {id} gibt es nicht.</translation>
  </message>
  <message>
   <source>There is nothing called {id} on this sheet.</source>
   <translation>Auf diesem Blatt heißt nichts {id}.</translation>
  </message>
  <message>
   <source>'{id}' cannot be an id: use 1 to 40 characters without spaces or dots, such as V1.</source>
   <translation>'{id}' taugt nicht als Kennung: 1 bis 40 Zeichen ohne Leerzeichen und Punkte, etwa V1.</translation>
  </message>
  <message>
   <source>{id} is not a tube.</source>
   <translation>{id} ist keine Röhre.</translation>
  </message>
  <message>
   <source>What is pasted</source>
   <translation>Das Eingefügte</translation>
  </message>
  <message>
   <source>{id} cannot be used as an id here.</source>
   <translation>{id} taugt hier nicht als Kennung.</translation>
  </message>
  <message>
   <source>A pair is twisted of two wires.</source>
   <translation>Ein Paar wird aus zwei Drähten verdrillt.</translation>
  </message>
  <message>
   <source>{first} and {second} do not run between the same two parts.</source>
   <translation>{first} und {second} laufen nicht zwischen denselben zwei Bauteilen.</translation>
  </message>
  <message>
   <source>{what} would lie beyond the sheet: places go to ±{most}.</source>
   <translation>{what} läge außerhalb des Blatts: Es reicht bis ±{most}.</translation>
  </message>
  <message>
   <source>A corner of {id}</source>
   <translation>Eine Ecke von {id}</translation>
  </message>
  <message>
   <source>{id} is not a joint.</source>
   <translation>{id} ist kein Lötstützpunkt.</translation>
  </message>
  <message>
   <source>{id} does not stand between two wires: {count} end on it.</source>
   <translation>{id} steht nicht zwischen zwei Drähten: {count} enden daran.</translation>
  </message>
  <message>
   <source>Both wires on {id} go to the same terminal.</source>
   <translation>Beide Drähte an {id} gehen zum selben Anschluss.</translation>
  </message>
  <message>
   <source>{first} and {second} differ in gauge; make them alike first.</source>
   <translation>{first} und {second} sind verschieden dick; zuerst angleichen.</translation>
  </message>
  <message>
   <source>{id} is no part of the wiring.</source>
   <translation>{id} gehört nicht zur Verdrahtung.</translation>
  </message>
  <message>
   <source>the steady state of a rectifier with reservoir is not computed yet</source>
   <translation>der Betrieb eines Gleichrichters mit Ladekondensator wird noch nicht berechnet</translation>
  </message>
  <message>
   <source>{reason} ({ids})</source>
   <translation>{reason} ({ids})</translation>
  </message>
  <message>
   <source>Called off.</source>
   <translation>Abgebrochen.</translation>
  </message>
  <message>
   <source>type</source>
   <translation>Typ</translation>
  </message>
  <message>
   <source>pulled</source>
   <translation>gezogen</translation>
  </message>
  <message>
   <source>closed</source>
   <translation>geschlossen</translation>
  </message>
  <message>
   <source>rectifier</source>
   <translation>Gleichrichter</translation>
  </message>
  <message>
   <source>speed</source>
   <translation>Charakteristik</translation>
  </message>
  <message>
   <source>text</source>
   <translation>Text</translation>
  </message>
  <message>
   <source>title</source>
   <translation>Titel</translation>
  </message>
  <message>
   <source>rated volts</source>
   <translation>Nennspannung</translation>
  </message>
  <message>
   <source>rated amperes</source>
   <translation>Nennstrom</translation>
  </message>
  <message>
   <source>rated watts</source>
   <translation>Nennleistung</translation>
  </message>
  <message>
   <source>rated mains volts</source>
   <translation>Nennspannung des Netzes</translation>
  </message>
  <message>
   <source>cathode volts above chassis</source>
   <translation>Kathode über Chassis</translation>
  </message>
  <message>
   <source>hot to cold ratio</source>
   <translation>Heiß-Kalt-Verhältnis</translation>
  </message>
  <message>
   <source>warm-up time</source>
   <translation>Anheizzeit</translation>
  </message>
  <message>
   <source>regulation</source>
   <translation>Leerlaufüberhöhung</translation>
  </message>
  <message>
   <source>centre tap</source>
   <translation>Mittelanzapfung</translation>
  </message>
  <message>
   <source>set volts</source>
   <translation>eingestellte Spannung</translation>
  </message>
  <message>
   <source>current limit</source>
   <translation>Strombegrenzung</translation>
  </message>
  <message>
   <source>in overload</source>
   <translation>bei Überlast</translation>
  </message>
  <message>
   <source>time to cut-out</source>
   <translation>Zeit bis Abschaltung</translation>
  </message>
  <message>
   <source>time to retry</source>
   <translation>Zeit bis Neustart</translation>
  </message>
  <message>
   <source>minimum load</source>
   <translation>Mindestlast</translation>
  </message>
  <message>
   <source>foldback current</source>
   <translation>Foldback-Strom</translation>
  </message>
  <message>
   <source>volts before a linear regulator</source>
   <translation>Spannung vor einem Linearregler</translation>
  </message>
  <message>
   <source>EMF</source>
   <translation>Quellenspannung</translation>
  </message>
  <message>
   <source>internal resistance</source>
   <translation>Innenwiderstand</translation>
  </message>
  <message>
   <source>volts across a diode</source>
   <translation>Spannung je Diode</translation>
  </message>
  <message>
   <source>reservoir</source>
   <translation>Ladekondensator</translation>
  </message>
  <message>
   <source>regulated volts</source>
   <translation>geregelte Spannung</translation>
  </message>
  <message>
   <source>dropout</source>
   <translation>Abfall am Regler</translation>
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
   <source>resistance at 25 °C</source>
   <translation>Widerstand bei 25 °C</translation>
  </message>
  <message>
   <source>beta</source>
   <translation>Beta</translation>
  </message>
  <message>
   <source>dissipation factor</source>
   <translation>Wärmeleitwert</translation>
  </message>
  <message>
   <source>time constant</source>
   <translation>Zeitkonstante</translation>
  </message>
  <message>
   <source>largest current</source>
   <translation>größter Strom</translation>
  </message>
  <message>
   <source>largest capacitance</source>
   <translation>größte Kapazität</translation>
  </message>
  <message>
   <source>coil volts</source>
   <translation>Spulenspannung</translation>
  </message>
  <message>
   <source>coil resistance</source>
   <translation>Spulenwiderstand</translation>
  </message>
  <message>
   <source>pull-in volts</source>
   <translation>Anzugsspannung</translation>
  </message>
  <message>
   <source>drop-out volts</source>
   <translation>Abfallspannung</translation>
  </message>
  <message>
   <source>time of travel</source>
   <translation>Laufzeit</translation>
  </message>
  <message>
   <source>contact rating</source>
   <translation>Kontaktbelastbarkeit</translation>
  </message>
  <message>
   <source>cold resistance</source>
   <translation>Kaltwiderstand</translation>
  </message>
  <message>
   <source>melting I²t</source>
   <translation>Schmelz-I²t</translation>
  </message>
  <message>
   <source>capacitance</source>
   <translation>Kapazität</translation>
  </message>
  <message>
   <source>forward volts</source>
   <translation>Flussspannung</translation>
  </message>
  <message>
   <source>wiper position</source>
   <translation>Schleiferstellung</translation>
  </message>
  <message>
   <source>volts above chassis</source>
   <translation>Volt über Chassis</translation>
  </message>
  <message>
   <source>source resistance</source>
   <translation>Quellwiderstand</translation>
  </message>
  <message>
   <source>wire gauge</source>
   <translation>Drahtstärke</translation>
  </message>
  <message>
   <source>wire area</source>
   <translation>Drahtquerschnitt</translation>
  </message>
  <message>
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>nominal mains volts</source>
   <translation>Netznennspannung</translation>
  </message>
  <message>
   <source>low mains</source>
   <translation>Netzunterspannung</translation>
  </message>
  <message>
   <source>high mains</source>
   <translation>Netzüberspannung</translation>
  </message>
  <message>
   <source>mains frequency</source>
   <translation>Netzfrequenz</translation>
  </message>
  <message>
   <source>ambient temperature</source>
   <translation>Umgebungstemperatur</translation>
  </message>
  <message>
   <source>place on the sheet</source>
   <translation>Lage auf dem Blatt</translation>
  </message>
  <message>
   <source>mirrored</source>
   <translation>gespiegelt</translation>
  </message>
  <message>
   <source>width on the sheet</source>
   <translation>Breite auf dem Blatt</translation>
  </message>
  <message>
   <source>height on the sheet</source>
   <translation>Höhe auf dem Blatt</translation>
  </message>
  <message>
   <source>{id} does not end on {terminal}.</source>
   <translation>{id} endet nicht an {terminal}.</translation>
  </message>
  <message>
   <source>No wire ends on {terminal}.</source>
   <translation>An {terminal} endet kein Draht.</translation>
  </message>
  <message>
   <source>{id} does not end on the chassis.</source>
   <translation>{id} endet nicht am Chassis.</translation>
  </message>
  <message>
   <source>There is no kind of part called {kind}.</source>
   <translation>Eine Bauteilart namens {kind} gibt es nicht.</translation>
  </message>
  <message>
   <source>{id} cannot be made: {why}.</source>
   <translation>{id} lässt sich nicht anlegen: {why}.</translation>
  </message>
  <message>
   <source>{id} is no part of two terminals.</source>
   <translation>{id} ist kein Bauteil mit zwei Anschlüssen.</translation>
  </message>
  <message>
   <source>version {step} of the sheet file is not known</source>
   <translation>Version {step} der Blattdatei ist nicht bekannt</translation>
  </message>
  <message>
   <source>This is no sheet of version {step}, though it says so</source>
   <translation>Das ist kein Blatt der Version {step}, obwohl es das sagt</translation>
  </message>
  <message>
   <source>Preferred values exist only for numbers above zero, such as 47.</source>
   <translation>Normwerte gibt es nur für Zahlen über null, etwa 47.</translation>
  </message>
  <message>
   <source>No preferred value is near {value}.</source>
   <translation>In der Nähe von {value} liegt kein Normwert.</translation>
  </message>
  <message>
   <source>A power in watts is expected, zero or more, such as 2.5.</source>
   <translation>Erwartet wird eine Leistung in Watt, null oder mehr, etwa 2.5.</translation>
  </message>
  <message>
   <source>the relay chatters: pulling in takes away what pulled it in</source>
   <translation>das Relais flattert: Das Anziehen nimmt weg, was es anziehen ließ</translation>
  </message>
  <message>
   <source>the relays chatter: pulling in takes away what pulled them in</source>
   <translation>die Relais flattern: das Anziehen nimmt weg, was sie angezogen hat</translation>
  </message>
  <message>
   <source>{type} is not in the catalogue; its heater pins are not known.</source>
   <translation>{type} steht nicht im Katalog; seine Heizstifte sind nicht bekannt.</translation>
  </message>
  <message>
   <source>The heater pins of {type} are not known.</source>
   <translation>Die Heizstifte von {type} sind nicht bekannt.</translation>
  </message>
  <message>
   <source>Pin {pin} carries a wire and would become a heater pin.</source>
   <translation>An Stift {pin} liegt ein Draht; er würde zum Heizstift.</translation>
  </message>
  <message>
   <source>Pin {pin} carries a wire; {base} has no such pin.</source>
   <translation>An Stift {pin} liegt ein Draht; {base} hat keinen solchen Stift.</translation>
  </message>
  <message>
   <source>The two heaters are not divided alike.</source>
   <translation>Die beiden Heizfäden sind nicht gleich geteilt.</translation>
  </message>
  <message>
   <source>The taps of the two heaters do not serve the same purpose.</source>
   <translation>Die Anzapfungen der beiden Heizfäden dienen nicht demselben Zweck.</translation>
  </message>
  <message>
   <source>The tapped heater is wired neither in series nor with its halves side by side.</source>
   <translation>Der angezapfte Heizfaden ist weder in Serie noch mit parallelen Hälften verdrahtet.</translation>
  </message>
  <message>
   <source>It is wired for {volts}; {type} needs other volts.</source>
   <translation>Verdrahtet ist für {volts}; {type} braucht eine andere Spannung.</translation>
  </message>
  <message>
   <source>The wires of {id} stay where they are: move them by hand.</source>
   <translation>Die Drähte von {id} bleiben, wo sie sind: von Hand umlegen.</translation>
  </message>
  <message>
   <source>The base changes from {old} to {new}: another socket.</source>
   <translation>Der Sockel wechselt von {old} zu {new}: andere Fassung.</translation>
  </message>
  <message>
   <source>The heater needs {new} instead of {old}.</source>
   <translation>Der Heizfaden braucht {new} statt {old}.</translation>
  </message>
  <message>
   <source>The heater takes {new} instead of {old}.</source>
   <translation>Der Heizfaden nimmt {new} statt {old} auf.</translation>
  </message>
  <message>
   <source>The wires on pin {old} go to pin {new}.</source>
   <translation>Die Drähte an Stift {old} kommen an Stift {new}.</translation>
  </message>
  <message>
   <source>Pins {one} and {other} become one pin.</source>
   <translation>Stift {one} und {other} werden ein Stift.</translation>
  </message>
  <message>
   <source>A strap joins pins {one} and {other}.</source>
   <translation>Eine Brücke verbindet Stift {one} und {other}.</translation>
  </message>
  <message>
   <source>The heater pins stay as they are.</source>
   <translation>Die Heizstifte bleiben gleich.</translation>
  </message>
  <message>
   <source>{owners} in one string want different currents</source>
   <translation>{owners} in einem Serienkreis wollen verschiedene Ströme</translation>
  </message>
  <message>
   <source>One current flows in all of them, but {low} is wanted by {low_ids} and {high} by {high_ids}.</source>
   <translation>Durch alle fließt derselbe Strom, aber {low_ids} will {low} und {high_ids} will {high}.</translation>
  </message>
  <message>
   <source>One current flows in all of them, but {low} is wanted by {low_ids} and {high} by {high_ids}: {one} gets {over} of {over_rated}, {other} {under} of {under_rated}.</source>
   <translation>Durch alle fließt derselbe Strom, aber {low_ids} will {low} und {high_ids} will {high}: {one} bekommt {over} statt {over_rated}, {other} {under} statt {under_rated}.</translation>
  </message>
  <message>
   <source>Put only heaters of one current in a string.</source>
   <translation>In einen Serienkreis nur Heizfäden mit gleichem Strom setzen.</translation>
  </message>
  <message>
   <source>A shunt of {ohm} {w} across {id} carries the other {spare}.</source>
   <translation>Ein Parallelwiderstand von {ohm} {w} an {id} führt die restlichen {spare}.</translation>
  </message>
  <message>
   <source>A shunt of {ohm} {w} across {id} carries the other {spare}; so does one like it across {others}.</source>
   <translation>Ein Parallelwiderstand von {ohm} {w} an {id} führt die restlichen {spare}; ebenso je einer an {others}.</translation>
  </message>
  <message>
   <source>A shunt of {ohm} {w} across {id} carries the other {spare}; also {more}.</source>
   <translation>Ein Parallelwiderstand von {ohm} {w} an {id} führt die restlichen {spare}; ebenso {more}.</translation>
  </message>
  <message>
   <source>{ohm} {w} across {id}</source>
   <translation>{ohm} {w} an {id}</translation>
  </message>
  <message>
   <source>Shunt {ids} by {ohm} {w}</source>
   <translation>{ohm} {w} parallel zu {ids}</translation>
  </message>
  <message>
   <source>Fit shunts across {ids}</source>
   <translation>Parallelwiderstände an {ids}</translation>
  </message>
  <message>
   <source>RCA 12AX7-A data sheet, 10-60: ±6 % for series operation</source>
   <translation>Datenblatt RCA 12AX7-A, 10-60: ±6 % bei Serienheizung</translation>
  </message>
  <message>
   <source>common practice: below a twentieth of its rated volts a heater does not glow</source>
   <translation>übliche Praxis: Unter einem Zwanzigstel der Nennspannung glüht ein Heizfaden nicht</translation>
  </message>
  <message>
   <source>Lamp {id}</source>
   <translation>Lampe {id}</translation>
  </message>
  <message>
   <source>{id} is not heated</source>
   <translation>{id} wird nicht geheizt</translation>
  </message>
  <message>
   <source>{name} stays cold: no wire ends on its heater {pins}.</source>
   <translation>{name} bleibt kalt: An {pins} des Heizfadens endet kein Draht.</translation>
  </message>
  <message>
   <source>Wire {pins} to the heater supply.</source>
   <translation>{pins} mit der Heizquelle verbinden.</translation>
  </message>
  <message>
   <source>{name} stays cold: only {pin} is wired, so no current can flow.</source>
   <translation>{name} bleibt kalt: Nur {pin} ist verdrahtet, so kann kein Strom fließen.</translation>
  </message>
  <message>
   <source>Wire {pins} to the other side of the supply.</source>
   <translation>{pins} mit der anderen Seite der Quelle verbinden.</translation>
  </message>
  <message>
   <source>{name} stays cold: a wire joins {pins} of its heater.</source>
   <translation>{name} bleibt kalt: Ein Draht verbindet {pins} des Heizfadens.</translation>
  </message>
  <message>
   <source>Take out the wire that joins the ends of the heater.</source>
   <translation>Den Draht herausnehmen, der die Enden des Heizfadens verbindet.</translation>
  </message>
  <message>
   <source>{name} stays cold: {part} joins {pins} of its heater.</source>
   <translation>{name} bleibt kalt: {part} verbindet {pins} des Heizfadens.</translation>
  </message>
  <message>
   <source>Open {part}, or take it off the heater.</source>
   <translation>{part} öffnen oder vom Heizfaden trennen.</translation>
  </message>
  <message>
   <source>Open {id}</source>
   <translation>{id} öffnen</translation>
  </message>
  <message>
   <source>{name} stays cold: no supply feeds its heater.</source>
   <translation>{name} bleibt kalt: Keine Quelle speist den Heizfaden.</translation>
  </message>
  <message>
   <source>Wire the line to a winding or another heater supply.</source>
   <translation>Den Heizkreis an eine Wicklung oder andere Heizquelle anschließen.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} gives next to nothing.</source>
   <translation>{name} bleibt kalt: {ids} gibt so gut wie nichts ab.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} give next to nothing.</source>
   <translation>{name} bleibt kalt: {ids} geben so gut wie nichts ab.</translation>
  </message>
  <message>
   <source>Look for the short circuit or overload of {ids} first.</source>
   <translation>Zuerst Kurzschluss oder Überlast von {ids} suchen.</translation>
  </message>
  <message>
   <source>{name} stays cold: its wires lead to no two sides of a supply.</source>
   <translation>{name} bleibt kalt: Die Drähte führen nicht zu zwei Seiten einer Quelle.</translation>
  </message>
  <message>
   <source>Wire its heater between the two sides of {ids}.</source>
   <translation>Den Heizfaden zwischen die zwei Seiten von {ids} schalten.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} in its string is pulled, so no current flows.</source>
   <translation>{name} bleibt kalt: {ids} im selben Serienkreis ist gezogen, es fließt kein Strom.</translation>
  </message>
  <message>
   <source>Put {ids} back: one tube out of a string cools them all.</source>
   <translation>{ids} wieder einsetzen: Fehlt eine Röhre im Serienkreis, bleiben alle kalt.</translation>
  </message>
  <message>
   <source>{name} stays cold: its current would flow through {ids}, of unknown type.</source>
   <translation>{name} bleibt kalt: Der Strom flösse durch {ids} von unbekanntem Typ.</translation>
  </message>
  <message>
   <source>Choose a type for {ids} that the catalogue has.</source>
   <translation>Für {ids} einen Typ aus dem Katalog wählen.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} blocks its current.</source>
   <translation>{name} bleibt kalt: {ids} sperrt den Strom.</translation>
  </message>
  <message>
   <source>Turn {ids} round.</source>
   <translation>{ids} umdrehen.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} in its loop passes no heater current.</source>
   <translation>{name} bleibt kalt: {ids} im Stromkreis lässt keinen Heizstrom durch.</translation>
  </message>
  <message>
   <source>Bridge {ids} by a wire.</source>
   <translation>{ids} mit einem Draht überbrücken.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} stands open.</source>
   <translation>{name} bleibt kalt: {ids} steht offen.</translation>
  </message>
  <message>
   <source>Close {ids}.</source>
   <translation>{ids} schließen.</translation>
  </message>
  <message>
   <source>Put {ids} back</source>
   <translation>{ids} wieder einsetzen</translation>
  </message>
  <message>
   <source>Close {ids}</source>
   <translation>{ids} schließen</translation>
  </message>
  <message>
   <source>Bridge {ids}</source>
   <translation>{ids} überbrücken</translation>
  </message>
  <message>
   <source>Turn {ids} round</source>
   <translation>{ids} umdrehen</translation>
  </message>
  <message>
   <source>{name} stays cold: {id} stands open, as the line of its coil is not solved.</source>
   <translation>{name} bleibt kalt: {id} steht offen, da der Zweig seiner Spule nicht gelöst ist.</translation>
  </message>
  <message>
   <source>Put the line of the coil of {id} right first.</source>
   <translation>Bringen Sie zuerst den Zweig der Spule von {id} in Ordnung.</translation>
  </message>
  <message>
   <source>{name} stays cold: {id} stands open while it is pulled in.</source>
   <translation>{name} bleibt kalt: {id} steht offen, solange es angezogen ist.</translation>
  </message>
  <message>
   <source>Move the heater to the other contact of {id}.</source>
   <translation>Den Heizfaden an den anderen Kontakt von {id} legen.</translation>
  </message>
  <message>
   <source>{name} stays cold: {id} stands open, because its coil gets {v} and pulls in at {pull_in}.</source>
   <translation>{name} bleibt kalt: {id} steht offen, denn die Spule bekommt {v} und zieht erst bei {pull_in} an.</translation>
  </message>
  <message>
   <source>Give the coil of {id} its {coil}.</source>
   <translation>Der Spule von {id} ihre {coil} geben.</translation>
  </message>
  <message>
   <source>Move {old} to {new}</source>
   <translation>{old} nach {new} umlegen</translation>
  </message>
  <message>
   <source>Only a part of {id} ({type}) is heated: its section {warm} gets {v}, but section {dead} ({pins}) gets {none}.</source>
   <translation>Nur ein Teil von {id} ({type}) wird geheizt: Abschnitt {warm} bekommt {v}, Abschnitt {dead} ({pins}) aber {none}.</translation>
  </message>
  <message>
   <source>Only a part of {id} ({type}) is heated: its sections {warm} get {v}, but section {dead} ({pins}) gets {none}.</source>
   <translation>Nur ein Teil von {id} ({type}) wird geheizt: Die Abschnitte {warm} bekommen {v}, Abschnitt {dead} ({pins}) aber {none}.</translation>
  </message>
  <message>
   <source>{id} is only half heated</source>
   <translation>{id} ist nur halb geheizt</translation>
  </message>
  <message>
   <source>Take out the wire that joins {pins}.</source>
   <translation>Den Draht herausnehmen, der {pins} verbindet.</translation>
  </message>
  <message>
   <source>Strap pin {one} to pin {other}, so that both halves lie between that strap and {tap}.</source>
   <translation>Stift {one} mit Stift {other} überbrücken, damit beide Hälften zwischen dieser Brücke und {tap} liegen.</translation>
  </message>
  <message>
   <source>Strap {a} to {b}</source>
   <translation>{a} mit {b} überbrücken</translation>
  </message>
  <message>
   <source>Feed the whole heater between {pins}.</source>
   <translation>Den ganzen Heizfaden zwischen {pins} speisen.</translation>
  </message>
  <message>
   <source>Move pin {a} to pin {b}</source>
   <translation>Stift {a} nach Stift {b} umlegen</translation>
  </message>
  <message>
   <source>Set {id} to {v}</source>
   <translation>{id} auf {v} einstellen</translation>
  </message>
  <message>
   <source>Set {id} to {v}.</source>
   <translation>{id} auf {v} einstellen.</translation>
  </message>
  <message>
   <source>{ohm} {w} in series with {id} alone brings it to its rated volts at nominal mains.</source>
   <translation>{ohm} {w} in Serie mit {id} allein bringt es bei Netznennspannung auf Nennspannung.</translation>
  </message>
  <message>
   <source>Make {id} {ohm} {w}</source>
   <translation>{id} als {ohm} {w}</translation>
  </message>
  <message>
   <source>The halves of {id} are loaded unequally: share the heaters evenly between them first.</source>
   <translation>Die Hälften von {id} sind ungleich belastet: zuerst die Heizfäden gleichmäßig verteilen.</translation>
  </message>
  <message>
   <source>Use a supply of {v}.</source>
   <translation>Eine Quelle mit {v} nehmen.</translation>
  </message>
  <message>
   <source>{ohm} {w} in series with {id} brings the heater to its rated volts at nominal mains.</source>
   <translation>{ohm} {w} in Serie mit {id} bringt den Heizfaden bei Netznennspannung auf Nennspannung.</translation>
  </message>
  <message>
   <source>{ohm} {w} in each leg of {id} brings its heaters to their rated volts at nominal mains.</source>
   <translation>{ohm} {w} in jede Zuleitung von {id} bringt die Heizfäden bei Netznennspannung auf Nennspannung.</translation>
  </message>
  <message>
   <source>{ohm} {w} in the leg at {leg} brings {heaters} to rated volts at nominal mains.</source>
   <translation>{ohm} {w} in die Zuleitung an {leg} bringt {heaters} bei Netznennspannung auf Nennspannung.</translation>
  </message>
  <message>
   <source>Size the dropper so that rated current flows at nominal mains.</source>
   <translation>Den Vorwiderstand so bemessen, dass bei Netznennspannung der Nennstrom fließt.</translation>
  </message>
  <message>
   <source>The heaters of the string want more volts than the mains give, or less than a dropper can take: change what stands in the string.</source>
   <translation>Die Heizfäden des Serienkreises wollen mehr Volt, als das Netz gibt, oder weniger, als ein Vorwiderstand aufnimmt: den Serienkreis ändern.</translation>
  </message>
  <message>
   <source>{ohm} {w} more in series brings rated current at nominal mains.</source>
   <translation>{ohm} {w} mehr in Serie bringt bei Netznennspannung den Nennstrom.</translation>
  </message>
  <message>
   <source>{ohm} less in series with the string brings rated current at nominal mains.</source>
   <translation>{ohm} weniger in Serie bringt bei Netznennspannung den Nennstrom.</translation>
  </message>
  <message>
   <source>{size} throughout</source>
   <translation>überall {size}</translation>
  </message>
  <message>
   <source>Heavier wire, up to {size}</source>
   <translation>Dickerer Draht, bis {size}</translation>
  </message>
  <message>
   <source>usual practice for receiving tubes: M. J. Darby, The Radio Constructor, April 1962</source>
   <translation>übliche Praxis bei Empfängerröhren: M. J. Darby, The Radio Constructor, April 1962</translation>
  </message>
  <message>
   <source>{id} above {limit}</source>
   <translation>{id} über {limit}</translation>
  </message>
  <message>
   <source>{id} below {limit}</source>
   <translation>{id} unter {limit}</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) gets {v} at {condition}, {off} off its {rated}; {band} is allowed.</source>
   <translation>Der Heizfaden von {id} ({type}) bekommt {v} bei {condition}, {off} gegen seine {rated}; erlaubt sind {band}.</translation>
  </message>
  <message>
   <source>Lamp {id} above {limit}</source>
   <translation>Lampe {id} über {limit}</translation>
  </message>
  <message>
   <source>Lamp {id} gets {v} at {condition}, {off} off its {rated}: it will not last.</source>
   <translation>Lampe {id} bekommt {v} bei {condition}, {off} gegen ihre {rated}: Sie hält nicht lange.</translation>
  </message>
  <message>
   <source>common practice: the life of a lamp falls with the 12th power of its volts</source>
   <translation>übliche Praxis: Die Lebensdauer einer Lampe fällt mit der 12. Potenz ihrer Spannung</translation>
  </message>
  <message>
   <source>String current of {id} above {limit}</source>
   <translation>Serienstrom von {id} über {limit}</translation>
  </message>
  <message>
   <source>String current of {id} below {limit}</source>
   <translation>Serienstrom von {id} unter {limit}</translation>
  </message>
  <message>
   <source>The string sends {a} through {id} ({type}) at {condition}, {off} off its {rated}; {band} is allowed in a string.</source>
   <translation>Durch {id} ({type}) fließen bei {condition} {a}, {off} gegen die {rated} des Heizfadens; erlaubt sind im Serienkreis {band}.</translation>
  </message>
  <message>
   <source>Heater of {id} too far from its cathode</source>
   <translation>Heizfaden von {id} zu weit von der Kathode entfernt</translation>
  </message>
  <message>
   <source>{v} peak</source>
   <translation>{v} Spitze</translation>
  </message>
  <message>
   <source>{v} DC</source>
   <translation>{v} Gleichspannung</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is {v} above its cathode, which stands at {cathode} (at {condition}); {limit} is allowed.</source>
   <translation>Der Heizfaden von {id} ({type}) liegt {v} über seiner Kathode, die auf {cathode} steht (bei {condition}); erlaubt sind {limit}.</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is {v} below its cathode, which stands at {cathode} (at {condition}); {limit} is allowed.</source>
   <translation>Der Heizfaden von {id} ({type}) liegt {v} unter seiner Kathode, die auf {cathode} steht (bei {condition}); erlaubt sind {limit}.</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is {v} above its cathode (at {condition}); no limit is published for the type, and more than {limit} is asking for trouble.</source>
   <translation>Der Heizfaden von {id} ({type}) liegt {v} über seiner Kathode (bei {condition}); für den Typ ist keine Grenze veröffentlicht, und mehr als {limit} ist gewagt.</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is {v} below its cathode (at {condition}); no limit is published for the type, and more than {limit} is asking for trouble.</source>
   <translation>Der Heizfaden von {id} ({type}) liegt {v} unter seiner Kathode (bei {condition}); für den Typ ist keine Grenze veröffentlicht, und mehr als {limit} ist gewagt.</translation>
  </message>
  <message>
   <source>common practice: 90 V, the lowest limit of ordinary types</source>
   <translation>übliche Praxis: 90 V, die niedrigste Grenze gewöhnlicher Typen</translation>
  </message>
  <message>
   <source>the limits of the type</source>
   <translation>die Grenzwerte des Typs</translation>
  </message>
  <message>
   <source>Move {ids} towards the chassis end of the string.</source>
   <translation>{ids} im Serienkreis näher an das Chassis-Ende setzen.</translation>
  </message>
  <message>
   <source>Lift the heater line to between {low} and {high} above the chassis; {best} is best.</source>
   <translation>Den Heizkreis auf {low} bis {high} über Chassis hochlegen; am besten {best}.</translation>
  </message>
  <message>
   <source>Lift it to {v}</source>
   <translation>Auf {v} hochlegen</translation>
  </message>
  <message>
   <source>No lift suits {ids}: the heater volts themselves are more than the limits allow.</source>
   <translation>Kein Hochlegen hilft {ids}: Schon die Heizspannung ist höher als erlaubt.</translation>
  </message>
  <message>
   <source>No single lift suits every cathode of this line: use two supplies, one of them for {ids}.</source>
   <translation>Kein gemeinsames Hochlegen passt zu allen Kathoden dieses Heizkreises: zwei Quellen nehmen, eine davon für {ids}.</translation>
  </message>
  <message>
   <source>The cathode of {id} ({type}) is its heater or joined to it, so the line it shares with {others} would stand at the high tension.</source>
   <translation>Bei {id} ({type}) ist der Heizfaden die Kathode oder mit ihr verbunden; der gemeinsame Heizkreis mit {others} läge an der Hochspannung.</translation>
  </message>
  <message>
   <source>The cathode of {id} ({type}) is its heater or joined to it, and the line is tied to the chassis: that shorts the high tension.</source>
   <translation>Bei {id} ({type}) ist der Heizfaden die Kathode oder mit ihr verbunden, und der Heizkreis liegt am Chassis: Das schließt die Hochspannung kurz.</translation>
  </message>
  <message>
   <source>{id} needs a heater winding of its own</source>
   <translation>{id} braucht eine eigene Heizwicklung</translation>
  </message>
  <message>
   <source>Give {id} a winding of its own that is tied to nothing else.</source>
   <translation>{id} eine eigene Wicklung geben, die mit nichts sonst verbunden ist.</translation>
  </message>
  <message>
   <source>common practice</source>
   <translation>übliche Praxis</translation>
  </message>
  <message>
   <source>Fit a winding of {v}, {a}</source>
   <translation>Wicklung mit {v}, {a} einsetzen</translation>
  </message>
  <message>
   <source>Strap {a} to {b}, wire {pins}</source>
   <translation>{a} mit {b} überbrücken, {pins} anschließen</translation>
  </message>
  <message>
   <source>Wire {pins}</source>
   <translation>{pins} anschließen</translation>
  </message>
  <message>
   <source>pin {pin} to {terminal}</source>
   <translation>Stift {pin} an {terminal}</translation>
  </message>
  <message>
   <source>Take out {ids}</source>
   <translation>{ids} herausnehmen</translation>
  </message>
  <message>
   <source>Fit {ohm} {w} at {terminal}</source>
   <translation>{ohm} {w} an {terminal} einsetzen</translation>
  </message>
  <message>
   <source>Fit {ohm} {w} in each leg</source>
   <translation>{ohm} {w} in jede Zuleitung</translation>
  </message>
  <message>
   <source>{id}: {pins} on the chassis</source>
   <translation>{id}: {pins} am Chassis</translation>
  </message>
  <message>
   <source>On {id} ({type}) {pins} is no heater pin but wired to the chassis, as a screen may be.</source>
   <translation>Bei {id} ({type}) ist {pins} kein Heizstift, aber mit dem Chassis verbunden, wie ein Schirm es sein darf.</translation>
  </message>
  <message>
   <source>On {id} ({type}) {pins} are no heater pins but wired to the chassis, as a screen may be.</source>
   <translation>Bei {id} ({type}) sind {pins} keine Heizstifte, aber mit dem Chassis verbunden, wie ein Schirm es sein darf.</translation>
  </message>
  <message>
   <source>If the heater was meant, it is on {heater}.</source>
   <translation>Falls der Heizfaden gemeint war: Er liegt an {heater}.</translation>
  </message>
  <message>
   <source>{id}: wire on {pins}</source>
   <translation>{id}: Draht an {pins}</translation>
  </message>
  <message>
   <source>Move {moves}</source>
   <translation>{moves} umlegen</translation>
  </message>
  <message>
   <source>pin {a} to pin {b}</source>
   <translation>Stift {a} zu Stift {b}</translation>
  </message>
  <message>
   <source>The wires of {id} ({type}) end on {wrong}, the mirror image of its heater {pins}: pins are counted clockwise seen from below.</source>
   <translation>Die Drähte von {id} ({type}) enden an {wrong}, dem Spiegelbild der Heizung an {pins}: Gezählt wird im Uhrzeigersinn, von unten gesehen.</translation>
  </message>
  <message>
   <source>Move them: {moves}.</source>
   <translation>Umlegen: {moves}.</translation>
  </message>
  <message>
   <source>A wire ends on {wrong} of {id} ({type}), but its base {base} has no such pin.</source>
   <translation>Ein Draht endet an {wrong} von {id} ({type}), aber der Sockel {base} hat keinen solchen Stift.</translation>
  </message>
  <message>
   <source>Its heater is on {pins}.</source>
   <translation>Der Heizfaden liegt an {pins}.</translation>
  </message>
  <message>
   <source>A wire ends on pin 9 of {id} ({type}), which is no heater tap there: the heater is on {pins}.</source>
   <translation>Ein Draht endet an Stift 9 von {id} ({type}), wo keine Heizanzapfung liegt: Der Heizfaden liegt an {pins}.</translation>
  </message>
  <message>
   <source>Take the wire off pin 9; only tubes with a tapped heater, such as the 12AX7, are fed there.</source>
   <translation>Den Draht von Stift 9 nehmen; dort werden nur Röhren mit angezapftem Heizfaden gespeist, etwa die 12AX7.</translation>
  </message>
  <message>
   <source>A heater wire ends on {wrong} of {id} ({type}), whose heater is on {pins}.</source>
   <translation>Ein Heizdraht endet an {wrong} von {id} ({type}); der Heizfaden liegt an {pins}.</translation>
  </message>
  <message>
   <source>Move it to {pins}, or take it off.</source>
   <translation>An {pins} legen oder abnehmen.</translation>
  </message>
  <message>
   <source>{id} carries {a} at {condition}, more than the {limit} it is made for: it will blow sooner or later.</source>
   <translation>{id} führt {a} bei {condition}, mehr als die {limit}, für die sie gemacht ist: Früher oder später brennt sie durch.</translation>
  </message>
  <message>
   <source>{id} carries {a} at {condition}, more than four fifths of its {limit}: it ages fast.</source>
   <translation>{id} führt {a} bei {condition}, mehr als vier Fünftel ihrer {limit}: Sie altert schnell.</translation>
  </message>
  <message>
   <source>{id} is too small</source>
   <translation>{id} ist zu klein</translation>
  </message>
  <message>
   <source>{id} runs near its rating</source>
   <translation>{id} läuft nahe am Nennwert</translation>
  </message>
  <message>
   <source>common practice: a fuse is rated for its full current (IEC 60127), and runs cool at four fifths of it</source>
   <translation>übliche Praxis: Eine Sicherung ist für ihren vollen Strom bemessen (IEC 60127) und bleibt bei vier Fünfteln davon kühl</translation>
  </message>
  <message>
   <source>Fit the next fuse of at least {wanted}, or share the load.</source>
   <translation>Die nächste Sicherung ab {wanted} einsetzen oder die Last aufteilen.</translation>
  </message>
  <message>
   <source>Fit the next fuse of at least {wanted}, which is {fuse}, or share the load.</source>
   <translation>Die nächste Sicherung ab {wanted} einsetzen, das ist {fuse}, oder die Last aufteilen.</translation>
  </message>
  <message>
   <source>Fit {fuse}</source>
   <translation>{fuse} einsetzen</translation>
  </message>
  <message>
   <source>{id} carries too much</source>
   <translation>{id} führt zu viel Strom</translation>
  </message>
  <message>
   <source>{id} carries {a} at {condition}; {limit} is the most that it may.</source>
   <translation>{id} führt {a} bei {condition}; höchstens {limit} sind erlaubt.</translation>
  </message>
  <message>
   <source>the rating of the thermistor</source>
   <translation>der Nennwert des Heißleiters</translation>
  </message>
  <message>
   <source>Take a thermistor for {a} or more.</source>
   <translation>Einen Heißleiter für {a} oder mehr nehmen.</translation>
  </message>
  <message>
   <source>Take one for {a}</source>
   <translation>Einen für {a} nehmen</translation>
  </message>
  <message>
   <source>Take {type}</source>
   <translation>{type} nehmen</translation>
  </message>
  <message>
   <source>{id} runs hot</source>
   <translation>{id} wird heiß</translation>
  </message>
  <message>
   <source>{id} turns {w} into heat at {condition}; more than {limit} is much for such a control.</source>
   <translation>{id} setzt {w} in Wärme um (bei {condition}); mehr als {limit} ist viel für einen solchen Regler.</translation>
  </message>
  <message>
   <source>common practice: balance controls are small</source>
   <translation>übliche Praxis: Symmetrierregler sind klein</translation>
  </message>
  <message>
   <source>Take a control of {ohm}, or one rated for {w}.</source>
   <translation>Einen Regler von {ohm} nehmen, oder einen für {w}.</translation>
  </message>
  <message>
   <source>Take {ohm}</source>
   <translation>{ohm} nehmen</translation>
  </message>
  <message>
   <source>{id} never pulls in</source>
   <translation>{id} zieht nie an</translation>
  </message>
  <message>
   <source>The coil of {id} gets {v}, less than the {limit} at which it pulls in.</source>
   <translation>Die Spule von {id} bekommt {v}, weniger als die {limit}, bei denen sie anzieht.</translation>
  </message>
  <message>
   <source>the pull-in volts of the relay</source>
   <translation>die Anzugsspannung des Relais</translation>
  </message>
  <message>
   <source>Give the coil its {v}, or take a relay for fewer volts.</source>
   <translation>Der Spule ihre {v} geben, oder ein Relais für weniger Volt nehmen.</translation>
  </message>
  <message>
   <source>Give the coil its {v}, or take a relay for {less}, such as {type}.</source>
   <translation>Der Spule ihre {v} geben, oder ein Relais für {less} nehmen, etwa {type}.</translation>
  </message>
  <message>
   <source>The heater line of {ids} floats</source>
   <translation>Der Heizkreis von {ids} schwebt</translation>
  </message>
  <message>
   <source>Nothing ties the heater line of {ids} to the chassis: it drifts to any voltage, hums, and strains the insulation between heater and cathode.</source>
   <translation>Nichts verbindet den Heizkreis von {ids} mit dem Chassis: Er nimmt irgendeine Spannung an, brummt und belastet die Isolation zwischen Heizfaden und Kathode.</translation>
  </message>
  <message>
   <source>common practice: every heater line has one reference</source>
   <translation>übliche Praxis: Jeder Heizkreis hat genau einen Bezug</translation>
  </message>
  <message>
   <source>Wire the centre tap {tap} to the chassis, or to a DC lift.</source>
   <translation>Die Mittelanzapfung {tap} mit dem Chassis oder einer Hochlegung verbinden.</translation>
  </message>
  <message>
   <source>Wire {minus} to the chassis, or to a DC lift.</source>
   <translation>{minus} mit dem Chassis oder einer Hochlegung verbinden.</translation>
  </message>
  <message>
   <source>Two resistors of {ohm}, one from each side to the chassis, make the middle of it: each turns {w} into heat, so fit {rated}.</source>
   <translation>Zwei Widerstände von {ohm}, von jeder Seite einer zum Chassis, bilden die Mitte: Jeder setzt {w} in Wärme um, also {rated} nehmen.</translation>
  </message>
  <message>
   <source>Fit 2 × {ohm} {rated} to the chassis</source>
   <translation>2 × {ohm} {rated} zum Chassis</translation>
  </message>
  <message>
   <source>Wire {terminal} to the chassis</source>
   <translation>{terminal} ans Chassis</translation>
  </message>
  <message>
   <source>More than one chassis tie on {ids}</source>
   <translation>Mehr als eine Chassisverbindung an {ids}</translation>
  </message>
  <message>
   <source>The heater line of {ids} reaches the chassis by {ties}: a loop, so heater current shares the chassis with the signal and hums.</source>
   <translation>Der Heizkreis von {ids} erreicht das Chassis über {ties}: eine Schleife, in der Heizstrom und Signal sich das Chassis teilen, und es brummt.</translation>
  </message>
  <message>
   <source>Keep one of them and take out the others.</source>
   <translation>Eine davon behalten, die anderen herausnehmen.</translation>
  </message>
  <message>
   <source>Keep {ids} only</source>
   <translation>Nur {ids} behalten</translation>
  </message>
  <message>
   <source>{id} feeds this sheet from the mains ({mains}) and the line reaches the chassis: the chassis is live, whichever way round the plug is.</source>
   <translation>{id} speist dieses Blatt aus dem Netz ({mains}), und der Heizkreis erreicht das Chassis: Das Chassis führt Netzspannung, gleich wie herum der Stecker steckt.</translation>
  </message>
  <message>
   <source>Take the chassis off the line, or feed the set through an isolating transformer; local codes and licensed practice come first.</source>
   <translation>Das Chassis vom Heizkreis trennen oder das Gerät über einen Trenntransformator speisen; örtliche Vorschriften und zugelassene Fachleute gehen vor.</translation>
  </message>
  <message>
   <source>{id} feeds this sheet straight from the mains ({mains}): every heater pin can be live, and so can the chassis of such a set.</source>
   <translation>{id} speist dieses Blatt direkt aus dem Netz ({mains}): Jeder Heizstift kann Netzspannung führen, und das Chassis eines solchen Geräts auch.</translation>
  </message>
  <message>
   <source>Work on it only behind an isolating transformer, unplugged and with its capacitors discharged; local codes and licensed practice come first.</source>
   <translation>Nur hinter einem Trenntransformator daran arbeiten, ausgesteckt und mit entladenen Kondensatoren; örtliche Vorschriften und zugelassene Fachleute gehen vor.</translation>
  </message>
  <message>
   <source>The chassis is live</source>
   <translation>Das Chassis führt Netzspannung</translation>
  </message>
  <message>
   <source>Fed from the mains</source>
   <translation>Aus dem Netz gespeist</translation>
  </message>
  <message>
   <source>usual caution for sets without a mains transformer</source>
   <translation>übliche Warnung bei Geräten ohne Netztransformator</translation>
  </message>
  <message>
   <source>Take {ids} off the chassis</source>
   <translation>{ids} vom Chassis nehmen</translation>
  </message>
  <message>
   <source>Balance the string first: its heaters want different currents.</source>
   <translation>Zuerst den Serienkreis ausgleichen: Seine Heizfäden wollen verschiedene Ströme.</translation>
  </message>
  <message>
   <source>A supply with fewer volts is needed.</source>
   <translation>Nötig ist eine Quelle mit weniger Volt.</translation>
  </message>
  <message>
   <source>At nominal mains it is not over: mains held to {mains}, or a regulated supply, would mend it.</source>
   <translation>Bei Netznennspannung liegt es nicht darüber: Ein auf {mains} gehaltenes Netz oder eine geregelte Quelle würde es beheben.</translation>
  </message>
  <message>
   <source>It wants fewer volts than the other heaters of its line: feed it from a supply of its own.</source>
   <translation>Er will weniger Volt als die anderen Heizfäden des Kreises: aus einer eigenen Quelle speisen.</translation>
  </message>
  <message>
   <source>Mend the strap first: it shorts a part of the heater.</source>
   <translation>Zuerst die Brücke ändern: Sie schließt einen Teil des Heizfadens kurz.</translation>
  </message>
  <message>
   <source>Mend the strap first: only a part of the heater is heated.</source>
   <translation>Zuerst die Brücke ändern: Nur ein Teil des Heizfadens wird geheizt.</translation>
  </message>
  <message>
   <source>Mend the short circuit of {id} first.</source>
   <translation>Zuerst den Kurzschluss von {id} beheben.</translation>
  </message>
  <message>
   <source>The mains band moves the heaters by {low} to {high}, more than the {window} that is allowed: regulate the supply, or narrow the band.</source>
   <translation>Die Netzschwankung bewegt die Heizfäden um {low} bis {high}, mehr als die erlaubten {window}: die Quelle regeln oder das Netzband verengen.</translation>
  </message>
  <message>
   <source>Change the supplies or the resistors of this line until {id} gets {v}.</source>
   <translation>Quellen oder Widerstände dieses Kreises ändern, bis {id} {v} bekommt.</translation>
  </message>
  <message>
   <source>Use supplies that give {share} of the present volts.</source>
   <translation>Quellen nehmen, die {share} der jetzigen Spannung geben.</translation>
  </message>
  <message>
   <source>A supply with more volts is needed.</source>
   <translation>Nötig ist eine Quelle mit mehr Volt.</translation>
  </message>
  <message>
   <source>At nominal mains it is not under: steadier mains, or a regulated supply, would mend it.</source>
   <translation>Bei Netznennspannung liegt es nicht darunter: Ein ruhigeres Netz oder eine geregelte Quelle würde es beheben.</translation>
  </message>
  <message>
   <source>{id} is at its limit: relieve it, or fit one that gives more.</source>
   <translation>{id} ist an seiner Grenze: entlasten oder durch etwas Stärkeres ersetzen.</translation>
  </message>
  <message>
   <source>The wires lose {drop} on the way from {id}: heavier or shorter wire would mend it.</source>
   <translation>Die Drähte verlieren {drop} auf dem Weg von {id}: dickerer oder kürzerer Draht behebt es.</translation>
  </message>
  <message>
   <source>{ohm} {w} in series with {heater}, in place of {there}, brings it to its rated volts.</source>
   <translation>{ohm} {w} in Serie mit {heater}, statt {there}, bringt ihn auf Nennspannung.</translation>
  </message>
  <message>
   <source>More volts from {id} would be too many for {others}: feed {heater} from a supply of its own.</source>
   <translation>Mehr Volt aus {id} wären zu viel für {others}: {heater} aus einer eigenen Quelle speisen.</translation>
  </message>
  <message>
   <source>A supply with more volts is needed: about {v} at this load where the half of {id} at {leg} now gives {now}.</source>
   <translation>Nötig ist eine Quelle mit mehr Volt: etwa {v} bei dieser Last, wo die Hälfte von {id} an {leg} jetzt {now} gibt.</translation>
  </message>
  <message>
   <source>A supply with more volts is needed: about {v} at this load where {id} now gives {now}.</source>
   <translation>Nötig ist eine Quelle mit mehr Volt: etwa {v} bei dieser Last, wo {id} jetzt {now} gibt.</translation>
  </message>
  <message>
   <source>At nominal mains the current is right: steadier mains would mend it.</source>
   <translation>Bei Netznennspannung stimmt der Strom: Ein ruhigeres Netz behebt es.</translation>
  </message>
  <message>
   <source>The heaters want {v} in all; {id} gives {now}.</source>
   <translation>Die Heizfäden wollen zusammen {v}; {id} gibt {now}.</translation>
  </message>
  <message>
   <source>Terminals {ends} of {id} are joined by {path} with no heater between: a short circuit.</source>
   <translation>Die Anschlüsse {ends} von {id} sind über {path} ohne Heizfaden dazwischen verbunden: ein Kurzschluss.</translation>
  </message>
  <message>
   <source>Terminals {ends} of {id} are joined by {path} with no heater between: a short circuit of {a}.</source>
   <translation>Die Anschlüsse {ends} von {id} sind über {path} ohne Heizfaden dazwischen verbunden: ein Kurzschluss mit {a}.</translation>
  </message>
  <message>
   <source>{id} is short-circuited</source>
   <translation>{id} ist kurzgeschlossen</translation>
  </message>
  <message>
   <source>Take out {one}, or move one of its ends.</source>
   <translation>{one} herausnehmen oder ein Ende davon umlegen.</translation>
  </message>
  <message>
   <source>a supply feeds heaters, not a wire</source>
   <translation>eine Quelle speist Heizfäden, keinen Draht</translation>
  </message>
  <message>
   <source>the joining wire</source>
   <translation>den verbindenden Draht</translation>
  </message>
  <message>
   <source>{id} gets too much while others are cold</source>
   <translation>{id} bekommt zu viel, solange andere kalt sind</translation>
  </message>
  <message>
   <source>{id} gets {v} for a moment at {condition}, {share} of its {rated}: it warms faster than the others.</source>
   <translation>{id} bekommt bei {condition} kurz {v}, {share} seiner {rated}: es wird schneller warm als die anderen.</translation>
  </message>
  <message>
   <source>Put a shunt across it that carries the surge, or a thermistor in the string.</source>
   <translation>Legen Sie einen Nebenwiderstand darüber, der den Stoß trägt, oder einen Heißleiter in die Kette.</translation>
  </message>
  <message>
   <source>Put a thermistor in the string, or a type that warms as fast as the others.</source>
   <translation>Setzen Sie einen Heißleiter in die Kette oder einen Typ, der so schnell warm wird wie die anderen.</translation>
  </message>
  <message>
   <source>common practice: half as much again at switch-on</source>
   <translation>übliche Praxis: beim Einschalten die Hälfte mehr</translation>
  </message>
  <message>
   <source>Mullard Outlook vol. 12 no. 9, February 1963: up to 50 % over while a series chain warms up</source>
   <translation>Mullard Outlook Bd. 12 Nr. 9, Februar 1963: bis 50 % darüber, solange eine Serienkette anheizt</translation>
  </message>
  <message>
   <source>The cathode of {id} is not ready after {time} at {condition}; alone at its rated volts it takes {own}.</source>
   <translation>Die Kathode von {id} ist bei {condition} nach {time} nicht bereit; allein an ihrer Nennspannung braucht sie {own}.</translation>
  </message>
  <message>
   <source>The cathode of {id} is ready after {time} at {condition}; alone at its rated volts it takes {own}.</source>
   <translation>Die Kathode von {id} ist bei {condition} nach {time} bereit; allein an ihrer Nennspannung braucht sie {own}.</translation>
  </message>
  <message>
   <source>{id} warms up slowly</source>
   <translation>{id} heizt langsam an</translation>
  </message>
  <message>
   <source>Bypass the soft start once the inrush is over, lower its resistance, or let high tension wait.</source>
   <translation>Überbrücken Sie den Sanftanlauf nach dem Stromstoß, verkleinern Sie seinen Widerstand, oder lassen Sie die Hochspannung warten.</translation>
  </message>
  <message>
   <source>common practice: on a constant current a tube takes about twice as long as at constant volts</source>
   <translation>übliche Praxis: an konstantem Strom braucht eine Röhre etwa doppelt so lang wie an konstanter Spannung</translation>
  </message>
  <message>
   <source>{id} may blow at switch-on</source>
   <translation>{id} kann beim Einschalten durchbrennen</translation>
  </message>
  <message>
   <source>{id} carries more than {many} times its rating for {time} at {condition}; it may melt after {earliest}.</source>
   <translation>{id} führt bei {condition} {time} lang mehr als das {many}-Fache des Nennstroms; sie darf nach {earliest} schmelzen.</translation>
  </message>
  <message>
   <source>Limit the inrush with a soft start; take no larger fuse than the wiring bears.</source>
   <translation>Begrenzen Sie den Einschaltstrom mit einem Sanftanlauf; nehmen Sie keine größere Sicherung, als die Leitungen vertragen.</translation>
  </message>
  <message>
   <source>IEC 60127-2, sheet 3: earliest melting times of time-lag links</source>
   <translation>IEC 60127-2, Blatt 3: früheste Schmelzzeiten träger Sicherungen</translation>
  </message>
  <message>
   <source>{id} ages at every switch-on</source>
   <translation>{id} altert bei jedem Einschalten</translation>
  </message>
  <message>
   <source>The inrush through {id} has an I²t of {found} at {condition}, {share} of the {melting} at which it melts.</source>
   <translation>Der Einschaltstrom durch {id} hat bei {condition} ein I²t von {found}, {share} der {melting}, bei denen sie schmilzt.</translation>
  </message>
  <message>
   <source>the melting I²t of the fuse; for repeated pulses 30 % of it (from memory)</source>
   <translation>das Schmelz-I²t der Sicherung; für wiederholte Stöße 30 % davon (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>{id} carries too much at switch-on</source>
   <translation>{id} führt beim Einschalten zu viel</translation>
  </message>
  <message>
   <source>{id} carries up to {a} at {condition}; {limit} is the most that it may for long.</source>
   <translation>{id} führt bei {condition} bis zu {a}; {limit} sind auf Dauer das Höchste.</translation>
  </message>
  <message>
   <source>Take one of more ohms, or one for {a}.</source>
   <translation>Nehmen Sie einen mit mehr Ohm oder einen für {a}.</translation>
  </message>
  <message>
   <source>{id} is still hot after a dip</source>
   <translation>{id} ist nach einem Aussetzer noch heiß</translation>
  </message>
  <message>
   <source>After {dip} without mains {id} has {ohm} in place of {first}: the second inrush is {a}.</source>
   <translation>Nach {dip} ohne Netz hat {id} {ohm} statt {first}: der zweite Einschaltstrom ist {a}.</translation>
  </message>
  <message>
   <source>Bypass it with a relay, so that it is cold when it is needed again.</source>
   <translation>Überbrücken Sie ihn mit einem Relais, damit er kalt ist, wenn er wieder gebraucht wird.</translation>
  </message>
  <message>
   <source>common practice: a thermistor protects only once it has cooled</source>
   <translation>übliche Praxis: ein Heißleiter schützt erst, wenn er abgekühlt ist</translation>
  </message>
  <message>
   <source>{id} charges too much</source>
   <translation>{id} lädt zu viel</translation>
  </message>
  <message>
   <source>{id} charges {got}; {limit} is the most that it may.</source>
   <translation>{id} lädt {got}; {limit} sind das Höchste.</translation>
  </message>
  <message>
   <source>Take a thermistor for {got}, or less capacitance.</source>
   <translation>Nehmen Sie einen Heißleiter für {got} oder weniger Kapazität.</translation>
  </message>
  <message>
   <source>The coil of {id} gets {v} at most at {condition}, too few to pull in.</source>
   <translation>Die Spule von {id} bekommt bei {condition} höchstens {v}, zu wenig zum Anziehen.</translation>
  </message>
  <message>
   <source>Let the supply start first, or take a relay for fewer volts.</source>
   <translation>Lassen Sie erst die Quelle anlaufen, oder nehmen Sie ein Relais für weniger Volt.</translation>
  </message>
  <message>
   <source>{id} closes too early</source>
   <translation>{id} schließt zu früh</translation>
  </message>
  <message>
   <source>{id} closes after {t} at {condition}, while the heaters still ask {supply} for more than its {limit}.</source>
   <translation>{id} schließt bei {condition} nach {t}, während die Heizfäden von {supply} noch mehr als ihre {limit} verlangen.</translation>
  </message>
  <message>
   <source>Let it pull in at more volts, or later.</source>
   <translation>Lassen Sie es bei mehr Volt oder später anziehen.</translation>
  </message>
  <message>
   <source>the limit of the supply</source>
   <translation>die Grenze der Quelle</translation>
  </message>
  <message>
   <source>The contact of {id} is too small</source>
   <translation>Der Kontakt von {id} ist zu klein</translation>
  </message>
  <message>
   <source>The contact of {id} carries up to {a} at {condition}; it is rated for {limit}.</source>
   <translation>Der Kontakt von {id} führt bei {condition} bis zu {a}; er ist für {limit} ausgelegt.</translation>
  </message>
  <message>
   <source>Take a relay for {a}, or let it close later.</source>
   <translation>Nehmen Sie ein Relais für {a}, oder lassen Sie es später schließen.</translation>
  </message>
  <message>
   <source>the rating of the contact; cold heaters wear contacts like lamps do</source>
   <translation>die Belastbarkeit des Kontakts; kalte Heizfäden nutzen Kontakte ab wie Lampen</translation>
  </message>
  <message>
   <source>{id} takes a pulse at switch-on</source>
   <translation>{id} bekommt beim Einschalten einen Stoß</translation>
  </message>
  <message>
   <source>{id} turns {w} into heat over the first five seconds at {condition}, {times} times its {rated}.</source>
   <translation>{id} setzt bei {condition} in den ersten fünf Sekunden {w} in Wärme um, das {times}-Fache seiner {rated}.</translation>
  </message>
  <message>
   <source>Take a wire-wound resistor for {w}.</source>
   <translation>Nehmen Sie einen Drahtwiderstand für {w}.</translation>
  </message>
  <message>
   <source>common practice: wire-wound resistors bear five times their rating for five seconds</source>
   <translation>übliche Praxis: Drahtwiderstände vertragen fünf Sekunden lang das Fünffache ihrer Nennlast</translation>
  </message>
  <message>
   <source>the limit of the supply and its behaviour in overload; cold heaters by their cold ratio</source>
   <translation>die Grenze der Quelle und ihr Verhalten bei Überlast; kalte Heizfäden nach ihrem Kaltverhältnis</translation>
  </message>
  <message>
   <source>common practice: overload protection acts between 105 and 150 % of the rating (from memory)</source>
   <translation>übliche Praxis: der Überlastschutz greift zwischen 105 und 150 % des Nennwerts (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>{id} starts late</source>
   <translation>{id} läuft spät an</translation>
  </message>
  <message>
   <source>{id} may not start</source>
   <translation>{id} läuft vielleicht nicht an</translation>
  </message>
  <message>
   <source>{id} does not start</source>
   <translation>{id} läuft nicht an</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked}, and it holds at its limit of {limit}: only after {later} does it reach its volts at {condition}.</source>
   <translation>Die kalten Heizfäden verlangen von {id} {asked}, und sie hält an ihrer Grenze von {limit}: erst nach {later} erreicht sie bei {condition} ihre Spannung.</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked} at {condition}, its limit is {limit}: whether its protection lets that pass is not known.</source>
   <translation>Die kalten Heizfäden verlangen von {id} bei {condition} {asked}, ihre Grenze ist {limit}: ob ihr Schutz das durchlässt, ist nicht bekannt.</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked}, its limit is {limit}: at {condition} it cuts out and tries again, {times} times in {time}, and the heaters never get warm enough.</source>
   <translation>Die kalten Heizfäden verlangen von {id} {asked}, ihre Grenze ist {limit}: bei {condition} schaltet sie ab und versucht es wieder, {times}-mal in {time}, und die Heizfäden werden nie warm genug.</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked}, its limit is {limit}: at {condition} it switches itself off and stays off.</source>
   <translation>Die kalten Heizfäden verlangen von {id} {asked}, ihre Grenze ist {limit}: bei {condition} schaltet sie sich ab und bleibt aus.</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked}; at {condition} it stays at {v} and {a} for ever.</source>
   <translation>Die kalten Heizfäden verlangen von {id} {asked}; bei {condition} bleibt sie für immer bei {v} und {a}.</translation>
  </message>
  <message>
   <source>Mend the short circuit first.</source>
   <translation>Beseitigen Sie zuerst den Kurzschluss.</translation>
  </message>
  <message>
   <source>Take a supply for more than {a} if that is too long to wait.</source>
   <translation>Nehmen Sie eine Quelle für mehr als {a}, wenn das zu lange dauert.</translation>
  </message>
  <message>
   <source>Add a soft start, take a supply that holds at its limit in place of this one, or one for {a}.</source>
   <translation>Fügen Sie einen Sanftanlauf ein, nehmen Sie statt dieser eine Quelle, die an ihrer Grenze hält, oder eine für {a}.</translation>
  </message>
  <message>
   <source>Add a soft start, or take a supply that holds its current at any volts.</source>
   <translation>Fügen Sie einen Sanftanlauf ein, oder nehmen Sie eine Quelle, die ihren Strom bei jeder Spannung hält.</translation>
  </message>
  <message>
   <source>{id} gets hot at switch-on</source>
   <translation>{id} wird beim Einschalten heiß</translation>
  </message>
  <message>
   <source>While the heaters are cold the regulator of {id} turns {most} into heat at {condition}, and {later} later.</source>
   <translation>Solange die Heizfäden kalt sind, setzt der Regler von {id} bei {condition} {most} in Wärme um, später {later}.</translation>
  </message>
  <message>
   <source>Give it a heat sink for {most}, fewer volts at its input, or a soft start.</source>
   <translation>Geben Sie ihm einen Kühlkörper für {most}, weniger Volt am Eingang oder einen Sanftanlauf.</translation>
  </message>
  <message>
   <source>common practice: heat sinks are chosen for the steady state</source>
   <translation>übliche Praxis: Kühlkörper werden für den Beharrungszustand gewählt</translation>
  </message>
  <message>
   <source>{ids} switches without end</source>
   <translation>{ids} schaltet ohne Ende</translation>
  </message>
  <message>
   <source>The warm-up around {ids} ends early</source>
   <translation>Das Anheizen um {ids} endet vorzeitig</translation>
  </message>
  <message>
   <source>The warm-up at {condition} was ended after {t}: {reason}.</source>
   <translation>Das Anheizen bei {condition} wurde nach {t} beendet: {reason}.</translation>
  </message>
  <message>
   <source>Change the wiring or the values of {ids}.</source>
   <translation>Verdrahtung oder Werte von {ids} ändern.</translation>
  </message>
  <message>
   <source>the circuit itself</source>
   <translation>die Schaltung selbst</translation>
  </message>
  <message>
   <source>{id} wired for {whole}, fed {v}</source>
   <translation>{id} für {whole} verdrahtet, mit {v} gespeist</translation>
  </message>
  <message>
   <source>{id} ({type}) is wired for {whole} (pin {a} to pin {b}, pin {tap} open) but fed {v}: each half gets {half} where {rated} is wanted.</source>
   <translation>{id} ({type}) ist für {whole} verdrahtet (Stift {a} gegen Stift {b}, Stift {tap} offen), aber mit {v} gespeist: Jede Hälfte bekommt {half} statt {rated}.</translation>
  </message>
  <message>
   <source>Strap pin {a} to pin {b}, and feed between that strap and pin {tap}.</source>
   <translation>Stift {a} mit Stift {b} überbrücken und zwischen dieser Brücke und Stift {tap} speisen.</translation>
  </message>
  <message>
   <source>{id} strapped for {rated}, fed {v}</source>
   <translation>{id} für {rated} gebrückt, mit {v} gespeist</translation>
  </message>
  <message>
   <source>{id} ({type}) is strapped for {rated} (pins {a} and {b} joined, fed against pin {tap}) but fed {v}.</source>
   <translation>{id} ({type}) ist für {rated} gebrückt (Stift {a} und {b} verbunden, gegen Stift {tap} gespeist), aber mit {v} gespeist.</translation>
  </message>
  <message>
   <source>Separate pins {a} and {b} (joined by {straps}), feed pin {a} against pin {b}, and leave pin {tap} open.</source>
   <translation>Stift {a} und {b} trennen (verbunden durch {straps}), Stift {a} gegen Stift {b} speisen, Stift {tap} offen lassen.</translation>
  </message>
  <message>
   <source>Strap {a} to {b}, feed pin {tap}</source>
   <translation>{a} mit {b} überbrücken, Stift {tap} speisen</translation>
  </message>
  <message>
   <source>Feed pins {a} and {b}, open pin {tap}</source>
   <translation>Stift {a} und {b} speisen, Stift {tap} offen</translation>
  </message>
  <message>
   <source>the heater pins of the type</source>
   <translation>die Heizstifte des Typs</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is shorted: its {pins} are joined by {straps}.</source>
   <translation>Der Heizfaden von {id} ({type}) ist kurzgeschlossen: {straps} verbindet {pins}.</translation>
  </message>
  <message>
   <source>A part of the heater of {id} ({type}) is shorted: its {pins} are joined by {straps}.</source>
   <translation>Ein Teil des Heizfadens von {id} ({type}) ist kurzgeschlossen: {straps} verbindet {pins}.</translation>
  </message>
  <message>
   <source>{shorted} The socket is strapped for a tube with a heater tap on pin 9; this one has none.</source>
   <translation>{shorted} Die Fassung ist für eine Röhre mit Heizanzapfung an Stift 9 gebrückt; diese hat keine.</translation>
  </message>
  <message>
   <source>A strap shorts the heater of {id}</source>
   <translation>Eine Brücke schließt den Heizfaden von {id} kurz</translation>
  </message>
  <message>
   <source>Take out {straps} and feed the heater between {pins}.</source>
   <translation>{straps} herausnehmen und den Heizfaden zwischen {pins} speisen.</translation>
  </message>
  <message>
   <source>{id} is asked for {a} at {condition}, {times} times the {limit} it may give.</source>
   <translation>{id} soll {a} bei {condition} liefern, das {times}-Fache der {limit}, die sie geben darf.</translation>
  </message>
  <message>
   <source>{id} is asked for {a} at {condition}, {load} of the {limit} it may give.</source>
   <translation>{id} soll {a} bei {condition} liefern, {load} der {limit}, die sie geben darf.</translation>
  </message>
  <message>
   <source>{id} is overloaded</source>
   <translation>{id} ist überlastet</translation>
  </message>
  <message>
   <source>the rating of the supply</source>
   <translation>der Nennwert der Quelle</translation>
  </message>
  <message>
   <source>Look for a short circuit first: that is no load for a supply of this size.</source>
   <translation>Zuerst einen Kurzschluss suchen: Das ist keine Last für eine Quelle dieser Größe.</translation>
  </message>
  <message>
   <source>Fit a supply of {rating}, or feed some of the heaters from a second one.</source>
   <translation>Eine Quelle mit {rating} einsetzen oder einige Heizfäden aus einer zweiten speisen.</translation>
  </message>
  <message>
   <source>Take a {a} supply</source>
   <translation>Quelle mit {a} nehmen</translation>
  </message>
  <message>
   <source>Take a {a} winding</source>
   <translation>Wicklung mit {a} nehmen</translation>
  </message>
  <message>
   <source>{id} is asked for {a} at {condition}, more than its limit of {limit}: {outcome}.</source>
   <translation>{id} soll {a} bei {condition} liefern, mehr als die Begrenzung von {limit}: {outcome}.</translation>
  </message>
  <message>
   <source>{id}, with a limit of {limit}, is shorted at {condition}: {outcome}.</source>
   <translation>{id}, begrenzt auf {limit}, ist bei {condition} kurzgeschlossen: {outcome}.</translation>
  </message>
  <message>
   <source>it holds at its limit and its volts fall to {v}</source>
   <translation>es bleibt an der Grenze, und die Spannung fällt auf {v}</translation>
  </message>
  <message>
   <source>it cuts out after {trip} and tries again every {retry}, so nothing stays on</source>
   <translation>es schaltet nach {trip} ab und versucht es alle {retry} neu, so bleibt nichts an</translation>
  </message>
  <message>
   <source>it folds back to {given} at {v}</source>
   <translation>es geht auf {given} bei {v} zurück</translation>
  </message>
  <message>
   <source>it switches off after {trip} and stays off until it is reset</source>
   <translation>es schaltet nach {trip} ab und bleibt aus, bis es zurückgesetzt wird</translation>
  </message>
  <message>
   <source>{id} does not get its load going</source>
   <translation>{id} bringt die Last nicht in Gang</translation>
  </message>
  <message>
   <source>At {condition} cold heaters hold {id} folded back to {given} at {v}; warm they would take {a} of the {limit} it may give.</source>
   <translation>Bei {condition} halten kalte Heizfäden {id} auf {given} bei {v} zurück; warm nähmen sie {a} der möglichen {limit}.</translation>
  </message>
  <message>
   <source>Take a supply that holds at its limit instead of folding back, or a larger one.</source>
   <translation>Ein Netzteil nehmen, das an der Grenze bleibt statt zurückzugehen, oder ein größeres.</translation>
  </message>
  <message>
   <source>the overload behaviour of the supply</source>
   <translation>das Überlastverhalten der Quelle</translation>
  </message>
  <message>
   <source>Let it hold at its limit</source>
   <translation>An der Grenze bleiben lassen</translation>
  </message>
  <message>
   <source>{id} has little in hand</source>
   <translation>{id} hat wenig Reserve</translation>
  </message>
  <message>
   <source>{id} gives {a}, {load} of its {rated}: {most} leaves a quarter in hand.</source>
   <translation>{id} gibt {a}, {load} der {rated}: Bei {most} bleibt ein Viertel Reserve.</translation>
  </message>
  <message>
   <source>A supply of {rating} would run cooler.</source>
   <translation>Eine Quelle mit {rating} bliebe kühler.</translation>
  </message>
  <message>
   <source>common practice: 25 % in hand</source>
   <translation>übliche Praxis: 25 % Reserve</translation>
  </message>
  <message>
   <source>{id} has too little load</source>
   <translation>{id} hat zu wenig Last</translation>
  </message>
  <message>
   <source>{id} gives {a}, but needs a load of {least} to hold its volts.</source>
   <translation>{id} gibt {a}, braucht aber {least} Last, um die Spannung zu halten.</translation>
  </message>
  <message>
   <source>Load it with another {more}, or take a supply without a minimum load.</source>
   <translation>Mit weiteren {more} belasten oder eine Quelle ohne Mindestlast nehmen.</translation>
  </message>
  <message>
   <source>the minimum load of the supply</source>
   <translation>die Mindestlast der Quelle</translation>
  </message>
  <message>
   <source>Fit {ohm} {w} across {id}</source>
   <translation>{ohm} {w} parallel zu {id}</translation>
  </message>
  <message>
   <source>{id} is lightly loaded</source>
   <translation>{id} ist schwach belastet</translation>
  </message>
  <message>
   <source>{id} carries only {load} of its rated current, so it gives {v} where {rated} is rated ({over}).</source>
   <translation>{id} führt nur {load} des Nennstroms und gibt daher {v} statt {rated} ({over}).</translation>
  </message>
  <message>
   <source>A winding of {a} would come closer.</source>
   <translation>Eine Wicklung für {a} käme näher.</translation>
  </message>
  <message>
   <source>common practice: within 5 % at the winding</source>
   <translation>übliche Praxis: höchstens 5 % an der Wicklung</translation>
  </message>
  <message>
   <source>this part</source>
   <translation>diesem Teil</translation>
  </message>
  <message>
   <source>No figures around {ids}</source>
   <translation>Keine Werte um {ids}</translation>
  </message>
  <message>
   <source>Nothing on the line of {ids} is solved: {reason}. Other lines are.</source>
   <translation>Im Heizkreis von {ids} ist nichts berechnet: {reason}. Andere Kreise sind es.</translation>
  </message>
  <message>
   <source>Judge this part by hand for now.</source>
   <translation>Dieses Teil vorerst von Hand beurteilen.</translation>
  </message>
  <message>
   <source>read in the source</source>
   <translation>in der Quelle gelesen</translation>
  </message>
  <message>
   <source>taken at second hand</source>
   <translation>aus zweiter Hand</translation>
  </message>
  <message>
   <source>disputed between sources</source>
   <translation>zwischen Quellen strittig</translation>
  </message>
  <message>
   <source>not checked against a data sheet</source>
   <translation>nicht am Datenblatt geprüft</translation>
  </message>
  <message>
   <source>seen</source>
   <translation>gesehen</translation>
  </message>
  <message>
   <source>second-hand</source>
   <translation>zweite Hand</translation>
  </message>
  <message>
   <source>disputed</source>
   <translation>strittig</translation>
  </message>
  <message>
   <source>memory</source>
   <translation>Erinnerung</translation>
  </message>
  <message>
   <source>Rating of {type} is unverified</source>
   <translation>Daten von {type} sind ungeprüft</translation>
  </message>
  <message>
   <source>The heater volts of {type} are {status} ({source}); this concerns {ids}.</source>
   <translation>Die Heizspannung von {type} ist {status} ({source}); das betrifft {ids}.</translation>
  </message>
  <message>
   <source>The heater amps of {type} are {status} ({source}); this concerns {ids}.</source>
   <translation>Der Heizstrom von {type} ist {status} ({source}); das betrifft {ids}.</translation>
  </message>
  <message>
   <source>no source is given</source>
   <translation>keine Quelle angegeben</translation>
  </message>
  <message>
   <source>Compare with the maker's data sheet before you build.</source>
   <translation>Vor dem Bau mit dem Datenblatt des Herstellers vergleichen.</translation>
  </message>
  <message>
   <source>tube</source>
   <translation>Röhre</translation>
  </message>
  <message>
   <source>Choose a type that the catalogue has, or give its volts and amperes.</source>
   <translation>Einen Typ aus dem Katalog wählen oder Volt und Ampere angeben.</translation>
  </message>
  <message>
   <source>lamp</source>
   <translation>Lampe</translation>
  </message>
  <message>
   <source>Choose a type that the catalogue has, or give its figures.</source>
   <translation>Einen Typ aus dem Katalog wählen oder die Werte angeben.</translation>
  </message>
  <message>
   <source>thermistor</source>
   <translation>Heißleiter</translation>
  </message>
  <message>
   <source>Type of {id} is unknown</source>
   <translation>Typ von {id} ist unbekannt</translation>
  </message>
  <message>
   <source>The catalogue knows no {noun} '{type}', so {id} carries nothing and is not judged.</source>
   <translation>Im Katalog steht kein Typ '{type}' ({noun}); {id} führt daher nichts und wird nicht beurteilt.</translation>
  </message>
  <message>
   <source>the catalogue</source>
   <translation>der Katalog</translation>
  </message>
  <message>
   <source>Did you mean {near}? Or add the type to the sheet.</source>
   <translation>Ist {near} gemeint? Sonst den Typ in das Blatt aufnehmen.</translation>
  </message>
  <message>
   <source>Make it {type}</source>
   <translation>Zu {type} machen</translation>
  </message>
  <message>
   <source>Choose a type that the catalogue has, or add the type to the sheet.</source>
   <translation>Einen Typ aus dem Katalog wählen oder den Typ in das Blatt aufnehmen.</translation>
  </message>
  <message>
   <source>Rating given for {id} is not used</source>
   <translation>Nennwert von {id} wird nicht benutzt</translation>
  </message>
  <message>
   <source>{id} ({type}) has {count} heater sections, so a rating of its own cannot be assigned to one of them: the type's rating is used.</source>
   <translation>{id} ({type}) hat {count} Heizfadenabschnitte; ein eigener Nennwert lässt sich keinem davon zuordnen: Es gelten die Daten des Typs.</translation>
  </message>
  <message>
   <source>Take the rating off, or add a type of your own with these sections.</source>
   <translation>Den Nennwert weglassen oder einen eigenen Typ mit diesen Abschnitten anlegen.</translation>
  </message>
  <message>
   <source>ratings of one's own hold for heaters of one section</source>
   <translation>eigene Nennwerte gelten nur für Heizfäden mit einem Abschnitt</translation>
  </message>
  <message>
   <source>Take the rating off</source>
   <translation>Nennwert weglassen</translation>
  </message>
  <message>
   <source>rule of thumb: Handbook of Electronic Tables and Formulas, chassis wiring</source>
   <translation>Faustregel: Handbook of Electronic Tables and Formulas, Chassisverdrahtung</translation>
  </message>
  <message>
   <source>{id} is too thin for its current</source>
   <translation>{id} ist zu dünn für seinen Strom</translation>
  </message>
  <message>
   <source>{id} ({size}) carries {a} at {condition}; {limit} is what such a wire should.</source>
   <translation>{id} ({size}) führt {a} bei {condition}; {limit} ist genug für solchen Draht.</translation>
  </message>
  <message>
   <source>{size} carries it.</source>
   <translation>{size} trägt ihn.</translation>
  </message>
  <message>
   <source>Make {id} {size}</source>
   <translation>{id} in {size}</translation>
  </message>
  <message>
   <source>Run two wires side by side, or shorten the way.</source>
   <translation>Zwei Drähte nebeneinander legen oder den Weg verkürzen.</translation>
  </message>
  <message>
   <source>{id} loses {share} of the volts</source>
   <translation>{id} verliert {share} der Spannung</translation>
  </message>
  <message>
   <source>{id} ({size}, {length} m) drops {v} at {a}; more than {limit} is too much for one wire.</source>
   <translation>An {id} ({size}, {length} m) fallen {v} bei {a} ab; mehr als {limit} ist zu viel für einen Draht.</translation>
  </message>
  <message>
   <source>{size} would lose less than 1 %.</source>
   <translation>{size} verlöre weniger als 1 %.</translation>
  </message>
  <message>
   <source>common practice: 2 % a wire</source>
   <translation>übliche Praxis: 2 % je Draht</translation>
  </message>
  <message>
   <source>Share the {w} among several resistors, each rated at twice its part.</source>
   <translation>Die {w} auf mehrere Widerstände verteilen, jeder für das Doppelte seines Anteils.</translation>
  </message>
  <message>
   <source>Fit {fit}: twice the {w} that it turns into heat.</source>
   <translation>{fit} einsetzen: das Doppelte der {w}, die zu Wärme werden.</translation>
  </message>
  <message>
   <source>Fit {fit}</source>
   <translation>{fit} einsetzen</translation>
  </message>
  <message>
   <source>{id} is rated too low</source>
   <translation>{id} ist zu klein bemessen</translation>
  </message>
  <message>
   <source>{id} turns {w} into heat at {condition}, more than the {rated} it is rated for.</source>
   <translation>{id} setzt {w} in Wärme um (bei {condition}), mehr als die zulässigen {rated}.</translation>
  </message>
  <message>
   <source>{id} turns {w} into heat, more than half of its {rated}: it will run very hot.</source>
   <translation>{id} setzt {w} in Wärme um, mehr als die Hälfte seiner {rated}: Er wird sehr heiß.</translation>
  </message>
  <message>
   <source>the rating of the resistor</source>
   <translation>der Nennwert des Widerstands</translation>
  </message>
  <message>
   <source>common practice: twice the dissipation</source>
   <translation>übliche Praxis: die doppelte Verlustleistung</translation>
  </message>
  <message>
   <source>{id} has no rating</source>
   <translation>{id} hat keinen Nennwert</translation>
  </message>
  <message>
   <source>{id} turns up to {w} into heat ({condition}), and no wattage is given for it.</source>
   <translation>{id} setzt bis {w} in Wärme um (bei {condition}), und eine Belastbarkeit ist nicht angegeben.</translation>
  </message>
  <message>
   <source>Open end at {ids}</source>
   <translation>Offenes Ende an {ids}</translation>
  </message>
  <message>
   <source>{ids} not wired in</source>
   <translation>{ids} nicht angeschlossen</translation>
  </message>
  <message>
   <source>Nothing flows in {ids}: one end leads nowhere.</source>
   <translation>In {ids} fließt nichts: Ein Ende führt nirgendwohin.</translation>
  </message>
  <message>
   <source>Nothing flows in {ids}: neither end leads anywhere.</source>
   <translation>In {ids} fließt nichts: Beide Enden führen nirgendwohin.</translation>
  </message>
  <message>
   <source>Wire the open end, or take {ids} out.</source>
   <translation>Das offene Ende anschließen oder {ids} herausnehmen.</translation>
  </message>
  <message>
   <source>Wire both ends, or take {ids} out.</source>
   <translation>Beide Enden anschließen oder {ids} herausnehmen.</translation>
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <source>nominal mains</source>
   <translation>Netznennspannung</translation>
  </message>
  <message>
   <source>the second start, after a dip</source>
   <translation>zweitem Einschalten nach einem Aussetzer</translation>
  </message>
  <message>
   <source>{items} and {count} more</source>
   <translation>{items} und {count} weitere</translation>
  </message>
  <message>
   <source>{items}, {last}</source>
   <translation>{items}, {last}</translation>
  </message>
  <message>
   <source>pin {pin}</source>
   <translation>Stift {pin}</translation>
  </message>
  <message>
   <source>pins {pins}</source>
   <translation>Stift {pins}</translation>
  </message>
  <message>
   <source>Fit {type}</source>
   <translation>{type} einbauen</translation>
  </message>
  <message>
   <source>Fit {type} and {relay} at {terminal}</source>
   <translation>{type} und {relay} an {terminal} einbauen</translation>
  </message>
  <message>
   <source>Let {id} hold at its limit</source>
   <translation>{id} an der Grenze halten lassen</translation>
  </message>
  <message>
   <source>Fit {ohm} at {terminal}</source>
   <translation>{ohm} an {terminal} einbauen</translation>
  </message>
  <message>
   <source>{ohm} {w}</source>
   <translation>{ohm} {w}</translation>
  </message>
  <message>
   <source>Fit {type} at {terminal}</source>
   <translation>{type} an {terminal} einbauen</translation>
  </message>
  <message>
   <source>Series resistor</source>
   <translation>Vorwiderstand</translation>
  </message>
  <message>
   <source>Thermistor</source>
   <translation>Heißleiter</translation>
  </message>
  <message>
   <source>Thermistor bypassed by a relay</source>
   <translation>Heißleiter, vom Relais überbrückt</translation>
  </message>
  <message>
   <source>Another supply</source>
   <translation>Andere Quelle</translation>
  </message>
  <message>
   <source>and cuts out: it does not start at the first try</source>
   <translation>und schaltet ab: beim ersten Versuch läuft sie nicht an</translation>
  </message>
  <message>
   <source>and latches off: it does not start</source>
   <translation>und verriegelt: sie läuft nicht an</translation>
  </message>
  <message>
   <source>and stays there: it does not start</source>
   <translation>und bleibt dort: sie läuft nicht an</translation>
  </message>
  <message>
   <source>and is still there when the run ends</source>
   <translation>und ist am Ende des Laufs noch dort</translation>
  </message>
  <message>
   <source>that cuts out and tries again</source>
   <translation>die abschaltet und es wieder versucht</translation>
  </message>
  <message>
   <source>that folds back</source>
   <translation>die zurückregelt</translation>
  </message>
  <message>
   <source>that latches off</source>
   <translation>die sich verriegelt</translation>
  </message>
  <message>
   <source>that holds at its limit</source>
   <translation>die an ihrer Grenze hält</translation>
  </message>
  <message>
   <source>{first} {second}</source>
   <translation>{first} {second}</translation>
  </message>
  <message>
   <source>at once</source>
   <translation>sofort</translation>
  </message>
  <message>
   <source>after {s}</source>
   <translation>nach {s}</translation>
  </message>
  <message>
   <source>The supply comes to its limit {at} {end}.</source>
   <translation>Die Quelle kommt {at} an ihre Grenze {end}.</translation>
  </message>
  <message>
   <source>It starts, but not every tube gets ready.</source>
   <translation>Es läuft an, aber nicht jede Röhre wird bereit.</translation>
  </message>
  <message>
   <source>It starts, though the supply is at its limit on the way; the last tube is ready after {s}.</source>
   <translation>Es läuft an, obwohl die Quelle unterwegs an ihrer Grenze ist; die letzte Röhre ist nach {s} bereit.</translation>
  </message>
  <message>
   <source>It starts, and the last tube is ready after {s}.</source>
   <translation>Es läuft an, und die letzte Röhre ist nach {s} bereit.</translation>
  </message>
  <message>
   <source>{part} keeps the first current to {a} of {limit}</source>
   <translation>{part} hält den ersten Strom auf {a} von {limit}</translation>
  </message>
  <message>
   <source>{part} keeps the first current to {a}</source>
   <translation>{part} hält den ersten Strom auf {a}</translation>
  </message>
  <message>
   <source>{keeps}; warm, it takes {v} and {w}, and {id} gets {hot} ({off}).</source>
   <translation>{keeps}; warm nimmt es {v} und {w}, und {id} bekommt {hot} ({off}).</translation>
  </message>
  <message>
   <source>With {supply} set to {set}, {costs}</source>
   <translation>Mit {supply} auf {set} gestellt, {costs}</translation>
  </message>
  <message>
   <source>That is {by} above its limit of {limit}.</source>
   <translation>Das ist {by} über der Grenze von {limit}.</translation>
  </message>
  <message>
   <source>That is {by} below its limit of {limit}: a resistor alone is no good here.</source>
   <translation>Das ist {by} unter der Grenze von {limit}: ein Widerstand allein taugt hier nicht.</translation>
  </message>
  <message>
   <source>That is {by} below its limit of {limit}.</source>
   <translation>Das ist {by} unter der Grenze von {limit}.</translation>
  </message>
  <message>
   <source>No single resistor bears the {w} that it takes when warm.</source>
   <translation>Kein einzelner Widerstand verträgt die {w}, die er warm aufnimmt.</translation>
  </message>
  <message>
   <source>No thermistor of the catalogue has {ohm} or more when cold and bears {a}.</source>
   <translation>Kein Heißleiter des Katalogs hat kalt {ohm} oder mehr und verträgt {a}.</translation>
  </message>
  <message>
   <source>No relay of the catalogue pulls in for sure at the {behind} behind the thermistor, bears {v} and switches {a}.</source>
   <translation>Kein Relais des Katalogs zieht bei den {behind} hinter dem Heißleiter sicher an, verträgt {v} und schaltet {a}.</translation>
  </message>
  <message>
   <source>{relay} behind {ohm}</source>
   <translation>{relay} hinter {ohm}</translation>
  </message>
  <message>
   <source>{part} keeps the first current to {a} of {limit}; {relay} pulls in at {pull} and bridges it, when the supply gives about {closing}, and {id} gets {hot} ({off}).</source>
   <translation>{part} hält den ersten Strom auf {a} von {limit}; {relay} zieht bei {pull} an und überbrückt ihn, wenn die Quelle etwa {closing} gibt, und {id} bekommt {hot} ({off}).</translation>
  </message>
  <message>
   <source>The relay never pulls in.</source>
   <translation>Das Relais zieht nie an.</translation>
  </message>
  <message>
   <source>The relay pulls in after {s}, and its contact carries {a} at most.</source>
   <translation>Das Relais zieht nach {s} an, und sein Kontakt führt höchstens {a}.</translation>
  </message>
  <message>
   <source>On the way a heater gets {share} of its rated volts.</source>
   <translation>Unterwegs bekommt ein Heizfaden {share} seiner Nennspannung.</translation>
  </message>
  <message>
   <source>A supply of {limit} that holds at its limit is enough; none up to the cold current {kind} is.</source>
   <translation>Eine Quelle für {limit}, die an ihrer Grenze hält, genügt; keine {kind} bis zum kalten Strom genügt.</translation>
  </message>
  <message>
   <source>A supply of {limit} that holds at its limit is enough; one {kind} would have to give {needed}.</source>
   <translation>Eine Quelle für {limit}, die an ihrer Grenze hält, genügt; eine {kind} müsste {needed} geben.</translation>
  </message>
  <message>
   <source>Cold, the heaters ask for {cold}, and {warm} when warm: a supply of {a} {kind} is enough.</source>
   <translation>Kalt verlangen die Heizfäden {cold}, warm {warm}: eine Quelle für {a} {kind} genügt.</translation>
  </message>
  <message>
   <source>the numbers run out of range</source>
   <translation>die Zahlen laufen aus dem Bereich</translation>
  </message>
  <message>
   <source>On a supply {kind}, {sure} of {all} start.</source>
   <translation>An einer Quelle, {kind}, laufen {sure} von {all} an.</translation>
  </message>
  <message>
   <source>On a supply {kind}, {sure} of {all} start for certain; up to {more} may, depending on when it gives up, which is seldom published.</source>
   <translation>An einer Quelle, {kind}, laufen {sure} von {all} sicher an; bis zu {more} vielleicht, je nachdem, wann sie aufgibt, was selten veröffentlicht wird.</translation>
  </message>
  <message>
   <source>the steady state does not settle</source>
   <translation>der Beharrungszustand stellt sich nicht ein</translation>
  </message>
  <message>
   <source>the circuit has no unique solution</source>
   <translation>die Schaltung hat keine eindeutige Lösung</translation>
  </message>
  <message>
   <source>The file</source>
   <translation>Die Datei</translation>
  </message>
  <message>
   <source>{title} is larger than {most} MB and is not read</source>
   <translation>{title} ist größer als {most} MB und wird nicht gelesen</translation>
  </message>
  <message>
   <source>{title} is not text in UTF-8 (byte {at})</source>
   <translation>{title} ist kein Text in UTF-8 (Byte {at})</translation>
  </message>
  <message>
   <source>{title} is nested too deeply to be a sheet</source>
   <translation>{title} ist zu tief verschachtelt für ein Blatt</translation>
  </message>
  <message>
   <source>{title} holds a number with too many digits</source>
   <translation>{title} enthält eine Zahl mit zu vielen Ziffern</translation>
  </message>
  <message>
   <source>line {line}, column {column}</source>
   <translation>Zeile {line}, Spalte {column}</translation>
  </message>
  <message>
   <source>{title} is empty</source>
   <translation>{title} ist leer</translation>
  </message>
  <message>
   <source>{title} breaks off here; it is not complete</source>
   <translation>{title} bricht hier ab; sie ist nicht vollständig</translation>
  </message>
  <message>
   <source>{title} is not a sheet: this is not JSON ({why})</source>
   <translation>{title} ist kein Blatt: Das ist kein JSON ({why})</translation>
  </message>
  <message>
   <source>the key '{key}' stands here twice</source>
   <translation>der Schlüssel '{key}' steht hier zweimal</translation>
  </message>
  <message>
   <source>this text holds half of a character pair</source>
   <translation>dieser Text enthält ein halbes Zeichenpaar</translation>
  </message>
  <message>
   <source>{title} is not a sheet: it has no format '{format}'</source>
   <translation>{title} ist kein Blatt: Das Format '{format}' fehlt</translation>
  </message>
  <message>
   <source>{title} is not a sheet: its format must be '{format}'</source>
   <translation>{title} ist kein Blatt: Das Format muss '{format}' sein</translation>
  </message>
  <message>
   <source>a whole number is expected here, such as 1</source>
   <translation>erwartet wird eine ganze Zahl, etwa 1</translation>
  </message>
  <message>
   <source>{title} was made by a newer version of the program (sheet version {version}; this one reads up to {most}). Update the program to open it.</source>
   <translation>{title} stammt von einer neueren Version des Programms (Blattversion {version}; diese liest bis {most}). Zum Öffnen das Programm aktualisieren.</translation>
  </message>
  <message>
   <source>the sheet holds half of a character pair in its text</source>
   <translation>das Blatt enthält in seinem Text ein halbes Zeichenpaar</translation>
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
   <source>true or false</source>
   <translation>true oder false</translation>
  </message>
  <message>
   <source>a list</source>
   <translation>eine Liste</translation>
  </message>
  <message>
   <source>an object in braces</source>
   <translation>ein Objekt in geschweiften Klammern</translation>
  </message>
  <message>
   <source>a list is expected here, not {got}</source>
   <translation>erwartet wird eine Liste, nicht {got}</translation>
  </message>
  <message>
   <source>this</source>
   <translation>dies</translation>
  </message>
  <message>
   <source>'{key}' is missing</source>
   <translation>'{key}' fehlt</translation>
  </message>
  <message>
   <source>{value} is not possible here; use one of {choices}</source>
   <translation>{value} geht hier nicht; möglich sind {choices}</translation>
  </message>
  <message>
   <source>{value} is not a kind of part</source>
   <translation>{value} ist keine Art von Bauteil</translation>
  </message>
  <message>
   <source>{what} of {length} is expected here</source>
   <translation>erwartet wird {what} mit {length} Einträgen</translation>
  </message>
  <message>
   <source>{what} is expected here, not {got}</source>
   <translation>erwartet wird {what}, nicht {got}</translation>
  </message>
  <message>
   <source>the key '{key}' is not known here</source>
   <translation>der Schlüssel '{key}' ist hier nicht bekannt</translation>
  </message>
  <message>
   <source>{problem}; the kinds are {kinds}</source>
   <translation>{problem}; die Arten sind {kinds}</translation>
  </message>
  <message>
   <source>in {owner}, {problem}</source>
   <translation>in {owner}: {problem}</translation>
  </message>
  <message>
   <source>those of the file format</source>
   <translation>die des Dateiformats</translation>
  </message>
  <message>
   <source>Nothing is entered; {expected}.</source>
   <translation>Nichts eingegeben; {expected}.</translation>
  </message>
  <message>
   <source>That is too long for a number; {expected}.</source>
   <translation>Das ist zu lang für eine Zahl; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' has two readings: write {thousands} for thousands, or {fraction} with a dot; {expected}.</source>
   <translation>'{text}' lässt sich zweifach lesen: {thousands} für Tausender schreiben, oder {fraction} mit Punkt; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' is too large to be meant; {expected}.</source>
   <translation>'{text}' ist zu groß, um gemeint zu sein; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' is too small to be meant; {expected}.</source>
   <translation>'{text}' ist zu klein, um gemeint zu sein; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' is {what}; {expected}.</source>
   <translation>'{text}' ist in {what} angegeben; {expected}.</translation>
  </message>
  <message>
   <source>The unit '{unit}' in '{text}' is not known; {expected}.</source>
   <translation>Die Einheit '{unit}' in '{text}' ist nicht bekannt; {expected}.</translation>
  </message>
  <message>
   <source>supplies and switches do not come to rest</source>
   <translation>Quellen und Schalter kommen nicht zur Ruhe</translation>
  </message>
  <message>
   <source>so much switched that the run was ended early</source>
   <translation>es wurde so viel geschaltet, dass der Lauf vorzeitig beendet wurde</translation>
  </message>
  <message>
   <source>There is no heater to warm up.</source>
   <translation>Es gibt keinen Heizfaden zum Anheizen.</translation>
  </message>
  <message>
   <source>No supply feeds the heaters.</source>
   <translation>Keine Quelle speist die Heizfäden.</translation>
  </message>
  <message>
   <source>{said} One more supply does not start.</source>
   <translation>{said} Eine weitere Quelle läuft nicht an.</translation>
  </message>
  <message>
   <source>{said} {count} more supplies do not start.</source>
   <translation>{said} {count} weitere Quellen laufen nicht an.</translation>
  </message>
  <message>
   <source>{id} does not start: it cuts out and tries again, {count} times in {time}.</source>
   <translation>{id} läuft nicht an: sie schaltet ab und versucht es wieder, {count}-mal in {time}.</translation>
  </message>
  <message>
   <source>{id} does not start: it has latched off.</source>
   <translation>{id} läuft nicht an: sie hat sich verriegelt.</translation>
  </message>
  <message>
   <source>{id} is still at its limit after {time}.</source>
   <translation>{id} ist nach {time} noch an ihrer Grenze.</translation>
  </message>
  <message>
   <source>{id} does not start: it stays at its limit, at {amps}.</source>
   <translation>{id} läuft nicht an: sie bleibt an ihrer Grenze, bei {amps}.</translation>
  </message>
  <message>
   <source>It starts.</source>
   <translation>Es läuft an.</translation>
  </message>
  <message>
   <source>It starts; the last tube is ready after {time}.</source>
   <translation>Es läuft an; die letzte Röhre ist nach {time} bereit.</translation>
  </message>
  <message>
   <source>It starts, but {id} is not ready after {time}.</source>
   <translation>Es läuft an, aber {id} ist nach {time} nicht bereit.</translation>
  </message>
  <message>
   <source>It starts, but {ids} are not ready after {time}.</source>
   <translation>Es läuft an, aber {ids} sind nach {time} nicht bereit.</translation>
  </message>
  <message>
   <source>At {time}: {reason} ({ids}).</source>
   <translation>Bei {time}: {reason} ({ids}).</translation>
  </message>
  <message>
   <source>Not computed: {reason} ({ids}).</source>
   <translation>Nicht berechnet: {reason} ({ids}).</translation>
  </message>
 </context>
 <context>
  <name>parts</name>
  <message>
   <source>mains</source>
   <translation>Netz</translation>
  </message>
  <message>
   <source>tube</source>
   <translation>Röhre</translation>
  </message>
  <message>
   <source>lamp</source>
   <translation>Lampe</translation>
  </message>
  <message>
   <source>winding</source>
   <translation>Wicklung</translation>
  </message>
  <message>
   <source>centre-tapped winding</source>
   <translation>Wicklung mit Mittelanzapfung</translation>
  </message>
  <message>
   <source>DC supply</source>
   <translation>Netzteil</translation>
  </message>
  <message>
   <source>battery</source>
   <translation>Batterie</translation>
  </message>
  <message>
   <source>mains feed</source>
   <translation>Netzspeisung</translation>
  </message>
  <message>
   <source>rectified supply</source>
   <translation>Gleichrichterspeisung</translation>
  </message>
  <message>
   <source>resistor</source>
   <translation>Widerstand</translation>
  </message>
  <message>
   <source>thermistor</source>
   <translation>Heißleiter</translation>
  </message>
  <message>
   <source>relay</source>
   <translation>Relais</translation>
  </message>
  <message>
   <source>fuse</source>
   <translation>Sicherung</translation>
  </message>
  <message>
   <source>capacitor</source>
   <translation>Kondensator</translation>
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
   <source>hum balance</source>
   <translation>Brummsymmetrierung</translation>
  </message>
  <message>
   <source>elevation</source>
   <translation>Hochlegung</translation>
  </message>
  <message>
   <source>chassis</source>
   <translation>Chassis</translation>
  </message>
  <message>
   <source>joint</source>
   <translation>Lötstützpunkt</translation>
  </message>
  <message>
   <source>note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>frame</source>
   <translation>Rahmen</translation>
  </message>
  <message>
   <source>pulled</source>
   <translation>gezogen</translation>
  </message>
  <message>
   <source>closed</source>
   <translation>geschlossen</translation>
  </message>
  <message>
   <source>open</source>
   <translation>offen</translation>
  </message>
  <message>
   <source>centre tap</source>
   <translation>Mittelanzapfung</translation>
  </message>
  <message>
   <source>seen in its source</source>
   <translation>in der Quelle gelesen</translation>
  </message>
  <message>
   <source>second hand</source>
   <translation>aus zweiter Hand</translation>
  </message>
  <message>
   <source>sources disagree</source>
   <translation>Quellen uneins</translation>
  </message>
  <message>
   <source>unverified</source>
   <translation>ungeprüft</translation>
  </message>
 </context>
 <context>
  <name>pictures</name>
  <message>
   <source>row {row} of {rows}, column {column} of {columns}</source>
   <translation>Zeile {row} von {rows}, Spalte {column} von {columns}</translation>
  </message>
 </context>
 <context>
  <name>reading</name>
  <message>
   <source>A tube needs a type, such as ECC83.</source>
   <translation>Eine Röhre braucht einen Typ, etwa ECC83.</translation>
  </message>
  <message>
   <source>This note has several lines; it is edited on the drawing.</source>
   <translation>Diese Notiz hat mehrere Zeilen; sie wird in der Zeichnung bearbeitet.</translation>
  </message>
  <message>
   <source>A switch is open or closed.</source>
   <translation>Ein Schalter ist offen oder geschlossen.</translation>
  </message>
  <message>
   <source>{id} has no rating.</source>
   <translation>{id} hat keinen Nennwert.</translation>
  </message>
  <message>
   <source>'{text}' is not understood; expected is something like {example}.</source>
   <translation>'{text}' ist nicht zu verstehen; erwartet wird etwas wie {example}.</translation>
  </message>
  <message>
   <source>A part is turned by 0, 90, 180 or 270 degrees.</source>
   <translation>Ein Bauteil wird um 0, 90, 180 oder 270 Grad gedreht.</translation>
  </message>
  <message>
   <source>Either the word pulled, or nothing for a tube in its socket.</source>
   <translation>Entweder das Wort gezogen, oder nichts für eine Röhre in ihrer Fassung.</translation>
  </message>
  <message>
   <source>'{text}' is no terminal; expected is a part and its pin, such as V1.4.</source>
   <translation>'{text}' ist kein Anschluss; erwartet wird ein Bauteil mit Stift, etwa V1.4.</translation>
  </message>
  <message>
   <source>'{text}' is no colour known here; expected is one of {names}, or #rrggbb.</source>
   <translation>'{text}' ist hier keine bekannte Farbe; erwartet wird eine von {names} oder #rrggbb.</translation>
  </message>
 </context>
 <context>
  <name>stock</name>
  <message>
   <source>Supplies</source>
   <translation>Quellen</translation>
  </message>
  <message>
   <source>Droppers and control</source>
   <translation>Widerstände und Schaltteile</translation>
  </message>
  <message>
   <source>Reference and joints</source>
   <translation>Bezug und Stützpunkte</translation>
  </message>
  <message>
   <source>Tubes</source>
   <translation>Röhren</translation>
  </message>
  <message>
   <source>Panel lamps</source>
   <translation>Skalenlampen</translation>
  </message>
  <message>
   <source>Thermistors</source>
   <translation>Heißleiter</translation>
  </message>
  <message>
   <source>Relays</source>
   <translation>Relais</translation>
  </message>
  <message>
   <source>Winding</source>
   <translation>Wicklung</translation>
  </message>
  <message>
   <source>Winding, centre tap</source>
   <translation>Wicklung mit Mittelanzapfung</translation>
  </message>
  <message>
   <source>DC supply</source>
   <translation>Netzteil</translation>
  </message>
  <message>
   <source>Rectified supply</source>
   <translation>Gleichrichterspeisung</translation>
  </message>
  <message>
   <source>bridge</source>
   <translation>Graetzbrücke</translation>
  </message>
  <message>
   <source>Battery</source>
   <translation>Batterie</translation>
  </message>
  <message>
   <source>Mains feed</source>
   <translation>Netzspeisung</translation>
  </message>
  <message>
   <source>string across the mains</source>
   <translation>Serienkreis am Netz</translation>
  </message>
  <message>
   <source>Resistor</source>
   <translation>Widerstand</translation>
  </message>
  <message>
   <source>Capacitor</source>
   <translation>Kondensator</translation>
  </message>
  <message>
   <source>Diode</source>
   <translation>Diode</translation>
  </message>
  <message>
   <source>silicon</source>
   <translation>Silizium</translation>
  </message>
  <message>
   <source>Fuse</source>
   <translation>Sicherung</translation>
  </message>
  <message>
   <source>Switch</source>
   <translation>Schalter</translation>
  </message>
  <message>
   <source>closed</source>
   <translation>geschlossen</translation>
  </message>
  <message>
   <source>Chassis</source>
   <translation>Chassis</translation>
  </message>
  <message>
   <source>the reference</source>
   <translation>der Bezug</translation>
  </message>
  <message>
   <source>Joint</source>
   <translation>Lötstützpunkt</translation>
  </message>
  <message>
   <source>tag or splice</source>
   <translation>Öse oder Verbindung</translation>
  </message>
  <message>
   <source>Hum balance</source>
   <translation>Brummsymmetrierung</translation>
  </message>
  <message>
   <source>Elevation</source>
   <translation>Hochlegung</translation>
  </message>
  <message>
   <source>cold</source>
   <translation>kalt</translation>
  </message>
 </context>
 <context>
  <name>tables</name>
  <message>
   <source>Set {id} {what}</source>
   <translation>{id}: {what} einstellen</translation>
  </message>
  <message>
   <source>type</source>
   <translation>Typ</translation>
  </message>
  <message>
   <source>rating</source>
   <translation>Werte</translation>
  </message>
  <message>
   <source>place</source>
   <translation>Lage</translation>
  </message>
  <message>
   <source>Notes and frames cannot be turned.</source>
   <translation>Notizen und Rahmen lassen sich nicht drehen.</translation>
  </message>
  <message>
   <source>turn</source>
   <translation>Drehung</translation>
  </message>
  <message>
   <source>Only a tube can be pulled.</source>
   <translation>Nur eine Röhre lässt sich ziehen.</translation>
  </message>
  <message>
   <source>pulled</source>
   <translation>gezogen</translation>
  </message>
  <message>
   <source>from</source>
   <translation>von</translation>
  </message>
  <message>
   <source>to</source>
   <translation>nach</translation>
  </message>
  <message>
   <source>gauge</source>
   <translation>Stärke</translation>
  </message>
  <message>
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>colour</source>
   <translation>Farbe</translation>
  </message>
  <message>
   <source>pair</source>
   <translation>Paar</translation>
  </message>
  <message>
   <source>volts</source>
   <translation>Volt</translation>
  </message>
  <message>
   <source>amps</source>
   <translation>Ampere</translation>
  </message>
  <message>
   <source>amperes</source>
   <translation>Ampere</translation>
  </message>
  <message>
   <source>watts</source>
   <translation>Watt</translation>
  </message>
  <message>
   <source>state</source>
   <translation>Zustand</translation>
  </message>
  <message>
   <source>id</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>pins</source>
   <translation>Stifte</translation>
  </message>
  <message>
   <source>section between pins</source>
   <translation>Abschnitt zwischen Stiften</translation>
  </message>
  <message>
   <source>volts across the section</source>
   <translation>Volt am Abschnitt</translation>
  </message>
  <message>
   <source>%</source>
   <translation>%</translation>
  </message>
  <message>
   <source>volts off the rating, per cent</source>
   <translation>Abweichung von der Nennspannung in Prozent</translation>
  </message>
  <message>
   <source>watts of heat</source>
   <translation>Watt Wärme</translation>
  </message>
  <message>
   <source>htr K</source>
   <translation>Heizf. K</translation>
  </message>
  <message>
   <source>heater temperature, kelvin</source>
   <translation>Temperatur des Heizfadens, Kelvin</translation>
  </message>
  <message>
   <source>cath K</source>
   <translation>Kath. K</translation>
  </message>
  <message>
   <source>cathode temperature, kelvin</source>
   <translation>Temperatur der Kathode, Kelvin</translation>
  </message>
  <message>
   <source>kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>volts at the terminals</source>
   <translation>Volt an den Klemmen</translation>
  </message>
  <message>
   <source>load %</source>
   <translation>Last %</translation>
  </message>
  <message>
   <source>load in per cent of rating</source>
   <translation>Last in Prozent des Nennwerts</translation>
  </message>
  <message>
   <source>watts given</source>
   <translation>abgegebene Watt</translation>
  </message>
  <message>
   <source>part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>pin</source>
   <translation>Stift</translation>
  </message>
  <message>
   <source>volts above the reference, rms for AC</source>
   <translation>Volt über dem Bezug, Effektivwert bei AC</translation>
  </message>
  <message>
   <source>DC volts</source>
   <translation>DC-Volt</translation>
  </message>
  <message>
   <source>DC volts above the chassis</source>
   <translation>Gleichspannung über dem Chassis</translation>
  </message>
  <message>
   <source>turned by, degrees</source>
   <translation>gedreht um, Grad</translation>
  </message>
  <message>
   <source>type or rating</source>
   <translation>Typ oder Werte</translation>
  </message>
  <message>
   <source>at</source>
   <translation>Lage</translation>
  </message>
  <message>
   <source>place on the sheet</source>
   <translation>Lage auf dem Blatt</translation>
  </message>
  <message>
   <source>out</source>
   <translation>gezogen</translation>
  </message>
  <message>
   <source>pulled out of its socket</source>
   <translation>aus der Fassung gezogen</translation>
  </message>
  <message>
   <source>twisted pair, by its name</source>
   <translation>verdrilltes Paar, nach seinem Namen</translation>
  </message>
  <message>
   <source>mV</source>
   <translation>mV</translation>
  </message>
  <message>
   <source>millivolts dropped</source>
   <translation>abfallende Millivolt</translation>
  </message>
 </context>
 <context>
  <name>title block</name>
  <message>
   <source>Mains {volts}, {hertz}, {low} to {high}</source>
   <translation>Netz {volts}, {hertz}, {low} bis {high}</translation>
  </message>
  <message>
   <source>Wiring only</source>
   <translation>Nur Verdrahtung</translation>
  </message>
  <message>
   <source>At switch-on, {volts}</source>
   <translation>Beim Einschalten, {volts}</translation>
  </message>
  <message>
   <source>Hot, at {volts}</source>
   <translation>Heiß, bei {volts}</translation>
  </message>
  <message>
   <source>Untitled</source>
   <translation>Ohne Titel</translation>
  </message>
  <message>
   <source>Date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <source>Drawn with Heaterloom</source>
   <translation>Gezeichnet mit Heaterloom</translation>
  </message>
 </context>
 <context>
  <name>warm-up</name>
  <message>
   <source>{time} after switch-on</source>
   <translation>{time} nach dem Einschalten</translation>
  </message>
  <message>
   <source>{time}: {what}</source>
   <translation>{time}: {what}</translation>
  </message>
  <message>
   <source>the mains goes off</source>
   <translation>das Netz geht aus</translation>
  </message>
  <message>
   <source>the mains comes on</source>
   <translation>das Netz geht an</translation>
  </message>
  <message>
   <source>{part} is at its limit</source>
   <translation>{part} ist an der Grenze</translation>
  </message>
  <message>
   <source>{part} regulates</source>
   <translation>{part} regelt</translation>
  </message>
  <message>
   <source>{part} cuts out</source>
   <translation>{part} schaltet ab</translation>
  </message>
  <message>
   <source>{part} tries again</source>
   <translation>{part} versucht es wieder</translation>
  </message>
  <message>
   <source>{part} latches off</source>
   <translation>{part} verriegelt sich</translation>
  </message>
  <message>
   <source>{part} pulls in</source>
   <translation>{part} zieht an</translation>
  </message>
  <message>
   <source>the contact of {part} closes</source>
   <translation>der Kontakt von {part} schließt</translation>
  </message>
  <message>
   <source>{part} drops out</source>
   <translation>{part} fällt ab</translation>
  </message>
  <message>
   <source>the contact of {part} goes back</source>
   <translation>der Kontakt von {part} geht zurück</translation>
  </message>
  <message>
   <source>the run stops here</source>
   <translation>der Lauf endet hier</translation>
  </message>
  <message>
   <source>&amp;Switch on cold</source>
   <translation>&amp;Kalt einschalten</translation>
  </message>
  <message>
   <source>Follow the warm-up second by second: does it start?</source>
   <translation>Das Anheizen Sekunde für Sekunde verfolgen: läuft es an?</translation>
  </message>
  <message>
   <source>&amp;Play or pause the warm-up</source>
   <translation>Anheizen a&amp;bspielen oder anhalten</translation>
  </message>
  <message>
   <source>&amp;Next event</source>
   <translation>&amp;Nächstes Ereignis</translation>
  </message>
  <message>
   <source>Pre&amp;vious event</source>
   <translation>&amp;Voriges Ereignis</translation>
  </message>
  <message>
   <source>&amp;Leave the instant</source>
   <translation>Den Augenblick &amp;verlassen</translation>
  </message>
 </context>
</TS>
