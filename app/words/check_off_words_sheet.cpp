// What a sheet asks for, stages, times and names: see check_off_words.h.
#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "app/words/check_off_words.h"
#include "app/words/site_words.h"

namespace fb {

// Translators find these beside the other words of a check-off, in one context.
struct CheckOffSheetWords {
    Q_DECLARE_TR_FUNCTIONS(fb::CheckOffWords)
};

QString populationName(Population population)
{
    switch (population) {
    //: Whose bodies a sheet draws.
    case Population::Any: return CheckOffSheetWords::tr("adults of any build");
    case Population::Lean: return CheckOffSheetWords::tr("lean adults");
    case Population::Average: return CheckOffSheetWords::tr("adults of average build");
    case Population::Heavy: return CheckOffSheetWords::tr("heavy adults");
    }
    return {};
}

QString seedRuleName(SeedRule rule)
{
    switch (rule) {
    case SeedRule::SameForAll: return CheckOffSheetWords::tr("the same patients for every student");
    case SeedRule::OwnForEach: return CheckOffSheetWords::tr("new patients for each attempt");
    }
    return {};
}

namespace check_off_sheet_detail {

QString siteWord(Site site)
{
    switch (site) {
    //: The three sites, as the head of an item: "Deltoid, left, from the side; nothing drawn".
    case Site::Deltoid: return CheckOffSheetWords::tr("Deltoid");
    case Site::VastusLateralis: return CheckOffSheetWords::tr("Vastus lateralis");
    case Site::Ventrogluteal: return CheckOffSheetWords::tr("Ventrogluteal");
    }
    return {};
}

QString viewWord(View view)
{
    switch (view) {
    //: From where the patient is seen.
    case View::ShoulderSide:
    case View::HipSide: return CheckOffSheetWords::tr("from the side");
    case View::ShoulderThreeQuarter: return CheckOffSheetWords::tr("three-quarter front");
    case View::HipBehind: return CheckOffSheetWords::tr("from behind");
    case View::ThighFront: return CheckOffSheetWords::tr("from the front");
    case View::ThighSide: return CheckOffSheetWords::tr("from the outer side");
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: break;
    }
    return viewName(view);
}

QString helpWord(const SheetItem& item)
{
    if (item.byHand)
        //: Landmarks are felt and the site is built by the student's own hand.
        return CheckOffSheetWords::tr("found by hand");
    switch (item.help) {
    case HelpLevel::DrawnAndNamed: return CheckOffSheetWords::tr("landmarks drawn and named");
    case HelpLevel::NamedOnly: return CheckOffSheetWords::tr("landmarks named only");
    case HelpLevel::Nothing: return CheckOffSheetWords::tr("nothing drawn");
    }
    return {};
}

QString timeLine(const Sheet& sheet)
{
    const auto time = [](int seconds) { return clockText(std::chrono::seconds{seconds}); };
    QStringList parts;
    if (sheet.secondsPerItem > 0)
        //: %1 is a time: "1:30".
        parts += CheckOffSheetWords::tr("%1 for each item").arg(time(sheet.secondsPerItem));
    if (sheet.secondsOnScreen > 0)
        parts += CheckOffSheetWords::tr("%1 on screen").arg(time(sheet.secondsOnScreen));
    if (sheet.secondsOnManikin > 0 && !sheet.steps.empty())
        parts += CheckOffSheetWords::tr("%1 on the manikin").arg(time(sheet.secondsOnManikin));
    return parts.isEmpty() ? CheckOffSheetWords::tr("No limit of time")
                           //: %1 is one or more limits: "1:30 for each item, 12:00 on the manikin".
                           : CheckOffSheetWords::tr("Time: %1").arg(parts.join(CheckOffSheetWords::tr(", ")));
}

QString stepsLine(const Sheet& sheet)
{
    if (sheet.steps.empty())
        return CheckOffSheetWords::tr("Nothing on the manikin");
    const auto critical = std::ranges::count_if(sheet.steps, &SheetStep::critical);
    //: %1 is how many of them are critical.
    return CheckOffSheetWords::tr("%n step(s) on the manikin, critical: %1", nullptr,
                                  static_cast<int>(sheet.steps.size()))
        .arg(QLocale().toString(critical));
}

QString protocolLine(const Protocol& protocol)
{
    QStringList parts{protocol.zTrack ? CheckOffSheetWords::tr("Z-track")
                                      : CheckOffSheetWords::tr("no Z-track"),
                      protocol.cleansSkin ? CheckOffSheetWords::tr("skin is cleaned")
                                          : CheckOffSheetWords::tr("clean skin is not swabbed"),
                      protocol.aspirates ? CheckOffSheetWords::tr("aspirates")
                                         : CheckOffSheetWords::tr("does not aspirate")};
    if (protocol.filterNeedle)
        parts += CheckOffSheetWords::tr("drawn up through a filter needle");
    return CheckOffSheetWords::tr("Protocol: %1").arg(parts.join(CheckOffSheetWords::tr(", ")));
}

QString attemptsLine(const RetestRule& rule)
{
    QStringList parts{CheckOffSheetWords::tr("%n attempt(s)", nullptr, rule.attempts)};
    if (rule.attempts > 1 && rule.daysBetween > 0)
        parts += CheckOffSheetWords::tr("at least %n day(s) between", nullptr, rule.daysBetween);
    if (rule.attempts > 1 && rule.remediationFirst)
        parts += CheckOffSheetWords::tr("practice signed first");
    if (rule.secondAssessorOnLast)
        parts += CheckOffSheetWords::tr("second assessor on the last");
    if (rule.noShowCounts)
        parts += CheckOffSheetWords::tr("not coming counts");
    return parts.join(CheckOffSheetWords::tr(", "));
}

}  // namespace check_off_sheet_detail

QString itemName(const SheetItem& item)
{
    using namespace check_off_sheet_detail;
    const QString side = item.side ? sideName(*item.side)
                                   //: The side is drawn with the patient.
                                   : CheckOffSheetWords::tr("either side");
    //: Site, side, from where, help: "Ventrogluteal, left, from the side; nothing drawn".
    return CheckOffSheetWords::tr("%1, %2, %3; %4")
        .arg(siteWord(item.site), side, viewWord(item.view), helpWord(item));
}

QStringList sheetInWords(const Sheet& sheet)
{
    using namespace check_off_sheet_detail;
    return {CheckOffSheetWords::tr("%n item(s) on screen", nullptr, static_cast<int>(sheet.items.size())),
            //: %1 is "adults of any build", %2 "new patients for each attempt".
            CheckOffSheetWords::tr("Patients: %1, %2")
                .arg(populationName(sheet.population), seedRuleName(sheet.seedRule)),
            timeLine(sheet), stepsLine(sheet), protocolLine(sheet.protocol),
            //: %1 is a number of percent: "80 %".
            CheckOffSheetWords::tr("Passed from %1, with every critical step, no unsafe mark and in time")
                .arg(scoreText(sheet.cutPercent)),
            attemptsLine(sheet.retest)};
}

QString stageName(CheckOffStage stage)
{
    switch (stage) {
    //: How far a check-off has come.
    case CheckOffStage::Identity: return CheckOffSheetWords::tr("confirming who it is");
    case CheckOffStage::Instructions: return CheckOffSheetWords::tr("reading the instructions");
    case CheckOffStage::OnScreen: return CheckOffSheetWords::tr("on screen");
    case CheckOffStage::Handover: return CheckOffSheetWords::tr("waiting for the assessor");
    case CheckOffStage::OnManikin: return CheckOffSheetWords::tr("on the manikin");
    case CheckOffStage::Closing: return CheckOffSheetWords::tr("to be signed");
    case CheckOffStage::Closed: return CheckOffSheetWords::tr("signed");
    }
    return {};
}

QString scoreText(double percent)
{
    constexpr double kTenths = 10.0;
    constexpr double kNoise = 1e-9;  // of a sum of points
    //: %1 is a number of percent.
    return CheckOffSheetWords::tr("%1 %").arg(QLocale().toString(
        std::floor(percent * kTenths + kNoise) / kTenths, 'f', QLocale::FloatingPointShortest));
}

QString clockText(Ms time)
{
    constexpr int kMinute = 60;
    constexpr int kHour = 60 * kMinute;
    const auto all = std::max<qint64>(std::chrono::duration_cast<std::chrono::seconds>(time).count(), 0);
    const auto within = QTime(0, 0).addSecs(static_cast<int>(all % kHour));
    const QLocale locale;
    return all < kHour ? locale.toString(within, QStringLiteral("m:ss"))
                       : locale.toString(all / kHour) + QLatin1Char(':') +
                             locale.toString(within, QStringLiteral("mm:ss"));
}

QString whenText(const QDateTime& utc)
{
    return utc.isValid() ? QLocale().toString(utc.toLocalTime(), QLocale::ShortFormat) : QString();
}

QString fullName(const QString& given, const QString& family)
{
    if (given.isEmpty() || family.isEmpty())
        return given + family;
    //: %1 is the given name, %2 the family name.
    return CheckOffSheetWords::tr("%1 %2").arg(given, family);
}

}  // namespace fb
