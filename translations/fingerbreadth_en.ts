<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en_US">
<context>
    <name>fb::BuildWords</name>
    <message numerus="yes">
        <source>Feel for the %n landmark(s) this site is built from. Plant a flag on each and name it.</source>
        <translation>
            <numerusform>Feel for the %n landmark this site is built from. Plant a flag on it and name it.</numerusform>
            <numerusform>Feel for the %n landmarks this site is built from. Plant a flag on each and name it.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::MeasureBoard</name>
    <message numerus="yes">
        <source>%n pixel(s)</source>
        <translation>
            <numerusform>%n pixel</numerusform>
            <numerusform>%n pixels</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::RequestPanel</name>
    <message numerus="yes">
        <source>%n year(s)</source>
        <translation>
            <numerusform>%n year</numerusform>
            <numerusform>%n years</numerusform>
        </translation>
    </message>
</context>
</TS>
