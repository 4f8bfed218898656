#include "tests/support/screenshots_check_off.h"

#include <QApplication>
#include <QPushButton>
#include <map>

#include "tests/support/screenshots_shot.h"

namespace fb::screenshots {

namespace check_off_shots_detail {

constexpr const char* kPin = "482913";

// One student of the sample, from the desk to the signature, and what the records then show.
class Walk {
public:
    Walk(const QString& folder, const Preferences& preferences, const QString& prefix, QSize size = kDesk)
        : m_shot(folder, preferences, size),
          m_prefix(prefix)
    {
        m_shot.services().window().openArea(Area::CheckOff);
        m_shot.records().people = {{{1, QStringLiteral("Vera Holm")}, QLatin1String(kPin), 0},
                                   {{2, QStringLiteral("Tom Aske")}, QLatin1String(kPin), 0}};
        checkOff().useSample();
        checkOff().openDesk();
    }

    void toItems()
    {
        save("desk");
        checkOff().begin(checkOff().state().desk.students.front().student.id);
        save("identity");
        checkOff().confirmIdentity();
        save("instructions");
        checkOff().startItems();
    }
    // Marked so far from the ideal point; the last one is shown before it is confirmed.
    void answerItems()
    {
        static constexpr std::array kWays{QPointF(0.3, -0.2), QPointF(-0.6, 0.4), QPointF(1.6, 0.8)};
        for (const QPointF way : kWays) {
            PracticePresenter& items = checkOff().items();
            if (!QTest::qWaitFor(
                    [&] { return items.state().picture != nullptr && !checkOff().state().saving; }, 20000))
                return;
            pass(Ms{17000});
            const Point ideal = items.state().target->ideal;
            items.placeMark(QPointF(ideal.x, ideal.y) + way);
            if (way == kWays.back())
                save("item");
            items.grade();
            QTest::qWait(30);
        }
        save("handover");
    }
    void watchSteps()
    {
        checkOff().takeOver();
        const std::vector<SheetStep> steps = checkOff().state().open->sheet.sheet.steps;
        const std::map<ProcedureStep, Seen> others{{ProcedureStep::Explain, Seen::Prompted},
                                                   {ProcedureStep::PreparedLabel, Seen::NotDone}};
        int said = 0;
        for (const SheetStep& step : steps) {
            pass(
                Ms{step.step == ProcedureStep::SkinDry || step.step == ProcedureStep::DrawUp ? 11000 : 4000});
            if (step.step == ProcedureStep::Wait)
                hold();
            const auto other = others.find(step.step);
            checkOff().observe(step.step, other == others.end() ? Seen::Done : other->second);
            if (++said == static_cast<int>(steps.size()) * 2 / 3)
                save("manikin");
        }
        checkOff().finish();
    }
    void close()
    {
        checkOff().rate(4, QStringLiteral("Calm hands and good talk with the patient."));
        save("closing");
        checkOff().sign(1, QLatin1String(kPin), 0, {});
        save("signed");
        checkOff().backToDesk();
    }
    void records()
    {
        m_shot.services().window().openArea(Area::Records);
        RecordsPresenter& records = m_shot.services().records();
        save("gate");
        records.open(1, QLatin1String(kPin));
        save("board");
        records.openCheckOff(1);
        save("opened");
        records.replay(2);
        QTest::qWait(300);
        save("replay");
    }

private:
    [[nodiscard]] CheckOffPresenter& checkOff() { return m_shot.services().checkOff(); }

    void save(const char* name) { m_shot.save((m_prefix + QLatin1String(name)).toLatin1().constData()); }
    // No longer at once than what counts as the student's own time.
    void pass(Ms time)
    {
        while (time > Ms{0}) {
            const Ms step = std::min(time, CountedTime::kLongestGap);
            m_shot.records().clock.now += step;
            time -= step;
            QTest::qWait(CheckOffPresenter::kTickMs + 20);
        }
    }
    void hold()
    {
        checkOff().toggleHolding();
        pass(Ms{10400});
        checkOff().toggleHolding();
    }

    Shot m_shot;
    QString m_prefix;
};

void walk(const QString& folder, const Preferences& preferences, const char* prefix, QSize size = kDesk)
{
    Walk walk(folder, preferences, QLatin1String(prefix), size);
    walk.toItems();
    walk.answerItems();
    walk.watchSteps();
    walk.close();
    walk.records();
}

}  // namespace check_off_shots_detail

void shootCheckOff(const QString& folder) { check_off_shots_detail::walk(folder, plain(), "check-off-"); }

void shootCheckOffLooks(const QString& folder)
{
    using check_off_shots_detail::walk;
    Preferences dark = plain();
    dark.palette = PaletteKind::Dark;
    dark.textPercent = 150;
    walk(folder, dark, "check-off-dark-");
    Preferences large = plain();
    large.textPercent = 0;
    walk(folder, large, "check-off-large-", QSize(3840, 2160));
    Preferences spanish = plain();
    spanish.language = QStringLiteral("es");
    walk(folder, spanish, "check-off-es-");
    QApplication::setLayoutDirection(Qt::RightToLeft);
    walk(folder, plain(), "check-off-rtl-");
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

}  // namespace fb::screenshots
