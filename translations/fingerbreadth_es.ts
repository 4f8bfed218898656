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
    <message>
        <source>The records of check-offs cannot be saved in %1; check that you may write there and that there is room.</source>
        <translation>Los registros de las evaluaciones no se pueden guardar en %1; compruebe que puede escribir ahí y que queda espacio.</translation>
    </message>
    <message>
        <source>The records %1 were written by a newer version of this program and were left untouched; use that version to read them.</source>
        <translation>Los registros %1 los escribió una versión más nueva de este programa y no se han tocado; use esa versión para leerlos.</translation>
    </message>
    <message>
        <source>There is no room left to save in %1; free some space, then try again.</source>
        <translation>No queda espacio para guardar en %1; libere espacio y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>%1 is in use by another program; close it there, then try again.</source>
        <translation>Otro programa está usando %1; ciérrelo allí y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>%1 may only be read; allow yourself to write it, then try again.</source>
        <translation>%1 es de solo lectura; dese permiso para escribirlo y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>The log in %1 was changed after it was written, at entry %2; restore the last backup and keep this file for whoever looks into it.</source>
        <translation>La bitácora de %1 se cambió después de escrita, en la entrada %2; recupere la última copia de seguridad y guarde este archivo para quien lo examine.</translation>
    </message>
    <message>
        <source>The backup %1 could not be made; choose a folder you may write, with enough room.</source>
        <translation>No se pudo hacer la copia de seguridad %1; elija una carpeta en la que pueda escribir y con espacio suficiente.</translation>
    </message>
    <message>
        <source>%1 holds no records of this program; choose the records file or a backup of it.</source>
        <translation>%1 no contiene registros de este programa; elija el archivo de registros o una copia de seguridad suya.</translation>
    </message>
    <message>
        <source>%1 cannot be read; check its name and that you may read it.</source>
        <translation>%1 no se puede leer; compruebe el nombre y que tiene permiso para leerlo.</translation>
    </message>
    <message>
        <source>Line %2 of %1 is not UTF-8 text; save the file as “CSV UTF-8” and choose it again.</source>
        <translation>La línea %2 de %1 no es texto UTF-8; guarde el archivo como «CSV UTF-8» y vuelva a elegirlo.</translation>
    </message>
    <message>
        <source>Line %2 of %1 opens a quotation mark and does not close it; mend that line and choose the file again.</source>
        <translation>La línea %2 de %1 abre una marca de comillas y no la cierra; corrija esa línea y vuelva a elegir el archivo.</translation>
    </message>
    <message>
        <source>%1 has no column for “%2”; name it in the first line or point out the column by hand.</source>
        <translation>%1 no tiene columna para «%2»; nómbrela en la primera línea o señale la columna a mano.</translation>
    </message>
    <message>
        <source>%1 names no students; the first line names the columns, each further line a student.</source>
        <translation>%1 no nombra estudiantes; la primera línea nombra las columnas y cada línea siguiente, un estudiante.</translation>
    </message>
    <message>
        <source>%1 has more than %2 lines; split it by course or section.</source>
        <translation>%1 tiene más de %2 líneas; divídalo por curso o por grupo.</translation>
    </message>
    <message>
        <source>Line %2 of %1 has no student id; give every student an id of their own.</source>
        <translation>La línea %2 de %1 no tiene identificador de estudiante; dé a cada estudiante un identificador propio.</translation>
    </message>
    <message>
        <source>The id %2 stands more than once in %1; give every student an id of their own.</source>
        <translation>El identificador %2 aparece más de una vez en %1; dé a cada estudiante un identificador propio.</translation>
    </message>
    <message>
        <source>The sheet cannot be read at %1; choose a sheet this program wrote, or mend it there.</source>
        <translation>La ficha no se puede leer en %1; elija una ficha escrita por este programa o corríjala ahí.</translation>
    </message>
    <message>
        <source>The sheet names “%1”, which means nothing here; remove it or correct its spelling.</source>
        <translation>La ficha nombra «%1», que aquí no significa nada; quítelo o corrija la ortografía.</translation>
    </message>
    <message>
        <source>The sheet does not say “%1”; add it.</source>
        <translation>La ficha no dice «%1»; añádalo.</translation>
    </message>
    <message>
        <source>“%2” is no value for “%1” in the sheet; see the sample sheet for what it may be.</source>
        <translation>«%2» no es un valor para «%1» en la ficha; vea en la ficha de muestra qué puede ser.</translation>
    </message>
    <message>
        <source>“%1” in the sheet is %2; it must lie between %3 and %4.</source>
        <translation>«%1» vale %2 en la ficha; debe estar entre %3 y %4.</translation>
    </message>
    <message>
        <source>The sheet asks for nothing; add at least one item.</source>
        <translation>La ficha no pide nada; añada al menos un ejercicio.</translation>
    </message>
    <message>
        <source>A kept answer cannot be read at “%1”; restore the last backup.</source>
        <translation>Una respuesta guardada no se puede leer en «%1»; recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>A kept step of a check-off cannot be read at “%1”; restore the last backup.</source>
        <translation>Un paso guardado de una evaluación no se puede leer en «%1»; recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>That does not fit the present step of the check-off; finish this step first.</source>
        <translation>Eso no corresponde al paso actual de la evaluación; termine antes este paso.</translation>
    </message>
    <message>
        <source>No reason is given; write one in a few words.</source>
        <translation>No se ha dado ningún motivo; escriba uno en pocas palabras.</translation>
    </message>
    <message>
        <source>Steps still without a word: %1; say of each whether it was done, prompted or not done.</source>
        <translation>Pasos aún sin valorar: %1; diga de cada uno si se hizo, se hizo con indicación o no se hizo.</translation>
    </message>
    <message>
        <source>The overall rating is missing; choose 1 to 5.</source>
        <translation>Falta la valoración global; elija de 1 a 5.</translation>
    </message>
    <message>
        <source>The next attempt may be made from %1 on; choose another student today.</source>
        <translation>El próximo intento puede hacerse a partir del %1; elija hoy a otro estudiante.</translation>
    </message>
    <message>
        <source>The practice agreed on after the last attempt is not signed yet; sign it first.</source>
        <translation>La práctica acordada tras el último intento aún no está firmada; fírmela antes.</translation>
    </message>
    <message>
        <source>No attempt is left on this sheet; the course&apos;s own rules say what comes now.</source>
        <translation>No queda ningún intento en esta ficha; las normas del curso dicen qué viene ahora.</translation>
    </message>
    <message>
        <source>The last attempt needs a second assessor; let a second one enter their PIN.</source>
        <translation>El último intento necesita una segunda persona evaluadora; pídale que introduzca su PIN.</translation>
    </message>
    <message>
        <source>Both assessors are the same person; let another assessor enter their PIN.</source>
        <translation>Las dos personas evaluadoras son la misma; pida a otra que introduzca su PIN.</translation>
    </message>
    <message>
        <source>The check-off of %1 is still open; go on with it or void it first.</source>
        <translation>La evaluación de %1 sigue abierta; continúela o anúlela antes.</translation>
    </message>
    <message>
        <source>No student has the id %1; choose one from the list.</source>
        <translation>Ningún estudiante tiene el identificador %1; elija uno de la lista.</translation>
    </message>
    <message>
        <source>Nobody is chosen; choose the assessor from the list.</source>
        <translation>No se ha elegido a nadie; elija en la lista a la persona evaluadora.</translation>
    </message>
    <message>
        <source>The name is missing; write it.</source>
        <translation>Falta el nombre; escríbalo.</translation>
    </message>
    <message>
        <source>The PIN is too short; use at least %1 digits or letters.</source>
        <translation>El PIN es demasiado corto; use al menos %1 cifras o letras.</translation>
    </message>
    <message>
        <source>That PIN is among the first anybody would try; choose another.</source>
        <translation>Ese PIN es de los primeros que probaría cualquiera; elija otro.</translation>
    </message>
    <message>
        <source>The two PINs differ; type the same one twice.</source>
        <translation>Los dos PIN no coinciden; escriba dos veces el mismo.</translation>
    </message>
    <message>
        <source>That PIN is not right; try again.</source>
        <translation>Ese PIN no es correcto; vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>Too many wrong PINs; wait %1 s, then try again.</source>
        <translation>Demasiados PIN incorrectos; espere %1 s y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>No printer is set up on this machine; save the sheet as PDF instead.</source>
        <translation>Este equipo no tiene impresora; guarde la hoja como PDF.</translation>
    </message>
    <message>
        <source>The backup %1 is damaged and cannot be used; choose another one.</source>
        <translation>La copia de seguridad %1 está dañada y no se puede usar; elija otra.</translation>
    </message>
    <message>
        <source>The records %1 are damaged and cannot be read; close the program and start it again: it puts them aside and offers the last backup.</source>
        <translation>Los registros %1 están dañados y no se pueden leer; cierre el programa y vuelva a abrirlo: los aparta y ofrece la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The records %1 are damaged and were put aside as %2; empty ones were begun, and nothing was deleted.</source>
        <translation>Los registros %1 están dañados y se han apartado como %2; se empezaron otros vacíos y no se borró nada.</translation>
    </message>
    <message>
        <source>The backup %1 could not be put back, and nothing was changed; make room where the records lie, close other programs that read them, then try again.</source>
        <translation>La copia de seguridad %1 no se pudo recuperar y no se cambió nada; haga sitio donde están los registros, cierre otros programas que los lean e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The PIN of %1 is not right; try again.</source>
        <translation>El PIN de %1 no es correcto; inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Too many wrong PINs of %1; wait %2 s, then try again.</source>
        <translation>Demasiados PIN incorrectos de %1; espere %2 s e inténtelo de nuevo.</translation>
    </message>
</context>
<context>
    <name>RecordsLook</name>
    <message>
        <source>%1 %</source>
        <extracomment>A share in percent.</extracomment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>A name in a list sorted by family names: %1 family name, %2 given name.</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <extracomment>Two assessors who signed together.</extracomment>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1 (invented)</source>
        <extracomment>%1 is the title of a sheet of the sample data.</extracomment>
        <translation>%1 (inventado)</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>sin intentar</translation>
    </message>
    <message>
        <source>check-off open</source>
        <translation>evaluación abierta</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superada</translation>
    </message>
    <message>
        <source>practice to be signed</source>
        <translation>práctica por firmar</translation>
    </message>
    <message>
        <source>waiting for the day</source>
        <translation>esperando la fecha</translation>
    </message>
    <message>
        <source>may try again</source>
        <translation>puede volver a intentarlo</translation>
    </message>
    <message>
        <source>no attempt left</source>
        <translation>sin más intentos</translation>
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
    <name>fb::AnswerTable</name>
    <message>
        <source>%1, %2</source>
        <extracomment>A site and its side: &quot;Deltoid, left&quot;.</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Sites</source>
        <extracomment>The places that were asked for and marked.</extracomment>
        <translation>Zonas</translation>
    </message>
</context>
<context>
    <name>fb::AreaBar</name>
    <message>
        <source>Practice</source>
        <translation>Práctica</translation>
    </message>
    <message>
        <source>Check-off</source>
        <extracomment>The assessment in which a skill is signed off.</extracomment>
        <translation>Evaluación</translation>
    </message>
    <message>
        <source>Records</source>
        <extracomment>Of check-offs.</extracomment>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Demonstrate</source>
        <extracomment>What an instructor does before a class.</extracomment>
        <translation>Demostrar</translation>
    </message>
</context>
<context>
    <name>fb::AssessorForm</name>
    <message>
        <source>Name of the assessor</source>
        <translation>Nombre de la persona evaluadora</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>The same PIN again</source>
        <translation>El mismo PIN otra vez</translation>
    </message>
    <message>
        <source>At least %1 digits or letters; the name stands on every sheet that is signed.</source>
        <translation>Al menos %1 cifras o letras; el nombre aparece en cada hoja firmada.</translation>
    </message>
</context>
<context>
    <name>fb::AssessorsPage</name>
    <message>
        <source>Assessors</source>
        <translation>Personas evaluadoras</translation>
    </message>
    <message>
        <source>Enrol another assessor</source>
        <translation>Dar de alta a otra persona evaluadora</translation>
    </message>
    <message>
        <source>Whoever is enrolled can sign check-offs and open these records.</source>
        <translation>Quien está dado de alta puede firmar evaluaciones y abrir estos registros.</translation>
    </message>
    <message>
        <source>Enrol</source>
        <translation>Dar de alta</translation>
    </message>
</context>
<context>
    <name>fb::AudiencePanel</name>
    <message>
        <source>The audience sees nothing yet.</source>
        <translation>El público aún no ve nada.</translation>
    </message>
    <message>
        <source>The audience sees the picture on the other screen.</source>
        <translation>El público ve la imagen en la otra pantalla.</translation>
    </message>
    <message>
        <source>The audience sees the picture over this window; F6 comes back here.</source>
        <translation>El público ve la imagen sobre esta ventana; con F6 se vuelve aquí.</translation>
    </message>
    <message>
        <source>One screen: F6 shows the picture over this window.</source>
        <translation>Una sola pantalla: F6 muestra la imagen sobre esta ventana.</translation>
    </message>
    <message>
        <source>Open audience window</source>
        <translation>Abrir ventana del público</translation>
    </message>
    <message>
        <source>Close the audience window</source>
        <translation>Cerrar la ventana del público</translation>
    </message>
    <message>
        <source>Swap</source>
        <extracomment>Exchanges what is on which screen.</extracomment>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Swap the screens (F6)</source>
        <translation>Intercambiar las pantallas (F6)</translation>
    </message>
    <message>
        <source>Blank</source>
        <extracomment>A button that stays down: the audience sees an empty picture meanwhile.</extracomment>
        <translation>En blanco</translation>
    </message>
    <message>
        <source>Blank the picture (B)</source>
        <translation>Dejar la imagen en blanco (B)</translation>
    </message>
    <message>
        <source>The picture is blank; B brings it back.</source>
        <translation>La imagen está en blanco; B la devuelve.</translation>
    </message>
    <message>
        <source>Close window</source>
        <translation>Cerrar ventana</translation>
    </message>
</context>
<context>
    <name>fb::AudienceWindow</name>
    <message>
        <source>Fingerbreadth: the audience&apos;s picture</source>
        <translation>Fingerbreadth: la imagen del público</translation>
    </message>
</context>
<context>
    <name>fb::BackupCommand</name>
    <message>
        <source>The backup is made and verified:
</source>
        <translation>La copia de seguridad está hecha y verificada:
</translation>
    </message>
</context>
<context>
    <name>fb::BackupWords</name>
    <message>
        <source>%1 at %2</source>
        <extracomment>A moment: %1 is a day such as &quot;Sunday, November 29, 2026&quot;, %2 a time of day.</extracomment>
        <translation>%1 a las %2</translation>
    </message>
    <message numerus="yes">
        <source>%Ln student(s)</source>
        <translation>
            <numerusform>%Ln estudiante</numerusform>
            <numerusform>%Ln estudiantes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln signed check-off(s)</source>
        <translation>
            <numerusform>%Ln evaluación firmada</numerusform>
            <numerusform>%Ln evaluaciones firmadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Its last entry was made on %1. It holds %2 and %3. What came after that is not in it.</source>
        <extracomment>%1 is a moment, %2 and %3 are counts such as &quot;15 students&quot; and &quot;9 signed check-offs&quot;.</extracomment>
        <translation>Su última entrada se hizo el %1. Contiene %2 y %3. Lo que vino después no está en ella.</translation>
    </message>
    <message>
        <source>The backup was put back, up to its last entry on %1. The file that stood here before is kept whole: %2</source>
        <extracomment>%1 is a moment, %2 a file.</extracomment>
        <translation>Se recuperó la copia de seguridad, hasta su última entrada del %1. El archivo que había antes se conserva completo: %2</translation>
    </message>
</context>
<context>
    <name>fb::BoardModel</name>
    <message>
        <source>Student</source>
        <translation>Estudiante</translation>
    </message>
    <message>
        <source>Section</source>
        <extracomment>A class or group of a course.</extracomment>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Standing</source>
        <extracomment>Where a student stands on a sheet: passed, may try again ...</extracomment>
        <translation>Situación</translation>
    </message>
    <message>
        <source>Last outcome</source>
        <translation>Último resultado</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Number</source>
        <extracomment>The school&apos;s own number or code of a student.</extracomment>
        <translation>Número</translation>
    </message>
</context>
<context>
    <name>fb::BoardView</name>
    <message>
        <source>Sheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Sheet of the board</source>
        <translation>Ficha del tablero</translation>
    </message>
    <message>
        <source>Narrow the list by standing</source>
        <translation>Acotar la lista por situación</translation>
    </message>
    <message>
        <source>Students and where they stand; Enter opens a history</source>
        <translation>Estudiantes y su situación; Intro abre el historial</translation>
    </message>
    <message>
        <source>Every standing</source>
        <extracomment>A filter that leaves every student in the list.</extracomment>
        <translation>Cualquier situación</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>How often an outcome was come to: %1 number, %2 outcome.</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No check-off is signed on this sheet yet.</source>
        <extracomment>%1 is a list such as &quot;12 passed, 3 not passed: time&quot;.</extracomment>
        <translation>Todavía no hay ninguna evaluación firmada con esta ficha.</translation>
    </message>
    <message>
        <source>Signed check-offs on this sheet: %1.</source>
        <translation>Evaluaciones firmadas con esta ficha: %1.</translation>
    </message>
    <message>
        <source>No students yet</source>
        <translation>Todavía no hay estudiantes</translation>
    </message>
    <message>
        <source>Name, number or section</source>
        <translation>Nombre, número o grupo</translation>
    </message>
    <message>
        <source>Narrow the list by name, number or section</source>
        <translation>Acotar la lista por nombre, número o grupo</translation>
    </message>
    <message>
        <source>A click on a student, or Enter, opens the student’s history.</source>
        <translation>Un clic en un estudiante, o Intro, abre su historial.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %Ln student(s)</source>
        <translation>
            <numerusform>%1 de %Ln estudiante</numerusform>
            <numerusform>%1 de %Ln estudiantes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::BodyPanel</name>
    <message>
        <source>Age</source>
        <extracomment>The age of a patient.</extracomment>
        <translation>Edad</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 años</translation>
    </message>
    <message>
        <source>Stature</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>Glide to this build: %1</source>
        <extracomment>%1 is a build: lean, average, heavy.</extracomment>
        <translation>Pasar poco a poco a esta complexión: %1</translation>
    </message>
    <message>
        <source>Convention</source>
        <extracomment>Which published way the site is found by.</extracomment>
        <translation>Método</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Skin tone</source>
        <translation>Tono de piel</translation>
    </message>
    <message>
        <source>%1, lightest</source>
        <translation>%1, el más claro</translation>
    </message>
    <message>
        <source>%1, darkest</source>
        <translation>%1, el más oscuro</translation>
    </message>
</context>
<context>
    <name>fb::BreachList</name>
    <message>
        <source>Unsafe: %1</source>
        <extracomment>An order of steps whose breach endangers somebody; %1 is the sentence.</extracomment>
        <translation>Inseguro: %1</translation>
    </message>
    <message>
        <source>The order was kept.</source>
        <extracomment>No order of steps was broken.</extracomment>
        <translation>Se respetó el orden.</translation>
    </message>
    <message>
        <source>Order kept so far.</source>
        <translation>Hasta ahora se ha respetado el orden.</translation>
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
    <name>fb::ByHandPlate</name>
    <message>
        <source>Your flag: %1</source>
        <extracomment>Beside a flag that does not stand on its landmark; %1 is the landmark&apos;s name.</extracomment>
        <translation>Su bandera: %1</translation>
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
    <name>fb::CheckOffBody</name>
    <message>
        <source>No item was answered.</source>
        <translation>No se respondió ningún ejercicio.</translation>
    </message>
    <message>
        <source>%1. %2, %3</source>
        <extracomment>An item of a check-off: %1 its number, %2 site, %3 side of the body.</extracomment>
        <translation>%1. %2, %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>What became of an item: %1 the verdict, %2 how far off it lay or what was done instead.</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Show answer %1 on the plate</source>
        <translation>Mostrar la respuesta %1 en la lámina</translation>
    </message>
    <message>
        <source>Order that was broken</source>
        <translation>Orden que no se respetó</translation>
    </message>
    <message>
        <source>On the manikin</source>
        <translation>En el maniquí</translation>
    </message>
    <message>
        <source>%1 (critical)</source>
        <extracomment>%1 a step; it must be done to pass.</extracomment>
        <translation>%1 (crítico)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>How a step was seen, and when: &quot;done, 1:07&quot;.</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Sites</source>
        <extracomment>The places that were asked for and marked.</extracomment>
        <translation>Zonas</translation>
    </message>
</context>
<context>
    <name>fb::CheckOffHead</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>A time that was used, of the time that was allowed.</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>What to practise</source>
        <translation>Qué practicar</translation>
    </message>
    <message>
        <source>Score %1, needed %2.</source>
        <extracomment>%1 the score, %2 the score that is needed.</extracomment>
        <translation>Puntuación %1, se pedía %2.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation>Intento</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Time at the screen</source>
        <translation>Tiempo en pantalla</translation>
    </message>
    <message>
        <source>Time at the manikin</source>
        <translation>Tiempo en el maniquí</translation>
    </message>
    <message>
        <source>Needle held</source>
        <extracomment>How long the needle stayed after injecting, and how long it should: seconds.</extracomment>
        <translation>Aguja mantenida</translation>
    </message>
    <message>
        <source>%1 s, asked: %2 s</source>
        <translation>%1 s, se pedían: %2 s</translation>
    </message>
    <message>
        <source>Overall rating</source>
        <translation>Valoración global</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
    <message>
        <source>Log</source>
        <extracomment>The first digits of the log&apos;s last hash when this was signed; they stand on the printed sheet.</extracomment>
        <translation>Bitácora</translation>
    </message>
</context>
<context>
    <name>fb::CheckOffPresenter</name>
    <message>
        <source>Wrong student chosen</source>
        <translation>Se eligió al estudiante equivocado</translation>
    </message>
</context>
<context>
    <name>fb::CheckOffView</name>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Print the feedback sheet again</source>
        <translation>Volver a imprimir la hoja de resultados</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>Save the feedback sheet as PDF again</source>
        <translation>Volver a guardar la hoja de resultados como PDF</translation>
    </message>
    <message>
        <source>The sheet is being made.</source>
        <translation>La hoja se está preparando.</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
    <message>
        <source>%1 attempt %2</source>
        <extracomment>A file&apos;s name: %1 family name, %2 number of the attempt.</extracomment>
        <translation>%1 intento %2</translation>
    </message>
