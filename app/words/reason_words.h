// One site's sentence of reason each; reasonSentence() of grade_words.h chooses among them.
//
// Laws: never empty, whatever verdict, direction, tissue and note; one or two whole sentences that
// end in a full stop; what cannot be at a site (a bursa on the hip) still reads as a sentence.
#pragma once

#include <QString>

#include "core/grade/grade.h"

namespace fb {

[[nodiscard]] QString deltoidReason(Verdict verdict, const Reason& reason);
[[nodiscard]] QString thighReason(Verdict verdict, const Reason& reason);
[[nodiscard]] QString hipReason(Verdict verdict, const Reason& reason);

// What one site has to say, by tissue, for each way a mark can lie; %1 is the distance in words.
struct SiteSentences {
    bool (*isElsewhere)(Tissue);  // off the limb that was asked: told by the place alone
    QString (*place)(Tissue);
    QString (*inside)(const Reason&);
    QString (*acceptable)(const Reason&);
    QString (*high)(Tissue);
    QString (*low)(Tissue);
    QString (*forward)(Tissue);
    QString (*back)(Tissue);
};

// The one of them that fits.
[[nodiscard]] QString fittingSentence(const SiteSentences& site, Verdict verdict, const Reason& reason);

// Just outside the region, within the lab's margin, with nothing more to say of the place.
[[nodiscard]] QString withinMargin(Direction direction, Cm amount);

}  // namespace fb
