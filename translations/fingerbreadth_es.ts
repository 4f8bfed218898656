<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en_US">
<context>
    <name>FaultWords</name>
    <message>
        <source>The age is missing; give it in years, for example 34y.</source>
        <translation>Falta la edad; indíquela en años, por ejemplo 34y.</translation>
    </message>
    <message>
        <source>The age “%1” is not an age; give it in years, for example 34y.</source>
        <translation>La edad «%1» no es una edad; indíquela en años, por ejemplo 34y.</translation>
    </message>
    <message>
        <source>The age %1 is outside %2 to %3 years; give the age of an adult, for example 34y.</source>
        <translation>La edad %1 está fuera del intervalo de %2 a %3 años; indique la edad de una persona adulta, por ejemplo 34y.</translation>
    </message>
    <message>
        <source>The stature is missing; give it in centimetres, for example 163.</source>
        <translation>Falta la estatura; indíquela en centímetros, por ejemplo 163.</translation>
    </message>
    <message>
        <source>The stature “%1” is not a number; give it in centimetres, for example 163.</source>
        <translation>La estatura «%1» no es un número; indíquela en centímetros, por ejemplo 163.</translation>
    </message>
    <message>
        <source>The stature %1 cm is outside %2 to %3 cm; give it in centimetres, for example 163.</source>
        <translation>La estatura de %1 cm está fuera del intervalo de %2 a %3 cm; indíquela en centímetros, por ejemplo 163.</translation>
    </message>
    <message>
        <source>The weight is missing; give it in kilograms, for example 71.</source>
        <translation>Falta el peso; indíquelo en kilogramos, por ejemplo 71.</translation>
    </message>
    <message>
        <source>The weight “%1” is not a number; give it in kilograms, for example 71.</source>
        <translation>El peso «%1» no es un número; indíquelo en kilogramos, por ejemplo 71.</translation>
    </message>
    <message>
        <source>The weight %1 kg is outside %2 to %3 kg; give it in kilograms, for example 71.</source>
        <translation>El peso de %1 kg está fuera del intervalo de %2 a %3 kg; indíquelo en kilogramos, por ejemplo 71.</translation>
    </message>
    <message>
        <source>Stature and weight together make a body-mass index of %1, outside %2 to %3; check that stature is in centimetres and weight in kilograms.</source>
        <translation>La estatura y el peso dan un índice de masa corporal de %1, fuera del intervalo de %2 a %3; compruebe que la estatura esté en centímetros y el peso en kilogramos.</translation>
    </message>
    <message>
        <source>The site “%1” is not known; choose from %2.</source>
        <translation>La zona de inyección «%1» no se conoce; elija entre %2.</translation>
    </message>
    <message>
        <source>The side “%1” is not known; choose from %2.</source>
        <translation>El lado «%1» no se conoce; elija entre %2.</translation>
    </message>
    <message>
        <source>The sex “%1” is not known to the survey the bodies come from; choose from %2.</source>
        <translation>El sexo «%1» no figura en el estudio del que proceden los cuerpos; elija entre %2.</translation>
    </message>
    <message>
        <source>The view “%1” is not known; choose from %2.</source>
        <translation>La vista «%1» no se conoce; elija entre %2.</translation>
    </message>
    <message>
        <source>The convention “%1” is not known; choose from %2.</source>
        <translation>El método «%1» no se conoce; elija entre %2.</translation>
    </message>
    <message>
        <source>The policy names the convention “%1” under %2, which is not known; choose from %3.</source>
        <translation>La normativa indica en %2 el método «%1», que no se conoce; elija entre %3.</translation>
    </message>
    <message>
        <source>The convention “%1” belongs to another site; choose one whose name begins with the site.</source>
        <translation>El método «%1» pertenece a otra zona de inyección; elija uno cuyo nombre empiece por la zona.</translation>
    </message>
    <message>
        <source>A mark cannot be judged in this view, which is for looking only; mark in the view %1.</source>
        <translation>En esta vista no se puede evaluar una marca, porque es solo para observar; marque en la vista %1.</translation>
    </message>
    <message>
        <source>The layer “%1” is not known; choose from %2, separated by commas.</source>
        <translation>La capa «%1» no se conoce; elija entre %2, separadas por comas.</translation>
    </message>
    <message>
        <source>The mark “%1” is not a point; give two numbers in centimetres with a comma between, for example 0,-4.3.</source>
        <translation>La marca «%1» no es un punto; indique dos números en centímetros separados por una coma, por ejemplo 0,-4.3.</translation>
    </message>
    <message>
        <source>The mark lies outside the body; place it on the skin of the patient.</source>
        <translation>La marca queda fuera del cuerpo; colóquela sobre la piel del paciente.</translation>
    </message>
    <message>
        <source>The policy file %1 cannot be read; check its name and that you may read it.</source>
        <translation>No se puede leer el archivo de normativa %1; compruebe su nombre y que usted tenga permiso para leerlo.</translation>
    </message>
    <message>
        <source>The policy file is cut short or broken at line %1; mend the JSON there.</source>
        <translation>El archivo de normativa está cortado o dañado en la línea %1; corrija ahí el JSON.</translation>
    </message>
    <message>
        <source>The policy has the wrong kind of value at %1; write it in the form of the shipped policy.</source>
        <translation>La normativa tiene en %1 un valor de otro tipo; escríbalo como en la normativa incluida.</translation>
    </message>
    <message>
        <source>The policy gives %1 for %2, outside %3 to %4; choose a value in that range.</source>
        <translation>La normativa da %1 para %2, fuera del intervalo de %3 a %4; elija un valor de ese intervalo.</translation>
    </message>
    <message>
        <source>The policy has an entry %1 that is not known; remove it or correct its spelling.</source>
        <translation>La normativa tiene una entrada %1 que no se conoce; elimínela o corrija su escritura.</translation>
    </message>
    <message>
        <source>The policy lacks %1; add it in the form of the shipped policy.</source>
        <translation>En la normativa falta %1; añádalo como en la normativa incluida.</translation>
    </message>
    <message>
        <source>The policy gives no source for %1; name one, or write lab&apos;s choice.</source>
        <translation>La normativa no indica la fuente de %1; nombre una o escriba que es elección del laboratorio.</translation>
    </message>
    <message>
        <source>The table of body proportions is broken at %1; install the program again.</source>
        <translation>La tabla de proporciones del cuerpo está dañada en %1; vuelva a instalar el programa.</translation>
    </message>
    <message>
        <source>The plate %1 cannot be read; install the program again.</source>
        <translation>No se puede leer la lámina %1; vuelva a instalar el programa.</translation>
    </message>
    <message>
        <source>The plate %1 is broken at byte %2; mend the SVG there.</source>
        <translation>La lámina %1 está dañada en el byte %2; corrija ahí el SVG.</translation>
    </message>
    <message>
        <source>The plate %1 lacks the name %2; draw it and give it that id.</source>
        <translation>En la lámina %1 falta el nombre %2; dibújelo y póngale ese identificador.</translation>
    </message>
    <message>
        <source>The plate %1 has the name %2 twice; give each id once.</source>
        <translation>La lámina %1 tiene dos veces el nombre %2; use cada identificador una sola vez.</translation>
    </message>
    <message>
        <source>The plate %1 holds %2, which a plate may not; take it out.</source>
        <translation>La lámina %1 contiene %2, que no se admite en una lámina; quítelo.</translation>
    </message>
    <message>
        <source>The plate %1 has a path that cannot be read at %2; use absolute M, L, C and Z only.</source>
        <translation>La lámina %1 tiene en %2 un trazado que no se puede leer; use solo M, L, C y Z absolutas.</translation>
    </message>
    <message>
        <source>The plate %1 has its levels or edges out of order at %2; put them in order along the limb.</source>
        <translation>La lámina %1 tiene en %2 los niveles o los bordes desordenados; ordénelos a lo largo de la extremidad.</translation>
    </message>
    <message>
        <source>The seed “%1” is not a whole number; type digits only, for example 2024.</source>
        <translation>La semilla «%1» no es un número entero; escriba solo cifras, por ejemplo 2024.</translation>
    </message>
    <message>
        <source>A run has %1 to %2 requests; choose a number in that range.</source>
        <translation>Una serie tiene de %1 a %2 casos; elija un número de ese intervalo.</translation>
    </message>
    <message>
        <source>The command “%1” is not known; use locate, grade or draw, or --help to see them.</source>
        <translation>La orden «%1» no se conoce; use locate, grade o draw, o bien --help para verlas.</translation>
    </message>
    <message>
        <source>The option %1 is not known; --help lists the options.</source>
        <translation>La opción %1 no se conoce; --help muestra las opciones.</translation>
    </message>
    <message>
        <source>The option %1 is not known to %2; --help lists the options.</source>
        <translation>La orden %2 no conoce la opción %1; --help muestra las opciones.</translation>
    </message>
    <message>
        <source>The option %1 is missing; add it with its value.</source>
        <translation>Falta la opción %1; añádala con su valor.</translation>
    </message>
    <message>
        <source>The option %1 needs a value; write it after the option.</source>
        <translation>La opción %1 necesita un valor; escríbalo después de la opción.</translation>
    </message>
    <message>
        <source>The option %1 is given twice; give it once.</source>
        <translation>La opción %1 aparece dos veces; indíquela una sola vez.</translation>
    </message>
    <message>
        <source>The value “%1” does not suit %2; give numbers from %3 to %4.</source>
        <translation>El valor «%1» no es válido para %2; indique números de %3 a %4.</translation>
    </message>
    <message>
        <source>The value “%1” does not suit %2; --help shows its form.</source>
        <translation>El valor «%1» no es válido para %2; --help muestra su forma.</translation>
    </message>
    <message>
        <source>The output %1 cannot be written; choose a folder you may write to, with room left.</source>
        <translation>No se puede escribir la salida %1; elija una carpeta con permiso de escritura y espacio libre.</translation>
    </message>
    <message>
        <source>The output %1 is of no known kind; end its name in .svg, .png or .pdf.</source>
        <translation>La salida %1 es de un tipo que no se conoce; termine su nombre en .svg, .png o .pdf.</translation>
    </message>
    <message>
        <source>This line is no request; write one JSON object with the names and values of the options.</source>
        <translation>Esta línea no es una solicitud; escriba un objeto JSON con los nombres y los valores de las opciones.</translation>
    </message>
    <message>
        <source>The convention “%1” does not belong to the site “%2”; choose from %3.</source>
        <translation>El método «%1» no pertenece a la zona de inyección «%2»; elija entre %3.</translation>
    </message>
    <message>
        <source>A hand measures %1 to %2 cm from the wrist crease to the tip of the middle finger; give a length in that range.</source>
        <extracomment>Length of the learner&apos;s own hand.</extracomment>
        <translation>Una mano mide de %1 a %2 cm desde el pliegue de la muñeca hasta la punta del dedo medio; indique una longitud de ese intervalo.</translation>
    </message>
    <message>
        <source>The hand length %1 cm is outside %2 to %3 cm; measure from the wrist crease to the tip of the middle finger.</source>
        <translation>La longitud de la mano de %1 cm está fuera del intervalo de %2 a %3 cm; mida desde el pliegue de la muñeca hasta la punta del dedo medio.</translation>
    </message>
    <message>
        <source>No site is chosen; choose at least one site to practise.</source>
        <translation>No hay ninguna zona elegida; elija al menos una zona para practicar.</translation>
    </message>
    <message>
        <source>The view “%1” does not show the site “%2”; choose from %3.</source>
        <translation>La vista «%1» no muestra la zona de inyección «%2»; elija entre %3.</translation>
    </message>
    <message>
        <source>The construction is not whole; set what is missing, then go on.</source>
        <translation>La construcción no está completa; coloque lo que falta y después continúe.</translation>
    </message>
    <message>
        <source>The construction is not whole; set “%1”, then go on.</source>
        <translation>La construcción no está completa; coloque «%1» y después continúe.</translation>
    </message>
    <message>
        <source>No landmark is set yet; feel for one, plant a flag on it and name it.</source>
        <translation>Todavía no hay ningún punto de referencia; palpe uno, plante en él una bandera y póngale nombre.</translation>
    </message>
    <message>
        <source>Nothing is built yet; build the site from your landmarks, then mark it.</source>
        <translation>Todavía no hay nada construido; construya la zona a partir de sus puntos de referencia y después coloque la marca.</translation>
    </message>
    <message>
        <source>The site is not marked yet; mark it on the skin.</source>
        <translation>La zona todavía no está marcada; coloque la marca sobre la piel.</translation>
    </message>
    <message>
        <source>“%1” is no landmark known here; choose a name from the list or check the spelling.</source>
        <translation>«%1» no es un punto de referencia conocido aquí; elija un nombre de la lista o revise la ortografía.</translation>
    </message>
    <message>
        <source>“%1” could mean one landmark or another; write out its full name or choose it from the list.</source>
        <translation>«%1» podría ser un punto de referencia u otro; escriba el nombre completo o elíjalo de la lista.</translation>
    </message>
    <message>
        <source>Nothing is felt yet; press on the skin first, then plant a flag there.</source>
        <translation>Todavía no se ha palpado nada; presione primero sobre la piel y después plante ahí una bandera.</translation>
    </message>
    <message>
        <source>Your profile cannot be saved in %1; check that you may write there and that there is room.</source>
        <translation>Su perfil no se puede guardar en %1; compruebe que tiene permiso para escribir ahí y que queda espacio.</translation>
    </message>
    <message>
        <source>The saved profile %1 is damaged and cannot be read; enter your measures again.</source>
        <translation>El perfil guardado %1 está dañado y no se puede leer; introduzca de nuevo sus medidas.</translation>
    </message>
    <message>
        <source>The saved profile %1 is damaged and was put aside as %2; enter your measures again.</source>
        <translation>El perfil guardado %1 está dañado y se ha apartado como %2; introduzca de nuevo sus medidas.</translation>
    </message>
    <message>
        <source>The saved profile %1 was written by a newer version of this program; use that version, or move the file away.</source>
        <translation>El perfil guardado %1 lo escribió una versión más reciente de este programa; use esa versión o quite el archivo de ahí.</translation>
    </message>
    <message>
        <source>A finger measures %1 to %2 cm across its middle joint; give a width in that range.</source>
        <extracomment>Width of the learner&apos;s own finger.</extracomment>
        <translation>Un dedo mide de %1 a %2 cm de ancho en la articulación media; indique una anchura dentro de ese intervalo.</translation>
    </message>
    <message>
        <source>The finger width %1 cm is outside %2 to %3 cm; measure straight across the middle joint of the index finger.</source>
        <translation>La anchura del dedo de %1 cm está fuera del intervalo de %2 a %3 cm; mida en línea recta la articulación media del dedo índice.</translation>
    </message>
</context>
<context>
    <name>fb::AboutDialog</name>
    <message>
        <source>The numbers of the policy in use come from:</source>
        <translation>Los números de la normativa en uso proceden de:</translation>
    </message>
    <message>
        <source>About Fingerbreadth</source>
        <translation>Acerca de Fingerbreadth</translation>
    </message>
    <message>
        <source>Fingerbreadth</source>
        <translation>Fingerbreadth</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Versión %1</translation>
    </message>
    <message>
        <source>Practise finding and marking the sites of intramuscular injections on drawn bodies, graded in centimetres with the reason.</source>
        <translation>Práctica para localizar y marcar las zonas de inyección intramuscular en cuerpos dibujados, con evaluación en centímetros y el motivo.</translation>
    </message>
    <message>
        <source>Free software under the GNU General Public License, version 3 or later; without any warranty.</source>
        <translation>Software libre bajo la Licencia Pública General de GNU, versión 3 o posterior; sin garantía alguna.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
</context>
<context>
    <name>fb::BuildPanel</name>
    <message>
        <source>Upper row</source>
        <extracomment>Of the thigh between the lines across it.</extracomment>
        <translation>Fila superior</translation>
    </message>
    <message>
        <source>Middle row</source>
        <translation>Fila media</translation>
    </message>
    <message>
        <source>Lower row</source>
        <translation>Fila inferior</translation>
    </message>
    <message>
        <source>Inside the front line</source>
        <extracomment>Of the thigh beside and between the front line and the outer line.</extracomment>
        <translation>Por dentro de la línea anterior</translation>
    </message>
    <message>
        <source>Between the two lines</source>
        <translation>Entre las dos líneas</translation>
    </message>
    <message>
        <source>Behind the outer line</source>
        <translation>Detrás de la línea externa</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Row of the field</source>
        <translation>Fila del campo</translation>
    </message>
    <message>
        <source>Column of the field</source>
        <translation>Columna del campo</translation>
    </message>
    <message>
        <source>Parts of the construction</source>
        <translation>Partes de la construcción</translation>
    </message>
    <message>
        <source>Everything is set. Move what is not right yet, or go on to mark.</source>
        <translation>Todo está colocado. Mueva lo que aún no esté bien o pase a la marca.</translation>
    </message>
    <message>
        <source>%1, set</source>
        <extracomment>Told to a screen reader of a part of the construction.</extracomment>
        <translation>%1, colocado</translation>
    </message>
    <message>
        <source>%1, not set</source>
        <translation>%1, sin colocar</translation>
    </message>
</context>
<context>
    <name>fb::BuildWords</name>
    <message>
        <source>Set the ends of the thigh, set off a handbreadth at either end, lay the front line and the outer line, then choose the field.</source>
        <translation>Coloque los extremos del muslo, deje el ancho de una mano en cada extremo, trace la línea anterior y la línea externa y después elija el campo.</translation>
    </message>
    <message>
        <source>Lay your fingers below the acromion, then set the base and the apex of the triangle.</source>
        <translation>Coloque los dedos debajo del acromion y después ponga la base y el vértice del triángulo.</translation>
    </message>
    <message>
        <source>Draw the line from the acromion to the deltoid tuberosity and halve it.</source>
        <translation>Trace la línea del acromion a la tuberosidad deltoidea y divídala por la mitad.</translation>
    </message>
    <message>
        <source>Set the ends of the thigh, divide it into thirds, lay the front line and the outer line, then choose the field.</source>
        <translation>Coloque los extremos del muslo, divídalo en tercios, trace la línea anterior y la línea externa y después elija el campo.</translation>
    </message>
    <message>
        <source>Choose your hand, lay its palm, point the index finger and open the middle finger.</source>
        <translation>Elija la mano, apoye la palma, apunte con el dedo índice y abra el dedo medio.</translation>
    </message>
    <message>
        <source>Set the three corners of the triangle, then draw a line from each to the middle of the side facing it.</source>
        <translation>Coloque los tres vértices del triángulo y después trace desde cada uno una línea al centro del lado opuesto.</translation>
    </message>
    <message>
        <source>Lay the upper edge of your fingers on the lateral edge of the acromion.</source>
        <translation>Coloque el borde superior de los dedos sobre el borde lateral del acromion.</translation>
    </message>
    <message>
        <source>Turn your fingers until they lie square to the arm.</source>
        <translation>Gire los dedos hasta que queden perpendiculares al brazo.</translation>
    </message>
    <message>
        <source>Set one end of the base on the front corner of the acromion.</source>
        <translation>Coloque un extremo de la base en la esquina anterior del acromion.</translation>
    </message>
    <message>
        <source>Set the other end of the base on the back corner of the acromion.</source>
        <translation>Coloque el otro extremo de la base en la esquina posterior del acromion.</translation>
    </message>
    <message>
        <source>Set the apex on the mid-lateral line, at armpit level.</source>
        <translation>Coloque el vértice en la línea media lateral, al nivel de la axila.</translation>
    </message>
    <message>
        <source>Set the upper end of the line on the lateral edge of the acromion.</source>
        <translation>Coloque el extremo superior de la línea en el borde lateral del acromion.</translation>
    </message>
    <message>
        <source>Set the lower end of the line on the deltoid tuberosity.</source>
        <translation>Coloque el extremo inferior de la línea en la tuberosidad deltoidea.</translation>
    </message>
    <message>
        <source>Slide this point until it halves the line.</source>
        <translation>Deslice este punto hasta que divida la línea por la mitad.</translation>
    </message>
    <message>
        <source>Lay the front line down the middle of the front of the thigh, toward the middle of the patella.</source>
        <translation>Trace la línea anterior por el centro de la cara anterior del muslo, hacia el centro de la rótula.</translation>
    </message>
    <message>
        <source>Turn the hand until the index fingertip rests on the anterior superior iliac spine.</source>
        <translation>Gire la mano hasta que la punta del dedo índice se apoye en la espina ilíaca anterosuperior.</translation>
    </message>
    <message>
        <source>Set this corner on the greater trochanter.</source>
        <translation>Coloque este vértice sobre el trocánter mayor.</translation>
    </message>
    <message>
        <source>Set this corner on the iliac tubercle.</source>
        <translation>Coloque este vértice sobre el tubérculo ilíaco.</translation>
    </message>
    <message>
        <source>Set this corner on the anterior superior iliac spine.</source>
        <translation>Coloque este vértice sobre la espina ilíaca anterosuperior.</translation>
    </message>
    <message>
        <source>Slide the end of the line from the trochanter to the middle of the side facing it.</source>
        <translation>Deslice el final de la línea del trocánter hasta el centro del lado opuesto.</translation>
    </message>
    <message>
        <source>Slide the end of the line from the tubercle to the middle of the side facing it.</source>
        <translation>Deslice el final de la línea del tubérculo hasta el centro del lado opuesto.</translation>
    </message>
    <message>
        <source>Slide the end of the line from the iliac spine to the middle of the side facing it.</source>
        <translation>Deslice el final de la línea de la espina ilíaca hasta el centro del lado opuesto.</translation>
    </message>
    <message>
        <source>Feel</source>
        <extracomment>The three stages of finding a site by hand, as short words on buttons.</extracomment>
        <translation>Palpar</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Trazar</translation>
    </message>
    <message>
        <source>Mark it</source>
        <extracomment>The stage in which the site is marked (a verb).</extracomment>
        <translation>Marcar</translation>
    </message>
    <message numerus="yes">
        <source>Feel for the %n landmark(s) this site is built from. Plant a flag on each and name it.</source>
        <translation>
            <numerusform>Palpe el %n punto de referencia con el que se construye esta zona. Plante en él una bandera y póngale nombre.</numerusform>
            <numerusform>Palpe los %n puntos de referencia con los que se construye esta zona. Plante en cada uno una bandera y póngale nombre.</numerusform>
        </translation>
    </message>
    <message>
        <source>Fingers</source>
        <extracomment>What can be taken hold of and moved, as short names.</extracomment>
        <translation>Dedos</translation>
    </message>
    <message>
        <source>Turn of the fingers</source>
        <translation>Giro de los dedos</translation>
    </message>
    <message>
        <source>Base, front end</source>
        <translation>Base, extremo anterior</translation>
    </message>
    <message>
        <source>Base, back end</source>
        <translation>Base, extremo posterior</translation>
    </message>
    <message>
        <source>Apex</source>
        <translation>Vértice</translation>
    </message>
    <message>
        <source>Line, upper end</source>
        <translation>Línea, extremo superior</translation>
    </message>
    <message>
        <source>Line, lower end</source>
        <translation>Línea, extremo inferior</translation>
    </message>
    <message>
        <source>Middle of the line</source>
        <translation>Mitad de la línea</translation>
    </message>
    <message>
        <source>Front line</source>
        <translation>Línea anterior</translation>
    </message>
    <message>
        <source>Outer line</source>
        <translation>Línea externa</translation>
    </message>
    <message>
        <source>Palm</source>
        <translation>Palma</translation>
    </message>
    <message>
        <source>Index fingertip</source>
        <translation>Punta del dedo índice</translation>
    </message>
    <message>
        <source>Middle fingertip</source>
        <translation>Punta del dedo medio</translation>
    </message>
    <message>
        <source>Corner at the trochanter</source>
        <translation>Vértice del trocánter</translation>
    </message>
    <message>
        <source>Corner at the tubercle</source>
        <translation>Vértice del tubérculo</translation>
    </message>
    <message>
        <source>Corner at the iliac spine</source>
        <translation>Vértice de la espina ilíaca</translation>
    </message>
    <message>
        <source>Line from the trochanter</source>
        <translation>Línea desde el trocánter</translation>
    </message>
    <message>
        <source>Line from the tubercle</source>
        <translation>Línea desde el tubérculo</translation>
    </message>
    <message>
        <source>Line from the iliac spine</source>
        <translation>Línea desde la espina ilíaca</translation>
    </message>
    <message>
        <source>Which hand</source>
        <translation>Qué mano</translation>
    </message>
    <message>
        <source>How many fingers</source>
        <translation>Cuántos dedos</translation>
    </message>
    <message>
        <source>Field</source>
        <extracomment>A field of the thigh between the lines laid over it.</extracomment>
        <translation>Campo</translation>
    </message>
    <message>
        <source>Which hand do you lay on this hip?</source>
        <translation>¿Qué mano apoya sobre esta cadera?</translation>
    </message>
    <message>
        <source>How many fingers do you lay below the acromion?</source>
        <translation>¿Cuántos dedos coloca debajo del acromion?</translation>
    </message>
    <message>
        <source>Which field holds the site?</source>
        <translation>¿En qué campo está la zona?</translation>
    </message>
    <message>
        <source>Left hand</source>
        <extracomment>The hand of whoever gives the injection.</extracomment>
        <translation>Mano izquierda</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Mano derecha</translation>
    </message>
    <message>
        <source>Two fingers</source>
        <translation>Dos dedos</translation>
    </message>
    <message>
        <source>Three fingers</source>
        <translation>Tres dedos</translation>
    </message>
    <message>
        <source>Middle field, on the inner side of the front line</source>
        <translation>Campo medio, por dentro de la línea anterior</translation>
    </message>
    <message>
        <source>Middle field, between front line and outer line</source>
        <translation>Campo medio, entre la línea anterior y la línea externa</translation>
    </message>
    <message>
        <source>Middle field, behind the outer line</source>
        <translation>Campo medio, detrás de la línea externa</translation>
    </message>
    <message>
        <source>Now mark the site: on the middle of the outer side, inside the triangle, at the lower edge of your fingers.</source>
        <translation>Ahora coloque la marca en la zona: en el centro de la cara externa, dentro del triángulo, en el borde inferior de sus dedos.</translation>
    </message>
    <message>
        <source>Now mark the site: where you halved the line.</source>
        <translation>Ahora coloque la marca en la zona: donde dividió la línea por la mitad.</translation>
    </message>
    <message>
        <source>Now mark the site: in the field you chose, nearer the outer line than the front line.</source>
        <translation>Ahora coloque la marca en la zona: en el campo que eligió, más cerca de la línea externa que de la anterior.</translation>
    </message>
    <message>
        <source>Now mark the site: in the middle of the V between index and middle finger. Then take the hand away before the needle comes.</source>
        <translation>Ahora coloque la marca en la zona: en el centro de la V entre el dedo índice y el dedo medio. Después retire la mano antes de que llegue la aguja.</translation>
    </message>
    <message>
        <source>Now mark the site: where the three lines cross.</source>
        <translation>Ahora coloque la marca en la zona: donde se cruzan las tres líneas.</translation>
    </message>
    <message>
        <source>Set the hip end of the thigh at the greater trochanter.</source>
        <translation>Coloque el extremo del muslo del lado de la cadera en el trocánter mayor.</translation>
    </message>
    <message>
        <source>Set the knee end of the thigh at the lateral femoral condyle.</source>
        <translation>Coloque el extremo del muslo del lado de la rodilla en el cóndilo femoral lateral.</translation>
    </message>
    <message>
        <source>Lay one line across, a handbreadth below the greater trochanter.</source>
        <translation>Trace una línea transversal, al ancho de una mano por debajo del trocánter mayor.</translation>
    </message>
    <message>
        <source>Lay one line across, where the third next to the hip ends.</source>
        <translation>Trace una línea transversal, donde termina el tercio junto a la cadera.</translation>
    </message>
    <message>
        <source>Lay the other line across, a handbreadth above the knee.</source>
        <translation>Trace la otra línea transversal, al ancho de una mano por encima de la rodilla.</translation>
    </message>
    <message>
        <source>Lay the other line across, where the third next to the knee begins.</source>
        <translation>Trace la otra línea transversal, donde empieza el tercio junto a la rodilla.</translation>
    </message>
    <message>
        <source>Lay the outer line down the middle of the outer side of the thigh.</source>
        <translation>Trace la línea externa por el centro de la cara externa del muslo.</translation>
    </message>
    <message>
        <source>Lay your palm over the greater trochanter, the thumb toward the groin.</source>
        <translation>Apoye la palma sobre el trocánter mayor, con el pulgar hacia la ingle.</translation>
    </message>
    <message>
        <source>Spread the middle finger back toward the iliac crest, as wide as it goes.</source>
        <translation>Separe el dedo medio hacia atrás, hacia la cresta ilíaca, todo lo que dé.</translation>
    </message>
    <message>
        <source>Thigh, hip end</source>
        <translation>Muslo, extremo de la cadera</translation>
    </message>
    <message>
        <source>Thigh, knee end</source>
        <translation>Muslo, extremo de la rodilla</translation>
    </message>
    <message>
        <source>Line across, near the hip</source>
        <translation>Línea transversal, junto a la cadera</translation>
    </message>
    <message>
        <source>Line across, near the knee</source>
        <translation>Línea transversal, junto a la rodilla</translation>
    </message>
    <message>
        <source>Field next to the hip, on the inner side of the front line</source>
        <extracomment>Fields of the thigh: rows from hip to knee, columns from its inner side to its back.</extracomment>
        <translation>Campo junto a la cadera, por dentro de la línea anterior</translation>
    </message>
    <message>
        <source>Field next to the hip, between front line and outer line</source>
        <translation>Campo junto a la cadera, entre la línea anterior y la línea externa</translation>
    </message>
    <message>
        <source>Field next to the hip, behind the outer line</source>
        <translation>Campo junto a la cadera, detrás de la línea externa</translation>
    </message>
    <message>
        <source>Field next to the knee, on the inner side of the front line</source>
        <translation>Campo junto a la rodilla, por dentro de la línea anterior</translation>
    </message>
    <message>
        <source>Field next to the knee, between front line and outer line</source>
        <translation>Campo junto a la rodilla, entre la línea anterior y la línea externa</translation>
    </message>
    <message>
        <source>Field next to the knee, behind the outer line</source>
        <translation>Campo junto a la rodilla, detrás de la línea externa</translation>
    </message>