</context>
<context>
    <name>fb::CheckOffWords</name>
    <message>
        <source>Patient not assessed before the needle went in: an injection that may not be safe for this patient.</source>
        <translation>No se valoró al paciente antes de introducir la aguja: una inyección que puede no ser segura para él.</translation>
    </message>
    <message>
        <source>Drug not checked before the needle went in: wrong drug, wrong dose or out of date.</source>
        <translation>No se comprobó el fármaco antes de introducir la aguja: fármaco o dosis equivocados, o caducado.</translation>
    </message>
    <message>
        <source>Patient not identified before the needle went in: wrong patient.</source>
        <translation>No se identificó al paciente antes de introducir la aguja: paciente equivocado.</translation>
    </message>
    <message>
        <source>Allergies not asked about before the needle went in: an allergic reaction that could have been foreseen.</source>
        <translation>No se preguntó por alergias antes de introducir la aguja: una reacción alérgica que podía preverse.</translation>
    </message>
    <message>
        <source>Label not checked at the bedside before the needle went in: the last chance to notice a wrong drug or dose.</source>
        <translation>No se cotejó la etiqueta junto al paciente antes de introducir la aguja: la última ocasión de notar un fármaco o una dosis equivocados.</translation>
    </message>
    <message>
        <source>Hands not cleaned before the needle went in: infection carried by the hands.</source>
        <translation>No se hizo higiene de manos antes de introducir la aguja: infección llevada por las manos.</translation>
    </message>
    <message>
        <source>Dose not drawn up before the needle went in: a puncture that gives nothing.</source>
        <translation>No se cargó la dosis antes de introducir la aguja: un pinchazo que no administra nada.</translation>
    </message>
    <message>
        <source>Landmarks not felt before the needle went in: bone, nerve or vessel may be hit.</source>
        <translation>No se palparon los puntos de referencia antes de introducir la aguja: puede alcanzarse hueso, nervio o vaso.</translation>
    </message>
    <message>
        <source>Skin not cleaned before the needle went in: infection carried in from the skin.</source>
        <translation>No se limpió la piel antes de introducir la aguja: infección arrastrada desde la piel.</translation>
    </message>
    <message>
        <source>Skin not drawn aside before the needle went in: the drug can leak back along the needle&apos;s track.</source>
        <translation>No se desplazó la piel antes de introducir la aguja: el fármaco puede refluir por el trayecto de la aguja.</translation>
    </message>
    <message>
        <source>Filter needle not changed before the needle went in: what the filter held back is injected.</source>
        <translation>No se cambió la aguja con filtro antes de introducir la aguja: se inyecta lo que el filtro retuvo.</translation>
    </message>
    <message>
        <source>Stopper not wiped before drawing up: germs carried into the dose.</source>
        <translation>No se limpió el tapón antes de cargar: gérmenes que pasan a la dosis.</translation>
    </message>
    <message>
        <source>Site not chosen before its landmarks were felt: injured skin or a site ruled out may be used.</source>
        <translation>No se eligió la zona antes de palpar sus puntos de referencia: puede usarse piel lesionada o una zona descartada.</translation>
    </message>
    <message>
        <source>Needle changed before drawing up through the filter: what the filter should hold back is injected.</source>
        <translation>Se cambió la aguja antes de cargar a través del filtro: se inyecta lo que el filtro debía retener.</translation>
    </message>
    <message>
        <source>Plunger pushed before the needle was in: a dose that did not reach the muscle.</source>
        <translation>Se empujó el émbolo antes de que la aguja estuviera dentro: una dosis que no llegó al músculo.</translation>
    </message>
    <message>
        <source>Needle withdrawn before injecting: a dose that was not given.</source>
        <translation>Se retiró la aguja antes de inyectar: una dosis que no se administró.</translation>
    </message>
    <message>
        <source>Skin let go before the needle was out: torn tissue, and the drug can leak back along the track.</source>
        <translation>Se soltó la piel antes de sacar la aguja: tejido desgarrado y fármaco que puede refluir por el trayecto.</translation>
    </message>
    <message>
        <source>Documented before giving: a record of something that was not given.</source>
        <translation>Se registró antes de administrar: constancia de algo que no se administró.</translation>
    </message>
    <message>
        <source>Used needle recapped: a needlestick, and infection carried by blood.</source>
        <translation>Aguja usada reencapuchada: pinchazo accidental e infección transmitida por la sangre.</translation>
    </message>
    <message>
        <source>Used needle not put into the sharps container: a needlestick for whoever comes next.</source>
        <translation>La aguja usada no se desechó en el contenedor de cortopunzantes: pinchazo accidental para quien venga después.</translation>
    </message>
    <message>
        <source>Hands not cleaned before drawing up.</source>
        <translation>No se hizo higiene de manos antes de cargar.</translation>
    </message>
    <message>
        <source>Stopper left to dry without having been wiped first.</source>
        <translation>Se dejó secar el tapón sin haberlo limpiado antes.</translation>
    </message>
    <message>
        <source>Drawn up before the stopper had dried.</source>
        <translation>Se cargó antes de que se secara el tapón.</translation>
    </message>
    <message>
        <source>Needle changed before drawing up, not after.</source>
        <translation>Se cambió la aguja antes de cargar y no después.</translation>
    </message>
    <message>
        <source>Second label check made before anything was drawn up.</source>
        <translation>La segunda comprobación de la etiqueta se hizo antes de cargar nada.</translation>
    </message>
    <message>
        <source>Label not checked a second time once the dose was drawn up.</source>
        <translation>No se cotejó la etiqueta por segunda vez una vez cargada la dosis.</translation>
    </message>
    <message>
        <source>Needle not changed between stopper and skin.</source>
        <translation>No se cambió la aguja entre el tapón y la piel.</translation>
    </message>
    <message>
        <source>Gloves not on when the needle went in.</source>
        <translation>Sin guantes al introducir la aguja.</translation>
    </message>
    <message>
        <source>Landmarks felt before the site was bared and relaxed.</source>
        <translation>Se palparon los puntos de referencia antes de descubrir y relajar la zona.</translation>
    </message>
    <message>
        <source>Skin cleaned before the landmarks were felt, so that it was touched again.</source>
        <translation>Se limpió la piel antes de palpar los puntos de referencia, y así volvió a tocarse.</translation>
    </message>
    <message>
        <source>Skin left to dry without having been cleaned first.</source>
        <translation>Se dejó secar la piel sin haberla limpiado antes.</translation>
    </message>
    <message>
        <source>Cap taken off before the skin had dried.</source>
        <translation>Se quitó el capuchón antes de que se secara la piel.</translation>
    </message>
    <message>
        <source>Patient not told, and cap not off, before the needle went in.</source>
        <translation>No se avisó al paciente ni se quitó el capuchón antes de introducir la aguja.</translation>
    </message>
    <message>
        <source>Aspirated before the needle was in.</source>
        <translation>Se aspiró antes de que la aguja estuviera dentro.</translation>
    </message>
    <message>
        <source>Injected without having aspirated, as the protocol asks.</source>
        <translation>Se inyectó sin haber aspirado, como pide el protocolo.</translation>
    </message>
    <message>
        <source>Waited before injecting, not after.</source>
        <translation>Se esperó antes de inyectar y no después.</translation>
    </message>
    <message>
        <source>Needle withdrawn without waiting after the injection.</source>
        <translation>Se retiró la aguja sin esperar después de la inyección.</translation>
    </message>
    <message>
        <source>Site pressed on before the needle was out.</source>
        <translation>Se presionó la zona antes de sacar la aguja.</translation>
    </message>
    <message>
        <source>Gloves taken off before the needle was in the sharps container.</source>
        <translation>Se quitaron los guantes antes de que la aguja estuviera en el contenedor de cortopunzantes.</translation>
    </message>
    <message>
        <source>Hands cleaned before the gloves were off, not after.</source>
        <translation>La higiene de manos se hizo antes de quitarse los guantes y no después.</translation>
    </message>
    <message>
        <source>Response evaluated before the injection was given.</source>
        <translation>Se valoró la respuesta antes de poner la inyección.</translation>
    </message>
    <message numerus="yes">
        <source>Needle kept in for %1 s after injecting, not for %n second(s).</source>
        <extracomment>%1 is the time that was kept, %n the time asked for.</extracomment>
        <translation>
            <numerusform>La aguja se mantuvo dentro %1 s después de inyectar y no %n segundo.</numerusform>
            <numerusform>La aguja se mantuvo dentro %1 s después de inyectar y no %n segundos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopper left to dry for %1 s, not for %n second(s).</source>
        <translation>
            <numerusform>El tapón se dejó secar %1 s y no %n segundo.</numerusform>
            <numerusform>El tapón se dejó secar %1 s y no %n segundos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Skin left to dry for %1 s, not for %n second(s).</source>
        <translation>
            <numerusform>La piel se dejó secar %1 s y no %n segundo.</numerusform>
            <numerusform>La piel se dejó secar %1 s y no %n segundos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Between “%1” and “%2” lay %3 s, not %n second(s).</source>
        <extracomment>%1 and %2 are steps, %3 the time between them.</extracomment>
        <translation>
            <numerusform>Entre «%1» y «%2» pasaron %3 s y no %n segundo.</numerusform>
            <numerusform>Entre «%1» y «%2» pasaron %3 s y no %n segundos.</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” was not seen before “%2”.</source>
        <translation>No se vio «%1» antes de «%2».</translation>
    </message>
    <message>
        <source>void, technical</source>
        <extracomment>How a check-off ended, in a few words.</extracomment>
        <translation>anulada por causa técnica</translation>
    </message>
    <message>
        <source>did not come</source>
        <translation>no se presentó</translation>
    </message>
    <message>
        <source>not passed: stopped for safety</source>
        <translation>no superada: detenida por seguridad</translation>
    </message>
    <message>
        <source>not passed: a critical point</source>
        <extracomment>A critical step, an unsafe order or an unsafe mark.</extracomment>
        <translation>no superada: un punto crítico</translation>
    </message>
    <message>
        <source>not passed: time</source>
        <translation>no superada: tiempo</translation>
    </message>
    <message>
        <source>not passed: score</source>
        <translation>no superada: puntuación</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>superada</translation>
    </message>
    <message>
        <source>This check-off is void for a technical reason and uses up no attempt.</source>
        <translation>Esta evaluación queda anulada por una causa técnica y no gasta ningún intento.</translation>
    </message>
    <message>
        <source>The student did not come to this check-off.</source>
        <translation>No hubo estudiante en esta evaluación: no se presentó.</translation>
    </message>
    <message>
        <source>The assessor stopped this check-off before harm could be done.</source>
        <translation>La persona evaluadora detuvo esta evaluación antes de que pudiera haber daño.</translation>
    </message>
    <message>
        <source>Something that must never be missed was missed; no score makes up for it.</source>
        <translation>Faltó algo que no puede faltar nunca; ninguna puntuación lo compensa.</translation>
    </message>
    <message>
        <source>Everything else may be right, but the time was used up.</source>
        <translation>Puede que todo lo demás esté bien, pero se agotó el tiempo.</translation>
    </message>
    <message>
        <source>Nothing unsafe was seen, but the score does not reach the cut.</source>
        <translation>No se vio nada inseguro, pero la puntuación no llega al punto de corte.</translation>
    </message>
    <message>
        <source>Every critical step was done, no mark was unsafe, time was kept and the score reaches the cut.</source>
        <translation>Se hicieron todos los pasos críticos, ninguna marca fue insegura, se respetó el tiempo y la puntuación llega al punto de corte.</translation>
    </message>
    <message>
        <source>Critical step not done without help: “%1”.</source>
        <extracomment>%1 is a step of the assessor&apos;s sheet.</extracomment>
        <translation>Paso crítico no hecho sin ayuda: «%1».</translation>
    </message>
    <message>
        <source>The mark of item %1 is unsafe (%2).</source>
        <extracomment>%2 is what was asked: &quot;Deltoid, left, from the side; nothing drawn&quot;.</extracomment>
        <translation>La marca del ejercicio %1 es insegura (%2).</translation>
    </message>
    <message>
        <source>The time on screen was used up.</source>
        <translation>Se agotó el tiempo en pantalla.</translation>
    </message>
    <message>
        <source>The time on the manikin was used up.</source>
        <translation>Se agotó el tiempo en el maniquí.</translation>
    </message>
    <message>
        <source>Void for a technical reason.</source>
        <translation>Anulada por una causa técnica.</translation>
    </message>
    <message>
        <source>Void for a technical reason: %1</source>
        <extracomment>%1 is the assessor&apos;s own text.</extracomment>
        <translation>Anulada por una causa técnica: %1</translation>
    </message>
    <message>
        <source>The student did not come.</source>
        <translation>No se presentó nadie.</translation>
    </message>
    <message>
        <source>The student did not come: %1</source>
        <translation>No se presentó nadie: %1</translation>
    </message>
    <message>
        <source>Stopped by the assessor for safety.</source>
        <translation>Detenida por seguridad por la persona evaluadora.</translation>
    </message>
    <message>
        <source>Stopped by the assessor for safety: %1</source>
        <translation>Detenida por seguridad por la persona evaluadora: %1</translation>
    </message>
    <message>
        <source>The score of %1 does not reach the cut of %2.</source>
        <translation>La puntuación de %1 no llega al punto de corte de %2.</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <extracomment>A day and its month, as &quot;3 December&quot;: d is the day, MMMM the month&apos;s name.</extracomment>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>not tried</source>
        <extracomment>Where a student stands, in a list.</extracomment>
        <translation>sin intentar</translation>
    </message>
    <message>
        <source>open now</source>
        <translation>abierta ahora</translation>
    </message>
    <message>
        <source>practice to be signed</source>
        <extracomment>What was agreed to be practised is not signed yet.</extracomment>
        <translation>práctica por firmar</translation>
    </message>
    <message>
        <source>may try again from %1</source>
        <translation>nuevo intento a partir del %1</translation>
    </message>
    <message>
        <source>may try again later</source>
        <translation>nuevo intento más adelante</translation>
    </message>
    <message>
        <source>last attempt, second assessor needed</source>
        <translation>último intento, con segunda persona evaluadora</translation>
    </message>
    <message>
        <source>may try again</source>
        <translation>puede volver a intentarlo</translation>
    </message>
    <message>
        <source>no attempt left</source>
        <translation>sin más intentos</translation>
    </message>
    <message>
        <source>not yet safe</source>
        <extracomment>An assessor&apos;s overall impression, 1 to 5.</extracomment>
        <translation>aún no es segura</translation>
    </message>
    <message>
        <source>safe only with help</source>
        <translation>segura solo con ayuda</translation>
    </message>
    <message>
        <source>safe, still unsure</source>
        <translation>segura, aún con dudas</translation>
    </message>
    <message>
        <source>safe and sure</source>
        <translation>segura y con soltura</translation>
    </message>
    <message>
        <source>could show it to others</source>
        <translation>podría enseñarlo a otros</translation>
    </message>
    <message>
        <source>Deltoid, marked too high: feel for the acromion&apos;s lower edge and measure down from there before you mark.</source>
        <extracomment>What to practise, one sentence each.</extracomment>
        <translation>Deltoides, marca demasiado alta: palpe el borde inferior del acromion y mida hacia abajo desde ahí antes de marcar.</translation>
    </message>
    <message>
        <source>Deltoid, marked too low: keep well above the level of the armpit.</source>
        <translation>Deltoides, marca demasiado baja: quédese bien por encima de la altura de la axila.</translation>
    </message>
    <message>
        <source>Deltoid, marked too far forward: find the mid-lateral line with the arm at the side.</source>
        <translation>Deltoides, marca demasiado adelantada: busque la línea media lateral con el brazo junto al cuerpo.</translation>
    </message>
    <message>
        <source>Deltoid, marked too far back: find the mid-lateral line before you measure down.</source>
        <translation>Deltoides, marca demasiado atrás: busque la línea media lateral antes de medir hacia abajo.</translation>
    </message>
    <message>
        <source>Vastus lateralis, marked too high: divide the thigh from greater trochanter to knee and stay in the middle.</source>
        <translation>Vasto lateral, marca demasiado alta: divida el muslo desde el trocánter mayor hasta la rodilla y quédese en el medio.</translation>
    </message>
    <message>
        <source>Vastus lateralis, marked too low: feel for the knee and keep clear of its tendon.</source>
        <translation>Vasto lateral, marca demasiado baja: palpe la rodilla y aléjese de su tendón.</translation>
    </message>
    <message>
        <source>Vastus lateralis, marked too far forward: find the middle of the front of the thigh and stay outside it.</source>
        <translation>Vasto lateral, marca demasiado adelantada: busque el centro de la cara anterior del muslo y quédese por fuera.</translation>
    </message>
    <message>
        <source>Vastus lateralis, marked too far back: find the line down the outer side and stay in front of it.</source>
        <translation>Vasto lateral, marca demasiado atrás: busque la línea que baja por la cara externa y quédese por delante.</translation>
    </message>
    <message>
        <source>Ventrogluteal, marked too high: feel along the iliac crest and stay below it.</source>
        <translation>Zona ventroglútea, marca demasiado alta: palpe a lo largo de la cresta ilíaca y quédese por debajo.</translation>
    </message>
    <message>
        <source>Ventrogluteal, marked too low: lay the palm on the greater trochanter and mark between the fingers, not under the palm.</source>
        <translation>Zona ventroglútea, marca demasiado baja: ponga la palma sobre el trocánter mayor y marque entre los dedos, no bajo la palma.</translation>
    </message>
    <message>
        <source>Ventrogluteal, marked too far forward: rest a fingertip on the anterior superior iliac spine and mark behind it.</source>
        <translation>Zona ventroglútea, marca demasiado adelantada: apoye la yema de un dedo en la espina ilíaca anterosuperior y marque por detrás.</translation>
    </message>
    <message>
        <source>Ventrogluteal, marked too far back: open the fingers from the spine in front and stay between them, away from the buttock.</source>
        <translation>Zona ventroglútea, marca demasiado atrás: abra los dedos desde la espina de delante y quédese entre ellos, lejos de la nalga.</translation>
    </message>
    <message>
        <source>The chart: read it before you mark; it can rule a site out.</source>
        <translation>La historia clínica: léala antes de marcar; puede descartar una zona.</translation>
    </message>
    <message>
        <source>The chart: a finding rules out its own side and part of the body, and no other.</source>
        <translation>La historia clínica: un hallazgo descarta su lado y su parte del cuerpo, y ninguna otra.</translation>
    </message>
    <message numerus="yes">
        <source>Time: %n item(s) were not answered; practise with the clock in sight.</source>
        <translation>
            <numerusform>Tiempo: %n ejercicio quedó sin respuesta; practique con el reloj a la vista.</numerusform>
            <numerusform>Tiempo: %n ejercicios quedaron sin respuesta; practique con el reloj a la vista.</numerusform>
        </translation>
    </message>
    <message>
        <source>Order: first “%1”, then “%2”.</source>
        <extracomment>%1 and %2 are steps of the assessor&apos;s sheet.</extracomment>
        <translation>Orden: primero «%1», después «%2».</translation>
    </message>
    <message>
        <source>Order: after “%1” comes “%2”.</source>
        <translation>Orden: después de «%1» viene «%2».</translation>
    </message>
    <message>
        <source>Sharps: leave the cap off a used needle; safety device, then container.</source>
        <translation>Cortopunzantes: no vuelva a poner el capuchón a una aguja usada; dispositivo de seguridad y después contenedor.</translation>
    </message>
    <message numerus="yes">
        <source>Waiting: count %n second(s) with the needle in before you withdraw.</source>
        <translation>
            <numerusform>Espera: cuente %n segundo con la aguja dentro antes de retirarla.</numerusform>
            <numerusform>Espera: cuente %n segundos con la aguja dentro antes de retirarla.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Waiting: give what you wiped %n second(s) to dry.</source>
        <translation>
            <numerusform>Espera: deje secar %n segundo lo que ha limpiado.</numerusform>
            <numerusform>Espera: deje secar %n segundos lo que ha limpiado.</numerusform>
        </translation>
    </message>
    <message>
        <source>on the ideal point</source>
        <translation>en el punto ideal</translation>
    </message>
    <message>
        <source>%1, too low</source>
        <extracomment>%1 is the distance from the ideal point: &quot;1.8 cm too low&quot;.</extracomment>
        <translation>%1, demasiado abajo</translation>
    </message>
    <message>
        <source>%1, too high</source>
        <translation>%1, demasiado arriba</translation>
    </message>
    <message>
        <source>%1, too far forward</source>
        <translation>%1, demasiado adelante</translation>
    </message>
    <message>
        <source>%1, too far back</source>
        <translation>%1, demasiado atrás</translation>
    </message>
    <message>
        <source>%1, too far forward and too low</source>
        <translation>%1, demasiado adelante y abajo</translation>
    </message>
    <message>
        <source>%1, too far forward and too high</source>
        <translation>%1, demasiado adelante y arriba</translation>
    </message>
    <message>
        <source>%1, too far back and too low</source>
        <translation>%1, demasiado atrás y abajo</translation>
    </message>
    <message>
        <source>%1, too far back and too high</source>
        <translation>%1, demasiado atrás y arriba</translation>
    </message>
    <message>
        <source>no answer in time</source>
        <translation>sin respuesta a tiempo</translation>
    </message>
    <message>
        <source>not here, because of: %1</source>
        <extracomment>The student says that the site is not to be used; %1 is the reason given: &quot;Rash&quot;.</extracomment>
        <translation>aquí no, por: %1</translation>
    </message>
    <message>
        <source>Without a hint: “%1”.</source>
        <extracomment>%1 is a step of the assessor&apos;s sheet.</extracomment>
        <translation>Sin indicaciones: «%1».</translation>
    </message>
    <message>
        <source>adults of any build</source>
        <extracomment>Whose bodies a sheet draws.</extracomment>
        <translation>adultos de cualquier complexión</translation>
    </message>
    <message>
        <source>lean adults</source>
        <translation>adultos delgados</translation>
    </message>
    <message>
        <source>adults of average build</source>
        <translation>adultos de complexión media</translation>
    </message>
    <message>
        <source>heavy adults</source>
        <translation>adultos con obesidad</translation>
    </message>
    <message>
        <source>the same patients for every student</source>
        <translation>los mismos pacientes para todo el grupo</translation>
    </message>
    <message>
        <source>new patients for each attempt</source>
        <translation>pacientes nuevos en cada intento</translation>
    </message>
    <message>
        <source>Deltoid</source>
        <extracomment>The three sites, as the head of an item: &quot;Deltoid, left, from the side; nothing drawn&quot;.</extracomment>
        <translation>Deltoides</translation>
    </message>
    <message>
        <source>Vastus lateralis</source>
        <translation>Vasto lateral</translation>
    </message>
    <message>
        <source>Ventrogluteal</source>
        <translation>Zona ventroglútea</translation>
    </message>
    <message>
        <source>from the side</source>
        <extracomment>From where the patient is seen.</extracomment>
        <translation>de lado</translation>
    </message>
    <message>
        <source>three-quarter front</source>
        <translation>tres cuartos de frente</translation>
    </message>
    <message>
        <source>from behind</source>
        <translation>desde atrás</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>de frente</translation>
    </message>
    <message>
        <source>from the outer side</source>
        <translation>desde la cara externa</translation>
    </message>
    <message>
        <source>found by hand</source>
        <extracomment>Landmarks are felt and the site is built by the student&apos;s own hand.</extracomment>
        <translation>localizada con la mano</translation>
    </message>
    <message>
        <source>landmarks drawn and named</source>
        <translation>puntos de referencia dibujados y nombrados</translation>
    </message>
    <message>
        <source>landmarks named only</source>
        <translation>puntos de referencia solo nombrados</translation>
    </message>
    <message>
        <source>nothing drawn</source>
        <translation>nada dibujado</translation>
    </message>
    <message>
        <source>%1 for each item</source>
        <extracomment>%1 is a time: &quot;1:30&quot;.</extracomment>
        <translation>%1 por ejercicio</translation>
    </message>
    <message>
        <source>%1 on screen</source>
        <translation>%1 en pantalla</translation>
    </message>
    <message>
        <source>%1 on the manikin</source>
        <translation>%1 en el maniquí</translation>
    </message>
    <message>
        <source>No limit of time</source>
        <translation>Sin límite de tiempo</translation>
    </message>
    <message>
        <source>Time: %1</source>
        <translation>Tiempo: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Nothing on the manikin</source>
        <translation>Nada en el maniquí</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) on the manikin, critical: %1</source>
        <extracomment>%1 is how many of them are critical.</extracomment>
        <translation>
            <numerusform>%n paso en el maniquí, críticos: %1</numerusform>
            <numerusform>%n pasos en el maniquí, críticos: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Z-track</source>
        <translation>técnica en Z</translation>
    </message>
    <message>
        <source>no Z-track</source>
        <translation>sin técnica en Z</translation>
    </message>
    <message>
        <source>skin is cleaned</source>
        <translation>se limpia la piel</translation>
    </message>
    <message>
        <source>clean skin is not swabbed</source>
        <translation>la piel limpia no se desinfecta</translation>
    </message>
    <message>
        <source>aspirates</source>
        <translation>se aspira</translation>
    </message>
    <message>
        <source>does not aspirate</source>
        <translation>no se aspira</translation>
    </message>
    <message>
        <source>drawn up through a filter needle</source>
        <translation>se carga con aguja con filtro</translation>
    </message>
    <message>
        <source>Protocol: %1</source>
        <translation>Protocolo: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n attempt(s)</source>
        <translation>
            <numerusform>%n intento</numerusform>
            <numerusform>%n intentos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>at least %n day(s) between</source>
        <translation>
            <numerusform>al menos %n día entre ellos</numerusform>
            <numerusform>al menos %n días entre ellos</numerusform>
        </translation>
    </message>
    <message>
        <source>practice signed first</source>
        <translation>antes, práctica firmada</translation>
    </message>
    <message>
        <source>second assessor on the last</source>
        <translation>segunda persona evaluadora en el último</translation>
    </message>
    <message>
        <source>not coming counts</source>
        <translation>no presentarse cuenta</translation>
    </message>
    <message>
        <source>either side</source>
        <extracomment>The side is drawn with the patient.</extracomment>
        <translation>cualquier lado</translation>
    </message>
    <message>
        <source>%1, %2, %3; %4</source>
        <extracomment>Site, side, from where, help: &quot;Ventrogluteal, left, from the side; nothing drawn&quot;.</extracomment>
        <translation>%1, %2, %3; %4</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) on screen</source>
        <translation>
            <numerusform>%n ejercicio en pantalla</numerusform>
            <numerusform>%n ejercicios en pantalla</numerusform>
        </translation>
    </message>
    <message>
        <source>Patients: %1, %2</source>
        <extracomment>%1 is &quot;adults of any build&quot;, %2 &quot;new patients for each attempt&quot;.</extracomment>
        <translation>Pacientes: %1, %2</translation>
    </message>
    <message>
        <source>Passed from %1, with every critical step, no unsafe mark and in time</source>
        <extracomment>%1 is a number of percent: &quot;80 %&quot;.</extracomment>
        <translation>Superada desde el %1, con todos los pasos críticos, sin marcas inseguras y a tiempo</translation>
    </message>
    <message>
        <source>confirming who it is</source>
        <extracomment>How far a check-off has come.</extracomment>
        <translation>confirmando quién es</translation>
    </message>
    <message>
        <source>reading the instructions</source>
        <translation>leyendo las instrucciones</translation>
    </message>
    <message>
        <source>on screen</source>
        <translation>en pantalla</translation>
    </message>
    <message>
        <source>waiting for the assessor</source>
        <translation>esperando a la persona evaluadora</translation>
    </message>
    <message>
        <source>on the manikin</source>
        <translation>en el maniquí</translation>
    </message>
    <message>
        <source>to be signed</source>
        <translation>por firmar</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmada</translation>
    </message>
    <message>
        <source>%1 %</source>
        <extracomment>%1 is a number of percent.</extracomment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>%1 is the given name, %2 the family name.</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Prepare</source>
        <extracomment>The five parts of the observed steps, as headings.</extracomment>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>Identify and explain</source>
        <translation>Identificar y explicar</translation>
    </message>
    <message>
        <source>Find the site</source>
        <translation>Localizar la zona</translation>
    </message>
    <message>
        <source>Give the injection</source>
        <translation>Poner la inyección</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Judges whether the injection is safe and right for this patient</source>
        <translation>Valora si la inyección es segura y adecuada para este paciente</translation>
    </message>
    <message>
        <source>Wipes the stopper with an alcohol swab</source>
        <extracomment>The rubber stopper of a vial.</extracomment>
        <translation>Limpia el tapón con una torunda con alcohol</translation>
    </message>
    <message>
        <source>Lets the stopper dry</source>
        <translation>Deja secar el tapón</translation>
    </message>
    <message>
        <source>Draws up the dose</source>
        <translation>Carga la dosis</translation>
    </message>
    <message>
        <source>Changes the needle</source>
        <translation>Cambia la aguja</translation>
    </message>
    <message>
        <source>Puts on gloves</source>
        <translation>Se pone los guantes</translation>
    </message>
    <message>
        <source>Identifies the patient by two identifiers</source>
        <translation>Identifica al paciente con dos identificadores</translation>
    </message>
    <message>
        <source>Asks about allergies</source>
        <translation>Pregunta por alergias</translation>
    </message>
    <message>
        <source>Positions the patient, bares the site and has the muscle relaxed</source>
        <translation>Coloca al paciente, descubre la zona y procura que relaje el músculo</translation>
    </message>
    <message>
        <source>Feels for the landmarks</source>
        <translation>Palpa los puntos de referencia</translation>
    </message>
    <message>
        <source>Cleans the skin from the centre outward</source>
        <translation>Limpia la piel del centro hacia fuera</translation>
    </message>
    <message>
        <source>Lets the skin dry</source>
        <translation>Deja secar la piel</translation>
    </message>
    <message>
        <source>Takes off the cap and tells the patient</source>
        <translation>Quita el capuchón y avisa al paciente</translation>
    </message>
    <message>
        <source>Draws the skin aside (Z-track)</source>
        <extracomment>Z-track: the skin is held aside while the needle is in.</extracomment>
        <translation>Desplaza la piel (técnica en Z)</translation>
    </message>
    <message>
        <source>Inserts the needle at 90 degrees</source>
        <translation>Introduce la aguja a 90 grados</translation>
    </message>
    <message>
        <source>Aspirates: pulls back the plunger and looks for blood</source>
        <translation>Aspira: tira del émbolo y mira si hay sangre</translation>
    </message>
    <message>
        <source>Injects slowly and evenly</source>
        <translation>Inyecta despacio y de manera uniforme</translation>
    </message>
    <message>
        <source>Keeps the needle in before withdrawing</source>
        <translation>Mantiene la aguja dentro antes de retirarla</translation>
    </message>
    <message>
        <source>Withdraws the needle at the same angle</source>
        <translation>Retira la aguja con el mismo ángulo</translation>
    </message>
    <message>
        <source>Lets go of the skin (Z-track)</source>
        <translation>Suelta la piel (técnica en Z)</translation>
    </message>
    <message>
        <source>Presses gently, without massage</source>
        <translation>Presiona con suavidad, sin masaje</translation>
    </message>
    <message>
        <source>Takes off the gloves</source>
        <translation>Se quita los guantes</translation>
    </message>
    <message>
        <source>Documents it, with site and side</source>
        <translation>Lo registra, con zona y lado</translation>
    </message>
    <message>
        <source>Evaluates how the patient responds</source>
        <translation>Valora cómo responde el paciente</translation>
    </message>
    <message>
        <source>Recaps the used needle</source>
        <extracomment>Puts the cap back on the used needle, which is never to be done.</extracomment>
        <translation>Reencapucha la aguja usada</translation>
    </message>
    <message>
        <source>done</source>
        <extracomment>What an assessor saw of a step.</extracomment>
        <translation>hecho</translation>
    </message>
    <message>
        <source>prompted</source>
        <extracomment>Done only after the assessor gave a hint.</extracomment>
        <translation>con indicación</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>Safety device activated before the needle was out.</source>
        <translation>Se activó el dispositivo de seguridad antes de sacar la aguja.</translation>
    </message>
    <message>
        <source>Needle put into the sharps container without its safety device activated.</source>
        <translation>La aguja se desechó en el contenedor de cortopunzantes sin activar su dispositivo de seguridad.</translation>
    </message>
    <message>
        <source>Reads the order, lays out supplies</source>
        <extracomment>In these the assessor&apos;s sheet tells what the student does: &quot;(She) reads the order&quot;.</extracomment>
        <translation>Lee la prescripción y prepara el material</translation>
    </message>
    <message>
        <source>Performs hand hygiene before preparing</source>
        <translation>Hace higiene de manos antes de preparar</translation>
    </message>
    <message>
        <source>Checks drug, dose, volume and expiry</source>
        <translation>Comprueba fármaco, dosis, volumen y caducidad</translation>
    </message>
    <message>
        <source>Compares the label with the order, first check</source>
        <translation>Coteja la etiqueta con la prescripción, primera comprobación</translation>
    </message>
    <message>
        <source>Compares the label with the order once drawn up, second check</source>
        <translation>Coteja la etiqueta con la prescripción ya cargada la dosis, segunda comprobación</translation>
    </message>
    <message>
        <source>Compares the label with the order at the bedside, third check</source>
        <translation>Coteja la etiqueta con la prescripción junto al paciente, tercera comprobación</translation>
    </message>
    <message>
        <source>Explains, gains consent, sees to privacy</source>
        <translation>Explica, pide el consentimiento y cuida la intimidad</translation>
    </message>
    <message>
        <source>Chooses the site, looks for injured skin</source>
        <translation>Elige la zona y busca lesiones en la piel</translation>
    </message>
    <message>
        <source>Activates the needle&apos;s safety device</source>
        <extracomment>A guard that covers the used needle.</extracomment>
        <translation>Activa el dispositivo de seguridad de la aguja</translation>
    </message>
    <message>
        <source>Discards needle and syringe as one into the sharps container</source>
        <extracomment>&quot;As one&quot;: the needle stays on the syringe.</extracomment>
        <translation>Desecha aguja y jeringa en una pieza en el contenedor de cortopunzantes</translation>
    </message>
    <message>
        <source>Performs hand hygiene afterwards</source>
        <translation>Hace higiene de manos al terminar</translation>
    </message>
    <message>
        <source>“%1”</source>
        <extracomment>A step of the assessor&apos;s sheet, quoted among others.</extracomment>
        <translation>«%1»</translation>
    </message>
    <message>
        <source>Never to be left out: “%1”.</source>
        <extracomment>%1 is a critical step of the assessor&apos;s sheet, which was not done.</extracomment>
        <translation>No puede faltar nunca: «%1».</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) left out; each is marked among the observed steps.</source>
        <translation>
            <numerusform>%n paso omitido; consta entre los pasos observados.</numerusform>
            <numerusform>%n pasos omitidos; cada uno consta entre los pasos observados.</numerusform>
        </translation>
    </message>
    <message>
        <source>Steps left out: %1.</source>
        <extracomment>%1 is a list of steps, each quoted.</extracomment>
        <translation>Pasos omitidos: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) took a hint; each is marked among the observed steps.</source>
        <translation>
            <numerusform>%n paso necesitó indicación; consta entre los pasos observados.</numerusform>
            <numerusform>%n pasos necesitaron indicación; cada uno consta entre los pasos observados.</numerusform>
        </translation>
    </message>
    <message>
        <source>Steps that took a hint: %1.</source>
        <extracomment>%1 is a list of steps, each quoted.</extracomment>
        <translation>Pasos que necesitaron indicación: %1.</translation>
    </message>
    <message>
        <source>%1, down</source>
        <extracomment>A mark inside its region; %1 is the distance from the ideal point: &quot;1.2 cm, down&quot;.</extracomment>
        <translation>%1, hacia abajo</translation>
    </message>
    <message>
        <source>%1, up</source>
        <translation>%1, hacia arriba</translation>
    </message>
    <message>
        <source>%1, forward</source>
        <translation>%1, hacia delante</translation>
    </message>
    <message>
        <source>%1, back</source>
        <translation>%1, hacia atrás</translation>
    </message>
    <message>
        <source>%1, forward and down</source>
        <translation>%1, hacia delante y abajo</translation>
    </message>
    <message>
        <source>%1, forward and up</source>
        <translation>%1, hacia delante y arriba</translation>
    </message>
    <message>
        <source>%1, back and down</source>
        <translation>%1, hacia atrás y abajo</translation>
    </message>
    <message>
        <source>%1, back and up</source>
        <translation>%1, hacia atrás y arriba</translation>
    </message>
