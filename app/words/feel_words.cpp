#include "app/words/feel_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>

#include "app/words/site_words.h"
#include "core/grade/flag_grade.h"

namespace fb {

namespace feel_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::FeelWords)
};

// An edge followed for less than this was only touched.
constexpr double kTouched = 0.5;  // cm

QString mmText(Mm fat) { return QLocale().toString(std::round(fat.value()), 'f', 0); }

Direction wayOf(Point way, const Target& target, Point at) { return directionOn(target, at, at + way); }

// The way an edge runs under the finger.
QString runText(const Feel& feel, const Target& target, Point at)
{
    if (feel.shape != BoneShape::Edge || !feel.along)
        return {};
    const Direction way = wayOf(*feel.along, target, at);
    return way == Direction::High || way == Direction::Low
               //: The edge of a bone under the finger.
               ? Words::tr("It runs on toward head and foot")
               : Words::tr("It runs on toward front and back");
}

// The finger lies on the bone, but not on its middle.
QString leanText(Direction way)
{
    switch (way) {
    case Direction::High: return Words::tr("More of it toward the head");
    case Direction::Low: return Words::tr("More of it toward the foot");
    case Direction::Forward: return Words::tr("More of it toward the front");
    case Direction::Back: return Words::tr("More of it toward the back");
    case Direction::None: break;
    }
    return {};
}

QStringList statements(const Feel& feel, const Target& target, Point at, Cm followed)
{
    QStringList said{feelName(feel)};
    if (feel.firmness == Firmness::Hard && feel.clearness != Clearness::Plain)
        said << clearnessText(feel);
    said << besideText(feel, target, at) << followedText(followed);
    said.removeAll(QString());
    return said;
}

}  // namespace feel_words_detail

QString firmnessName(Firmness firmness)
{
    using feel_words_detail::Words;
    switch (firmness) {
    //: What a fingertip feels where it presses on the skin.
    case Firmness::Soft: return Words::tr("Soft");
    case Firmness::Firm: return Words::tr("Firm");
    case Firmness::Hard: return Words::tr("Hard");
    }
    return {};
}

QString feelName(const Feel& feel)
{
    using feel_words_detail::Words;
    switch (feel.firmness) {
    //: What a fingertip feels, in a few words beside the finger.
    case Firmness::Soft: return Words::tr("Soft, fat");
    case Firmness::Firm: return Words::tr("Firm, muscle");
    case Firmness::Hard: break;
    }
    switch (feel.shape) {
    //: A small corner of bone; never say which bone.
    case BoneShape::Point: return Words::tr("Hard, a bony point");
    case BoneShape::Edge: return Words::tr("Hard, an edge");
    case BoneShape::Broad: return Words::tr("Hard, broad and round");
    case BoneShape::None: break;
    }
    return Words::tr("Hard, bone");
}

QString clearnessText(const Feel& feel)
{
    using namespace feel_words_detail;
    if (feel.shape == BoneShape::None)
        //: Where a fingertip feels no bone: how much fat it presses through.
        return Words::tr("Through %1 mm of fat").arg(mmText(feel.fat));
    switch (feel.clearness) {
    //: How plainly a bone is felt through the fat over it.
    case Clearness::Plain: return Words::tr("Plain");
    case Clearness::Dull: return Words::tr("Dull, through %1 mm of fat").arg(mmText(feel.fat));
    case Clearness::Faint: return Words::tr("Faint, through %1 mm of fat").arg(mmText(feel.fat));
    }
    return {};
}

QString besideText(const Feel& feel, const Target& target, Point at)
{
    using namespace feel_words_detail;
    if (!feel.toward)
        return {};
    const Direction way = wayOf(*feel.toward, target, at);
    if (feel.firmness == Firmness::Hard)
        return leanText(way);
    switch (way) {
    case Direction::None: return Words::tr("Bone beside your finger");
    case Direction::High: return Words::tr("Bone beside your finger, toward the head");
    case Direction::Low: return Words::tr("Bone beside your finger, toward the foot");
    case Direction::Forward: return Words::tr("Bone beside your finger, toward the front");
    case Direction::Back: return Words::tr("Bone beside your finger, toward the back");
    }
    return {};
}

QString followedText(Cm followed)
{
    using namespace feel_words_detail;
    return followed.value() < kTouched ? QString()
                                       //: A finger slid along the edge of a bone; %1 is how far.
                                       : Words::tr("An edge, followed for %1").arg(cmText(followed.value()));
}

QString feelPlaque(const Feel& feel, const Target& target, Point at, Cm followed)
{
    return feel_words_detail::statements(feel, target, at, followed).join(QLatin1Char('\n'));
}

QString feelSentence(const Feel& feel, const Target& target, Point at, Cm followed)
{
    using namespace feel_words_detail;
    QStringList said = statements(feel, target, at, followed);
    const QString run = runText(feel, target, at);
    if (!run.isEmpty())
        said.insert(1, run);
    QString spoken = said.takeFirst();
    for (const QString& statement : said)
        //: Two statements, one after the other, spoken: "Hard, an edge. Dull, through 22 mm of fat".
        spoken = Words::tr("%1. %2").arg(spoken, statement);
    return spoken;
}

}  // namespace fb
