#include "app/words/why_words.h"

#include <QCoreApplication>

namespace fb {

namespace why_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::WhyWords)
};

}  // namespace why_words_detail

QString whyNotTitle(View view)
{
    using namespace why_words_detail;
    switch (view) {
    //: The old injection site in the buttock.
    case View::HipBehind: return Words::tr("Why not the dorsogluteal site");
    case View::ThighFront: return Words::tr("Why not the rectus femoris");
    case View::ThighSide: return Words::tr("Why not farther back");
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter:
    case View::HipSide:
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: break;
    }
    return {};
}

QString whyNotText(View view)
{
    using namespace why_words_detail;
    switch (view) {
    case View::HipBehind:
        //: Upper outer quadrant: a quarter of the buttock, as older books teach the dorsogluteal site.
        return Words::tr(
            "The upper outer quadrant is easily misjudged: it belongs to the whole buttock, up to the iliac "
            "crest and out to the trochanter, not to its rounded part, and a needle set too low or too far "
            "in comes near the sciatic nerve. Even well placed it can meet the superior gluteal nerve and "
            "artery; in one study of dissected buttocks most punctures there did. Fat is often thick here, "
            "so that many doses do not reach muscle. Injuries of the sciatic nerve are still reported, and "
            "books keep the site for when no other can be used.");
    case View::ThighFront:
        //: The rectus femoris is the muscle down the middle of the front of the thigh.
        return Words::tr(
            "The muscle down the front of the thigh is easy to reach, but branches of the lateral circumflex "
            "femoral artery and the nerve to the vastus lateralis run under its middle, and an injection "
            "here "
            "is commonly said to hurt more. Farther in lie the femoral vessels and nerve. Books keep it for "
            "when no other site can be used; the outer side of the same thigh is clear of large vessels and "
            "nerves.");
    case View::ThighSide:
        return Words::tr(
            "Behind the outer line of the thigh the vastus lateralis thins and the hamstrings begin; the "
            "sciatic nerve runs deep to them. Toward hip and knee there is tendon and joint instead of thick "
            "muscle.");
    case View::ShoulderSide:
    case View::ShoulderThreeQuarter:
    case View::HipSide:
    case View::OpenHand:
    case View::TwoFingers:
    case View::ThreeFingers: break;
    }
    return {};
}

}  // namespace fb