</context>
<context>
    <name>fb::ByHandBar</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Start over</source>
        <extracomment>Takes away everything that was set in this stage; can be undone.</extracomment>
        <translation>Empezar de nuevo</translation>
    </message>
    <message>
        <source>Take away everything set in this stage; it can be undone</source>
        <translation>Quitar todo lo colocado en esta etapa; se puede deshacer</translation>
    </message>
    <message>
        <source>Watch once</source>
        <extracomment>The program shows, once, how this site is found.</extracomment>
        <translation>Ver una vez</translation>
    </message>
    <message>
        <source>Already shown for this request</source>
        <translation>Ya se ha mostrado en este caso</translation>
    </message>
    <message>
        <source>See once how this site is found; the attempt will say so</source>
        <translation>Ver una vez cómo se localiza esta zona; constará en el intento</translation>
    </message>
</context>
<context>
    <name>fb::ByHandPanel</name>
    <message>
        <source>You had watched how it is done before you were graded.</source>
        <translation>Antes de la evaluación había visto cómo se hace.</translation>
    </message>
    <message>
        <source>Landmarks</source>
        <extracomment>Above a list of what was found, bone by bone.</extracomment>
        <translation>Puntos de referencia</translation>
    </message>
    <message>
        <source>Construction</source>
        <extracomment>Above a list of what was built, step by step.</extracomment>
        <translation>Construcción</translation>
    </message>
    <message>
        <source>%1: right.</source>
        <extracomment>A step of the construction that was done right.</extracomment>
        <translation>%1: correcto.</translation>
    </message>
    <message>
        <source>What went wrong first</source>
        <translation>Lo primero que falló</translation>
    </message>
</context>
<context>
    <name>fb::ByHandScene</name>
    <message>
        <source>Yours</source>
        <translation>Lo suyo</translation>
    </message>
    <message>
        <source>Yours: %1</source>
        <extracomment>What the learner has set; %1 is a part of the construction, as in a list.</extracomment>
        <translation>Lo suyo: %1</translation>
    </message>
    <message>
        <source>By your hand</source>
        <extracomment>Where a needle would have gone by the learner&apos;s own construction.</extracomment>
        <translation>Según su mano</translation>
    </message>
</context>
<context>
    <name>fb::ByHandWords</name>
    <message>
        <source>The flag “%1” stands on its place.</source>
        <translation>La bandera «%1» está en su lugar.</translation>
    </message>
    <message>
        <source>all %1</source>
        <extracomment>How many landmarks or steps were right: every one of so many.</extracomment>
        <translation>los %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>How many landmarks or steps were right: &quot;3 of 4&quot;.</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Found</source>
        <extracomment>Of a landmark that was to be found.</extracomment>
        <translation>Localizado</translation>
    </message>
    <message>
        <source>Nearly found</source>
        <translation>Casi localizado</translation>
    </message>
    <message>
        <source>Not found</source>
        <translation>No localizado</translation>
    </message>
    <message>
        <source>Wrong name</source>
        <translation>Nombre equivocado</translation>
    </message>
    <message>
        <source>No flag</source>
        <translation>Sin bandera</translation>
    </message>
    <message>
        <source>%1: found, right on it.</source>
        <extracomment>In these %1 is the name of a landmark.</extracomment>
        <translation>%1: localizado, justo encima.</translation>
    </message>
    <message>
        <source>%1: found, %2 away.</source>
        <translation>%1: localizado, a %2.</translation>
    </message>
    <message>
        <source>%1: nearly found, your flag is %2.</source>
        <extracomment>%2 is an offset: &quot;1.4 cm too high&quot;.</extracomment>
        <translation>%1: casi localizado, su bandera queda %2.</translation>
    </message>
    <message>
        <source>%1: not found, your flag is %2. It stands on another landmark: %3.</source>
        <translation>%1: no localizado, su bandera queda %2. Está en otro punto de referencia: %3.</translation>
    </message>
    <message>
        <source>%1: not found, your flag is %2.</source>
        <translation>%1: no localizado, su bandera queda %2.</translation>
    </message>
    <message>
        <source>The place is right; its name is “%1”, not “%2”.</source>
        <translation>El lugar es correcto; se llama «%1», no «%2».</translation>
    </message>
    <message>
        <source>%1: you planted no flag on it.</source>
        <translation>%1: no plantó ninguna bandera en él.</translation>
    </message>
    <message>
        <source>Landmarks found</source>
        <extracomment>The three parts of a grade, each with its verdict beside it.</extracomment>
        <translation>Puntos de referencia localizados</translation>
    </message>
    <message>
        <source>Built right</source>
        <translation>Construcción correcta</translation>
    </message>
    <message>
        <source>Marked right</source>
        <translation>Marca correcta</translation>
    </message>
    <message>
        <source>Found, built and marked as it is taught.</source>
        <translation>Localizado, construido y marcado como se enseña.</translation>
    </message>
    <message>
        <source>Landmarks and construction were right; only the mark misses the site they show.</source>
        <translation>Los puntos de referencia y la construcción eran correctos; solo la marca no está en la zona que señalan.</translation>
    </message>
    <message>
        <source>The point is right, but your hand would not have led you there.</source>
        <translation>El punto es correcto, pero su mano no le habría llevado hasta él.</translation>
    </message>
    <message>
        <source>Your lab notes the construction, but does not count it.</source>
        <translation>Su laboratorio anota la construcción, pero no la cuenta.</translation>
    </message>
    <message>
        <source>No flag was planted on “%1”.</source>
        <extracomment>What went wrong first, under that heading; %1 is the name of a landmark, as in a list.</extracomment>
        <translation>No se plantó ninguna bandera en «%1».</translation>
    </message>
    <message>
        <source>“%1” was felt, but it was given another name.</source>
        <translation>Se palpó «%1», pero se le dio otro nombre.</translation>
    </message>
    <message>
        <source>The flag “%1” does not stand on its place; what is built on it is off with it.</source>
        <translation>La bandera «%1» no está en su lugar; lo que se construye a partir de ella se desvía igual.</translation>
    </message>
    <message>
        <source>The flag “%1” stands a little beside its place.</source>
        <translation>La bandera «%1» está un poco desviada de su lugar.</translation>
    </message>
    <message>
        <source>It was the wrong hand for this hip.</source>
        <translation>No era la mano correcta para esta cadera.</translation>
    </message>
    <message>
        <source>The palm did not lie over the greater trochanter.</source>
        <translation>La palma no estaba sobre el trocánter mayor.</translation>
    </message>
    <message>
        <source>The index fingertip did not rest on the anterior superior iliac spine.</source>
        <translation>La punta del dedo índice no se apoyaba en la espina ilíaca anterosuperior.</translation>
    </message>
    <message>
        <source>The index fingertip rested on the iliac crest instead of the anterior superior iliac spine.</source>
        <translation>La punta del dedo índice se apoyaba en la cresta ilíaca en vez de la espina ilíaca anterosuperior.</translation>
    </message>
    <message>
        <source>The fingers were hardly opened.</source>
        <translation>Los dedos apenas se abrieron.</translation>
    </message>
    <message>
        <source>A corner of the triangle did not lie on the greater trochanter.</source>
        <translation>Un vértice del triángulo no estaba sobre el trocánter mayor.</translation>
    </message>
    <message>
        <source>A corner of the triangle did not lie on the iliac tubercle.</source>
        <translation>Un vértice del triángulo no estaba sobre el tubérculo ilíaco.</translation>
    </message>
    <message>
        <source>A corner of the triangle did not lie on the anterior superior iliac spine.</source>
        <translation>Un vértice del triángulo no estaba sobre la espina ilíaca anterosuperior.</translation>
    </message>
    <message>
        <source>A median missed the middle of its side.</source>
        <translation>Una mediana no llegó al centro de su lado.</translation>
    </message>
    <message>
        <source>The fingers were not laid at the edge of the acromion.</source>
        <translation>Los dedos no se colocaron en el borde del acromion.</translation>
    </message>
    <message>
        <source>The fingers did not lie square to the arm.</source>
        <translation>Los dedos no estaban perpendiculares al brazo.</translation>
    </message>
    <message>
        <source>The number of fingers did not suit this arm.</source>
        <translation>El número de dedos no correspondía a este brazo.</translation>
    </message>
    <message>
        <source>The base of the triangle did not lie on the acromion.</source>
        <translation>La base del triángulo no estaba sobre el acromion.</translation>
    </message>
    <message>
        <source>The apex of the triangle did not lie mid-lateral at armpit level.</source>
        <translation>El vértice del triángulo no estaba en la línea media lateral al nivel de la axila.</translation>
    </message>
    <message>
        <source>The upper end was not set on its landmark.</source>
        <extracomment>The upper end of a line on the arm, or of the thigh.</extracomment>
        <translation>El extremo superior no se colocó en su punto de referencia.</translation>
    </message>
    <message>
        <source>The lower end was not set on its landmark.</source>
        <translation>El extremo inferior no se colocó en su punto de referencia.</translation>
    </message>
    <message>
        <source>The line was not halved.</source>
        <translation>La línea no se dividió por la mitad.</translation>
    </message>
    <message>
        <source>The thigh was divided unevenly.</source>
        <translation>El muslo se dividió de forma desigual.</translation>
    </message>
    <message>
        <source>The front line did not run down the middle of the front of the thigh.</source>
        <translation>La línea anterior no bajaba por el centro de la cara anterior del muslo.</translation>
    </message>
    <message>
        <source>The outer line did not run down the outer side of the thigh.</source>
        <translation>La línea externa no bajaba por la cara externa del muslo.</translation>
    </message>
    <message>
        <source>The wrong field of the thigh was chosen.</source>
        <translation>Se eligió un campo equivocado del muslo.</translation>
    </message>
    <message>
        <source>The mark misses the site.</source>
        <translation>La marca no está en la zona.</translation>
    </message>
</context>
<context>
    <name>fb::CommandLine</name>
    <message>
        <source>Requests that could not be answered: %1 of %2.</source>
        <translation>Solicitudes que no se pudieron responder: %1 de %2.</translation>
    </message>
    <message>
        <source>Fingerbreadth: where an intramuscular needle goes, marked and graded in centimetres.

  fingerbreadth                      opens the window
  fingerbreadth locate PATIENT ...   the target of one patient
  fingerbreadth grade  PATIENT --at X,Y ...   the verdict on a mark
  fingerbreadth draw   PATIENT --out FILE ... this patient&apos;s plate with its target
  fingerbreadth --help, --version

PATIENT
  --site deltoid|vastus-lateralis|ventrogluteal     --side left|right
  --age 34y    --sex female|male    --stature 163 (cm)    --weight 71 (kg)
  --individual A,B,C[,D,E,F]  deviation, -3 to 3, of arm length, armpit depth and arm
                        girth, then of crest height, thigh length and thigh girth

How
  --convention ID       deltoid.strip, deltoid.centroid, deltoid.two-inches,
                        deltoid.fingers or deltoid.halfway; vl.thirds or
                        vl.handbreadths; vg.hand or vg.medians
  --view NAME           shoulder-side, shoulder-three-quarter; thigh-side, thigh-front;
                        hip-side, hip-behind
  --hand CM             length of the hand that finds the site, 13 to 24
  --policy FILE         your lab&apos;s own numbers, over the shipped ones
  --at X,Y              the mark (grade, draw): cm from the acromion&apos;s lateral edge or
                        the greater trochanter, x to the viewer&apos;s right, y up

Answers
  --json                locate, grade: one JSON object
  --json -, --lines     the same for every JSON object on a line of standard input
  --out FILE            draw: .svg, .png or .pdf
  --layers LIST         draw: bone,vessel,nerve,muscle,skin,surface,cloth
  --width PIXELS        draw: width of the picture, 200 to 20000

Training aid. Local policy and licensed practice decide.
</source>
        <translation>Fingerbreadth: dónde va una aguja intramuscular, con la marca evaluada en centímetros.

  fingerbreadth                      abre la ventana
  fingerbreadth locate PACIENTE ...  la región objetivo de un paciente
  fingerbreadth grade  PACIENTE --at X,Y ...  el veredicto sobre una marca
  fingerbreadth draw   PACIENTE --out ARCHIVO ...  la lámina de este paciente con su región objetivo
  fingerbreadth --help, --version

PACIENTE
  --site deltoid|vastus-lateralis|ventrogluteal     --side left|right
  --age 34y    --sex female|male    --stature 163 (cm)    --weight 71 (kg)
  --individual A,B,C[,D,E,F]  desviación, de -3 a 3, de la longitud del brazo, la altura de
                        la axila y el perímetro del brazo, y después de la altura de la
                        cresta, la longitud del muslo y el perímetro del muslo

Cómo
  --convention ID       deltoid.strip, deltoid.centroid, deltoid.two-inches,
                        deltoid.fingers o deltoid.halfway; vl.thirds o
                        vl.handbreadths; vg.hand o vg.medians
  --view NOMBRE         shoulder-side, shoulder-three-quarter; thigh-side, thigh-front;
                        hip-side, hip-behind
  --hand CM             longitud de la mano que localiza la zona, de 13 a 24
  --policy ARCHIVO      los números de su laboratorio, por encima de los incluidos
  --at X,Y              la marca (grade, draw): cm desde el borde lateral del acromion o
                        el trocánter mayor, x hacia la derecha de quien mira, y hacia arriba

Respuestas
  --json                locate, grade: un objeto JSON
  --json -, --lines     lo mismo para cada objeto JSON en una línea de la entrada estándar
  --out ARCHIVO         draw: .svg, .png o .pdf
  --layers LISTA        draw: bone,vessel,nerve,muscle,skin,surface,cloth
  --width PÍXELES       draw: anchura de la imagen, de 200 a 20000

Material didáctico. Deciden la normativa local y el ejercicio profesional autorizado.
</translation>
    </message>
</context>
<context>
    <name>fb::CommandLineDraw</name>
    <message>
        <source>%1. %2</source>
        <extracomment>The verdict, then the sentence of reason.</extracomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Written: %1
</source>
        <translation>Archivo escrito: %1
</translation>
    </message>
</context>
<context>
    <name>fb::CommandLineText</name>
    <message>
        <source>x %1 cm, y %2 cm</source>
        <extracomment>%1 and %2 are the coordinates of a point on the drawing.</extracomment>
        <translation>x %1 cm, y %2 cm</translation>
    </message>
    <message>
        <source>Female, %1 years, %2 cm, %3 kg</source>
        <translation>Mujer, %1 años, %2 cm, %3 kg</translation>
    </message>
    <message>
        <source>Male, %1 years, %2 cm, %3 kg</source>
        <translation>Hombre, %1 años, %2 cm, %3 kg</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Convention</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Arm</source>
        <translation>Brazo</translation>
    </message>
    <message>
        <source>%1 cm from acromion to radiale, armpit level %2 cm below the acromion</source>
        <translation>%1 cm del acromion al punto radial, nivel de la axila %2 cm por debajo del acromion</translation>
    </message>
    <message>
        <source>Region</source>
        <translation>Región</translation>
    </message>
    <message>
        <source>x %1 to %2 cm, y %3 to %4 cm</source>
        <translation>x de %1 a %2 cm, y de %3 a %4 cm</translation>
    </message>
    <message>
        <source>Ideal point</source>
        <translation>Punto ideal</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>on the drawing, from the acromion&apos;s lateral edge, x to the viewer&apos;s right, y up</source>
        <translation>sobre el dibujo, desde el borde lateral del acromion, x hacia la derecha de quien mira, y hacia arriba</translation>
    </message>
    <message>
        <source>Training aid. Local policy and licensed practice decide.</source>
        <translation>Material didáctico. Deciden la normativa local y el ejercicio profesional autorizado.</translation>
    </message>
    <message>
        <source>Patient</source>
        <translation>Paciente</translation>
    </message>
    <message>
        <source>Deltoid site, left arm</source>
        <translation>Zona deltoidea, brazo izquierdo</translation>
    </message>
    <message>
        <source>Deltoid site, right arm</source>
        <translation>Zona deltoidea, brazo derecho</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <extracomment>%1 is the patient in a few words, %2 the name of the convention.</extracomment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Request</source>
        <translation>Solicitud</translation>
    </message>
    <message>
        <source>Never enter</source>
        <translation>No pinchar nunca</translation>
    </message>
    <message>
        <source>Keep in mind</source>
        <translation>Tener presente</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marca</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Off ideal</source>
        <translation>Desviación</translation>
    </message>
    <message>
        <source>Border</source>
        <translation>Borde</translation>
    </message>
    <message>
        <source>Thigh</source>
        <translation>Muslo</translation>
    </message>
    <message>
        <source>%1 cm from greater trochanter to lateral femoral condyle</source>
        <translation>%1 cm del trocánter mayor al cóndilo femoral lateral</translation>
    </message>
    <message>
        <source>Hip</source>
        <translation>Cadera</translation>
    </message>
    <message>
        <source>%1 cm from greater trochanter to anterior superior iliac spine</source>
        <translation>%1 cm del trocánter mayor a la espina ilíaca anterosuperior</translation>
    </message>
    <message>
        <source>left hand of %1 cm</source>
        <translation>mano izquierda de %1 cm</translation>
    </message>
    <message>
        <source>right hand of %1 cm</source>
        <translation>mano derecha de %1 cm</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Mano</translation>
    </message>
    <message>
        <source>on the drawing, from the greater trochanter, x to the viewer&apos;s right, y up</source>
        <translation>sobre el dibujo, desde el trocánter mayor, x hacia la derecha de quien mira, y hacia arriba</translation>
    </message>
    <message>
        <source>Vastus lateralis site, left thigh</source>
        <translation>Zona del vasto lateral, muslo izquierdo</translation>
    </message>
    <message>
        <source>Vastus lateralis site, right thigh</source>
        <translation>Zona del vasto lateral, muslo derecho</translation>
    </message>
    <message>
        <source>Ventrogluteal site, left hip</source>
        <translation>Zona ventroglútea, cadera izquierda</translation>
    </message>
    <message>
        <source>Ventrogluteal site, right hip</source>
        <translation>Zona ventroglútea, cadera derecha</translation>
    </message>
</context>
<context>
    <name>fb::CompanionPanel</name>
    <message>
        <source>Other view, to look at only</source>
        <translation>Otra vista, solo para observar</translation>
    </message>
