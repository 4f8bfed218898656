#include "app/words/fault_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <array>
#include <vector>

#include "core/basics/enums.h"

namespace fb {

// One method for each family of problems; the context of the translations is "FaultWords".
class FaultWords {
    Q_DECLARE_TR_FUNCTIONS(FaultWords)

public:
    explicit FaultWords(const Fault& fault)
        : m_problem(fault.problem),
          m_where(shown(fault.where)),
          m_what(fault.high > fault.low ? measured(fault.what) : shown(fault.what)),
          m_low(number(fault.low)),
          m_high(number(fault.high)),
          m_hasRange(fault.high > fault.low)
    {
    }

    [[nodiscard]] QString sentence() const
    {
        for (const auto family :
             {&FaultWords::patient, &FaultWords::choice, &FaultWords::mark, &FaultWords::policy,
              &FaultWords::drawing, &FaultWords::session, &FaultWords::argument}) {
            QString words = (this->*family)();
            if (!words.isEmpty())
                return words;
        }
        const ShownFault fault{m_where, m_what, m_low, m_high};
        QString words = byHandFault(m_problem, fault);
        if (words.isEmpty())
            words = checkOffFault(m_problem, fault);
        return words.isEmpty() ? lectureFault(m_problem, fault) : words;
    }

private:
    // Somebody else's text: one line, no longer than a glance takes in. Of a path the end tells the most.
    static QString shown(const std::string& text)
    {
        constexpr qsizetype kLongest = 120;
        QString line = QString::fromStdString(text).simplified();
        constexpr qsizetype kHead = kLongest / 2;
        return line.size() > kLongest ? line.left(kHead) + QChar(0x2026) + line.right(kLongest - kHead - 1)
                                      : line;
    }

    // Where a range is told, a number beside it takes the same form.
    static QString measured(const std::string& text)
    {
        bool isNumber = false;
        const double value = QString::fromStdString(text).toDouble(&isNumber);
        return isNumber ? number(value) : shown(text);
    }

    static QString number(double value) { return QLocale().toString(value, 'g', 6); }

    template <class Choices>
    static QString list(const Choices& all)
    {
        QStringList words;
        for (const auto e : all) {
            const std::string_view word = wordOf(e);
            words += QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
        }
        return words.size() == 1 ? words.front() : QLocale().createSeparatedList(words);
    }

    // Those of one site; of an unknown site, all of them.
    template <class Enum, std::size_t N>
    static std::vector<Enum> allOf(const std::array<Enum, N>& choices, const QString& site)
    {
        const auto of = siteFrom(site.toStdString());
        std::vector<Enum> own;
        for (const Enum choice : choices)
            if (!of || siteOf(choice) == *of)
                own.push_back(choice);
        return own;
    }

    // The views in which the site of a show-only view is asked; of an unknown view, all of them.
    static std::vector<View> askedInstead(const QString& view)
    {
        const auto shown = viewFrom(view.toStdString());
        std::vector<View> asked;
        for (const Site site : kSites)
            if (!shown || siteOf(*shown) == site)
                asked.insert(asked.end(), askedViews(site).begin(), askedViews(site).end());
        return asked;
    }

    [[nodiscard]] QString patient() const
    {
        switch (m_problem) {
        case Problem::AgeNotANumber:
            return m_what.isEmpty()
                       ? tr("The age is missing; give it in years, for example 34y.")
                       : tr("The age “%1” is not an age; give it in years, for example 34y.").arg(m_what);
        case Problem::AgeOutOfRange:
            return tr("The age %1 is outside %2 to %3 years; give the age of an adult, for example 34y.")
                .arg(m_what, m_low, m_high);
        case Problem::StatureNotANumber:
            return m_what.isEmpty()
                       ? tr("The stature is missing; give it in centimetres, for example 163.")
                       : tr("The stature “%1” is not a number; give it in centimetres, for example 163.")
                             .arg(m_what);
        case Problem::StatureOutOfRange:
            return tr("The stature %1 cm is outside %2 to %3 cm; give it in centimetres, for example 163.")
                .arg(m_what, m_low, m_high);
        case Problem::WeightNotANumber:
            return m_what.isEmpty()
                       ? tr("The weight is missing; give it in kilograms, for example 71.")
                       : tr("The weight “%1” is not a number; give it in kilograms, for example 71.")
                             .arg(m_what);
        case Problem::WeightOutOfRange:
            return tr("The weight %1 kg is outside %2 to %3 kg; give it in kilograms, for example 71.")
                .arg(m_what, m_low, m_high);
        case Problem::BodyImplausible:
            return tr("Stature and weight together make a body-mass index of %1, outside %2 to %3; "
                      "check that stature is in centimetres and weight in kilograms.")
                .arg(m_what, m_low, m_high);
        default: return {};
        }
    }

