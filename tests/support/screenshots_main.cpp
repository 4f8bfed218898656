// Remakes the README's pictures from the real screens: always the same seed, size and marks,
// so that the pictures change only when the program does.
#include <QApplication>
#include <QLocale>

#include "tests/support/screenshots_by_hand.h"
#include "tests/support/screenshots_check_off.h"
#include "tests/support/screenshots_lecture.h"
#include "tests/support/screenshots_shot.h"

namespace fb::screenshots {

void shootPractice(const QString& folder)
{
    constexpr QPointF kNearMiss{0.3, -0.2};
    constexpr QPointF kTooHigh{0.4, 2.6};
    Shot marking(folder, plain());
    marking.practice().placeMark(QPointF(0.2, -4.4));
    marking.save("practice-marking");
    marking.gradeAt(kNearMiss);
    marking.save("practice-graded-on-target");
    marking.practice().setPeelShown(Peel::Skin, false);
    marking.save("layer-muscle");
    marking.practice().setPeelShown(Peel::Muscle, false);
    marking.save("layer-nerves");
    marking.practice().setPeelShown(Peel::NervesAndVessels, false);
    marking.save("layer-bone");
    marking.practice().next();
    marking.gradeAt(kTooHigh);
    marking.save("practice-graded-unsafe");
    QTest::mouseClick(marking.find<QWidget>("why"), Qt::LeftButton);
    for (const Convention other : {Convention::DeltoidHalfway, Convention::DeltoidTwoInches})
        marking.practice().setOtherShown(other, true);
    marking.save("why");
    marking.practice().setCompanionShown(true);
    marking.save("other-view");
}

void shootNewRun(const QString& folder)
{
    Shot shot(folder, plain());
    QTest::mouseClick(shot.find<QWidget>("newRun"), Qt::LeftButton);
    shot.save("new-run", *shot.find<QWidget>("runDialog"));
}

void shootSideQuestion(const QString& folder)
{
    Preferences asks = plain();
    asks.asksSide = true;
    Shot shot(folder, asks);
    shot.save("side-question");
    const Side side = shot.practice().state().request->patient.side();
    shot.practice().pickSide(side == Side::Left ? Side::Right : Side::Left);
    shot.save("side-question-wrong");
}

void shootSummary(const QString& folder)
{
    static constexpr QPointF kWays[]{{0.2, 0.3}, {-0.4, 0.8}, {0.6, 1.7}, {0.1, -0.3}, {-1.0, 0.4},
                                     {0.3, 0.9}, {1.9, 0.2},  {0.0, 0.5}, {-0.2, 2.6}, {0.4, -0.6}};
    Shot shot(folder, plain());
    for (const QPointF way : kWays) {
        shot.gradeAt(way);
        shot.practice().next();
    }
    shot.save("summary");
}

Preferences only(Site site, bool findings = false)
{
    Preferences preferences = plain();
    preferences.mix = {SiteSet::only(site), findings};
    return preferences;
}

// Goes on, by grading off the mark, until a request fits.
void goOnTo(Shot& shot, const std::function<bool(const Request&)>& fits)
{
    while (shot.practice().state().request && !fits(*shot.practice().state().request)) {
        shot.gradeAt({0.2, 0.1});
        shot.practice().next();
    }
}

void shootSites(const QString& folder)
{
    Shot hip(folder, only(Site::Ventrogluteal));
    const Point ideal = hip.practice().state().target->ideal;
    hip.practice().placeMark(QPointF(ideal.x, ideal.y) + QPointF(0.9, -0.7));
    hip.save("hip-marking");
    hip.gradeAt({0.2, 0.1});
    hip.save("hip-graded-on-target");
    hip.practice().setCompanionShown(true);
    hip.save("hip-and-behind");
    for (const View view : askedViews(Site::VastusLateralis)) {
        Shot thigh(folder, only(Site::VastusLateralis));
        goOnTo(thigh, [view](const Request& request) { return request.view == view; });
        thigh.gradeAt({1.0, 0.4});
        const std::string name(wordOf(view));
        thigh.save((name + "-graded").c_str());
        thigh.practice().setCompanionShown(true);
        thigh.save((name + "-and-other").c_str());
    }
    Shot refused(folder, only(Site::Deltoid, true));
    goOnTo(refused, [](const Request& request) { return isRuledOut(request); });
    refused.practice().chooseReason(true);
    refused.save("not-here");
    refused.practice().refuse(refused.practice().state().request->finding->code);
    refused.save("not-here-graded");
    Preferences spanish = only(Site::Ventrogluteal);
    spanish.language = QStringLiteral("es");
    Shot hipInSpanish(folder, spanish);
    hipInSpanish.gradeAt({0.8, -1.2});
    hipInSpanish.save("spanish");
}

void shootLooks(const QString& folder)
{
    constexpr QPointF kFar{-1.2, -2.4};
    const auto graded = [&](const char* name, const Preferences& preferences, QSize size) {
        Shot shot(folder, preferences, size);
        shot.gradeAt(kFar);
        shot.save(name);
    };
    Preferences look = plain();
    look.palette = PaletteKind::Dark;
    graded("dark", look, kDesk);
    look.palette = PaletteKind::Projector;
    graded("projector", look, kDesk);
    look = plain();
    look.textPercent = 150;
    graded("text-150", look, kDesk);
    look.textPercent = 200;
    constexpr QSize kLargeDesk{3840, 2160};
    graded("desk-3840x2160", look, kLargeDesk);
    look.textPercent = 100;
    constexpr QSize kUsualDesk{1920, 1080};
    graded("desk-1920x1080", look, kUsualDesk);
    QApplication::setLayoutDirection(Qt::RightToLeft);
    graded("right-to-left", look, kDesk);
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

}  // namespace fb::screenshots

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() < 2 || !QDir().mkpath(arguments[1])) {
        QTextStream(stderr)
            << "usage: screenshooter FOLDER [practice|run|side|summary|sites|looks|hand|check-off|lecture|hand-looks|"
               "check-off-looks|lecture-looks]"
            << Qt::endl;
        return 2;
    }
    const QString folder = arguments[1];
    const QString only = arguments.value(2);
    using namespace fb::screenshots;
    const std::pair<const char*, void (*)(const QString&)> kSets[]{
        {"practice", shootPractice}, {"run", shootNewRun},        {"side", shootSideQuestion},
        {"summary", shootSummary},   {"sites", shootSites},       {"looks", shootLooks},
        {"hand", shootByHand},       {"check-off", shootCheckOff},
        {"lecture", shootLecture}};
    for (const auto& [name, shoot] : kSets) {
        if (only.isEmpty() || only == QLatin1String(name))
            shoot(folder);
    }
    if (only == QStringLiteral("hand-looks"))
        shootByHandLooks(folder);
    if (only == QStringLiteral("check-off-looks"))
        shootCheckOffLooks(folder);
    if (only == QStringLiteral("lecture-looks"))
        shootLectureLooks(folder);
    return 0;
}