</context>
<context>
    <name>fb::ConventionWords</name>
    <message>
        <source>Between %1 and %2 below the acromion on this arm (%3 to %4 of the arm&apos;s length), up to %5 either side of the mid-lateral line, above armpit level.</source>
        <translation>Entre %1 y %2 por debajo del acromion en este brazo (de %3 a %4 de la longitud del brazo), hasta %5 a cada lado de la línea media lateral, por encima del nivel de la axila.</translation>
    </message>
    <message>
        <source>In the middle of the triangle from the acromion to armpit level: %1 below the acromion on this arm (%2 on an arm of %3), mid-lateral.</source>
        <translation>En el centro del triángulo que va del acromion al nivel de la axila: %1 por debajo del acromion en este brazo (%2 en un brazo de %3), en la línea media lateral.</translation>
    </message>
    <message>
        <source>Two inches below the acromion, mid-lateral, above armpit level: %1 on this arm (%2 on an arm of %3).</source>
        <translation>Dos pulgadas por debajo del acromion, en la línea media lateral, por encima del nivel de la axila: %1 en este brazo (%2 en un brazo de %3).</translation>
    </message>
    <message>
        <source>From %1 to %2 fingerbreadths below the acromion, mid-lateral: %3 to %4 with fingers of %5 each.</source>
        <extracomment>A fingerbreadth is the width of one finger laid on the arm.</extracomment>
        <translation>De %1 a %2 traveses de dedo por debajo del acromion, en la línea media lateral: de %3 a %4 con dedos de %5 cada uno.</translation>
    </message>
    <message>
        <source>%1 percent of the way from the acromion to the deltoid tuberosity: %2 of %3 on this arm, mid-lateral.</source>
        <translation>Al %1 por ciento del camino entre el acromion y la tuberosidad deltoidea: %2 de %3 en este brazo, en la línea media lateral.</translation>
    </message>
    <message>
        <source>Strip below the acromion</source>
        <translation>Franja por debajo del acromion</translation>
    </message>
    <message>
        <source>Middle of the triangle</source>
        <translation>Centro del triángulo</translation>
    </message>
    <message>
        <source>Two inches below the acromion</source>
        <translation>Dos pulgadas por debajo del acromion</translation>
    </message>
    <message>
        <source>Two to three fingerbreadths</source>
        <translation>De dos a tres traveses de dedo</translation>
    </message>
    <message>
        <source>Halfway to the deltoid tuberosity</source>
        <extracomment>Halfway between two landmarks.</extracomment>
        <translation>A medio camino de la tuberosidad deltoidea</translation>
    </message>
    <message>
        <source>The middle third of the outer side of the thigh: from %1 to %2 below the greater trochanter on this thigh of %3, behind the rectus femoris and no farther back than the outer line.</source>
        <translation>El tercio medio de la cara externa del muslo: de %1 a %2 por debajo del trocánter mayor en este muslo de %3, por detrás del recto femoral y no más atrás que la línea externa.</translation>
    </message>
    <message>
        <source>From one handbreadth below the greater trochanter to one above the knee: %1 to %2 below the trochanter on this thigh of %3, with a hand %4 broad; behind the rectus femoris and no farther back than the outer line.</source>
        <extracomment>A handbreadth is the width of a hand across its palm.</extracomment>
        <translation>Desde el ancho de una mano por debajo del trocánter mayor hasta el ancho de una mano por encima de la rodilla: de %1 a %2 por debajo del trocánter en este muslo de %3, con una mano de %4 de ancho; por detrás del recto femoral y no más atrás que la línea externa.</translation>
    </message>
    <message>
        <source>Heel of a hand of %1 on the greater trochanter, index finger toward the anterior superior iliac spine (%2 away on this hip, more than this hand reaches), middle finger opened by %3 degrees along the crest: between the two fingers, at least %4 from crest and spine and %5 from the trochanter.</source>
        <translation>El talón de una mano de %1 sobre el trocánter mayor, el dedo índice hacia la espina ilíaca anterosuperior (a %2 en esta cadera, más de lo que alcanza esta mano) y el dedo medio abierto %3 grados a lo largo de la cresta: entre los dos dedos, al menos a %4 de la cresta y de la espina y a %5 del trocánter.</translation>
    </message>
    <message>
        <source>Palm of a hand of %1 on the greater trochanter, index fingertip on the anterior superior iliac spine (%2 apart on this hip), middle finger opened by %3 degrees along the crest: between the two fingers, at least %4 from crest and spine and %5 from the trochanter.</source>
        <translation>La palma de una mano de %1 sobre el trocánter mayor, la punta del dedo índice sobre la espina ilíaca anterosuperior (separados %2 en esta cadera) y el dedo medio abierto %3 grados a lo largo de la cresta: entre los dos dedos, al menos a %4 de la cresta y de la espina y a %5 del trocánter.</translation>
    </message>
    <message>
        <source>Where the medians of the triangle of greater trochanter, iliac tubercle and anterior superior iliac spine cross (spine and trochanter lie %1 apart on this hip): within %2 of that point, at least %3 from crest and spine and %4 from the trochanter.</source>
        <translation>Donde se cruzan las medianas del triángulo formado por el trocánter mayor, el tubérculo ilíaco y la espina ilíaca anterosuperior (la espina y el trocánter están separados %1 en esta cadera): a no más de %2 de ese punto, al menos a %3 de la cresta y de la espina y a %4 del trocánter.</translation>
    </message>
    <message>
        <source>Middle third of the thigh</source>
        <extracomment>Of the outer side of the thigh.</extracomment>
        <translation>Tercio medio del muslo</translation>
    </message>
    <message>
        <source>Between two handbreadths</source>
        <translation>Entre dos anchos de mano</translation>
    </message>
    <message>
        <source>Hand on the hip, between two fingers</source>
        <extracomment>The hand is that of whoever gives the injection.</extracomment>
        <translation>La mano sobre la cadera, entre dos dedos</translation>
    </message>
    <message>
        <source>Where three medians cross</source>
        <translation>Donde se cruzan tres medianas</translation>
    </message>
</context>
<context>
    <name>fb::Dialogs</name>
    <message>
        <source>Choose a policy file</source>
        <extracomment>The lab&apos;s own clinical numbers, a file.</extracomment>
        <translation>Elegir un archivo de normativa</translation>
    </message>
    <message>
        <source>Policy files (*.json)</source>
        <translation>Archivos de normativa (*.json)</translation>
    </message>
</context>
<context>
    <name>fb::FeelPanel</name>
    <message>
        <source>Its name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Name of the landmark under your finger</source>
        <translation>Nombre del punto de referencia bajo su dedo</translation>
    </message>
    <message>
        <source>Choose a name from the list or type it</source>
        <translation>Elija un nombre de la lista o escríbalo</translation>
    </message>
    <message>
        <source>Plant flag</source>
        <translation>Plantar bandera</translation>
    </message>
    <message>
        <source>Your flags</source>
        <extracomment>Above a list of landmarks the learner has found and named.</extracomment>
        <translation>Sus banderas</translation>
    </message>
    <message>
        <source>Nothing: beside the body</source>
        <translation>Nada: fuera del cuerpo</translation>
    </message>
    <message>
        <source>Put your finger back on the skin.</source>
        <translation>Vuelva a poner el dedo sobre la piel.</translation>
    </message>
    <message>
        <source>Nothing felt yet</source>
        <translation>Nada palpado todavía</translation>
    </message>
    <message>
        <source>Press on the skin, or move the cross with the arrow keys.</source>
        <translation>Presione sobre la piel o mueva la cruz con las flechas.</translation>
    </message>
    <message>
        <source>Planted. It is spelled “%1”.</source>
        <translation>Plantada. Se escribe «%1».</translation>
    </message>
    <message>
        <source>Planted: %1.</source>
        <translation>Plantada: %1.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the flag “%1”</source>
        <translation>Quitar la bandera «%1»</translation>
    </message>
</context>
<context>
    <name>fb::FeelWords</name>
    <message>
        <source>It runs on toward head and foot</source>
        <translation>Sigue hacia la cabeza y hacia el pie</translation>
    </message>
    <message>
        <source>It runs on toward front and back</source>
        <translation>Sigue hacia delante y hacia atrás</translation>
    </message>
    <message>
        <source>More of it toward the head</source>
        <translation>Más hueso hacia la cabeza</translation>
    </message>
    <message>
        <source>More of it toward the foot</source>
        <translation>Más hueso hacia el pie</translation>
    </message>
    <message>
        <source>More of it toward the front</source>
        <translation>Más hueso hacia delante</translation>
    </message>
    <message>
        <source>More of it toward the back</source>
        <translation>Más hueso hacia atrás</translation>
    </message>
    <message>
        <source>Soft</source>
        <extracomment>What a fingertip feels where it presses on the skin.</extracomment>
        <translation>Blando</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Firme</translation>
    </message>
    <message>
        <source>Hard</source>
        <translation>Duro</translation>
    </message>
    <message>
        <source>Soft, fat</source>
        <extracomment>What a fingertip feels, in a few words beside the finger.</extracomment>
        <translation>Blando, grasa</translation>
    </message>
    <message>
        <source>Firm, muscle</source>
        <translation>Firme, músculo</translation>
    </message>
    <message>
        <source>Hard, an edge</source>
        <translation>Duro, un borde</translation>
    </message>
    <message>
        <source>Hard, bone</source>
        <translation>Duro, hueso</translation>
    </message>
    <message>
        <source>Plain</source>
        <extracomment>How plainly a bone is felt through the fat over it.</extracomment>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dull, through %1 mm of fat</source>
        <translation>Apagado, a través de %1 mm de grasa</translation>
    </message>
    <message>
        <source>Faint, through %1 mm of fat</source>
        <translation>Débil, a través de %1 mm de grasa</translation>
    </message>
    <message>
        <source>Bone beside your finger</source>
        <translation>Hueso junto a su dedo</translation>
    </message>
    <message>
        <source>Bone beside your finger, toward the head</source>
        <translation>Hueso junto a su dedo, hacia la cabeza</translation>
    </message>
    <message>
        <source>Bone beside your finger, toward the foot</source>
        <translation>Hueso junto a su dedo, hacia el pie</translation>
    </message>
    <message>
        <source>Bone beside your finger, toward the front</source>
        <translation>Hueso junto a su dedo, hacia delante</translation>
    </message>
    <message>
        <source>Bone beside your finger, toward the back</source>
        <translation>Hueso junto a su dedo, hacia atrás</translation>
    </message>
    <message>
        <source>An edge, followed for %1</source>
        <extracomment>A finger slid along the edge of a bone; %1 is how far.</extracomment>
        <translation>Un borde, seguido a lo largo de %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <extracomment>Two statements, one after the other, spoken: &quot;Hard, an edge. Dull, through 22 mm of fat&quot;.</extracomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Hard, a bony point</source>
        <extracomment>A small corner of bone; never say which bone.</extracomment>
        <translation>Duro, un saliente de hueso</translation>
    </message>
    <message>
        <source>Hard, broad and round</source>
        <translation>Duro, ancho y redondo</translation>
    </message>
</context>
<context>
    <name>fb::FindingWords</name>
    <message>
        <source>Chart: a rash over the left upper arm.</source>
        <translation>Historia clínica: erupción cutánea en el brazo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a rash over the right upper arm.</source>
        <translation>Historia clínica: erupción cutánea en el brazo derecho.</translation>
    </message>
    <message>
        <source>Chart: a rash over the left thigh.</source>
        <translation>Historia clínica: erupción cutánea en el muslo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a rash over the right thigh.</source>
        <translation>Historia clínica: erupción cutánea en el muslo derecho.</translation>
    </message>
    <message>
        <source>Chart: a rash over the left hip.</source>
        <translation>Historia clínica: erupción cutánea en la cadera izquierda.</translation>
    </message>
    <message>
        <source>Chart: a rash over the right hip.</source>
        <translation>Historia clínica: erupción cutánea en la cadera derecha.</translation>
    </message>
    <message>
        <source>Chart: a rash over the whole left side.</source>
        <translation>Historia clínica: erupción cutánea en todo el lado izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a rash over the whole right side.</source>
        <translation>Historia clínica: erupción cutánea en todo el lado derecho.</translation>
    </message>
    <message>
        <source>Chart: a scar on the left upper arm.</source>
        <translation>Historia clínica: cicatriz en el brazo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a scar on the right upper arm.</source>
        <translation>Historia clínica: cicatriz en el brazo derecho.</translation>
    </message>
    <message>
        <source>Chart: a scar on the left thigh.</source>
        <translation>Historia clínica: cicatriz en el muslo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a scar on the right thigh.</source>
        <translation>Historia clínica: cicatriz en el muslo derecho.</translation>
    </message>
    <message>
        <source>Chart: a scar on the left hip.</source>
        <translation>Historia clínica: cicatriz en la cadera izquierda.</translation>
    </message>
    <message>
        <source>Chart: a scar on the right hip.</source>
        <translation>Historia clínica: cicatriz en la cadera derecha.</translation>
    </message>
    <message>
        <source>Chart: scars all over the left side.</source>
        <translation>Historia clínica: cicatrices en todo el lado izquierdo.</translation>
    </message>
    <message>
        <source>Chart: scars all over the right side.</source>
        <translation>Historia clínica: cicatrices en todo el lado derecho.</translation>
    </message>
    <message>
        <source>Chart: a bruise on the left upper arm.</source>
        <translation>Historia clínica: hematoma en el brazo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a bruise on the right upper arm.</source>
        <translation>Historia clínica: hematoma en el brazo derecho.</translation>
    </message>
    <message>
        <source>Chart: a bruise on the left thigh.</source>
        <translation>Historia clínica: hematoma en el muslo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a bruise on the right thigh.</source>
        <translation>Historia clínica: hematoma en el muslo derecho.</translation>
    </message>
    <message>
        <source>Chart: a bruise on the left hip.</source>
        <translation>Historia clínica: hematoma en la cadera izquierda.</translation>
    </message>
    <message>
        <source>Chart: a bruise on the right hip.</source>
        <translation>Historia clínica: hematoma en la cadera derecha.</translation>
    </message>
    <message>
        <source>Chart: bruises all over the left side.</source>
        <translation>Historia clínica: hematomas en todo el lado izquierdo.</translation>
    </message>
    <message>
        <source>Chart: bruises all over the right side.</source>
        <translation>Historia clínica: hematomas en todo el lado derecho.</translation>
    </message>
    <message>
        <source>Chart: a plaster cast on the left upper arm.</source>
        <translation>Historia clínica: yeso en el brazo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a plaster cast on the right upper arm.</source>
        <translation>Historia clínica: yeso en el brazo derecho.</translation>
    </message>
    <message>
        <source>Chart: a plaster cast on the left thigh.</source>
        <translation>Historia clínica: yeso en el muslo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a plaster cast on the right thigh.</source>
        <translation>Historia clínica: yeso en el muslo derecho.</translation>
    </message>
    <message>
        <source>Chart: a plaster cast over the left hip.</source>
        <translation>Historia clínica: yeso sobre la cadera izquierda.</translation>
    </message>
    <message>
        <source>Chart: a plaster cast over the right hip.</source>
        <translation>Historia clínica: yeso sobre la cadera derecha.</translation>
    </message>
    <message>
        <source>Chart: a plaster cast over the whole left side.</source>
        <translation>Historia clínica: yeso en todo el lado izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a plaster cast over the whole right side.</source>
        <translation>Historia clínica: yeso en todo el lado derecho.</translation>
    </message>
    <message>
        <source>Chart: last injection in the left upper arm.</source>
        <translation>Historia clínica: última inyección en el brazo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: last injection in the right upper arm.</source>
        <translation>Historia clínica: última inyección en el brazo derecho.</translation>
    </message>
    <message>
        <source>Chart: last injection in the left thigh.</source>
        <translation>Historia clínica: última inyección en el muslo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: last injection in the right thigh.</source>
        <translation>Historia clínica: última inyección en el muslo derecho.</translation>
    </message>
    <message>
        <source>Chart: last injection in the left hip.</source>
        <translation>Historia clínica: última inyección en la cadera izquierda.</translation>
    </message>
    <message>
        <source>Chart: last injection in the right hip.</source>
        <translation>Historia clínica: última inyección en la cadera derecha.</translation>
    </message>
    <message>
        <source>Chart: last injection somewhere on the left side.</source>
        <translation>Historia clínica: última inyección en algún punto del lado izquierdo.</translation>
    </message>
    <message>
        <source>Chart: last injection somewhere on the right side.</source>
        <translation>Historia clínica: última inyección en algún punto del lado derecho.</translation>
    </message>
    <message>
        <source>Right: a needle through a rash can carry infection in, and a reaction could not be seen.</source>
        <translation>Correcto: una aguja a través de una erupción puede introducir una infección, y no se vería una reacción.</translation>
    </message>
    <message>
        <source>Right: scarred tissue may take up a drug poorly, and it can hide what is felt.</source>
        <translation>Correcto: el tejido cicatricial puede absorber mal el fármaco y ocultar lo que se palpa.</translation>
    </message>
    <message>
        <source>Right: bruised tissue is sore and may already be injured, so it is left alone.</source>
        <translation>Correcto: el tejido con un hematoma duele y puede estar ya lesionado, por lo que no se toca.</translation>
    </message>
    <message>
        <source>Right: the cast covers the site.</source>
        <translation>Correcto: el yeso cubre la zona.</translation>
    </message>
    <message>
        <source>Right: an arm with an arteriovenous fistula is kept free of injections.</source>
        <translation>Correcto: en un brazo con una fístula arteriovenosa no se pone ninguna inyección.</translation>
    </message>
    <message>
        <source>Right: the arm on the side of a mastectomy is commonly spared, since its lymph may drain poorly.</source>
        <translation>Correcto: el brazo del lado de una mastectomía suele evitarse, porque su linfa puede drenar mal.</translation>
    </message>
    <message>
        <source>Right: a paralysed muscle may take up a drug poorly, and the patient cannot feel harm there.</source>
        <translation>Correcto: un músculo con parálisis puede absorber mal el fármaco, y el paciente no siente ahí el daño.</translation>
    </message>
    <message>
        <source>Right: the last injection was given here, and sites are changed each time.</source>
        <translation>Correcto: la última inyección se puso aquí, y la zona se cambia cada vez.</translation>
    </message>
    <message>
        <source>The site is ruled out, but for another reason: the chart tells of a rash here.</source>
        <translation>La zona está descartada, pero por otro motivo: en la historia clínica consta una erupción aquí.</translation>
    </message>
    <message>
        <source>The site is ruled out, but for another reason: the chart tells of a scar here.</source>
        <translation>La zona está descartada, pero por otro motivo: en la historia clínica consta una cicatriz aquí.</translation>
    </message>
    <message>
        <source>The site is ruled out, but for another reason: the chart tells of a bruise here.</source>
        <translation>La zona está descartada, pero por otro motivo: en la historia clínica consta un hematoma aquí.</translation>
    </message>
    <message>
        <source>The site is ruled out, but for another reason: the chart tells of a plaster cast here.</source>
        <translation>La zona está descartada, pero por otro motivo: en la historia clínica consta un yeso aquí.</translation>
    </message>
    <message>
        <source>The site is ruled out, but for another reason: the chart tells of an arteriovenous fistula in this arm.</source>
        <translation>La zona está descartada, pero por otro motivo: en la historia clínica consta una fístula arteriovenosa en este brazo.</translation>
    </message>
    <message>
        <source>The site is ruled out, but for another reason: the chart tells of a mastectomy on this side.</source>
        <translation>La zona está descartada, pero por otro motivo: en la historia clínica consta una mastectomía de este lado.</translation>
    </message>
    <message>
        <source>The site is ruled out, but for another reason: the chart tells of a paralysis of this side.</source>
        <translation>La zona está descartada, pero por otro motivo: en la historia clínica consta una parálisis de este lado.</translation>
    </message>
    <message>
        <source>The site is ruled out, but for another reason: the chart says that the last injection was given here.</source>
        <translation>La zona está descartada, pero por otro motivo: según la historia clínica, la última inyección se puso aquí.</translation>
    </message>
    <message>
        <source>Chart: an arteriovenous fistula in the left arm.</source>
        <extracomment>A surgical joining of artery and vein in the arm, for dialysis.</extracomment>
        <translation>Historia clínica: fístula arteriovenosa en el brazo izquierdo.</translation>
    </message>
    <message>
        <source>Chart: an arteriovenous fistula in the right arm.</source>
        <translation>Historia clínica: fístula arteriovenosa en el brazo derecho.</translation>
    </message>
    <message>
        <source>Chart: a mastectomy on the left side.</source>
        <translation>Historia clínica: mastectomía del lado izquierdo.</translation>
    </message>
    <message>
        <source>Chart: a mastectomy on the right side.</source>
        <translation>Historia clínica: mastectomía del lado derecho.</translation>
    </message>
    <message>
        <source>Chart: paralysis of the left side of the body.</source>
        <translation>Historia clínica: parálisis del lado izquierdo del cuerpo.</translation>
    </message>
    <message>
        <source>Chart: paralysis of the right side of the body.</source>
        <translation>Historia clínica: parálisis del lado derecho del cuerpo.</translation>
    </message>
    <message>
        <source>Rash</source>
        <extracomment>Reasons not to use a site, as a list to choose from.</extracomment>
        <translation>Erupción cutánea</translation>
    </message>
    <message>
        <source>Scar</source>
        <translation>Cicatriz</translation>
    </message>
    <message>
        <source>Bruise</source>
        <translation>Hematoma</translation>
    </message>
    <message>
        <source>Plaster cast</source>
        <translation>Yeso</translation>
    </message>
    <message>
        <source>Arteriovenous fistula</source>
        <translation>Fístula arteriovenosa</translation>
    </message>
    <message>
        <source>Mastectomy on this side</source>
        <translation>Mastectomía de este lado</translation>
    </message>
    <message>
        <source>Paralysis of this side</source>
        <translation>Parálisis de este lado</translation>
    </message>
    <message>
        <source>Last injection given here</source>
        <translation>Última inyección puesta aquí</translation>
    </message>
    <message>
        <source>The site could have been used: what you name stands in the chart, but on another side or another part of the body.</source>
        <translation>La zona se podía usar: lo que usted nombra figura en la historia clínica, pero en el otro lado o en otra parte del cuerpo.</translation>
    </message>
    <message>
        <source>The site could have been used: the chart tells of nothing that rules it out.</source>
        <translation>La zona se podía usar: en la historia clínica no hay nada que la descarte.</translation>
    </message>
    <message>
        <source>The chart tells of a rash here: this site was not to be used, wherever the mark lies.</source>
        <translation>En la historia clínica consta una erupción aquí: esta zona no se debía usar, esté donde esté la marca.</translation>
    </message>
    <message>
        <source>The chart tells of a scar here: this site was not to be used, wherever the mark lies.</source>
        <translation>En la historia clínica consta una cicatriz aquí: esta zona no se debía usar, esté donde esté la marca.</translation>
    </message>
    <message>
        <source>The chart tells of a bruise here: this site was not to be used, wherever the mark lies.</source>
        <translation>En la historia clínica consta un hematoma aquí: esta zona no se debía usar, esté donde esté la marca.</translation>
    </message>
    <message>
        <source>The chart tells of a plaster cast here: this site was not to be used, wherever the mark lies.</source>
        <translation>En la historia clínica consta un yeso aquí: esta zona no se debía usar, esté donde esté la marca.</translation>
    </message>
    <message>
        <source>The chart tells of an arteriovenous fistula in this arm: this site was not to be used, wherever the mark lies.</source>
        <translation>En la historia clínica consta una fístula arteriovenosa en este brazo: esta zona no se debía usar, esté donde esté la marca.</translation>
    </message>
    <message>
        <source>The chart tells of a mastectomy on this side: this site was not to be used, wherever the mark lies.</source>
        <translation>En la historia clínica consta una mastectomía de este lado: esta zona no se debía usar, esté donde esté la marca.</translation>
    </message>
    <message>
        <source>The chart tells of a paralysis of this side: this site was not to be used, wherever the mark lies.</source>
        <translation>En la historia clínica consta una parálisis de este lado: esta zona no se debía usar, esté donde esté la marca.</translation>
    </message>
    <message>
        <source>The chart says that the last injection was given here: this site was not to be used, wherever the mark lies.</source>
        <translation>Según la historia clínica, la última inyección se puso aquí: esta zona no se debía usar, esté donde esté la marca.</translation>
    </message>
</context>
<context>
    <name>fb::GradePanel</name>
    <message>
        <source>To the ideal point</source>
        <translation>Hasta el punto ideal</translation>
    </message>
    <message>
        <source>To the region&apos;s border</source>
        <translation>Hasta el borde de la región</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Rightly refused</source>
        <extracomment>The learner answered &quot;not here&quot; instead of marking a place; what that came to.</extracomment>
        <translation>Bien descartada</translation>
    </message>
    <message>
        <source>Refused for another reason</source>
        <translation>Descartada por otro motivo</translation>
    </message>
    <message>
        <source>Refused without need</source>
        <translation>Descartada sin necesidad</translation>
    </message>
