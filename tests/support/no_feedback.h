// Looks for anything on a page that would tell a student how an answer was, to the eye or to a screen reader.
#pragma once

#include <QLabel>
#include <QStringList>
#include <QWidget>

#include "app/canvas/plate_view.h"
#include "app/words/grade_words.h"
#include "tests/support/said.h"

namespace fb::test {

// What a plate says beside the student's own things. `named`: landmarks the item's help grants are no
// feedback.
[[nodiscard]] inline QStringList toldByPlate(const PlateView& plate, bool named)
{
    QStringList told;
    for (const SpokenItem& item : plate.spokenItems()) {
        if (item.kind == SpokenKind::Shape && !named)
            told << QStringLiteral("plate says: ") + item.words;
    }
    return told;
}

// Empty where nothing is told.
[[nodiscard]] inline QStringList feedbackIn(const QWidget& page, bool named = false)
{
    static const QStringList kPanels{QStringLiteral("fb::GradePanel"), QStringLiteral("fb::ByHandPanel"),
                                     QStringLiteral("fb::WhyPanel"), QStringLiteral("fb::SummaryPage"),
                                     QStringLiteral("fb::WatchPanel")};
    static const QStringList kButtons{QStringLiteral("why"),       QStringLiteral("next"),
                                      QStringLiteral("watchOnce"), QStringLiteral("notHere"),
                                      QStringLiteral("replay"),    QStringLiteral("seed")};
    QStringList told;
    for (const QWidget* widget : page.findChildren<QWidget*>()) {
        if (!widget->isVisible())
            continue;
        if (kPanels.contains(QLatin1String(widget->metaObject()->className())) ||
            kButtons.contains(widget->objectName()))
            told << QStringLiteral("in sight: ") + widget->objectName();
        if (const auto* plate = qobject_cast<const PlateView*>(widget))
            told << toldByPlate(*plate, named);
    }
    const Said said = saidBy(page);
    for (const QString& words : said) {
        for (const Verdict verdict :
             {Verdict::OnTarget, Verdict::Acceptable, Verdict::OffTarget, Verdict::Unsafe}) {
            if (words.contains(verdictName(verdict), Qt::CaseInsensitive))
                told << QStringLiteral("says: ") + words;
        }
    }
    return told;
}

}  // namespace fb::test
