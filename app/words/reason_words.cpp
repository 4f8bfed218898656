// Chooses a site's sentence of reason: see grade_words.h.
#include "app/words/reason_words.h"

#include <QCoreApplication>

#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace reason_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::ReasonWords)
};

}  // namespace reason_words_detail

QString withinMargin(Direction direction, Cm amount)
{
    using namespace reason_words_detail;
    const QString cm = cmText(amount.value());
    switch (direction) {
    case Direction::None: return Words::tr("At the edge of the region, within the margin your lab accepts.");
    case Direction::High: return Words::tr("%1 too high, within the margin your lab accepts.").arg(cm);
    case Direction::Low: return Words::tr("%1 too low, within the margin your lab accepts.").arg(cm);
    case Direction::Forward:
        return Words::tr("%1 too far forward, within the margin your lab accepts.").arg(cm);
    case Direction::Back: return Words::tr("%1 too far back, within the margin your lab accepts.").arg(cm);
    }
    return {};
}

QString fittingSentence(const SiteSentences& site, Verdict verdict, const Reason& reason)
{
    if (site.isElsewhere(reason.tissue))
        return site.place(reason.tissue);
    if (verdict == Verdict::OnTarget)
        return site.inside(reason);
    if (verdict == Verdict::Acceptable)
        return site.acceptable(reason);
    const QString cm = cmText(reason.amount.value());
    switch (reason.direction) {
    case Direction::None: return site.place(reason.tissue);
    case Direction::High: return site.high(reason.tissue).arg(cm);
    case Direction::Low: return site.low(reason.tissue).arg(cm);
    case Direction::Forward: return site.forward(reason.tissue).arg(cm);
    case Direction::Back: return site.back(reason.tissue).arg(cm);
    }
    return {};
}

QString reasonSentence(Site site, Verdict verdict, const Reason& reason)
{
    switch (site) {
    case Site::Deltoid: return deltoidReason(verdict, reason);
    case Site::VastusLateralis: return thighReason(verdict, reason);
    case Site::Ventrogluteal: return hipReason(verdict, reason);
    }
    return {};
}

}  // namespace fb