</context>
<context>
    <name>fb::GradeWords</name>
    <message>
        <source>On target</source>
        <translation>En el blanco</translation>
    </message>
    <message>
        <source>Acceptable</source>
        <translation>Aceptable</translation>
    </message>
    <message>
        <source>Off target</source>
        <translation>Fuera del blanco</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Peligrosa</translation>
    </message>
    <message>
        <source>The mark lies inside the target region.</source>
        <translation>La marca queda dentro de la región objetivo.</translation>
    </message>
    <message>
        <source>The mark lies just outside the target region, within the margin your lab accepts.</source>
        <translation>La marca queda justo fuera de la región objetivo, dentro del margen que acepta su laboratorio.</translation>
    </message>
    <message>
        <source>The mark lies outside the target region.</source>
        <translation>La marca queda fuera de la región objetivo.</translation>
    </message>
    <message>
        <source>A needle at this mark can do harm.</source>
        <translation>Una aguja en esta marca puede causar daño.</translation>
    </message>
    <message>
        <source>no particular way</source>
        <translation>sin una dirección definida</translation>
    </message>
    <message>
        <source>too high</source>
        <extracomment>Toward the head, along the arm, the thigh or the hip.</extracomment>
        <translation>demasiado arriba</translation>
    </message>
    <message>
        <source>too low</source>
        <translation>demasiado abajo</translation>
    </message>
    <message>
        <source>too far forward</source>
        <extracomment>Toward the front of the body.</extracomment>
        <translation>demasiado adelante</translation>
    </message>
    <message>
        <source>too far back</source>
        <translation>demasiado atrás</translation>
    </message>
    <message>
        <source>thick part of the muscle</source>
        <translation>parte gruesa del músculo</translation>
    </message>
    <message>
        <source>bone of the acromion</source>
        <translation>hueso del acromion</translation>
    </message>
    <message>
        <source>subacromial bursa</source>
        <translation>bolsa subacromial</translation>
    </message>
    <message>
        <source>axillary nerve</source>
        <translation>nervio axilar</translation>
    </message>
    <message>
        <source>radial nerve</source>
        <translation>nervio radial</translation>
    </message>
    <message>
        <source>thin part of the muscle</source>
        <translation>parte delgada del músculo</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>tronco</translation>
    </message>
    <message>
        <source>forearm</source>
        <translation>antebrazo</translation>
    </message>
    <message>
        <source>right height</source>
        <translation>altura correcta</translation>
    </message>
    <message>
        <source>%1 too low</source>
        <translation>%1 demasiado abajo</translation>
    </message>
    <message>
        <source>%1 too high</source>
        <translation>%1 demasiado arriba</translation>
    </message>
    <message>
        <source>on the mid-lateral line</source>
        <translation>en la línea media lateral</translation>
    </message>
    <message>
        <source>%1 too far forward</source>
        <translation>%1 demasiado adelante</translation>
    </message>
    <message>
        <source>%1 too far back</source>
        <translation>%1 demasiado atrás</translation>
    </message>
    <message>
        <source>on the border</source>
        <translation>en el borde</translation>
    </message>
    <message>
        <source>%1 inside</source>
        <translation>%1 por dentro</translation>
    </message>
    <message>
        <source>%1 outside</source>
        <translation>%1 por fuera</translation>
    </message>
    <message>
        <source>on the ideal point</source>
        <translation>en el punto ideal</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 is the offset to front or back, %2 to head or foot: &quot;0.6 cm too far back, 1.1 cm too high&quot;.</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Your marks lean no particular way.</source>
        <translation>Sus marcas no se desvían en una dirección definida.</translation>
    </message>
    <message>
        <source>On average your marks lie %1 too high.</source>
        <translation>En promedio, sus marcas quedan %1 demasiado arriba.</translation>
    </message>
    <message>
        <source>On average your marks lie %1 too low.</source>
        <translation>En promedio, sus marcas quedan %1 demasiado abajo.</translation>
    </message>
    <message>
        <source>On average your marks lie %1 too far forward.</source>
        <translation>En promedio, sus marcas quedan %1 demasiado adelante.</translation>
    </message>
    <message>
        <source>On average your marks lie %1 too far back.</source>
        <translation>En promedio, sus marcas quedan %1 demasiado atrás.</translation>
    </message>
    <message>
        <source>rectus femoris</source>
        <translation>recto femoral</translation>
    </message>
    <message>
        <source>femoral vessels and nerve</source>
        <translation>vasos y nervio femorales</translation>
    </message>
    <message>
        <source>sciatic nerve</source>
        <translation>nervio ciático</translation>
    </message>
    <message>
        <source>tendon and joint near the hip</source>
        <translation>tendón y articulación cerca de la cadera</translation>
    </message>
    <message>
        <source>tendon and joint near the knee</source>
        <translation>tendón y articulación cerca de la rodilla</translation>
    </message>
    <message>
        <source>bone of the patella</source>
        <translation>hueso de la rótula</translation>
    </message>
    <message>
        <source>bone of the greater trochanter</source>
        <translation>hueso del trocánter mayor</translation>
    </message>
    <message>
        <source>hamstrings</source>
        <translation>músculos isquiotibiales</translation>
    </message>
    <message>
        <source>tendons round the trochanter</source>
        <translation>tendones en torno al trocánter</translation>
    </message>
    <message>
        <source>bone of the iliac crest</source>
        <translation>hueso de la cresta ilíaca</translation>
    </message>
    <message>
        <source>abdominal wall</source>
        <translation>pared abdominal</translation>
    </message>
    <message>
        <source>front of the hip</source>
        <translation>parte anterior de la cadera</translation>
    </message>
    <message>
        <source>superior gluteal nerve and artery</source>
        <translation>nervio y arteria glúteos superiores</translation>
    </message>
    <message>
        <source>muscle of the hip beside the region</source>
        <translation>músculo de la cadera junto a la región</translation>
    </message>
    <message>
        <source>thigh below the hip</source>
        <translation>muslo por debajo de la cadera</translation>
    </message>
    <message>
        <source>hip above the thigh</source>
        <translation>cadera por encima del muslo</translation>
    </message>
    <message>
        <source>lower leg</source>
        <translation>pierna</translation>
    </message>
    <message>
        <source>Along the arm</source>
        <extracomment>Offset along the arm, toward shoulder or elbow.</extracomment>
        <translation>A lo largo del brazo</translation>
    </message>
    <message>
        <source>Along the thigh</source>
        <extracomment>Offset along the thigh, toward hip or knee.</extracomment>
        <translation>A lo largo del muslo</translation>
    </message>
    <message>
        <source>Head to foot</source>
        <extracomment>Offset on the hip, along the body.</extracomment>
        <translation>De la cabeza a los pies</translation>
    </message>
    <message>
        <source>Around the arm</source>
        <extracomment>Offset around the arm, toward front or back.</extracomment>
        <translation>Alrededor del brazo</translation>
    </message>
    <message>
        <source>Around the thigh</source>
        <translation>Alrededor del muslo</translation>
    </message>
    <message>
        <source>Front to back</source>
        <extracomment>Offset on the hip, toward the front of the body or its back.</extracomment>
        <translation>De delante atrás</translation>
    </message>
    <message>
        <source>right from front to back</source>
        <translation>correcta de delante atrás</translation>
    </message>
</context>
<context>
    <name>fb::HandField</name>
    <message>
        <source>Length of your hand</source>
        <extracomment>Of the learner: from the wrist crease to the tip of the middle finger.</extracomment>
        <translation>Longitud de su mano</translation>
    </message>
    <message>
        <source>Length of your hand in centimetres</source>
        <translation>Longitud de su mano en centímetros</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>From wrist crease to middle fingertip; or estimated from your sex and stature:</source>
        <translation>Del pliegue de la muñeca a la punta del dedo medio; o calculada según su sexo y su estatura:</translation>
    </message>
    <message>
        <source>Your sex</source>
        <translation>Su sexo</translation>
    </message>
    <message>
        <source>Your stature in centimetres</source>
        <translation>Su estatura en centímetros</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Calcular</translation>
    </message>
</context>
<context>
    <name>fb::HowChoice</name>
    <message>
        <source>How</source>
        <extracomment>In which way the sites of a run are found.</extracomment>
        <translation>Cómo</translation>
    </message>
    <message>
        <source>Mark the site</source>
        <translation>Marcar la zona</translation>
    </message>
    <message>
        <source>Find it by hand, then mark</source>
        <translation>Localizarla con la mano y después marcar</translation>
    </message>
    <message>
        <source>Nothing is drawn: feel for the landmarks, build the site, mark it.</source>
        <translation>No hay nada dibujado: palpe los puntos de referencia, construya la zona y coloque la marca.</translation>
    </message>
    <message>
        <source>The mark alone is graded.</source>
        <translation>Solo se evalúa la marca.</translation>
    </message>
</context>
<context>
    <name>fb::LandmarkWords</name>
    <message>
        <source>acromion process|acromial process|edge of the acromion|lateral edge of the acromion|tip of the acromion|bony tip of the shoulder|point of the shoulder</source>
        <extracomment>What a learner may type for a landmark, beside its name: terms of the trade, everyday words and short forms of your language, with | between them. Capitals, accents and hyphens do not count. As many as you like; none may belong to another bone of the same part of the body.</extracomment>
        <translation>acromión|acromio|apófisis acromial|borde del acromion|borde lateral del acromion|punta del acromion|punta ósea del hombro|hueso de la punta del hombro</translation>
    </message>
    <message>
        <source>level of the armpit|height of the armpit|armpit|axilla|axilla level|axillary level|level of the axilla</source>
        <translation>altura de la axila|axila|nivel axilar|sobaco|línea de la axila</translation>
    </message>
    <message>
        <source>tuberosity of the deltoid|deltoid insertion|insertion of the deltoid|end of the deltoid</source>
        <translation>tuberosidad del deltoides|V deltoidea|inserción del deltoides|inserción deltoidea|final del deltoides</translation>
    </message>
    <message>
        <source>trochanter major|great trochanter|greater trochanter of the femur|GT</source>
        <translation>trocánter mayor del fémur|gran trocánter|TM</translation>
    </message>
    <message>
        <source>ASIS|anterior superior spine|anterosuperior iliac spine|superior anterior iliac spine|front point of the hip bone</source>
        <translation>EIAS|espina ilíaca antero superior|espina ilíaca anterior superior|espina anterosuperior|punta anterior del hueso de la cadera</translation>
    </message>
    <message>
        <source>crest of the ilium|crest|hip bone crest|pelvic crest</source>
        <translation>cresta del ilion|cresta|cresta del hueso de la cadera|cresta de la pelvis</translation>
    </message>
    <message>
        <source>tubercle of the iliac crest|iliac crest tubercle|tubercle of the ilium|tubercle of the crest|tubercle</source>
        <translation>tubérculo de la cresta ilíaca|tubérculo del ilion|tubérculo de la cresta|tubérculo</translation>
    </message>
    <message>
        <source>lateral condyle|lateral condyle of the femur|outer femoral condyle|outer condyle|lateral femoral epicondyle|lateral epicondyle|lateral epicondyle of the femur</source>
        <translation>cóndilo lateral|cóndilo lateral del fémur|cóndilo externo|cóndilo femoral externo|cóndilo externo del fémur|epicóndilo femoral lateral|epicóndilo lateral|epicóndilo lateral del fémur</translation>
    </message>
    <message>
        <source>kneecap|knee cap|middle of the patella|middle of the kneecap</source>
        <translation>choquezuela|centro de la rótula|patela|rótula de la rodilla</translation>
    </message>
    <message>
        <source>collarbone|collar bone</source>
        <translation>hueso de la clavícula|clavícula interna</translation>
    </message>
    <message>
        <source>coracoid|coracoid process of the scapula</source>
        <translation>coracoides|apófisis coracoides de la escápula|proceso coracoides</translation>
    </message>
    <message>
        <source>scapular spine|spine of the shoulder blade</source>
        <translation>espina escapular|espina del omóplato|espina del omoplato</translation>
    </message>
    <message>
        <source>humeral head|head of the upper arm bone</source>
        <translation>cabeza humeral|cabeza del hueso del brazo</translation>
    </message>
    <message>
        <source>lateral epicondyle|epicondyle|outer epicondyle|epicondyle of the humerus</source>
        <translation>epicóndilo lateral|epicóndilo|epicóndilo externo|epicóndilo del húmero</translation>
    </message>
    <message>
        <source>trochanter minor|small trochanter|LT</source>
        <translation>trocánter menor del fémur|pequeño trocánter</translation>
    </message>
    <message>
        <source>AIIS|anterior inferior spine|inferior anterior iliac spine</source>
        <translation>EIAI|espina ilíaca antero inferior|espina ilíaca anterior inferior|espina anteroinferior</translation>
    </message>
    <message>
        <source>PSIS|posterior superior spine|superior posterior iliac spine</source>
        <translation>EIPS|espina ilíaca postero superior|espina ilíaca posterior superior|espina posterosuperior</translation>
    </message>
    <message>
        <source>sit bone|sitting bone|tuberosity of the ischium|ischial tuber</source>
        <translation>tuberosidad del isquion|isquion|hueso de sentarse</translation>
    </message>
    <message>
        <source>symphysis|symphysis pubis|pubic bone</source>
        <translation>sínfisis|sínfisis pubiana|pubis|hueso del pubis</translation>
    </message>
    <message>
        <source>medial condyle|medial condyle of the femur|inner femoral condyle|inner condyle|medial femoral epicondyle|medial epicondyle</source>
        <translation>cóndilo medial|cóndilo medial del fémur|cóndilo interno|cóndilo femoral interno|epicóndilo femoral medial|epicóndilo medial</translation>
    </message>
    <message>
        <source>tuberosity of the tibia|tibial tubercle|shin bone tuberosity</source>
        <translation>tuberosidad de la tibia|tubérculo tibial|tuberosidad del hueso de la espinilla</translation>
    </message>
    <message>
        <source>fibular head|fibula head|head of fibula</source>
        <translation>cabeza peronea|cabeza de peroné|cabeza de la fíbula</translation>
    </message>
    <message>
        <source>Acromion</source>
        <translation>Acromion</translation>
    </message>
    <message>
        <source>Armpit level</source>
        <translation>Nivel de la axila</translation>
    </message>
    <message>
        <source>Deltoid tuberosity</source>
        <translation>Tuberosidad deltoidea</translation>
    </message>
    <message>
        <source>Greater trochanter</source>
        <translation>Trocánter mayor</translation>
    </message>
    <message>
        <source>Anterior superior iliac spine</source>
        <translation>Espina ilíaca anterosuperior</translation>
    </message>
    <message>
        <source>Iliac crest</source>
        <translation>Cresta ilíaca</translation>
    </message>
    <message>
        <source>Iliac tubercle</source>
        <translation>Tubérculo ilíaco</translation>
    </message>
    <message>
        <source>Lateral femoral condyle</source>
        <translation>Cóndilo femoral lateral</translation>
    </message>
    <message>
        <source>Patella</source>
        <translation>Rótula</translation>
    </message>
    <message>
        <source>Clavicle</source>
        <translation>Clavícula</translation>
    </message>
    <message>
        <source>Coracoid process</source>
        <translation>Apófisis coracoides</translation>
    </message>
    <message>
        <source>Spine of the scapula</source>
        <translation>Espina de la escápula</translation>
    </message>
    <message>
        <source>Head of the humerus</source>
        <translation>Cabeza del húmero</translation>
    </message>
    <message>
        <source>Lateral epicondyle of the humerus</source>
        <translation>Epicóndilo lateral del húmero</translation>
    </message>
    <message>
        <source>Lesser trochanter</source>
        <translation>Trocánter menor</translation>
    </message>
    <message>
        <source>Anterior inferior iliac spine</source>
        <translation>Espina ilíaca anteroinferior</translation>
    </message>
    <message>
        <source>Posterior superior iliac spine</source>
        <translation>Espina ilíaca posterosuperior</translation>
    </message>
    <message>
        <source>Ischial tuberosity</source>
        <translation>Tuberosidad isquiática</translation>
    </message>
    <message>
        <source>Pubic symphysis</source>
        <translation>Sínfisis del pubis</translation>
    </message>
    <message>
        <source>Medial femoral condyle</source>
        <translation>Cóndilo femoral medial</translation>
    </message>
    <message>
        <source>Tibial tuberosity</source>
        <translation>Tuberosidad tibial</translation>
    </message>
    <message>
        <source>Head of the fibula</source>
        <translation>Cabeza del peroné</translation>
    </message>
</context>
<context>
    <name>fb::Language</name>
    <message>
        <source>English</source>
        <extracomment>Name of this language in itself, as the menu of languages shows it.</extracomment>
        <translation>Español</translation>
    </message>
</context>
<context>
    <name>fb::MainWindow</name>
    <message>
        <source>Appearance</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Projector</source>
        <extracomment>High contrast for a projector in a bright room.</extracomment>
        <translation>Proyector</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>To suit the screen</source>
        <translation>Según la pantalla</translation>
    </message>
    <message>
        <source>%1 %</source>
        <extracomment>A text size in percent.</extracomment>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>El del sistema</translation>
    </message>
    <message>
        <source>Choose a policy file…</source>
        <translation>Elegir un archivo de normativa…</translation>
    </message>
    <message>
        <source>Use the shipped policy</source>
        <translation>Usar la normativa incluida</translation>
    </message>
    <message>
        <source>About Fingerbreadth</source>
        <translation>Acerca de Fingerbreadth</translation>
    </message>
    <message>
        <source>Fingerbreadth</source>
        <translation>Fingerbreadth</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ver</translation>
    </message>
    <message>
        <source>Policy</source>
        <extracomment>The lab&apos;s own clinical numbers.</extracomment>
        <translation>Normativa</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Your hand…</source>
        <extracomment>Of the learner: length, finger, writing hand.</extracomment>
        <translation>Su mano…</translation>
    </message>
</context>
<context>
    <name>fb::MeasureBoard</name>
    <message>
        <source>Width of the drawn card</source>
        <translation>Anchura de la tarjeta dibujada</translation>
    </message>
    <message>
        <source>Length of the drawn line</source>
        <translation>Longitud de la línea dibujada</translation>
    </message>
    <message>
        <source>Two lines for your hand</source>
        <translation>Dos líneas para su mano</translation>
    </message>
    <message>
        <source>Two lines for your finger</source>
        <translation>Dos líneas para su dedo</translation>
    </message>
    <message>
        <source>%1 cm apart</source>
        <translation>separadas %1 cm</translation>
    </message>
    <message numerus="yes">
        <source>%n pixel(s)</source>
        <translation>
            <numerusform>%n píxel</numerusform>
            <numerusform>%n píxeles</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1&#xa0;mm</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1&#xa0;cm</translation>
    </message>
    <message>
        <source>wrist crease</source>
        <translation>pliegue de la muñeca</translation>
    </message>
    <message>
        <source>tip of the middle finger</source>
        <translation>punta del dedo medio</translation>
    </message>
</context>
<context>
    <name>fb::MeasureDialog</name>
    <message>
        <source>No screen draws a card that small or that large; make the outline as large as the card that lies on it.</source>
        <translation>Ninguna pantalla dibuja una tarjeta tan pequeña o tan grande; haga el contorno tan grande como la tarjeta apoyada en él.</translation>
    </message>
    <message>
        <source>No screen draws 100 mm that short or that long; make the line as long as 100 mm of the ruler that lies on it.</source>
        <translation>Ninguna pantalla dibuja 100 mm tan cortos o tan largos; haga la línea tan larga como 100 mm de la regla apoyada en ella.</translation>
    </message>
    <message>
        <source>Lay your hand flat against the glass, fingers closed. Move the lines until one touches the crease of your wrist and the other the tip of your middle finger.</source>
        <translation>Apoye la mano plana contra la pantalla, con los dedos juntos. Mueva las líneas hasta que una toque el pliegue de la muñeca y la otra la punta del dedo medio.</translation>
    </message>
    <message>
        <source>Lay your index finger against the glass, tip up. Move the lines until they touch both sides of its middle joint.</source>
        <translation>Apoye el dedo índice contra la pantalla, con la punta hacia arriba. Mueva las líneas hasta que toquen los dos lados de su articulación media.</translation>
    </message>
    <message>
        <source>Measure on the screen</source>
        <translation>Medir en la pantalla</translation>
    </message>
    <message>
        <source>How fine is this screen?</source>
        <extracomment>Titles of the three steps.</extracomment>
        <translation>¿Qué resolución tiene esta pantalla?</translation>
    </message>
    <message>
        <source>Your hand</source>
        <translation>Su mano</translation>
    </message>
    <message>
        <source>Your finger</source>
        <translation>Su dedo</translation>
    </message>
    <message>
        <source>It fits exactly</source>
        <translation>Encaja exactamente</translation>
    </message>
    <message>
        <source>Take this length</source>
        <translation>Tomar esta longitud</translation>
    </message>
    <message>
        <source>Take this width</source>
        <translation>Tomar esta anchura</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <extracomment>Of a short sequence.</extracomment>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source>Bank card</source>
        <translation>Tarjeta bancaria</translation>
    </message>
    <message>
        <source>Ruler</source>
        <translation>Regla</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Skip</source>
        <extracomment>Goes on without measuring this.</extracomment>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Lay a ruler flat against the glass, along the line. Drag an end, or press + and −, until the line is exactly 100 mm long.</source>
        <translation>Apoye una regla plana contra la pantalla, a lo largo de la línea. Arrastre un extremo, o pulse + y −, hasta que la línea mida exactamente 100 mm.</translation>
    </message>
    <message>
        <source>Lay a bank card flat against the glass, on the outline. Drag a corner, or press + and −, until the outline is exactly as large.</source>
        <translation>Apoye una tarjeta bancaria plana contra la pantalla, sobre el contorno. Arrastre una esquina, o pulse + y −, hasta que el contorno sea exactamente igual de grande.</translation>
    </message>
</context>
<context>
    <name>fb::Notice</name>
    <message>
        <source>Close</source>
        <extracomment>Puts a notice away.</extracomment>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close the notice</source>
        <translation>Cerrar el aviso</translation>
    </message>
</context>
<context>
    <name>fb::PlateBar</name>
    <message>
        <source>Skin</source>
        <extracomment>Layers of the drawing that can be taken off.</extracomment>
        <translation>Piel</translation>
    </message>
    <message>
        <source>Muscle</source>
        <translation>Músculo</translation>
    </message>
    <message>
        <source>Nerves and vessels</source>
        <translation>Nervios y vasos</translation>
    </message>
    <message>
        <source>Bone</source>
        <translation>Hueso</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Reducir</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Ampliar</translation>
    </message>
    <message>
        <source>Whole plate</source>
        <translation>Lámina completa</translation>
    </message>
    <message>
        <source>Other view</source>
        <extracomment>The same shoulder seen from another angle, beside the plate.</extracomment>
        <translation>Otra vista</translation>
    </message>
</context>
<context>
    <name>fb::PlateView</name>
    <message>
        <source>The plate will lie here.</source>
        <translation>Aquí aparecerá la lámina.</translation>
    </message>
    <message>
        <source>Drawing of the patient</source>
        <extracomment>Name of the drawing for a screen reader.</extracomment>
        <translation>Dibujo del paciente</translation>
    </message>
    <message>
        <source>Arrows move the crosshair by 5 millimetres, with Shift by 1. Enter places the mark, Enter again asks for the grade. Backspace withdraws the mark. Plus and minus zoom, zero shows the whole plate, Control with arrows moves the paper.</source>
        <translation>Las flechas mueven la cruz 5 milímetros; con Mayús, 1. Intro coloca la marca; Intro otra vez pide la evaluación. Retroceso retira la marca. Más y menos amplían y reducen, el cero muestra la lámina completa y Control con las flechas desplaza el papel.</translation>
    </message>
    <message>
        <source>Arrows press your fingertip 5 millimetres further on, with Shift 1. Enter plants a flag there. Plus and minus zoom, zero shows the whole plate, Control with arrows moves the paper.</source>
        <translation>Las flechas presionan con la yema 5 milímetros más allá; con Mayús, 1. Intro planta ahí una bandera. Más y menos amplían y reducen, el cero muestra la lámina completa y Control con las flechas desplaza el papel.</translation>
    </message>
    <message>
        <source>Arrows move the current handle by 5 millimetres, with Shift by 1. Enter goes to the next handle or places it, Shift with Enter goes back. Control with Z undoes. Plus and minus zoom, zero shows the whole plate, Control with arrows moves the paper.</source>
        <translation>Las flechas mueven el agarre actual 5 milímetros; con Mayús, 1. Intro pasa al agarre siguiente o lo coloca; Mayús con Intro vuelve al anterior. Control con Z deshace. Más y menos amplían y reducen, el cero muestra la lámina completa y Control con las flechas desplaza el papel.</translation>
    </message>
