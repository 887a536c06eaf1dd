<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>AboutPart</name>
  <message>
   <source>The catalogue does not know {type}.</source>
   <translation>Le catalogue ne connaît pas {type}.</translation>
  </message>
  <message>
   <source>{type} in the catalogue</source>
   <translation>{type} au catalogue</translation>
  </message>
  <message>
   <source>also {names}</source>
   <translation>aussi {names}</translation>
  </message>
  <message>
   <source>no source is on record</source>
   <translation>aucune source enregistrée</translation>
  </message>
 </context>
 <context>
  <name>Banner</name>
  <message>
   <source>Close</source>
   <translation>Fermer</translation>
  </message>
 </context>
 <context>
  <name>ChainBuilder</name>
  <message>
   <source>Chain</source>
   <translation>Chaîne</translation>
  </message>
 </context>
 <context>
  <name>ChainPane</name>
  <message>
   <source>Supply</source>
   <translation>Alimentation</translation>
  </message>
  <message>
   <source>Chassis</source>
   <translation>Châssis</translation>
  </message>
  <message>
   <source>Wire</source>
   <translation>Fil</translation>
  </message>
  <message>
   <source>Replace wiring</source>
   <translation>Remplacer le câblage</translation>
  </message>
  <message>
   <source>Shunts where unequal</source>
   <translation>Shunts si inégaux</translation>
  </message>
  <message>
   <source>Sockets that are wired already lose their heater wires first</source>
   <translation>Les supports déjà câblés perdent d'abord leurs fils de chauffage</translation>
  </message>
  <message>
   <source>Resistors across heaters that want less than their string carries</source>
   <translation>Résistances aux bornes des filaments qui veulent moins que ce que conduit leur chaîne</translation>
  </message>
  <message>
   <source>Order</source>
   <translation>Ordre</translation>
  </message>
  <message>
   <source>Order of the chain</source>
   <translation>Ordre de la chaîne</translation>
  </message>
  <message>
   <source>Drag, or Alt with the arrows, to change the order</source>
   <translation>Tirer, ou Alt avec les flèches, pour changer l'ordre</translation>
  </message>
  <message>
   <source>Build</source>
   <translation>Construire</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Fermer</translation>
  </message>
  <message>
   <source>Spare length</source>
   <translation>Réserve</translation>
  </message>
  <message>
   <source>tied already</source>
   <translation>déjà relié</translation>
  </message>
  <message>
   <source>{socket} – not wired</source>
   <translation>{socket} – non câblé</translation>
  </message>
 </context>
 <context>
  <name>ConditionsStrip</name>
  <message>
   <source>cold</source>
   <translation>froid</translation>
  </message>
  <message>
   <source>hot</source>
   <translation>chaud</translation>
  </message>
  <message>
   <source>Heaters</source>
   <translation>Filaments</translation>
  </message>
  <message>
   <source>Rename sheet</source>
   <translation>Renommer la feuille</translation>
  </message>
  <message>
   <source>as it would be</source>
   <translation>comme ce serait</translation>
  </message>
  <message>
   <source>solving…</source>
   <translation>calcul…</translation>
  </message>
  <message>
   <source>solved for this drawing</source>
   <translation>résolu pour ce dessin</translation>
  </message>
 </context>
 <context>
  <name>Dialogs</name>
  <message>
   <source>{title} has changes that are not saved.</source>
   <translation>{title} a des modifications non enregistrées.</translation>
  </message>
  <message>
   <source>Sheets</source>
   <translation>Feuilles</translation>
  </message>
  <message>
   <source>All files</source>
   <translation>Tous les fichiers</translation>
  </message>
  <message>
   <source>Open a sheet</source>
   <translation>Ouvrir une feuille</translation>
  </message>
  <message>
   <source>Save the sheet</source>
   <translation>Enregistrer la feuille</translation>
  </message>
  <message>
   <source>Pictures</source>
   <translation>Images</translation>
  </message>
  <message>
   <source>Save a picture</source>
   <translation>Enregistrer une image</translation>
  </message>
  <message>
   <source>{name} is there already.</source>
   <translation>{name} existe déjà.</translation>
  </message>
  <message>
   <source>Replace it?</source>
   <translation>Le remplacer ?</translation>
  </message>
  <message>
   <source>No printer is set up on this computer.</source>
   <translation>Aucune imprimante n'est installée sur cet ordinateur.</translation>
  </message>
  <message>
   <source>The pages can be saved as a PDF document and printed elsewhere.</source>
   <translation>Les pages peuvent être enregistrées en document PDF et imprimées ailleurs.</translation>
  </message>
  <message>
   <source>Save a PDF…</source>
   <translation>Enregistrer un PDF…</translation>
  </message>
  <message>
   <source>and {count} more</source>
   <translation>et {count} de plus</translation>
  </message>
 </context>
 <context>
  <name>Drawer</name>
  <message>
   <source>Progress of the warm-up</source>
   <translation>Avancement de la mise en chauffe</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Annuler</translation>
  </message>
  <message>
   <source>What is shown</source>
   <translation>Ce qui est montré</translation>
  </message>
  <message>
   <source>Condition</source>
   <translation>Condition</translation>
  </message>
  <message>
   <source>How long</source>
   <translation>Combien de temps</translation>
  </message>
  <message>
   <source>Compare soft starts</source>
   <translation>Comparer les démarrages progressifs</translation>
  </message>
  <message>
   <source>Close the warm-up</source>
   <translation>Fermer la mise en chauffe</translation>
  </message>
  <message>
   <source>Close the warm-up (F5)</source>
   <translation>Fermer la mise en chauffe (F5)</translation>
  </message>
  <message>
   <source>Switching on…</source>
   <translation>Mise sous tension…</translation>
  </message>
  <message>
   <source>Not switched on for this drawing</source>
   <translation>Pas mis sous tension pour ce dessin</translation>
  </message>
  <message>
   <source>as drawn</source>
   <translation>tel que dessiné</translation>
  </message>
 </context>
 <context>
  <name>FindingsPane</name>
  <message>
   <source>Findings</source>
   <translation>Constats</translation>
  </message>
  <message>
   <source>Show findings of</source>
   <translation>Constats pour</translation>
  </message>
  <message>
   <source>Not solved for this drawing yet</source>
   <translation>Pas encore résolu pour ce dessin</translation>
  </message>
  <message>
   <source>The sheet is empty. Type a part into the add field.</source>
   <translation>La feuille est vide. Taper un composant dans le champ d'ajout.</translation>
  </message>
  <message>
   <source>Nothing to report: every heater is within its tolerance.</source>
   <translation>Rien à signaler : chaque filament est dans sa tolérance.</translation>
  </message>
  <message>
   <source>all conditions</source>
   <translation>toutes conditions</translation>
  </message>
  <message>
   <source>Nothing to report under this condition.</source>
   <translation>Rien à signaler sous cette condition.</translation>
  </message>
 </context>
 <context>
  <name>InstantNote</name>
  <message>
   <source>back to the steady state</source>
   <translation>retour au régime établi</translation>
  </message>
  <message>
   <source>Leave the instant (Shift+F8)</source>
   <translation>Quitter l’instant (Maj+F8)</translation>
  </message>
 </context>
 <context>
  <name>KeyPage</name>
  <message>
   <source>Keys and gestures</source>
   <translation>Touches et gestes</translation>
  </message>
  <message>
   <source>search: wire, table, Ctrl…</source>
   <translation>chercher : fil, tableau, Ctrl…</translation>
  </message>
  <message>
   <source>Search keys and gestures</source>
   <translation>Chercher touches et gestes</translation>
  </message>
  <message>
   <source>&amp;Print…</source>
   <translation>Im&amp;primer…</translation>
  </message>
 </context>
 <context>
  <name>Legend</name>
  <message>
   <source>Curves</source>
   <translation>Courbes</translation>
  </message>
 </context>
 <context>
  <name>MainWindow</name>
  <message>
   <source>Your own tube types are not used until this is mended:</source>
   <translation>Vos types de tubes ne servent pas tant que ceci n'est pas corrigé :</translation>
  </message>
  <message>
   <source>The new size is used when Heaterloom is started again.</source>
   <translation>La nouvelle taille vaudra au prochain démarrage de Heaterloom.</translation>
  </message>
  <message>
   <source>Save a copy…</source>
   <translation>Enregistrer une copie…</translation>
  </message>
 </context>
 <context>
  <name>MainsControl</name>
  <message>
   <source>low {volts}</source>
   <translation>bas {volts}</translation>
  </message>
  <message>
   <source>nominal {volts}</source>
   <translation>nominal {volts}</translation>
  </message>
  <message>
   <source>high {volts}</source>
   <translation>haut {volts}</translation>
  </message>
  <message>
   <source>Low mains</source>
   <translation>Secteur bas</translation>
  </message>
  <message>
   <source>Nominal mains</source>
   <translation>Secteur nominal</translation>
  </message>
  <message>
   <source>High mains</source>
   <translation>Secteur haut</translation>
  </message>
 </context>
 <context>
  <name>MainsSlider</name>
  <message>
   <source>Mains volts</source>
   <translation>Tension secteur</translation>
  </message>
  <message>
   <source>mains {volts}</source>
   <translation>secteur {volts}</translation>
  </message>
 </context>
 <context>
  <name>Menus</name>
  <message>
   <source>&amp;Wires</source>
   <translation>F&amp;ils</translation>
  </message>
  <message>
   <source>&amp;File</source>
   <translation>&amp;Fichier</translation>
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>É&amp;dition</translation>
  </message>
  <message>
   <source>&amp;Arrange</source>
   <translation>A&amp;rranger</translation>
  </message>
  <message>
   <source>&amp;View</source>
   <translation>&amp;Affichage</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>Ai&amp;de</translation>
  </message>
  <message>
   <source>&amp;New sheet</source>
   <translation>&amp;Nouvelle feuille</translation>
  </message>
  <message>
   <source>&amp;Open…</source>
   <translation>&amp;Ouvrir…</translation>
  </message>
  <message>
   <source>Open &amp;recent</source>
   <translation>Fichiers &amp;récents</translation>
  </message>
  <message>
   <source>Open a &amp;sample</source>
   <translation>&amp;Exemples</translation>
  </message>
  <message>
   <source>&amp;Save</source>
   <translation>&amp;Enregistrer</translation>
  </message>
  <message>
   <source>Save &amp;as…</source>
   <translation>Enregistrer &amp;sous…</translation>
  </message>
  <message>
   <source>Save a &amp;picture…</source>
   <translation>Enregistrer une &amp;image…</translation>
  </message>
  <message>
   <source>P&amp;rint…</source>
   <translation>Imp&amp;rimer…</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>&amp;Quitter</translation>
  </message>
  <message>
   <source>&amp;Undo</source>
   <translation>&amp;Annuler</translation>
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>Ré&amp;tablir</translation>
  </message>
  <message>
   <source>Re&amp;name the sheet</source>
   <translation>Reno&amp;mmer la feuille</translation>
  </message>
  <message>
   <source>&amp;Line up</source>
   <translation>A&amp;ligner</translation>
  </message>
  <message>
   <source>To the &amp;drawing</source>
   <translation>Au &amp;dessin</translation>
  </message>
  <message>
   <source>To the f&amp;indings</source>
   <translation>Aux &amp;constats</translation>
  </message>
  <message>
   <source>To the &amp;properties</source>
   <translation>Aux &amp;propriétés</translation>
  </message>
  <message>
   <source>To the pa&amp;rts to add</source>
   <translation>Aux com&amp;posants</translation>
  </message>
  <message>
   <source>To the ta&amp;bles</source>
   <translation>Aux ta&amp;bleaux</translation>
  </message>
  <message>
   <source>War&amp;m-up</source>
   <translation>&amp;Mise en chauffe</translation>
  </message>
  <message>
   <source>&amp;Go on the drawing</source>
   <translation>&amp;Aller sur le dessin</translation>
  </message>
  <message>
   <source>Pa&amp;nes</source>
   <translation>&amp;Volets</translation>
  </message>
  <message>
   <source>&amp;Theme</source>
   <translation>&amp;Thème</translation>
  </message>
  <message>
   <source>Si&amp;ze of everything</source>
   <translation>&amp;Taille de tout</translation>
  </message>
  <message>
   <source>&amp;Language</source>
   <translation>&amp;Langue</translation>
  </message>
  <message>
   <source>Restore the &amp;usual panes</source>
   <translation>Remettre les volets ha&amp;bituels</translation>
  </message>
  <message>
   <source>As the &amp;system</source>
   <translation>Comme le &amp;système</translation>
  </message>
  <message>
   <source>&amp;Light</source>
   <translation>&amp;Clair</translation>
  </message>
  <message>
   <source>&amp;Dark</source>
   <translation>&amp;Sombre</translation>
  </message>
  <message>
   <source>Heaterloom speaks {language} from its next start on.</source>
   <translation>Heaterloom parlera {language} au prochain démarrage.</translation>
  </message>
  <message>
   <source>&amp;Keys and gestures</source>
   <translation>&amp;Touches et gestes</translation>
  </message>
  <message>
   <source>&amp;Cautions</source>
   <translation>&amp;Mises en garde</translation>
  </message>
  <message>
   <source>&amp;About Heaterloom</source>
   <translation>&amp;À propos de Heaterloom</translation>
  </message>
  <message>
   <source>Cautions</source>
   <translation>Mises en garde</translation>
  </message>
  <message>
   <source>Heaterloom lays out the heater wiring of valve amplifiers and solves every heater.

Its figures are computed from published data and models, some of them unverified and marked so. They do not replace a measurement at the pins.

MIT licence.</source>
   <translation>Heaterloom dessine le câblage de chauffage des amplificateurs à tubes et résout chaque filament.

Ses valeurs viennent de données et de modèles publiés, certains non vérifiés et signalés comme tels. Elles ne remplacent pas une mesure aux broches.

