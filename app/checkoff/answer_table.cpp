#include "app/checkoff/answer_table.h"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>

#include "app/look/icons.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/words/check_off_words.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"

namespace fb {

namespace answer_table_detail {

constexpr int kIcon = 16;
enum Column { NumberAt, AskedAt, SignAt, CameAt, FindingAt };

QString askedText(const Answer& answer)
{
    //: A site and its side: "Deltoid, left".
    return AnswerTable::tr("%1, %2").arg(parts::alone(siteName(answer.request.site)),
                                         sideName(answer.request.patient.side()));
}

}  // namespace answer_table_detail

AnswerTable::AnswerTable(QWidget* parent)
    : QWidget(parent),
      m_grid(new QGridLayout),
      m_title(parts::text(this, "answersTitle", "request"))
{
    using namespace answer_table_detail;
    setObjectName(QStringLiteral("answers"));
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(space::kTight);
    rows->addWidget(m_title);
    rows->addWidget(parts::rule(this));
    rows->addLayout(m_grid);
    m_grid->setHorizontalSpacing(space::kNear);
    m_grid->setVerticalSpacing(space::kTight);
    m_grid->setColumnStretch(AskedAt, 2);
    m_grid->setColumnStretch(CameAt, 1);
    m_grid->setColumnStretch(FindingAt, 3);
}

void AnswerTable::showAnswers(const std::vector<Answer>& answers)
{
    using namespace answer_table_detail;
    //: The places that were asked for and marked.
    m_title->setText(tr("Sites"));
    for (QLabel* cell : m_cells)
        delete cell;
    m_cells.clear();
    m_icons.clear();
    setVisible(!answers.empty());
    int line = 0;
    const auto put = [&](QLabel* cell, Column column) {
        m_grid->addWidget(cell, line, column, Qt::AlignTop);
        m_cells.push_back(cell);
    };
    for (const Answer& answer : answers) {
        auto* number = parts::text(this, "answerNumber", "small");
        auto* asked = parts::text(this, "answerAsked");
        auto* icon = new QLabel(this);
        auto* verdict = parts::text(this, "answerVerdict");
        auto* finding = parts::text(this, "answerFinding");
        number->setText(QLocale().toString(answer.item + 1));
        number->setWordWrap(false);
        asked->setText(askedText(answer));
        verdict->setText(parts::alone(verdictName(answer.verdict)));
        finding->setText(answerFinding(answer));
        put(number, NumberAt);
        put(asked, AskedAt);
        put(icon, SignAt);
        put(verdict, CameAt);
        put(finding, FindingAt);
        m_icons.emplace_back(icon, answer.verdict);
        ++line;
    }
    paint();
}

void AnswerTable::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    paint();
}

void AnswerTable::paint()
{
    const int size = parts::scaled(this, answer_table_detail::kIcon);
    for (const auto& [icon, verdict] : m_icons) {
        icon->setPixmap(pixmapFor(iconOf(verdict), colourOf(verdict, m_scheme), size, devicePixelRatioF()));
        icon->setMargin(2);
    }
}

}  // namespace fb