</context>
<context>
    <name>fb::PlateWords</name>
    <message>
        <source>Crosshair, %1 cm left of and %2 cm below the middle of the picture</source>
        <extracomment>Distances from the middle of the picture; left and right are the viewer&apos;s.</extracomment>
        <translation>Cruz, %1 cm a la izquierda y %2 cm por debajo del centro de la imagen</translation>
    </message>
    <message>
        <source>Crosshair, %1 cm right of and %2 cm below the middle of the picture</source>
        <translation>Cruz, %1 cm a la derecha y %2 cm por debajo del centro de la imagen</translation>
    </message>
    <message>
        <source>Crosshair, %1 cm left of and %2 cm above the middle of the picture</source>
        <translation>Cruz, %1 cm a la izquierda y %2 cm por encima del centro de la imagen</translation>
    </message>
    <message>
        <source>Crosshair, %1 cm right of and %2 cm above the middle of the picture</source>
        <translation>Cruz, %1 cm a la derecha y %2 cm por encima del centro de la imagen</translation>
    </message>
    <message>
        <source>Your mark, %1 cm left of and %2 cm below the middle of the picture</source>
        <extracomment>The learner&apos;s mark; distances from the middle of the picture, left and right are the viewer&apos;s.</extracomment>
        <translation>Su marca, %1 cm a la izquierda y %2 cm por debajo del centro de la imagen</translation>
    </message>
    <message>
        <source>Your mark, %1 cm right of and %2 cm below the middle of the picture</source>
        <translation>Su marca, %1 cm a la derecha y %2 cm por debajo del centro de la imagen</translation>
    </message>
    <message>
        <source>Your mark, %1 cm left of and %2 cm above the middle of the picture</source>
        <translation>Su marca, %1 cm a la izquierda y %2 cm por encima del centro de la imagen</translation>
    </message>
    <message>
        <source>Your mark, %1 cm right of and %2 cm above the middle of the picture</source>
        <translation>Su marca, %1 cm a la derecha y %2 cm por encima del centro de la imagen</translation>
    </message>
    <message>
        <source>%3, current handle, %1 cm left of and %2 cm below the middle of the picture</source>
        <extracomment>The handle that keys move: %3 its name; %1 and %2 as of the crosshair.</extracomment>
        <translation>%3, agarre actual, %1 cm a la izquierda y %2 cm por debajo del centro de la imagen</translation>
    </message>
    <message>
        <source>%3, current handle, %1 cm right of and %2 cm below the middle of the picture</source>
        <translation>%3, agarre actual, %1 cm a la derecha y %2 cm por debajo del centro de la imagen</translation>
    </message>
    <message>
        <source>%3, current handle, %1 cm left of and %2 cm above the middle of the picture</source>
        <translation>%3, agarre actual, %1 cm a la izquierda y %2 cm por encima del centro de la imagen</translation>
    </message>
    <message>
        <source>%3, current handle, %1 cm right of and %2 cm above the middle of the picture</source>
        <translation>%3, agarre actual, %1 cm a la derecha y %2 cm por encima del centro de la imagen</translation>
    </message>
</context>
<context>
    <name>fb::PolicySources</name>
    <message>
        <source>about 1.5 inches, OpenStax Pharmacology for Nurses (module on parenteral medication)</source>
        <translation>unas 1,5 pulgadas, OpenStax Pharmacology for Nurses (módulo de medicación parenteral)</translation>
    </message>
    <message>
        <source>about 2 inches, CDC vaccine administration page 40140</source>
        <translation>unas 2 pulgadas, CDC, administración de vacunas, página 40140</translation>
    </message>
    <message>
        <source>lab&apos;s choice in the published range of 1.5 to 2.25 cm: three fingers then make 2 inches</source>
        <translation>elección del laboratorio dentro del intervalo publicado de 1,5 a 2,25 cm: así, tres dedos son 2 pulgadas</translation>
    </message>
    <message>
        <source>two to three fingerbreadths, OpenStax Pharmacology for Nurses, glossary</source>
        <translation>de dos a tres traveses de dedo, OpenStax Pharmacology for Nurses, glosario</translation>
    </message>
    <message>
        <source>lab&apos;s choice: tolerance about a convention that names only a point</source>
        <translation>elección del laboratorio: tolerancia en torno a un método que solo indica un punto</translation>
    </message>
    <message>
        <source>lab&apos;s choice: an ideal point stays this far above armpit level</source>
        <translation>elección del laboratorio: el punto ideal se mantiene a esta distancia por encima del nivel de la axila</translation>
    </message>
    <message>
        <source>lab&apos;s choice: the stature of the plates&apos; reference body, the scale of every distance on hip and thigh</source>
        <translation>elección del laboratorio: la estatura del cuerpo de referencia de las láminas, escala de todas las distancias en la cadera y el muslo</translation>
    </message>
    <message>
        <source>lab&apos;s choice: half-way down the taught middle third</source>
        <translation>elección del laboratorio: a media altura del tercio medio que se enseña</translation>
    </message>
    <message>
        <source>lab&apos;s choice within the taught outer side: the rectus femoris lies in front of it, with vessels and nerve under it (Nakajima 2020, 24 thighs)</source>
        <translation>elección del laboratorio dentro de la cara externa que se enseña: por delante está el recto femoral, con vasos y nervio por debajo (Nakajima 2020, 24 muslos)</translation>
    </message>
    <message>
        <source>between the front line and the outer line of the thigh: common practice, no source</source>
        <translation>entre la línea anterior y la línea externa del muslo: práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>lab&apos;s choice within the taught outer middle third</source>
        <translation>elección del laboratorio dentro del tercio medio externo que se enseña</translation>
    </message>
    <message>
        <source>lab&apos;s choice: index and middle finger spread as far as is comfortable</source>
        <translation>elección del laboratorio: los dedos índice y medio separados hasta donde resulte cómodo</translation>
    </message>
    <message>
        <source>lab&apos;s choice: kept from crest and spine, where bone lies right under the skin</source>
        <translation>elección del laboratorio: a distancia de la cresta y de la espina, donde el hueso está justo debajo de la piel</translation>
    </message>
    <message>
        <source>palm length over hand length, ANSUR II 2012 public data: 10.9 of 18.1 cm in women, 11.6 of 19.3 cm in men</source>
        <translation>longitud de la palma respecto a la de la mano, datos públicos de ANSUR II 2012: 10,9 de 18,1 cm en mujeres, 11,6 de 19,3 cm en hombres</translation>
    </message>
    <message>
        <source>lab&apos;s choice: index and middle finger part a little short of the middle finger&apos;s root</source>
        <translation>elección del laboratorio: los dedos índice y medio se separan un poco antes de la raíz del dedo medio</translation>
    </message>
    <message>
        <source>lab&apos;s choice: the index finger ends a little short of the middle finger</source>
        <translation>elección del laboratorio: el dedo índice termina un poco antes que el dedo medio</translation>
    </message>
    <message>
        <source>lab&apos;s choice: the heel of the hand begins just beyond the wrist crease</source>
        <translation>elección del laboratorio: el talón de la mano empieza justo después del pliegue de la muñeca</translation>
    </message>
    <message>
        <source>axillary nerve index in front, Patra 2018, Anat Cell Biol 51:93</source>
        <translation>índice del nervio axilar por delante, Patra 2018, Anat Cell Biol 51:93</translation>
    </message>
    <message>
        <source>axillary nerve index in front, Cetik 2006, J Bone Joint Surg Am 88:2395</source>
        <translation>índice del nervio axilar por delante, Cetik 2006, J Bone Joint Surg Am 88:2395</translation>
    </message>
    <message>
        <source>axillary nerve index behind, Patra 2018, Anat Cell Biol 51:93</source>
        <translation>índice del nervio axilar por detrás, Patra 2018, Anat Cell Biol 51:93</translation>
    </message>
    <message>
        <source>axillary nerve index behind, Cetik 2006, J Bone Joint Surg Am 88:2395</source>
        <translation>índice del nervio axilar por detrás, Cetik 2006, J Bone Joint Surg Am 88:2395</translation>
    </message>
    <message>
        <source>radial nerve never nearer than 9.7 cm below the back tip of the acromion, 24 arms (surgical anatomy of the radial nerve around the humerus)</source>
        <translation>nervio radial nunca a menos de 9,7 cm por debajo de la punta posterior del acromion, 24 brazos (anatomía quirúrgica del nervio radial en torno al húmero)</translation>
    </message>
    <message>
        <source>lab&apos;s choice: behind the outer line hamstrings and sciatic nerve, common practice, no source</source>
        <translation>elección del laboratorio: detrás de la línea externa, isquiotibiales y nervio ciático; práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>lowest branch of the superior gluteal nerve 4.0 to 8.3 cm above the trochanter, 20 limbs (safe distance for the superior gluteal nerve and thigh length)</source>
        <translation>rama más baja del nervio glúteo superior de 4,0 a 8,3 cm por encima del trocánter, 20 extremidades (distancia segura al nervio glúteo superior y longitud del muslo)</translation>
    </message>
    <message>
        <source>lab&apos;s choice</source>
        <translation>elección del laboratorio</translation>
    </message>
    <message>
        <source>Cetik 2006, J Bone Joint Surg Am 88:2395 (mean arm length of 24 arms); lab&apos;s choice as the scale of every deltoid distance</source>
        <translation>Cetik 2006, J Bone Joint Surg Am 88:2395 (longitud media de 24 brazos); elección del laboratorio como escala de todas las distancias del deltoides</translation>
    </message>
    <message>
        <source>3.0 cm of 30.4 cm: 3 to 5 cm below the acromion, Life 16(5):724; share derived</source>
        <translation>3,0 cm de 30,4 cm: de 3 a 5 cm por debajo del acromion, Life 16(5):724; proporción calculada</translation>
    </message>
    <message>
        <source>5.08 cm (2 inches, CDC vaccine administration page 40140) of 30.4 cm; share derived</source>
        <translation>5,08 cm (2 pulgadas, CDC, administración de vacunas, página 40140) de 30,4 cm; proporción calculada</translation>
    </message>
    <message>
        <source>4.25 cm of 30.4 cm, two and a half fingers of 1.7 cm, just below the mean bursa edge; lab&apos;s choice</source>
        <translation>4,25 cm de 30,4 cm, dos dedos y medio de 1,7 cm, justo debajo del borde medio de la bolsa; elección del laboratorio</translation>
    </message>
    <message>
        <source>origin width 4.7 cm narrowing to the apex, Kim 2022, BioMed Res Int 1784572; derived</source>
        <translation>anchura de 4,7 cm en el origen, que se estrecha hacia el vértice, Kim 2022, BioMed Res Int 1784572; valor calculado</translation>
    </message>
    <message>
        <source>Kim 2022, BioMed Res Int 1784572: 16.1 (SD 1.0) cm; scaled with the arm, lab&apos;s choice</source>
        <translation>Kim 2022, BioMed Res Int 1784572: 16,1 (DE 1,0) cm; a la escala del brazo, elección del laboratorio</translation>
    </message>
    <message>
        <source>halfway from acromion to deltoid tuberosity, Behrens and Patel, Lancet 2021;397:471</source>
        <translation>a medio camino entre el acromion y la tuberosidad deltoidea, Behrens y Patel, Lancet 2021;397:471</translation>
    </message>
    <message>
        <source>middle third of the line from trochanter to knee: Melbourne Vaccine Education Centre, injected vaccines (infant); for adults common practice, no source</source>
        <translation>tercio medio de la línea del trocánter a la rodilla: Melbourne Vaccine Education Centre, vacunas inyectadas (lactantes); en adultos, práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>lowest branch of the superior gluteal nerve 4.0 to 8.3 cm above the trochanter, 20 limbs (safe distance for the superior gluteal nerve and thigh length); tendon and bone below</source>
        <translation>rama más baja del nervio glúteo superior de 4,0 a 8,3 cm por encima del trocánter, 20 extremidades (distancia segura al nervio glúteo superior y longitud del muslo); por debajo, tendón y hueso</translation>
    </message>
    <message>
        <source>ANSUR II 2012 public data (Gordon et al. 2014, NATICK/TR-15/007), mean of women; lab&apos;s choice until the learner&apos;s own is entered</source>
        <translation>datos públicos de ANSUR II 2012 (Gordon et al. 2014, NATICK/TR-15/007), media de las mujeres; elección del laboratorio hasta que se indique la medida propia</translation>
    </message>
    <message>
        <source>hand breadth over hand length, ANSUR II 2012 public data: 7.8 of 18.1 cm in women, 8.8 of 19.3 cm in men; lab&apos;s choice between</source>
        <translation>anchura de la mano respecto a su longitud, datos públicos de ANSUR II 2012: 7,8 de 18,1 cm en mujeres, 8,8 de 19,3 cm en hombres; elección del laboratorio entre ambos</translation>
    </message>
    <message>
        <source>above the taught band: joint and bursa, CDC page 50050 and Institute for Vaccine Safety; share derived from 3.0 cm of 30.4 cm</source>
        <translation>por encima de la franja que se enseña: articulación y bolsa, CDC, página 50050, e Institute for Vaccine Safety; proporción calculada a partir de 3,0 cm de 30,4 cm</translation>
    </message>
    <message>
        <source>lower edge of the bursa up to 4.0 cm below the acromion, Behrens and Patel, Lancet 2021;397:471</source>
        <translation>borde inferior de la bolsa hasta 4,0 cm por debajo del acromion, Behrens y Patel, Lancet 2021;397:471</translation>
    </message>
    <message>
        <source>lab&apos;s choice: tendon and joint at hip and knee; for the lower third common practice, no source</source>
        <translation>elección del laboratorio: tendón y articulación en la cadera y la rodilla; para el tercio inferior, práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>own estimate from a body mesh in the public domain (mid-arm 8.1 by 8.8 cm); lab&apos;s choice</source>
        <translation>estimación propia a partir de una malla corporal de dominio público (mitad del brazo, 8,1 por 8,8 cm); elección del laboratorio</translation>
    </message>
    <message>
        <source>lab&apos;s choice: how far beside it a bone is still felt through little fat</source>
        <translation>elección del laboratorio: a qué distancia de un hueso todavía se palpa a través de poca grasa</translation>
    </message>
    <message>
        <source>lab&apos;s choice: how far beside it a bone is still felt through thick fat</source>
        <translation>elección del laboratorio: a qué distancia de un hueso todavía se palpa a través de mucha grasa</translation>
    </message>
    <message>
        <source>lab&apos;s choice: up to this much fat counts as little</source>
        <translation>elección del laboratorio: hasta este grosor la grasa se considera poca</translation>
    </message>
    <message>
        <source>lab&apos;s choice: from this much fat on a bone is felt only from right above it</source>
        <translation>elección del laboratorio: a partir de este grosor de grasa un hueso solo se palpa justo encima de él</translation>
    </message>
    <message>
        <source>lab&apos;s choice: over more fat than this a muscle is felt as soft</source>
        <translation>elección del laboratorio: bajo más grasa que esta un músculo se palpa blando</translation>
    </message>
    <message>
        <source>lab&apos;s choice: half the breadth of a fingertip, rounded</source>
        <translation>elección del laboratorio: la mitad de la anchura de una yema, redondeada</translation>
    </message>
    <message>
        <source>lab&apos;s choice: a fingerbreadth, rounded</source>
        <translation>elección del laboratorio: un través de dedo, redondeado</translation>
    </message>
    <message>
        <source>lab&apos;s choice: tolerance of a corner, an end or an apex set by hand</source>
        <translation>elección del laboratorio: tolerancia de una esquina, un extremo o un vértice colocados a mano</translation>
    </message>
    <message>
        <source>lab&apos;s choice: tolerance of a palm, which covers more than a point</source>
        <translation>elección del laboratorio: tolerancia de una palma, que cubre más que un punto</translation>
    </message>
    <message>
        <source>lab&apos;s choice: tolerance of the index fingertip on the spine</source>
        <translation>elección del laboratorio: tolerancia de la punta del dedo índice sobre la espina</translation>
    </message>
    <message>
        <source>lab&apos;s choice: an index fingertip so near the crest lies on it</source>
        <translation>elección del laboratorio: una punta del dedo índice tan cerca de la cresta está sobre ella</translation>
    </message>
    <message>
        <source>lab&apos;s choice: fingers opened less leave no room between them</source>
        <translation>elección del laboratorio: los dedos menos abiertos no dejan espacio entre ellos</translation>
    </message>
    <message>
        <source>lab&apos;s choice: fingers laid more askew measure another way than down the arm</source>
        <translation>elección del laboratorio: los dedos más torcidos no miden a lo largo del brazo</translation>
    </message>
    <message>
        <source>lab&apos;s choice: how uneven halves and thirds may be</source>
        <translation>elección del laboratorio: cuán desiguales pueden ser mitades y tercios</translation>
    </message>
    <message>
        <source>lab&apos;s choice: the construction counts; 0 notes it only</source>
        <translation>elección del laboratorio: la construcción cuenta; con 0 solo se anota</translation>
    </message>
</context>
<context>
    <name>fb::PracticePage</name>
    <message>
        <source>Plate: mark the place here</source>
        <translation>Lámina: marque aquí el lugar</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Evaluar</translation>
    </message>
    <message>
        <source>Withdraw mark</source>
        <translation>Retirar marca</translation>
    </message>
    <message>
        <source>Why</source>
        <extracomment>Opens the convention&apos;s rule and its source.</extracomment>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Resumen</translation>
    </message>
    <message>
        <source>Next request</source>
        <translation>Caso siguiente</translation>
    </message>
    <message>
        <source>The mark can still be moved or withdrawn. Grade it when you are sure.</source>
        <translation>La marca todavía se puede mover o retirar. Evalúela cuando no tenga dudas.</translation>
    </message>
    <message>
        <source>Click the place on the plate, or move the cross with the arrow keys and press Enter.</source>
        <translation>Haga clic en el lugar sobre la lámina, o mueva la cruz con las flechas y pulse Intro.</translation>
    </message>
    <message>
        <source>Not here…</source>
        <extracomment>The site must not be used on this patient; opens a choice of reasons.</extracomment>
        <translation>Aquí no…</translation>
    </message>
    <message>
        <source>Confirm: not here</source>
        <translation>Confirmar: aquí no</translation>
    </message>
    <message>
        <source>Back to the plate</source>
        <translation>Volver a la lámina</translation>
    </message>
    <message>
        <source>Not that one. The figure faces you: its left side is on your right. Pick again.</source>
        <translation>Esa no. La figura está de frente a usted: el lado izquierdo de la figura queda a la derecha de usted. Elija otra vez.</translation>
    </message>
    <message>
        <source>Not that one. The figure faces you: its right side is on your left. Pick again.</source>
        <translation>Esa no. La figura está de frente a usted: el lado derecho de la figura queda a la izquierda de usted. Elija otra vez.</translation>
    </message>
    <message>
        <source>First pick the figure that shows the patient&apos;s left side.</source>
        <translation>Elija primero la figura que muestra el lado izquierdo del paciente.</translation>
    </message>
    <message>
        <source>First pick the figure that shows the patient&apos;s right side.</source>
        <translation>Elija primero la figura que muestra el lado derecho del paciente.</translation>
    </message>
    <message>
        <source>Go on to build</source>
        <translation>Pasar a trazar</translation>
    </message>
    <message>
        <source>Go on to mark</source>
        <translation>Pasar a marcar</translation>
    </message>
    <message>
        <source>Plate: press here to feel what lies under the skin</source>
        <translation>Lámina: presione aquí para palpar lo que hay bajo la piel</translation>
    </message>
    <message>
        <source>Plate: build the site here</source>
        <translation>Lámina: construya aquí la zona</translation>
    </message>
</context>
<context>
    <name>fb::ProfileDialog</name>
    <message>
        <source>Your hand</source>
        <translation>Su mano</translation>
    </message>
    <message>
        <source>Width of your finger</source>
        <extracomment>Of the learner: the index finger.</extracomment>
        <translation>Anchura de su dedo</translation>
    </message>
    <message>
        <source>Width of your index finger in centimetres</source>
        <translation>Anchura de su dedo índice en centímetros</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Across the middle joint of your index finger.</source>
        <translation>En la articulación media del dedo índice.</translation>
    </message>
    <message>
        <source>Measure on the screen…</source>
        <translation>Medir en la pantalla…</translation>
    </message>
    <message>
        <source>You write with your left hand</source>
        <translation>Escribe con la mano izquierda</translation>
    </message>
    <message>
        <source>You write with your right hand</source>
        <translation>Escribe con la mano derecha</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Use it until you quit</source>
        <extracomment>The profile is used although it cannot be kept on disk.</extracomment>
        <translation>Usarlo hasta salir</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Writing hand</source>
        <translation>Mano de escribir</translation>
    </message>
    <message>
        <source>Left</source>
        <extracomment>A hand.</extracomment>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>On an arm the other hand finds the site, and this one holds the syringe. On a hip, the hip decides which hand is laid.</source>
        <translation>En un brazo la otra mano localiza la zona y esta sostiene la jeringa. En una cadera, es la cadera la que decide qué mano se apoya.</translation>
    </message>