</context>
<context>
    <name>fb::ClosingPage</name>
    <message>
        <source>Order of steps</source>
        <translation>Orden de los pasos</translation>
    </message>
    <message>
        <source>Remark for the student</source>
        <translation>Observación para el estudiante</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Writing the sheet…</source>
        <translation>Escribiendo la hoja…</translation>
    </message>
    <message>
        <source>Printing the sheet…</source>
        <translation>Imprimiendo la hoja…</translation>
    </message>
</context>
<context>
    <name>fb::CohortCounts</name>
    <message>
        <source>passed</source>
        <extracomment>Under a number of students, likewise the next four.</extracomment>
        <translation>han superado</translation>
    </message>
    <message>
        <source>due again</source>
        <translation>deben repetir</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>sin intentar</translation>
    </message>
    <message>
        <source>no attempt left</source>
        <translation>sin más intentos</translation>
    </message>
    <message>
        <source>open now</source>
        <translation>abiertas ahora</translation>
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
  fingerbreadth verify [RECORDS]     whether the records of check-offs are what was kept
  fingerbreadth backup FILE          a copy of them, readable by you alone
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
  fingerbreadth verify [REGISTROS]   si los registros de las evaluaciones son lo que se guardó
  fingerbreadth backup ARCHIVO       una copia de ellos, que solo usted puede leer
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
    <name>fb::ComparePanel</name>
    <message>
        <source>Shown</source>
        <translation>Mostrado</translation>
    </message>
    <message>
        <source>Pinned</source>
        <translation>Fijado</translation>
    </message>
    <message>
        <source>Pin</source>
        <extracomment>Keeps the shown body, to compare others with it.</extracomment>
        <translation>Fijar</translation>
    </message>
    <message>
        <source>Swap</source>
        <extracomment>Shows the pinned body and pins the one that was shown.</extracomment>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Unpin</source>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>Pin the shown body</source>
        <translation>Fijar el cuerpo mostrado</translation>
    </message>
    <message>
        <source>Swap the shown and the pinned body</source>
        <translation>Intercambiar el cuerpo mostrado y el fijado</translation>
    </message>
    <message>
        <source>Unpin the body</source>
        <translation>Soltar el cuerpo fijado</translation>
    </message>
    <message>
        <source>Compare nothing</source>
        <translation>No comparar nada</translation>
    </message>
    <message>
        <source>Pinned body beside it</source>
        <translation>El cuerpo fijado al lado</translation>
    </message>
    <message>
        <source>Pinned body&apos;s target over it</source>
        <translation>La zona del cuerpo fijado encima</translation>
    </message>
    <message>
        <source>Another convention over it</source>
        <translation>Otro método encima</translation>
    </message>
    <message>
        <source>Convention to compare with</source>
        <translation>Método con el que se compara</translation>
    </message>
    <message>
        <source>No body yet: pin this one, then change it.</source>
        <translation>Aún ninguno: fije este y cámbielo después.</translation>
    </message>
    <message>
        <source>Seen from the first landmark of each.</source>
        <translation>Visto desde la primera referencia de cada uno.</translation>
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
    <name>fb::DeskColumn</name>
    <message>
        <source>Item %1 of %2, %3 used.</source>
        <extracomment>%1 of %2 items; %3 is a time as 2:14.</extracomment>
        <translation>Ejercicio %1 de %2, %3 usados.</translation>
    </message>
    <message>
        <source>On the manikin, %1 used.</source>
        <translation>En el maniquí, %1 usados.</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Void…</source>
        <extracomment>Ends the check-off that stands open without a result; asks for the reason.</extracomment>
        <translation>Anular…</translation>
    </message>
    <message>
        <source>Edit sheet…</source>
        <translation>Editar la ficha…</translation>
    </message>
    <message>
        <source>Import roster…</source>
        <translation>Importar lista…</translation>
    </message>
    <message>
        <source>The check-off of %1 is still open</source>
        <translation>La evaluación de %1 sigue abierta</translation>
    </message>
    <message>
        <source>There is no sheet yet. A sheet says what is asked and when it is passed.</source>
        <translation>Todavía no hay ficha. Una ficha dice qué se pide y cuándo se supera.</translation>
    </message>
    <message>
        <source>The sheet in words</source>
        <translation>La ficha en palabras</translation>
    </message>
    <message>
        <source>Invented, to try things out.</source>
        <translation>Inventado, para probar.</translation>
    </message>
</context>
<context>
    <name>fb::DeskEmpty</name>
    <message>
        <source>No students yet</source>
        <translation>Todavía no hay estudiantes</translation>
    </message>
    <message>
        <source>Import your roster, or try everything with an invented college: fifteen students and a sheet, all of them made up and labelled so.</source>
        <translation>Importe su lista o pruébelo todo con una escuela inventada: quince estudiantes y una ficha, todo ello inventado y así rotulado.</translation>
    </message>
    <message>
        <source>Use the sample</source>
        <translation>Usar la muestra</translation>
    </message>
    <message>
        <source>Import a roster…</source>
        <translation>Importar una lista…</translation>
    </message>
</context>
<context>
    <name>fb::DeskModel</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Number</source>
        <extracomment>The school&apos;s number of a student.</extracomment>
        <translation>Número</translation>
    </message>
    <message>
        <source>Section</source>
        <extracomment>Part of a class.</extracomment>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Standing</source>
        <extracomment>How a student stands: not tried, passed, may try again.</extracomment>
        <translation>Situación</translation>
    </message>
</context>
<context>
    <name>fb::DeskNote</name>
    <message>
        <source>Close</source>
        <extracomment>Puts a note away.</extracomment>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close the note</source>
        <translation>Cerrar la nota</translation>
    </message>
</context>
<context>
    <name>fb::DeskOffer</name>
    <message>
        <source>It is being cancelled.</source>
        <translation>Se está cancelando.</translation>
    </message>
    <message>
        <source>The records were damaged</source>
        <translation>Los registros se dañaron</translation>
    </message>
    <message>
        <source>Their file could not be read. It was put aside, and empty records were begun. The last backup can be put back in their place.</source>
        <translation>Su archivo no se pudo leer. Se apartó y se empezaron registros vacíos. En su lugar se puede recuperar la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The present file is kept aside whole, beside the damaged one; nothing is deleted.</source>
        <translation>El archivo actual se guarda aparte, completo, junto al dañado; no se borra nada.</translation>
    </message>
    <message>
        <source>Put the backup back</source>
        <translation>Recuperar la copia de seguridad</translation>
    </message>
    <message>
        <source>Begin with empty records</source>
        <translation>Empezar con registros vacíos</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Cancel putting the backup back</source>
        <translation>Cancelar la recuperación de la copia de seguridad</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Cuánto lleva hecho</translation>
    </message>
    <message>
        <source>The backup: %1</source>
        <extracomment>%1 is a file.</extracomment>
        <translation>La copia de seguridad: %1</translation>
    </message>
    <message>
        <source>The backup is being put back: %1.</source>
        <translation>Se está recuperando la copia de seguridad: %1.</translation>
    </message>
</context>
<context>
    <name>fb::DeskPage</name>
    <message>
        <source>Search by name, number or section</source>
        <translation>Buscar por nombre, número o grupo</translation>
    </message>
    <message>
        <source>Students</source>
        <translation>Estudiantes</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Nobody is found by these words.</source>
        <translation>No se encuentra a nadie con esas palabras.</translation>
    </message>
    <message>
        <source>Choose a student.</source>
        <translation>Elija un estudiante.</translation>
    </message>
    <message>
        <source>There is no sheet yet to check by.</source>
        <translation>Todavía no hay ficha con la que evaluar.</translation>
    </message>
    <message>
        <source>First go on with the check-off that is still open, or void it.</source>
        <translation>Antes continúe la evaluación que sigue abierta o anúlela.</translation>
    </message>
    <message>
        <source>No-show…</source>
        <extracomment>The student did not come; asks before it is recorded.</extracomment>
        <translation>No se presentó…</translation>
    </message>
    <message>
        <source>Student…</source>
        <extracomment>What is agreed with the student that is chosen: more time, another language.</extracomment>
        <translation>Estudiante…</translation>
    </message>
    <message>
        <source>What is agreed with this student</source>
        <translation>Lo acordado con esta persona</translation>
    </message>
    <message numerus="yes">
        <source>%Ln student(s)</source>
        <translation>
            <numerusform>%Ln estudiante</numerusform>
            <numerusform>%Ln estudiantes</numerusform>
        </translation>
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
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>JSON files (*.json)</source>
        <translation>Archivos JSON (*.json)</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Records (*.db)</source>
        <translation>Registros (*.db)</translation>
    </message>
    <message>
        <source>Save the file as</source>
        <translation>Guardar el archivo como</translation>
    </message>
    <message>
        <source>Save the backup as</source>
        <translation>Guardar la copia de seguridad como</translation>
    </message>
    <message>
        <source>Choose a roster</source>
        <extracomment>The list of students, a file.</extracomment>
        <translation>Elegir una lista de estudiantes</translation>
    </message>
    <message>
        <source>Rosters (*.csv *.tsv *.txt)</source>
        <translation>Listas (*.csv *.tsv *.txt)</translation>
    </message>
    <message>
        <source>Choose a sheet</source>
        <extracomment>What a check-off asks, a file.</extracomment>
        <translation>Elegir una ficha</translation>
    </message>
    <message>
        <source>Sheets (*.json)</source>
        <translation>Fichas (*.json)</translation>
    </message>
    <message>
        <source>SVG drawings (*.svg)</source>
        <translation>Dibujos SVG (*.svg)</translation>
    </message>
    <message>
        <source>PNG pictures (*.png)</source>
        <translation>Imágenes PNG (*.png)</translation>
    </message>
    <message>
        <source>Save the picture as</source>
        <translation>Guardar la imagen como</translation>
    </message>
    <message>
        <source>Choose a file of marks</source>
        <extracomment>Points on the body that learners have named, a file.</extracomment>
        <translation>Elegir un archivo de marcas</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>Choose a backup</source>
        <translation>Elija una copia de seguridad</translation>
    </message>
</context>
<context>
    <name>fb::DifferenceText</name>
    <message>
        <source>Ideal points in the same place</source>
        <translation>Puntos ideales en el mismo lugar</translation>
    </message>
    <message>
        <source>Ideal points %1 apart</source>
        <translation>Puntos ideales a %1 de distancia</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <extracomment>Parts of a list of one or two: %1 is a length.</extracomment>
        <translation>%1 más abajo</translation>
    </message>
    <message>
        <source>%1 higher</source>
        <translation>%1 más arriba</translation>
    </message>
    <message>
        <source>%1 further forward</source>
        <translation>%1 más adelante</translation>
    </message>
    <message>
        <source>%1 further back</source>
        <translation>%1 más atrás</translation>
    </message>
    <message>
        <source>The other convention&apos;s lies %1.</source>
        <translation>El del otro método queda %1.</translation>
    </message>
    <message>
        <source>The pinned body&apos;s lies %1.</source>
        <translation>El del cuerpo fijado queda %1.</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <extracomment>A thickness in millimetres.</extracomment>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Bone decides, not weight: the ideal points lie %1 apart. Skin and fat over the muscle: %2 here, %3 on the pinned body.</source>
        <extracomment>%1 is a length, %2 and %3 thicknesses of skin and fat over the muscle.</extracomment>
        <translation>Decide el hueso, no el peso: los puntos ideales distan %1. Piel y grasa sobre el músculo: %2 aquí, %3 en el cuerpo fijado.</translation>
    </message>
    <message>
        <source>The lines start from bone, but their middle lies on the skin: on the thicker thigh %1 farther round. Skin and fat: %2 here, %3 on the pinned body.</source>
        <extracomment>The middle between the two lines along the thigh; %1 to %3 as above.</extracomment>
        <translation>Las líneas parten del hueso, pero su medio está en la piel: en el muslo más grueso, %1 más allá. Piel y grasa: %2 aquí, %3 en el cuerpo fijado.</translation>
    </message>
    <message>
        <source>Skin and fat over the muscle: %1 here, %2 on the pinned body.</source>
        <translation>Piel y grasa sobre el músculo: %1 aquí, %2 en el cuerpo fijado.</translation>
    </message>
