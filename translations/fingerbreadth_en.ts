<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en_US">
<context>
    <name>fb::BackupWords</name>
    <message numerus="yes">
        <source>%Ln student(s)</source>
        <translation>
            <numerusform>%Ln student</numerusform>
            <numerusform>%Ln students</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln signed check-off(s)</source>
        <translation>
            <numerusform>%Ln signed check-off</numerusform>
            <numerusform>%Ln signed check-offs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::BoardView</name>
    <message numerus="yes">
        <source>%1 of %Ln student(s)</source>
        <translation>
            <numerusform>%1 of %Ln student</numerusform>
            <numerusform>%1 of %Ln students</numerusform>
        </translation>
    </message>
</context>
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
    <name>fb::CheckOffWords</name>
    <message numerus="yes">
        <source>Needle kept in for %1 s after injecting, not for %n second(s).</source>
        <extracomment>%1 is the time that was kept, %n the time asked for.</extracomment>
        <translation>
            <numerusform>Needle kept in for %1 s after injecting, not for %n second.</numerusform>
            <numerusform>Needle kept in for %1 s after injecting, not for %n seconds.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stopper left to dry for %1 s, not for %n second(s).</source>
        <translation>
            <numerusform>Stopper left to dry for %1 s, not for %n second.</numerusform>
            <numerusform>Stopper left to dry for %1 s, not for %n seconds.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Skin left to dry for %1 s, not for %n second(s).</source>
        <translation>
            <numerusform>Skin left to dry for %1 s, not for %n second.</numerusform>
            <numerusform>Skin left to dry for %1 s, not for %n seconds.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Between “%1” and “%2” lay %3 s, not %n second(s).</source>
        <extracomment>%1 and %2 are steps, %3 the time between them.</extracomment>
        <translation>
            <numerusform>Between “%1” and “%2” lay %3 s, not %n second.</numerusform>
            <numerusform>Between “%1” and “%2” lay %3 s, not %n seconds.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Time: %n item(s) were not answered; practise with the clock in sight.</source>
        <translation>
            <numerusform>Time: %n item was not answered; practise with the clock in sight.</numerusform>
            <numerusform>Time: %n items were not answered; practise with the clock in sight.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Waiting: count %n second(s) with the needle in before you withdraw.</source>
        <translation>
            <numerusform>Waiting: count %n second with the needle in before you withdraw.</numerusform>
            <numerusform>Waiting: count %n seconds with the needle in before you withdraw.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Waiting: give what you wiped %n second(s) to dry.</source>
        <translation>
            <numerusform>Waiting: give what you wiped %n second to dry.</numerusform>
            <numerusform>Waiting: give what you wiped %n seconds to dry.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) on the manikin, critical: %1</source>
        <extracomment>%1 is how many of them are critical.</extracomment>
        <translation>
            <numerusform>%n step on the manikin, critical: %1</numerusform>
            <numerusform>%n steps on the manikin, critical: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n attempt(s)</source>
        <translation>
            <numerusform>%n attempt</numerusform>
            <numerusform>%n attempts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>at least %n day(s) between</source>
        <translation>
            <numerusform>at least %n day between</numerusform>
            <numerusform>at least %n days between</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) on screen</source>
        <translation>
            <numerusform>%n item on screen</numerusform>
            <numerusform>%n items on screen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) left out; each is marked among the observed steps.</source>
        <translation>
            <numerusform>%n step left out; it is marked among the observed steps.</numerusform>
            <numerusform>%n steps left out; each is marked among the observed steps.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) took a hint; each is marked among the observed steps.</source>
        <translation>
            <numerusform>%n step took a hint; it is marked among the observed steps.</numerusform>
            <numerusform>%n steps took a hint; each is marked among the observed steps.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::DeskPage</name>
    <message numerus="yes">
        <source>%Ln student(s)</source>
        <translation>
            <numerusform>%Ln student</numerusform>
            <numerusform>%Ln students</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::InstructionsPage</name>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n site(s) to find, one after the other.</source>
        <translation>
            <numerusform>%n site to find.</numerusform>
            <numerusform>%n sites to find, one after the other.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::LectureFace</name>
    <message numerus="yes">
        <source>%1 of %n mark(s) on target</source>
        <extracomment>%n is how many marks there are, %1 how many of them are on target.</extracomment>
        <translation>
            <numerusform>%1 of %n mark on target</numerusform>
            <numerusform>%1 of %n marks on target</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::LectureWords</name>
    <message numerus="yes">
        <source>Woman, %n year(s), %1 cm, %2 kg</source>
        <extracomment>A patient in one line; %n is the age, %1 the stature, %2 the weight.</extracomment>
        <translation>
            <numerusform>Woman, %n year, %1 cm, %2 kg</numerusform>
            <numerusform>Woman, %n years, %1 cm, %2 kg</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Man, %n year(s), %1 cm, %2 kg</source>
        <translation>
            <numerusform>Man, %n year, %1 cm, %2 kg</numerusform>
            <numerusform>Man, %n years, %1 cm, %2 kg</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fingerbreadth(s)</source>
        <extracomment>So many fingers of whoever gives the injection, laid side by side.</extracomment>
        <translation>
            <numerusform>%n fingerbreadth</numerusform>
            <numerusform>%n fingerbreadths</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::ListView</name>
    <message numerus="yes">
        <source>The newest %n are shown; narrow the search for older ones.</source>
        <translation>
            <numerusform>The newest one is shown of more (%n); narrow the search for older ones.</numerusform>
            <numerusform>The newest %n are shown; narrow the search for older ones.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n check-off(s)</source>
        <translation>
            <numerusform>%n check-off</numerusform>
            <numerusform>%n check-offs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::LogPage</name>
    <message numerus="yes">
        <source>%Ln entry(ies) of the log</source>
        <translation>
            <numerusform>%Ln entry of the log</numerusform>
            <numerusform>%Ln entries of the log</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln check-off(s)</source>
        <translation>
            <numerusform>%Ln check-off</numerusform>
            <numerusform>%Ln check-offs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln answer(s)</source>
        <translation>
            <numerusform>%Ln answer</numerusform>
            <numerusform>%Ln answers</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::ManikinColumn</name>
    <message numerus="yes">
        <source>Finish (%n left)</source>
        <translation>
            <numerusform>Finish (%n left)</numerusform>
            <numerusform>Finish (%n left)</numerusform>
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
    <name>fb::PinForm</name>
    <message numerus="yes">
        <source>The next PIN can be tried in %n second(s).</source>
        <translation>
            <numerusform>The next PIN can be tried in %n second.</numerusform>
            <numerusform>The next PIN can be tried in %n seconds.</numerusform>
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
<context>
    <name>fb::RoomPanel</name>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation>
            <numerusform>%n mark</numerusform>
            <numerusform>%n marks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::RosterDialog</name>
    <message numerus="yes">
        <source>Import %Ln student(s)</source>
        <translation>
            <numerusform>Import %Ln student</numerusform>
            <numerusform>Import %Ln students</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::RosterWords</name>
    <message numerus="yes">
        <source>%Ln new</source>
        <translation>
            <numerusform>%Ln new</numerusform>
            <numerusform>%Ln new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln changed</source>
        <translation>
            <numerusform>%Ln changed</numerusform>
            <numerusform>%Ln changed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln the same as before</source>
        <translation>
            <numerusform>%Ln the same as before</numerusform>
            <numerusform>%Ln the same as before</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln doubled and left out</source>
        <translation>
            <numerusform>%Ln doubled and left out</numerusform>
            <numerusform>%Ln doubled and left out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln without a usable id and left out</source>
        <translation>
            <numerusform>%Ln without a usable id and left out</numerusform>
            <numerusform>%Ln without a usable id and left out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln without a name and left out</source>
        <translation>
            <numerusform>%Ln without a name and left out</numerusform>
            <numerusform>%Ln without a name and left out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln with an extra time that is unclear</source>
        <translation>
            <numerusform>%Ln with an extra time that is unclear</numerusform>
            <numerusform>%Ln with extra times that are unclear</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln of another role or to be deleted, passed over</source>
        <translation>
            <numerusform>%Ln of another role or to be deleted, passed over</numerusform>
            <numerusform>%Ln of another role or to be deleted, passed over</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>fb::TimeStrip</name>
    <message numerus="yes">
        <source>%n second(s) left for this item</source>
        <translation>
            <numerusform>%n second left for this item</numerusform>
            <numerusform>%n seconds left for this item</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n second(s) left in all</source>
        <translation>
            <numerusform>%n second left in all</numerusform>
            <numerusform>%n seconds left in all</numerusform>
        </translation>
    </message>
</context>
</TS>