</context>
<context>
    <name>fb::ReasonWords</name>
    <message>
        <source>On target, but the acromion&apos;s edge is right here: feel for bone first.</source>
        <translation>En el blanco, pero el borde del acromion está justo aquí: palpe primero el hueso.</translation>
    </message>
    <message>
        <source>On target, at the lower limit of the shoulder joint and bursa.</source>
        <translation>En el blanco, en el límite inferior de la articulación del hombro y de la bolsa.</translation>
    </message>
    <message>
        <source>On target, at armpit level: the radial nerve lies below.</source>
        <translation>En el blanco, al nivel de la axila: más abajo está el nervio radial.</translation>
    </message>
    <message>
        <source>On target, close to where the radial nerve winds behind the bone.</source>
        <translation>En el blanco, cerca de donde el nervio radial rodea el hueso por detrás.</translation>
    </message>
    <message>
        <source>On target. The bursa can reach down to this height: a little lower is safer.</source>
        <translation>En el blanco. La bolsa puede llegar hasta esta altura: un poco más abajo es más seguro.</translation>
    </message>
    <message>
        <source>On target. At this height the axillary nerve crosses the front of the muscle.</source>
        <translation>En el blanco. A esta altura, el nervio axilar cruza la parte anterior del músculo.</translation>
    </message>
    <message>
        <source>On target. At this height the axillary nerve enters the muscle from the back.</source>
        <translation>En el blanco. A esta altura, el nervio axilar entra en el músculo por detrás.</translation>
    </message>
    <message>
        <source>On target. The acromion lies %1 above your mark.</source>
        <translation>En el blanco. El acromion queda %1 por encima de su marca.</translation>
    </message>
    <message>
        <source>On target. Shoulder joint and bursa begin %1 above your mark.</source>
        <translation>En el blanco. La articulación del hombro y la bolsa empiezan %1 por encima de su marca.</translation>
    </message>
    <message>
        <source>On target. Armpit level lies %1 below your mark.</source>
        <translation>En el blanco. El nivel de la axila queda %1 por debajo de su marca.</translation>
    </message>
    <message>
        <source>On target. The radial nerve lies %1 away, behind the bone.</source>
        <translation>En el blanco. El nervio radial queda a %1, por detrás del hueso.</translation>
    </message>
    <message>
        <source>On target. The lower edge of the bursa lies %1 above your mark.</source>
        <translation>En el blanco. El borde inferior de la bolsa queda %1 por encima de su marca.</translation>
    </message>
    <message>
        <source>On target. The axillary nerve crosses the front of the muscle %1 from your mark.</source>
        <translation>En el blanco. El nervio axilar cruza la parte anterior del músculo a %1 de su marca.</translation>
    </message>
    <message>
        <source>On target. The axillary nerve enters the back of the muscle %1 from your mark.</source>
        <translation>En el blanco. El nervio axilar entra por la parte posterior del músculo a %1 de su marca.</translation>
    </message>
    <message>
        <source>On target: over the thick part of the deltoid, clear of bone, bursa and nerves.</source>
        <translation>En el blanco: sobre la parte gruesa del deltoides, lejos del hueso, la bolsa y los nervios.</translation>
    </message>
    <message>
        <source>At the edge of the region, within the margin your lab accepts.</source>
        <translation>En el límite de la región, dentro del margen que acepta su laboratorio.</translation>
    </message>
    <message>
        <source>%1 too high, within the margin your lab accepts; the axillary nerve runs here.</source>
        <translation>%1 demasiado arriba, dentro del margen que acepta su laboratorio; aquí pasa el nervio axilar.</translation>
    </message>
    <message>
        <source>%1 too high, within the margin your lab accepts.</source>
        <translation>%1 demasiado arriba, dentro del margen que acepta su laboratorio.</translation>
    </message>
    <message>
        <source>%1 too low, within the margin your lab accepts; the axillary nerve runs here.</source>
        <translation>%1 demasiado abajo, dentro del margen que acepta su laboratorio; aquí pasa el nervio axilar.</translation>
    </message>
    <message>
        <source>%1 too low, within the margin your lab accepts.</source>
        <translation>%1 demasiado abajo, dentro del margen que acepta su laboratorio.</translation>
    </message>
    <message>
        <source>%1 too far forward, within the margin your lab accepts; the axillary nerve runs here.</source>
        <translation>%1 demasiado adelante, dentro del margen que acepta su laboratorio; aquí pasa el nervio axilar.</translation>
    </message>
    <message>
        <source>%1 too far forward, within the margin your lab accepts.</source>
        <translation>%1 demasiado adelante, dentro del margen que acepta su laboratorio.</translation>
    </message>
    <message>
        <source>%1 too far back, within the margin your lab accepts; the axillary nerve runs here.</source>
        <translation>%1 demasiado atrás, dentro del margen que acepta su laboratorio; aquí pasa el nervio axilar.</translation>
    </message>
    <message>
        <source>%1 too far back, within the margin your lab accepts.</source>
        <translation>%1 demasiado atrás, dentro del margen que acepta su laboratorio.</translation>
    </message>
    <message>
        <source>%1 too high: on the bone of the acromion, which a needle would strike.</source>
        <translation>%1 demasiado arriba: sobre el hueso del acromion, contra el que chocaría la aguja.</translation>
    </message>
    <message>
        <source>%1 too high: over the subacromial bursa, where a needle can injure the shoulder.</source>
        <translation>%1 demasiado arriba: sobre la bolsa subacromial, donde una aguja puede lesionar el hombro.</translation>
    </message>
    <message>
        <source>%1 too high: over the axillary nerve, which a needle can injure.</source>
        <translation>%1 demasiado arriba: sobre el nervio axilar, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too high: over the radial nerve, which a needle can injure.</source>
        <translation>%1 demasiado arriba: sobre el nervio radial, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too high: still over thick muscle, but outside the target region.</source>
        <translation>%1 demasiado arriba: todavía sobre músculo grueso, pero fuera de la región objetivo.</translation>
    </message>
    <message>
        <source>%1 too high: the muscle is thin here, and bone or joint may be struck.</source>
        <translation>%1 demasiado arriba: aquí el músculo es delgado y se puede alcanzar el hueso o la articulación.</translation>
    </message>
    <message>
        <source>%1 too low: on bone, which a needle would strike.</source>
        <translation>%1 demasiado abajo: sobre hueso, contra el que chocaría la aguja.</translation>
    </message>
    <message>
        <source>%1 too low: over the bursa, where a needle can injure the shoulder.</source>
        <translation>%1 demasiado abajo: sobre la bolsa, donde una aguja puede lesionar el hombro.</translation>
    </message>
    <message>
        <source>%1 too low: over the band where the axillary nerve crosses, which a needle can injure.</source>
        <translation>%1 demasiado abajo: sobre la banda por donde cruza el nervio axilar, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too low: below armpit level, where a needle can injure the radial nerve.</source>
        <translation>%1 demasiado abajo: por debajo del nivel de la axila, donde una aguja puede lesionar el nervio radial.</translation>
    </message>
    <message>
        <source>%1 too low: still over muscle, but below the target region.</source>
        <translation>%1 demasiado abajo: todavía sobre músculo, pero por debajo de la región objetivo.</translation>
    </message>
    <message>
        <source>%1 too low: the deltoid narrows here and the dose may miss it.</source>
        <translation>%1 demasiado abajo: aquí el deltoides se estrecha y la dosis puede no llegar a él.</translation>
    </message>
    <message>
        <source>%1 too far forward: on the front of the acromion, which a needle would strike.</source>
        <translation>%1 demasiado adelante: sobre la parte anterior del acromion, contra la que chocaría la aguja.</translation>
    </message>
    <message>
        <source>%1 too far forward: over the bursa, where a needle can injure the shoulder.</source>
        <translation>%1 demasiado adelante: sobre la bolsa, donde una aguja puede lesionar el hombro.</translation>
    </message>
    <message>
        <source>%1 too far forward: over the axillary nerve as it crosses the front of the muscle.</source>
        <translation>%1 demasiado adelante: sobre el nervio axilar, donde cruza la parte anterior del músculo.</translation>
    </message>
    <message>
        <source>%1 too far forward: over the radial nerve, which a needle can injure.</source>
        <translation>%1 demasiado adelante: sobre el nervio radial, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too far forward: still over muscle, but in front of the target region.</source>
        <translation>%1 demasiado adelante: todavía sobre músculo, pero por delante de la región objetivo.</translation>
    </message>
    <message>
        <source>%1 too far forward: toward the thin front edge of the deltoid, where the dose may miss it.</source>
        <translation>%1 demasiado adelante: hacia el borde anterior del deltoides, que es delgado y donde la dosis puede no llegar a él.</translation>
    </message>
    <message>
        <source>%1 too far back: on the back of the acromion, which a needle would strike.</source>
        <translation>%1 demasiado atrás: sobre la parte posterior del acromion, contra la que chocaría la aguja.</translation>
    </message>
    <message>
        <source>%1 too far back: over the bursa, where a needle can injure the shoulder.</source>
        <translation>%1 demasiado atrás: sobre la bolsa, donde una aguja puede lesionar el hombro.</translation>
    </message>
    <message>
        <source>%1 too far back: over the axillary nerve where it enters the muscle from behind.</source>
        <translation>%1 demasiado atrás: sobre el nervio axilar, donde entra en el músculo por detrás.</translation>
    </message>
    <message>
        <source>%1 too far back: over the radial nerve behind the bone, which a needle can injure.</source>
        <translation>%1 demasiado atrás: sobre el nervio radial por detrás del hueso, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too far back: still over muscle, but behind the target region.</source>
        <translation>%1 demasiado atrás: todavía sobre músculo, pero por detrás de la región objetivo.</translation>
    </message>
    <message>
        <source>%1 too far back: toward the thin back edge of the deltoid, where the dose may miss it.</source>
        <translation>%1 demasiado atrás: hacia el borde posterior del deltoides, que es delgado y donde la dosis puede no llegar a él.</translation>
    </message>
    <message>
        <source>On the bone of the acromion, which a needle would strike.</source>
        <translation>Sobre el hueso del acromion, contra el que chocaría la aguja.</translation>
    </message>
    <message>
        <source>Over the subacromial bursa, where a needle can injure the shoulder.</source>
        <translation>Sobre la bolsa subacromial, donde una aguja puede lesionar el hombro.</translation>
    </message>
    <message>
        <source>Over the axillary nerve, which a needle can injure.</source>
        <translation>Sobre el nervio axilar, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>Over the radial nerve, which a needle can injure.</source>
        <translation>Sobre el nervio radial, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>At the border of the target region.</source>
        <translation>En el borde de la región objetivo.</translation>
    </message>
    <message>
        <source>The muscle is thin here, and the dose may miss it.</source>
        <translation>Aquí el músculo es delgado y la dosis puede no llegar a él.</translation>
    </message>
    <message>
        <source>On the trunk: the deltoid site lies on the upper arm, below the acromion.</source>
        <translation>En el tronco: la zona deltoidea está en el brazo, por debajo del acromion.</translation>
    </message>
    <message>
        <source>On the forearm: the deltoid site lies on the upper arm, below the acromion.</source>
        <translation>En el antebrazo: la zona deltoidea está en el brazo, por debajo del acromion.</translation>
    </message>
    <message>
        <source>Away from the shoulder: the deltoid site lies on the upper arm.</source>
        <translation>Lejos del hombro: la zona deltoidea está en el brazo.</translation>
    </message>
    <message>
        <source>On target: over the gluteus medius and minimus. Small branches of the superior gluteal nerve run in this muscle; the large nerves and vessels lie farther back.</source>
        <translation>En el blanco: sobre los glúteos medio y menor. Por este músculo pasan ramas pequeñas del nervio glúteo superior; los nervios y vasos grandes están más atrás.</translation>
    </message>
    <message>
        <source>On target: over the gluteus medius and minimus. Small branches of the superior gluteal nerve run %1 from your mark.</source>
        <translation>En el blanco: sobre los glúteos medio y menor. A %1 de su marca pasan ramas pequeñas del nervio glúteo superior.</translation>
    </message>
    <message>
        <source>On target, right at the line from spine to trochanter: a little farther back is over thicker muscle.</source>
        <translation>En el blanco, justo en la línea de la espina al trocánter: un poco más atrás el músculo es más grueso.</translation>
    </message>
    <message>
        <source>On target. The line from spine to trochanter, where the gluteal muscles end in front, lies %1 from your mark.</source>
        <translation>En el blanco. La línea de la espina al trocánter, donde terminan por delante los músculos glúteos, queda a %1 de su marca.</translation>
    </message>
    <message>
        <source>On target: over the gluteus medius and minimus, away from bone; small branches of the superior gluteal nerve are never far.</source>
        <translation>En el blanco: sobre los glúteos medio y menor, lejos del hueso; las ramas pequeñas del nervio glúteo superior nunca están lejos.</translation>
    </message>
    <message>
        <source>%1 too far forward, within the margin your lab accepts; the gluteal muscles end here.</source>
        <translation>%1 demasiado adelante, dentro del margen que acepta su laboratorio; aquí terminan los músculos glúteos.</translation>
    </message>
    <message>
        <source>On the greater trochanter, where a needle would strike bone.</source>
        <translation>Sobre el trocánter mayor, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>On the iliac crest, where a needle would strike bone.</source>
        <translation>Sobre la cresta ilíaca, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>Too near the trochanter: tendon and bone lie here instead of thick muscle.</source>
        <translation>Demasiado cerca del trocánter: aquí hay tendón y hueso en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>Above the iliac crest, over the abdominal wall: no gluteal muscle lies here, and a needle can reach the belly.</source>
        <translation>Por encima de la cresta ilíaca, sobre la pared abdominal: aquí no hay músculo glúteo y la aguja puede llegar al abdomen.</translation>
    </message>
    <message>
        <source>In front of the line from spine to trochanter, off the gluteal muscles and toward the groin.</source>
        <translation>Por delante de la línea de la espina al trocánter, fuera de los músculos glúteos y hacia la ingle.</translation>
    </message>
    <message>
        <source>In the territory of the sciatic nerve: a needle can injure it and leave the leg weak or numb.</source>
        <translation>En el territorio del nervio ciático: una aguja puede lesionarlo y dejar la pierna débil o insensible.</translation>
    </message>
    <message>
        <source>In the dorsogluteal territory: a needle can injure the superior gluteal nerve and artery.</source>
        <translation>En el territorio dorsoglúteo: una aguja puede lesionar el nervio y la arteria glúteos superiores.</translation>
    </message>
    <message>
        <source>Still over muscle, but beside the target region.</source>
        <translation>Todavía sobre músculo, pero al lado de la región objetivo.</translation>
    </message>
    <message>
        <source>On the thigh: the ventrogluteal site lies higher, between the trochanter and the iliac crest.</source>
        <translation>En el muslo: la zona ventroglútea está más arriba, entre el trocánter y la cresta ilíaca.</translation>
    </message>
    <message>
        <source>On the lower leg: the ventrogluteal site lies on the side of the hip, between the trochanter and the iliac crest.</source>
        <translation>En la pierna: la zona ventroglútea está en el lado de la cadera, entre el trocánter y la cresta ilíaca.</translation>
    </message>
    <message>
        <source>Away from the hip: the ventrogluteal site lies on its side, between the trochanter and the iliac crest.</source>
        <translation>Lejos de la cadera: la zona ventroglútea está en el lado de la cadera, entre el trocánter y la cresta ilíaca.</translation>
    </message>
    <message>
        <source>%1 too high: on the iliac crest, where a needle would strike bone.</source>
        <translation>%1 demasiado arriba: sobre la cresta ilíaca, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too high: above the iliac crest, over the abdominal wall, where no gluteal muscle lies and a needle can reach the belly.</source>
        <translation>%1 demasiado arriba: por encima de la cresta ilíaca, sobre la pared abdominal, donde no hay músculo glúteo y la aguja puede llegar al abdomen.</translation>
    </message>
    <message>
        <source>%1 too high and behind: in the dorsogluteal territory, where a needle can injure the superior gluteal nerve and artery.</source>
        <translation>%1 demasiado arriba y atrás: en el territorio dorsoglúteo, donde una aguja puede lesionar el nervio y la arteria glúteos superiores.</translation>
    </message>
    <message>
        <source>%1 too high and in front: off the gluteal muscles, where the dose would miss them.</source>
        <translation>%1 demasiado arriba y adelante: fuera de los músculos glúteos, donde la dosis no llegaría a ellos.</translation>
    </message>
    <message>
        <source>%1 too high: still over muscle, but toward the iliac crest, where it thins over bone.</source>
        <translation>%1 demasiado arriba: todavía sobre músculo, pero hacia la cresta ilíaca, donde se adelgaza sobre el hueso.</translation>
    </message>
    <message>
        <source>%1 too low: on the greater trochanter, where a needle would strike bone.</source>
        <translation>%1 demasiado abajo: sobre el trocánter mayor, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too low: close to the trochanter, where tendon and bone lie instead of thick muscle.</source>
        <translation>%1 demasiado abajo: cerca del trocánter, donde hay tendón y hueso en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too low: in the territory of the sciatic nerve, which a needle can injure; the leg can stay weak or numb.</source>
        <translation>%1 demasiado abajo: en el territorio del nervio ciático, que una aguja puede lesionar; la pierna puede quedar débil o insensible.</translation>
    </message>
    <message>
        <source>%1 too low and behind: in the dorsogluteal territory, where a needle can injure the superior gluteal nerve and artery.</source>
        <translation>%1 demasiado abajo y atrás: en el territorio dorsoglúteo, donde una aguja puede lesionar el nervio y la arteria glúteos superiores.</translation>
    </message>
    <message>
        <source>%1 too low and in front: off the gluteal muscles and toward the groin.</source>
        <translation>%1 demasiado abajo y adelante: fuera de los músculos glúteos y hacia la ingle.</translation>
    </message>
    <message>
        <source>%1 too low: still over muscle, but nearer the trochanter than the target region.</source>
        <translation>%1 demasiado abajo: todavía sobre músculo, pero más cerca del trocánter que la región objetivo.</translation>
    </message>
    <message>
        <source>%1 too far forward: on the greater trochanter, where a needle would strike bone.</source>
        <translation>%1 demasiado adelante: sobre el trocánter mayor, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too far forward and close to the trochanter, where tendon and bone lie instead of thick muscle.</source>
        <translation>%1 demasiado adelante y cerca del trocánter, donde hay tendón y hueso en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too far forward: on the edge of the hip bone by the iliac spine, where a needle would strike bone.</source>
        <translation>%1 demasiado adelante: sobre el borde del hueso de la cadera junto a la espina ilíaca, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too far forward: past the iliac crest, over the abdominal wall, where a needle can reach the belly.</source>
        <translation>%1 demasiado adelante: más allá de la cresta ilíaca, sobre la pared abdominal, donde la aguja puede llegar al abdomen.</translation>
    </message>
    <message>
        <source>%1 too far forward: in front of the line from spine to trochanter, off the gluteal muscles and toward the groin.</source>
        <translation>%1 demasiado adelante: por delante de la línea de la espina al trocánter, fuera de los músculos glúteos y hacia la ingle.</translation>
    </message>
    <message>
        <source>%1 too far back: on the greater trochanter, where a needle would strike bone.</source>
        <translation>%1 demasiado atrás: sobre el trocánter mayor, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too far back and close to the trochanter, where tendon and bone lie instead of thick muscle.</source>
        <translation>%1 demasiado atrás y cerca del trocánter, donde hay tendón y hueso en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too far back: on the iliac crest, where a needle would strike bone.</source>
        <translation>%1 demasiado atrás: sobre la cresta ilíaca, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too far back: above the iliac crest, where no gluteal muscle lies.</source>
        <translation>%1 demasiado atrás: por encima de la cresta ilíaca, donde no hay músculo glúteo.</translation>
    </message>
    <message>
        <source>%1 too far back: in the territory of the sciatic nerve, which a needle can injure; the leg can stay weak or numb.</source>
        <translation>%1 demasiado atrás: en el territorio del nervio ciático, que una aguja puede lesionar; la pierna puede quedar débil o insensible.</translation>
    </message>
    <message>
        <source>%1 too far back: in the dorsogluteal territory, where a needle can injure the superior gluteal nerve and artery.</source>
        <translation>%1 demasiado atrás: en el territorio dorsoglúteo, donde una aguja puede lesionar el nervio y la arteria glúteos superiores.</translation>
    </message>
    <message>
        <source>On target: over the thick middle of the vastus lateralis, away from hip and knee and from the large vessels and nerves.</source>
        <translation>En el blanco: sobre la parte media y gruesa del vasto lateral, lejos de la cadera y la rodilla y de los vasos y nervios grandes.</translation>
    </message>
    <message>
        <source>On target, at the border of the rectus femoris: vessels and a nerve run under it, so a little farther back is safer.</source>
        <translation>En el blanco, en el borde del recto femoral: por debajo pasan vasos y un nervio, así que un poco más atrás es más seguro.</translation>
    </message>
    <message>
        <source>On target. The rectus femoris, with vessels and a nerve under it, begins %1 in front of your mark.</source>
        <translation>En el blanco. El recto femoral, con vasos y un nervio por debajo, empieza %1 por delante de su marca.</translation>
    </message>
    <message>
        <source>%1 too far forward, within the margin your lab accepts; the rectus femoris, with vessels and a nerve under it, lies here.</source>
        <translation>%1 demasiado adelante, dentro del margen que acepta su laboratorio; aquí está el recto femoral, con vasos y un nervio por debajo.</translation>
    </message>
    <message>
        <source>%1 too far back, within the margin your lab accepts; the hamstrings begin here.</source>
        <translation>%1 demasiado atrás, dentro del margen que acepta su laboratorio; aquí empiezan los isquiotibiales.</translation>
    </message>
    <message>
        <source>On the patella, where a needle would strike bone.</source>
        <translation>Sobre la rótula, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>Too near the hip: tendon and joint lie here instead of thick muscle.</source>
        <translation>Demasiado cerca de la cadera: aquí hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>Too near the knee: tendon and joint lie here instead of thick muscle.</source>
        <translation>Demasiado cerca de la rodilla: aquí hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>On the inner side of the thigh, over the femoral vessels and nerve, which a needle can injure.</source>
        <translation>En la cara interna del muslo, sobre los vasos y el nervio femorales, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>Behind the thigh, over the hamstrings and the sciatic nerve, which a needle can injure.</source>
        <translation>Por detrás del muslo, sobre los isquiotibiales y el nervio ciático, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>Over the rectus femoris: vessels and a nerve run under it, and an injection hurts more there.</source>
        <translation>Sobre el recto femoral: por debajo pasan vasos y un nervio, y ahí la inyección duele más.</translation>
    </message>
    <message>
        <source>Over the hamstrings, toward the sciatic nerve.</source>
        <translation>Sobre los isquiotibiales, hacia el nervio ciático.</translation>
    </message>
    <message>
        <source>The muscle is thinner here, and the dose may miss it.</source>
        <translation>Aquí el músculo es más delgado y la dosis puede no llegar a él.</translation>
    </message>
    <message>
        <source>On the hip: the vastus lateralis site lies lower, on the outer side of the thigh.</source>
        <translation>En la cadera: la zona del vasto lateral está más abajo, en la cara externa del muslo.</translation>
    </message>
    <message>
        <source>On the knee or lower leg: the vastus lateralis site lies higher, on the outer side of the thigh.</source>
        <translation>En la rodilla o la pierna: la zona del vasto lateral está más arriba, en la cara externa del muslo.</translation>
    </message>
    <message>
        <source>Away from the thigh: the vastus lateralis site lies on its outer side, halfway down.</source>
        <translation>Lejos del muslo: la zona del vasto lateral está en la cara externa del muslo, a media altura.</translation>
    </message>
    <message>
        <source>%1 too high: on the greater trochanter, where a needle would strike bone.</source>
        <translation>%1 demasiado arriba: sobre el trocánter mayor, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too high: near the hip, where tendon and joint lie instead of thick muscle.</source>
        <translation>%1 demasiado arriba: cerca de la cadera, donde hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too high and on the inner side: over the femoral vessels and nerve, which a needle can injure.</source>
        <translation>%1 demasiado arriba y en la cara interna: sobre los vasos y el nervio femorales, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too high and behind the thigh: over the sciatic nerve, which a needle can injure.</source>
        <translation>%1 demasiado arriba y por detrás del muslo: sobre el nervio ciático, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too high and on the front: over the rectus femoris, with vessels and a nerve under it.</source>
        <translation>%1 demasiado arriba y en la cara anterior: sobre el recto femoral, con vasos y un nervio por debajo.</translation>
    </message>
    <message>
        <source>%1 too high: still over muscle, but above the target region, where it is thinner.</source>
        <translation>%1 demasiado arriba: todavía sobre músculo, pero por encima de la región objetivo, donde es más delgado.</translation>
    </message>
    <message>
        <source>%1 too low: on the patella, where a needle would strike bone.</source>
        <translation>%1 demasiado abajo: sobre la rótula, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too low: near the knee, where tendon and joint lie instead of thick muscle.</source>
        <translation>%1 demasiado abajo: cerca de la rodilla, donde hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too low and on the inner side: over the femoral vessels and nerve, which a needle can injure.</source>
        <translation>%1 demasiado abajo y en la cara interna: sobre los vasos y el nervio femorales, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too low and behind the thigh: over the sciatic nerve, which a needle can injure.</source>
        <translation>%1 demasiado abajo y por detrás del muslo: sobre el nervio ciático, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too low and on the front: over the rectus femoris, with vessels and a nerve under it.</source>
        <translation>%1 demasiado abajo y en la cara anterior: sobre el recto femoral, con vasos y un nervio por debajo.</translation>
    </message>
    <message>
        <source>%1 too low: still over muscle, but below the target region, where it thins into tendon.</source>
        <translation>%1 demasiado abajo: todavía sobre músculo, pero por debajo de la región objetivo, donde se adelgaza y pasa a ser tendón.</translation>
    </message>
    <message>
        <source>%1 too far forward: on the patella, where a needle would strike bone.</source>
        <translation>%1 demasiado adelante: sobre la rótula, donde la aguja chocaría contra el hueso.</translation>
    </message>
    <message>
        <source>%1 too far forward and near the hip, where tendon and joint lie instead of thick muscle.</source>
        <translation>%1 demasiado adelante y cerca de la cadera, donde hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too far forward and near the knee, where tendon and joint lie instead of thick muscle.</source>
        <translation>%1 demasiado adelante y cerca de la rodilla, donde hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too far forward: on the inner side of the thigh, over the femoral vessels and nerve, which a needle can injure.</source>
        <translation>%1 demasiado adelante: en la cara interna del muslo, sobre los vasos y el nervio femorales, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too far forward: over the rectus femoris, with vessels and a nerve under it; an injection hurts more there.</source>
        <translation>%1 demasiado adelante: sobre el recto femoral, con vasos y un nervio por debajo; ahí la inyección duele más.</translation>
    </message>
    <message>
        <source>%1 too far back and near the hip, where tendon and joint lie instead of thick muscle.</source>
        <translation>%1 demasiado atrás y cerca de la cadera, donde hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too far back and near the knee, where tendon and joint lie instead of thick muscle.</source>
        <translation>%1 demasiado atrás y cerca de la rodilla, donde hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
    <message>
        <source>%1 too far back: behind the thigh, toward the sciatic nerve, which a needle can injure.</source>
        <translation>%1 demasiado atrás: por detrás del muslo, hacia el nervio ciático, que una aguja puede lesionar.</translation>
    </message>
    <message>
        <source>%1 too far back: over the hamstrings, toward the sciatic nerve.</source>
        <translation>%1 demasiado atrás: sobre los isquiotibiales, hacia el nervio ciático.</translation>
    </message>
</context>
<context>
    <name>fb::RefusalPanel</name>
    <message>
        <source>Not here, because of</source>
        <extracomment>Above a list of reasons: the learner says that this site must not be used.</extracomment>
        <translation>Aquí no, a causa de</translation>
    </message>
    <message>
        <source>Choose what the chart gives as the reason, then confirm.</source>
        <translation>Elija el motivo que indica la historia clínica y confirme.</translation>
    </message>
</context>
<context>
    <name>fb::RequestPanel</name>
    <message>
        <source>Request %1 of %2</source>
        <translation>Caso %1 de %2</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Edad</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexo</translation>
    </message>
    <message>
        <source>Side</source>
        <extracomment>Side of the patient&apos;s body.</extracomment>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Stature</source>
        <extracomment>Body height.</extracomment>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Posture</source>
        <translation>Posición</translation>
    </message>
    <message numerus="yes">
        <source>%n year(s)</source>
        <translation>
            <numerusform>%n año</numerusform>
            <numerusform>%n años</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1&#xa0;cm</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1&#xa0;kg</translation>
    </message>
    <message>
        <source>Convention</source>
        <extracomment>The published way of finding the site that this run is graded by.</extracomment>
        <translation>Método</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Chart: nothing of note.</source>
        <extracomment>What the patient&apos;s chart says beside the order.</extracomment>
        <translation>Historia clínica: sin datos de interés.</translation>
    </message>