</context>
<context>
    <name>fb::FaultWordsLecture</name>
    <message>
        <source>%1 has no column “%2”; its first line must name the columns name, x_cm and y_cm.</source>
        <translation>%1 no tiene la columna «%2»; su primera línea debe nombrar las columnas name, x_cm e y_cm.</translation>
    </message>
    <message>
        <source>Line %2 of %1 does not give two numbers of centimetres; mend that line and choose the file again.</source>
        <translation>La línea %2 de %1 no da dos números en centímetros; corrija esa línea y elija el archivo otra vez.</translation>
    </message>
    <message>
        <source>%1 holds no marks; the first line names the columns, each further line one mark.</source>
        <translation>%1 no contiene marcas; la primera línea nombra las columnas y cada una de las demás, una marca.</translation>
    </message>
    <message>
        <source>%1 holds more than %2 marks; split it into smaller files.</source>
        <translation>%1 contiene más de %2 marcas; divídalo en archivos más pequeños.</translation>
    </message>
    <message>
        <source>The demonstration goes on without speaker notes, for %1 cannot be read; install the program again to have them back.</source>
        <translation>La demostración sigue sin notas del orador, pues no se puede leer %1; instale el programa otra vez para recuperarlas.</translation>
    </message>
    <message>
        <source>The audience&apos;s screen is gone; connect it again, or press F6 to show the picture on this one.</source>
        <translation>La pantalla del público ya no está; conéctela otra vez o pulse F6 para mostrar la imagen en esta.</translation>
    </message>
    <message>
        <source>There is one screen only; press F6 to show the picture on it and F6 to come back.</source>
        <translation>Solo hay una pantalla; pulse F6 para mostrar la imagen en ella y F6 para volver.</translation>
    </message>
    <message>
        <source>No more than %1 marks are kept; remove one or clear them, then go on.</source>
        <translation>No se guardan más de %1 marcas; quite una o bórrelas todas y continúe.</translation>
    </message>
</context>
<context>
    <name>fb::FeedbackSheet</name>
    <message>
        <source>%1, %2</source>
        <extracomment>A day and a time of day.</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>A time that was used, of the time there was: &quot;8:12 of 10:00&quot;.
----------
The first of three attempts: &quot;1 of 3&quot;.</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Student id %1</source>
        <extracomment>%1 is the student&apos;s id.</extracomment>
        <translation>Estudiante n.º %1</translation>
    </message>
    <message>
        <source>Student id %1, section %2</source>
        <translation>Estudiante n.º %1, grupo %2</translation>
    </message>
    <message>
        <source>Feedback sheet of a check-off</source>
        <translation>Hoja de resultados de una evaluación</translation>
    </message>
    <message>
        <source>Check-off of %1, %2</source>
        <extracomment>Title of the file; %1 is the student&apos;s name, %2 the day.</extracomment>
        <translation>Evaluación de %1, %2</translation>
    </message>
    <message>
        <source>Sample: invented people, no real result</source>
        <translation>Muestra: personas inventadas, resultado no real</translation>
    </message>
    <message>
        <source>Read by the student</source>
        <extracomment>The two lines to be filled in by hand.</extracomment>
        <translation>Leído por el estudiante o la estudiante</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>%1, page %2 of %3</source>
        <extracomment>At the foot of each page; %1 is the student&apos;s name.</extracomment>
        <translation>%1, página %2 de %3</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation>Intento</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Time on screen</source>
        <translation>Tiempo en pantalla</translation>
    </message>
    <message>
        <source>Time on the manikin</source>
        <translation>Tiempo en el maniquí</translation>
    </message>
    <message>
        <source>Extra time agreed</source>
        <translation>Tiempo adicional acordado</translation>
    </message>
    <message>
        <source>score; the cut is %1</source>
        <extracomment>Under the score: what was asked for.</extracomment>
        <translation>puntuación; el corte es %1</translation>
    </message>
    <message>
        <source>What to practise</source>
        <translation>Qué practicar</translation>
    </message>
    <message>
        <source>Nothing was off; keep it up.</source>
        <translation>No hubo fallos; siga así.</translation>
    </message>
    <message>
        <source>Overall rating: %1 of 5, %2</source>
        <extracomment>%1 is a number from 1 to 5, %2 its word.</extracomment>
        <translation>Valoración global: %1 de 5, %2</translation>
    </message>
    <message>
        <source>Assessor&apos;s remark: %1</source>
        <translation>Observación de quien evaluó: %1</translation>
    </message>
    <message>
        <source>Observed steps</source>
        <translation>Pasos observados</translation>
    </message>
    <message>
        <source>%1 (critical)</source>
        <extracomment>%1 is a step that must not be missed.</extracomment>
        <translation>%1 (crítico)</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>At</source>
        <extracomment>When the step was seen, minutes and seconds from the start.</extracomment>
        <translation>Momento</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Order of the steps</source>
        <translation>Orden de los pasos</translation>
    </message>
    <message>
        <source>No order was broken.</source>
        <translation>Se respetó el orden.</translation>
    </message>
    <message>
        <source>Needle held in after injecting: %1 s, asked for: %2 s.</source>
        <translation>Aguja mantenida dentro después de inyectar: %1 s, se pedían: %2 s.</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>Signed on</source>
        <translation>Firmado el</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Bitácora</translation>
    </message>
    <message>
        <source>%1, entry %2</source>
        <extracomment>%1 are the first digits of the log&apos;s hash, %2 is how many entries it has.</extracomment>
        <translation>%1, entrada %2</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programa</translation>
    </message>
    <message>
        <source>Fingerbreadth %1</source>
        <translation>Fingerbreadth %1</translation>
    </message>
    <message>
        <source>Lab&apos;s numbers</source>
        <translation>Valores del laboratorio</translation>
    </message>
    <message>
        <source>Marks on the plates</source>
        <translation>Marcas en las láminas</translation>
    </message>
    <message>
        <source>Woman, %1 years, %2 cm, %3 kg</source>
        <extracomment>The patient of an item: age, stature, weight.</extracomment>
        <translation>Mujer, %1 años, %2 cm, %3 kg</translation>
    </message>
    <message>
        <source>Man, %1 years, %2 cm, %3 kg</source>
        <translation>Hombre, %1 años, %2 cm, %3 kg</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Sin respuesta</translation>
    </message>
    <message>
        <source>Rightly refused</source>
        <extracomment>The student said that the site is not to be used.</extracomment>
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
    <message>
        <source>%1 %2</source>
        <extracomment>Of a site found by hand: what went wrong first, then what is to be said of the mark.</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <extracomment>%1 is the number of an item, %2 what was asked.</extracomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Begun</source>
        <extracomment>When the check-off was begun.</extracomment>
        <translation>Inicio</translation>
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
    <message>
        <source>Through %1 mm of fat</source>
        <extracomment>Where a fingertip feels no bone: how much fat it presses through.</extracomment>
        <translation>A través de %1 mm de grasa</translation>
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
    <name>fb::GatePage</name>
    <message>
        <source>Records</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Open the records</source>
        <translation>Abrir los registros</translation>
    </message>
    <message>
        <source>Enrol and open the records</source>
        <translation>Darse de alta y abrir los registros</translation>
    </message>
    <message>
        <source>This PIN keeps the curious out while you are away from the desk. It does not protect the files; your computer account does.</source>
        <translation>Este PIN mantiene fuera a los curiosos mientras usted no está en la mesa. No protege los archivos; eso lo hace su cuenta del equipo.</translation>
    </message>
    <message>
        <source>The records are being opened.</source>
        <translation>Los registros se están abriendo.</translation>
    </message>
    <message>
        <source>Nobody is enrolled as an assessor yet. The first assessor chooses a PIN here; check-offs are signed with it, and it opens these records.</source>
        <translation>Todavía no hay nadie dado de alta para evaluar. La primera persona evaluadora elige aquí un PIN; con él se firman las evaluaciones y se abren estos registros.</translation>
    </message>
    <message>
        <source>The results of all students lie behind this page. An assessor’s PIN opens them.</source>
        <translation>Detrás de esta página están los resultados de todos los estudiantes. Los abre el PIN de una persona evaluadora.</translation>
    </message>
    <message>
        <source>The records were damaged, and empty ones were begun. As long as nobody is enrolled, their last backup can be put back under “Check-off”. To go on without it, the first assessor chooses a PIN here; check-offs are signed with it, and it opens these records.</source>
        <translation>Los registros se dañaron y se empezaron otros vacíos. Mientras no haya nadie inscrito, su última copia de seguridad se puede recuperar en «Evaluación». Para seguir sin ella, el primer evaluador elige aquí un PIN; con él se firman las evaluaciones y se abren estos registros.</translation>
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
    <name>fb::Handout</name>
    <message>
        <source>%1. %2. %3.</source>
        <extracomment>Of a patient: who, how stout, how they sit or lie. %1 is &quot;Woman, 40 years, 165 cm, 65 kg&quot;.</extracomment>
        <translation>%1. %2. %3.</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>Beside an empty line on paper.</extracomment>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Date</source>
        <extracomment>Beside an empty line on paper: the day on which it was practised.</extracomment>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Draw what you would feel and lay, then mark the site with a small cross.</source>
        <translation>Dibuje lo que palparía y colocaría; después marque la zona con una cruz pequeña.</translation>
    </message>
    <message>
        <source>Write down your steps in order:</source>
        <translation>Escriba sus pasos en orden:</translation>
    </message>
    <message>
        <source>Write down what the needle must keep clear of:</source>
        <translation>Escriba de qué debe mantenerse alejada la aguja:</translation>
    </message>
    <message>
        <source>Key: %1</source>
        <extracomment>Title of the page with the answers; %1 is the site.</extracomment>
        <translation>Solución: %1</translation>
    </message>
    <message>
        <source>Lay this page over your own and hold both to the light: the drawings lie at one place.</source>
        <translation>Ponga esta página sobre la suya y mírelas al trasluz: los dibujos están en el mismo lugar.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <extracomment>%1 is the number of this page, %2 of how many.</extracomment>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>What lies around</source>
        <translation>Qué hay alrededor</translation>
    </message>
    <message>
        <source>The rule</source>
        <translation>La regla</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <extracomment>The rule with its numbers, a sentence; then how distances are measured.</extracomment>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>De dónde procede</translation>
    </message>
</context>
<context>
    <name>fb::HandoutMenu</name>
    <message>
        <source>Hand out</source>
        <extracomment>A menu: papers and pictures for the learners.</extracomment>
        <translation>Repartir</translation>
    </message>
    <message>
        <source>This step as PDF…</source>
        <translation>Este paso como PDF…</translation>
    </message>
    <message>
        <source>This step as SVG…</source>
        <translation>Este paso como SVG…</translation>
    </message>
    <message>
        <source>This step as PNG…</source>
        <translation>Este paso como PNG…</translation>
    </message>
    <message>
        <source>Whole site on one page…</source>
        <translation>Toda la zona en una página…</translation>
    </message>
    <message>
        <source>Blank page to practise on, with its key…</source>
        <translation>Hoja en blanco para practicar, con su solución…</translation>
    </message>
    <message>
        <source>%1, hand-out</source>
        <extracomment>Names of files: %1 is a site.</extracomment>
        <translation>%1, hoja</translation>
    </message>
    <message>
        <source>%1, to practise on</source>
        <translation>%1, para practicar</translation>
    </message>
    <message>
        <source>%1, step %2</source>
        <translation>%1, paso %2</translation>
    </message>
    <message>
        <source>Writing…</source>
        <translation>Escribiendo…</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <extracomment>%1 is the name of a file.</extracomment>
        <translation>Guardado en %1.</translation>
    </message>
</context>
<context>
    <name>fb::HandoverPage</name>
    <message>
        <source>The time for the last item was up.</source>
        <translation>Se acabó el tiempo del último ejercicio.</translation>
    </message>
    <message>
        <source>Please call your assessor.</source>
        <translation>Avise a la persona que le evalúa.</translation>
    </message>
    <message>
        <source>Assessor: go on to the manikin</source>
        <translation>Persona evaluadora: pasar al maniquí</translation>
    </message>
    <message>
        <source>Assessor: go on to the result</source>
        <translation>Persona evaluadora: pasar al resultado</translation>
    </message>
    <message>
        <source>On-screen part finished</source>
        <translation>Parte en pantalla terminada</translation>
    </message>
</context>
<context>
    <name>fb::HistoryView</name>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>%1 extra time</source>
        <translation>%1 de tiempo adicional</translation>
    </message>
    <message>
        <source>invented</source>
        <translation>inventado</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <extracomment>%1 title of a sheet, %2 where the student stands on it.</extracomment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>No check-off of this student is signed yet.</source>
        <translation>Todavía no hay ninguna evaluación firmada de este estudiante.</translation>
    </message>
    <message>
        <source>Attempt %1 · %2 · %3</source>
        <extracomment>%1 number of the attempt, %2 its outcome, %3 the score in percent.</extracomment>
        <translation>Intento %1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1, %2, signed by %3</source>
        <extracomment>%1 a day and time, %2 title of a sheet, %3 who signed.</extracomment>
        <translation>%1, %2, firmado por %3</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open attempt %1, %2</source>
        <translation>Abrir el intento %1, %2</translation>
    </message>
    <message>
        <source>Practised afterwards: %1</source>
        <translation>Practicado después: %1</translation>
    </message>
    <message>
        <source>Practice afterwards is not signed yet.</source>
        <translation>La práctica posterior aún no está firmada.</translation>
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
    <name>fb::IdentityPage</name>
    <message>
        <source>Student number %1</source>
        <extracomment>What tells one student from another of the same name.</extracomment>
        <translation>Estudiante número %1</translation>
    </message>
    <message>
        <source>Invented student of the sample</source>
        <translation>Estudiante inventado de la muestra</translation>
    </message>
    <message>
        <source>Attempt %1 of %2.</source>
        <translation>Intento %1 de %2.</translation>
    </message>
    <message>
        <source>You have %1 percent more time.</source>
        <translation>Dispone de un %1 por ciento más de tiempo.</translation>
    </message>
    <message>
        <source>Is this you?</source>
        <translation>¿Es usted?</translation>
    </message>
    <message>
        <source>Yes, this is me</source>
        <translation>Sí, soy yo</translation>
    </message>
    <message>
        <source>No, back to the desk</source>
        <translation>No, volver a la mesa</translation>
    </message>
</context>
<context>
    <name>fb::InstructionsPage</name>
    <message>
        <source>You have %1 in all.</source>
        <translation>Dispone de %1 en total.</translation>
    </message>
    <message>
        <source>Some are found by hand: feel for the landmarks and name them, build the site, then mark it.</source>
        <translation>Algunos se localizan con la mano: palpe los puntos de referencia y nómbrelos, construya la zona y después ponga la marca.</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minuto</numerusform>
            <numerusform>%n minutos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n segundo</numerusform>
            <numerusform>%n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>You have %1 for each site and %2 in all.</source>
        <extracomment>Times as &quot;1 minute 30 seconds&quot;.</extracomment>
        <translation>Dispone de %1 por zona y de %2 en total.</translation>
    </message>
    <message>
        <source>You have %1 for each site.</source>
        <translation>Dispone de %1 por zona.</translation>
    </message>
    <message>
        <source>Take your time: there is no limit.</source>
        <translation>Tómese su tiempo: no hay límite.</translation>
    </message>
    <message>
        <source>You are told how your marks were at the end.</source>
        <translation>Al final se le dice cómo fueron sus marcas.</translation>
    </message>
    <message>
        <source>Then you show the steps of the injection on the manikin.</source>
        <translation>Después muestra los pasos de la inyección en el maniquí.</translation>
    </message>
    <message>
        <source>Then you show the steps of the injection on the manikin, in %1.</source>
        <translation>Después muestra los pasos de la inyección en el maniquí, en %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n site(s) to find, one after the other.</source>
        <translation>
            <numerusform>%n zona que localizar.</numerusform>
            <numerusform>%n zonas que localizar, una tras otra.</numerusform>
        </translation>
    </message>
    <message>
        <source>Mark the place where the needle belongs. A mark can be moved until you confirm it; then the next site comes.</source>
        <translation>Marque el lugar donde va la aguja. Una marca se puede mover hasta que la confirme; entonces viene la zona siguiente.</translation>
    </message>
    <message>
        <source>A site that is not confirmed in time is not answered. The clock can be hidden, and goes on all the same.</source>
        <translation>Una zona que no se confirma a tiempo queda sin responder. El reloj se puede ocultar y sigue contando igual.</translation>
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
    <name>fb::LectureClock</name>
    <message>
        <source>%1:%2</source>
        <extracomment>Minutes and seconds.</extracomment>
        <translation>%1:%2</translation>
    </message>
    <message>
        <source>%1:%2:%3</source>
        <extracomment>Hours, minutes and seconds.</extracomment>
        <translation>%1:%2:%3</translation>
    </message>
    <message>
        <source>elapsed</source>
        <extracomment>After a time such as 12:40: how long the demonstration has been going on.</extracomment>
        <translation>transcurrido</translation>
    </message>
    <message>
        <source>Restart</source>
        <extracomment>Sets a clock back to nought.</extracomment>
        <translation>Reiniciar</translation>
    </message>
    <message>
        <source>Restart the clock</source>
        <translation>Reiniciar el reloj</translation>
    </message>
</context>
<context>
    <name>fb::LectureFace</name>
    <message>
        <source>Pinned: %1</source>
        <extracomment>The body that is kept to be compared with; %1 is its body-mass index, a number.</extracomment>
        <translation>Fijado: %1</translation>
    </message>
    <message>
        <source>Where would you put the needle?</source>
        <translation>¿Dónde pondría la aguja?</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n mark(s) on target</source>
        <extracomment>%n is how many marks there are, %1 how many of them are on target.</extracomment>
        <translation>
            <numerusform>%1 de %n marca en el blanco</numerusform>
            <numerusform>%1 de %n marcas en el blanco</numerusform>
        </translation>
    </message>
    <message>
        <source>Two ways to find the site: their ideal points lie %1 apart.</source>
        <translation>Dos maneras de localizar la zona: sus puntos ideales quedan a %1.</translation>
    </message>
    <message>
        <source>The ideal point lies at the same place on both bodies.</source>
        <translation>El punto ideal está en el mismo lugar en los dos cuerpos.</translation>
    </message>
    <message>
        <source>Two bodies, one site: their ideal points lie %1 apart.</source>
        <translation>Dos cuerpos, una zona: sus puntos ideales quedan a %1.</translation>
    </message>
</context>
<context>
    <name>fb::LectureLook</name>
    <message>
        <source>The patient</source>
        <extracomment>Titles of the steps of a demonstration, in a list.</extracomment>
        <translation>El paciente</translation>
    </message>
    <message>
        <source>Press: %1</source>
        <extracomment>A fingertip presses on the bone that is named.</extracomment>
        <translation>Presionar: %1</translation>
    </message>
    <message>
        <source>What lies around</source>
        <translation>Qué hay alrededor</translation>
    </message>
    <message>
        <source>Not here: %1</source>
        <extracomment>A place where a needle must not go; %1 is what lies there.</extracomment>
        <translation>Aquí no: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>A volunteer&apos;s mark: its number and the name that was given.</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: off the body</source>
        <extracomment>%1 is the number of a mark, with a name perhaps.</extracomment>
        <translation>%1: fuera del cuerpo</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <extracomment>&quot;3: off target, 1.8 cm&quot;: number, verdict, distance from the ideal point.</extracomment>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Ideal points %1 apart</source>
        <extracomment>The distance between two ideal points.</extracomment>
        <translation>Puntos ideales a %1 de distancia</translation>
    </message>
</context>
<context>
    <name>fb::LectureVoice</name>
    <message>
        <source>Demonstration, not ready yet</source>
        <extracomment>Name of the picture while the first body is being made.</extracomment>
        <translation>Demostración, aún no preparada</translation>
    </message>
    <message>
        <source>Step %1 of %2: %3</source>
        <extracomment>%1: which step; %2: how many; %3: what it is called.</extracomment>
        <translation>Paso %1 de %2: %3</translation>
    </message>
    <message>
        <source>The picture is blank.</source>
        <translation>La imagen está en blanco.</translation>
    </message>
