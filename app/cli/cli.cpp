#include "app/cli/cli.h"

#include <QCoreApplication>
#include <QLocale>
#include <iostream>
#include <vector>

#include "app/cli/arguments.h"
#include "app/cli/commands.h"
#include "app/cli/console.h"
#include "app/cli/record_commands.h"
#include "app/words/fault_words.h"

namespace fb {

namespace cli_detail {

struct CliWords {
    Q_DECLARE_TR_FUNCTIONS(fb::CommandLine)
};

QString helpText()
{
    return CliWords::tr(
        "Fingerbreadth: where an intramuscular needle goes, marked and graded in centimetres.\n"
        "\n"
        "  fingerbreadth                      opens the window\n"
        "  fingerbreadth locate PATIENT ...   the target of one patient\n"
        "  fingerbreadth grade  PATIENT --at X,Y ...   the verdict on a mark\n"
        "  fingerbreadth draw   PATIENT --out FILE ... this patient's plate with its target\n"
        "  fingerbreadth verify [RECORDS]     whether the records of check-offs are what was kept\n"
        "  fingerbreadth backup FILE          a copy of them, readable by you alone\n"
        "  fingerbreadth --help, --version\n"
        "\n"
        "PATIENT\n"
        "  --site deltoid|vastus-lateralis|ventrogluteal     --side left|right\n"
        "  --age 34y    --sex female|male    --stature 163 (cm)    --weight 71 (kg)\n"
        "  --individual A,B,C[,D,E,F]  deviation, -3 to 3, of arm length, armpit depth and arm\n"
        "                        girth, then of crest height, thigh length and thigh girth\n"
        "\n"
        "How\n"
        "  --convention ID       deltoid.strip, deltoid.centroid, deltoid.two-inches,\n"
        "                        deltoid.fingers or deltoid.halfway; vl.thirds or\n"
        "                        vl.handbreadths; vg.hand or vg.medians\n"
        "  --view NAME           shoulder-side, shoulder-three-quarter; thigh-side, thigh-front;\n"
        "                        hip-side, hip-behind\n"
        "  --hand CM             length of the hand that finds the site, 13 to 24\n"
        "  --policy FILE         your lab's own numbers, over the shipped ones\n"
        "  --at X,Y              the mark (grade, draw): cm from the acromion's lateral edge or\n"
        "                        the greater trochanter, x to the viewer's right, y up\n"
        "\n"
        "Answers\n"
        "  --json                locate, grade: one JSON object\n"
        "  --json -, --lines     the same for every JSON object on a line of standard input\n"
        "  --out FILE            draw: .svg, .png or .pdf\n"
        "  --layers LIST         draw: bone,vessel,nerve,muscle,skin,surface,cloth\n"
        "  --width PIXELS        draw: width of the picture, 200 to 20000\n"
        "\n"
        "Training aid. Local policy and licensed practice decide.\n");
}

int told(const Fault& fault)
{
    toErrors(sentenceOf(fault));
    return kExitBad;
}

int printed(const std::string& text)
{
    return toOutput(text) ? kExitGood : told(Fault{Problem::OutputNotWritable, "standard output", {}});
}

int answeredLines(const Arguments& arguments, const Library& library)
{
    std::ios::sync_with_stdio(false);
    const auto count = answerLines(arguments, library, std::cin, std::cout);
    if (!count)
        return told(count.error());
    if (count->failed == 0)
        return kExitGood;
    toErrors(
        CliWords::tr("Requests that could not be answered: %1 of %2.")
            .arg(QLocale().toString(count->failed), QLocale().toString(count->failed + count->answered)));
    return kExitBad;
}

int drawn(const Arguments& arguments, const Library& library, char** argv)
{
    const OffscreenApplication application(argv);
    const auto answer = drawAnswer(arguments, library);
    return answer ? printed(*answer) : told(answer.error());
}

int answered(const Arguments& arguments, char** argv)
{
    const auto library = Library::load();
    if (!library)
        return told(library.error());
    if (arguments.command == Command::Draw)
        return drawn(arguments, **library, argv);
    if (arguments.lines)
        return answeredLines(arguments, **library);
    const auto answer = arguments.command == Command::Grade ? gradeAnswer(arguments, **library)
                                                            : locateAnswer(arguments, **library);
    return answer ? printed(*answer) : told(answer.error());
}

}  // namespace cli_detail

using namespace cli_detail;

int runCommandLine(int argc, char** argv)
{
    QLocale::setDefault(QLocale::c());
    const std::vector<std::string_view> words(argv + 1, argv + argc);
    {
        const QCoreApplication application(argc, argv);
        QCoreApplication::setApplicationName(QStringLiteral("Fingerbreadth"));
        if (const auto answer = recordsAnswer(words))
            return *answer ? printed(**answer) : told(answer->error());
    }
    const auto arguments = parseArguments(words);
    if (!arguments)
        return told(arguments.error());
    switch (arguments->command) {
    case Command::Help: return printed(helpText().toStdString());
    case Command::Version: return printed("fingerbreadth " FINGERBREADTH_VERSION "\n");
    default: return answered(*arguments, argv);
    }
}

}  // namespace fb