</context>
<context>
    <name>fb::RestartDialog</name>
    <message>
        <source>Start the run anew?</source>
        <translation>¿Empezar de nuevo la serie?</translation>
    </message>
    <message>
        <source>The shipped policy grades from the first request on. What has been marked in this run is lost.</source>
        <translation>La normativa incluida evalúa desde el primer caso. Lo que se ha marcado en esta serie se pierde.</translation>
    </message>
    <message>
        <source>The policy file %1 grades from the first request on. What has been marked in this run is lost.</source>
        <translation>El archivo de normativa %1 evalúa desde el primer caso. Lo que se ha marcado en esta serie se pierde.</translation>
    </message>
    <message>
        <source>Keep this run</source>
        <translation>Conservar esta serie</translation>
    </message>
    <message>
        <source>Start anew</source>
        <translation>Empezar de nuevo</translation>
    </message>
</context>
<context>
    <name>fb::RunByHand</name>
    <message>
        <source>Found by hand</source>
        <translation>Localizadas con la mano</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>How many of how many requests.</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 (%2×)</source>
        <extracomment>What went wrong first in a request, and how many times.</extracomment>
        <translation>%1 (%2 veces)</translation>
    </message>
    <message>
        <source>What went wrong first, most often</source>
        <translation>Lo primero que falló, con más frecuencia</translation>
    </message>
</context>
<context>
    <name>fb::RunBySite</name>
    <message>
        <source>Site by site: choose whose marks are drawn</source>
        <translation>Zona por zona: elija de cuál se dibujan las marcas</translation>
    </message>
    <message>
        <source>Draw the marks of the %1. %2</source>
        <extracomment>Told to a screen reader: a site, then what its marks came to.</extracomment>
        <translation>Dibujar las marcas de la %1. %2</translation>
    </message>
    <message>
        <source>No place was marked here.</source>
        <translation>Aquí no se marcó ningún lugar.</translation>
    </message>
    <message>
        <source>%1 of %2 in the target region, %3 from the ideal point on average.</source>
        <translation>%1 de %2 en la región objetivo; en promedio, a %3 del punto ideal.</translation>
    </message>
    <message>
        <source>Charts that ruled the site out: %1.</source>
        <translation>Historias clínicas que descartaban la zona: %1.</translation>
    </message>
    <message>
        <source>Refused for the right reason: %1.</source>
        <translation>Descartadas por el motivo correcto: %1.</translation>
    </message>
    <message>
        <source>Refused for another reason: %1.</source>
        <translation>Descartadas por otro motivo: %1.</translation>
    </message>
    <message>
        <source>Marked all the same, which is unsafe: %1.</source>
        <translation>Marcadas de todos modos, lo que es peligroso: %1.</translation>
    </message>
    <message>
        <source>Refused although nothing ruled it out: %1.</source>
        <translation>Descartadas sin que nada lo justificara: %1.</translation>
    </message>
</context>
<context>
    <name>fb::RunDialog</name>
    <message>
        <source>New run</source>
        <translation>Serie nueva</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Semilla</translation>
    </message>
    <message>
        <source>Seed of the new run</source>
        <translation>Semilla de la serie nueva</translation>
    </message>
    <message>
        <source>Fresh seed</source>
        <translation>Otra semilla</translation>
    </message>
    <message>
        <source>Requests</source>
        <translation>Casos</translation>
    </message>
    <message>
        <source>Number of requests</source>
        <translation>Número de casos</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Ask for the patient&apos;s left or right first</source>
        <translation>Preguntar primero el lado del paciente, izquierdo o derecho</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Finger, writing hand, measuring…</source>
        <extracomment>Of the learner: opens what is known of the hand, with measuring.</extracomment>
        <translation>Dedo, mano de escribir, medición…</translation>
    </message>
</context>
<context>
    <name>fb::RunStrip</name>
    <message>
        <source>Seed</source>
        <extracomment>The number that fixes which requests a run asks.</extracomment>
        <translation>Semilla</translation>
    </message>
    <message>
        <source>Seed of the run</source>
        <translation>Semilla de la serie</translation>
    </message>
    <message>
        <source>Replay</source>
        <translation>Repetir</translation>
    </message>
    <message>
        <source>Start the run of this seed</source>
        <translation>Empezar la serie de esta semilla</translation>
    </message>
    <message>
        <source>New run…</source>
        <translation>Serie nueva…</translation>
    </message>
</context>
<context>
    <name>fb::SidePicker</name>
    <message>
        <source>Two figures facing you</source>
        <translation>Dos figuras de frente a usted</translation>
    </message>
    <message>
        <source>Figure with the arm on your left marked</source>
        <translation>Figura con el brazo de su izquierda señalado</translation>
    </message>
    <message>
        <source>Figure with the arm on your right marked</source>
        <translation>Figura con el brazo de su derecha señalado</translation>
    </message>
    <message>
        <source>Figure with hip and thigh on your left marked</source>
        <translation>Figura con la cadera y el muslo de su izquierda señalados</translation>
    </message>
    <message>
        <source>Figure with hip and thigh on your right marked</source>
        <translation>Figura con la cadera y el muslo de su derecha señalados</translation>
    </message>
</context>
<context>
    <name>fb::SiteChoice</name>
    <message>
        <source>Sites, and the convention of each</source>
        <translation>Zonas, y el método de cada una</translation>
    </message>
    <message>
        <source>Convention of the %1</source>
        <translation>Método de la %1</translation>
    </message>
    <message>
        <source>Some charts rule the site out</source>
        <extracomment>Some patients have a note that makes the site unusable; the learner may answer &quot;not here&quot;.</extracomment>
        <translation>Algunas historias clínicas descartan la zona</translation>
    </message>
</context>
<context>
    <name>fb::SiteWords</name>
    <message>
        <source>deltoid site</source>
        <extracomment>The injection site on the shoulder muscle (deltoid).</extracomment>
        <translation>zona deltoidea</translation>
    </message>
    <message>
        <source>female</source>
        <extracomment>Sex of the patient, as in a table.</extracomment>
        <translation>femenino</translation>
    </message>
    <message>
        <source>male</source>
        <translation>masculino</translation>
    </message>
    <message>
        <source>left</source>
        <extracomment>Side of the patient&apos;s body, not of the picture.</extracomment>
        <translation>izquierdo</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecho</translation>
    </message>
    <message>
        <source>Shoulder, from the side</source>
        <translation>Hombro, de lado</translation>
    </message>
    <message>
        <source>Shoulder, three-quarter front</source>
        <extracomment>The shoulder seen halfway between front and side.</extracomment>
        <translation>Hombro, de tres cuartos por delante</translation>
    </message>
    <message>
        <source>Bone</source>
        <translation>Hueso</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Vasos</translation>
    </message>
    <message>
        <source>Nerves</source>
        <translation>Nervios</translation>
    </message>
    <message>
        <source>Muscle</source>
        <translation>Músculo</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Piel</translation>
    </message>
    <message>
        <source>Surface</source>
        <extracomment>The fine drawing on the skin: folds, furrows, shade.</extracomment>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Cloth</source>
        <extracomment>Drape and clothing in the drawing.</extracomment>
        <translation>Ropa</translation>
    </message>
    <message>
        <source>Landmarks drawn and named</source>
        <translation>Puntos de referencia dibujados y con nombre</translation>
    </message>
    <message>
        <source>Landmarks named only</source>
        <translation>Puntos de referencia solo con nombre</translation>
    </message>
    <message>
        <source>No help</source>
        <translation>Sin ayuda</translation>
    </message>
    <message>
        <source>Acromion (bone)</source>
        <translation>Acromion (hueso)</translation>
    </message>
    <message>
        <source>Shoulder joint and bursa</source>
        <translation>Articulación del hombro y bolsa</translation>
    </message>
    <message>
        <source>Below armpit level: radial nerve</source>
        <extracomment>Axilla level: the height of the armpit.</extracomment>
        <translation>Debajo del nivel de la axila: nervio radial</translation>
    </message>
    <message>
        <source>Radial nerve, back of the arm</source>
        <translation>Nervio radial, cara posterior del brazo</translation>
    </message>
    <message>
        <source>Lower edge of the bursa</source>
        <translation>Borde inferior de la bolsa</translation>
    </message>
    <message>
        <source>Axillary nerve, front</source>
        <translation>Nervio axilar, delante</translation>
    </message>
    <message>
        <source>Axillary nerve, back</source>
        <translation>Nervio axilar, detrás</translation>
    </message>
    <message>
        <source>Feel the acromion&apos;s lateral edge</source>
        <translation>Palpar el borde lateral del acromion</translation>
    </message>
    <message>
        <source>Base: the acromion from front to back</source>
        <translation>Base: el acromion de delante atrás</translation>
    </message>
    <message>
        <source>Armpit level</source>
        <translation>Nivel de la axila</translation>
    </message>
    <message>
        <source>Apex: mid-lateral at armpit level</source>
        <translation>Vértice: línea media lateral al nivel de la axila</translation>
    </message>
    <message>
        <source>Triangle</source>
        <translation>Triángulo</translation>
    </message>
    <message>
        <source>Mid-lateral line</source>
        <translation>Línea media lateral</translation>
    </message>
    <message>
        <source>Measure down from the acromion</source>
        <translation>Medir hacia abajo desde el acromion</translation>
    </message>
    <message>
        <source>Lay the fingers below the acromion</source>
        <translation>Colocar los dedos debajo del acromion</translation>
    </message>
    <message>
        <source>Feel where the deltoid ends</source>
        <translation>Palpar dónde termina el deltoides</translation>
    </message>
    <message>
        <source>Target region</source>
        <translation>Región objetivo</translation>
    </message>
    <message>
        <source>Ideal point</source>
        <translation>Punto ideal</translation>
    </message>
    <message>
        <source>Seated, shoulder bare, elbow bent, forearm in the lap</source>
        <translation>Sedestación, hombro descubierto, codo flexionado, antebrazo en el regazo</translation>
    </message>
    <message>
        <source>Mark the deltoid site, left arm</source>
        <translation>Marque la zona deltoidea, brazo izquierdo</translation>
    </message>
    <message>
        <source>Mark the deltoid site, right arm</source>
        <translation>Marque la zona deltoidea, brazo derecho</translation>
    </message>
    <message>
        <source>Acromion, lateral edge</source>
        <extracomment>Bony landmarks, as short labels on the plate.</extracomment>
        <translation>Acromion, borde lateral</translation>
    </message>
    <message>
        <source>Acromion, front corner</source>
        <translation>Acromion, ángulo anterior</translation>
    </message>
    <message>
        <source>Acromion, back corner</source>
        <translation>Acromion, ángulo posterior</translation>
    </message>
    <message>
        <source>Armpit, front fold</source>
        <translation>Axila, pliegue anterior</translation>
    </message>
    <message>
        <source>Armpit, back fold</source>
        <translation>Axila, pliegue posterior</translation>
    </message>
    <message>
        <source>Deltoid tuberosity</source>
        <translation>Tuberosidad deltoidea</translation>
    </message>
    <message>
        <source>Lateral epicondyle</source>
        <translation>Epicóndilo lateral</translation>
    </message>
    <message>
        <source>Clavicle, inner end</source>
        <translation>Clavícula, extremo interno</translation>
    </message>
    <message>
        <source>Spine of the scapula</source>
        <translation>Espina de la escápula</translation>
    </message>
    <message>
        <source>Training aid. Local policy and licensed practice decide.</source>
        <translation>Material didáctico. Deciden la normativa local y el ejercicio profesional autorizado.</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <extracomment>A length in centimetres, one decimal.</extracomment>
        <translation>%1&#xa0;cm</translation>
    </message>
    <message>
        <source>Greater trochanter (bone)</source>
        <translation>Trocánter mayor (hueso)</translation>
    </message>
    <message>
        <source>Patella (bone)</source>
        <translation>Rótula (hueso)</translation>
    </message>
    <message>
        <source>Near the hip: tendon and joint</source>
        <translation>Cerca de la cadera: tendón y articulación</translation>
    </message>
    <message>
        <source>Near the knee: tendon and joint</source>
        <translation>Cerca de la rodilla: tendón y articulación</translation>
    </message>
    <message>
        <source>Femoral vessels and nerve</source>
        <translation>Vasos y nervio femorales</translation>
    </message>
    <message>
        <source>Hamstrings and sciatic nerve</source>
        <translation>Isquiotibiales y nervio ciático</translation>
    </message>
    <message>
        <source>Rectus femoris</source>
        <extracomment>A muscle down the front of the thigh.</extracomment>
        <translation>Recto femoral</translation>
    </message>
    <message>
        <source>Iliac crest (bone)</source>
        <translation>Cresta ilíaca (hueso)</translation>
    </message>
    <message>
        <source>Too near the trochanter: tendon and bone</source>
        <translation>Demasiado cerca del trocánter: tendón y hueso</translation>
    </message>
    <message>
        <source>Abdominal wall</source>
        <translation>Pared abdominal</translation>
    </message>
    <message>
        <source>In front of the gluteal muscles</source>
        <extracomment>In front of the line from the anterior superior iliac spine to the trochanter.</extracomment>
        <translation>Delante de los músculos glúteos</translation>
    </message>
    <message>
        <source>Sciatic nerve</source>
        <translation>Nervio ciático</translation>
    </message>
    <message>
        <source>Dorsogluteal: superior gluteal nerve and artery</source>
        <extracomment>The old site in the buttock, with what a needle meets there.</extracomment>
        <translation>Dorsoglútea: nervio y arteria glúteos superiores</translation>
    </message>
    <message>
        <source>Branches of the superior gluteal nerve</source>
        <translation>Ramas del nervio glúteo superior</translation>
    </message>
    <message>
        <source>Feel the greater trochanter</source>
        <translation>Palpar el trocánter mayor</translation>
    </message>
    <message>
        <source>Feel the lateral femoral condyle</source>
        <extracomment>The bony knob on the outer side of the knee.</extracomment>
        <translation>Palpar el cóndilo femoral lateral</translation>
    </message>
    <message>
        <source>Outer line: trochanter to condyle</source>
        <translation>Línea externa: del trocánter al cóndilo</translation>
    </message>
    <message>
        <source>Front line: iliac spine to the middle of the patella</source>
        <translation>Línea anterior: de la espina ilíaca al centro de la rótula</translation>
    </message>
    <message>
        <source>Upper limit of the middle third</source>
        <translation>Límite superior del tercio medio</translation>
    </message>
    <message>
        <source>Lower limit of the middle third</source>
        <translation>Límite inferior del tercio medio</translation>
    </message>
    <message>
        <source>One handbreadth below the trochanter</source>
        <translation>El ancho de una mano por debajo del trocánter</translation>
    </message>
    <message>
        <source>One handbreadth above the knee</source>
        <translation>El ancho de una mano por encima de la rodilla</translation>
    </message>
    <message>
        <source>Feel the anterior superior iliac spine</source>
        <translation>Palpar la espina ilíaca anterosuperior</translation>
    </message>
    <message>
        <source>Feel along the iliac crest</source>
        <translation>Palpar a lo largo de la cresta ilíaca</translation>
    </message>
    <message>
        <source>Feel the iliac tubercle</source>
        <translation>Palpar el tubérculo ilíaco</translation>
    </message>
    <message>
        <source>Lay the palm on the trochanter</source>
        <translation>Colocar la palma sobre el trocánter</translation>
    </message>
    <message>
        <source>Index finger to the anterior superior iliac spine</source>
        <translation>Dedo índice hacia la espina ilíaca anterosuperior</translation>
    </message>
    <message>
        <source>Middle finger opened back along the crest</source>
        <translation>Dedo medio abierto hacia atrás a lo largo de la cresta</translation>
    </message>
    <message>
        <source>Triangle between the two fingers</source>
        <translation>Triángulo entre los dos dedos</translation>
    </message>
    <message>
        <source>Triangle of trochanter, tubercle and spine</source>
        <translation>Triángulo de trocánter, tubérculo y espina</translation>
    </message>
    <message>
        <source>Median of the triangle</source>
        <extracomment>From a corner of a triangle to the middle of the side facing it.</extracomment>
        <translation>Mediana del triángulo</translation>
    </message>
    <message>
        <source>Feel the posterior superior iliac spine</source>
        <translation>Palpar la espina ilíaca posterosuperior</translation>
    </message>
    <message>
        <source>Line from posterior spine to trochanter</source>
        <translation>Línea de la espina posterior al trocánter</translation>
    </message>
    <message>
        <source>Greater trochanter</source>
        <translation>Trocánter mayor</translation>
    </message>
    <message>
        <source>Anterior superior iliac spine</source>
        <translation>Espina ilíaca anterosuperior</translation>
    </message>
    <message>
        <source>Iliac tubercle</source>
        <translation>Tubérculo ilíaco</translation>
    </message>
    <message>
        <source>Iliac crest</source>
        <translation>Cresta ilíaca</translation>
    </message>
    <message>
        <source>Posterior superior iliac spine</source>
        <translation>Espina ilíaca posterosuperior</translation>
    </message>
    <message>
        <source>Ischial tuberosity</source>
        <translation>Tuberosidad isquiática</translation>
    </message>
    <message>
        <source>Lateral femoral condyle</source>
        <translation>Cóndilo femoral lateral</translation>
    </message>
    <message>
        <source>Patella</source>
        <translation>Rótula</translation>
    </message>
    <message>
        <source>Coccyx</source>
        <translation>Cóccix</translation>
    </message>
    <message>
        <source>vastus lateralis site</source>
        <extracomment>The injection site on the outer muscle of the thigh (vastus lateralis).</extracomment>
        <translation>zona del vasto lateral</translation>
    </message>
    <message>
        <source>ventrogluteal site</source>
        <extracomment>The injection site on the side of the hip (gluteus medius and minimus).</extracomment>
        <translation>zona ventroglútea</translation>
    </message>
    <message>
        <source>Hip, from the side</source>
        <translation>Cadera, de lado</translation>
    </message>
    <message>
        <source>Hips, from behind</source>
        <translation>Caderas, por detrás</translation>
    </message>
    <message>
        <source>Thigh, from the front</source>
        <translation>Muslo, por delante</translation>
    </message>
    <message>
        <source>Thigh, from the outer side</source>
        <translation>Muslo, por la cara externa</translation>
    </message>
    <message>
        <source>Open hand</source>
        <translation>Mano abierta</translation>
    </message>
    <message>
        <source>Lying on the other side, hip bare, upper knee bent and slightly forward, seen from behind the patient</source>
        <translation>Decúbito lateral sobre el otro lado, cadera descubierta, rodilla de arriba flexionada y un poco adelantada, visto desde detrás del paciente</translation>
    </message>
    <message>
        <source>Lying face down, both hips bare, toes turned in</source>
        <translation>Decúbito prono, ambas caderas descubiertas, puntas de los pies hacia dentro</translation>
    </message>
    <message>
        <source>Lying on the back, thigh bare, toes up, seen from above</source>
        <translation>Decúbito supino, muslo descubierto, puntas de los pies hacia arriba, visto desde arriba</translation>
    </message>
    <message>
        <source>Lying on the back, thigh bare, toes up, seen from the outer side</source>
        <translation>Decúbito supino, muslo descubierto, puntas de los pies hacia arriba, visto por la cara externa</translation>
    </message>
    <message>
        <source>Laid flat, fingers spread</source>
        <extracomment>The hand of whoever gives the injection, not of the patient.</extracomment>
        <translation>Apoyada plana, dedos separados</translation>
    </message>
    <message>
        <source>Mark the vastus lateralis site, left thigh</source>
        <translation>Marque la zona del vasto lateral, muslo izquierdo</translation>
    </message>
    <message>
        <source>Mark the vastus lateralis site, right thigh</source>
        <translation>Marque la zona del vasto lateral, muslo derecho</translation>
    </message>
    <message>
        <source>Mark the ventrogluteal site, left hip</source>
        <translation>Marque la zona ventroglútea, cadera izquierda</translation>
    </message>
    <message>
        <source>Mark the ventrogluteal site, right hip</source>
        <translation>Marque la zona ventroglútea, cadera derecha</translation>
    </message>
    <message>
        <source>Measured along the skin</source>
        <extracomment>How the distances of a mark are measured on arm and thigh.</extracomment>
        <translation>Medido a lo largo de la piel</translation>
    </message>
    <message>
        <source>Measured straight across the picture</source>
        <translation>Medido en línea recta sobre la imagen</translation>
    </message>
    <message>
        <source>Two fingers, laid together</source>
        <translation>Dos dedos juntos</translation>
    </message>
    <message>
        <source>Three fingers, laid together</source>
        <translation>Tres dedos juntos</translation>
    </message>
    <message>
        <source>Laid flat, fingers together</source>
        <translation>Apoyada plana, con los dedos juntos</translation>
    </message>
    <message>
        <source>Find the deltoid site, left arm</source>
        <extracomment>A request that is found by hand: felt, built, then marked.</extracomment>
        <translation>Localice la zona deltoidea, brazo izquierdo</translation>
    </message>
    <message>
        <source>Find the deltoid site, right arm</source>
        <translation>Localice la zona deltoidea, brazo derecho</translation>
    </message>
    <message>
        <source>Find the vastus lateralis site, left thigh</source>
        <translation>Localice la zona del vasto lateral, muslo izquierdo</translation>
    </message>
    <message>
        <source>Find the vastus lateralis site, right thigh</source>
        <translation>Localice la zona del vasto lateral, muslo derecho</translation>
    </message>
    <message>
        <source>Find the ventrogluteal site, left hip</source>
        <translation>Localice la zona ventroglútea, cadera izquierda</translation>
    </message>
    <message>
        <source>Find the ventrogluteal site, right hip</source>
        <translation>Localice la zona ventroglútea, cadera derecha</translation>
    </message>