</context>
<context>
    <name>fb::LectureWords</name>
    <message>
        <source>Deltoid site, left arm</source>
        <extracomment>The heading of a demonstration; the side is the patient&apos;s.</extracomment>
        <translation>Zona deltoidea, brazo izquierdo</translation>
    </message>
    <message>
        <source>Deltoid site, right arm</source>
        <translation>Zona deltoidea, brazo derecho</translation>
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
    <message>
        <source>The patient sits, shoulder bare, elbow bent, forearm in the lap. We look from the side.</source>
        <translation>El paciente está sentado, hombro descubierto, codo flexionado, antebrazo en el regazo. Miramos de lado.</translation>
    </message>
    <message>
        <source>The patient sits, shoulder bare, elbow bent, forearm in the lap. We look from the front and the side.</source>
        <translation>El paciente está sentado, hombro descubierto, codo flexionado, antebrazo en el regazo. Miramos de tres cuartos.</translation>
    </message>
    <message>
        <source>The patient lies on the other side, hip bare, upper knee forward. We stand at the back.</source>
        <translation>El paciente yace sobre el otro lado, cadera descubierta, rodilla de arriba adelantada. Estamos a su espalda.</translation>
    </message>
    <message>
        <source>The patient lies face down, both hips bare, toes turned in. We look from above.</source>
        <translation>El paciente yace boca abajo, ambas caderas descubiertas, pies hacia dentro. Miramos desde arriba.</translation>
    </message>
    <message>
        <source>The patient lies on the back, thigh bare, toes up. We look from above.</source>
        <translation>El paciente yace boca arriba, muslo descubierto, pies hacia arriba. Miramos desde arriba.</translation>
    </message>
    <message>
        <source>The patient lies on the back, thigh bare, toes up. We look from the outer side.</source>
        <translation>El paciente yace boca arriba, muslo descubierto, pies hacia arriba. Miramos desde la cara externa.</translation>
    </message>
    <message>
        <source>Lean</source>
        <extracomment>How stout a patient is, short words on buttons.</extracomment>
        <translation>Delgado</translation>
    </message>
    <message>
        <source>Average</source>
        <translation>Medio</translation>
    </message>
    <message>
        <source>Heavy</source>
        <translation>Corpulento</translation>
    </message>
    <message numerus="yes">
        <source>Woman, %n year(s), %1 cm, %2 kg</source>
        <extracomment>A patient in one line; %n is the age, %1 the stature, %2 the weight.</extracomment>
        <translation>
            <numerusform>Mujer, %n año, %1 cm, %2 kg</numerusform>
            <numerusform>Mujer, %n años, %1 cm, %2 kg</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Man, %n year(s), %1 cm, %2 kg</source>
        <translation>
            <numerusform>Hombre, %n año, %1 cm, %2 kg</numerusform>
            <numerusform>Hombre, %n años, %1 cm, %2 kg</numerusform>
        </translation>
    </message>
    <message>
        <source>Body-mass index %1</source>
        <translation>Índice de masa corporal %1</translation>
    </message>
    <message>
        <source>Not on the acromion. A needle would strike bone.</source>
        <translation>No sobre el acromion. La aguja chocaría con el hueso.</translation>
    </message>
    <message>
        <source>Not this high. A needle can reach the bursa and the joint and injure the shoulder.</source>
        <translation>No tan arriba. La aguja puede alcanzar la bolsa y la articulación y lesionar el hombro.</translation>
    </message>
    <message>
        <source>Not below armpit level. A needle can injure the radial nerve.</source>
        <translation>No por debajo del nivel de la axila. La aguja puede lesionar el nervio radial.</translation>
    </message>
    <message>
        <source>Not on the back of the arm. The radial nerve lies against the bone here.</source>
        <translation>No en la cara posterior del brazo. Aquí el nervio radial se apoya en el hueso.</translation>
    </message>
    <message>
        <source>The bursa can reach down to this height. A little lower is safer.</source>
        <translation>La bolsa puede llegar hasta esta altura. Un poco más abajo es más seguro.</translation>
    </message>
    <message>
        <source>At this height the axillary nerve crosses the front of the muscle.</source>
        <translation>A esta altura el nervio axilar cruza la parte anterior del músculo.</translation>
    </message>
    <message>
        <source>At this height the axillary nerve enters the muscle from the back.</source>
        <translation>A esta altura el nervio axilar entra en el músculo por detrás.</translation>
    </message>
    <message>
        <source>Not on the patella. A needle would strike bone.</source>
        <translation>No sobre la rótula. La aguja chocaría con el hueso.</translation>
    </message>
    <message>
        <source>Not near the hip. Tendon and joint lie here instead of thick muscle.</source>
        <translation>No cerca de la cadera. Aquí hay tendón y articulación en vez de músculo grueso.</translation>
    </message>
    <message>
        <source>Not near the knee. Tendon and joint lie here instead of thick muscle.</source>
        <translation>No cerca de la rodilla. Aquí hay tendón y articulación en vez de músculo grueso.</translation>
    </message>
    <message>
        <source>Not on the inner side of the thigh. A needle can injure the femoral vessels and nerve.</source>
        <translation>No en la cara interna del muslo. La aguja puede lesionar los vasos y el nervio femorales.</translation>
    </message>
    <message>
        <source>Not behind the thigh. A needle can injure the sciatic nerve under the hamstrings.</source>
        <translation>No detrás del muslo. La aguja puede lesionar el nervio ciático bajo los isquiotibiales.</translation>
    </message>
    <message>
        <source>Not on the rectus femoris. Vessels and a nerve run under it, and it hurts more there.</source>
        <translation>No sobre el recto femoral. Debajo pasan vasos y un nervio, y ahí duele más.</translation>
    </message>
    <message>
        <source>Not on the greater trochanter. A needle would strike bone.</source>
        <translation>No sobre el trocánter mayor. La aguja chocaría con el hueso.</translation>
    </message>
    <message>
        <source>Not on the iliac crest. A needle would strike bone.</source>
        <translation>No sobre la cresta ilíaca. La aguja chocaría con el hueso.</translation>
    </message>
    <message>
        <source>Not this near the trochanter. Tendon and bone lie here instead of thick muscle.</source>
        <translation>No tan cerca del trocánter. Aquí hay tendón y hueso en vez de músculo grueso.</translation>
    </message>
    <message>
        <source>Not above the iliac crest. No gluteal muscle lies here, and a needle can reach the belly.</source>
        <translation>No por encima de la cresta ilíaca. Aquí no hay músculo glúteo y la aguja puede alcanzar el vientre.</translation>
    </message>
    <message>
        <source>In front of the line from spine to trochanter the gluteal muscles end. A dose would miss them.</source>
        <translation>Delante de la línea de la espina al trocánter terminan los músculos glúteos. La dosis no los alcanzaría.</translation>
    </message>
    <message>
        <source>Not in the lower buttock. A needle can injure the sciatic nerve and leave the leg weak or numb.</source>
        <translation>No en la parte baja de la nalga. La aguja puede lesionar el nervio ciático y dejar la pierna débil o insensible.</translation>
    </message>
    <message>
        <source>Not in the dorsogluteal territory. A needle can injure the superior gluteal nerve and artery.</source>
        <translation>No en el territorio dorsoglúteo. La aguja puede lesionar el nervio y la arteria glúteos superiores.</translation>
    </message>
    <message>
        <source>Small branches of the superior gluteal nerve run here. No place over this muscle is free of them.</source>
        <translation>Aquí pasan ramas pequeñas del nervio glúteo superior. Ningún lugar sobre este músculo está libre de ellas.</translation>
    </message>
    <message>
        <source>Press along the outer edge of the shoulder. Where does bone end and soft flesh begin?</source>
        <extracomment>What a fingertip looks for; the bone is named only in the next step.</extracomment>
        <translation>Presione a lo largo del borde externo del hombro. ¿Dónde acaba el hueso y empieza lo blando?</translation>
    </message>
    <message>
        <source>Follow the muscle down the outer side of the arm. Where does it end?</source>
        <translation>Siga el músculo hacia abajo por la cara externa del brazo. ¿Dónde termina?</translation>
    </message>
    <message>
        <source>Press on the outer side of the hip, where it is widest. A hard knob stops the finger.</source>
        <translation>Presione en la cara externa de la cadera, donde es más ancha. Un bulto duro detiene el dedo.</translation>
    </message>
    <message>
        <source>Press on the outer side of the knee. A hard knob stops the finger.</source>
        <translation>Presione en la cara externa de la rodilla. Un bulto duro detiene el dedo.</translation>
    </message>
    <message>
        <source>Press at the front of the hip, beside the belly. A hard point stops the finger.</source>
        <translation>Presione en la parte anterior de la cadera, junto al vientre. Una punta dura detiene el dedo.</translation>
    </message>
    <message>
        <source>Slide the fingertip back from there. A hard edge runs on under it.</source>
        <translation>Deslice la yema del dedo hacia atrás desde ahí. Debajo sigue un borde duro.</translation>
    </message>
    <message>
        <source>Follow the edge back a little way. On its outer lip a small knob rises under the finger.</source>
        <translation>Siga el borde un poco hacia atrás. En su labio externo se nota un bulto pequeño bajo el dedo.</translation>
    </message>
    <message>
        <source>Press at the dimple beside the lower back. A hard point lies under it.</source>
        <translation>Presione en el hoyuelo junto a la parte baja de la espalda. Debajo hay una punta dura.</translation>
    </message>
    <message>
        <source>Around the site: joint and bursa above, the radial nerve below and behind, the axillary nerve across.</source>
        <translation>Alrededor de la zona: articulación y bolsa arriba, el nervio radial abajo y detrás, el nervio axilar de través.</translation>
    </message>
    <message>
        <source>Around the site: a joint at either end, the femoral vessels to the inside, the sciatic nerve behind.</source>
        <translation>Alrededor de la zona: una articulación en cada extremo, los vasos femorales por dentro, el nervio ciático detrás.</translation>
    </message>
    <message>
        <source>Base</source>
        <extracomment>Parts of a figure laid on the body, as short labels on the plate.</extracomment>
        <translation>Base</translation>
    </message>
    <message>
        <source>Apex</source>
        <translation>Vértice</translation>
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
        <source>Measured down</source>
        <extracomment>A distance that has been measured from the acromion downward.</extracomment>
        <translation>Medido hacia abajo</translation>
    </message>
    <message>
        <source>Fingerbreadths</source>
        <translation>Traveses de dedo</translation>
    </message>
    <message>
        <source>Outer line</source>
        <extracomment>The line down the outer side of the thigh.</extracomment>
        <translation>Línea externa</translation>
    </message>
    <message>
        <source>Front line</source>
        <translation>Línea anterior</translation>
    </message>
    <message>
        <source>End of the upper third</source>
        <translation>Fin del tercio superior</translation>
    </message>
    <message>
        <source>Start of the lower third</source>
        <translation>Inicio del tercio inferior</translation>
    </message>
    <message>
        <source>One handbreadth</source>
        <translation>Ancho de una mano</translation>
    </message>
    <message>
        <source>Palm</source>
        <extracomment>Parts of the hand that is laid on the hip.</extracomment>
        <translation>Palma</translation>
    </message>
    <message>
        <source>Index finger</source>
        <translation>Dedo índice</translation>
    </message>
    <message>
        <source>Middle finger</source>
        <translation>Dedo medio</translation>
    </message>
    <message>
        <source>Median</source>
        <extracomment>From a corner of a triangle to the middle of the side facing it.</extracomment>
        <translation>Mediana</translation>
    </message>
    <message>
        <source>Line to the trochanter</source>
        <translation>Línea al trocánter</translation>
    </message>
    <message numerus="yes">
        <source>%n fingerbreadth(s)</source>
        <extracomment>So many fingers of whoever gives the injection, laid side by side.</extracomment>
        <translation>
            <numerusform>%n través de dedo</numerusform>
            <numerusform>%n traveses de dedo</numerusform>
        </translation>
    </message>
    <message>
        <source>Bone</source>
        <extracomment>What a needle would meet in an area of the plate, as a short label.</extracomment>
        <translation>Hueso</translation>
    </message>
    <message>
        <source>Joint and bursa</source>
        <translation>Articulación y bolsa</translation>
    </message>
    <message>
        <source>Radial nerve</source>
        <translation>Nervio radial</translation>
    </message>
    <message>
        <source>Edge of the bursa</source>
        <translation>Borde de la bolsa</translation>
    </message>
    <message>
        <source>Axillary nerve</source>
        <translation>Nervio axilar</translation>
    </message>
    <message>
        <source>Hip joint</source>
        <extracomment>A joint beside the site.</extracomment>
        <translation>Articulación de la cadera</translation>
    </message>
    <message>
        <source>Knee joint</source>
        <translation>Articulación de la rodilla</translation>
    </message>
    <message>
        <source>Femoral vessels</source>
        <translation>Vasos femorales</translation>
    </message>
    <message>
        <source>Sciatic nerve</source>
        <translation>Nervio ciático</translation>
    </message>
    <message>
        <source>Tendon and bone</source>
        <translation>Tendón y hueso</translation>
    </message>
    <message>
        <source>Belly</source>
        <extracomment>The wall of the belly.</extracomment>
        <translation>Vientre</translation>
    </message>
    <message>
        <source>Off the muscle</source>
        <extracomment>No gluteal muscle lies here.</extracomment>
        <translation>Fuera del músculo</translation>
    </message>
    <message>
        <source>Superior gluteal nerve and artery</source>
        <translation>Nervio y arteria glúteos superiores</translation>
    </message>
    <message>
        <source>Small nerve branches</source>
        <translation>Ramas nerviosas pequeñas</translation>
    </message>
    <message>
        <source>Around the site: tendon and bone toward the feet, the belly toward the head, the large nerves behind.</source>
        <translation>Alrededor de la zona: hacia los pies, tendón y hueso; hacia la cabeza, el vientre; detrás, los nervios grandes.</translation>
    </message>
</context>
<context>
    <name>fb::ListModel</name>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Student</source>
        <translation>Estudiante</translation>
    </message>
    <message>
        <source>Sheet</source>
        <extracomment>What a check-off asks.</extracomment>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation>Intento</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Puntuación</translation>
    </message>
    <message>
        <source>Rating</source>
        <extracomment>The overall rating from 1 to 5.</extracomment>
        <translation>Valoración</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
</context>
<context>
    <name>fb::ListView</name>
    <message>
        <source>Only of this sheet</source>
        <translation>Solo de esta ficha</translation>
    </message>
    <message>
        <source>Only of this outcome</source>
        <translation>Solo de este resultado</translation>
    </message>
    <message>
        <source>Only of these days</source>
        <translation>Solo de estos días</translation>
    </message>
    <message>
        <source>From this day</source>
        <translation>Desde este día</translation>
    </message>
    <message>
        <source>To this day</source>
        <translation>Hasta este día</translation>
    </message>
    <message>
        <source>to</source>
        <extracomment>Between two days: from ... to.</extracomment>
        <translation>hasta</translation>
    </message>
    <message>
        <source>Signed check-offs; Enter opens one</source>
        <translation>Evaluaciones firmadas; Intro abre una</translation>
    </message>
    <message>
        <source>Every outcome</source>
        <extracomment>A filter that leaves every outcome in the list.</extracomment>
        <translation>Cualquier resultado</translation>
    </message>
    <message>
        <source>At any time</source>
        <extracomment>When: choices of a filter.</extracomment>
        <translation>En cualquier fecha</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>In the last 7 days</source>
        <translation>En los últimos 7 días</translation>
    </message>
    <message>
        <source>In the last 30 days</source>
        <translation>En los últimos 30 días</translation>
    </message>
    <message>
        <source>Between two days</source>
        <translation>Entre dos días</translation>
    </message>
    <message>
        <source>Every sheet</source>
        <extracomment>A filter that leaves the check-offs of every sheet in the list.</extracomment>
        <translation>Todas las fichas</translation>
    </message>
    <message numerus="yes">
        <source>The newest %n are shown; narrow the search for older ones.</source>
        <translation>
            <numerusform>Se muestra la más reciente (%n); acote la búsqueda para ver anteriores.</numerusform>
            <numerusform>Se muestran las %n más recientes; acote la búsqueda para ver anteriores.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-off(s)</source>
        <translation>
            <numerusform>%n evaluación</numerusform>
            <numerusform>%n evaluaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Name or number</source>
        <translation>Nombre o número</translation>
    </message>
    <message>
        <source>Search check-offs by name or number</source>
        <translation>Buscar evaluaciones por nombre o número</translation>
    </message>
    <message>
        <source>A click on a check-off, or Enter, opens it.</source>
        <translation>Un clic en una evaluación, o Intro, la abre.</translation>
    </message>
</context>
<context>
    <name>fb::LogPage</name>
    <message>
        <source>gradebook</source>
        <translation>calificaciones</translation>
    </message>
    <message>
        <source>check-offs</source>
        <translation>evaluaciones</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Bitácora</translation>
    </message>
    <message>
        <source>Every signature, sheet and practice is written into a log whose entries hold on to each other. Verifying walks the whole log and all records, and names the first entry that does not follow.</source>
        <translation>Cada firma, ficha y práctica se escribe en una bitácora cuyas entradas se encadenan. Verificar recorre toda la bitácora y todos los registros y nombra la primera entrada que no encaja.</translation>
    </message>
    <message>
        <source>Verify</source>
        <translation>Verificar</translation>
    </message>
    <message>
        <source>Verify the log and the records</source>
        <translation>Verificar la bitácora y los registros</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>Backup…</source>
        <translation>Copia de seguridad…</translation>
    </message>
    <message>
        <source>Make a backup of all records</source>
        <translation>Hacer una copia de seguridad de todos los registros</translation>
    </message>
    <message>
        <source>Exports</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>Exports name students and their results. Whoever has the file can read them.</source>
        <translation>Los archivos exportados nombran a los estudiantes y sus resultados. Quien tenga el archivo puede leerlos.</translation>
    </message>
    <message>
        <source>Check-offs of which sheet are exported</source>
        <translation>Las evaluaciones de qué ficha se exportan</translation>
    </message>
    <message>
        <source>Gradebook as CSV…</source>
        <extracomment>One line a student, for a table of grades.</extracomment>
        <translation>Calificaciones en CSV…</translation>
    </message>
    <message>
        <source>Everything as CSV…</source>
        <extracomment>Everything that is kept of each check-off, likewise the next.</extracomment>
        <translation>Todo en CSV…</translation>
    </message>
    <message>
        <source>Everything as JSON…</source>
        <translation>Todo en JSON…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Cancel what is being done</source>
        <translation>Cancelar lo que se está haciendo</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Cuánto lleva hecho</translation>
    </message>
    <message>
        <source>Every sheet</source>
        <translation>Todas las fichas</translation>
    </message>
    <message>
        <source>No backup was made yet. Keep one on another disk.</source>
        <translation>Todavía no se ha hecho ninguna copia de seguridad. Guarde una en otro disco.</translation>
    </message>
    <message>
        <source>The last backup: %1</source>
        <translation>La última copia de seguridad: %1</translation>
    </message>
    <message>
        <source>The log is being verified: %1.</source>
        <translation>Se está verificando la bitácora: %1.</translation>
    </message>
    <message>
        <source>The backup is being made: %1.</source>
        <translation>Se está haciendo la copia de seguridad: %1.</translation>
    </message>
    <message>
        <source>The export is being written: %1.</source>
        <translation>Se está escribiendo el archivo: %1.</translation>
    </message>
    <message>
        <source>A sheet is being made.</source>
        <translation>Se está preparando una hoja.</translation>
    </message>
    <message>
        <source>Cancelled; nothing was found out.</source>
        <translation>Cancelado; no se ha averiguado nada.</translation>
    </message>
    <message>
        <source>Cancelled; no file was left behind.</source>
        <translation>Cancelado; no ha quedado ningún archivo.</translation>
    </message>
    <message>
        <source>The backup was made: %1</source>
        <translation>Copia de seguridad hecha: %1</translation>
    </message>
    <message>
        <source>The export was written: %1</source>
        <translation>Archivo exportado: %1</translation>
    </message>
    <message>
        <source>The sheet was saved: %1</source>
        <translation>Hoja guardada: %1</translation>
    </message>
    <message>
        <source>The sheet was sent to the printer.</source>
        <translation>La hoja se ha enviado a la impresora.</translation>
    </message>
    <message>
        <source>Everything follows and is whole: %1, %2, %3. The log’s head is %4.</source>
        <extracomment>%1 to %3 are counts such as &quot;7 entries of the log&quot;; %4 is the beginning of a hash.</extracomment>
        <translation>Todo encaja y está completo: %1, %2, %3. La cabeza de la bitácora es %4.</translation>
    </message>
    <message>
        <source>fingerbreadth backup %1</source>
        <extracomment>A file&apos;s name; %1 is the day.</extracomment>
        <translation>copia fingerbreadth %1</translation>
    </message>
    <message>
        <source>Put a backup back…</source>
        <extracomment>Asks for the file of a backup, and then whether it is to take the place of the records.</extracomment>
        <translation>Recuperar una copia de seguridad…</translation>
    </message>
    <message>
        <source>The backup is being put back: %1.</source>
        <translation>Se está recuperando la copia de seguridad: %1.</translation>
    </message>
    <message>
        <source>Cancelled; nothing was changed.</source>
        <translation>Cancelado; no se cambió nada.</translation>
    </message>
    <message>
        <source>The log follows, but the file of the records is damaged; put a backup back.</source>
        <translation>La bitácora encaja, pero el archivo de registros está dañado; recupere una copia de seguridad.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(ies) of the log</source>
        <translation>
            <numerusform>%Ln entrada de la bitácora</numerusform>
            <numerusform>%Ln entradas de la bitácora</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln check-off(s)</source>
        <translation>
            <numerusform>%Ln evaluación</numerusform>
            <numerusform>%Ln evaluaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln answer(s)</source>
        <translation>
            <numerusform>%Ln respuesta</numerusform>
            <numerusform>%Ln respuestas</numerusform>
        </translation>
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
    <name>fb::ManikinColumn</name>
    <message>
        <source>Mark the rest not done</source>
        <translation>Marcar el resto como no hecho</translation>
    </message>
    <message>
        <source>Pause…</source>
        <extracomment>Holds the clock; a reason is asked.</extracomment>
        <translation>Pausa…</translation>
    </message>
    <message>
        <source>Void…</source>
        <extracomment>The check-off is given up for a technical reason and uses up no attempt.</extracomment>
        <translation>Anular…</translation>
    </message>
    <message>
        <source>Safety stop…</source>
        <extracomment>The assessor ends the check-off because somebody would come to harm.</extracomment>
        <translation>Parada de seguridad…</translation>
    </message>
    <message>
        <source>Finish</source>
        <extracomment>Ends the phase on the manikin; %n is how many steps are not rated yet.</extracomment>
        <translation>Terminar</translation>
    </message>
    <message>
        <source>Recapped: take it back</source>
        <extracomment>&quot;Recapped&quot;: the cap was put back on a used needle, which is dangerous.</extracomment>
        <translation>Reencapuchada: retirarlo</translation>
    </message>
    <message>
        <source>Used needle recapped</source>
        <translation>Aguja usada reencapuchada</translation>
    </message>
    <message>
        <source>Order of steps</source>
        <extracomment>What must come before what.</extracomment>
        <translation>Orden de los pasos</translation>
    </message>
    <message>
        <source>Order of steps: %1 broken</source>
        <translation>Orden de los pasos: %1 sin respetar</translation>
    </message>
    <message>
        <source>%1 used</source>
        <extracomment>A time such as 4:07.</extracomment>
        <translation>%1 usados</translation>
    </message>
    <message>
        <source>%1 used; the time is up</source>
        <translation>%1 usados; se acabó el tiempo</translation>
    </message>
    <message>
        <source>%1 used, %2 left</source>
        <translation>%1 usados, quedan %2</translation>
    </message>
    <message numerus="yes">
        <source>Finish (%n left)</source>
        <translation>
            <numerusform>Terminar (queda %n)</numerusform>
            <numerusform>Terminar (quedan %n)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2 steps rated</source>
        <extracomment>How many observed steps the assessor has rated: done, prompted or not done.</extracomment>
        <translation>%1 de %2 pasos valorados</translation>
    </message>
    <message>
        <source>A needle is used once it went in: rate “%1” first.</source>
        <translation>Una aguja está usada cuando ha entrado: valore antes «%1».</translation>
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
    <name>fb::MissedList</name>
    <message>
        <source>%1 (critical): %2</source>
        <translation>%1 (crítico): %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <extracomment>A step and what was seen of it, then the assessor&apos;s remark on it.</extracomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Steps on the manikin</source>
        <translation>Pasos en el maniquí</translation>
    </message>
    <message>
        <source>Every step was done without help.</source>
        <translation>Todos los pasos se hicieron sin ayuda.</translation>
    </message>
</context>
<context>
    <name>fb::NotesPanel</name>
    <message>
        <source>Next</source>
        <extracomment>Over the name of the step that comes next.</extracomment>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Page Down goes on, Page Up goes back, B blanks the picture, F6 swaps the screens.</source>
        <translation>Av Pág avanza, Re Pág retrocede, B deja la imagen en blanco, F6 intercambia las pantallas.</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source>This is the last step.</source>
        <translation>Este es el último paso.</translation>
    </message>
    <message>
        <source>There is no note for this step.</source>
        <translation>No hay nota para este paso.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <extracomment>%1 is where a speaker&apos;s note comes from.</extracomment>
        <translation>Fuente: %1</translation>
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
    <name>fb::OutcomePanel</name>
    <message>
        <source>%1, attempt %2 of %3</source>
        <extracomment>Who it is and which attempt: &quot;Ada Marsh, attempt 2 of 3&quot;.</extracomment>
        <translation>%1, intento %2 de %3</translation>
    </message>
    <message>
        <source>– %1</source>
        <extracomment>One of several points in a list.</extracomment>
        <translation>– %1</translation>
    </message>
    <message>
        <source>Score %1, needed %2</source>
        <extracomment>A share of the points in percent and the least that passes.</extracomment>
        <translation>Puntuación %1, se pedía %2</translation>
    </message>