    [[nodiscard]] QString choice() const
    {
        switch (m_problem) {
        case Problem::SiteUnknown:
            return tr("The site “%1” is not known; choose from %2.").arg(m_what, list(kSites));
        case Problem::SideUnknown:
            return tr("The side “%1” is not known; choose from %2.").arg(m_what, list(kSides));
        case Problem::SexUnknown:
            return tr("The sex “%1” is not known to the survey the bodies come from; choose from %2.")
                .arg(m_what, list(kSexes));
        case Problem::ViewUnknown:
            return tr("The view “%1” is not known; choose from %2.").arg(m_what, list(kViews));
        case Problem::ViewOfAnotherSite:
            return tr("The view “%1” does not show the site “%2”; choose from %3.")
                .arg(m_what, m_where, list(allOf(kViews, m_where)));
        case Problem::ConventionUnknown:
            return m_where.isEmpty() ? tr("The convention “%1” is not known; choose from %2.")
                                           .arg(m_what, list(kConventions))
                                     : tr("The policy names the convention “%1” under %2, which is not "
                                          "known; choose from %3.")
                                           .arg(m_what, m_where, list(kConventions));
        case Problem::ConventionOfAnotherSite:
            return m_where.isEmpty()
                       ? tr("The convention “%1” belongs to another site; choose one whose name begins with "
                            "the site.")
                             .arg(m_what)
                       : tr("The convention “%1” does not belong to the site “%2”; choose from %3.")
                             .arg(m_what, m_where, list(allOf(kConventions, m_where)));
        case Problem::ViewShowOnly:
            return tr("A mark cannot be judged in this view, which is for looking only; mark in the view %1.")
                .arg(list(askedInstead(m_what)));
        case Problem::LayerUnknown:
            return tr("The layer “%1” is not known; choose from %2, separated by commas.")
                .arg(m_what, list(kLayers));
        default: return {};
        }
    }

    [[nodiscard]] QString mark() const
    {
        switch (m_problem) {
        case Problem::MarkNotAPoint:
            return tr("The mark “%1” is not a point; give two numbers in centimetres with a comma between, "
                      "for example 0,-4.3.")
                .arg(m_what);
        case Problem::MarkOutsideBody:
            return tr("The mark lies outside the body; place it on the skin of the patient.");
        case Problem::HandLengthOutOfRange:
            return m_what.isEmpty()
                       //: Length of the learner's own hand.
                       ? tr("A hand measures %1 to %2 cm from the wrist crease to the tip of the middle "
                            "finger; give a length in that range.")
                             .arg(m_low, m_high)
                       : tr("The hand length %1 cm is outside %2 to %3 cm; measure from the wrist crease to "
                            "the tip of the middle finger.")
                             .arg(m_what, m_low, m_high);
        default: return {};
        }
    }