</context>
<context>
    <name>fb::SlipWords</name>
    <message>
        <source>Upper edge of your fingers: %1.</source>
        <extracomment>In these %1 is an offset: &quot;3.1 cm too low&quot;, &quot;0.8 cm too far back&quot;.</extracomment>
        <translation>Borde superior de sus dedos: %1.</translation>
    </message>
    <message>
        <source>Base of the triangle: %1.</source>
        <translation>Base del triángulo: %1.</translation>
    </message>
    <message>
        <source>Apex of the triangle: %1.</source>
        <translation>Vértice del triángulo: %1.</translation>
    </message>
    <message>
        <source>Upper end of the line: %1.</source>
        <translation>Extremo superior de la línea: %1.</translation>
    </message>
    <message>
        <source>Lower end of the line: %1.</source>
        <translation>Extremo inferior de la línea: %1.</translation>
    </message>
    <message>
        <source>Front line: %1.</source>
        <translation>Línea anterior: %1.</translation>
    </message>
    <message>
        <source>Outer line: %1.</source>
        <translation>Línea externa: %1.</translation>
    </message>
    <message>
        <source>Palm: %1.</source>
        <translation>Palma: %1.</translation>
    </message>
    <message>
        <source>Index fingertip: %1, not on the anterior superior iliac spine.</source>
        <translation>Punta del dedo índice: %1, no sobre la espina ilíaca anterosuperior.</translation>
    </message>
    <message>
        <source>Corner at the greater trochanter: %1.</source>
        <translation>Vértice del trocánter mayor: %1.</translation>
    </message>
    <message>
        <source>Corner at the iliac tubercle: %1.</source>
        <translation>Vértice del tubérculo ilíaco: %1.</translation>
    </message>
    <message>
        <source>Corner at the anterior superior iliac spine: %1.</source>
        <translation>Vértice de la espina ilíaca anterosuperior: %1.</translation>
    </message>
    <message>
        <source>Your fingers end %1 below the acromion, lower than the site: lay one fewer.</source>
        <translation>Sus dedos terminan %1 por debajo del acromion, más abajo que la zona: coloque uno menos.</translation>
    </message>
    <message>
        <source>Your fingers end %1 below the acromion, higher than the site: lay one more.</source>
        <translation>Sus dedos terminan %1 por debajo del acromion, más arriba que la zona: coloque uno más.</translation>
    </message>
    <message>
        <source>Middle of the line: too high by %1 percent of the line.</source>
        <translation>Mitad de la línea: demasiado arriba en un %1 por ciento de la línea.</translation>
    </message>
    <message>
        <source>Middle of the line: too low by %1 percent of the line.</source>
        <translation>Mitad de la línea: demasiado abajo en un %1 por ciento de la línea.</translation>
    </message>
    <message>
        <source>A median misses the middle of its side by %1 percent of the side.</source>
        <translation>Una mediana se aparta del centro de su lado en un %1 por ciento del lado.</translation>
    </message>
    <message>
        <source>The right hand on a right hip: it opens in front of the iliac spine or turns its thumb to the buttock, off the gluteus medius. The left hand belongs here.</source>
        <translation>La mano derecha en una cadera derecha: se abre por delante de la espina ilíaca o vuelve el pulgar hacia la nalga, fuera del glúteo medio. Aquí corresponde la mano izquierda.</translation>
    </message>
    <message>
        <source>The left hand on a left hip: it opens in front of the iliac spine or turns its thumb to the buttock, off the gluteus medius. The right hand belongs here.</source>
        <translation>La mano izquierda en una cadera izquierda: se abre por delante de la espina ilíaca o vuelve el pulgar hacia la nalga, fuera del glúteo medio. Aquí corresponde la mano derecha.</translation>
    </message>
    <message>
        <source>Fingers at the acromion</source>
        <extracomment>Steps of the construction, as a list with a verdict beside each.</extracomment>
        <translation>Dedos en el acromion</translation>
    </message>
    <message>
        <source>Fingers square to the arm</source>
        <translation>Dedos perpendiculares al brazo</translation>
    </message>
    <message>
        <source>Number of fingers</source>
        <translation>Número de dedos</translation>
    </message>
    <message>
        <source>Base of the triangle</source>
        <translation>Base del triángulo</translation>
    </message>
    <message>
        <source>Apex of the triangle</source>
        <translation>Vértice del triángulo</translation>
    </message>
    <message>
        <source>Ends of the line</source>
        <translation>Extremos de la línea</translation>
    </message>
    <message>
        <source>Middle of the line</source>
        <translation>Mitad de la línea</translation>
    </message>
    <message>
        <source>Ends of the thigh</source>
        <translation>Extremos del muslo</translation>
    </message>
    <message>
        <source>Lines across the thigh</source>
        <translation>Líneas transversales del muslo</translation>
    </message>
    <message>
        <source>Front line</source>
        <translation>Línea anterior</translation>
    </message>
    <message>
        <source>Outer line</source>
        <translation>Línea externa</translation>
    </message>
    <message>
        <source>Choice of the field</source>
        <extracomment>A field of the thigh between the lines laid over it.</extracomment>
        <translation>Elección del campo</translation>
    </message>
    <message>
        <source>Choice of the hand</source>
        <translation>Elección de la mano</translation>
    </message>
    <message>
        <source>Palm on the greater trochanter</source>
        <translation>Palma sobre el trocánter mayor</translation>
    </message>
    <message>
        <source>Index finger to the iliac spine</source>
        <translation>Dedo índice hacia la espina ilíaca</translation>
    </message>
    <message>
        <source>Corners of the triangle</source>
        <translation>Vértices del triángulo</translation>
    </message>
    <message>
        <source>Medians of the triangle</source>
        <translation>Medianas del triángulo</translation>
    </message>
    <message>
        <source>%1 away</source>
        <extracomment>A distance without a direction.</extracomment>
        <translation>a %1</translation>
    </message>
    <message>
        <source>Right.</source>
        <translation>Correcto.</translation>
    </message>
    <message>
        <source>Your fingers are turned by %1 degrees: they measure aslant instead of straight down the arm.</source>
        <translation>Sus dedos están girados %1 grados: miden en oblicuo y no en línea recta a lo largo del brazo.</translation>
    </message>
    <message>
        <source>Wrong field: the site lies in the middle one, between front line and outer line.</source>
        <translation>Campo equivocado: la zona está en el del centro, entre la línea anterior y la línea externa.</translation>
    </message>
    <message>
        <source>Your fingers are open by only %1 degrees: there is no room between them, and the needle can prick your own finger.</source>
        <translation>Sus dedos están abiertos solo %1 grados: no queda espacio entre ellos y la aguja puede pinchar su propio dedo.</translation>
    </message>
    <message>
        <source>What is built on it is off with it.</source>
        <translation>Lo que se construye a partir de ahí se desvía igual.</translation>
    </message>
    <message>
        <source>That alone would have moved the needle %1, still inside the target region.</source>
        <translation>Solo eso habría desplazado la aguja %1, todavía dentro de la región objetivo.</translation>
    </message>
    <message>
        <source>That alone would have moved the needle %1, just outside the target region but within the margin your lab accepts.</source>
        <translation>Solo eso habría desplazado la aguja %1, apenas fuera de la región objetivo pero dentro del margen que acepta su laboratorio.</translation>
    </message>
    <message>
        <source>That alone would have moved the needle %1, off the target region. %2</source>
        <extracomment>%2 is a whole sentence that says where the needle goes and what harm it does there.</extracomment>
        <translation>Solo eso habría desplazado la aguja %1, fuera de la región objetivo. %2</translation>
    </message>
    <message>
        <source>That alone would have moved the needle %1, to an unsafe place. %2</source>
        <extracomment>%2 is a whole sentence that says where the needle goes and what harm it does there.</extracomment>
        <translation>Solo eso habría desplazado la aguja %1, a un lugar peligroso. %2</translation>
    </message>
    <message>
        <source>Hip end of the thigh: %1.</source>
        <translation>Extremo del muslo del lado de la cadera: %1.</translation>
    </message>
    <message>
        <source>Knee end of the thigh: %1.</source>
        <translation>Extremo del muslo del lado de la rodilla: %1.</translation>
    </message>
    <message>
        <source>Index fingertip: %1, on the iliac crest instead of the anterior superior iliac spine, so that the fingers open toward the dorsogluteal territory with its nerve and vessels.</source>
        <translation>Punta del dedo índice: %1, sobre la cresta ilíaca en vez de la espina ilíaca anterosuperior, de modo que los dedos se abren hacia el territorio dorsoglúteo, con su nervio y sus vasos.</translation>
    </message>
    <message>
        <source>Handbreadths set off wrong: a line across is too near the hip by %1 percent of the thigh.</source>
        <translation>Ancho de la mano mal medido: una línea transversal está demasiado cerca de la cadera en un %1 por ciento del muslo.</translation>
    </message>
    <message>
        <source>Handbreadths set off wrong: a line across is too near the knee by %1 percent of the thigh.</source>
        <translation>Ancho de la mano mal medido: una línea transversal está demasiado cerca de la rodilla en un %1 por ciento del muslo.</translation>
    </message>
    <message>
        <source>Thirds uneven: a line across is too near the hip by %1 percent of the thigh.</source>
        <translation>Tercios desiguales: una línea transversal está demasiado cerca de la cadera en un %1 por ciento del muslo.</translation>
    </message>
    <message>
        <source>Thirds uneven: a line across is too near the knee by %1 percent of the thigh.</source>
        <translation>Tercios desiguales: una línea transversal está demasiado cerca de la rodilla en un %1 por ciento del muslo.</translation>
    </message>
    <message>
        <source>Middle finger toward the crest</source>
        <translation>Dedo medio hacia la cresta</translation>
    </message>
    <message>
        <source>%1 too far toward the head</source>
        <extracomment>%1 is a length.</extracomment>
        <translation>%1 de más hacia la cabeza</translation>
    </message>
    <message>
        <source>%1 too near the hip</source>
        <translation>%1 demasiado cerca de la cadera</translation>
    </message>
    <message>
        <source>%1 too far toward the foot</source>
        <translation>%1 de más hacia el pie</translation>
    </message>
    <message>
        <source>%1 too near the knee</source>
        <translation>%1 demasiado cerca de la rodilla</translation>
    </message>
    <message>
        <source>%1: right in itself, but carried along, %2.</source>
        <translation>%1: correcto en sí, pero arrastrado por lo anterior, %2.</translation>
    </message>
</context>
<context>
    <name>fb::StageRail</name>
    <message>
        <source>%1, open, something is done</source>
        <extracomment>Told to a screen reader of a stage; %1 is its number and name.</extracomment>
        <translation>%1, abierta, con algo hecho</translation>
    </message>
    <message>
        <source>%1, open</source>
        <translation>%1, abierta</translation>
    </message>
    <message>
        <source>%1, done</source>
        <translation>%1, hecha</translation>
    </message>
    <message>
        <source>%1, still to do</source>
        <translation>%1, por hacer</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>A stage: its number, then its name.</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>%1 is what a button leads to, %2 the keys that do the same.</extracomment>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>fb::SummaryPage</name>
    <message>
        <source>%1 %</source>
        <extracomment>A share in percent.</extracomment>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>All marks laid on one right arm, each as far from the ideal point as it was on its own.</source>
        <translation>Todas las marcas puestas sobre un solo brazo derecho, cada una a la misma distancia del punto ideal que en su propio caso.</translation>
    </message>
    <message>
        <source>Run of seed %1</source>
        <translation>Serie de la semilla %1</translation>
    </message>
    <message>
        <source>Repeat this run</source>
        <translation>Repetir esta serie</translation>
    </message>
    <message>
        <source>New run</source>
        <translation>Serie nueva</translation>
    </message>
    <message>
        <source>%1 of %2 in the target region</source>
        <translation>%1 de %2 en la región objetivo</translation>
    </message>
    <message>
        <source>Hit rate %1, 95 % interval from %2 to %3.</source>
        <extracomment>A 95 percent confidence interval of the hit rate; %1 is the rate itself.</extracomment>
        <translation>Tasa de aciertos: %1; intervalo del 95&#xa0;%: de %2 a %3.</translation>
    </message>
    <message>
        <source>Mean distance to the ideal point: %1.</source>
        <translation>Distancia media al punto ideal: %1.</translation>
    </message>
    <message>
        <source>Side picked right at the first try: %1 of %2.</source>
        <translation>Lado acertado al primer intento: %1 de %2.</translation>
    </message>
    <message>
        <source>Points: %1.</source>
        <translation>Puntos: %1.</translation>
    </message>
    <message>
        <source>All marks laid on one right thigh, each as far from the ideal point as it was on its own.</source>
        <translation>Todas las marcas puestas sobre un solo muslo derecho, cada una a la misma distancia del punto ideal que en su propio caso.</translation>
    </message>
    <message>
        <source>All marks laid on one right hip, each as far from the ideal point as it was on its own.</source>
        <translation>Todas las marcas puestas sobre una sola cadera derecha, cada una a la misma distancia del punto ideal que en su propio caso.</translation>
    </message>
    <message>
        <source>No place was marked</source>
        <translation>No se marcó ningún lugar</translation>
    </message>
    <message>
        <source>%1 of %2 found, built and marked right</source>
        <extracomment>The headline of a run by hand: of how many requests every part was right.</extracomment>
        <translation>%1 de %2 localizados, construidos y marcados bien</translation>
    </message>
</context>
<context>
    <name>fb::WatchPanel</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Next</source>
        <extracomment>The next step of what is shown.</extracomment>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Go on by itself</source>
        <translation>Avanzar solo</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close the showing</source>
        <translation>Cerrar la demostración</translation>
    </message>
    <message>
        <source>Shown once for each request. The attempt will say that you watched.</source>
        <translation>Se muestra una vez en cada caso. En el intento constará que lo vio.</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source>Pause</source>
        <extracomment>Holds a showing that goes on by itself, or lets it go on.</extracomment>
        <translation>Pausa</translation>
    </message>
</context>
<context>
    <name>fb::WatchWords</name>
    <message>
        <source>The fingertip feels for the lateral edge of the acromion: hard, and soft right below it.</source>
        <translation>La yema busca el borde lateral del acromion: duro, y blando justo por debajo.</translation>
    </message>
    <message>
        <source>The base of the triangle runs along the acromion, from its front corner to its back corner.</source>
        <translation>La base del triángulo sigue el acromion, de su esquina anterior a su esquina posterior.</translation>
    </message>
    <message>
        <source>A level line is drawn across the arm at the height of the armpit.</source>
        <translation>Se traza una línea horizontal a través del brazo a la altura de la axila.</translation>
    </message>
    <message>
        <source>The apex lies halfway between front and back of the arm, at armpit level.</source>
        <translation>El vértice está a medio camino entre la cara anterior y la posterior del brazo, al nivel de la axila.</translation>
    </message>
    <message>
        <source>Base and apex make a triangle over the deltoid.</source>
        <translation>La base y el vértice forman un triángulo sobre el deltoides.</translation>
    </message>
    <message>
        <source>A line is drawn from the acromion to the deltoid tuberosity.</source>
        <translation>Se traza una línea del acromion a la tuberosidad deltoidea.</translation>
    </message>
    <message>
        <source>The mid-lateral line runs from the acromion down the outer side of the arm.</source>
        <translation>La línea media lateral baja desde el acromion por la cara externa del brazo.</translation>
    </message>
    <message>
        <source>Along this line the distance is measured down from the acromion.</source>
        <translation>A lo largo de esta línea se mide la distancia hacia abajo desde el acromion.</translation>
    </message>
    <message>
        <source>The fingers are laid across the arm below the acromion, one under the other.</source>
        <translation>Los dedos se colocan atravesados en el brazo debajo del acromion, uno bajo otro.</translation>
    </message>
    <message>
        <source>The fingertip follows the deltoid down to the deltoid tuberosity, where it ends on the bone.</source>
        <translation>La yema sigue el deltoides hacia abajo hasta la tuberosidad deltoidea, donde termina en el hueso.</translation>
    </message>
    <message>
        <source>The fingertip feels for the greater trochanter: hard and broad, on the outer side of the hip.</source>
        <translation>La yema busca el trocánter mayor: duro y ancho, en la cara externa de la cadera.</translation>
    </message>
    <message>
        <source>The fingertip feels for the lateral femoral condyle: hard, on the outer side of the knee.</source>
        <translation>La yema busca el cóndilo femoral lateral: duro, en la cara externa de la rodilla.</translation>
    </message>
    <message>
        <source>The outer line runs down the outer side of the thigh, from the greater trochanter to the condyle.</source>
        <translation>La línea externa baja por la cara externa del muslo, del trocánter mayor al cóndilo.</translation>
    </message>
    <message>
        <source>The front line runs down the thigh, from the iliac spine to the middle of the patella.</source>
        <translation>La línea anterior baja por el muslo, de la espina ilíaca al centro de la rótula.</translation>
    </message>
    <message>
        <source>A line across ends the upper third of the thigh.</source>
        <translation>Una línea transversal cierra el tercio superior del muslo.</translation>
    </message>
    <message>
        <source>A second line across begins the lower third.</source>
        <translation>Una segunda línea transversal abre el tercio inferior.</translation>
    </message>
    <message>
        <source>One handbreadth is set off below the greater trochanter: tendon and joint lie there.</source>
        <translation>Se deja el ancho de una mano por debajo del trocánter mayor: ahí hay tendón y articulación.</translation>
    </message>
    <message>
        <source>Another handbreadth is set off above the knee, for the same reason.</source>
        <translation>Se deja otra vez el ancho de una mano por encima de la rodilla, por el mismo motivo.</translation>
    </message>
    <message>
        <source>The left hand is laid on the right hip, its palm over the greater trochanter.</source>
        <translation>La mano izquierda se apoya en la cadera derecha, con la palma sobre el trocánter mayor.</translation>
    </message>
    <message>
        <source>The right hand is laid on the left hip, its palm over the greater trochanter.</source>
        <translation>La mano derecha se apoya en la cadera izquierda, con la palma sobre el trocánter mayor.</translation>
    </message>
    <message>
        <source>From there the fingertip follows the iliac crest back: a hard edge that runs on.</source>
        <translation>Desde ahí la yema sigue la cresta ilíaca hacia atrás: un borde duro que continúa.</translation>
    </message>
    <message>
        <source>On the outer lip of the crest the fingertip feels for the iliac tubercle.</source>
        <translation>En el labio externo de la cresta la yema busca el tubérculo ilíaco.</translation>
    </message>
    <message>
        <source>The index finger points to the anterior superior iliac spine, which this hand does not reach.</source>
        <translation>El dedo índice apunta a la espina ilíaca anterosuperior, que esta mano no alcanza.</translation>
    </message>
    <message>
        <source>The hand turns until the index fingertip rests on the anterior superior iliac spine.</source>
        <translation>La mano gira hasta que la punta del dedo índice se apoya en la espina ilíaca anterosuperior.</translation>
    </message>
    <message>
        <source>A triangle opens between the two fingers.</source>
        <translation>Entre los dos dedos se abre un triángulo.</translation>
    </message>
    <message>
        <source>Greater trochanter, iliac tubercle and anterior superior iliac spine make a triangle.</source>
        <translation>El trocánter mayor, el tubérculo ilíaco y la espina ilíaca anterosuperior forman un triángulo.</translation>
    </message>
    <message>
        <source>A line is drawn from a corner to the middle of the side facing it.</source>
        <translation>Se traza una línea de un vértice al centro del lado opuesto.</translation>
    </message>
    <message>
        <source>The fingertip feels for the posterior superior iliac spine, under the dimple of the back.</source>
        <translation>La yema busca la espina ilíaca posterosuperior, bajo el hoyuelo de la espalda.</translation>
    </message>
    <message>
        <source>A line is drawn from the posterior superior iliac spine to the greater trochanter.</source>
        <translation>Se traza una línea de la espina ilíaca posterosuperior al trocánter mayor.</translation>
    </message>
    <message>
        <source>This is the target region: a needle here meets thick muscle.</source>
        <translation>Esta es la región objetivo: aquí la aguja encuentra músculo grueso.</translation>
    </message>
    <message>
        <source>Last of all the site is marked, at the ideal point.</source>
        <translation>Por último se coloca la marca en la zona, en el punto ideal.</translation>
    </message>
    <message>
        <source>The fingertip feels for the anterior superior iliac spine: a bony point at the front end of the crest.</source>
        <translation>La yema busca la espina ilíaca anterosuperior: un saliente de hueso en el extremo anterior de la cresta.</translation>
    </message>
    <message>
        <source>The middle finger opens back toward the iliac crest.</source>
        <translation>El dedo medio se abre hacia atrás, hacia la cresta ilíaca.</translation>
    </message>
</context>
<context>
    <name>fb::WhyPanel</name>
    <message>
        <source>Source: %1</source>
        <extracomment>%1 is where the numbers were published, or the words of the lab.</extracomment>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Other conventions on this body</source>
        <translation>Otros métodos en este cuerpo</translation>
    </message>
    <message>
        <source>Show %1, %2</source>
        <extracomment>Told to a screen reader: convention, then where its point lies.</extracomment>
        <translation>Mostrar %1, %2</translation>
    </message>
    <message>
        <source>at the same height</source>
        <translation>a la misma altura</translation>
    </message>
    <message>
        <source>%1 lower on the arm</source>
        <translation>%1 más abajo en el brazo</translation>
    </message>
    <message>
        <source>%1 higher on the arm</source>
        <translation>%1 más arriba en el brazo</translation>
    </message>
    <message>
        <source>Show the hand</source>
        <extracomment>The hand drawn over the plate as a nurse would lay it.</extracomment>
        <translation>Mostrar la mano</translation>
    </message>
    <message>
        <source>%1 lower on the thigh</source>
        <translation>%1 más abajo en el muslo</translation>
    </message>
    <message>
        <source>%1 higher on the thigh</source>
        <translation>%1 más arriba en el muslo</translation>
    </message>
    <message>
        <source>%1 away, mostly toward the foot</source>
        <translation>a %1, sobre todo hacia los pies</translation>
    </message>
    <message>
        <source>%1 away, mostly toward the head</source>
        <translation>a %1, sobre todo hacia la cabeza</translation>
    </message>
    <message>
        <source>%1 away, mostly toward the front</source>
        <translation>a %1, sobre todo hacia delante</translation>
    </message>
    <message>
        <source>%1 away, mostly toward the back</source>
        <translation>a %1, sobre todo hacia atrás</translation>
    </message>
    <message>
        <source>at the same place</source>
        <translation>en el mismo lugar</translation>
    </message>
    <message>
        <source>Your left hand is laid, %1 long: the tip of the index finger lies on the spine and holds the hand in place.</source>
        <extracomment>The nurse&apos;s hand on the patient&apos;s hip; %1 is its length. Spine: anterior superior iliac spine.</extracomment>
        <translation>Se ha colocado su mano izquierda, de %1 de largo: la punta del dedo índice está sobre la espina y mantiene la mano en su lugar.</translation>
    </message>
    <message>
        <source>Your right hand is laid, %1 long: the tip of the index finger lies on the spine and holds the hand in place.</source>
        <translation>Se ha colocado su mano derecha, de %1 de largo: la punta del dedo índice está sobre la espina y mantiene la mano en su lugar.</translation>
    </message>
    <message>
        <source>Your left hand is laid, %1 long: it is too short for both, so the heel of the palm stays on the trochanter and the index finger points at the spine.</source>
        <translation>Se ha colocado su mano izquierda, de %1 de largo: es demasiado corta para ambos puntos, así que el talón de la palma se queda sobre el trocánter y el dedo índice señala la espina.</translation>
    </message>
    <message>
        <source>Your right hand is laid, %1 long: it is too short for both, so the heel of the palm stays on the trochanter and the index finger points at the spine.</source>
        <translation>Se ha colocado su mano derecha, de %1 de largo: es demasiado corta para ambos puntos, así que el talón de la palma se queda sobre el trocánter y el dedo índice señala la espina.</translation>
    </message>
</context>
<context>
    <name>fb::WhyWords</name>
    <message>
        <source>Why not the dorsogluteal site</source>
        <extracomment>The old injection site in the buttock.</extracomment>
        <translation>Por qué no la zona dorsoglútea</translation>
    </message>
    <message>
        <source>Why not the rectus femoris</source>
        <translation>Por qué no el recto femoral</translation>
    </message>
    <message>
        <source>Why not farther back</source>
        <translation>Por qué no más atrás</translation>
    </message>
    <message>
        <source>The upper outer quadrant is easily misjudged: it belongs to the whole buttock, up to the iliac crest and out to the trochanter, not to its rounded part, and a needle set too low or too far in comes near the sciatic nerve. Even well placed it can meet the superior gluteal nerve and artery; in one study of dissected buttocks most punctures there did. Fat is often thick here, so that many doses do not reach muscle. Injuries of the sciatic nerve are still reported, and books keep the site for when no other can be used.</source>
        <extracomment>Upper outer quadrant: a quarter of the buttock, as older books teach the dorsogluteal site.</extracomment>
        <translation>El cuadrante superoexterno se calcula mal con facilidad: es el de toda la nalga, hasta la cresta ilíaca por arriba y hasta el trocánter por fuera, no el de su parte redondeada, y una aguja puesta demasiado abajo o demasiado adentro se acerca al nervio ciático. Incluso bien colocada puede alcanzar el nervio y la arteria glúteos superiores; en un estudio de nalgas disecadas así ocurrió en la mayoría de las punciones. Aquí la grasa suele ser gruesa, de modo que muchas dosis no llegan al músculo. Todavía se comunican lesiones del nervio ciático, y los libros reservan la zona para cuando no se puede usar ninguna otra.</translation>
    </message>
    <message>
        <source>The muscle down the front of the thigh is easy to reach, but branches of the lateral circumflex femoral artery and the nerve to the vastus lateralis run under its middle, and an injection here is commonly said to hurt more. Farther in lie the femoral vessels and nerve. Books keep it for when no other site can be used; the outer side of the same thigh is clear of large vessels and nerves.</source>
        <extracomment>The rectus femoris is the muscle down the middle of the front of the thigh.</extracomment>
        <translation>El músculo que baja por la cara anterior del muslo es fácil de alcanzar, pero bajo su parte media pasan ramas de la arteria circunfleja femoral lateral y el nervio del vasto lateral, y suele decirse que aquí la inyección duele más. Más adentro están los vasos y el nervio femorales. Los libros lo reservan para cuando no se puede usar ninguna otra zona; la cara externa del mismo muslo está libre de vasos y nervios grandes.</translation>
    </message>
    <message>
        <source>Behind the outer line of the thigh the vastus lateralis thins and the hamstrings begin; the sciatic nerve runs deep to them. Toward hip and knee there is tendon and joint instead of thick muscle.</source>
        <translation>Por detrás de la línea externa del muslo el vasto lateral se adelgaza y empiezan los isquiotibiales; el nervio ciático pasa por debajo de ellos. Hacia la cadera y la rodilla hay tendón y articulación en lugar de músculo grueso.</translation>
    </message>
</context>
<context>
    <name>fb::WithoutDisplay</name>
    <message>
        <source>The plate is drawn in %1
</source>
        <translation>La lámina está dibujada en %1
</translation>
    </message>
    <message>
        <source>There is no display, so here is one whole request without a window.
(fingerbreadth --help shows the command line.)

</source>
        <translation>No hay pantalla, así que esta es una solicitud completa sin ventana.
(fingerbreadth --help muestra la línea de órdenes.)

</translation>
    </message>
</context>
</TS>