</context>
<context>
    <name>fb::PauseCover</name>
    <message>
        <source>Paused</source>
        <translation>En pausa</translation>
    </message>
    <message>
        <source>The clock stands still.</source>
        <translation>El reloj está parado.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Void…</source>
        <extracomment>Ends the check-off without a result; it uses up no attempt. Asks for the reason.</extracomment>
        <translation>Anular…</translation>
    </message>
</context>
<context>
    <name>fb::PinDialog</name>
    <message>
        <source>Assessors only</source>
        <translation>Solo para quien evalúa</translation>
    </message>
    <message>
        <source>Sheets and the roster are changed by assessors. Who are you?</source>
        <translation>Las fichas y la lista las cambian las personas evaluadoras. ¿Quién es usted?</translation>
    </message>
    <message>
        <source>Assessor</source>
        <translation>Persona evaluadora</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
</context>
<context>
    <name>fb::PinField</name>
    <message>
        <source>Choose a name</source>
        <translation>Elija un nombre</translation>
    </message>
    <message>
        <source>PIN</source>
        <extracomment>A secret number that an assessor signs with.</extracomment>
        <translation>PIN</translation>
    </message>
    <message>
        <source>PIN: %1</source>
        <extracomment>%1 says whose: &quot;Assessor&quot; or &quot;Second assessor&quot;.</extracomment>
        <translation>PIN: %1</translation>
    </message>
</context>
<context>
    <name>fb::PinForm</name>
    <message>
        <source>Assessor</source>
        <translation>Persona evaluadora</translation>
    </message>
    <message numerus="yes">
        <source>The next PIN can be tried in %n second(s).</source>
        <translation>
            <numerusform>Podrá probar otro PIN dentro de %n segundo.</numerusform>
            <numerusform>Podrá probar otro PIN dentro de %n segundos.</numerusform>
        </translation>
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
        <source>Arrows move the crosshair by 5 millimetres, with Shift by 1. Enter places the mark, Enter again hands it in. Backspace withdraws the mark. Plus and minus zoom, zero shows the whole plate, Control with arrows moves the paper.</source>
        <translation>Las flechas mueven la cruz 5 milímetros; con Mayús, 1. Intro coloca la marca; Intro otra vez la entrega. Retroceso retira la marca. Más y menos amplían y reducen, el cero muestra la lámina completa y Control con las flechas desplaza el papel.</translation>
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
    <message>
        <source>Confirm</source>
        <extracomment>In a check-off: the mark is what the student wants to be graded; nothing is told of it.</extracomment>
        <translation>Confirmar</translation>
    </message>
    <message>
        <source>Saving…</source>
        <translation>Guardando…</translation>
    </message>
    <message>
        <source>This answer is not saved yet. Press Confirm to try again.</source>
        <translation>Esta respuesta aún no está guardada. Pulse Confirmar para volver a intentarlo.</translation>
    </message>
    <message>
        <source>The mark can still be moved or withdrawn. Confirm it when you are sure.</source>
        <translation>La marca todavía se puede mover o retirar. Confírmela cuando esté conforme.</translation>
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
    <name>fb::PutBackPanel</name>
    <message>
        <source>It takes the place of the present records, whose file is kept aside whole. Assessors and PINs are then those of the backup, and the records are locked.</source>
        <translation>Ocupa el lugar de los registros actuales, cuyo archivo se guarda aparte, completo. Los evaluadores y los PIN serán entonces los de la copia, y los registros quedan cerrados.</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Recuperarla</translation>
    </message>
    <message>
        <source>Put this backup in the place of the records</source>
        <translation>Poner esta copia de seguridad en lugar de los registros</translation>
    </message>
    <message>
        <source>Keep the present records</source>
        <translation>Conservar los registros actuales</translation>
    </message>
    <message>
        <source>Chosen: %1</source>
        <extracomment>%1 is a file.</extracomment>
        <translation>Elegida: %1</translation>
    </message>
</context>
<context>
    <name>fb::RatingRow</name>
    <message>
        <source>Overall rating (keys 1 to 5)</source>
        <extracomment>The assessor&apos;s own judgement of the whole.</extracomment>
        <translation>Valoración global (teclas 1 a 5)</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <extracomment>A rating: its number, then what it means.</extracomment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Overall rating %1: %2</source>
        <translation>Valoración global %1: %2</translation>
    </message>
</context>
<context>
    <name>fb::ReasonDialog</name>
    <message>
        <source>Pause the check-off?</source>
        <translation>¿Hacer una pausa en la evaluación?</translation>
    </message>
    <message>
        <source>Stop for safety?</source>
        <translation>¿Detener por seguridad?</translation>
    </message>
    <message>
        <source>Void this check-off?</source>
        <translation>¿Anular esta evaluación?</translation>
    </message>
    <message>
        <source>The clock stands still until you go on.</source>
        <translation>El reloj se para hasta que continúe.</translation>
    </message>
    <message>
        <source>The check-off ends here and is not passed. It uses up an attempt.</source>
        <translation>La evaluación termina aquí y no se supera. Gasta un intento.</translation>
    </message>
    <message>
        <source>The check-off ends here and does not count. It uses up no attempt.</source>
        <translation>La evaluación termina aquí y no cuenta. No gasta ningún intento.</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Stop now</source>
        <translation>Detener ahora</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Anular</translation>
    </message>
    <message>
        <source>The student needs a break</source>
        <translation>El estudiante necesita un descanso</translation>
    </message>
    <message>
        <source>Interruption in the room</source>
        <translation>Interrupción en la sala</translation>
    </message>
    <message>
        <source>Trouble with the equipment</source>
        <translation>Problema con el material</translation>
    </message>
    <message>
        <source>A person could have been hurt</source>
        <translation>Alguien podría haberse hecho daño</translation>
    </message>
    <message>
        <source>Uncapped or used needle handled unsafely</source>
        <translation>Aguja sin capuchón o usada manejada de forma insegura</translation>
    </message>
    <message>
        <source>The student is not well enough to go on</source>
        <translation>El estudiante no se encuentra bien para continuar</translation>
    </message>
    <message>
        <source>Computer or equipment failed</source>
        <translation>Falló el equipo o el material</translation>
    </message>
    <message>
        <source>Wrong student chosen</source>
        <translation>Se eligió al estudiante equivocado</translation>
    </message>
    <message>
        <source>Wrong sheet chosen</source>
        <translation>Se eligió la ficha equivocada</translation>
    </message>
    <message>
        <source>Or in your own words</source>
        <translation>O con sus propias palabras</translation>
    </message>
    <message>
        <source>Reason in your own words</source>
        <translation>Motivo con sus propias palabras</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>Did the student not come?</source>
        <translation>¿No se presentó el estudiante?</translation>
    </message>
    <message>
        <source>It is recorded that the student did not come, and you sign it. The sheet says whether it uses up an attempt.</source>
        <translation>Se registra que el estudiante no se presentó y usted lo firma. La ficha dice si eso gasta un intento.</translation>
    </message>
    <message>
        <source>Record it</source>
        <translation>Registrarlo</translation>
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
    <name>fb::RecordsRoom</name>
    <message>
        <source>Board</source>
        <extracomment>Areas of the records. The first: who of a cohort stands where.</extracomment>
        <translation>Tablero</translation>
    </message>
    <message>
        <source>Check-offs</source>
        <translation>Evaluaciones</translation>
    </message>
    <message>
        <source>Log and backup</source>
        <translation>Bitácora y copia</translation>
    </message>
    <message>
        <source>Assessors</source>
        <translation>Personas evaluadoras</translation>
    </message>
    <message>
        <source>Lock</source>
        <extracomment>Shuts the records; the PIN is asked again.</extracomment>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>Lock the records</source>
        <translation>Bloquear los registros</translation>
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
    <name>fb::RemediationPanel</name>
    <message>
        <source>Practice afterwards</source>
        <translation>Práctica posterior</translation>
    </message>
    <message>
        <source>What was practised, in a few words</source>
        <translation>Qué se practicó, en pocas palabras</translation>
    </message>
    <message>
        <source>Sign the practice</source>
        <translation>Firmar la práctica</translation>
    </message>
    <message>
        <source>Signed: %1</source>
        <translation>Firmado: %1</translation>
    </message>
</context>
<context>
    <name>fb::ReplayView</name>
    <message>
        <source>Back to the check-off</source>
        <translation>Volver a la evaluación</translation>
    </message>
    <message>
        <source>Answer before</source>
        <extracomment>An answer of the same check-off.</extracomment>
        <translation>Respuesta anterior</translation>
    </message>
    <message>
        <source>Next answer</source>
        <translation>Respuesta siguiente</translation>
    </message>
    <message>
        <source>Plate with the recorded answer</source>
        <translation>Lámina con la respuesta registrada</translation>
    </message>
    <message>
        <source>As recorded</source>
        <extracomment>What was kept when the check-off was signed.</extracomment>
        <translation>Tal como se registró</translation>
    </message>
    <message>
        <source>Item %1 of %2</source>
        <extracomment>%1 number of an item, %2 how many there are.</extracomment>
        <translation>Ejercicio %1 de %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>What was recorded of an answer: %1 the verdict, %2 how far off it lay.</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>This answer cannot be drawn any more; what was recorded stands.</source>
        <translation>Esta respuesta ya no se puede dibujar; vale lo registrado.</translation>
    </message>
    <message>
        <source>This program’s drawing differs from the one that was shown.</source>
        <translation>El dibujo de este programa difiere del que se mostró.</translation>
    </message>
    <message>
        <source>Graded again on the same drawing it comes to the same.</source>
        <translation>Calificada de nuevo sobre el mismo dibujo, da lo mismo.</translation>
    </message>
    <message>
        <source>Graded again by this program it comes to something else; what was recorded stands.</source>
        <translation>Calificada de nuevo por este programa, da otra cosa; vale lo registrado.</translation>
    </message>
    <message>
        <source>This program’s drawing differs from the one this was graded on; graded again it comes to the same.</source>
        <translation>El dibujo de este programa difiere de aquel con el que se calificó; calificada de nuevo, da lo mismo.</translation>
    </message>
    <message>
        <source>This program’s drawing differs from the one this was graded on, and graded again it comes to something else; what was recorded stands, and the mark may not fit the picture.</source>
        <translation>El dibujo de este programa difiere de aquel con el que se calificó y, calificada de nuevo, da otra cosa; vale lo registrado, y la marca puede no encajar con la imagen.</translation>
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
    <name>fb::RoomModel</name>
    <message>
        <source>Not on the body</source>
        <translation>Fuera del cuerpo</translation>
    </message>
    <message>
        <source>No.</source>
        <extracomment>Head of a column: the number of a mark.</extracomment>
        <translation>Núm.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Off by</source>
        <extracomment>Head of a narrow column: how far from the ideal point.</extracomment>
        <translation>Desvío</translation>
    </message>
</context>
<context>
    <name>fb::RoomPanel</name>
    <message>
        <source>Not on the body</source>
        <translation>Fuera del cuerpo</translation>
    </message>
    <message>
        <source>Each click on the picture is the place a volunteer has named. Reveal shows the region and grades them all.</source>
        <translation>Cada clic en la imagen es el lugar que ha dicho un voluntario. Al revelar se muestra la región y se califican todos.</translation>
    </message>
    <message>
        <source>Ask the room</source>
        <translation>Preguntar a la sala</translation>
    </message>
    <message>
        <source>Read a file…</source>
        <translation>Leer un archivo…</translation>
    </message>
    <message>
        <source>Read marks from a file…</source>
        <translation>Leer marcas de un archivo…</translation>
    </message>
    <message>
        <source>A table with the columns name, x_cm and y_cm</source>
        <translation>Una tabla con las columnas name, x_cm y y_cm</translation>
    </message>
    <message>
        <source>Marks of the room</source>
        <translation>Marcas de la sala</translation>
    </message>
    <message>
        <source>Remove</source>
        <extracomment>Takes one mark out of the list, then all of them.</extracomment>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the chosen mark</source>
        <translation>Quitar la marca elegida</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Vaciar</translation>
    </message>
    <message>
        <source>Clear all marks</source>
        <translation>Quitar todas las marcas</translation>
    </message>
    <message>
        <source>No marks yet</source>
        <translation>Aún no hay marcas</translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation>
            <numerusform>%n marca</numerusform>
            <numerusform>%n marcas</numerusform>
        </translation>
    </message>
    <message>
        <source>Hide</source>
        <extracomment>Shows the region and every mark&apos;s verdict; the other word hides both again.</extracomment>
        <translation>Ocultar</translation>
    </message>
    <message>
        <source>Reveal</source>
        <translation>Revelar</translation>
    </message>
    <message>
        <source>Hide region and verdicts</source>
        <translation>Ocultar la región y los veredictos</translation>
    </message>
    <message>
        <source>Reveal region and verdicts</source>
        <translation>Revelar la región y los veredictos</translation>
    </message>
</context>
<context>
    <name>fb::RosterDialog</name>
    <message>
        <source>(none)</source>
        <extracomment>Of a roster: no column of the file stands for this.</extracomment>
        <translation>(ninguna)</translation>
    </message>
    <message>
        <source>Column %1: %2</source>
        <extracomment>A column without a name; %2 is what stands first in it.</extracomment>
        <translation>Columna %1: %2</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Columna %1</translation>
    </message>
    <message>
        <source>Shown: %1 of %2 rows, those that want a second look first.</source>
        <extracomment>%1 and %2 are numbers of rows.</extracomment>
        <translation>Se muestran: %1 de %2 filas, primero las que piden otra mirada.</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Point out above which column holds the students’ names.</source>
        <translation>Señale arriba qué columna contiene los nombres de los estudiantes.</translation>
    </message>
    <message>
        <source>Point out above which column holds the students’ ids.</source>
        <translation>Señale arriba qué columna contiene los identificadores de los estudiantes.</translation>
    </message>
    <message>
        <source>Import a roster</source>
        <translation>Importar una lista de estudiantes</translation>
    </message>
    <message>
        <source>A CSV file in UTF-8: the first line names the columns, each further line is a student with an id and a name. A OneRoster users.csv is understood as it is. Passwords are never read, and nothing is saved before you have seen it here.</source>
        <translation>Un archivo CSV en UTF-8: la primera línea nombra las columnas y cada línea siguiente es un estudiante con identificador y nombre. Un users.csv de OneRoster se entiende tal cual. Las contraseñas no se leen nunca, y no se guarda nada antes de que usted lo haya visto aquí.</translation>
    </message>
    <message>
        <source>No file is chosen yet.</source>
        <translation>Todavía no se ha elegido archivo.</translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation>Elegir un archivo…</translation>
    </message>
    <message>
        <source>Reading the file</source>
        <translation>Leyendo el archivo</translation>
    </message>
    <message>
        <source>Column of the file for: %1</source>
        <extracomment>%1 is what is meant, as &quot;Family name&quot;.</extracomment>
        <translation>Columna del archivo para: %1</translation>
    </message>
    <message>
        <source>What each row of the file will do</source>
        <translation>Qué hará cada fila del archivo</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message numerus="yes">
        <source>Import %Ln student(s)</source>
        <translation>
            <numerusform>Importar %Ln estudiante</numerusform>
            <numerusform>Importar %Ln estudiantes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::RosterWords</name>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>The same as before</source>
        <translation>Igual que antes</translation>
    </message>
    <message>
        <source>Left out: same id as line %1</source>
        <translation>Omitido: mismo identificador que la línea %1</translation>
    </message>
    <message>
        <source>Left out: no id</source>
        <translation>Omitido: sin identificador</translation>
    </message>
    <message>
        <source>Left out: the id is too long</source>
        <translation>Omitido: identificador demasiado largo</translation>
    </message>
    <message>
        <source>Left out: no name</source>
        <translation>Omitido: sin nombre</translation>
    </message>
    <message>
        <source>%1 %</source>
        <extracomment>%1 is a number: so much more time.</extracomment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Qué hace</translation>
    </message>
    <message>
        <source>%1; extra time unclear: %2</source>
        <extracomment>%1 is &quot;New&quot;, &quot;Changed&quot; or &quot;The same as before&quot;; %2 is what the file says.</extracomment>
        <translation>%1; tiempo adicional poco claro: %2</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Identificador</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellidos</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Full name</source>
        <translation>Nombre completo</translation>
    </message>
    <message>
        <source>Section</source>
        <extracomment>Of a course: the group a student belongs to.</extracomment>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Extra time</source>
        <translation>Tiempo adicional</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>No students</source>
        <translation>Ningún estudiante</translation>
    </message>
    <message numerus="yes">
        <source>%Ln new</source>
        <translation>
            <numerusform>%Ln nuevo</numerusform>
            <numerusform>%Ln nuevos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln changed</source>
        <translation>
            <numerusform>%Ln cambiado</numerusform>
            <numerusform>%Ln cambiados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln the same as before</source>
        <translation>
            <numerusform>%Ln igual que antes</numerusform>
            <numerusform>%Ln iguales que antes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln doubled and left out</source>
        <translation>
            <numerusform>%Ln repetido y omitido</numerusform>
            <numerusform>%Ln repetidos y omitidos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln without a usable id and left out</source>
        <translation>
            <numerusform>%Ln sin identificador válido y omitido</numerusform>
            <numerusform>%Ln sin identificador válido y omitidos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln without a name and left out</source>
        <translation>
            <numerusform>%Ln sin nombre y omitido</numerusform>
            <numerusform>%Ln sin nombre y omitidos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln with an extra time that is unclear</source>
        <translation>
            <numerusform>%Ln con un tiempo adicional poco claro</numerusform>
            <numerusform>%Ln con tiempos adicionales poco claros</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln of another role or to be deleted, passed over</source>
        <translation>
            <numerusform>%Ln con otro rol o por borrar, pasado por alto</numerusform>
            <numerusform>%Ln con otro rol o por borrar, pasados por alto</numerusform>
        </translation>
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
    <message>
        <source>Seed of the run; Enter starts it again</source>
        <translation>Semilla de la serie; Intro la empieza otra vez</translation>
    </message>
</context>
<context>
    <name>fb::SavedPanel</name>
    <message>
        <source>Signed and saved</source>
        <translation>Firmado y guardado</translation>
    </message>
    <message>
        <source>Next student</source>
        <translation>Siguiente estudiante</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>Back to the desk</source>
        <translation>Volver a la mesa</translation>
    </message>
    <message>
        <source>By %1, %2.</source>
        <extracomment>%1 names who signed, %2 is date and time.</extracomment>
        <translation>Por %1, %2.</translation>
    </message>
    <message>
        <source>Log: %1</source>
        <extracomment>%1 is the beginning of a check number that stands on the printed sheet too.</extracomment>
        <translation>Bitácora: %1</translation>
    </message>
    <message>
        <source>Next student: %1</source>
        <extracomment>Begins the check-off of whoever is due; %1 is the name.</extracomment>
        <translation>Siguiente estudiante: %1</translation>
    </message>
</context>
<context>
    <name>fb::SheetDialog</name>
    <message>
        <source>The sheet has no title; give it one.</source>
        <translation>La ficha no tiene título; póngale uno.</translation>
    </message>
    <message>
        <source>The title is too long; shorten it.</source>
        <translation>El título es demasiado largo; acórtelo.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Edit the sheet</source>
        <translation>Editar la ficha</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Title of the sheet</source>
        <translation>Título de la ficha</translation>
    </message>
    <message>
        <source>Invented, to try out</source>
        <extracomment>Of a sheet: sample data, not a lab&apos;s own.</extracomment>
        <translation>Inventada, para probar</translation>
    </message>
    <message>
        <source>Items on screen</source>
        <extracomment>Parts of the sheet, as tabs.</extracomment>
        <translation>Ejercicios en pantalla</translation>
    </message>
    <message>
        <source>Patients and time</source>
        <translation>Pacientes y tiempo</translation>
    </message>
    <message>
        <source>Steps on the manikin</source>
        <translation>Pasos en el maniquí</translation>
    </message>
    <message>
        <source>Passing and attempts</source>
        <translation>Superación e intentos</translation>
    </message>
    <message>
        <source>Open a file…</source>
        <translation>Abrir un archivo…</translation>
    </message>
    <message>
        <source>Save as a file…</source>
        <translation>Guardar en un archivo…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Use this sheet</source>
        <translation>Usar esta ficha</translation>
    </message>
</context>
<context>
    <name>fb::SheetDraw</name>
    <message>
        <source>Patients</source>
        <translation>Pacientes</translation>
    </message>
    <message>
        <source>Seed of these patients</source>
        <translation>Semilla de estos pacientes</translation>
    </message>
    <message>
        <source>Time for each item</source>
        <translation>Tiempo por ejercicio</translation>
    </message>
    <message>
        <source>Time on screen in all</source>
        <translation>Tiempo total en pantalla</translation>
    </message>
    <message>
        <source>Time on the manikin</source>
        <translation>Tiempo en el maniquí</translation>
    </message>
    <message>
        <source>To be held after injecting</source>
        <extracomment>How long the needle stays after injecting, with the Z-track.</extracomment>
        <translation>Mantener la aguja tras inyectar</translation>
    </message>
    <message>
        <source> s</source>
        <extracomment>After a number of seconds.</extracomment>
        <translation> s</translation>
    </message>
</context>
<context>
    <name>fb::SheetItems</name>
    <message>
        <source>Items</source>
        <translation>Ejercicios</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Up</source>
        <extracomment>Moves an item of the list.</extracomment>
        <translation>Subir</translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>Moves an item of the list.</extracomment>
        <translation>Bajar</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vista</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Found by the student’s own hand</source>
        <translation>Localizada con la mano del estudiante</translation>
    </message>
    <message>
        <source>Either, drawn with the patient</source>
        <extracomment>The side of the body is drawn with each patient.</extracomment>
        <translation>Cualquiera, sale con el paciente</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <extracomment>One item of a sheet: its number and what is asked.</extracomment>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>fb::SheetRules</name>
    <message>
        <source>Score to reach</source>
        <translation>Puntuación que alcanzar</translation>
    </message>
    <message>
        <source>A step that was prompted counts</source>
        <translation>Un paso hecho con indicación vale</translation>
    </message>
    <message>
        <source>An item counts as so many steps</source>
        <extracomment>Points of one item on screen, where one step on the manikin counts one.</extracomment>
        <translation>Un ejercicio vale tantos pasos</translation>
    </message>
    <message>
        <source> %</source>
        <extracomment>After a number.</extracomment>
        <translation> %</translation>
    </message>
    <message>
        <source>Whatever the score: a critical step missed, an unsafe mark, an unsafe order, a safety stop or too little time is no pass.</source>
        <translation>Sea cual sea la puntuación: con un paso crítico omitido, una marca insegura, un orden inseguro, una parada de seguridad o falta de tiempo no se supera.</translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation>Intentos</translation>
    </message>
    <message>
        <source>Days between two attempts, at least</source>
        <translation>Días entre dos intentos, como mínimo</translation>
    </message>
    <message>
        <source>Practice is signed before the next attempt</source>
        <translation>La práctica se firma antes del intento siguiente</translation>
    </message>
    <message>
        <source>A second assessor watches the last attempt</source>
        <translation>Una segunda persona evaluadora observa el último intento</translation>
    </message>
    <message>
        <source>Not coming uses up an attempt</source>
        <translation>No presentarse gasta un intento</translation>
    </message>
