// What is compared on one body, and what the room said: see lecture_look.h.
#include <QCoreApplication>
#include <QLocale>
#include <array>

#include "app/lecture/lecture_look.h"
#include "app/lecture/room_marks.h"
#include "app/words/grade_words.h"
#include "app/words/site_words.h"
#include "core/site/difference.h"

namespace fb {

namespace compare_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::LectureLook)
};

constexpr double kLeastArrow = 0.05;  // cm: shorter is one and the same place

// So many marks can each have a sentence on the plate; of more only the numbers.
constexpr qsizetype kFew = 6;

QPointF onPlate(Point p) { return {p.x, p.y}; }

QVector<QPointF> outlineOf(const Polygon& polygon)
{
    QVector<QPointF> made;
    for (const Point p : polygon.corners())
        made.push_back(onPlate(p));
    return made;
}

Role roleOf(Verdict verdict)
{
    static constexpr std::array kRoles{Role::MarkOnTarget, Role::MarkAcceptable, Role::MarkOffTarget,
                                       Role::MarkUnsafe};
    return kRoles[static_cast<std::size_t>(verdict)];
}

// A length is not broken from its unit.
QString lengthOf(double cm) { return cmText(cm).replace(QLatin1Char(' '), QChar(QChar::Nbsp)); }

QString calledBy(const RoomMark& mark, int number)
{
    const QString text = QLocale().toString(number);
    //: A volunteer's mark: its number and the name that was given.
    return mark.name.isEmpty() ? text : Words::tr("%1 %2").arg(text, mark.name);
}

QString resultOf(const RoomMark& mark, int number)
{
    const QString called = calledBy(mark, number);
    if (!mark.grade)
        //: %1 is the number of a mark, with a name perhaps.
        return Words::tr("%1: off the body").arg(called);
    //: "3: off target, 1.8 cm": number, verdict, distance from the ideal point.
    return Words::tr("%1: %2, %3")
        .arg(called, verdictName(mark.grade->verdict), lengthOf(mark.grade->distanceToIdeal.value()));
}

}  // namespace compare_detail

Scene besideScene(const Target& shown, const Target& other, const QString& shownName,
                  const QString& otherName)
{
    using namespace compare_detail;
    Scene scene;
    scene.push_back({Role::Region, Figure::Closed, outlineOf(shown.region), {}, shownName});
    scene.push_back({Role::Yours, Figure::Closed, outlineOf(other.region), {}, otherName});
    const double apart = differenceOf(shown, other).apart.value();
    if (apart >= kLeastArrow)
        scene.push_back({Role::Arrow,
                         Figure::Line,
                         {onPlate(shown.ideal), onPlate(other.ideal)},
                         lengthOf(apart),
                         //: The distance between two ideal points.
                         Words::tr("Ideal points %1 apart").arg(cmText(apart))});
    scene.push_back({Role::Ideal, Figure::Point, {onPlate(shown.ideal)}, shownName, {}});
    scene.push_back({Role::Other, Figure::Point, {onPlate(other.ideal)}, otherName, {}});
    return scene;
}

Scene roomScene(const std::vector<RoomMark>& marks, bool revealed)
{
    using namespace compare_detail;
    Scene scene;
    const bool few = static_cast<qsizetype>(marks.size()) <= kFew;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const RoomMark& mark = marks[i];
        const int number = static_cast<int>(i) + 1;
        const QString called = calledBy(mark, number);
        const QString said = revealed ? resultOf(mark, number) : called;
        const Role role = revealed && mark.grade ? roleOf(mark.grade->verdict) : Role::Landmark;
        scene.push_back(
            {role, Figure::Point, {onPlate(mark.at)}, few ? said : QLocale().toString(number), said});
    }
    return scene;
}

}  // namespace fb
