#include "tests/support/screenshots_lecture.h"

#include "app/demonstrate/lecture_view.h"
#include "app/lecture/lecture_presenter.h"
#include "tests/support/screenshots_shot.h"

namespace fb::screenshots {

namespace screenshots_lecture_detail {

class Lecture {
public:
    Lecture(const QString& folder, const Preferences& preferences, const QString& look = {},
            QSize window = kDesk, QSize room = {1280, 720})
        : m_shot(folder, preferences, window),
          m_look(look),
          m_room(m_shot.services().lecture(), LectureView::For::Audience)
    {
        m_shot.services().window().openArea(Area::Demonstrate);
        presenter().setCalm(true);
        m_room.setScheme(schemeOf(preferences.palette));
        m_room.resize(room);
        m_room.show();
        settle();
    }

    [[nodiscard]] LecturePresenter& presenter() { return m_shot.services().lecture(); }

    void open(Site site)
    {
        presenter().openSite(site);
        settle();
    }

    // The first step of that kind and code.
    void goTo(LectureStepKind kind, StepCode code = {})
    {
        const auto& steps = presenter().state().steps;
        for (std::size_t i = 0; i < steps.size(); ++i) {
            if (steps[i].kind == kind && (steps[i].code == code || code == StepCode{})) {
                presenter().goTo(static_cast<int>(i));
                return settle();
            }
        }
    }

    void saveRoom(const char* name)
    {
        settle();
        m_shot.save(named(name).constData(), m_room);
    }
    void savePage(const char* name)
    {
        settle();
        m_shot.save(named(name).constData(), m_shot.services().window());
    }
    void settle()
    {
        const auto isDone = [this] {
            if (!presenter().state().ready || presenter().isGliding() || !m_room.isSharp())
                return false;
            for (const LectureView* view : m_shot.services().window().findChildren<LectureView*>())
                if (view->isVisible() && !view->isSharp())
                    return false;
            return true;
        };
        constexpr int kLongest = 20000;
        constexpr int kRest = 300;
        if (!QTest::qWaitFor(isDone, kLongest))
            QTextStream(stderr) << "a lecture's picture was not ready in time" << Qt::endl;
        QTest::qWait(kRest);
    }

private:
    [[nodiscard]] QByteArray named(const char* name) const
    {
        return QByteArray("lecture-") + m_look.toLatin1() + name;
    }

    Shot m_shot;
    QString m_look;
    LectureView m_room;
};

void shootSites(Lecture& lecture)
{
    lecture.open(Site::Ventrogluteal);
    lecture.savePage("speaker-skin");
    lecture.goTo(LectureStepKind::Press, StepCode::FeelTrochanter);
    lecture.saveRoom("hip-press");
    lecture.goTo(LectureStepKind::Build, StepCode::MiddleAlongCrest);
    lecture.saveRoom("hip-hand");
    lecture.savePage("speaker-hand");
    lecture.goTo(LectureStepKind::Build, StepCode::IdealPoint);
    lecture.saveRoom("hip-ideal");
    lecture.goTo(LectureStepKind::Hazards);
    lecture.saveRoom("hip-hazards");
    lecture.goTo(LectureStepKind::WrongPlace);
    lecture.saveRoom("hip-wrong");
    lecture.open(Site::Deltoid);
    lecture.presenter().setConvention(Convention::DeltoidFingers);
    lecture.settle();
    lecture.goTo(LectureStepKind::Build, StepCode::LayFingers);
    lecture.saveRoom("shoulder-fingers");
    lecture.goTo(LectureStepKind::Hazards);
    lecture.saveRoom("shoulder-hazards");
    lecture.open(Site::VastusLateralis);
    lecture.goTo(LectureStepKind::Build, StepCode::Region);
    lecture.saveRoom("thigh-region");
}

void shootComparison(Lecture& lecture)
{
    lecture.open(Site::Ventrogluteal);
    lecture.presenter().setStoutness(Stoutness::Lean);
    lecture.settle();
    lecture.presenter().pin();
    lecture.presenter().setStoutness(Stoutness::Heavy);
    lecture.settle();
    lecture.goTo(LectureStepKind::Build, StepCode::IdealPoint);
    lecture.presenter().setCompare(Compare::SideBySide);
    lecture.saveRoom("side-by-side");
    lecture.savePage("speaker-compare");
    lecture.presenter().setCompare(Compare::Overlay);
    lecture.saveRoom("overlay");
    lecture.presenter().unpin();
    lecture.presenter().compareConvention(Convention::VentroglutealMedians);
    lecture.saveRoom("conventions");
    lecture.presenter().setCompare(Compare::Nothing);
}

void shootRoom(Lecture& lecture)
{
    lecture.open(Site::Ventrogluteal);
    lecture.presenter().setTool(LectureTool::Ask);
    const Point ideal = lecture.presenter().state().shown->target->ideal;
    constexpr QPointF kOff[]{{0.6, -0.5}, {-2.6, 2.2}, {1.8, -3.4}, {-0.3, 0.4}, {3.4, 1.2}};
    for (const QPointF off : kOff) {
        lecture.presenter().press(QPointF(ideal.x, ideal.y) + off);
        lecture.presenter().release();
    }
    lecture.saveRoom("room-asked");
    lecture.presenter().reveal(true);
    lecture.saveRoom("room-revealed");
    lecture.savePage("speaker-room");
}

}  // namespace screenshots_lecture_detail

using namespace screenshots_lecture_detail;

void shootLecture(const QString& folder)
{
    Lecture lecture(folder, plain());
    shootSites(lecture);
    shootComparison(lecture);
    shootRoom(lecture);
}

void shootLectureLooks(const QString& folder)
{
    Preferences dark = plain();
    dark.palette = PaletteKind::Dark;
    dark.textPercent = 150;
    Lecture inDark(folder, dark, QStringLiteral("dark-"), kDesk, {1024, 768});
    shootSites(inDark);
    Preferences spanish = plain();
    spanish.language = QStringLiteral("es");
    Lecture inSpanish(folder, spanish, QStringLiteral("es-"));
    shootSites(inSpanish);
    Lecture large(folder, plain(), QStringLiteral("large-"), {3840, 2160}, {3840, 2160});
    shootSites(large);
}

}  // namespace fb::screenshots