</context>
<context>
    <name>fb::SheetSteps</name>
    <message>
        <source>The lab’s protocol</source>
        <translation>El protocolo del laboratorio</translation>
    </message>
    <message>
        <source>The skin is cleaned</source>
        <translation>Se limpia la piel</translation>
    </message>
    <message>
        <source>The skin is shifted and the needle held (Z-track)</source>
        <translation>Se desplaza la piel y se mantiene la aguja (técnica en Z)</translation>
    </message>
    <message>
        <source>The student aspirates</source>
        <translation>El estudiante aspira</translation>
    </message>
    <message>
        <source>The drug is drawn up through a filter needle</source>
        <translation>El fármaco se carga con aguja con filtro</translation>
    </message>
    <message>
        <source>Watch all steps</source>
        <extracomment>Of the steps on the manikin.</extracomment>
        <translation>Observar todos los pasos</translation>
    </message>
    <message>
        <source>Watch none</source>
        <translation>No observar ninguno</translation>
    </message>
    <message>
        <source>critical</source>
        <extracomment>A step without which there is no pass.</extracomment>
        <translation>crítico</translation>
    </message>
    <message>
        <source>Critical: %1</source>
        <extracomment>%1 is the name of a step.</extracomment>
        <translation>Crítico: %1</translation>
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
    <name>fb::SignPanel</name>
    <message>
        <source>Assessor</source>
        <translation>Persona evaluadora</translation>
    </message>
    <message>
        <source>Second assessor, for the last attempt</source>
        <translation>Segunda persona evaluadora, para el último intento</translation>
    </message>
    <message>
        <source>Sign</source>
        <extracomment>An assessor puts their name to a check-off.</extracomment>
        <translation>Firmar</translation>
    </message>
    <message>
        <source>No assessor is enrolled yet. Enrol yourself to sign.</source>
        <translation>Todavía no hay nadie dado de alta para evaluar. Dese de alta para firmar.</translation>
    </message>
    <message>
        <source>The PIN keeps others from signing in your name by mistake; this computer&apos;s own accounts protect the records.</source>
        <translation>El PIN evita que otros firmen por error en su nombre; los registros los protegen las cuentas de este equipo.</translation>
    </message>
    <message>
        <source>Enrol</source>
        <translation>Dar de alta</translation>
    </message>
    <message>
        <source>To sign, type the PIN of %1.</source>
        <extracomment>%1 is an assessor&apos;s name.</extracomment>
        <translation>Para firmar, escriba el PIN de %1.</translation>
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
    <name>fb::SiteRow</name>
    <message>
        <source>Site that is shown</source>
        <translation>Zona que se muestra</translation>
    </message>
    <message>
        <source>Side of the patient</source>
        <translation>Lado del paciente</translation>
    </message>
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
    <message>
        <source>%1 too far forward and too high</source>
        <extracomment>In all of these %1 is a length, straight to a place that is off in two ways at once.</extracomment>
        <translation>%1 demasiado adelante y arriba</translation>
    </message>
    <message>
        <source>%1 too far forward and too low</source>
        <translation>%1 demasiado adelante y abajo</translation>
    </message>
    <message>
        <source>%1 too far back and too high</source>
        <translation>%1 demasiado atrás y arriba</translation>
    </message>
    <message>
        <source>%1 too far back and too low</source>
        <translation>%1 demasiado atrás y abajo</translation>
    </message>
    <message>
        <source>%1 too far forward and toward the head</source>
        <translation>%1 demasiado adelante y hacia la cabeza</translation>
    </message>
    <message>
        <source>%1 too far forward and toward the foot</source>
        <translation>%1 demasiado adelante y hacia los pies</translation>
    </message>
    <message>
        <source>%1 too far back and toward the head</source>
        <translation>%1 demasiado atrás y hacia la cabeza</translation>
    </message>
    <message>
        <source>%1 too far back and toward the foot</source>
        <translation>%1 demasiado atrás y hacia los pies</translation>
    </message>
    <message>
        <source>%1 too far forward and too near the hip</source>
        <translation>%1 demasiado adelante y demasiado cerca de la cadera</translation>
    </message>
    <message>
        <source>%1 too far forward and too near the knee</source>
        <translation>%1 demasiado adelante y demasiado cerca de la rodilla</translation>
    </message>
    <message>
        <source>%1 too far back and too near the hip</source>
        <translation>%1 demasiado atrás y demasiado cerca de la cadera</translation>
    </message>
    <message>
        <source>%1 too far back and too near the knee</source>
        <translation>%1 demasiado atrás y demasiado cerca de la rodilla</translation>
    </message>
</context>
<context>
    <name>fb::SpeakerColumn</name>
    <message>
        <source>Step</source>
        <extracomment>Tabs of the speaker&apos;s column: the step that is shown, the body, comparing, what the room answers.</extracomment>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Patient</source>
        <translation>Paciente</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Room</source>
        <extracomment>The lecture room and who sits in it.</extracomment>
        <translation>Sala</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>%1 is what a button leads to, %2 the keys that do the same.</extracomment>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>fb::SpeakerNotes</name>
    <message>
        <source>Say the site and its side aloud, as it will be written down. Then let a volunteer repeat the whole way with the picture blank.</source>
        <translation>Diga en voz alta la zona y el lado, tal como se anotará después. Luego, que una persona voluntaria repita todo el camino con la imagen en blanco.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses (what is recorded)</source>
        <translation>OpenStax, Pharmacology for Nurses (qué se registra)</translation>
    </message>
    <message>
        <source>Bone right under the skin: a needle strikes it. It is there to be felt, never to be injected.</source>
        <translation>Hueso justo debajo de la piel: la aguja choca con él. Está para palparlo, nunca para inyectar en él.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>Seated, the whole shoulder bare, arm at the side. A collar pulled down hides the bone and leads the needle too high; sit down as well, so that you do not aim from above.</source>
        <translation>Sentado, con todo el hombro descubierto y el brazo al costado. Bajar el cuello de la ropa tapa el hueso y lleva la aguja demasiado arriba; siéntese también, para no apuntar desde arriba.</translation>
    </message>
    <message>
        <source>Canadian Pharmacists Journal, on avoiding vaccine shoulder injury (read in a summary)</source>
        <translation>Canadian Pharmacists Journal, sobre cómo evitar la lesión del hombro al vacunar (leído en un resumen)</translation>
    </message>
    <message>
        <source>Everyone on their own shoulder: walk a finger outward along the top until hard turns to soft. Say what you feel before you say its name.</source>
        <translation>Cada cual en su propio hombro: recorra la parte alta con un dedo hacia fuera hasta que lo duro se vuelva blando. Diga qué nota antes de decir cómo se llama.</translation>
    </message>
    <message>
        <source>The lateral edge of the acromion: every distance is counted from here. Counted from the soft rounding of the shoulder instead, the site comes out too high, near joint and bursa.</source>
        <translation>El borde lateral del acromion: todas las distancias se cuentan desde aquí. Si se cuentan desde la redondez blanda del hombro, la zona queda demasiado alta, cerca de la articulación y la bolsa.</translation>
    </message>
    <message>
        <source>CDC, vaccine administration page 50050 (shoulder injury); the slip is common practice, no source</source>
        <translation>CDC, página 50050 sobre administración de vacunas (lesión del hombro); el error es práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>Find the front and the back corner with two fingers. Between them the deltoid begins, about 4.7 cm wide in one study.</source>
        <translation>Busque con dos dedos la esquina anterior y la posterior. Entre ellas nace el deltoides, de unos 4,7 cm de ancho en un estudio.</translation>
    </message>
    <message>
        <source>Kim 2022, BioMed Res Int 1784572 (width of the origin)</source>
        <translation>Kim 2022, BioMed Res Int 1784572 (anchura del origen)</translation>
    </message>
    <message>
        <source>Everyone lays the edge of a flat hand into their own armpit: whatever is lower is too low. Below this level the radial nerve is in reach of a needle.</source>
        <translation>Cada cual pone el canto de la mano en su propia axila: lo que queda más abajo es demasiado bajo. Por debajo del nivel de la axila, la aguja puede alcanzar el nervio radial.</translation>
    </message>
    <message>
        <source>CDC, vaccine administration page 40140 (armpit); Institute for Vaccine Safety, shoulder injury (radial nerve)</source>
        <translation>CDC, página 40140 sobre administración de vacunas (axila); Institute for Vaccine Safety, lesión del hombro (nervio radial)</translation>
    </message>
    <message>
        <source>On a long arm halfway can come out low. This level is the limit: when the two disagree, the armpit wins.</source>
        <translation>En un brazo largo, la mitad puede quedar baja. Este nivel es el límite: si no coinciden, manda la axila.</translation>
    </message>
    <message>
        <source>CDC, vaccine administration page 40140; that the armpit wins is the lab&apos;s choice</source>
        <translation>CDC, página 40140 sobre administración de vacunas; que mande la axila es elección del laboratorio</translation>
    </message>
    <message>
        <source>Halfway between the front and the back of the arm, not halfway across what you see from the front. The usual slip is an apex too far forward.</source>
        <translation>A medio camino entre la cara anterior y la posterior del brazo, no de lo que se ve de frente. El error habitual es un vértice demasiado adelantado.</translation>
    </message>
    <message>
        <source>Base up, apex down: the muscle lies inside. The triangle shows where the muscle is, not yet where the needle goes; its upper part lies over the bursa.</source>
        <translation>Base arriba, vértice abajo: el músculo queda dentro. El triángulo muestra dónde está el músculo, todavía no dónde entra la aguja; su parte alta está sobre la bolsa.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses (triangle); Behrens and Patel 2021, Lancet 397:471 (bursa)</source>
        <translation>OpenStax, Pharmacology for Nurses (triángulo); Behrens y Patel 2021, Lancet 397:471 (bolsa)</translation>
    </message>
    <message>
        <source>Straight down the outer side. Behind this line the axillary nerve lies nearer the acromion than in front: 4.9 against 6.1 cm on average in 24 arms.</source>
        <translation>Recta hacia abajo por la cara externa. Detrás de esta línea el nervio axilar está más cerca del acromion que delante: 4,9 frente a 6,1 cm de media en 24 brazos.</translation>
    </message>
    <message>
        <source>Cetik 2006, J Bone Joint Surg Am 88:2395 (24 arms)</source>
        <translation>Cetik 2006, J Bone Joint Surg Am 88:2395 (24 brazos)</translation>
    </message>
    <message>
        <source>From the acromion to where the muscle ends, about 16 cm on average. Let the room name the middle by eye, then measure it together.</source>
        <translation>Del acromion hasta donde termina el músculo, unos 16 cm de media. Que la sala calcule el punto medio a ojo y después mídanlo juntos.</translation>
    </message>
    <message>
        <source>Kim 2022, BioMed Res Int 1784572 (length of the muscle)</source>
        <translation>Kim 2022, BioMed Res Int 1784572 (longitud del músculo)</translation>
    </message>
    <message>
        <source>Three to five centimetres on an arm of average length, less on a short one. Two students measure the same shoulder with their own fingers: show how far they differ.</source>
        <translation>De tres a cinco centímetros en un brazo de longitud media, menos en uno corto. Dos estudiantes miden el mismo hombro con sus propios dedos: enseñe cuánto difieren.</translation>
    </message>
    <message>
        <source>Life 16(5):724 (3 to 5 cm); that it follows the arm&apos;s length is the lab&apos;s choice</source>
        <translation>Life 16(5):724 (de 3 a 5 cm); que siga la longitud del brazo es elección del laboratorio</translation>
    </message>
    <message>
        <source>About 3.8 cm on an arm of average length. Two inches lie a good centimetre lower on the same arm: say which rule your school uses.</source>
        <translation>Unos 3,8 cm en un brazo de longitud media. Dos pulgadas quedan algo más de un centímetro por debajo en el mismo brazo: diga qué regla usa su escuela.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses (1.5 inches); CDC, vaccine administration page 40140 (2 inches)</source>
        <translation>OpenStax, Pharmacology for Nurses (1,5 pulgadas); CDC, página 40140 sobre administración de vacunas (2 pulgadas)</translation>
    </message>
    <message>
        <source>About two inches, five centimetres, on an arm of average length. Let everyone show two inches between thumb and finger, then lay a ruler beside it.</source>
        <translation>Unas dos pulgadas, cinco centímetros, en un brazo de longitud media. Que cada cual muestre dos pulgadas entre el pulgar y otro dedo y compare después con una regla.</translation>
    </message>
    <message>
        <source>CDC, vaccine administration page 40140 (about 2 inches)</source>
        <translation>CDC, página 40140 sobre administración de vacunas (unas 2 pulgadas)</translation>
    </message>
    <message>
        <source>In pairs: fingers flat below the neighbour&apos;s acromion, one under the other. Fingers differ; four of them came to 9 cm in one paper, so three can reach lower than the rule means.</source>
        <translation>Por parejas: los dedos planos bajo el acromion del compañero, uno debajo de otro. Los dedos varían; cuatro sumaron 9 cm en un artículo, así que tres pueden llegar más abajo de lo que quiere la regla.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses (two to three fingers); Charmode 2024, Cureus (four fingers)</source>
        <translation>OpenStax, Pharmacology for Nurses (dos o tres dedos); Charmode 2024, Cureus (cuatro dedos)</translation>
    </message>
    <message>
        <source>Follow the muscle down the outer side until it narrows and ends: a dull spot, not a sharp one. Lifting the arm a little against a hand makes the muscle stand out.</source>
        <translation>Siga el músculo por la cara externa hasta que se estrecha y termina: un punto romo, no afilado. Al levantar un poco el brazo contra una mano, el músculo se marca.</translation>
    </message>
    <message>
        <source>from memory, no source read</source>
        <translation>de memoria, sin fuente leída</translation>
    </message>
    <message>
        <source>The deltoid tuberosity, where the muscle ends. The radial nerve passes about two centimetres from it: a landmark, never a site.</source>
        <translation>La tuberosidad deltoidea, donde termina el músculo. El nervio radial pasa a unos dos centímetros: es un punto de referencia, nunca una zona de inyección.</translation>
    </message>
    <message>
        <source>Arch Orthop Trauma Surg 2023;143:4977 (radial nerve and tuberosity)</source>
        <translation>Arch Orthop Trauma Surg 2023;143:4977 (nervio radial y tuberosidad)</translation>
    </message>
    <message>
        <source>Thick muscle, and still no empty place: bursa above, the axillary nerve round the back. Too long a needle goes through the muscle, too short a one stays in fat.</source>
        <translation>Músculo grueso y, aun así, ningún lugar vacío: la bolsa arriba, el nervio axilar por detrás. Una aguja demasiado larga atraviesa el músculo; una demasiado corta se queda en la grasa.</translation>
    </message>
    <message>
        <source>Behrens and Patel 2021, Lancet 397:471 (bursa); Patra 2018, Anat Cell Biol 51:93 (nerve); Poland 1997, JAMA 277:1709 (needle)</source>
        <translation>Behrens y Patel 2021, Lancet 397:471 (bolsa); Patra 2018, Anat Cell Biol 51:93 (nervio); Poland 1997, JAMA 277:1709 (aguja)</translation>
    </message>
    <message>
        <source>Published rules run from 3.8 to 9 cm below the acromion. This strip holds the two best known of them; where you work, the local policy decides.</source>
        <translation>Las reglas publicadas van de 3,8 a 9 cm por debajo del acromion. Esta franja contiene las dos más conocidas; en su lugar de trabajo decide la normativa local.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses; CDC, vaccine administration page 40140; Charmode 2024, Cureus</source>
        <translation>OpenStax, Pharmacology for Nurses; CDC, página 40140 sobre administración de vacunas; Charmode 2024, Cureus</translation>
    </message>
    <message>
        <source>Bone right under the skin: the needle strikes it. Whoever presses before looking never comes here.</source>
        <translation>Hueso justo debajo de la piel: la aguja choca con él. Quien palpa antes de mirar nunca llega aquí.</translation>
    </message>
    <message>
        <source>The radial nerve winds round the bone here. Ask what a hand looks like that cannot be lifted at the wrist.</source>
        <translation>Aquí el nervio radial rodea el hueso. Pregunte qué aspecto tiene una mano que no puede levantarse por la muñeca.</translation>
    </message>
    <message>
        <source>Institute for Vaccine Safety, shoulder injury (radial nerve); the wrist is from memory, no source read</source>
        <translation>Institute for Vaccine Safety, lesión del hombro (nervio radial); lo de la muñeca, de memoria, sin fuente leída</translation>
    </message>
    <message>
        <source>Low on the back of the arm: the radial nerve reaches the bone about 12 cm below the acromion, in 24 arms never nearer than 9.7 cm. The usual slip is to inject where the sleeve happens to end.</source>
        <translation>Abajo, en la cara posterior del brazo: el nervio radial alcanza el hueso unos 12 cm por debajo del acromion, en 24 brazos nunca a menos de 9,7 cm. El error habitual es inyectar donde termina la manga.</translation>
    </message>
    <message>
        <source>Surgical anatomy of the radial nerve around the humerus (24 arms); the slip is common practice, no source</source>
        <translation>Surgical anatomy of the radial nerve around the humerus (anatomía del nervio radial en el húmero, 24 brazos); el error es práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>On the back, toes up, the thigh bare from hip to knee. A trouser leg rolled up from below hides the upper landmark and draws the site down.</source>
        <translation>Boca arriba, con los dedos del pie hacia el techo y el muslo descubierto de la cadera a la rodilla. Un pantalón remangado tapa el punto de referencia superior y baja la zona.</translation>
    </message>
    <message>
        <source>Everyone stands up, presses the outer side of the hip and turns that foot in and out: the hard knob that moves is the one. Under fat it is a dull resistance; press slowly and deep.</source>
        <translation>Todos de pie: presionen la cara externa de la cadera y giren ese pie hacia dentro y hacia fuera; el bulto duro que se mueve es el que buscan. Bajo la grasa es una resistencia sorda; presionen despacio y hondo.</translation>
    </message>
    <message>
        <source>The greater trochanter, the upper end of the line. The usual slip is to stop higher, on the edge of the pelvis: the site then slides up toward the hip.</source>
        <translation>El trocánter mayor, extremo superior de la línea. El error habitual es quedarse más arriba, en el borde de la pelvis: la zona sube entonces hacia la cadera.</translation>
    </message>
    <message>
        <source>Everyone bends a knee a little and feels its outer side: broad, hard bone just above the joint.</source>
        <translation>Cada cual dobla un poco la rodilla y palpa su cara externa: hueso ancho y duro, justo por encima de la articulación.</translation>
    </message>
    <message>
        <source>The lateral femoral condyle, the lower end of the line. For an infant the line is drawn to the patella instead.</source>
        <translation>El cóndilo femoral lateral, extremo inferior de la línea. En un lactante, la línea se traza hasta la rótula.</translation>
    </message>
    <message>
        <source>Melbourne Vaccine Education Centre, injected vaccines (infant); for adults common practice, no source</source>
        <translation>Melbourne Vaccine Education Centre, vacunas inyectadas (lactantes); en adultos, práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>Lay a tape along it: down the outer side, not over the front. The leg rolls outward by itself, and the line must roll with it.</source>
        <translation>Coloque una cinta métrica a lo largo: por la cara externa, no por delante. La pierna rueda sola hacia fuera, y la línea debe rodar con ella.</translation>
    </message>
    <message>
        <source>Above this line the muscle is only beginning, and tendon and joint are near. For infants this very height was once taught: say which rule you use.</source>
        <translation>Por encima de esta línea el músculo apenas empieza, y el tendón y la articulación están cerca. En lactantes se enseñó antes esta misma altura: diga qué regla usa.</translation>
    </message>
    <message>
        <source>Cook and Murtagh 2002, Aust Fam Physician 31:295 (infants); for adults common practice, no source</source>
        <translation>Cook y Murtagh 2002, Aust Fam Physician 31:295 (lactantes); en adultos, práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>Below this line the muscle runs out into tendon toward the knee. Let the room divide their own thigh into thirds by eye, then check with a tape.</source>
        <translation>Por debajo de esta línea el músculo se convierte en tendón hacia la rodilla. Que la sala divida a ojo su propio muslo en tercios y lo compruebe después con una cinta.</translation>
    </message>
    <message>
        <source>A flat hand below the trochanter, and no tape is needed. Ask whose hand: a large one on a short thigh leaves little between the two.</source>
        <translation>Una mano plana por debajo del trocánter, y no hace falta cinta. Pregunte de quién es la mano: una grande en un muslo corto deja poco entre las dos.</translation>
    </message>
    <message>
        <source>Laid above the knee, not on it. Hands differ: 7.8 cm across on average in women, 8.8 cm in men, so the region ends about a centimetre apart on the same thigh.</source>
        <translation>Por encima de la rodilla, no sobre ella. Las manos varían: 7,8 cm de ancho de media en mujeres y 8,8 cm en hombres, de modo que la región termina a un centímetro de distancia en el mismo muslo.</translation>
    </message>
    <message>
        <source>ANSUR II 2012, public data (breadth of the hand)</source>
        <translation>ANSUR II 2012, datos públicos (anchura de la mano)</translation>
    </message>
    <message>
        <source>From the anterior superior iliac spine to the middle of the patella. Beside it lies the rectus femoris, with vessels and a nerve under its middle; stay on the outer side.</source>
        <translation>De la espina ilíaca anterosuperior al centro de la rótula. Junto a ella está el recto femoral, con vasos y un nervio bajo su parte media; quédese en la cara externa.</translation>
    </message>
    <message>
        <source>Nakajima 2020, safe sites in the thigh (24 thighs)</source>
        <translation>Nakajima 2020, zonas seguras del muslo (24 muslos)</translation>
    </message>
    <message>
        <source>The outer middle of the thigh: no large vessel or nerve was met in 24 dissected thighs. Two injections in one thigh are kept at least 2.5 cm apart.</source>
        <translation>La parte media externa del muslo: en 24 muslos disecados no se encontró ningún vaso ni nervio grande. Dos inyecciones en un mismo muslo se separan al menos 2,5 cm.</translation>
    </message>
    <message>
        <source>Nakajima 2020, safe sites in the thigh (24 thighs); Australian Immunisation Handbook (2.5 cm)</source>
        <translation>Nakajima 2020, zonas seguras del muslo (24 muslos); Australian Immunisation Handbook (2,5 cm)</translation>
    </message>
    <message>
        <source>In front the rectus femoris, farther in the femoral vessels and the femoral nerve; behind the hamstrings and the sciatic nerve; at both ends tendon and joint.</source>
        <translation>Delante, el recto femoral; más adentro, los vasos femorales y el nervio femoral; detrás, los isquiotibiales y el nervio ciático; en los dos extremos, tendón y articulación.</translation>
    </message>
    <message>
        <source>Nakajima 2020, safe sites in the thigh (front); the rest is common practice, no source</source>
        <translation>Nakajima 2020, zonas seguras del muslo (parte anterior); lo demás es práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>Bone under thin skin. Whoever lands here has counted from the wrong end.</source>
        <translation>Hueso bajo una piel fina. Quien llega aquí ha contado desde el extremo equivocado.</translation>
    </message>
    <message>
        <source>Too high: tendon and joint, and little muscle. It happens when a bone farther up was taken for the trochanter.</source>
        <translation>Demasiado alto: tendón y articulación, y poco músculo. Ocurre cuando se toma por trocánter un hueso situado más arriba.</translation>
    </message>
    <message>
        <source>Too low: tendon and the knee joint. It happens when the site is found by habit and not by both landmarks.</source>
        <translation>Demasiado bajo: el tendón y la articulación de la rodilla. Ocurre cuando la zona se busca por costumbre y no por los dos puntos de referencia.</translation>
    </message>
    <message>
        <source>Inside the front line run the femoral vessels and the femoral nerve. Harm: bleeding into the thigh, a numb front, a knee that gives way.</source>
        <translation>Por dentro de la línea anterior van los vasos femorales y el nervio femoral. Daño: sangrado en el muslo, cara anterior dormida, rodilla que falla.</translation>
    </message>
    <message>
        <source>Behind the outer line come the hamstrings, and deep to them the sciatic nerve. The usual slip is to reach round a thigh that has rolled outward.</source>
        <translation>Detrás de la línea externa empiezan los isquiotibiales y, más profundo, el nervio ciático. El error habitual es rodear con la mano un muslo que ha rodado hacia fuera.</translation>
    </message>
    <message>
        <source>For the injection the patient lies on the side, knees bent, the upper leg slightly ahead, so that the muscle is at ease. Some books keep the legs straight or teach it lying on the back: say which you use.</source>
        <translation>Para la inyección, el paciente se tumba de lado, con las rodillas dobladas y la pierna de arriba algo adelantada, para que el músculo esté relajado. Algunos libros mantienen las piernas rectas o lo enseñan boca arriba: diga cuál usa.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses (side, knees bent); the rest is from memory, no source read</source>
        <translation>OpenStax, Pharmacology for Nurses (de lado, rodillas dobladas); lo demás, de memoria, sin fuente leída</translation>
    </message>
    <message>
        <source>The greater trochanter: the palm will lie over it. Points found by hand tend to lie too low, so press until you are sure of the bone.</source>
        <translation>El trocánter mayor: la palma descansará sobre él. Los puntos hallados con la mano tienden a quedar demasiado bajos, así que presione hasta estar seguro del hueso.</translation>
    </message>
    <message>
        <source>Japanese Journal of Nursing Art and Science 10(2), article 4</source>
        <translation>Japanese Journal of Nursing Art and Science 10(2), artículo 4</translation>
    </message>
    <message>
        <source>Hands on your hips, all of you: follow the rim forward to the bony point in front. Feel it left and right; it is never quite where the eye expects it.</source>
        <translation>Todos con las manos en las caderas: sigan el borde hacia delante hasta el punto óseo. Pálpenlo a izquierda y derecha; nunca está del todo donde el ojo lo espera.</translation>
    </message>
    <message>
        <source>The anterior superior iliac spine, the front end of the crest. Whoever stops on the crest behind it turns the whole hand back, toward the dorsogluteal territory.</source>
        <translation>La espina ilíaca anterosuperior, extremo anterior de la cresta. Quien se queda en la cresta, más atrás, gira toda la mano hacia el territorio dorsoglúteo.</translation>
    </message>
    <message>
        <source>Follow the hard edge from that point as far as it goes. In a heavy patient a fold of fat is no edge: fat gives way, bone does not.</source>
        <translation>Siga el borde duro desde ese punto hasta donde llegue. En un paciente obeso un pliegue de grasa no es un borde: la grasa cede, el hueso no.</translation>
    </message>
    <message>
        <source>The iliac crest. The site lies below it, always: above it there is only the abdominal wall.</source>
        <translation>La cresta ilíaca. La zona está siempre por debajo: por encima solo hay pared abdominal.</translation>
    </message>
    <message>
        <source>Left hand for the right hip, right hand for the left hip. Let two students try the wrong hand: the fingers open to the front, off the muscle.</source>
        <translation>Mano izquierda para la cadera derecha, mano derecha para la izquierda. Que dos estudiantes prueben con la mano equivocada: los dedos se abren hacia delante, fuera del músculo.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses (ventrogluteal procedure)</source>
        <translation>OpenStax, Pharmacology for Nurses (procedimiento ventroglúteo)</translation>
    </message>
    <message>
        <source>The fingertip stays on the bony point. Where a small hand does not reach, this lab keeps the palm on the trochanter and points the finger at it.</source>
        <translation>La yema se queda sobre el punto óseo. Si una mano pequeña no llega, aquí se mantiene la palma sobre el trocánter y se apunta con el dedo hacia él.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses (ventrogluteal procedure); a small hand: lab&apos;s choice</source>
        <translation>OpenStax, Pharmacology for Nurses (procedimiento ventroglúteo); la mano pequeña: elección del laboratorio</translation>
    </message>
    <message>
        <source>Opened back along the crest, as wide as is comfortable. Fingers kept close together leave no room for a needle, and the next thing it meets is your own finger.</source>
        <translation>Se abre hacia atrás a lo largo de la cresta, tanto como resulte cómodo. Los dedos juntos no dejan sitio para la aguja, y lo primero que encuentra es su propio dedo.</translation>
    </message>
    <message>
        <source>OpenStax, Pharmacology for Nurses (ventrogluteal procedure); the slip is common practice, no source</source>
        <translation>OpenStax, Pharmacology for Nurses (procedimiento ventroglúteo); el error es práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>The site lies between the fingers, and hands differ in size. Lay a small and a large hand on the same hip and mark both middles.</source>
        <translation>La zona está entre los dedos, y las manos varían de tamaño. Ponga una mano pequeña y una grande sobre la misma cadera y marque los dos centros.</translation>
    </message>
    <message>
        <source>From the bony point in front about 5 cm back along the crest, on its outer lip: the rim grows broader under the finger.</source>
        <translation>Desde el punto óseo anterior, unos 5 cm hacia atrás por la cresta, en su labio externo: el borde se ensancha bajo el dedo.</translation>
    </message>
    <message>
        <source>Wikipedia, Iliac tubercle (5 cm)</source>
        <translation>Wikipedia, artículo sobre el tubérculo ilíaco (Iliac tubercle, 5 cm)</translation>
    </message>
    <message>
        <source>The iliac tubercle, the third corner. All three corners are bone of the patient, so the size of your own hand does not matter.</source>
        <translation>El tubérculo ilíaco, la tercera esquina. Las tres esquinas son hueso del paciente, así que el tamaño de su propia mano no importa.</translation>
    </message>
    <message>
        <source>Int J Nurs Stud 2015 (two methods in 120 adults)</source>
        <translation>Int J Nurs Stud 2015 (dos métodos en 120 adultos)</translation>
    </message>
    <message>
        <source>A volunteer touches all three corners before anything is drawn. One corner that is wrong moves the site by a third of the error.</source>
        <translation>Una persona voluntaria toca las tres esquinas antes de dibujar nada. Una esquina equivocada desplaza la zona un tercio del error.</translation>
    </message>
    <message>
        <source>arithmetic of the triangle; the construction is common practice, no source</source>
        <translation>aritmética del triángulo; la construcción es práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>From each corner to the middle of the side facing it. Where the lines do not meet in one point, a middle was wrong; two of them are enough in practice.</source>
        <translation>De cada esquina al centro del lado opuesto. Si las líneas no se cruzan en un punto, algún centro estaba mal; en la práctica bastan dos.</translation>
    </message>
    <message>
        <source>Gluteus medius and gluteus minimus, thick over the bone. Do not call it free of nerves: branches of the superior gluteal nerve run 4 to 8 cm above the trochanter.</source>
        <translation>Glúteo medio y glúteo menor, gruesos sobre el hueso. No diga que está libre de nervios: ramas del nervio glúteo superior pasan de 4 a 8 cm por encima del trocánter.</translation>
    </message>
    <message>
        <source>safe distance for the superior gluteal nerve and thigh length (20 limbs)</source>
        <translation>distancia segura para el nervio glúteo superior y longitud del muslo (20 extremidades)</translation>
    </message>
    <message>
        <source>In 120 adults this point and the one between the fingers differed, and the authors prefer this one. Muscle and fat are about as thick at either.</source>
        <translation>En 120 adultos este punto y el situado entre los dedos no coincidieron, y los autores prefieren este. El músculo y la grasa tienen un grosor parecido en ambos.</translation>
    </message>
    <message>
        <source>Int J Nurs Stud 2015 (two methods in 120 adults); Gulnar 2023 (thickness, six studies)</source>
        <translation>Int J Nurs Stud 2015 (dos métodos en 120 adultos); Gulnar 2023 (grosor, seis estudios)</translation>
    </message>
    <message>
        <source>Below are the trochanter and its tendons, above the crest and the belly, behind the superior gluteal nerve and then the sciatic nerve. Skin to muscle was over 35 mm in 12 of 100 people here, in 43 in the buttock.</source>
        <translation>Abajo, el trocánter y sus tendones; arriba, la cresta y el vientre; detrás, el nervio glúteo superior y después el nervio ciático. De la piel al músculo había más de 35 mm en 12 de cada 100 personas aquí, y en 43 en la nalga.</translation>
    </message>
    <message>
        <source>Diagnostics 2023;13:2314 (nerve); Nisbet 2006, BMJ 332:637 (depth)</source>
        <translation>Diagnostics 2023;13:2314 (nervio); Nisbet 2006, BMJ 332:637 (profundidad)</translation>
    </message>
    <message>
        <source>The rim of the pelvis, bone right under the skin: a needle strikes it. Feel for the edge first, then stay at least a centimetre below it.</source>
        <translation>El reborde de la pelvis, hueso justo debajo de la piel: la aguja choca con él. Palpe primero el borde y quédese después al menos un centímetro por debajo.</translation>
    </message>
    <message>
        <source>common practice, no source; the centimetre is the lab&apos;s choice</source>
        <translation>práctica habitual, sin fuente; el centímetro es elección del laboratorio</translation>
    </message>
    <message>
        <source>Close to the trochanter there is tendon and bone instead of thick muscle. It happens with a palm laid too low, below the bone instead of over it.</source>
        <translation>Junto al trocánter hay tendón y hueso en lugar de músculo grueso. Ocurre con la palma demasiado baja, por debajo del hueso en vez de encima.</translation>
    </message>
    <message>
        <source>Above the crest no gluteal muscle is left, and a needle can reach the belly. It happens when a fold of fat was taken for the crest.</source>
        <translation>Por encima de la cresta ya no queda músculo glúteo, y la aguja puede llegar al vientre. Ocurre cuando se toma un pliegue de grasa por la cresta.</translation>
    </message>
    <message>
        <source>The sciatic nerve runs down between trochanter and ischial tuberosity. One series counted 217 injured nerves, every one from the buttock: pain, a numb leg, a foot that drops.</source>
        <translation>El nervio ciático baja entre el trocánter y la tuberosidad isquiática. Una serie contó 217 nervios lesionados, todos por inyectar en la nalga: dolor, pierna dormida, pie caído.</translation>
    </message>
    <message>
        <source>Clin Anat 2015;28:144 (course); Turkish Neurosurgery, 217 injuries; the signs are from memory, no source read</source>
        <translation>Clin Anat 2015;28:144 (trayecto); Turkish Neurosurgery, 217 lesiones; los signos, de memoria, sin fuente leída</translation>
    </message>
    <message>
        <source>The old upper outer quadrant. A needle set there met the superior gluteal nerve in 20 of 24 dissected buttocks, and only 32 of 100 doses reached muscle in another study.</source>
        <translation>El antiguo cuadrante superoexterno. Una aguja puesta ahí encontró el nervio glúteo superior en 20 de 24 nalgas disecadas, y en otro estudio solo 32 de cada 100 dosis llegaron al músculo.</translation>
    </message>
    <message>
        <source>Japanese Journal of Nursing Art and Science 6(2), article 4; Chan 2006, Eur J Radiol 58(3)</source>
        <translation>Japanese Journal of Nursing Art and Science 6(2), artículo 4; Chan 2006, Eur J Radiol 58(3)</translation>
    </message>
    <message>
        <source>Look for the dimple low in the back, then press: a bony point lies under it. Let neighbours find it on each other through the shirt.</source>
        <translation>Busque el hoyuelo en la parte baja de la espalda y presione: debajo hay un punto óseo. Que cada pareja lo encuentre por encima de la ropa.</translation>
    </message>
    <message>
        <source>The posterior superior iliac spine, the back end of the crest. It is felt here to see where not to inject.</source>
        <translation>La espina ilíaca posterosuperior, extremo posterior de la cresta. Se palpa aquí para ver dónde no inyectar.</translation>
    </message>
    <message>
        <source>Below this line runs the sciatic nerve, above it the superior gluteal nerve. The quadrant belongs to the whole buttock up to the crest, not to its rounded part: that slip leads to the nerve.</source>
        <translation>Por debajo de esta línea va el nervio ciático; por encima, el nervio glúteo superior. El cuadrante corresponde a toda la nalga hasta la cresta, no a su parte redondeada: ese error lleva al nervio.</translation>
    </message>
    <message>
        <source>Ellis, Clinical Anatomy (quadrant); the line is common practice, no source</source>
        <translation>Ellis, Clinical Anatomy (cuadrante); la línea es práctica habitual, sin fuente</translation>
    </message>
    <message>
        <source>Joint and bursa above, the radial nerve low behind, the axillary nerve across. Where the region touches the bursa&apos;s edge or a nerve band, nothing is wrong: taught distances and measured anatomy overlap on many arms. What is only near never changes a grade.</source>
        <translation>Arriba, articulación y bolsa; abajo y detrás, el nervio radial; de través, el axilar. Si la región toca el borde de la bolsa o una banda del nervio, no es un error: lo que se enseña y lo medido se solapan en muchos brazos. Lo cercano nunca cambia la nota.</translation>
    </message>
    <message>
        <source>Behrens and Patel 2021, Lancet 397:471 (bursa to 4 cm); Patra 2018, Anat Cell Biol 51:93, and Cetik 2006, J Bone Joint Surg Am 88:2395 (nerve); that near things never change a grade is the lab&apos;s choice</source>
        <translation>Behrens y Patel 2021, Lancet 397:471 (bolsa hasta 4 cm); Patra 2018, Anat Cell Biol 51:93, y Cetik 2006, J Bone Joint Surg Am 88:2395 (nervio); que lo cercano nunca cambie la nota es elección del laboratorio</translation>
    </message>
    <message>
        <source>The bursa can reach 4 cm below the acromion, little more than a centimetre under the skin. A dose set into it or into the joint can leave the shoulder painful and stiff, mostly within 48 hours.</source>
        <translation>La bolsa puede llegar 4 cm por debajo del acromion, a poco más de un centímetro bajo la piel. Una dosis puesta en ella o en la articulación puede dejar el hombro dolorido y rígido, casi siempre en 48 horas.</translation>
    </message>
    <message>
        <source>Behrens and Patel 2021, Lancet 397:471; CDC, vaccine administration page 50050 (shoulder injury); Bancsi 2019, Can Fam Physician 65:40 (48 hours)</source>
        <translation>Behrens y Patel 2021, Lancet 397:471; CDC, página 50050 sobre administración de vacunas (lesión del hombro); Bancsi 2019, Can Fam Physician 65:40 (48 horas)</translation>
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
    <name>fb::StepDelegate</name>
    <message>
        <source>%1 %2</source>
        <extracomment>A step: its number, then its name.</extracomment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>fb::StepList</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>Of a group of steps: so many have been said, of so many.</extracomment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <extracomment>%1 is a group of steps that began in the column before.</extracomment>
        <translation>%1 (continuación)</translation>
    </message>