Licence MIT.</translation>
  </message>
  <message>
   <source>About Heaterloom</source>
   <translation>À propos de Heaterloom</translation>
  </message>
  <message>
   <source>Rehearsal amplifier</source>
   <translation>Amplificateur d'essai</translation>
  </message>
  <message>
   <source>Twelve volts on the bench</source>
   <translation>Douze volts sur l'établi</translation>
  </message>
  <message>
   <source>Mains string radio</source>
   <translation>Radio à chaîne sur le secteur</translation>
  </message>
  <message>
   <source>Five mistakes</source>
   <translation>Cinq erreurs</translation>
  </message>
  <message>
   <source>Cold start</source>
   <translation>Démarrage à froid</translation>
  </message>
  <message>
   <source>Cold start with a thermistor</source>
   <translation>Démarrage à froid avec thermistance</translation>
  </message>
  <message>
   <source>Cold start with thermistor and relay</source>
   <translation>Démarrage à froid avec thermistance et relais</translation>
  </message>
  <message>
   <source>High tension kills. Switch off, unplug, let capacitors discharge and measure before touching anything.</source>
   <translation>La haute tension tue. Éteindre, débrancher, laisser les condensateurs se décharger et mesurer avant de toucher quoi que ce soit.</translation>
  </message>
  <message>
   <source>A heater string fed straight from the mains makes the chassis live. Work on it only with an isolating transformer, and leave mains wiring to those licensed for it where you live.</source>
   <translation>Une chaîne de filaments directement sur le secteur met le châssis sous tension. N'y travailler qu'avec un transformateur d'isolement, et laisser le câblage secteur à ceux qui y sont habilités chez vous.</translation>
  </message>
  <message>
   <source>Heater windings may float at full high tension. Use insulated leads and a meter rated for it.</source>
   <translation>Les enroulements de chauffage peuvent flotter à la pleine haute tension. Employer des fils isolés et un appareil de mesure prévu pour elle.</translation>
  </message>
  <message>
   <source>Droppers, thermistors and glass get hot enough to burn. Leave them room.</source>
   <translation>Résistances série, thermistances et verre chauffent à brûler. Leur laisser de la place.</translation>
  </message>
  <message>
   <source>One fuse for each winding, never a bigger one than designed.</source>
   <translation>Un fusible par enroulement, jamais plus gros que prévu.</translation>
  </message>
  <message>
   <source>What this program says does not replace a measurement at the pins, nor your local codes.</source>
   <translation>Ce que dit ce programme ne remplace ni une mesure aux broches ni les règles locales.</translation>
  </message>
 </context>
 <context>
  <name>PagesPreview</name>
  <message>
   <source>Preview</source>
   <translation>Aperçu</translation>
  </message>
 </context>
 <context>
  <name>Pane</name>
  <message>
   <source>To the &amp;left</source>
   <translation>À &amp;gauche</translation>
  </message>
  <message>
   <source>To the &amp;right</source>
   <translation>À &amp;droite</translation>
  </message>
  <message>
   <source>&amp;Below the drawing</source>
   <translation>&amp;Sous le dessin</translation>
  </message>
  <message>
   <source>In a &amp;window of its own</source>
   <translation>Dans sa propre &amp;fenêtre</translation>
  </message>
  <message>
   <source>&amp;Close</source>
   <translation>F&amp;ermer</translation>
  </message>
  <message>
   <source>Share the place of {name}</source>
   <translation>Partager la place de {name}</translation>
  </message>
 </context>
 <context>
  <name>PartsList</name>
  <message>
   <source>find: ECC83, 6.3 V winding, relay…</source>
   <translation>chercher : ECC83, 6.3 V, relais…</translation>
  </message>
  <message>
   <source>Find a part</source>
   <translation>Chercher un composant</translation>
  </message>
  <message>
   <source>Parts that can be added</source>
   <translation>Composants à ajouter</translation>
  </message>
 </context>
 <context>
  <name>PictureDialog</name>
  <message>
   <source>Print the sheet</source>
   <translation>Imprimer la feuille</translation>
  </message>
  <message>
   <source>Save a picture</source>
   <translation>Enregistrer une image</translation>
  </message>
  <message>
   <source>the whole sheet</source>
   <translation>la feuille entière</translation>
  </message>
  <message>
   <source>what is in view</source>
   <translation>ce qui est visible</translation>
  </message>
  <message>
   <source>what is selected</source>
   <translation>ce qui est choisi</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Montrer</translation>
  </message>
  <message>
   <source>Condition</source>
   <translation>Condition</translation>
  </message>
  <message>
   <source>Figures, marks and glow</source>
   <translation>Valeurs, marques et lueur</translation>
  </message>
  <message>
   <source>Gauges and lengths</source>
   <translation>Calibres et longueurs</translation>
  </message>
  <message>
   <source>Title block</source>
   <translation>Cartouche</translation>
  </message>
  <message>
   <source>Dark, as on a dark screen</source>
   <translation>Sombre, comme sur un écran sombre</translation>
  </message>
  <message>
   <source>as large as the drawing</source>
   <translation>aussi grand que le dessin</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Held</source>
   <translation>Tenu</translation>
  </message>
  <message>
   <source>landscape</source>
   <translation>paysage</translation>
  </message>
  <message>
   <source>upright</source>
   <translation>portrait</translation>
  </message>
  <message>
   <source>Scale</source>
   <translation>Échelle</translation>
  </message>
  <message>
   <source>fit to one page</source>
   <translation>ajuster à une page</translation>
  </message>
  <message>
   <source>a unit is 1 mm, in tiles</source>
   <translation>une unité fait 1 mm, en pavés</translation>
  </message>
  <message>
   <source>SVG drawing</source>
   <translation>dessin SVG</translation>
  </message>
  <message>
   <source>PNG image</source>
   <translation>image PNG</translation>
  </message>
  <message>
   <source>PDF document</source>
   <translation>document PDF</translation>
  </message>
  <message>
   <source>File</source>
   <translation>Fichier</translation>
  </message>
  <message>
   <source>Letters as shapes</source>
   <translation>Lettres en formes</translation>
  </message>
  <message>
   <source>For programs that do not read fonts in SVG files. Shapes cannot be searched or copied.</source>
   <translation>Pour les programmes qui ne lisent pas les polices des fichiers SVG. Les formes ne se cherchent ni ne se copient.</translation>
  </message>
  <message>
   <source>cold</source>
   <translation>froid</translation>
  </message>
  <message>
   <source>hot</source>
   <translation>chaud</translation>
  </message>
  <message>
   <source>nominal mains</source>
   <translation>tension secteur nominale</translation>
  </message>
  <message>
   <source>low mains</source>
   <translation>tension secteur basse</translation>
  </message>
  <message>
   <source>high mains</source>
   <translation>tension secteur haute</translation>
  </message>
  <message>
   <source>at switch-on</source>
   <translation>à la mise sous tension</translation>
  </message>
  <message>
   <source>as in the window: {volts}, {state}</source>
   <translation>comme dans la fenêtre : {volts}, {state}</translation>
  </message>
  <message>
   <source>Print…</source>
   <translation>Imprimer…</translation>
  </message>
  <message>
   <source>Save…</source>
   <translation>Enregistrer…</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Annuler</translation>
  </message>
  <message>
   <source>{width} × {height} pixels</source>
   <translation>{width} × {height} pixels</translation>
  </message>
  <message>
   <source>One page, {width} × {height} mm</source>
   <translation>Une page, {width} × {height} mm</translation>
  </message>
  <message>
   <source>{pages} pages, {width} × {height} mm each, to be joined at their corner marks</source>
   <translation>{pages} pages, {width} × {height} mm chacune, à joindre aux repères d'angle</translation>
  </message>
  <message>
   <source>The picture is not saved.</source>
   <translation>L'image n'est pas enregistrée.</translation>
  </message>
 </context>
 <context>
  <name>Playback</name>
  <message>
   <source>Previous event</source>
   <translation>Événement précédent</translation>
  </message>
  <message>
   <source>Play</source>
   <translation>Lire</translation>
  </message>
  <message>
   <source>Next event</source>
   <translation>Événement suivant</translation>
  </message>
  <message>
   <source>How fast it plays</source>
   <translation>Vitesse de lecture</translation>
  </message>
  <message>
   <source>Leave the instant</source>
   <translation>Quitter l’instant</translation>
  </message>
  <message>
   <source>Show the steady state again (Escape)</source>
   <translation>Montrer à nouveau le régime établi (Échap)</translation>
  </message>
  <message>
   <source>Pause</source>
   <translation>Pause</translation>
  </message>
 </context>
 <context>
  <name>Plot</name>
  <message>
   <source>Warm-up over time</source>
   <translation>Mise en chauffe dans le temps</translation>
  </message>
 </context>
 <context>
  <name>PropertiesPane</name>
  <message>
   <source>{count} selected</source>
   <translation>{count} choisis</translation>
  </message>
  <message>
   <source>Turn each</source>
   <translation>Tourner chacun</translation>
  </message>
  <message>
   <source>Delete</source>
   <translation>Effacer</translation>
  </message>
 </context>
 <context>
  <name>Session</name>
  <message>
   <source>Untitled</source>
   <translation>Sans titre</translation>
  </message>
  <message>
   <source>{name} was not opened.</source>
   <translation>{name} n'a pas été ouvert.</translation>
  </message>
  <message>
   <source>The sheet is not saved.</source>
   <translation>La feuille n'est pas enregistrée.</translation>
  </message>
 </context>
 <context>
  <name>SidePanes</name>
  <message>
   <source>Findings</source>
   <translation>Constats</translation>
  </message>
  <message>
   <source>Properties</source>
   <translation>Propriétés</translation>
  </message>
  <message>
   <source>Add parts</source>
   <translation>Composants</translation>
  </message>
  <message>
   <source>Tables</source>
   <translation>Tableaux</translation>
  </message>
 </context>
 <context>
  <name>SoftStarts</name>
  <message>
   <source>Soft starts are being tried…</source>
   <translation>Essai des démarrages progressifs…</translation>
  </message>
  <message>
   <source>No soft start is needed, or none can be proposed for this supply.</source>
   <translation>Aucun démarrage progressif n’est nécessaire, ou aucun ne peut être proposé pour cette source.</translation>
  </message>
  <message>
   <source>Put it on the sheet</source>
   <translation>Le mettre sur la feuille</translation>
  </message>
 </context>
 <context>
  <name>TablesPane</name>
  <message>
   <source>Heaters</source>
   <translation>Filaments</translation>
  </message>
  <message>
   <source>Supplies</source>
   <translation>Alimentations</translation>
  </message>
  <message>
   <source>Pins</source>
   <translation>Broches</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Composants</translation>
  </message>
  <message>
   <source>Wires</source>
   <translation>Fils</translation>
  </message>
  <message>
   <source>Tables</source>
   <translation>Tableaux</translation>
  </message>
  <message>
   <source>None on this sheet.</source>
   <translation>Aucun sur cette feuille.</translation>
  </message>
  <message>
   <source>Add a part to the table</source>
   <translation>Ajouter un composant au tableau</translation>
  </message>
  <message>
   <source>add: ECC83, 47R 5 W, relay…</source>
   <translation>ajouter : ECC83, 47R 5 W, relais…</translation>
  </message>
  <message>
   <source>Add a wire to the table</source>
   <translation>Ajouter un fil au tableau</translation>
  </message>
  <message>
   <source>add: T1.a V1.4, or V1.4-5 for a strap</source>
   <translation>ajouter : T1.a V1.4, ou V1.4-5 pour un pont</translation>
  </message>
 </context>
 <context>
  <name>TimeSlider</name>
  <message>
   <source>Seconds after switch-on</source>
   <translation>Secondes après la mise sous tension</translation>
  </message>
  <message>
   <source>and {count} more</source>
   <translation>et {count} autres</translation>
  </message>
 </context>
 <context>
  <name>TitleLine</name>
  <message>
   <source>Panes</source>
   <translation>Volets</translation>
  </message>
  <message>
   <source>Move the pane {name}</source>
   <translation>Déplacer le volet {name}</translation>
  </message>
  <message>
   <source>Close the pane {name}</source>
   <translation>Fermer le volet {name}</translation>
  </message>
  <message>
   <source>Sheet title</source>
   <translation>Titre de la feuille</translation>
  </message>
  <message>
   <source>Untitled</source>
   <translation>Sans titre</translation>
  </message>
  <message>
   <source>Double click or F2 renames the sheet</source>
   <translation>Un double clic ou F2 renomme la feuille</translation>
  </message>
 </context>
 <context>
  <name>Warmup</name>
  <message>
   <source>supply current</source>
   <translation>courant de la source</translation>
  </message>
  <message>
   <source>supply volts</source>
   <translation>tension de la source</translation>
  </message>
  <message>
   <source>heater volts</source>
   <translation>tension de chauffage</translation>
  </message>
  <message>
   <source>cathodes</source>
   <translation>cathodes</translation>
  </message>
  <message>
   <source>heaters</source>
   <translation>filaments</translation>
  </message>
  <message>
   <source>thermistors</source>
   <translation>thermistances</translation>
  </message>
  <message>
   <source>thermistor ohms</source>
   <translation>ohms de la thermistance</translation>
  </message>
  <message>
   <source>relays</source>
   <translation>relais</translation>
  </message>
  <message>
   <source>limit of {id}</source>
   <translation>limite de {id}</translation>
  </message>
  <message>
   <source>1.5 × rated</source>
   <translation>1,5 × nominal</translation>
  </message>
  <message>
   <source>Ready: the cathode has made {share} % of its rise from the room to its rated temperature.</source>
   <translation>Prêt : la cathode a fait {share} % de sa montée de la température ambiante à sa température nominale.</translation>
  </message>
  <message>
   <source>The warm-up times of {ids} are estimates by class.</source>
   <translation>Les temps de chauffe de {ids} sont estimés d’après la classe.</translation>
  </message>
 </context>
 <context>
  <name>WarmupPlot</name>
  <message>
   <source>limit of {id}</source>
   <translation>limite de {id}</translation>
  </message>
  <message>
   <source>Supply current</source>
   <translation>Courant de la source</translation>
  </message>
  <message>
   <source>Supply volts</source>
   <translation>Tension de la source</translation>
  </message>
  <message>
   <source>Heater volts</source>
   <translation>Tension de chauffage</translation>
  </message>
  <message>
   <source>1.5 × rated</source>
   <translation>1,5 × nominal</translation>
  </message>
  <message>
   <source>Cathodes</source>
   <translation>Cathodes</translation>
  </message>
  <message>
   <source>Thermistors</source>
   <translation>Thermistances</translation>
  </message>
  <message>
   <source>Relays pulled in</source>
   <translation>Relais collés</translation>
  </message>
  <message>
   <source>{names} and {count} more</source>
   <translation>{names} et {count} autres</translation>
  </message>
 </context>
 <context>
  <name>actions</name>
  <message>
   <source>&amp;Add a part</source>
   <translation>&amp;Ajouter un composant</translation>
  </message>
  <message>
   <source>Add a part</source>
   <translation>Ajouter un composant</translation>
  </message>
  <message>
   <source>&amp;Delete</source>
   <translation>&amp;Effacer</translation>
  </message>
  <message>
   <source>&amp;Turn right</source>
   <translation>Tourner à &amp;droite</translation>
  </message>
  <message>
   <source>Turn &amp;left</source>
   <translation>Tourner à &amp;gauche</translation>
  </message>
  <message>
   <source>&amp;Select all</source>
   <translation>&amp;Tout choisir</translation>
  </message>
  <message>
   <source>&amp;Properties</source>
   <translation>&amp;Propriétés</translation>
  </message>
  <message>
   <source>&amp;Fit the sheet</source>
   <translation>A&amp;juster la feuille</translation>
  </message>
  <message>
   <source>Fit the sheet</source>
   <translation>Ajuster la feuille</translation>
  </message>
  <message>
   <source>Zoom &amp;in</source>
   <translation>A&amp;grandir</translation>
  </message>
  <message>
   <source>Zoom &amp;out</source>
   <translation>&amp;Réduire</translation>
  </message>
  <message>
   <source>Zoom in</source>
   <translation>Agrandir</translation>
  </message>
  <message>
   <source>Zoom out</source>
   <translation>Réduire</translation>
  </message>
  <message>
   <source>&amp;Actual size</source>
   <translation>Taille &amp;réelle</translation>
  </message>
  <message>
   <source>Actual size</source>
   <translation>Taille réelle</translation>
  </message>
  <message>
   <source>Turn right &amp;as one</source>
   <translation>Tourner &amp;ensemble à droite</translation>
  </message>
  <message>
   <source>All selected parts about their common middle.</source>
   <translation>Tous les composants choisis autour de leur milieu commun.</translation>
  </message>
  <message>
   <source>Turn left as &amp;one</source>
   <translation>Tourner ense&amp;mble à gauche</translation>
  </message>
  <message>
   <source>&amp;Mirror left to right</source>
   <translation>&amp;Miroir de gauche à droite</translation>
  </message>
  <message>
   <source>A socket is only moved: its pins cannot change sides.</source>
   <translation>Un support est seulement déplacé : ses broches ne peuvent changer de côté.</translation>
  </message>
  <message>
   <source>Mirror &amp;upside down</source>
   <translation>Miroir de &amp;haut en bas</translation>
  </message>
  <message>
   <source>&amp;Left edges</source>
   <translation>Bords &amp;gauches</translation>
  </message>
  <message>
   <source>&amp;Centres</source>
   <translation>&amp;Centres</translation>
  </message>
  <message>
   <source>&amp;Right edges</source>
   <translation>Bords &amp;droits</translation>
  </message>
  <message>
   <source>&amp;Top edges</source>
   <translation>Bords du &amp;haut</translation>
  </message>
  <message>
   <source>&amp;Middles</source>
   <translation>&amp;Milieux</translation>
  </message>
  <message>
   <source>&amp;Bottom edges</source>
   <translation>Bords du &amp;bas</translation>
  </message>
  <message>
   <source>Even gaps &amp;across</source>
   <translation>Écarts égaux en &amp;largeur</translation>
  </message>
  <message>
   <source>Even gaps &amp;down</source>
   <translation>Écarts égaux en h&amp;auteur</translation>
  </message>
  <message>
   <source>Put on the &amp;grid</source>
   <translation>Poser sur la &amp;grille</translation>
  </message>
  <message>
   <source>&amp;Number the tubes</source>
   <translation>&amp;Numéroter les tubes</translation>
  </message>
  <message>
   <source>V1, V2… from the supply along the heater wiring.</source>
   <translation>V1, V2… depuis l'alimentation le long du câblage de chauffage.</translation>
  </message>
  <message>
   <source>Number the &amp;selected tubes</source>
   <translation>Numéroter les tubes &amp;choisis</translation>
  </message>
  <message>
   <source>Along the heater wiring; all other ids stay.</source>
   <translation>Le long du câblage de chauffage ; tous les autres repères restent.</translation>
  </message>
  <message>
   <source>S&amp;wap the tubes of two sockets</source>
   <translation>É&amp;changer les tubes de deux supports</translation>
  </message>
  <message>
   <source>The wires stay; where pins differ you are told.</source>
   <translation>Les fils restent ; là où les broches diffèrent, c'est dit.</translation>
  </message>
  <message>
   <source>Swap the &amp;places of two parts</source>
   <translation>Échanger les &amp;places de deux composants</translation>
  </message>
  <message>
   <source>The wires follow their parts.</source>
   <translation>Les fils suivent leurs composants.</translation>
  </message>
  <message>
   <source>Show the &amp;grid</source>
   <translation>Montrer la &amp;grille</translation>
  </message>
  <message>
   <source>&amp;Keep to the grid</source>
   <translation>&amp;Coller à la grille</translation>
  </message>
  <message>
   <source>Alt, held while dragging, does the opposite.</source>
   <translation>Alt, tenu en tirant, fait le contraire.</translation>
  </message>
  <message>
   <source>The selected sockets, or all that are not wired, in parallel or in series.</source>
   <translation>Les supports choisis, ou tous ceux qui ne sont pas câblés, en parallèle ou en série.</translation>
  </message>
  <message>
   <source>&amp;Wire a chain…</source>
   <translation>&amp;Câbler une chaîne…</translation>
  </message>
  <message>
   <source>Cu&amp;t</source>
   <translation>Co&amp;uper</translation>
  </message>
  <message>
   <source>&amp;Copy</source>
   <translation>&amp;Copier</translation>
  </message>
  <message>
   <source>The parts and the wires between them, as the text of a sheet file.</source>
   <translation>Les composants et les fils entre eux, comme texte d'un fichier de feuille.</translation>
  </message>
  <message>
   <source>&amp;Paste</source>
   <translation>C&amp;oller</translation>
  </message>
  <message>
   <source>At the pointer; otherwise beside where it was copied.</source>
   <translation>Au pointeur ; sinon à côté de ce qui a été copié.</translation>
  </message>
  <message>
   <source>D&amp;uplicate</source>
   <translation>&amp;Dupliquer</translation>
  </message>
  <message>
   <source>Select what is co&amp;nnected</source>
   <translation>Choisir ce qui est re&amp;lié</translation>
  </message>
  <message>
   <source>Everything that wires join to what is selected.</source>
   <translation>Tout ce que des fils relient au choix.</translation>
  </message>
  <message>
   <source>Select the same strin&amp;g</source>
   <translation>Choisir la même chaî&amp;ne</translation>
  </message>
  <message>
   <source>All heaters that carry the same current.</source>
   <translation>Tous les filaments que traverse le même courant.</translation>
  </message>
  <message>
   <source>&amp;Find…</source>
   <translation>&amp;Chercher…</translation>
  </message>
  <message>
   <source>By id, type, rating, or words of a note.</source>
   <translation>Par repère, type, valeur ou mots d'une note.</translation>
  </message>
  <message>
   <source>Menu of what is selected</source>
   <translation>Menu du choix</translation>
  </message>
  <message>
   <source>&amp;Replace the type…</source>
   <translation>&amp;Remplacer le type…</translation>
  </message>
  <message>
   <source>Another tube type, with what it means for the wires.</source>
   <translation>Un autre type de tube, avec ce qu'il change pour les fils.</translation>
  </message>
  <message>
   <source>Arrows, or a pin's name, choose one; Enter begins a wire there.</source>
   <translation>Les flèches, ou le nom d'une broche, en choisissent une ; Entrée y commence un fil.</translation>
  </message>
  <message>
   <source>&amp;Pins of the part</source>
   <translation>&amp;Broches du composant</translation>
  </message>
  <message>
   <source>Next &amp;wire on the part or pin</source>
   <translation>&amp;Fil suivant du composant ou de la broche</translation>
  </message>
  <message>
   <source>Previous w&amp;ire on the part or pin</source>
   <translation>F&amp;il précédent du composant ou de la broche</translation>
  </message>
  <message>
   <source>Part to the &amp;left</source>
   <translation>Composant à &amp;gauche</translation>
  </message>
  <message>
   <source>Part to the &amp;right</source>
   <translation>Composant à &amp;droite</translation>
  </message>
  <message>
   <source>Part &amp;above</source>
   <translation>Composant au-de&amp;ssus</translation>
  </message>
  <message>
   <source>Part &amp;below</source>
   <translation>Composant au-desso&amp;us</translation>
  </message>
  <message>
   <source>The arrows then move this piece of the selected wire.</source>
   <translation>Les flèches déplacent alors ce tronçon du fil choisi.</translation>
  </message>
  <message>
   <source>Next piece of the &amp;wire</source>
   <translation>Tronçon &amp;suivant du fil</translation>
  </message>
  <message>
   <source>Previous piece of the w&amp;ire</source>
   <translation>Tronçon &amp;précédent du fil</translation>
  </message>
  <message>
   <source>Let the route &amp;find its way</source>
   <translation>Laisser &amp;trouver le trajet</translation>
  </message>
  <message>
   <source>Forgets the corners that were set for the selected wires.</source>
   <translation>Oublie les coudes placés pour les fils choisis.</translation>
  </message>
  <message>
   <source>Draw wires in &amp;pairs</source>
   <translation>Tirer les fils par &amp;paires</translation>
  </message>
  <message>
   <source>A wire brings the one from the other end of the heater along, twisted with it.</source>
   <translation>Un fil amène avec lui celui de l'autre bout du filament, torsadé.</translation>
  </message>
  <message>
   <source>T&amp;wist</source>
   <translation>&amp;Torsader</translation>
  </message>
  <message>
   <source>Twists two selected wires between the same two parts.</source>
   <translation>Torsade deux fils choisis entre les deux mêmes composants.</translation>
  </message>
  <message>
   <source>&amp;Untwist</source>
   <translation>&amp;Détorsader</translation>
  </message>
  <message>
   <source>Split the wire with a &amp;joint</source>
   <translation>Couper le fil par une &amp;cosse</translation>
  </message>
  <message>
   <source>Take the joint &amp;out</source>
   <translation>Ô&amp;ter la cosse</translation>
  </message>
  <message>
   <source>Its two wires become one.</source>
   <translation>Ses deux fils n'en font plus qu'un.</translation>
  </message>
 </context>
 <context>
  <name>adding</name>
  <message>
   <source>What can be added</source>
   <translation>Ce que l'on peut ajouter</translation>
  </message>
  <message>
   <source>add: ECC83, 10R, relay…</source>
   <translation>ajouter : ECC83, 10R, relais…</translation>
  </message>
  <message>
   <source>Add a part</source>
   <translation>Ajouter un composant</translation>
  </message>
  <message>
   <source>Type a tube, a value or a word, then Enter. The key / brings you here.</source>
   <translation>Taper un tube, une valeur ou un mot, puis Entrée. La touche / mène ici.</translation>
  </message>
 </context>
 <context>
  <name>areas</name>
  <message>
   <source>Ne&amp;xt area</source>
   <translation>&amp;Zone suivante</translation>
  </message>
  <message>
   <source>Pre&amp;vious area</source>
   <translation>Zone &amp;précédente</translation>
  </message>
 </context>
 <context>
  <name>canvas</name>
  <message>
   <source>Mirror {what}</source>
   <translation>Mettre {what} en miroir</translation>
  </message>
  <message>
   <source>Turn {what} as one</source>
   <translation>Tourner {what} ensemble</translation>
  </message>
  <message>
   <source>Align {what}</source>
   <translation>Aligner {what}</translation>
  </message>
  <message>
   <source>Distribute {what}</source>
   <translation>Répartir {what}</translation>
  </message>
  <message>
   <source>Put {what} on the grid</source>
   <translation>Poser {what} sur la grille</translation>
  </message>
  <message>
   <source>Number the selected tubes</source>
   <translation>Numéroter les tubes choisis</translation>
  </message>
  <message>
   <source>Number the tubes</source>
   <translation>Numéroter les tubes</translation>
  </message>
  <message>
   <source>Swap the tubes of {what}</source>
   <translation>Échanger les tubes de {what}</translation>
  </message>
  <message>
   <source>Swap the places of {what}</source>
   <translation>Échanger les places de {what}</translation>
  </message>
  <message>
   <source>Line &amp;up</source>
   <translation>A&amp;ligner</translation>
  </message>
  <message>
   <source>Find</source>
   <translation>Chercher</translation>
  </message>
  <message>
   <source>id, type, rating, note</source>
   <translation>repère, type, valeur, note</translation>
  </message>
  <message>
   <source>Find on the drawing</source>
   <translation>Chercher sur le dessin</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>rien</translation>
  </message>
  <message>
   <source>{number} of {count}</source>
   <translation>{number} sur {count}</translation>
  </message>
  <message>
   <source>pulled in</source>
   <translation>collé</translation>
  </message>
  <message>
   <source>released</source>
   <translation>relâché</translation>
  </message>
  <message>
   <source>pulled</source>
   <translation>retiré</translation>
  </message>
  <message>
   <source>type not known</source>
   <translation>type inconnu</translation>
  </message>
  <message>
   <source>not solved</source>
   <translation>non résolu</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Remarque</translation>
  </message>
  <message>
   <source>Ctrl+Enter keeps it, Escape keeps what was there.</source>
   <translation>Ctrl+Entrée le garde, Échap garde ce qui y était.</translation>
  </message>
  <message>
   <source>Delete {what}</source>
   <translation>Effacer {what}</translation>
  </message>
  <message>
   <source>Write {what}</source>
   <translation>Écrire {what}</translation>
  </message>
  <message>
   <source>more than {factor} times its volts</source>
   <translation>plus de {factor} fois sa tension</translation>
  </message>
  <message>
   <source>no volts at this instant</source>
   <translation>pas de tension à cet instant</translation>
  </message>
  <message>
   <source>still cold, no glow yet</source>
   <translation>encore froid, pas encore de lueur</translation>
  </message>
  <message>
   <source>warming up, not judged yet</source>
   <translation>en chauffe, pas encore jugé</translation>
  </message>
  <message>
   <source>ready, within tolerance</source>
   <translation>prêt, dans la tolérance</translation>
  </message>
  <message>
   <source>over</source>
   <translation>au-dessus</translation>
  </message>
  <message>
   <source>under</source>
   <translation>au-dessous</translation>
  </message>
  <message>
   <source>heater {kelvin}</source>
   <translation>filament {kelvin}</translation>
  </message>
  <message>
   <source>cathode {kelvin}</source>
   <translation>cathode {kelvin}</translation>
  </message>
  <message>
   <source>above its rating, which is judged once the heaters are hot</source>
   <translation>au-dessus du nominal, ce qui n’est jugé qu’une fois les filaments chauds</translation>
  </message>
  <message>
   <source>mains off</source>
   <translation>secteur coupé</translation>
  </message>
  <message>
   <source>gives nothing while the mains is off</source>
   <translation>ne donne rien tant que le secteur est coupé</translation>
  </message>
  <message>
   <source>cut out</source>
   <translation>coupée</translation>
  </message>
  <message>
   <source>gives nothing until it tries again by itself</source>
   <translation>ne donne rien avant de réessayer d’elle-même</translation>
  </message>
  <message>
   <source>latched</source>
   <translation>verrouillée</translation>
  </message>
  <message>
   <source>gives nothing until it is switched off and on</source>
   <translation>ne donne rien avant d’être arrêtée et remise en marche</translation>
  </message>
  <message>
   <source>at limit</source>
   <translation>à sa limite</translation>
  </message>
  <message>
   <source>gives no more than its limit</source>
   <translation>ne donne pas plus que sa limite</translation>
  </message>
  <message>
   <source>Wires are copied together with the parts at both ends: choose the parts as well.</source>
   <translation>Les fils se copient avec les composants de leurs deux bouts : choisir aussi les composants.</translation>
  </message>
  <message>
   <source>Cut {what}</source>
   <translation>Couper {what}</translation>
  </message>
  <message>
   <source>Paste {what}</source>
   <translation>Coller {what}</translation>
  </message>
  <message>
   <source>Duplicate {what}</source>
   <translation>Dupliquer {what}</translation>
  </message>
  <message>
   <source>New type</source>
   <translation>Nouveau type</translation>
  </message>
  <message>
   <source>Replace {what} by</source>
   <translation>Remplacer {what} par</translation>
  </message>
  <message>
   <source>Type a tube type; Enter puts it into the socket.</source>
   <translation>Taper un type de tube ; Entrée le met dans le support.</translation>
  </message>
  <message>
   <source>No tube type is called that.</source>
   <translation>Aucun type de tube ne s'appelle ainsi.</translation>
  </message>
  <message>
   <source>Replace {what} by {type}</source>
   <translation>Remplacer {what} par {type}</translation>
  </message>
  <message>
   <source>and {count} more</source>
   <translation>et {count} de plus</translation>
  </message>
  <message>
   <source>Resize {what}</source>
   <translation>Changer la taille de {what}</translation>
  </message>
  <message>
   <source>empty note</source>
   <translation>note vide</translation>
  </message>
  <message>
   <source>Nothing selected</source>
   <translation>Rien de choisi</translation>
  </message>
  <message>
   <source>Wire from {start}: go to where it ends.</source>
   <translation>Fil de {start} : aller là où il arrive.</translation>
  </message>
  <message>
   <source>Wire from {start} to {pin}</source>
   <translation>Fil de {start} à {pin}</translation>
  </message>
  <message>
   <source>{pin}, heater</source>
   <translation>{pin}, filament</translation>
  </message>
  <message>
   <source>wires: {ids}</source>
   <translation>fils : {ids}</translation>
  </message>
  <message>
   <source>no wire</source>
   <translation>aucun fil</translation>
  </message>
  <message>
   <source>Seen from the wiring side.</source>
   <translation>Vu du côté câblage.</translation>
  </message>
  <message>
   <source>Sheet</source>
   <translation>Feuille</translation>
  </message>
  <message>
   <source>No wires here.</source>
   <translation>Pas de fil ici.</translation>
  </message>
  <message>
   <source>A wire needs two different terminals.</source>
   <translation>Un fil demande deux bornes différentes.</translation>
  </message>
  <message>
   <source>Wires are drawn in pairs.</source>
   <translation>Les fils se tirent par paires.</translation>
  </message>
  <message>
   <source>Wires are drawn singly.</source>
   <translation>Les fils se tirent un à un.</translation>
  </message>
  <message>
   <source>Lead {id} another way</source>
   <translation>Mener {id} autrement</translation>
  </message>
  <message>
   <source>Let {what} find its way</source>
   <translation>Laisser {what} trouver son trajet</translation>
  </message>
  <message>
   <source>Piece {number} of {count}: the arrows move it.</source>
   <translation>Tronçon {number} sur {count} : les flèches le déplacent.</translation>
  </message>
  <message>
   <source>Twist {first} and {second}</source>
   <translation>Torsader {first} et {second}</translation>
  </message>
  <message>
   <source>Untwist {what}</source>
   <translation>Détorsader {what}</translation>
  </message>
  <message>
   <source>Split {id}</source>
   <translation>Couper {id}</translation>
  </message>
  <message>
   <source>Take {what} out</source>
   <translation>Ôter {what}</translation>
  </message>
  <message>
   <source>{start} has no second end: one wire is drawn.</source>
   <translation>{start} n'a pas de second bout : un seul fil est dessiné.</translation>
  </message>
  <message>
   <source>Twisted pair from {start} and {second}</source>
   <translation>Paire torsadée de {start} et {second}</translation>
  </message>
  <message>
   <source>{end} has no second end: one wire is drawn.</source>
   <translation>{end} n'a pas de second bout : un seul fil est dessiné.</translation>
  </message>
  <message>
   <source>{pair} to {end} and {second}</source>
   <translation>{pair} vers {end} et {second}</translation>
  </message>
  <message>
   <source>a wire along its route</source>
   <translation>un fil sur son trajet</translation>
  </message>
  <message>
   <source>Nothing is called that.</source>
   <translation>Rien ne s'appelle ainsi.</translation>
  </message>
  <message>
   <source>Type the terminal where the wire from {start} ends.</source>
   <translation>Taper la borne où arrive le fil de {start}.</translation>
  </message>
  <message>
   <source>There is no part {id}.</source>
   <translation>Il n'y a pas de composant {id}.</translation>
  </message>
  <message>
   <source>{id} has no terminal {name}.</source>
   <translation>{id} n'a pas de borne {name}.</translation>
  </message>
  <message>
   <source>Wire a pair from {start} to {end}</source>
   <translation>Paire de {start} à {end}</translation>
  </message>
  <message>
   <source>1 part</source>
   <translation>1 composant</translation>
  </message>
  <message>
   <source>{count} parts</source>
   <translation>{count} composants</translation>
  </message>
  <message>
   <source>1 wire</source>
   <translation>1 fil</translation>
  </message>
  <message>
   <source>{count} wires</source>
   <translation>{count} fils</translation>
  </message>
  <message>
   <source> and </source>
   <translation> et </translation>
  </message>
  <message>
   <source>Move {what}</source>
   <translation>Déplacer {what}</translation>
  </message>
  <message>
   <source>Turn {what}</source>
   <translation>Tourner {what}</translation>
  </message>
  <message>
   <source>Add {what}</source>
   <translation>Ajouter {what}</translation>
  </message>
  <message>
   <source>Strap {start} to {end}</source>
   <translation>Ponter {start} et {end}</translation>
  </message>
  <message>
   <source>Wire {start} to {end}</source>
   <translation>Fil de {start} à {end}</translation>
  </message>
  <message>
   <source>not heated</source>
   <translation>non chauffé</translation>
  </message>
  <message>
   <source>not yet solved</source>
   <translation>pas encore résolu</translation>
  </message>
  <message>
   <source>within tolerance</source>
   <translation>dans la tolérance</translation>
  </message>
  <message>
   <source>{start} to {end}</source>
   <translation>{start} à {end}</translation>
  </message>
  <message>
   <source>strap</source>
   <translation>pont</translation>
  </message>
 </context>
 <context>
  <name>chain</name>
  <message>
   <source>{length} of wire</source>
   <translation>{length} de fil</translation>
  </message>
  <message>
   <source>Pairs in series on {volts}</source>
   <translation>Paires en série sous {volts}</translation>
  </message>
  <message>
   <source>Series string</source>
   <translation>Chaîne série</translation>
  </message>
  <message>
   <source>Parallel chain at {volts}</source>
   <translation>Chaîne parallèle sous {volts}</translation>
  </message>
  <message>
   <source>Wire a string of {count}</source>
   <translation>Câbler une chaîne série de {count}</translation>
  </message>
  <message>
   <source>Wire {count} in pairs</source>
   <translation>Câbler {count} par paires</translation>
  </message>
  <message>
   <source>Wire a chain of {count}</source>
   <translation>Câbler une chaîne de {count}</translation>
  </message>
  <message>
   <source>a new winding</source>
   <translation>un nouvel enroulement</translation>
  </message>
  <message>
   <source>a new DC supply</source>
   <translation>une nouvelle alimentation continue</translation>
  </message>
  <message>
   <source>one side</source>
   <translation>un côté</translation>
  </message>
  <message>
   <source>{side} to the chassis</source>
   <translation>{side} au châssis</translation>
  </message>
  <message>
   <source>centre tap to the chassis</source>
   <translation>point milieu au châssis</translation>
  </message>
  <message>
   <source>two equal resistors to the chassis</source>
   <translation>deux résistances égales au châssis</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>rien</translation>
  </message>
  <message>
   <source>by the current, mm²</source>
   <translation>selon le courant, mm²</translation>
  </message>
  <message>
   <source>by the current, AWG</source>
   <translation>selon le courant, AWG</translation>
  </message>
  <message>
   <source>the heaviest first</source>
   <translation>les plus forts d'abord</translation>
  </message>
  <message>
   <source>the nearest first</source>
   <translation>les plus proches d'abord</translation>
  </message>
  <message>
   <source>by their numbers</source>
   <translation>par numéros</translation>
  </message>
  <message>
   <source>low cathodes last</source>
   <translation>cathodes basses en dernier</translation>
  </message>
  <message>
   <source>my own order</source>
   <translation>mon ordre</translation>
  </message>
 </context>
 <context>
  <name>choices</name>
  <message>
   <source>constant-current</source>
   <translation>courant constant</translation>
  </message>
  <message>
   <source>hiccup</source>
   <translation>par à-coups</translation>
  </message>
  <message>
   <source>foldback</source>
   <translation>repli</translation>
  </message>
  <message>
   <source>latch-off</source>
   <translation>coupure définitive</translation>
  </message>
  <message>
   <source>bridge</source>
   <translation>pont de Graetz</translation>
  </message>
  <message>
   <source>centre-tap</source>
   <translation>point milieu</translation>
  </message>
  <message>
   <source>quick</source>
   <translation>rapide</translation>
  </message>
  <message>
   <source>time-lag</source>
   <translation>temporisé</translation>
  </message>
 </context>
 <context>
  <name>clipboard</name>
  <message>
   <source>This is too much to be copied at once.</source>
   <translation>C'est trop à copier d'un coup.</translation>
  </message>
  <message>
   <source>There are no parts on the clipboard.</source>
   <translation>Il n'y a pas de composants dans le presse-papiers.</translation>
  </message>
  <message>
   <source>There is nothing on the clipboard that could be pasted.</source>
   <translation>Il n'y a rien dans le presse-papiers qui puisse être collé.</translation>
  </message>
  <message>
   <source>What is on the clipboard is too large for a sheet.</source>
   <translation>Ce qui est dans le presse-papiers est trop grand pour une feuille.</translation>
  </message>
  <message>
   <source>The text on the clipboard is no part of a sheet. Copy parts of a drawing.</source>
   <translation>Le texte du presse-papiers n'est pas un morceau de feuille. Copier des composants d'un dessin.</translation>
  </message>
  <message>
   <source>clipboard</source>
   <translation>presse-papiers</translation>
  </message>
  <message>
   <source>The text on the clipboard cannot be pasted: {why}</source>
   <translation>Le texte du presse-papiers ne peut être collé : {why}</translation>
  </message>
 </context>
 <context>
  <name>crash</name>
  <message>
   <source>Something unexpected happened: {what}. Your sheet is as it was before.</source>
   <translation>Un imprévu est arrivé : {what}. La feuille est comme avant.</translation>
  </message>
  <message>
   <source>Details are in {file}.</source>
   <translation>Les détails sont dans {file}.</translation>
  </message>
 </context>
 <context>
  <name>facts</name>
  <message>
   <source>section {pins}</source>
   <translation>section {pins}</translation>
  </message>
  <message>
   <source>volts may be off by</source>
   <translation>écart de tension permis</translation>
  </message>
  <message>
   <source>current may be off by</source>
   <translation>écart de courant permis</translation>
  </message>
  <message>
   <source>made between</source>
   <translation>fabriqué entre</translation>
  </message>
  <message>
   <source>heater above cathode, peak</source>
   <translation>filament &gt; cathode, crête</translation>
  </message>
  <message>
   <source>heater above cathode, DC</source>
   <translation>filament &gt; cathode, CC</translation>
  </message>
  <message>
   <source>heater below cathode, peak</source>
   <translation>filament &lt; cathode, crête</translation>
  </message>
  <message>
   <source>heater below cathode, DC</source>
   <translation>filament &lt; cathode, CC</translation>
  </message>
  <message>
   <source>heater to cathode, at most</source>
   <translation>filament–cathode, au plus</translation>
  </message>
  <message>
   <source>warm-up time</source>
   <translation>temps de chauffe</translation>
  </message>
  <message>
   <source>hot to cold</source>
   <translation>chaud sur froid</translation>
  </message>
 </context>
 <context>
  <name>fields</name>
  <message>
   <source>{value} (default)</source>
   <translation>{value} (par défaut)</translation>
  </message>
  <message>
   <source>not given</source>
   <translation>non donné</translation>
  </message>
  <message>
   <source>nominal mains</source>
   <translation>tension secteur nominale</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>catalogue</translation>
  </message>
  <message>
   <source>75 % of coil volts</source>
   <translation>75 % de la tension de bobine</translation>
  </message>
  <message>
   <source>10 % of coil volts</source>
   <translation>10 % de la tension de bobine</translation>
  </message>
  <message>
   <source>default</source>
   <translation>par défaut</translation>
  </message>
  <message>
   <source>Pair {first} and {second}</source>
   <translation>Paire {first} et {second}</translation>
  </message>
  <message>
   <source>title</source>
   <translation>titre</translation>
  </message>
  <message>
   <source>The sheet</source>
   <translation>La feuille</translation>
  </message>
  <message>
   <source>id</source>
   <translation>repère</translation>
  </message>
  <message>
   <source>none (ideal strap)</source>
   <translation>aucun (pont idéal)</translation>
  </message>
  <message>
   <source>from</source>
   <translation>de</translation>
  </message>
  <message>
   <source>to</source>
   <translation>à</translation>
  </message>
  <message>
   <source>gauge</source>
   <translation>calibre</translation>
  </message>
  <message>
   <source>colour</source>
   <translation>couleur</translation>
  </message>
  <message>
   <source>twisted pair</source>
   <translation>paire torsadée</translation>
  </message>
  <message>
   <source>Wire {id}</source>
   <translation>Fil {id}</translation>
  </message>
  <message>
   <source>turned by</source>
   <translation>tourné de</translation>
  </message>
  <message>
   <source>Nothing is entered; {label} cannot be left out.</source>
   <translation>Rien n'est saisi ; {label} ne peut manquer.</translation>
  </message>
  <message>
   <source>Rename sheet</source>
   <translation>Renommer la feuille</translation>
  </message>
  <message>
   <source>Set {label}</source>
   <translation>Régler {label}</translation>
  </message>
  <message>
   <source>Rename {id}</source>
   <translation>Renommer {id}</translation>
  </message>
  <message>
   <source>Set {id} {label}</source>
   <translation>{id} : régler {label}</translation>
  </message>
  <message>
   <source>Two numbers are expected here, such as 120, 40.</source>
   <translation>Deux nombres sont attendus ici, par exemple 120, 40.</translation>
  </message>
  <message>
   <source>Drag left or right, or press Alt+Up and Alt+Down.</source>
   <translation>Tirer à gauche ou à droite, ou presser Alt+Haut et Alt+Bas.</translation>
  </message>
 </context>
 <context>
  <name>findings</name>
  <message>
   <source>{mend} (helps)</source>
   <translation>{mend} (aide)</translation>
  </message>
  <message>
   <source>Mend: {mend}</source>
   <translation>Remède : {mend}</translation>
  </message>
  <message>
   <source>Fault</source>
   <translation>Défaut</translation>
  </message>
  <message>
   <source>Caution</source>
   <translation>Avertissement</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Remarque</translation>
  </message>
  <message>
   <source>{card} To choose from: {mends}.</source>
   <translation>{card} Au choix : {mends}.</translation>
  </message>
  <message>
   <source>nominal</source>
   <translation>secteur nominal</translation>
  </message>
  <message>
   <source>low mains</source>
   <translation>tension secteur basse</translation>
  </message>
  <message>
   <source>high mains</source>
   <translation>tension secteur haute</translation>
  </message>
  <message>
   <source>after a dip</source>
   <translation>après une coupure</translation>
  </message>
  <message>
   <source>cold</source>
   <translation>froid</translation>
  </message>
  <message>
   <source>chosen</source>
   <translation>choisie</translation>
  </message>
  <message>
   <source>switch-on</source>
   <translation>mise sous tension</translation>
  </message>
  <message>
   <source>the mains chosen above</source>
   <translation>la tension secteur choisie plus haut</translation>
  </message>
  <message>
   <source>at {conditions}</source>
   <translation>sous {conditions}</translation>
  </message>
  <message>
   <source>nominal mains</source>
   <translation>tension secteur nominale</translation>
  </message>
  <message>
   <source>low and nominal mains</source>
   <translation>tension secteur basse et nominale</translation>
  </message>
  <message>
   <source>low and high mains</source>
   <translation>tension secteur basse et haute</translation>
  </message>
  <message>
   <source>nominal and high mains</source>
   <translation>tension secteur nominale et haute</translation>
  </message>
  <message>
   <source>low, nominal and high mains</source>
   <translation>tension secteur basse, nominale et haute</translation>
  </message>
  <message>
   <source>no findings</source>
   <translation>aucun constat</translation>
  </message>
  <message>
   <source>1 fault</source>
   <translation>1 défaut</translation>
  </message>
  <message>
   <source>{count} faults</source>
   <translation>{count} défauts</translation>
  </message>
  <message>
   <source>1 caution</source>
   <translation>1 avertissement</translation>
  </message>
  <message>
   <source>{count} cautions</source>
   <translation>{count} avertissements</translation>
  </message>
  <message>
   <source>1 note</source>
   <translation>1 remarque</translation>
  </message>
  <message>
   <source>{count} notes</source>
   <translation>{count} remarques</translation>
  </message>
  <message>
   <source>{count} would appear, {gone} would vanish</source>
   <translation>{count} apparaîtraient, {gone} disparaîtraient</translation>
  </message>
  <message>
   <source>What would change</source>
   <translation>Ce qui changerait</translation>
  </message>
 </context>
 <context>
  <name>gestures</name>
  <message>
   <source>Drag from pin to pin</source>
   <translation>Tirer de broche en broche</translation>
  </message>
  <message>
   <source>a wire; on one socket a strap</source>
   <translation>un fil ; sur un même support un pont</translation>
  </message>
  <message>
   <source>Shift while a wire is drawn</source>
   <translation>Maj pendant qu'on tire un fil</translation>
  </message>
  <message>
   <source>a joint where it is let go in the open</source>
   <translation>une cosse là où on le lâche dans le vide</translation>
  </message>
  <message>
   <source>Drag a part</source>
   <translation>Tirer un composant</translation>
  </message>
  <message>
   <source>moves it on the grid; with Alt off the grid</source>
   <translation>le déplace sur la grille ; avec Alt hors grille</translation>
  </message>
  <message>
   <source>Click a part or a wire</source>
   <translation>Cliquer un composant ou un fil</translation>
  </message>
  <message>
   <source>selects it; with Shift adds it or takes it away</source>
   <translation>le choisit ; avec Maj l'ajoute ou l'ôte</translation>
  </message>
  <message>
   <source>Drag on the paper</source>
   <translation>Tirer sur le papier</translation>
  </message>
  <message>
   <source>selects what the band touches; with Shift adds to what is selected</source>
   <translation>choisit ce que le cadre touche ; avec Maj ajoute au choix</translation>
  </message>
  <message>
   <source>Double click a part or a wire</source>
   <translation>Double-cliquer un composant ou un fil</translation>
  </message>
  <message>
   <source>its properties</source>
   <translation>ses propriétés</translation>
  </message>
  <message>
   <source>Double click a note</source>
   <translation>Double-cliquer une note</translation>
  </message>
  <message>
   <source>writes it; Ctrl+Enter keeps it, Escape keeps what was there</source>
   <translation>l'écrit ; Ctrl+Entrée le garde, Échap garde ce qui y était</translation>
  </message>
  <message>
   <source>Drag the title of a frame</source>
   <translation>Tirer le titre d'un cadre</translation>
  </message>
  <message>
   <source>moves it with what stands in it; with Alt alone</source>
   <translation>le déplace avec ce qu'il contient ; avec Alt seul</translation>
  </message>
  <message>
   <source>Drag an edge or a corner of a frame</source>
   <translation>Tirer un bord ou un coin d'un cadre</translation>
  </message>
  <message>
   <source>makes it larger or smaller</source>
   <translation>l'agrandit ou le réduit</translation>
  </message>
  <message>
   <source>Click a part in the parts list, then the sheet</source>
   <translation>Cliquer un composant de la liste, puis la feuille</translation>
  </message>
  <message>
   <source>places it there; with Shift it stays in hand for the next one</source>
   <translation>le pose là ; avec Maj il reste en main pour le suivant</translation>
  </message>
  <message>
   <source>Drag a part from the parts list</source>
   <translation>Tirer un composant de la liste</translation>
  </message>
  <message>
   <source>places it where it is dropped</source>
   <translation>le pose là où on le lâche</translation>
  </message>
  <message>
   <source>Wheel</source>
   <translation>Molette</translation>
  </message>
  <message>
   <source>scrolls; with Ctrl zooms about the pointer</source>
   <translation>fait défiler ; avec Ctrl zoome autour du pointeur</translation>
  </message>
  <message>
   <source>Drag with the middle button or Space</source>
   <translation>Tirer avec le bouton du milieu ou Espace</translation>
  </message>
  <message>
   <source>moves the paper</source>
   <translation>déplace le papier</translation>
  </message>
  <message>
   <source>Right button</source>
   <translation>Bouton droit</translation>
  </message>
  <message>
   <source>the menu of what is there; gives up a part in hand</source>
   <translation>le menu de ce qui est là ; abandonne le composant en main</translation>
  </message>
  <message>
   <source>Ctrl and drag from pin to pin</source>
   <translation>Avec Ctrl tirer de broche en broche</translation>
  </message>
  <message>
   <source>a twisted pair: the wire from the other end of the heater comes along</source>
   <translation>une paire torsadée : le fil de l'autre bout du filament vient avec</translation>
  </message>
  <message>
   <source>Drag from a pin onto a wire</source>
   <translation>Tirer d'une broche sur un fil</translation>
  </message>
  <message>
   <source>a joint where they meet</source>
   <translation>une cosse là où ils se rencontrent</translation>
  </message>
  <message>
   <source>Drag a handle of the selected wire</source>
   <translation>Tirer une poignée du fil choisi</translation>
  </message>
  <message>
   <source>leads it another way; with Alt off the grid</source>
   <translation>le mène autrement ; avec Alt hors grille</translation>
  </message>
  <message>
   <source>Double click a handle</source>
   <translation>Double-cliquer une poignée</translation>
  </message>
  <message>
   <source>lets the route find its way again</source>
   <translation>laisse le trajet se trouver de nouveau</translation>
  </message>
  <message>
   <source>Ctrl and double click a wire</source>
   <translation>Avec Ctrl double-cliquer un fil</translation>
  </message>
  <message>
   <source>splits it with a joint</source>
   <translation>le coupe par une cosse</translation>
  </message>
  <message>
   <source>Click a wire of a twisted pair</source>
   <translation>Cliquer un fil d'une paire torsadée</translation>
  </message>
  <message>
   <source>selects both; with Alt only this one</source>
   <translation>choisit les deux ; avec Alt seulement celui-ci</translation>
  </message>
  <message>
   <source>Tab, Shift+Tab</source>
   <translation>Tab, Maj+Tab</translation>
  </message>
  <message>
   <source>next and previous part: left to right, then the row below; after the last out of the drawing</source>
   <translation>composant suivant et précédent : de gauche à droite, puis la rangée du dessous ; après le dernier hors du dessin</translation>
  </message>
  <message>
   <source>Arrows</source>
   <translation>Flèches</translation>
  </message>
  <message>
   <source>move what is selected; with Alt by single units</source>
   <translation>déplacent ce qui est choisi ; avec Alt d'une unité</translation>
  </message>
  <message>
   <source>Escape</source>
   <translation>Échap</translation>
  </message>
  <message>
   <source>gives up what is under way, then the selection, then the instant on show</source>
   <translation>abandonne ce qui est en cours, puis la sélection, puis l’instant montré</translation>
  </message>
  <message>
   <source>the next and the previous pin, round the socket</source>
   <translation>la broche suivante et la précédente, autour du support</translation>
  </message>
  <message>
   <source>A digit or letter</source>
   <translation>Un chiffre ou une lettre</translation>
  </message>
  <message>
   <source>the pin of that name, or the next one that begins so</source>
   <translation>la broche de ce nom, ou la suivante qui commence ainsi</translation>
  </message>
  <message>
   <source>Enter</source>
   <translation>Entrée</translation>
  </message>
  <message>
   <source>begins a wire at the pin; at another pin lays it</source>
   <translation>commence un fil à la broche ; sur une autre broche le pose</translation>
  </message>
  <message>
   <source>Tab, Ctrl+arrows while a wire is laid</source>
   <translation>Tab, Ctrl+flèches pendant qu'on pose un fil</translation>
  </message>
  <message>
   <source>go to the part where it ends; its likeliest pin is proposed</source>
   <translation>mènent au composant où il arrive ; sa broche la plus probable est proposée</translation>
  </message>
  <message>
   <source>Ctrl+Enter at the other pin</source>
   <translation>Ctrl+Entrée à l'autre broche</translation>
  </message>
  <message>
   <source>lays a twisted pair</source>
   <translation>pose une paire torsadée</translation>
  </message>
  <message>
   <source>/ while a wire is laid</source>
   <translation>/ pendant qu'on pose un fil</translation>
  </message>
  <message>
   <source>type where it ends</source>
   <translation>taper où il arrive</translation>
  </message>
  <message>
   <source>gives the wire up, then steps out of the pins</source>
   <translation>abandonne le fil, puis sort des broches</translation>
  </message>
  <message>
   <source>ECC83, 10R 5 W, 6.3 V 3 A ct, relay</source>
   <translation>ECC83, 10R 5 W, 6.3 V 3 A ct, relais</translation>
  </message>
  <message>
   <source>adds a part</source>
   <translation>ajoute un composant</translation>
  </message>
  <message>
   <source>T1.a V1.4</source>
   <translation>T1.a V1.4</translation>
  </message>
  <message>
   <source>adds a wire between two pins</source>
   <translation>ajoute un fil entre deux broches</translation>
  </message>
  <message>
   <source>V1.4-5</source>
   <translation>V1.4-5</translation>
  </message>
  <message>
   <source>adds a strap on one socket</source>
   <translation>ajoute un pont sur un support</translation>
  </message>
  <message>
   <source>Down, Up</source>
   <translation>Bas, Haut</translation>
  </message>
  <message>
   <source>choose among what is offered</source>
   <translation>choisissent parmi ce qui est proposé</translation>
  </message>
  <message>
   <source>takes it; the drawing has the keyboard again</source>
   <translation>le prend ; le dessin a de nouveau le clavier</translation>
  </message>
  <message>
   <source>F2, or a double click</source>
   <translation>F2, ou un double clic</translation>
  </message>
  <message>
   <source>edits a cell; figures are read as they are written</source>
   <translation>édite une cellule ; les valeurs se lisent comme on les écrit</translation>
  </message>
  <message>
   <source>shows the selected rows on the drawing</source>
   <translation>montre sur le dessin les lignes choisies</translation>
  </message>
  <message>
   <source>Ins</source>
   <translation>Inser</translation>
  </message>
  <message>
   <source>to the line where a part or a wire is typed to be added</source>
   <translation>à la ligne où l'on tape un composant ou un fil à ajouter</translation>
  </message>
  <message>
   <source>Del</source>
   <translation>Suppr</translation>
  </message>
  <message>
   <source>deletes the parts or wires of the selected rows</source>
   <translation>efface les composants ou les fils des lignes choisies</translation>
  </message>
  <message>
   <source>brings the old value back; a text that is refused stays until it is mended or given up</source>
   <translation>ramène l'ancienne valeur ; un texte refusé reste jusqu'à ce qu'on le corrige ou l'abandonne</translation>
  </message>
  <message>
   <source>Click on a heading</source>
   <translation>Clic sur un en-tête</translation>
  </message>
  <message>
   <source>sorts; the third click brings back the sheet's order</source>
   <translation>trie ; le troisième clic ramène l'ordre de la feuille</translation>
  </message>
  <message>
   <source>builds the chain as it is shown</source>
   <translation>construit la chaîne comme elle est montrée</translation>
  </message>
  <message>
   <source>Alt+Up, Alt+Down, or a drag in the order</source>
   <translation>Alt+Haut, Alt+Bas, ou tirer dans l'ordre</translation>
  </message>
  <message>
   <source>moves a socket along the chain</source>
   <translation>déplace un support dans la chaîne</translation>
  </message>
  <message>
   <source>gives it up; nothing has happened</source>
   <translation>l'abandonne ; rien ne s'est passé</translation>
  </message>
  <message>
   <source>Click or drag on the time slider</source>
   <translation>Clic ou glissement sur le curseur de temps</translation>
  </message>
  <message>
   <source>shows that instant everywhere; on a tick exactly when it switched</source>
   <translation>montre cet instant partout ; sur un trait, exactement celui de la commutation</translation>
  </message>
  <message>
   <source>Left, Right</source>
   <translation>Gauche, Droite</translation>
  </message>
  <message>
   <source>a tenth of a second back or on; from ten seconds on a whole one</source>
   <translation>un dixième de seconde en arrière ou en avant ; à partir de dix secondes, une seconde entière</translation>
  </message>
  <message>
   <source>Page Up, Page Down</source>
   <translation>Page haut, Page bas</translation>
  </message>
  <message>
   <source>ten seconds on or back</source>
   <translation>dix secondes en avant ou en arrière</translation>
  </message>
  <message>
   <source>Home, End</source>
   <translation>Début, Fin</translation>
  </message>
  <message>
   <source>the instant of switching on, the last one</source>
   <translation>l’instant de la mise sous tension, le dernier</translation>
  </message>
  <message>
   <source>Space</source>
   <translation>Espace</translation>
  </message>
  <message>
   <source>plays and pauses</source>
   <translation>lit et met en pause</translation>
  </message>
  <message>
   <source>back to the steady state</source>
   <translation>retour au régime établi</translation>
  </message>
  <message>
   <source>Pointer on the drawing</source>
   <translation>Pointeur sur le dessin</translation>
  </message>
  <message>
   <source>Pointer on wires</source>
   <translation>Pointeur sur les fils</translation>
  </message>
  <message>
   <source>Walking the drawing by keys</source>
   <translation>Parcourir le dessin au clavier</translation>
  </message>
  <message>
   <source>In the pins of a part</source>
   <translation>Dans les broches d'un composant</translation>
  </message>
  <message>
   <source>Typing into the add field</source>
   <translation>Saisie dans le champ d'ajout</translation>
  </message>
  <message>
   <source>In the tables</source>
   <translation>Dans les tableaux</translation>
  </message>
  <message>
   <source>While a chain is chosen</source>
   <translation>Pendant qu'une chaîne est choisie</translation>
  </message>
  <message>
   <source>On the time slider of a warm-up</source>
   <translation>Sur le curseur de temps d’une mise en chauffe</translation>
  </message>
 </context>
 <context>
  <name>help</name>
  <message>
   <source>While the drawing has the keyboard</source>
   <translation>Tant que le dessin a le clavier</translation>
  </message>
  <message>
   <source>Nothing here holds these words.</source>
   <translation>Rien ici ne contient ces mots.</translation>
  </message>
 </context>
 <context>
  <name>model</name>
  <message>
   <source>{folder} does not allow writing. Save under another name or folder.</source>
   <translation>{folder} n'autorise pas l'écriture. Enregistrer sous un autre nom ou dans un autre dossier.</translation>
  </message>
  <message>
   <source>The folder {folder} does not exist. Save into another folder.</source>
   <translation>Le dossier {folder} n'existe pas. Enregistrer dans un autre dossier.</translation>
  </message>
  <message>
   <source>{name} could not be written: {why}. The old file is untouched.</source>
   <translation>{name} n'a pas pu être écrit : {why}. L'ancien fichier est intact.</translation>
  </message>
  <message>
   <source>{name} is write-protected</source>
   <translation>{name} est protégé en écriture</translation>
  </message>
  <message>
   <source>what was written does not read back the same</source>
   <translation>ce qui a été écrit ne se relit pas à l'identique</translation>
  </message>
  <message>
   <source>A length from 0 to {most} is expected.</source>
   <translation>Une longueur de 0 à {most} est attendue.</translation>
  </message>
  <message>
   <source>a wire size is expected here, such as 20 AWG or 0.5 mm²</source>
   <translation>une section de fil est attendue, par exemple 20 AWG ou 0.5 mm²</translation>
  </message>
  <message>
   <source>'{text}' could be a gauge or an area; {expected}.</source>
   <translation>'{text}' peut être un calibre AWG ou une section ; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' is not understood; {expected}.</source>
   <translation>'{text}' n'est pas compris ; {expected}.</translation>
  </message>
  <message>
   <source>{path} is larger than {most} MB, which no sheet is.</source>
   <translation>{path} dépasse {most} Mo, ce qu'aucune feuille n'atteint.</translation>
  </message>
  <message>
   <source>There is no file {path}. The built-in sheets are: {samples}.</source>
   <translation>Le fichier {path} n'existe pas. Feuilles intégrées : {samples}.</translation>
  </message>
  <message>
   <source>{path} is a folder; the name of a sheet file is expected.</source>
   <translation>{path} est un dossier ; le nom d'une feuille est attendu.</translation>
  </message>
  <message>
   <source>{path} may not be read: its permissions do not allow it.</source>
   <translation>{path} ne peut être lu : les droits manquent.</translation>
  </message>
  <message>
   <source>{path} cannot be read: {why}.</source>
   <translation>{path} ne peut être lu : {why}.</translation>
  </message>
  <message>
   <source>{items} and {last}</source>
   <translation>{items} et {last}</translation>
  </message>
  <message>
   <source>is not UTF-8 text</source>
   <translation>n'est pas du texte en UTF-8</translation>
  </message>
  <message>
   <source>cannot be read: {why}</source>
   <translation>ne peut être lu : {why}</translation>
  </message>
  <message>
   <source>{owner} has no {fields}</source>
   <translation>{owner} est sans {fields}</translation>
  </message>
  <message>
   <source>'{name}' is already a name of {type}</source>
   <translation>'{name}' est déjà un nom de {type}</translation>
  </message>
  <message>
   <source>'{name}' is the designation itself</source>
   <translation>'{name}' est la désignation elle-même</translation>
  </message>
  <message>
   <source>'{given}' should be '{wanted}'</source>
   <translation>'{given}' devrait être '{wanted}'</translation>
  </message>
  <message>
   <source>{type} has no heater section (volts and amps)</source>
   <translation>{type} n'a pas de section de filament (volts et amps)</translation>
  </message>
  <message>
   <source>the sections of {type} do not join into one heater</source>
   <translation>les sections de {type} ne forment pas un seul filament</translation>
  </message>
  <message>
   <source>'{given}' is not two pins such as 4-5</source>
   <translation>'{given}' n'est pas deux broches comme 4-5</translation>
  </message>
  <message>
   <source>there is no pin {pin} on base {base}</source>
   <translation>il n'y a pas de broche {pin} sur le culot {base}</translation>
  </message>
  <message>
   <source>is below spread_low_a, {low} A</source>
   <translation>est inférieur à spread_low_a, {low} A</translation>
  </message>
  <message>
   <source>is above the peak limit, {peak} V</source>
   <translation>dépasse la limite de crête, {peak} V</translation>
  </message>
  <message>
   <source>{file} line {line}, column '{column}'</source>
   <translation>{file} ligne {line}, colonne '{column}'</translation>
  </message>
  <message>
   <source>has {count} cells, expected {wanted}</source>
   <translation>a {count} cellules, {wanted} sont attendues</translation>
  </message>
  <message>
   <source>'{name}' is already in this file</source>
   <translation>'{name}' est déjà dans ce fichier</translation>
  </message>
  <message>
   <source>is not CSV: {why}</source>
   <translation>n'est pas du CSV : {why}</translation>
  </message>
  <message>
   <source>unknown column, expected {columns}</source>
   <translation>colonne inconnue, attendu : {columns}</translation>
  </message>
  <message>
   <source>this column is missing</source>
   <translation>cette colonne manque</translation>
  </message>
  <message>
   <source>columns must come in the order {columns}</source>
   <translation>les colonnes doivent suivre l'ordre {columns}</translation>
  </message>
  <message>
   <source>is empty</source>
   <translation>est vide</translation>
  </message>
  <message>
   <source>unknown field '{name}', expected one of {fields}</source>
   <translation>champ '{name}' inconnu, attendu : l'un de {fields}</translation>
  </message>
  <message>
   <source>'{name}' is given twice for {owner}</source>
   <translation>'{name}' est donné deux fois pour {owner}</translation>
  </message>
  <message>
   <source>needs two pins such as 4-5</source>
   <translation>demande deux broches comme 4-5</translation>
  </message>
  <message>
   <source>must be empty</source>
   <translation>doit être vide</translation>
  </message>
  <message>
   <source>should be '{wanted}'</source>
   <translation>devrait être '{wanted}'</translation>
  </message>
  <message>
   <source>'{given}' is not one of {choices}</source>
   <translation>'{given}' n'est pas l'un de {choices}</translation>
  </message>
  <message>
   <source>is empty, but the status is '{status}'</source>
   <translation>est vide, mais le statut est '{status}'</translation>
  </message>
  <message>
   <source>'{given}' is not a number</source>
   <translation>'{given}' n'est pas un nombre</translation>
  </message>
  <message>
   <source>'{given}' is not a finite number</source>
   <translation>'{given}' n'est pas un nombre fini</translation>
  </message>
  <message>
   <source>{given} is not between {low} and {high} {unit}</source>
   <translation>{given} n'est pas entre {low} et {high} {unit}</translation>
  </message>
  <message>
   <source>{rating}, lamp tap at {v}</source>
   <translation>{rating}, prise de lampe à {v}</translation>
  </message>
  <message>
   <source>{ohm} at {c}</source>
   <translation>{ohm} à {c}</translation>
  </message>
  <message>
   <source>up to {a}</source>
   <translation>jusqu'à {a}</translation>
  </message>
  <message>
   <source>coil {rating}</source>
   <translation>bobine {rating}</translation>
  </message>
  <message>
   <source>contact {a}</source>
   <translation>contact {a}</translation>
  </message>
  <message>
   <source>{items} · {last}</source>
   <translation>{items} · {last}</translation>
  </message>
  <message>
   <source>general knowledge, no sheet at hand</source>
   <translation>connaissance générale, pas de notice à portée</translation>
  </message>
  <message>
   <source>{source} (unverified)</source>
   <translation>{source} (non vérifié)</translation>
  </message>
  <message>
   <source>With the wires that are taken away {ids} get no heat any more.</source>
   <translation>Sans les fils ôtés, {ids} ne sont plus chauffés.</translation>
  </message>
  <message>
   <source>With the wires that are taken away {id} gets no heat any more.</source>
   <translation>Sans les fils ôtés, {id} n'est plus chauffé.</translation>
  </message>
  <message>
   <source>With the wires that are taken away the volts of {ids} change by {off}.</source>
   <translation>Sans les fils ôtés, la tension de {ids} change de {off}.</translation>
  </message>
  <message>
   <source>At {condition} {ids} is about {off} off its rated current; {band} is allowed.</source>
   <translation>Sous {condition}, {ids} est à environ {off} de son courant nominal ; {band} est permis.</translation>
  </message>
  <message>
   <source>At {condition} {ids} are about {off} off their rated current; {band} is allowed.</source>
   <translation>Sous {condition}, {ids} sont à environ {off} de leur courant nominal ; {band} est permis.</translation>
  </message>
  <message>
   <source>At {condition} {ids} is about {off} off its rated volts; {band} is allowed.</source>
   <translation>Sous {condition}, {ids} est à environ {off} de sa tension nominale ; {band} est permis.</translation>
  </message>
  <message>
   <source>At {condition} {ids} are about {off} off their rated volts; {band} is allowed.</source>
   <translation>Sous {condition}, {ids} sont à environ {off} de leur tension nominale ; {band} est permis.</translation>
  </message>
  <message>
   <source>{id} may give {rated}; with this chain it is asked for {asked}.</source>
   <translation>{id} peut donner {rated} ; avec cette chaîne il devrait en donner {asked}.</translation>
  </message>
  <message>
   <source>{id} feeds {others} already; its volts change by {off}.</source>
   <translation>{id} alimente déjà {others} ; leur tension change de {off}.</translation>
  </message>
  <message>
   <source>The cathode of {id} ({type}) is its heater or joined to it: it needs a supply of its own.</source>
   <translation>La cathode de {id} ({type}) est son filament ou lui est reliée : il lui faut une alimentation à lui.</translation>
  </message>
  <message>
   <source>{id} ({type}) is made for {rated}, not for {line}.</source>
   <translation>{id} ({type}) est fait pour {rated}, pas pour {line}.</translation>
  </message>
  <message>
   <source>{items} or {last}</source>
   <translation>{items} ou {last}</translation>
  </message>
  <message>
   <source>{id} ({type}) is made for {rated}: neither {line} nor half of it.</source>
   <translation>{id} ({type}) est fait pour {rated} : ni {line} ni la moitié.</translation>
  </message>
  <message>
   <source>{id} ({type}, {a}) finds no partner of the same current.</source>
   <translation>{id} ({type}, {a}) ne trouve pas de partenaire de même courant.</translation>
  </message>
  <message>
   <source>{id} ({type}) wants {own}; the string carries {a}.</source>
   <translation>{id} ({type}) veut {own} ; la chaîne conduit {a}.</translation>
  </message>
  <message>
   <source>No heater may be as far from its cathode as those of {ids} would be.</source>
   <translation>Aucun filament ne peut être aussi loin de sa cathode que le seraient ceux de {ids}.</translation>
  </message>
  <message>
   <source>No heater may be as far from its cathode as that of {id} would be.</source>
   <translation>Aucun filament ne peut être aussi loin de sa cathode que le serait celui de {id}.</translation>
  </message>
  <message>
   <source>The type {type} of {id} is not known.</source>
   <translation>Le type {type} de {id} n'est pas connu.</translation>
  </message>
  <message>
   <source>None of them is made for {v}.</source>
   <translation>Aucun d'eux n'est fait pour {v}.</translation>
  </message>
  <message>
   <source>A pair from socket to socket; {n} of {all} suit {v}.</source>
   <translation>Une paire de support en support ; {n} sur {all} conviennent à {v}.</translation>
  </message>
  <message>
   <source>A twisted pair from socket to socket, every heater at {v}.</source>
   <translation>Une paire torsadée de support en support, chaque filament à {v}.</translation>
  </message>
  <message>
   <source>Two heaters of half the volts in series, pair beside pair on {v}.</source>
   <translation>Deux filaments de la moitié des volts en série, paire près de paire sous {v}.</translation>
  </message>
  <message>
   <source>Needs two heaters of half of {v}.</source>
   <translation>Demande deux filaments de la moitié de {v}.</translation>
  </message>
  <message>
   <source>One current through all: {v} at {a}.</source>
   <translation>Un seul courant dans tous : {v} à {a}.</translation>
  </message>
  <message>
   <source>Needs two heaters or more.</source>
   <translation>Demande deux filaments ou plus.</translation>
  </message>
  <message>
   <source>Only with a resistor across the heater that wants less current.</source>
   <translation>Seulement avec une résistance aux bornes du filament qui veut moins de courant.</translation>
  </message>
  <message>
   <source>The id {id} is already in use.</source>
   <translation>Le repère {id} est déjà pris.</translation>
  </message>
  <message>
   <source>{id} is the mains: only a string can be fed from them.</source>
   <translation>{id} est le secteur : on ne peut en nourrir qu'une chaîne.</translation>
  </message>
  <message>
   <source>{id} gives {v}; the string needs {chain}.</source>
   <translation>{id} donne {v} ; la chaîne demande {chain}.</translation>
  </message>
  <message>
   <source>{id} gives {v}; this chain is for {chain}.</source>
   <translation>{id} donne {v} ; ce câblage est pour {chain}.</translation>
  </message>
  <message>
   <source>What {id} gives under load is not computed.</source>
   <translation>Ce que {id} donne en charge n'est pas calculé.</translation>
  </message>
  <message>
   <source>{id} is the mains: every heater pin can be live. Work behind an isolating transformer; local codes and licensed practice come first.</source>
   <translation>{id} est le secteur : chaque broche de filament peut être sous tension. Travailler derrière un transformateur d'isolement ; les règles locales et les professionnels habilités passent avant tout.</translation>
  </message>
  <message>
   <source>{ids} would carry more than their size should.</source>
   <translation>{ids} conduirait plus que sa section ne permet.</translation>
  </message>
  <message>
   <source>{ids} pulled: what stands in series with it stays cold.</source>
   <translation>{ids} retiré : ce qui est en série avec lui reste froid.</translation>
  </message>
  <message>
   <source>The filament of {ids} is the cathode: all on this line share it.</source>
   <translation>Le filament de {ids} est la cathode : tout sur cette ligne la partage.</translation>
  </message>
  <message>
   <source>A dropper of {ohm} {w} takes what {id} gives too much; it turns {heat} into heat.</source>
   <translation>Une résistance série de {ohm} {w} prend ce que {id} donne de trop ; elle dissipe {heat}.</translation>
  </message>
  <message>
   <source>A shunt of {ohm} carries what {id} does not take.</source>
   <translation>Un shunt de {ohm} conduit ce que {id} ne prend pas.</translation>
  </message>
  <message>
   <source>{id} is tied to the chassis already.</source>
   <translation>{id} est déjà relié au châssis.</translation>
  </message>
  <message>
   <source>{id} gives {a} to others already.</source>
   <translation>{id} donne déjà {a} à d'autres.</translation>
  </message>
  <message>
   <source>{id} is wired already ({wires}).</source>
   <translation>{id} est déjà câblé ({wires}).</translation>
  </message>
  <message>
   <source>Select the sockets that the chain is to heat.</source>
   <translation>Choisir les supports que la chaîne doit chauffer.</translation>
  </message>
  <message>
   <source>None of the selected sockets can be wired so.</source>
   <translation>Aucun des supports choisis ne peut être câblé ainsi.</translation>
  </message>
  <message>
   <source>The volts of {id} are out of all reason for heaters.</source>
   <translation>La tension de {id} est déraisonnable pour des filaments.</translation>
  </message>
  <message>
   <source>The supply that was chosen is no longer on the sheet.</source>
   <translation>L'alimentation choisie n'est plus sur la feuille.</translation>
  </message>
  <message>
   <source>above {low} and at most {high}</source>
   <translation>supérieur à {low} et au plus {high}</translation>
  </message>
  <message>
   <source>from {low} to {high}</source>
   <translation>de {low} à {high}</translation>
  </message>
  <message>
   <source>greater than 0</source>
   <translation>supérieur à 0</translation>
  </message>
  <message>
   <source>0 or greater</source>
   <translation>0 ou plus</translation>
  </message>
  <message>
   <source>between {low} and {high}</source>
   <translation>entre {low} et {high}</translation>
  </message>
  <message>
   <source>the title</source>
   <translation>titre</translation>
  </message>
  <message>
   <source>the sheet</source>
   <translation>feuille</translation>
  </message>
  <message>
   <source>low mains must not lie above high mains</source>
   <translation>le secteur bas ne doit pas dépasser le secteur haut</translation>
  </message>
  <message>
   <source>'{id}' cannot be an id: use 1 to 40 characters without spaces or dots, such as V1</source>
   <translation>'{id}' ne peut être un repère : 1 à 40 caractères sans espaces ni points, par exemple V1</translation>
  </message>
  <message>
   <source>the id {id} is already used by {place}</source>
   <translation>le repère {id} est déjà pris par {place}</translation>
  </message>
  <message>
   <source>{label} of {owner}</source>
   <translation>{owner} : {label}</translation>
  </message>
  <message>
   <source>{what} must be a finite number</source>
   <translation>{what} doit être un nombre fini</translation>
  </message>
  <message>
   <source>{what} is too large to be meant</source>
   <translation>{what} est trop grand pour être voulu</translation>
  </message>
  <message>
   <source>{what} is too small to be meant</source>
   <translation>{what} est trop petit pour être voulu</translation>
  </message>
  <message>
   <source>{what} must be {range}, not {value}</source>
   <translation>{what} doit être {range}, et non {value}</translation>
  </message>
  <message>
   <source>place of {owner} must be within ±{most}</source>
   <translation>{owner} : la position doit rester dans ±{most}</translation>
  </message>
  <message>
   <source>{what} holds half of a character pair</source>
   <translation>{what} contient une demi-paire de caractères</translation>
  </message>
  <message>
   <source>{id} cannot be mirrored: pins are counted as the socket is seen from below</source>
   <translation>{id} ne peut être mis en miroir : les broches se comptent vues de dessous le support</translation>
  </message>
  <message>
   <source>{id} is longer than {most} characters</source>
   <translation>{id} dépasse {most} caractères</translation>
  </message>
  <message>
   <source>{id} needs a type, or both rated_v and rated_a</source>
   <translation>{id} demande un type, ou rated_v et rated_a</translation>
  </message>
  <message>
   <source>{id} needs a type, or all of r25_ohm, beta_k and dissipation_w_per_k</source>
   <translation>{id} demande un type, ou r25_ohm, beta_k et dissipation_w_per_k</translation>
  </message>
  <message>
   <source>foldback current of {id} must not exceed its current limit</source>
   <translation>{id} : le courant replié ne doit pas dépasser la limite de courant</translation>
  </message>
  <message>
   <source>drop-out volts of {id} must not exceed its pull-in volts</source>
   <translation>{id} : la tension de retombée ne doit pas dépasser la tension de collage</translation>
  </message>
  <message>
   <source>{id} starts and ends at the same terminal; it needs two</source>
   <translation>{id} part et arrive à la même borne ; il en faut deux</translation>
  </message>
  <message>
   <source>{id} has both awg and area_mm2; give one of them</source>
   <translation>{id} a awg et area_mm2 ; n'en donner qu'un</translation>
  </message>
  <message>
   <source>{id} has {count} corners; {most} are the most</source>
   <translation>{id} a {count} coudes ; {most} au plus</translation>
  </message>
  <message>
   <source>a corner of {id}</source>
   <translation>coude de {id}</translation>
  </message>
  <message>
   <source>{id} starts at {terminal}</source>
   <translation>{id} part de {terminal}</translation>
  </message>
  <message>
   <source>{id} ends at {terminal}</source>
   <translation>{id} arrive à {terminal}</translation>
  </message>
  <message>
   <source>pins are numbered 1 to {most}</source>
   <translation>les broches vont de 1 à {most}</translation>
  </message>
  <message>
   <source>it has {names}</source>
   <translation>il a {names}</translation>
  </message>
  <message>
   <source>{end}, but {id} has no terminal '{name}'; {known}</source>
   <translation>{end}, mais {id} n'a pas de borne '{name}' ; {known}</translation>
  </message>
  <message>
   <source>{end}, but there is no part {id}</source>
   <translation>{end}, mais il n'y a pas de composant {id}</translation>
  </message>
  <message>
   <source>{end}, which is no terminal: write part and terminal with a dot, such as V1.4</source>
   <translation>{end}, qui n'est pas une borne : écrire composant et borne avec un point, par exemple V1.4</translation>
  </message>
  <message>
   <source>a tube type needs a designation</source>
   <translation>un type de tube demande une désignation</translation>
  </message>
  <message>
   <source>the tube type {type} stands here twice</source>
   <translation>le type de tube {type} est ici deux fois</translation>
  </message>
  <message>
   <source>{type} has no heater section</source>
   <translation>{type} n'a pas de section de filament</translation>
  </message>
  <message>
   <source>a section of {type} needs two different pins from 1 to {most}</source>
   <translation>une section de {type} demande deux broches différentes de 1 à {most}</translation>
  </message>
  <message>
   <source>a capacitor in an AC circuit is not computed yet</source>
   <translation>un condensateur dans un circuit alternatif n'est pas encore calculé</translation>
  </message>
  <message>
   <source>a diode in an AC circuit is not computed yet</source>
   <translation>une diode dans un circuit alternatif n'est pas encore calculée</translation>
  </message>
  <message>
   <source>a supply without internal resistance is short-circuited</source>
   <translation>une alimentation sans résistance interne est en court-circuit</translation>
  </message>
  <message>
   <source>supplies without internal resistance are in parallel</source>
   <translation>des alimentations sans résistance interne sont en parallèle</translation>
  </message>
  <message>
   <source>a plain number</source>
   <translation>un simple nombre</translation>
  </message>
  <message>
   <source>volts</source>
   <translation>volts</translation>
  </message>
  <message>
   <source>amperes</source>
   <translation>ampères</translation>
  </message>
  <message>
   <source>ohms</source>
   <translation>ohms</translation>
  </message>
  <message>
   <source>{one} or {other}</source>
   <translation>{one} ou {other}</translation>
  </message>
  <message>
   <source>watts</source>
   <translation>watts</translation>
  </message>
  <message>
   <source>farads</source>
   <translation>farads</translation>
  </message>
  <message>
   <source>metres</source>
   <translation>mètres</translation>
  </message>
  <message>
   <source>square millimetres</source>
   <translation>millimètres carrés</translation>
  </message>
  <message>
   <source>seconds</source>
   <translation>secondes</translation>
  </message>
  <message>
   <source>hertz</source>
   <translation>hertz</translation>
  </message>
  <message>
   <source>degrees Celsius</source>
   <translation>degrés Celsius</translation>
  </message>
  <message>
   <source>kelvins</source>
   <translation>kelvins</translation>
  </message>
  <message>
   <source>per cent</source>
   <translation>pour cent</translation>
  </message>
  <message>
   <source>watts per kelvin</source>
   <translation>watts par kelvin</translation>
  </message>
  <message>
   <source>kelvins per watt</source>
   <translation>kelvins par watt</translation>
  </message>
  <message>
   <source>ampere-squared seconds</source>
   <translation>ampères carrés secondes</translation>
  </message>
  <message>
   <source>{what} is expected here, such as {example}</source>
   <translation>attendu : {what}, par exemple {example}</translation>
  </message>
  <message>
   <source>{what} are expected here, such as {example}</source>
   <translation>attendu : des {what}, par exemple {example}</translation>
  </message>
  <message>
   <source>A wire needs two different terminals.</source>
   <translation>Un fil demande deux bornes différentes.</translation>
  </message>
  <message>
   <source>There is no terminal {terminal} on this sheet.</source>
   <translation>Il n'y a pas de borne {terminal} sur cette feuille.</translation>
  </message>
  <message>
   <source>There is no part {id}.</source>
   <translation>Il n'y a pas de composant {id}.</translation>
  </message>
  <message>
   <source>There is no wire {id}.</source>
   <translation>Il n'y a pas de fil {id}.</translation>
  </message>
  <message>
   <source>There is nothing called {id} on this sheet.</source>
   <translation>Rien ne s'appelle {id} sur cette feuille.</translation>
  </message>
  <message>
   <source>'{id}' cannot be an id: use 1 to 40 characters without spaces or dots, such as V1.</source>
   <translation>'{id}' ne peut être un repère : 1 à 40 caractères sans espaces ni points, par exemple V1.</translation>
  </message>
  <message>
   <source>{id} is not a tube.</source>
   <translation>{id} n'est pas un tube.</translation>
  </message>
  <message>
   <source>What is pasted</source>
   <translation>Ce qui est collé</translation>
  </message>
  <message>
   <source>{id} cannot be used as an id here.</source>
   <translation>{id} ne peut servir de repère ici.</translation>
  </message>
  <message>
   <source>A pair is twisted of two wires.</source>
   <translation>Une paire se torsade de deux fils.</translation>
  </message>
  <message>
   <source>{first} and {second} do not run between the same two parts.</source>
   <translation>{first} et {second} ne vont pas entre les deux mêmes composants.</translation>
  </message>
  <message>
   <source>{what} would lie beyond the sheet: places go to ±{most}.</source>
   <translation>{what} serait hors de la feuille : elle va jusqu'à ±{most}.</translation>
  </message>
  <message>
   <source>A corner of {id}</source>
   <translation>Un coude de {id}</translation>
  </message>
  <message>
   <source>{id} is not a joint.</source>
   <translation>{id} n'est pas une cosse.</translation>
  </message>
  <message>
   <source>{id} does not stand between two wires: {count} end on it.</source>
   <translation>{id} n'est pas entre deux fils : {count} y arrivent.</translation>
  </message>
  <message>
   <source>Both wires on {id} go to the same terminal.</source>
   <translation>Les deux fils de {id} vont à la même borne.</translation>
  </message>
  <message>
   <source>{first} and {second} differ in gauge; make them alike first.</source>
   <translation>{first} et {second} n'ont pas le même calibre ; les égaliser d'abord.</translation>
  </message>
  <message>
   <source>{id} is no part of the wiring.</source>
   <translation>{id} n'est pas du câblage.</translation>
  </message>
  <message>
   <source>the steady state of a rectifier with reservoir is not computed yet</source>
   <translation>le régime d'un redresseur avec condensateur réservoir n'est pas encore calculé</translation>
  </message>
  <message>
   <source>{reason} ({ids})</source>
   <translation>{reason} ({ids})</translation>
  </message>
  <message>
   <source>Called off.</source>
   <translation>Annulé.</translation>
  </message>
  <message>
   <source>type</source>
   <translation>type</translation>
  </message>
  <message>
   <source>pulled</source>
   <translation>retiré</translation>
  </message>
  <message>
   <source>closed</source>
   <translation>fermé</translation>
  </message>
  <message>
   <source>rectifier</source>
   <translation>redresseur</translation>
  </message>
  <message>
   <source>speed</source>
   <translation>rapidité</translation>
  </message>
  <message>
   <source>text</source>
   <translation>du texte</translation>
  </message>
  <message>
   <source>title</source>
   <translation>titre</translation>
  </message>
  <message>
   <source>rated volts</source>
   <translation>tension nominale</translation>
  </message>
  <message>
   <source>rated amperes</source>
   <translation>courant nominal</translation>
  </message>
  <message>
   <source>rated watts</source>
   <translation>puissance nominale</translation>
  </message>
  <message>
   <source>rated mains volts</source>
   <translation>tension secteur du primaire</translation>
  </message>
  <message>
   <source>cathode volts above chassis</source>
   <translation>cathode / châssis</translation>
  </message>
  <message>
   <source>hot to cold ratio</source>
   <translation>rapport chaud sur froid</translation>
  </message>
  <message>
   <source>warm-up time</source>
   <translation>temps de chauffe</translation>
  </message>
  <message>
   <source>regulation</source>
   <translation>chute en charge</translation>
  </message>
  <message>
   <source>centre tap</source>
   <translation>point milieu</translation>
  </message>
  <message>
   <source>set volts</source>
   <translation>tension réglée</translation>
  </message>
  <message>
   <source>current limit</source>
   <translation>limite de courant</translation>
  </message>
  <message>
   <source>in overload</source>
   <translation>en surcharge</translation>
  </message>
  <message>
   <source>time to cut-out</source>
   <translation>temps avant coupure</translation>
  </message>
  <message>
   <source>time to retry</source>
   <translation>temps avant reprise</translation>
  </message>
  <message>
   <source>minimum load</source>
   <translation>charge minimale</translation>
  </message>
  <message>
   <source>foldback current</source>
   <translation>courant replié</translation>
  </message>
  <message>
   <source>volts before a linear regulator</source>
   <translation>tension avant un régulateur linéaire</translation>
  </message>
  <message>
   <source>EMF</source>
   <translation>FEM</translation>
  </message>
  <message>
   <source>internal resistance</source>
   <translation>résistance interne</translation>
  </message>
  <message>
   <source>volts across a diode</source>
   <translation>tension par diode</translation>
  </message>
  <message>
   <source>reservoir</source>
   <translation>réservoir</translation>
  </message>
  <message>
   <source>regulated volts</source>
   <translation>tension stabilisée</translation>
  </message>
  <message>
   <source>dropout</source>
   <translation>chute du régulateur</translation>
  </message>
  <message>
   <source>resistance</source>
   <translation>résistance</translation>
  </message>
  <message>
   <source>tolerance</source>
   <translation>tolérance</translation>
  </message>
  <message>
   <source>resistance at 25 °C</source>
   <translation>résistance à 25 °C</translation>
  </message>
  <message>
   <source>beta</source>
   <translation>bêta</translation>
  </message>
  <message>
   <source>dissipation factor</source>
   <translation>facteur de dissipation</translation>
  </message>
  <message>
   <source>time constant</source>
   <translation>constante de temps</translation>
  </message>
  <message>
   <source>largest current</source>
   <translation>courant maximal</translation>
  </message>
  <message>
   <source>largest capacitance</source>
   <translation>plus grande capacité</translation>
  </message>
  <message>
   <source>coil volts</source>
   <translation>tension de bobine</translation>
  </message>
  <message>
   <source>coil resistance</source>
   <translation>résistance de bobine</translation>
  </message>
  <message>
   <source>pull-in volts</source>
   <translation>tension de collage</translation>
  </message>
  <message>
   <source>drop-out volts</source>
   <translation>tension de retombée</translation>
  </message>
  <message>
   <source>time of travel</source>
   <translation>temps de course</translation>
  </message>
  <message>
   <source>contact rating</source>
   <translation>pouvoir du contact</translation>
  </message>
  <message>
   <source>cold resistance</source>
   <translation>résistance à froid</translation>
  </message>
  <message>
   <source>melting I²t</source>
   <translation>I²t de fusion</translation>
  </message>
  <message>
   <source>capacitance</source>
   <translation>capacité</translation>
  </message>
  <message>
   <source>forward volts</source>
   <translation>tension directe</translation>
  </message>
  <message>
   <source>wiper position</source>
   <translation>position du curseur</translation>
  </message>
  <message>
   <source>volts above chassis</source>
   <translation>volts / châssis</translation>
  </message>
  <message>
   <source>source resistance</source>
   <translation>résistance de source</translation>
  </message>
  <message>
   <source>wire gauge</source>
   <translation>calibre du fil</translation>
  </message>
  <message>
   <source>wire area</source>
   <translation>section du fil</translation>
  </message>
  <message>
   <source>length</source>
   <translation>longueur</translation>
  </message>
  <message>
   <source>nominal mains volts</source>
   <translation>tension secteur nominale</translation>
  </message>
  <message>
   <source>low mains</source>
   <translation>tension secteur basse</translation>
  </message>
  <message>
   <source>high mains</source>
   <translation>tension secteur haute</translation>
  </message>
  <message>
   <source>mains frequency</source>
   <translation>fréquence du secteur</translation>
  </message>
  <message>
   <source>ambient temperature</source>
   <translation>température ambiante</translation>
  </message>
  <message>
   <source>place on the sheet</source>
   <translation>position sur la feuille</translation>
  </message>
  <message>
   <source>mirrored</source>
   <translation>en miroir</translation>
  </message>
  <message>
   <source>width on the sheet</source>
   <translation>largeur sur la feuille</translation>
  </message>
  <message>
   <source>height on the sheet</source>
   <translation>hauteur sur la feuille</translation>
  </message>
  <message>
   <source>{id} does not end on {terminal}.</source>
   <translation>{id} n'arrive pas à {terminal}.</translation>
  </message>
  <message>
   <source>No wire ends on {terminal}.</source>
   <translation>Aucun fil n'arrive à {terminal}.</translation>
  </message>
  <message>
   <source>{id} does not end on the chassis.</source>
   <translation>{id} n'arrive pas au châssis.</translation>
  </message>
  <message>
   <source>There is no kind of part called {kind}.</source>
   <translation>Il n’existe pas de composant du genre {kind}.</translation>
  </message>
  <message>
   <source>{id} cannot be made: {why}.</source>
   <translation>{id} ne peut être créé : {why}.</translation>
  </message>
  <message>
   <source>{id} is no part of two terminals.</source>
   <translation>{id} n’est pas un composant à deux bornes.</translation>
  </message>
  <message>
   <source>version {step} of the sheet file is not known</source>
   <translation>la version {step} du fichier de feuille n'est pas connue</translation>
  </message>
  <message>
   <source>This is no sheet of version {step}, though it says so</source>
   <translation>Ce n'est pas une feuille de version {step}, bien qu'elle le dise</translation>
  </message>
  <message>
   <source>Preferred values exist only for numbers above zero, such as 47.</source>
   <translation>Il n'y a de valeurs normalisées qu'au-dessus de zéro, par exemple 47.</translation>
  </message>
  <message>
   <source>No preferred value is near {value}.</source>
   <translation>Aucune valeur normalisée n'est proche de {value}.</translation>
  </message>
  <message>
   <source>A power in watts is expected, zero or more, such as 2.5.</source>
   <translation>Une puissance en watts est attendue, zéro ou plus, par exemple 2.5.</translation>
  </message>
  <message>
   <source>the relay chatters: pulling in takes away what pulled it in</source>
   <translation>le relais bat : en collant il ôte ce qui le faisait coller</translation>
  </message>
  <message>
   <source>the relays chatter: pulling in takes away what pulled them in</source>
   <translation>les relais battent : le collage enlève ce qui les a collés</translation>
  </message>
  <message>
   <source>{type} is not in the catalogue; its heater pins are not known.</source>
   <translation>{type} n'est pas au catalogue ; ses broches de filament ne sont pas connues.</translation>
  </message>
  <message>
   <source>The heater pins of {type} are not known.</source>
   <translation>Les broches de filament de {type} ne sont pas connues.</translation>
  </message>
  <message>
   <source>Pin {pin} carries a wire and would become a heater pin.</source>
   <translation>La broche {pin} porte un fil et deviendrait une broche de filament.</translation>
  </message>
  <message>
   <source>Pin {pin} carries a wire; {base} has no such pin.</source>
   <translation>La broche {pin} porte un fil ; {base} n'a pas cette broche.</translation>
  </message>
  <message>
   <source>The two heaters are not divided alike.</source>
   <translation>Les deux filaments ne sont pas divisés de la même façon.</translation>
  </message>
  <message>
   <source>The taps of the two heaters do not serve the same purpose.</source>
   <translation>Les prises des deux filaments n'ont pas le même rôle.</translation>
  </message>
  <message>
   <source>The tapped heater is wired neither in series nor with its halves side by side.</source>
   <translation>Le filament à prise n'est câblé ni en série ni avec ses moitiés en parallèle.</translation>
  </message>
  <message>
   <source>It is wired for {volts}; {type} needs other volts.</source>
   <translation>Il est câblé pour {volts} ; {type} demande une autre tension.</translation>
  </message>
  <message>
   <source>The wires of {id} stay where they are: move them by hand.</source>
   <translation>Les fils de {id} restent où ils sont : les déplacer à la main.</translation>
  </message>
  <message>
   <source>The base changes from {old} to {new}: another socket.</source>
   <translation>Le culot passe de {old} à {new} : un autre support.</translation>
  </message>
  <message>
   <source>The heater needs {new} instead of {old}.</source>
   <translation>Le filament demande {new} au lieu de {old}.</translation>
  </message>
  <message>
   <source>The heater takes {new} instead of {old}.</source>
   <translation>Le filament prend {new} au lieu de {old}.</translation>
  </message>
  <message>
   <source>The wires on pin {old} go to pin {new}.</source>
   <translation>Les fils de la broche {old} vont à la broche {new}.</translation>
  </message>
  <message>
   <source>Pins {one} and {other} become one pin.</source>
   <translation>Les broches {one} et {other} n'en font plus qu'une.</translation>
  </message>
  <message>
   <source>A strap joins pins {one} and {other}.</source>
   <translation>Un pont relie les broches {one} et {other}.</translation>
  </message>
  <message>
   <source>The heater pins stay as they are.</source>
   <translation>Les broches de filament restent les mêmes.</translation>
  </message>
  <message>
   <source>{owners} in one string want different currents</source>
   <translation>{owners} veulent des courants différents dans une même chaîne</translation>
  </message>
  <message>
   <source>One current flows in all of them, but {low} is wanted by {low_ids} and {high} by {high_ids}.</source>
   <translation>Un seul courant traverse tout, mais {low_ids} veut {low} et {high_ids} veut {high}.</translation>
  </message>
  <message>
   <source>One current flows in all of them, but {low} is wanted by {low_ids} and {high} by {high_ids}: {one} gets {over} of {over_rated}, {other} {under} of {under_rated}.</source>
   <translation>Un seul courant traverse tout, mais {low_ids} veut {low} et {high_ids} veut {high} : {one} reçoit {over} au lieu de {over_rated}, {other} {under} au lieu de {under_rated}.</translation>
  </message>
  <message>
   <source>Put only heaters of one current in a string.</source>
   <translation>Ne mettre dans une chaîne que des filaments de même courant.</translation>
  </message>
  <message>
   <source>A shunt of {ohm} {w} across {id} carries the other {spare}.</source>
   <translation>Un shunt de {ohm} {w} aux bornes de {id} conduit les {spare} restants.</translation>
  </message>
  <message>
   <source>A shunt of {ohm} {w} across {id} carries the other {spare}; so does one like it across {others}.</source>
   <translation>Un shunt de {ohm} {w} aux bornes de {id} conduit les {spare} restants ; de même aux bornes de {others}.</translation>
  </message>
  <message>
   <source>A shunt of {ohm} {w} across {id} carries the other {spare}; also {more}.</source>
   <translation>Un shunt de {ohm} {w} aux bornes de {id} conduit les {spare} restants ; aussi {more}.</translation>
  </message>
  <message>
   <source>{ohm} {w} across {id}</source>
   <translation>{ohm} {w} aux bornes de {id}</translation>
  </message>
  <message>
   <source>Shunt {ids} by {ohm} {w}</source>
   <translation>Shunter {ids} par {ohm} {w}</translation>
  </message>
  <message>
   <source>Fit shunts across {ids}</source>
   <translation>Mettre des shunts à {ids}</translation>
  </message>
  <message>
   <source>RCA 12AX7-A data sheet, 10-60: ±6 % for series operation</source>
   <translation>notice RCA 12AX7-A, 10-60 : ±6 % en chauffage série</translation>
  </message>
  <message>
   <source>common practice: below a twentieth of its rated volts a heater does not glow</source>
   <translation>usage courant : sous un vingtième de sa tension nominale un filament ne rougeoie pas</translation>
  </message>
  <message>
   <source>Lamp {id}</source>
   <translation>Lampe {id}</translation>
  </message>
  <message>
   <source>{id} is not heated</source>
   <translation>{id} n'est pas chauffé</translation>
  </message>
  <message>
   <source>{name} stays cold: no wire ends on its heater {pins}.</source>
   <translation>{name} reste froid : aucun fil n'arrive sur {pins} de son filament.</translation>
  </message>
  <message>
   <source>Wire {pins} to the heater supply.</source>
   <translation>Relier {pins} à l'alimentation de chauffage.</translation>
  </message>
  <message>
   <source>{name} stays cold: only {pin} is wired, so no current can flow.</source>
   <translation>{name} reste froid : seule {pin} est câblée, aucun courant ne peut passer.</translation>
  </message>
  <message>
   <source>Wire {pins} to the other side of the supply.</source>
   <translation>Relier {pins} à l'autre côté de l'alimentation.</translation>
  </message>
  <message>
   <source>{name} stays cold: a wire joins {pins} of its heater.</source>
   <translation>{name} reste froid : un fil relie {pins} de son filament.</translation>
  </message>
  <message>
   <source>Take out the wire that joins the ends of the heater.</source>
   <translation>Ôter le fil qui relie les extrémités du filament.</translation>
  </message>
  <message>
   <source>{name} stays cold: {part} joins {pins} of its heater.</source>
   <translation>{name} reste froid : {part} relie {pins} de son filament.</translation>
  </message>
  <message>
   <source>Open {part}, or take it off the heater.</source>
   <translation>Ouvrir {part}, ou l'ôter du filament.</translation>
  </message>
  <message>
   <source>Open {id}</source>
   <translation>Ouvrir {id}</translation>
  </message>
  <message>
   <source>{name} stays cold: no supply feeds its heater.</source>
   <translation>{name} reste froid : aucune alimentation ne nourrit son filament.</translation>
  </message>
  <message>
   <source>Wire the line to a winding or another heater supply.</source>
   <translation>Relier la ligne à un enroulement ou à une autre alimentation de chauffage.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} gives next to nothing.</source>
   <translation>{name} reste froid : {ids} ne donne presque rien.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} give next to nothing.</source>
   <translation>{name} reste froid : {ids} ne donnent presque rien.</translation>
  </message>
  <message>
   <source>Look for the short circuit or overload of {ids} first.</source>
   <translation>Chercher d'abord le court-circuit ou la surcharge de {ids}.</translation>
  </message>
  <message>
   <source>{name} stays cold: its wires lead to no two sides of a supply.</source>
   <translation>{name} reste froid : ses fils ne mènent pas aux deux côtés d'une alimentation.</translation>
  </message>
  <message>
   <source>Wire its heater between the two sides of {ids}.</source>
   <translation>Câbler son filament entre les deux côtés de {ids}.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} in its string is pulled, so no current flows.</source>
   <translation>{name} reste froid : {ids} est retiré de sa chaîne, aucun courant ne passe.</translation>
  </message>
  <message>
   <source>Put {ids} back: one tube out of a string cools them all.</source>
   <translation>Remettre {ids} : un tube ôté d'une chaîne les refroidit tous.</translation>
  </message>
  <message>
   <source>{name} stays cold: its current would flow through {ids}, of unknown type.</source>
   <translation>{name} reste froid : son courant passerait par {ids}, de type inconnu.</translation>
  </message>
  <message>
   <source>Choose a type for {ids} that the catalogue has.</source>
   <translation>Choisir pour {ids} un type du catalogue.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} blocks its current.</source>
   <translation>{name} reste froid : {ids} bloque son courant.</translation>
  </message>
  <message>
   <source>Turn {ids} round.</source>
   <translation>Retourner {ids}.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} in its loop passes no heater current.</source>
   <translation>{name} reste froid : {ids} dans sa boucle ne laisse pas passer le courant de chauffage.</translation>
  </message>
  <message>
   <source>Bridge {ids} by a wire.</source>
   <translation>Ponter {ids} par un fil.</translation>
  </message>
  <message>
   <source>{name} stays cold: {ids} stands open.</source>
   <translation>{name} reste froid : {ids} est ouvert.</translation>
  </message>
  <message>
   <source>Close {ids}.</source>
   <translation>Fermer {ids}.</translation>
  </message>
  <message>
   <source>Put {ids} back</source>
   <translation>Remettre {ids}</translation>
  </message>
  <message>
   <source>Close {ids}</source>
   <translation>Fermer {ids}</translation>
  </message>
  <message>
   <source>Bridge {ids}</source>
   <translation>Ponter {ids}</translation>
  </message>
  <message>
   <source>Turn {ids} round</source>
   <translation>Retourner {ids}</translation>
  </message>
  <message>
   <source>{name} stays cold: {id} stands open, as the line of its coil is not solved.</source>
   <translation>{name} reste froid : {id} est ouvert, car la ligne de sa bobine n’est pas résolue.</translation>
  </message>
  <message>
   <source>Put the line of the coil of {id} right first.</source>
   <translation>Mettez d’abord en ordre la ligne de la bobine de {id}.</translation>
  </message>
  <message>
   <source>{name} stays cold: {id} stands open while it is pulled in.</source>
   <translation>{name} reste froid : {id} est ouvert tant qu'il est collé.</translation>
  </message>
  <message>
   <source>Move the heater to the other contact of {id}.</source>
   <translation>Mettre le filament sur l'autre contact de {id}.</translation>
  </message>
  <message>
   <source>{name} stays cold: {id} stands open, because its coil gets {v} and pulls in at {pull_in}.</source>
   <translation>{name} reste froid : {id} est ouvert, car sa bobine reçoit {v} et colle à {pull_in}.</translation>
  </message>
  <message>
   <source>Give the coil of {id} its {coil}.</source>
   <translation>Donner à la bobine de {id} ses {coil}.</translation>
  </message>
  <message>
   <source>Move {old} to {new}</source>
   <translation>Déplacer {old} vers {new}</translation>
  </message>
  <message>
   <source>Only a part of {id} ({type}) is heated: its section {warm} gets {v}, but section {dead} ({pins}) gets {none}.</source>
   <translation>Une partie seulement de {id} ({type}) est chauffée : la section {warm} reçoit {v}, mais la section {dead} ({pins}) {none}.</translation>
  </message>
  <message>
   <source>Only a part of {id} ({type}) is heated: its sections {warm} get {v}, but section {dead} ({pins}) gets {none}.</source>
   <translation>Une partie seulement de {id} ({type}) est chauffée : les sections {warm} reçoivent {v}, mais la section {dead} ({pins}) {none}.</translation>
  </message>
  <message>
   <source>{id} is only half heated</source>
   <translation>{id} n'est chauffé qu'à moitié</translation>
  </message>
  <message>
   <source>Take out the wire that joins {pins}.</source>
   <translation>Ôter le fil qui relie {pins}.</translation>
  </message>
  <message>
   <source>Strap pin {one} to pin {other}, so that both halves lie between that strap and {tap}.</source>
   <translation>Ponter la broche {one} et la broche {other}, pour que les deux moitiés soient entre ce pont et {tap}.</translation>
  </message>
  <message>
   <source>Strap {a} to {b}</source>
   <translation>Ponter {a} et {b}</translation>
  </message>
  <message>
   <source>Feed the whole heater between {pins}.</source>
   <translation>Alimenter le filament entier entre {pins}.</translation>
  </message>
  <message>
   <source>Move pin {a} to pin {b}</source>
   <translation>Déplacer la broche {a} vers la broche {b}</translation>
  </message>
  <message>
   <source>Set {id} to {v}</source>
   <translation>Régler {id} à {v}</translation>
  </message>
  <message>
   <source>Set {id} to {v}.</source>
   <translation>Régler {id} à {v}.</translation>
  </message>
  <message>
   <source>{ohm} {w} in series with {id} alone brings it to its rated volts at nominal mains.</source>
   <translation>{ohm} {w} en série avec {id} seul l'amène à sa tension nominale au secteur nominal.</translation>
  </message>
  <message>
   <source>Make {id} {ohm} {w}</source>
   <translation>Faire {id} de {ohm} {w}</translation>
  </message>
  <message>
   <source>The halves of {id} are loaded unequally: share the heaters evenly between them first.</source>
   <translation>Les moitiés de {id} sont inégalement chargées : répartir d'abord les filaments.</translation>
  </message>
  <message>
   <source>Use a supply of {v}.</source>
   <translation>Prendre une alimentation de {v}.</translation>
  </message>
  <message>
   <source>{ohm} {w} in series with {id} brings the heater to its rated volts at nominal mains.</source>
   <translation>{ohm} {w} en série avec {id} amène le filament à sa tension nominale au secteur nominal.</translation>
  </message>
  <message>
   <source>{ohm} {w} in each leg of {id} brings its heaters to their rated volts at nominal mains.</source>
   <translation>{ohm} {w} dans chaque branche de {id} amène ses filaments à leur tension nominale au secteur nominal.</translation>
  </message>
  <message>
   <source>{ohm} {w} in the leg at {leg} brings {heaters} to rated volts at nominal mains.</source>
   <translation>{ohm} {w} dans la branche {leg} amène {heaters} à la tension nominale au secteur nominal.</translation>
  </message>
  <message>
   <source>Size the dropper so that rated current flows at nominal mains.</source>
   <translation>Choisir la résistance série pour que le courant nominal passe au secteur nominal.</translation>
  </message>
  <message>
   <source>The heaters of the string want more volts than the mains give, or less than a dropper can take: change what stands in the string.</source>
   <translation>Les filaments de la chaîne veulent plus de volts que le secteur, ou moins que ce qu'une résistance peut prendre : changer la chaîne.</translation>
  </message>
  <message>
   <source>{ohm} {w} more in series brings rated current at nominal mains.</source>
   <translation>{ohm} {w} de plus en série donne le courant nominal au secteur nominal.</translation>
  </message>
  <message>
   <source>{ohm} less in series with the string brings rated current at nominal mains.</source>
   <translation>{ohm} de moins en série avec la chaîne donne le courant nominal au secteur nominal.</translation>
  </message>
  <message>
   <source>{size} throughout</source>
   <translation>{size} partout</translation>
  </message>
  <message>
   <source>Heavier wire, up to {size}</source>
   <translation>Fil plus gros, jusqu'à {size}</translation>
  </message>
  <message>
   <source>usual practice for receiving tubes: M. J. Darby, The Radio Constructor, April 1962</source>
   <translation>usage des tubes de réception : M. J. Darby, The Radio Constructor, avril 1962</translation>
  </message>
  <message>
   <source>{id} above {limit}</source>
   <translation>{id} au-dessus de {limit}</translation>
  </message>
  <message>
   <source>{id} below {limit}</source>
   <translation>{id} au-dessous de {limit}</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) gets {v} at {condition}, {off} off its {rated}; {band} is allowed.</source>
   <translation>Le filament de {id} ({type}) reçoit {v} sous {condition}, {off} par rapport à ses {rated} ; {band} est permis.</translation>
  </message>
  <message>
   <source>Lamp {id} above {limit}</source>
   <translation>Lampe {id} au-dessus de {limit}</translation>
  </message>
  <message>
   <source>Lamp {id} gets {v} at {condition}, {off} off its {rated}: it will not last.</source>
   <translation>La lampe {id} reçoit {v} sous {condition}, {off} par rapport à ses {rated} : elle ne durera pas.</translation>
  </message>
  <message>
   <source>common practice: the life of a lamp falls with the 12th power of its volts</source>
   <translation>usage courant : la vie d'une lampe baisse comme la puissance 12 de sa tension</translation>
  </message>
  <message>
   <source>String current of {id} above {limit}</source>
   <translation>Courant de chaîne de {id} au-dessus de {limit}</translation>
  </message>
  <message>
   <source>String current of {id} below {limit}</source>
   <translation>Courant de chaîne de {id} au-dessous de {limit}</translation>
  </message>
  <message>
   <source>The string sends {a} through {id} ({type}) at {condition}, {off} off its {rated}; {band} is allowed in a string.</source>
   <translation>La chaîne fait passer {a} dans {id} ({type}) sous {condition}, {off} par rapport à ses {rated} ; {band} est permis dans une chaîne.</translation>
  </message>
  <message>
   <source>Heater of {id} too far from its cathode</source>
   <translation>Filament de {id} trop loin de sa cathode</translation>
  </message>
  <message>
   <source>{v} peak</source>
   <translation>{v} crête</translation>
  </message>
  <message>
   <source>{v} DC</source>
   <translation>{v} continus</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is {v} above its cathode, which stands at {cathode} (at {condition}); {limit} is allowed.</source>
   <translation>Le filament de {id} ({type}) est à {v} au-dessus de sa cathode, qui est à {cathode} (sous {condition}) ; {limit} est permis.</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is {v} below its cathode, which stands at {cathode} (at {condition}); {limit} is allowed.</source>
   <translation>Le filament de {id} ({type}) est à {v} au-dessous de sa cathode, qui est à {cathode} (sous {condition}) ; {limit} est permis.</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is {v} above its cathode (at {condition}); no limit is published for the type, and more than {limit} is asking for trouble.</source>
   <translation>Le filament de {id} ({type}) est à {v} au-dessus de sa cathode (sous {condition}) ; aucune limite n'est publiée pour ce type, et plus de {limit} est risqué.</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is {v} below its cathode (at {condition}); no limit is published for the type, and more than {limit} is asking for trouble.</source>
   <translation>Le filament de {id} ({type}) est à {v} au-dessous de sa cathode (sous {condition}) ; aucune limite n'est publiée pour ce type, et plus de {limit} est risqué.</translation>
  </message>
  <message>
   <source>common practice: 90 V, the lowest limit of ordinary types</source>
   <translation>usage courant : 90 V, la limite la plus basse des types ordinaires</translation>
  </message>
  <message>
   <source>the limits of the type</source>
   <translation>les limites du type</translation>
  </message>
  <message>
   <source>Move {ids} towards the chassis end of the string.</source>
   <translation>Rapprocher {ids} du bout de la chaîne côté châssis.</translation>
  </message>
  <message>
   <source>Lift the heater line to between {low} and {high} above the chassis; {best} is best.</source>
   <translation>Surélever la ligne de chauffage entre {low} et {high} au-dessus du châssis ; {best} est le mieux.</translation>
  </message>
  <message>
   <source>Lift it to {v}</source>
   <translation>Surélever à {v}</translation>
  </message>
  <message>
   <source>No lift suits {ids}: the heater volts themselves are more than the limits allow.</source>
   <translation>Aucune surélévation ne convient à {ids} : la tension de chauffage dépasse déjà les limites.</translation>
  </message>
  <message>
   <source>No single lift suits every cathode of this line: use two supplies, one of them for {ids}.</source>
   <translation>Aucune surélévation ne convient à toutes les cathodes de cette ligne : prendre deux alimentations, dont une pour {ids}.</translation>
  </message>
  <message>
   <source>The cathode of {id} ({type}) is its heater or joined to it, so the line it shares with {others} would stand at the high tension.</source>
   <translation>La cathode de {id} ({type}) est son filament ou lui est reliée : la ligne partagée avec {others} serait à la haute tension.</translation>
  </message>
  <message>
   <source>The cathode of {id} ({type}) is its heater or joined to it, and the line is tied to the chassis: that shorts the high tension.</source>
   <translation>La cathode de {id} ({type}) est son filament ou lui est reliée, et la ligne est au châssis : la haute tension est en court-circuit.</translation>
  </message>
  <message>
   <source>{id} needs a heater winding of its own</source>
   <translation>{id} demande un enroulement de chauffage à lui</translation>
  </message>
  <message>
   <source>Give {id} a winding of its own that is tied to nothing else.</source>
   <translation>Donner à {id} un enroulement à lui, relié à rien d'autre.</translation>
  </message>
  <message>
   <source>common practice</source>
   <translation>usage courant</translation>
  </message>
  <message>
   <source>Fit a winding of {v}, {a}</source>
   <translation>Mettre un enroulement de {v}, {a}</translation>
  </message>
  <message>
   <source>Strap {a} to {b}, wire {pins}</source>
   <translation>Ponter {a} et {b}, relier {pins}</translation>
  </message>
  <message>
   <source>Wire {pins}</source>
   <translation>Relier {pins}</translation>
  </message>
  <message>
   <source>pin {pin} to {terminal}</source>
   <translation>la broche {pin} à {terminal}</translation>
  </message>
  <message>
   <source>Take out {ids}</source>
   <translation>Ôter {ids}</translation>
  </message>
  <message>
   <source>Fit {ohm} {w} at {terminal}</source>
   <translation>Mettre {ohm} {w} en {terminal}</translation>
  </message>
  <message>
   <source>Fit {ohm} {w} in each leg</source>
   <translation>Mettre {ohm} {w} dans chaque branche</translation>
  </message>
  <message>
   <source>{id}: {pins} on the chassis</source>
   <translation>{id} : {pins} au châssis</translation>
  </message>
  <message>
   <source>On {id} ({type}) {pins} is no heater pin but wired to the chassis, as a screen may be.</source>
   <translation>Sur {id} ({type}), {pins} n'est pas au filament mais va au châssis, comme un blindage peut le faire.</translation>
  </message>
  <message>
   <source>On {id} ({type}) {pins} are no heater pins but wired to the chassis, as a screen may be.</source>
   <translation>Sur {id} ({type}), {pins} ne sont pas au filament mais vont au châssis, comme un blindage peut le faire.</translation>
  </message>
  <message>
   <source>If the heater was meant, it is on {heater}.</source>
   <translation>Si le filament était visé : il est sur {heater}.</translation>
  </message>
  <message>
   <source>{id}: wire on {pins}</source>
   <translation>{id} : fil sur {pins}</translation>
  </message>
  <message>
   <source>Move {moves}</source>
   <translation>Déplacer {moves}</translation>
  </message>
  <message>
   <source>pin {a} to pin {b}</source>
   <translation>broche {a} vers broche {b}</translation>
  </message>
  <message>
   <source>The wires of {id} ({type}) end on {wrong}, the mirror image of its heater {pins}: pins are counted clockwise seen from below.</source>
   <translation>Les fils de {id} ({type}) arrivent sur {wrong}, l'image en miroir du filament ({pins}) : les broches se comptent dans le sens horaire, vues de dessous.</translation>
  </message>
  <message>
   <source>Move them: {moves}.</source>
   <translation>Les déplacer : {moves}.</translation>
  </message>
  <message>
   <source>A wire ends on {wrong} of {id} ({type}), but its base {base} has no such pin.</source>
   <translation>Un fil arrive sur {wrong} de {id} ({type}), mais son culot {base} n'a pas cette broche.</translation>
  </message>
  <message>
   <source>Its heater is on {pins}.</source>
   <translation>Son filament est sur {pins}.</translation>
  </message>
  <message>
   <source>A wire ends on pin 9 of {id} ({type}), which is no heater tap there: the heater is on {pins}.</source>
   <translation>Un fil arrive sur la broche 9 de {id} ({type}), qui n'y a pas de prise de filament : le filament est sur {pins}.</translation>
  </message>
  <message>
   <source>Take the wire off pin 9; only tubes with a tapped heater, such as the 12AX7, are fed there.</source>
   <translation>Ôter le fil de la broche 9 ; seuls les tubes à filament à prise, comme la 12AX7, s'alimentent là.</translation>
  </message>
  <message>
   <source>A heater wire ends on {wrong} of {id} ({type}), whose heater is on {pins}.</source>
   <translation>Un fil de chauffage arrive sur {wrong} de {id} ({type}), dont le filament est sur {pins}.</translation>
  </message>
  <message>
   <source>Move it to {pins}, or take it off.</source>
   <translation>Le mettre sur {pins}, ou l'ôter.</translation>
  </message>
  <message>
   <source>{id} carries {a} at {condition}, more than the {limit} it is made for: it will blow sooner or later.</source>
   <translation>{id} conduit {a} sous {condition}, plus que les {limit} prévus : il fondra tôt ou tard.</translation>
  </message>
  <message>
   <source>{id} carries {a} at {condition}, more than four fifths of its {limit}: it ages fast.</source>
   <translation>{id} conduit {a} sous {condition}, plus des quatre cinquièmes de ses {limit} : il vieillit vite.</translation>
  </message>
  <message>
   <source>{id} is too small</source>
   <translation>{id} est trop petit</translation>
  </message>
  <message>
   <source>{id} runs near its rating</source>
   <translation>{id} est près de son calibre</translation>
  </message>
  <message>
   <source>common practice: a fuse is rated for its full current (IEC 60127), and runs cool at four fifths of it</source>
   <translation>usage courant : un fusible tient son plein courant (CEI 60127) et reste froid aux quatre cinquièmes</translation>
  </message>
  <message>
   <source>Fit the next fuse of at least {wanted}, or share the load.</source>
   <translation>Mettre le fusible suivant d'au moins {wanted}, ou répartir la charge.</translation>
  </message>
  <message>
   <source>Fit the next fuse of at least {wanted}, which is {fuse}, or share the load.</source>
   <translation>Mettre le fusible suivant d'au moins {wanted}, soit {fuse}, ou répartir la charge.</translation>
  </message>
  <message>
   <source>Fit {fuse}</source>
   <translation>Mettre {fuse}</translation>
  </message>
  <message>
   <source>{id} carries too much</source>
   <translation>{id} conduit trop</translation>
  </message>
  <message>
   <source>{id} carries {a} at {condition}; {limit} is the most that it may.</source>
   <translation>{id} conduit {a} sous {condition} ; {limit} est son maximum.</translation>
  </message>
  <message>
   <source>the rating of the thermistor</source>
   <translation>le calibre de la thermistance</translation>
  </message>
  <message>
   <source>Take a thermistor for {a} or more.</source>
   <translation>Prendre une thermistance pour {a} ou plus.</translation>
  </message>
  <message>
   <source>Take one for {a}</source>
   <translation>En prendre une pour {a}</translation>
  </message>
  <message>
   <source>Take {type}</source>
   <translation>Prendre {type}</translation>
  </message>
  <message>
   <source>{id} runs hot</source>
   <translation>{id} chauffe</translation>
  </message>
  <message>
   <source>{id} turns {w} into heat at {condition}; more than {limit} is much for such a control.</source>
   <translation>{id} dissipe {w} sous {condition} ; plus de {limit} est beaucoup pour un tel réglage.</translation>
  </message>
  <message>
   <source>common practice: balance controls are small</source>
   <translation>usage courant : les potentiomètres d'équilibrage sont petits</translation>
  </message>
  <message>
   <source>Take a control of {ohm}, or one rated for {w}.</source>
   <translation>Prendre un potentiomètre de {ohm}, ou un pour {w}.</translation>
  </message>
  <message>
   <source>Take {ohm}</source>
   <translation>Prendre {ohm}</translation>
  </message>
  <message>
   <source>{id} never pulls in</source>
   <translation>{id} ne colle jamais</translation>
  </message>
  <message>
   <source>The coil of {id} gets {v}, less than the {limit} at which it pulls in.</source>
   <translation>La bobine de {id} reçoit {v}, moins que les {limit} qui la font coller.</translation>
  </message>
  <message>
   <source>the pull-in volts of the relay</source>
   <translation>la tension de collage du relais</translation>
  </message>
  <message>
   <source>Give the coil its {v}, or take a relay for fewer volts.</source>
   <translation>Donner à la bobine ses {v}, ou prendre un relais de tension plus basse.</translation>
  </message>
  <message>
   <source>Give the coil its {v}, or take a relay for {less}, such as {type}.</source>
   <translation>Donner à la bobine ses {v}, ou prendre un relais pour {less}, comme {type}.</translation>
  </message>
  <message>
   <source>The heater line of {ids} floats</source>
   <translation>La ligne de chauffage de {ids} est flottante</translation>
  </message>
  <message>
   <source>Nothing ties the heater line of {ids} to the chassis: it drifts to any voltage, hums, and strains the insulation between heater and cathode.</source>
   <translation>Rien ne relie la ligne de chauffage de {ids} au châssis : elle prend n'importe quelle tension, ronfle et fatigue l'isolement entre filament et cathode.</translation>
  </message>
  <message>
   <source>common practice: every heater line has one reference</source>
   <translation>usage courant : chaque ligne de chauffage a une seule référence</translation>
  </message>
  <message>
   <source>Wire the centre tap {tap} to the chassis, or to a DC lift.</source>
   <translation>Relier le point milieu {tap} au châssis, ou à une surélévation continue.</translation>
  </message>
  <message>
   <source>Wire {minus} to the chassis, or to a DC lift.</source>
   <translation>Relier {minus} au châssis, ou à une surélévation continue.</translation>
  </message>
  <message>
   <source>Two resistors of {ohm}, one from each side to the chassis, make the middle of it: each turns {w} into heat, so fit {rated}.</source>
   <translation>Deux résistances de {ohm}, une de chaque côté au châssis, en font le milieu : chacune dissipe {w}, donc prendre {rated}.</translation>
  </message>
  <message>
   <source>Fit 2 × {ohm} {rated} to the chassis</source>
   <translation>Mettre 2 × {ohm} {rated} au châssis</translation>
  </message>
  <message>
   <source>Wire {terminal} to the chassis</source>
   <translation>Relier {terminal} au châssis</translation>
  </message>
  <message>
   <source>More than one chassis tie on {ids}</source>
   <translation>Plus d'une liaison au châssis sur {ids}</translation>
  </message>
  <message>
   <source>The heater line of {ids} reaches the chassis by {ties}: a loop, so heater current shares the chassis with the signal and hums.</source>
   <translation>La ligne de chauffage de {ids} rejoint le châssis par {ties} : une boucle, où le courant de chauffage partage le châssis avec le signal et ronfle.</translation>
  </message>
  <message>
   <source>Keep one of them and take out the others.</source>
   <translation>En garder une et ôter les autres.</translation>
  </message>
  <message>
   <source>Keep {ids} only</source>
   <translation>Ne garder que {ids}</translation>
  </message>
  <message>
   <source>{id} feeds this sheet from the mains ({mains}) and the line reaches the chassis: the chassis is live, whichever way round the plug is.</source>
   <translation>{id} alimente cette feuille par le secteur ({mains}) et la ligne rejoint le châssis : le châssis est sous tension, quel que soit le sens de la fiche.</translation>
  </message>
  <message>
   <source>Take the chassis off the line, or feed the set through an isolating transformer; local codes and licensed practice come first.</source>
   <translation>Séparer le châssis de la ligne, ou alimenter l'appareil par un transformateur d'isolement ; les règles locales et les professionnels habilités passent avant tout.</translation>
  </message>
  <message>
   <source>{id} feeds this sheet straight from the mains ({mains}): every heater pin can be live, and so can the chassis of such a set.</source>
   <translation>{id} alimente cette feuille directement par le secteur ({mains}) : chaque broche de filament peut être sous tension, et le châssis d'un tel appareil aussi.</translation>
  </message>
  <message>
   <source>Work on it only behind an isolating transformer, unplugged and with its capacitors discharged; local codes and licensed practice come first.</source>
   <translation>N'y travailler que derrière un transformateur d'isolement, débranché et condensateurs déchargés ; les règles locales et les professionnels habilités passent avant tout.</translation>
  </message>
  <message>
   <source>The chassis is live</source>
   <translation>Le châssis est sous tension</translation>
  </message>
  <message>
   <source>Fed from the mains</source>
   <translation>Alimenté par le secteur</translation>
  </message>
  <message>
   <source>usual caution for sets without a mains transformer</source>
   <translation>mise en garde usuelle des appareils sans transformateur secteur</translation>
  </message>
  <message>
   <source>Take {ids} off the chassis</source>
   <translation>Ôter {ids} du châssis</translation>
  </message>
  <message>
   <source>Balance the string first: its heaters want different currents.</source>
   <translation>Équilibrer d'abord la chaîne : ses filaments veulent des courants différents.</translation>
  </message>
  <message>
   <source>A supply with fewer volts is needed.</source>
   <translation>Il faut une alimentation de moins de volts.</translation>
  </message>
  <message>
   <source>At nominal mains it is not over: mains held to {mains}, or a regulated supply, would mend it.</source>
   <translation>Au secteur nominal il n'y a pas d'excès : un secteur tenu à {mains}, ou une alimentation stabilisée, y remédierait.</translation>
  </message>
  <message>
   <source>It wants fewer volts than the other heaters of its line: feed it from a supply of its own.</source>
   <translation>Il veut moins de volts que les autres filaments de sa ligne : l'alimenter à part.</translation>
  </message>
  <message>
   <source>Mend the strap first: it shorts a part of the heater.</source>
   <translation>Corriger d'abord le pont : il met une partie du filament en court-circuit.</translation>
  </message>
  <message>
   <source>Mend the strap first: only a part of the heater is heated.</source>
   <translation>Corriger d'abord le pont : une partie seulement du filament est chauffée.</translation>
  </message>
  <message>
   <source>Mend the short circuit of {id} first.</source>
   <translation>Corriger d'abord le court-circuit de {id}.</translation>
  </message>
  <message>
   <source>The mains band moves the heaters by {low} to {high}, more than the {window} that is allowed: regulate the supply, or narrow the band.</source>
   <translation>Le secteur déplace les filaments de {low} à {high}, plus que les {window} permis : stabiliser l'alimentation ou réduire la plage.</translation>
  </message>
  <message>
   <source>Change the supplies or the resistors of this line until {id} gets {v}.</source>
   <translation>Changer les alimentations ou les résistances de cette ligne jusqu'à ce que {id} reçoive {v}.</translation>
  </message>
  <message>
   <source>Use supplies that give {share} of the present volts.</source>
   <translation>Prendre des alimentations qui donnent {share} des volts actuels.</translation>
  </message>
  <message>
   <source>A supply with more volts is needed.</source>
   <translation>Il faut une alimentation de plus de volts.</translation>
  </message>
  <message>
   <source>At nominal mains it is not under: steadier mains, or a regulated supply, would mend it.</source>
   <translation>Au secteur nominal il n'y a pas de manque : un secteur plus stable, ou une alimentation stabilisée, y remédierait.</translation>
  </message>
  <message>
   <source>{id} is at its limit: relieve it, or fit one that gives more.</source>
   <translation>{id} est à sa limite : l'alléger, ou en mettre une plus forte.</translation>
  </message>
  <message>
   <source>The wires lose {drop} on the way from {id}: heavier or shorter wire would mend it.</source>
   <translation>Les fils perdent {drop} depuis {id} : un fil plus gros ou plus court y remédierait.</translation>
  </message>
  <message>
   <source>{ohm} {w} in series with {heater}, in place of {there}, brings it to its rated volts.</source>
   <translation>{ohm} {w} en série avec {heater}, au lieu de {there}, l'amène à sa tension nominale.</translation>
  </message>
  <message>
   <source>More volts from {id} would be too many for {others}: feed {heater} from a supply of its own.</source>
   <translation>Plus de volts de {id} seraient trop pour {others} : alimenter {heater} à part.</translation>
  </message>
  <message>
   <source>A supply with more volts is needed: about {v} at this load where the half of {id} at {leg} now gives {now}.</source>
   <translation>Il faut une alimentation de plus de volts : environ {v} sous cette charge, là où la moitié de {id} en {leg} donne {now}.</translation>
  </message>
  <message>
   <source>A supply with more volts is needed: about {v} at this load where {id} now gives {now}.</source>
   <translation>Il faut une alimentation de plus de volts : environ {v} sous cette charge, là où {id} donne {now}.</translation>
  </message>
  <message>
   <source>At nominal mains the current is right: steadier mains would mend it.</source>
   <translation>Au secteur nominal le courant est juste : un secteur plus stable y remédierait.</translation>
  </message>
  <message>
   <source>The heaters want {v} in all; {id} gives {now}.</source>
   <translation>Les filaments veulent {v} en tout ; {id} donne {now}.</translation>
  </message>
  <message>
   <source>Terminals {ends} of {id} are joined by {path} with no heater between: a short circuit.</source>
   <translation>Les bornes {ends} de {id} sont reliées par {path} sans filament entre elles : un court-circuit.</translation>
  </message>
  <message>
   <source>Terminals {ends} of {id} are joined by {path} with no heater between: a short circuit of {a}.</source>
   <translation>Les bornes {ends} de {id} sont reliées par {path} sans filament entre elles : un court-circuit de {a}.</translation>
  </message>
  <message>
   <source>{id} is short-circuited</source>
   <translation>{id} est en court-circuit</translation>
  </message>
  <message>
   <source>Take out {one}, or move one of its ends.</source>
   <translation>Ôter {one}, ou déplacer l'un de ses bouts.</translation>
  </message>
  <message>
   <source>a supply feeds heaters, not a wire</source>
   <translation>une alimentation nourrit des filaments, pas un fil</translation>
  </message>
  <message>
   <source>the joining wire</source>
   <translation>le fil qui relie</translation>
  </message>
  <message>
   <source>{id} gets too much while others are cold</source>
   <translation>{id} reçoit trop tant que d’autres sont froids</translation>
  </message>
  <message>
   <source>{id} gets {v} for a moment at {condition}, {share} of its {rated}: it warms faster than the others.</source>
   <translation>{id} reçoit un moment {v} à {condition}, {share} de ses {rated} : il chauffe plus vite que les autres.</translation>
  </message>
  <message>
   <source>Put a shunt across it that carries the surge, or a thermistor in the string.</source>
   <translation>Mettez en parallèle une résistance qui supporte la pointe, ou une thermistance dans la chaîne.</translation>
  </message>
  <message>
   <source>Put a thermistor in the string, or a type that warms as fast as the others.</source>
   <translation>Mettez une thermistance dans la chaîne, ou un type qui chauffe aussi vite que les autres.</translation>
  </message>
  <message>
   <source>common practice: half as much again at switch-on</source>
   <translation>pratique courante : moitié plus à la mise sous tension</translation>
  </message>
  <message>
   <source>Mullard Outlook vol. 12 no. 9, February 1963: up to 50 % over while a series chain warms up</source>
   <translation>Mullard Outlook vol. 12 n° 9, février 1963 : jusqu’à 50 % de plus pendant la chauffe d’une chaîne série</translation>
  </message>
  <message>
   <source>The cathode of {id} is not ready after {time} at {condition}; alone at its rated volts it takes {own}.</source>
   <translation>La cathode de {id} n’est pas prête après {time} à {condition} ; seule à sa tension nominale il lui faut {own}.</translation>
  </message>
  <message>
   <source>The cathode of {id} is ready after {time} at {condition}; alone at its rated volts it takes {own}.</source>
   <translation>La cathode de {id} est prête après {time} à {condition} ; seule à sa tension nominale il lui faut {own}.</translation>
  </message>
  <message>
   <source>{id} warms up slowly</source>
   <translation>{id} chauffe lentement</translation>
  </message>
  <message>
   <source>Bypass the soft start once the inrush is over, lower its resistance, or let high tension wait.</source>
   <translation>Pontez le démarrage progressif une fois la pointe passée, baissez sa résistance, ou faites attendre la haute tension.</translation>
  </message>
  <message>
   <source>common practice: on a constant current a tube takes about twice as long as at constant volts</source>
   <translation>pratique courante : à courant constant un tube met environ deux fois plus de temps qu’à tension constante</translation>
  </message>
  <message>
   <source>{id} may blow at switch-on</source>
   <translation>{id} peut fondre à la mise sous tension</translation>
  </message>
  <message>
   <source>{id} carries more than {many} times its rating for {time} at {condition}; it may melt after {earliest}.</source>
   <translation>{id} porte plus de {many} fois son calibre pendant {time} à {condition} ; il peut fondre après {earliest}.</translation>
  </message>
  <message>
   <source>Limit the inrush with a soft start; take no larger fuse than the wiring bears.</source>
   <translation>Limitez l’appel de courant par un démarrage progressif ; ne prenez pas de fusible plus gros que ce que supporte le câblage.</translation>
  </message>
  <message>
   <source>IEC 60127-2, sheet 3: earliest melting times of time-lag links</source>
   <translation>CEI 60127-2, feuille 3 : temps de fusion les plus courts des fusibles temporisés</translation>
  </message>
  <message>
   <source>{id} ages at every switch-on</source>
   <translation>{id} vieillit à chaque mise sous tension</translation>
  </message>
  <message>
   <source>The inrush through {id} has an I²t of {found} at {condition}, {share} of the {melting} at which it melts.</source>
   <translation>L’appel de courant dans {id} a un I²t de {found} à {condition}, {share} des {melting} auxquels il fond.</translation>
  </message>
  <message>
   <source>the melting I²t of the fuse; for repeated pulses 30 % of it (from memory)</source>
   <translation>l’I²t de fusion du fusible ; pour des impulsions répétées 30 % de celui-ci (de mémoire)</translation>
  </message>
  <message>
   <source>{id} carries too much at switch-on</source>
   <translation>{id} porte trop à la mise sous tension</translation>
  </message>
  <message>
   <source>{id} carries up to {a} at {condition}; {limit} is the most that it may for long.</source>
   <translation>{id} porte jusqu’à {a} à {condition} ; {limit} est le maximum durable.</translation>
  </message>
  <message>
   <source>Take one of more ohms, or one for {a}.</source>
   <translation>Prenez-en une de plus d’ohms, ou une pour {a}.</translation>
  </message>
  <message>
   <source>{id} is still hot after a dip</source>
   <translation>{id} est encore chaude après une coupure</translation>
  </message>
  <message>
   <source>After {dip} without mains {id} has {ohm} in place of {first}: the second inrush is {a}.</source>
   <translation>Après {dip} sans secteur, {id} a {ohm} au lieu de {first} : le second appel est de {a}.</translation>
  </message>
  <message>
   <source>Bypass it with a relay, so that it is cold when it is needed again.</source>
   <translation>Pontez-la par un relais, pour qu’elle soit froide quand on en a de nouveau besoin.</translation>
  </message>
  <message>
   <source>common practice: a thermistor protects only once it has cooled</source>
   <translation>pratique courante : une thermistance ne protège qu’une fois refroidie</translation>
  </message>
  <message>
   <source>{id} charges too much</source>
   <translation>{id} charge trop</translation>
  </message>
  <message>
   <source>{id} charges {got}; {limit} is the most that it may.</source>
   <translation>{id} charge {got} ; {limit} est le maximum.</translation>
  </message>
  <message>
   <source>Take a thermistor for {got}, or less capacitance.</source>
   <translation>Prenez une thermistance pour {got}, ou moins de capacité.</translation>
  </message>
  <message>
   <source>The coil of {id} gets {v} at most at {condition}, too few to pull in.</source>
   <translation>La bobine de {id} reçoit au plus {v} à {condition}, trop peu pour coller.</translation>
  </message>
  <message>
   <source>Let the supply start first, or take a relay for fewer volts.</source>
   <translation>Laissez d’abord démarrer la source, ou prenez un relais pour moins de volts.</translation>
  </message>
  <message>
   <source>{id} closes too early</source>
   <translation>{id} ferme trop tôt</translation>
  </message>
  <message>
   <source>{id} closes after {t} at {condition}, while the heaters still ask {supply} for more than its {limit}.</source>
   <translation>{id} ferme après {t} à {condition}, alors que les filaments demandent encore à {supply} plus que ses {limit}.</translation>
  </message>
  <message>
   <source>Let it pull in at more volts, or later.</source>
   <translation>Faites-le coller à plus de volts, ou plus tard.</translation>
  </message>
  <message>
   <source>the limit of the supply</source>
   <translation>la limite de la source</translation>
  </message>
  <message>
   <source>The contact of {id} is too small</source>
   <translation>Le contact de {id} est trop petit</translation>
  </message>
  <message>
   <source>The contact of {id} carries up to {a} at {condition}; it is rated for {limit}.</source>
   <translation>Le contact de {id} porte jusqu’à {a} à {condition} ; il est prévu pour {limit}.</translation>
  </message>
  <message>
   <source>Take a relay for {a}, or let it close later.</source>
   <translation>Prenez un relais pour {a}, ou faites-le fermer plus tard.</translation>
  </message>
  <message>
   <source>the rating of the contact; cold heaters wear contacts like lamps do</source>
   <translation>le pouvoir du contact ; les filaments froids usent les contacts comme des lampes</translation>
  </message>
  <message>
   <source>{id} takes a pulse at switch-on</source>
   <translation>{id} prend une pointe à la mise sous tension</translation>
  </message>
  <message>
   <source>{id} turns {w} into heat over the first five seconds at {condition}, {times} times its {rated}.</source>
   <translation>{id} dissipe {w} pendant les cinq premières secondes à {condition}, {times} fois ses {rated}.</translation>
  </message>
  <message>
   <source>Take a wire-wound resistor for {w}.</source>
   <translation>Prenez une résistance bobinée pour {w}.</translation>
  </message>
  <message>
   <source>common practice: wire-wound resistors bear five times their rating for five seconds</source>
   <translation>pratique courante : les résistances bobinées supportent cinq fois leur puissance pendant cinq secondes</translation>
  </message>
  <message>
   <source>the limit of the supply and its behaviour in overload; cold heaters by their cold ratio</source>
   <translation>la limite de la source et son comportement en surcharge ; filaments froids d’après leur rapport à froid</translation>
  </message>
  <message>
   <source>common practice: overload protection acts between 105 and 150 % of the rating (from memory)</source>
   <translation>pratique courante : la protection de surcharge agit entre 105 et 150 % du nominal (de mémoire)</translation>
  </message>
  <message>
   <source>{id} starts late</source>
   <translation>{id} démarre tard</translation>
  </message>
  <message>
   <source>{id} may not start</source>
   <translation>{id} ne démarre peut-être pas</translation>
  </message>
  <message>
   <source>{id} does not start</source>
   <translation>{id} ne démarre pas</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked}, and it holds at its limit of {limit}: only after {later} does it reach its volts at {condition}.</source>
   <translation>Les filaments froids demandent {asked} à {id}, qui tient à sa limite de {limit} : elle n’atteint sa tension qu’après {later} à {condition}.</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked} at {condition}, its limit is {limit}: whether its protection lets that pass is not known.</source>
   <translation>Les filaments froids demandent {asked} à {id} à {condition}, sa limite est {limit} : on ne sait pas si sa protection le laisse passer.</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked}, its limit is {limit}: at {condition} it cuts out and tries again, {times} times in {time}, and the heaters never get warm enough.</source>
   <translation>Les filaments froids demandent {asked} à {id}, sa limite est {limit} : à {condition} elle coupe et réessaie, {times} fois en {time}, et les filaments ne deviennent jamais assez chauds.</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked}, its limit is {limit}: at {condition} it switches itself off and stays off.</source>
   <translation>Les filaments froids demandent {asked} à {id}, sa limite est {limit} : à {condition} elle s’arrête et reste arrêtée.</translation>
  </message>
  <message>
   <source>The cold heaters ask {id} for {asked}; at {condition} it stays at {v} and {a} for ever.</source>
   <translation>Les filaments froids demandent {asked} à {id} ; à {condition} elle reste pour toujours à {v} et {a}.</translation>
  </message>
  <message>
   <source>Mend the short circuit first.</source>
   <translation>Supprimez d’abord le court-circuit.</translation>
  </message>
  <message>
   <source>Take a supply for more than {a} if that is too long to wait.</source>
   <translation>Prenez une source pour plus de {a} si c’est trop long.</translation>
  </message>
  <message>
   <source>Add a soft start, take a supply that holds at its limit in place of this one, or one for {a}.</source>
   <translation>Ajoutez un démarrage progressif, prenez à la place une source qui tient à sa limite, ou une pour {a}.</translation>
  </message>
  <message>
   <source>Add a soft start, or take a supply that holds its current at any volts.</source>
   <translation>Ajoutez un démarrage progressif, ou prenez une source qui tient son courant à toute tension.</translation>
  </message>
  <message>
   <source>{id} gets hot at switch-on</source>
   <translation>{id} chauffe à la mise sous tension</translation>
  </message>
  <message>
   <source>While the heaters are cold the regulator of {id} turns {most} into heat at {condition}, and {later} later.</source>
   <translation>Tant que les filaments sont froids, le régulateur de {id} dissipe {most} à {condition}, et {later} ensuite.</translation>
  </message>
  <message>
   <source>Give it a heat sink for {most}, fewer volts at its input, or a soft start.</source>
   <translation>Donnez-lui un radiateur pour {most}, moins de volts à l’entrée, ou un démarrage progressif.</translation>
  </message>
  <message>
   <source>common practice: heat sinks are chosen for the steady state</source>
   <translation>pratique courante : les radiateurs sont choisis pour le régime établi</translation>
  </message>
  <message>
   <source>{ids} switches without end</source>
   <translation>{ids} commute sans fin</translation>
  </message>
  <message>
   <source>The warm-up around {ids} ends early</source>
   <translation>La mise en chauffe autour de {ids} finit avant terme</translation>
  </message>
  <message>
   <source>The warm-up at {condition} was ended after {t}: {reason}.</source>
   <translation>La mise en chauffe à {condition} a été arrêtée après {t} : {reason}.</translation>
  </message>
  <message>
   <source>Change the wiring or the values of {ids}.</source>
   <translation>Changer le câblage ou les valeurs de {ids}.</translation>
  </message>
  <message>
   <source>the circuit itself</source>
   <translation>le circuit lui-même</translation>
  </message>
  <message>
   <source>{id} wired for {whole}, fed {v}</source>
   <translation>{id} câblé pour {whole}, alimenté en {v}</translation>
  </message>
  <message>
   <source>{id} ({type}) is wired for {whole} (pin {a} to pin {b}, pin {tap} open) but fed {v}: each half gets {half} where {rated} is wanted.</source>
   <translation>{id} ({type}) est câblé pour {whole} (broche {a} et broche {b}, broche {tap} libre) mais alimenté en {v} : chaque moitié reçoit {half} au lieu de {rated}.</translation>
  </message>
  <message>
   <source>Strap pin {a} to pin {b}, and feed between that strap and pin {tap}.</source>
   <translation>Ponter la broche {a} et la broche {b}, et alimenter entre ce pont et la broche {tap}.</translation>
  </message>
  <message>
   <source>{id} strapped for {rated}, fed {v}</source>
   <translation>{id} ponté pour {rated}, alimenté en {v}</translation>
  </message>
  <message>
   <source>{id} ({type}) is strapped for {rated} (pins {a} and {b} joined, fed against pin {tap}) but fed {v}.</source>
   <translation>{id} ({type}) est ponté pour {rated} (broches {a} et {b} réunies, contre la broche {tap}) mais alimenté en {v}.</translation>
  </message>
  <message>
   <source>Separate pins {a} and {b} (joined by {straps}), feed pin {a} against pin {b}, and leave pin {tap} open.</source>
   <translation>Séparer les broches {a} et {b} (réunies par {straps}), alimenter entre les broches {a} et {b}, et laisser libre la broche {tap}.</translation>
  </message>
  <message>
   <source>Strap {a} to {b}, feed pin {tap}</source>
   <translation>Ponter {a} et {b}, alimenter la broche {tap}</translation>
  </message>
  <message>
   <source>Feed pins {a} and {b}, open pin {tap}</source>
   <translation>Alimenter les broches {a} et {b}, broche {tap} libre</translation>
  </message>
  <message>
   <source>the heater pins of the type</source>
   <translation>les broches de filament du type</translation>
  </message>
  <message>
   <source>The heater of {id} ({type}) is shorted: its {pins} are joined by {straps}.</source>
   <translation>Le filament de {id} ({type}) est en court-circuit : {straps} réunit {pins}.</translation>
  </message>
  <message>
   <source>A part of the heater of {id} ({type}) is shorted: its {pins} are joined by {straps}.</source>
   <translation>Une partie du filament de {id} ({type}) est en court-circuit : {straps} réunit {pins}.</translation>
  </message>
  <message>
   <source>{shorted} The socket is strapped for a tube with a heater tap on pin 9; this one has none.</source>
   <translation>{shorted} Le support est ponté pour un tube à prise de filament en broche 9 ; celui-ci n'en a pas.</translation>
  </message>
  <message>
   <source>A strap shorts the heater of {id}</source>
   <translation>Un pont met le filament de {id} en court-circuit</translation>
  </message>
  <message>
   <source>Take out {straps} and feed the heater between {pins}.</source>
   <translation>Ôter {straps} et alimenter le filament entre {pins}.</translation>
  </message>
  <message>
   <source>{id} is asked for {a} at {condition}, {times} times the {limit} it may give.</source>
   <translation>{id} doit fournir {a} sous {condition}, {times} fois les {limit} qu'il peut donner.</translation>
  </message>
  <message>
   <source>{id} is asked for {a} at {condition}, {load} of the {limit} it may give.</source>
   <translation>{id} doit fournir {a} sous {condition}, {load} des {limit} qu'il peut donner.</translation>
  </message>
  <message>
   <source>{id} is overloaded</source>
   <translation>{id} est en surcharge</translation>
  </message>
  <message>
   <source>the rating of the supply</source>
   <translation>le calibre de l'alimentation</translation>
  </message>
  <message>
   <source>Look for a short circuit first: that is no load for a supply of this size.</source>
   <translation>Chercher d'abord un court-circuit : ce n'est pas une charge pour une telle alimentation.</translation>
  </message>
  <message>
   <source>Fit a supply of {rating}, or feed some of the heaters from a second one.</source>
   <translation>Mettre une alimentation de {rating}, ou nourrir une partie des filaments par une seconde.</translation>
  </message>
  <message>
   <source>Take a {a} supply</source>
   <translation>Prendre une alimentation de {a}</translation>
  </message>
  <message>
   <source>Take a {a} winding</source>
   <translation>Prendre un enroulement de {a}</translation>
  </message>
  <message>
   <source>{id} is asked for {a} at {condition}, more than its limit of {limit}: {outcome}.</source>
   <translation>{id} doit fournir {a} sous {condition}, plus que sa limite de {limit} : {outcome}.</translation>
  </message>
  <message>
   <source>{id}, with a limit of {limit}, is shorted at {condition}: {outcome}.</source>
   <translation>{id}, limité à {limit}, est en court-circuit sous {condition} : {outcome}.</translation>
  </message>
  <message>
   <source>it holds at its limit and its volts fall to {v}</source>
   <translation>il reste à sa limite et sa tension tombe à {v}</translation>
  </message>
  <message>
   <source>it cuts out after {trip} and tries again every {retry}, so nothing stays on</source>
   <translation>il coupe après {trip} et réessaie toutes les {retry}, si bien que rien ne reste allumé</translation>
  </message>
  <message>
   <source>it folds back to {given} at {v}</source>
   <translation>il se replie à {given} sous {v}</translation>
  </message>
  <message>
   <source>it switches off after {trip} and stays off until it is reset</source>
   <translation>il coupe après {trip} et reste coupé jusqu'au réarmement</translation>
  </message>
  <message>
   <source>{id} does not get its load going</source>
   <translation>{id} ne met pas sa charge en route</translation>
  </message>
  <message>
   <source>At {condition} cold heaters hold {id} folded back to {given} at {v}; warm they would take {a} of the {limit} it may give.</source>
   <translation>Sous {condition}, des filaments froids retiennent {id} replié à {given} sous {v} ; chauds ils prendraient {a} des {limit} possibles.</translation>
  </message>
  <message>
   <source>Take a supply that holds at its limit instead of folding back, or a larger one.</source>
   <translation>Prendre une alimentation qui reste à sa limite au lieu de se replier, ou une plus grosse.</translation>
  </message>
  <message>
   <source>the overload behaviour of the supply</source>
   <translation>le comportement en surcharge de l'alimentation</translation>
  </message>
  <message>
   <source>Let it hold at its limit</source>
   <translation>Le laisser à sa limite</translation>
  </message>
  <message>
   <source>{id} has little in hand</source>
   <translation>{id} a peu de réserve</translation>
  </message>
  <message>
   <source>{id} gives {a}, {load} of its {rated}: {most} leaves a quarter in hand.</source>
   <translation>{id} donne {a}, {load} de ses {rated} : {most} laisserait un quart de réserve.</translation>
  </message>
  <message>
   <source>A supply of {rating} would run cooler.</source>
   <translation>Une alimentation de {rating} chaufferait moins.</translation>
  </message>
  <message>
   <source>common practice: 25 % in hand</source>
   <translation>usage courant : 25 % de réserve</translation>
  </message>
  <message>
   <source>{id} has too little load</source>
   <translation>{id} est trop peu chargé</translation>
  </message>
  <message>
   <source>{id} gives {a}, but needs a load of {least} to hold its volts.</source>
   <translation>{id} donne {a}, mais demande une charge de {least} pour tenir sa tension.</translation>
  </message>
  <message>
   <source>Load it with another {more}, or take a supply without a minimum load.</source>
   <translation>Le charger de {more} de plus, ou prendre une alimentation sans charge minimale.</translation>
  </message>
  <message>
   <source>the minimum load of the supply</source>
   <translation>la charge minimale de l'alimentation</translation>
  </message>
  <message>
   <source>Fit {ohm} {w} across {id}</source>
   <translation>Mettre {ohm} {w} aux bornes de {id}</translation>
  </message>
  <message>
   <source>{id} is lightly loaded</source>
   <translation>{id} est peu chargé</translation>
  </message>
  <message>
   <source>{id} carries only {load} of its rated current, so it gives {v} where {rated} is rated ({over}).</source>
   <translation>{id} ne conduit que {load} de son courant nominal et donne donc {v} au lieu de {rated} ({over}).</translation>
  </message>
  <message>
   <source>A winding of {a} would come closer.</source>
   <translation>Un enroulement de {a} serait plus près.</translation>
  </message>
  <message>
   <source>common practice: within 5 % at the winding</source>
   <translation>usage courant : 5 % au plus à l'enroulement</translation>
  </message>
  <message>
   <source>this part</source>
   <translation>cette pièce</translation>
  </message>
  <message>
   <source>No figures around {ids}</source>
   <translation>Pas de valeurs autour de {ids}</translation>
  </message>
  <message>
   <source>Nothing on the line of {ids} is solved: {reason}. Other lines are.</source>
   <translation>Rien n'est résolu sur la ligne de {ids} : {reason}. Les autres lignes le sont.</translation>
  </message>
  <message>
   <source>Judge this part by hand for now.</source>
   <translation>Juger cette pièce à la main pour l'instant.</translation>
  </message>
  <message>
   <source>read in the source</source>
   <translation>lus dans la source</translation>
  </message>
  <message>
   <source>taken at second hand</source>
   <translation>de seconde main</translation>
  </message>
  <message>
   <source>disputed between sources</source>
   <translation>contestés entre sources</translation>
  </message>
  <message>
   <source>not checked against a data sheet</source>
   <translation>non vérifiés sur une notice</translation>
  </message>
  <message>
   <source>seen</source>
   <translation>lu</translation>
  </message>
  <message>
   <source>second-hand</source>
   <translation>seconde main</translation>
  </message>
  <message>
   <source>disputed</source>
   <translation>contesté</translation>
  </message>
  <message>
   <source>memory</source>
   <translation>mémoire</translation>
  </message>
  <message>
   <source>Rating of {type} is unverified</source>
   <translation>Les valeurs de {type} ne sont pas vérifiées</translation>
  </message>
  <message>
   <source>The heater volts of {type} are {status} ({source}); this concerns {ids}.</source>
   <translation>Les volts de chauffage de {type} sont {status} ({source}) ; cela concerne {ids}.</translation>
  </message>
  <message>
   <source>The heater amps of {type} are {status} ({source}); this concerns {ids}.</source>
   <translation>Les ampères de chauffage de {type} sont {status} ({source}) ; cela concerne {ids}.</translation>
  </message>
  <message>
   <source>no source is given</source>
   <translation>aucune source donnée</translation>
  </message>
  <message>
   <source>Compare with the maker's data sheet before you build.</source>
   <translation>Comparer à la notice du fabricant avant de construire.</translation>
  </message>
  <message>
   <source>tube</source>
   <translation>tube</translation>
  </message>
  <message>
   <source>Choose a type that the catalogue has, or give its volts and amperes.</source>
   <translation>Choisir un type du catalogue, ou donner ses volts et ampères.</translation>
  </message>
  <message>
   <source>lamp</source>
   <translation>lampe</translation>
  </message>
  <message>
   <source>Choose a type that the catalogue has, or give its figures.</source>
   <translation>Choisir un type du catalogue, ou donner ses valeurs.</translation>
  </message>
  <message>
   <source>thermistor</source>
   <translation>thermistance</translation>
  </message>
  <message>
   <source>Type of {id} is unknown</source>
   <translation>Le type de {id} est inconnu</translation>
  </message>
  <message>
   <source>The catalogue knows no {noun} '{type}', so {id} carries nothing and is not judged.</source>
   <translation>Le catalogue ne connaît pas de type '{type}' ({noun}) ; {id} ne conduit donc rien et n'est pas jugé.</translation>
  </message>
  <message>
   <source>the catalogue</source>
   <translation>le catalogue</translation>
  </message>
  <message>
   <source>Did you mean {near}? Or add the type to the sheet.</source>
   <translation>S'agit-il de {near} ? Sinon ajouter le type à la feuille.</translation>
  </message>
  <message>
   <source>Make it {type}</source>
   <translation>En faire {type}</translation>
  </message>
  <message>
   <source>Choose a type that the catalogue has, or add the type to the sheet.</source>
   <translation>Choisir un type du catalogue, ou ajouter le type à la feuille.</translation>
  </message>
  <message>
   <source>Rating given for {id} is not used</source>
   <translation>Les valeurs données pour {id} ne servent pas</translation>
  </message>
  <message>
   <source>{id} ({type}) has {count} heater sections, so a rating of its own cannot be assigned to one of them: the type's rating is used.</source>
   <translation>{id} ({type}) a {count} sections de filament ; des valeurs propres ne peuvent aller à l'une d'elles : celles du type servent.</translation>
  </message>
  <message>
   <source>Take the rating off, or add a type of your own with these sections.</source>
   <translation>Ôter ces valeurs, ou ajouter un type à soi avec ces sections.</translation>
  </message>
  <message>
   <source>ratings of one's own hold for heaters of one section</source>
   <translation>des valeurs propres valent pour un filament d'une section</translation>
  </message>
  <message>
   <source>Take the rating off</source>
   <translation>Ôter les valeurs</translation>
  </message>
  <message>
   <source>rule of thumb: Handbook of Electronic Tables and Formulas, chassis wiring</source>
   <translation>règle empirique : Handbook of Electronic Tables and Formulas, câblage de châssis</translation>
  </message>
  <message>
   <source>{id} is too thin for its current</source>
   <translation>{id} est trop fin pour son courant</translation>
  </message>
  <message>
   <source>{id} ({size}) carries {a} at {condition}; {limit} is what such a wire should.</source>
   <translation>{id} ({size}) conduit {a} sous {condition} ; {limit} convient à un tel fil.</translation>
  </message>
  <message>
   <source>{size} carries it.</source>
   <translation>{size} le supporte.</translation>
  </message>
  <message>
   <source>Make {id} {size}</source>
   <translation>Faire {id} en {size}</translation>
  </message>
  <message>
   <source>Run two wires side by side, or shorten the way.</source>
   <translation>Mettre deux fils côte à côte, ou raccourcir le chemin.</translation>
  </message>
  <message>
   <source>{id} loses {share} of the volts</source>
   <translation>{id} perd {share} de la tension</translation>
  </message>
  <message>
   <source>{id} ({size}, {length} m) drops {v} at {a}; more than {limit} is too much for one wire.</source>
   <translation>{id} ({size}, {length} m) perd {v} à {a} ; plus de {limit} est trop pour un fil.</translation>
  </message>
  <message>
   <source>{size} would lose less than 1 %.</source>
   <translation>{size} perdrait moins de 1 %.</translation>
  </message>
  <message>
   <source>common practice: 2 % a wire</source>
   <translation>usage courant : 2 % par fil</translation>
  </message>
  <message>
   <source>Share the {w} among several resistors, each rated at twice its part.</source>
   <translation>Répartir les {w} sur plusieurs résistances, chacune du double de sa part.</translation>
  </message>
  <message>
   <source>Fit {fit}: twice the {w} that it turns into heat.</source>
   <translation>Mettre {fit} : le double des {w} dissipés.</translation>
  </message>
  <message>
   <source>Fit {fit}</source>
   <translation>Mettre {fit}</translation>
  </message>
  <message>
   <source>{id} is rated too low</source>
   <translation>{id} est sous-dimensionné</translation>
  </message>
  <message>
   <source>{id} turns {w} into heat at {condition}, more than the {rated} it is rated for.</source>
   <translation>{id} dissipe {w} sous {condition}, plus que ses {rated}.</translation>
  </message>
  <message>
   <source>{id} turns {w} into heat, more than half of its {rated}: it will run very hot.</source>
   <translation>{id} dissipe {w}, plus de la moitié de ses {rated} : il sera très chaud.</translation>
  </message>
  <message>
   <source>the rating of the resistor</source>
   <translation>le calibre de la résistance</translation>
  </message>
  <message>
   <source>common practice: twice the dissipation</source>
   <translation>usage courant : le double de la dissipation</translation>
  </message>
  <message>
   <source>{id} has no rating</source>
   <translation>{id} est sans calibre</translation>
  </message>
  <message>
   <source>{id} turns up to {w} into heat ({condition}), and no wattage is given for it.</source>
   <translation>{id} dissipe jusqu'à {w} (sous {condition}), et aucune puissance n'est donnée.</translation>
  </message>
  <message>
   <source>Open end at {ids}</source>
   <translation>Bout libre sur {ids}</translation>
  </message>
  <message>
   <source>{ids} not wired in</source>
   <translation>{ids} non relié</translation>
  </message>
  <message>
   <source>Nothing flows in {ids}: one end leads nowhere.</source>
   <translation>Rien ne passe dans {ids} : un bout ne mène nulle part.</translation>
  </message>
  <message>
   <source>Nothing flows in {ids}: neither end leads anywhere.</source>
   <translation>Rien ne passe dans {ids} : aucun bout ne mène quelque part.</translation>
  </message>
  <message>
   <source>Wire the open end, or take {ids} out.</source>
   <translation>Relier le bout libre, ou ôter {ids}.</translation>
  </message>
  <message>
   <source>Wire both ends, or take {ids} out.</source>
   <translation>Relier les deux bouts, ou ôter {ids}.</translation>
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} à {high}</translation>
  </message>
  <message>
   <source>nominal mains</source>
   <translation>tension secteur nominale</translation>
  </message>
  <message>
   <source>the second start, after a dip</source>
   <translation>la seconde mise sous tension, après une coupure</translation>
  </message>
  <message>
   <source>{items} and {count} more</source>
   <translation>{items} et {count} de plus</translation>
  </message>
  <message>
   <source>{items}, {last}</source>
   <translation>{items}, {last}</translation>
  </message>
  <message>
   <source>pin {pin}</source>
   <translation>la broche {pin}</translation>
  </message>
  <message>
   <source>pins {pins}</source>
   <translation>les broches {pins}</translation>
  </message>
  <message>
   <source>Fit {type}</source>
   <translation>Monter {type}</translation>
  </message>
  <message>
   <source>Fit {type} and {relay} at {terminal}</source>
   <translation>Monter {type} et {relay} à {terminal}</translation>
  </message>
  <message>
   <source>Let {id} hold at its limit</source>
   <translation>Laisser {id} tenir à sa limite</translation>
  </message>
  <message>
   <source>Fit {ohm} at {terminal}</source>
   <translation>Monter {ohm} à {terminal}</translation>
  </message>
  <message>
   <source>{ohm} {w}</source>
   <translation>{ohm} {w}</translation>
  </message>
  <message>
   <source>Fit {type} at {terminal}</source>
   <translation>Monter {type} à {terminal}</translation>
  </message>
  <message>
   <source>Series resistor</source>
   <translation>Résistance série</translation>
  </message>
  <message>
   <source>Thermistor</source>
   <translation>Thermistance</translation>
  </message>
  <message>
   <source>Thermistor bypassed by a relay</source>
   <translation>Thermistance pontée par un relais</translation>
  </message>
  <message>
   <source>Another supply</source>
   <translation>Autre source</translation>
  </message>
  <message>
   <source>and cuts out: it does not start at the first try</source>
   <translation>et coupe : elle ne démarre pas au premier essai</translation>
  </message>
  <message>
   <source>and latches off: it does not start</source>
   <translation>et se verrouille : elle ne démarre pas</translation>
  </message>
  <message>
   <source>and stays there: it does not start</source>
   <translation>et y reste : elle ne démarre pas</translation>
  </message>
  <message>
   <source>and is still there when the run ends</source>
   <translation>et y est encore à la fin</translation>
  </message>
  <message>
   <source>that cuts out and tries again</source>
   <translation>qui coupe et réessaie</translation>
  </message>
  <message>
   <source>that folds back</source>
   <translation>à repli</translation>
  </message>
  <message>
   <source>that latches off</source>
   <translation>qui se verrouille</translation>
  </message>
  <message>
   <source>that holds at its limit</source>
   <translation>qui tient à sa limite</translation>
  </message>
  <message>
   <source>{first} {second}</source>
   <translation>{first} {second}</translation>
  </message>
  <message>
   <source>at once</source>
   <translation>aussitôt</translation>
  </message>
  <message>
   <source>after {s}</source>
   <translation>après {s}</translation>
  </message>
  <message>
   <source>The supply comes to its limit {at} {end}.</source>
   <translation>La source arrive à sa limite {at} {end}.</translation>
  </message>
  <message>
   <source>It starts, but not every tube gets ready.</source>
   <translation>Cela démarre, mais tous les tubes ne deviennent pas prêts.</translation>
  </message>
  <message>
   <source>It starts, though the supply is at its limit on the way; the last tube is ready after {s}.</source>
   <translation>Cela démarre, bien que la source soit à sa limite en chemin ; le dernier tube est prêt après {s}.</translation>
  </message>
  <message>
   <source>It starts, and the last tube is ready after {s}.</source>
   <translation>Cela démarre, et le dernier tube est prêt après {s}.</translation>
  </message>
  <message>
   <source>{part} keeps the first current to {a} of {limit}</source>
   <translation>{part} tient le premier courant à {a} sur {limit}</translation>
  </message>
  <message>
   <source>{part} keeps the first current to {a}</source>
   <translation>{part} tient le premier courant à {a}</translation>
  </message>
  <message>
   <source>{keeps}; warm, it takes {v} and {w}, and {id} gets {hot} ({off}).</source>
   <translation>{keeps} ; à chaud il prend {v} et {w}, et {id} reçoit {hot} ({off}).</translation>
  </message>
  <message>
   <source>With {supply} set to {set}, {costs}</source>
   <translation>Avec {supply} réglée à {set}, {costs}</translation>
  </message>
  <message>
   <source>That is {by} above its limit of {limit}.</source>
   <translation>C’est {by} au-dessus de sa limite de {limit}.</translation>
  </message>
  <message>
   <source>That is {by} below its limit of {limit}: a resistor alone is no good here.</source>
   <translation>C’est {by} au-dessous de sa limite de {limit} : une résistance seule ne convient pas ici.</translation>
  </message>
  <message>
   <source>That is {by} below its limit of {limit}.</source>
   <translation>C’est {by} au-dessous de sa limite de {limit}.</translation>
  </message>
  <message>
   <source>No single resistor bears the {w} that it takes when warm.</source>
   <translation>Aucune résistance seule ne supporte les {w} qu’elle prend à chaud.</translation>
  </message>
  <message>
   <source>No thermistor of the catalogue has {ohm} or more when cold and bears {a}.</source>
   <translation>Aucune thermistance du catalogue n’a {ohm} ou plus à froid et ne supporte {a}.</translation>
  </message>
  <message>
   <source>No relay of the catalogue pulls in for sure at the {behind} behind the thermistor, bears {v} and switches {a}.</source>
   <translation>Aucun relais du catalogue ne colle à coup sûr aux {behind} derrière la thermistance, ne supporte {v} et ne commute {a}.</translation>
  </message>
  <message>
   <source>{relay} behind {ohm}</source>
   <translation>{relay} derrière {ohm}</translation>
  </message>
  <message>
   <source>{part} keeps the first current to {a} of {limit}; {relay} pulls in at {pull} and bridges it, when the supply gives about {closing}, and {id} gets {hot} ({off}).</source>
   <translation>{part} tient le premier courant à {a} sur {limit} ; {relay} colle à {pull} et la ponte, quand la source donne environ {closing}, et {id} reçoit {hot} ({off}).</translation>
  </message>
  <message>
   <source>The relay never pulls in.</source>
   <translation>Le relais ne colle jamais.</translation>
  </message>
  <message>
   <source>The relay pulls in after {s}, and its contact carries {a} at most.</source>
   <translation>Le relais colle après {s}, et son contact porte au plus {a}.</translation>
  </message>
  <message>
   <source>On the way a heater gets {share} of its rated volts.</source>
   <translation>En chemin un filament reçoit {share} de sa tension nominale.</translation>
  </message>
  <message>
   <source>A supply of {limit} that holds at its limit is enough; none up to the cold current {kind} is.</source>
   <translation>Une source de {limit} qui tient à sa limite suffit ; aucune {kind} jusqu’au courant à froid ne suffit.</translation>
  </message>
  <message>
   <source>A supply of {limit} that holds at its limit is enough; one {kind} would have to give {needed}.</source>
   <translation>Une source de {limit} qui tient à sa limite suffit ; une {kind} devrait donner {needed}.</translation>
  </message>
  <message>
   <source>Cold, the heaters ask for {cold}, and {warm} when warm: a supply of {a} {kind} is enough.</source>
   <translation>À froid les filaments demandent {cold}, et {warm} à chaud : une source de {a} {kind} suffit.</translation>
  </message>
  <message>
   <source>the numbers run out of range</source>
   <translation>les nombres sortent du domaine</translation>
  </message>
  <message>
   <source>On a supply {kind}, {sure} of {all} start.</source>
   <translation>Sur une source {kind}, {sure} sur {all} démarrent.</translation>
  </message>
  <message>
   <source>On a supply {kind}, {sure} of {all} start for certain; up to {more} may, depending on when it gives up, which is seldom published.</source>
   <translation>Sur une source {kind}, {sure} sur {all} démarrent à coup sûr ; jusqu’à {more} peut-être, selon le moment où elle renonce, rarement publié.</translation>
  </message>
  <message>
   <source>the steady state does not settle</source>
   <translation>le régime établi ne se stabilise pas</translation>
  </message>
  <message>
   <source>the circuit has no unique solution</source>
   <translation>le circuit n'a pas de solution unique</translation>
  </message>
  <message>
   <source>The file</source>
   <translation>Le fichier</translation>
  </message>
  <message>
   <source>{title} is larger than {most} MB and is not read</source>
   <translation>{title} dépasse {most} Mo et n'est pas lu</translation>
  </message>
  <message>
   <source>{title} is not text in UTF-8 (byte {at})</source>
   <translation>{title} n'est pas du texte en UTF-8 (octet {at})</translation>
  </message>
  <message>
   <source>{title} is nested too deeply to be a sheet</source>
   <translation>{title} est trop imbriqué pour une feuille</translation>
  </message>
  <message>
   <source>{title} holds a number with too many digits</source>
   <translation>{title} contient un nombre de trop de chiffres</translation>
  </message>
  <message>
   <source>line {line}, column {column}</source>
   <translation>ligne {line}, colonne {column}</translation>
  </message>
  <message>
   <source>{title} is empty</source>
   <translation>{title} est vide</translation>
  </message>
  <message>
   <source>{title} breaks off here; it is not complete</source>
   <translation>{title} s'arrête ici ; il n'est pas complet</translation>
  </message>
  <message>
   <source>{title} is not a sheet: this is not JSON ({why})</source>
   <translation>{title} n'est pas une feuille : ce n'est pas du JSON ({why})</translation>
  </message>
  <message>
   <source>the key '{key}' stands here twice</source>
   <translation>la clé '{key}' est ici deux fois</translation>
  </message>
  <message>
   <source>this text holds half of a character pair</source>
   <translation>ce texte contient une demi-paire de caractères</translation>
  </message>
  <message>
   <source>{title} is not a sheet: it has no format '{format}'</source>
   <translation>{title} n'est pas une feuille : il n'a pas le format '{format}'</translation>
  </message>
  <message>
   <source>{title} is not a sheet: its format must be '{format}'</source>
   <translation>{title} n'est pas une feuille : son format doit être '{format}'</translation>
  </message>
  <message>
   <source>a whole number is expected here, such as 1</source>
   <translation>un entier est attendu ici, par exemple 1</translation>
  </message>
  <message>
   <source>{title} was made by a newer version of the program (sheet version {version}; this one reads up to {most}). Update the program to open it.</source>
   <translation>{title} vient d'une version plus récente du programme (feuille de version {version} ; celui-ci lit jusqu'à {most}). Mettre le programme à jour pour l'ouvrir.</translation>
  </message>
  <message>
   <source>the sheet holds half of a character pair in its text</source>
   <translation>le texte de la feuille contient une demi-paire de caractères</translation>
  </message>
  <message>
   <source>a number</source>
   <translation>un nombre</translation>
  </message>
  <message>
   <source>a whole number</source>
   <translation>un entier</translation>
  </message>
  <message>
   <source>true or false</source>
   <translation>true ou false</translation>
  </message>
  <message>
   <source>a list</source>
   <translation>une liste</translation>
  </message>
  <message>
   <source>an object in braces</source>
   <translation>un objet entre accolades</translation>
  </message>
  <message>
   <source>a list is expected here, not {got}</source>
   <translation>une liste est attendue ici, et non {got}</translation>
  </message>
  <message>
   <source>this</source>
   <translation>ceci</translation>
  </message>
  <message>
   <source>'{key}' is missing</source>
   <translation>'{key}' manque</translation>
  </message>
  <message>
   <source>{value} is not possible here; use one of {choices}</source>
   <translation>{value} n'est pas possible ici ; prendre l'un de {choices}</translation>
  </message>
  <message>
   <source>{value} is not a kind of part</source>
   <translation>{value} n'est pas un genre de composant</translation>
  </message>
  <message>
   <source>{what} of {length} is expected here</source>
   <translation>attendu ici : {what} de {length} éléments</translation>
  </message>
  <message>
   <source>{what} is expected here, not {got}</source>
   <translation>attendu ici : {what}, et non {got}</translation>
  </message>
  <message>
   <source>the key '{key}' is not known here</source>
   <translation>la clé '{key}' n'est pas connue ici</translation>
  </message>
  <message>
   <source>{problem}; the kinds are {kinds}</source>
   <translation>{problem} ; les genres sont {kinds}</translation>
  </message>
  <message>
   <source>in {owner}, {problem}</source>
   <translation>dans {owner}, {problem}</translation>
  </message>
  <message>
   <source>those of the file format</source>
   <translation>ceux du format de fichier</translation>
  </message>
  <message>
   <source>Nothing is entered; {expected}.</source>
   <translation>Rien n'est saisi ; {expected}.</translation>
  </message>
  <message>
   <source>That is too long for a number; {expected}.</source>
   <translation>C'est trop long pour un nombre ; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' has two readings: write {thousands} for thousands, or {fraction} with a dot; {expected}.</source>
   <translation>'{text}' a deux lectures : écrire {thousands} pour des milliers, ou {fraction} avec un point ; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' is too large to be meant; {expected}.</source>
   <translation>'{text}' est trop grand pour être voulu ; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' is too small to be meant; {expected}.</source>
   <translation>'{text}' est trop petit pour être voulu ; {expected}.</translation>
  </message>
  <message>
   <source>'{text}' is {what}; {expected}.</source>
   <translation>'{text}' est en {what} ; {expected}.</translation>
  </message>
  <message>
   <source>The unit '{unit}' in '{text}' is not known; {expected}.</source>
   <translation>L'unité '{unit}' dans '{text}' n'est pas connue ; {expected}.</translation>
  </message>
  <message>
   <source>supplies and switches do not come to rest</source>
   <translation>sources et commutateurs ne se stabilisent pas</translation>
  </message>
  <message>
   <source>so much switched that the run was ended early</source>
   <translation>il y a eu tant de commutations que le calcul a été arrêté avant terme</translation>
  </message>
  <message>
   <source>There is no heater to warm up.</source>
   <translation>Il n’y a pas de filament à chauffer.</translation>
  </message>
  <message>
   <source>No supply feeds the heaters.</source>
   <translation>Aucune source n’alimente les filaments.</translation>
  </message>
  <message>
   <source>{said} One more supply does not start.</source>
   <translation>{said} Une autre source ne démarre pas.</translation>
  </message>
  <message>
   <source>{said} {count} more supplies do not start.</source>
   <translation>{said} {count} autres sources ne démarrent pas.</translation>
  </message>
  <message>
   <source>{id} does not start: it cuts out and tries again, {count} times in {time}.</source>
   <translation>{id} ne démarre pas : elle coupe et réessaie, {count} fois en {time}.</translation>
  </message>
  <message>
   <source>{id} does not start: it has latched off.</source>
   <translation>{id} ne démarre pas : elle s’est verrouillée.</translation>
  </message>
  <message>
   <source>{id} is still at its limit after {time}.</source>
   <translation>{id} est encore à sa limite après {time}.</translation>
  </message>
  <message>
   <source>{id} does not start: it stays at its limit, at {amps}.</source>
   <translation>{id} ne démarre pas : elle reste à sa limite, à {amps}.</translation>
  </message>
  <message>
   <source>It starts.</source>
   <translation>Cela démarre.</translation>
  </message>
  <message>
   <source>It starts; the last tube is ready after {time}.</source>
   <translation>Cela démarre ; le dernier tube est prêt après {time}.</translation>
  </message>
  <message>
   <source>It starts, but {id} is not ready after {time}.</source>
   <translation>Cela démarre, mais {id} n’est pas prêt après {time}.</translation>
  </message>
  <message>
   <source>It starts, but {ids} are not ready after {time}.</source>
   <translation>Cela démarre, mais {ids} ne sont pas prêts après {time}.</translation>
  </message>
  <message>
   <source>At {time}: {reason} ({ids}).</source>
   <translation>À {time} : {reason} ({ids}).</translation>
  </message>
  <message>
   <source>Not computed: {reason} ({ids}).</source>
   <translation>Non calculé : {reason} ({ids}).</translation>
  </message>
 </context>
 <context>
  <name>parts</name>
  <message>
   <source>mains</source>
   <translation>secteur</translation>
  </message>
  <message>
   <source>tube</source>
   <translation>tube</translation>
  </message>
  <message>
   <source>lamp</source>
   <translation>lampe</translation>
  </message>
  <message>
   <source>winding</source>
   <translation>enroulement</translation>
  </message>
  <message>
   <source>centre-tapped winding</source>
   <translation>enroulement à point milieu</translation>
  </message>
  <message>
   <source>DC supply</source>
   <translation>alimentation continue</translation>
  </message>
  <message>
   <source>battery</source>
   <translation>batterie</translation>
  </message>
  <message>
   <source>mains feed</source>
   <translation>prise secteur</translation>
  </message>
  <message>
   <source>rectified supply</source>
   <translation>alimentation redressée</translation>
  </message>
  <message>
   <source>resistor</source>
   <translation>résistance</translation>
  </message>
  <message>
   <source>thermistor</source>
   <translation>thermistance</translation>
  </message>
  <message>
   <source>relay</source>
   <translation>relais</translation>
  </message>
  <message>
   <source>fuse</source>
   <translation>fusible</translation>
  </message>
  <message>
   <source>capacitor</source>
   <translation>condensateur</translation>
  </message>
  <message>
   <source>diode</source>
   <translation>diode</translation>
  </message>
  <message>
   <source>switch</source>
   <translation>interrupteur</translation>
  </message>
  <message>
   <source>hum balance</source>
   <translation>équilibrage de ronflement</translation>
  </message>
  <message>
   <source>elevation</source>
   <translation>surélévation</translation>
  </message>
  <message>
   <source>chassis</source>
   <translation>châssis</translation>
  </message>
  <message>
   <source>joint</source>
   <translation>cosse</translation>
  </message>
  <message>
   <source>note</source>
   <translation>note</translation>
  </message>
  <message>
   <source>frame</source>
   <translation>cadre</translation>
  </message>
  <message>
   <source>pulled</source>
   <translation>retiré</translation>
  </message>
  <message>
   <source>closed</source>
   <translation>fermé</translation>
  </message>
  <message>
   <source>open</source>
   <translation>ouvert</translation>
  </message>
  <message>
   <source>centre tap</source>
   <translation>point milieu</translation>
  </message>
  <message>
   <source>seen in its source</source>
   <translation>lu dans sa source</translation>
  </message>
  <message>
   <source>second hand</source>
   <translation>seconde main</translation>
  </message>
  <message>
   <source>sources disagree</source>
   <translation>sources en désaccord</translation>
  </message>
  <message>
   <source>unverified</source>
   <translation>non vérifié</translation>
  </message>
 </context>
 <context>
  <name>pictures</name>
  <message>
   <source>row {row} of {rows}, column {column} of {columns}</source>
   <translation>rangée {row} sur {rows}, colonne {column} sur {columns}</translation>
  </message>
 </context>
 <context>
  <name>reading</name>
  <message>
   <source>A tube needs a type, such as ECC83.</source>
   <translation>Un tube demande un type, par exemple ECC83.</translation>
  </message>
  <message>
   <source>This note has several lines; it is edited on the drawing.</source>
   <translation>Cette note a plusieurs lignes ; elle se modifie sur le dessin.</translation>
  </message>
  <message>
   <source>A switch is open or closed.</source>
   <translation>Un interrupteur est ouvert ou fermé.</translation>
  </message>
  <message>
   <source>{id} has no rating.</source>
   <translation>{id} n'a pas de calibre.</translation>
  </message>
  <message>
   <source>'{text}' is not understood; expected is something like {example}.</source>
   <translation>'{text}' n'est pas compris ; il faut quelque chose comme {example}.</translation>
  </message>
  <message>
   <source>A part is turned by 0, 90, 180 or 270 degrees.</source>
   <translation>Un composant se tourne de 0, 90, 180 ou 270 degrés.</translation>
  </message>
  <message>
   <source>Either the word pulled, or nothing for a tube in its socket.</source>
   <translation>Soit le mot retiré, soit rien pour un tube dans son support.</translation>
  </message>
  <message>
   <source>'{text}' is no terminal; expected is a part and its pin, such as V1.4.</source>
   <translation>'{text}' n'est pas une borne ; il faut un composant et sa broche, par exemple V1.4.</translation>
  </message>
  <message>
   <source>'{text}' is no colour known here; expected is one of {names}, or #rrggbb.</source>
   <translation>'{text}' n'est pas une couleur connue ici ; il faut l'une de {names}, ou #rrggbb.</translation>
  </message>
 </context>
 <context>
  <name>stock</name>
  <message>
   <source>Supplies</source>
   <translation>Alimentations</translation>
  </message>
  <message>
   <source>Droppers and control</source>
   <translation>Résistances et commande</translation>
  </message>
  <message>
   <source>Reference and joints</source>
   <translation>Référence et cosses</translation>
  </message>
  <message>
   <source>Tubes</source>
   <translation>Tubes</translation>
  </message>
  <message>
   <source>Panel lamps</source>
   <translation>Lampes témoins</translation>
  </message>
  <message>
   <source>Thermistors</source>
   <translation>Thermistances</translation>
  </message>
  <message>
   <source>Relays</source>
   <translation>Relais</translation>
  </message>
  <message>
   <source>Winding</source>
   <translation>Enroulement</translation>
  </message>
  <message>
   <source>Winding, centre tap</source>
   <translation>Enroulement, point milieu</translation>
  </message>
  <message>
   <source>DC supply</source>
   <translation>alimentation continue</translation>
  </message>
  <message>
   <source>Rectified supply</source>
   <translation>Alimentation redressée</translation>
  </message>
  <message>
   <source>bridge</source>
   <translation>pont de Graetz</translation>
  </message>
  <message>
   <source>Battery</source>
   <translation>Batterie</translation>
  </message>
  <message>
   <source>Mains feed</source>
   <translation>Prise secteur</translation>
  </message>
  <message>
   <source>string across the mains</source>
   <translation>chaîne sur le secteur</translation>
  </message>
  <message>
   <source>Resistor</source>
   <translation>Résistance</translation>
  </message>
  <message>
   <source>Capacitor</source>
   <translation>Condensateur</translation>
  </message>
  <message>
   <source>Diode</source>
   <translation>Diode</translation>
  </message>
  <message>
   <source>silicon</source>
   <translation>silicium</translation>
  </message>
  <message>
   <source>Fuse</source>
   <translation>Fusible</translation>
  </message>
  <message>
   <source>Switch</source>
   <translation>Interrupteur</translation>
  </message>
  <message>
   <source>closed</source>
   <translation>fermé</translation>
  </message>
  <message>
   <source>Chassis</source>
   <translation>Châssis</translation>
  </message>
  <message>
   <source>the reference</source>
   <translation>la référence</translation>
  </message>
  <message>
   <source>Joint</source>
   <translation>Cosse</translation>
  </message>
  <message>
   <source>tag or splice</source>
   <translation>cosse ou épissure</translation>
  </message>
  <message>
   <source>Hum balance</source>
   <translation>Équilibrage</translation>
  </message>
  <message>
   <source>Elevation</source>
   <translation>Surélévation</translation>
  </message>
  <message>
   <source>cold</source>
   <translation>froid</translation>
  </message>
 </context>
 <context>
  <name>tables</name>
  <message>
   <source>Set {id} {what}</source>
   <translation>{id} : régler {what}</translation>
  </message>
  <message>
   <source>type</source>
   <translation>type</translation>
  </message>
  <message>
   <source>rating</source>
   <translation>valeurs</translation>
  </message>
  <message>
   <source>place</source>
   <translation>place</translation>
  </message>
  <message>
   <source>Notes and frames cannot be turned.</source>
   <translation>Les notes et les cadres ne se tournent pas.</translation>
  </message>
  <message>
   <source>turn</source>
   <translation>rotation</translation>
  </message>
  <message>
   <source>Only a tube can be pulled.</source>
   <translation>Seul un tube se retire.</translation>
  </message>
  <message>
   <source>pulled</source>
   <translation>retiré</translation>
  </message>
  <message>
   <source>from</source>
   <translation>de</translation>
  </message>
  <message>
   <source>to</source>
   <translation>à</translation>
  </message>
  <message>
   <source>gauge</source>
   <translation>calibre</translation>
  </message>
  <message>
   <source>length</source>
   <translation>longueur</translation>
  </message>
  <message>
   <source>colour</source>
   <translation>couleur</translation>
  </message>
  <message>
   <source>pair</source>
   <translation>paire</translation>
  </message>
  <message>
   <source>volts</source>
   <translation>volts</translation>
  </message>
  <message>
   <source>amps</source>
   <translation>ampères</translation>
  </message>
  <message>
   <source>amperes</source>
   <translation>ampères</translation>
  </message>
  <message>
   <source>watts</source>
   <translation>watts</translation>
  </message>
  <message>
   <source>state</source>
   <translation>état</translation>
  </message>
  <message>
   <source>id</source>
   <translation>repère</translation>
  </message>
  <message>
   <source>pins</source>
   <translation>broches</translation>
  </message>
  <message>
   <source>section between pins</source>
   <translation>section entre broches</translation>
  </message>
  <message>
   <source>volts across the section</source>
   <translation>volts aux bornes de la section</translation>
  </message>
  <message>
   <source>%</source>
   <translation>%</translation>
  </message>
  <message>
   <source>volts off the rating, per cent</source>
   <translation>écart à la tension nominale, pour cent</translation>
  </message>
  <message>
   <source>watts of heat</source>
   <translation>watts de chaleur</translation>
  </message>
  <message>
   <source>htr K</source>
   <translation>fil. K</translation>
  </message>
  <message>
   <source>heater temperature, kelvin</source>
   <translation>température du filament, kelvins</translation>
  </message>
  <message>
   <source>cath K</source>
   <translation>cath. K</translation>
  </message>
  <message>
   <source>cathode temperature, kelvin</source>
   <translation>température de la cathode, kelvins</translation>
  </message>
  <message>
   <source>kind</source>
   <translation>genre</translation>
  </message>
  <message>
   <source>volts at the terminals</source>
   <translation>volts aux bornes</translation>
  </message>
  <message>
   <source>load %</source>
   <translation>charge %</translation>
  </message>
  <message>
   <source>load in per cent of rating</source>
   <translation>charge en pour cent du calibre</translation>
  </message>
  <message>
   <source>watts given</source>
   <translation>watts fournis</translation>
  </message>
  <message>
   <source>part</source>
   <translation>pièce</translation>
  </message>
  <message>
   <source>pin</source>
   <translation>broche</translation>
  </message>
  <message>
   <source>volts above the reference, rms for AC</source>
   <translation>volts au-dessus de la référence, efficaces en alternatif</translation>
  </message>
  <message>
   <source>DC volts</source>
   <translation>volts CC</translation>
  </message>
  <message>
   <source>DC volts above the chassis</source>
   <translation>volts continus au-dessus du châssis</translation>
  </message>
  <message>
   <source>turned by, degrees</source>
   <translation>tourné de, degrés</translation>
  </message>
  <message>
   <source>type or rating</source>
   <translation>type ou valeurs</translation>
  </message>
  <message>
   <source>at</source>
   <translation>place</translation>
  </message>
  <message>
   <source>place on the sheet</source>
   <translation>position sur la feuille</translation>
  </message>
  <message>
   <source>out</source>
   <translation>retiré</translation>
  </message>
  <message>
   <source>pulled out of its socket</source>
   <translation>retiré de son support</translation>
  </message>
  <message>
   <source>twisted pair, by its name</source>
   <translation>paire torsadée, par son nom</translation>
  </message>
  <message>
   <source>mV</source>
   <translation>mV</translation>
  </message>
  <message>
   <source>millivolts dropped</source>
   <translation>millivolts perdus</translation>
  </message>
 </context>
 <context>
  <name>title block</name>
  <message>
   <source>Mains {volts}, {hertz}, {low} to {high}</source>
   <translation>Secteur {volts}, {hertz}, {low} à {high}</translation>
  </message>
  <message>
   <source>Wiring only</source>
   <translation>Câblage seul</translation>
  </message>
  <message>
   <source>At switch-on, {volts}</source>
   <translation>À la mise sous tension, {volts}</translation>
  </message>
  <message>
   <source>Hot, at {volts}</source>
   <translation>Chaud, à {volts}</translation>
  </message>
  <message>
   <source>Untitled</source>
   <translation>Sans titre</translation>
  </message>
  <message>
   <source>Date</source>
   <translation>Date</translation>
  </message>
  <message>
   <source>Drawn with Heaterloom</source>
   <translation>Dessiné avec Heaterloom</translation>
  </message>
 </context>
 <context>
  <name>warm-up</name>
  <message>
   <source>{time} after switch-on</source>
   <translation>{time} après la mise sous tension</translation>
  </message>
  <message>
   <source>{time}: {what}</source>
   <translation>{time} : {what}</translation>
  </message>
  <message>
   <source>the mains goes off</source>
   <translation>le secteur se coupe</translation>
  </message>
  <message>
   <source>the mains comes on</source>
   <translation>le secteur revient</translation>
  </message>
  <message>
   <source>{part} is at its limit</source>
   <translation>{part} est à sa limite</translation>
  </message>
  <message>
   <source>{part} regulates</source>
   <translation>{part} régule</translation>
  </message>
  <message>
   <source>{part} cuts out</source>
   <translation>{part} coupe</translation>
  </message>
  <message>
   <source>{part} tries again</source>
   <translation>{part} réessaie</translation>
  </message>
  <message>
   <source>{part} latches off</source>
   <translation>{part} se verrouille</translation>
  </message>
  <message>
   <source>{part} pulls in</source>
   <translation>{part} colle</translation>
  </message>
  <message>
   <source>the contact of {part} closes</source>
   <translation>le contact de {part} ferme</translation>
  </message>
  <message>
   <source>{part} drops out</source>
   <translation>{part} décolle</translation>
  </message>
  <message>
   <source>the contact of {part} goes back</source>
   <translation>le contact de {part} revient</translation>
  </message>
  <message>
   <source>the run stops here</source>
   <translation>le calcul s’arrête ici</translation>
  </message>
  <message>
   <source>&amp;Switch on cold</source>
   <translation>&amp;Mettre sous tension à froid</translation>
  </message>
  <message>
   <source>Follow the warm-up second by second: does it start?</source>
   <translation>Suivre la mise en chauffe seconde par seconde : cela démarre-t-il ?</translation>
  </message>
  <message>
   <source>&amp;Play or pause the warm-up</source>
   <translation>&amp;Lire ou arrêter la mise en chauffe</translation>
  </message>
  <message>
   <source>&amp;Next event</source>
   <translation>Événement &amp;suivant</translation>
  </message>
  <message>
   <source>Pre&amp;vious event</source>
   <translation>Événement &amp;précédent</translation>
  </message>
  <message>
   <source>&amp;Leave the instant</source>
   <translation>&amp;Quitter l’instant</translation>
  </message>
 </context>
</TS>
