#include "app/records/records_look.h"

#include <QCoreApplication>
#include <QLocale>
#include <array>

namespace fb {

struct RecordsLook {
    Q_DECLARE_TR_FUNCTIONS(RecordsLook)
};

Icon iconOfStanding(Standing standing)
{
    switch (standing) {
    case Standing::Passed: return Icon::Done;
    case Standing::OutOfAttempts: return Icon::Unsafe;
    case Standing::RemediationDue: return Icon::Remark;
    case Standing::Running: return Icon::Watch;
    case Standing::MayRetest: return Icon::StartOver;
    case Standing::Waiting: return Icon::Caution;
    case Standing::NotTried: return Icon::Acceptable;
    }
    return Icon::Caution;
}

QColor colourOfStanding(Standing standing, const Scheme& scheme)
{
    switch (standing) {
    case Standing::Passed: return scheme.good;
    case Standing::OutOfAttempts: return scheme.danger;
    case Standing::RemediationDue: return scheme.bad;
    case Standing::MayRetest:
    case Standing::Waiting: return scheme.fair;
    case Standing::Running:
    case Standing::NotTried: return scheme.quietInk;
    }
    return scheme.ink;
}

Icon iconOfOutcome(Outcome outcome)
{
    switch (outcome) {
    case Outcome::Pass: return Icon::Done;
    case Outcome::StoppedSafety: return Icon::Caution;
    case Outcome::FailCritical: return Icon::Unsafe;
    case Outcome::FailTime:
    case Outcome::FailScore: return Icon::NotDone;
    case Outcome::VoidTechnical: return Icon::Undo;
    case Outcome::NoShow: return Icon::Acceptable;
    }
    return Icon::Caution;
}

QColor colourOfOutcome(Outcome outcome, const Scheme& scheme)
{
    switch (outcome) {
    case Outcome::Pass: return scheme.good;
    case Outcome::StoppedSafety:
    case Outcome::FailCritical: return scheme.danger;
    case Outcome::FailTime:
    case Outcome::FailScore: return scheme.bad;
    case Outcome::VoidTechnical:
    case Outcome::NoShow: return scheme.quietInk;
    }
    return scheme.ink;
}

void RecordIcons::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    m_drawn.clear();
}

QIcon RecordIcons::of(Standing standing) const
{
    return drawn(iconOfStanding(standing), colourOfStanding(standing, m_scheme));
}

QIcon RecordIcons::of(Outcome outcome) const
{
    return drawn(iconOfOutcome(outcome), colourOfOutcome(outcome, m_scheme));
}

QIcon RecordIcons::drawn(Icon icon, const QColor& colour) const
{
    const int key = (static_cast<int>(icon) << 24) ^ static_cast<int>(colour.rgb() & 0xffffffU);
    QIcon& kept = m_drawn[key];
    if (kept.isNull()) {
        static constexpr std::array kSizes{18, 27, 36, 54};  // px: text sizes and fine screens
        for (const int size : kSizes) {
            kept.addPixmap(pixmapFor(icon, colour, size));
            kept.addPixmap(pixmapFor(icon, m_scheme.accentInk, size), QIcon::Selected);
        }
    }
    return kept;
}

QString percentText(double percent)
{
    //: A share in percent.
    return RecordsLook::tr("%1 %").arg(QLocale().toString(percent, 'f', 0));
}

QString shortHead(const QString& head)
{
    constexpr int kPrinted = 12;
    return head.left(kPrinted);
}

QCollator listOrder()
{
    const QLocale locale;
    QCollator order(locale.language() == QLocale::C ? QLocale(QLocale::English) : locale);
    order.setCaseSensitivity(Qt::CaseInsensitive);
    order.setNumericMode(true);
    return order;
}

QString listName(const Student& student)
{
    if (student.given.isEmpty() || student.family.isEmpty())
        return student.family + student.given;
    //: A name in a list sorted by family names: %1 family name, %2 given name.
    return RecordsLook::tr("%1, %2").arg(student.family, student.given);
}

QString signersOf(const CheckOffLine& line)
{
    if (line.secondAssessor.isEmpty())
        return line.assessor;
    //: Two assessors who signed together.
    return RecordsLook::tr("%1 and %2").arg(line.assessor, line.secondAssessor);
}

QString sheetTitle(const SheetOnFile& sheet)
{
    const QString title = QString::fromStdString(sheet.sheet.title);
    // The sample's own title says it already.
    if (!sheet.sheet.invented || title.contains(QLatin1String("invented"), Qt::CaseInsensitive))
        return title;
    //: %1 is the title of a sheet of the sample data.
    return RecordsLook::tr("%1 (invented)").arg(title);
}

QString standingWord(Standing standing)
{
    switch (standing) {
    case Standing::NotTried: return RecordsLook::tr("not tried");
    case Standing::Running: return RecordsLook::tr("check-off open");
    case Standing::Passed: return RecordsLook::tr("passed");
    case Standing::RemediationDue: return RecordsLook::tr("practice to be signed");
    case Standing::Waiting: return RecordsLook::tr("waiting for the day");
    case Standing::MayRetest: return RecordsLook::tr("may try again");
    case Standing::OutOfAttempts: return RecordsLook::tr("no attempt left");
    }
    return {};
}

}  // namespace fb