    [[nodiscard]] QString policy() const
    {
        switch (m_problem) {
        case Problem::PolicyNotReadable:
            return tr("The policy file %1 cannot be read; check its name and that you may read it.")
                .arg(m_where);
        case Problem::PolicyCutShort:
            return tr("The policy file is cut short or broken at line %1; mend the JSON there.").arg(m_where);
        case Problem::PolicyWrongType:
            return tr("The policy has the wrong kind of value at %1; write it in the form of the shipped "
                      "policy.")
                .arg(m_where);
        case Problem::PolicyOutOfRange:
            return tr("The policy gives %1 for %2, outside %3 to %4; choose a value in that range.")
                .arg(m_what, m_where, m_low, m_high);
        case Problem::PolicyUnknownKey:
            return tr("The policy has an entry %1 that is not known; remove it or correct its spelling.")
                .arg(m_where);
        case Problem::PolicyMissingKey:
            return tr("The policy lacks %1; add it in the form of the shipped policy.").arg(m_where);
        case Problem::PolicyNoSource:
            return tr("The policy gives no source for %1; name one, or write lab's choice.").arg(m_where);
        case Problem::ProportionsBroken:
            return tr("The table of body proportions is broken at %1; install the program again.")
                .arg(m_where);
        default: return {};
        }
    }

    [[nodiscard]] QString drawing() const
    {
        switch (m_problem) {
        case Problem::PlateNotReadable:
            return m_what.isEmpty()
                       ? tr("The plate %1 cannot be read; install the program again.").arg(m_where)
                       : tr("The plate %1 is broken at byte %2; mend the SVG there.").arg(m_where, m_what);
        case Problem::PlateMissingName:
            return tr("The plate %1 lacks the name %2; draw it and give it that id.").arg(m_where, m_what);
        case Problem::PlateDoubledName:
            return tr("The plate %1 has the name %2 twice; give each id once.").arg(m_where, m_what);
        case Problem::PlateForbidden:
            return tr("The plate %1 holds %2, which a plate may not; take it out.").arg(m_where, m_what);
        case Problem::PlateBadPath:
            return tr("The plate %1 has a path that cannot be read at %2; use absolute M, L, C and Z only.")
                .arg(m_where, m_what);
        case Problem::PlateDisordered:
            return tr("The plate %1 has its levels or edges out of order at %2; put them in order along the "
                      "limb.")
                .arg(m_where, m_what);
        default: return {};
        }
    }

    [[nodiscard]] QString session() const
    {
        switch (m_problem) {
        case Problem::SeedNotANumber:
            return tr("The seed “%1” is not a whole number; type digits only, for example 2024.").arg(m_what);
        case Problem::RunLengthOutOfRange:
            return tr("A run has %1 to %2 requests; choose a number in that range.").arg(m_low, m_high);
        case Problem::NoSiteChosen: return tr("No site is chosen; choose at least one site to practise.");
        default: return {};
        }
    }

    [[nodiscard]] QString argument() const
    {
        switch (m_problem) {
        case Problem::CommandUnknown:
            return tr("The command “%1” is not known; use locate, grade or draw, or --help to see them.")
                .arg(m_what);
        case Problem::ArgumentUnknown:
            return m_what.isEmpty() ? tr("The option %1 is not known; --help lists the options.").arg(m_where)
                                    : tr("The option %1 is not known to %2; --help lists the options.")
                                          .arg(m_where, m_what);
        case Problem::ArgumentMissing:
            return tr("The option %1 is missing; add it with its value.").arg(m_where);
        case Problem::ArgumentNeedsValue:
            return tr("The option %1 needs a value; write it after the option.").arg(m_where);
        case Problem::ArgumentDoubled: return tr("The option %1 is given twice; give it once.").arg(m_where);
        case Problem::ArgumentBadValue:
            return m_hasRange
                       ? tr("The value “%1” does not suit %2; give numbers from %3 to %4.")
                             .arg(m_what, m_where, m_low, m_high)
                       : tr("The value “%1” does not suit %2; --help shows its form.").arg(m_what, m_where);
        case Problem::OutputNotWritable:
            return tr("The output %1 cannot be written; choose a folder you may write to, with room left.")
                .arg(m_where);
        case Problem::OutputKindUnknown:
            return tr("The output %1 is of no known kind; end its name in .svg, .png or .pdf.").arg(m_where);
        case Problem::RequestNotReadable:
            return tr(
                "This line is no request; write one JSON object with the names and values of the options.");
        default: return {};
        }
    }

    Problem m_problem;
    QString m_where;
    QString m_what;
    QString m_low;
    QString m_high;
    bool m_hasRange;
};

QString sentenceOf(const Fault& fault) { return FaultWords(fault).sentence(); }

}  // namespace fb