</context>
<context>
    <name>fb::StepPanel</name>
    <message>
        <source>%1 %2</source>
        <extracomment>A key, then what it does: &quot;1 Done&quot;.</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>This step: %1</source>
        <translation>Este paso: %1</translation>
    </message>
    <message>
        <source>R Remark</source>
        <extracomment>The key R, then what it does.</extracomment>
        <translation>R Observación</translation>
    </message>
    <message>
        <source>Remark on this step</source>
        <translation>Observación sobre este paso</translation>
    </message>
</context>
<context>
    <name>fb::StepRail</name>
    <message>
        <source>Back</source>
        <extracomment>To the step before, to the next one.</extracomment>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Back (Page Up)</source>
        <translation>Atrás (Re Pág)</translation>
    </message>
    <message>
        <source>Next (Page Down)</source>
        <translation>Siguiente (Av Pág)</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
</context>
<context>
    <name>fb::StepRow</name>
    <message>
        <source>%1 (critical)</source>
        <extracomment>An observed step that must not be missed; %1 is its name.</extracomment>
        <translation>%1 (crítico)</translation>
    </message>
    <message>
        <source>%1: nothing said yet</source>
        <extracomment>Told to a screen reader of a step; %1 is its name.</extracomment>
        <translation>%1: aún sin valorar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is a step, %2 is &quot;not done&quot;.</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 at %3</source>
        <extracomment>%1 is a step, %2 is &quot;done&quot; or &quot;prompted&quot;, %3 a time such as 4:07.</extracomment>
        <translation>%1: %2 a los %3</translation>
    </message>
    <message>
        <source>Remark on: %1</source>
        <translation>Observación sobre: %1</translation>
    </message>
    <message>
        <source>Remark, then Enter</source>
        <translation>Observación y después Intro</translation>
    </message>
</context>
<context>
    <name>fb::Stopwatch</name>
    <message>
        <source>%1 s</source>
        <extracomment>Seconds.</extracomment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>Held after injecting</source>
        <extracomment>How long the needle is held in place after injecting, and how long is asked, s.</extracomment>
        <translation>Mantenida tras inyectar</translation>
    </message>
    <message>
        <source>Held for less than the %1 s asked</source>
        <translation>Mantenida menos de los %1 s pedidos</translation>
    </message>
    <message>
        <source>Stop</source>
        <extracomment>The stopwatch.</extracomment>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Poner en marcha</translation>
    </message>
    <message>
        <source>Stop the stopwatch (space bar)</source>
        <translation>Parar el cronómetro (barra espaciadora)</translation>
    </message>
    <message>
        <source>Start the stopwatch (space bar)</source>
        <translation>Poner en marcha el cronómetro (barra espaciadora)</translation>
    </message>
    <message>
        <source>Held after injecting, at least %1 s</source>
        <translation>Mantenida tras inyectar, al menos %1 s</translation>
    </message>
</context>
<context>
    <name>fb::StudentDialog</name>
    <message>
        <source>What is agreed with this student</source>
        <translation>Lo acordado con esta persona</translation>
    </message>
    <message>
        <source>%1, section %2</source>
        <translation>%1, grupo %2</translation>
    </message>
    <message>
        <source>More time than the others</source>
        <translation>Tiempo adicional</translation>
    </message>
    <message>
        <source> %</source>
        <extracomment>After a number.</extracomment>
        <translation> %</translation>
    </message>
    <message>
        <source>Language of the feedback sheet</source>
        <translation>Idioma de la hoja de resultados</translation>
    </message>
    <message>
        <source>The program&apos;s own</source>
        <extracomment>The language of the feedback sheet is that of the program.</extracomment>
        <translation>El del programa</translation>
    </message>
    <message>
        <source>Both hold from the next check-off that is begun.</source>
        <translation>Ambos valen desde la próxima evaluación que se empiece.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
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
    <name>fb::TimeStrip</name>
    <message>
        <source>%1 left for this item</source>
        <extracomment>Time that is left, as 1:30.</extracomment>
        <translation>Quedan %1 para este ejercicio</translation>
    </message>
    <message>
        <source>%1 left in all</source>
        <translation>Quedan %1 en total</translation>
    </message>
    <message>
        <source>Show the time</source>
        <translation>Mostrar el tiempo</translation>
    </message>
    <message>
        <source>Pause…</source>
        <extracomment>Asks for the reason first.</extracomment>
        <translation>Pausa…</translation>
    </message>
    <message>
        <source>The time for the last item was up.</source>
        <translation>Se acabó el tiempo del último ejercicio.</translation>
    </message>
    <message>
        <source>Time left</source>
        <translation>Tiempo restante</translation>
    </message>
    <message>
        <source>Item %1 of %2</source>
        <translation>Ejercicio %1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left for this item</source>
        <translation>
            <numerusform>Queda %n segundo para este ejercicio</numerusform>
            <numerusform>Quedan %n segundos para este ejercicio</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left in all</source>
        <translation>
            <numerusform>Queda %n segundo en total</numerusform>
            <numerusform>Quedan %n segundos en total</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::ToolBar</name>
    <message>
        <source>Point</source>
        <extracomment>Tools of a speaker, over the picture that is shown.</extracomment>
        <translation>Señalar</translation>
    </message>
    <message>
        <source>Pen</source>
        <translation>Lápiz</translation>
    </message>
    <message>
        <source>Eraser</source>
        <translation>Borrador</translation>
    </message>
    <message>
        <source>Magnifier</source>
        <translation>Lupa</translation>
    </message>
    <message>
        <source>Ask the room</source>
        <extracomment>A tool: each click on the picture is the place a learner in the room has named.</extracomment>
        <translation>Preguntar a la sala</translation>
    </message>
    <message>
        <source>Spotlight</source>
        <extracomment>All but a circle around the pointer is dimmed.</extracomment>
        <translation>Foco</translation>
    </message>
    <message>
        <source>First ink, a full line</source>
        <extracomment>The pen&apos;s two inks; each has a line of its own.</extracomment>
        <translation>Primera tinta, línea llena</translation>
    </message>
    <message>
        <source>Second ink, a line with two edges</source>
        <translation>Segunda tinta, línea de doble borde</translation>
    </message>
    <message>
        <source>Dashed line</source>
        <translation>Línea discontinua</translation>
    </message>
    <message>
        <source>Take back the last stroke</source>
        <translation>Deshacer el último trazo</translation>
    </message>
    <message>
        <source>Wipe away every stroke</source>
        <translation>Borrar todos los trazos</translation>
    </message>
    <message>
        <source>Stays with the patient</source>
        <extracomment>What is drawn goes along with the body when it changes.</extracomment>
        <translation>Sigue al paciente</translation>
    </message>
    <message>
        <source>What is drawn stays with the patient when the body changes</source>
        <translation>Lo dibujado sigue al paciente cuando cambia el cuerpo</translation>
    </message>
</context>
<context>
    <name>fb::ValueRow</name>
    <message>
        <source>%1, slider</source>
        <extracomment>%1 is what a slider changes: age, height, weight.</extracomment>
        <translation>%1, control deslizante</translation>
    </message>
</context>
<context>
    <name>fb::VerifyCommand</name>
    <message>
        <source>%1
Whole, and the log follows from its first entry to its last.
Log entries          %2
Head of the log      %3
Signed check-offs    %4
Answers              %5
</source>
        <translation>%1
Completo, y la bitácora encaja de la primera entrada a la última.
Entradas             %2
Cabeza               %3
Evaluaciones         %4
Respuestas           %5
</translation>
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
    <message>
        <source>The line is halved: its middle lies as far from the acromion as from the deltoid tuberosity.</source>
        <translation>Se divide la línea por la mitad: su punto medio queda a igual distancia del acromion que de la tuberosidad deltoidea.</translation>
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
<context>
    <name>fb::fields::TimeField</name>
    <message>
        <source> min</source>
        <extracomment>After a number of minutes.</extracomment>
        <translation> min</translation>
    </message>
    <message>
        <source> s</source>
        <extracomment>After a number of seconds.</extracomment>
        <translation> s</translation>
    </message>
    <message>
        <source>%1, minutes</source>
        <extracomment>%1 is what is timed: &quot;Time for each item&quot;.</extracomment>
        <translation>%1, minutos</translation>
    </message>
    <message>
        <source>%1, seconds</source>
        <translation>%1, segundos</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>sin límite</translation>
    </message>
</context>
</TS>
