// The answers of documents.h for a reader's eye: a short column of facts, one to a line.
#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "app/cli/documents.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace documents_text_detail {

struct DocumentWords {
    Q_DECLARE_TR_FUNCTIONS(fb::CommandLineText)
};

// One line of the column: what it is, then the fact.
QString line(const QString& name, const QString& fact)
{
    constexpr int kNameWidth = 14;
    return name.leftJustified(kNameWidth) + fact + QLatin1Char('\n');
}

QString oneDecimal(double value)
{
    const QString text = QLocale().toString(value, 'f', 1);
    return text == QLocale().toString(-0.0, 'f', 1) ? QLocale().toString(0.0, 'f', 1) : text;
}

QString plain(double value) { return QLocale().toString(value, 'g', 6); }

//: %1 and %2 are the coordinates of a point on the drawing.
QString pointText(Point p)
{
    return DocumentWords::tr("x %1 cm, y %2 cm").arg(oneDecimal(p.x), oneDecimal(p.y));
}

QString wordText(std::string_view word)
{
    return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

QString bodyText(const Patient& patient)
{
    const QString sentence = patient.sex() == Sex::Female
                                 ? DocumentWords::tr("Female, %1 years, %2 cm, %3 kg")
                                 : DocumentWords::tr("Male, %1 years, %2 cm, %3 kg");
    return sentence.arg(plain(patient.ageYears()), plain(patient.stature().value()),
                        plain(patient.weight().value()));
}

QString hazardsText(const Target& target, bool near)
{
    QStringList names;
    for (const Hazard& hazard : target.hazards) {
        if ((hazard.kind == HazardKind::Near) == near)
            names += hazardName(hazard.code);
    }
    return names.isEmpty() ? DocumentWords::tr("none") : names.join(QStringLiteral("; "));
}

QString lengthLine(const Target& target)
{
    switch (target.site) {
    case Site::Deltoid:
        return line(DocumentWords::tr("Arm"),
                    DocumentWords::tr("%1 cm from acromion to radiale, armpit level %2 cm below the acromion")
                        .arg(oneDecimal(target.armLength.value()), oneDecimal(target.axillaDepth.value())));
    case Site::VastusLateralis:
        return line(DocumentWords::tr("Thigh"),
                    DocumentWords::tr("%1 cm from greater trochanter to lateral femoral condyle")
                        .arg(oneDecimal(target.thighLength.value())));
    case Site::Ventrogluteal:
        return line(DocumentWords::tr("Hip"),
                    DocumentWords::tr("%1 cm from greater trochanter to anterior superior iliac spine")
                        .arg(oneDecimal(target.asisToTrochanter.value())));
    }
    return {};
}

// Which hand is laid, where the convention lays one.
QString handLine(const Target& target)
{
    if (!target.hand)
        return {};
    const QString length = oneDecimal(target.hand->length.value());
    const QString sentence = target.hand->hand == Side::Left ? DocumentWords::tr("left hand of %1 cm")
                                                             : DocumentWords::tr("right hand of %1 cm");
    return line(DocumentWords::tr("Hand"), sentence.arg(length));
}

QString located(const Query& query, const Target& target)
{
    const Bounds region = target.region.bounds();
    return patientText(query.patient) +
           line(DocumentWords::tr("Convention"),
                DocumentWords::tr("%1 (%2)").arg(conventionName(query.convention),
                                                 wordText(wordOf(query.convention)))) +
           lengthLine(target) +
           line(DocumentWords::tr("Region"), DocumentWords::tr("x %1 to %2 cm, y %3 to %4 cm")
                                                 .arg(oneDecimal(region.low.x), oneDecimal(region.high.x),
                                                      oneDecimal(region.high.y), oneDecimal(region.low.y))) +
           line(DocumentWords::tr("Ideal point"), pointText(target.ideal)) + handLine(target);
}

QString frameLine(const Target& target)
{
    const QString from =
        target.site == Site::Deltoid
            ? DocumentWords::tr(
                  "on the drawing, from the acromion's lateral edge, x to the viewer's right, y up")
            : DocumentWords::tr("on the drawing, from the greater trochanter, x to the viewer's right, y up");
    return line(DocumentWords::tr("Measured"), from);
}

}  // namespace documents_text_detail

using namespace documents_text_detail;

QString cautionText()
{
    return DocumentWords::tr("Training aid. Local policy and licensed practice decide.");
}

QString patientText(const Patient& patient) { return line(DocumentWords::tr("Patient"), bodyText(patient)); }

QString titleText(const Query& query)
{
    const bool left = query.patient.side() == Side::Left;
    switch (query.site) {
    case Site::Deltoid:
        return left ? DocumentWords::tr("Deltoid site, left arm")
                    : DocumentWords::tr("Deltoid site, right arm");
    case Site::VastusLateralis:
        return left ? DocumentWords::tr("Vastus lateralis site, left thigh")
                    : DocumentWords::tr("Vastus lateralis site, right thigh");
    case Site::Ventrogluteal:
        return left ? DocumentWords::tr("Ventrogluteal site, left hip")
                    : DocumentWords::tr("Ventrogluteal site, right hip");
    }
    return {};
}

QString asideText(const Query& query)
{
    //: %1 is the patient in a few words, %2 the name of the convention.
    return DocumentWords::tr("%1; %2").arg(bodyText(query.patient), conventionName(query.convention));
}

QString locateText(const Query& query, const Target& target)
{
    return line(DocumentWords::tr("Request"), requestText(query.site, query.patient.side())) +
           located(query, target) + line(DocumentWords::tr("Never enter"), hazardsText(target, false)) +
           line(DocumentWords::tr("Keep in mind"), hazardsText(target, true)) + frameLine(target) +
           cautionText() + QLatin1Char('\n');
}

QString gradeText(const Query& query, const Target& target, Point mark, const Grade& grade)
{
    return line(DocumentWords::tr("Request"), requestText(query.site, query.patient.side())) +
           located(query, target) + line(DocumentWords::tr("Mark"), pointText(mark)) +
           line(DocumentWords::tr("Verdict"), verdictName(grade.verdict)) +
           line(DocumentWords::tr("Reason"), reasonSentence(query.site, grade)) +
           line(DocumentWords::tr("Off ideal"), offsetsText(query.site, grade)) +
           line(DocumentWords::tr("Border"), borderText(grade.distanceToBorder)) + frameLine(target) +
           cautionText() + QLatin1Char('\n');
}

}  // namespace fb
